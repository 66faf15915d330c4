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
pub(super) struct Door {
    /// The client of its session.
    pub client: Uuid,
    /// Waits when the room is behind, which holds up the one socket that sends.
    pub mail: mpsc::Sender<Mail>,
}

/// One session's place. Whoever opens its room has its turn; others that want it open wait and find it so. Whoever only
/// looks waits for nobody: a room may hang in opening.
#[derive(Default)]
struct Place {
    turn: Turn<()>,
    door: Mutex<Option<Door>>,
}

impl Place {
    /// The room's door, while there is a room.
    fn door(&self) -> Option<Door> {
        unpoisoned(&self.door).clone().filter(|door| !door.mail.is_closed())
    }
}

fn unpoisoned<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    // Nothing in here can be left half done.
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// See the head of this file.
#[derive(Default)]
pub struct Rooms {
    places: Mutex<HashMap<Uuid, Arc<Place>>>,
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
    fn places(&self) -> MutexGuard<'_, HashMap<Uuid, Arc<Place>>> {
        unpoisoned(&self.places)
    }

    /// Those who have not been let in yet.
    pub(super) fn crowd(&self) -> &Crowd {
        &self.crowd
    }

    /// How many are open, or just being opened or ended.
    #[must_use]
    pub fn count(&self) -> usize {
        self.places().len()
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
    pub(super) async fn enter(&self, app: &App, subject: &Subject, session: Uuid) -> Result<Door, Error> {
        let place = self.places().entry(session).or_default().clone();
        let turn = place.turn.lock().await;
        if let Some(door) = place.door() {
            return Ok(door);
        }
        match room_task::open(app, subject, session).await {
            Ok(door) => {
                *unpoisoned(&place.door) = Some(door.clone());
                Ok(door)
            }
            Err(refused) => {
                // No room, no place: who may not open one leaves nothing behind.
                drop(turn);
                drop(place);
                self.forget(session);
                Err(refused)
            }
        }
    }

    /// The room of `session`, if it is open. One that is just being opened reads the record once it is.
    pub(super) fn find(&self, session: Uuid) -> Option<Door> {
        self.places().get(&session)?.door()
    }

    /// A room has ended. Its place stays if somebody is about to open it again.
    pub(super) fn forget(&self, session: Uuid) {
        let mut places = self.places();
        if places.get(&session).is_some_and(|place| Arc::strong_count(place) == 1) {
            places.remove(&session);
        }
    }

    /// Something of `session` may have been committed: its room, if there is one, reads the record again.
    pub(super) async fn read_again(&self, session: Uuid) {
        if let Some(door) = self.find(session) {
            // A room that ends at this moment reads all of this anew when it opens again.
            let _ = door.mail.send(Mail::ReadRecord).await;
        }
    }

    /// As [`Rooms::read_again`], for each session of a client.
    pub(super) async fn read_again_for(&self, client: Uuid) {
        let doors = self.doors().into_iter().filter(|door| door.client == client);
        join_all(doors.map(|door| async move { door.mail.send(Mail::ReadRecord).await })).await;
    }

    fn doors(&self) -> Vec<Door> {
        self.places().values().filter_map(|place| place.door()).collect()
    }

    /// Ends all rooms, side by side: what runs eases, what is not written yet is written, sockets are told to come back.
    pub async fn shut(&self) {
        let shut = |door: Door| async move { door.mail.send(Mail::Shut).await };
        join_all(self.doors().into_iter().map(shut)).await;
        self.at_work.close();
        self.at_work.wait().await;
    }
}
