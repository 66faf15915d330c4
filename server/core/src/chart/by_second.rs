//! One set, ordered against delivered, second by second.

use super::draw::{line, text};
use super::layout::{LEFT, Linear, RIGHT, WIDTH, centred, tenth};
use super::{Anchor, Chart, Element, words};
use crate::wire::{Ending, Timeline};

/// A pause between two frames that a viewer may notice as a halt, ms: three frames at 60 a second. Ours.
pub const LONG_GAP_MS: f64 = 50.0;

/// What the screen said at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heard {
    /// See `wire::Evidence::seq`; one that is left out was not heard.
    pub seq: u32,
    /// Room time, ms.
    pub at: f64,
    /// Cycles shown so far.
    pub phase: f64,
    /// Frames looked at since the one before, where they were counted.
    pub frames: Option<u32>,
    /// The longest wait for one of them, or of the page's script, ms.
    pub longest_gap: Option<f64>,
}

/// A set as it was ordered and as its screen told of it.
#[derive(Clone, Debug, PartialEq)]
pub struct SetCourse {
    /// As last ordered; empty when that is not in the record.
    pub ordered: Timeline,
    /// In order of `seq`.
    pub heard: Vec<Heard>,
    /// The last one heard says that it came to rest.
    pub to_rest: bool,
    /// How it ended; `None` while it runs.
    pub ending: Option<Ending>,
}

/// From one word of the screen to the next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Seconds since the ordered start.
    pub from: f64,
    /// Seconds since the ordered start, after `from`.
    pub to: f64,
    /// Mean rate as ordered, Hz, and cycles ordered by its end.
    pub ordered: Option<(f64, f64)>,
    /// `None`: nothing was heard of it.
    pub shown: Option<ShownStretch>,
}

/// What was shown in a [`Stretch`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownStretch {
    /// Mean rate, Hz.
    pub rate: f64,
    /// Cycles shown by its end.
    pub cycles: f64,
    /// See [`Heard::frames`].
    pub frames: Option<u32>,
    /// See [`Heard::longest_gap`].
    pub longest_gap: Option<f64>,
}

impl Stretch {
    /// Its length, seconds.
    pub fn lasts(&self) -> f64 {
        self.to - self.from
    }

    /// It was heard of, and no frame was drawn in it: the page was hidden or hung.
    pub fn is_undrawn(&self) -> bool {
        self.shown.is_some_and(|shown| shown.frames == Some(0))
    }

    /// A gap above [`LONG_GAP_MS`] was heard of.
    pub fn has_long_gap(&self) -> bool {
        self.shown.and_then(|shown| shown.longest_gap).is_some_and(|gap| gap > LONG_GAP_MS)
    }
}

/// The set in stretches, in order. What was not heard is a stretch of its own with nothing shown; it is
/// never filled in from its neighbours.
pub fn stretches(course: &SetCourse) -> Vec<Stretch> {
    let Some(start) = course.ordered.starts_at().or(course.heard.first().map(|heard| heard.at)) else { return Vec::new() };
    let mut found = Vec::new();
    let mut add = |from: f64, to: f64, shown| {
        if to > from {
            let ordered = course.ordered.starts_at().map(|_| {
                let (before, after) = (course.ordered.read(from).phase, course.ordered.read(to).phase);
                ((after - before) / (to - from) * 1_000.0, after)
            });
            found.push(Stretch { from: (from - start) / 1_000.0, to: (to - start) / 1_000.0, ordered, shown });
        }
    };
    let end = course.ordered.ends_at();
    match course.heard.first() {
        None => end.into_iter().for_each(|end| add(start, end, None)),
        Some(first) if first.seq > 0 => add(start, first.at, None),
        Some(_) => {}
    }
    for pair in course.heard.windows(2) {
        let (before, after) = (pair[0], pair[1]);
        let follows = after.seq == before.seq + 1;
        let shown = || ShownStretch {
            rate: (after.phase - before.phase) / (after.at - before.at) * 1_000.0,
            cycles: after.phase,
            frames: after.frames,
            longest_gap: after.longest_gap,
        };
        add(before.at, after.at, follows.then(shown));
    }
    if let (Some(last), Some(end), false) = (course.heard.last(), end, course.to_rest) {
        add(last.at, end, None);
    }
    found
}

