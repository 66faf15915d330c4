//! The closing checklist.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use uuid::Uuid;

use super::close::close_in;
use super::close_choices::{Choice, EFFECTS, KINDS, STATES};
use super::close_context::{Context, context};
use super::close_form::{ClosingForm, was};
use super::close_known::Settled;
use super::close_read::read;
use super::draft;
use super::queries;
use super::words::{self, Words};
use crate::course::BECAUSE;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes::ClosingKind;
use crate::platform::forms::{Again, Id, Keyed, Problems, SaveOutcome, answer};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

/// Above the form when what was written before does not open. Its version stays beside the one that closing adds.
const WORDS_DO_NOT_OPEN: &str = "What was written about this session before does not open, so its fields are empty here. It stays in the \
    record as it is, and the session can be closed. Tell the administrator.";

const CLOSED_MEANWHILE: &str =
    "Not saved: this session was closed meanwhile. What you typed is still here; add what is missing to the note.";

#[derive(Template)]
#[template(path = "sessions/close.html")]
struct ClosePage {
    frame: Frame,
    session: Uuid,
    /// `None` when the database did not answer: what was typed is shown all the same.
    context: Option<Context>,
    again: Again<ClosingForm>,
}

impl ClosePage {
    fn kinds(&self) -> Vec<Choice> {
        self.context.as_ref().map_or_else(|| KINDS.to_vec(), Context::kinds)
    }

    /// What the record says, beside the choice; nothing is chosen by it.
    fn proposed(&self) -> String {
        self.context
            .as_ref()
            .map(|context| format!("By the record so far: {}. You decide.", context.proposed().words()))
            .unwrap_or_default()
    }

    fn becauses(&self) -> Vec<Choice> {
        [("", "Not called complete, or nothing is open")].into_iter().chain(BECAUSE).collect()
    }

    /// What the target's end asks for, and how far it is.
    fn asked(&self) -> Vec<(&'static str, String)> {
        let asked = self.context.as_ref().map(Context::asked).unwrap_or_default();
        asked.into_iter().map(|(name, words, _)| (name, words)).collect()
    }

    /// Where the session was left: when anything was written down last.
    fn left(&self) -> Option<String> {
        self.context.as_ref().and_then(Context::left)
    }

    /// When a call afterwards is agreed, and within which hours.
    fn calls(&self) -> String {
        let Some(Context { calls, .. }) = &self.context else { return String::new() };
        let whatever = calls.words(ClosingKind::NoReprocessing, false);
        if whatever.is_empty() {
            let first = if calls.first { "After this first reprocessing" } else { "After an incomplete closing" };
            format!("{first}, or where they do not leave steady, a call is due {} to {} hours from now.", calls.from, calls.until)
        } else {
            whatever
        }
    }

    fn effects(&self) -> &'static [Choice] {
        &EFFECTS
    }

    fn states(&self) -> &'static [Choice] {
        &STATES
    }

    fn settled_before(&self) -> Option<&Settled> {
        self.context.as_ref().and_then(|context| context.known.settled.as_ref())
    }

    fn show(frame: Frame, session: Uuid, context: Option<Context>, again: Again<ClosingForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, session, context, again })?).into_response())
    }
}

/// Who asked for the closing: it is answered in their way.
#[derive(Clone, Copy)]
pub(super) enum Asker {
    /// A page: on to the session's.
    Page,
    /// The desk's script.
    Desk,
}

/// The form as it begins: what was typed so far, else what stands in the record already.
pub(super) fn prefilled(words: &Words, version: i32, context: &Context, typed: Option<ClosingForm>) -> ClosingForm {
    let begun = ClosingForm::begun(words, version, context.target.as_ref());
    match typed {
        // It keeps the version it was typed against, so that what was written meanwhile is not replaced unseen.
        Some(typed) => ClosingForm { target_was: begun.target_was, ..typed },
        None if context.turned => ClosingForm { kind: ClosingKind::NoReprocessing.name().to_owned(), ..begun },
        None => begun,
    }
}

/// `GET /sessions/{session}/close`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Id(session): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let (context, key) = context(&mut tx, &app, session, &row).await?;
    let (words, version) = words::words(&mut tx, &key, session).await?;
    let (typed, _) = draft::draft(&mut tx, &key, session).await?;
    tx.commit().await?;
    if context.ended {
        return Ok(Redirect::to(&format!("/sessions/{session}")).into_response());
    }
    let notice = if words.clone().whole().is_ok() { "" } else { WORDS_DO_NOT_OPEN };
    let typed = prefilled(&words.readable(), version, &context, typed);
    ClosePage::show(frame, session, Some(context), Again { notice, ..Again::first(typed) })
}

/// `POST /sessions/{session}/close`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Id(session): Id,
    Keyed(once, typed): Keyed<ClosingForm>,
) -> Result<Response, Error> {
    let mut known = None;
    let tried = try_close(&app, &member, session, (&once, Asker::Page), &typed, &mut known).await;
    answer(typed, tried, |again| ClosePage::show(frame, session, known, again))
}

/// Closes `session` as typed, if that can be; what there was to be known is left in `known`.
pub(super) async fn try_close(
    app: &App,
    member: &Member,
    session: Uuid,
    (once, asker): (&Once, Asker),
    typed: &ClosingForm,
    known: &mut Option<Context>,
) -> Result<SaveOutcome<ClosingForm>, Error> {
    // Told whatever becomes of the commit: the room reads the record for itself.
    let _told = app.bell.follows(session);
    let mut tx = app.database.act_once(&member.subject, Act::new("session.close").object(session), once).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let (context, key) = context(&mut tx, app, session, &row).await?;
    let context = known.insert(context);
    if context.ended {
        return Ok(SaveOutcome::TooLate(CLOSED_MEANWHILE));
    }
    let mut problems = Problems::default();
    let closing = read(typed, context, &mut problems);
    let Some(mut closing) = closing.filter(|_| problems.none()) else { return Ok(SaveOutcome::Refused(problems)) };
    let (words, version) = words::locked_words(&mut tx, &key, session).await?;
    let words = words.readable();
    let target = context.target.as_ref();
    let changed = || Ok(SaveOutcome::Changed(Box::new(typed.with(&words, version, target))));
    if typed.target_was != was(target) {
        return changed();
    }
    let Some(before) = words::seen(&mut tx, &key, session, &typed.version).await? else { return changed() };
    match words::merged(closing.note, &before.note, &words.note) {
        Some(note) => closing.note = note,
        None => return changed(),
    }
    close_in(&mut tx, app, session, &row, closing).await?;
    let (typed, at) = draft::draft(&mut tx, &key, session).await?;
    if typed.is_some() {
        draft::keep(&mut tx, app, &key, session, None, at).await?;
    }
    Ok(SaveOutcome::Saved(match asker {
        Asker::Page => tx.saved(format!("/sessions/{session}")).await?,
        Asker::Desk => tx.commit(Answer::Json(serde_json::json!({ "closed": true }))).await?,
    }))
}
