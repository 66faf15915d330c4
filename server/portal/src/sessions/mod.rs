//! Sessions: starting one, what is entered in it, closing it, and its page.

mod close;
mod close_page;
mod codes;
mod entries;
mod entry;
mod log;
mod note;
mod open;
mod page;
mod queries;
mod queries_entries;
mod queries_sets;
mod record;
mod set_page;
mod sets;
mod standing;
mod steps;
mod when;
mod words;

use axum::routing::{get, post};

use crate::app::{Routes, Rule};
use crate::signin::Role;

pub(crate) use close::closing_words;
pub(crate) use codes::{channels as channel_words, length as length_words, path as path_words};

pub use close::{Closing, ClosingKind, close};
pub use entries::keep;
pub use log::log;
pub use open::{NewSession, open};
pub use sets::{Set, Shown};
pub use when::When;
pub use words::{Words, change_words, save_words, words};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .post("/rehearsal", Rule::Role(Role::Clinician), post(open::rehearse))
        .post("/clients/{client}/sessions", Rule::Care, post(open::post))
        .post("/sessions/{session}/entries", Rule::Care, post(entries::post))
        .get("/sessions/{session}/entries", Rule::Care, get(log::get))
        .get("/sessions/{session}", Rule::Care, get(page::get))
        .get("/sessions/{session}/sets/{number}", Rule::Care, get(set_page::get))
        .get("/sessions/{session}/close", Rule::Care, get(close_page::get))
        .post("/sessions/{session}/close", Rule::Care, post(close_page::post))
        .get("/sessions/{session}/note", Rule::Care, get(note::get))
        .post("/sessions/{session}/note", Rule::Care, post(note::post))
}
