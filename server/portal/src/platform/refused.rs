//! Who reaches for a record that is not theirs reads that it is not there; the trail has it.

use axum::extract::rejection::RawPathParamsRejection;
use axum::extract::{RawPathParams, Request, State};
use axum::http::StatusCode;
use axum::middleware::Next;
use axum::response::Response;
use uuid::Uuid;

use super::member::Member;
use super::queries;
use super::state::App;
use crate::store::error::Error;

/// The layer of the routes of records. Whether there is such a record, and whose, only the database looks at.
pub async fn note_refused(
    State(app): State<App>,
    member: Member,
    path: Result<RawPathParams, RawPathParamsRejection>,
    request: Request,
    next: Next,
) -> Response {
    // What is no text is no id either; the handler says so.
    let ids: Vec<Uuid> = path.iter().flatten().filter_map(|(_, value)| value.parse().ok()).collect();
    let response = next.run(request).await;
    if response.status() == StatusCode::NOT_FOUND
        && let Err(fault) = note(&app, &member, &ids).await
    {
        tracing::warn!(%fault, "a refused look was not noted");
    }
    response
}

async fn note(app: &App, member: &Member, ids: &[Uuid]) -> Result<(), Error> {
    let mut tx = app.database.look(&member.subject).await?;
    for id in ids {
        queries::note_refused(&mut tx, *id).await?;
    }
    tx.commit().await
}
