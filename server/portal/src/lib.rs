//! The Leeward portal as a library: `app::build` makes it, tests start the real thing.
//!
//! Platform (`app` to `subject`), sign-in, and one folder a feature. A feature imports core, the
//! platform, the sign-in extractors, and another feature only through its `mod.rs`.

pub mod app;
pub mod assets;
pub mod cli;
pub mod clients;
pub mod clock;
pub mod comfort;
pub mod config;
pub mod connections;
pub mod database;
pub mod demo;
pub mod error;
mod fit;
pub mod forms;
pub(crate) mod handover;
pub mod ids;
pub mod key_check;
pub mod live;
pub mod log;
pub mod notify;
pub mod observe;
pub mod once;
pub mod outcomes;
pub mod page;
pub mod patience;
pub mod presets;
pub mod seal;
pub mod security;
pub mod sessions;
pub mod signin;
pub mod subject;
pub mod targets;
pub mod upkeep;
pub mod waiting;
pub mod when;
pub mod words;
