//! A desk and a stage played in virtual time.

use std::collections::{HashMap, HashSet};

use crate::call::Reach;
use crate::room::{Effect, Event, Facts, LastWords, MomentKind, Room, Start, Why};
use crate::safety::default_plan;
use crate::wire::*;

pub const DESK: u64 = 1;
pub const OTHER_DESK: u64 = 2;
pub const STAGE: u64 = 100;
/// Round trip of every page, ms.
pub const TRIP_MS: f64 = 40.0;

pub fn device() -> Device {
    Device {
        width_px: 1_600.0,
        height_px: 900.0,
        px_per_mm: Some(4.0),
        distance_mm: Some(600.0),
        reduced_motion: false,
        sound: true,
        sides: None,
        vibration: false,
        wake_lock: true,
        full_screen: true,
        checking: false,
    }
}

pub struct Play {
    pub room: Room,
    pub t: f64,
    pub log: Vec<(f64, Effect)>,
    /// Sockets whose page does not answer.
    pub mute: HashSet<u64>,
    /// How much longer than [`TRIP_MS`] the answers of a page take on their way back, ms.
    pub late: HashMap<u64, f64>,
    /// When each page was there last, ms: the truth, which no room can know.
    pub signs: HashMap<u64, f64>,
    /// Write sets at once.
    pub recording: bool,
    /// Pages draw what they get.
    pub drawing: bool,
    /// The client's page shows what it is told to, and says so.
    pub showing: bool,
    drawn: HashMap<u64, u32>,
    /// What the client's page has said of which set.
    shown: HashSet<(String, bool)>,
    pending: Vec<(f64, Event)>,
    next_order: u32,
    /// What the record says.
    facts: Facts,
}

impl Play {
    pub fn new(mut start: Start) -> Self {
        if start.seat != SeatState::Empty {
            start.seat_id = Some("device".into());
        }
        let (seat, seat_id, asking) = (start.seat, start.seat_id.clone(), start.asking.clone());
        Play {
            facts: Facts {
                ended: None,
                eyes_locked: start.eyes_locked,
                seat,
                seat_id,
                asking,
                holds: start.holds.clone(),
                reach: start.reach,
                watch: start.watch,
            },
            room: Room::new(start),
            t: 0.0,
            log: Vec::new(),
            mute: HashSet::new(),
            late: HashMap::new(),
            signs: HashMap::new(),
            recording: true,
            drawing: true,
            showing: true,
            drawn: HashMap::new(),
            shown: HashSet::new(),
            pending: Vec::new(),
            next_order: 0,
        }
    }

    /// Everybody is there, the clinician sees the client, the clock has settled.
    pub fn ready() -> Self {
        let mut play = Play::admitted();
        play.order(Order::Sight);
        assert_eq!(play.desk_view().state, RoomState::Ready);
        assert_eq!(play.desk_view().needs, Needs::default());
        play
    }

    pub fn admitted() -> Self {
        let mut play = Play::new(Start::first(3));
        play.join_desk(DESK);
        play.join_stage(STAGE);
        play.seat(SeatState::Admitted);
        play.run(2_000.0);
        play
    }

    /// A set of the default plan that has run for `ms` since its first motion.
    pub fn running(ms: f64) -> Self {
        let mut play = Play::ready();
        assert_eq!(play.order(Order::Start), None);
        let start = play.set().timeline.starts_at().unwrap();
        play.run(start + ms - play.t);
        play
    }

    /// The record changes, and the room reads it.
    pub fn in_record(&mut self, change: impl FnOnce(&mut Facts)) -> Vec<Effect> {
        change(&mut self.facts);
        self.send(Event::Facts(self.facts.clone()))
    }

    pub fn seat(&mut self, state: SeatState) -> Vec<Effect> {
        self.seat_asked_for(state, false)
    }

    pub fn seat_asked_for(&mut self, state: SeatState, asked_for: bool) -> Vec<Effect> {
        self.in_record(|facts| {
            facts.seat = state;
            facts.seat_id = (state != SeatState::Empty).then(|| "device".into());
            facts.asking = asked_for.then(|| "other device".into());
        })
    }

    /// What the practice allows of calls.
    pub fn allow(&mut self, reach: Option<Reach>, watch: u8) -> Vec<Effect> {
        self.in_record(|facts| (facts.reach, facts.watch) = (reach, watch))
    }

    pub fn eyes_locked(&mut self, locked: bool) -> Vec<Effect> {
        self.in_record(|facts| facts.eyes_locked = locked)
    }

