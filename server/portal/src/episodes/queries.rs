//! SQL of courses of treatment.

use chrono::{DateTime, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

use super::{End, Episode, Reason};
use crate::store::database::hold_folds;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// All of `client`, the first first.
pub(super) async fn episodes(tx: &mut Tx, client: Uuid) -> Result<Vec<Episode>, Error> {
    let rows = sqlx::query!(
        r#"SELECT id, number, begun_at, started_at, reprocessed_at, last_at, sessions, ended_at, reason, version,
             (SELECT m.name FROM access.members() m WHERE m.id = e.judged_by) AS "judged_by?"
           FROM episode e WHERE client_id = $1 ORDER BY number"#,
        client
    )
    .fetch_all(&mut **tx)
    .await?;
    rows.into_iter()
        .map(|row| {
            let end = match (row.ended_at, row.reason) {
                (Some(at), Some(reason)) => Some(End {
                    at,
                    reason: Reason::parse(&reason).ok_or(Error::Inconsistent("episode.reason"))?,
                    judged_by: row.judged_by.unwrap_or_default(),
                }),
                _ => None,
            };
            Ok(Episode {
                id: row.id,
                number: row.number,
                begun_at: row.begun_at,
                started_at: row.started_at,
                reprocessed_at: row.reprocessed_at,
                last_at: row.last_at,
                sessions: row.sessions,
                end,
                version: row.version,
            })
        })
        .collect()
}

pub(super) async fn weeks_without(tx: &mut Tx) -> sqlx::Result<i16> {
    sqlx::query_scalar!("SELECT weeks_without FROM practice").fetch_one(&mut **tx).await
}

/// Opens one where none is open. The client's row is locked by then.
pub(super) async fn begin(tx: &mut Tx, id: Uuid, client: Uuid, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO episode (id, client_id, number, begun_at)
         SELECT $1, $2, coalesce(max(number), 0) + 1, $3 FROM episode WHERE client_id = $2 HAVING count(*) FILTER (WHERE ended_at IS NULL) = 0",
        id,
        client,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Whether a session of it is open.
pub(super) async fn in_session(tx: &mut Tx, episode: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM session WHERE episode_id = $1 AND ended_at IS NULL) AS "so!""#, episode)
        .fetch_one(&mut **tx)
        .await
}

/// Whether a form of it stands.
pub(super) async fn has_form(tx: &mut Tx, episode: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM standing_response WHERE episode_id = $1) AS "so!""#, episode)
        .fetch_one(&mut **tx)
        .await
}

/// Says how it ended, or that it goes on, where it still stands as in `version`; `None`: it does not.
pub(super) async fn end(tx: &mut Tx, episode: Uuid, version: i32, end: Option<(DateTime<Utc>, Reason)>) -> sqlx::Result<bool> {
    let (at, reason) = end.map_or((None, None), |(at, reason)| (Some(at), Some(reason.name())));
    let done = sqlx::query!(
        "UPDATE episode SET ended_at = $3, reason = $4, judged_by = CASE WHEN $4::text IS NOT NULL THEN access.me() END, version = version + 1
         WHERE id = $1 AND version = $2",
        episode,
        version,
        at,
        reason
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Of how many episodes what is kept of their sessions is another than these make of it, and how many there are: these are made anew.
pub(super) async fn refold(db: &mut PgConnection) -> sqlx::Result<(i64, Vec<Uuid>)> {
    let all = sqlx::query_scalar!(r#"SELECT count(*) AS "all!" FROM episode"#).fetch_one(&mut *db).await?;
    let different = sqlx::query_scalar!(
        "SELECT e.id FROM episode e JOIN episode_fold f ON f.id = e.id
         WHERE (e.started_at, e.reprocessed_at, e.last_at, e.sessions) IS DISTINCT FROM (f.started_at, f.reprocessed_at, f.last_at, f.sessions)"
    )
    .fetch_all(&mut *db)
    .await?;
    hold_folds(db, &different).await?;
    sqlx::query!(
        "UPDATE episode e SET started_at = f.started_at, reprocessed_at = f.reprocessed_at, last_at = f.last_at, sessions = f.sessions
         FROM episode_fold f WHERE f.id = e.id AND e.id = ANY($1)",
        &different
    )
    .execute(db)
    .await?;
    Ok((all, different))
}
