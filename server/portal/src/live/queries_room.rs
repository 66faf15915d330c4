//! All SQL of a room: holding it, and writing down what happens in it. Runs as the room, under its
//! own token, unless a line says otherwise.

use chrono::{DateTime, Utc};
use serde_json::Value;
use sqlx::PgConnection;
use uuid::Uuid;

use crate::error::Error;

/// As a member or a seat: keeps a room's token. False when they may not open this room.
pub async fn open_room(db: &mut PgConnection, hash: &[u8], session: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.open_room($1, $2) AS "done!""#, hash, session).fetch_one(db).await?)
}

/// What a holder knows about its session.
pub struct Hold {
    /// The session.
    pub session: Uuid,
    /// Its client.
    pub client: Uuid,
    /// Counts the holders.
    pub epoch: i32,
}

/// Takes the room from whoever held it before; nothing when the session has ended.
pub async fn take_hold(db: &mut PgConnection, session: Uuid, holder: Uuid) -> Result<Option<Hold>, Error> {
    let hold = sqlx::query_as!(
        Hold,
        r#"UPDATE session SET room_epoch = room_epoch + 1, room_holder = $2 WHERE id = $1 AND ended_at IS NULL
           RETURNING id AS session, client_id AS client, room_epoch AS epoch"#,
        session,
        holder
    );
    Ok(hold.fetch_optional(db).await?)
}

/// Sets of earlier holders whose end nobody heard of.
pub async fn end_unknown(db: &mut PgConnection, session: Uuid, epoch: i32, now: DateTime<Utc>) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at)
         SELECT s.id, s.session_id, s.client_id, 'unknown', NULL, $3 FROM stimulus_set s
         WHERE s.session_id = $1 AND s.epoch < $2 AND NOT EXISTS (SELECT FROM set_ending e WHERE e.set_id = s.id)
         ON CONFLICT DO NOTHING",
        session,
        epoch,
        now
    )
    .execute(db)
    .await?;
    Ok(())
}

/// A set of this session, and its plan as last ordered.
pub struct PastSet {
    /// Its id.
    pub id: Uuid,
    /// Within the session.
    pub number: i32,
    /// `wire::Plan`.
    pub plan: Value,
}

/// The session's sets in order.
pub async fn past_sets(db: &mut PgConnection, session: Uuid) -> Result<Vec<PastSet>, Error> {
    let sets = sqlx::query_as!(
        PastSet,
        r#"SELECT s.id, s.number,
             coalesce((SELECT o.plan FROM set_order o WHERE o.set_id = s.id ORDER BY o.seq DESC LIMIT 1), s.plan) AS "plan!"
           FROM stimulus_set s WHERE s.session_id = $1 ORDER BY s.number"#,
        session
    );
    Ok(sets.fetch_all(db).await?)
}

/// A seat that is not closed.
#[derive(Clone, Debug)]
pub struct SeatRow {
    /// Its id.
    pub id: Uuid,
    /// It is the seat of the session; otherwise it asks to be.
    pub taken: bool,
    /// The client was admitted since this device asked.
    pub admitted: bool,
}

/// The session's seats.
pub async fn seats(db: &mut PgConnection, session: Uuid) -> Result<Vec<SeatRow>, Error> {
    let seats = sqlx::query_as!(
        SeatRow,
        r#"SELECT q.seat_id AS "id!", q.taken AS "taken!",
             q.taken AND EXISTS (SELECT FROM session_moment m WHERE m.session_id = $1 AND m.kind = 'admitted' AND m.at >= q.asked_at)
               AS "admitted!"
           FROM access.seats($1) q"#,
        session
    );
    Ok(seats.fetch_all(db).await?)
}

/// Writes a new set, if `holder` still holds the room; false when another has taken it.
pub async fn insert_set(
    db: &mut PgConnection,
    hold: &Hold,
    holder: Uuid,
    set: Uuid,
    number: i32,
    plan: &Value,
    now: DateTime<Utc>,
) -> Result<bool, Error> {
    let done = sqlx::query!(
        "INSERT INTO stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at)
         SELECT $3, id, client_id, target_id, $4, room_epoch, $5, $6 FROM session WHERE id = $1 AND room_holder = $2 AND ended_at IS NULL",
        hold.session,
        holder,
        set,
        number,
        plan,
        now
    )
    .execute(db)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Whether a set is in the record.
pub async fn has_set(db: &mut PgConnection, set: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM stimulus_set WHERE id = $1) AS "there!""#, set).fetch_one(db).await?)
}

/// One row of what was ordered.
#[derive(Debug)]
pub struct OrderRow {
    /// The set.
    pub set: Uuid,
    /// 0 for its first.
    pub seq: i32,
    /// Why.
    pub cause: &'static str,
    /// Room time, ms.
    pub at: f64,
    /// `wire::Plan`.
    pub plan: Value,
    /// `wire::Timeline`.
    pub timeline: Value,
    /// By the portal's clock.
    pub recorded_at: DateTime<Utc>,
}

/// Appends to what was ordered, once.
pub async fn insert_order(db: &mut PgConnection, order: &OrderRow) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at)
         SELECT id, $2, session_id, client_id, $3, $4, $5, $6, $7 FROM stimulus_set WHERE id = $1 ON CONFLICT DO NOTHING",
        order.set,
        order.seq,
        order.cause,
        order.at,
        order.plan,
        order.timeline,
        order.recorded_at
    )
    .execute(db)
    .await?;
    Ok(())
}

/// Writes how a set ended, once.
pub async fn insert_ending(db: &mut PgConnection, set: Uuid, ending: &str, at: f64, now: DateTime<Utc>) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at)
         SELECT id, session_id, client_id, $2, $3, $4 FROM stimulus_set WHERE id = $1 ON CONFLICT DO NOTHING",
        set,
        ending,
        at,
        now
    )
    .execute(db)
    .await?;
    Ok(())
}

/// Appends a moment of the session. The clinician's own acts write theirs as a member.
pub async fn insert_moment(db: &mut PgConnection, session: Uuid, client: Uuid, kind: &str, at: DateTime<Utc>) -> Result<(), Error> {
    sqlx::query!("INSERT INTO session_moment (session_id, client_id, kind, at) VALUES ($1, $2, $3, $4)", session, client, kind, at)
        .execute(db)
        .await?;
    Ok(())
}
