//! Totals of one form over time, days to scale: bands and cut where the literature has them, the band within which a change is none, and a
//! mark where somebody was asked and nothing came.

use super::draw::{line, text};
use super::finding::finding;
use super::layout::{LEFT, Linear, RIGHT, WIDTH, centred, tenth, text_width};
use super::{Anchor, Chart, Element};
use crate::measures::{Better, Form, Threshold};

const TOP: f64 = 26.0;
const HEIGHT: f64 = 200.0;
const BELOW: f64 = 44.0;
/// From the panel's ends to the first and last day.
const INSET: f64 = 24.0;
/// Half of a marker's size.
const MARK: f64 = 4.5;
/// Between two labels under the axis.
const GAP: f64 = 8.0;

/// One asking.
#[derive(Clone, Debug, PartialEq)]
pub struct AskedTotal {
    /// Days since the first of them.
    pub day: u32,
    /// Its date, short.
    pub label: String,
    /// What came of it.
    pub came: Came,
}

/// What came of an asking.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Came {
    /// A total.
    Total(f64),
    /// A total that was filled up for one or two blanks.
    Filled(f64),
    /// Answers without a total, for blanks.
    Blank,
    /// The client declined it.
    Declined,
    /// Nothing.
    Nothing,
}

impl Came {
    const fn total(self) -> Option<f64> {
        match self {
            Self::Total(total) | Self::Filled(total) => Some(total),
            _ => None,
        }
    }

    const fn words(self) -> &'static str {
        match self {
            Self::Total(_) => "answered",
            Self::Filled(_) => "answered, filled up for blanks",
            Self::Blank => "answered with blanks: no total",
            Self::Declined => "declined",
            Self::Nothing => "not answered",
        }
    }
}

/// The totals of `form` as they were `asked`, first to last. `threshold`: what a change is judged by; the band of it lies around the first
/// total.
#[must_use]
pub fn totals_over_time(form: &Form, threshold: Option<Threshold>, asked: &[AskedTotal]) -> Chart {
    let y = Linear { domain: (0.0, f64::from(form.highest)), range: (TOP + HEIGHT, TOP) };
    let days = asked.last().map_or(1, |last| last.day).max(1);
    // The names of bands stand at the right, where no mark lies on them.
    let names = form.bands.iter().map(|band| text_width(band.name)).fold(0.0, f64::max);
    let x = Linear { domain: (0.0, f64::from(days)), range: (LEFT + INSET, RIGHT - INSET - names) };
    let first = asked.iter().find_map(|one| one.came.total());
    let mut elements = bands(form, y);
    elements.extend(around(first, threshold, form, y));
    elements.extend(ticks(form, y));
    elements.extend(cut(form, y));
    elements.extend(course(asked, x, y));
    elements.extend(under(asked, x));
    Chart {
        title: "Totals over time",
        description: describe(form, threshold),
        width: WIDTH,
        height: TOP + HEIGHT + BELOW,
        elements,
        caption: caption(form, threshold, asked),
        note: (!form.is_outcome).then_some("It belongs to intake: no change of it is judged."),
        columns: &["Asked", "Total", "Band", "What came of it"],
        rows: asked.iter().map(|one| row(form, one)).collect(),
    }
}

/// A filled stretch of the panel between two totals.
fn stretch(y: Linear, from: f64, to: f64, class: &'static str) -> Element {
    let (head, foot) = (y.at(to), y.at(from));
    Element::Path { d: format!("M{LEFT} {head}H{RIGHT}V{foot}H{LEFT}Z"), class }
}

/// Bands as greys in turn, each named at the edge.
fn bands(form: &Form, y: Linear) -> Vec<Element> {
    let ends = form.bands.iter().skip(1).map(|next| next.from).chain([form.highest]);
    let each = form.bands.iter().zip(ends).enumerate();
    let drawn = each.flat_map(|(at, (band, end))| {
        let (from, to) = (f64::from(band.from), f64::from(end));
        let middle = f64::midpoint(y.at(from), y.at(to)) + 4.0;
        let class = if at % 2 == 0 { "zone even" } else { "zone odd" };
        [stretch(y, from, to, class), text(RIGHT - 4.0, middle, Anchor::End, "zone-name", band.name)]
    });
    drawn.collect()
}

