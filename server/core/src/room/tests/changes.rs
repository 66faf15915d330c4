//! Starting a set and changing it.

use super::play::*;
use crate::room::{Cause, Effect, Event};
use crate::safety::{SET_MS, default_plan};
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
fn a_set_moves_only_once_it_is_in_the_record() {
    let mut play = Play::ready();
    play.recording = false;
    let answers = |play: &Play| {
        let answer =
            |(_, e): &&(f64, Effect)| matches!(e, Effect::ToDesk(_, ToDesk::Answer { .. }));
        play.log.iter().filter(answer).count()
    };
    let before = answers(&play);
    play.order(Order::Start);
    assert_eq!(play.desk_view().state, RoomState::Starting);
    assert_eq!(play.desk_view().set, None);
    play.run(800.0);
    assert_eq!(answers(&play), before);
    play.send(Event::SetRecorded {
        number: 1,
        id: "a".into(),
    });
    assert_eq!(answers(&play), before + 1);
    let set = play.set();
    assert_eq!((set.id.as_str(), set.number, set.ended), ("a", 1, None));
    let rest = set.timeline.starts_at().unwrap() - play.t;
    assert!((1_000.0..=1_250.0).contains(&rest), "{rest}");
    assert_eq!(play.desk_view().state, RoomState::Running);
    assert_eq!(play.desk_view().hard_end, Some(play.t + rest + SET_MS));
    assert_eq!(ordered(&play), [(0, Cause::Started)]);
    assert_eq!(play.stage_view().set.as_ref(), Some(play.set()));
}

#[test]
fn a_set_that_cannot_be_written_never_starts() {
    let mut play = Play::ready();
    play.recording = false;
    play.order(Order::Start);
    let effects = play.send(Event::SetNotRecorded { number: 1 });
    assert!(effects.iter().any(|effect| matches!(
        effect,
        Effect::ToDesk(
            DESK,
            ToDesk::Answer {
                refused: Some(Refusal::NotSaved),
                ..
            }
        )
    )));
    assert_eq!(play.desk_view().state, RoomState::Ready);
    play.recording = true;
    play.order(Order::Start);
    assert_eq!(play.set().number, 1);
}

#[test]
fn a_slow_record_is_given_up_and_its_late_set_never_runs() {
    let mut play = Play::ready();
    play.recording = false;
    play.order(Order::Start);
    play.run(4_999.0);
    assert_eq!(play.desk_view().state, RoomState::Starting);
    play.run(2.0);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    play.send(Event::SetRecorded {
        number: 1,
        id: "late".into(),
    });
    assert_eq!(play.desk_view().set, None);
    assert_eq!(play.endings(), [("late".to_string(), Ending::Unknown)]);
    play.recording = true;
    play.order(Order::Start);
    assert_eq!(play.set().number, 2);
}

