//! How a set is built and changed. Every function is pure: the old timeline in, the new one out.

use crate::safety::{RATE_HZ, SET_MS};
use crate::wire::{Length, Plan, Segment, Timeline};

/// From rest to the ordered rate at the start, and back to rest at the planned end, ms.
pub const RAMP_MS: f64 = 1_000.0;
/// From one rate to another, ms; longer where the change would be steeper than 2 Hz a second.
pub const SHIFT_MS: f64 = 500.0;
/// To rest at the next extreme when the clinician asks for the end, ms.
pub const EASE_MS: f64 = 600.0;
/// The rate rises by no more than this, Hz a second: that of the ramp to the highest rate.
const STEEPEST: f64 = 2.0;
/// Pieces and remainders of time below this are rounding, ms.
const LEAST_MS: f64 = 1e-6;
/// Phases closer than this are the same, cycles.
const SAME_PHASE: f64 = 1e-9;

/// Where a set is to end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Goal {
    /// Cycles in all; `None` for a set without a planned end.
    pub cycles: Option<f64>,
    /// Room time by which it rests, whatever the plan says, ms.
    pub by: f64,
}

/// So little of the set is left that the change would not fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoRoom;

impl Goal {
    /// The goal of a set with this plan that first moves at room time `at`, ms.
    pub fn of(plan: &Plan, at: f64) -> Self {
        let cycles = match plan.length {
            Length::Cycles(cycles) => Some(f64::from(cycles)),
            Length::Open => None,
        };
        Goal { cycles, by: at + SET_MS }
    }
}

impl Timeline {
    /// The set that `plan` describes, at rest until room time `at`: a ramp, the ordered rate, and
    /// an ease to rest at the planned extreme. A set without planned end gets the last extreme
    /// that it can reach within the hard limit.
    ///
    /// The plan must have passed `safety::check`. A set too short for both ramps stays below the
    /// ordered rate.
    pub fn start(plan: &Plan, at: f64) -> Self {
        let goal = Goal::of(plan, at);
        let rest = Pen { t: at, phase: 0.0, rate: 0.0 };
        rest.reach(plan.rate, RAMP_MS, goal)
            .or_else(|NoRoom| {
                let cycles = goal.cycles.unwrap_or(0.5);
                rest.reach(cycles * 1_000.0 / RAMP_MS, RAMP_MS, goal)
            })
            .map(|segments| Timeline { segments })
            .unwrap_or_default()
    }

    /// From room time `at` on the rate goes to `rate`, and the set still ends where `goal` says,
    /// or at the last extreme before `goal.by`.
    ///
    /// # Errors
    /// [`NoRoom`] when too little of the set is left; the timeline then stays as it is.
    pub fn change_rate(&self, at: f64, rate: f64, goal: Goal) -> Result<Self, NoRoom> {
        let start = self.starts_at().ok_or(NoRoom)?;
        if self.is_over(at) {
            return Err(NoRoom);
        }
        if at <= start {
            let pen = Pen { t: start, phase: 0.0, rate: 0.0 };
            let segments = pen.reach(rate, RAMP_MS, goal)?;
            return Ok(Timeline { segments });
        }
        let pen = Pen::at(self, at);
        let shift = SHIFT_MS.max((rate - pen.rate).abs() / STEEPEST * 1_000.0);
        let tail = pen.reach(rate, shift, goal)?;
        Ok(self.cut(at).with(tail))
    }

    /// The set ends `cycles` later than it would, at `rate`.
    ///
    /// # Errors
    /// [`NoRoom`] when it is over at `at`, or could not reach the new end by `by`, room time, ms.
    pub fn extend(&self, at: f64, cycles: f64, rate: f64, by: f64) -> Result<Self, NoRoom> {
        let end = self.end_phase() + cycles;
        let longer = self.change_rate(at, rate, Goal { cycles: Some(end), by })?;
        if longer.end_phase() < end - SAME_PHASE {
            return Err(NoRoom);
        }
        Ok(longer)
    }

