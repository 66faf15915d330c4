//! The closing checklist.

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::scale::{Sud, Voc};
use serde::Deserialize;
use uuid::Uuid;

use super::close::{Closing, ClosingKind, close};
use super::queries;
use crate::app::App;
use crate::clients::{Id, Sent, list, notice};
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::page::{Frame, page};
use crate::seal::Private;
use crate::signin::Member;
use crate::subject::Act;
use crate::targets::{self, Status, Target};

/// Choices in words: the name in the form, and what the record says.
type Choice = (&'static str, &'static str);

const KINDS: [Choice; 3] = [
    (ClosingKind::Complete.name(), "Complete: the target was worked through"),
    (ClosingKind::Incomplete.name(), "Incomplete: begun, and set aside for now"),
    (ClosingKind::NoReprocessing.name(), "No reprocessing took place"),
];
const EFFECTS: [Choice; 4] = [
    ("settled", "Settled after it"),
    ("partly", "Partly settled after it"),
    ("no_change", "No change after it"),
    ("not_needed", "Nothing was needed"),
];
const STATES: [Choice; 5] = [
    ("calm", "Calm, knows where and when they are"),
    ("tired", "Tired or tearful, knows where and when they are"),
    ("unsettled", "Still unsettled, safe to leave, plan agreed"),
    ("in_contact", "Not settled: we stay in contact, see the note"),
    ("left", "Left, or the link was lost, before this could be seen"),
];
const STATUSES: [Choice; 5] = [
    (Status::Planned.name(), "Planned: not begun"),
    (Status::Active.name(), "Active: work goes on"),
    (Status::Incomplete.name(), "Incomplete: begun, set aside for now"),
    (Status::Complete.name(), "Complete"),
    (Status::Reopened.name(), "Reopened: was complete, came up again"),
];
const LABELS: [Choice; 11] = [
    ("kind", "How far the session came"),
    ("target_status", "Where the target stands now"),
    ("resource", "What was used"),
    ("effect", "Its effect"),
    ("sud", "Closing SUD"),
    ("state", "The client on leaving"),
    ("state_more", "More about that state"),
    ("companion", "Who is with the client now"),
    ("next_contact", "Next contact"),
    ("client_words", "Last words on the client\u{2019}s page"),
    ("note", "Note"),
];
const CLOSED_MEANWHILE: &str =
    "Not saved: this session was closed meanwhile. What you typed is still here; add what is missing to the note.";

/// The form as it was typed.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub(super) struct Typed {
    kind: String,
    target_status: String,
    resource: String,
    effect: String,
    state: String,
    state_more: String,
    companion: String,
    next_contact: String,
    sud: String,
    client_words: String,
    note: String,
}

/// What the form shows about its session.
struct Context {
    client: Uuid,
    number: i32,
    target: Option<Target>,
    ended: bool,
    rehearsal: bool,
}

#[derive(Template)]
#[template(path = "sessions/close.html")]
struct ClosePage {
    frame: Frame,
    session: Uuid,
    /// `None` when the database did not answer: what was typed is shown all the same.
    context: Option<Context>,
    typed: Typed,
    problems: Problems,
    notice: &'static str,
}

impl ClosePage {
    fn kinds(&self) -> &'static [Choice] {
        &KINDS
    }

    fn effects(&self) -> &'static [Choice] {
        &EFFECTS
    }

    fn states(&self) -> &'static [Choice] {
        &STATES
    }

    fn statuses(&self) -> &'static [Choice] {
        &STATUSES
    }

    fn target_hint(&self, target: &Target) -> String {
        let rated = |value: Option<u8>| value.map_or_else(|| "not asked".to_owned(), |value| value.to_string());
        format!(
            "{}: now {}, last SUD {}, last VOC {}. A target is usually called complete at SUD 0 (or 1, with its reason in the note), VOC 7 and a clear \
             body scan. You decide.",
            target.words.label.shown(),
            target.status.name(),
            rated(target.latest_sud.map(Sud::get)),
            rated(target.latest_voc.map(Voc::get)),
        )
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list(&LABELS, &self.problems)
    }

    fn answer(&self, status: StatusCode) -> Result<Response, Error> {
        Ok((status, page(self)?).into_response())
    }
}

async fn context(app: &App, member: &Member, session: Uuid) -> Result<Context, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let target = match row.target_id {
        Some(target) => Some(targets::find(&mut tx, app, target).await?),
        None => None,
    };
    tx.commit().await?;
    Ok(Context { client: row.client_id, number: row.number, target, ended: row.ended_at.is_some(), rehearsal: row.rehearsal })
}

