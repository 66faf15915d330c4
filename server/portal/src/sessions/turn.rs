//! Turning to another target in the middle of a session. Each set, rating and fact keeps the target that it was of, so nothing of the first
//! is lost; where a set was led on it, it is set aside as incomplete, and may be turned back to.

use axum::body::Bytes;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use leeward_core::course::Decision;
use serde::Deserialize;
use uuid::Uuid;

use super::queries::{self, SessionRow};
use crate::course::{self, Saying};
use crate::platform::forms::Id;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Tx};
use crate::targets;

#[derive(Deserialize)]
struct Turn {
    target: Uuid,
    /// The target that the desk showed.
    from: Option<Uuid>,
}

/// `POST /sessions/{session}/target`
pub(super) async fn post(State(app): State<App>, member: Member, Id(session): Id, once: Once, body: Bytes) -> Result<Response, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("session.turn").object(session), &once).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let Turn { target, from } = serde_json::from_slice(&body).map_err(|_| Error::BadRequest("Send one target as JSON."))?;
    // What is due, and so what holds a start, is of the new target from now on.
    let _told = app.bell.follows(session);
    turn(&mut tx, &app, (session, &row), target, from).await?;
    let answer = Answer::Json(serde_json::json!({ "target": target }));
    Ok(tx.commit(answer).await?.into_response())
}

async fn turn(tx: &mut Tx, app: &App, (session, row): (Uuid, &SessionRow), target: Uuid, from: Option<Uuid>) -> Result<(), Error> {
    if row.ended_at.is_some() {
        return Err(Error::Conflict("This session is closed, so its target stays as it is."));
    }
    let wanted = targets::find(tx, app, target).await?;
    if wanted.client != row.client_id {
        return Err(Error::NotFound);
    }
    if wanted.archived_at.is_some() {
        return Err(Error::Conflict("This target is archived. Restore it on its page, then turn to it."));
    }
    if from.is_some_and(|from| from == target) {
        return Err(Error::Conflict("This is the target of the session already."));
    }
    if let Some(from) = from
        && queries::reprocessed_on(tx, session, from).await?
        && course::fold(tx, from).await?.carries(Decision::Incomplete, None)
    {
        course::say(tx, app, row.client_id, from, Saying::Decided(Decision::Incomplete, None)).await?;
    }
    if queries::turn(tx, session, target, from).await? {
        return Ok(());
    }
    Err(Error::Conflict("The session has turned to another target meanwhile. Reload the desk, and look."))
}
