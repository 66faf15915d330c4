//! The closing checklist.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::course::{Course, Procedure};
use serde::Deserialize;
use uuid::Uuid;

use super::close::close_in;
use super::close_choices::{Choice, EFFECTS, KINDS, STATES};
use super::close_known::{Known, Settled, known};
use super::close_read::read;
use super::queries::{self, SessionRow};
use super::words::{self, Words};
use crate::clients;
use crate::course::{self, BECAUSE};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Again, Fields, Id, Keyed, Problems, SaveOutcome, answer};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::ClientKey;
use crate::store::subject::{Act, Tx};
use crate::targets::{self, Target};

/// Above the form when what was written before does not open. Its version stays beside the one that closing adds.
const WORDS_DO_NOT_OPEN: &str = "What was written about this session before does not open, so its fields are empty here. It stays in the \
    record as it is, and the session can be closed. Tell the administrator.";

const CLOSED_MEANWHILE: &str =
    "Not saved: this session was closed meanwhile. What you typed is still here; add what is missing to the note.";

/// The form as it was typed.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub(super) struct ClosingForm {
    pub(super) kind: String,
    pub(super) because: String,
    pub(super) resource: String,
    pub(super) effect: String,
    pub(super) state: String,
    pub(super) state_more: String,
    pub(super) companion: String,
    pub(super) next_contact: String,
    pub(super) sud: String,
    pub(super) client_words: String,
    pub(super) note: String,
    /// The version of the session's words that the form started from.
    version: String,
    /// How the target stood that the form showed.
    target_was: String,
}

impl Fields for ClosingForm {
    const LABELS: &'static [Choice] = &[
        ("kind", "How far the session came"),
        ("target_was", "How the target stands"),
        ("because", "Why it is complete all the same"),
        ("sud", "Closing SUD"),
        ("resource", "What was used"),
        ("effect", "Its effect"),
        ("state", "The client on leaving"),
        ("state_more", "More about that state"),
        ("companion", "Who is with the client now"),
        ("next_contact", "Next contact"),
        ("client_words", "Last words on the client\u{2019}s page"),
        ("note", "Note"),
    ];

    fn shown(&self, name: &str) -> String {
        let text = |choices: &[Choice], typed: &str| {
            choices.iter().find(|(name, _)| *name == typed).map_or_else(|| typed.to_owned(), |(_, words)| (*words).to_owned())
        };
        match name {
            "kind" => text(&*KINDS, &self.kind),
            "target_was" => self.target_was.clone(),
            "because" => text(&BECAUSE, &self.because),
            "resource" => self.resource.clone(),
            "effect" => text(&EFFECTS, &self.effect),
            "sud" => self.sud.clone(),
            "state" => text(&STATES, &self.state),
            "state_more" => self.state_more.clone(),
            "companion" => self.companion.clone(),
            "next_contact" => self.next_contact.clone(),
            "client_words" => self.client_words.clone(),
            _ => self.note.clone(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

impl ClosingForm {
    /// What stands in the record already: nothing of a closing, perhaps a note.
    fn begun(words: &Words, version: i32, target: Option<&Target>) -> Self {
        Self {
            note: words.note.reveal().to_owned(),
            client_words: words.client_words.reveal().to_owned(),
            version: version.to_string(),
            target_was: was(target),
            ..Self::default()
        }
    }

    /// The same form with what the record holds of it now.
    fn with(&self, words: &Words, version: i32, target: Option<&Target>) -> Self {
        let Self { note, client_words, version, target_was, .. } = Self::begun(words, version, target);
        Self { note, client_words, version, target_was, ..self.clone() }
    }
}

fn was(target: Option<&Target>) -> String {
    target.map(|target| target.stands().to_owned()).unwrap_or_default()
}

/// What the form shows about its session.
pub(super) struct Context {
    client: Uuid,
    /// The number of the client's record, and that of the session in it.
    record: i32,
    number: i32,
    pub(super) target: Option<Target>,
    /// What that target's end asks for.
    pub(super) course: Course,
    known: Known,
    ended: bool,
    /// The client was let in, so that something took place.
    pub(super) began: bool,
    rehearsal: bool,
}

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
    /// How far it can have come: only what has a target is complete, and restricted work is reduced instead.
    fn kinds(&self) -> Vec<Choice> {
        let restricted = self
            .context
            .as_ref()
            .map(|context| context.target.is_some().then_some(context.course.known.procedure == Procedure::Restricted));
        let offered = |name: &str| match (name, restricted) {
            ("complete", Some(restricted)) => restricted == Some(false),
            ("reduced", Some(restricted)) => restricted == Some(true),
            ("did_not_attend" | "by_mistake", _) => !self.context.as_ref().is_some_and(|context| context.began),
            _ => true,
        };
        KINDS.iter().copied().filter(|(name, _)| offered(name)).collect()
    }

    fn becauses(&self) -> Vec<Choice> {
        [("", "Not called complete, or nothing is open")].into_iter().chain(BECAUSE).collect()
    }

    /// What the target's end asks for, and how far it is.
    fn asked(&self) -> Vec<(&'static str, String)> {
        let Some(context) = self.context.as_ref().filter(|context| context.target.is_some()) else { return vec![] };
        let open = context.course.open();
        let line = |end| {
            let (name, wanted) = course::end_words(end);
            let there = course::reached_words(end, &context.course);
            (name, if open.contains(&end) { format!("Open: {there}. Asked for: {wanted}") } else { format!("Reached: {there}") })
        };
        context.course.asks().iter().copied().map(line).collect()
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

async fn context(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow) -> Result<(Context, ClientKey), Error> {
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let target = match row.target_id {
        Some(target) => Some(targets::find(tx, app, target).await?),
        None => None,
    };
    let course = match row.target_id {
        Some(target) => course::of(tx, target).await?,
        None => Course::default(),
    };
    let known = known(tx, &key, session, row, target.as_ref()).await?;
    let context = Context {
        client: row.client_id,
        record: row.client_number,
        number: row.number,
        target,
        course,
        known,
        ended: row.ended_at.is_some(),
        began: row.admitted_at.is_some(),
        rehearsal: row.rehearsal,
    };
    Ok((context, key))
}

/// `GET /sessions/{session}/close`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Id(session): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let (context, key) = context(&mut tx, &app, session, &row).await?;
    let (words, version) = words::words(&mut tx, &key, session).await?;
    tx.commit().await?;
    if context.ended {
        return Ok(Redirect::to(&format!("/sessions/{session}")).into_response());
    }
    let notice = if words.clone().whole().is_ok() { "" } else { WORDS_DO_NOT_OPEN };
    let typed = ClosingForm::begun(&words.readable(), version, context.target.as_ref());
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
    let tried = try_close(&app, &member, session, &once, &typed, &mut known).await;
    answer(typed, tried, |again| ClosePage::show(frame, session, known, again))
}

async fn try_close(
    app: &App,
    member: &Member,
    session: Uuid,
    once: &Once,
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
    Ok(SaveOutcome::Saved(tx.saved(format!("/sessions/{session}")).await?))
}
