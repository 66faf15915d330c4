//! All that the desk's log shows, to fill it after a reload.

use axum::Json;
use axum::extract::State;
use leeward_core::course::{Course, Hour, Phase, Procedure, phase as course_phase};
use leeward_core::wire::{Asks, Entry, EntryValue, LogSet, Moment, SavedEntry, SessionLog};
use serde::de::DeserializeOwned;
use uuid::Uuid;

use super::entries::{ONLY_VERSION, rated_target, stamp};
use super::queries::SessionRow;
use super::queries_entries::{self, EntryRow};
use super::standing::Standing;
use super::{next, queries, sets, standing, steps};
use crate::clients;
use crate::course;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::forms::Id;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened};
use crate::store::subject::{Act, Tx};
use crate::targets;

/// The log of `session`, corrected and taken-back entries included.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat this session's client.
pub async fn log(tx: &mut Tx, app: &App, session: Uuid) -> Result<SessionLog, Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let sets = sets::of_session(tx, session).await?;
    let rows = queries_entries::entries(tx, session).await?;
    let start = steps::start(tx, session).await?;
    let standing = standing::standing(&rows, &key)?;
    let next = next::next(tx, &row, &sets, &standing, start).await?;
    let (phase, asks, procedure) = phase(tx, session, &row, &standing).await?;
    let entries = rows.into_iter().map(|row| entry(row, &key)).collect::<Result<_, _>>()?;
    let reevaluated = rated_target(tx, &row, Moment::Reevaluation).await?;
    let other_reevaluated = reevaluated != row.target_id;
    let reevaluates = match reevaluated {
        Some(target) => Some(targets::find(tx, app, target).await?.words.label.shown().to_owned()),
        None => None,
    };
    let opened_before = course::opened_before(tx, session).await?;
    let sets = sets.into_iter().map(log_set).collect();
    Ok(SessionLog { sets, entries, start, other_reevaluated, next, reevaluates, opened_before, phase, asks, procedure })
}

/// Where the hour stands, what the end of its target asks for, and how that is worked on. A rating that was asked at the close says that closing was begun.
async fn phase(tx: &mut Tx, session: Uuid, row: &SessionRow, entries: &[Standing]) -> Result<(Phase, Vec<Asks>, Option<Procedure>), Error> {
    let holds = course::holding(tx, session).await?;
    let target = match row.target_id {
        Some(target) => Some(course::of(tx, target).await?),
        None => None,
    };
    let closing = entries.iter().any(|entry| entry.moment == Moment::Closing);
    let now = course_phase(Hour { holds: &holds, course: target.as_ref(), closing, ended: row.ended_at.is_some() });
    let open = target.as_ref().map(Course::open).unwrap_or_default();
    let asked = target.as_ref().map(Course::asks).unwrap_or_default();
    let procedure = target.as_ref().map(|target| target.known.procedure);
    Ok((now, asked.iter().map(|end| Asks { end: *end, open: open.contains(end) }).collect(), procedure))
}

fn log_set(set: sets::Set) -> LogSet {
    LogSet { id: set.id.to_string(), number: set.number, plan: set.plan, cycles: set.shown.cycles, ending: set.ending }
}

fn entry(row: EntryRow, key: &ClientKey) -> Result<SavedEntry, Error> {
    let value = value(&row, key)?;
    let entry = Entry {
        id: row.id.to_string(),
        set: row.set_id.map(|id| id.to_string()),
        replaces: row.replaces.map(|id| id.to_string()),
        moment: codes::read(&row.moment, "rating.moment")?,
        segment: segment(&row)?,
        from_client: row.from_client,
        value,
    };
    Ok(SavedEntry { entry, at: stamp(row.at) })
}

/// Of which segment it is.
pub(super) fn segment(row: &EntryRow) -> Result<Option<u8>, Error> {
    row.segment.map(|segment| u8::try_from(segment).map_err(|_| Error::Inconsistent("rating.segment"))).transpose()
}

/// A kept rating as the wire has it.
pub(super) fn rating(value: i16) -> Result<u8, Error> {
    u8::try_from(value).map_err(|_| Error::Inconsistent("rating.value"))
}

pub(super) fn value(row: &EntryRow, key: &ClientKey) -> Result<EntryValue, Error> {
    Ok(match (row.scale.as_deref(), row.value, &row.change, &row.words) {
        (Some("sud"), Some(value), ..) => EntryValue::Sud { value: rating(value)? },
        (Some("voc"), Some(value), ..) => EntryValue::Voc { value: rating(value)? },
        (Some("answered"), ..) if row.opening.is_some() => EntryValue::Answered { answer: opening(row)?, again: row.again },
        (Some("passed"), ..) if row.opening.is_some() => EntryValue::Passed {
            matter: opening(row)?,
            because: codes::read(row.because.as_deref().unwrap_or_default(), "hour_fact.because")?,
        },
        (Some("time"), ..) if row.opening.is_some() => time(row)?,
        (Some("mark"), _, Some(code), _) => EntryValue::Change { change: codes::read(code, "fact.code")? },
        (Some("saw"), _, Some(code), _) => EntryValue::Saw { saw: codes::read(code, "fact.code")? },
        (Some("tried"), _, Some(code), _) => EntryValue::Tried { rung: codes::read(code, "fact.code")? },
        (Some("scan"), _, Some(code), _) => EntryValue::Scan { scan: codes::read(code, "fact.code")? },
        (Some("rehearsal"), _, Some(code), _) => EntryValue::Rehearsal { rehearsal: codes::read(code, "fact.code")? },
        (Some("fits"), _, Some(code), _) => EntryValue::Fits { scale: codes::read(code, "fact.code")? },
        (Some("belief"), _, Some(code), _) => EntryValue::Belief { belief: codes::read(code, "fact.code")? },
        (Some("too_much"), _, Some(_), _) => EntryValue::TooMuch,
        (Some("showed"), _, Some(code), _) => EntryValue::Showed { showed: codes::read(code, "fact.code")? },
        (Some("reach"), _, Some(code), _) => EntryValue::Reach { step: codes::read(code, "reach_step.step")? },
        (Some("unmeasured"), _, Some(code), _) => EntryValue::Unmeasured { way: codes::read(code, "unmeasured.way")? },
        (None, _, _, Some(words)) => match key.row(row.id, ONLY_VERSION).open(Field::ProcessWords, words) {
            Opened::Text(words) => EntryValue::Words { words: words.reveal().to_owned() },
            Opened::Unreadable => EntryValue::Unreadable,
        },
        _ => EntryValue::TakenBack,
    })
}

fn time(row: &EntryRow) -> Result<EntryValue, Error> {
    let parts = row.opening.as_deref().and_then(|code| code.split_once('+'));
    let read = parts.and_then(|(minutes, reserve)| Some((minutes.parse().ok()?, reserve.parse().ok()?)));
    let (minutes, reserve) = read.ok_or(Error::Inconsistent("hour_fact.code"))?;
    Ok(EntryValue::Time { minutes, reserve })
}

fn opening<T: DeserializeOwned>(row: &EntryRow) -> Result<T, Error> {
    codes::read(row.opening.as_deref().unwrap_or_default(), "hour_fact.code")
}

/// `GET /sessions/{session}/entries`
pub(super) async fn get(State(app): State<App>, member: Member, Id(session): Id) -> Result<Json<SessionLog>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.log").object(session)).await?;
    let log = log(&mut tx, &app, session).await?;
    tx.commit().await?;
    Ok(Json(log))
}
