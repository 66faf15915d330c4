//! Lost lines: what stops, when, and what the return needs.

use super::play::*;
use crate::room::presence::MOST_TRIP_MS;
use crate::room::{Effect, Event, MomentKind, Why};
use crate::safety::{SILENCE_ABSOLUTE_MS, SILENCE_MS};
use crate::wire::*;

#[test]
fn a_silent_desk_ends_the_set_at_the_limit() {
    let mut play = Play::running(4_000.0);
    play.mute.insert(DESK);
    let ended = |play: &Play| play.stage_view().set.as_ref().unwrap().ended;
    let mut last_sign = 0.0;
    play.run_watched(5_000.0, |play| {
        last_sign = play.room.desk_presence.heard.unwrap();
        if play.t < last_sign + SILENCE_MS + TRIP_MS {
            assert_eq!(ended(play), None);
        } else {
            assert_eq!(ended(play), Some(Ending::LinkLost));
        }
    });
    let end = play.stage_view().set.as_ref().unwrap().timeline.ends_at().unwrap();
    assert_eq!(end - last_sign, SILENCE_MS + TRIP_MS);
    const { assert!(SILENCE_MS + MOST_TRIP_MS < SILENCE_ABSOLUTE_MS) };
    assert!(!play.stage_view().desk_here);
    assert_eq!(play.moments().last(), Some(&MomentKind::DeskLost));
}

/// However long its answers take, and however evenly that grows: three seconds are counted from when the desk was there.
#[test]
fn answers_that_were_long_on_their_way_are_no_later_signs() {
    for grows in [10.0, 50.0, 100.0, 2_000.0] {
        let mut play = Play::running(4_000.0);
        let told = play.log.len();
        for _ in 0..40 {
            let late = play.late.entry(DESK).or_default();
            *late = f64::min(*late + grows, 2_000.0);
            play.run(250.0);
        }
        play.mute.insert(DESK);
        let gone = play.signs[&DESK];
        play.run(6_000.0);
        let set = play.stage_view().set.as_ref().unwrap();
        assert_eq!(set.ended, Some(Ending::LinkLost), "{grows}");
        assert!(set.timeline.ends_at().unwrap() <= gone + SILENCE_ABSOLUTE_MS, "{grows}");
        // The stage counts by what it is told: never of a sign that is later than the true one.
        let mut beats = 0;
        for (_, effect) in &play.log[told..] {
            if let Effect::ToStage(_, ToStage::Beat(beat)) = effect {
                assert!(beat.sent - beat.desk_silent.unwrap() <= gone, "{grows}: {beat:?}");
                beats += 1;
            }
        }
        assert!(beats > 40);
        assert!(!play.stage_view().desk_here, "late answers do not bring it back");
    }
}

#[test]
fn a_slow_line_is_borne_for_its_round_trip() {
    let mut play = Play::ready();
    play.late.extend([(DESK, 400.0), (STAGE, 400.0)]);
    play.run(10_000.0);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Ready, None));
    let trips: Vec<f64> = (play.log.iter())
        .filter_map(|(_, effect)| if let Effect::ToStage(_, ToStage::Beat(beat)) = effect { Some(beat.desk_trip) } else { None })
        .collect();
    assert_eq!(trips.last(), Some(&(TRIP_MS + 400.0)));
    play.run(28_000.0);
    assert_eq!(play.ended(), Some(Ending::Done));
}

#[test]
fn a_desk_that_answers_two_seconds_late_starts_nothing() {
    let mut play = Play::ready();
    play.late.insert(DESK, 2_000.0);
    play.run(20_000.0);
    assert_eq!(play.desk_view().state, RoomState::Hold);
    assert!(play.desk_view().needs.desk);
    play.order(Order::Sight);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
}

/// A desk that was away for 10 s read READY beside a reading of a minute ago, and the client's page said "You can rest now".
#[test]
fn after_the_desk_was_away_both_ends_read_the_same() {
    for away in [4_000.0, 9_000.0, 10_000.0, 12_000.0] {
        let mut play = Play::running(4_000.0);
        play.mute.insert(DESK);
        play.run(2_000.0);
        play.stage_says(FromStage::Interrupted { cause: Interruption::Silence });
        play.send(Event::DeskLeft { desk: DESK });
        play.run(away - 2_000.0);
        play.mute.clear();
        play.join_desk(DESK);
        play.run(1_000.0);
        for wanted in [Order::Sight, Order::Stop] {
            let ready = play.desk_view().state == RoomState::Ready;
            assert_eq!(ready, play.stage_view().state == RoomState::Ready, "{away}");
            assert_eq!(ready, play.room.may_start(play.room.control).is_ok(), "{away}");
            play.order(wanted);
        }
        if play.desk_view().needs.client_ready {
            assert_ne!(play.desk_view().state, RoomState::Ready);
            play.stage_says(FromStage::Ready);
        }
        assert_eq!((play.desk_view().state, play.stage_view().state), (RoomState::Ready, RoomState::Ready), "{away}");
    }
}

