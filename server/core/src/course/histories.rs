//! Random histories: whatever the record says, in whatever order, no target is complete against its procedure's end without a code.
//!
//! From one seed, so that a failure comes again; drawn by hand, since ten times ten thousand of them take a minute otherwise.

use std::collections::HashSet;

use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::*;
use crate::wire::Answer;

pub(super) const HISTORIES: u64 = 100_000;

/// All that is confirmed in two minutes, as it is when nothing speaks against the hour.
pub(super) const WELL: [Answer; 8] = [
    Answer::UsualPlace,
    Answer::Private,
    Answer::Nobody,
    Answer::Reachable,
    Answer::NothingNew,
    Answer::Fit,
    Answer::Consents,
    Answer::WayAgreed,
];

pub(super) fn one_of<T: Copy>(rng: &mut ChaCha8Rng, all: &[T]) -> T {
    *all.choose(rng).expect("there are some")
}

/// Low SUDs and high VOCs are frequent, or hardly any history would get anywhere.
fn said(rng: &mut ChaCha8Rng) -> Said {
    let moment = one_of(rng, &[Moment::Assessment, Moment::AfterSet, Moment::BackAtTarget, Moment::Installation, Moment::Reevaluation]);
    match rng.random_range(0..19) {
        0 => Said::Procedure(one_of(
            rng,
            &[Procedure::Standard, Procedure::Resource, Procedure::Restricted, Procedure::RecentEvent, Procedure::Future],
        )),
        1 | 2 => Said::Set,
        3..=6 => {
            let most = one_of(rng, &[1, 10]);
            let segment = one_of(rng, &[None, None, Some(1), Some(2)]);
            Said::Sud { value: Sud::new(rng.random_range(0..=most)).unwrap(), moment, segment }
        }
        7..=9 => {
            let least = one_of(rng, &[1, 7]);
            Said::Voc { value: Voc::new(rng.random_range(least..=7)).unwrap(), moment }
        }
        10 => Said::SudFits,
        11 => Said::VocFits,
        12 | 13 => Said::Scan(one_of(rng, &[Scan::Clear, Scan::Clear, Scan::Felt])),
        18 => Said::Belief(one_of(rng, &[Belief::Still, Belief::Another])),
        14 => Said::Rehearsal(one_of(rng, &[Rehearsal::Undisturbed, Rehearsal::Disturbed])),
        _ => {
            let decision =
                one_of(rng, &[Decision::Incomplete, Decision::Complete, Decision::Complete, Decision::Reduced, Decision::Reopened]);
            Said::Decided(decision, one_of(rng, &[None, None, Some(Because::ClientDeclines), Some(Because::Judgement)]))
        }
    }
}

pub(super) fn history(rng: &mut ChaCha8Rng) -> Vec<Said> {
    (0..rng.random_range(0..24)).map(|_| said(rng)).collect()
}

#[test]
fn no_history_makes_a_target_complete_against_its_end_without_a_code() {
    let mut rng = ChaCha8Rng::seed_from_u64(18);
    let mut seen = HashSet::new();
    for _ in 0..HISTORIES {
        let history = history(&mut rng);
        let mut course = Course::default();
        for one in &history {
            let before = course.clone();
            course.take(*one);
            if course.state == State::Complete && before.state != State::Complete {
                assert!(course.known.procedure != Procedure::Restricted, "{history:?}");
                assert!(before.open().is_empty() || course.because.is_some(), "{history:?}");
                assert!(matches!(one, Said::Decided(Decision::Complete, _)), "by itself: {history:?}");
            }
            if course.state != before.state {
                assert!(matches!(one, Said::Decided(..) | Said::Set), "by itself: {history:?}");
            }
            assert_eq!(course.held.is_some(), course.state == State::Complete, "{history:?}");
        }
        seen.insert((course.state, course.held, course.because.is_some()));
    }
    // It would prove little if histories never got there.
    for state in [State::Planned, State::Active, State::Incomplete, State::Reduced, State::Reopened] {
        assert!(seen.contains(&(state, None, false)), "{state:?}");
    }
    for held in [Held::NotYet, Held::Yes, Held::No] {
        assert!([false, true].iter().all(|code| seen.contains(&(State::Complete, Some(held), *code))), "{held:?}");
    }
}
