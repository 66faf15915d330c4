//! SQL of forms that were filled in, and of the flags that they raised.

use chrono::{DateTime, Utc};
use leeward_core::measures::{Measure, Score};
use sqlx::PgConnection;
use uuid::Uuid;

use super::{Filled, ONLY_VERSION, Occasion, Response};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field};
use crate::store::subject::Tx;

pub(super) struct ResponseRow {
    id: Uuid,
    number: i32,
    measure: String,
    episode: i32,
    occasion: String,
    answered_at: DateTime<Utc>,
    total: Option<f64>,
    prorated: bool,
    points: Option<i16>,
    rules: i16,
    by_client: bool,
    by: Option<String>,
    corrects: Option<i32>,
    answers: Vec<u8>,
    event: Vec<u8>,
}

impl ResponseRow {
    pub(super) fn open(self, key: &ClientKey) -> Result<Response, Error> {
        let row = key.row(self.id, ONLY_VERSION);
        Ok(Response {
            id: self.id,
            number: self.number,
            measure: Measure::parse(&self.measure).ok_or(Error::Inconsistent("response.measure"))?,
            episode: self.episode,
            occasion: Occasion::parse(&self.occasion).ok_or(Error::Inconsistent("response.occasion"))?,
            answered_at: self.answered_at,
            total: self.total,
            prorated: self.prorated,
            points: self.points,
            rules: self.rules,
            by_client: self.by_client,
            by: self.by.unwrap_or_else(|| "the client".to_owned()),
            corrects: self.corrects,
            answers: row.open(Field::ResponseAnswers, &self.answers),
            event: row.open(Field::ResponseEvent, &self.event),
        })
    }
}

