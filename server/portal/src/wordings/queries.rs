//! SQL of the wording of forms.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

/// Names of the forms that have one in use.
pub(super) async fn in_use(tx: &mut Tx) -> sqlx::Result<Vec<String>> {
    sqlx::query_scalar!("SELECT measure FROM wording WHERE checked_at IS NOT NULL AND ended_at IS NULL").fetch_all(&mut **tx).await
}

/// One that is in use, or waits to be looked at.
pub(super) struct WordingRow {
    pub(super) id: Uuid,
    pub(super) measure: String,
    pub(super) body: serde_json::Value,
    pub(super) loaded_at: DateTime<Utc>,
    pub(super) loaded_by: Option<String>,
    pub(super) checked_at: Option<DateTime<Utc>>,
    pub(super) checked_by: Option<String>,
}

/// All that have not ended.
pub(super) async fn standing(tx: &mut Tx) -> sqlx::Result<Vec<WordingRow>> {
    sqlx::query_as!(
        WordingRow,
        "SELECT w.id, w.measure, w.body, w.loaded_at, (SELECT m.name FROM access.members() m WHERE m.id = w.loaded_by) AS loaded_by,
           w.checked_at, (SELECT m.name FROM access.members() m WHERE m.id = w.checked_by) AS checked_by
         FROM wording w WHERE w.ended_at IS NULL ORDER BY w.loaded_at"
    )
    .fetch_all(&mut **tx)
    .await
}

pub(super) async fn drop_unchecked(tx: &mut Tx, measure: &str, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!("UPDATE wording SET ended_at = $2 WHERE measure = $1 AND checked_at IS NULL AND ended_at IS NULL", measure, now)
        .execute(&mut **tx)
        .await
        .map(drop)
}

pub(super) async fn add(tx: &mut Tx, id: Uuid, measure: &str, body: &serde_json::Value, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!("INSERT INTO wording (id, measure, body, loaded_by, loaded_at) SELECT $1, $2, $3, access.me(), $4", id, measure, body, now)
        .execute(&mut **tx)
        .await
        .map(drop)
}

/// Ends whichever is in use, where one is: another takes its place.
pub(super) async fn end_used(tx: &mut Tx, measure: &str, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!("UPDATE wording SET ended_at = $2 WHERE measure = $1 AND checked_at IS NOT NULL AND ended_at IS NULL", measure, now)
        .execute(&mut **tx)
        .await
        .map(drop)
}

/// Ends the one that a page showed as in use. False: it is not any more.
pub(super) async fn end(tx: &mut Tx, id: Uuid, measure: &str, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE wording SET ended_at = $3 WHERE id = $1 AND measure = $2 AND checked_at IS NOT NULL AND ended_at IS NULL",
        id,
        measure,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// False: it is not there to be used, or was used already.
pub(super) async fn put_to_use(tx: &mut Tx, id: Uuid, measure: &str, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE wording SET checked_by = access.me(), checked_at = $3
         WHERE id = $1 AND measure = $2 AND checked_at IS NULL AND ended_at IS NULL",
        id,
        measure,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
