//! Limits that nothing may exceed. Every plan passes [`check`] before it reaches a client.
//!
//! WCAG 2.2, success criterion 2.3.1 allows three flashes in any one second, or any number below
//! an area of 0.006 sr in any 10 degree field. A moving dot crosses the middle of its path twice a
//! cycle, so above 1.5 Hz it passes by its area alone.

use std::fmt::Display;
use std::ops::RangeInclusive;

use crate::optics;
use crate::wire::{Channels, Comfort, Length, Path, Plan, Purpose, Refusal};

/// Cycles per second. Laboratory work uses 0.8 to 1.2 Hz (van Veen 2015); the ends are ours.
pub const RATE_HZ: RangeInclusive<f64> = 0.3..=2.0;
/// Degrees from extreme to extreme. No published figure was found; the upper end is ours, since
/// most healthy people show nystagmus with the gaze held beyond 20 degrees aside (Whyte 2010).
pub const WIDTH_DEG: RangeInclusive<f64> = 2.0..=40.0;
/// Diameter of the dot, degrees. Ours, well under the 5 degrees that 0.006 sr stands for.
pub const DOT_DEG: RangeInclusive<f64> = 0.3..=3.0;
/// Above this rate a point in mid-path is crossed more than three times a second.
pub const FLASH_RATE_HZ: f64 = 1.5;
/// The largest dot above [`FLASH_RATE_HZ`], degrees. Ours.
pub const FAST_DOT_DEG: f64 = 2.0;
/// Cycles in one plan.
pub const CYCLES: RangeInclusive<u32> = 1..=200;
/// No set lasts longer than this, ms from the first motion. de Jongh 2013 used 6 min.
pub const SET_MS: f64 = 360_000.0;
/// The dot rests at least this long before it moves, ms.
pub const REST_MS: f64 = 1_000.0;
/// Without a sign of the desk in control for this long a set ends, ms.
pub const SILENCE_MS: f64 = 1_500.0;
/// No motion, click or buzz later than this after the last sign of the desk, whatever happens, ms.
pub const SILENCE_ABSOLUTE_MS: f64 = 3_000.0;
/// Pitch of a tone, Hz. No published figure was found; the ends are ours: what small loudspeakers
/// play and what is not shrill.
pub const PITCH_HZ: RangeInclusive<u16> = 200..=1_000;
/// Length of a tone, ms. Ours: two tones never touch at the fastest rate (250 ms apart).
pub const TONE_MS: RangeInclusive<u16> = 40..=200;
/// Loudness of the tones, percent of what a page plays at most. Ours; pages cannot know decibels.
pub const LEVEL_PERCENT: RangeInclusive<u8> = 5..=100;
/// Flashes in any one second: WCAG 2.2, 2.3.1 and 2.3.2.
pub const FLASHES_PER_SECOND: f64 = 3.0;
/// The area that flashes may fill in any 10 degree field, steradian: WCAG 2.2, 2.3.1.
pub const FLASH_AREA_SR: f64 = 0.006;

/// The plan of a new session: 24 cycles at 1 Hz, 18 degrees, left and right, by eye.
pub fn default_plan() -> Plan {
    Plan {
        rate: 1.0,
        width: 18.0,
        dot: 1.5,
        path: Path::Across,
        length: Length::Cycles(24),
        channels: Channels { eyes: true, ears: false, hands: false },
        comfort: Comfort::default(),
        purpose: Purpose::Processing,
    }
}

/// How often a second something that blinks at each extreme (a pacer's figure) would blink, both
/// sides together, at `rate` Hz.
pub fn blinks_per_second(rate: f64) -> f64 {
    2.0 * rate
}

/// Whether anything may blink at each extreme at `rate` Hz; see [`FLASHES_PER_SECOND`].
pub fn may_blink(rate: f64) -> bool {
    blinks_per_second(rate) <= FLASHES_PER_SECOND
}

