//! All live rooms of this process, by session.

use std::collections::HashMap;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use tokio::sync::{Mutex as Turn, mpsc};
use uuid::Uuid;

use super::room_task::{self, Mail};
use crate::app::App;
use crate::error::Error;
use crate::subject::Subject;

/// The way into a room. Closed once the room has ended.
#[derive(Clone)]
pub(super) struct Door {
    /// The client of its session.
    pub client: Uuid,
    /// Waits when the room is behind, which holds up the one socket that sends.
    pub mail: mpsc::Sender<Mail>,
}

/// One session's place: whoever opens its room has its turn, the others wait and find it open.
type Place = Arc<Turn<Option<Door>>>;

/// See the head of this file.
#[derive(Default)]
pub struct Rooms {
    places: Mutex<HashMap<Uuid, Place>>,
    sockets: AtomicU64,
}

impl Rooms {
    fn places(&self) -> MutexGuard<'_, HashMap<Uuid, Place>> {
        // Nothing in here can be left half done.
        self.places.lock().unwrap_or_else(PoisonError::into_inner)
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
        let mut turn = place.lock().await;
        if let Some(door) = turn.as_ref().filter(|door| !door.mail.is_closed()) {
            return Ok(door.clone());
        }
        let door = room_task::open(app, subject, session).await?;
        *turn = Some(door.clone());
        Ok(door)
    }

    /// The room of `session`, if it is open; waits for one that is just being opened.
    pub(super) async fn find(&self, session: Uuid) -> Option<Door> {
        let place = self.places().get(&session).cloned()?;
        let door = place.lock().await.clone();
        door.filter(|door| !door.mail.is_closed())
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
        if let Some(door) = self.find(session).await {
            // A room that ends at this moment reads all of this anew when it opens again.
            let _ = door.mail.send(Mail::ReadRecord).await;
        }
    }

    /// As [`Rooms::read_again`], for each session of a client.
    pub(super) async fn read_again_for(&self, client: Uuid) {
        for door in self.of_client(client).await {
            let _ = door.mail.send(Mail::ReadRecord).await;
        }
    }

    /// The rooms of this client's sessions.
    async fn of_client(&self, client: Uuid) -> Vec<Door> {
        let places: Vec<Place> = self.places().values().cloned().collect();
        let mut doors = Vec::new();
        for place in places {
            doors.extend(place.lock().await.clone().filter(|door| door.client == client && !door.mail.is_closed()));
        }
        doors
    }

    /// Ends all rooms: what is not written yet is written, sockets are told to come back later.
    pub async fn shut(&self) {
        let sessions: Vec<Uuid> = self.places().keys().copied().collect();
        for session in sessions {
            if let Some(door) = self.find(session).await {
                let _ = door.mail.send(Mail::Shut).await;
                door.mail.closed().await;
            }
        }
    }
}
