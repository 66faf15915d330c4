//! What it adds up to: the course of a target, and the practice lead's caseload.

mod caseload;
mod client;
mod closings;
mod course;
mod lanes;
mod queries;

use axum::routing::get;

use crate::platform::Role;
use crate::platform::{Routes, Rule};

pub(crate) use caseload::LONG;
pub use course::course;
pub(crate) use lanes::{Spans, spans};
pub(crate) use queries::{ClientRow, clients};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    let lead = Rule::Role(Role::Lead);
    routes.get("/practice/caseload", lead, get(caseload::show)).get("/practice/clients/{client}", lead, get(client::show))
}
