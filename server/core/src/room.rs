//! One live session as a pure state machine.
//!
//! Whoever holds the room feeds it [`Event`]s with the room time and carries out the [`Effect`]s
//! that come back, in their order, and sends [`Event::Tick`] when [`Room::next_wake`] says. The
//! room decides everything; sockets move bytes and the database writes what it is told.
//!
//! ```
//! use leeward_core::room::{Event, Room, Start};
//! use leeward_core::wire::{FromDesk, WIRE_VERSION};
//!
//! let mut room = Room::new(Start::first(1));
//! room.handle(Event::DeskJoined { desk: 7 }, 0.0);
//! let hello = FromDesk::Hello { wire: WIRE_VERSION };
//! let effects = room.handle(Event::DeskSaid { desk: 7, said: hello }, 5.0);
//! assert!(!effects.is_empty());
//! ```

mod aids;
mod call;
mod caller;
mod conduct;
mod desk;
mod event;
mod orders;
mod possible;
mod presence;
mod set;
mod stage;
mod view;

pub use conduct::Conduct;
pub use event::{Cause, Effect, Event, Facts, LastWords, MomentKind, Start, Why};
pub use possible::check_evidence;

use std::collections::HashSet;

use crate::wire::{Ending, Hold, Holds, Matter, Plan, SeatState};
use aids::Aids;
use call::Call;
use desk::Desk;
use presence::Presence;
use set::{LiveSet, Orphan, Starting};
use stage::{Arriving, Stage};
use view::{Face, StopNews};

/// After a stop, no set starts for this long, ms.
pub const PAUSE_MS: f64 = 1_000.0;
/// A set that is not in the record by then is given up, ms.
pub const RECORD_WAIT_MS: f64 = 5_000.0;
/// A longer gap needs the client's Ready as well, ms.
pub const GAP_MS: f64 = 10_000.0;
/// Views of one epoch are counted from `epoch` times this, so that a `drawn` left over from an
/// earlier epoch never counts for a view of this one.
const SEQS_PER_EPOCH: u32 = 1_000_000;
/// After so many epochs the count starts over, to stay within u32.
const EPOCHS: u32 = 4_000;

/// One live session. See the module.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub struct Room {
    epoch: u32,
    seq: u32,
    now: f64,
    /// Of the next set.
    plan: Plan,
    /// The width that was asked for, degrees; the plan's is as much of it as the client's screen shows.
    asked_width: f64,
    eyes_locked: bool,
    /// How often the desk asked for the check of left and right.
    sides_asked: u32,
    seat: SeatState,
    seat_id: Option<String>,
    asking: Option<String>,
    holds: Holds,
    aids: Aids,
    /// Nothing is written down any more; see [`Event::RecordRefuses`].
    record_refuses: bool,
    /// See [`Event::ClockSet`].
    clock_set: f64,
    /// See [`Event::RecordWaits`].
    record_waits: bool,
    closed: Option<Option<String>>,

    desks: Vec<Desk>,
    control: Option<u64>,
    desk_presence: Presence,
    stage: Option<Stage>,
    arriving: Vec<Arriving>,
    stage_presence: Presence,
    /// Since when beats are quick enough to measure silence, room time, ms.
    live_since: f64,

    /// The number of the last set.
    number: u32,
    known_sets: HashSet<String>,
    starting: Option<Starting>,
    orphans: Vec<Orphan>,
    /// The set that runs, or the last one.
    set: Option<LiveSet>,

    need_sight: bool,
    need_ready: bool,
    pause_until: f64,
    stopped: Option<StoppedBy>,
    stop_news: StopNews,

    call: Call,
    shown: Option<Face>,
    effects: Vec<Effect>,
}

/// Who stopped the last set; the state word keeps it until what it needs is met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum StoppedBy {
    Client,
    Other,
}

impl Room {
    /// The room at room time 0.
    pub fn new(start: Start) -> Self {
        let base = start.epoch % EPOCHS * SEQS_PER_EPOCH;
        Room {
            epoch: start.epoch,
            seq: base,
            now: 0.0,
            plan: start.plan,
            asked_width: start.plan.width,
            eyes_locked: start.eyes_locked,
            sides_asked: 0,
            seat: start.seat,
            seat_id: start.seat_id,
            asking: start.asking,
            holds: start.holds,
            aids: Aids::default(),
            record_refuses: false,
            clock_set: 0.0,
            record_waits: false,
            closed: None,
            desks: Vec::new(),
            control: None,
            desk_presence: Presence::default(),
            stage: None,
            arriving: Vec::new(),
            stage_presence: Presence::default(),
            live_since: 0.0,
            number: start.sets_so_far,
            known_sets: start.known_sets.into_iter().collect(),
            starting: None,
            orphans: Vec::new(),
            set: None,
            need_sight: true,
            // After a restart nobody knows how long the gap was, or who stopped the last set.
            need_ready: start.sets_so_far > 0,
            pause_until: 0.0,
            stopped: None,
            stop_news: StopNews::None,
            call: Call::new(start.reach, start.watch, start.epoch),
            shown: None,
            effects: Vec::new(),
        }
    }

