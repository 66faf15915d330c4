//! Captions against what is drawn: their numbers are read back from the markers.

use proptest::prelude::*;

use super::*;
use crate::scale::{Sud, Voc};
use crate::wire::Ending;

const ENDINGS: [Ending; 11] = [
    Ending::Done,
    Ending::EndedByClinician,
    Ending::StoppedByClinician,
    Ending::StoppedByClient,
    Ending::CannotSee,
    Ending::Unseen,
    Ending::Unheard,
    Ending::PageInterrupted,
    Ending::LinkLost,
    Ending::HardLimit,
    Ending::Unknown,
];

/// Where a marker stands, from its path: x and y of its middle.
fn middle(d: &str) -> (f64, f64) {
    let (moved, drawn) = d[1..].split_at(d[1..].find(['a', 'l']).unwrap());
    let (x, y) = moved.split_once(' ').unwrap();
    let (x, y): (f64, f64) = (x.parse().unwrap(), y.parse().unwrap());
    let size: f64 = drawn[1..].split(' ').next().unwrap().parse().unwrap();
    // A circle starts at its left, a diamond at its top.
    if drawn.starts_with('a') { (x + size, y) } else { (x, y + size) }
}

/// Both ends of a panel's grid, its lower one first.
type Ends = Option<(f64, f64)>;

/// Of SUD and of VOC; `None`: it has no grid, since nothing was asked.
fn panels(chart: &Chart) -> (Ends, Ends) {
    let grid: Vec<f64> =
        chart.elements.iter().filter_map(|e| if let Element::Line { y1, class: "grid", .. } = e { Some(*y1) } else { None }).collect();
    // Six grid lines for SUD, four for VOC.
    let (sud, voc) = grid.split_at(if grid.len() < 6 { 0 } else { 6 });
    let ends = |lines: &[f64]| Some((*lines.first()?, *lines.last()?));
    (ends(sud), ends(voc))
}

/// The values drawn in one panel by marks of this class, in order of drawing.
fn drawn(chart: &Chart, panel: Ends, scale: (f64, f64), classes: &[&str]) -> Vec<u8> {
    let Some((bottom, top)) = panel else { return Vec::new() };
    let mark = |element: &Element| match element {
        Element::Path { d, class } if classes.contains(class) => Some(middle(d).1),
        _ => None,
    };
    let inside = chart.elements.iter().filter_map(mark).filter(|y| (top - 0.01..=bottom + 0.01).contains(y));
    inside.map(|y| (scale.0 + (bottom - y) / (bottom - top) * (scale.1 - scale.0)).round() as u8).collect()
}

/// The ends of the bars in one panel.
fn bars(chart: &Chart, panel: Ends, scale: (f64, f64)) -> Vec<u8> {
    let Some((bottom, top)) = panel else { return Vec::new() };
    let ends = |element: &Element| match element {
        Element::Line { y1, y2, class: "bar", .. } if (top - 0.01..=bottom + 0.01).contains(y1) => Some([*y1, *y2]),
        _ => None,
    };
    let value = |y: f64| (scale.0 + (bottom - y) / (bottom - top) * (scale.1 - scale.0)).round() as u8;
    chart.elements.iter().filter_map(ends).flatten().map(value).collect()
}

/// The sentence of one scale, and the ratings it names.
fn sentence<'a>(caption: &'a str, name: &str) -> (&'a str, Vec<u8>) {
    let said = caption.split(". ").find(|sentence| sentence.starts_with(name)).unwrap_or_else(|| panic!("{name} in {caption}"));
    let finding = said.split(" (").next().unwrap().split(", after").next().unwrap();
    let numbers = finding.split(|c: char| !c.is_ascii_digit()).filter_map(|part| part.parse().ok()).collect();
    (said, numbers)
}

/// What may be said of these values, and what may not.
fn is_true(said: &str, numbers: &[u8], values: &[u8]) {
    let pairs = || values.windows(2).map(|pair| (pair[0], pair[1]));
    assert_eq!(said.contains("not asked"), values.is_empty(), "{said}");
    assert_eq!(said.contains(" once: "), values.len() == 1, "{said}");
    if said.contains(" fell ") {
        assert!(pairs().all(|(a, b)| a >= b) && values.first() > values.last(), "{said} of {values:?}");
    }
    if said.contains(" rose ") {
        assert!(pairs().all(|(a, b)| a <= b) && values.first() < values.last(), "{said} of {values:?}");
    }
    if said.contains(" stayed ") {
        assert!(pairs().all(|(a, b)| a == b), "{said} of {values:?}");
    }
    if let (Some(first), Some(last)) = (values.first(), values.last()) {
        assert_eq!(numbers.first(), Some(first), "{said} of {values:?}");
        assert!(numbers.contains(last), "{said} of {values:?}");
        let named = (numbers.iter().min(), numbers.iter().max());
        assert_eq!(named, (values.iter().min(), values.iter().max()), "{said} names both ends of {values:?}");
    }
}

