//! The portal over HTTP, on a real database.
#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test that cannot go on must fail loudly, in its helpers too")]

mod access;
mod after;
mod askings;
mod course;
mod episodes;
mod events;
mod floors;
mod habits;
mod mail;
mod measures;
mod opening;
mod outcomes;
mod phases;
mod plan;
mod platform;
mod preparation;
mod reach;
mod records;
mod safety_plan;
mod scene;
mod sessions;
mod signin;
mod stranded;
mod two_at_once;
mod upgrade;
mod upkeep;
mod wall;
