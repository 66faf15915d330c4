//! SQL of sessions and their words.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

/// A session as those who treat its client know it.
pub(super) struct SessionRow {
    pub client_id: Uuid,
    pub target_id: Option<Uuid>,
    pub number: i32,
    pub zone: String,
    pub opened_at: DateTime<Utc>,
    /// Last: with the place that stands here.
    pub admitted_at: Option<DateTime<Utc>>,
    pub ended_at: Option<DateTime<Utc>>,
    /// When the work was over, where it was closed later.
    pub over_at: Option<DateTime<Utc>>,
    pub closing: Option<String>,
    pub clinician: String,
    pub client_number: i32,
    /// With a pretend client: counted nowhere.
    pub rehearsal: bool,
}

/// `session`, if the asker treats its client. A lead's wider right to read is not enough here.
pub(super) async fn session(tx: &mut Tx, session: Uuid) -> sqlx::Result<Option<SessionRow>> {
    sqlx::query_as!(
        SessionRow,
        r#"SELECT s.client_id, s.target_id, s.number, s.zone, s.opened_at, s.ended_at, s.over_at, s.closing,
             (SELECT max(m.at) FROM session_moment m WHERE m.session_id = s.id AND m.kind = 'admitted') AS admitted_at,
             (SELECT m.name FROM access.members() m WHERE m.id = s.member_id) AS "clinician!", c.number AS "client_number!",
             c.id IN (SELECT access.rehearsals()) AS "rehearsal!"
           FROM session s JOIN client c ON c.id = s.client_id
           WHERE s.id = $1 AND s.client_id IN (SELECT access.my_clients())"#,
        session
    )
    .fetch_optional(&mut **tx)
    .await
}

/// How many sets alike in a row this practice calls stuck.
pub(super) async fn stuck_after(tx: &mut Tx) -> sqlx::Result<i16> {
    sqlx::query_scalar!("SELECT stuck_after FROM practice").fetch_one(&mut **tx).await
}

