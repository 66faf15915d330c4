//! Visual angle, screens and speed.
//!
//! A *width* in degrees is the angle at the eye between the two extremes, with the eye opposite
//! the middle: s = 2 d tan(θ/2). Between the extremes the dot's position is linear in px, so the
//! sinusoid is one on the glass. At the eye the middle is then passed a little faster than π·A·f
//! says (1 % at 18 degrees, 4 % at 40); less than the distance's own error.

use std::f64::consts::PI;
use std::ops::RangeInclusive;

use crate::path;
use crate::safety;
use crate::wire::{Device, Path, Sweep};

/// Width and height of an ID-1 card (a bank card), mm: ISO/IEC 7810.
pub const CARD_MM: (f64, f64) = (85.60, 53.98);
/// CSS px per mm when the card was skipped: 96 px an inch, as CSS defines its px.
pub const DEFAULT_PX_PER_MM: f64 = 96.0 / 25.4;
/// Eye to screen when it was not stated, mm: about arm's length (common practice, no source).
pub const DEFAULT_DISTANCE_MM: f64 = 600.0;
/// What a screen may have, CSS px per mm: from a projector's to far beyond a phone's 6. Ours.
pub const PX_PER_MM: RangeInclusive<f64> = 0.5..=20.0;
/// How far an eye may be from a screen, mm: from a phone at the nose to a television. Ours.
pub const DISTANCE_MM: RangeInclusive<f64> = 100.0..=4_000.0;
/// Kept free at each side of the path, as a share of the field. Ours.
pub const MARGIN: f64 = 0.03;
/// Two widths closer than this are the same, degrees.
pub const WIDTH_TOLERANCE_DEG: f64 = 0.05;
/// Above this peak speed the eye follows with catch-up saccades, degrees a second. Gain of pursuit
/// falls from 0.98 to 0.75 between 10 and 60 (probably Schalén 1980, from memory).
pub const INFORM_ABOVE: f64 = 60.0;
/// Near the ceiling of pursuit, degrees a second: 90 to 100 (Meyer, Lasker & Robinson 1985).
pub const ADVISE_ABOVE: f64 = 90.0;

/// What to tell the clinician about a peak speed. Never a refusal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpeedAdvice {
    /// Eyes can follow.
    Smooth,
    /// Eyes will catch up in small jumps; see [`INFORM_ABOVE`].
    CatchUp,
    /// Less is advised; see [`ADVISE_ABOVE`].
    TooFastToFollow,
}

/// The angle in degrees that `size` spans at `distance` (same unit).
///
/// ```
/// let angle = leeward_core::optics::degrees(30.0, 60.0);
/// assert!((angle - 28.07).abs() < 0.005);
/// ```
pub fn degrees(size: f64, distance: f64) -> f64 {
    (2.0 * (size / (2.0 * distance)).atan()).to_degrees()
}

/// The size that spans `degrees` at `distance`, in the unit of `distance`.
///
/// ```
/// let cm = leeward_core::optics::size(20.0, 60.0);
/// assert!((cm - 21.16).abs() < 0.005);
/// ```
pub fn size(degrees: f64, distance: f64) -> f64 {
    2.0 * distance * (degrees.to_radians() / 2.0).tan()
}

/// CSS px per mm when the card on the screen was made `card_px` wide to match a real one.
pub fn px_per_mm(card_px: f64) -> f64 {
    card_px / CARD_MM.0
}

/// CSS px on this screen that span `degrees` at the eye.
pub fn px(degrees: f64, device: &Device) -> f64 {
    size(degrees, distance(device)) * scale(device)
}

/// Degrees at the eye that `px` CSS px span on this screen.
pub fn degrees_of_px(px: f64, device: &Device) -> f64 {
    degrees(px / scale(device), distance(device))
}

/// Peak speed of the dot at the eye, degrees a second, for a path `width` degrees wide at `rate` Hz.
/// On a line it is π·A·f for the sine and 2·A·f at constant speed; the eight is longer.
pub fn peak_speed(path: Path, sweep: Sweep, width: f64, rate: f64) -> f64 {
    path::length(path) * path::peak(sweep) * width * rate
}

/// See [`SpeedAdvice`].
pub fn advice(peak: f64) -> SpeedAdvice {
    if peak > ADVISE_ABOVE {
        SpeedAdvice::TooFastToFollow
    } else if peak > INFORM_ABOVE {
        SpeedAdvice::CatchUp
    } else {
        SpeedAdvice::Smooth
    }
}

