//! Messages that no page of ours sends: the sender is closed, the other party unharmed.

use super::play::*;
use crate::room::{Effect, Event, Room, Start, Why};
use crate::wire::*;

fn evidence(set: &str, fact: Fact) -> Evidence {
    Evidence { set: set.into(), seq: 0, at: 5_000.0, fact }
}

fn showing(phase: f64) -> FromStage {
    showing_by(phase, None)
}

fn showing_by(phase: f64, clock: Option<ClockError>) -> FromStage {
    FromStage::Showing(Showing { set: "set-1".into(), moving: true, at: 5_000.0, phase, rate: 1.0, width: 18.0, clock })
}

#[test]
fn a_stage_that_breaks_the_rules_is_closed_with_the_reason() {
    let shown = evidence("set-1", Fact::Shown { width: 18.0 });
    let second =
        |phase, frames, longest_gap| FromStage::Evidence { facts: vec![evidence("set-1", Fact::Second { phase, frames, longest_gap })] };
    let beat = |id, page| FromStage::Beat(BeatReply { id, page, drawn: 0 });
    let screen = Device { height_px: f64::NAN, ..device() };
    for (said, reason) in [
        (FromStage::Hello { wire: WIRE_VERSION, device: device() }, "hello comes once"),
        (FromStage::Device { device: screen }, "an impossible screen"),
        (showing(f64::NAN), "an impossible showing"),
        (showing(-1.0), "an impossible showing"),
        (showing(1e300), "an impossible showing"),
        (showing_by(1.0, Some(ClockError { spread: -1.0, bound: 20.0 })), "an impossible showing"),
        (showing_by(1.0, Some(ClockError { spread: 1.0, bound: f64::INFINITY })), "an impossible showing"),
        (second(f64::INFINITY, 60, 20.0), "impossible evidence"),
        (second(2.0, u32::MAX, 20.0), "impossible evidence"),
        (second(2.0, 60, -1.0), "impossible evidence"),
        (FromStage::Evidence { facts: vec![shown.clone(); 21] }, "too much evidence in one message"),
        (FromStage::Evidence { facts: vec![evidence("another", shown.fact.clone())] }, "evidence of a set of another session"),
        (beat(4_000_000, 5_000.0), "an answer to a beat that was never sent"),
        (beat(3, f64::NAN), "an impossible page time"),
        (beat(3, -1.0), "an impossible page time"),
    ] {
        let mut play = Play::running(4_000.0);
        play.stage_says(said);
        assert_eq!(play.closed(), [(STAGE, Why::Breach(reason))]);
        assert_eq!(play.desk_view().state, RoomState::LinkLost);
        // What it still had on its way is dropped.
        assert_eq!(play.stage_says(FromStage::Ready), []);
    }
}

#[test]
fn a_desk_that_breaks_the_rules_is_closed_and_the_others_set_is_unharmed() {
    let beat = |id, page| FromDesk::Beat(BeatReply { id, page, drawn: 0 });
    for said in [FromDesk::Hello { wire: WIRE_VERSION }, beat(4_000_000, 1.0), beat(3, f64::INFINITY)] {
        let mut play = Play::running(4_000.0);
        play.join_desk(OTHER_DESK);
        play.send(Event::DeskSaid { desk: OTHER_DESK, said });
        assert!(matches!(play.closed()[..], [(OTHER_DESK, Why::Breach(_))]));
        play.run(3_000.0);
        assert_eq!(play.ended(), None);
        assert!(!play.desk_view().other_desk);
    }
}

#[test]
fn hello_comes_first() {
    let mut play = Play::new(Start::first(1));
    play.send(Event::DeskJoined { desk: DESK });
    let order = FromDesk::Order { epoch: 1, id: 1, order: Order::TakeControl };
    play.send(Event::DeskSaid { desk: DESK, said: order });
    play.send(Event::StageJoined { stage: STAGE });
    play.stage_says(FromStage::Stop);
    let closed: Vec<u64> = play.closed().into_iter().map(|(id, _)| id).collect();
    assert_eq!(closed, [DESK, STAGE]);
}

#[test]
fn a_flood_is_cut_off() {
    let mut play = Play::running(4_000.0);
    for i in 0..200 {
        play.stage_says(showing(f64::from(i) / 100.0));
    }
    assert_eq!(play.closed(), [(STAGE, Why::Breach("too many messages"))]);
}

#[test]
fn what_the_stage_shows_reaches_every_desk() {
    let mut play = Play::running(4_000.0);
    play.join_desk(OTHER_DESK);
    let effects = play.stage_says(showing(3.5));
    let shown: Vec<u64> = (effects.iter())
        .filter_map(|effect| match effect {
            Effect::ToDesk(desk, ToDesk::Showing(showing)) => {
                assert_eq!(showing.phase, 3.5);
                Some(*desk)
            }
            _ => None,
        })
        .collect();
    assert_eq!(shown, [DESK, OTHER_DESK]);
    // Of a set that is not this room's latest, nothing is shown.
    let old = Showing { set: "set-0".into(), moving: false, at: 0.0, phase: 0.0, rate: 0.0, width: 0.0, clock: None };
    assert_eq!(play.stage_says(FromStage::Showing(old)), []);
}

#[test]
fn kept_evidence_is_acknowledged_to_the_stage() {
    let mut play = Play::running(4_000.0);
    let effects = play.send(Event::Kept { set: "set-1".into(), seq: 7 });
    let kept = ToStage::Kept { set: "set-1".into(), seq: 7 };
    assert_eq!(effects, [Effect::ToStage(STAGE, kept)]);
    play.send(Event::StageLeft { stage: STAGE });
    assert_eq!(play.send(Event::Kept { set: "set-1".into(), seq: 8 }), []);
}

#[test]
fn a_number_left_over_from_another_epoch_is_no_sign_of_having_drawn() {
    let mut play = Play::running(4_000.0);
    play.drawing = false;
    play.stage_says(FromStage::Stop);
    for drawn in [0, 40, 999_999, u32::MAX] {
        let said = FromDesk::Beat(BeatReply { id: 0, page: 9_000.0, drawn });
        play.send(Event::DeskSaid { desk: DESK, said });
        assert!(!play.stage_view().desk_knows, "{drawn}");
    }
}

#[test]
fn time_never_runs_backwards() {
    let mut room = Room::new(Start::first(1));
    room.handle(Event::Tick, 5_000.0);
    for odd in [1_000.0, f64::NAN, f64::NEG_INFINITY, f64::INFINITY] {
        room.handle(Event::Tick, odd);
        assert_eq!(room.now, 5_000.0);
    }
}
