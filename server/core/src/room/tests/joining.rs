//! Joining, control, admission and beats.

use super::play::*;
use crate::room::{Effect, Event, MomentKind, Start, Why};
use crate::safety::default_plan;
use crate::wire::*;

fn hello(wire: u32) -> FromDesk {
    FromDesk::Hello { wire }
}

#[test]
fn a_new_session_waits_for_its_client() {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    let view = play.desk_view().clone();
    assert_eq!(view.state, RoomState::Waiting);
    assert_eq!((view.epoch, view.in_control, view.other_desk), (3, true, false));
    assert_eq!(view.plan, default_plan());
    assert!(view.needs.sight && view.needs.stage && !view.needs.client_ready);
    play.join_stage(STAGE);
    assert_eq!(play.stage_view().state, RoomState::Waiting);
    assert!(play.desk_view().stage_here);
    // By hand: (1600 px - 6 % - 62.8 px of dot) / 4 px a mm, seen from 600 mm.
    assert_eq!(play.desk_view().widest, Some(33.4));
    play.seat(SeatState::Admitted);
    assert_eq!(play.desk_view().state, RoomState::Hold);
    assert!(play.desk_view().needs.sight);
}

#[test]
fn a_clients_page_of_the_version_before_is_understood_and_a_desk_reloads() {
    for wire in [WIRE_VERSION, WIRE_VERSION - 1] {
        let mut play = Play::new(Start::first(1));
        play.send(Event::StageJoined { stage: STAGE });
        play.send(Event::StageSaid { stage: STAGE, said: FromStage::Hello { wire, device: device() } });
        assert!(play.closed().is_empty(), "{wire}");
    }
    let mut play = Play::new(Start::first(1));
    play.send(Event::DeskJoined { desk: DESK });
    let effects = play.send(Event::DeskSaid { desk: DESK, said: hello(WIRE_VERSION - 1) });
    assert_eq!(
        effects[..2],
        [Effect::ToDesk(DESK, ToDesk::Reload), Effect::CloseDesk(DESK, Why::Outdated)],
        "it could not answer the opening"
    );
}

#[test]
fn a_page_of_another_version_is_told_to_reload() {
    let mut play = Play::new(Start::first(1));
    for wire in [WIRE_VERSION + 1, u32::MAX] {
        play.send(Event::DeskJoined { desk: DESK });
        let effects = play.send(Event::DeskSaid { desk: DESK, said: hello(wire) });
        assert_eq!(effects, [Effect::ToDesk(DESK, ToDesk::Reload), Effect::CloseDesk(DESK, Why::Outdated),]);
        play.send(Event::StageJoined { stage: STAGE });
        let said = FromStage::Hello { wire, device: device() };
        let effects = play.send(Event::StageSaid { stage: STAGE, said });
        assert_eq!(effects, [Effect::ToStage(STAGE, ToStage::Reload), Effect::CloseStage(STAGE, Why::Outdated),]);
    }
}

#[test]
fn a_desk_that_watches_may_stop() {
    let mut play = Play::running(1_000.0);
    play.join_desk(OTHER_DESK);
    assert_eq!(play.order_from(OTHER_DESK, Order::Stop), None);
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
}

#[test]
fn a_second_desk_watches_until_it_takes_control() {
    let mut play = Play::running(1_000.0);
    play.join_desk(OTHER_DESK);
    play.run(500.0);
    let views = |play: &Play| (play.desk_view().in_control, play.views_of(OTHER_DESK).last().unwrap().in_control);
    assert_eq!(views(&play), (true, false));
    assert!(play.desk_view().other_desk);
    assert_eq!(play.order_from(OTHER_DESK, Order::End), Some(Refusal::NotInControl));
    assert_eq!(play.order_from(OTHER_DESK, Order::TakeControl), None);
    assert_eq!(views(&play), (false, true));
    assert_eq!(play.ended(), None);
    assert_eq!(play.order(Order::End), Some(Refusal::NotInControl));
    assert!(play.moments().contains(&MomentKind::ControlTaken));
    // The set lives on the new desk's signs alone.
    play.send(Event::DeskLeft { desk: DESK });
    play.run(3_000.0);
    assert_eq!(play.views_of(OTHER_DESK).last().unwrap().set.as_ref().unwrap().ended, None);
}

