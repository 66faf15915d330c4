//! Random schedules of everything that can happen, against what must always hold.

use std::collections::HashSet;

use proptest::prelude::*;

use super::play::*;
use super::witness::{Witness, tried, words_are_true};
use crate::room::{Cause, Effect, Event, Start};
use crate::safety::default_plan;
use crate::wire::*;

#[derive(Clone, Debug)]
enum Step {
    Wait(f64),
    /// Everybody comes back and says what is needed.
    Gather,
    Order(u64, Order),
    Stage(FromStage),
    Mute(u64),
    Unmute(u64),
    /// A page's answers are longer on their way, ms.
    Late(u64, f64),
    DeskJoins(u64),
    DeskLeaves(u64),
    /// A socket through which nobody speaks.
    StageOpens,
    StageJoins,
    StageLeaves,
    Seat(SeatState),
    Record(bool),
    NotRecorded(u32),
    LateRecord(u32),
    Eyes(bool),
    Close,
}

fn order() -> impl Strategy<Value = Order> {
    prop_oneof![
        6 => Just(Order::Start),
        4 => Just(Order::Sight),
        1 => Just(Order::TakeControl),
        1 => Just(Order::CannotSee),
        2 => Just(Order::Stop),
        2 => Just(Order::End),
        2 => Just(Order::Extend),
        3 => (0.2..2.2f64).prop_map(with_rate),
        1 => Just(Order::Show { steadying: Some(Steadying::Orient) }),
        1 => Just(Order::Ask { pad: Some(Pad { scale: Scale::Sud, moment: Moment::AfterSet }) }),
        1 => (1u32..4).prop_map(|n| Order::Plan {
            plan: Plan { length: Length::Cycles(n), ..default_plan() }
        }),
    ]
}

fn said() -> impl Strategy<Value = FromStage> {
    let cause = prop_oneof![
        Just(Interruption::Hidden),
        Just(Interruption::Resized),
        Just(Interruption::Silence),
        Just(Interruption::FullScreenLeft),
    ];
    prop_oneof![
        5 => Just(FromStage::Ready),
        2 => Just(FromStage::Stop),
        1 => Just(FromStage::Longer),
        1 => (0u8..=10).prop_map(|value| FromStage::Rated { id: "018f2c7e-7d0a-7c3e-9a3e-5a1d0f6b7c11".into(), asked: 1, value: Some(value) }),
        1 => cause.prop_map(|cause| FromStage::Interrupted { cause }),
        1 => (200.0..2_000.0f64, prop::bool::weighted(0.2)).prop_map(|(width_px, checking)| FromStage::Device {
            device: Device { width_px, checking, ..device() }
        }),
    ]
}

fn step() -> impl Strategy<Value = Step> {
    let desk = || prop_oneof![4 => Just(DESK), 1 => Just(OTHER_DESK)];
    let page = || prop_oneof![Just(DESK), Just(OTHER_DESK), Just(STAGE)];
    prop_oneof![
        5 => Just(Step::Gather),
        8 => (0.0..4_000.0f64).prop_map(Step::Wait),
        1 => (0.0..40_000.0f64).prop_map(Step::Wait),
        12 => (desk(), order()).prop_map(|(desk, order)| Step::Order(desk, order)),
        5 => said().prop_map(Step::Stage),
        1 => page().prop_map(Step::Mute),
        2 => page().prop_map(Step::Unmute),
        1 => (page(), prop_oneof![Just(0.0), 0.0..3_000.0f64]).prop_map(|(page, ms)| Step::Late(page, ms)),
        1 => desk().prop_map(Step::DeskJoins),
        1 => desk().prop_map(Step::DeskLeaves),
        1 => Just(Step::StageOpens),
        1 => Just(Step::StageJoins),
        1 => Just(Step::StageLeaves),
        1 => prop_oneof![
            6 => Just(SeatState::Admitted), 1 => Just(SeatState::Waiting), 1 => Just(SeatState::Left), 1 => Just(SeatState::Empty),
        ]
        .prop_map(Step::Seat),
        1 => any::<bool>().prop_map(Step::Record),
        1 => (1u32..6).prop_map(Step::NotRecorded),
        1 => (1u32..6).prop_map(Step::LateRecord),
        1 => prop::bool::weighted(0.2).prop_map(Step::Eyes),
        1 => prop::bool::weighted(0.1).prop_map(|close| if close { Step::Close } else { Step::Wait(100.0) }),
    ]
}

/// No two sockets have the same number.
fn free_stage(play: &Play) -> u64 {
    let taken = |id: u64| play.room.stage.as_ref().is_some_and(|stage| stage.id == id) || play.room.arriving.iter().any(|one| one.id == id);
    (STAGE..).find(|id| !taken(*id)).expect("numbers do not end")
}

fn stage_says(play: &mut Play, witness: &mut Witness, said: FromStage) {
    let hears = play.room.is_live() && play.room.stage.as_ref().is_some_and(|s| s.conduct.greeted);
    if let Some(stage) = play.room.stage.as_ref().map(|stage| stage.id) {
        let (stops, ready) = (said == FromStage::Stop, said == FromStage::Ready);
        play.send(Event::StageSaid { stage, said });
        if hears {
            witness.must_tap = (witness.must_tap || stops) && !ready;
        }
    }
}