    /// The opening has this against a start, whatever it is for.
    pub fn held(&mut self, holds: &[Hold]) -> Vec<Effect> {
        self.in_record(|facts| facts.holds = Holds { processing: holds.to_vec(), calm_place: holds.to_vec() })
    }

    pub fn close(&mut self, words: LastWords) -> Vec<Effect> {
        self.in_record(|facts| facts.ended = Some(words))
    }

    pub fn join_desk(&mut self, desk: u64) {
        self.signs.insert(desk, self.t);
        self.send(Event::DeskJoined { desk });
        self.send(Event::DeskSaid { desk, said: FromDesk::Hello { wire: WIRE_VERSION } });
    }

    pub fn join_stage(&mut self, stage: u64) {
        self.send(Event::StageJoined { stage });
        self.signs.insert(stage, self.t);
        let said = FromStage::Hello { wire: WIRE_VERSION, device: device() };
        self.send(Event::StageSaid { stage, said });
    }

    pub fn stage_says(&mut self, said: FromStage) -> Vec<Effect> {
        self.send(Event::StageSaid { stage: STAGE, said })
    }

    pub fn desk_says(&mut self, desk: u64, said: FromDesk) -> Vec<Effect> {
        self.send(Event::DeskSaid { desk, said })
    }

    /// An order of the first desk; its answer when it came at once.
    pub fn order(&mut self, order: Order) -> Option<Refusal> {
        self.order_from(DESK, order)
    }

    pub fn order_from(&mut self, desk: u64, order: Order) -> Option<Refusal> {
        self.next_order += 1;
        let id = self.next_order;
        let epoch = self.room.epoch;
        let seen = self.log.len();
        self.send(Event::DeskSaid { desk, said: FromDesk::Order { epoch, id, order } });
        let mut answers = self.log[seen..].iter().filter_map(|(_, effect)| match effect {
            Effect::ToDesk(to, ToDesk::Answer { id: of, refused }) if *to == desk && *of == id => Some(refused.clone()),
            _ => None,
        });
        answers.next().flatten()
    }

    /// One event now, with what it causes at once.
    pub fn send(&mut self, event: Event) -> Vec<Effect> {
        let effects = self.room.handle(event, self.t);
        for effect in &effects {
            self.react(effect);
        }
        self.log.extend(effects.iter().map(|effect| (self.t, effect.clone())));
        if self.recording {
            self.record(&effects);
        }
        effects
    }

    fn record(&mut self, effects: &[Effect]) {
        for effect in effects {
            if let Effect::RecordSet { number, .. } = effect {
                let id = format!("set-{number}");
                self.send(Event::SetRecorded { number: *number, id });
            }
        }
    }

    fn react(&mut self, effect: &Effect) {
        match effect {
            Effect::ToDesk(desk, ToDesk::View(view)) if self.drawing => {
                self.drawn.insert(*desk, view.seq);
            }
            Effect::ToStage(stage, ToStage::View(view)) => {
                if self.drawing {
                    self.drawn.insert(*stage, view.seq);
                }
                if let Some(set) = view.set.as_ref().filter(|_| self.showing) {
                    self.show(*stage, set);
                }
            }
            Effect::ToDesk(desk, ToDesk::Beat(beat)) if !self.mute.contains(desk) => {
                let said = FromDesk::Beat(self.reply(*desk, beat));
                let back = self.way_back(*desk);
                self.pending.push((back, Event::DeskSaid { desk: *desk, said }));
            }
            Effect::ToStage(stage, ToStage::Beat(beat)) if !self.mute.contains(stage) => {
                let said = FromStage::Beat(self.reply(*stage, beat));
                let back = self.way_back(*stage);
                self.pending.push((back, Event::StageSaid { stage: *stage, said }));
            }
            _ => {}
        }
    }

    /// When the answer to a beat that is sent now is heard: nothing overtakes what was sent before.
    fn way_back(&mut self, page: u64) -> f64 {
        self.signs.insert(page, self.t + TRIP_MS / 2.0);
        let of_page = |event: &Event| match event {
            Event::DeskSaid { desk, said: FromDesk::Beat(_) } => *desk == page,
            Event::StageSaid { stage, said: FromStage::Beat(_) } => *stage == page,
            _ => false,
        };
        let earlier = self.pending.iter().filter(|(_, event)| of_page(event)).map(|(at, _)| *at);
        let alone = self.t + TRIP_MS + self.late.get(&page).copied().unwrap_or(0.0);
        earlier.fold(alone, f64::max)
    }

