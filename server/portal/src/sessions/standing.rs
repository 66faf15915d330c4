//! Which entries of a session count: those neither corrected nor taken back.

use std::collections::{HashMap, HashSet};

use chrono::{DateTime, Utc};
use leeward_core::wire::{EntryValue, Moment};
use uuid::Uuid;

use super::queries_entries::EntryRow;
use super::{codes, log};
use crate::error::Error;
use crate::seal::ClientKey;

/// An entry that counts.
pub(super) struct Standing {
    pub set: Option<Uuid>,
    /// Of a rating: the target it is of.
    pub target: Option<Uuid>,
    pub moment: Moment,
    pub value: EntryValue,
    /// When the first entry of its chain of corrections was kept: where it belongs in the session.
    pub asked_at: DateTime<Utc>,
    /// When it was kept.
    pub at: DateTime<Utc>,
    pub corrected: bool,
}

/// The entries that count, by when they were asked.
pub(super) fn standing(rows: &[EntryRow], key: &ClientKey) -> Result<Vec<Standing>, Error> {
    let by_id: HashMap<Uuid, &EntryRow> = rows.iter().map(|row| (row.id, row)).collect();
    let replaced: HashSet<Uuid> = rows.iter().filter_map(|row| row.replaces).collect();
    let mut standing = Vec::new();
    for row in rows.iter().filter(|row| !replaced.contains(&row.id)) {
        let value = log::value(row, key)?;
        if value != EntryValue::TakenBack {
            standing.push(Standing {
                set: row.set_id,
                target: row.target_id,
                moment: codes::read(&row.moment, "rating.moment")?,
                value,
                asked_at: first(row, &by_id).at,
                at: row.at,
                corrected: row.replaces.is_some(),
            });
        }
    }
    standing.sort_by_key(|entry| entry.asked_at);
    Ok(standing)
}

/// The first entry of a chain of corrections. Each link leads to an older row, so it ends.
fn first<'a>(row: &'a EntryRow, by_id: &HashMap<Uuid, &'a EntryRow>) -> &'a EntryRow {
    let mut first = row;
    while let Some(earlier) = first.replaces.and_then(|id| by_id.get(&id)) {
        first = earlier;
    }
    first
}
