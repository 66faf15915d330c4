//! Timelines by example and by random sequences of changes.

use super::*;
use crate::safety::{RATE_HZ, SET_MS, default_plan, set_ms};
use crate::wire::{Length, Plan};
use proptest::prelude::*;

fn close(got: f64, want: f64) {
    assert!((got - want).abs() < 1e-9, "got {got}, want {want}");
}

fn plan(rate: f64, length: Length) -> Plan {
    Plan { rate, length, ..default_plan() }
}

fn goal(cycles: f64, start: f64) -> Goal {
    Goal { cycles: Some(cycles), by: start + SET_MS }
}

#[test]
fn a_set_rests_ramps_runs_and_eases_to_its_last_cycle() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 10_000.0);
    assert_eq!(set.read(9_999.0), Reading { phase: 0.0, rate: 0.0 });
    close(set.read(10_500.0).rate, 0.5);
    close(set.read(10_500.0).phase, 0.125);
    close(set.read(11_000.0).phase, 0.5);
    close(set.read(34_000.0).phase, 23.5);
    close(set.read(34_500.0).phase, 23.875);
    close(set.end_phase(), 24.0);
    close(set.ends_at().unwrap_or(0.0), 35_000.0);
    assert!(!set.is_over(34_999.9));
    assert!(set.is_over(35_000.0));
    assert_eq!(set.eases_at(), Some(34_000.0));
}

#[test]
fn a_set_too_short_for_its_ramps_stays_slower() {
    let set = Timeline::start(&plan(2.0, Length::Cycles(1)), 0.0);
    close(set.end_phase(), 1.0);
    close(set.read(1_000.0).rate, 1.0);
    close(set.ends_at().unwrap_or(0.0), set_ms(1, 2.0));
    assert_eq!(set.validate(), Ok(()));
}

#[test]
fn an_open_set_ends_at_the_last_extreme_within_the_hard_limit() {
    let set = Timeline::start(&plan(0.7, Length::Open), 2_000.0);
    let end = set.ends_at().unwrap_or(f64::NAN);
    assert!(end <= 2_000.0 + SET_MS);
    assert!(end > 2_000.0 + SET_MS - 500.0 / 0.7 - 1.0);
    close(set.end_phase(), 251.0);
}

#[test]
fn a_rate_change_keeps_the_phase_and_the_planned_end() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    let fast = set.change_rate(5_200.0, 1.5, goal(24.0, 0.0)).expect("room");
    close(fast.read(5_200.0).phase, set.read(5_200.0).phase);
    close(fast.read(5_200.0).rate, 1.0);
    close(fast.read(5_450.0).rate, 1.25);
    close(fast.read(5_700.0).rate, 1.5);
    close(fast.end_phase(), 24.0);
    assert!(fast.ends_at() < set.ends_at());
    assert_eq!(fast.validate(), Ok(()));
}

#[test]
fn a_rate_change_before_the_first_motion_starts_at_the_new_rate() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 3_000.0);
    let slow = set.change_rate(2_500.0, 0.5, goal(24.0, 3_000.0)).expect("room");
    assert_eq!(slow, Timeline::start(&plan(0.5, Length::Cycles(24)), 3_000.0));
}

#[test]
fn a_rate_change_too_late_is_refused() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    assert_eq!(set.change_rate(24_300.0, 2.0, goal(24.0, 0.0)), Err(NoRoom));
    assert_eq!(set.change_rate(26_000.0, 2.0, goal(24.0, 0.0)), Err(NoRoom));
    assert_eq!(Timeline::default().change_rate(0.0, 1.0, goal(24.0, 0.0)), Err(NoRoom));
}

#[test]
fn a_slower_rate_is_cut_off_by_the_hard_limit_at_an_extreme() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(200)), 0.0);
    let slow = set.change_rate(10_000.0, 0.3, goal(200.0, 0.0)).expect("room");
    assert!(slow.ends_at().unwrap_or(f64::NAN) <= SET_MS);
    close((slow.end_phase() * 2.0).fract(), 0.0);
    assert!(slow.end_phase() < 200.0);
}

#[test]
fn the_end_comes_at_the_next_extreme_that_leaves_time_to_ease() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    // At 5.6 s the phase is 5.1; 0.3 cycles of ease fit before 5.5.
    let ended = set.end_at_next_extreme(5_600.0);
    close(ended.end_phase(), 5.5);
    close(ended.ends_at().unwrap_or(0.0), 5_600.0 + 100.0 + 600.0);
    // At 5.9 s the phase is 5.4; too late for 5.5.
    close(set.end_at_next_extreme(5_900.0).end_phase(), 6.0);
}

#[test]
fn the_end_of_a_set_that_has_hardly_begun_does_not_creep() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    let ended = set.end_at_next_extreme(10.0);
    close(ended.end_phase(), 0.5);
    assert!(ended.ends_at().unwrap_or(f64::NAN) < 3_000.0);
    assert_eq!(set.end_at_next_extreme(0.0), Timeline::default());
}

#[test]
fn the_end_of_a_set_that_is_easing_changes_nothing() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    assert_eq!(set.end_at_next_extreme(24_700.0), set);
    assert_eq!(set.end_at_next_extreme(99_000.0), set);
}

#[test]
fn an_extension_adds_its_cycles_even_out_of_the_ease() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    for at in [-100.0, 300.0, 5_000.0, 24_600.0] {
        let longer = set.extend(at, 24.0, 1.0, SET_MS).expect("room");
        close(longer.end_phase(), 48.0);
        assert_eq!(longer.validate(), Ok(()));
    }
    assert_eq!(set.extend(25_100.0, 24.0, 1.0, SET_MS), Err(NoRoom));
    assert_eq!(set.extend(5_000.0, 400.0, 1.0, SET_MS), Err(NoRoom));
}

