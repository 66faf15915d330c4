//! The client's page, as far as it matters when the server is lost: what `web/src/stage` (`machine.ts`, `player.ts`,
//! `report.ts`) holds. Its dot is not drawn; what it says of it is.

use std::collections::{BTreeMap, BTreeSet};
use std::time::{Duration, Instant};

use leeward_core::wire::{Ending, Evidence, Fact, FromStage, Interruption, RoomState, SetView, Showing, StageView, ToStage, WIRE_VERSION};
use leeward_tests::device;

use super::line::Holds;

/// Before it moves the dot rests.
const REST: Duration = Duration::from_millis(1_100);
/// Without a sign of the desk for so long the dot eases to rest, which takes [`EASE`].
const SILENCE: Duration = Duration::from_millis(1_500);
const EASE: Duration = Duration::from_millis(600);
const SECOND: Duration = Duration::from_secs(1);
const AGAIN: Duration = Duration::from_millis(500);
const SEND_AGAIN: Duration = Duration::from_secs(2);
const BATCH: usize = 20;

#[derive(Debug)]
struct Playing {
    set: String,
    since: Instant,
    seconds: u32,
    begun: bool,
    /// Eases to rest by itself until then.
    easing: Option<Instant>,
}

#[derive(Debug)]
pub struct Stage {
    pub view: Option<StageView>,
    playing: Option<Playing>,
    spent: BTreeSet<String>,
    facts: Vec<Evidence>,
    next: BTreeMap<String, u32>,
    /// Each fact this page has told, and of which it was told that they are in the record.
    pub told: Vec<Evidence>,
    pub kept: BTreeMap<String, u32>,
    /// How each set came to rest here.
    pub rested: BTreeMap<String, Ending>,
    /// The client's Stop waits for their Ready.
    stopped: bool,
    untold: Option<(FromStage, Option<String>, bool)>,
    /// The times that the client pressed Stop.
    pub stops: u32,
    born: Instant,
    sign: Instant,
    open: bool,
    told_at: Instant,
    report_at: Instant,
    out: Vec<FromStage>,
    pub sent_away: Option<u16>,
}

impl Stage {
    pub fn new() -> Self {
        let now = Instant::now();
        Self {
            view: None,
            playing: None,
            spent: BTreeSet::new(),
            facts: Vec::new(),
            next: BTreeMap::new(),
            told: Vec::new(),
            kept: BTreeMap::new(),
            rested: BTreeMap::new(),
            stopped: false,
            untold: None,
            stops: 0,
            born: now,
            sign: now,
            open: false,
            told_at: now,
            report_at: now,
            out: Vec::new(),
            sent_away: None,
        }
    }

    /// The client presses Stop: at rest at once, whatever the line does.
    pub fn stop(&mut self) {
        let set = self.playing.as_ref().map(|playing| playing.set.clone());
        self.rest(Ending::StoppedByClient);
        (self.stopped, self.stops) = (true, self.stops + 1);
        self.untold = Some((FromStage::Stop, set, false));
        self.tell();
    }

    /// The client taps Ready.
    pub fn ready(&mut self) {
        if self.open {
            self.stopped = false;
            self.out.push(FromStage::Ready);
        }
    }

    /// Whether something moves here.
    pub fn moves(&self) -> bool {
        self.playing.as_ref().is_some_and(|playing| playing.begun)
    }

    fn fact(&mut self, set: &str, fact: Fact) {
        let next = self.next.entry(set.to_owned()).or_default();
        let evidence = Evidence { set: set.to_owned(), seq: *next, at: self.born.elapsed().as_secs_f64() * 1_000.0, fact };
        *next += 1;
        self.facts.push(evidence.clone());
        self.told.push(evidence.clone());
        self.out.push(FromStage::Evidence { facts: vec![evidence] });
    }

    fn showing(&mut self, set: &str, moving: bool, phase: f64) {
        let at = self.born.elapsed().as_secs_f64() * 1_000.0;
        let rate = if moving { 1.0 } else { 0.0 };
        self.out.push(FromStage::Showing(Showing { set: set.to_owned(), moving, at, phase, rate, width: 18.0, clock: None }));
    }

    fn rest(&mut self, ending: Ending) {
        let Some(playing) = self.playing.take() else { return };
        let phase = f64::from(playing.seconds);
        self.spent.insert(playing.set.clone());
        self.showing(&playing.set, false, phase);
        self.fact(&playing.set, Fact::Rested { phase, ending });
        self.rested.insert(playing.set, ending);
    }

    /// What is untold goes out again until a view shows it.
    fn tell(&mut self) {
        if let Some((message, _, sent)) = self.untold.as_mut().filter(|_| self.open) {
            *sent = true;
            self.out.push(message.clone());
        }
    }