const RATE_TOP: f64 = 34.0;
const RATE_HEIGHT: f64 = 150.0;
const GAP_TOP: f64 = RATE_TOP + RATE_HEIGHT + 44.0;
const GAP_HEIGHT: f64 = 70.0;
const HEIGHT: f64 = GAP_TOP + GAP_HEIGHT + 28.0;

/// The rate as ordered (dashed) and as shown (whole), and the longest gap between two frames, by time.
pub fn set_by_second(course: &SetCourse) -> Chart {
    let parts = stretches(course);
    let x = Linear { domain: (0.0, parts.last().map_or(1.0, |last| last.to).max(1.0)), range: (LEFT, RIGHT) };
    let mut elements = rate_panel(course, &parts, x);
    elements.extend(gap_panel(&parts, x));
    elements.extend(time_axis(x));
    Chart {
        title: "Rate and frames by second",
        description: "Upper part: cycles a second over time, as ordered (dashed) and as the screen showed it (whole). \
            Lower part: the longest gap in each second, ms: no frame was drawn for so long, or the page's script was held up. Where nothing was heard the lines are broken."
            .into(),
        width: WIDTH,
        height: HEIGHT,
        elements,
        caption: words::by_second_caption(course, &parts),
        note: course.ordered.segments.is_empty().then_some("What was ordered over time is not in the record of this set."),
        columns: &["Seconds", "Ordered, Hz", "Shown, Hz", "Ordered cycles", "Shown cycles", "Frames looked at", "Longest gap, ms"],
        rows: parts.iter().map(row).collect(),
    }
}

fn row(part: &Stretch) -> Vec<String> {
    let unknown = || "unknown".to_owned();
    let (rate, cycles) =
        part.ordered.map_or_else(|| (unknown(), unknown()), |(rate, cycles)| (format!("{rate:.2}"), format!("{cycles:.2}")));
    let mut cells = vec![format!("{:.1} to {:.1}", part.from, part.to), rate];
    match part.shown {
        None => cells.extend([unknown(), cycles, unknown(), unknown(), unknown()]),
        Some(shown) => cells.extend([
            format!("{:.2}", shown.rate),
            cycles,
            format!("{:.2}", shown.cycles),
            shown.frames.map_or("not counted".into(), |frames| frames.to_string()),
            shown.longest_gap.map_or("not counted".into(), |gap| format!("{gap:.0}")),
        ]),
    }
    cells
}

fn rate_panel(course: &SetCourse, parts: &[Stretch], x: Linear) -> Vec<Element> {
    let shown = parts.iter().filter_map(|part| part.shown).map(|shown| shown.rate);
    let ordered = course.ordered.segments.iter().flat_map(|segment| [segment.rate_from, segment.rate_to]);
    let most = (shown.chain(ordered).fold(1.0, f64::max) * 2.0).ceil() / 2.0;
    let y = Linear { domain: (0.0, most), range: (RATE_TOP + RATE_HEIGHT, RATE_TOP) };
    let mut elements = frame(y, "rate, Hz", &ticks(most, 0.5), 1);
    let heights = ordered_line(&course.ordered, x, y);
    elements.extend(heights);
    for run in parts.split(|part| part.shown.is_none()).filter(|run| !run.is_empty()) {
        let mut d = String::new();
        for (part, shown) in run.iter().filter_map(|part| Some((part, part.shown?))) {
            let height = y.at(shown.rate);
            d.push_str(&if d.is_empty() { format!("M{} {height}", x.at(part.from)) } else { format!("V{height}") });
            d.push_str(&format!("H{}", x.at(part.to)));
        }
        elements.push(Element::Path { d, class: "step" });
    }
    for part in parts.iter().filter(|part| part.shown.is_none()) {
        let middle = x.at(f64::midpoint(part.from, part.to));
        elements.push(line(x.at(part.from), y.range.0 - 6.0, x.at(part.to), y.range.0 - 6.0, "stop"));
        elements.push(text(centred(middle, "unknown"), y.range.0 - 11.0, Anchor::Middle, "stop-word", "unknown"));
    }
    if let (Some(stop), Some(last)) = (course.ending.and_then(words::stop), parts.last()) {
        let at = x.at(last.to);
        elements.push(line(at, RATE_TOP - 8.0, at, y.range.0, "stop"));
        elements.push(text(centred(at, stop), RATE_TOP - 11.0, Anchor::Middle, "stop-word", stop));
    }
    elements
}

