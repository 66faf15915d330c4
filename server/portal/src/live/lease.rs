//! A lease on a room: acting in the database under the room's own token, and starting a set there.

use chrono::{DateTime, Utc};
use leeward_core::call::Reach;
use leeward_core::room::{Event, Facts, LastWords, Start};
use leeward_core::wire::{Plan, Purpose, SeatState};
use uuid::Uuid;

use super::queries_room::{self as queries, LeaseRow, SeatRow, Standing};
use super::room_task::Mail;
use crate::base::ids::{Token, new_id};
use crate::clients;
use crate::comfort;
use crate::course;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::patience::{ANSWER, START, within};
use crate::store::seal::Field;
use crate::store::subject::{Subject, Tx};

/// The right to act for a room, by its own token, until a later lease fences this one out.
#[derive(Clone)]
pub(super) struct Lease {
    pub app: App,
    pub session: Uuid,
    pub client: Uuid,
    pub epoch: i32,
    /// Its name in the session's row (`room_holder`).
    id: Uuid,
    subject: Subject,
}

/// Takes the room of `session` and reads what it starts from.
///
/// # Errors
/// [`Error::NotFound`] when `subject` may not open it or the session has ended; [`Error::Database`].
pub(super) async fn take(app: &App, subject: &Subject, session: Uuid) -> Result<(Lease, Start, Vec<SeatRow>), Error> {
    let token = Token::new(&app.world);
    let mut tx = app.database.look(subject).await?;
    if !queries::open_room(&mut tx, &token.hash(), session).await? {
        return Err(Error::NotFound);
    }
    tx.commit().await?;
    let (subject, id) = (Subject::Room(token), new_id(&app.world));
    let mut tx = app.database.look(&subject).await?;
    let LeaseRow { session, client, epoch } = queries::take_lease(&mut tx, session, id).await?.ok_or(Error::NotFound)?;
    let (start, seats) = read_start(&mut tx, app, (session, client), epoch).await?;
    tx.commit().await?;
    Ok((Lease { app: app.clone(), session, client, epoch, id, subject }, start, seats))
}

async fn read_start(tx: &mut Tx, app: &App, (session, client): (Uuid, Uuid), epoch: i32) -> Result<(Start, Vec<SeatRow>), Error> {
    let sets = queries::past_sets(tx, session).await?;
    let seats = queries::seats(tx, session).await?;
    // An order that this version cannot read is none to start from.
    let plan = match sets.last().and_then(|last| serde_json::from_value(last.plan.clone()).ok()) {
        Some(plan) => plan,
        None => comfort::first_plan(tx, client).await?,
    };
    let Seated { state, id, asking } = seated(&seats);
    let (reach, watch) = calling(tx, app).await?;
    let start = Start {
        epoch: epoch.unsigned_abs(),
        plan,
        sets_so_far: sets.last().map_or(0, |last| last.number.unsigned_abs()),
        known_sets: sets.iter().map(|set| set.id.to_string()).collect(),
        eyes_locked: clients::cautions(tx, client).await?.eyes_locked(),
        seat: state,
        seat_id: id,
        asking,
        holds: course::holding(tx, session).await?,
        reach,
        watch,
    };
    Ok((start, seats))
}

/// How pages may be connected by what the practice allows, and after how many seconds without picture or sound a set comes to rest.
async fn calling(tx: &mut Tx, app: &App) -> Result<(Option<Reach>, u8), Error> {
    let (direct, seconds) = queries::call_settings(tx).await?;
    Ok((app.calls().reach(direct), u8::try_from(seconds).map_err(|_| Error::Inconsistent("practice.unseen_seconds"))?))
}

/// Who sits at the client's end, by the devices' ids.
struct Seated {
    state: SeatState,
    id: Option<String>,
    /// The device that asked last.
    asking: Option<String>,
}

fn seated(seats: &[SeatRow]) -> Seated {
    // Whoever sits there comes before whoever has left, in whatever order they came.
    let standing = |wanted: &[Standing]| seats.iter().rfind(|seat| wanted.contains(&seat.standing));
    let place = standing(&[Standing::Has, Standing::Admitted]).or_else(|| standing(&[Standing::Left]));
    let state = match place.map(|seat| seat.standing) {
        Some(Standing::Admitted) => SeatState::Admitted,
        Some(Standing::Has) => SeatState::Waiting,
        Some(Standing::Left) => SeatState::Left,
        Some(Standing::Asks | Standing::Removed) | None => SeatState::Empty,
    };
    let asking = seats.iter().rfind(|seat| seat.standing == Standing::Asks);
    Seated { state, id: place.map(|seat| seat.id.to_string()), asking: asking.map(|seat| seat.id.to_string()) }
}

/// What a room finds in the record.
pub(super) enum Found {
    /// What to follow, and the devices it is about.
    Facts(Facts, Vec<SeatRow>),
    /// Another holder has the room.
    RoomLost,
}

