//! What holds a start: the opening of the hour, and what went before.
//!
//! Location, who can be called, a person nearby, what happens when the line drops: federal telehealth guidance (clinical reference 1.1,
//! source 3) and the association's guideline for work by video (source 4). Risk in every session and re-evaluation at the beginning of
//! each after the first: sections 1.2 and 1.9. Which of them a calm place needs, and that a start waits for them, is a practitioner's
//! judgement; any of it can be gone past with a code, but for consent that was withdrawn.

use super::Because;
use crate::wire::{Answer, Hold, Holds, Matter, Purpose};

/// Something that was said in the opening, in the order in which it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Opened {
    /// One matter was answered, for the first time or anew.
    Answered(Answer),
    /// One matter was gone past, for this reason.
    Passed(Matter, Because),
}

/// What the record says besides.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Before {
    /// An earlier session reprocessed, and its target was not rated anew in this one.
    pub reevaluation_due: bool,
    /// Today's target has no SUD from an assessment.
    pub assessment_due: bool,
}

/// All that may hold a start, in the order of the hour.
const MATTERS: [Matter; 11] = [
    Matter::Location,
    Matter::Privacy,
    Matter::Nearby,
    Matter::Contact,
    Matter::Risk,
    Matter::Fitness,
    Matter::Consent,
    Matter::LineDrop,
    Matter::Reprocessing,
    Matter::Reevaluation,
    Matter::Assessment,
];

/// What holds a start, of either sort of set.
pub fn holds(opened: &[Opened], before: Before) -> Holds {
    Holds { processing: held(opened, before, Purpose::Processing), calm_place: held(opened, before, Purpose::CalmPlace) }
}

fn held(opened: &[Opened], before: Before, purpose: Purpose) -> Vec<Hold> {
    MATTERS.into_iter().filter_map(|matter| hold(opened, before, purpose, matter)).collect()
}

fn hold(opened: &[Opened], before: Before, purpose: Purpose, matter: Matter) -> Option<Hold> {
    let of_it = |one: &&Opened| {
        matches!(one, Opened::Answered(answer) if answer.matter() == matter) || matches!(one, Opened::Passed(past, _) if *past == matter)
    };
    let answer = opened.iter().rev().find_map(|one| match one {
        Opened::Answered(answer) if answer.matter() == matter => Some(*answer),
        _ => None,
    });
    let against = answer.is_some_and(|answer| is_against(answer, purpose));
    // What was said last counts: an answer after a pass asks again. Nobody goes past a consent that was withdrawn.
    let passed = matches!(opened.iter().rev().find(of_it), Some(Opened::Passed(..))) && !(matter == Matter::Consent && against);
    let open = match matter {
        Matter::Reevaluation => before.reevaluation_due && purpose == Purpose::Processing,
        Matter::Assessment => before.assessment_due && purpose == Purpose::Processing,
        Matter::Reprocessing => false,
        matter => answer.is_none() && is_asked(matter, purpose),
    };
    (!passed && (open || against)).then_some(Hold { matter, against })
}

/// Whether a set for this waits for an answer.
const fn is_asked(matter: Matter, purpose: Purpose) -> bool {
    match purpose {
        Purpose::Processing => true,
        Purpose::CalmPlace => matches!(matter, Matter::Location | Matter::Privacy | Matter::Risk | Matter::Consent),
    }
}

