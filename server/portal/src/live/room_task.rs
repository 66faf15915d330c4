//! One live room: a task that feeds `leeward_core::room` and carries out what it says.

use std::collections::HashMap;
use std::time::Duration;

use chrono::{DateTime, Utc};
use leeward_core::room::{Conduct, Event, Facts, Room};
use leeward_core::wire::{FromDesk, FromStage};
use tokio::sync::mpsc::{self, Receiver, Sender, UnboundedSender};
use tokio::task::JoinHandle;
use tokio::time::{Instant, sleep_until, timeout};
use uuid::Uuid;

use super::hub::RoomHandle;
use super::lease::{self, Lease};
use super::queries_room::SeatRow;
use super::recorder::{self, Job};
use super::room_seats::Reading;
use super::socket_end::{Out, Outbox, SocketEnd, closing};
use crate::platform::App;
use crate::store::error::Error;
use crate::store::patience::LAST_WORDS;
use crate::store::subject::Subject;

/// Mail that may wait for the room.
const MAILBOX: usize = 256;
/// A room without anybody is let go after this time.
const ALONE: Duration = Duration::from_secs(600);
/// A waiting device hears from the room this often, well within its patience.
pub(super) const WAITING_VIEW: Duration = Duration::from_secs(5);
/// Told or not, a room that somebody is in reads the record again after this time: what was committed and not told is
/// followed within it.
pub(super) const READING: Duration = Duration::from_secs(3);

/// What reaches a room. Large parts are boxed: a mailbox keeps places for its mail even while it is empty.
pub(super) enum Mail {
    /// A desk's socket opened.
    Desk { socket: u64, out: Outbox },
    /// A client's socket opened: of the seat, or of a device that asks for it.
    Stage { socket: u64, seat: Uuid, taken: bool, out: Outbox },
    /// A desk's message.
    FromDesk(u64, Box<FromDesk>),
    /// A client's message.
    FromStage(u64, Box<FromStage>),
    /// A socket closed.
    Left(u64),
    /// For the room itself.
    Event(Box<Event>),
    /// The recorder is done with one message of evidence.
    EvidenceDone,
    /// Something in the record may have changed that the room has to follow.
    ReadRecord,
    /// It says this.
    Facts(Box<(Facts, Vec<SeatRow>)>),
    /// The record could not be read.
    NotRead,
    /// Somebody else holds the room, or the session has ended.
    RoomLost,
    /// The portal stops.
    Shut,
}

/// Opens the room of `session` as `subject`.
///
/// # Errors
/// See [`lease::take`].
pub(super) async fn open(app: &App, subject: &Subject, session: Uuid) -> Result<RoomHandle, Error> {
    let (lease, start, seats) = lease::take(app, subject, session).await?;
    let (mail, mailbox) = mpsc::channel(MAILBOX);
    let (jobs, work) = mpsc::unbounded_channel();
    let handle = RoomHandle { client: lease.client, mail: mail.clone() };
    let recorder = tokio::spawn(recorder::work(lease.clone(), work, mail.clone()));
    let task = Box::new(RoomTask {
        room: Room::new(start),
        since: Instant::now(),
        since_by_clock: lease.app.world.now(),
        clock_set: 0,
        lines: HashMap::new(),
        seats,
        evidence_waiting: 0,
        recording: 0,
        waiting_views: 0,
        reading: Reading::Done,
        // What was committed while it opened was told to nobody.
        next_reading: Instant::now(),
        alone_since: Instant::now(),
        next_waiting_view: Instant::now(),
        over: None,
        mail,
        jobs,
        lease,
    });
    app.rooms().at_work.spawn(task.run(mailbox, recorder));
    Ok(handle)
}

// Some thousands of rooms hold two rows of 32 such places each.
const _: () = assert!(size_of::<Mail>() <= 40);

impl From<Event> for Mail {
    fn from(event: Event) -> Self {
        Self::Event(Box::new(event))
    }
}

/// Keeps one room: here its life, beside it what it does (`room_effects`) and its seat (`room_seats`).
pub(super) struct RoomTask {
    pub lease: Lease,
    pub room: Room,
    /// Room time 0.
    pub since: Instant,
    /// The same by the portal's clock, and by how much that was found to have been set since, s.
    pub since_by_clock: DateTime<Utc>,
    pub clock_set: i64,
    pub lines: HashMap<u64, SocketEnd>,
    /// As last read.
    pub seats: Vec<SeatRow>,
    /// Messages of evidence that the recorder has not written yet.
    pub evidence_waiting: u32,
    /// Sets that are being written.
    pub recording: u32,
    pub waiting_views: u32,
    pub next_waiting_view: Instant,
    /// How far the recorder is with reading the record.
    pub reading: Reading,
    pub next_reading: Instant,
    /// Nobody was here since.
    alone_since: Instant,
    /// Set when the room is to end: what all sockets are closed with.
    pub over: Option<Out>,
    pub mail: Sender<Mail>,
    /// Boxed, since a queue keeps places for its messages even while it is empty.
    pub jobs: UnboundedSender<Box<Job>>,
}

