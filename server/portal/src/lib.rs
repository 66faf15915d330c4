//! The Leeward portal as a library: `app::build` makes it, tests start the real thing.
//!
//! From the ground up: `base`, `words` and `store`, then `platform`, then one folder a feature, then what runs all of it.
//! Nothing imports what stands above it, and features do not import each other in circles; `tests/http/house.rs` reads
//! the imports and says so. A feature is used through its `mod.rs`.

pub mod base;
pub mod store;
pub mod words;

pub mod platform;

pub mod askings;
mod caseload;
pub mod clients;
pub mod comfort;
pub mod course;
pub mod episodes;
pub mod events;
pub(crate) mod handover;
pub mod live;
pub mod mail;
pub mod measures;
pub mod outcomes;
pub(crate) mod practice;
pub mod presets;
pub mod reach;
pub(crate) mod record;
pub mod safety_plan;
pub mod sessions;
pub mod signin;
pub mod steadying;
pub mod targets;
pub mod wordings;

pub mod app;
pub mod cli;
pub mod config;
pub mod connections;
pub mod demo;
pub mod doctor;
pub mod log;
pub mod notify;
mod queries;
pub mod upkeep;
pub mod waiting;