fn ordered_line(ordered: &Timeline, x: Linear, y: Linear) -> Option<Element> {
    let start = ordered.starts_at()?;
    let mut d = String::new();
    for segment in &ordered.segments {
        for (at, rate) in [(segment.starts_at, segment.rate_from), (segment.ends_at(), segment.rate_to)] {
            d.push_str(&format!("{}{} {}", if d.is_empty() { "M" } else { "L" }, x.at((at - start) / 1_000.0), y.at(rate)));
        }
    }
    Some(Element::Path { d, class: "ordered" })
}

fn gap_panel(parts: &[Stretch], x: Linear) -> Vec<Element> {
    let gaps = parts.iter().filter_map(|part| Some((part, part.shown?.longest_gap?)));
    let most = (gaps.clone().map(|(_, gap)| gap).fold(2.0 * LONG_GAP_MS, f64::max) / LONG_GAP_MS).ceil() * LONG_GAP_MS;
    let y = Linear { domain: (0.0, most), range: (GAP_TOP + GAP_HEIGHT, GAP_TOP) };
    let mut elements = frame(y, "longest gap, ms", &[0.0, LONG_GAP_MS, most], 0);
    for (part, gap) in gaps {
        let at = x.at(f64::midpoint(part.from, part.to));
        elements.push(line(at, y.range.0, at, y.at(gap), "bar"));
    }
    elements
}

fn ticks(most: f64, step: f64) -> Vec<f64> {
    let count = (most / step).round();
    (0..=count as u32).map(|n| f64::from(n) * step).collect()
}

fn frame(y: Linear, name: &str, ticks: &[f64], digits: usize) -> Vec<Element> {
    let mut elements = Vec::new();
    for tick in ticks {
        let height = y.at(*tick);
        elements.push(line(LEFT, height, RIGHT, height, "grid"));
        elements.push(text(LEFT - 8.0, height + 4.0, Anchor::End, "tick", format!("{tick:.digits$}")));
    }
    elements.push(text(0.0, y.range.1 - 12.0, Anchor::Start, "name", name));
    elements
}

fn time_axis(x: Linear) -> Vec<Element> {
    let bottom = GAP_TOP + GAP_HEIGHT;
    let step = [1.0, 2.0, 5.0, 10.0, 20.0, 30.0, 60.0].into_iter().find(|step| x.domain.1 / step <= 14.0).unwrap_or(120.0);
    let mut elements = vec![line(LEFT, bottom, RIGHT, bottom, "axis")];
    for at in ticks((x.domain.1 / step).floor() * step, step) {
        let place = x.at(at);
        elements.push(line(place, bottom, place, bottom + 4.0, "axis"));
        elements.push(text(place, bottom + 18.0, Anchor::Middle, "tick", format!("{at:.0}")));
    }
    elements.push(text(tenth(0.0), bottom + 18.0, Anchor::Start, "name", "s"));
    elements
}

#[cfg(test)]
mod tests;
