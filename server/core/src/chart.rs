//! Charts as plain descriptions that a template draws as SVG.
//!
//! A [`Chart`] is lines, paths and texts with classes, in a box of `width` by `height` user units,
//! y down; the stylesheet gives the classes ink, dash and size. With it come the words a figure
//! needs: title, description, a caption that says the finding, and the data for a table below.

mod by_measure;
mod by_second;
mod by_session;
mod by_set;
mod classes;
mod closings;
mod dots;
mod draw;
mod finding;
mod flow;
mod lane;
mod layout;
mod plan;
mod words;

pub use by_measure::{AskedTotal, Came, totals_over_time};
pub use by_second::{Heard, LONG_GAP_MS, SetCourse, ShownStretch, Stretch, set_by_second, stretches};
pub use by_session::{Occasion, SessionSpan, course_over_sessions};
pub use by_set::{SetStep, ratings_by_set};
pub use classes::{ClassStrip, MISSING, SHADES, class_strip};
pub use closings::{ClosedAs, Closings, Week, closings};
pub use dots::{Dots, dots};
pub use flow::{FlowWeek, flow_by_week};
pub use lane::{Lane, LaneSize, LaneSpan, lane, lane_head};
pub use plan::{LifeTime, PlanMark, plan};
pub use words::{NO_BAND, ending};

/// One drawn thing.
#[derive(Clone, Debug, PartialEq)]
pub enum Element {
    /// A straight line.
    Line {
        /// From.
        x1: f64,
        /// From.
        y1: f64,
        /// To.
        x2: f64,
        /// To.
        y2: f64,
        /// One or more class names.
        class: &'static str,
    },
    /// A step line, a bar or a marker.
    Path {
        /// The `d` attribute.
        d: String,
        /// One or more class names.
        class: &'static str,
    },
    /// A text of 12 units height.
    Text {
        /// Where it is anchored.
        x: f64,
        /// Its baseline.
        y: f64,
        /// `text-anchor`.
        anchor: Anchor,
        /// One or more class names.
        class: &'static str,
        /// What it says; to be escaped by the template.
        text: String,
    },
}

/// Which part of a text stands at its x.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

impl Anchor {
    /// The value of SVG's `text-anchor`.
    pub fn svg(self) -> &'static str {
        match self {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        }
    }
}

/// A figure with all its words.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// For `<title>`.
    pub title: &'static str,
    /// For `<desc>`: how to read it.
    pub description: String,
    /// User units.
    pub width: f64,
    /// User units.
    pub height: f64,
    /// In order of drawing.
    pub elements: Vec<Element>,
    /// For `<figcaption>`: the finding, a sentence for each scale.
    pub caption: String,
    /// What the chart leaves out, and why.
    pub note: Option<&'static str>,
    /// Heads of the table.
    pub columns: &'static [&'static str],
    /// Rows of the table, as long as `columns`.
    pub rows: Vec<Vec<String>>,
}

#[cfg(test)]
mod captions;
#[cfg(test)]
mod tests;
