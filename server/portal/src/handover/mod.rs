//! Handing clients over to another clinician: by record number, without a word of what was said.

mod page;
mod queries;

use axum::routing::{get, post};

use crate::platform::MAY_HAND_OVER;
use crate::platform::{Routes, Rule};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/handover", Rule::Roles(MAY_HAND_OVER), get(page::show)).post(
        "/handover/{client}",
        Rule::Roles(MAY_HAND_OVER),
        post(page::hand_over),
    )
}
