//! What the client's page says that it shows, or could not show: the word RUNNING, and what a start waits for.

use super::play::*;
use crate::safety::default_plan;
use crate::wire::*;

#[test]
fn a_set_runs_once_the_clients_page_has_said_so() {
    let mut play = Play::ready();
    play.showing = false;
    assert_eq!(play.order(Order::Start), None);
    let says = |play: &mut Play, moving, rate| {
        let showing = Showing { set: "set-1".into(), moving, at: play.t, phase: 0.0, rate, width: 18.0, clock: None };
        play.stage_says(FromStage::Showing(showing));
    };
    play.run(5_000.0);
    assert_eq!((play.desk_view().state, play.ended()), (RoomState::Starting, None));
    // At rest before the first motion.
    says(&mut play, true, 0.0);
    assert_eq!(play.desk_view().state, RoomState::Starting);
    says(&mut play, true, 0.5);
    assert_eq!((play.desk_view().state, play.stage_view().state), (RoomState::Running, RoomState::Running));
}

#[test]
fn that_it_began_is_told_as_a_fact_as_well() {
    let mut play = Play::ready();
    play.showing = false;
    play.order(Order::Start);
    let fact = |seq, fact| FromStage::Evidence { facts: vec![Evidence { set: "set-1".into(), seq, at: 1.0, fact }] };
    play.stage_says(fact(0, Fact::Shown { width: 18.0 }));
    assert_eq!(play.desk_view().state, RoomState::Running);
    play.order(Order::Stop);
    play.stage_says(fact(1, Fact::Rested { phase: 0.2, ending: Ending::StoppedByClinician }));
    play.run(1_100.0);
    // Told again, since it is not known to be kept: it does not move now.
    play.stage_says(fact(0, Fact::Shown { width: 18.0 }));
    assert_eq!(play.desk_view().state, RoomState::Ready);
}

#[test]
fn nothing_starts_while_the_clients_page_still_shows_the_last_set() {
    let mut play = Play::running(4_000.0);
    play.showing = false;
    play.order(Order::Stop);
    play.run(3_000.0);
    assert_eq!(play.desk_view().needs, Needs { rest: true, ..Needs::default() });
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Stopped, Some(Refusal::Needs)));
    let showing = Showing { set: "set-1".into(), moving: false, at: play.t, phase: 3.5, rate: 0.0, width: 18.0, clock: None };
    play.stage_says(FromStage::Showing(showing));
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Ready, None));
}

#[test]
fn what_the_clients_page_could_not_show_is_not_started() {
    let ears = Channels { eyes: false, ears: true, hands: false };
    let hands = Channels { eyes: false, ears: false, hands: true };
    let eyes = default_plan().channels;
    let buzzing = Comfort { vibration: true, ..Comfort::default() };
    let (motion, sound) = (Needs { motion: true, ..Needs::default() }, Needs { sound: true, ..Needs::default() });
    let silent = Device { sound: false, ..device() };
    for (channels, comfort, device, needs) in [
        (eyes, Comfort::default(), Device { reduced_motion: true, ..device() }, motion),
        (ears, Comfort::default(), silent, sound),
        (hands, Comfort::default(), Device { vibration: true, ..silent }, sound),
        (hands, buzzing, silent, sound),
        (hands, buzzing, Device { vibration: true, ..silent }, Needs::default()),
        (eyes, Comfort::default(), silent, Needs::default()),
        (ears, Comfort::default(), Device { reduced_motion: true, ..device() }, Needs::default()),
    ] {
        let mut play = Play::ready();
        play.stage_says(FromStage::Device { device });
        play.order(Order::Plan { plan: Plan { channels, comfort, ..default_plan() } });
        assert_eq!(play.desk_view().needs, needs);
        assert_eq!(play.order(Order::Start).is_none(), needs == Needs::default(), "{channels:?} {device:?}");
    }
}
