//! Days since something, a dot each: who waits longer than a limit stands out by place, shape and a line.

use super::draw::{circle, line, text};
use super::layout::tenth;
use super::{Anchor, Element};

pub(super) const WIDTH: f64 = 378.0;
pub(super) const HEIGHT: f64 = 150.0;
pub(super) const LEFT: f64 = 6.0;
pub(super) const FLOOR: f64 = 126.0;
const TOP: f64 = 18.0;
/// Between the middles of two dots, where there is room.
const STEP: f64 = 9.6;
/// Dots side by side at most.
const COLUMNS: u32 = 36;

/// A strip of dots.
#[derive(Clone, Debug, PartialEq)]
pub struct Dots {
    /// User units.
    pub width: f64,
    /// User units.
    pub height: f64,
    /// From the back to the front.
    pub elements: Vec<Element>,
    /// How many stand beyond the limit.
    pub over: usize,
}

/// A dot for each of `days`; filled are those beyond `limit`, which has a line of its own.
#[must_use]
pub fn dots(days: &[u32], limit: u32) -> Dots {
    let most = days.iter().copied().max().unwrap_or(0).max(3 * limit);
    let bin = most.div_ceil(COLUMNS).max(1);
    let room = (WIDTH - 2.0 * LEFT) / f64::from(most.div_ceil(bin) + 1);
    // Nothing on the wrong side of the line: the bins of either side end at it.
    let bin_of = |day: u32| if day <= limit { day / bin } else { limit / bin + 1 + (day - limit - 1) / bin };
    let x = |column: u32| LEFT + (f64::from(column) + 0.5) * room;
    let mut stacks: Vec<u32> = vec![0; usize::try_from(bin_of(most)).unwrap_or(0) + 1];
    let mut sorted = days.to_vec();
    sorted.sort_unstable();
    for &day in &sorted {
        stacks[bin_of(day) as usize] += 1;
    }
    let pile = Pile::fit(room, stacks.iter().copied().max().unwrap_or(0));
    let mut elements = vec![line(0.0, FLOOR, WIDTH, FLOOR, "axis")];
    for tick in (0..=most).step_by(limit.max(1) as usize) {
        elements.push(text(x(bin_of(tick)), FLOOR + 16.0, Anchor::Middle, "tick", tick.to_string()));
    }
    let at = x(bin_of(limit)) + room / 2.0;
    elements.push(line(at, 4.0, at, FLOOR, "limit"));
    elements.push(text(at + 6.0, 14.0, Anchor::Start, "limit-word", format!("{limit} days")));
    for (column, &count) in (0u32..).zip(&stacks) {
        let class = if column <= bin_of(limit) { "mark soft" } else { "mark disc" };
        elements.extend((0..count).map(|nth| dot(x(column), pile.y(nth), pile.r, class)));
    }
    Dots { width: WIDTH, height: HEIGHT, elements, over: days.iter().filter(|day| **day > limit).count() }
}

/// Marks one upon the other, as large as their number lets them be.
pub(super) struct Pile {
    step: f64,
    /// Half of a mark's size.
    pub r: f64,
}

impl Pile {
    /// In columns of this width, the tallest of so many marks.
    pub fn fit(room: f64, tallest: u32) -> Self {
        let step = STEP.min(room).min((FLOOR - TOP - 6.0) / f64::from(tallest.max(1)));
        Self { step, r: tenth(step * 0.42) }
    }

    /// The middle of the nth mark, from 0 at the ground.
    pub fn y(&self, nth: u32) -> f64 {
        FLOOR - self.step * (f64::from(nth) + 0.6)
    }
}

fn dot(x: f64, y: f64, r: f64, class: &'static str) -> Element {
    Element::Path { d: circle(tenth(x), tenth(y), r), class }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(dots: &Dots, wanted: &str) -> usize {
        dots.elements.iter().filter(|element| matches!(element, Element::Path { class, .. } if *class == wanted)).count()
    }

    #[test]
    fn each_has_its_dot_and_the_limit_itself_is_not_over_it() {
        let drawn = dots(&[0, 3, 29, 30, 31, 31, 400], 30);
        assert_eq!((count(&drawn, "mark soft"), count(&drawn, "mark disc"), drawn.over), (4, 3, 3));
        assert_eq!(dots(&[], 14).over, 0);
    }

    #[test]
    fn however_many_there_are_nothing_stands_outside() {
        let many: Vec<u32> = (0..5_000).map(|nth| nth % 200).collect();
        for days in [many.as_slice(), &[5; 900], &[0], &[3_000]] {
            for element in dots(days, 30).elements {
                let Element::Path { d, .. } = element else { continue };
                let (x, y) = d
                    .trim_start_matches('M')
                    .split_once(' ')
                    .map(|(x, rest)| (x.to_owned(), rest.split('a').next().unwrap().to_owned()))
                    .unwrap();
                let (x, y): (f64, f64) = (x.parse().unwrap(), y.parse().unwrap());
                assert!((0.0..=WIDTH).contains(&x) && (0.0..=FLOOR).contains(&y), "{d}");
            }
        }
    }
}
