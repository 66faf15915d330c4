//! SQL of schedules and askings, for those who treat.

use chrono::{DateTime, NaiveDate, Utc};
use leeward_core::measures::Measure;
use sqlx::PgConnection;
use uuid::Uuid;

use super::{Asking, Closed, ONLY_VERSION};
use crate::measures::Occasion;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field};
use crate::store::subject::Tx;

/// What is due for one client.
pub(super) struct DueRow {
    pub(super) client: Uuid,
    pub(super) occasion: String,
    pub(super) on: NaiveDate,
    pub(super) asked: bool,
}

/// Of `client`, or of all whom the asker treats: what has been due by `today` and not asked for, and what was asked for and is overdue.
/// Of a treatment that is over nothing is, ninety days after its day: nobody answers that any more (as `schedule_due` has it).
pub(super) async fn due(tx: &mut Tx, client: Option<Uuid>, today: NaiveDate) -> sqlx::Result<Vec<DueRow>> {
    sqlx::query_as!(
        DueRow,
        r#"SELECT c.id AS client, coalesce(a.occasion, s.due_for) AS "occasion!", coalesce(a.due_on, s.due_on) AS "on!", a.id IS NOT NULL AS "asked!"
           FROM client c LEFT JOIN schedule_due s ON s.client_id = c.id LEFT JOIN asking a ON a.client_id = c.id AND a.closed_at IS NULL
             LEFT JOIN episode e ON e.id = a.episode_id
           WHERE c.id IN (SELECT access.my_clients()) AND ($1::uuid IS NULL OR c.id = $1) AND c.archived_at IS NULL
             AND coalesce(a.due_on < $2 AND (e.ended_at IS NULL OR a.due_on + 90 > $2), s.due_on <= $2)"#,
        client,
        today
    )
    .fetch_all(&mut **tx)
    .await
}

pub(super) struct ScheduleRow {
    pub(super) measures: Vec<String>,
    pub(super) every: i16,
    pub(super) follow_up_weeks: Option<i16>,
    pub(super) version: i32,
    pub(super) due_for: Option<String>,
    pub(super) due_on: Option<NaiveDate>,
}

