//! Holding a room: acting in the database under the room's own token, and starting a set there.

use chrono::{DateTime, Utc};
use leeward_core::room::{Event, Start};
use leeward_core::wire::{Plan, SeatState};
use uuid::Uuid;

use super::queries_room::{self as queries, Hold, SeatRow};
use super::room_task::Mail;
use crate::app::App;
use crate::clients;
use crate::comfort;
use crate::error::Error;
use crate::ids::{Token, new_id};
use crate::subject::{Subject, Tx};

/// Who holds a room, with the right to act for it.
#[derive(Clone)]
pub(super) struct Holder {
    pub app: App,
    pub session: Uuid,
    pub client: Uuid,
    pub epoch: i32,
    /// This holder, as the session's row names it. A later holder fences this one out.
    id: Uuid,
    subject: Subject,
}

/// Takes the room of `session` and reads what it starts from.
///
/// # Errors
/// [`Error::NotFound`] when `subject` may not open it or the session has ended; [`Error::Database`].
pub(super) async fn take(app: &App, subject: &Subject, session: Uuid) -> Result<(Holder, Start, Vec<SeatRow>), Error> {
    let token = Token::new(&app.world);
    let mut tx = app.database.look(subject).await?;
    if !queries::open_room(&mut tx, &token.hash(), session).await? {
        return Err(Error::NotFound);
    }
    tx.commit().await?;
    let (subject, id) = (Subject::Room(token), new_id(&app.world));
    let mut tx = app.database.look(&subject).await?;
    let Hold { session, client, epoch } = queries::take_hold(&mut tx, session, id).await?.ok_or(Error::NotFound)?;
    queries::end_unknown(&mut tx, session, epoch, app.world.now()).await?;
    let (start, seats) = read_start(&mut tx, session, client, epoch).await?;
    tx.commit().await?;
    Ok((Holder { app: app.clone(), session, client, epoch, id, subject }, start, seats))
}

async fn read_start(tx: &mut Tx, session: Uuid, client: Uuid, epoch: i32) -> Result<(Start, Vec<SeatRow>), Error> {
    let sets = queries::past_sets(tx, session).await?;
    let seats = queries::seats(tx, session).await?;
    // An order that this version cannot read is none to start from.
    let plan = match sets.last().and_then(|last| serde_json::from_value(last.plan.clone()).ok()) {
        Some(plan) => plan,
        None => comfort::first_plan(tx, client).await?,
    };
    let (seat, seat_asked_for) = seat_state(&seats);
    let start = Start {
        epoch: epoch.unsigned_abs(),
        plan,
        sets_so_far: sets.last().map_or(0, |last| last.number.unsigned_abs()),
        known_sets: sets.iter().map(|set| set.id.to_string()).collect(),
        eyes_locked: clients::cautions(tx, client).await?.eyes_locked(),
        seat,
        seat_asked_for,
    };
    Ok((start, seats))
}

/// Who sits at the client's end, and whether another device asks for the seat.
pub(super) fn seat_state(seats: &[SeatRow]) -> (SeatState, bool) {
    let state = match seats.iter().find(|seat| seat.taken) {
        None => SeatState::Empty,
        Some(seat) if seat.admitted => SeatState::Admitted,
        Some(_) => SeatState::Waiting,
    };
    (state, seats.iter().any(|seat| !seat.taken))
}

impl Holder {
    /// Opens a transaction as the room. Its bookkeeping needs no audit row of its own.
    ///
    /// # Errors
    /// [`Error::Database`].
    pub(super) async fn look(&self) -> Result<Tx, Error> {
        self.app.database.look(&self.subject).await
    }

    /// Writes a new set and says what became of it; nothing while that is not known.
    pub(super) async fn record_set(self, number: u32, plan: Plan) -> Mail {
        let set = new_id(&self.app.world);
        match self.write_set(set, number, &plan).await {
            Ok(Written::Yes) => Event::SetRecorded { number, id: set.to_string() }.into(),
            Ok(Written::RoomLost) => Mail::RoomLost,
            Err(fault) => {
                tracing::error!(%fault, "a set was not recorded, so it was not started");
                Event::SetNotRecorded { number }.into()
            }
        }
    }

    async fn write_set(&self, set: Uuid, number: u32, plan: &Plan) -> Result<Written, Error> {
        let mut tx = self.look().await?;
        if !self.insert(&mut tx, set, number, plan, self.app.world.now()).await? {
            return Ok(Written::RoomLost);
        }
        match tx.commit().await {
            Ok(()) => Ok(Written::Yes),
            // The answer to the commit was lost: it may have happened.
            Err(fault) => self.find_out(set, fault).await,
        }
    }

    /// Writes a new set within `tx`; false when another holder has the room, or the session has ended.
    ///
    /// # Errors
    /// [`Error::Database`].
    pub(super) async fn insert(&self, tx: &mut Tx, set: Uuid, number: u32, plan: &Plan, at: DateTime<Utc>) -> Result<bool, Error> {
        let value = serde_json::to_value(plan).map_err(|fault| Error::Inner(format!("plan: {fault}")))?;
        let place = i32::try_from(number).map_err(|_| Error::Inconsistent("stimulus_set.number"))?;
        let hold = Hold { session: self.session, client: self.client, epoch: self.epoch };
        queries::insert_set(tx, &hold, self.id, set, place, &value, at).await
    }

    async fn find_out(&self, set: Uuid, fault: Error) -> Result<Written, Error> {
        loop {
            tokio::time::sleep(std::time::Duration::from_millis(500)).await;
            let Ok(mut tx) = self.look().await else { continue };
            match queries::has_set(&mut tx, set).await {
                Ok(true) => return Ok(Written::Yes),
                Ok(false) => return Err(fault),
                Err(_) => {}
            }
        }
    }
}

enum Written {
    Yes,
    /// Another holder has the room, or the session has ended.
    RoomLost,
}