fn gather(play: &mut Play, witness: &mut Witness) {
    play.mute.clear();
    play.late.clear();
    play.recording = true;
    take(play, witness, Step::DeskJoins(DESK));
    if play.room.stage.is_none() {
        take(play, witness, Step::StageJoins);
    }
    take(play, witness, Step::Seat(SeatState::Admitted));
    take(play, witness, Step::Wait(400.0));
    for order in [Order::TakeControl, Order::Sight] {
        take(play, witness, Step::Order(DESK, order));
    }
    take(play, witness, Step::Stage(FromStage::Ready));
    take(play, witness, Step::Wait(1_000.0));
    take(play, witness, Step::Order(DESK, Order::Start));
}

fn take(play: &mut Play, witness: &mut Witness, step: Step) {
    match step {
        Step::Wait(ms) => play.run_watched(ms, |play| witness.watch(play)),
        Step::Order(desk, order) => {
            if play.room.desks.iter().any(|known| known.id == desk) {
                let (answers, starts) = tried(play, desk, order.clone());
                assert_eq!(answers.len(), usize::from(!starts), "{order:?}: answered once, a start when it is in the record");
            }
            play.order_from(desk, order);
        }
        Step::Gather => gather(play, witness),
        Step::Stage(said) => stage_says(play, witness, said),
        Step::Mute(page) => drop(play.mute.insert(page)),
        Step::Unmute(page) => drop(play.mute.remove(&page)),
        Step::Late(page, ms) => drop(play.late.insert(page, ms)),
        Step::DeskJoins(desk) if !play.room.desks.iter().any(|d| d.id == desk) => {
            witness.views.remove(&desk);
            play.join_desk(desk);
        }
        Step::DeskJoins(_) => {}
        Step::DeskLeaves(desk) => drop(play.send(Event::DeskLeft { desk })),
        Step::StageOpens => drop(play.send(Event::StageJoined { stage: free_stage(play) })),
        Step::StageJoins => {
            let stage = free_stage(play);
            witness.views.remove(&stage);
            play.join_stage(stage);
        }
        Step::StageLeaves => {
            if let Some(stage) = play.room.stage.as_ref().map(|stage| stage.id) {
                play.send(Event::StageLeft { stage });
            }
        }
        Step::Seat(state) => drop(play.seat(state)),
        Step::Record(at_once) => play.recording = at_once,
        Step::NotRecorded(number) => drop(play.send(Event::SetNotRecorded { number })),
        Step::LateRecord(number) => {
            // The record keeps a set once.
            let id = format!("set-{number}");
            if !play.room.known_sets.contains(&id) {
                play.send(Event::SetRecorded { number, id });
            }
        }
        Step::Eyes(locked) => drop(play.eyes_locked(locked)),
        Step::Close => drop(play.close(None)),
    }
    witness.watch(play);
    words_are_true(play);
}

/// Plays `steps`.
fn explore(steps: Vec<Step>) -> Play {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.seat(SeatState::Admitted);
    play.order(Order::Sight);
    let mut witness = Witness::default();
    for step in steps {
        take(&mut play, &mut witness, step);
    }
    play
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn whatever_happens_the_rules_hold(steps in prop::collection::vec(step(), 1..60)) {
        explore(steps);
    }
}

/// The same long schedules at every run.
fn schedules(count: usize) -> impl Iterator<Item = Vec<Step>> {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let many = prop::collection::vec(step(), 40..60);
    (0..count).map(move |_| many.new_tree(&mut runner).unwrap().current())
}

/// The state words of a view as it goes over the wire.
fn words(effect: &Effect) -> Option<(&'static str, String, Option<String>)> {
    let text = |value: serde_json::Value| value.as_str().unwrap().to_string();
    match effect {
        Effect::ToDesk(_, ToDesk::View(view)) => {
            let view = serde_json::to_value(view).unwrap();
            Some(("desk", text(view["state"].clone()), Some(text(view["seat"].clone()))))
        }
        Effect::ToStage(_, ToStage::View(view)) => Some(("stage", text(serde_json::to_value(view).unwrap()["state"].clone()), None)),
        _ => None,
    }
}

/// The random schedules would prove little if they hardly ever ran a set, or did not come by every state.
#[test]
fn the_schedules_reach_running_sets_and_every_state() {
    let mut sets = 0;
    let mut seen = HashSet::new();
    for steps in schedules(100) {
        let play = explore(steps);
        sets += play.log.iter().filter(|(_, effect)| matches!(effect, Effect::RecordOrdered { cause: Cause::Started, .. })).count();
        seen.extend(play.log.iter().filter_map(|(_, effect)| words(effect)).map(|(_, state, _)| state));
    }
    assert!(sets > 100, "{sets} sets in 100 schedules");
    let mut seen: Vec<String> = seen.into_iter().collect();
    seen.sort();
    let all = [
        "at_the_door",
        "closed",
        "easing",
        "hold",
        "left",
        "link_lost",
        "ready",
        "running",
        "starting",
        "stopped",
        "stopped_by_client",
        "waiting",
    ];
    assert_eq!(seen, all);
}
