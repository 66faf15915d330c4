//! One live room: a task that feeds `leeward_core::room` and carries out what it says.

use std::collections::{HashMap, VecDeque};
use std::time::Duration;

use leeward_core::room::{Effect, Event, Room};
use leeward_core::wire::{FromDesk, FromStage, Needs, RoomState, StageView, ToStage};
use serde::Serialize;
use tokio::sync::mpsc::{self, Receiver, Sender, UnboundedSender};
use tokio::task::JoinHandle;
use tokio::time::{Instant, sleep_until, timeout};
use uuid::Uuid;

use super::clerk::{self, Job};
use super::holder::{self, Holder, seat_state};
use super::hub::Door;
use super::line::{Line, Out, Outbox, closing};
use super::names;
use super::queries_room::{OrderRow, SeatRow};
use crate::app::App;
use crate::error::Error;
use crate::subject::Subject;

/// Mail that may wait for the room.
const MAILBOX: usize = 256;
/// A room without anybody is let go after this time.
const ALONE: Duration = Duration::from_secs(600);
/// A waiting device hears from the room this often, well within its patience.
const WAITING_VIEW: Duration = Duration::from_secs(5);
/// At the end, so long for what is not written yet.
const LAST_WORDS: Duration = Duration::from_secs(10);
/// Evidence in so many messages may wait for the database; what is more is not taken, and the page
/// sends it again until it is told that it was kept.
const EVIDENCE_AT_ONCE: u32 = 64;

/// What reaches a room.
pub(super) enum Mail {
    /// A desk's socket opened.
    Desk { socket: u64, out: Outbox },
    /// A client's socket opened: of the seat, or of a device that asks for it.
    Stage { socket: u64, seat: Uuid, taken: bool, out: Outbox },
    /// A desk's message.
    FromDesk(u64, FromDesk),
    /// A client's message.
    FromStage(u64, FromStage),
    /// A socket closed.
    Left(u64),
    /// For the room itself.
    Event(Event),
    /// The clerk is done with one message of evidence.
    EvidenceDone,
    /// The seats in the record changed.
    SeatsChanged,
    /// They are these.
    Seats(Vec<SeatRow>),
    /// Somebody else holds the room, or the session has ended.
    RoomLost,
    /// The portal stops.
    Shut,
}

/// Opens the room of `session` as `subject`.
///
/// # Errors
/// See [`holder::take`].
pub(super) async fn open(app: &App, subject: &Subject, session: Uuid) -> Result<Door, Error> {
    let (holder, start, seats) = holder::take(app, subject, session).await?;
    let (mail, mailbox) = mpsc::channel(MAILBOX);
    let (jobs, work) = mpsc::unbounded_channel();
    let door = Door { client: holder.client, mail: mail.clone() };
    let clerk = tokio::spawn(clerk::work(holder.clone(), work, mail.clone()));
    let keeper = Keeper {
        room: Room::new(start),
        since: Instant::now(),
        lines: HashMap::new(),
        seats,
        evidence_waiting: 0,
        waiting_views: 0,
        alone_since: Instant::now(),
        next_waiting_view: Instant::now(),
        over: None,
        mail,
        jobs,
        holder,
    };
    tokio::spawn(keeper.keep(mailbox, clerk));
    Ok(door)
}

struct Keeper {
    holder: Holder,
    room: Room,
    /// Room time 0.
    since: Instant,
    lines: HashMap<u64, Line>,
    /// As last read.
    seats: Vec<SeatRow>,
    evidence_waiting: u32,
    waiting_views: u32,
    alone_since: Instant,
    next_waiting_view: Instant,
    /// Set when the room is to end: what all sockets are closed with.
    over: Option<Out>,
    mail: Sender<Mail>,
    jobs: UnboundedSender<Job>,
}

impl Keeper {
    async fn keep(mut self, mut mailbox: Receiver<Mail>, clerk: JoinHandle<()>) {
        while self.over.is_none() {
            let wake = self.wake();
            tokio::select! {
                mail = mailbox.recv() => match mail {
                    Some(mail) => self.take_in(mail),
                    None => break,
                },
                () = sleep_until(wake) => self.wait_over(),
            }
        }
        self.end(clerk).await;
    }

    fn wake(&self) -> Instant {
        let tick = self.room.next_wake().map(|at| self.since + Duration::from_secs_f64(at.max(0.0) / 1_000.0));
        let alone = self.is_alone().then(|| self.alone_since + ALONE);
        let waiting = self.lines.values().any(Line::waits).then_some(self.next_waiting_view);
        [tick, alone, waiting].into_iter().flatten().min().unwrap_or_else(|| Instant::now() + ALONE)
    }

