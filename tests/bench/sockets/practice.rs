//! Clinicians, clients, sessions and seats as rows, made through the portal's own functions.
//!
//! The client's way by link and spoken code is not gone: its hash is slow on purpose (Argon2id), which would
//! take ten minutes for so many, and its limit of tries is by caller.

use futures_util::{StreamExt, stream};
use leeward::base::ids::new_id;
use leeward::clients::{self, Asked, Cautions, Details, NewClient};
use leeward::live::{self, Admission};
use leeward::platform::App;
use leeward::sessions::{self, NewSession};
use leeward::signin;
use leeward::store::seal::Private;
use leeward::store::subject::{Act, Subject};
use leeward_core::wire::Answer::{Consents, Fit, Nobody, NothingNew, Reachable, WayAgreed};
use leeward_core::wire::{Entry, EntryValue, Moment};
use sqlx::{Connection, PgConnection};
use uuid::Uuid;

/// Clients of one clinician: a large caseload, so that the policies have as much to look at as in a real practice.
const CASELOAD: usize = 50;
/// Clinicians at work at a time.
const AT_ONCE: usize = 8;

/// Who may open the sockets of one session.
pub struct Room {
    pub session: Uuid,
    /// The clinician's cookie.
    pub desk: String,
    /// The client's.
    pub stage: String,
}

/// Rooms with a client in their seat: first `waiting` ones, then `admitted` ones in which a set may start.
pub async fn make(app: &App, owner: &str, waiting: usize, admitted: usize) -> Vec<Room> {
    let mut owner = PgConnection::connect(owner).await.expect("the owner connects");
    let mut caseloads = Vec::new();
    for (rooms, admit) in [(waiting, false), (admitted, true)] {
        for first in (0..rooms).step_by(CASELOAD) {
            let clinician = add_clinician(app, &mut owner).await;
            caseloads.push(caseload(app, clinician, CASELOAD.min(rooms - first), admit));
        }
    }
    stream::iter(caseloads).buffered(AT_ONCE).concat().await
}

/// As the database's owner, for by the portal's way a person makes a passkey.
async fn add_clinician(app: &App, owner: &mut PgConnection) -> Uuid {
    let id = new_id(&app.world);
    sqlx::query("INSERT INTO access.member (id, name, roles, joined_at) VALUES ($1, 'A clinician', '{clinician}', $2)")
        .bind(id)
        .bind(app.world.now())
        .execute(owner)
        .await
        .expect("the owner adds a member");
    id
}

async fn caseload(app: &App, clinician: Uuid, clients: usize, admit: bool) -> Vec<Room> {
    let subject = signin::vouch(app, clinician, "a benchmark").await.expect("a sign-in");
    let Subject::Member(token) = &subject else { unreachable!("a member is vouched for") };
    let desk = format!("{}={}", app.origin.member_cookie(), token.reveal());
    let mut rooms = Vec::with_capacity(clients);
    for _ in 0..clients {
        rooms.push(room(app, &subject, &desk, admit).await);
    }
    rooms
}

async fn room(app: &App, subject: &Subject, desk: &str, admit: bool) -> Room {
    let details = Details { name: Private::new("Somebody"), ..Details::default() };
    let cautions = Cautions { seizures: Asked::No, eye_condition: Asked::No };
    let client = clients::create(app, subject, NewClient { details, cautions }).await.expect("a client");
    let session = sessions::open(app, subject, NewSession { client, target: None }).await.expect("a session");
    let (seat, token) = live::sit_down(app, subject, session).await.expect("a seat");
    if admit {
        let admission = Admission { location: Private::new("At home"), call_back: Private::new("+47 22 00 00 00") };
        live::admit(app, subject, session, seat, admission).await.expect("the client is admitted");
        open_the_hour(app, subject, session).await;
    }
    Room { session, desk: desk.to_owned(), stage: format!("{}={}", app.origin.seat_cookie(), token.reveal()) }
}

/// What admission leaves to be asked, with nothing against a start.
async fn open_the_hour(app: &App, subject: &Subject, session: Uuid) {
    let mut tx = app.database.act(subject, Act::new("entry.keep").object(session)).await.expect("a transaction");
    for answer in [Nobody, Reachable, NothingNew, Fit, Consents, WayAgreed] {
        let value = EntryValue::Answered { answer, again: false };
        let entry = Entry {
            id: new_id(&app.world).to_string(),
            set: None,
            replaces: None,
            moment: Moment::Opening,
            segment: None,
            from_client: false,
            value,
        };
        sessions::save_entry(&mut tx, app, session, &entry).await.expect("it is asked").expect("it is kept");
    }
    tx.commit().await.expect("it is kept");
}
