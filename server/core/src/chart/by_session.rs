//! A target's course over its sessions.

use super::draw::{Panel, Shape, axis, line, text};
use super::layout::{Columns, WIDTH};
use super::{Anchor, Chart, Element, words};
use crate::scale::{Sud, Voc};

const TOP: f64 = 26.0;
const BETWEEN: f64 = 36.0;
const BELOW: f64 = 28.0;

/// One session that worked on the target.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionSpan {
    /// Its date, short.
    pub label: String,
    /// First and last SUD of that session; the same one twice when there was one.
    pub sud: Option<(Sud, Sud)>,
    /// First and last VOC.
    pub voc: Option<(Voc, Voc)>,
}

/// First and last rating of each session as two markers joined by a bar, SUD and VOC in panels of
/// their own.
pub fn course_over_sessions(course: &[SessionSpan]) -> Chart {
    let columns = Columns::new(course.len());
    let sud = Panel::sud(TOP);
    let voc = Panel::voc(sud.bottom() + BETWEEN);
    let has_voc = course.iter().any(|session| session.voc.is_some());
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

    Chart {
        title: "The target's course over sessions",
        description: words::by_session_description(has_voc),
        width: WIDTH,
        height: bottom + BELOW,
        elements,
        caption: words::by_session_caption(course),
        note: Some(words::NO_BAND),
        columns: &["Session", "First SUD", "Last SUD", "First VOC", "Last VOC"],
        rows: course.iter().map(row).collect(),
    }
}

type Span = Option<(u8, u8)>;

fn suds(course: &[SessionSpan]) -> Vec<Span> {
    let span = |session: &SessionSpan| session.sud.map(|(first, last)| (first.get(), last.get()));
    course.iter().map(span).collect()
}

fn vocs(course: &[SessionSpan]) -> Vec<Span> {
    let span = |session: &SessionSpan| session.voc.map(|(first, last)| (first.get(), last.get()));
    course.iter().map(span).collect()
}

fn row(session: &SessionSpan) -> Vec<String> {
    let sud = session.sud.map(|(first, last)| (first.get(), last.get()));
    let voc = session.voc.map(|(first, last)| (first.get(), last.get()));
    let first = |span: Span| words::rating(span.map(|(first, _)| first));
    let last = |span: Span| words::rating(span.map(|(_, last)| last));
    vec![session.label.clone(), first(sud), last(sud), first(voc), last(voc)]
}

fn draw_spans(panel: &Panel, columns: Columns, spans: &[Span]) -> Vec<Element> {
    let mut elements = Vec::new();
    let rated = spans.iter().enumerate().filter_map(|(i, span)| span.map(|span| (i, span)));
    for (index, (first, last)) in rated {
        let x = columns.at(index);
        let (y1, y2) = (panel.y.at(f64::from(first)), panel.y.at(f64::from(last)));
        elements.push(line(x, y1, x, y2, "bar"));
        elements.push(Shape::Ring.at(x, y1));
        elements.push(Shape::Diamond.at(x, y2));
        elements.extend(figures(columns, x, (y1, first), (y2, last)));
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
    let both = |(index, span): (usize, &Span)| span.filter(|(a, b)| a != b).map(|s| (index, s));
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