/// All of `client` that stand, the first answered first.
pub(super) async fn responses(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<ResponseRow>> {
    sqlx::query_as!(
        ResponseRow,
        r#"SELECT r.id AS "id!", r.number AS "number!", r.measure AS "measure!", e.number AS episode, r.occasion AS "occasion!",
             r.answered_at AS "answered_at!", r.total, r.prorated AS "prorated!", r.points, r.rules AS "rules!", r.by_client AS "by_client!",
             (SELECT m.name FROM access.members() m WHERE m.id = r.entered_by) AS by, before.number AS "corrects?", a.answers, a.event
           FROM standing_response r JOIN episode e ON e.id = r.episode_id JOIN response_answers a ON a.response_id = r.id
           LEFT JOIN response before ON before.id = r.replaces
           WHERE r.client_id = $1 ORDER BY r.answered_at, r.number"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// The points that the practice chose: of the PCL-5, and of the five-item anxiety scale.
pub(super) async fn points(tx: &mut Tx) -> sqlx::Result<(i16, i16)> {
    let row = sqlx::query!("SELECT points_pcl5, points_anxiety5 FROM practice").fetch_one(&mut **tx).await?;
    Ok((row.points_pcl5, row.points_anxiety5))
}

/// Whom a client can call between sessions, in the practice's words.
pub(super) async fn crisis_words(tx: &mut Tx) -> sqlx::Result<String> {
    sqlx::query_scalar!("SELECT crisis_words FROM practice").fetch_one(&mut **tx).await
}

/// A form that was asked for by link and did not come.
pub(super) struct Missed {
    pub(super) measure: String,
    /// When the client declined, or when the link ended.
    pub(super) at: DateTime<Utc>,
    pub(super) declined: bool,
}

/// All of `client`. What a clinician took back in time was not missed.
pub(super) async fn missed(tx: &mut Tx, client: Uuid, now: DateTime<Utc>) -> sqlx::Result<Vec<Missed>> {
    sqlx::query_as!(
        Missed,
        r#"SELECT m.measure AS "measure!", CASE WHEN a.closed_as = 'declined' THEN a.closed_at ELSE a.until_at END AS "at!",
             coalesce(a.closed_as = 'declined', false) AS "declined!"
           FROM asking a, unnest(a.measures) m(measure)
           WHERE a.client_id = $1 AND (a.closed_as = 'declined' OR coalesce(a.closed_at, $2) >= a.until_at)
             AND NOT EXISTS (SELECT FROM response r WHERE r.asking_id = a.id AND r.measure = m.measure)"#,
        client,
        now
    )
    .fetch_all(&mut **tx)
    .await
}

/// A form that is to be corrected or taken back.
pub(super) struct Kept {
    pub(super) id: Uuid,
    pub(super) episode: Uuid,
    pub(super) points: Option<i16>,
    /// Another has taken its place, or it was taken back.
    pub(super) replaced: bool,
    /// It raised a flag that is open.
    pub(super) flagged: bool,
}

impl Kept {
    /// Why it can be neither corrected nor taken back; `None`: it can. The page offers by it what the routes then accept.
    pub(super) const fn bound(&self) -> Option<&'static str> {
        if self.replaced {
            return Some("This form was corrected or taken back already. Open the list of forms and look.");
        }
        if self.flagged {
            return Some("Its flag is open. Write down first what was done about it; then the form can be corrected or taken back.");
        }
        None
    }

    /// # Errors
    /// [`Error::Conflict`] with what [`bound`](Self::bound) says.
    pub(super) fn must_be_free(&self) -> Result<(), Error> {
        self.bound().map_or(Ok(()), |why| Err(Error::Conflict(why)))
    }
}

pub(super) async fn kept(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<Kept>> {
    sqlx::query_as!(
        Kept,
        r#"SELECT r.id, r.episode_id AS episode, r.points,
             EXISTS (SELECT FROM response later WHERE later.replaces = r.id) AS "replaced!",
             EXISTS (SELECT FROM risk_flag f WHERE f.response_id = r.id AND f.done IS NULL) AS "flagged!"
           FROM response r WHERE r.client_id = $1 AND r.number = $2 AND NOT r.withdrawn"#,
        client,
        number
    )
    .fetch_optional(&mut **tx)
    .await
}

/// What is kept of a form.
pub(super) struct New<'a> {
    pub(super) id: Uuid,
    pub(super) client: Uuid,
    pub(super) episode: Uuid,
    pub(super) filled: &'a Filled,
    pub(super) score: &'a Score,
    pub(super) points: Option<i16>,
    pub(super) replaces: Option<Uuid>,
    pub(super) now: DateTime<Utc>,
}

/// Adds one; its number. The client's row is locked by then, so that numbers are given, and forms corrected, one at a time.
pub(super) async fn add(tx: &mut Tx, new: &New<'_>, answers: &[u8], event: &[u8]) -> Result<i32, Error> {
    let Filled { measure, occasion, answered_at, .. } = new.filled;
    let number = sqlx::query_scalar!(
        "INSERT INTO response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, replaces,
           entered_by, kept_at)
         SELECT $1, $2, $3, coalesce(max(r.number), 0) + 1, $4, $5, $6, $7, $8, $9, $10, $11, access.me(), $12
         FROM response r WHERE r.client_id = $2 RETURNING number",
        new.id,
        new.client,
        new.episode,
        measure.name(),
        measure.form().rules,
        occasion.name(),
        answered_at,
        new.score.total,
        new.score.prorated,
        new.points,
        new.replaces,
        new.now
    )
    .fetch_one(&mut **tx)
    .await?;
    sqlx::query!(
        "INSERT INTO response_answers (response_id, client_id, answers, event) VALUES ($1, $2, $3, $4)",
        new.id,
        new.client,
        answers,
        event
    )
    .execute(&mut **tx)
    .await?;
    Ok(number)
}

/// What is kept of a form that a client hands in.
pub(super) struct HandedRow<'a> {
    pub(super) id: Uuid,
    pub(super) measure: Measure,
    pub(super) wording: Uuid,
    pub(super) score: &'a Score,
    pub(super) points: Option<i16>,
    pub(super) says: Option<&'a str>,
    pub(super) follows: i32,
    pub(super) page: Uuid,
}

/// Keeps it, for the errand that asks. False: it was handed in already, its time is not now, or another draft stands.
pub(super) async fn hand_in(tx: &mut Tx, row: &HandedRow<'_>, answers: &[u8], event: &[u8]) -> sqlx::Result<bool> {
    sqlx::query_scalar!(
        r#"SELECT access.hand_in($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12) AS "done!""#,
        row.id,
        row.measure.name(),
        row.wording,
        row.measure.form().rules,
        row.score.total,
        row.score.prorated,
        row.points,
        answers,
        event,
        row.says,
        row.follows,
        row.page
    )
    .fetch_one(&mut **tx)
    .await
}

/// Takes one back: it counts no more, and stays readable to whoever looks into the database.
pub(super) async fn withdraw(tx: &mut Tx, id: Uuid, of: Uuid, now: DateTime<Utc>) -> Result<(), Error> {
    let done = sqlx::query!(
        "INSERT INTO response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, prorated, replaces, withdrawn,
           entered_by, kept_at)
         SELECT $1, r.client_id, r.episode_id, (SELECT max(number) + 1 FROM response WHERE client_id = r.client_id), r.measure, r.rules, r.occasion,
           r.answered_at, false, r.id, true, access.me(), $3 FROM response r WHERE r.id = $2",
        id,
        of,
        now
    )
    .execute(&mut **tx)
    .await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("response")) }
}

pub(super) async fn raise(tx: &mut Tx, response: Uuid, client: Uuid, says: &str, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!("INSERT INTO risk_flag (response_id, client_id, says, raised_at) VALUES ($1, $2, $3, $4)", response, client, says, now)
        .execute(&mut **tx)
        .await?;
    Ok(())
}

