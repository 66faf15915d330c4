//! How far the work on one target has come.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::ends::{self, End};
use super::{Because, Belief, Decision, Procedure, Rehearsal, Said, Scan};
use crate::scale::{Sud, Voc};
use crate::wire::Moment;

/// The state of a target.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// In the plan, not begun.
    #[default]
    Planned,
    /// Being worked on.
    Active,
    /// Begun, and set aside before its end.
    Incomplete,
    /// At its procedure's end. Provisional until [`Held::Yes`].
    Complete,
    /// Restricted work that ended as planned.
    Reduced,
    /// Was at its end, and is worked on again.
    Reopened,
}

impl State {
    /// Nothing is left to do on it, as far as is known.
    #[must_use]
    pub const fn is_over(self) -> bool {
        matches!(self, Self::Complete | Self::Reduced)
    }

    /// The state once a set was begun: what is over goes on beside that until somebody says that it is reopened. It depends on nothing
    /// else, so whoever starts sets needs no other fact.
    #[must_use]
    pub const fn with_set(self) -> Self {
        match self {
            Self::Planned | Self::Incomplete => Self::Active,
            Self::Active | Self::Complete | Self::Reduced | Self::Reopened => self,
        }
    }
}

/// Whether a completion held when the target was looked at again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Held {
    /// Nobody has looked yet: it is provisional.
    NotYet,
    /// Rated again, no higher in disturbance and no lower in belief than it ended with.
    Yes,
    /// It rose again: whether it is reopened is for the clinician to say.
    No,
}

/// What is known of a target that its end asks for.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Known {
    /// Its procedure.
    pub procedure: Procedure,
    /// The SUD given last, of the whole.
    pub sud: Option<Sud>,
    /// The SUD given last of each segment, by its number.
    pub segments: BTreeMap<u8, Sud>,
    /// The VOC given last, of the belief that is wanted now and since the target was reopened.
    pub voc: Option<Voc>,
    /// The SUD that stands was said to fit.
    pub sud_fits: bool,
    /// The VOC that stands was said to fit.
    pub voc_fits: bool,
    /// The last scan, unless something disturbed since.
    pub scan: Option<Scan>,
    /// The last rehearsal of a situation to come.
    pub rehearsal: Option<Rehearsal>,
}

/// A target as its record has it. See the module.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Course {
    /// The state.
    pub state: State,
    /// Of what is complete: whether it held. `None` otherwise.
    pub held: Option<Held>,
    /// The code with which it was called complete while ends were open.
    pub because: Option<Because>,
    /// It was called complete without a code, and the record as it stands now does not carry that.
    pub unfounded: bool,
    /// What its end asks for.
    pub known: Known,
    /// The SUD given first.
    pub first_sud: Option<Sud>,
    /// The VOC given first.
    pub first_voc: Option<Voc>,
    /// What it ended with when it was called complete.
    ended: Option<(Option<Sud>, Option<Voc>)>,
}

impl Course {
    /// Folds what was said, in the order of the record.
    ///
    /// ```
    /// use leeward_core::course::{Course, Decision, Said, State};
    /// let course = Course::of([Said::Set, Said::Decided(Decision::Complete, None)]);
    /// assert_eq!(course.state, State::Active, "no rating carries it, and there is no code");
    /// ```
    pub fn of(said: impl IntoIterator<Item = Said>) -> Self {
        let mut course = Self::default();
        for one in said {
            course.take(one);
        }
        course
    }

