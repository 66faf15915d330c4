//! Changing a set that runs, and its natural ends.

use super::play::*;
use crate::room::{Cause, Effect};
use crate::safety::default_plan;
use crate::wire::*;

fn ordered(play: &Play) -> Vec<(u32, Cause)> {
    let row = |(_, effect): &(f64, Effect)| match effect {
        Effect::RecordOrdered { seq, cause, .. } => Some((*seq, *cause)),
        _ => None,
    };
    play.log.iter().filter_map(row).collect()
}

fn phase(play: &Play) -> f64 {
    play.set().timeline.read(play.t).phase
}

#[test]
fn a_set_comes_to_its_planned_end() {
    let mut play = Play::running(0.0);
    play.run(23_900.0);
    assert_eq!(play.desk_view().state, RoomState::Running);
    play.run(200.0);
    assert_eq!(play.desk_view().state, RoomState::Easing);
    play.run(900.0);
    assert_eq!(play.ended(), Some(Ending::Done));
    // Over here; the client's page has still to say so.
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Easing, Some(Refusal::Needs)));
    play.run(TRIP_MS);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(play.endings(), [("set-1".to_string(), Ending::Done)]);
    // An ordinary next set needs no tap and no pause.
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.set().number, 2);
}

#[test]
fn a_rate_change_is_live_ahead_of_the_slower_page_and_without_a_jump() {
    let mut play = Play::running(5_000.0);
    let before = play.set().timeline.clone();
    assert_eq!(play.order(with_rate(1.4)), None);
    let after = &play.set().timeline;
    let at = play.t + TRIP_MS / 2.0;
    assert_eq!(after.read(at), before.read(at));
    assert!(after.read(at + 5.0).rate > before.read(at + 5.0).rate);
    assert_eq!(play.set().plan.rate, 1.4);
    assert_eq!(play.desk_view().plan.rate, 1.4);
    assert_eq!(ordered(&play), [(0, Cause::Started), (1, Cause::Rate)]);
    play.run(60_000.0);
    assert_eq!(play.ended(), Some(Ending::Done));
    assert!((phase(&play) - 24.0).abs() < 1e-9);
    assert_eq!(play.desk_view().plan.rate, 1.4);
}

#[test]
fn a_set_that_was_changed_too_often_says_so_and_goes_on() {
    let mut play = Play::running(3_000.0);
    let refused = (0..500).find_map(|i| {
        play.run(20.0);
        play.order(with_rate(if i % 2 == 0 { 1.2 } else { 1.1 }))
    });
    let Some(Refusal::Limit { limit }) = refused else { panic!("{refused:?}") };
    assert_eq!(limit, "This set was changed too often to change again.");
    assert_eq!(play.order(Order::Extend), Some(Refusal::Limit { limit }));
    assert_eq!(play.desk_view().state, RoomState::Running);
    assert_eq!(play.order(Order::Stop), None);
}

#[test]
fn only_the_rate_may_change_while_a_set_runs() {
    let mut play = Play::running(3_000.0);
    let plan = default_plan();
    for plan in [
        Plan { width: 10.0, ..plan },
        Plan { path: Path::UpDown, ..plan },
        Plan { length: Length::Open, ..plan },
        Plan { dot: 1.0, rate: 1.2, ..plan },
    ] {
        assert_eq!(play.order(Order::Plan { plan }), Some(Refusal::WrongState));
    }
    let refused = play.order(with_rate(2.5));
    assert!(matches!(refused, Some(Refusal::Limit { .. })), "{refused:?}");
    assert_eq!(ordered(&play).len(), 1);
}

#[test]
fn a_held_key_cannot_grow_a_set_without_bound() {
    let mut play = Play::running(1_500.0);
    let mut refused = 0;
    for i in 0..400 {
        let rate = if i % 2 == 0 { 0.6 } else { 0.5 };
        refused += usize::from(play.order(with_rate(rate)).is_some());
        play.run(30.0);
    }
    assert!(refused > 0);
    assert!(play.set().timeline.segments.len() < 250);
}

#[test]
fn an_extension_adds_the_same_length_again() {
    let mut play = Play::running(10_000.0);
    assert_eq!(play.order(Order::Extend), None);
    assert_eq!(play.set().plan.length, Length::Cycles(48));
    play.run(20_000.0);
    assert_eq!(play.order(Order::Extend), None);
    play.run(50_000.0);
    assert_eq!(play.ended(), Some(Ending::Done));
    assert!((phase(&play) - 72.0).abs() < 1e-9);
    assert_eq!(play.desk_view().plan.length, Length::Cycles(24));
    assert_eq!(play.order(Order::Extend), Some(Refusal::WrongState));
}

#[test]
fn an_extension_past_the_hard_limit_is_refused_with_the_figure() {
    let mut play = Play::running(10_000.0);
    let refusals: Vec<_> = (0..14).map(|_| play.order(Order::Extend)).collect();
    assert_eq!(refusals.iter().filter(|refused| refused.is_none()).count(), 13);
    let Some(Refusal::Limit { limit }) = &refusals[13] else {
        panic!("{refusals:?}");
    };
    assert!(limit.contains("360 seconds"), "{limit}");
    play.run(360_000.0);
    assert_eq!(play.ended(), Some(Ending::Done));
}

#[test]
fn the_end_eases_out_at_the_next_extreme() {
    let mut play = Play::running(5_000.0);
    assert_eq!(play.order(Order::End), None);
    assert_eq!(play.desk_view().state, RoomState::Easing);
    assert_eq!(play.order(Order::End), None);
    assert_eq!(play.order(Order::Extend), Some(Refusal::WrongState));
    assert_eq!(play.order(with_rate(1.2)), Some(Refusal::WrongState));
    play.run(1_200.0);
    assert_eq!(play.ended(), Some(Ending::EndedByClinician));
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(phase(&play), 5.0);
    assert_eq!(play.order(Order::End), Some(Refusal::WrongState));
}

#[test]
fn the_end_before_the_first_motion_is_the_end() {
    let mut play = Play::running(-900.0);
    assert_eq!(play.order(Order::End), None);
    assert_eq!(play.ended(), Some(Ending::EndedByClinician));
    assert_eq!(play.set().timeline, Timeline::default());
}

#[test]
fn an_open_set_ends_at_the_hard_limit() {
    let mut play = Play::ready();
    let plan = Plan { length: Length::Open, ..default_plan() };
    play.order(Order::Plan { plan });
    play.order(Order::Start);
    assert_eq!(play.order(Order::Extend), Some(Refusal::WrongState));
    let hard_end = play.desk_view().hard_end.unwrap();
    play.run(hard_end - play.t);
    assert_eq!(play.ended(), Some(Ending::HardLimit));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
}
