use super::*;
use crate::safety::default_plan;
use crate::wire::{Length, Plan};

/// 6 cycles at 1 Hz, started at room time 5,000 ms. With its ramps of a second each it lasts 7 s.
fn ordered() -> Timeline {
    Timeline::start(&Plan { length: Length::Cycles(6), ..default_plan() }, 5_000.0)
}

fn heard(seq: u32, seconds: f64, frames: Option<u32>, longest_gap: Option<f64>) -> Heard {
    let at = 5_000.0 + seconds * 1_000.0;
    Heard { seq, at, phase: ordered().read(at).phase, frames, longest_gap }
}

/// Every second as ordered, to rest.
fn whole() -> SetCourse {
    let second = |n: u32| heard(n, f64::from(n), (n > 0).then_some(60), (n > 0).then_some(17.0));
    let mut all: Vec<Heard> = (0..7).map(second).collect();
    all.push(heard(7, 7.0, None, None));
    SetCourse { ordered: ordered(), heard: all, to_rest: true, ending: Some(Ending::Done) }
}

/// A ramp of a second from 0 to 1 Hz passes half a cycle: the area under a triangle. So the first and the
/// last second show 0.5 Hz in the mean, all between 1 Hz, and 0.5 + 5 + 0.5 cycles in all.
#[test]
fn a_set_that_went_as_ordered_shows_what_was_ordered() {
    let parts = stretches(&whole());
    let rates: Vec<f64> = parts.iter().map(|part| (part.shown.unwrap().rate * 100.0).round() / 100.0).collect();
    assert_eq!(rates, [0.5, 1.0, 1.0, 1.0, 1.0, 1.0, 0.5]);
    for part in &parts {
        let (shown, (rate, cycles)) = (part.shown.unwrap(), part.ordered.unwrap());
        assert!((shown.rate - rate).abs() < 1e-9 && (shown.cycles - cycles).abs() < 1e-9, "{part:?}");
    }
    let chart = set_by_second(&whole());
    assert_eq!(chart.caption, "6.0 of 6.0 ordered cycles shown; no gap over 50 ms; heard all the way.");
    assert_eq!(chart.rows[0], ["0.0 to 1.0", "0.50", "0.50", "0.50", "0.50", "60", "17"]);
    assert_eq!(chart.rows[6], ["6.0 to 7.0", "0.50", "0.50", "6.00", "6.00", "not counted", "not counted"]);
    assert!(chart.rows.iter().all(|row| row.len() == chart.columns.len()));
}

#[test]
fn what_was_not_heard_is_unknown_and_breaks_the_line() {
    let mut course = whole();
    course.heard.retain(|heard| heard.seq != 3 && heard.seq != 4);
    let parts = stretches(&course);
    let unknown: Vec<(f64, f64)> = parts.iter().filter(|part| part.shown.is_none()).map(|part| (part.from, part.to)).collect();
    assert_eq!(unknown, [(2.0, 5.0)]);
    let chart = set_by_second(&course);
    assert_eq!(chart.rows[2], ["2.0 to 5.0", "1.00", "unknown", "4.50", "unknown", "unknown", "unknown"]);
    let lines = chart.elements.iter().filter(|element| matches!(element, Element::Path { class: "step", .. })).count();
    assert_eq!(lines, 2, "one on each side of the gap");
    assert!(chart.caption.ends_with("nothing heard for 3.0 s."), "{}", chart.caption);
}

#[test]
fn a_set_that_was_never_heard_to_its_end_is_unknown_from_there_and_one_never_heard_all_along() {
    let mut course = whole();
    course.heard.truncate(3);
    (course.to_rest, course.ending) = (false, Some(Ending::LinkLost));
    let last = *stretches(&course).last().unwrap();
    assert_eq!((last.from, last.to, last.shown), (2.0, 7.0, None));
    course.heard.clear();
    let parts = stretches(&course);
    assert_eq!((parts.len(), parts[0].from, parts[0].to, parts[0].shown), (1, 0.0, 7.0, None));
    let chart = set_by_second(&course);
    assert_eq!(chart.caption, "Nothing was heard from the screen.");
    assert!(chart.elements.iter().any(|element| matches!(element, Element::Text { text, .. } if text == "link lost")));
}

#[test]
fn the_beginning_may_be_unknown_too() {
    let mut course = whole();
    course.heard.remove(0);
    let first = stretches(&course)[0];
    assert_eq!((first.from, first.to, first.shown), (0.0, 1.0, None));
}

#[test]
fn long_gaps_and_seconds_without_a_frame_are_told() {
    let mut course = whole();
    (course.heard[2].frames, course.heard[2].longest_gap) = (Some(52), Some(84.0));
    (course.heard[4].frames, course.heard[4].longest_gap) = (Some(0), Some(1_000.0));
    let parts = stretches(&course);
    assert_eq!(parts.iter().filter(|part| part.has_long_gap()).count(), 2);
    assert_eq!(parts.iter().filter(|part| part.is_undrawn()).count(), 1);
    assert_eq!(set_by_second(&course).caption, "6.0 of 6.0 ordered cycles shown; a gap over 50 ms in 2 seconds; heard all the way.");
}

#[test]
fn without_a_timeline_nothing_is_said_of_what_was_ordered() {
    let course = SetCourse { ordered: Timeline::default(), ..whole() };
    let chart = set_by_second(&course);
    assert_eq!(chart.rows[0][1], "unknown");
    assert!(chart.note.is_some() && chart.caption.starts_with("6.0 cycles shown;"), "{}", chart.caption);
    assert!(!chart.elements.iter().any(|element| matches!(element, Element::Path { class: "ordered", .. })));
    assert_eq!(stretches(&SetCourse { heard: Vec::new(), ..course }), []);
}

/// A clock of the page that was set back while it ran gives no time, no rate and no division by it.
#[test]
fn times_that_run_backwards_are_left_out() {
    let mut course = whole();
    course.heard[3].at = course.heard[2].at - 1.0;
    for part in stretches(&course) {
        assert!(part.to > part.from && part.shown.is_none_or(|shown| shown.rate.is_finite()), "{part:?}");
    }
}

#[test]
fn everything_is_drawn_within_the_picture() {
    for course in
        [whole(), SetCourse { heard: Vec::new(), ..whole() }, SetCourse { ordered: Timeline::default(), heard: Vec::new(), ..whole() }]
    {
        let chart = set_by_second(&course);
        for element in &chart.elements {
            let points = match element {
                Element::Line { x1, y1, x2, y2, .. } => vec![(*x1, *y1), (*x2, *y2)],
                Element::Text { x, y, .. } => vec![(*x, *y)],
                Element::Path { d, .. } => {
                    assert!(!d.contains("NaN") && !d.contains("inf"), "{d}");
                    Vec::new()
                }
            };
            for (x, y) in points {
                assert!((0.0..=chart.width).contains(&x) && (0.0..=chart.height).contains(&y), "{element:?}");
            }
        }
    }
}
