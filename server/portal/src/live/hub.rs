//! All live rooms of this process, by session.

use std::collections::HashMap;
use std::sync::atomic::{AtomicI64, AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use futures_util::future::join_all;
use tokio::sync::{Mutex as Turn, mpsc};
use tokio_util::task::TaskTracker;
use uuid::Uuid;

use super::crowd::Crowd;
use super::room_task::{self, Mail};
use crate::platform::observe::Gauge;
use crate::platform::{App, Bell, Whose};
use crate::store::error::Error;
use crate::store::subject::Subject;

/// The way into a room. Closed once the room has ended.
#[derive(Clone)]
pub(super) struct RoomHandle {
    /// The client of its session.
    pub client: Uuid,
    /// Waits when the room is behind, which holds up the one socket that sends.
    pub mail: mpsc::Sender<Mail>,
}

/// One session's slot. Whoever opens its room has its turn; others that want it open wait and find it so. Whoever only
/// looks waits for nobody: a room may hang in opening.
#[derive(Default)]
struct RoomSlot {
    turn: Turn<()>,
    handle: Mutex<Option<RoomHandle>>,
}

impl RoomSlot {
    /// The room's handle, while there is a room.
    fn handle(&self) -> Option<RoomHandle> {
        unpoisoned(&self.handle).clone().filter(|handle| !handle.mail.is_closed())
    }
}

fn unpoisoned<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    // Nothing in here can be left half done.
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// See the head of this file.
#[derive(Default)]
pub struct Rooms {
    slots: Mutex<HashMap<Uuid, Arc<RoomSlot>>>,
    sockets: AtomicU64,
    /// Rows that clerks were given and have not written: signed, since a quick one may be done before it is counted.
    rows: AtomicI64,
    crowd: Crowd,
    /// Rooms at work, until their record is written.
    pub(super) at_work: TaskTracker,
}

impl App {
    /// The live rooms.
    #[must_use]
    pub fn rooms(&self) -> &Rooms {
        self.own::<Arc<Rooms>>()
    }
}

/// What the counters say of the rooms.
#[must_use]
pub fn gauges(app: &App) -> Vec<Gauge> {
    vec![
        ("leeward_rooms", "Live rooms that are open.", app.rooms().count() as f64),
        ("leeward_room_rows_waiting", "Rows of live rooms that are not written yet.", app.rooms().waiting() as f64),
    ]
}

/// Sends the rooms to the record when somebody has changed it.
pub fn bell(rooms: &Arc<Rooms>) -> Bell {
    let rooms = Arc::clone(rooms);
    Bell::new(move |whose| {
        let rooms = Arc::clone(&rooms);
        async move {
            match whose {
                Whose::Session(session) => rooms.read_again(session).await,
                Whose::Client(client) => rooms.read_again_for(client).await,
            }
        }
    })
}

impl Rooms {
    fn slots(&self) -> MutexGuard<'_, HashMap<Uuid, Arc<RoomSlot>>> {
        unpoisoned(&self.slots)
    }

    /// Those who have not been let in yet.
    pub(super) fn crowd(&self) -> &Crowd {
        &self.crowd
    }

    /// How many are open, or just being opened or ended.
    #[must_use]
    pub fn count(&self) -> usize {
        self.slots().len()
    }

    /// How many rows of them are not written yet.
    #[must_use]
    pub fn waiting(&self) -> i64 {
        self.rows.load(Ordering::Relaxed).max(0)
    }

    pub(super) fn row_waits(&self) {
        self.rows.fetch_add(1, Ordering::Relaxed);
    }

    pub(super) fn row_done(&self) {
        self.rows.fetch_sub(1, Ordering::Relaxed);
    }

    /// A number that no other socket of this process has.
    pub(super) fn new_socket(&self) -> u64 {
        self.sockets.fetch_add(1, Ordering::Relaxed)
    }

    /// The room of `session`, opened as `subject` if it is not open.
    ///
    /// # Errors
    /// [`Error::NotFound`] when `subject` may not open it or the session has ended; [`Error::Database`].
    pub(super) async fn enter(&self, app: &App, subject: &Subject, session: Uuid) -> Result<RoomHandle, Error> {
        let slot = self.slots().entry(session).or_default().clone();
        let turn = slot.turn.lock().await;
        if let Some(handle) = slot.handle() {
            return Ok(handle);
        }
        match room_task::open(app, subject, session).await {
            Ok(handle) => {
                *unpoisoned(&slot.handle) = Some(handle.clone());
                Ok(handle)
            }
            Err(refused) => {
                // No room, no slot: who may not open one leaves nothing behind.
                drop(turn);
                drop(slot);
                self.forget(session);
                Err(refused)
            }
        }
    }

    /// The room of `session`, if it is open. One that is just being opened reads the record once it is.
    pub(super) fn find(&self, session: Uuid) -> Option<RoomHandle> {
        self.slots().get(&session)?.handle()
    }

    /// A room has ended. Its slot stays if somebody is about to open it again.
    pub(super) fn forget(&self, session: Uuid) {
        let mut slots = self.slots();
        if slots.get(&session).is_some_and(|slot| Arc::strong_count(slot) == 1) {
            slots.remove(&session);
        }
    }

    /// Something of `session` may have been committed: its room, if there is one, reads the record again.
    pub(super) async fn read_again(&self, session: Uuid) {
        if let Some(handle) = self.find(session) {
            // A room that ends at this moment reads all of this anew when it opens again.
            let _ = handle.mail.send(Mail::ReadRecord).await;
        }
    }

    /// As [`Rooms::read_again`], for each session of a client.
    pub(super) async fn read_again_for(&self, client: Uuid) {
        let handles = self.handles().into_iter().filter(|handle| handle.client == client);
        join_all(handles.map(|handle| async move { handle.mail.send(Mail::ReadRecord).await })).await;
    }

    fn handles(&self) -> Vec<RoomHandle> {
        self.slots().values().filter_map(|slot| slot.handle()).collect()
    }

    /// Ends all rooms, side by side: what runs eases, what is not written yet is written, sockets are told to come back.
    pub async fn shut(&self) {
        let shut = |handle: RoomHandle| async move { handle.mail.send(Mail::Shut).await };
        join_all(self.handles().into_iter().map(shut)).await;
        self.at_work.close();
        self.at_work.wait().await;
    }
}
