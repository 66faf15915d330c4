//! Handing clients over to another clinician: by record number, without a word of what was said. And what somebody
//! is told of it on their next page.

mod news;
mod page;
mod queries;

use axum::routing::{get, post};

use crate::app::{Repeats, Routes, Rule};
use crate::signin::Role;

pub(crate) use news::{News, unread};
pub(crate) use queries::{ClientRow, clients_of};

/// Who may hand over.
pub(crate) const WHO: &[Role] = &[Role::Administrator, Role::Lead];

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/handover", Rule::Roles(WHO), get(page::show))
        .post("/handover/{client}", Rule::Roles(WHO), post(page::hand_over))
        .post_repeated("/news/{news}/read", Rule::Member, Repeats::ByNature("what is read stays so"), post(news::read))
}