    /// From room time `at` on the set goes to the next extreme that it can reach gently, and rests.
    /// A set that comes to rest sooner anyway stays as it is; one that has not moved never does.
    pub fn end_at_next_extreme(&self, at: f64) -> Self {
        if self.starts_at().is_none_or(|start| at <= start) {
            return Timeline::default();
        }
        if self.is_over(at) {
            return self.clone();
        }
        let ended = self.cut(at).with(Pen::at(self, at).glide());
        if ended.ends_at() < self.ends_at() { ended } else { self.clone() }
    }

    /// At room time `at` the dot freezes where it is.
    pub fn stop(&self, at: f64) -> Self {
        self.cut(at)
    }

    /// What comes before room time `at`.
    fn cut(&self, at: f64) -> Self {
        let segments = self.segments.iter().filter_map(|segment| {
            let lasts = segment.lasts.min(at - segment.starts_at);
            let rate_to = if lasts < segment.lasts { segment.read(at).rate } else { segment.rate_to };
            (lasts > LEAST_MS).then_some(Segment { lasts, rate_to, ..*segment })
        });
        Timeline { segments: segments.collect() }
    }

    fn with(mut self, tail: Vec<Segment>) -> Self {
        self.segments.extend(tail);
        self
    }
}

/// The end of what is drawn so far.
#[derive(Clone, Copy)]
struct Pen {
    t: f64,
    phase: f64,
    rate: f64,
}

impl Pen {
    fn at(timeline: &Timeline, t: f64) -> Self {
        let reading = timeline.read(t);
        Pen { t, phase: reading.phase, rate: reading.rate }
    }

    /// To `rate` in `shift` ms, on at that rate, and to rest in [`RAMP_MS`] where the goal says.
    fn reach(self, rate: f64, shift: f64, goal: Goal) -> Result<Vec<Segment>, NoRoom> {
        let shifted = (self.rate + rate) / 2.0 * shift / 1_000.0;
        let eased = rate / 2.0 * RAMP_MS / 1_000.0;
        let left_ms = goal.by - self.t - shift - RAMP_MS;
        let farthest = half_down(self.phase + shifted + eased + rate * left_ms / 1_000.0);
        let end = goal.cycles.map_or(farthest, |cycles| cycles.min(farthest));
        let cruise = end - self.phase - shifted - eased;
        if cruise < -SAME_PHASE || left_ms < 0.0 {
            return Err(NoRoom);
        }
        let mut tail = Tail::from(self);
        tail.go(rate, shift);
        tail.go(rate, cruise / rate * 1_000.0);
        tail.go(0.0, RAMP_MS);
        Ok(tail.segments)
    }

    /// To rest at the next extreme that leaves [`EASE_MS`] for the ease. A dot that has hardly
    /// begun is brought to the least rate first, or it would creep.
    fn glide(self) -> Vec<Segment> {
        let rate = self.rate.max(*RATE_HZ.start());
        let shift = if rate > self.rate { SHIFT_MS } else { 0.0 };
        let shifted = (self.rate + rate) / 2.0 * shift / 1_000.0;
        let eased = rate / 2.0 * EASE_MS / 1_000.0;
        let end = half_up(self.phase + shifted + eased);
        let cruise = (end - self.phase - shifted - eased).max(0.0);
        let mut tail = Tail::from(self);
        tail.go(rate, shift);
        tail.go(rate, cruise / rate * 1_000.0);
        tail.go(0.0, EASE_MS);
        tail.segments
    }
}

struct Tail {
    pen: Pen,
    segments: Vec<Segment>,
}

impl Tail {
    fn from(pen: Pen) -> Self {
        Tail { pen, segments: Vec::with_capacity(3) }
    }

    fn go(&mut self, rate: f64, lasts: f64) {
        if lasts <= LEAST_MS {
            return;
        }
        let segment = Segment { starts_at: self.pen.t, lasts, phase: self.pen.phase, rate_from: self.pen.rate, rate_to: rate };
        self.pen = Pen { t: segment.ends_at(), phase: segment.end_phase(), rate };
        self.segments.push(segment);
    }
}

/// The last extreme at or before `phase`.
fn half_down(phase: f64) -> f64 {
    ((phase + SAME_PHASE) * 2.0).floor() / 2.0
}

/// The first extreme at or after `phase`.
fn half_up(phase: f64) -> f64 {
    ((phase - SAME_PHASE) * 2.0).ceil() / 2.0
}
