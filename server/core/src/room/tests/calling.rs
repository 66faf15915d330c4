//! The call: who is connected, what is passed on, and that nothing of it touches the hour.

use super::play::*;
use crate::call::{LONGEST_SDP, Reach};
use crate::room::{Effect, Start, Why};
use crate::wire::*;

const HIDDEN: Reach = Reach::Relay { private: false };
const SDP: &str = "v=0\r\no=- 1 1 IN IP4 198.51.100.7\r\ns=-\r\nm=audio 9 UDP/TLS/RTP/SAVPF 96\r\nc=IN IP4 198.51.100.7\r\n";
/// The first call of a room of epoch 3.
const FIRST: u32 = 30_001;
const RELAYED: &str = "candidate:3 1 udp 41885439 203.0.113.9 49203 typ relay raddr 198.51.100.7 rport 50102";

fn calling(reach: Option<Reach>) -> Play {
    let mut play = Play::new(Start { reach, ..Start::first(3) });
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.run(500.0);
    play
}

/// Calls that were begun, as (desk, stage, number).
fn begun(play: &Play) -> Vec<(u64, u64, u32)> {
    let of = |effect: &Effect| if let Effect::BeginCall { desk, stage, call, .. } = effect { Some((*desk, *stage, *call)) } else { None };
    play.log.iter().filter_map(|(_, effect)| of(effect)).collect()
}

/// What was said about the call to this socket.
fn heard(effects: &[Effect], socket: u64) -> Vec<ToCaller> {
    let of = |effect: &Effect| match effect {
        Effect::ToDesk(id, ToDesk::Call(said)) | Effect::ToStage(id, ToStage::Call(said)) if *id == socket => Some(said.clone()),
        _ => None,
    };
    effects.iter().filter_map(of).collect()
}

fn signal(call: u32, signal: Signal) -> FromCaller {
    FromCaller::Signal { call, signal }
}

fn offer(call: u32) -> FromCaller {
    signal(call, Signal::Offer { sdp: SDP.into() })
}

fn way(call: u32, candidate: &str) -> FromCaller {
    signal(call, Signal::Candidate { candidate: candidate.into(), mid: Some("0".into()), line: Some(0) })
}

#[test]
fn nobody_is_connected_before_the_client_is_let_in_nor_after_they_are_gone() {
    let mut play = calling(Some(HIDDEN));
    assert_eq!(begun(&play), []);
    play.seat(SeatState::Waiting);
    play.run(1_000.0);
    assert_eq!(begun(&play), [], "at the door nobody sees or hears anybody");
    assert!(heard(&play.stage_says(FromStage::Call(offer(FIRST))), DESK).is_empty());
    assert!(play.log.iter().any(|(_, effect)| matches!(effect, Effect::CloseStage(STAGE, Why::Breach("not admitted")))));
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    assert_eq!(begun(&play), [(DESK, STAGE, FIRST)]);
    let effects = play.seat(SeatState::Left);
    assert_eq!(heard(&effects, DESK), [ToCaller::Over]);
    assert_eq!(heard(&effects, STAGE), [ToCaller::Over]);
}

#[test]
fn another_page_is_another_call_and_what_was_meant_for_the_one_before_is_dropped() {
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    play.join_stage(STAGE + 1);
    assert_eq!(begun(&play), [(DESK, STAGE, FIRST), (DESK, STAGE + 1, FIRST + 1)]);
    assert!(heard(&play.desk_says(DESK, FromDesk::Call(offer(FIRST))), STAGE + 1).is_empty(), "of the call before");
    let passed = heard(&play.desk_says(DESK, FromDesk::Call(offer(FIRST + 1))), STAGE + 1);
    assert!(matches!(&passed[..], [ToCaller::Signal { call, signal: Signal::Offer { .. } }] if *call == FIRST + 1), "{passed:?}");
    play.join_desk(OTHER_DESK);
    assert!(heard(&play.desk_says(OTHER_DESK, FromDesk::Call(offer(FIRST + 1))), STAGE + 1).is_empty(), "it only looks on");
    play.order_from(OTHER_DESK, Order::TakeControl);
    assert_eq!(begun(&play).last(), Some(&(OTHER_DESK, STAGE + 1, FIRST + 2)), "the picture goes with the control");
}

