//! From phase to position. Phase 0 is an extreme, phase 1/2 the other.
//!
//! Two steps: the [`Sweep`] says how much of the way from the first extreme to the second is done,
//! the [`Path`] where on the screen that is. Every position is continuous in phase; at rest the
//! rate is 0, so that nothing moves whatever the sweep.

use std::f64::consts::{FRAC_1_SQRT_2, PI, SQRT_2, TAU};

use crate::wire::{Path, Sweep};

/// Where the dot is, as a share of the path's width, from its middle: x to the right, y down,
/// each within -1/2 to 1/2.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Position {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// Radius of the two loops of the eight, as a share of its width. Straight lines at 45 degrees
/// through the middle touch both circles, whose centres are √2 radii away from it.
const LOOP: f64 = 1.0 / (2.0 * (1.0 + SQRT_2));

/// The position at `phase` cycles.
///
/// ```
/// use leeward_core::{path, wire::{Path, Sweep}};
/// assert_eq!(path::position(Path::Across, Sweep::Sine, 0.0).x, -0.5);
/// assert_eq!(path::position(Path::Across, Sweep::Constant, 12.5).x, 0.5);
/// ```
pub fn position(path: Path, sweep: Sweep, phase: f64) -> Position {
    // The whole cycles are dropped first, so that late phases lose no precision.
    let phase = phase.rem_euclid(1.0);
    let way = way(sweep, phase);
    match path {
        Path::Eight if phase < 0.5 => eight(way),
        // On the way back the loops are run through on their other side.
        Path::Eight => Position { y: -eight(way).y, ..eight(way) },
        line => {
            let (x, y) = direction(line);
            Position { x: (way - 0.5) * x, y: (way - 0.5) * y }
        }
    }
}

/// The way from one extreme to the other along the path, in its widths.
pub fn length(path: Path) -> f64 {
    match path {
        // Two eighths and a quarter of a circle in each loop, and the two lines through the middle.
        Path::Eight => (1.5 * PI + 2.0) * LOOP,
        Path::Across | Path::UpDown | Path::Falling | Path::Rising => 1.0,
    }
}

/// The highest speed of a sweep, in ways from extreme to extreme per cycle: the greatest slope of
/// [`position`] along its path. π for the cosine, 2 at constant speed.
pub fn peak(sweep: Sweep) -> f64 {
    match sweep {
        Sweep::Sine => PI,
        Sweep::Constant => 2.0,
    }
}

/// How far the path reaches along x and along y, as shares of its width.
pub fn extent(path: Path) -> (f64, f64) {
    if path == Path::Eight {
        return (1.0, 2.0 * LOOP);
    }
    let (x, y) = direction(path);
    (x.abs(), y.abs())
}

/// Share of the way from the first extreme to the second, 0 to 1, at `phase` within 0 to 1.
fn way(sweep: Sweep, phase: f64) -> f64 {
    match sweep {
        Sweep::Sine => 0.5 - 0.5 * (TAU * phase).cos(),
        Sweep::Constant => 1.0 - (2.0 * phase - 1.0).abs(),
    }
}

/// The eight on the way there: over the upper side of the left loop, down through the middle, along
/// the lower side of the right loop.
fn eight(way: f64) -> Position {
    // Measured from the middle, the second half of the way is the first one turned by 180 degrees.
    let gone = (way - 0.5) * length(Path::Eight);
    let (distance, side) = (gone.abs(), gone.signum());
    if distance <= LOOP {
        return Position { x: gone * FRAC_1_SQRT_2, y: gone * FRAC_1_SQRT_2 };
    }
    let angle = 0.75 * PI - (distance - LOOP) / LOOP;
    Position { x: side * LOOP * (SQRT_2 + angle.cos()), y: side * LOOP * angle.sin() }
}

