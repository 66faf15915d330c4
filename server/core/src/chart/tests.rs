//! Charts against golden files, and their geometry by hand.
//!
//! `LEEWARD_GOLDEN=write cargo test -p leeward-core chart` writes the files again; look at them.

use std::fmt::Write;

use super::layout::{Columns, Linear, rows, text_width};
use super::*;
use crate::measures::Measure;
use crate::scale::{Sud, Voc};
use crate::wire::Ending;
use proptest::prelude::*;

fn step(label: &str, sud: Option<u8>, voc: Option<u8>, ending: Option<Ending>) -> SetStep {
    SetStep { label: label.into(), sud: sud.map(|value| Sud::new(value).unwrap()), voc: voc.map(|value| Voc::new(value).unwrap()), ending }
}

fn span(label: &str, sud: &[u8], voc: &[u8]) -> SessionSpan {
    SessionSpan {
        label: label.into(),
        occasion: Occasion::Session,
        sud: sud.iter().map(|value| Sud::new(*value).unwrap()).collect(),
        voc: voc.iter().map(|value| Voc::new(*value).unwrap()).collect(),
    }
}

fn assessed(label: &str, sud: &[u8], voc: &[u8]) -> SessionSpan {
    SessionSpan { occasion: Occasion::Assessment, ..span(label, sud, voc) }
}

fn a_session() -> Vec<SetStep> {
    let done = Some(Ending::Done);
    vec![
        step(SetStep::START, Some(8), Some(2), None),
        step("1", Some(8), None, done),
        step("2", Some(7), None, done),
        step("3", None, None, Some(Ending::StoppedByClient)),
        step("4", None, None, Some(Ending::LinkLost)),
        step("5", Some(5), None, done),
        step("6", Some(3), None, Some(Ending::EndedByClinician)),
        step("7", Some(1), Some(5), done),
        step("8", Some(0), Some(7), done),
        step(SetStep::CLOSE, Some(0), None, None),
    ]
}

fn sessions() -> Vec<SessionSpan> {
    vec![
        assessed("2 Mar", &[8], &[2]),
        span("3 Mar", &[8, 9, 5], &[2, 2]),
        span("10 Mar", &[6, 6], &[]),
        span("17 Mar", &[], &[]),
        span("24 Mar", &[5, 3, 1], &[3, 6]),
    ]
}

fn svg(chart: &Chart) -> String {
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\">\n<style>text{{font:12px \
         sans-serif}}path{{fill:none;stroke:#1c2b33;stroke-width:1.5}}.disc,.diamond{{fill:#1c2b33}}\
         .ring{{fill:#fff}}.grid{{stroke:#d9d6ce}}.axis,.bar{{stroke:#1c2b33}}.stop{{stroke:#4f5e66;\
         stroke-dasharray:3 3}}</style>\n<title>{}</title>\n<desc>{}</desc>\n",
        chart.width, chart.height, chart.title, chart.description
    );
    for element in &chart.elements {
        let _ = match element {
            Element::Line { x1, y1, x2, y2, class } => {
                writeln!(out, "<line class=\"{class}\" x1=\"{x1}\" y1=\"{y1}\" x2=\"{x2}\" y2=\"{y2}\"/>")
            }
            Element::Path { d, class } => writeln!(out, "<path class=\"{class}\" d=\"{d}\"/>"),
            Element::Text { x, y, anchor, class, text } => {
                writeln!(out, "<text class=\"{class}\" x=\"{x}\" y=\"{y}\" text-anchor=\"{}\">{text}</text>", anchor.svg())
            }
        };
    }
    out + "</svg>\n"
}

fn golden(name: &str, chart: &Chart) {
    let path = format!("{}/src/chart/golden/{name}.svg", env!("CARGO_MANIFEST_DIR"));
    if std::env::var("LEEWARD_GOLDEN").as_deref() == Ok("write") {
        std::fs::write(&path, svg(chart)).unwrap();
    }
    let kept = std::fs::read_to_string(&path).unwrap();
    assert_eq!(svg(chart), kept, "{path} differs");
}

#[test]
fn a_session_is_drawn_as_kept() {
    let chart = ratings_by_set(&a_session());
    golden("session", &chart);
    assert_eq!(
        chart.caption,
        "SUD fell from 8 to 0 (asked after 6 of 8 sets, last at the close). VOC rose from 2 to 7 \
         (asked after 2 of 8 sets, last after set 8). 2 sets were stopped."
    );
    assert_eq!(chart.rows[3], ["3", "not asked", "not asked", "stopped by the client"]);
}

#[test]
fn a_course_is_drawn_as_kept() {
    let chart = course_over_sessions(&sessions());
    golden("course", &chart);
    assert_eq!(
        chart.caption,
        "SUD went from 8 to 1, highest 9 in between (asked once outside of sessions and in 3 of 4 sessions). \
         VOC rose from 2 to 6 (asked once outside of sessions and in 2 of 4 sessions)."
    );
    assert_eq!(chart.rows[0], ["2 Mar, assessed", "8", "8", "8", "2", "2", "2"]);
    assert_eq!(chart.rows[1], ["3 Mar", "8", "5", "5 to 9", "2", "2", "2"]);
    assert_eq!(chart.rows[3], ["17 Mar", "not asked", "not asked", "not asked", "not asked", "not asked", "not asked"]);
    assert_eq!(chart.note, Some(NO_BAND));
}

#[test]
fn sixty_sets_are_drawn_as_kept() {
    let course: Vec<SetStep> = (1..=60)
        .map(|n: u32| {
            let sud = (!n.is_multiple_of(4)).then_some((10 - n / 6) as u8);
            let ending = if n.is_multiple_of(13) { Ending::StoppedByClinician } else { Ending::Done };
            step(&n.to_string(), sud, None, Some(ending))
        })
        .collect();
    golden("sixty-sets", &ratings_by_set(&course));
}

