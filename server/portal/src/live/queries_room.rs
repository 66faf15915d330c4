//! All SQL of a room: holding it, and writing down what happens in it. Runs as the room, under its
//! own token, unless a line says otherwise.

use chrono::{DateTime, Utc};
use serde_json::Value;
use sqlx::PgConnection;
use uuid::Uuid;

use crate::store::error::Error;

/// As a member or a seat: keeps a room's token. False when they may not open this room.
pub async fn open_room(db: &mut PgConnection, hash: &[u8], session: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.open_room($1, $2) AS "done!""#, hash, session).fetch_one(db).await?)
}

/// What a lease knows of its session.
pub struct LeaseRow {
    /// The session.
    pub session: Uuid,
    /// Its client.
    pub client: Uuid,
    /// Counts the holders.
    pub epoch: i32,
}

/// Takes the room from whoever held it before; nothing when the session has ended.
pub async fn take_lease(db: &mut PgConnection, session: Uuid, holder: Uuid) -> Result<Option<LeaseRow>, Error> {
    let row = sqlx::query_as!(
        LeaseRow,
        r#"UPDATE session SET room_epoch = room_epoch + 1, room_holder = $2 WHERE id = $1 AND ended_at IS NULL
           RETURNING id AS session, client_id AS client, room_epoch AS epoch"#,
        session,
        holder
    );
    Ok(row.fetch_optional(db).await?)
}

/// Whether the room's token still opens its session: without that, its writing changes nothing.
pub async fn may_write(db: &mut PgConnection, session: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.my_room() IS NOT DISTINCT FROM $1 AS "may!""#, session).fetch_one(db).await?)
}

/// Who holds the room, and whether its session has ended.
pub struct Held {
    /// The holder.
    pub by: Option<Uuid>,
    /// The session has ended.
    pub ended: bool,
}

/// How the room's session stands.
pub async fn held(db: &mut PgConnection, session: Uuid) -> Result<Option<Held>, Error> {
    let held = sqlx::query_as!(Held, r#"SELECT room_holder AS by, ended_at IS NOT NULL AS "ended!" FROM session WHERE id = $1"#, session);
    Ok(held.fetch_optional(db).await?)
}

/// What the client reads at the end, sealed, and what opens it; nothing before the end.
pub struct LastWordsRow {
    /// Sealed.
    pub words: Vec<u8>,
    /// Of the row that it was sealed in.
    pub version: i32,
    /// The client's key, wrapped.
    pub wrapped: Vec<u8>,
}

/// The last words of the room's session, once it has ended.
pub async fn last_words(db: &mut PgConnection) -> Result<Option<LastWordsRow>, Error> {
    let row =
        sqlx::query_as!(LastWordsRow, r#"SELECT words AS "words!", version AS "version!", wrapped AS "wrapped!" FROM access.last_words()"#);
    Ok(row.fetch_optional(db).await?)
}

/// Whom a client can call between sessions, in the practice's words; empty: it says nothing.
pub async fn crisis_words(db: &mut PgConnection) -> Result<String, Error> {
    Ok(sqlx::query_scalar!("SELECT crisis_words FROM practice").fetch_one(db).await?)
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

/// How a device stands to the seat of its session.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It asks for it while another has it.
    Asks,
    /// It has it, and waits to be admitted.
    Has,
    /// It has it and is admitted.
    Admitted,
    /// It had it last, and the client left.
    Left,
    /// It had it, and the clinician took it away.
    Removed,
}

/// A device and the seat.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SeatRow {
    /// Its id.
    pub id: Uuid,
    /// How it stands.
    pub standing: Standing,
}

/// The devices that have or ask for the session's seat, in the order of asking.
pub async fn seats(db: &mut PgConnection, session: Uuid) -> Result<Vec<SeatRow>, Error> {
    let rows = sqlx::query!(r#"SELECT seat_id AS "id!", state AS "state!" FROM access.seats($1)"#, session).fetch_all(db).await?;
    let standing = |state: &str| match state {
        "asked" => Ok(Standing::Asks),
        "taken" => Ok(Standing::Has),
        "admitted" => Ok(Standing::Admitted),
        "left" => Ok(Standing::Left),
        "removed" => Ok(Standing::Removed),
        _ => Err(Error::Inconsistent("access.seats")),
    };
    rows.into_iter().map(|row| Ok(SeatRow { id: row.id, standing: standing(&row.state)? })).collect()
}

/// Writes a new set, if `holder` still holds the room, and answers which target it works on, if one; `None` when another has taken it.
pub async fn insert_set(
    db: &mut PgConnection,
    row: &LeaseRow,
    holder: Uuid,
    set: Uuid,
    number: i32,
    plan: &Value,
    now: DateTime<Utc>,
) -> Result<Option<Option<Uuid>>, Error> {
    let target = sqlx::query_scalar!(
        "INSERT INTO stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at)
         SELECT $3, id, client_id, target_id, $4, room_epoch, $5, $6 FROM session WHERE id = $1 AND room_holder = $2 AND ended_at IS NULL
         RETURNING target_id",
        row.session,
        holder,
        set,
        number,
        plan,
        now
    );
    Ok(target.fetch_optional(db).await?)
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

/// Appends what a desk was shown of a set last, if that was never written: what is among the orders already was followed by others.
pub async fn insert_handed_back(db: &mut PgConnection, set: Uuid, plan: &Value, timeline: &Value, now: DateTime<Utc>) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at)
         SELECT s.id, coalesce(o.seq, -1) + 1, s.session_id, s.client_id, 'handed_back', coalesce(o.at_ms, 0), $2, $3, $4
         FROM stimulus_set s
         LEFT JOIN LATERAL (SELECT seq, at_ms FROM set_order WHERE set_id = s.id ORDER BY seq DESC LIMIT 1) o ON true
         WHERE s.id = $1 AND NOT EXISTS (SELECT FROM set_order w WHERE w.set_id = s.id AND w.timeline = $3)
           AND NOT EXISTS (SELECT FROM set_ending e WHERE e.set_id = s.id AND e.witness = 'room') ON CONFLICT DO NOTHING",
        set,
        plan,
        timeline,
        now
    )
    .execute(db)
    .await?;
    Ok(())
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

/// Whose word on an ending it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Witness {
    /// The room that ended it.
    Room,
    /// A desk that had been told by that room.
    Desk,
}