#[test]
fn where_only_the_relay_may_be_used_no_other_address_is_passed_on() {
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    for own in [
        "candidate:1 1 udp 2113929471 192.168.1.7 56500 typ host",
        "candidate:1 1 udp 1 aa.local 5 typ host",
        "candidate:2 1 UDP 1694498815 192.0.2.3 45664 typ srflx raddr 10.0.0.1 rport 8998",
    ] {
        assert!(heard(&play.stage_says(FromStage::Call(way(FIRST, own))), DESK).is_empty(), "{own}");
    }
    let strange = play.stage_says(FromStage::Call(way(FIRST, "candidate:of another time")));
    assert!(heard(&strange, DESK).is_empty() && heard(&strange, STAGE).is_empty(), "one way of several: no reason to give the call up");
    let passed = heard(&play.stage_says(FromStage::Call(way(FIRST, RELAYED))), DESK);
    let said = serde_json::to_string(&passed).unwrap();
    assert!(said.contains("203.0.113.9 49203 typ relay raddr 0.0.0.0 rport 0") && !said.contains("198.51.100.7"), "{said}");
    let passed = heard(&play.stage_says(FromStage::Call(offer(FIRST))), DESK);
    assert!(!serde_json::to_string(&passed).unwrap().contains("198.51.100.7"), "{passed:?}");
}

#[test]
fn what_is_too_long_too_much_or_nonsense_is_dropped_said_once_and_ends_nothing() {
    let mut play = Play::new(Start { reach: Some(Reach::Direct), ..Start::first(3) });
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.seat(SeatState::Admitted);
    play.run(2_000.0);
    play.order(Order::Sight);
    play.order(Order::Start);
    play.run(4_000.0);
    assert_eq!(play.desk_view().state, RoomState::Running);
    let long = signal(FIRST, Signal::Offer { sdp: format!("v=0\r\n{}", "a=x\r\n".repeat(LONGEST_SDP)) });
    let effects = play.stage_says(FromStage::Call(long.clone()));
    assert_eq!(heard(&effects, STAGE), [ToCaller::Unable { why: Unable::Unfit }]);
    assert!(heard(&play.stage_says(FromStage::Call(long)), STAGE).is_empty(), "told once");
    // A page that negotiates in a loop.
    let mut passed = 0;
    for _ in 0..50 {
        passed += heard(&play.stage_says(FromStage::Call(offer(FIRST))), DESK).len();
    }
    assert!((5..=10).contains(&passed), "{passed} offers passed on");
    let many = (0..1_500).map(|_| heard(&play.stage_says(FromStage::Call(way(FIRST, RELAYED))), DESK).len()).sum::<usize>();
    assert!(many <= 100, "{many} ways passed on");
    assert_eq!(play.desk_view().state, RoomState::Running, "the set goes on");
    for _ in 0..2_000 {
        play.stage_says(FromStage::Call(way(FIRST, RELAYED)));
    }
    let closed = play.log.iter().find(|(_, effect)| matches!(effect, Effect::CloseStage(..)));
    assert!(matches!(closed, Some((_, Effect::CloseStage(STAGE, Why::Breach("too many signals"))))), "{closed:?}");
}

#[test]
fn without_a_way_the_desk_is_told_and_the_hour_goes_on() {
    let mut play = calling(None);
    let all: Vec<Effect> = play.log.iter().map(|(_, effect)| effect.clone()).collect();
    for page in [DESK, STAGE] {
        assert_eq!(heard(&all, page), [ToCaller::Over], "what it may hold of a room before this one is over");
    }
    let effects = play.seat(SeatState::Admitted);
    assert_eq!(heard(&effects, DESK), [ToCaller::Unable { why: Unable::NoRelay }]);
    assert!(heard(&effects, STAGE).is_empty());
    play.run(2_000.0);
    play.order(Order::Sight);
    assert_eq!((play.desk_view().state, begun(&play).len()), (RoomState::Ready, 0));
}

