//! SQL of what needs a person today, for the lead: records and days, never why. Of each list the first `named` records, and how many it has.

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

use crate::store::database::hold_folds;
use crate::store::subject::Tx;

/// One record in a list, with the days that it waits for somebody already.
pub(super) struct WaitingRow {
    /// How many the list has.
    pub(super) all: i64,
    pub(super) client: Uuid,
    pub(super) record: i32,
    pub(super) days: i32,
}

/// Sessions that were opened before `before` and not closed.
pub(super) async fn unclosed(tx: &mut Tx, before: DateTime<Utc>, now: DateTime<Utc>, named: i64) -> sqlx::Result<Vec<WaitingRow>> {
    sqlx::query_as!(
        WaitingRow,
        r#"SELECT count(*) OVER () AS "all!", s.client_id AS client, c.number AS record, extract(day FROM $2 - s.opened_at)::integer AS "days!"
           FROM session s JOIN client c ON c.id = s.client_id
           WHERE s.ended_at IS NULL AND s.opened_at < $1 AND s.client_id NOT IN (SELECT access.rehearsals()) ORDER BY s.opened_at LIMIT $3"#,
        before,
        now,
        named
    )
    .fetch_all(&mut **tx)
    .await
}

/// Calls after a session that were to be made by now, since `since`; whoever was in a session later was seen. Tries are counted, one call at a time: asked
/// whether there are none, Postgres joins all tries of the practice.
pub(super) async fn calls(tx: &mut Tx, since: DateTime<Utc>, now: DateTime<Utc>, named: i64) -> sqlx::Result<Vec<WaitingRow>> {
    sqlx::query_as!(
        WaitingRow,
        r#"SELECT count(*) OVER () AS "all!", a.client_id AS client, c.number AS record, extract(day FROM $2 - a.due_until)::integer AS "days!"
           FROM after_check a JOIN session e ON e.id = a.session_id JOIN client c ON c.id = a.client_id
           WHERE a.due_until >= $1 AND a.due_until < $2
             AND (SELECT count(*) FROM after_check_try y WHERE y.session_id = a.session_id AND y.outcome <> 'not_reached') = 0
             AND NOT EXISTS (SELECT FROM session later WHERE later.client_id = a.client_id AND later.seq > e.seq AND later.admitted_at IS NOT NULL)
             AND c.archived_at IS NULL
             AND a.client_id NOT IN (SELECT access.rehearsals()) ORDER BY a.due_until LIMIT $3"#,
        since,
        now,
        named
    )
    .fetch_all(&mut **tx)
    .await
}

/// A flag that is open for longer than the practice wants.
pub(super) struct FlagRow {
    /// How many the list has.
    pub(super) all: i64,
    pub(super) client: Uuid,
    pub(super) record: i32,
    pub(super) days: i32,
    /// How many of those who treat the client had it on screen.
    pub(super) told: i64,
}

pub(super) async fn flags(tx: &mut Tx, named: i64) -> sqlx::Result<Vec<FlagRow>> {
    sqlx::query_as!(
        FlagRow,
        r#"SELECT count(*) OVER () AS "all!", f.client_id AS "client!", c.number AS record, f.days_late AS "days!", f.told AS "told!"
           FROM access.flags_past_time() f JOIN client c ON c.id = f.client_id ORDER BY f.days_late DESC, c.number LIMIT $1"#,
        named
    )
    .fetch_all(&mut **tx)
    .await
}

/// Forms that were asked for and hoped for before `today`, or due before `due_before` and not asked for; after the end of a treatment, for ninety days.
pub(super) async fn forms(tx: &mut Tx, today: NaiveDate, due_before: NaiveDate, named: i64) -> sqlx::Result<Vec<WaitingRow>> {
    sqlx::query_as!(
        WaitingRow,
        r#"SELECT count(*) OVER () AS "all!", w.client_id AS "client!", c.number AS record, ($1::date - w.day)::integer AS "days!"
           FROM (
             SELECT a.client_id, a.due_on AS day FROM asking a JOIN episode e ON e.id = a.episode_id
             WHERE a.closed_at IS NULL AND a.due_on < $1 AND (e.ended_at IS NULL OR a.due_on + 90 > $1)
             UNION ALL
             SELECT s.client_id, s.due_on FROM schedule_due s WHERE s.folded_on < $2 AND s.due_on < $2
               AND NOT EXISTS (SELECT FROM asking a WHERE a.client_id = s.client_id AND a.closed_at IS NULL)) w
           JOIN client c ON c.id = w.client_id WHERE c.archived_at IS NULL ORDER BY w.day, c.number LIMIT $3"#,
        today,
        due_before,
        named
    )
    .fetch_all(&mut **tx)
    .await
}

/// A record with a course that has not moved.
pub(super) struct StillRow {
    /// How many the list has.
    pub(super) all: i64,
    pub(super) client: Uuid,
    pub(super) record: i32,
}

/// Of targets that are worked on, in treatments that go on.
pub(super) async fn still(tx: &mut Tx, named: i64) -> sqlx::Result<Vec<StillRow>> {
    sqlx::query_as!(
        StillRow,
        r#"SELECT count(*) OVER () AS "all!", c.id AS client, c.number AS record
           FROM (
             SELECT DISTINCT s.client_id FROM target_still s JOIN episode e ON e.client_id = s.client_id AND e.ended_at IS NULL
               JOIN target_course t ON t.target_id = s.target_id JOIN target g ON g.id = s.target_id
             WHERE s.still AND t.state NOT IN ('complete', 'reduced') AND g.archived_at IS NULL) w
           JOIN client c ON c.id = w.client_id WHERE c.archived_at IS NULL ORDER BY c.number LIMIT $1"#,
        named
    )
    .fetch_all(&mut **tx)
    .await
}

/// How many courses there are, and those that were kept otherwise than their ratings say: these are made anew. As the owner.
pub(super) async fn refold(db: &mut PgConnection) -> sqlx::Result<(i64, Vec<Uuid>)> {
    let all = sqlx::query_scalar!(r#"SELECT count(*) AS "all!" FROM target_still_fold"#).fetch_one(&mut *db).await?;
    let different = sqlx::query_scalar!(
        r#"SELECT coalesce(k.target_id, f.target_id) AS "target!" FROM target_still k FULL JOIN target_still_fold f ON f.target_id = k.target_id
           WHERE (k.client_id, k.still) IS DISTINCT FROM (f.client_id, f.still)"#
    )
    .fetch_all(&mut *db)
    .await?;
    hold_folds(db, &different).await?;
    sqlx::query!("DELETE FROM target_still WHERE target_id = ANY($1)", &different).execute(&mut *db).await?;
    sqlx::query!(
        "INSERT INTO target_still (target_id, client_id, still) SELECT target_id, client_id, still FROM target_still_fold WHERE target_id = ANY($1)",
        &different
    )
    .execute(db)
    .await?;
    Ok((all, different))
}