/// The widest path of this kind that the screen can show with this dot, degrees, rounded down to
/// a tenth. At most the upper end of [`safety::WIDTH_DEG`]; 0 when nothing fits.
pub fn widest(device: &Device, path: Path, dot: f64) -> f64 {
    let dot_px = px(dot, device);
    let free = |side: f64| side * (1.0 - 2.0 * MARGIN) - dot_px;
    let (along_x, along_y) = path::extent(path);
    let reach = |side: f64, share: f64| {
        if share > 0.0 { free(side) / share } else { f64::INFINITY }
    };
    let span = reach(device.width_px, along_x).min(reach(device.height_px, along_y));
    let fits = degrees_of_px(span.max(0.0), device);
    let tenths = (fits.min(*safety::WIDTH_DEG.end()) * 10.0).floor() / 10.0;
    tenths.max(0.0)
}

/// The solid angle of a disc `degrees` wide, steradian.
pub fn disc_sr(degrees: f64) -> f64 {
    2.0 * PI * (1.0 - (degrees.to_radians() / 2.0).cos())
}

/// Whether a page's report of its field can be true: 100 to 20,000 px a side.
pub fn plausible(device: &Device) -> bool {
    let side = 100.0..=20_000.0;
    side.contains(&device.width_px) && side.contains(&device.height_px)
}

/// The device without a calibration outside [`PX_PER_MM`] or [`DISTANCE_MM`]: a card 3 px wide, an
/// eye 5 m away. What is left out counts as skipped.
pub fn calibrated(device: Device) -> Device {
    Device {
        px_per_mm: device.px_per_mm.filter(|scale| PX_PER_MM.contains(scale)),
        distance_mm: device.distance_mm.filter(|mm| DISTANCE_MM.contains(mm)),
        ..device
    }
}

fn scale(device: &Device) -> f64 {
    device.px_per_mm.unwrap_or(DEFAULT_PX_PER_MM)
}