/// Within it no change is reliable.
fn around(first: Option<f64>, threshold: Option<Threshold>, form: &Form, y: Linear) -> Vec<Element> {
    let (Some(first), Some(threshold), true) = (first, threshold, form.is_outcome) else { return vec![] };
    let points = f64::from(threshold.points);
    let edges = [first - points, first + points].into_iter().filter(|edge| (0.0..=f64::from(form.highest)).contains(edge));
    edges.map(|edge| line(LEFT, y.at(edge), RIGHT, y.at(edge), "edge")).collect()
}

fn ticks(form: &Form, y: Linear) -> Vec<Element> {
    let step = match form.highest {
        0..=30 => 5,
        31..=50 => 10,
        _ => 20,
    };
    let mut elements = vec![];
    for tick in (0..=form.highest).step_by(step) {
        let at = y.at(f64::from(tick));
        elements.push(line(LEFT, at, RIGHT, at, "grid"));
        elements.push(text(LEFT - 8.0, at + 4.0, Anchor::End, "tick", tick.to_string()));
    }
    elements.push(text(0.0, TOP - 10.0, Anchor::Start, "name", form.name));
    elements
}

fn cut(form: &Form, y: Linear) -> Vec<Element> {
    let Some(cut) = form.cut else { return vec![] };
    let at = y.at(f64::from(cut.at));
    vec![line(LEFT, at, RIGHT, at, "limit"), text(RIGHT + 4.0, at + 4.0, Anchor::Start, "limit-word", format!("cut {}", cut.at))]
}

fn course(asked: &[AskedTotal], x: Linear, y: Linear) -> Vec<Element> {
    let place = |one: &AskedTotal| x.at(f64::from(one.day));
    let points: Vec<Option<(f64, f64)>> = asked.iter().map(|one| one.came.total().map(|total| (place(one), y.at(total)))).collect();
    let mut elements: Vec<Element> = points
        .split(Option::is_none)
        .filter(|run| run.len() > 1)
        .map(|run| {
            let d = run.iter().flatten().enumerate().map(|(at, (x, y))| format!("{}{x} {y}", if at == 0 { "M" } else { "L" })).collect();
            Element::Path { d, class: "step" }
        })
        .collect();
    let mut free = f64::NEG_INFINITY;
    for (one, point) in asked.iter().zip(points) {
        let Some((at, height)) = point else {
            elements.push(missing(place(one), y.at(0.0)));
            continue;
        };
        elements.push(marker(one.came, at, height));
        let figure = one.came.total().map(figure).unwrap_or_default();
        if at - text_width(&figure) / 2.0 >= free {
            elements.push(text(at, height - 10.0, Anchor::Middle, "value", figure.clone()));
            free = at + text_width(&figure) / 2.0 + GAP;
        }
    }
    if asked.iter().all(|one| one.came.total().is_none()) {
        elements.push(text(f64::midpoint(LEFT, RIGHT), TOP + HEIGHT / 2.0, Anchor::Middle, "nothing", "no total yet"));
    }
    elements
}

/// A disc; a total that was filled up is a ring.
fn marker(came: Came, x: f64, y: f64) -> Element {
    let (class, r) = if matches!(came, Came::Filled(_)) { ("mark ring", MARK + 1.5) } else { ("mark disc", MARK) };
    Element::Path { d: super::draw::circle(x, y, r), class }
}

/// A cross on the axis: asked, and nothing to draw came.
fn missing(x: f64, y: f64) -> Element {
    let (a, b) = (tenth(x - MARK), tenth(y - MARK));
    let side = MARK * 2.0;
    Element::Path { d: format!("M{a} {b}l{side} {side}m0 -{side}l-{side} {side}"), class: "stem" }
}