/// How a set ended, as one of its witnesses says.
#[derive(Clone, Copy, Debug)]
pub struct EndingRow {
    /// The set.
    pub set: Uuid,
    /// Whose word it is.
    pub witness: Witness,
    /// `wire::Ending`.
    pub ending: &'static str,
    /// Room time, ms, where the witness knows it.
    pub at: Option<f64>,
    /// By the portal's clock.
    pub recorded_at: DateTime<Utc>,
}

/// Writes a witness's word on how a set ended, once.
pub async fn insert_ending(db: &mut PgConnection, row: &EndingRow) -> Result<(), Error> {
    let witness = match row.witness {
        Witness::Room => "room",
        Witness::Desk => "desk",
    };
    sqlx::query!(
        "INSERT INTO set_ending (set_id, session_id, client_id, witness, ending, at_ms, recorded_at)
         SELECT id, session_id, client_id, $2, $3, $4, $5 FROM stimulus_set WHERE id = $1 ON CONFLICT DO NOTHING",
        row.set,
        witness,
        row.ending,
        row.at,
        row.recorded_at
    )
    .execute(db)
    .await?;
    Ok(())
}

/// Appends a moment of the session. The clinician's own acts write theirs as a member.
/// `once` names it, so that it is there once however often it is written.
pub async fn insert_moment(
    db: &mut PgConnection,
    session: Uuid,
    client: Uuid,
    kind: &str,
    once: Uuid,
    at: DateTime<Utc>,
) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO session_moment (session_id, client_id, kind, once, at) VALUES ($1, $2, $3, $4, $5) ON CONFLICT DO NOTHING",
        session,
        client,
        kind,
        once,
        at
    )
    .execute(db)
    .await?;
    Ok(())
}

/// Keeps the room's token from running out while the room is open.
pub async fn keep_room(db: &mut PgConnection) -> Result<(), Error> {
    sqlx::query!("SELECT access.keep_room()").execute(db).await?;
    Ok(())
}

/// What the practice has said about calls: whether the two pages may connect directly, and after how many seconds without picture or sound of the
/// client a set comes to rest.
pub async fn call_settings(db: &mut PgConnection) -> Result<(bool, i16), Error> {
    let row = sqlx::query!("SELECT direct_calls, unseen_seconds FROM practice").fetch_one(db).await?;
    Ok((row.direct_calls, row.unseen_seconds))
}
