//! The timeline and the paths against the vectors of an independent script,
//! `tests/reference/timeline.py`.

use serde::Deserialize;

use crate::path;
use crate::safety::default_plan;
use crate::wire::{Length, Path, Plan, Segment, Sweep, Timeline};

const VECTORS: &str = include_str!("../../../../tests/reference/timeline.json");

#[derive(Deserialize)]
struct Vectors {
    cases: Vec<Case>,
    starts: Vec<Started>,
    paths: Vec<Placed>,
}

#[derive(Deserialize)]
struct Case {
    name: String,
    segments: Vec<Segment>,
    samples: Vec<Sample>,
}

#[derive(Deserialize)]
struct Started {
    rate: f64,
    cycles: u32,
    at: f64,
    ends_at: f64,
    samples: Vec<Sample>,
}

#[derive(Deserialize)]
struct Sample {
    t: f64,
    phase: f64,
    rate: f64,
}

#[derive(Deserialize)]
struct Placed {
    path: Path,
    sweep: Sweep,
    phase: f64,
    x: f64,
    y: f64,
}

fn vectors() -> Vectors {
    serde_json::from_str(VECTORS).expect("vectors")
}

fn agree(name: &str, timeline: &Timeline, samples: &[Sample]) {
    assert!(samples.len() > 2, "{name}");
    for Sample { t, phase, rate } in samples {
        let got = timeline.read(*t);
        assert!((got.phase - phase).abs() < 1e-9, "{name} at {t}: {got:?}, not {phase}");
        // At a joint where the rate jumps, a rounding of the time decides which side it is.
        let near = timeline.read(t + 1e-6).rate;
        let close = |a: f64| (a - rate).abs() < 1e-8;
        assert!(close(got.rate) || close(near), "{name} at {t}: {got:?}, not {rate}");
    }
}

#[test]
fn phase_and_rate_agree_with_the_area_under_the_rate() {
    for case in vectors().cases {
        let timeline = Timeline { segments: case.segments };
        assert_eq!(timeline.validate(), Ok(()), "{}", case.name);
        agree(&case.name, &timeline, &case.samples);
    }
}

#[test]
fn a_started_set_agrees_with_its_vector() {
    for started in vectors().starts {
        let length = Length::Cycles(started.cycles);
        let plan = Plan { rate: started.rate, length, ..default_plan() };
        let timeline = Timeline::start(&plan, started.at);
        let end = timeline.ends_at().expect("an end");
        assert!((end - started.ends_at).abs() < 1e-6, "{end}, not {}", started.ends_at);
        agree("start", &timeline, &started.samples);
    }
}

#[test]
fn positions_agree_with_a_walk_in_forty_digits() {
    for Placed { path, sweep, phase, x, y } in vectors().paths {
        let got = path::position(path, sweep, phase);
        assert!((got.x - x).abs() < 1e-12 && (got.y - y).abs() < 1e-12, "{path:?} {phase} {got:?}");
    }
}