/// `GET /sessions/{session}/close`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Id(session): Id) -> Result<Response, Error> {
    let context = context(&app, &member, session).await?;
    if context.ended {
        return Ok(Redirect::to(&format!("/sessions/{session}")).into_response());
    }
    let (typed, problems) = (Typed::default(), Problems::default());
    ClosePage { frame, session, context: Some(context), typed, problems, notice: "" }.answer(StatusCode::OK)
}

/// `POST /sessions/{session}/close`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Id(session): Id,
    Sent(typed): Sent<Typed>,
) -> Result<Response, Error> {
    let mut form = ClosePage { frame, session, context: None, typed, problems: Problems::default(), notice: "" };
    match try_close(&app, &member, &mut form).await {
        Ok(None) => Ok(Redirect::to(&format!("/sessions/{session}")).into_response()),
        Ok(Some(status)) => form.answer(status),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a session was not closed");
            form.notice = notice::unsaved(&fault);
            form.answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

/// `None`: it is closed. Otherwise the form says why it is not.
async fn try_close(app: &App, member: &Member, form: &mut ClosePage) -> Result<Option<StatusCode>, Error> {
    let context = form.context.insert(context(app, member, form.session).await?);
    if context.ended {
        form.notice = CLOSED_MEANWHILE;
        return Ok(Some(StatusCode::CONFLICT));
    }
    let closing = read(&form.typed, context.target.is_some(), &mut form.problems);
    let Some(closing) = closing.filter(|_| form.problems.none()) else {
        form.notice = notice::LOOK;
        return Ok(Some(StatusCode::UNPROCESSABLE_ENTITY));
    };
    match close(app, &member.subject, form.session, closing).await {
        Err(Error::Conflict(_)) => {
            context.ended = true;
            form.notice = CLOSED_MEANWHILE;
            Ok(Some(StatusCode::CONFLICT))
        }
        done => done.map(|()| None),
    }
}

fn read(typed: &Typed, has_target: bool, problems: &mut Problems) -> Option<Closing> {
    let kind = problems.choice("kind", &typed.kind, ClosingKind::parse);
    let target_status = if has_target { problems.choice("target_status", &typed.target_status, Status::parse) } else { None };
    if kind == Some(ClosingKind::Incomplete) && target_status == Some(Status::Complete) {
        problems.add("target_status", "The session closes as incomplete, so its target is not complete. Change one of the two.");
    }
    let leaving_state = state(typed, problems);
    let resource = settled(typed, problems);
    let mut line = |name, typed: &str, need| Private::new(problems.text(name, typed, 200, need, Lines::One));
    let companion = line("companion", &typed.companion, Need::Required);
    let next_contact = line("next_contact", &typed.next_contact, Need::Required);
    let client_words = Private::new(problems.text("client_words", &typed.client_words, 500, Need::Optional, Lines::Many));
    let note = Private::new(problems.text("note", &typed.note, super::note::MOST, Need::Optional, Lines::Many));
    let sud = sud(typed, problems);
    Some(Closing { kind: kind?, target_status, resource, leaving_state, companion, next_contact, client_words, note, sud })
}

fn choose(problems: &mut Problems, name: &'static str, typed: &str, from: &[Choice]) -> &'static str {
    problems.choice(name, typed, |typed| from.iter().find(|(name, _)| *name == typed)).map_or("", |(_, words)| *words)
}

fn state(typed: &Typed, problems: &mut Problems) -> Private {
    let state = choose(problems, "state", &typed.state, &STATES);
    let more = problems.text("state_more", &typed.state_more, 200, Need::Optional, Lines::One);
    Private::new(if more.is_empty() { state.to_owned() } else { format!("{state}. {more}") })
}

fn settled(typed: &Typed, problems: &mut Problems) -> Private {
    let effect = choose(problems, "effect", &typed.effect, &EFFECTS);
    let need = if typed.effect == "not_needed" { Need::Optional } else { Need::Required };
    let used = problems.text("resource", &typed.resource, 300, need, Lines::One);
    Private::new(if used.is_empty() { effect.to_owned() } else { format!("{used}. {effect}") })
}

fn sud(typed: &Typed, problems: &mut Problems) -> Option<Sud> {
    if typed.sud.trim().is_empty() {
        return None;
    }
    Sud::parse(&typed.sud).map_err(|fault| problems.add("sud", fault.to_string())).ok()
}
