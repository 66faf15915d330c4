//! What the clinician writes down beside the sets: kept once, append-only, and only called kept once
//! it is.

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use chrono::{DateTime, SecondsFormat, Utc};
use leeward_core::wire::{Entry, Moment, Saved};
use uuid::Uuid;

use super::entry::{Checked, What, check};
use super::queries::{self, SessionRow};
use super::queries_entries::{self, EntryContext};
use crate::clients;
use crate::course;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::forms::{Id, Problems};
use crate::store::error::Error;
use crate::store::seal::Field;
use crate::store::subject::{Act, Tx};

/// Sealed words of an entry never change: a correction is a row of its own.
pub(super) const ONLY_VERSION: i32 = 1;

/// Keeps `entry` in `session`, at the time of the app's clock. Sent again under the same id it is
/// not kept again, and the answer is the same. Nothing is in the record before `tx` is committed.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat this session's client; the inner `Err` holds
/// what is wrong with the entry, beside the names of its fields.
pub async fn save_entry(tx: &mut Tx, app: &App, session: Uuid, entry: &Entry) -> Result<Result<Saved, Problems>, Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    if let Some(kept) = saved_before(tx, session, &entry.id).await? {
        return Ok(Ok(kept));
    }
    let checked = match check(tx, session, entry).await? {
        Ok(checked) => checked,
        Err(problems) => return Ok(Err(problems)),
    };
    let now = app.world.now();
    if write(tx, app, session, &row, &checked, now).await? {
        return Ok(Ok(saved(checked.id, now)));
    }
    // Another request was quicker: with this very entry, or with another correction of the same one.
    Ok(saved_before(tx, session, &entry.id).await?.ok_or_else(|| {
        let mut problems = Problems::default();
        problems.add("id", "This entry's id or what it corrects has been used meanwhile. Reload the log, then enter it anew.");
        problems
    }))
}

async fn write(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow, entry: &Checked, now: DateTime<Utc>) -> Result<bool, Error> {
    let moment = codes::read(&entry.moment, "rating.moment")?;
    let target = match entry.set {
        // The session may have turned to another target since that set.
        Some(set) if moment != Moment::Reevaluation => queries::target_of_set(tx, set).await?,
        _ => rated_target(tx, row, moment).await?,
    };
    let place = EntryContext { session, client: row.client_id, target };
    let sealed = match &entry.what {
        What::Rating { .. } => return rate(tx, &place, entry, now).await,
        What::Opening { .. } => return Ok(queries_entries::add_opening(tx, &place, entry, now).await?),
        What::Fact { .. } => return say(tx, &place, entry, now).await,
        What::Reach { .. } => return Ok(queries_entries::add_reach(tx, &place, entry, now).await?),
        What::Unmeasured { .. } => return Ok(queries_entries::add_unmeasured(tx, &place, entry, now).await?),
        What::Words { words: None } => None,
        What::Words { words: Some(words) } => {
            let key = clients::key(tx, app, row.client_id).await?;
            Some(key.row(entry.id, ONLY_VERSION).seal(&app.world, Field::ProcessWords, words)?)
        }
    };
    Ok(queries_entries::add_note(tx, &place, entry, sealed, now).await?)
}

/// A rating moves its target: a correction that of what it corrects, wherever that was asked.
async fn rate(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> Result<bool, Error> {
    let Some(target) = queries_entries::add_rating(tx, place, entry, now).await? else { return Ok(false) };
    if let Some(target) = target {
        course::fold(tx, target).await?;
    }
    Ok(true)
}

/// What is said of a target moves it: a correction the one that it was said of.
async fn say(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> Result<bool, Error> {
    let Some(target) = queries_entries::add_fact(tx, place, entry, now).await? else { return Ok(false) };
    if let Some(target) = target {
        course::fold(tx, target).await?;
    }
    Ok(true)
}

/// A re-evaluation is of the target that was worked on last, which may not be this session's; every
/// other rating is of this session's.
pub(super) async fn rated_target(tx: &mut Tx, row: &SessionRow, moment: Moment) -> Result<Option<Uuid>, Error> {
    if moment != Moment::Reevaluation {
        return Ok(row.target_id);
    }
    Ok(queries::target_before(tx, row.client_id, row.number).await?.or(row.target_id))
}

async fn saved_before(tx: &mut Tx, session: Uuid, id: &str) -> Result<Option<Saved>, Error> {
    let Ok(id) = Uuid::try_parse(id) else { return Ok(None) };
    Ok(queries_entries::kept_at(tx, session, id).await?.map(|at| saved(id, at)))
}

fn saved(id: Uuid, at: DateTime<Utc>) -> Saved {
    Saved { id: id.to_string(), at: stamp(at) }
}

/// RFC 3339 in UTC, to the millisecond: the database keeps less than the clock knows.
pub(super) fn stamp(at: DateTime<Utc>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Millis, true)
}

/// `POST /sessions/{session}/entries`
pub(super) async fn post(State(app): State<App>, member: Member, Id(session): Id, body: Bytes) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("entry.keep").object(session)).await?;
    // Who may not write here learns nothing about what could be read from the body.
    queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let value: serde_json::Value = serde_json::from_slice(&body).map_err(|_| Error::BadRequest("Send one entry as JSON."))?;
    let entry: Entry = match serde_json::from_value(value) {
        Ok(entry) => entry,
        Err(fault) => return Ok(refuse(&unreadable(&fault))),
    };
    // What the opening found, and what was rated, may hold a start or let it go.
    let _told = app.bell.follows(session);
    match save_entry(&mut tx, &app, session, &entry).await? {
        Ok(kept) => {
            tx.commit().await?;
            Ok(Json(kept).into_response())
        }
        Err(problems) => Ok(refuse(&problems)),
    }
}

/// The fault names fields and types of the wire, not what was typed into them, except for numbers.
fn unreadable(fault: &serde_json::Error) -> Problems {
    let mut problems = Problems::default();
    let text = fault.to_string();
    if text.contains("invalid value: integer") || text.contains("floating point") {
        problems.add("value", "A rating is a whole number: SUD 0 to 10, VOC 1 to 7.");
    } else {
        problems.add("entry", "This is not an entry as this version knows it. Reload the page, then enter it anew.");
    }
    problems
}

fn refuse(problems: &Problems) -> Response {
    (StatusCode::UNPROCESSABLE_ENTITY, Json(serde_json::json!({ "errors": problems }))).into_response()
}