// Passed on in its box: a future that takes something by value has room for it at each step.
impl RoomTask {
    async fn run(mut self: Box<Self>, mut mailbox: Receiver<Mail>, recorder: JoinHandle<()>) {
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
        self.end(mailbox, recorder).await;
    }

    fn wake(&self) -> Instant {
        let due = [self.room.next_wake(), self.waiting_due()].into_iter().flatten().min_by(f64::total_cmp);
        let tick = due.map(|at| self.since + Duration::from_secs_f64(at.max(0.0) / 1_000.0));
        let alone = self.is_alone().then(|| self.alone_since + ALONE);
        let waiting = self.lines.values().any(SocketEnd::waits).then_some(self.next_waiting_view);
        let reading = (!self.lines.is_empty()).then_some(self.next_reading);
        [tick, alone, waiting, reading].into_iter().flatten().min().unwrap_or_else(|| Instant::now() + ALONE)
    }

    /// Room time, ms.
    pub(super) fn now(&self) -> f64 {
        self.since.elapsed().as_secs_f64() * 1_000.0
    }

    fn is_alone(&self) -> bool {
        self.lines.is_empty() && self.room.is_idle()
    }

    fn wait_over(&mut self) {
        self.tell(Event::Tick);
        let now = Instant::now();
        if now >= self.next_reading && !self.lines.is_empty() {
            self.read_record();
        }
        self.watch_waiting();
        if self.is_alone() && now >= self.alone_since + ALONE {
            self.over = Some(closing::COME_BACK);
        }
    }

    fn take_in(&mut self, mail: Mail) {
        match mail {
            Mail::Desk { socket, out } => {
                self.lines.insert(socket, SocketEnd::desk(out));
                self.tell(Event::DeskJoined { desk: socket });
            }
            Mail::Stage { socket, seat, taken, out } => {
                let waits = (!taken).then(|| Box::new(Conduct::new(self.now())));
                self.stage_opened(socket, SocketEnd::stage(out, seat, waits));
            }
            Mail::FromDesk(desk, said) => self.tell(Event::DeskSaid { desk, said: *said }),
            Mail::FromStage(stage, said) => self.stage_said(stage, *said),
            Mail::Left(socket) => self.left(socket),
            Mail::Event(event) => self.take_event(*event),
            Mail::EvidenceDone => self.evidence_waiting = self.evidence_waiting.saturating_sub(1),
            Mail::ReadRecord => self.read_record(),
            Mail::Facts(found) => self.record_read(found.0, found.1),
            Mail::NotRead => self.record_not_read(),
            Mail::RoomLost => {
                self.recording = self.recording.saturating_sub(1);
                self.over = Some(closing::COME_BACK);
            }
            Mail::Shut => self.over = Some(closing::COME_BACK),
        }
        if !self.is_alone() {
            self.alone_since = Instant::now();
        }
    }

    fn take_event(&mut self, event: Event) {
        match event {
            Event::SetRecorded { .. } | Event::SetNotRecorded { .. } => self.recording = self.recording.saturating_sub(1),
            _ => {}
        }
        self.tell(event);
    }

    /// Sockets are told first, then what is under way is written, then the next holder may come.
    async fn end(mut self: Box<Self>, mut mailbox: Receiver<Mail>, recorder: JoinHandle<()>) {
        self.tell(Event::RoomEnds);
        let last = self.over.take().unwrap_or(closing::COME_BACK);
        let sockets: Vec<u64> = self.lines.keys().copied().collect();
        for socket in sockets {
            self.close(socket, last.clone());
        }
        let lease = self.lease.clone();
        if timeout(LAST_WORDS, self.write_out(&mut mailbox, recorder)).await.is_err() {
            tracing::error!("a room ended before all of its record was written");
        }
        drop(mailbox);
        lease.app.rooms().forget(lease.session);
    }

    async fn write_out(mut self: Box<Self>, mailbox: &mut Receiver<Mail>, mut recorder: JoinHandle<()>) {
        while self.recording > 0 {
            match mailbox.recv().await {
                Some(mail @ (Mail::Event(_) | Mail::RoomLost)) => self.take_in(mail),
                Some(mail) => turn_away(mail),
                None => break,
            }
        }
        // The recorder works until nobody can give it more.
        drop(self);
        loop {
            tokio::select! {
                _ = &mut recorder => break,
                Some(mail) = mailbox.recv() => turn_away(mail),
            }
        }
    }
}

/// Who comes now comes to the next holder.
fn turn_away(mail: Mail) {
    if let Mail::Desk { out, .. } | Mail::Stage { out, .. } = mail {
        out.close(closing::COME_BACK);
    }
}
