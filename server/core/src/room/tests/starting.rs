//! Plans, orders and the start of a set.

use super::play::*;
use crate::optics;
use crate::room::{Cause, Effect, Event, Start};
use crate::safety::{SET_MS, default_plan};
use crate::wire::*;

fn ordered(play: &Play) -> Vec<(u32, Cause)> {
    let row = |(_, effect): &(f64, Effect)| match effect {
        Effect::RecordOrdered { seq, cause, .. } => Some((*seq, *cause)),
        _ => None,
    };
    play.log.iter().filter_map(row).collect()
}

#[test]
fn a_set_moves_only_once_it_is_in_the_record() {
    let mut play = Play::ready();
    play.recording = false;
    let answers = |play: &Play| {
        let answer = |(_, e): &&(f64, Effect)| matches!(e, Effect::ToDesk(_, ToDesk::Answer { .. }));
        play.log.iter().filter(answer).count()
    };
    let before = answers(&play);
    play.order(Order::Start);
    assert_eq!(play.desk_view().state, RoomState::Starting);
    assert_eq!(play.desk_view().set, None);
    play.run(800.0);
    assert_eq!(answers(&play), before);
    play.send(Event::SetRecorded { number: 1, id: "a".into() });
    assert_eq!(answers(&play), before + 1);
    let set = play.set();
    assert_eq!((set.id.as_str(), set.number, set.ended), ("a", 1, None));
    let rest = set.timeline.starts_at().unwrap() - play.t;
    assert!((1_000.0..=1_250.0).contains(&rest), "{rest}");
    assert_eq!(play.desk_view().hard_end, Some(play.t + rest + SET_MS));
    assert_eq!(ordered(&play), [(0, Cause::Started)]);
    assert_eq!(play.stage_view().set.as_ref(), Some(play.set()));
}

/// Before the client is admitted the desk is heard every 5 s; a stage that knows no later sign would not start.
#[test]
fn a_set_at_the_moment_of_admission_finds_the_stage_with_a_fresh_sign_of_the_desk() {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.run(14_000.0);
    play.seat(SeatState::Admitted);
    let told = play.log.len();
    play.order(Order::Sight);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Hold, Some(Refusal::Needs)));
    play.run(TRIP_MS);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Ready, None));
    let to_stage: Vec<&ToStage> = play.log[told..]
        .iter()
        .filter_map(|(_, effect)| if let Effect::ToStage(STAGE, message) = effect { Some(message) } else { None })
        .collect();
    let set =
        to_stage.iter().position(|message| matches!(message, ToStage::View(view) if view.set.is_some())).expect("a set for the stage");
    let sign = to_stage[..set].iter().rev().find_map(|message| if let ToStage::Beat(beat) = message { beat.desk_silent } else { None });
    assert_eq!(sign, Some(TRIP_MS));
}

#[test]
fn a_set_that_cannot_be_written_never_starts() {
    let mut play = Play::ready();
    play.recording = false;
    play.order(Order::Start);
    let effects = play.send(Event::SetNotRecorded { number: 1 });
    assert!(effects.iter().any(|effect| matches!(effect, Effect::ToDesk(DESK, ToDesk::Answer { refused: Some(Refusal::NotSaved), .. }))));
    assert_eq!(play.desk_view().state, RoomState::Ready);
    play.recording = true;
    play.order(Order::Start);
    assert_eq!(play.set().number, 2, "a commit that was thought lost may have used number 1");
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
    play.send(Event::SetRecorded { number: 1, id: "late".into() });
    assert_eq!(play.desk_view().set, None);
    assert_eq!(play.endings(), [("late".to_string(), Ending::Unknown)]);
    play.recording = true;
    play.order(Order::Start);
    assert_eq!(play.set().number, 2);
}

#[test]
fn a_stop_while_the_set_is_being_written_keeps_it_from_starting() {
    for (stop, ending) in
        [(Order::Stop, Ending::StoppedByClinician), (Order::End, Ending::EndedByClinician), (Order::CannotSee, Ending::CannotSee)]
    {
        let mut play = Play::ready();
        play.recording = false;
        play.order(Order::Start);
        assert_eq!(play.order(stop), None);
        play.send(Event::SetRecorded { number: 1, id: "a".into() });
        assert_eq!(play.desk_view().set, None);
        assert_eq!(play.endings(), [("a".to_string(), ending)]);
    }
}

