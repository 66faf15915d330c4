//! The sets of a session: what was ordered, what the client's screen showed, what ended them.

use chrono::{DateTime, Utc};
use leeward_core::chart::LONG_GAP_MS;
use leeward_core::wire::{Ending, Plan};
use uuid::Uuid;

use super::queries_sets::{self, SetRow};
use crate::platform::codes;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// One set as the record has it.
#[derive(Clone, Debug)]
pub struct Set {
    /// Its id.
    pub id: Uuid,
    /// 1 for the first of the session.
    pub number: u32,
    /// As first ordered; `None` when the record of it cannot be read.
    pub first_plan: Option<Plan>,
    /// As last ordered; `None` when the record of it cannot be read.
    pub plan: Option<Plan>,
    /// What was heard from the client's screen.
    pub shown: Shown,
    /// Who or what ended it, as the view `set_outcome` decides among its witnesses. `None` while it may run.
    pub ending: Option<Ending>,
    /// When its start was written.
    pub recorded_at: DateTime<Utc>,
    /// Its number in the order of keeping, which it shares with entries.
    pub seq: i64,
}

/// What the client's page says its screen showed; `None` where nothing was heard.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Shown {
    /// Whole and part cycles.
    pub cycles: Option<f64>,
    /// The page said that it came to rest; without that, the figures are at least so much.
    pub to_rest: bool,
    /// Degrees from extreme to extreme.
    pub width: Option<f64>,
    /// From the first motion to rest.
    pub seconds: Option<f64>,
    /// Frames that its page looked at.
    pub frames: Option<i64>,
    /// The longest wait for a frame, or of its script, ms.
    pub longest_gap: Option<f64>,
    /// Seconds that had a gap above 50 ms.
    pub long_gaps: i64,
}

/// The sets of a session in order.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub(super) async fn of_session(tx: &mut Tx, session: Uuid) -> Result<Vec<Set>, Error> {
    queries_sets::sets(tx, session, LONG_GAP_MS).await?.into_iter().map(set).collect()
}

fn set(row: SetRow) -> Result<Set, Error> {
    // What this version does not know is an end that nobody here can name.
    let ending = row.ending.as_deref().map(|name| codes::read(name, "set_outcome.ending").unwrap_or(Ending::Unknown));
    Ok(Set {
        id: row.id,
        number: u32::try_from(row.number).map_err(|_| Error::Inconsistent("stimulus_set.number"))?,
        first_plan: codes::plan(row.first_plan),
        plan: codes::plan(row.plan),
        shown: Shown {
            cycles: row.cycles,
            to_rest: row.to_rest,
            width: row.width,
            seconds: row.seconds,
            frames: row.frames,
            longest_gap: row.longest_gap,
            long_gaps: row.long_gaps,
        },
        ending,
        recorded_at: row.recorded_at,
        seq: row.seq,
    })
}
