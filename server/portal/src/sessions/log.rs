//! All that the desk's log shows, to fill it after a reload.

use axum::Json;
use axum::extract::State;
use leeward_core::wire::{Entry, EntryValue, LogSet, Moment, SavedEntry, SessionLog};
use uuid::Uuid;

use super::entries::{ONLY_VERSION, rated_target, stamp};
use super::queries_entries::{self, EntryRow};
use super::{queries, sets, steps};
use crate::clients;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::forms::Id;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened};
use crate::store::subject::{Act, Tx};

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
    let entries = rows.into_iter().map(|row| entry(row, &key)).collect::<Result<_, _>>()?;
    let start = steps::start(tx, session).await?;
    let other_reevaluated = rated_target(tx, &row, Moment::Reevaluation).await? != row.target_id;
    Ok(SessionLog { sets: sets.into_iter().map(log_set).collect(), entries, start, other_reevaluated })
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
        value,
    };
    Ok(SavedEntry { entry, at: stamp(row.at) })
}

/// A kept rating as the wire has it.
pub(super) fn rating(value: i16) -> Result<u8, Error> {
    u8::try_from(value).map_err(|_| Error::Inconsistent("rating.value"))
}

pub(super) fn value(row: &EntryRow, key: &ClientKey) -> Result<EntryValue, Error> {
    Ok(match (row.scale.as_deref(), row.value, &row.change, &row.words) {
        (Some("sud"), Some(value), ..) => EntryValue::Sud { value: rating(value)? },
        (Some("voc"), Some(value), ..) => EntryValue::Voc { value: rating(value)? },
        (None, _, Some(change), _) => EntryValue::Change { change: codes::read(change, "fact.code")? },
        (None, _, _, Some(words)) => match key.row(row.id, ONLY_VERSION).open(Field::ProcessWords, words) {
            Opened::Text(words) => EntryValue::Words { words: words.reveal().to_owned() },
            Opened::Unreadable => EntryValue::Unreadable,
        },
        _ => EntryValue::TakenBack,
    })
}

/// `GET /sessions/{session}/entries`
pub(super) async fn get(State(app): State<App>, member: Member, Id(session): Id) -> Result<Json<SessionLog>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.log").object(session)).await?;
    let log = log(&mut tx, &app, session).await?;
    tx.commit().await?;
    Ok(Json(log))
}
