//! SQL of the practice in figures: episodes and their measures, grouped. Every rule over them stands in Rust.

use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::store::subject::Tx;

/// What one week brought.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct WeekRow {
    /// Its Monday, in the practice's zone.
    pub(super) week: NaiveDate,
    pub(super) began: i64,
    pub(super) reprocessed: i64,
    pub(super) ended: i64,
}

/// Week by week, from `from` up to `until`; weeks in which nothing was are left out.
pub(super) async fn weeks(tx: &mut Tx, from: DateTime<Utc>, until: DateTime<Utc>) -> sqlx::Result<Vec<WeekRow>> {
    sqlx::query_as!(
        WeekRow,
        r#"SELECT date_trunc('week', at AT TIME ZONE (SELECT zone FROM practice))::date AS "week!", count(*) FILTER (WHERE what = 'began') AS "began!",
             count(*) FILTER (WHERE what = 'reprocessed') AS "reprocessed!", count(*) FILTER (WHERE what = 'ended') AS "ended!"
           FROM (
             SELECT 'began' AS what, started_at AS at FROM episode WHERE started_at >= $1 AND started_at < $2
             UNION ALL SELECT 'reprocessed', reprocessed_at FROM episode WHERE reprocessed_at >= $1 AND reprocessed_at < $2
             UNION ALL SELECT 'ended', ended_at FROM episode WHERE ended_at >= $1 AND ended_at < $2 AND started_at IS NOT NULL) e
           GROUP BY 1 ORDER BY 1"#,
        from,
        until
    )
    .fetch_all(&mut **tx)
    .await
}

/// Treatments that ended for one reason.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct EndRow {
    pub(super) reason: String,
    pub(super) count: i64,
    /// Of these, without any reprocessing.
    pub(super) never: i64,
}

/// Those that had begun and ended from `from` up to `until`, by reason.
pub(super) async fn ends(tx: &mut Tx, from: DateTime<Utc>, until: DateTime<Utc>) -> sqlx::Result<Vec<EndRow>> {
    sqlx::query_as!(
        EndRow,
        r#"SELECT reason AS "reason!", count(*) AS "count!", count(*) FILTER (WHERE reprocessed_at IS NULL) AS "never!"
           FROM episode WHERE ended_at >= $1 AND ended_at < $2 AND started_at IS NOT NULL GROUP BY reason"#,
        from,
        until
    )
    .fetch_all(&mut **tx)
    .await
}

/// How many were in treatment at `at`, and how many of them had no reprocessing yet.
pub(super) async fn in_treatment(tx: &mut Tx, at: DateTime<Utc>) -> sqlx::Result<(i64, i64)> {
    let row = sqlx::query!(
        r#"SELECT count(*) AS "all!", count(*) FILTER (WHERE reprocessed_at IS NULL OR reprocessed_at >= $1) AS "not_yet!"
           FROM episode WHERE started_at < $1 AND (ended_at IS NULL OR ended_at >= $1)"#,
        at
    )
    .fetch_one(&mut **tx)
    .await?;
    Ok((row.all, row.not_yet))
}

/// People with the same totals of one measure.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct GroupRow {
    pub(super) measure: String,
    pub(super) first: f64,
    pub(super) last: f64,
    pub(super) end: Option<f64>,
    pub(super) count: i64,
}

/// Of the treatments that had begun and ended from `from` up to `until`: the totals that each measure has, and how many have the same.
pub(super) async fn groups(tx: &mut Tx, from: DateTime<Utc>, until: DateTime<Utc>) -> sqlx::Result<Vec<GroupRow>> {
    sqlx::query_as!(
        GroupRow,
        r#"SELECT m.measure, m.first_total AS first, m.last_total AS last, m.end_total AS end, count(*) AS "count!"
           FROM episode e JOIN episode_measure m ON m.episode_id = e.id
           WHERE e.ended_at >= $1 AND e.ended_at < $2 AND e.started_at IS NOT NULL GROUP BY 1, 2, 3, 4"#,
        from,
        until
    )
    .fetch_all(&mut **tx)
    .await
}

/// A quarter that was frozen, without its figures.
pub(super) struct SnapshotRow {
    pub(super) id: Uuid,
    pub(super) first_day: NaiveDate,
    pub(super) last_day: NaiveDate,
    pub(super) made_at: DateTime<Utc>,
    pub(super) made_by: Option<String>,
}

/// All of them, the latest first.
pub(super) async fn snapshots(tx: &mut Tx) -> sqlx::Result<Vec<SnapshotRow>> {
    sqlx::query_as!(
        SnapshotRow,
        "SELECT id, first_day, last_day, made_at, (SELECT m.name FROM access.members() m WHERE m.id = s.made_by) AS made_by
         FROM practice_snapshot s ORDER BY first_day DESC"
    )
    .fetch_all(&mut **tx)
    .await
}

/// The figures of one.
pub(super) async fn snapshot(tx: &mut Tx, id: Uuid) -> sqlx::Result<Option<serde_json::Value>> {
    sqlx::query_scalar!("SELECT figures FROM practice_snapshot WHERE id = $1", id).fetch_optional(&mut **tx).await
}

/// Keeps one; false: that quarter was frozen already.
pub(super) async fn add_snapshot(
    tx: &mut Tx,
    id: Uuid,
    (first, last): (NaiveDate, NaiveDate),
    now: DateTime<Utc>,
    figures: &serde_json::Value,
) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO practice_snapshot (id, first_day, last_day, made_at, made_by, figures) SELECT $1, $2, $3, $4, access.me(), $5
         ON CONFLICT (first_day) DO NOTHING",
        id,
        first,
        last,
        now,
        figures
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Whether leads may open single courses by record.
pub(super) async fn single_courses(tx: &mut Tx) -> sqlx::Result<bool> {
    sqlx::query_scalar!("SELECT single_courses FROM practice").fetch_one(&mut **tx).await
}
