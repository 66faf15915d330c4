//! The life of one set: asked for, written down, running, over.

use super::{Cause, Effect, PAUSE_MS, RECORD_WAIT_MS, Room, StopNews, StoppedBy};
use crate::safety::REST_MS;
use crate::timeline::{Goal, NoRoom};
use crate::wire::{Ending, Length, Plan, Refusal, RoomState, SetView, Timeline};

/// More pieces than this in one set come from a held key, not from a decision.
pub(super) const MOST_SEGMENTS: usize = 240;

/// A set that is being written to the record.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct Starting {
    number: u32,
    plan: Plan,
    since: f64,
    desk: u64,
    order: u32,
}

/// A set that was given up before it was known to be in the record.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct Orphan {
    number: u32,
    ending: Ending,
}

/// A set that runs or ran.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct LiveSet {
    pub id: String,
    pub number: u32,
    pub plan: Plan,
    pub timeline: Timeline,
    pub goal: Goal,
    /// Cycles first ordered; `None` for an open one.
    pub base_cycles: Option<u32>,
    /// It was asked to come to rest, which is how it will have ended then.
    pub end_asked: Option<Ending>,
    pub ended: Option<Ending>,
    /// The client's page has said that it moves, sounds or taps.
    pub seen: bool,
    orders: u32,
}

impl LiveSet {
    fn new(id: String, number: u32, plan: Plan, at: f64) -> Self {
        let base_cycles = match plan.length {
            Length::Cycles(cycles) => Some(cycles),
            Length::Open => None,
        };
        LiveSet {
            id,
            number,
            plan,
            timeline: Timeline::start(&plan, at),
            goal: Goal::of(&plan, at),
            base_cycles,
            end_asked: None,
            ended: None,
            seen: false,
            orders: 0,
        }
    }

    pub fn view(&self) -> SetView {
        SetView { id: self.id.clone(), number: self.number, plan: self.plan, timeline: self.timeline.clone(), ended: self.ended }
    }

    /// The state word while it runs.
    pub fn state(&self, now: f64) -> RoomState {
        let eases = self.end_asked.is_some() || self.timeline.eases_at().is_some_and(|at| now >= at);
        match (self.seen, eases) {
            (false, _) => RoomState::Starting,
            (true, false) => RoomState::Running,
            (true, true) => RoomState::Easing,
        }
    }

    /// Whether the timeline changed; `ending`: why it is to end.
    pub fn end_at_next_extreme(&mut self, at: f64, ending: Ending) -> bool {
        let ended = self.timeline.end_at_next_extreme(at);
        if self.end_asked.is_some() || ended == self.timeline {
            return false;
        }
        self.timeline = ended;
        self.end_asked = Some(ending);
        true
    }

    pub fn extend(&mut self, at: f64, cycles: u32) -> Result<(), NoRoom> {
        let longer = self.timeline.extend(at, f64::from(cycles), self.plan.rate, self.goal.by)?;
        self.goal.cycles = Some(longer.end_phase().round());
        if let Length::Cycles(planned) = self.plan.length {
            self.plan.length = Length::Cycles(planned + cycles);
        }
        self.timeline = longer;
        Ok(())
    }

    /// It was changed so often that it takes no further change of its rate or length.
    pub fn is_full(&self) -> bool {
        self.timeline.segments.len() >= MOST_SEGMENTS
    }

    pub fn change_rate(&mut self, at: f64, rate: f64) -> Result<(), NoRoom> {
        self.timeline = self.timeline.change_rate(at, rate, self.goal)?;
        self.plan.rate = rate;
        Ok(())
    }

    /// How it ended, when it came to the end of its timeline.
    fn natural_ending(&self) -> Ending {
        let reached = self.timeline.end_phase();
        if let Some(ending) = self.end_asked {
            ending
        } else if self.goal.cycles.is_some_and(|cycles| reached >= cycles - 1e-6) {
            Ending::Done
        } else {
            Ending::HardLimit
        }
    }
}

impl Room {
    pub(super) fn running(&self) -> Option<&LiveSet> {
        self.set.as_ref().filter(|set| set.ended.is_none())
    }

    pub(super) fn running_mut(&mut self) -> Option<&mut LiveSet> {
        self.set.as_mut().filter(|set| set.ended.is_none())
    }

    /// A set runs or is about to.
    pub(super) fn is_active(&self) -> bool {
        self.starting.is_some() || self.running().is_some()
    }

    pub(super) fn active_plan(&self) -> Option<Plan> {
        let starting = self.starting.as_ref().map(|starting| starting.plan);
        starting.or_else(|| self.running().map(|set| set.plan))
    }

    pub(super) fn begin_set(&mut self, desk: u64, order: u32) {
        self.put_away();
        let (number, plan) = (self.number + 1, self.plan);
        self.starting = Some(Starting { number, plan, since: self.now, desk, order });
        self.effects.push(Effect::RecordSet { number, plan });
    }