/// The unit vector from the extreme of phase 0 to the other. Diagonals lie at 45 degrees on every
/// screen, so that a direction means the same to every client.
fn direction(path: Path) -> (f64, f64) {
    match path {
        Path::Across | Path::Eight => (1.0, 0.0),
        Path::UpDown => (0.0, 1.0),
        Path::Falling => (FRAC_1_SQRT_2, FRAC_1_SQRT_2),
        Path::Rising => (FRAC_1_SQRT_2, -FRAC_1_SQRT_2),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::optics::peak_speed;
    use proptest::prelude::*;

    const PATHS: [Path; 5] = [Path::Across, Path::UpDown, Path::Falling, Path::Rising, Path::Eight];
    const SWEEPS: [Sweep; 2] = [Sweep::Sine, Sweep::Constant];

    fn apart(a: Position, b: Position) -> f64 {
        (a.x - b.x).hypot(a.y - b.y)
    }

    #[test]
    fn a_set_starts_at_the_extreme_that_the_wire_names() {
        for sweep in SWEEPS {
            let at = |path| position(path, sweep, 0.0);
            assert!(at(Path::Across).x < 0.0);
            assert!(at(Path::UpDown).y < 0.0);
            assert!(at(Path::Falling).x < 0.0 && at(Path::Falling).y < 0.0);
            assert!(at(Path::Rising).x < 0.0 && at(Path::Rising).y > 0.0);
            assert!(apart(at(Path::Eight), Position { x: -0.5, y: 0.0 }) < 1e-12);
        }
    }

    // Once through the whole eight: each loop above and below, the middle crossed downwards twice.
    #[test]
    fn the_eight_is_an_eight() {
        let at = |phase| position(Path::Eight, Sweep::Constant, phase);
        let quarter = |phase: f64| (at(phase).x > 0.0, at(phase).y > 0.0);
        assert_eq!([0.1, 0.4, 0.6, 0.9].map(quarter), [(false, false), (true, true), (true, false), (false, true)]);
        for middle in [0.25, 0.75] {
            assert!(at(middle).x.abs() < 1e-12 && at(middle).y.abs() < 1e-12);
            assert!(at(middle + 0.01).y > at(middle - 0.01).y);
        }
    }

    proptest! {
        #[test]
        fn the_extremes_are_one_width_apart(path in 0..5usize, sweep in 0..2usize, cycles in 0..500u32) {
            let a = position(PATHS[path], SWEEPS[sweep], f64::from(cycles));
            let b = position(PATHS[path], SWEEPS[sweep], f64::from(cycles) + 0.5);
            prop_assert!((apart(a, b) - 1.0).abs() < 1e-9);
        }

        #[test]
        fn no_position_leaves_the_extent_and_the_extent_is_reached(path in 0..5usize, sweep in 0..2usize) {
            let at = |i: u32| position(PATHS[path], SWEEPS[sweep], f64::from(i) / 4_000.0);
            let (x, y) = (0..=4_000).map(at).fold((0.0f64, 0.0f64), |(x, y), p| (x.max(p.x.abs()), y.max(p.y.abs())));
            let (wide, high) = extent(PATHS[path]);
            prop_assert!(x <= wide / 2.0 + 1e-9 && y <= high / 2.0 + 1e-9);
            prop_assert!((x - wide / 2.0).abs() < 1e-4 && (y - high / 2.0).abs() < 1e-4);
        }

        // No jump anywhere: a small step of phase is a small step on the screen, never longer than
        // the fastest point allows.
        #[test]
        fn nothing_jumps(path in 0..5usize, sweep in 0..2usize, phase in 0.0..200.0f64, step in 1e-6..1e-2f64) {
            let (path, sweep) = (PATHS[path], SWEEPS[sweep]);
            let moved = apart(position(path, sweep, phase), position(path, sweep, phase + step));
            prop_assert!(moved <= peak_speed(path, sweep, 1.0, 1.0) * step + 1e-9);
        }

        // The closed forms, taken from the position by a difference quotient.
        #[test]
        fn the_peak_speed_is_that_of_the_fastest_point(path in 0..5usize, sweep in 0..2usize, rate in 0.3..2.0f64) {
            let (path, sweep) = (PATHS[path], SWEEPS[sweep]);
            let dt = 1e-6;
            let speed = |phase: f64| apart(position(path, sweep, phase), position(path, sweep, phase + rate * dt)) / dt;
            let fastest = (0..1_000).map(|i| speed(f64::from(i) / 1_000.0)).fold(0.0, f64::max);
            prop_assert!((fastest - peak_speed(path, sweep, 1.0, rate)).abs() < 1e-3, "{fastest}");
        }
    }
}
