//! All SQL of joining, admission and seats.

use chrono::{DateTime, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

use crate::error::Error;

/// A session that has not ended, of a client whom the asker treats.
pub struct OpenSession {
    /// The client.
    pub client: Uuid,
    /// The target worked on.
    pub target: Option<Uuid>,
    /// Within the client.
    pub number: i32,
    /// IANA zone of the practice at that time.
    pub zone: String,
    /// When the client was admitted.
    pub admitted_at: Option<DateTime<Utc>>,
    /// When it ended.
    pub ended_at: Option<DateTime<Utc>>,
}

/// A session of a client whom the asker treats, ended or not.
pub async fn session(db: &mut PgConnection, id: Uuid) -> Result<OpenSession, Error> {
    // A lead may read sessions too, but has no desk in them.
    sqlx::query_as!(
        OpenSession,
        r#"SELECT client_id AS client, target_id AS target, number, zone, admitted_at, ended_at
           FROM session WHERE id = $1 AND access.treats_session(id)"#,
        id
    )
    .fetch_optional(db)
    .await?
    .ok_or(Error::NotFound)
}

/// As [`session`], unless it has ended.
pub async fn open_session(db: &mut PgConnection, id: Uuid) -> Result<OpenSession, Error> {
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
    let found = sqlx::query_as!(
        Try,
        r#"SELECT link_id AS "link!", session_id AS "session!", phc AS "phc!" FROM access.try_code($1)"#,
        hash
    );
    Ok(found.fetch_optional(db).await?)
}

/// Takes the seat, or asks for it: "taken", "asked", or nothing when the link has gone.
pub async fn claim_seat(db: &mut PgConnection, link: Uuid, seat: Uuid, hash: &[u8], device: &str) -> Result<Option<String>, Error> {
    let claim = sqlx::query_scalar!("SELECT access.claim_seat($1, $2, $3, $4)", link, seat, hash, device);
    Ok(claim.fetch_one(db).await?)
}

/// Closes the asker's own seat.
pub async fn leave_seat(db: &mut PgConnection) -> Result<(), Error> {
    sqlx::query!("SELECT access.leave_seat()").execute(db).await?;
    Ok(())
}

/// Moves the seat to the device that asked last, or refuses; false when none asked.
pub async fn decide_seat(db: &mut PgConnection, session: Uuid, to_other: bool) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.decide_seat($1, $2) AS "done!""#, session, to_other).fetch_one(db).await?)
}