    pub(super) fn set_recorded(&mut self, number: u32, id: String) {
        self.known_sets.insert(id.clone());
        if let Some(place) = self.orphans.iter().position(|orphan| orphan.number == number) {
            let ending = self.orphans.swap_remove(place).ending;
            let at = self.now;
            return self.effects.push(Effect::RecordEnding { set: id, ending, at });
        }
        let Some(starting) = self.starting.take_if(|starting| starting.number == number) else {
            return;
        };
        self.number = number;
        // Both pages must have it in time to show the dot at rest.
        let at = self.now + REST_MS + self.lead();
        self.set = Some(LiveSet::new(id, number, starting.plan, at));
        self.stopped = None;
        self.stop_news = StopNews::None;
        // What the stage knows of the desk must be new when it looks whether it may show this.
        self.beat_to_stage();
        self.record_ordered(Cause::Started);
        self.answer(starting.desk, starting.order, None);
    }

    pub(super) fn set_not_recorded(&mut self, number: u32) {
        self.orphans.retain(|orphan| orphan.number != number);
        if let Some(starting) = self.starting.take_if(|starting| starting.number == number) {
            // A commit whose answer was lost may still come about: the number is not given twice.
            self.number = number;
            self.answer(starting.desk, starting.order, Some(Refusal::NotSaved));
        }
    }

    pub(super) fn starting_due(&self) -> Option<f64> {
        self.starting.as_ref().map(|starting| starting.since + RECORD_WAIT_MS)
    }

    pub(super) fn give_up_starting(&mut self) {
        if self.starting_due().is_some_and(|due| self.now >= due) {
            self.abandon(Ending::Unknown, Refusal::NotSaved);
        }
    }

    /// The set in the making never runs. Whether it is in the record is not known yet, so its
    /// number is used up.
    fn abandon(&mut self, ending: Ending, refusal: Refusal) -> bool {
        let Some(starting) = self.starting.take() else {
            return false;
        };
        self.number = starting.number;
        self.orphans.push(Orphan { number: starting.number, ending });
        self.answer(starting.desk, starting.order, Some(refusal));
        true
    }

    /// When the state word of the set changes by time alone.
    pub(super) fn set_due(&self) -> Option<f64> {
        let set = self.running()?;
        let eases = set.timeline.eases_at().filter(|&at| at > self.now && set.end_asked.is_none());
        eases.or_else(|| set.timeline.ends_at())
    }

    /// A set whose timeline is over has ended, unless a silence was due before that.
    pub(super) fn finish_set(&mut self) {
        let silence = [self.desk_due(), self.stage_due()].into_iter().flatten();
        let until = silence.fold(self.now, f64::min);
        let over = self.running().filter(|set| set.timeline.is_over(until));
        if let Some(ending) = over.map(LiveSet::natural_ending) {
            self.end_set(ending);
        }
    }

    /// Ends the set that runs or is about to; does nothing when there is none.
    pub(super) fn end_set(&mut self, ending: Ending) {
        let abandoned = self.abandon(ending, Refusal::WrongState);
        if self.running().is_some() {
            self.cut_off(ending);
        } else if !abandoned {
            return;
        }
        if !matches!(ending, Ending::Done | Ending::EndedByClinician) {
            self.note_stop(ending);
        }
    }

    pub(super) fn note_stop(&mut self, ending: Ending) {
        self.pause_until = self.now + PAUSE_MS;
        self.stopped = Some(match ending {
            Ending::StoppedByClient => StoppedBy::Client,
            _ => StoppedBy::Other,
        });
    }

    fn cut_off(&mut self, ending: Ending) {
        let at = self.now;
        let Some(set) = self.running_mut() else {
            return;
        };
        let cut = !set.timeline.is_over(at);
        if cut {
            set.timeline = set.timeline.stop(at);
            self.record_ordered(Cause::Stopped(ending));
        }
        if let Some(set) = self.running_mut() {
            set.ended = Some(ending);
            let set = set.id.clone();
            self.effects.push(Effect::RecordEnding { set, ending, at });
        }
    }

    /// What asks for a rest came before the dot ever moved, or the dot now eases out.
    pub(super) fn record_end_asked(&mut self, ending: Ending) {
        self.record_ordered(if ending == Ending::EndedByClinician { Cause::End } else { Cause::Eased(ending) });
        self.finish_set();
    }

    pub(super) fn record_ordered(&mut self, cause: Cause) {
        let at = self.now;
        let Some(set) = self.running_mut() else {
            return;
        };
        let seq = set.orders;
        set.orders += 1;
        let ordered = Effect::RecordOrdered { set: set.id.clone(), seq, cause, plan: set.plan, timeline: set.timeline.clone(), at };
        self.effects.push(ordered);
    }
}