impl Lease {
    /// Opens a transaction as the room. Its bookkeeping needs no audit row of its own.
    ///
    /// # Errors
    /// [`Error::Database`].
    ///
    /// [`Error::NothingWritten`] when its token opens nothing any more: whatever it wrote would change nothing.
    pub(super) async fn look(&self) -> Result<Tx, Error> {
        self.checked(self.app.database.look(&self.subject).await?).await
    }

    async fn checked(&self, mut tx: Tx) -> Result<Tx, Error> {
        if queries::may_write(&mut tx, self.session).await? { Ok(tx) } else { Err(Error::NothingWritten("access.room_token")) }
    }

    /// Reads all that the room has to follow. The one way in which a room learns what was committed beside it.
    ///
    /// # Errors
    /// As [`Lease::look`].
    pub(super) async fn find(&self) -> Result<Found, Error> {
        let mut tx = self.look().await?;
        let held = queries::held(&mut tx, self.session).await?.ok_or(Error::NothingWritten("session"))?;
        if held.by != Some(self.id) {
            return Ok(Found::RoomLost);
        }
        queries::keep_room(&mut tx).await?;
        let seats = queries::seats(&mut tx, self.session).await?;
        let Seated { state, id, asking } = seated(&seats);
        let ended = if held.ended { Some(self.last_words(&mut tx).await) } else { None };
        let eyes_locked = clients::cautions(&mut tx, self.client).await?.eyes_locked();
        let holds = course::holding(&mut tx, self.session).await?;
        let (reach, watch) = calling(&mut tx, &self.app).await?;
        tx.commit().await?;
        Ok(Found::Facts(Facts { ended, eyes_locked, seat: state, seat_id: id, asking, holds, reach, watch }, seats))
    }

    /// A session ends whether or not its last words open: then the page shows its own neutral ones.
    async fn last_words(&self, tx: &mut Tx) -> LastWords {
        let opened = async {
            let Some(row) = queries::last_words(tx).await? else { return Ok(None) };
            let key = self.app.key.unwrap(self.client, &row.wrapped);
            let words = key.row(self.session, row.version).open(Field::SessionClientWords, &row.words).text()?;
            Ok::<_, Error>(Some(words.reveal().to_owned()).filter(|words| !words.is_empty()))
        };
        let own = opened.await.unwrap_or_else(|fault| {
            tracing::error!(%fault, "the last words of a session could not be read");
            None
        });
        let crisis = queries::crisis_words(tx).await.unwrap_or_else(|fault| {
            tracing::error!(%fault, "whom to call between sessions could not be read");
            String::new()
        });
        let said: Vec<String> = own.into_iter().chain(Some(crisis).filter(|words| !words.is_empty())).collect();
        Some(said.join("\n\n")).filter(|words| !words.is_empty())
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
        let write = async {
            let mut tx = self.checked(self.app.database.look_to_start(&self.subject).await?).await?;
            // What the room goes by may be a moment old; what is written is what the record lets start.
            if !course::holding(&mut tx, self.session).await?.of(plan.purpose).is_empty() {
                return Err(Error::NothingWritten("stimulus_set"));
            }
            let written = self.insert(&mut tx, set, number, plan, self.app.world.now()).await?;
            Ok::<_, Error>(written.then_some(tx))
        };
        let Some(tx) = within(START, write).await? else { return Ok(Written::RoomLost) };
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
        let row = LeaseRow { session: self.session, client: self.client, epoch: self.epoch };
        let Some(target) = queries::insert_set(tx, &row, self.id, set, place, &value, at).await? else { return Ok(false) };
        if let Some(target) = target.filter(|_| plan.purpose == Purpose::Processing) {
            course::set_begun(tx, target).await?;
        }
        Ok(true)
    }

    async fn find_out(&self, set: Uuid, fault: Error) -> Result<Written, Error> {
        loop {
            tokio::time::sleep(std::time::Duration::from_millis(500)).await;
            let has = async { queries::has_set(&mut *self.look().await?, set).await };
            match within(ANSWER, has).await {
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whoever_sits_there_comes_before_whoever_has_left() {
        let seats = |standings: &[Standing]| {
            let rows: Vec<SeatRow> =
                standings.iter().zip(1..).map(|(standing, id)| SeatRow { id: Uuid::from_u128(id), standing: *standing }).collect();
            let Seated { state, id, .. } = seated(&rows);
            (state, id)
        };
        let id = |number| Some(Uuid::from_u128(number).to_string());
        // One asked, another came and left, the first was given the seat.
        assert_eq!(seats(&[Standing::Has, Standing::Left]), (SeatState::Waiting, id(1)));
        assert_eq!(seats(&[Standing::Left, Standing::Admitted, Standing::Asks]), (SeatState::Admitted, id(2)));
        assert_eq!(seats(&[Standing::Left, Standing::Left, Standing::Removed]), (SeatState::Left, id(2)));
        assert_eq!(seats(&[Standing::Asks]), (SeatState::Empty, None));
    }
}