/// Dates under the axis, the ends first.
fn under(asked: &[AskedTotal], x: Linear) -> Vec<Element> {
    let foot = TOP + HEIGHT;
    let mut elements = vec![line(LEFT, foot, RIGHT, foot, "axis")];
    let at = |one: &AskedTotal| x.at(f64::from(one.day));
    let span = |one: &AskedTotal| {
        let (middle, half) = (centred(at(one), &one.label), text_width(&one.label) / 2.0);
        (middle - half, middle + half + GAP)
    };
    let mut taken: Vec<(f64, f64)> = vec![];
    let ends = [asked.first(), asked.last().filter(|_| asked.len() > 1)].into_iter().flatten();
    for one in ends.chain(asked.iter()) {
        elements.push(line(at(one), foot, at(one), foot + 4.0, "axis"));
        let (from, to) = span(one);
        if taken.iter().all(|(start, end)| to <= *start || from >= *end) {
            taken.push((from, to));
            elements.push(text(centred(at(one), &one.label), foot + 18.0, Anchor::Middle, "tick", one.label.clone()));
        }
    }
    elements
}

/// A total as a figure: whole, or to a tenth.
fn figure(total: f64) -> String {
    let tenths = tenth(total);
    if tenths.fract() == 0.0 { format!("{tenths:.0}") } else { format!("{tenths:.1}") }
}

fn row(form: &Form, one: &AskedTotal) -> Vec<String> {
    let total = one.came.total();
    let band = total.and_then(|total| form.band((total + 0.5).floor() as u16));
    vec![
        one.label.clone(),
        total.map_or_else(|| "none".to_owned(), figure),
        band.unwrap_or(if form.bands.is_empty() { "no bands" } else { "none" }).to_owned(),
        one.came.words().to_owned(),
    ]
}

fn describe(form: &Form, threshold: Option<Threshold>) -> String {
    let better = match form.better {
        Better::Lower => "lower is better",
        Better::Higher => "higher is better",
    };
    let bands = if form.bands.is_empty() { "It has no bands. " } else { "Bands are greys in turn, named at the right. " };
    let cut = form.cut.map(|cut| format!("A dashed line is the cut of {} ({}). ", cut.at, cut.source)).unwrap_or_default();
    let within = threshold
        .filter(|_| form.is_outcome)
        .map(|one| format!("Between the dotted lines, {} points around the first total, no change is reliable. ", one.points))
        .unwrap_or_default();
    format!(
        "Across: days, to scale. Up: the total of {}, 0 to {}; {better}. {bands}{cut}{within}A ring is a total that was filled up for \
         blanks; a cross on the axis an asking without a total.",
        form.name, form.highest
    )
}

