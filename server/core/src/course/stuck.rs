//! What may come next between sets: an offer, never an instruction.
//!
//! No fall in SUD, or the same content, over two or more consecutive sets is a usual working definition of "stuck" (a trainer's article,
//! second-hand: clinical reference 1.5, source 17); the ladder is that article's and another practitioner's (sources 17 and 18). That two or
//! three in a row count, and that arousal comes first once it was seen, are practitioners' judgement: the first is a practice's setting.

use super::Procedure;
use crate::scale::Sud;
use crate::wire::{Change, Next, Rung, Saw, StuckBy};

/// A set as far as this rule needs it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SetDone {
    /// What it changed, if that was marked.
    pub mark: Option<Change>,
    /// What the clinician saw.
    pub saw: Vec<Saw>,
    /// What was tried after it.
    pub tried: Vec<Rung>,
}

/// The SUDs that were asked.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Returns {
    /// At each return to the target, led by the one before the first.
    pub suds: Vec<Sud>,
    /// One was asked since the last set.
    pub since_last_set: bool,
}

/// What is offered after `sets`, `in_a_row` being how many alike a practice counts as stuck (2 or 3). Nothing in resource and restricted work.
pub fn next(sets: &[SetDone], returns: &Returns, procedure: Procedure, in_a_row: usize) -> Option<Next> {
    if matches!(procedure, Procedure::Resource | Procedure::Restricted) {
        return None;
    }
    let last = |count: usize, mark: Change| sets.len() >= count && sets[sets.len() - count..].iter().all(|set| set.mark == Some(mark));
    if last(2, Change::Settled) {
        return (!returns.since_last_set).then_some(Next::BackToTarget);
    }
    let why = if last(in_a_row, Change::Same) {
        StuckBy::Same
    } else if is_no_lower(&returns.suds) && !last(1, Change::Changing) {
        StuckBy::NotLower
    } else {
        return None;
    };
    // What was seen and tried since anything last changed.
    let since = sets.iter().rposition(|set| set.mark == Some(Change::Changing)).map_or(0, |at| at + 1);
    let aroused = sets[since..].iter().flat_map(|set| &set.saw).any(|saw| matches!(saw, Saw::Glazed | Saw::Numb | Saw::FarAway));
    let tried = sets[since..].iter().flat_map(|set| set.tried.iter().copied()).collect();
    Some(Next::Stuck { why, ladder: ladder(aroused), tried })
}

/// Not lower at two returns, and still disturbing.
fn is_no_lower(suds: &[Sud]) -> bool {
    let [.., before, first, second] = suds else { return false };
    second >= first && first >= before && second.get() > 1
}

fn ladder(aroused: bool) -> Vec<Rung> {
    let mut ladder = vec![Rung::Mechanics, Rung::Focus, Rung::Earlier, Rung::Interweave];
    ladder.insert(if aroused { 0 } else { ladder.len() }, Rung::Arousal);
    ladder
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sets(marks: &[Change]) -> Vec<SetDone> {
        marks.iter().map(|mark| SetDone { mark: Some(*mark), ..SetDone::default() }).collect()
    }

    fn suds(values: &[u8]) -> Returns {
        Returns { suds: values.iter().map(|value| Sud::new(*value).unwrap()).collect(), since_last_set: false }
    }

    fn why(marks: &[Change], returns: &[u8], in_a_row: usize) -> Option<StuckBy> {
        match next(&sets(marks), &suds(returns), Procedure::Standard, in_a_row) {
            Some(Next::Stuck { why, .. }) => Some(why),
            _ => None,
        }
    }

    // A trainer's article, second-hand: the same over two or more consecutive sets.
    #[test]
    fn two_or_three_alike_in_a_row_are_stuck_and_a_change_in_between_is_not() {
        use Change::{Changing, Same, Settled};
        assert_eq!(why(&[Same, Same], &[], 2), Some(StuckBy::Same));
        assert_eq!(why(&[Same], &[], 2), None);
        assert_eq!(why(&[Same, Changing, Same], &[], 2), None);
        assert_eq!(why(&[Changing, Same, Same], &[], 3), None);
        assert_eq!(why(&[Same, Same, Same], &[], 3), Some(StuckBy::Same));
        assert_eq!(why(&[Same, Settled], &[], 2), None);
        let unmarked = [sets(&[Same]), vec![SetDone::default()], sets(&[Same])].concat();
        assert_eq!(next(&unmarked, &suds(&[]), Procedure::Standard, 2), None, "a set without a mark is no sign of anything");
    }

    #[test]
    fn a_sud_that_is_no_lower_at_two_returns_is_stuck_unless_something_changes_or_nothing_disturbs() {
        use Change::{Changing, Same};
        assert_eq!(why(&[Same], &[7, 7, 7], 2), Some(StuckBy::NotLower));
        assert_eq!(why(&[Same], &[6, 6, 8], 2), Some(StuckBy::NotLower));
        assert_eq!(why(&[Same], &[7, 6, 6], 2), None, "it fell at the first of the two");
        assert_eq!(why(&[Same], &[7, 7], 2), None, "one return is not two");
        assert_eq!(why(&[Changing], &[7, 7, 7], 2), None);
        assert_eq!(why(&[Same], &[1, 1, 1], 2), None);
    }

    #[test]
    fn two_settled_in_a_row_lead_back_to_the_target_until_it_was_asked() {
        let settled = sets(&[Change::Settled, Change::Settled]);
        assert_eq!(next(&settled, &suds(&[7]), Procedure::Standard, 2), Some(Next::BackToTarget));
        assert_eq!(next(&settled, &Returns { since_last_set: true, ..suds(&[7, 0]) }, Procedure::Standard, 2), None);
    }

    #[test]
    fn arousal_comes_first_once_it_was_seen() {
        let mut both = sets(&[Change::Same, Change::Same]);
        let first = |sets: &[SetDone]| match next(sets, &suds(&[]), Procedure::Standard, 2) {
            Some(Next::Stuck { ladder, tried, .. }) => (ladder[0], ladder.len(), tried),
            other => panic!("{other:?}"),
        };
        assert_eq!(first(&both), (Rung::Mechanics, 5, vec![]));
        both[0].tried = vec![Rung::Focus];
        both[1].saw = vec![Saw::Tears];
        assert_eq!(first(&both), (Rung::Mechanics, 5, vec![Rung::Focus]));
        for saw in [Saw::Glazed, Saw::Numb, Saw::FarAway] {
            both[1].saw = vec![saw];
            assert_eq!(first(&both).0, Rung::Arousal, "{saw:?}");
        }
    }

    #[test]
    fn resource_and_restricted_work_is_never_called_stuck() {
        for procedure in [Procedure::Resource, Procedure::Restricted] {
            assert_eq!(next(&sets(&[Change::Same; 4]), &suds(&[7, 7, 7]), procedure, 2), None, "{procedure:?}");
        }
    }
}
