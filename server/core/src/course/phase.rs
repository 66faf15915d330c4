//! Where in the order of the work an hour stands.
//!
//! The published description has eight phases (clinical reference 1.0, source 1). Reprocessing goes from the third to the sixth, closing ends
//! every hour, and the eighth opens each one after the first that reprocessed. That the opening of a remote hour comes before all of them,
//! and that an hour against which something speaks is one of preparation, is a practitioner's judgement. Nothing here advances by itself: a
//! phase is what the record says, so it goes back as soon as that does.

use serde::{Deserialize, Serialize};

use super::{Course, End, Procedure};
use crate::wire::{Holds, Matter};

/// A phase of one hour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// What is confirmed before anything else is open.
    Opening,
    /// The target before is to be looked at again.
    Reevaluation,
    /// Without reprocessing: resources, a calm place, talk.
    Preparation,
    /// Today's target has no baseline.
    Assessment,
    /// Until nothing disturbs any more.
    Desensitisation,
    /// Until the wanted belief is held.
    Installation,
    /// Until nothing is felt in the body.
    Scan,
    /// All that the target's end asks for is reached, or closing was begun.
    Closing,
    /// It is over.
    Closed,
}

/// What is known of an hour.
#[derive(Clone, Copy, Debug)]
pub struct Hour<'a> {
    /// What holds a start, see [`super::holds`].
    pub holds: &'a Holds,
    /// Of today's target; `None`: there is none.
    pub course: Option<&'a Course>,
    /// Closing was begun.
    pub closing: bool,
    /// It is over.
    pub ended: bool,
}