/// The session of `client` that has not ended.
pub(super) async fn running(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<Uuid>> {
    sqlx::query_scalar!("SELECT id FROM session WHERE client_id = $1 AND ended_at IS NULL ORDER BY number DESC LIMIT 1", client)
        .fetch_optional(&mut **tx)
        .await
}

/// Whether `target` of `client` is archived. `None`: there is no such target of this client.
pub(super) async fn target_archived(tx: &mut Tx, target: Uuid, client: Uuid) -> sqlx::Result<Option<bool>> {
    sqlx::query_scalar!(r#"SELECT archived_at IS NOT NULL AS "archived!" FROM target WHERE id = $1 AND client_id = $2"#, target, client)
        .fetch_optional(&mut **tx)
        .await
}

/// The target that was worked on last before the client's session of this number.
pub(super) async fn target_before(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<Uuid>> {
    let target = sqlx::query_scalar!(
        r#"SELECT target_id AS "target!" FROM session WHERE client_id = $1 AND number < $2 AND target_id IS NOT NULL AND took_place
           ORDER BY number DESC LIMIT 1"#,
        client,
        number
    );
    target.fetch_optional(&mut **tx).await
}

/// A session that was closed.
pub(super) struct ClosedRow {
    pub id: Uuid,
    pub number: i32,
    pub zone: String,
    pub opened_at: DateTime<Utc>,
}

/// The last session of `client` before this number that was closed.
pub(super) async fn closed_before(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<ClosedRow>> {
    sqlx::query_as!(
        ClosedRow,
        "SELECT id, number, zone, opened_at FROM session WHERE client_id = $1 AND number < $2 AND ended_at IS NOT NULL AND took_place
         ORDER BY number DESC LIMIT 1",
        client,
        number
    )
    .fetch_optional(&mut **tx)
    .await
}

pub(super) async fn insert_session(tx: &mut Tx, id: Uuid, client: Uuid, target: Option<Uuid>, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO session (id, client_id, member_id, target_id, number, zone, opened_at, room_epoch, version)
         SELECT $1, $2, access.me(), $3, coalesce((SELECT max(number) FROM session WHERE client_id = $2), 0) + 1, p.zone, $4, 0, 1
         FROM practice p",
        id,
        client,
        target,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Ends a session that runs; `over` is when the work was, if that was before. False: it had ended already.
pub(super) async fn end_session(
    tx: &mut Tx,
    session: Uuid,
    closing: &str,
    (now, over): (DateTime<Utc>, Option<DateTime<Utc>>),
) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE session SET ended_at = $2, closing = $3, over_at = $4, version = version + 1 WHERE id = $1 AND ended_at IS NULL",
        session,
        now,
        closing,
        over
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// What the screens of a session can show of what happened when.
pub(super) async fn moments(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<(String, DateTime<Utc>)>> {
    let rows =
        sqlx::query!("SELECT kind, at FROM session_moment WHERE session_id = $1 ORDER BY at, id", session).fetch_all(&mut **tx).await?;
    Ok(rows.into_iter().map(|row| (row.kind, row.at)).collect())
}

/// `session_words`, sealed.
pub(super) struct SealedWords {
    pub location: Vec<u8>,
    pub call_back: Vec<u8>,
    pub resource: Vec<u8>,
    pub leaving_state: Vec<u8>,
    pub companion: Vec<u8>,
    pub next_contact: Vec<u8>,
    pub client_words: Vec<u8>,
    pub note: Vec<u8>,
}

/// The words of `session` at `version`, or the latest.
pub(super) async fn words(tx: &mut Tx, session: Uuid, version: Option<i32>) -> sqlx::Result<Option<(SealedWords, i32)>> {
    let row = sqlx::query!(
        "SELECT location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version
         FROM session_words WHERE session_id = $1 AND version = coalesce($2, version) ORDER BY version DESC LIMIT 1",
        session,
        version
    )
    .fetch_optional(&mut **tx)
    .await?;
    Ok(row.map(|r| {
        let sealed = SealedWords {
            location: r.location,
            call_back: r.call_back,
            resource: r.resource,
            leaving_state: r.leaving_state,
            companion: r.companion,
            next_contact: r.next_contact,
            client_words: r.client_words,
            note: r.note,
        };
        (sealed, r.version)
    }))
}

/// Who wrote each version of a session's words, and when; neither is known of those from before they were kept.
pub(super) struct WrittenRow {
    pub version: i32,
    pub by: Option<String>,
    pub at: Option<DateTime<Utc>>,
}

/// The versions of a session's words, the latest first.
pub(super) async fn versions(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<WrittenRow>> {
    sqlx::query_as!(
        WrittenRow,
        r#"SELECT w.version, w.written_at AS at, (SELECT m.name FROM access.members() m WHERE m.id = w.written_by) AS by
           FROM session_words w WHERE w.session_id = $1 ORDER BY w.version DESC"#,
        session
    )
    .fetch_all(&mut **tx)
    .await
}

/// Locks a session until the end of the transaction.
pub(super) async fn lock_session(tx: &mut Tx, session: Uuid) -> sqlx::Result<()> {
    sqlx::query_scalar!("SELECT id FROM session WHERE id = $1 FOR NO KEY UPDATE", session).fetch_one(&mut **tx).await?;
    Ok(())
}

/// Adds a version of a session's words.
pub(super) async fn insert_words(tx: &mut Tx, session: Uuid, words: &SealedWords, version: i32, now: DateTime<Utc>) -> sqlx::Result<()> {
    let done = sqlx::query!(
        "INSERT INTO session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact,
           client_words, note, version, written_by, written_at)
         SELECT id, client_id, $2, $3, $4, $5, $6, $7, $8, $9, $10, access.me(), $11 FROM session WHERE id = $1",
        session,
        words.location,
        words.call_back,
        words.resource,
        words.leaving_state,
        words.companion,
        words.next_contact,
        words.client_words,
        words.note,
        version,
        now
    )
    .execute(&mut **tx)
    .await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(sqlx::Error::RowNotFound) }
}

/// Whether a set of reprocessing was begun on `target` in `session`.
pub(super) async fn reprocessed_on(tx: &mut Tx, session: Uuid, target: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(
        r#"SELECT EXISTS (SELECT FROM stimulus_set WHERE session_id = $1 AND target_id = $2
             AND coalesce(plan->>'purpose', 'processing') = 'processing') AS "so!""#,
        session,
        target
    )
    .fetch_one(&mut **tx)
    .await
}

/// Turns `session` to `target`. False when its target is not `from` any more, or it has ended.
pub(super) async fn turn(tx: &mut Tx, session: Uuid, target: Uuid, from: Option<Uuid>) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT access.turn_session($1, $2, $3) AS "turned!""#, session, target, from as Option<Uuid>)
        .fetch_one(&mut **tx)
        .await
}

/// The target that a set was of.
pub(super) async fn target_of_set(tx: &mut Tx, set: Uuid) -> sqlx::Result<Option<Uuid>> {
    sqlx::query_scalar!("SELECT target_id FROM stimulus_set WHERE id = $1", set).fetch_one(&mut **tx).await
}

/// The other targets that sets of `session` were of, with the numbers of their sets.
pub(super) async fn other_targets(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<(Uuid, Vec<i32>)>> {
    let rows = sqlx::query!(
        r#"SELECT x.target_id AS "target!", array_agg(x.number ORDER BY x.number) AS "sets!" FROM stimulus_set x JOIN session s ON s.id = x.session_id
           WHERE s.id = $1 AND x.target_id IS DISTINCT FROM s.target_id AND x.target_id IS NOT NULL GROUP BY x.target_id ORDER BY min(x.number)"#,
        session
    )
    .fetch_all(&mut **tx)
    .await?;
    Ok(rows.into_iter().map(|row| (row.target, row.sets)).collect())
}