/// Whether an answer speaks against a set for this.
const fn is_against(answer: Answer, purpose: Purpose) -> bool {
    match answer {
        Answer::Overheard | Answer::NoStimulation => true,
        Answer::NotReachable
        | Answer::Acute
        | Answer::NotFit
        | Answer::NoReprocessing
        | Answer::WayOpen
        | Answer::NotForRisk
        | Answer::NotAsTheyAre
        | Answer::NotByWish
        | Answer::NotForTime => matches!(purpose, Purpose::Processing),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::course::histories::{HISTORIES, WELL, one_of};
    use rand::{Rng, SeedableRng};
    use rand_chacha::ChaCha8Rng;

    const NOTHING: Before = Before { reevaluation_due: false, assessment_due: false };

    fn said(more: &[Opened]) -> Vec<Opened> {
        WELL.into_iter().map(Opened::Answered).chain(more.iter().copied()).collect()
    }

    fn matters(holds: &[Hold]) -> Vec<Matter> {
        holds.iter().map(|hold| hold.matter).collect()
    }

    // The telehealth guidance's list (clinical reference 1.1, source 3): location, emergency numbers, a support person, a plan for a lost line.
    #[test]
    fn nothing_starts_before_the_opening_is_done() {
        let none = holds(&[], NOTHING);
        assert_eq!(matters(&none.processing), MATTERS[..8]);
        assert_eq!(matters(&none.calm_place), [Matter::Location, Matter::Privacy, Matter::Risk, Matter::Consent]);
        assert_eq!(holds(&said(&[]), NOTHING), Holds::default());
        for skipped in WELL {
            let opened: Vec<Opened> = said(&[]).into_iter().filter(|one| *one != Opened::Answered(skipped)).collect();
            assert_eq!(holds(&opened, NOTHING).processing, [Hold { matter: skipped.matter(), against: false }]);
        }
    }

    #[test]
    fn an_answer_against_it_holds_reprocessing_and_only_what_is_heard_or_withdrawn_holds_a_calm_place() {
        for answer in [Answer::NotReachable, Answer::Acute, Answer::NotFit, Answer::NoReprocessing, Answer::WayOpen, Answer::NotByWish] {
            let held = holds(&said(&[Opened::Answered(answer)]), NOTHING);
            assert_eq!(held.processing, [Hold { matter: answer.matter(), against: true }], "{answer:?}");
            assert_eq!(held.calm_place, [], "{answer:?}");
        }
        for answer in [Answer::Overheard, Answer::NoStimulation] {
            let held = holds(&said(&[Opened::Answered(answer)]), NOTHING);
            assert_eq!((held.processing.len(), held.calm_place.len()), (1, 1), "{answer:?}");
        }
        let milder = [
            Answer::AnotherPlace,
            Answer::SomebodyToHelp,
            Answer::Others,
            Answer::PlanStands,
            Answer::Strained,
            Answer::Unsteady,
            Answer::NotKept,
        ];
        for answer in milder {
            assert_eq!(holds(&said(&[Opened::Answered(answer)]), NOTHING), Holds::default(), "{answer:?}");
        }
    }

    #[test]
    fn a_code_goes_past_anything_but_a_consent_that_was_withdrawn() {
        let pass = |matter| Opened::Passed(matter, Because::Judgement);
        let before = Before { reevaluation_due: true, assessment_due: true };
        assert_eq!(matters(&holds(&said(&[]), before).processing), [Matter::Reevaluation, Matter::Assessment]);
        assert_eq!(holds(&said(&[]), before).calm_place, []);
        assert_eq!(holds(&said(&[pass(Matter::Reevaluation), pass(Matter::Assessment)]), before), Holds::default());
        let acute = [Opened::Answered(Answer::Acute), pass(Matter::Risk)];
        assert_eq!(holds(&said(&acute), NOTHING), Holds::default());
        assert_eq!(
            matters(&holds(&said(&[acute[0], acute[1], acute[0]]), NOTHING).processing),
            [Matter::Risk],
            "answered anew, it is asked again"
        );
        let withdrawn = [Opened::Answered(Answer::NoReprocessing), pass(Matter::Consent)];
        assert_eq!(matters(&holds(&said(&withdrawn), NOTHING).processing), [Matter::Consent]);
        let anew = [withdrawn[0], withdrawn[1], Opened::Answered(Answer::Consents)];
        assert_eq!(holds(&said(&anew), NOTHING), Holds::default(), "a fresh conversation");
    }

    /// Whatever was said in whatever order: nothing starts while a matter of it is neither answered nor gone past.
    #[test]
    fn no_history_lets_a_set_run_before_its_opening() {
        let mut rng = ChaCha8Rng::seed_from_u64(7);
        let answers = [
            &WELL[..],
            &[Answer::Overheard, Answer::Acute, Answer::NotFit, Answer::NoReprocessing, Answer::NoStimulation, Answer::Planned],
        ]
        .concat();
        let mut started = [0, 0];
        for _ in 0..HISTORIES {
            let opened: Vec<Opened> = (0..rng.random_range(0..24))
                .map(|_| match rng.random_range(0..6) {
                    0 => Opened::Passed(one_of(&mut rng, &MATTERS), Because::Judgement),
                    _ => Opened::Answered(one_of(&mut rng, &answers)),
                })
                .collect();
            let before = Before { reevaluation_due: rng.random_bool(0.2), assessment_due: rng.random_bool(0.2) };
            let held = holds(&opened, before);
            let touched = |matter| {
                opened.iter().any(|one| match one {
                    Opened::Answered(answer) => answer.matter() == matter,
                    Opened::Passed(past, _) => *past == matter,
                })
            };
            for (purpose, count) in [(Purpose::Processing, 0), (Purpose::CalmPlace, 1)] {
                if !held.of(purpose).is_empty() {
                    continue;
                }
                started[count] += 1;
                assert!(MATTERS[..8].iter().all(|matter| !is_asked(*matter, purpose) || touched(*matter)), "{opened:?}");
                let consent = opened.iter().rev().find_map(|one| match one {
                    Opened::Answered(answer) if answer.matter() == Matter::Consent => Some(*answer),
                    _ => None,
                });
                assert!(consent.is_none_or(|answer| !is_against(answer, purpose)), "{opened:?}");
                if purpose == Purpose::Processing {
                    assert!(!before.reevaluation_due || touched(Matter::Reevaluation), "{opened:?}");
                    assert!(!before.assessment_due || touched(Matter::Assessment), "{opened:?}");
                }
            }
        }
        assert!(started.iter().all(|count| *count > 200), "histories get there: {started:?}");
    }
}
