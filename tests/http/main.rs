//! The portal over HTTP, on a real database.

mod outcomes;
mod platform;
mod scene;
mod sessions;
