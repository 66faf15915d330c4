//! Lines, markers and panels.

use super::layout::{Columns, LEFT, Linear, RIGHT, tenth};
use super::{Anchor, Element};

/// Half of a marker's size.
const MARK: f64 = 4.5;
/// Half of a ring's: a diamond on the same value stands inside it.
const RING: f64 = 7.0;

/// The shape of a marker: shape first, colour last.
#[derive(Clone, Copy)]
pub(super) enum Shape {
    /// An open ring.
    Ring,
    /// A filled diamond.
    Diamond,
    /// A filled disc.
    Disc,
}

impl Shape {
    fn d(self, x: f64, y: f64) -> String {
        match self {
            Shape::Ring => circle(x, y, RING),
            Shape::Disc => circle(x, y, MARK),
            Shape::Diamond => format!("M{x} {}l{MARK} {MARK}l-{MARK} {MARK}l-{MARK} -{MARK}Z", tenth(y - MARK)),
        }
    }

    pub fn at(self, x: f64, y: f64) -> Element {
        let class = match self {
            Shape::Ring => "mark ring",
            Shape::Diamond => "mark diamond",
            Shape::Disc => "mark disc",
        };
        Element::Path { d: self.d(x, y), class }
    }
}

pub(super) fn circle(x: f64, y: f64, r: f64) -> String {
    let side = r * 2.0;
    format!("M{} {y}a{r} {r} 0 1 0 {side} 0a{r} {r} 0 1 0 -{side} 0Z", tenth(x - r))
}

pub(super) fn line(x1: f64, y1: f64, x2: f64, y2: f64, class: &'static str) -> Element {
    Element::Line { x1: tenth(x1), y1: tenth(y1), x2: tenth(x2), y2: tenth(y2), class }
}

pub(super) fn text(x: f64, y: f64, anchor: Anchor, class: &'static str, text: impl Into<String>) -> Element {
    Element::Text { x: tenth(x), y: tenth(y), anchor, class, text: text.into() }
}

/// A step line through points that follow each other: each value holds until the next. `None`
/// where nothing was asked; no line is drawn into or out of it.
pub(super) fn steps(points: &[Option<(f64, f64)>]) -> Vec<Element> {
    points
        .split(Option::is_none)
        .filter(|run| run.len() > 1)
        .map(|run| {
            let mut run = run.iter().flatten();
            let mut d = run.next().map_or(String::new(), |(x, y)| format!("M{x} {y}"));
            for (x, y) in run {
                d.push_str(&format!("H{x}V{y}"));
            }
            Element::Path { d, class: "step" }
        })
        .collect()
}

/// Height of a panel that only says that nothing was asked.
const UNASKED: f64 = 36.0;

/// A rating's own panel: its y axis, never shared.
pub(super) struct Panel {
    pub name: &'static str,
    pub y: Linear,
    pub ticks: &'static [u8],
}

impl Panel {
    /// SUD, 0 to 10, with its upper edge at `top`.
    pub fn sud(top: f64) -> Self {
        Panel { name: "SUD", y: Linear { domain: (0.0, 10.0), range: (top + 180.0, top) }, ticks: &[0, 2, 4, 6, 8, 10] }
    }

    /// VOC, 1 to 7, with its upper edge at `top`.
    pub fn voc(top: f64) -> Self {
        Panel { name: "VOC", y: Linear { domain: (1.0, 7.0), range: (top + 108.0, top) }, ticks: &[1, 3, 5, 7] }
    }

    /// Without scale and as low as its one word when nothing was `asked`: an empty grid would look like ratings that are missing.
    pub fn if_asked(self, asked: bool) -> Self {
        if asked {
            return self;
        }
        let top = self.top();
        Panel { y: Linear { range: (top + UNASKED, top), ..self.y }, ticks: &[], ..self }
    }

    pub fn bottom(&self) -> f64 {
        self.y.range.0
    }

    pub fn top(&self) -> f64 {
        self.y.range.1
    }

    /// Grid, figures and name.
    pub fn frame(&self) -> Vec<Element> {
        let mut elements = Vec::new();
        for &tick in self.ticks {
            let y = self.y.at(f64::from(tick));
            elements.push(line(LEFT, y, RIGHT, y, "grid"));
            elements.push(text(LEFT - 8.0, y + 4.0, Anchor::End, "tick", tick.to_string()));
        }
        elements.push(text(0.0, self.top() - 10.0, Anchor::Start, "name", self.name));
        elements
    }

    /// Says that nothing was asked, where nothing was.
    pub fn nothing(&self) -> Element {
        let middle = (self.top() + self.bottom()) / 2.0;
        text((LEFT + RIGHT) / 2.0, middle, Anchor::Middle, "nothing", "not asked")
    }
}

/// Labels under the columns, and what they count.
pub(super) fn axis(columns: Columns, labels: &[&str], bottom: f64, counts: &str) -> Vec<Element> {
    let mut elements = vec![line(LEFT, bottom, RIGHT, bottom, "axis")];
    for index in columns.labelled(labels) {
        let x = columns.at(index);
        elements.push(line(x, bottom, x, bottom + 4.0, "axis"));
        elements.push(text(x, bottom + 18.0, Anchor::Middle, "tick", labels[index]));
    }
    elements.push(text(0.0, bottom + 18.0, Anchor::Start, "name", counts));
    elements
}
