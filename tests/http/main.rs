//! The portal over HTTP, on a real database.

mod platform;
mod records;
mod sessions;
