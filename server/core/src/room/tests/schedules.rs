//! Random schedules of everything that can happen, against what must always hold.

use std::collections::{HashMap, HashSet};

use proptest::prelude::*;

use super::play::*;
use crate::room::{Cause, Effect, Event, Start};
use crate::safety::{SILENCE_MS, default_plan};
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
        1 => desk().prop_map(Step::DeskJoins),
        1 => desk().prop_map(Step::DeskLeaves),
        1 => Just(Step::StageOpens),
        1 => Just(Step::StageJoins),
        1 => Just(Step::StageLeaves),
        1 => prop_oneof![3 => Just(SeatState::Admitted), 1 => Just(SeatState::Waiting)]
            .prop_map(Step::Seat),
        1 => any::<bool>().prop_map(Step::Record),
        1 => (1u32..6).prop_map(Step::NotRecorded),
        1 => (1u32..6).prop_map(Step::LateRecord),
        1 => prop::bool::weighted(0.2).prop_map(Step::Eyes),
        1 => prop::bool::weighted(0.1).prop_map(|close| if close { Step::Close } else { Step::Wait(100.0) }),
    ]
}

/// What the schedule knows by itself, to hold the room against.
#[derive(Default)]
struct Witness {
    seen: usize,
    /// The last view of each socket.
    views: HashMap<u64, (u32, String)>,
    running: HashSet<String>,
    ended: HashMap<String, Ending>,
    timelines: HashMap<String, Timeline>,
    must_tap: bool,
}

impl Witness {
    fn watch(&mut self, play: &Play) {
        for (t, effect) in &play.log[self.seen..] {
            self.effect(*t, effect);
        }
        self.seen = play.log.len();
        if let Some(set) = play.room.running() {
            let heard = play.room.desk_presence.heard.expect("a set needs a desk");
            assert!(play.t - heard < SILENCE_MS, "runs {} ms into silence", play.t - heard);
            assert!(play.t <= set.goal.by + 1e-3, "runs past the hard limit");
            assert!(play.room.stage.is_some(), "runs without a stage");
        }
    }

    fn effect(&mut self, t: f64, effect: &Effect) {
        match effect {
            Effect::ToDesk(desk, ToDesk::View(view)) => {
                self.view(*desk, view.seq, format!("{view:?}"), &view.set);
            }
            Effect::ToStage(stage, ToStage::View(view)) => {
                self.view(*stage, view.seq, format!("{view:?}"), &view.set);
            }
            Effect::RecordSet { .. } => {
                assert!(!self.must_tap, "starts before the client is ready again");
                assert!(self.running.is_empty(), "starts while a set runs");
            }
            Effect::RecordOrdered { set, cause, timeline, .. } => {
                self.ordered(t, set, *cause, timeline);
            }
            Effect::RecordEnding { set, ending, .. } => {
                assert_eq!(self.ended.insert(set.clone(), *ending), None, "ends twice");
                self.running.remove(set);
            }
            _ => {}
        }
    }

    /// Numbers rise with every change, and an ended set stays ended.
    fn view(&mut self, socket: u64, seq: u32, text: String, set: &Option<SetView>) {
        if let Some((last, said)) = self.views.get(&socket) {
            assert!(seq >= *last, "seq falls");
            if seq == *last {
                // `stage_heard` alone goes on between two sendings of one view.
                let cut = |text: &str| text.split("stage_heard").next().unwrap_or("").len();
                assert_eq!(cut(said), cut(&text), "one seq, two views");
            }
        }
        self.views.insert(socket, (seq, text));
        if let Some(set) = set {
            assert!(!self.ended.contains_key(&set.id) || set.ended.is_some(), "revives");
        }
    }

    fn ordered(&mut self, t: f64, set: &str, cause: Cause, timeline: &Timeline) {
        assert!(!self.ended.contains_key(set), "changes after its end");
        assert_eq!(timeline.validate(), Ok(()));
        if cause == Cause::Started {
            assert!(timeline.starts_at() >= Some(t + 1_000.0), "no rest before motion");
            self.running.insert(set.into());
            assert_eq!(self.running.len(), 1, "two sets run");
        } else {
            let before = self.timelines[set].read(t).phase;
            assert!((timeline.read(t).phase - before).abs() < 1e-9, "jumps");
        }
        self.timelines.insert(set.into(), timeline.clone());
    }
}

/// No two sockets have the same number.
fn free_stage(play: &Play) -> u64 {
    let taken = |id: u64| play.room.stage.as_ref().is_some_and(|stage| stage.id == id) || play.room.arriving.iter().any(|one| one.id == id);
    (STAGE..).find(|id| !taken(*id)).expect("numbers do not end")
}

fn stage_says(play: &mut Play, witness: &mut Witness, said: FromStage) {
    let hears = play.room.is_live() && play.room.stage.as_ref().is_some_and(|s| s.line.greeted);
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
            play.order_from(desk, order);
        }
        Step::Gather => gather(play, witness),
        Step::Stage(said) => stage_says(play, witness, said),
        Step::Mute(page) => drop(play.mute.insert(page)),
        Step::Unmute(page) => drop(play.mute.remove(&page)),
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
}

fn explore(steps: Vec<Step>) -> usize {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.seat(SeatState::Admitted);
    play.order(Order::Sight);
    let mut witness = Witness::default();
    for step in steps {
        take(&mut play, &mut witness, step);
    }
    witness.timelines.len()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn whatever_happens_the_rules_hold(steps in prop::collection::vec(step(), 1..60)) {
        explore(steps);
    }
}

/// The random schedules would prove little if they hardly ever ran a set.
#[test]
fn the_schedules_reach_running_sets() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let many = prop::collection::vec(step(), 40..60);
    let sets: usize = (0..100).map(|_| explore(many.new_tree(&mut runner).unwrap().current())).sum();
    assert!(sets > 100, "{sets} sets in 100 schedules");
}
