//! Phase and rate at any room time, in closed form; never by stepping frames.
//!
//! A [`Timeline`] is built in `shape` and read here. Phase never falls and never jumps; the rate
//! never jumps except where the set was stopped at once.

mod check;
mod shape;

pub use check::Fault;
pub use shape::{EASE_MS, Goal, NoRoom, RAMP_MS, SHIFT_MS};

use crate::wire::{Segment, Timeline};

/// Where a timeline is at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Cycles since the set began.
    pub phase: f64,
    /// Hz; 0 at rest.
    pub rate: f64,
}

impl Segment {
    /// Room time of its end, ms.
    pub fn ends_at(&self) -> f64 {
        self.starts_at + self.lasts
    }

    /// Cycles since the set began, at its end.
    pub fn end_phase(&self) -> f64 {
        self.phase + (self.rate_from + self.rate_to) / 2.0 * self.lasts / 1_000.0
    }

    /// The reading at `t`, which must lie within the segment.
    fn read(&self, t: f64) -> Reading {
        let s = (t - self.starts_at) / 1_000.0;
        let slope = (self.rate_to - self.rate_from) / (self.lasts / 1_000.0);
        Reading { phase: self.phase + self.rate_from * s + slope * s * s / 2.0, rate: self.rate_from + slope * s }
    }
}

impl Timeline {
    /// Phase and rate at room time `t`, ms. Before the first segment and after the last it rests.
    ///
    /// ```
    /// use leeward_core::{safety::default_plan, wire::Timeline};
    /// let set = Timeline::start(&default_plan(), 5_000.0);
    /// assert_eq!(set.read(4_000.0).phase, 0.0);
    /// assert_eq!(set.read(6_000.0).rate, 1.0);
    /// assert_eq!(set.read(60_000.0).phase, 24.0);
    /// ```
    pub fn read(&self, t: f64) -> Reading {
        let begun = self.segments.partition_point(|segment| segment.starts_at <= t);
        let Some(segment) = begun.checked_sub(1).and_then(|i| self.segments.get(i)) else {
            let phase = self.segments.first().map_or(0.0, |first| first.phase);
            return Reading { phase, rate: 0.0 };
        };
        if t < segment.ends_at() { segment.read(t) } else { Reading { phase: segment.end_phase(), rate: 0.0 } }
    }

    /// Room time of the first motion, ms; `None` when nothing ever moves.
    pub fn starts_at(&self) -> Option<f64> {
        self.segments.first().map(|segment| segment.starts_at)
    }

    /// Room time from which it rests for good, ms; `None` when nothing ever moves.
    pub fn ends_at(&self) -> Option<f64> {
        self.segments.last().map(Segment::ends_at)
    }

    /// Cycles in all.
    pub fn end_phase(&self) -> f64 {
        self.segments.last().map_or(0.0, Segment::end_phase)
    }

    /// Whether it rests for good at `t`.
    pub fn is_over(&self, t: f64) -> bool {
        self.ends_at().is_none_or(|end| t >= end)
    }

    /// Room time at which it begins to come to its last rest, ms.
    pub fn eases_at(&self) -> Option<f64> {
        self.segments.last().filter(|last| last.rate_to == 0.0).map(|last| last.starts_at)
    }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
mod vectors;
