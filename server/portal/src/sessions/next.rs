//! What may come next between sets, by the rule of the core and the record as it stands.

use leeward_core::course::{Procedure, Returns, SetDone, next as offered};
use leeward_core::scale::Sud;
use leeward_core::wire::{EntryValue, Moment, Next, Start};

use super::queries::{self, SessionRow};
use super::sets::Set;
use super::standing::Standing;
use crate::course;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// What is offered in this session.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub(super) async fn next(tx: &mut Tx, row: &SessionRow, sets: &[Set], entries: &[Standing], start: Start) -> Result<Option<Next>, Error> {
    let procedure = match row.target_id {
        Some(target) => course::of(tx, target).await?.known.procedure,
        None => Procedure::Standard,
    };
    let in_a_row = usize::try_from(queries::stuck_after(tx).await?).map_err(|_| Error::Inconsistent("practice.stuck_after"))?;
    Ok(offered(&done(sets, entries), &returns(row, sets, entries, start)?, procedure, in_a_row))
}

fn done(sets: &[Set], entries: &[Standing]) -> Vec<SetDone> {
    let of = |set: &Set| {
        let mut done = SetDone::default();
        for entry in entries.iter().filter(|entry| entry.set == Some(set.id)) {
            match entry.value {
                EntryValue::Change { change } => done.mark = Some(change),
                EntryValue::Saw { saw } => done.saw.push(saw),
                EntryValue::Tried { rung } => done.tried.push(rung),
                _ => {}
            }
        }
        done
    };
    sets.iter().map(of).collect()
}

/// Of the session's own target: the SUD of each return, led by the one asked before the first, or by its assessment.
fn returns(row: &SessionRow, sets: &[Set], entries: &[Standing], start: Start) -> Result<Returns, Error> {
    let own = entries.iter().filter(|entry| entry.target == row.target_id && entry.segment.is_none());
    let mut before = start.sud;
    let mut suds: Vec<u8> = Vec::new();
    let mut last_asked = i64::MIN;
    for entry in own {
        let EntryValue::Sud { value } = entry.value else { continue };
        if entry.moment == Moment::BackAtTarget {
            if suds.is_empty() {
                suds.extend(before);
            }
            suds.push(value);
        }
        before = Some(value);
        last_asked = entry.asked;
    }
    let since_last_set = sets.last().is_none_or(|set| set.seq < last_asked);
    let suds = suds.into_iter().map(|value| Sud::new(value).map_err(|_| Error::Inconsistent("rating.value")));
    Ok(Returns { suds: suds.collect::<Result<_, _>>()?, since_last_set })
}
