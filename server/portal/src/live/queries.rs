//! All SQL of joining, admission and seats.

use chrono::{DateTime, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

use crate::store::error::Error;

/// A session of a client whom the asker treats.
pub struct SessionRow {
    /// The client.
    pub client: Uuid,
    /// The target worked on.
    pub target: Option<Uuid>,
    /// Within the client.
    pub number: i32,
    /// IANA zone of the practice at that time.
    pub zone: String,
    /// When the client was admitted first.
    pub begun_at: Option<DateTime<Utc>>,
    /// And when last.
    pub admitted_at: Option<DateTime<Utc>>,
    /// When it ended.
    pub ended_at: Option<DateTime<Utc>>,
}

/// A session of a client whom the asker treats, ended or not.
pub async fn session(db: &mut PgConnection, id: Uuid) -> Result<SessionRow, Error> {
    // A lead may read sessions too, but has no desk in them.
    sqlx::query_as!(
        SessionRow,
        r#"SELECT client_id AS client, target_id AS target, number, zone, ended_at,
             (SELECT min(m.at) FROM session_moment m WHERE m.session_id = $1 AND m.kind = 'admitted') AS begun_at,
             (SELECT max(m.at) FROM session_moment m WHERE m.session_id = $1 AND m.kind = 'admitted') AS admitted_at
           FROM session WHERE id = $1 AND access.treats_session(id)"#,
        id
    )
    .fetch_optional(db)
    .await?
    .ok_or(Error::NotFound)
}

/// As [`session`], unless it has ended.
pub async fn open_session(db: &mut PgConnection, id: Uuid) -> Result<SessionRow, Error> {
    let found = session(db, id).await?;
    if found.ended_at.is_some() { Err(Error::NotFound) } else { Ok(found) }
}

/// Keeps a new link; earlier ones of the session end.
pub async fn mint_link(
    db: &mut PgConnection,
    link: Uuid,
    hash: &[u8],
    session: Uuid,
    until: DateTime<Utc>,
    phc: &str,
) -> Result<(), Error> {
    sqlx::query!("SELECT access.mint_link($1, $2, $3, $4, $5)", link, hash, session, until, phc).execute(db).await?;
    Ok(())
}

/// Keeps a new code for the open link; false when there is none.
pub async fn mint_code(db: &mut PgConnection, session: Uuid, phc: &str) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.mint_code($1, $2) AS "done!""#, session, phc).fetch_one(db).await?)
}

/// A link that is open, and the hash of its code.
pub struct Try {
    /// The link.
    pub link: Uuid,
    /// Its session.
    pub session: Uuid,
    /// PHC form of its code.
    pub phc: String,
}

/// Counts a try at a link's code.
pub async fn try_code(db: &mut PgConnection, hash: &[u8]) -> Result<Option<Try>, Error> {
    let found =
        sqlx::query_as!(Try, r#"SELECT link_id AS "link!", session_id AS "session!", phc AS "phc!" FROM access.try_code($1)"#, hash);
    Ok(found.fetch_optional(db).await?)
}

/// Where a seat stands that was claimed before, by the hashes of its link and its own: its session, and "taken", "asked"
/// or "closed".
pub async fn claimed_seat(db: &mut PgConnection, link: &[u8], seat: &[u8]) -> Result<Option<(Uuid, String)>, Error> {
    let row = sqlx::query!(r#"SELECT session_id AS "session!", state AS "state!" FROM access.claimed_seat($1, $2)"#, link, seat);
    Ok(row.fetch_optional(db).await?.map(|row| (row.session, row.state)))
}

/// Takes the seat, or asks for it: "taken", "asked", or nothing when the link has gone. Gives up the seat that the same
/// browser had before.
pub async fn claim_seat(
    db: &mut PgConnection,
    link: Uuid,
    seat: Uuid,
    hash: &[u8],
    device: &str,
    earlier: Option<&[u8]>,
) -> Result<Option<String>, Error> {
    let claim = sqlx::query_scalar!("SELECT access.claim_seat($1, $2, $3, $4, $5)", link, seat, hash, device, earlier);
    Ok(claim.fetch_one(db).await?)
}

/// Closes the asker's own seat; false when it was closed already.
pub async fn leave_seat(db: &mut PgConnection) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.leave_seat() AS "left!""#).fetch_one(db).await?)
}

/// Moves the seat to the device that asks, or refuses it; false when it does not stand like that afterwards.
pub async fn decide_seat(db: &mut PgConnection, session: Uuid, seat: Uuid, to_it: bool) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.decide_seat($1, $2, $3) AS "done!""#, session, seat, to_it).fetch_one(db).await?)
}

/// Takes the seat from the device that has it; false when it does not stand like that afterwards.
pub async fn remove_seat(db: &mut PgConnection, session: Uuid, seat: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.remove_seat($1, $2) AS "done!""#, session, seat).fetch_one(db).await?)
}

