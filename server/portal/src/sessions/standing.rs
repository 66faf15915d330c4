//! Which entries of a session count: those neither corrected nor taken back.

use chrono::{DateTime, Utc};
use leeward_core::standing::{self, Link};
use leeward_core::wire::{EntryValue, Moment};
use uuid::Uuid;

use super::log;
use super::queries_entries::EntryRow;
use crate::platform::codes;
use crate::store::error::Error;
use crate::store::seal::ClientKey;

/// An entry that counts.
pub(super) struct Standing {
    pub set: Option<Uuid>,
    /// Of a rating: the target it is of.
    pub target: Option<Uuid>,
    pub moment: Moment,
    pub value: EntryValue,
    /// Of a SUD: which segment of the event it is of.
    pub segment: Option<u8>,
    /// Of a rating: the client gave it on their own page.
    pub from_client: bool,
    /// When the first entry of its chain of corrections was kept.
    pub asked_at: DateTime<Utc>,
    /// That one's number in the order of keeping: where it belongs in the session.
    pub asked: i64,
    /// When it was kept.
    pub at: DateTime<Utc>,
    pub corrected: bool,
}

/// The entries that count, by when they were asked. `rows` are in order of keeping. Where an entry was asked
/// is said by the first of its chain.
pub(super) fn standing(rows: &[EntryRow], key: &ClientKey) -> Result<Vec<Standing>, Error> {
    let values = rows.iter().map(|row| log::value(row, key)).collect::<Result<Vec<_>, _>>()?;
    let links: Vec<Link<Uuid>> = rows
        .iter()
        .zip(&values)
        .map(|(row, value)| Link { id: row.id, replaces: row.replaces, says: *value != EntryValue::TakenBack })
        .collect();
    let read = |stands: standing::Stands| {
        let (row, first) = (&rows[stands.at], &rows[stands.first]);
        Ok(Standing {
            set: first.set_id,
            target: first.target_id,
            moment: codes::read(&first.moment, "rating.moment")?,
            value: values[stands.at].clone(),
            segment: log::segment(first)?,
            from_client: row.from_client,
            asked_at: first.at,
            asked: first.seq,
            at: row.at,
            corrected: row.id != first.id,
        })
    };
    standing::standing(&links).into_iter().map(read).collect()
}
