//! Shared support for the tests: a real portal on a real database.
//!
//! `DATABASE_URL` must lead to a Postgres server as a superuser. Each house gets a database of its
//! own, owned by `leeward_owner`, and the portal connects as `leeward_app`, as in a real practice: a
//! superuser would pass by the very policies that are tested.
#![expect(clippy::expect_used, clippy::missing_panics_doc, reason = "a test that cannot set up must fail loudly")]

mod browser;
mod cluster;
mod database;
mod device;
pub mod forms;
mod house;
mod letterbox;
mod sealed;
mod served;
mod wire;
mod world;

pub use browser::{Answer, Browser};
pub use cluster::Cluster;
pub use database::TestDatabase;
pub use device::device;
pub use house::{House, key, key_digits};
pub use letterbox::Letterbox;
pub use sealed::{SEALED, open_all};
pub use served::Served;
pub use wire::Wire;
pub use world::TestWorld;
