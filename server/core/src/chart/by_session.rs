//! A target's course over its sessions.

use super::draw::{Panel, Shape, axis, line, text};
use super::layout::{Columns, WIDTH, centred, text_width};
use super::{Anchor, Chart, Element, words};
use crate::scale::{Sud, Voc};

const TOP: f64 = 26.0;
const BETWEEN: f64 = 36.0;
const BELOW: f64 = 28.0;
const ASSESSED: &str = "assessed";
/// Between two lines of text under the axis.
const LINE: f64 = 14.0;
/// Half of the tick at an end of a bar that no marker stands on.
const TICK: f64 = 4.0;

/// When the ratings of a column were given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Occasion {
    /// In one session.
    Session,
    /// On one day outside of sessions, between those before and after.
    Assessment,
}

/// One session that worked on the target, or one day on which it was assessed outside of any.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionSpan {
    /// Its date, short.
    pub label: String,
    /// Which of the two.
    pub occasion: Occasion,
    /// All its SUD that stand, in the order they were asked.
    pub sud: Vec<Sud>,
    /// All its VOC that stand, likewise.
    pub voc: Vec<Voc>,
}

impl SessionSpan {
    fn name(&self) -> String {
        match self.occasion {
            Occasion::Session => self.label.clone(),
            Occasion::Assessment => format!("{}, {ASSESSED}", self.label),
        }
    }
}

/// First and last rating of each session as two markers on a bar from the lowest to the highest, SUD and
/// VOC in panels of their own.
pub fn course_over_sessions(course: &[SessionSpan]) -> Chart {
    let columns = Columns::new(course.len());
    let has_sud = course.iter().any(|session| !session.sud.is_empty());
    let sud = Panel::sud(TOP).if_asked(has_sud);
    let voc = Panel::voc(sud.bottom() + BETWEEN);
    let has_voc = course.iter().any(|session| !session.voc.is_empty());
    let bottom = if has_voc { voc.bottom() } else { sud.bottom() };

    let mut elements = sud.frame();
    elements.extend(draw_spans(&sud, columns, &suds(course)));
    elements.extend(name_shapes(&sud, columns, &suds(course)));
    if has_voc {
        elements.extend(voc.frame());
        elements.extend(draw_spans(&voc, columns, &vocs(course)));
    }
    let labels: Vec<&str> = course.iter().map(|session| session.label.as_str()).collect();
    elements.extend(axis(columns, &labels, bottom, ""));
    elements.extend(name_assessed(columns, course, bottom));

    Chart {
        title: "The target's course over sessions",
        description: words::by_session_description(has_voc),
        width: WIDTH,
        height: bottom + below(course),
        elements,
        caption: words::by_session_caption(course),
        note: Some(words::NO_BAND),
        columns: &["Session", "First SUD", "Last SUD", "SUD range", "First VOC", "Last VOC", "VOC range"],
        rows: course.iter().map(row).collect(),
    }
}

/// All ratings of one column on one scale.
type Span = Vec<u8>;

fn suds(course: &[SessionSpan]) -> Vec<Span> {
    course.iter().map(|session| session.sud.iter().map(|sud| sud.get()).collect()).collect()
}

fn vocs(course: &[SessionSpan]) -> Vec<Span> {
    course.iter().map(|session| session.voc.iter().map(|voc| voc.get()).collect()).collect()
}

fn ends(span: &Span) -> Option<(u8, u8)> {
    Some((*span.first()?, *span.last()?))
}

fn row(session: &SessionSpan) -> Vec<String> {
    let mut cells = vec![session.name()];
    for spans in [suds(std::slice::from_ref(session)), vocs(std::slice::from_ref(session))] {
        let values = spans.concat();
        cells.extend([words::rating(values.first().copied()), words::rating(values.last().copied()), words::range(&values)]);
    }
    cells
}

fn below(course: &[SessionSpan]) -> f64 {
    if course.iter().any(|span| span.occasion == Occasion::Assessment) { BELOW + LINE } else { BELOW }
}

/// Under their dates, as far as there is room: which columns are no sessions.
fn name_assessed(columns: Columns, course: &[SessionSpan], bottom: f64) -> Vec<Element> {
    let half = text_width(ASSESSED) / 2.0;
    let mut free = 0.0;
    let places = (0..course.len()).filter(|&at| course[at].occasion == Occasion::Assessment);
    let fitting = places.map(|at| centred(columns.at(at), ASSESSED)).filter(|x| {
        let fits = x - half >= free;
        free = if fits { x + half + 6.0 } else { free };
        fits
    });
    fitting.map(|x| text(x, bottom + 18.0 + LINE, Anchor::Middle, "tick", ASSESSED)).collect()
}

fn draw_spans(panel: &Panel, columns: Columns, spans: &[Span]) -> Vec<Element> {
    let mut elements = Vec::new();
    for (index, span) in spans.iter().enumerate() {
        let (Some((first, last)), Some(lowest), Some(highest)) = (ends(span), span.iter().min(), span.iter().max()) else { continue };
        let x = columns.at(index);
        let at = |value: u8| panel.y.at(f64::from(value));
        elements.push(line(x, at(*lowest), x, at(*highest), "bar"));
        for beyond in [*lowest, *highest].into_iter().filter(|value| *value < first.min(last) || *value > first.max(last)) {
            elements.push(line(x - TICK, at(beyond), x + TICK, at(beyond), "bar"));
        }
        elements.push(Shape::Ring.at(x, at(first)));
        elements.push(Shape::Diamond.at(x, at(last)));
        elements.extend(figures(columns, x, (at(first), first), (at(last), last)));
    }
    if elements.is_empty() {
        elements.push(panel.nothing());
    }
    elements
}

/// The first figure to the left of its marker, the last to the right, where there is room.
fn figures(columns: Columns, x: f64, first: (f64, u8), last: (f64, u8)) -> Vec<Element> {
    let mut elements = Vec::new();
    if first.1 != last.1 && columns.fits("00  00") {
        let figure = first.1.to_string();
        elements.push(text(x - 11.0, first.0 + 4.0, Anchor::End, "value", figure));
    }
    if columns.fits("000") {
        let figure = last.1.to_string();
        elements.push(text(x + 11.0, last.0 + 4.0, Anchor::Start, "value", figure));
    }
    elements
}

/// Says in words which shape is which, at the last session where both show.
fn name_shapes(panel: &Panel, columns: Columns, spans: &[Span]) -> Vec<Element> {
    let both = |(index, span): (usize, &Span)| ends(span).filter(|(a, b)| a != b).map(|s| (index, s));
    let Some((index, (first, last))) = spans.iter().enumerate().rev().find_map(both) else {
        return Vec::new();
    };
    if index + 1 < spans.len() && !columns.fits("00 first  00") {
        return Vec::new();
    }
    let x = columns.at(index);
    let at = |value: u8| panel.y.at(f64::from(value)) + 4.0;
    vec![text(x + 11.0, at(first), Anchor::Start, "name", "first"), text(x + 27.0, at(last), Anchor::Start, "name", "last")]
}