    /// Takes in what happened at room time `now`, ms, and says what to do about it, in order.
    /// Time never runs backwards: an earlier `now`, or none, counts as the latest one seen.
    pub fn handle(&mut self, event: Event, now: f64) -> Vec<Effect> {
        if now.is_finite() {
            self.now = self.now.max(now);
        }
        self.advance();
        match event {
            Event::DeskJoined { desk } => self.desk_joined(desk),
            Event::DeskSaid { desk, said } => self.desk_said(desk, said),
            Event::DeskLeft { desk } => self.desk_left(desk),
            Event::StageJoined { stage } => self.stage_joined(stage),
            Event::StageSaid { stage, said } => self.stage_said(stage, said),
            Event::StageLeft { stage } => self.stage_left(stage),
            Event::SetRecorded { number, id } => self.set_recorded(number, id),
            Event::SetNotRecorded { number } => self.set_not_recorded(number),
            Event::Kept { set, seq } => self.kept(set, seq),
            Event::Facts(facts) => self.take_facts(facts),
            Event::RecordRefuses(refuses) => self.record_refuses(refuses),
            Event::ClockSet(seconds) => self.clock_set = seconds,
            Event::RecordWaits(waits) => self.record_waits = waits,
            Event::RoomEnds => self.end_set(crate::wire::Ending::LinkLost),
            Event::Tick => {}
        }
        // What the event made due goes before the view: a stage looks at its last sign of the desk before it starts a set.
        self.pair_up();
        self.send_beats();
        self.publish();
        std::mem::take(&mut self.effects)
    }

    /// Room time at which [`Event::Tick`] is due, ms; `None` when the room waits for others alone.
    pub fn next_wake(&self) -> Option<f64> {
        let pause = Some(self.pause_until).filter(|&until| until > self.now);
        let sockets = self.sockets().map(|conduct| conduct.next_wake());
        [pause, self.desk_due(), self.stage_due(), self.fresh_due(), self.starting_due(), self.set_due()]
            .into_iter()
            .flatten()
            .chain(sockets)
            .min_by(f64::total_cmp)
    }

    /// Nobody is connected and nothing runs: the room may be let go.
    pub fn is_idle(&self) -> bool {
        self.desks.is_empty() && self.stage.is_none() && self.arriving.is_empty() && !self.is_active()
    }

    /// The client is admitted and the session goes on.
    fn is_live(&self) -> bool {
        self.seat == SeatState::Admitted && self.closed.is_none()
    }

    /// Somebody sits at the client's end, admitted or at the door, and the session goes on.
    fn is_open(&self) -> bool {
        self.closed.is_none() && matches!(self.seat, SeatState::Admitted | SeatState::Waiting)
    }

    /// What time alone has done since the last event.
    fn advance(&mut self) {
        self.finish_set();
        self.notice_silence();
        self.give_up_starting();
        self.drop_dead_sockets();
        self.send_beats();
    }

    fn take_facts(&mut self, facts: Facts) {
        let Facts { ended, eyes_locked, seat, seat_id, asking, holds, reach, watch } = facts;
        if let Some(words) = ended {
            self.close(words);
        }
        self.lock_eyes(eyes_locked);
        if seat_id != self.seat_id {
            // Whoever sits there now is somebody else, however they came in.
            self.seat_changed(SeatState::Empty);
        }
        (self.seat_id, self.asking) = (seat_id, asking);
        self.seat_changed(seat);
        self.calls_by(reach, watch);
        self.holds = holds;
        self.end_without_consent();
    }

    /// A consent that is withdrawn while a set runs lets it come to rest at the next extreme; stopping at once is another key.
    fn end_without_consent(&mut self) {
        let withdrawn = Hold { matter: Matter::Consent, against: true };
        if self.active_plan().is_some_and(|plan| self.holds.of(plan.purpose).contains(&withdrawn)) {
            self.ease(Ending::EndedByClinician);
        }
    }

    fn record_refuses(&mut self, refuses: bool) {
        self.record_refuses = refuses;
        if refuses {
            // Stimulation without a record is not to be; the desk reads why.
            self.end_set(crate::wire::Ending::StoppedByClinician);
        }
    }

    fn seat_changed(&mut self, state: SeatState) {
        let was_live = self.is_live();
        if state == SeatState::Left && self.seat != state {
            self.client_left();
        }
        self.seat = state;
        if self.is_live() && !was_live {
            self.go_live();
        }
        if was_live && !self.is_live() {
            self.end_set(crate::wire::Ending::StoppedByClinician);
            // Whoever is admitted next may be on another device.
            self.need_sight = true;
            self.need_ready = self.number > 0;
            self.watch_again();
        }
    }

    /// Who leaves has stopped whatever runs, even if their page had no time to say so.
    fn client_left(&mut self) {
        self.end_set(crate::wire::Ending::StoppedByClient);
        self.stopped = None;
        self.record_moment(MomentKind::ClientLeft);
    }

    fn go_live(&mut self) {
        self.live_since = self.now;
        let now = self.now;
        for line in self.sockets_mut() {
            line.beat_at(now);
        }
    }

    fn lock_eyes(&mut self, locked: bool) {
        self.eyes_locked = locked;
        // The figure of the pacer is for the eyes too.
        if locked && self.active_plan().is_some_and(|plan| plan.channels.eyes || plan.channels.hands) {
            self.end_set(crate::wire::Ending::StoppedByClinician);
        }
    }

    fn close(&mut self, words: LastWords) {
        self.end_set(crate::wire::Ending::StoppedByClinician);
        self.closed = Some(words);
    }

    fn record_moment(&mut self, kind: MomentKind) {
        self.effects.push(Effect::RecordMoment { kind, at: self.now });
    }
}

#[cfg(test)]
mod tests;