    fn is_alone(&self) -> bool {
        self.lines.is_empty() && self.room.is_idle()
    }

    fn wait_over(&mut self) {
        self.tell(Event::Tick);
        let now = Instant::now();
        if now >= self.next_waiting_view {
            self.show_waiting();
        }
        if self.is_alone() && now >= self.alone_since + ALONE {
            self.over = Some(closing::COME_BACK);
        }
    }

    fn take_in(&mut self, mail: Mail) {
        match mail {
            Mail::Desk { socket, out } => {
                self.lines.insert(socket, Line::desk(out));
                self.tell(Event::DeskJoined { desk: socket });
            }
            Mail::Stage { socket, seat, taken, out } => self.stage_opened(socket, Line::stage(out, seat, !taken)),
            Mail::FromDesk(desk, said) => self.tell(Event::DeskSaid { desk, said }),
            Mail::FromStage(stage, said) => self.stage_said(stage, said),
            Mail::Left(socket) => self.left(socket),
            Mail::Event(event) => {
                let closes = matches!(event, Event::Close { .. });
                self.tell(event);
                self.over = closes.then_some(closing::OVER).or(self.over.take());
            }
            Mail::EvidenceDone => self.evidence_waiting = self.evidence_waiting.saturating_sub(1),
            Mail::SeatsChanged => self.write(Job::Seats),
            Mail::Seats(seats) => self.seats_read(seats),
            Mail::RoomLost | Mail::Shut => self.over = Some(closing::COME_BACK),
        }
        if !self.is_alone() {
            self.alone_since = Instant::now();
        }
    }

    /// Everything is told to the sockets first, then written, then the next room may open.
    async fn end(self, clerk: JoinHandle<()>) {
        let Self { holder, lines, over, jobs, .. } = self;
        let last = over.unwrap_or(closing::COME_BACK);
        for line in lines.into_values() {
            line.out.close(last.clone());
        }
        drop(jobs);
        if timeout(LAST_WORDS, clerk).await.is_err() {
            tracing::error!("a room ended before all of its record was written; its last set will be marked unknown");
        }
        holder.app.rooms.forget(holder.session);
    }

    // -----------------------------------------------------------------------------------------
    // Seats

    fn stage_opened(&mut self, socket: u64, line: Line) {
        let (waits, seat) = (line.waits(), line.seat());
        let earlier: Vec<u64> = self.lines.iter().filter(|(_, old)| old.waits() && old.seat() == seat).map(|(id, _)| *id).collect();
        for id in earlier {
            self.close(id, closing::REPLACED);
        }
        self.lines.insert(socket, line);
        if waits {
            self.show_waiting();
        } else {
            self.tell(Event::StageJoined { stage: socket });
        }
        // The seat may be newer than what was read, or have moved since it was asked for.
        self.write(Job::Seats);
    }

    fn stage_said(&mut self, stage: u64, said: FromStage) {
        if !self.lines.get(&stage).is_some_and(Line::waits) {
            return self.tell(Event::StageSaid { stage, said });
        }
        // A device that only asks for the seat may say who it is, and nothing else.
        if !matches!(said, FromStage::Hello { .. } | FromStage::Device { .. }) {
            self.close(stage, closing::NOT_YOURS);
        }
    }

    fn seats_read(&mut self, seats: Vec<SeatRow>) {
        self.seats = seats;
        let (state, asked_for) = seat_state(&self.seats);
        for (socket, out) in self.outdated_stages() {
            self.close(socket, out);
        }
        self.tell(Event::Seat { state, asked_for });
    }

    /// Client sockets whose seat is not what it was when they opened.
    fn outdated_stages(&self) -> Vec<(u64, Out)> {
        let outdated = |(socket, line): (&u64, &Line)| {
            let seat = line.seat()?;
            match self.seats.iter().find(|row| row.id == seat) {
                None => Some((*socket, closing::SEAT_CLOSED)),
                // It has the seat now: it comes in again through the same door as everybody.
                Some(row) if row.taken && line.waits() => Some((*socket, closing::COME_BACK)),
                Some(_) => None,
            }
        };
        self.lines.iter().filter_map(outdated).collect()
    }