#[test]
fn nothing_asked_is_said_and_not_drawn() {
    let chart = ratings_by_set(&[step("1", None, None, Some(Ending::Done))]);
    assert_eq!(chart.caption, "SUD was not asked.");
    let drawn = |e: &Element| matches!(e, Element::Path { .. } | Element::Line { class: "grid", .. });
    assert!(!chart.elements.iter().any(drawn));
    assert!(chart.height < ratings_by_set(&a_session()).height / 2.0, "{} high", chart.height);
    assert_eq!(course_over_sessions(&[]).caption, "SUD was not asked.");
    assert_eq!(ratings_by_set(&[]).rows.len(), 0);
}

#[test]
fn a_rating_that_stays_or_stands_alone_is_said_so() {
    let stays = [step("1", Some(4), None, None), step("2", Some(4), None, None)];
    assert_eq!(ratings_by_set(&stays).caption, "SUD stayed at 4 (asked after 2 of 2 sets, last after set 2).");
    let once = [step("1", Some(4), None, Some(Ending::HardLimit))];
    assert_eq!(ratings_by_set(&once).caption, "SUD was asked once: 4, after set 1. One set reached the time limit.");
}

fn step_paths(chart: &Chart) -> Vec<String> {
    let path = |element: &Element| match element {
        Element::Path { d, class: "step" } => Some(d.clone()),
        _ => None,
    };
    chart.elements.iter().filter_map(path).collect()
}

// y runs from 10 at the panel's top to 0 at 180 units below: 18 units a point. Three columns
// stand 110 units apart from x 64.
#[test]
fn a_rating_holds_until_the_next_and_a_gap_breaks_the_line() {
    let course = [step("1", Some(10), None, None), step("2", Some(5), None, None), step("3", Some(0), None, None)];
    assert_eq!(step_paths(&ratings_by_set(&course)), ["M64 26H174V116H284V206"]);
    let gap = [course[0].clone(), step("2", None, None, None), course[2].clone()];
    assert_eq!(step_paths(&ratings_by_set(&gap)), Vec::<String>::new());
}

#[test]
fn a_linear_scale_is_linear() {
    let y = Linear { domain: (1.0, 7.0), range: (108.0, 0.0) };
    assert_eq!((y.at(1.0), y.at(4.0), y.at(7.0)), (108.0, 54.0, 0.0));
}

#[test]
fn labels_give_way_to_the_ends() {
    let labels: Vec<String> = (1..=60).map(|n| n.to_string()).collect();
    let labels: Vec<&str> = labels.iter().map(String::as_str).collect();
    let chosen = Columns::new(60).labelled(&labels);
    assert_eq!((chosen.first(), chosen.last()), (Some(&0), Some(&59)));
    assert!((10..=31).contains(&chosen.len()), "{chosen:?}");
}

proptest! {
    #[test]
    fn no_two_marks_of_stops_overlap(xs in prop::collection::vec(44.0..596.0f64, 0..40)) {
        let mut xs = xs;
        xs.sort_by(f64::total_cmp);
        let texts: Vec<(f64, &str)> = xs.iter().map(|&x| (x, "client stopped")).collect();
        let placed = rows(&texts);
        let width = text_width("client stopped");
        for i in 0..texts.len() {
            for j in 0..i {
                prop_assert!(placed[i] != placed[j] || texts[i].0 - texts[j].0 >= width);
            }
        }
    }

    #[test]
    fn every_figure_lies_within_its_chart(
        course in prop::collection::vec((prop::option::of(0..=10u8), prop::option::of(1..=7u8), any::<bool>()), 0..80)
    ) {
        let course: Vec<SetStep> = course.iter().enumerate()
            .map(|(i, (sud, voc, stopped))| {
                let ending = if *stopped { Ending::StoppedByClient } else { Ending::Done };
                step(&(i + 1).to_string(), *sud, *voc, Some(ending))
            })
            .collect();
        let chart = ratings_by_set(&course);
        prop_assert_eq!(chart.rows.len(), course.len());
        for element in &chart.elements {
            if let Element::Text { x, y, anchor, text, .. } = element {
                let width = text_width(text);
                let left = match anchor {
                    Anchor::Start => *x,
                    Anchor::Middle => x - width / 2.0,
                    Anchor::End => x - width,
                };
                prop_assert!(left >= -0.1 && left + width <= chart.width, "{text} at {left}");
                prop_assert!((10.0..=chart.height).contains(y), "{text} at y {y}");
            }
        }
    }
}

#[test]
fn totals_over_time_are_drawn_as_kept() {
    let at = |day: u32, came: Came| AskedTotal { day, label: format!("day {day}"), came };
    let asked =
        [at(0, Came::Total(17.0)), at(14, Came::Declined), at(28, Came::Filled(11.25)), at(42, Came::Nothing), at(70, Came::Total(6.0))];
    let form = Measure::Phq9.form();
    golden("phq9-over-time", &totals_over_time(form, form.reliable.first().copied(), &asked));
    let form = Measure::Who5.form();
    golden(
        "who5-over-time",
        &totals_over_time(form, form.reliable.first().copied(), &[at(0, Came::Total(24.0)), at(60, Came::Total(56.0))]),
    );
}

#[test]
fn a_quarter_is_drawn_as_kept() {
    let week = |at: u32| FlowWeek { label: format!("week {at}"), began: at * 5 % 4, reprocessed: at % 2, ended: at * 3 % 5 };
    golden("flow", &flow_by_week(&(0..13).map(week).collect::<Vec<_>>()));
}
