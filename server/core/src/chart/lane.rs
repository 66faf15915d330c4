//! A course small enough for a line of a table: distress over sessions, first and last of each.

use super::draw::{circle, line, text};
use super::layout::tenth;
use super::{Anchor, Element};
use crate::scale::Sud;

/// The first and the last distress of one session.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LaneSpan {
    /// The session's place among the columns, from 0.
    pub column: usize,
    /// Rated first.
    pub first: Sud,
    /// Rated last; the same as the first when it was rated once.
    pub last: Sud,
}

/// How much room there is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LaneSize {
    /// 132 by 28: within a line of a table, without a scale.
    Small,
    /// 350 by 56: a target's own lane, with 0 and 10 at its side.
    Large,
}

/// What is drawn of it. Decoration beside the figures in words: nothing can be read from it that does not stand there.
#[derive(Clone, Debug, PartialEq)]
pub struct Lane {
    /// User units.
    pub width: f64,
    /// User units.
    pub height: f64,
    /// From the back to the front.
    pub elements: Vec<Element>,
}

struct Room {
    width: f64,
    height: f64,
    left: f64,
    top: f64,
    bottom: f64,
    mark: f64,
}

impl LaneSize {
    const fn room(self) -> Room {
        match self {
            Self::Small => Room { width: 132.0, height: 28.0, left: 4.0, top: 4.0, bottom: 24.0, mark: 3.0 },
            Self::Large => Room { width: 350.0, height: 56.0, left: 24.0, top: 7.0, bottom: 49.0, mark: 3.6 },
        }
    }
}

impl Room {
    /// The middle of a column, and how far to its sides first and last stand.
    fn column(&self, column: usize, columns: usize) -> (f64, f64) {
        #[expect(clippy::cast_precision_loss, reason = "sessions are counted in hundreds at most")]
        let (at, all) = (column as f64, columns.max(1) as f64);
        // A few sessions do not spread over the whole of it: a step looks alike on every line.
        let step = ((self.width - self.left) / all).min((self.width - self.left) / 10.0);
        (self.left + (at + 0.5) * step, (step / 4.0).min(8.0))
    }

    fn y(&self, sud: Sud) -> f64 {
        self.bottom - f64::from(sud.get()) / 10.0 * (self.bottom - self.top)
    }
}

/// The lane of one target, among `columns` sessions. `spans` are in order; a session without a rating has none.
#[must_use]
pub fn lane(size: LaneSize, columns: usize, spans: &[LaneSpan]) -> Lane {
    let room = size.room();
    let mut elements = vec![line(room.left, room.bottom, room.width, room.bottom, "grid")];
    if size == LaneSize::Large {
        elements.push(line(room.left, room.top, room.width, room.top, "grid"));
        for (value, y) in [("10", room.top), ("0", room.bottom)] {
            elements.push(text(room.left - 6.0, y + 4.0, Anchor::End, "tick", value));
        }
    }
    let mut before: Option<(f64, f64)> = None;
    for span in spans {
        let (x, aside) = room.column(span.column, columns);
        let once = span.first == span.last;
        let (from, to) = (if once { x } else { x - aside }, if once { x } else { x + aside });
        let (first, last) = (room.y(span.first), room.y(span.last));
        if let Some((x, y)) = before {
            elements.push(line(x, y, from, first, "join"));
        }
        if !once {
            elements.push(line(from, first, to, last, "stem"));
            elements.push(mark(from, first, room.mark, "mark ring"));
        }
        elements.push(mark(to, last, room.mark, "mark disc"));
        before = Some((to, last));
    }
    Lane { width: room.width, height: room.height, elements }
}

/// The numbers of the sessions over lanes of the large size; where there are many, every second, fifth or tenth.
#[must_use]
pub fn lane_head(columns: usize) -> Lane {
    let room = LaneSize::Large.room();
    let every = [1, 2, 5, 10].into_iter().find(|every| columns / every <= 12).unwrap_or(20);
    let shown = (0..columns).filter(|column| (column + 1) % every == 0 || every == 1);
    let elements = shown.map(|column| text(room.column(column, columns).0, 13.0, Anchor::Middle, "tick", (column + 1).to_string()));
    Lane { width: room.width, height: 18.0, elements: elements.collect() }
}

fn mark(x: f64, y: f64, r: f64, class: &'static str) -> Element {
    Element::Path { d: circle(tenth(x), tenth(y), r), class }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn span(column: usize, first: u8, last: u8) -> LaneSpan {
        LaneSpan { column, first: Sud::new(first).unwrap(), last: Sud::new(last).unwrap() }
    }

    fn of(lane: &Lane, wanted: &str) -> usize {
        let class = |element: &Element| match element {
            Element::Line { class, .. } | Element::Path { class, .. } | Element::Text { class, .. } => *class,
        };
        lane.elements.iter().filter(|element| class(element) == wanted).count()
    }

    #[test]
    fn each_session_is_a_ring_and_a_disc_and_one_rating_is_a_disc_alone() {
        let drawn = lane(LaneSize::Large, 4, &[span(0, 8, 6), span(2, 6, 6), span(3, 6, 0)]);
        assert_eq!((of(&drawn, "mark ring"), of(&drawn, "mark disc"), of(&drawn, "stem"), of(&drawn, "join")), (2, 3, 2, 2));
    }

    #[test]
    fn nothing_stands_outside_however_many_sessions_there_are() {
        for columns in [1, 2, 10, 30, 200] {
            let spans: Vec<LaneSpan> = (0..columns).map(|column| span(column, 10, 0)).collect();
            for size in [LaneSize::Small, LaneSize::Large] {
                let drawn = lane(size, columns, &spans);
                for element in &drawn.elements {
                    let Element::Line { x1, x2, y1, y2, .. } = element else { continue };
                    assert!(
                        [x1, x2].iter().all(|x| (0.0..=drawn.width).contains(*x))
                            && [y1, y2].iter().all(|y| (0.0..=drawn.height).contains(*y))
                    );
                }
            }
            assert!(lane_head(columns).elements.len() <= 20, "{columns}");
        }
    }

    #[test]
    fn a_lane_without_ratings_is_its_scale() {
        assert_eq!(of(&lane(LaneSize::Small, 3, &[]), "grid"), 1);
    }
}
