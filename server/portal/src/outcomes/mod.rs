//! What it adds up to: the course of a target, and what the practice lead sees: the practice in figures, the caseload, single courses by record.

mod caseload;
mod change;
mod client;
mod closings;
mod course;
mod figures;
mod flow;
mod lanes;
mod period;
mod practice;
mod queries;
mod queries_practice;
mod queries_today;
mod today;

use axum::routing::{get, post};
use uuid::Uuid;

use crate::platform::Role;
use crate::platform::{Routes, Rule};
use crate::store::database::as_owner;
use crate::store::error::Error;

pub(crate) use caseload::LONG;
pub use course::course;
pub(crate) use lanes::{Spans, spans};
pub(crate) use queries::{ClientRow, clients};

/// Makes every course anew that was kept otherwise than its ratings say, as the database's owner: how many there are, and of which targets they
/// differed.
///
/// # Errors
/// [`Error::Database`], also when `url` is not the owner's: nothing was made anew.
pub async fn rebuild(url: &str) -> Result<(i64, Vec<Uuid>), Error> {
    as_owner(url, async |db| queries_today::refold(db).await).await
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    let lead = Rule::Role(Role::Lead);
    routes
        .get("/practice", lead, get(practice::show))
        .get("/practice/caseload", lead, get(caseload::show))
        .get("/practice/clients/{client}", lead, get(client::show))
        .post("/practice/snapshots", lead, post(practice::make))
}