fn distance(device: &Device) -> f64 {
    device.distance_mm.unwrap_or(DEFAULT_DISTANCE_MM)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn screen(width_px: f64, height_px: f64) -> Device {
        Device {
            width_px,
            height_px,
            px_per_mm: None,
            distance_mm: None,
            reduced_motion: false,
            sound: true,
            sides: None,
            vibration: false,
            wake_lock: true,
            full_screen: true,
            checking: false,
        }
    }

    fn close(got: f64, want: f64, tolerance: f64) {
        assert!((got - want).abs() <= tolerance, "got {got}, want {want}");
    }

    // θ = 2 atan(s/2d); rows worked by hand from the formula.
    #[test]
    fn centimetres_and_degrees_agree_with_the_formula() {
        close(degrees(30.0, 60.0), 28.07, 0.005);
        close(size(20.0, 60.0), 21.16, 0.005);
        close(size(30.0, 60.0), 32.15, 0.005);
        close(size(10.0, 60.0), 10.50, 0.005);
        close(degrees(size(17.3, 55.0), 55.0), 17.3, 1e-9);
    }

    // ISO/IEC 7810: an ID-1 card is 85.60 x 53.98 mm, ratio 1.5858; nominally 323.5 x 204.0 px.
    #[test]
    fn the_card_is_the_card_of_iso_7810() {
        close(CARD_MM.0 / CARD_MM.1, 1.5858, 0.00005);
        close(CARD_MM.0 * DEFAULT_PX_PER_MM, 323.5, 0.05);
        close(CARD_MM.1 * DEFAULT_PX_PER_MM, 204.0, 0.05);
        close(px_per_mm(323.527), DEFAULT_PX_PER_MM, 0.0001);
    }

    // CSS Values and Units: a px is 0.0213 degrees at 96 dpi and arm's length of 28 inches.
    #[test]
    fn a_css_px_is_as_css_says() {
        let arm = Device { distance_mm: Some(28.0 * 25.4), ..screen(1_920.0, 1_080.0) };
        close(degrees_of_px(1.0, &arm), 0.0213, 0.00005);
        close(px(10.0, &arm), 470.0, 1.0);
    }

    // Peak of a sinusoid is π·A·f; rows by arithmetic.
    #[test]
    fn peak_speed_agrees_with_arithmetic() {
        for (width, rate, peak) in [(20.0, 0.8, 50.27), (20.0, 1.0, 62.83), (20.0, 1.2, 75.40), (30.0, 1.0, 94.25), (30.0, 1.2, 113.10)] {
            close(peak_speed(Path::Across, Sweep::Sine, width, rate), peak, 0.005);
        }
        for (width, rate) in [(20.0, 1.432), (25.0, 1.146), (30.0, 0.955)] {
            close(peak_speed(Path::Across, Sweep::Sine, width, rate), 90.0, 0.05);
        }
        // A triangle wave goes at 2·A·f.
        close(peak_speed(Path::Across, Sweep::Constant, 20.0, 1.0), 40.0, 1e-9);
        // The eight: two lines of a radius and 270 degrees of arc, by hand 1.3902 widths.
        close(peak_speed(Path::Eight, Sweep::Constant, 20.0, 1.0), 55.61, 0.005);
        close(peak_speed(Path::Eight, Sweep::Sine, 20.0, 1.0), 87.35, 0.005);
    }

    // Meyer, Lasker & Robinson 1985: pursuit ends at 90 to 100 degrees a second.
    #[test]
    fn advice_follows_the_limits_of_pursuit() {
        assert_eq!(advice(60.0), SpeedAdvice::Smooth);
        assert_eq!(advice(60.1), SpeedAdvice::CatchUp);
        assert_eq!(advice(90.0), SpeedAdvice::CatchUp);
        assert_eq!(advice(90.1), SpeedAdvice::TooFastToFollow);
    }

    // WCAG 2.2: 0.006 sr is 25 % of a 10 degree field; a disc of 5.0 degrees has that area.
    #[test]
    fn the_flash_area_is_a_disc_of_five_degrees() {
        close(disc_sr(10.0), 0.02391, 0.000005);
        close(disc_sr(10.0) * 0.25, 0.00598, 0.000005);
        close(disc_sr(5.0), safety::FLASH_AREA_SR, 0.00003);
    }

    #[test]
    fn the_widest_path_fits_with_its_dot_and_margin() {
        let desk = Device { px_per_mm: Some(3.6), distance_mm: Some(650.0), ..screen(2_000.0, 1_100.0) };
        for path in [Path::Across, Path::UpDown, Path::Falling, Path::Rising, Path::Eight] {
            let width = widest(&desk, path, 1.5);
            let span = px(width, &desk);
            let (x, y) = path::extent(path);
            assert!(span * x + px(1.5, &desk) <= 2_000.0, "{path:?}");
            assert!(span * y + px(1.5, &desk) <= 1_100.0, "{path:?}");
        }
        assert_eq!(widest(&desk, Path::Across, 1.5), 40.0);
        assert!(widest(&desk, Path::UpDown, 1.5) < 26.5);
    }

    #[test]
    fn a_small_phone_has_a_narrower_path_and_never_a_negative_one() {
        let phone = Device { px_per_mm: Some(6.0), distance_mm: Some(300.0), ..screen(390.0, 844.0) };
        let width = widest(&phone, Path::Across, 1.5);
        assert!((8.0..12.5).contains(&width), "{width}");
        let speck = Device { px_per_mm: Some(60.0), ..screen(100.0, 100.0) };
        assert_eq!(widest(&speck, Path::Across, 3.0), 0.0);
    }

    #[test]
    fn impossible_screens_are_not_plausible() {
        let good = screen(390.0, 844.0);
        assert!(plausible(&good));
        for bad in [Device { width_px: f64::NAN, ..good }, Device { height_px: 1e9, ..good }] {
            assert!(!plausible(&bad), "{bad:?}");
        }
    }

    #[test]
    fn a_calibration_that_cannot_be_counts_as_skipped() {
        let good = Device { px_per_mm: Some(5.0), distance_mm: Some(600.0), ..screen(390.0, 844.0) };
        assert_eq!(calibrated(good), good);
        // A card 3 px wide stands for 0.035 px a mm.
        for scale in [px_per_mm(3.0), 0.0, -5.0, 1e6, f64::NAN, f64::INFINITY] {
            assert_eq!(calibrated(Device { px_per_mm: Some(scale), ..good }), Device { px_per_mm: None, ..good });
        }
        for mm in [5_000.0, 0.0, -5.0, f64::NAN, f64::INFINITY] {
            assert_eq!(calibrated(Device { distance_mm: Some(mm), ..good }), Device { distance_mm: None, ..good });
        }
    }
}
