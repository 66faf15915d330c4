//! The note of a session, written and rewritten against its version.

use askama::Template;
use axum::Form;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::{queries, words};
use crate::app::App;
use crate::clients;
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::page::{Frame, page};
use crate::seal::Private;
use crate::signin::Member;
use crate::subject::{Act, Tx};

/// Characters of a note: about four printed pages.
pub(super) const MOST: usize = 10_000;

/// The form as it was typed.
#[derive(Clone, Debug, Deserialize)]
pub(super) struct Typed {
    note: String,
    version: i32,
}

#[derive(Template)]
#[template(path = "sessions/note.html")]
struct NotePage {
    frame: Frame,
    session: Uuid,
    number: i32,
    typed: String,
    version: i32,
    problems: Problems,
    /// The note as somebody saved it meanwhile.
    meanwhile: Option<Private>,
}

/// The note and the version of the words it stands in.
async fn current(tx: &mut Tx, app: &App, session: Uuid) -> Result<(i32, words::Words, i32, crate::seal::ClientKey), Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let (words, version) = words::words(tx, &key, session).await?;
    Ok((row.number, words, version, key))
}

/// `GET /sessions/{session}/note`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Path(session): Path<Uuid>) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.note.view").object(session)).await?;
    let (number, words, version, _) = current(&mut tx, &app, session).await?;
    tx.commit().await?;
    let typed = words.note.reveal().to_owned();
    let form = NotePage { frame, session, number, typed, version, problems: Problems::default(), meanwhile: None };
    Ok(page(&form)?.into_response())
}

/// `POST /sessions/{session}/note`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Path(session): Path<Uuid>,
    Form(typed): Form<Typed>,
) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.note.save").object(session)).await?;
    let (number, mut words, version, key) = current(&mut tx, &app, session).await?;
    let mut problems = Problems::default();
    let note = problems.text("note", &typed.note, MOST, Need::Optional, Lines::Many);
    let mut form = NotePage { frame, session, number, typed: typed.note, version: typed.version, problems, meanwhile: None };
    if !form.problems.none() {
        return Ok((StatusCode::UNPROCESSABLE_ENTITY, page(&form)?).into_response());
    }
    let before = std::mem::replace(&mut words.note, Private::new(note));
    if words::save_words(&mut tx, &app, &key, session, &words, typed.version).await? {
        tx.commit().await?;
        return Ok(Redirect::to(&format!("/sessions/{session}#note")).into_response());
    }
    form.meanwhile = Some(before);
    form.version = version;
    Ok((StatusCode::CONFLICT, page(&form)?).into_response())
}