fn caption(form: &Form, threshold: Option<Threshold>, asked: &[AskedTotal]) -> String {
    let totals: Vec<u8> = asked.iter().filter_map(|one| one.came.total()).map(|total| (total + 0.5).floor() as u8).collect();
    let without = asked.len() - totals.len();
    let times = match without {
        0 => String::new(),
        1 => " One asking has no total.".to_owned(),
        many => format!(" {many} askings have no total."),
    };
    let judged = threshold.filter(|_| form.is_outcome && totals.len() > 1);
    let judged =
        judged.map(|one| format!(" From {} points on a change is reliable here ({}).", one.points, one.source)).unwrap_or_default();
    format!("{}.{times}{judged}", finding(form.name, &totals))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measures::Measure;

    fn at(day: u32, came: Came) -> AskedTotal {
        AskedTotal { day, label: format!("day {day}"), came }
    }

    fn chart(measure: Measure, asked: &[AskedTotal]) -> Chart {
        let form = measure.form();
        totals_over_time(form, form.reliable.first().copied(), asked)
    }

    fn texts(chart: &Chart, of: &str) -> Vec<String> {
        let text = |element: &Element| match element {
            Element::Text { class, text, .. } if *class == of => Some(text.clone()),
            _ => None,
        };
        chart.elements.iter().filter_map(text).collect()
    }

    fn count(chart: &Chart, of: &str) -> usize {
        let is = |element: &&Element| match element {
            Element::Line { class, .. } | Element::Path { class, .. } | Element::Text { class, .. } => *class == of,
        };
        chart.elements.iter().filter(is).count()
    }

    #[test]
    fn a_form_without_bands_has_none_drawn_and_its_cut_is_named() {
        let asked = [at(0, Came::Total(52.0)), at(28, Came::Total(40.0)), at(56, Came::Total(22.0))];
        let drawn = chart(Measure::Pcl5, &asked);
        assert!(texts(&drawn, "zone-name").is_empty());
        assert_eq!(texts(&drawn, "limit-word"), ["cut 33"]);
        assert_eq!(texts(&drawn, "value"), ["52", "40", "22"]);
        assert_eq!(count(&drawn, "edge"), 2, "15 points around the first");
        assert_eq!(drawn.caption, "PCL-5 fell from 52 to 22. From 15 points on a change is reliable here (Marx 2022, sample 1).");
        assert_eq!(drawn.rows[2], ["day 56", "22", "no bands", "answered"]);
    }

    #[test]
    fn bands_are_named_and_what_did_not_come_is_marked_and_breaks_the_line() {
        let asked =
            [at(0, Came::Total(17.0)), at(14, Came::Declined), at(28, Came::Filled(11.25)), at(42, Came::Nothing), at(56, Came::Blank)];
        let drawn = chart(Measure::Phq9, &asked);
        assert_eq!(texts(&drawn, "zone-name"), ["minimal", "mild", "moderate", "moderately severe", "severe"]);
        assert_eq!((count(&drawn, "step"), count(&drawn, "stem"), count(&drawn, "mark ring")), (0, 3, 1));
        assert_eq!(drawn.rows[2], ["day 28", "11.3", "moderate", "answered, filled up for blanks"]);
        assert!(drawn.caption.contains("3 askings have no total"), "{}", drawn.caption);
    }

    #[test]
    fn of_an_intake_form_no_change_is_judged_and_nothing_asked_says_so() {
        let drawn = chart(Measure::Des2, &[at(0, Came::Total(31.0)), at(90, Came::Total(12.0))]);
        assert_eq!(count(&drawn, "edge"), 0);
        assert!(drawn.note.is_some() && !drawn.caption.contains("reliable"));
        let nothing = chart(Measure::Gad7, &[at(0, Came::Nothing)]);
        assert_eq!(nothing.caption, "GAD-7 was not asked. One asking has no total.");
        assert_eq!(texts(&nothing, "nothing"), ["no total yet"]);
    }

    #[test]
    fn every_label_and_figure_stands_apart_and_within() {
        for many in [1, 2, 12, 60] {
            let asked: Vec<_> = (0..many).map(|at_| at(at_ * 3, Came::Total(f64::from(at_ % 80)))).collect();
            for class in ["tick", "value"] {
                let drawn = chart(Measure::Pcl5, &asked);
                let mut spans: Vec<(f64, f64)> = drawn
                    .elements
                    .iter()
                    .filter_map(|element| match element {
                        Element::Text { x, anchor: Anchor::Middle, class: own, text, .. } if *own == class => {
                            Some((x - text_width(text) / 2.0, x + text_width(text) / 2.0))
                        }
                        _ => None,
                    })
                    .collect();
                spans.sort_by(|a, b| a.0.total_cmp(&b.0));
                assert!(spans.windows(2).all(|pair| pair[0].1 <= pair[1].0), "{many} {class}: {spans:?}");
                assert!(spans.iter().all(|(from, to)| *from >= 0.0 && *to <= WIDTH), "{many} {class}");
            }
        }
    }
}
