//! leeward-core: the pure part of Leeward.
//!
//! Nothing in here reads a clock, a file, a socket or a random source: every function gets its
//! time and its inputs as arguments, so all of it can be run in virtual time by a test.

#![cfg_attr(test, allow(clippy::unwrap_used, clippy::expect_used))]

pub mod call;
pub mod chart;
pub mod course;
pub mod measures;
pub mod optics;
pub mod outcome;
pub mod path;
pub mod room;
pub mod safety;
pub mod scale;
pub mod standing;
pub mod timeline;
pub mod wire;
