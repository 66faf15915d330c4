//! Sessions: starting one, what is entered in it, closing it, and its page.

mod codes;
mod entries;
mod entry;
mod log;
mod open;
mod queries;
mod queries_entries;
mod queries_sets;
mod sets;
mod words;

use axum::routing::{get, post};

use crate::app::{Routes, Rule};

pub use entries::keep;
pub use log::log;
pub use open::{NewSession, open};
pub use sets::{Set, Shown};
pub use words::{Words, change_words, save_words, words};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .post("/clients/{client}/sessions", Rule::Care, post(open::post))
        .post("/sessions/{session}/entries", Rule::Care, post(entries::post))
        .get("/sessions/{session}/entries", Rule::Care, get(log::get))
}
