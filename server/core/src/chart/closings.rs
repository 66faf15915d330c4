//! How sessions were closed, week by week, a mark each: those that were left incomplete stand out by their shape.

use super::dots::{FLOOR, HEIGHT, LEFT, Pile, WIDTH};
use super::draw::{line, text};
use super::layout::tenth;
use super::{Anchor, Element};

/// How a session stands, as a mark says it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClosedAs {
    /// The target is at its end, or restricted work did what was planned: a filled square. (A disc means something else in the strips beside this one.)
    Complete,
    /// Begun and set aside: an open square.
    Incomplete,
    /// No reprocessing took place, or nobody wrote down how it was: a dash.
    Otherwise,
    /// It is still open: a cross.
    NotClosed,
}

impl ClosedAs {
    /// From the ground up.
    pub const ALL: [Self; 4] = [Self::Complete, Self::Incomplete, Self::Otherwise, Self::NotClosed];

    /// Its mark in a box of 10 by 10, for the words that it stands beside.
    #[must_use]
    pub fn mark(self) -> Element {
        self.at(5.0, 5.0, 3.8)
    }

    fn at(self, x: f64, y: f64, r: f64) -> Element {
        let (x, y, r) = (tenth(x), tenth(y), tenth(r));
        match self {
            Self::Complete => Element::Path { d: square(x, y, r), class: "mark disc" },
            Self::Incomplete => Element::Path { d: square(x, y, r), class: "mark ring" },
            Self::Otherwise => Element::Line { x1: tenth(x - r), y1: y, x2: tenth(x + r), y2: y, class: "bar" },
            Self::NotClosed => {
                let (left, top, side) = (tenth(x - r), tenth(y - r), tenth(2.0 * r));
                Element::Path { d: format!("M{left} {top}l{side} {side}M{left} {}l{side} -{side}", tenth(y + r)), class: "bar" }
            }
        }
    }
}

/// Half of "23 Nov" at 13 units, in the widest of the faces.
const HALF_A_LABEL: f64 = 23.0;

/// About as large as a circle of radius `r`.
fn square(x: f64, y: f64, r: f64) -> String {
    let half = 0.88 * r;
    let side = tenth(2.0 * half);
    format!("M{} {}h{side}v{side}h-{side}Z", tenth(x - half), tenth(y - half))
}

/// The sessions that were opened in one week.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Week {
    /// Under its column, such as "2 Nov".
    pub label: String,
    /// How many there are of each of [`ClosedAs::ALL`], in that order.
    pub counts: [u32; 4],
}

/// A strip of weeks.
#[derive(Clone, Debug, PartialEq)]
pub struct Closings {
    /// User units.
    pub width: f64,
    /// User units.
    pub height: f64,
    /// From the back to the front.
    pub elements: Vec<Element>,
}

/// A column for each of `weeks`, from the ground up a mark for each session; every third week is named, and the last.
#[must_use]
pub fn closings(weeks: &[Week]) -> Closings {
    #[expect(clippy::cast_precision_loss, reason = "weeks are counted in dozens")]
    let room = (WIDTH - 2.0 * LEFT) / weeks.len().max(1) as f64;
    let tallest = weeks.iter().map(|week| week.counts.iter().sum::<u32>()).max().unwrap_or(0);
    let pile = Pile::fit(room, tallest);
    let mut elements = vec![line(0.0, FLOOR, WIDTH, FLOOR, "axis")];
    for (nth, week) in (0_u32..).zip(weeks.iter().rev()) {
        let x = WIDTH - LEFT - (f64::from(nth) + 0.5) * room;
        if nth % 3 == 0 {
            elements.push(text(x.min(WIDTH - HALF_A_LABEL), FLOOR + 16.0, Anchor::Middle, "tick", week.label.clone()));
        }
        let marks = ClosedAs::ALL.into_iter().zip(week.counts).flat_map(|(closed, count)| (0..count).map(move |_| closed));
        elements.extend((0..).zip(marks).map(|(place, closed)| closed.at(x, pile.y(place), pile.r)));
    }
    Closings { width: WIDTH, height: HEIGHT, elements }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(drawn: &Closings, wanted: &str) -> usize {
        let class = |element: &Element| match element {
            Element::Line { class, .. } | Element::Path { class, .. } | Element::Text { class, .. } => *class,
        };
        drawn.elements.iter().filter(|element| class(element) == wanted).count()
    }

    fn week(counts: [u32; 4]) -> Week {
        Week { label: "2 Nov".into(), counts }
    }

    #[test]
    fn every_session_has_its_mark_and_every_sort_a_shape_of_its_own() {
        let drawn = closings(&[week([2, 1, 0, 0]), week([0, 0, 0, 0]), week([3, 2, 1, 1])]);
        assert_eq!((count(&drawn, "mark disc"), count(&drawn, "mark ring"), count(&drawn, "bar")), (5, 3, 2));
        let shapes: Vec<Element> = ClosedAs::ALL.into_iter().map(ClosedAs::mark).collect();
        for (at, shape) in shapes.iter().enumerate() {
            assert!(!shapes[..at].contains(shape), "{shape:?}");
        }
        assert_eq!(count(&closings(&[]), "axis"), 1, "a strip without weeks is a line");
    }

    #[test]
    fn the_last_week_and_every_third_before_it_are_named() {
        let weeks: Vec<Week> = (0..12).map(|_| week([1, 0, 0, 0])).collect();
        assert_eq!(count(&closings(&weeks), "tick"), 4);
    }

    #[test]
    fn however_many_there_are_nothing_stands_outside() {
        for counts in [[0, 0, 0, 0], [1, 0, 0, 1], [400, 300, 20, 9]] {
            for element in closings(&vec![week(counts); 12]).elements {
                let (x, y) = match element {
                    Element::Line { x1, y1, .. } => (x1, y1),
                    Element::Path { d, .. } => {
                        let (x, rest) = d.trim_start_matches('M').split_once(' ').unwrap();
                        let y = rest.split(|c: char| c.is_ascii_alphabetic()).next().unwrap();
                        (x.parse().unwrap(), y.parse().unwrap())
                    }
                    Element::Text { x, y, .. } => (x, y),
                };
                assert!((0.0..=WIDTH).contains(&x) && (0.0..=HEIGHT).contains(&y), "{x} {y} of {counts:?}");
            }
        }
    }
}
