//! The note of a session, written and rewritten against its version.

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::{Words, queries, words};
use crate::app::App;
use crate::clients::{self, Id, Sent, list, notice};
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::page::{Frame, page};
use crate::seal::{ClientKey, Private};
use crate::signin::Member;
use crate::subject::{Act, Tx};

/// Characters of a note: about four printed pages.
pub(super) const MOST: usize = 10_000;

/// The form as it was typed.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub(super) struct Typed {
    note: String,
    version: String,
}

/// What the form shows about its session.
struct Context {
    client: Uuid,
    number: i32,
    rehearsal: bool,
}

#[derive(Template)]
#[template(path = "sessions/note.html")]
struct NotePage {
    frame: Frame,
    session: Uuid,
    /// `None` when the database did not answer: what was typed is shown all the same.
    context: Option<Context>,
    typed: String,
    version: i32,
    problems: Problems,
    notice: &'static str,
    /// The note as somebody saved it meanwhile.
    meanwhile: Option<Private>,
}

impl NotePage {
    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list(&[("note", "Note")], &self.problems)
    }

    fn answer(&self, status: StatusCode) -> Result<Response, Error> {
        Ok((status, page(self)?).into_response())
    }
}

/// The session, its words, and their key and version.
async fn current(tx: &mut Tx, app: &App, session: Uuid) -> Result<(Context, Words, i32, ClientKey), Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let (words, version) = words::words(tx, &key, session).await?;
    // They are sealed together: a form that showed one of them would replace them all.
    let words = words.whole()?;
    Ok((Context { client: row.client_id, number: row.number, rehearsal: row.rehearsal }, words, version, key))
}

/// `GET /sessions/{session}/note`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Id(session): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.note.view").object(session)).await?;
    let (context, words, version, _) = current(&mut tx, &app, session).await?;
    tx.commit().await?;
    let (typed, problems) = (words.note.reveal().to_owned(), Problems::default());
    NotePage { frame, session, context: Some(context), typed, version, problems, notice: "", meanwhile: None }.answer(StatusCode::OK)
}

/// `POST /sessions/{session}/note`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Id(session): Id,
    Sent(typed): Sent<Typed>,
) -> Result<Response, Error> {
    // A form without its version is treated as one from before every version: shown again, nothing lost.
    let (problems, version) = (Problems::default(), typed.version.parse().unwrap_or(0));
    let mut form = NotePage { frame, session, context: None, typed: typed.note, version, problems, notice: "", meanwhile: None };
    match try_save(&app, &member, &mut form).await {
        Ok(None) => Ok(Redirect::to(&format!("/sessions/{session}#note")).into_response()),
        Ok(Some(status)) => form.answer(status),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a note was not saved");
            form.notice = notice::unsaved(&fault);
            form.answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

/// `None`: it is saved. Otherwise the form says why it is not.
async fn try_save(app: &App, member: &Member, form: &mut NotePage) -> Result<Option<StatusCode>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.note.save").object(form.session)).await?;
    let (context, mut words, version, key) = current(&mut tx, app, form.session).await?;
    form.context = Some(context);
    let note = Private::new(form.problems.text("note", &form.typed, MOST, Need::Optional, Lines::Many));
    if !form.problems.none() {
        form.notice = notice::LOOK;
        return Ok(Some(StatusCode::UNPROCESSABLE_ENTITY));
    }
    let before = std::mem::replace(&mut words.note, note);
    if words::save_words(&mut tx, app, &key, form.session, &words, form.version).await? {
        tx.commit().await?;
        return Ok(None);
    }
    (form.notice, form.version, form.meanwhile) = (notice::CHANGED, version, Some(before));
    Ok(Some(StatusCode::CONFLICT))
}