    /// All that its procedure's end asks for, in the order of the work.
    #[must_use]
    pub fn asks(&self) -> &'static [End] {
        ends::asked(self.known.procedure)
    }

    /// What its procedure's end still asks for, in the order of the work; empty: it may be called complete without a code.
    #[must_use]
    pub fn open(&self) -> Vec<End> {
        ends::open(&self.known)
    }

    /// What the clinician may decide now. Complete is among them though ends are open: then it needs a code.
    #[must_use]
    pub fn choices(&self) -> Vec<Decision> {
        if self.state.is_over() {
            return vec![Decision::Reopened];
        }
        let end = if self.known.procedure == Procedure::Restricted { Decision::Reduced } else { Decision::Complete };
        if self.state == State::Incomplete { vec![end] } else { vec![Decision::Incomplete, end] }
    }

    /// Whether `decision` can be kept as it stands: it may follow, and the record or a code carries it.
    #[must_use]
    pub fn carries(&self, decision: Decision, because: Option<Because>) -> bool {
        self.choices().contains(&decision) && (decision != Decision::Complete || because.is_some() || self.open().is_empty())
    }

    /// Takes in the next thing that was said.
    pub fn take(&mut self, said: Said) {
        match said {
            Said::Procedure(procedure) => self.known.procedure = procedure,
            Said::Set => self.state = self.state.with_set(),
            Said::Mark(_) => {}
            Said::Sud { value, moment, segment } => self.rated_sud(value, moment, segment),
            Said::Voc { value, moment } => self.rated_voc(value, moment),
            Said::SudFits => self.known.sud_fits = true,
            Said::VocFits => self.known.voc_fits = true,
            Said::Scan(scan) => self.known.scan = Some(scan),
            Said::Rehearsal(rehearsal) => self.known.rehearsal = Some(rehearsal),
            Said::Belief(Belief::Still) => {}
            Said::Belief(Belief::Another) => (self.known.voc, self.known.voc_fits) = (None, false),
            Said::Decided(decision, because) => self.decided(decision, because),
            Said::CarriedOver(state) => self.set_state(state, None),
        }
    }

    fn rated_sud(&mut self, value: Sud, moment: Moment, segment: Option<u8>) {
        self.first_sud.get_or_insert(value);
        match segment {
            Some(segment) => {
                self.known.segments.insert(segment, value);
            }
            None => self.known.sud = Some(value),
        }
        self.known.sud_fits = false;
        if value.get() > ends::FITS_AT {
            self.known.scan = None;
        }
        if moment != Moment::Assessment {
            self.looked_again(moment);
        }
    }

    fn rated_voc(&mut self, value: Voc, moment: Moment) {
        self.first_voc.get_or_insert(value);
        self.known.voc = Some(value);
        self.known.voc_fits = false;
        if moment != Moment::Assessment {
            self.looked_again(moment);
        }
    }

    /// Of what is complete: a rise counts whenever it was rated, that it held only as a re-evaluation.
    fn looked_again(&mut self, moment: Moment) {
        let (State::Complete, Some((sud, voc))) = (self.state, self.ended) else { return };
        let worst = self.known.sud.max(self.known.segments.values().max().copied());
        let rose = worst.zip(sud).is_some_and(|(now, then)| now > then) || self.known.voc.zip(voc).is_some_and(|(now, then)| now < then);
        if rose {
            self.held = Some(Held::No);
        } else if moment == Moment::Reevaluation {
            self.held = Some(Held::Yes);
        }
    }

    fn decided(&mut self, decision: Decision, because: Option<Because>) {
        if !self.carries(decision, because) {
            // Somebody said so all the same, or it was true until a rating was corrected: told, and not done.
            self.unfounded |= decision == Decision::Complete;
            return;
        }
        match decision {
            Decision::Incomplete => self.set_state(State::Incomplete, None),
            Decision::Complete => {
                let open = !self.open().is_empty();
                self.set_state(State::Complete, because.filter(|_| open));
            }
            Decision::Reduced => self.set_state(State::Reduced, None),
            Decision::Reopened => {
                self.set_state(State::Reopened, None);
                // Whatever was felt or believed then has to be asked again, once it disturbs no more.
                (self.known.scan, self.known.rehearsal) = (None, None);
                (self.known.voc, self.known.voc_fits) = (None, false);
            }
        }
    }

    fn set_state(&mut self, state: State, because: Option<Because>) {
        (self.state, self.because, self.unfounded) = (state, because, false);
        let complete = state == State::Complete;
        self.held = complete.then_some(Held::NotYet);
        self.ended = complete.then(|| (self.known.sud.max(self.known.segments.values().max().copied()), self.known.voc));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wire::Change;

    fn sud(value: u8, moment: Moment) -> Said {
        Said::Sud { value: Sud::new(value).unwrap(), moment, segment: None }
    }

    fn voc(value: u8, moment: Moment) -> Said {
        Said::Voc { value: Voc::new(value).unwrap(), moment }
    }

    /// Worked through to the end of the standard procedure.
    fn done() -> Vec<Said> {
        vec![
            sud(8, Moment::Assessment),
            voc(2, Moment::Assessment),
            Said::Set,
            Said::Mark(Change::Settled),
            sud(0, Moment::BackAtTarget),
            voc(7, Moment::Installation),
            Said::Scan(Scan::Clear),
            Said::Decided(Decision::Complete, None),
        ]
    }

    fn after(more: &[Said]) -> Course {
        Course::of(done().into_iter().chain(more.iter().copied()))
    }

    // EMDRIA's description: complete at SUD 0, VOC 7 and a clear body; the re-evaluation opens the next session.
    #[test]
    fn complete_is_provisional_until_it_was_looked_at_again() {
        assert_eq!((after(&[]).state, after(&[]).held), (State::Complete, Some(Held::NotYet)));
        let held = after(&[sud(0, Moment::Reevaluation), voc(7, Moment::Reevaluation)]);
        assert_eq!((held.state, held.held), (State::Complete, Some(Held::Yes)));
        let rose = after(&[sud(3, Moment::Reevaluation)]);
        assert_eq!((rose.state, rose.held), (State::Complete, Some(Held::No)), "reopening is a decision");
        let less = after(&[sud(0, Moment::Reevaluation), voc(5, Moment::Reevaluation)]);
        assert_eq!(less.held, Some(Held::No), "the belief has weakened");
    }

    #[test]
    fn a_confirmed_target_that_rises_again_is_reopened_and_not_overwritten() {
        let confirmed = [sud(0, Moment::Reevaluation), voc(7, Moment::Reevaluation)];
        let risen = after(&[confirmed[0], confirmed[1], sud(4, Moment::Reevaluation)]);
        assert_eq!((risen.state, risen.held), (State::Complete, Some(Held::No)));
        let reopened = after(&[sud(4, Moment::Reevaluation), Said::Decided(Decision::Reopened, None)]);
        assert_eq!((reopened.state, reopened.held), (State::Reopened, None));
        assert_eq!(reopened.open(), [End::Sud, End::Voc, End::Scan], "belief and body of then say nothing of now");
        assert_eq!(reopened.first_sud.map(Sud::get), Some(8), "the history stays");
    }

    #[test]
    fn work_begins_with_a_set_and_ends_with_a_decision() {
        assert_eq!(Course::of([sud(8, Moment::Assessment)]).state, State::Planned, "an assessment is a plan");
        assert_eq!(Course::of([Said::Set]).state, State::Active);
        assert_eq!(Course::of([Said::Set, Said::Decided(Decision::Incomplete, None)]).state, State::Incomplete);
        assert_eq!(Course::of([Said::Set, Said::Decided(Decision::Incomplete, None), Said::Set]).state, State::Active);
        assert_eq!(after(&[Said::Set]).state, State::Complete, "nothing is reopened by itself");
    }

    #[test]
    fn complete_against_its_end_needs_a_code_and_keeps_it() {
        let so_far = [Said::Set, sud(4, Moment::BackAtTarget), voc(2, Moment::Installation)];
        let without = Course::of(so_far.into_iter().chain([Said::Decided(Decision::Complete, None)]));
        assert_eq!((without.state, without.unfounded), (State::Active, true));
        let with = Course::of(so_far.into_iter().chain([Said::Decided(Decision::Complete, Some(Because::Judgement))]));
        assert_eq!((with.state, with.because, with.unfounded), (State::Complete, Some(Because::Judgement), false));
        let needless = Course::of(done().into_iter().take(7).chain([Said::Decided(Decision::Complete, Some(Because::Judgement))]));
        assert_eq!(needless.because, None, "a code where none was needed says nothing");
    }

    #[test]
    fn restricted_work_ends_reduced_and_is_never_complete() {
        let mut course = Course::of(done().into_iter().take(7).chain([Said::Procedure(Procedure::Restricted)]));
        assert_eq!(course.choices(), [Decision::Incomplete, Decision::Reduced]);
        assert!(!course.carries(Decision::Complete, Some(Because::Judgement)));
        course.take(Said::Decided(Decision::Reduced, None));
        assert_eq!((course.state, course.held, course.choices()), (State::Reduced, None, vec![Decision::Reopened]));
    }

    #[test]
    fn a_state_from_before_is_carried_over_as_it_was() {
        for state in [State::Planned, State::Active, State::Incomplete, State::Complete, State::Reopened] {
            let course = Course::of([Said::Set, sud(6, Moment::AfterSet), Said::CarriedOver(state)]);
            assert_eq!((course.state, course.held), (state, (state == State::Complete).then_some(Held::NotYet)));
        }
    }
}