    /// The page says when it moves first, and that it rests.
    fn show(&mut self, stage: u64, set: &SetView) {
        let moving = set.ended.is_none();
        let said = (set.id.clone(), moving);
        if !self.shown.contains(&said) {
            self.shown.insert(said);
            let begins = set.timeline.starts_at().filter(|_| moving).map_or(self.t, |at| at.max(self.t));
            let (id, phase) = (set.id.clone(), if moving { 0.01 } else { 1.0 });
            let rate = if moving { 0.1 } else { 0.0 };
            let showing = Showing { set: id, moving, at: begins, phase, rate, width: 18.0, clock: None };
            self.pending.push((begins + TRIP_MS, Event::StageSaid { stage, said: FromStage::Showing(showing) }));
        }
    }

    /// A page that cannot be heard says it later, and none that rests says that it moves.
    fn still_true(&mut self, event: &Event) -> bool {
        let Event::StageSaid { stage, said: FromStage::Showing(showing) } = event else {
            return true;
        };
        if showing.moving && self.room.running().is_none_or(|set| set.id != showing.set) {
            return false;
        }
        let muted = self.mute.contains(stage);
        if muted {
            self.pending.push((self.t + 400.0, event.clone()));
        }
        !muted
    }

    fn reply(&self, page: u64, beat: &Beat) -> BeatReply {
        let drawn = self.drawn.get(&page).copied().unwrap_or(0);
        BeatReply { id: beat.id, page: self.t + TRIP_MS / 2.0, drawn }
    }

    /// Lets `ms` pass, with every tick and answer at its time.
    pub fn run(&mut self, ms: f64) {
        self.run_watched(ms, |_| {});
    }

    pub fn run_watched(&mut self, ms: f64, mut watch: impl FnMut(&Play)) {
        let end = self.t + ms;
        while let Some((at, event)) = self.next_event(end) {
            self.t = self.t.max(at);
            if self.still_true(&event) {
                self.send(event);
                watch(self);
            }
        }
        self.t = end;
    }

    fn next_event(&mut self, end: f64) -> Option<(f64, Event)> {
        let wake = self.room.next_wake().unwrap_or(f64::INFINITY);
        let first =
            (0..self.pending.len()).min_by(|&a, &b| self.pending[a].0.total_cmp(&self.pending[b].0)).filter(|&i| self.pending[i].0 <= wake);
        match first {
            Some(i) if self.pending[i].0 <= end => Some(self.pending.remove(i)),
            None if wake <= end => Some((wake, Event::Tick)),
            _ => None,
        }
    }

    pub fn views_of(&self, desk: u64) -> impl DoubleEndedIterator<Item = &DeskView> {
        self.log.iter().filter_map(move |(_, effect)| match effect {
            Effect::ToDesk(to, ToDesk::View(view)) if *to == desk => Some(view),
            _ => None,
        })
    }

    pub fn desk_view(&self) -> &DeskView {
        self.views_of(DESK).next_back().expect("a view of the desk")
    }

    pub fn stage_views(&self) -> impl DoubleEndedIterator<Item = &StageView> {
        self.log.iter().filter_map(|(_, effect)| match effect {
            Effect::ToStage(_, ToStage::View(view)) => Some(view),
            _ => None,
        })
    }

    pub fn stage_view(&self) -> &StageView {
        self.stage_views().next_back().expect("a view of the stage")
    }

    pub fn set(&self) -> &SetView {
        self.desk_view().set.as_ref().expect("a set")
    }

    pub fn ended(&self) -> Option<Ending> {
        self.set().ended
    }

    pub fn endings(&self) -> Vec<(String, Ending)> {
        let ending = |(_, effect): &(f64, Effect)| match effect {
            Effect::RecordEnding { set, ending, .. } => Some((set.clone(), *ending)),
            _ => None,
        };
        self.log.iter().filter_map(ending).collect()
    }

    pub fn moments(&self) -> Vec<MomentKind> {
        let moment = |(_, effect): &(f64, Effect)| match effect {
            Effect::RecordMoment { kind, .. } => Some(*kind),
            _ => None,
        };
        self.log.iter().filter_map(moment).collect()
    }

    pub fn closed(&self) -> Vec<(u64, Why)> {
        let closed = |(_, effect): &(f64, Effect)| match effect {
            Effect::CloseDesk(id, why) | Effect::CloseStage(id, why) => Some((*id, *why)),
            _ => None,
        };
        self.log.iter().filter_map(closed).collect()
    }
}

pub fn with_rate(rate: f64) -> Order {
    Order::Plan { plan: Plan { rate, ..default_plan() } }
}