#[test]
fn new_ways_are_asked_for_by_who_is_in_the_call_and_are_few() {
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    let renewed = |effects: &[Effect]| {
        effects.iter().any(|effect| matches!(effect, Effect::RenewWays { socket: STAGE, of_desk: false, call: FIRST, relay_only: true }))
    };
    assert!(!renewed(&play.stage_says(FromStage::Call(FromCaller::Renew { call: 7 }))));
    let given = (0..100).filter(|_| renewed(&play.stage_says(FromStage::Call(FromCaller::Renew { call: FIRST })))).count();
    assert_eq!(given, 2, "the one of another call counts too");
    let told = play.log.iter().any(|(_, effect)| matches!(effect, Effect::ToStage(_, ToStage::Call(ToCaller::Unable { .. }))));
    assert!(!told, "what it has holds for minutes: nothing is lost");
}

#[test]
fn what_is_of_no_call_or_of_another_has_a_budget_too() {
    let mut play = calling(None);
    play.seat(SeatState::Admitted);
    for _ in 0..3_000 {
        play.stage_says(FromStage::Call(way(7, RELAYED)));
    }
    let closed = play.log.iter().find(|(_, effect)| matches!(effect, Effect::CloseStage(..)));
    assert!(matches!(closed, Some((_, Effect::CloseStage(STAGE, Why::Breach("too many signals"))))), "{closed:?}");
}

#[test]
fn what_the_practice_allows_now_holds_in_rooms_that_are_open() {
    let mut play = calling(Some(Reach::Direct));
    play.seat(SeatState::Admitted);
    let effects = play.allow(Some(HIDDEN), 3);
    assert_eq!(heard(&effects, DESK), [ToCaller::Over]);
    assert_eq!(heard(&effects, STAGE), [ToCaller::Over]);
    let anew = effects.iter().any(|effect| matches!(effect, Effect::BeginCall { call, relay_only: true, .. } if *call == FIRST + 1));
    assert!(anew, "{effects:?}");
    assert_eq!(play.desk_view().watch.seconds, 3);
    assert_eq!(heard(&play.allow(None, 3), DESK), [ToCaller::Over, ToCaller::Unable { why: Unable::NoRelay }]);
    assert!(
        play.allow(None, 3).iter().all(|effect| !matches!(effect, Effect::ToDesk(_, ToDesk::Call(_)))),
        "the same again changes nothing"
    );
}

#[test]
fn a_desk_that_comes_is_told_that_whatever_call_it_had_is_over() {
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    play.log.clear();
    play.join_desk(OTHER_DESK);
    let said: Vec<Effect> = play.log.iter().map(|(_, effect)| effect.clone()).collect();
    assert_eq!((heard(&said, OTHER_DESK), heard(&said, DESK)), (vec![ToCaller::Over], vec![]));
}

#[test]
fn whoever_takes_over_has_not_said_yet_that_they_see_the_client_by_other_means() {
    let mut play = calling(Some(HIDDEN));
    play.seat(SeatState::Admitted);
    play.order(Order::Watch { off: Some(Unwatched::OtherMeans) });
    assert_eq!(play.desk_view().watch.off, Some(Unwatched::OtherMeans));
    play.join_desk(OTHER_DESK);
    play.order_from(OTHER_DESK, Order::TakeControl);
    assert_eq!(play.desk_view().watch.off, None);
    play.order_from(OTHER_DESK, Order::Watch { off: Some(Unwatched::SoundOnly) });
    play.seat(SeatState::Left);
    play.seat(SeatState::Admitted);
    assert_eq!(play.desk_view().watch.off, None, "somebody else may sit there now");
}
