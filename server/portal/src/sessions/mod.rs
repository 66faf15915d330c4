//! Sessions: starting one, what is entered in it, closing it, and its page.

mod after;
mod close;
mod close_choices;
mod close_context;
mod close_desk;
mod close_form;
mod close_known;
mod close_page;
mod close_read;
mod draft;
mod entries;
mod entry;
mod log;
mod next;
mod note;
mod open;
mod page;
mod queries;
mod queries_after;
mod queries_draft;
mod queries_entries;
mod queries_sets;
mod record;
mod set_page;
mod sets;
mod standing;
mod steps;
mod turn;
mod words;

use axum::routing::{get, post};

use crate::platform::Role;
use crate::platform::{Repeats, Routes, Rule};

pub use crate::platform::codes::ClosingKind;
pub use after::{Agreed, Reason, agreed};
pub use close::{Closing, close};
pub use entries::save_entry;
pub use log::log;
pub use open::{NewSession, open};
pub use sets::{Set, Shown};
pub use words::{Words, change_words, words};

const ONE_OPEN: Repeats = Repeats::ByNature("one session of a client is open at a time, and that one is opened");

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .post_repeated("/rehearsal", Rule::Role(Role::Clinician), ONE_OPEN, post(open::rehearse))
        .post_repeated("/clients/{client}/sessions", Rule::Care, ONE_OPEN, post(open::post))
        .post_repeated(
            "/sessions/{session}/entries",
            Rule::Care,
            Repeats::ByNature("an entry is kept once, by its id"),
            post(entries::post),
        )
        .get("/sessions/{session}/entries", Rule::Care, get(log::get))
        .get("/sessions/{session}", Rule::Care, get(page::get))
        .get("/sessions/{session}/sets/{number}", Rule::Care, get(set_page::get))
        .get("/sessions/{session}/close", Rule::Care, get(close_page::get))
        .post("/sessions/{session}/close", Rule::Care, post(close_page::post))
        .get("/sessions/{session}/closing", Rule::Care, get(close_desk::get))
        .post("/sessions/{session}/closing", Rule::Care, post(close_desk::post))
        .post_repeated(
            "/sessions/{session}/closing/draft",
            Rule::Care,
            Repeats::ByNature("the same draft against the same version is kept once"),
            post(close_desk::keep),
        )
        .post("/sessions/{session}/target", Rule::Care, post(turn::post))
        .post("/sessions/{session}/check", Rule::Care, post(after::post))
        .get("/sessions/{session}/note", Rule::Care, get(note::get))
        .post("/sessions/{session}/note", Rule::Care, post(note::post))
}
