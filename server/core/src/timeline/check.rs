//! What a timeline must be.

use crate::safety::RATE_HZ;
use crate::wire::{Segment, Timeline};

/// Gaps below these are rounding.
const TIME_TOLERANCE_MS: f64 = 1e-6;
const PHASE_TOLERANCE: f64 = 1e-9;

/// What is wrong with a timeline; `at` counts segments from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// A figure is infinite or not a number.
    NotFinite {
        /// The segment.
        at: usize,
    },
    /// A segment lasts no time.
    NoLength {
        /// The segment.
        at: usize,
    },
    /// A rate is negative or above [`RATE_HZ`].
    Rate {
        /// The segment.
        at: usize,
    },
    /// A segment does not start when the one before ends.
    TimeGap {
        /// The later segment.
        at: usize,
    },
    /// A segment does not start at the phase where the one before ends.
    PhaseGap {
        /// The later segment.
        at: usize,
    },
}

impl Timeline {
    /// Whether it can be played: finite, contiguous in time and in phase, rates within limits.
    ///
    /// # Errors
    /// The first [`Fault`].
    pub fn validate(&self) -> Result<(), Fault> {
        for (at, segment) in self.segments.iter().enumerate() {
            check_segment(at, segment)?;
        }
        for (i, pair) in self.segments.windows(2).enumerate() {
            check_joint(i + 1, &pair[0], &pair[1])?;
        }
        Ok(())
    }
}

fn check_segment(at: usize, segment: &Segment) -> Result<(), Fault> {
    let Segment { starts_at, lasts, phase, rate_from, rate_to } = *segment;
    if [starts_at, lasts, phase, rate_from, rate_to].iter().any(|figure| !figure.is_finite()) {
        return Err(Fault::NotFinite { at });
    }
    if lasts <= 0.0 {
        return Err(Fault::NoLength { at });
    }
    // Ramps pass through rates below the least that can be ordered.
    if [rate_from, rate_to].iter().any(|rate| !(0.0..=*RATE_HZ.end()).contains(rate)) {
        return Err(Fault::Rate { at });
    }
    Ok(())
}

fn check_joint(at: usize, before: &Segment, after: &Segment) -> Result<(), Fault> {
    if (before.ends_at() - after.starts_at).abs() > TIME_TOLERANCE_MS {
        return Err(Fault::TimeGap { at });
    }
    if (before.end_phase() - after.phase).abs() > PHASE_TOLERANCE {
        return Err(Fault::PhaseGap { at });
    }
    Ok(())
}