#[test]
fn a_desk_that_closes_its_socket_has_the_same_time() {
    let mut play = Play::running(4_000.0);
    play.send(Event::DeskLeft { desk: DESK });
    play.run(1_000.0);
    play.join_desk(9);
    play.run(3_000.0);
    // A quick reload is no loss.
    assert_eq!(play.stage_view().set.as_ref().unwrap().ended, None);
    play.send(Event::DeskLeft { desk: 9 });
    play.run(1_600.0);
    assert_eq!(play.stage_view().set.as_ref().unwrap().ended, Some(Ending::LinkLost));
}

#[test]
fn a_set_never_starts_again_by_itself() {
    let mut play = Play::running(4_000.0);
    play.mute.insert(DESK);
    play.run(3_000.0);
    play.mute.clear();
    play.run(30_000.0);
    assert_eq!(play.ended(), Some(Ending::LinkLost));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
}

#[test]
fn after_a_short_gap_the_clinician_alone_may_go_on() {
    let mut play = Play::running(4_000.0);
    play.mute.insert(STAGE);
    play.run(4_000.0);
    assert_eq!(play.desk_view().state, RoomState::LinkLost);
    assert_eq!(play.ended(), Some(Ending::LinkLost));
    assert!(!play.desk_view().stage_here);
    assert_eq!(play.order(Order::Sight), Some(Refusal::Needs));
    play.mute.clear();
    play.run(1_000.0);
    let needs = play.desk_view().needs;
    assert_eq!((needs.sight, needs.client_ready, needs.stage), (true, false, false));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
    play.order(Order::Sight);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(play.order(Order::Start), None);
    assert!(play.moments().ends_with(&[MomentKind::StageLost, MomentKind::StageBack, MomentKind::Sight]));
}

#[test]
fn after_a_long_gap_the_client_is_asked_as_well() {
    for lost in [DESK, STAGE] {
        let mut play = Play::running(4_000.0);
        play.mute.insert(lost);
        play.run(12_000.0);
        play.mute.clear();
        play.run(1_000.0);
        let needs = play.desk_view().needs;
        assert_eq!((needs.sight, needs.client_ready), (true, true), "{lost}");
    }
}

#[test]
fn a_gap_between_sets_is_a_loss_too() {
    let mut play = Play::ready();
    play.send(Event::StageLeft { stage: STAGE });
    assert_eq!(play.desk_view().state, RoomState::LinkLost);
    assert!(play.desk_view().needs.stage);
    play.run(500.0);
    play.join_stage(101);
    assert_eq!(play.desk_view().state, RoomState::Hold);
    assert!(play.desk_view().needs.sight);
}

#[test]
fn a_stage_whose_socket_closes_is_lost_at_once() {
    let mut play = Play::running(4_000.0);
    play.send(Event::StageLeft { stage: STAGE });
    assert_eq!(play.ended(), Some(Ending::LinkLost));
    assert_eq!(play.desk_view().state, RoomState::LinkLost);
}

#[test]
fn nothing_is_lost_while_the_client_waits() {
    let mut play = Play::new(crate::room::Start::first(1));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.run(60_000.0);
    play.seat(SeatState::Admitted);
    play.run(5_000.0);
    assert_eq!(play.moments(), []);
    assert_eq!(play.desk_view().state, RoomState::Hold);
    assert!(!play.desk_view().needs.client_ready);
}

#[test]
fn what_happened_before_admission_is_no_gap() {
    let mut play = Play::new(crate::room::Start::first(1));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.run(2_000.0);
    play.send(Event::DeskLeft { desk: DESK });
    play.run(60_000.0);
    play.seat(SeatState::Admitted);
    play.join_desk(9);
    assert!(!play.views_of(9).last().unwrap().needs.client_ready);
}

#[test]
fn a_dead_socket_is_closed_after_a_while() {
    let mut play = Play::ready();
    play.mute.insert(STAGE);
    play.run(25_000.0);
    assert_eq!(play.closed(), [(STAGE, Why::Silent)]);
    assert_eq!(play.desk_view().state, RoomState::LinkLost);
}

#[test]
fn a_set_that_was_over_before_the_silence_is_done() {
    let mut play = Play::running(24_500.0);
    play.mute.insert(DESK);
    play.run(10_000.0);
    assert_eq!(play.stage_view().set.as_ref().unwrap().ended, Some(Ending::Done));
    // Even if the clock was read late.
    let mut play = Play::running(24_500.0);
    play.t += 10_000.0;
    play.send(Event::Tick);
    assert_eq!(play.endings(), [("set-1".to_string(), Ending::Done)]);
}
