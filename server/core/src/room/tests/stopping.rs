//! Every way in which a set is stopped, and what the next one then needs.

use super::play::*;
use crate::room::{Cause, Effect, Event, MomentKind, Start};
use crate::safety::default_plan;
use crate::wire::*;

#[test]
fn the_clinician_stops_at_once_and_waits_a_second() {
    let mut play = Play::running(5_300.0);
    let phase = play.set().timeline.read(play.t).phase;
    assert_eq!(play.order(Order::Stop), None);
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
    assert_eq!(play.set().timeline.read(play.t + 9_000.0).phase, phase);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    play.run(999.0);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    play.run(2.0);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(play.order(Order::Start), None);
    // Once nothing runs, a late Stop is not an error.
    let mut idle = Play::ready();
    assert_eq!(idle.order(Order::Stop), None);
    assert_eq!(idle.desk_view().state, RoomState::Ready);
}

#[test]
fn a_stop_is_in_the_record_with_the_timeline_it_left() {
    let mut play = Play::running(5_300.0);
    play.order(Order::Stop);
    let rows: Vec<&Effect> = (play.log.iter().map(|(_, effect)| effect))
        .filter(|e| matches!(e, Effect::RecordOrdered { .. } | Effect::RecordEnding { .. }))
        .collect();
    let [_, Effect::RecordOrdered { set, seq, cause, timeline, .. }, Effect::RecordEnding { .. }] = rows[..] else {
        panic!("{rows:?}");
    };
    assert_eq!((set.as_str(), *seq), ("set-1", 1));
    assert_eq!(*cause, Cause::Stopped(Ending::StoppedByClinician));
    assert_eq!(timeline.ends_at(), Some(play.t));
}

#[test]
fn the_client_stops_and_must_be_ready_again() {
    let mut play = Play::running(5_000.0);
    play.stage_says(FromStage::Stop);
    assert_eq!(play.ended(), Some(Ending::StoppedByClient));
    assert_eq!(play.desk_view().state, RoomState::StoppedByClient);
    play.run(3_000.0);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    assert_eq!(play.desk_view().state, RoomState::StoppedByClient);
    play.stage_says(FromStage::Ready);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(play.desk_view().set.as_ref().unwrap().ended, Some(Ending::StoppedByClient));
    assert_eq!(play.order(Order::Start), None);
    let moments = play.moments();
    assert!(moments.ends_with(&[MomentKind::ClientStop, MomentKind::ClientReady]), "{moments:?}");
}

#[test]
fn a_repeated_stop_counts_once_and_is_always_answered() {
    let mut play = Play::running(5_000.0);
    play.stage_says(FromStage::Stop);
    play.run(1_500.0);
    let effects = play.stage_says(FromStage::Stop);
    assert!(effects.iter().any(|e| matches!(e, Effect::ToStage(_, ToStage::View(_)))));
    assert!(!play.desk_view().needs.pause);
    let stops = play.moments().iter().filter(|kind| **kind == MomentKind::ClientStop).count();
    assert_eq!(stops, 1);
}

#[test]
fn a_stop_between_sets_needs_the_clients_ready_too() {
    let mut play = Play::ready();
    play.stage_says(FromStage::Stop);
    assert_eq!(play.desk_view().state, RoomState::StoppedByClient);
    assert!(play.desk_view().needs.client_ready);
}

#[test]
fn a_stop_at_the_door_reaches_the_desk_and_holds_until_the_client_is_ready() {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.seat(SeatState::Waiting);
    play.stage_says(FromStage::Stop);
    assert!(play.desk_view().needs.client_ready);
    play.run(6_000.0);
    assert!(play.stage_view().desk_knows);
    play.seat(SeatState::Admitted);
    play.run(1_000.0);
    assert_eq!(play.desk_view().state, RoomState::StoppedByClient);
    play.order(Order::Sight);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    play.stage_says(FromStage::Ready);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Ready, None));
    assert_eq!(play.moments(), [MomentKind::ClientStop, MomentKind::Sight, MomentKind::ClientReady]);
}

/// The page tells a lost full screen only of a set that it shows, and waits for a tap from then on.
#[test]
fn a_full_screen_left_as_the_set_ended_here_needs_the_tap_that_the_page_waits_for() {
    let mut play = Play::running(4_000.0);
    play.order(Order::Stop);
    play.stage_says(FromStage::Interrupted { cause: Interruption::FullScreenLeft });
    assert!(play.desk_view().needs.client_ready);
}

#[test]
fn a_stop_keeps_a_set_in_the_making_from_starting() {
    let mut play = Play::ready();
    play.recording = false;
    play.order(Order::Start);
    play.stage_says(FromStage::Stop);
    play.send(Event::SetRecorded { number: 1, id: "a".into() });
    assert_eq!(play.desk_view().set, None);
    assert_eq!(play.endings(), [("a".to_string(), Ending::StoppedByClient)]);
}

#[test]
fn the_stage_says_that_the_desk_knows_only_once_it_has_drawn_the_stop() {
    let mut play = Play::running(5_000.0);
    play.drawing = false;
    play.stage_says(FromStage::Stop);
    play.run(1_000.0);
    assert!(!play.stage_view().desk_knows);
    play.drawing = true;
    // The next view is drawn, and its number comes back with the next beat.
    play.stage_says(FromStage::Ready);
    play.run(400.0);
    assert!(play.stage_view().desk_knows);
    play.order(Order::Start);
    assert!(!play.stage_view().desk_knows);
}

