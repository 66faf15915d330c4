//! SQL of the calls after sessions.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::error::Error;
use crate::store::subject::Tx;

/// A row of `after_check`.
pub(super) struct CheckRow {
    pub reason: String,
    pub by: String,
    pub due_from: DateTime<Utc>,
    pub due_until: DateTime<Utc>,
}

pub(super) async fn check(tx: &mut Tx, session: Uuid) -> sqlx::Result<Option<CheckRow>> {
    sqlx::query_as!(
        CheckRow,
        r#"SELECT reason, (SELECT m.name FROM access.members() m WHERE m.id = a.member_id) AS "by!", due_from, due_until
           FROM after_check a WHERE session_id = $1"#,
        session
    )
    .fetch_optional(&mut **tx)
    .await
}

/// A call that is agreed and not made, with its session.
pub(super) struct AgreedRow {
    pub session: Uuid,
    pub number: i32,
    pub reason: String,
    pub due_from: DateTime<Utc>,
    pub due_until: DateTime<Utc>,
}

/// The call that is to be made next of those agreed with `client`. Whoever was in a session since was seen.
pub(super) async fn agreed(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<AgreedRow>> {
    sqlx::query_as!(
        AgreedRow,
        r#"SELECT a.session_id AS session, e.number, a.reason, a.due_from, a.due_until FROM after_check a JOIN session e ON e.id = a.session_id
           WHERE a.client_id = $1
             AND NOT EXISTS (SELECT FROM after_check_try y WHERE y.session_id = a.session_id AND y.outcome <> 'not_reached')
             AND NOT EXISTS (SELECT FROM session later WHERE later.client_id = a.client_id AND later.seq > e.seq
               AND later.took_place AND (later.admitted_at IS NOT NULL OR later.ended_at IS NOT NULL))
           ORDER BY a.due_until LIMIT 1"#,
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// A row of `after_check_try`.
pub(super) struct TryRow {
    pub outcome: String,
    pub at: DateTime<Utc>,
    pub by: String,
}

/// What was tried, first to last.
pub(super) async fn tries(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<TryRow>> {
    sqlx::query_as!(
        TryRow,
        r#"SELECT outcome, at, (SELECT m.name FROM access.members() m WHERE m.id = t.entered_by) AS "by!"
           FROM after_check_try t WHERE session_id = $1 ORDER BY seq"#,
        session
    )
    .fetch_all(&mut **tx)
    .await
}

/// Whether the clinician stopped in `session` because it was too much.
pub(super) async fn was_too_much(tx: &mut Tx, session: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM standing_fact WHERE session_id = $1 AND kind = 'too_much') AS "so!""#, session)
        .fetch_one(&mut **tx)
        .await
}

/// Whether risk was said to be present at the opening of `session`: what was said last counts.
pub(super) async fn was_risk(tx: &mut Tx, session: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(
        r#"SELECT coalesce((SELECT code = 'acute' FROM standing_hour_fact
             WHERE session_id = $1 AND kind = 'answered' AND code IN ('nothing_new', 'plan_stands', 'acute') ORDER BY seq DESC LIMIT 1), false) AS "so!""#,
        session
    )
    .fetch_one(&mut **tx)
    .await
}

/// Whether `session` reprocessed, and no session of its client did before.
pub(super) async fn is_first(tx: &mut Tx, session: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(
        r#"SELECT count(*) FILTER (WHERE x.session_id = $1) > 0 AND count(*) FILTER (WHERE x.session_id <> $1) = 0 AS "first!"
           FROM session s JOIN stimulus_set x ON x.client_id = s.client_id AND x.target_id IS NOT NULL
             AND coalesce(x.plan->>'purpose', 'processing') = 'processing'
           WHERE s.id = $1"#,
        session
    )
    .fetch_one(&mut **tx)
    .await
}

/// Within which hours after a session its client is called.
pub(super) async fn window(tx: &mut Tx) -> sqlx::Result<(i16, i16)> {
    let row = sqlx::query!("SELECT check_from, check_until FROM practice").fetch_one(&mut **tx).await?;
    Ok((row.check_from, row.check_until))
}

/// Agrees a call by the one who closes the session; one that was agreed stays as it is.
pub(super) async fn agree(tx: &mut Tx, session: Uuid, reason: &str, from: DateTime<Utc>, until: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO after_check (session_id, client_id, member_id, reason, due_from, due_until)
         SELECT id, client_id, access.me(), $2, $3, $4 FROM session WHERE id = $1 ON CONFLICT DO NOTHING",
        session,
        reason,
        from,
        until
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Keeps what came of a call.
pub(super) async fn tried(tx: &mut Tx, id: Uuid, session: Uuid, outcome: &str, now: DateTime<Utc>) -> Result<(), Error> {
    let done = sqlx::query!(
        "INSERT INTO after_check_try (id, session_id, client_id, outcome, entered_by, at)
         SELECT $1, session_id, client_id, $3, access.me(), $4 FROM after_check WHERE session_id = $2",
        id,
        session,
        outcome,
        now
    )
    .execute(&mut **tx)
    .await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("after_check_try")) }
}
