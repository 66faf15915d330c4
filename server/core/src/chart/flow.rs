//! Who began and who ended, week by week: bars up and down from one line.

use super::draw::{line, text};
use super::layout::{LEFT, RIGHT, WIDTH, centred, tenth, text_width};
use super::{Anchor, Chart, Element};

const MIDDLE: f64 = 110.0;
/// The tallest bar, up or down.
const TALL: f64 = 80.0;
const HEIGHT: f64 = 226.0;
/// Between two labels.
const GAP: f64 = 10.0;

/// One week.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct FlowWeek {
    /// Its first day, short.
    pub label: String,
    /// Who attended a first session.
    pub began: u32,
    /// Whose first set of reprocessing it was.
    pub reprocessed: u32,
    /// Whose treatment ended.
    pub ended: u32,
}

/// Treatments begun, above the line, and ended, below it.
#[must_use]
pub fn flow_by_week(weeks: &[FlowWeek]) -> Chart {
    let most = weeks.iter().flat_map(|week| [week.began, week.reprocessed, week.ended]).max().unwrap_or(0).max(1);
    #[expect(clippy::cast_precision_loss, reason = "weeks are counted in hundreds at most")]
    let step = (RIGHT - LEFT) / weeks.len().max(1) as f64;
    let bar = (step * 0.7).min(18.0);
    let tall = |count: u32| TALL * f64::from(count) / f64::from(most);
    let mut elements = scale(most);
    let mut free = f64::NEG_INFINITY;
    for (at, week) in weeks.iter().enumerate() {
        #[expect(clippy::cast_precision_loss, reason = "as above")]
        let x = (at as f64 + 0.5).mul_add(step, LEFT);
        if week.began > 0 {
            elements.push(rect(x - bar / 2.0, MIDDLE - tall(week.began), bar, tall(week.began), "mark ring"));
        }
        if week.reprocessed > 0 {
            elements.push(line(x - bar / 2.0, MIDDLE - tall(week.reprocessed), x + bar / 2.0, MIDDLE - tall(week.reprocessed), "bar"));
        }
        if week.ended > 0 {
            elements.push(rect(x - bar / 2.0, MIDDLE, bar, tall(week.ended), "mark disc"));
        }
        let (middle, half) = (centred(x, &week.label), text_width(&week.label) / 2.0);
        if middle - half >= free {
            elements.push(text(middle, HEIGHT - 8.0, Anchor::Middle, "tick", week.label.clone()));
            free = middle + half + GAP;
        }
    }
    elements.push(line(LEFT, MIDDLE, RIGHT, MIDDLE, "axis"));
    Chart {
        title: "Treatments begun and ended by week",
        description:
            "Across: weeks from Monday on. Open bars upwards: treatments that began, by their first session attended; a stroke at \
            how many had their first set of reprocessing in that week. Filled bars downwards: treatments that ended."
                .to_owned(),
        width: WIDTH,
        height: HEIGHT,
        elements,
        caption: caption(weeks),
        note: None,
        columns: &["Week of", "Began", "First reprocessing", "Ended"],
        rows: weeks
            .iter()
            .map(|week| vec![week.label.clone(), week.began.to_string(), week.reprocessed.to_string(), week.ended.to_string()])
            .collect(),
    }
}

fn rect(x: f64, y: f64, width: f64, height: f64, class: &'static str) -> Element {
    let [x, y, width, height] = [x, y, width, height].map(tenth);
    Element::Path { d: format!("M{x} {y}h{width}v{height}h-{width}Z"), class }
}

fn scale(most: u32) -> Vec<Element> {
    let (head, foot) = (MIDDLE - TALL, MIDDLE + TALL);
    vec![
        line(LEFT, head, RIGHT, head, "grid"),
        line(LEFT, foot, RIGHT, foot, "grid"),
        text(LEFT - 8.0, head + 4.0, Anchor::End, "tick", most.to_string()),
        text(LEFT - 8.0, foot + 4.0, Anchor::End, "tick", most.to_string()),
        text(LEFT - 8.0, MIDDLE + 4.0, Anchor::End, "tick", "0"),
        text(0.0, head - 12.0, Anchor::Start, "name", "began"),
        text(0.0, foot + 18.0, Anchor::Start, "name", "ended"),
    ]
}

fn caption(weeks: &[FlowWeek]) -> String {
    let sum = |of: fn(&FlowWeek) -> u32| weeks.iter().map(of).sum::<u32>();
    let (began, first, ended) = (sum(|week| week.began), sum(|week| week.reprocessed), sum(|week| week.ended));
    format!("{began} began, {first} had their first reprocessing, {ended} ended.")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_week_has_its_bars_and_the_caption_adds_them_up() {
        let week = |began, reprocessed, ended| FlowWeek { label: "2 Nov".into(), began, reprocessed, ended };
        let drawn = flow_by_week(&[week(3, 1, 0), week(0, 2, 4), week(0, 0, 0)]);
        let count = |of: &str| drawn.elements.iter().filter(|one| matches!(one, Element::Path { class, .. } if *class == of)).count();
        assert_eq!((count("mark ring"), count("mark disc")), (1, 1));
        assert_eq!(drawn.caption, "3 began, 3 had their first reprocessing, 4 ended.");
        assert_eq!(drawn.rows[1], ["2 Nov", "0", "2", "4"]);
        // First sets come weeks after first sessions: a week can have more of them than of any bar.
        let tall = flow_by_week(&[week(1, 3, 0)]);
        let stroke = tall.elements.iter().find_map(|one| match one {
            Element::Line { y1, class: "bar", .. } => Some(*y1),
            _ => None,
        });
        assert_eq!(stroke, Some(MIDDLE - TALL), "{:?}", tall.elements);
        let empty = flow_by_week(&[]);
        assert_eq!(empty.caption, "0 began, 0 had their first reprocessing, 0 ended.");
    }

    #[test]
    fn labels_stand_apart_and_nothing_outside() {
        for weeks in [1, 13, 53, 200] {
            let all: Vec<FlowWeek> =
                (0..weeks).map(|at| FlowWeek { label: "23 Nov".into(), began: at, reprocessed: 0, ended: at / 2 }).collect();
            let drawn = flow_by_week(&all);
            let mut spans: Vec<(f64, f64)> = drawn
                .elements
                .iter()
                .filter_map(|one| match one {
                    Element::Text { x, anchor: Anchor::Middle, text, .. } => Some((x - text_width(text) / 2.0, x + text_width(text) / 2.0)),
                    _ => None,
                })
                .collect();
            spans.sort_by(|a, b| a.0.total_cmp(&b.0));
            assert!(spans.windows(2).all(|pair| pair[0].1 <= pair[1].0), "{weeks}");
            assert!(spans.iter().all(|(from, to)| *from >= 0.0 && *to <= WIDTH), "{weeks}");
        }
    }
}
