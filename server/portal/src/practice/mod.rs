//! The settings of the practice: how its pages write days and times, and what a client's page tells. For administrators.

mod form;
mod measures;
mod queries;

use axum::routing::{get, post};

use crate::platform::when::Style;
use crate::platform::{Role, Routes, Rule};

/// What an administrator may change.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Settings {
    /// Of days and times.
    style: Style,
    /// Whether a client's page says whom they meet.
    tells_whom: bool,
    /// How long an appointment usually is, and how much of that is kept for closing, minutes.
    minutes: i16,
    reserve: i16,
    /// Within which hours after a session that asks for it the client is called.
    check_from: i16,
    check_until: i16,
    /// How many sets alike in a row are called stuck: 2 or 3.
    stuck_after: i16,
    /// Whether the two pages of a session may connect directly, which tells each the other's address.
    direct_calls: bool,
    /// A set comes to rest so many seconds after nothing came of the client: 3 to 15.
    unseen_seconds: i16,
    /// Where the practice may treat, a place a line; empty: nothing is said about it.
    places: String,
    /// Whom a client can call between sessions, in the practice's own words.
    crisis_words: String,
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    let administrator = Rule::Role(Role::Administrator);
    routes
        .get("/practice/settings", administrator, get(form::show))
        .post("/practice/settings", administrator, post(form::save))
        .get("/practice/settings/measures", administrator, get(measures::show))
        .post("/practice/settings/measures", administrator, post(measures::save))
}