#[test]
fn plans_are_checked_between_sets() {
    let mut play = Play::ready();
    let plan = Plan { width: 36.0, ..default_plan() };
    assert_eq!(play.order(Order::Plan { plan }), Some(Refusal::TooWide { widest: 33.4 }));
    let plan = Plan { rate: f64::NAN, ..default_plan() };
    assert!(matches!(play.order(Order::Plan { plan }), Some(Refusal::Limit { .. })));
    let plan = Plan { width: 46.0, path: Path::Rising, ..default_plan() };
    assert!(matches!(play.order(Order::Plan { plan }), Some(Refusal::Limit { .. })), "wider than any screen");
    let plan = Plan { width: 30.0, rate: 0.8, length: Length::Open, ..default_plan() };
    assert_eq!(play.order(Order::Plan { plan }), None);
    assert_eq!(play.desk_view().plan, plan);
    play.order(Order::Start);
    assert_eq!(play.set().plan, plan);
}

#[test]
fn the_plan_is_as_wide_as_was_asked_for_or_as_the_screen_shows() {
    let mut play = Play::ready();
    let width = |play: &Play| play.desk_view().plan.width;
    play.stage_says(FromStage::Device { device: Device { width_px: 500.0, ..device() } });
    assert_eq!(width(&play), 9.0);
    // Anything but the width may be changed meanwhile; a width that does not fit is refused.
    let plan = Plan { length: Length::Cycles(6), ..play.desk_view().plan };
    assert_eq!(play.order(Order::Plan { plan }), None);
    let refused = play.order(Order::Plan { plan: Plan { width: 11.0, ..plan } });
    assert!(matches!(refused, Some(Refusal::TooWide { widest }) if widest < 11.0), "{refused:?}");
    // A preset is more than a width, and is not refused for it.
    let preset = Plan { width: 20.0, rate: 0.8, ..plan };
    assert_eq!(play.order(Order::Plan { plan: preset }), None);
    assert_eq!((width(&play), play.desk_view().asked_width), (9.0, 20.0));
    assert_eq!(play.order(Order::Plan { plan: Plan { width: 18.0, ..plan } }), None);
    play.stage_says(FromStage::Device { device: device() });
    assert_eq!((width(&play), play.desk_view().asked_width), (18.0, 18.0));
    // A path with less room narrows it, the way back gives it back; what was asked for meanwhile stays.
    play.order(Order::Plan { plan: Plan { width: 30.0, ..plan } });
    for (path, fits) in [(Path::Rising, 25.0), (Path::Across, 30.0)] {
        let plan = Plan { path, ..play.desk_view().plan };
        assert_eq!(play.order(Order::Plan { plan }), None);
        assert_eq!(width(&play), fits);
    }
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.set().plan.width, 30.0);
}

#[test]
fn nothing_starts_before_the_check_of_the_device_is_over() {
    let mut play = Play::ready();
    play.stage_says(FromStage::Device { device: Device { checking: true, ..device() } });
    assert_eq!(play.desk_view().needs, Needs { check: true, ..Needs::default() });
    assert_eq!(play.order(Order::Start), Some(Refusal::Needs));
    play.stage_says(FromStage::Device { device: device() });
    assert_eq!(play.order(Order::Start), None);
    // A set that is shown goes on: the page itself stops it when it has to ask again.
    play.stage_says(FromStage::Device { device: Device { checking: true, ..device() } });
    assert!(play.set().ended.is_none());
}

#[test]
fn an_eight_too_wide_for_the_screen_is_refused_with_the_widest() {
    let mut play = Play::ready();
    play.order(Order::Plan { plan: Plan { path: Path::Eight, ..default_plan() } });
    let plan = Plan { width: 40.0, path: Path::Eight, ..default_plan() };
    assert_eq!(play.order(Order::Plan { plan }), Some(Refusal::TooWide { widest: 33.4 }));
    // On an upright screen the eight is as wide as a path across: it is less than half as high.
    play.stage_says(FromStage::Device { device: Device { width_px: 390.0, height_px: 844.0, ..device() } });
    for path in [Path::Across, Path::Eight] {
        play.order(Order::Plan { plan: Plan { path, ..play.desk_view().plan } });
        assert_eq!(play.desk_view().widest, Some(7.2), "{path:?}");
    }
}

#[test]
fn a_nonsense_calibration_counts_as_none_and_harms_nothing() {
    let mut play = Play::ready();
    let nonsense = Device { px_per_mm: Some(optics::px_per_mm(3.0)), distance_mm: Some(5_000.0), ..device() };
    play.stage_says(FromStage::Device { device: nonsense });
    assert_eq!(play.closed(), []);
    let taken_in = play.desk_view().device;
    assert_eq!(taken_in, Some(Device { px_per_mm: None, distance_mm: None, ..device() }));
    assert_eq!(play.order(Order::Start), None);
}

#[test]
fn tones_out_of_range_are_refused_and_the_plan_stays() {
    let mut play = Play::ready();
    for comfort in [
        Comfort { pitch: 9_000, ..Comfort::default() },
        Comfort { tone_ms: 0, ..Comfort::default() },
        Comfort { level: 255, ..Comfort::default() },
    ] {
        let plan = Plan { comfort, ..default_plan() };
        assert!(matches!(play.order(Order::Plan { plan }), Some(Refusal::Limit { .. })));
        assert_eq!(play.desk_view().plan, default_plan());
    }
}

