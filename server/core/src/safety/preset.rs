//! Limits of a preset: those of the sets it makes, and closer ones for work on a calm place.

use std::ops::RangeInclusive;

use super::{check, default_plan, limit, within};
use crate::wire::{Length, Preset, Purpose, Refusal};

/// Cycles of a set for a calm place. 6 to 8 are usual (common practice, no source); the ends are ours.
pub const CALM_CYCLES: RangeInclusive<u32> = 1..=12;
/// Cycles per second of such a set. Ours: slower than the 1.2 Hz that counts as fast (van Veen 2015).
pub const CALM_RATE_HZ: RangeInclusive<f64> = 0.3..=1.0;

/// Refuses a preset that no set may have, and one for a calm place that is not short and slow. What a
/// preset leaves out (path, dot) is taken from [`default_plan`].
///
/// # Errors
/// As [`check`].
pub fn check_preset(preset: &Preset) -> Result<(), Refusal> {
    check(&preset.applied_to(default_plan()), false)?;
    if preset.purpose == Purpose::Processing {
        return Ok(());
    }
    within("rate of a calm-place preset", preset.rate, &CALM_RATE_HZ, "Hz")?;
    match preset.length {
        Length::Cycles(cycles) if CALM_CYCLES.contains(&cycles) => Ok(()),
        _ => limit(format!("A calm-place preset must have {} to {} cycles.", CALM_CYCLES.start(), CALM_CYCLES.end())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wire::Channels;

    fn preset(purpose: Purpose, rate: f64, length: Length) -> Preset {
        let channels = Channels { eyes: true, ..default_plan().channels };
        Preset { name: "one".into(), purpose, channels, rate, width: 18.0, length }
    }

    /// Slow, standard and fast: van Veen et al. 2015, doi 10.3389/fpsyt.2015.00045.
    #[test]
    fn the_published_rates_are_open_to_a_preset() {
        for rate in [0.8, 1.0, 1.2] {
            assert_eq!(check_preset(&preset(Purpose::Processing, rate, Length::Cycles(24))), Ok(()));
        }
    }

    /// 6 to 8 cycles: common practice, no source.
    #[test]
    fn a_calm_place_is_short_and_slow() {
        for cycles in 6..=8 {
            assert_eq!(check_preset(&preset(Purpose::CalmPlace, 0.5, Length::Cycles(cycles))), Ok(()));
        }
        for (rate, length) in [(1.2, Length::Cycles(6)), (0.5, Length::Cycles(24)), (0.5, Length::Open), (f64::NAN, Length::Cycles(6))] {
            assert!(check_preset(&preset(Purpose::CalmPlace, rate, length)).is_err(), "{rate} {length:?}");
        }
    }

    #[test]
    fn no_preset_passes_by_the_limits_of_a_set() {
        for (rate, length) in
            [(2.5, Length::Open), (0.2, Length::Open), (1.0, Length::Cycles(0)), (1.0, Length::Cycles(201)), (0.3, Length::Cycles(200))]
        {
            assert!(check_preset(&preset(Purpose::Processing, rate, length)).is_err(), "{rate} {length:?}");
        }
    }

    #[test]
    fn what_a_preset_leaves_out_stays_as_it_was() {
        let plan = crate::wire::Plan { dot: 0.7, path: crate::wire::Path::Falling, ..default_plan() };
        let applied = preset(Purpose::Processing, 0.8, Length::Cycles(30)).applied_to(plan);
        assert_eq!((applied.dot, applied.path, applied.rate, applied.length), (0.7, crate::wire::Path::Falling, 0.8, Length::Cycles(30)));
    }
}
