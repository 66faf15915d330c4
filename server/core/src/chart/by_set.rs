//! Ratings by set, over one session.

use super::draw::{Panel, Shape, axis, line, steps, text};
use super::layout::{Columns, RIGHT, WIDTH, centred, rows};
use super::{Anchor, Chart, Element, words};
use crate::scale::{Sud, Voc};
use crate::wire::Ending;

const ROW: f64 = 15.0;
const BETWEEN: f64 = 36.0;
const BELOW: f64 = 28.0;

/// One column: a set, or a moment outside of any set.
#[derive(Clone, Debug, PartialEq)]
pub struct SetStep {
    /// The set's number, or [`SetStep::START`] or [`SetStep::CLOSE`].
    pub label: String,
    /// `None` when it was not asked.
    pub sud: Option<Sud>,
    /// `None` when it was not asked.
    pub voc: Option<Voc>,
    /// How the set ended; `None` outside of sets.
    pub ending: Option<Ending>,
}

impl SetStep {
    /// The label of what was asked before the first set, or else at the assessment.
    pub const START: &str = "start";
    /// The label of what was asked at the close.
    pub const CLOSE: &str = "close";

    /// It is a set, not a moment outside of any.
    pub fn is_set(&self) -> bool {
        self.label != Self::START && self.label != Self::CLOSE
    }
}

/// Step chart of SUD by set, stops in words above it, and VOC in a panel of its own when it was
/// asked at all. Ratings that were not asked are gaps.
pub fn ratings_by_set(course: &[SetStep]) -> Chart {
    let columns = Columns::new(course.len());
    let stops = stops(course, columns);
    let stop_rows = stops.iter().map(|stop| stop.row + 1).max().unwrap_or(0);
    let has_sud = course.iter().any(|step| step.sud.is_some());
    let sud = Panel::sud(26.0 + ROW * stop_rows as f64).if_asked(has_sud);
    let voc = Panel::voc(sud.bottom() + BETWEEN);
    let has_voc = course.iter().any(|step| step.voc.is_some());
    let bottom = if has_voc { voc.bottom() } else { sud.bottom() };

    let suds: Vec<Option<u8>> = course.iter().map(|step| step.sud.map(Sud::get)).collect();
    let vocs: Vec<Option<u8>> = course.iter().map(|step| step.voc.map(Voc::get)).collect();
    let mut elements = sud.frame();
    elements.extend(draw_stops(&stops, &sud, bottom));
    elements.extend(draw_ratings(&sud, columns, &suds));
    if has_voc {
        elements.extend(voc.frame());
        elements.extend(draw_ratings(&voc, columns, &vocs));
    }
    let labels: Vec<&str> = course.iter().map(|step| step.label.as_str()).collect();
    elements.extend(axis(columns, &labels, bottom, "set"));

    Chart {
        title: "Ratings by set",
        description: words::by_set_description(has_voc),
        width: WIDTH,
        height: bottom + BELOW,
        elements,
        caption: words::by_set_caption(course),
        note: None,
        columns: &["Set", "SUD", "VOC", "How it ended"],
        rows: course.iter().map(row).collect(),
    }
}

fn row(step: &SetStep) -> Vec<String> {
    vec![
        step.label.clone(),
        words::rating(step.sud.map(Sud::get)),
        words::rating(step.voc.map(Voc::get)),
        step.ending.map_or(String::new(), |ending| words::ending(ending).to_string()),
    ]
}

struct Stop {
    column: f64,
    x: f64,
    row: usize,
    words: &'static str,
}

fn stops(course: &[SetStep], columns: Columns) -> Vec<Stop> {
    let marked = course.iter().enumerate().filter_map(|(index, step)| {
        let words = words::stop(step.ending?)?;
        let column = columns.at(index);
        Some((column, centred(column, words), words))
    });
    let marked: Vec<_> = marked.collect();
    let places: Vec<(f64, &str)> = marked.iter().map(|(_, x, words)| (*x, *words)).collect();
    rows(&places).into_iter().zip(marked).map(|(row, (column, x, words))| Stop { column, x, row, words }).collect()
}

fn draw_stops(stops: &[Stop], panel: &Panel, bottom: f64) -> Vec<Element> {
    let mut elements = Vec::new();
    for stop in stops {
        let y = panel.top() - 14.0 - ROW * stop.row as f64;
        elements.push(line(stop.column, y + 3.0, stop.column, bottom, "stop"));
        elements.push(text(stop.x, y, Anchor::Middle, "stop-word", stop.words));
    }
    elements
}

fn draw_ratings(panel: &Panel, columns: Columns, values: &[Option<u8>]) -> Vec<Element> {
    let place = |(index, value): (usize, &Option<u8>)| value.map(|value| (columns.at(index), panel.y.at(f64::from(value))));
    let points: Vec<Option<(f64, f64)>> = values.iter().enumerate().map(place).collect();
    let Some(last) = points.iter().flatten().next_back() else {
        return vec![panel.nothing()];
    };
    let mut elements = steps(&points);
    let mut before = None;
    for (value, point) in values.iter().zip(&points) {
        if let (Some(value), Some((x, y))) = (*value, *point) {
            elements.push(Shape::Disc.at(x, y));
            // Where columns are too close for every figure, only changes are written.
            if columns.fits("00") || before != Some(value) {
                elements.push(figure(x, y, value, before));
            }
        }
        before = *value;
    }
    let end = (last.0 + 12.0).min(RIGHT + 8.0);
    elements.push(text(end, last.1 + 4.0, Anchor::Start, "name", panel.name));
    elements
}

/// Above its marker; beside the riser when the line comes down on it.
fn figure(x: f64, y: f64, value: u8, before: Option<u8>) -> Element {
    let (x, anchor) = if before.is_some_and(|before| before > value) { (x + 5.0, Anchor::Start) } else { (x, Anchor::Middle) };
    text(x, y - 8.0, anchor, "value", value.to_string())
}