#[test]
fn a_stop_while_the_set_is_being_written_keeps_it_from_starting() {
    for (stop, ending) in [
        (Order::Stop, Ending::StoppedByClinician),
        (Order::End, Ending::EndedByClinician),
        (Order::CannotSee, Ending::CannotSee),
    ] {
        let mut play = Play::ready();
        play.recording = false;
        play.order(Order::Start);
        assert_eq!(play.order(stop), None);
        play.send(Event::SetRecorded {
            number: 1,
            id: "a".into(),
        });
        assert_eq!(play.desk_view().set, None);
        assert_eq!(play.endings(), [("a".to_string(), ending)]);
    }
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
    // Half of the round trip and one frame.
    let at = play.t + TRIP_MS / 2.0 + 17.0;
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
fn only_the_rate_may_change_while_a_set_runs() {
    let mut play = Play::running(3_000.0);
    let plan = default_plan();
    for plan in [
        Plan {
            width: 10.0,
            ..plan
        },
        Plan {
            path: Path::UpDown,
            ..plan
        },
        Plan {
            length: Length::Open,
            ..plan
        },
        Plan {
            dot: 1.0,
            rate: 1.2,
            ..plan
        },
    ] {
        assert_eq!(play.order(Order::Plan { plan }), Some(Refusal::WrongState));
    }
    let refused = play.order(with_rate(2.5));
    assert!(
        matches!(refused, Some(Refusal::Limit { .. })),
        "{refused:?}"
    );
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
fn plans_are_checked_between_sets() {
    let mut play = Play::ready();
    let plan = Plan {
        width: 36.0,
        ..default_plan()
    };
    assert_eq!(
        play.order(Order::Plan { plan }),
        Some(Refusal::TooWide { widest: 33.4 })
    );
    let plan = Plan {
        rate: f64::NAN,
        ..default_plan()
    };
    assert!(matches!(
        play.order(Order::Plan { plan }),
        Some(Refusal::Limit { .. })
    ));
    let plan = Plan {
        width: 30.0,
        path: Path::Rising,
        ..default_plan()
    };
    assert_eq!(
        play.order(Order::Plan { plan }),
        Some(Refusal::TooWide { widest: 25.9 })
    );
    let plan = Plan {
        width: 30.0,
        rate: 0.8,
        length: Length::Open,
        ..default_plan()
    };
    assert_eq!(play.order(Order::Plan { plan }), None);
    assert_eq!(play.desk_view().plan, plan);
    play.order(Order::Start);
    assert_eq!(play.set().plan, plan);
}

#[test]
fn a_screen_that_shrank_refuses_the_plan_at_the_start() {
    let mut play = Play::ready();
    play.stage_says(FromStage::Device {
        device: Device {
            width_px: 500.0,
            ..device()
        },
    });
    let refused = play.order(Order::Start);
    assert!(
        matches!(refused, Some(Refusal::TooWide { widest }) if widest < 11.0),
        "{refused:?}"
    );
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
    assert_eq!(
        refusals.iter().filter(|refused| refused.is_none()).count(),
        13
    );
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
    let plan = Plan {
        length: Length::Open,
        ..default_plan()
    };
    play.order(Order::Plan { plan });
    play.order(Order::Start);
    assert_eq!(play.order(Order::Extend), Some(Refusal::WrongState));
    let hard_end = play.desk_view().hard_end.unwrap();
    play.run(hard_end - play.t);
    assert_eq!(play.ended(), Some(Ending::HardLimit));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
}

#[test]
fn an_order_that_comes_twice_acts_once() {
    let mut play = Play::running(5_000.0);
    let order = |id| Event::DeskSaid {
        desk: DESK,
        said: FromDesk::Order {
            epoch: 3,
            id,
            order: Order::Extend,
        },
    };
    for _ in 0..3 {
        let effects = play.send(order(500));
        let answers: Vec<_> = (effects.iter())
            .filter(|e| matches!(e, Effect::ToDesk(_, ToDesk::Answer { .. })))
            .collect();
        assert_eq!(
            answers,
            [&Effect::ToDesk(
                DESK,
                ToDesk::Answer {
                    id: 500,
                    refused: None
                }
            )]
        );
    }
    assert_eq!(play.set().plan.length, Length::Cycles(48));
}

#[test]
fn an_order_for_the_room_before_its_restart_is_refused() {
    let mut play = Play::ready();
    let said = FromDesk::Order {
        epoch: 2,
        id: 900,
        order: Order::Start,
    };
    let effects = play.send(Event::DeskSaid { desk: DESK, said });
    let answer = ToDesk::Answer {
        id: 900,
        refused: Some(Refusal::OldEpoch),
    };
    assert_eq!(effects, [Effect::ToDesk(DESK, answer)]);
}

#[test]
fn a_start_needs_sight_and_an_idle_room() {
    let mut play = Play::admitted();
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    play.order(Order::Sight);
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.order(Order::Start), Some(Refusal::WrongState));
    let mut waiting = Play::new(crate::room::Start::first(3));
    waiting.join_desk(DESK);
    assert_eq!(waiting.order(Order::Start), Some(Refusal::WrongState));
    assert_eq!(waiting.order(Order::Sight), Some(Refusal::WrongState));
}

#[test]
fn a_set_survives_a_passing_hitch_of_both_lines() {
    let mut play = Play::running(3_000.0);
    play.mute.extend([DESK, STAGE]);
    play.run(1_000.0);
    play.mute.clear();
    play.run(5_000.0);
    assert_eq!(play.ended(), None);
}