#[test]
fn a_watching_desk_does_not_count_as_knowing() {
    let mut play = Play::running(5_000.0);
    play.join_desk(OTHER_DESK);
    play.run(1_000.0);
    play.mute.insert(DESK);
    play.stage_says(FromStage::Stop);
    play.run(1_000.0);
    assert!(!play.stage_view().desk_knows);
    play.order_from(OTHER_DESK, Order::TakeControl);
    play.run(400.0);
    assert!(play.stage_view().desk_knows);
}

#[test]
fn interruptions_end_the_set_and_ask_for_what_they_must() {
    for (cause, ending, tap, sight) in [
        (Interruption::Hidden, Ending::PageInterrupted, true, false),
        (Interruption::FullScreenLeft, Ending::PageInterrupted, true, false),
        (Interruption::SoundLost, Ending::PageInterrupted, true, false),
        (Interruption::Resized, Ending::PageInterrupted, false, false),
        (Interruption::Silence, Ending::LinkLost, false, true),
    ] {
        let mut play = Play::running(4_000.0);
        play.stage_says(FromStage::Interrupted { cause });
        assert_eq!(play.ended(), Some(ending), "{cause:?}");
        assert_eq!(play.desk_view().state, RoomState::Stopped);
        let needs = play.desk_view().needs;
        assert_eq!((needs.client_ready, needs.sight), (tap, sight), "{cause:?}");
        assert!(play.moments().contains(&MomentKind::Interrupted(cause)));
        play.stage_says(FromStage::Interrupted { cause });
        assert_eq!(play.endings().len(), 1);
    }
}

#[test]
fn a_page_hidden_between_sets_needs_a_tap_and_a_turned_one_does_not() {
    let mut play = Play::ready();
    play.stage_says(FromStage::Interrupted { cause: Interruption::Resized });
    assert_eq!(play.desk_view().needs, Needs::default());
    play.stage_says(FromStage::Interrupted { cause: Interruption::Hidden });
    assert!(play.desk_view().needs.client_ready);
    assert_eq!(play.desk_view().state, RoomState::Hold);
}

#[test]
fn a_screen_too_small_for_the_set_that_runs_ends_it() {
    let mut play = Play::running(4_000.0);
    play.stage_says(FromStage::Device { device: Device { wake_lock: false, ..device() } });
    assert_eq!(play.ended(), None);
    play.stage_says(FromStage::Device { device: Device { width_px: 500.0, ..device() } });
    assert_eq!(play.ended(), Some(Ending::PageInterrupted));
}

#[test]
fn not_seeing_the_client_ends_the_set_and_asks_for_sight() {
    let mut play = Play::running(4_000.0);
    assert_eq!(play.order(Order::CannotSee), None);
    assert_eq!(play.ended(), Some(Ending::CannotSee));
    play.run(2_000.0);
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    assert_eq!(play.desk_view().state, RoomState::Stopped);
    play.order(Order::Sight);
    assert_eq!(play.order(Order::Start), None);
}

#[test]
fn locking_the_eyes_stops_a_set_of_eyes_alone() {
    let mut play = Play::running(4_000.0);
    play.eyes_locked(true);
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
    play.run(2_000.0);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Hold, Some(Refusal::EyesLocked)));
    assert_eq!(play.desk_view().refused, Some(Refusal::EyesLocked));
    let plan = Plan { channels: Channels { eyes: false, ears: true, hands: false }, ..default_plan() };
    assert_eq!(play.order(Order::Plan { plan }), None);
    assert_eq!(play.order(Order::Start), None);
    play.eyes_locked(true);
    assert_eq!(play.ended(), None);
}

// The figure of the pacer blinks: it is not drawn while the eyes are locked.
#[test]
fn locking_the_eyes_takes_the_figure_away() {
    let mut play = Play::ready();
    assert!(play.stage_view().figure);
    let plan = Plan { channels: Channels { eyes: false, ears: false, hands: true }, ..default_plan() };
    play.order(Order::Plan { plan });
    play.order(Order::Start);
    play.run(3_000.0);
    play.eyes_locked(true);
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
    play.run(2_000.0);
    assert!(!play.stage_view().figure);
    assert_eq!(play.order(Order::Start), None);
}

#[test]
fn closing_ends_everything_and_says_the_chosen_words() {
    let mut play = Play::running(4_000.0);
    play.close(Some("Until Thursday.".into()));
    assert_eq!(play.ended(), Some(Ending::StoppedByClinician));
    assert_eq!(play.desk_view().state, RoomState::Closed);
    assert_eq!(play.stage_view().closing_words.as_deref(), Some("Until Thursday."));
    for order in [Order::Start, Order::Sight, Order::Stop, Order::Extend] {
        assert_eq!(play.order(order), Some(Refusal::WrongState));
    }
    play.stage_says(FromStage::Stop);
    assert_eq!(play.desk_view().state, RoomState::Closed);
    // What was seen before may still come.
    let facts =
        vec![Evidence { set: "set-1".into(), seq: 3, at: play.t, fact: Fact::Rested { phase: 3.5, ending: Ending::StoppedByClinician } }];
    let effects = play.stage_says(FromStage::Evidence { facts: facts.clone() });
    assert_eq!(effects, [Effect::KeepEvidence(facts)]);
}
