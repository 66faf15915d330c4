//! SQL of closings that are being typed.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

/// A row of `closing_draft`.
pub(super) struct DraftRow {
    pub typed: Vec<u8>,
    pub version: i32,
}

pub(super) async fn draft(tx: &mut Tx, session: Uuid) -> sqlx::Result<Option<DraftRow>> {
    sqlx::query_as!(DraftRow, "SELECT typed, version FROM closing_draft WHERE session_id = $1", session).fetch_optional(&mut **tx).await
}

/// Keeps a draft at this version. False when it is not at the one before any more.
pub(super) async fn keep(tx: &mut Tx, session: Uuid, typed: &[u8], (version, at): (i32, DateTime<Utc>)) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO closing_draft AS d (session_id, client_id, typed, written_by, written_at, version)
         SELECT id, client_id, $2, access.me(), $3, $4 FROM session WHERE id = $1
         ON CONFLICT (session_id) DO UPDATE SET (typed, written_by, written_at, version)
           = (EXCLUDED.typed, EXCLUDED.written_by, EXCLUDED.written_at, EXCLUDED.version)
           WHERE d.version = EXCLUDED.version - 1",
        session,
        typed,
        at,
        version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Whether a set of reprocessing was begun in `session`.
pub(super) async fn has_reprocessed(tx: &mut Tx, session: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(
        r#"SELECT EXISTS (SELECT FROM stimulus_set WHERE session_id = $1 AND coalesce(plan->>'purpose', 'processing') = 'processing') AS "so!""#,
        session
    )
    .fetch_one(&mut **tx)
    .await
}

/// When anything was written down about `session` last: a set, an entry, or something that happened beside them.
pub(super) async fn last_sign(tx: &mut Tx, session: Uuid) -> sqlx::Result<Option<DateTime<Utc>>> {
    sqlx::query_scalar!(
        r#"SELECT max(at) FROM (
             SELECT recorded_at AS at FROM stimulus_set WHERE session_id = $1
             UNION ALL SELECT at FROM session_moment WHERE session_id = $1 UNION ALL SELECT at FROM rating WHERE session_id = $1
             UNION ALL SELECT at FROM fact WHERE session_id = $1 UNION ALL SELECT at FROM hour_fact WHERE session_id = $1
             UNION ALL SELECT at FROM process_note WHERE session_id = $1) signs"#,
        session
    )
    .fetch_one(&mut **tx)
    .await
}

/// Whom a client can call between sessions, in the practice's words.
pub(super) async fn crisis_words(tx: &mut Tx) -> sqlx::Result<String> {
    sqlx::query_scalar!("SELECT crisis_words FROM practice").fetch_one(&mut **tx).await
}
