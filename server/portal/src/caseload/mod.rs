//! The caseload: what needs this clinician today, and the clients whom they treat. Stands above the features whose parts it shows.

mod duties;
mod page;
mod queries;

use axum::routing::get;

use crate::platform::{Role, Routes, Rule};

/// Adds this feature's route.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/clients", Rule::Role(Role::Clinician), get(page::show))
}