    fn hear_view(&mut self, view: StageView) {
        if self.view.as_ref().is_some_and(|old| (view.epoch, view.seq) < (old.epoch, old.seq)) {
            return;
        }
        let anew = self.view.as_ref().is_some_and(|old| view.epoch > old.epoch);
        if let Some((message, set, true)) = &self.untold {
            let runs = view.set.as_ref().is_some_and(|own| Some(&own.id) == set.as_ref() && own.ended.is_none());
            let shown = *message != FromStage::Stop || view.state == RoomState::StoppedByClient || view.needs.client_ready;
            if !runs && shown {
                self.untold = None;
            }
        }
        self.follow(view.set.as_ref(), anew, view.state);
        self.view = Some(view);
    }

    fn follow(&mut self, set: Option<&SetView>, anew: bool, state: RoomState) {
        if let Some(playing) = &self.playing {
            let own = set.filter(|set| set.id == playing.set);
            match own {
                None => self.rest(Ending::Unknown),
                Some(set) if anew => self.rest(set.ended.unwrap_or(Ending::Unknown)),
                Some(SetView { ended: Some(ending), .. }) => self.rest(*ending),
                Some(_) => {}
            }
        }
        let moves = [RoomState::Starting, RoomState::Running, RoomState::Easing].contains(&state);
        let Some(set) = set.filter(|set| self.playing.is_none() && set.ended.is_none() && moves && !self.spent.contains(&set.id)) else {
            return;
        };
        if self.stopped {
            self.spent.insert(set.id.clone());
            self.untold = Some((FromStage::Stop, Some(set.id.clone()), false));
            return self.tell();
        }
        self.playing = Some(Playing { set: set.id.clone(), since: Instant::now(), seconds: 0, begun: false, easing: None });
    }

    fn play(&mut self) {
        let Some(playing) = &mut self.playing else { return };
        let (set, now) = (playing.set.clone(), Instant::now());
        if playing.easing.is_some_and(|until| now >= until) {
            return self.rest(Ending::LinkLost);
        }
        if playing.easing.is_none() && self.sign.elapsed() > SILENCE {
            playing.easing = Some(now + EASE);
            self.untold = Some((FromStage::Interrupted { cause: Interruption::Silence }, Some(set), false));
            return self.tell();
        }
        if !playing.begun && now >= playing.since + REST {
            playing.begun = true;
            self.fact(&set, Fact::Shown { width: 18.0 });
            return self.showing(&set, true, 0.1);
        }
        if playing.begun && now >= playing.since + REST + SECOND * (playing.seconds + 1) {
            playing.seconds += 1;
            let phase = f64::from(playing.seconds);
            self.fact(&set, Fact::Second { phase, frames: 60, longest_gap: 17.0 });
            self.showing(&set, true, phase);
        }
    }

    fn report(&mut self) {
        self.report_at = Instant::now();
        let facts: Vec<Evidence> = self.facts.iter().take(BATCH).cloned().collect();
        if !facts.is_empty() && self.open {
            self.out.push(FromStage::Evidence { facts });
        }
    }
}

impl Holds for Stage {
    type In = ToStage;
    type Out = FromStage;

    fn opened(&mut self) -> Vec<FromStage> {
        self.open = true;
        self.tell();
        self.report();
        vec![FromStage::Hello { wire: WIRE_VERSION, device: device() }]
    }

    fn lost(&mut self) {
        self.open = false;
        self.out.clear();
        if let Some((.., sent)) = &mut self.untold {
            *sent = false;
        }
    }

    fn hear(&mut self, message: ToStage) -> Vec<FromStage> {
        match message {
            ToStage::Beat(beat) if beat.desk_silent.is_some_and(|silent| silent < 1_000.0) => self.sign = Instant::now(),
            ToStage::View(view) => self.hear_view(view),
            ToStage::Kept { set, seq } => {
                self.facts.retain(|fact| fact.set != set || fact.seq > seq);
                let kept = self.kept.entry(set).or_default();
                *kept = seq.max(*kept);
            }
            ToStage::Beat(_) | ToStage::Call(_) | ToStage::Reload => {}
        }
        Vec::new()
    }

    fn tick(&mut self) {
        self.play();
        if self.told_at.elapsed() > AGAIN {
            self.told_at = Instant::now();
            self.tell();
        }
        if self.report_at.elapsed() > SEND_AGAIN {
            self.report();
        }
        if !self.open {
            self.out.clear();
        }
    }

    fn out(&mut self) -> Vec<FromStage> {
        std::mem::take(&mut self.out)
    }

    fn drawn(&self) -> u32 {
        self.view.as_ref().map_or(0, |view| view.seq)
    }

    fn sent_away(&mut self, code: u16) {
        self.sent_away = Some(code);
    }
}
