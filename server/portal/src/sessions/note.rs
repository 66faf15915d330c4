//! The note of a session. Each saving adds a version; none is ever lost.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::queries;
use super::words::{self, Words};
use crate::clients;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Again, Fields, Id, Keyed, Lines, Need, Problems, SaveOutcome, answer};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{ClientKey, Opened, Private};
use crate::store::subject::{Act, Tx};

/// Characters of a note: about four printed pages.
pub(super) const MOST: usize = 10_000;

/// The form as it was typed.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub(super) struct NoteForm {
    note: String,
    version: String,
}

impl Fields for NoteForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[("note", "Note")];

    fn shown(&self, _: &str) -> String {
        self.note.clone()
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

/// What the form shows about its session.
struct Context {
    client: Uuid,
    /// The number of the client's record, and that of the session in it.
    record: i32,
    number: i32,
    rehearsal: bool,
    /// In which the times stand.
    zone: String,
    earlier: Vec<Earlier>,
}

/// A note as it stood before.
struct Earlier {
    /// Who wrote it and when, as far as that was kept.
    written: String,
    note: Opened,
}

#[derive(Template)]
#[template(path = "sessions/note.html")]
struct NotePage {
    frame: Frame,
    session: Uuid,
    /// `None` when the database did not answer: what was typed is shown all the same.
    context: Option<Context>,
    again: Again<NoteForm>,
}

impl NotePage {
    fn show(frame: Frame, session: Uuid, context: Option<Context>, again: Again<NoteForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, session, context, again })?).into_response())
    }
}

async fn context(tx: &mut Tx, app: &App, session: Uuid) -> Result<(Context, ClientKey), Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let when = When::in_practice(tx).await?.in_zone(&row.zone);
    let earlier = earlier(tx, &key, session, when).await?;
    let (zone, record) = (when.zone(&row.opened_at), row.client_number);
    Ok((Context { client: row.client_id, record, number: row.number, rehearsal: row.rehearsal, zone, earlier }, key))
}

/// The notes before the present one, the latest first; versions in which the note stayed the same are one.
async fn earlier(tx: &mut Tx, key: &ClientKey, session: Uuid, when: When) -> Result<Vec<Earlier>, Error> {
    let mut notes: Vec<Earlier> = Vec::new();
    for row in queries::versions(tx, session).await? {
        let note = words::words_at(tx, key, session, row.version).await?.ok_or(Error::NotFound)?.note;
        let at = row.at.map_or_else(|| "Before times were kept".to_owned(), |at| format!("{}, {}", when.day(&at), when.time(&at)));
        let written = row.by.map_or_else(|| at.clone(), |by| format!("{at}, {by}"));
        match notes.last_mut().filter(|last| last.note == note) {
            // It was written in the earliest of the versions that hold it.
            Some(last) => last.written = written,
            None => notes.push(Earlier { written, note }),
        }
    }
    Ok(notes.into_iter().skip(1).filter(|earlier| !earlier.note.is_empty()).collect())
}

fn form(words: &Words, version: i32) -> NoteForm {
    NoteForm { note: words.note.reveal().to_owned(), version: version.to_string() }
}

/// `GET /sessions/{session}/note`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Id(session): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.note.view").object(session)).await?;
    let (context, key) = context(&mut tx, &app, session).await?;
    let (words, version) = words::words(&mut tx, &key, session).await?;
    tx.commit().await?;
    // They are sealed together: a form that showed one of them would replace them all.
    NotePage::show(frame, session, Some(context), Again::first(form(&words.whole()?, version)))
}

/// `POST /sessions/{session}/note`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Id(session): Id,
    Keyed(once, typed): Keyed<NoteForm>,
) -> Result<Response, Error> {
    let mut known = None;
    let tried = try_save(&app, &member, session, &once, &typed, &mut known).await;
    answer(typed, tried, |again| NotePage::show(frame, session, known, again))
}

async fn try_save(
    app: &App,
    member: &Member,
    session: Uuid,
    once: &Once,
    typed: &NoteForm,
    known: &mut Option<Context>,
) -> Result<SaveOutcome<NoteForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("session.note.save").object(session), once).await?;
    let (context, key) = context(&mut tx, app, session).await?;
    *known = Some(context);
    let mut problems = Problems::default();
    let note = Private::new(problems.text("note", &typed.note, MOST, Need::Optional, Lines::Many));
    if !problems.none() {
        return Ok(SaveOutcome::Refused(problems));
    }
    let (words, version) = words::locked_words(&mut tx, &key, session).await?;
    let mut words = words.whole()?;
    let Some(before) = words::seen(&mut tx, &key, session, &typed.version).await? else {
        return Ok(SaveOutcome::Changed(Box::new(form(&words, version))));
    };
    match words::merged(note, &before.note, &words.note) {
        Some(note) => words.note = note,
        None => return Ok(SaveOutcome::Changed(Box::new(form(&words, version)))),
    }
    words::add_version(&mut tx, app, &key, session, &words, version + 1).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/sessions/{session}#note")).await?))
}
