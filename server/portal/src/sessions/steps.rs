//! The ratings of a session, set by set.

use leeward_core::chart::SetStep;
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{EntryValue, Moment, Start};

use uuid::Uuid;

use super::log;
use super::queries_entries::{self, BeforeRow};
use super::sets::Set;
use super::standing::Standing;
use crate::platform::codes;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// The assessment of the session's target, scale by scale, where it is the last that was rated before the session.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub(super) async fn start(tx: &mut Tx, session: Uuid) -> Result<Start, Error> {
    let mut start = Start::default();
    for BeforeRow { scale, value, moment } in queries_entries::before(tx, session).await? {
        if codes::read::<Moment>(&moment, "rating.moment")? == Moment::Assessment {
            let place = if scale == "sud" { &mut start.sud } else { &mut start.voc };
            *place = Some(log::rating(value)?);
        }
    }
    Ok(start)
}

/// One step for each set, with one before them and one after them where something was rated there; what
/// was not rated before the first set is taken from `start`.
///
/// A rating that names no set belongs to the set that was recorded last before it was asked; before
/// the first set to the start, as a re-evaluation always does; at the close to the close. Of several in one place the last counts. A
/// re-evaluation of another target than `target`, the session's, is no part of this course.
pub(super) fn steps(sets: &[Set], entries: &[Standing], target: Option<Uuid>, start: Start) -> Vec<SetStep> {
    let mut steps = vec![blank(SetStep::START)];
    steps.extend(sets.iter().map(|set| SetStep { ending: set.ending, ..blank(&set.number.to_string()) }));
    steps.push(blank(SetStep::CLOSE));
    let close = steps.len() - 1;
    (steps[0].sud, steps[0].voc) = (start.sud.and_then(|sud| Sud::new(sud).ok()), start.voc.and_then(|voc| Voc::new(voc).ok()));
    for entry in entries.iter().filter(|entry| entry.target == target && entry.segment.is_none()) {
        let step = &mut steps[place(sets, entry).unwrap_or(close)];
        match entry.value {
            EntryValue::Sud { value } => step.sud = Sud::new(value).ok(),
            EntryValue::Voc { value } => step.voc = Voc::new(value).ok(),
            _ => {}
        }
    }
    let rated = |step: &SetStep| step.sud.is_some() || step.voc.is_some();
    if !rated(&steps[close]) {
        steps.pop();
    }
    if !rated(&steps[0]) {
        steps.remove(0);
    }
    steps
}

/// The place among the steps: 0 before the sets, then set by set; `None` at the close.
fn place(sets: &[Set], entry: &Standing) -> Option<usize> {
    match entry.set {
        Some(id) => sets.iter().position(|set| set.id == id).map(|at| at + 1),
        None if entry.moment == Moment::Closing => None,
        // It asks what held since the last session, whenever it was written down.
        None if entry.moment == Moment::Reevaluation => Some(0),
        None => Some(sets.iter().take_while(|set| set.seq < entry.asked).count()),
    }
}

fn blank(label: &str) -> SetStep {
    SetStep { label: label.to_owned(), sud: None, voc: None, ending: None }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::{DateTime, TimeZone, Utc};
    use leeward_core::safety::default_plan;
    use leeward_core::wire::Ending;

    fn at(minute: u32) -> DateTime<Utc> {
        Utc.with_ymd_and_hms(2026, 3, 3, 9, minute, 0).unwrap()
    }

    fn set(number: u32) -> Set {
        let plan = default_plan();
        Set {
            id: Uuid::from_u128(number.into()),
            number,
            first_plan: Some(plan),
            plan: Some(plan),
            shown: Default::default(),
            ending: Some(Ending::Done),
            recorded_at: at(number * 10),
            seq: i64::from(number) * 10,
        }
    }

    fn sud(set: Option<u32>, moment: Moment, minute: u32, value: u8) -> Standing {
        let set = set.map(|number| Uuid::from_u128(number.into()));
        let asked = i64::from(minute);
        // The wall clock went backwards all the while: only the order of keeping counts.
        let at = at(59 - minute);
        Standing {
            set,
            target: None,
            moment,
            value: EntryValue::Sud { value },
            segment: None,
            from_client: false,
            asked_at: at,
            asked,
            at,
            corrected: false,
        }
    }

    fn drawn(entries: &[Standing]) -> Vec<(String, Option<u8>)> {
        steps(&[set(1), set(2), set(3)], entries, None, Start::default())
            .into_iter()
            .map(|step| (step.label, step.sud.map(Sud::get)))
            .collect()
    }

    fn own(labels: &[(&str, Option<u8>)]) -> Vec<(String, Option<u8>)> {
        labels.iter().map(|(label, sud)| ((*label).to_owned(), *sud)).collect()
    }

    #[test]
    fn a_rating_stands_where_it_was_asked() {
        let entries = [
            sud(None, Moment::Reevaluation, 5, 8),
            sud(Some(1), Moment::AfterSet, 15, 7),
            sud(None, Moment::BackAtTarget, 27, 5),
            sud(None, Moment::BackAtTarget, 28, 4),
            sud(None, Moment::Closing, 40, 3),
        ];
        assert_eq!(drawn(&entries), own(&[("start", Some(8)), ("1", Some(7)), ("2", Some(4)), ("3", None), ("close", Some(3))]));
    }

    #[test]
    fn a_reevaluation_stands_at_the_start_however_late_it_was_written_down() {
        let entries = [sud(Some(3), Moment::AfterSet, 35, 5), sud(None, Moment::Reevaluation, 36, 8)];
        assert_eq!(drawn(&entries), own(&[("start", Some(8)), ("1", None), ("2", None), ("3", Some(5))]));
    }

    #[test]
    fn another_targets_rating_is_no_part_of_it() {
        let other = Standing { target: Some(Uuid::from_u128(9)), ..sud(None, Moment::Reevaluation, 5, 0) };
        assert_eq!(drawn(&[other]), own(&[("1", None), ("2", None), ("3", None)]));
    }

    #[test]
    fn a_segments_sud_is_no_step_of_the_whole() {
        let segment = Standing { segment: Some(2), ..sud(Some(1), Moment::AfterSet, 15, 3) };
        assert_eq!(drawn(&[segment]), own(&[("1", None), ("2", None), ("3", None)]));
    }

    #[test]
    fn what_was_not_asked_is_a_gap_and_no_step_of_its_own() {
        assert_eq!(drawn(&[]), own(&[("1", None), ("2", None), ("3", None)]));
    }

    #[test]
    fn it_starts_from_the_assessment_unless_it_was_asked_before_the_first_set() {
        let start = Start { sud: Some(8), voc: Some(2) };
        let first = |entries: &[Standing]| {
            let step = steps(&[set(1)], entries, None, start).remove(0);
            (step.label, step.sud.map(Sud::get), step.voc.map(Voc::get))
        };
        assert_eq!(first(&[]), ("start".into(), Some(8), Some(2)));
        assert_eq!(first(&[sud(None, Moment::BackAtTarget, 5, 6)]), ("start".into(), Some(6), Some(2)));
    }
}
