//! The portal over HTTP, on a real database.

mod outcomes;
mod platform;
mod records;
mod scene;
mod sessions;