pub(super) async fn schedule(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<ScheduleRow>> {
    sqlx::query_as!(
        ScheduleRow,
        "SELECT s.measures, s.every, s.follow_up_weeks, s.version, d.due_for, d.due_on
         FROM schedule s JOIN schedule_due d ON d.client_id = s.client_id WHERE s.client_id = $1",
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Keeps a schedule; `version` 0: there was none. False: somebody changed it meanwhile.
pub(super) async fn set_schedule(
    tx: &mut Tx,
    client: Uuid,
    version: i32,
    (measures, every, follow_up_weeks): (&[String], i16, Option<i16>),
    now: DateTime<Utc>,
) -> sqlx::Result<bool> {
    let done = if version == 0 {
        sqlx::query!(
            "INSERT INTO schedule (client_id, measures, every, follow_up_weeks, set_at) VALUES ($1, $2, $3, $4, $5) ON CONFLICT DO NOTHING",
            client,
            measures,
            every,
            follow_up_weeks,
            now
        )
        .execute(&mut **tx)
        .await?
    } else {
        sqlx::query!(
            "UPDATE schedule SET measures = $3, every = $4, follow_up_weeks = $5, set_at = $6, version = version + 1
             WHERE client_id = $1 AND version = $2",
            client,
            version,
            measures,
            every,
            follow_up_weeks,
            now
        )
        .execute(&mut **tx)
        .await?
    };
    Ok(done.rows_affected() == 1)
}

/// How many questions the practice asks at once.
pub(super) async fn items_at_once(tx: &mut Tx) -> sqlx::Result<i16> {
    sqlx::query_scalar!("SELECT items_at_once FROM practice").fetch_one(&mut **tx).await
}

pub(super) struct AskingRow {
    id: Uuid,
    number: i32,
    occasion: String,
    measures: Vec<String>,
    handed_in: i64,
    asked_at: DateTime<Utc>,
    asked_by: Option<String>,
    from_at: DateTime<Utc>,
    due_on: NaiveDate,
    until_at: DateTime<Utc>,
    event: Vec<u8>,
    links: i32,
    link_holds: bool,
    closed_as: Option<String>,
    closed_at: Option<DateTime<Utc>>,
}

impl AskingRow {
    pub(super) fn open(self, key: &ClientKey) -> Result<Asking, Error> {
        let event = key.row(self.id, ONLY_VERSION).open(Field::AskingEvent, &self.event);
        let closed = match self.closed_as.zip(self.closed_at) {
            Some((how, at)) => Some((Closed::parse(&how).ok_or(Error::Inconsistent("asking.closed_as"))?, at)),
            None => None,
        };
        Ok(Asking {
            id: self.id,
            number: self.number,
            occasion: Occasion::parse(&self.occasion).ok_or(Error::Inconsistent("asking.occasion"))?,
            measures: measures(&self.measures)?,
            handed_in: usize::try_from(self.handed_in).unwrap_or_default(),
            asked_at: self.asked_at,
            asked_by: self.asked_by.unwrap_or_default(),
            from_at: self.from_at,
            due_on: self.due_on,
            until_at: self.until_at,
            event,
            links: self.links,
            link_holds: self.link_holds,
            closed,
        })
    }
}

/// The forms of these names.
pub(super) fn measures(names: &[String]) -> Result<Vec<Measure>, Error> {
    names.iter().map(|name| Measure::parse(name).ok_or(Error::Inconsistent("measures"))).collect()
}

/// All of `client`, the latest first.
pub(super) async fn askings(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<AskingRow>> {
    sqlx::query_as!(
        AskingRow,
        r#"SELECT a.id, a.number, a.occasion, a.measures,
             (SELECT count(DISTINCT r.measure) FROM response r WHERE r.asking_id = a.id AND r.by_client) AS "handed_in!", a.asked_at,
             (SELECT m.name FROM access.members() m WHERE m.id = a.asked_by) AS asked_by, a.from_at, a.due_on, a.until_at, w.event, a.links,
             a.link_holds, a.closed_as, a.closed_at
           FROM asking a JOIN asking_words w ON w.asking_id = a.id WHERE a.client_id = $1 ORDER BY a.number DESC"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// A new asking as it is kept.
pub(super) struct NewRow<'a> {
    pub(super) id: Uuid,
    pub(super) client: Uuid,
    pub(super) episode: Uuid,
    pub(super) occasion: Occasion,
    pub(super) measures: &'a [String],
    pub(super) from_at: DateTime<Utc>,
    pub(super) due_on: NaiveDate,
    pub(super) until_at: DateTime<Utc>,
    pub(super) now: DateTime<Utc>,
}

/// Adds one. The client's row is locked by then. False: another is open.
pub(super) async fn add(tx: &mut Tx, new: &NewRow<'_>, event: &[u8]) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO asking (id, client_id, episode_id, number, occasion, measures, asked_by, asked_at, from_at, due_on, until_at)
         SELECT $1, $2, $3, coalesce(max(a.number), 0) + 1, $4, $5, access.me(), $6, $7, $8, $9 FROM asking a WHERE a.client_id = $2
         HAVING count(*) FILTER (WHERE a.closed_at IS NULL) = 0",
        new.id,
        new.client,
        new.episode,
        new.occasion.name(),
        new.measures,
        new.now,
        new.from_at,
        new.due_on,
        new.until_at
    )
    .execute(&mut **tx)
    .await?;
    if done.rows_affected() == 0 {
        return Ok(false);
    }
    sqlx::query!("INSERT INTO asking_words (asking_id, client_id, event) VALUES ($1, $2, $3)", new.id, new.client, event)
        .execute(&mut **tx)
        .await?;
    Ok(true)
}

/// Takes back `asking` of `client`, which a page showed as open. False: it is not any more.
pub(super) async fn withdraw(tx: &mut Tx, client: Uuid, asking: Uuid, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE asking SET closed_as = 'withdrawn', closed_at = $3 WHERE client_id = $1 AND id = $2 AND closed_at IS NULL",
        client,
        asking,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Closes the one of `client` whose link has ended, if there is one.
pub(super) async fn close_ended(tx: &mut Tx, client: Uuid, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "UPDATE asking SET closed_as = 'withdrawn', closed_at = $2 WHERE client_id = $1 AND closed_at IS NULL AND until_at <= $2",
        client,
        now
    )
    .execute(&mut **tx)
    .await
    .map(drop)
}

/// Which asking of `client` is open; `None`: none is.
pub(super) async fn open_now(tx: &mut Tx, client: Uuid, now: DateTime<Utc>) -> sqlx::Result<Option<Uuid>> {
    sqlx::query_scalar!("SELECT id FROM asking WHERE client_id = $1 AND closed_at IS NULL AND until_at > $2", client, now)
        .fetch_optional(&mut **tx)
        .await
}

/// One more link of `asking` of `client`: the how-manieth. `None`: it is not open any more.
pub(super) async fn next_link(tx: &mut Tx, client: Uuid, asking: Uuid, now: DateTime<Utc>) -> sqlx::Result<Option<i32>> {
    sqlx::query_scalar!(
        "UPDATE asking SET links = links + 1 WHERE client_id = $1 AND id = $2 AND closed_at IS NULL AND until_at > $3 RETURNING links",
        client,
        asking,
        now
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Keeps the hash of a link's token; the one before it ends.
pub(super) async fn mint(tx: &mut Tx, errand: Uuid, hash: &[u8], asking: Uuid) -> sqlx::Result<()> {
    sqlx::query!("SELECT access.mint_errand($1, $2, $3)", errand, hash, asking).execute(&mut **tx).await.map(drop)
}

/// How many schedules there are, and those whose next day was kept otherwise than their record says: these are made anew. As the owner.
pub(super) async fn refold(db: &mut PgConnection) -> sqlx::Result<(i64, Vec<Uuid>)> {
    let all = sqlx::query_scalar!(r#"SELECT count(*) AS "all!" FROM schedule"#).fetch_one(&mut *db).await?;
    let different = sqlx::query_scalar!(
        "UPDATE schedule s SET due_for = f.due_for, due_on = f.due_on, then_for = f.then_for, then_on = f.then_on FROM schedule_fold f
         WHERE f.client_id = s.client_id
           AND (s.due_for, s.due_on, s.then_for, s.then_on) IS DISTINCT FROM (f.due_for, f.due_on, f.then_for, f.then_on) RETURNING s.client_id"
    )
    .fetch_all(&mut *db)
    .await?;
    Ok((all, different))
}