    /// All that a device learns before it has the seat.
    fn show_waiting(&mut self) {
        self.next_waiting_view = Instant::now() + WAITING_VIEW;
        self.waiting_views += 1;
        let view = ToStage::View(StageView {
            epoch: 0,
            seq: self.waiting_views,
            state: RoomState::Waiting,
            needs: Needs::default(),
            set: None,
            desk_knows: false,
            desk_here: false,
            closing_words: None,
        });
        let waiting: Vec<u64> = self.lines.iter().filter(|(_, line)| line.waits()).map(|(id, _)| *id).collect();
        for socket in waiting {
            self.send(socket, &view);
        }
    }

    // -----------------------------------------------------------------------------------------
    // Sockets

    fn left(&mut self, socket: u64) {
        if let Some(line) = self.lines.remove(&socket) {
            self.tell_left(socket, &line);
        }
    }

    fn close(&mut self, socket: u64, last: Out) {
        if let Some(line) = self.lines.remove(&socket) {
            line.out.close(last);
            self.tell_left(socket, &line);
        }
    }

    fn tell_left(&mut self, socket: u64, line: &Line) {
        if let Some(event) = line.left(socket) {
            self.tell(event);
        }
    }

    /// Sends, or gives the socket up when it does not take what it is sent.
    fn send(&mut self, socket: u64, message: &impl Serialize) -> Option<Event> {
        let line = self.lines.get(&socket)?;
        let sent = match serde_json::to_string(message) {
            Ok(text) => line.out.send(text),
            Err(fault) => {
                tracing::error!(%fault, "a message could not be written");
                false
            }
        };
        if sent {
            return None;
        }
        // Without its outbox the socket writes what it has, then closes.
        self.lines.remove(&socket).and_then(|line| line.left(socket))
    }

    // -----------------------------------------------------------------------------------------
    // The room

    fn tell(&mut self, event: Event) {
        let mut events = VecDeque::from([event]);
        while let Some(event) = events.pop_front() {
            let now = self.since.elapsed().as_secs_f64() * 1_000.0;
            for effect in self.room.handle(event, now) {
                events.extend(self.carry_out(effect));
            }
        }
    }

    fn carry_out(&mut self, effect: Effect) -> Option<Event> {
        match effect {
            Effect::ToDesk(desk, message) => return self.send(desk, &message),
            Effect::ToStage(stage, message) => return self.send(stage, &message),
            Effect::CloseDesk(socket, why) | Effect::CloseStage(socket, why) => {
                if let Some(line) = self.lines.remove(&socket) {
                    line.out.close(Out::Close(why.code(), why.reason()));
                }
            }
            Effect::RecordSet { number, plan } => {
                let (holder, mail) = (self.holder.clone(), self.mail.clone());
                // Beside the clerk: a start does not wait for what is still to be written.
                tokio::spawn(async move {
                    let answer = holder.record_set(number, plan).await;
                    let _ = mail.send(answer).await;
                });
            }
            Effect::KeepEvidence(facts) => self.keep_evidence(facts),
            Effect::RecordMoment { kind, .. } => {
                let at = self.holder.app.world.now();
                self.write(Job::Moment { kind: names::moment(kind), at });
            }
            Effect::RecordEnding { set, ending, at } => {
                let recorded_at = self.holder.app.world.now();
                self.write_set(&set, |set| Ok(Job::Ending { set, ending: names::ending(ending), at, recorded_at }));
            }
            Effect::RecordOrdered { set, seq, cause, plan, timeline, at } => {
                let recorded_at = self.holder.app.world.now();
                self.write_set(&set, |set| {
                    let (plan, timeline) = (serde_json::to_value(plan)?, serde_json::to_value(&timeline)?);
                    let seq = i32::try_from(seq).unwrap_or(i32::MAX);
                    Ok(Job::Order(OrderRow { set, seq, cause: names::cause(cause), at, plan, timeline, recorded_at }))
                });
            }
        }
        None
    }

    fn keep_evidence(&mut self, facts: Vec<leeward_core::wire::Evidence>) {
        if self.evidence_waiting < EVIDENCE_AT_ONCE {
            self.evidence_waiting += 1;
            let recorded_at = self.holder.app.world.now();
            self.write(Job::Evidence { facts, recorded_at });
        }
    }

    fn write_set(&self, set: &str, job: impl FnOnce(Uuid) -> Result<Job, serde_json::Error>) {
        match set.parse().map_err(|_| serde::de::Error::custom("a set's id is not one")).and_then(job) {
            Ok(job) => self.write(job),
            Err(fault) => tracing::error!(%fault, "a room's record could not be written"),
        }
    }

    fn write(&self, job: Job) {
        if self.jobs.send(job).is_err() {
            tracing::error!("a room's clerk has gone");
        }
    }
}
