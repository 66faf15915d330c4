//! Watches a schedule: what must always hold of a room, whatever happens.

use std::collections::{HashMap, HashSet};

use super::play::*;
use crate::room::presence::MOST_TRIP_MS;
use crate::room::{Cause, Effect, Event};
use crate::safety::SILENCE_MS;
use crate::wire::*;

/// What the schedule knows by itself, to hold the room against.
#[derive(Default)]
pub struct Witness {
    seen: usize,
    /// The last view of each socket.
    pub views: HashMap<u64, (u32, String)>,
    running: HashSet<String>,
    ended: HashMap<String, Ending>,
    timelines: HashMap<String, Timeline>,
    pub must_tap: bool,
    turns: usize,
}

impl Witness {
    pub fn watch(&mut self, play: &Play) {
        for (t, effect) in &play.log[self.seen..] {
            self.effect(*t, effect);
        }
        self.seen = play.log.len();
        if let Some(set) = play.room.running() {
            let heard = play.room.desk_presence.heard.expect("a set needs a desk");
            assert!(play.t - heard < SILENCE_MS + MOST_TRIP_MS, "runs {} ms into silence", play.t - heard);
            assert!(play.t <= set.goal.by + 1e-3, "runs past the hard limit");
            let there = play.signs.iter().filter(|(page, _)| **page < STAGE).map(|(_, at)| *at).fold(0.0, f64::max);
            assert!(heard <= there, "a sign of the desk is dated {} ms after it was there", heard - there);
            assert!(play.room.stage.is_some(), "runs without a stage");
        }
        // Each look plays every desk's start in a room of its own: not after every beat.
        self.turns += 1;
        if self.turns.is_multiple_of(4) {
            words_are_true(play);
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

/// What an order by `desk` would do at this moment: its answer, and whether it started a set.
pub fn tried(play: &Play, desk: u64, order: Order) -> (Vec<Option<Refusal>>, bool) {
    let mut room = play.room.clone();
    let (epoch, id) = (room.epoch, 1_000_000);
    let effects = room.handle(Event::DeskSaid { desk, said: FromDesk::Order { epoch, id, order } }, play.t);
    let answers = effects.iter().filter_map(|effect| match effect {
        Effect::ToDesk(to, ToDesk::Answer { id: of, refused }) if *to == desk && *of == id => Some(refused.clone()),
        _ => None,
    });
    (answers.collect(), effects.iter().any(|effect| matches!(effect, Effect::RecordSet { .. })))
}

/// The word that each desk read last, held against what its key does and what the stage was told.
pub fn words_are_true(play: &Play) {
    for desk in play.room.desks.iter().filter(|desk| desk.conduct.greeted).map(|desk| desk.id) {
        let view = play.views_of(desk).next_back().expect("a desk that was greeted has a view");
        let (answers, starts) = tried(play, desk, Order::Start);
        assert_eq!(view.state == RoomState::Ready, starts, "reads {:?}, and a start is answered by {answers:?}", view.state);
        if !starts {
            assert_eq!(answers, std::slice::from_ref(&view.refused), "says what is missing");
        }
        if view.state == RoomState::Ready {
            let stage = play.room.stage.as_ref().expect("ready with a stage");
            let heard = play.room.stage_presence.heard.expect("a stage that was heard");
            assert!(play.t - heard < SILENCE_MS + 500.0 + MOST_TRIP_MS && !stage.shows);
            assert_eq!(play.stage_view().state, RoomState::Ready, "both ends read the same");
        }
        if view.state == RoomState::Running {
            assert!(play.room.running().is_some_and(|set| set.seen), "runs before the client's page has said so");
        }
    }
}