#[test]
fn a_stop_freezes_the_phase() {
    let set = Timeline::start(&plan(1.0, Length::Cycles(24)), 0.0);
    let stopped = set.stop(7_300.0);
    close(stopped.read(7_300.0).phase, set.read(7_300.0).phase);
    close(stopped.read(9_000.0).phase, set.read(7_300.0).phase);
    assert_eq!(stopped.read(7_300.0).rate, 0.0);
    assert!(stopped.is_over(7_300.0));
    assert_eq!(set.stop(-5.0), Timeline::default());
}

#[test]
fn faults_are_found() {
    let good = Timeline::start(&default_plan(), 0.0);
    let with = |change: fn(&mut Timeline)| {
        let mut bad = good.clone();
        change(&mut bad);
        bad.validate()
    };
    assert_eq!(with(|t| t.segments[1].phase = f64::NAN), Err(Fault::NotFinite { at: 1 }));
    assert_eq!(with(|t| t.segments[0].lasts = 0.0), Err(Fault::NoLength { at: 0 }));
    assert_eq!(with(|t| t.segments[1].rate_to = 2.1), Err(Fault::Rate { at: 1 }));
    assert_eq!(with(|t| t.segments[1].rate_from = -0.1), Err(Fault::Rate { at: 1 }));
    assert_eq!(with(|t| t.segments[2].starts_at += 1.0), Err(Fault::TimeGap { at: 2 }));
    assert_eq!(with(|t| t.segments[2].phase -= 0.01), Err(Fault::PhaseGap { at: 2 }));
}

#[derive(Clone, Debug)]
enum Step {
    Rate(f64),
    Extend(u32),
    End,
}

fn steps() -> impl Strategy<Value = Vec<(f64, Step)>> {
    let step = prop_oneof![
        4 => (0.3..=2.0f64).prop_map(Step::Rate),
        1 => (1..40u32).prop_map(Step::Extend),
        1 => Just(Step::End),
    ];
    prop::collection::vec((0.0..9_000.0f64, step), 0..8)
}

fn length() -> impl Strategy<Value = Length> {
    prop_oneof![(1..=100u32).prop_map(Length::Cycles), Just(Length::Open)]
}

/// Phase never falls or jumps and the rate stays within limits, sampled around every joint.
fn assert_smooth(set: &Timeline) -> Result<(), TestCaseError> {
    prop_assert_eq!(set.validate(), Ok(()));
    for pair in set.segments.windows(2) {
        prop_assert!((pair[0].rate_to - pair[1].rate_from).abs() < 1e-9, "rate jumps");
    }
    if let (Some(first), Some(last)) = (set.segments.first(), set.segments.last()) {
        prop_assert_eq!(first.rate_from, 0.0);
        prop_assert_eq!(last.rate_to, 0.0);
        let (from, to) = (first.starts_at - 50.0, last.ends_at() + 50.0);
        let count = 120;
        let step = (to - from) / f64::from(count);
        let mut before = set.read(from).phase;
        for i in 1..=count {
            let now = set.read(from + step * f64::from(i));
            prop_assert!(now.phase >= before - 1e-9, "runs backwards");
            prop_assert!(now.phase - before <= RATE_HZ.end() * step / 1_000.0 + 1e-9, "jumps");
            before = now.phase;
        }
    }
    let doubled = set.end_phase() * 2.0;
    prop_assert!((doubled - doubled.round()).abs() < 1e-6, "ends at {}", set.end_phase());
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100_000))]

    #[test]
    fn no_sequence_of_changes_jumps_reverses_or_ends_off_an_extreme(
        rate in 0.3..=2.0f64, length in length(), start in 0.0..1e7f64, steps in steps()
    ) {
        let plan = plan(rate, length);
        let mut goal = Goal::of(&plan, start);
        let mut set = Timeline::start(&plan, start);
        let (mut now, mut rate) = (start - 1_000.0, rate);
        for (wait, step) in steps {
            now += wait;
            let before = set.read(now);
            let next = match step {
                Step::Rate(wanted) => {
                    let next = set.change_rate(now, wanted, goal);
                    rate = if next.is_ok() { wanted } else { rate };
                    next
                }
                Step::Extend(cycles) => set.extend(now, f64::from(cycles), rate, goal.by),
                Step::End => Ok(set.end_at_next_extreme(now)),
            };
            if let Ok(next) = next {
                if let (Step::Extend(cycles), Some(end)) = (&step, goal.cycles.as_mut()) {
                    *end += f64::from(*cycles);
                }
                prop_assert!((next.read(now).phase - before.phase).abs() < 1e-9);
                set = next;
            }
        }
        assert_smooth(&set)?;
        if let Some(end) = set.ends_at() {
            prop_assert!(end <= goal.by + 1e-3, "past the hard limit");
        }
    }

    #[test]
    fn a_stop_keeps_what_came_before(
        rate in 0.3..=2.0f64, length in length(), after in -500.0..400_000.0f64, probe in 0.0..1.0f64
    ) {
        let set = Timeline::start(&plan(rate, length), 0.0);
        let stopped = set.stop(after);
        let earlier = after * probe;
        prop_assert!((stopped.read(earlier).phase - set.read(earlier).phase).abs() < 1e-9);
        prop_assert!((stopped.read(1e9).phase - set.read(after).phase).abs() < 1e-9);
        prop_assert!(stopped.is_over(after.max(0.0)));
    }
}
