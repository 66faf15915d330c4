//! From phase to position. Phase 0 is an extreme at rest, phase 1/2 the other.

use std::f64::consts::{FRAC_1_SQRT_2, TAU};

use crate::wire::Path;

/// Where the dot is, as a share of the path's width, from its middle: x to the right, y down,
/// each within -1/2 to 1/2.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Position {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// The position at `phase` cycles: -(1/2)·cos(2π·phase) along the path's direction.
///
/// ```
/// use leeward_core::{path, wire::Path};
/// assert_eq!(path::position(Path::Across, 0.0).x, -0.5);
/// assert_eq!(path::position(Path::Across, 12.5).x, 0.5);
/// ```
pub fn position(path: Path, phase: f64) -> Position {
    // The whole cycles are dropped first, so that late phases lose no precision.
    let along = -0.5 * (TAU * phase.rem_euclid(1.0)).cos();
    let (x, y) = direction(path);
    Position { x: along * x, y: along * y }
}

/// How far the path reaches along x and along y, as shares of its width.
pub fn extent(path: Path) -> (f64, f64) {
    let (x, y) = direction(path);
    (x.abs(), y.abs())
}

/// The unit vector from the extreme of phase 0 to the other. Diagonals lie at 45 degrees on every
/// screen, so that a direction means the same to every client.
fn direction(path: Path) -> (f64, f64) {
    match path {
        Path::Across => (1.0, 0.0),
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

    const PATHS: [Path; 4] = [Path::Across, Path::UpDown, Path::Falling, Path::Rising];

    #[test]
    fn a_set_starts_at_the_extreme_that_the_wire_names() {
        let at = |path| position(path, 0.0);
        assert!(at(Path::Across).x < 0.0);
        assert!(at(Path::UpDown).y < 0.0);
        assert!(at(Path::Falling).x < 0.0 && at(Path::Falling).y < 0.0);
        assert!(at(Path::Rising).x < 0.0 && at(Path::Rising).y > 0.0);
    }

    proptest! {
        #[test]
        fn the_extremes_are_one_width_apart(path in 0..4usize, cycles in 0..500u32) {
            let a = position(PATHS[path], f64::from(cycles));
            let b = position(PATHS[path], f64::from(cycles) + 0.5);
            prop_assert!(((a.x - b.x).hypot(a.y - b.y) - 1.0).abs() < 1e-9);
        }

        // π·A·f, taken from the position by a difference quotient.
        #[test]
        fn the_fastest_point_is_the_middle(path in 0..4usize, rate in 0.3..2.0f64) {
            let dt = 1e-6;
            let speed = |phase: f64| {
                let a = position(PATHS[path], phase);
                let b = position(PATHS[path], phase + rate * dt);
                (a.x - b.x).hypot(a.y - b.y) / dt
            };
            let fastest = (0..1_000).map(|i| speed(f64::from(i) / 1_000.0)).fold(0.0, f64::max);
            prop_assert!((fastest - peak_speed(1.0, rate)).abs() < 1e-3);
        }
    }
}
