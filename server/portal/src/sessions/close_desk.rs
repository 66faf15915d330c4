//! Closing from the desk in three short steps, with the client still there; and what was typed of it so far.

use std::collections::BTreeMap;

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use serde::Serialize;

use super::close_choices::{Choice, EFFECTS, STATES, UNSTEADY};
use super::close_context::{Context, context};
use super::close_form::ClosingForm;
use super::close_page::{Asker, prefilled, try_close};
use super::{draft, queries, words};
use crate::clients;
use crate::course::BECAUSE;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Id, SaveOutcome, differences};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::Act;

/// All that the panel needs.
#[derive(Serialize)]
struct AtDesk {
    kinds: Vec<Choice>,
    /// What the record says it is; the clinician confirms it or says otherwise.
    proposed: &'static str,
    becauses: [Choice; 6],
    effects: [Choice; 4],
    states: [Choice; 5],
    /// States after which somebody stays with them.
    unsteady: [&'static str; 3],
    /// What the target's end asks for: name, how far it is, whether it is open.
    asked: Vec<(&'static str, String, bool)>,
    /// What was used last time, and when.
    settled: Option<(String, String)>,
    /// How long ago anything was written down last, where the session was left: a sentence.
    left: Option<String>,
    /// Risk turned the hour: nothing is asked about settling, and the safety plan comes first.
    short: bool,
    /// Whom the client can call between sessions, in the practice's words.
    crisis: String,
    /// Of each kind: what is said of the call afterwards where they leave steady, and where they do not.
    calls: BTreeMap<&'static str, [String; 2]>,
    form: ClosingForm,
    draft: i32,
}

/// `GET /sessions/{session}/closing`
pub(super) async fn get(State(app): State<App>, member: Member, Id(session): Id) -> Result<Json<serde_json::Value>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let (context, key) = context(&mut tx, &app, session, &row).await?;
    if context.ended {
        return Err(Error::Conflict("This session is closed already."));
    }
    let (words, version) = words::words(&mut tx, &key, session).await?;
    let (typed, at) = draft::draft(&mut tx, &key, session).await?;
    tx.commit().await?;
    let form = prefilled(&words.readable(), version, &context, typed);
    let value = serde_json::to_value(at_desk(&context, form, at)).map_err(|fault| Error::Inner(format!("a closing: {fault}")))?;
    Ok(Json(value))
}

fn at_desk(context: &Context, form: ClosingForm, draft: i32) -> AtDesk {
    AtDesk {
        kinds: context.kinds(),
        proposed: context.proposed().name(),
        becauses: BECAUSE,
        effects: EFFECTS,
        states: STATES,
        unsteady: UNSTEADY,
        asked: context.asked(),
        settled: context.known.settled.as_ref().map(|settled| (settled.when.clone(), settled.used.reveal().to_owned())),
        left: context.left(),
        short: context.turned,
        crisis: context.crisis.clone(),
        calls: context.call_words(),
        form,
        draft,
    }
}

/// `POST /sessions/{session}/closing`: closes it, or says what is wrong by field.
pub(super) async fn post(State(app): State<App>, member: Member, Id(session): Id, once: Once, body: Bytes) -> Result<Response, Error> {
    let typed = read(&body)?;
    let mut known = None;
    match try_close(&app, &member, session, (&once, Asker::Desk), &typed, &mut known).await? {
        SaveOutcome::Saved(answer) => Ok(answer.into_response()),
        SaveOutcome::Refused(problems) => {
            Ok((StatusCode::UNPROCESSABLE_ENTITY, Json(serde_json::json!({ "errors": problems }))).into_response())
        }
        SaveOutcome::Changed(now) => {
            let errors = differences(&typed, &now);
            Ok((StatusCode::CONFLICT, Json(serde_json::json!({ "errors": errors, "version": now.version, "target_was": now.target_was })))
                .into_response())
        }
        SaveOutcome::TooLate(why) => Err(Error::Conflict(why)),
    }
}

/// What a page sends of a draft.
#[derive(serde::Deserialize)]
struct Typed {
    form: ClosingForm,
    draft: i32,
}

/// `POST /sessions/{session}/closing/draft`: keeps what was typed so far, and answers its version.
pub(super) async fn keep(State(app): State<App>, member: Member, Id(session): Id, body: Bytes) -> Result<Json<serde_json::Value>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.draft").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let Typed { form, draft: at } = serde_json::from_slice(&body).map_err(|_| UNREADABLE)?;
    if row.ended_at.is_some() {
        return Err(Error::Conflict("This session is closed already, so there is nothing more to type."));
    }
    let key = clients::key(&mut tx, &app, row.client_id).await?;
    let version = draft::keep(&mut tx, &app, &key, session, Some(&form), at).await?;
    let version = version.ok_or(Error::Conflict("This closing is being typed in another window too. Go on in one of them."))?;
    tx.commit().await?;
    Ok(Json(serde_json::json!({ "draft": version })))
}

const UNREADABLE: Error = Error::BadRequest("Send one closing as JSON.");

fn read(body: &Bytes) -> Result<ClosingForm, Error> {
    serde_json::from_slice(body).map_err(|_| UNREADABLE)
}
