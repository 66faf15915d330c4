//! The closing checklist.

use askama::Template;
use axum::Form;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::scale::Sud;
use serde::Deserialize;
use uuid::Uuid;

use super::close::{Closing, ClosingKind, close};
use super::queries;
use crate::app::App;
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
    ("complete", "Complete: the target was worked through"),
    ("incomplete", "Incomplete: begun, and set aside for now"),
    ("no_reprocessing", "No reprocessing took place"),
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
const STATUSES: [(Status, &str); 5] = [
    (Status::Planned, "planned: not begun"),
    (Status::Active, "active: work goes on"),
    (Status::Incomplete, "incomplete: begun, set aside"),
    (Status::Complete, "complete"),
    (Status::Reopened, "reopened: was complete, came up again"),
];

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

#[derive(Template)]
#[template(path = "sessions/close.html")]
struct ClosePage {
    frame: Frame,
    session: Uuid,
    number: i32,
    target: Option<Target>,
    typed: Typed,
    problems: Problems,
    closed_meanwhile: bool,
    kinds: &'static [Choice],
    effects: &'static [Choice],
    states: &'static [Choice],
    statuses: &'static [(Status, &'static str)],
}

/// Loads what the form shows beside the fields; `None` when the session is closed already.
async fn form(app: &App, member: &Member, frame: Frame, session: Uuid) -> Result<(ClosePage, bool), Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let target = match row.target_id {
        Some(target) => Some(targets::find(&mut tx, app, target).await?),
        None => None,
    };
    tx.commit().await?;
    let form = ClosePage {
        frame,
        session,
        number: row.number,
        target,
        typed: Typed::default(),
        problems: Problems::default(),
        closed_meanwhile: false,
        kinds: &KINDS,
        effects: &EFFECTS,
        states: &STATES,
        statuses: &STATUSES,
    };
    Ok((form, row.ended_at.is_some()))
}

/// `GET /sessions/{session}/close`
pub(super) async fn get(State(app): State<App>, member: Member, frame: Frame, Path(session): Path<Uuid>) -> Result<Response, Error> {
    let (form, ended) = form(&app, &member, frame, session).await?;
    if ended {
        return Ok(Redirect::to(&format!("/sessions/{session}")).into_response());
    }
    Ok(page(&form)?.into_response())
}

/// `POST /sessions/{session}/close`
pub(super) async fn post(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Path(session): Path<Uuid>,
    Form(typed): Form<Typed>,
) -> Result<Response, Error> {
    let (mut form, ended) = form(&app, &member, frame, session).await?;
    form.typed = typed;
    form.closed_meanwhile = ended;
    let closing = read(&form.typed, form.target.is_some(), &mut form.problems);
    let Some(closing) = closing.filter(|_| form.problems.none() && !ended) else {
        let status = if ended { StatusCode::CONFLICT } else { StatusCode::UNPROCESSABLE_ENTITY };
        return Ok((status, page(&form)?).into_response());
    };
    close(&app, &member.subject, session, closing).await?;
    Ok(Redirect::to(&format!("/sessions/{session}")).into_response())
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