/// Admits the device; false when it does not have the seat.
pub async fn admit_seat(db: &mut PgConnection, session: Uuid, seat: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.admit_seat($1, $2) AS "done!""#, session, seat).fetch_one(db).await?)
}

/// Where the asker's own seat stands: its session, and "taken" or "asked".
pub async fn seat_state(db: &mut PgConnection) -> Result<Option<(Uuid, String)>, Error> {
    let row = sqlx::query!(r#"SELECT session_id AS "session!", state AS "state!" FROM access.seat_state()"#).fetch_optional(db).await?;
    Ok(row.map(|row| (row.session, row.state)))
}

/// Whether the asker's own seat is in a rehearsal.
pub async fn seat_rehearses(db: &mut PgConnection) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.seat_rehearses() AS "so!""#).fetch_one(db).await?)
}

/// The name of whom the client of the asker's seat meets, where the practice lets clients read it.
pub async fn whom_we_meet(db: &mut PgConnection) -> Result<Option<String>, Error> {
    Ok(sqlx::query_scalar!("SELECT access.whom_we_meet()").fetch_one(db).await?)
}

/// The session whose evidence the asker may hand in, up to 15 minutes after its end.
pub async fn late_seat(db: &mut PgConnection) -> Result<Option<Uuid>, Error> {
    Ok(sqlx::query_scalar!("SELECT access.my_late_seat()").fetch_one(db).await?)
}

/// Whether it is over for the asker's seat: its session has ended, also for who only asked, or it was removed.
pub async fn seat_is_over(db: &mut PgConnection) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.seat_is_over() AS "over!""#).fetch_one(db).await?)
}

/// Whether the asker treats the client of a session that goes on; counts as activity of the sign-in.
pub async fn still_there(db: &mut PgConnection, session: Uuid) -> Result<(bool, bool), Error> {
    sqlx::query!("SELECT access.touch_signin()").execute(&mut *db).await?;
    let row = sqlx::query!(r#"SELECT access.me() IS NOT NULL AS "signed_in!", access.treats_session($1) AS "treats!""#, session);
    let row = row.fetch_one(db).await?;
    Ok((row.signed_in, row.treats))
}

/// Writes an admission: the first one in the session's row, each seat's as a moment. False: this seat was admitted before.
pub async fn admit(db: &mut PgConnection, session: Uuid, seat: Uuid, now: DateTime<Utc>) -> Result<bool, Error> {
    let first = sqlx::query!("UPDATE session SET admitted_at = coalesce(admitted_at, $2) WHERE id = $1", session, now);
    if first.execute(&mut *db).await?.rows_affected() != 1 {
        return Err(Error::NothingWritten("session"));
    }
    let moment = sqlx::query!(
        "INSERT INTO session_moment (session_id, client_id, kind, once, at) SELECT id, client_id, 'admitted', $2, $3 FROM session
         WHERE id = $1 ON CONFLICT DO NOTHING",
        session,
        seat,
        now
    );
    Ok(moment.execute(db).await?.rows_affected() == 1)
}

/// Writes what an admission confirms into the opening.
pub async fn answer(db: &mut PgConnection, id: Uuid, session: Uuid, answer: &str, now: DateTime<Utc>) -> Result<(), Error> {
    let done = sqlx::query!(
        "INSERT INTO hour_fact (id, client_id, session_id, kind, code, again, entered_by, at)
         SELECT $1, client_id, id, 'answered', $3, false, access.me(), $4 FROM session WHERE id = $2",
        id,
        session,
        answer,
        now
    );
    if done.execute(db).await?.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("hour_fact")) }
}

/// The client's last earlier session in which they were admitted.
pub async fn session_before(db: &mut PgConnection, client: Uuid, number: i32) -> Result<Option<Uuid>, Error> {
    let before = sqlx::query_scalar!(
        "SELECT id FROM session WHERE client_id = $1 AND number < $2 AND admitted_at IS NOT NULL ORDER BY number DESC LIMIT 1",
        client,
        number
    );
    Ok(before.fetch_optional(db).await?)
}

/// How long an appointment usually is, and how much of that is kept for closing, minutes.
pub async fn appointment(db: &mut PgConnection) -> Result<(i16, i16), Error> {
    let row = sqlx::query!("SELECT minutes, reserve FROM practice").fetch_one(db).await?;
    Ok((row.minutes, row.reserve))
}

/// The number that the practice calls in an emergency.
pub async fn emergency_number(db: &mut PgConnection) -> Result<String, Error> {
    Ok(sqlx::query_scalar!("SELECT emergency_number FROM practice").fetch_one(db).await?)
}

/// Where the practice may treat, a place a line; empty: nothing is said about it.
pub async fn places(db: &mut PgConnection) -> Result<String, Error> {
    Ok(sqlx::query_scalar!("SELECT places FROM practice").fetch_one(db).await?)
}