/// How long a set of `cycles` at `rate` Hz lasts with its ramps, ms.
pub fn set_ms(cycles: u32, rate: f64) -> f64 {
    let plan = f64::from(cycles);
    let ramps = crate::timeline::RAMP_MS;
    // The ramp up and the ease out each run at half the rate, so both together cost one ramp.
    let peak = rate.min(plan * 1_000.0 / ramps);
    plan / peak * 1_000.0 + ramps
}

/// Refuses a plan that no set may have. The width of a real screen is the room's to check.
///
/// # Errors
/// [`Refusal::EyesLocked`] when the eyes channel is on but locked by the client's cautions, and
/// [`Refusal::Limit`] in words with its figures for everything else.
pub fn check(plan: &Plan, eyes_locked: bool) -> Result<(), Refusal> {
    let Channels { eyes, ears, hands } = plan.channels;
    if !(eyes || ears || hands) {
        return limit("Choose eyes, ears or hands.".into());
    }
    if plan.channels.eyes && eyes_locked {
        return Err(Refusal::EyesLocked);
    }
    within("rate", plan.rate, &RATE_HZ, "Hz")?;
    within("width", plan.width, &WIDTH_DEG, "degrees")?;
    within("dot", plan.dot, &DOT_DEG, "degrees")?;
    check_flashes(plan)?;
    check_tones(&plan.comfort)?;
    check_length(plan)
}

fn check_flashes(plan: &Plan) -> Result<(), Refusal> {
    let fast = plan.rate > FLASH_RATE_HZ;
    if plan.channels.eyes && fast && plan.dot > FAST_DOT_DEG {
        return limit(format!("Above {FLASH_RATE_HZ} Hz the dot must be {FAST_DOT_DEG} degrees or smaller."));
    }
    if plan.channels.hands && !may_blink(plan.rate) {
        return limit(format!(
            "With taps the rate must be {FLASH_RATE_HZ} Hz or less: each side lights once a cycle, and more than 3 flashes a second are not safe."
        ));
    }
    Ok(())
}

fn check_tones(comfort: &Comfort) -> Result<(), Refusal> {
    within("pitch of the tones", comfort.pitch, &PITCH_HZ, "Hz")?;
    within("length of a tone", comfort.tone_ms, &TONE_MS, "ms")?;
    within("level of the tones", comfort.level, &LEVEL_PERCENT, "percent")
}

fn check_length(plan: &Plan) -> Result<(), Refusal> {
    let Length::Cycles(cycles) = plan.length else {
        return Ok(());
    };
    if !CYCLES.contains(&cycles) {
        return limit(format!("A set must have {} to {} cycles.", CYCLES.start(), CYCLES.end()));
    }
    check_time(set_ms(cycles, plan.rate))
}

/// Refuses a set that would last `ms`, when that is longer than [`SET_MS`].
///
/// # Errors
/// [`Refusal::Limit`] with both figures.
pub fn check_time(ms: f64) -> Result<(), Refusal> {
    if ms <= SET_MS {
        return Ok(());
    }
    limit(format!("A set may last {:.0} seconds at most; this one would last {:.0}.", SET_MS / 1_000.0, (ms / 1_000.0).ceil()))
}

/// Refuses a width above `widest`, the most that the client's screen can show.
///
/// # Errors
/// [`Refusal::TooWide`] with what fits.
pub fn check_screen(plan: &Plan, widest: f64) -> Result<(), Refusal> {
    if plan.channels.eyes && plan.width > widest + optics::WIDTH_TOLERANCE_DEG {
        return Err(Refusal::TooWide { widest });
    }
    Ok(())
}

fn within<T: PartialOrd + Display>(what: &str, value: T, range: &RangeInclusive<T>, unit: &str) -> Result<(), Refusal> {
    // A NaN is in no range.
    if range.contains(&value) {
        return Ok(());
    }
    limit(format!("The {what} must be between {} and {} {unit}.", range.start(), range.end()))
}

fn limit(limit: String) -> Result<(), Refusal> {
    Err(Refusal::Limit { limit })
}

mod preset;

pub use preset::{CALM_CYCLES, CALM_RATE_HZ, check_preset};

#[cfg(test)]
mod tests;
