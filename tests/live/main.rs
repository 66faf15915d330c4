//! The live room over real sockets.
#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test that cannot go on must fail loudly")]

mod calls;
mod comfort;
mod course;
mod evidence;
mod joining;
mod limits;
mod page;
mod restart;
mod scene;
mod seats;
mod states;
mod trouble;