#[test]
fn hands_faster_than_may_blink_are_refused_also_while_a_set_runs() {
    let mut play = Play::ready();
    let hands = Plan { channels: Channels { eyes: false, ears: false, hands: true }, ..default_plan() };
    assert!(matches!(play.order(Order::Plan { plan: Plan { rate: 1.6, ..hands } }), Some(Refusal::Limit { .. })));
    assert_eq!(play.order(Order::Plan { plan: hands }), None);
    assert_eq!(play.order(Order::Start), None);
    play.run(3_000.0);
    assert!(matches!(play.order(Order::Plan { plan: Plan { rate: 1.6, ..hands } }), Some(Refusal::Limit { .. })));
    assert_eq!(play.set().plan.rate, 1.0);
}

#[test]
fn the_desk_asks_for_left_and_right_between_sets_only() {
    let mut play = Play::ready();
    assert_eq!(play.order(Order::AskSides), None);
    assert_eq!(play.stage_view().sides_asked, 1);
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.order(Order::AskSides), Some(Refusal::WrongState));
    assert_eq!(play.stage_view().sides_asked, 1);
}

#[test]
fn a_screen_too_small_for_any_path_refuses_the_start() {
    let mut play = Play::ready();
    play.stage_says(FromStage::Device { device: Device { width_px: 130.0, height_px: 130.0, ..device() } });
    let refused = play.order(Order::Start);
    assert!(matches!(refused, Some(Refusal::TooWide { widest }) if widest < 2.0), "{refused:?}");
    assert_eq!((play.desk_view().state, &play.desk_view().refused), (RoomState::Hold, &refused));
}

#[test]
fn an_order_that_comes_twice_acts_once() {
    let mut play = Play::running(5_000.0);
    let order = |id| Event::DeskSaid { desk: DESK, said: FromDesk::Order { epoch: 3, id, order: Order::Extend } };
    for _ in 0..3 {
        let effects = play.send(order(500));
        let answers: Vec<_> = (effects.iter()).filter(|e| matches!(e, Effect::ToDesk(_, ToDesk::Answer { .. }))).collect();
        assert_eq!(answers, [&Effect::ToDesk(DESK, ToDesk::Answer { id: 500, refused: None })]);
    }
    assert_eq!(play.set().plan.length, Length::Cycles(48));
}

#[test]
fn an_order_for_the_room_before_its_restart_is_refused() {
    let mut play = Play::ready();
    let said = FromDesk::Order { epoch: 2, id: 900, order: Order::Start };
    let effects = play.send(Event::DeskSaid { desk: DESK, said });
    let answer = ToDesk::Answer { id: 900, refused: Some(Refusal::OldEpoch) };
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

/// Federal telehealth guidance (clinical reference 1.1, source 3): what is confirmed comes before the work.
#[test]
fn nothing_starts_while_the_opening_holds_it() {
    let mut play = Play::ready();
    let hold = Hold { matter: Matter::Risk, against: false };
    play.held(&[hold]);
    assert_eq!((play.desk_view().state, play.desk_view().holds.clone()), (RoomState::Hold, vec![hold]));
    assert_eq!(play.order(Order::Start), Some(Refusal::Held));
    play.held(&[]);
    assert_eq!((play.desk_view().state, play.order(Order::Start)), (RoomState::Ready, None));
}

#[test]
fn what_holds_a_start_is_of_what_the_set_is_for() {
    let mut play = Play::ready();
    let hold = Hold { matter: Matter::Fitness, against: true };
    play.in_record(|facts| facts.holds = Holds { processing: vec![hold], calm_place: vec![] });
    assert_eq!(play.order(Order::Start), Some(Refusal::Held));
    let calm = Plan { purpose: Purpose::CalmPlace, ..default_plan() };
    assert_eq!(play.order(Order::Plan { plan: calm }), None);
    assert_eq!((play.desk_view().state, play.desk_view().holds.len()), (RoomState::Ready, 0));
    assert_eq!(play.order(Order::Start), None);
}

#[test]
fn a_consent_that_is_withdrawn_in_a_running_set_lets_it_ease_and_nothing_else_does() {
    let mut play = Play::running(3_000.0);
    play.held(&[Hold { matter: Matter::Risk, against: true }, Hold { matter: Matter::Consent, against: false }]);
    play.run(1_000.0);
    assert_eq!((play.desk_view().state, play.ended()), (RoomState::Running, None));
    play.held(&[Hold { matter: Matter::Consent, against: true }]);
    play.run(4_000.0);
    assert_eq!(play.ended(), Some(Ending::EndedByClinician));
    assert_eq!(play.order(Order::Start), Some(Refusal::Held), "and the next one is held");
}