fn stops(caption: &str) -> usize {
    let said = caption.split(". ").find(|sentence| sentence.contains("stopped")).unwrap_or("");
    if said.starts_with("One") { 1 } else { said.split(' ').next().and_then(|word| word.parse().ok()).unwrap_or(0) }
}

proptest! {
    #[test]
    fn a_sessions_caption_says_what_its_markers_say(
        rows in prop::collection::vec((prop::option::of(0..=10u8), prop::option::of(1..=7u8), 0..ENDINGS.len()), 0..31)
    ) {
        let course: Vec<SetStep> = rows.iter().enumerate()
            .map(|(at, (sud, voc, ending))| SetStep {
                label: if at == 0 { SetStep::START.into() } else { at.to_string() },
                sud: sud.map(|value| Sud::new(value).unwrap()),
                voc: voc.map(|value| Voc::new(value).unwrap()),
                ending: (at > 0).then(|| ENDINGS[*ending]),
            })
            .collect();
        let chart = ratings_by_set(&course);
        let (sud, voc) = panels(&chart);
        let (said, numbers) = sentence(&chart.caption, "SUD");
        let values = drawn(&chart, sud, (0.0, 10.0), &["mark disc"]);
        prop_assert_eq!(&values, &rows.iter().filter_map(|row| row.0).collect::<Vec<_>>());
        is_true(said, &numbers, &values);
        if voc.is_some() {
            let (said, numbers) = sentence(&chart.caption, "VOC");
            is_true(said, &numbers, &drawn(&chart, voc, (1.0, 7.0), &["mark disc"]));
        }
        let stopped = course.iter().filter(|step| words::ending(step.ending.unwrap_or(Ending::Done)).starts_with("stopped")).count();
        prop_assert_eq!(stops(&chart.caption), stopped, "{}", chart.caption);
    }

    #[test]
    fn a_targets_caption_says_what_its_markers_and_bars_say(
        columns in prop::collection::vec((prop::collection::vec(0..=10u8, 0..5), prop::collection::vec(1..=7u8, 0..3), any::<bool>()), 0..12)
    ) {
        let course: Vec<SessionSpan> = columns.iter()
            .map(|(sud, voc, session)| SessionSpan {
                label: "3 Mar".into(),
                occasion: if *session { Occasion::Session } else { Occasion::Assessment },
                sud: sud.iter().map(|value| Sud::new(*value).unwrap()).collect(),
                voc: voc.iter().map(|value| Voc::new(*value).unwrap()).collect(),
            })
            .collect();
        let chart = course_over_sessions(&course);
        let (panel, _) = panels(&chart);
        let (said, numbers) = sentence(&chart.caption, "SUD");
        let all: Vec<u8> = columns.iter().flat_map(|column| column.0.clone()).collect();
        is_true(said, &numbers, &all);
        // Whatever number is named can be seen: first and last as markers, the others at the end of a bar.
        let marks = drawn(&chart, panel, (0.0, 10.0), &["mark ring", "mark diamond"]);
        prop_assert_eq!((marks.first(), marks.last()), (all.first(), all.last()));
        let seen = [marks, bars(&chart, panel, (0.0, 10.0))].concat();
        prop_assert!(numbers.iter().all(|number| seen.contains(number)), "{} of {:?}", said, seen);
    }
}

#[test]
fn a_time_limit_is_no_stop_and_an_unknown_end_is_not_counted_as_one() {
    let set = |number: usize, ending| SetStep { label: number.to_string(), sud: None, voc: None, ending: Some(ending) };
    let course: Vec<SetStep> = ENDINGS.iter().enumerate().map(|(at, ending)| set(at + 1, *ending)).collect();
    let caption = ratings_by_set(&course).caption;
    assert_eq!(caption, "SUD was not asked. 7 sets were stopped. One set reached the time limit. The end of one set is not known.");
    for ending in ENDINGS {
        assert_eq!(words::ending(ending).starts_with("stopped"), ending.is_stop(), "{ending:?}");
        assert!(words::stop(ending).is_some() || !ending.is_stop(), "{ending:?}");
    }
}

#[derive(serde::Deserialize)]
struct Vectors {
    captions: Vec<Vector>,
}

#[derive(serde::Deserialize)]
struct Vector {
    start: Option<u8>,
    sets: Vec<Option<u8>>,
    close: Option<u8>,
    says: String,
}

#[test]
fn a_sessions_caption_agrees_with_its_vector() {
    let vectors: Vectors = serde_json::from_str(include_str!("../../../../tests/reference/ratings.json")).unwrap();
    let step =
        |label: &str, sud: &Option<u8>| SetStep { label: label.into(), sud: sud.map(|v| Sud::new(v).unwrap()), voc: None, ending: None };
    assert!(vectors.captions.len() > 10);
    for Vector { start, sets, close, says } in vectors.captions {
        let mut course = vec![step(SetStep::START, &start)];
        course.extend(sets.iter().enumerate().map(|(at, sud)| step(&(at + 1).to_string(), sud)));
        course.push(step(SetStep::CLOSE, &close));
        assert_eq!(ratings_by_set(&course).caption, says);
    }
}