#[test]
fn control_is_not_inherited_but_a_lone_desk_has_it() {
    let mut play = Play::ready();
    play.join_desk(OTHER_DESK);
    play.send(Event::DeskLeft { desk: DESK });
    play.run(100.0);
    assert!(!play.views_of(OTHER_DESK).last().unwrap().in_control);
    play.join_desk(9);
    assert!(!play.views_of(9).last().unwrap().in_control);
    play.send(Event::DeskLeft { desk: 9 });
    play.send(Event::DeskLeft { desk: OTHER_DESK });
    play.join_desk(10);
    assert!(play.views_of(10).last().unwrap().in_control);
}

#[test]
fn a_desk_that_comes_back_beside_its_own_dead_socket_has_control() {
    let mut play = Play::ready();
    play.mute.insert(DESK);
    play.run(1_900.0);
    play.join_desk(OTHER_DESK);
    assert!(play.views_of(OTHER_DESK).last().unwrap().in_control);
    play.run(25_000.0);
    assert_eq!(play.closed(), [(DESK, Why::Silent)]);
}

/// On a slow line a socket that its page gave up opens after the one that the page opened in its place.
#[test]
fn a_socket_through_which_no_page_speaks_takes_nobodys_place() {
    let mut play = Play::running(2_000.0);
    play.send(Event::StageJoined { stage: 101 });
    play.run(3_000.0);
    assert_eq!((play.closed(), play.ended()), (vec![], None));
    assert!(play.desk_view().stage_here);
    play.send(Event::StageLeft { stage: 101 });
    play.run(500.0);
    assert_eq!((play.closed(), play.ended()), (vec![], None));
}

#[test]
fn sockets_through_which_no_page_speaks_are_closed_in_time_and_are_never_many() {
    let mut play = Play::running(2_000.0);
    for stage in 101..=106 {
        play.send(Event::StageJoined { stage });
    }
    assert_eq!(play.closed(), [(101, Why::Silent), (102, Why::Silent)]);
    play.run(21_000.0);
    assert_eq!(play.closed().len(), 6);
    assert!(play.desk_view().stage_here);
}

#[test]
fn a_newer_stage_takes_the_place_of_the_older() {
    let mut play = Play::running(2_000.0);
    play.join_stage(101);
    assert_eq!(play.closed(), [(STAGE, Why::Replaced)]);
    // The page behind it is another one, so the set cannot go on.
    assert_eq!(play.ended(), Some(Ending::LinkLost));
    play.send(Event::StageLeft { stage: STAGE });
    play.run(500.0);
    assert!(play.desk_view().stage_here);
}

#[test]
fn beats_are_quick_first_then_four_a_second_and_slow_while_waiting() {
    let beats = |play: &Play, from: f64, to: f64| {
        let beat = |effect: &Effect| matches!(effect, Effect::ToStage(_, ToStage::Beat(_)));
        play.log.iter().filter(|(t, e)| (from..to).contains(t) && beat(e)).count()
    };
    let mut play = Play::new(Start::first(1));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.run(31_000.0);
    assert_eq!(beats(&play, 0.0, 1_000.0), 20);
    assert_eq!(beats(&play, 1_000.0, 31_000.0), 6);
    play.seat(SeatState::Admitted);
    play.run(10_000.0);
    assert_eq!(beats(&play, 31_000.0, 41_000.0), 40);
}

#[test]
fn beats_carry_the_clock_and_the_silence_of_the_desk() {
    let mut play = Play::ready();
    play.mute.insert(DESK);
    play.run(1_000.0);
    let beats: Vec<(f64, Beat)> = (play.log.iter())
        .filter_map(|(t, effect)| match effect {
            Effect::ToStage(_, ToStage::Beat(beat)) => Some((*t, beat.clone())),
            _ => None,
        })
        .collect();
    for (i, (t, beat)) in beats.iter().enumerate() {
        assert_eq!((beat.id, beat.sent), (i as u32, *t));
    }
    let (_, last) = beats.last().unwrap();
    let echo = last.echo.unwrap();
    assert_eq!(echo.id, last.id - 1);
    assert_eq!(echo.heard - echo.page, TRIP_MS / 2.0);
    assert!((700.0..1_300.0).contains(&last.desk_silent.unwrap()), "{last:?}");
}

