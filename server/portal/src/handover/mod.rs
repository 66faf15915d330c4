//! Handing clients over to another clinician: by record number, without a word of what was said. And what somebody
//! is told of it on their next page.

mod news;
mod page;
mod queries;

use axum::routing::{get, post};

use crate::app::{Repeats, Routes, Rule};
use crate::signin::MAY_HAND_OVER;

pub(crate) use news::{News, unread};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/handover", Rule::Roles(MAY_HAND_OVER), get(page::show))
        .post("/handover/{client}", Rule::Roles(MAY_HAND_OVER), post(page::hand_over))
        .post_repeated("/news/{news}/read", Rule::Member, Repeats::ByNature("what is read stays so"), post(news::read))
}