/// A row of `risk_flag`.
pub(super) struct FlagRow {
    pub(super) says: String,
    pub(super) raised_at: DateTime<Utc>,
    pub(super) done: Option<String>,
    pub(super) done_at: Option<DateTime<Utc>>,
    pub(super) done_by: Option<String>,
}

pub(super) async fn flag(tx: &mut Tx, response: Uuid) -> sqlx::Result<Option<FlagRow>> {
    sqlx::query_as!(
        FlagRow,
        "SELECT says, raised_at, done, done_at, (SELECT m.name FROM access.members() m WHERE m.id = f.done_by) AS done_by
         FROM risk_flag f WHERE response_id = $1",
        response
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Who was told of a flag.
pub(super) struct ToldRow {
    pub(super) name: Option<String>,
    pub(super) at: DateTime<Utc>,
    pub(super) by_mail: bool,
}

/// Everybody who was told of the flag of `response`, on screen or by mail, the first first.
pub(super) async fn all_told(tx: &mut Tx, response: Uuid) -> sqlx::Result<Vec<ToldRow>> {
    sqlx::query_as!(
        ToldRow,
        r#"SELECT (SELECT m.name FROM access.members() m WHERE m.id = t.member_id) AS name, at AS "at!", by_mail AS "by_mail!"
           FROM (SELECT member_id, at, false AS by_mail FROM risk_told WHERE response_id = $1
             UNION ALL SELECT member_id, at, true FROM risk_mail WHERE response_id = $1) t ORDER BY at, member_id"#,
        response
    )
    .fetch_all(&mut **tx)
    .await
}

/// Writes down that the asker has it on screen; the first time counts.
pub(super) async fn told(tx: &mut Tx, response: Uuid, client: Uuid, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO risk_told (response_id, client_id, member_id, at) SELECT $1, $2, access.me(), $3 ON CONFLICT DO NOTHING",
        response,
        client,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// A flag that is open and for the asker.
pub(super) struct OpenRow {
    pub(super) response: Uuid,
    pub(super) client: Uuid,
    pub(super) record: i32,
    /// `None`: the asker does not treat the client.
    pub(super) number: Option<i32>,
    pub(super) measure: Option<String>,
    pub(super) says: Option<String>,
    pub(super) raised_at: DateTime<Utc>,
    pub(super) treats: String,
}

/// Flags that are open and for the asker, the oldest first.
pub(super) async fn open_flags(tx: &mut Tx) -> sqlx::Result<Vec<OpenRow>> {
    sqlx::query_as!(
        OpenRow,
        r#"SELECT response_id AS "response!", client_id AS "client!", record AS "record!", number, measure, says, raised_at AS "raised_at!",
             coalesce(treats, '') AS "treats!"
           FROM access.flags_to_me()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// Writes down what was done; false: it is closed already, or not the asker's.
pub(super) async fn close(tx: &mut Tx, client: Uuid, number: i32, done: &str, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let written = sqlx::query!(
        "UPDATE risk_flag f SET done = $3, done_at = $4, done_by = access.me()
         FROM response r WHERE r.id = f.response_id AND r.client_id = $1 AND r.number = $2 AND f.done IS NULL",
        client,
        number,
        done,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(written.rows_affected() == 1)
}

/// Of how many summaries what is kept is another than their forms make of it, and how many there are: these are made anew. As the owner.
pub(super) async fn refold(db: &mut PgConnection) -> sqlx::Result<(i64, Vec<Uuid>)> {
    let all = sqlx::query_scalar!(r#"SELECT count(*) AS "all!" FROM episode_measure_fold"#).fetch_one(&mut *db).await?;
    let different = sqlx::query_scalar!(
        r#"SELECT DISTINCT coalesce(k.episode_id, f.episode_id) AS "episode!"
           FROM episode_measure k FULL JOIN episode_measure_fold f ON (f.episode_id, f.measure) = (k.episode_id, k.measure)
           WHERE (k.client_id, k.first_total, k.first_at, k.last_total, k.last_at, k.end_total, k.end_at, k.totals)
             IS DISTINCT FROM (f.client_id, f.first_total, f.first_at, f.last_total, f.last_at, f.end_total, f.end_at, f.totals)"#
    )
    .fetch_all(&mut *db)
    .await?;
    sqlx::query!("DELETE FROM episode_measure WHERE episode_id = ANY($1)", &different).execute(&mut *db).await?;
    sqlx::query!(
        "INSERT INTO episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals)
         SELECT episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals
         FROM episode_measure_fold WHERE episode_id = ANY($1)",
        &different
    )
    .execute(db)
    .await?;
    Ok((all, different))
}