/// The phase in which an hour stands.
#[must_use]
pub fn phase(hour: Hour<'_>) -> Phase {
    let Hour { holds, course, closing, ended } = hour;
    if ended {
        return Phase::Closed;
    }
    if closing {
        return Phase::Closing;
    }
    let rated = |matter| matches!(matter, Matter::Reevaluation | Matter::Assessment);
    let open = |matter| holds.processing.iter().any(|hold| hold.matter == matter && !hold.against);
    // A calm place needs fewer answers: the rest may stay open in an hour without reprocessing.
    if holds.processing.iter().any(|hold| hold.against) {
        return if holds.calm_place.iter().any(|hold| !hold.against) { Phase::Opening } else { Phase::Preparation };
    }
    if holds.processing.iter().any(|hold| !rated(hold.matter)) {
        return Phase::Opening;
    }
    if open(Matter::Reevaluation) {
        return Phase::Reevaluation;
    }
    let Some(course) = course.filter(|course| course.known.procedure != Procedure::Resource) else { return Phase::Preparation };
    if open(Matter::Assessment) {
        return Phase::Assessment;
    }
    if course.known.procedure == Procedure::Restricted {
        return if course.state.is_over() { Phase::Closing } else { Phase::Desensitisation };
    }
    match course.open().first() {
        Some(End::Sud | End::Segments | End::Rehearsal) => Phase::Desensitisation,
        Some(End::Voc) => Phase::Installation,
        Some(End::Scan) => Phase::Scan,
        None => Phase::Closing,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::course::histories::{HISTORIES, WELL, one_of};
    use crate::course::{Because, Before, Belief, Decision, Opened, Said, Scan, holds};
    use crate::scale::{Sud, Voc};
    use crate::wire::{Answer, Moment};
    use rand::{Rng, SeedableRng};
    use rand_chacha::ChaCha8Rng;

    fn opened(answers: &[Answer]) -> Vec<Opened> {
        answers.iter().copied().map(Opened::Answered).collect()
    }

    fn of(said: &[Said], answers: &[Answer], before: Before) -> Phase {
        let course = Course::of(said.iter().copied());
        phase(Hour { holds: &holds(&opened(answers), before), course: Some(&course), closing: false, ended: false })
    }

    fn sud(value: u8) -> Said {
        Said::Sud { value: Sud::new(value).unwrap(), moment: Moment::BackAtTarget, segment: None }
    }

    fn voc(value: u8) -> Said {
        Said::Voc { value: Voc::new(value).unwrap(), moment: Moment::Installation }
    }

    // The published eight phases in their order (clinical reference 1.0, source 1).
    #[test]
    fn the_phases_follow_each_other_as_the_record_grows() {
        let clear = Said::Scan(Scan::Clear);
        let nothing = Before::default();
        assert_eq!(of(&[], &WELL[..4], nothing), Phase::Opening);
        assert_eq!(of(&[], &WELL, Before { reevaluation_due: true, assessment_due: true }), Phase::Reevaluation);
        assert_eq!(of(&[], &WELL, Before { assessment_due: true, ..nothing }), Phase::Assessment);
        assert_eq!(of(&[sud(8), Said::Set], &WELL, nothing), Phase::Desensitisation);
        assert_eq!(of(&[sud(8), Said::Set, sud(0)], &WELL, nothing), Phase::Installation);
        assert_eq!(of(&[sud(8), Said::Set, sud(0), voc(7)], &WELL, nothing), Phase::Scan);
        assert_eq!(of(&[sud(8), Said::Set, sud(0), voc(7), clear], &WELL, nothing), Phase::Closing);
    }

    #[test]
    fn a_phase_goes_back_with_the_record() {
        let so_far = [sud(8), Said::Set, sud(0), voc(7)];
        let with = |more: &[Said]| of(&[&so_far[..], more].concat(), &WELL, Before::default());
        assert_eq!(with(&[]), Phase::Scan);
        assert_eq!(with(&[sud(3)]), Phase::Desensitisation, "it disturbs again");
        assert_eq!(with(&[Said::Belief(Belief::Another)]), Phase::Installation, "the VOC was of another belief");
        assert_eq!(with(&[Said::Belief(Belief::Still)]), Phase::Scan);
        let acute = [&WELL[..], &[Answer::Acute]].concat();
        assert_eq!(of(&so_far, &acute, Before::default()), Phase::Preparation, "risk turns the hour");
    }

    #[test]
    fn without_reprocessing_the_hour_is_one_of_preparation() {
        let nothing = Before::default();
        for answer in [Answer::NotForRisk, Answer::NotFit, Answer::NoReprocessing] {
            assert_eq!(of(&[], &[&WELL[..], &[answer]].concat(), nothing), Phase::Preparation, "{answer:?}");
            assert_eq!(of(&[], &[answer], nothing), Phase::Opening, "{answer:?}: four are asked all the same");
        }
        assert_eq!(of(&[Said::Procedure(Procedure::Resource)], &WELL, nothing), Phase::Preparation);
        let holds = holds(&opened(&WELL), nothing);
        assert_eq!(phase(Hour { holds: &holds, course: None, closing: false, ended: false }), Phase::Preparation);
    }

    #[test]
    fn restricted_work_goes_on_until_it_is_called_reduced() {
        let restricted = [Said::Procedure(Procedure::Restricted), Said::Set, sud(0), voc(7)];
        assert_eq!(of(&restricted, &WELL, Before::default()), Phase::Desensitisation);
        let reduced = [&restricted[..], &[Said::Decided(Decision::Reduced, None)]].concat();
        assert_eq!(of(&reduced, &WELL, Before::default()), Phase::Closing);
    }

    /// Whatever was said: what the phase claims, the rules behind it say too.
    #[test]
    fn no_history_shows_a_phase_that_the_rules_do_not_carry() {
        let mut rng = ChaCha8Rng::seed_from_u64(5);
        let more = [Answer::Overheard, Answer::Acute, Answer::NotFit, Answer::NoReprocessing, Answer::NoStimulation, Answer::NotForTime];
        let answers = [&WELL[..], &WELL[..], &more].concat();
        let mut seen = std::collections::HashSet::new();
        for _ in 0..HISTORIES {
            let mut opened: Vec<Opened> = WELL.into_iter().filter(|_| rng.random_bool(0.9)).map(Opened::Answered).collect();
            opened.extend((0..rng.random_range(0..3)).map(|_| match rng.random_range(0..3) {
                0 => Opened::Passed(one_of(&mut rng, &[Matter::Risk, Matter::Assessment, Matter::Consent]), Because::Judgement),
                _ => Opened::Answered(one_of(&mut rng, &answers)),
            }));
            let said = crate::course::histories::history(&mut rng);
            let course = Course::of(said.iter().copied());
            let before = Before { reevaluation_due: rng.random_bool(0.2), assessment_due: rng.random_bool(0.2) };
            let (closing, ended) = (rng.random_bool(0.1), rng.random_bool(0.1));
            let held = holds(&opened, before);
            let now = phase(Hour { holds: &held, course: Some(&course), closing, ended });
            seen.insert(now);
            assert_eq!(now == Phase::Closed, ended);
            if matches!(now, Phase::Desensitisation | Phase::Installation | Phase::Scan) {
                assert!(held.processing.is_empty(), "{now:?} though a start is held: {opened:?}");
            }
            if now == Phase::Closing && !closing {
                assert!(course.open().is_empty(), "{said:?}");
            }
        }
        assert_eq!(seen.len(), 9, "{seen:?}");
    }
}