#[test]
fn before_admission_a_stage_says_only_who_and_what_it_is() {
    for said in [FromStage::Interrupted { cause: Interruption::Hidden }, FromStage::Evidence { facts: vec![] }] {
        let mut play = Play::new(Start::first(1));
        play.join_desk(DESK);
        play.join_stage(STAGE);
        play.stage_says(FromStage::Device { device: device() });
        assert_eq!(play.closed(), []);
        play.stage_says(said);
        assert_eq!(play.closed(), [(STAGE, Why::Breach("not admitted"))]);
        assert!(!play.desk_view().stage_here);
    }
}

#[test]
fn a_stage_learns_nothing_of_a_set_before_it_is_admitted() {
    let mut play = Play::running(2_000.0);
    play.seat_asked_for(SeatState::Waiting, true);
    assert_eq!(play.stage_view().set, None);
    assert_eq!(play.stage_view().state, RoomState::AtTheDoor);
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
    assert!(play.desk_view().seat_asked_for);
    play.seat(SeatState::Admitted);
    let needs = play.desk_view().needs;
    assert!(needs.sight && needs.client_ready);
}

#[test]
fn a_client_who_leaves_has_left_until_somebody_comes() {
    let mut play = Play::running(2_000.0);
    play.seat(SeatState::Left);
    assert_eq!((play.desk_view().state, play.desk_view().seat), (RoomState::Left, SeatState::Left));
    assert_eq!(play.ended(), Some(Ending::StoppedByClient));
    assert!(play.desk_view().set.is_some(), "the desk keeps what was done");
    assert_eq!(play.stage_view().set, None);
    assert_eq!(play.order(Order::Start), Some(Refusal::WrongState));
    // Told twice, it happened once.
    play.seat(SeatState::Left);
    assert_eq!(play.moments().iter().filter(|kind| **kind == MomentKind::ClientLeft).count(), 1);
    play.seat(SeatState::Waiting);
    assert_eq!(play.desk_view().state, RoomState::AtTheDoor);
    play.seat(SeatState::Admitted);
    play.run(1_000.0);
    assert!(play.desk_view().needs.sight && play.desk_view().needs.client_ready);
    assert_eq!(play.desk_view().state, RoomState::Hold);
}

#[test]
fn who_had_left_before_the_room_opened_is_not_noted_again() {
    let mut play = Play::new(Start { seat: SeatState::Left, ..Start::first(2) });
    play.join_desk(DESK);
    assert_eq!(play.desk_view().state, RoomState::Left);
    play.seat(SeatState::Left);
    assert_eq!(play.moments(), []);
}

#[test]
fn a_watching_desk_reads_that_its_key_starts_nothing() {
    let mut play = Play::ready();
    play.join_desk(OTHER_DESK);
    let view = play.views_of(OTHER_DESK).last().unwrap();
    assert_eq!((view.state, &view.refused), (RoomState::Hold, &Some(Refusal::NotInControl)));
    assert_eq!((play.desk_view().state, &play.desk_view().refused), (RoomState::Ready, &None));
    play.send(Event::DeskLeft { desk: DESK });
    assert_eq!(play.stage_view().state, RoomState::Hold, "nobody can start");
}

#[test]
fn after_a_restart_both_are_asked_again() {
    let start = Start { sets_so_far: 4, seat: SeatState::Admitted, known_sets: vec!["old".into()], ..Start::first(2) };
    let mut play = Play::new(start);
    play.join_desk(DESK);
    assert_eq!(play.desk_view().state, RoomState::LinkLost);
    play.join_stage(STAGE);
    play.run(200.0);
    let needs = play.desk_view().needs;
    assert!(needs.sight && needs.client_ready && !needs.stage);
    play.order(Order::Sight);
    play.stage_says(FromStage::Ready);
    play.order(Order::Start);
    assert_eq!(play.set().number, 5);
}

#[test]
fn a_room_is_idle_once_everybody_left() {
    let mut play = Play::ready();
    assert!(!play.room.is_idle());
    play.send(Event::StageLeft { stage: STAGE });
    play.send(Event::DeskLeft { desk: DESK });
    assert!(play.room.is_idle());
}
