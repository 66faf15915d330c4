//! What goes wrong around the portal: answers that are lost, a database that hangs, processes that die.
//!
//! `./tests/run` runs the short form. `tests/faults/run` runs the whole, which takes minutes, and prints a line for each
//! figure that has to be reached.
#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test that cannot go on must fail loudly, in its helpers too")]

mod again;
mod crowds;
mod figures;
mod hangs;
mod kills;
#[path = "../live/scene.rs"]
#[expect(dead_code, reason = "the tests of the live room use the rest of it")]
mod live_scene;
#[path = "../live/page.rs"]
mod page;
mod rooms;
mod samples;
#[path = "../http/scene.rs"]
#[expect(dead_code, reason = "the tests over HTTP use the rest of it")]
mod scene;
mod stops;
