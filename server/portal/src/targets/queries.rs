//! All SQL about targets and the ratings of their assessment.

use chrono::{DateTime, Utc};
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use super::{NewTarget, Planned, Prong, SealedWords, Target, open};
use crate::course::Stand;
use crate::store::error::Error;
use crate::store::seal::ClientKey;
use crate::store::subject::Tx;

pub(super) struct Row {
    id: Uuid,
    pub(super) client_id: Uuid,
    number: i32,
    prong: String,
    place: i32,
    age: Option<i16>,
    year: Option<i16>,
    cluster_id: Option<Uuid>,
    parent_id: Option<Uuid>,
    procedure: String,
    state: String,
    held: Option<String>,
    because: Option<String>,
    unfounded: bool,
    opened_at: DateTime<Utc>,
    archived_at: Option<DateTime<Utc>>,
    version: i32,
    label: Vec<u8>,
    picture: Vec<u8>,
    negative_belief: Vec<u8>,
    positive_belief: Vec<u8>,
    emotions: Vec<u8>,
    body_location: Vec<u8>,
    words_version: i32,
}

impl Row {
    pub(super) fn open(self, key: &ClientKey, standing: &[Standing]) -> Result<Target, Error> {
        let sealed = SealedWords {
            target_id: self.id,
            label: self.label,
            picture: self.picture,
            negative_belief: self.negative_belief,
            positive_belief: self.positive_belief,
            emotions: self.emotions,
            body_location: self.body_location,
            version: self.words_version,
        };
        let of = |scale: &'static str| standing.iter().filter(move |rating| rating.target == self.id && rating.scale == scale);
        let first = |scale| of(scale).next().map(|rating| rating.value);
        let assessed = |scale| of(scale).rfind(|rating| rating.moment == "assessment").map(|rating| rating.value);
        let latest = |scale| of(scale).next_back().map(|rating| rating.value);
        Ok(Target {
            id: self.id,
            client: self.client_id,
            number: self.number,
            prong: Prong::parse(&self.prong).ok_or(Error::Inconsistent("target.prong"))?,
            planned: Planned { place: self.place, age: self.age, year: self.year, cluster: self.cluster_id, parent: self.parent_id },
            stand: Stand::read(&self.procedure, &self.state, self.held.as_deref(), self.because.as_deref(), self.unfounded)?,
            opened_at: self.opened_at,
            archived_at: self.archived_at,
            version: self.version,
            words: open(key, &sealed),
            first_sud: sud(first("sud"))?,
            first_voc: voc(first("voc"))?,
            assessed_sud: sud(assessed("sud"))?,
            assessed_voc: voc(assessed("voc"))?,
            latest_sud: sud(latest("sud"))?,
            latest_voc: voc(latest("voc"))?,
        })
    }
}

fn sud(value: Option<i16>) -> Result<Option<Sud>, Error> {
    value.map(|value| u8::try_from(value).ok().and_then(|v| Sud::new(v).ok()).ok_or(Error::Inconsistent("rating.value"))).transpose()
}

fn voc(value: Option<i16>) -> Result<Option<Voc>, Error> {
    value.map(|value| u8::try_from(value).ok().and_then(|v| Voc::new(v).ok()).ok_or(Error::Inconsistent("rating.value"))).transpose()
}

pub(super) async fn target(tx: &mut Tx, target: Uuid) -> Result<Option<Row>, sqlx::Error> {
    sqlx::query_as!(
        Row,
        "SELECT t.id, t.client_id, t.number, t.prong, t.opened_at, t.archived_at, t.version,
           w.label, w.picture, w.negative_belief, w.positive_belief, w.emotions, w.body_location, w.version AS words_version,
           n.procedure, n.state, n.held, n.because, n.unfounded, p.place, p.age, p.year, p.cluster_id, p.parent_id
         FROM target t JOIN target_words w ON w.target_id = t.id JOIN target_course n ON n.target_id = t.id
           JOIN target_plan p ON p.target_id = t.id
         WHERE t.id = $1",
        target
    )
    .fetch_optional(&mut **tx)
    .await
}

pub(super) async fn targets(tx: &mut Tx, client: Uuid) -> Result<Vec<Row>, sqlx::Error> {
    sqlx::query_as!(
        Row,
        "SELECT t.id, t.client_id, t.number, t.prong, t.opened_at, t.archived_at, t.version,
           w.label, w.picture, w.negative_belief, w.positive_belief, w.emotions, w.body_location, w.version AS words_version,
           n.procedure, n.state, n.held, n.because, n.unfounded, p.place, p.age, p.year, p.cluster_id, p.parent_id
         FROM target t JOIN target_words w ON w.target_id = t.id JOIN target_course n ON n.target_id = t.id
           JOIN target_plan p ON p.target_id = t.id
         WHERE t.client_id = $1 ORDER BY t.number",
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// A rating of a target that counts: neither corrected nor taken back.
pub(super) struct Standing {
    target: Uuid,
    scale: String,
    moment: String,
    value: i16,
}

/// The standing ratings of a client's targets, in the order they were asked.
pub(super) async fn standing(tx: &mut Tx, client: Uuid) -> Result<Vec<Standing>, sqlx::Error> {
    sqlx::query_as!(
        Standing,
        r#"SELECT target_id AS "target!", scale AS "scale!", moment AS "moment!", value AS "value!" FROM standing_rating
           WHERE client_id = $1 AND target_id IS NOT NULL ORDER BY place, asked"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// A rating of an assessment that counts.
pub(super) struct AssessedRow {
    pub(super) id: Uuid,
    pub(super) scale: String,
    pub(super) value: i16,
    pub(super) asked_at: DateTime<Utc>,
    pub(super) at: DateTime<Utc>,
    pub(super) corrected: bool,
    /// What stood before, first to last.
    pub(super) before: Vec<Option<i16>>,
}

/// The assessments of `target` that count, in the order they were asked.
pub(super) async fn assessed(tx: &mut Tx, target: Uuid) -> Result<Vec<AssessedRow>, sqlx::Error> {
    sqlx::query_as!(
        AssessedRow,
        r#"SELECT s.id AS "id!", s.scale AS "scale!", s.value AS "value!", s.asked_at AS "asked_at!", s.at AS "at!", s.corrected AS "corrected!",
             ARRAY(SELECT e.value FROM rating r JOIN rating e ON e.id = r.first_id OR e.first_id = r.first_id
               WHERE r.id = s.id AND e.seq < r.seq ORDER BY e.seq) AS "before!: Vec<Option<i16>>"
           FROM standing_rating s WHERE s.target_id = $1 AND s.moment = 'assessment' ORDER BY s.place, s.asked"#,
        target
    )
    .fetch_all(&mut **tx)
    .await
}

pub(super) async fn insert_assessment(
    tx: &mut Tx,
    id: Uuid,
    client: Uuid,
    target: Uuid,
    scale: &str,
    value: i16,
    at: DateTime<Utc>,
) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, entered_by, at)
         SELECT $1, $2, s.id, $3, (SELECT x.id FROM stimulus_set x WHERE x.session_id = s.id ORDER BY x.number DESC LIMIT 1),
           $4, $5, 'assessment', access.me(), $6
         FROM (SELECT) one LEFT JOIN session s ON s.target_id = $3 AND s.ended_at IS NULL",
        id,
        client,
        target,
        scale,
        value,
        at
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// False: it was corrected already.
pub(super) async fn correct_assessment(
    tx: &mut Tx,
    id: Uuid,
    wrong: Uuid,
    value: Option<i16>,
    at: DateTime<Utc>,
) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "INSERT INTO rating (id, client_id, scale, value, moment, replaces, entered_by, at)
         SELECT $1, client_id, scale, $3, moment, id, access.me(), $4 FROM rating WHERE id = $2 ON CONFLICT (replaces) DO NOTHING",
        id,
        wrong,
        value,
        at
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

pub(super) async fn insert_target(tx: &mut Tx, target: Uuid, new: &NewTarget, at: DateTime<Utc>) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO target (id, client_id, number, prong, opened_at, version)
         VALUES ($1, $2, (SELECT coalesce(max(number), 0) + 1 FROM target WHERE client_id = $2), $3, $4, 1)",
        target,
        new.client,
        new.prong.name(),
        at
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Keeps the words of a target, the first ones or the next.
pub(super) async fn keep_words(tx: &mut Tx, client: Uuid, sealed: &SealedWords) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)
         ON CONFLICT (target_id) DO UPDATE SET (label, picture, negative_belief, positive_belief, emotions, body_location, version)
           = (EXCLUDED.label, EXCLUDED.picture, EXCLUDED.negative_belief, EXCLUDED.positive_belief, EXCLUDED.emotions,
              EXCLUDED.body_location, EXCLUDED.version)",
        sealed.target_id,
        client,
        sealed.label,
        sealed.picture,
        sealed.negative_belief,
        sealed.positive_belief,
        sealed.emotions,
        sealed.body_location,
        sealed.version
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// False when the row is not at `version` any more.
pub(super) async fn change_target(tx: &mut Tx, target: Uuid, version: i32, prong: Prong) -> Result<bool, sqlx::Error> {
    let done =
        sqlx::query!("UPDATE target SET prong = $3, version = version + 1 WHERE id = $1 AND version = $2", target, version, prong.name())
            .execute(&mut **tx)
            .await?;
    Ok(done.rows_affected() == 1)
}

pub(super) async fn words_version(tx: &mut Tx, target: Uuid) -> Result<i32, sqlx::Error> {
    sqlx::query_scalar!("SELECT version FROM target_words WHERE target_id = $1", target).fetch_one(&mut **tx).await
}

/// Archives, or with no time restores. False when the row is not at `version` any more.
pub(super) async fn archive(tx: &mut Tx, target: Uuid, version: i32, at: Option<DateTime<Utc>>) -> Result<bool, sqlx::Error> {
    let done =
        sqlx::query!("UPDATE target SET archived_at = $3, version = version + 1 WHERE id = $1 AND version = $2", target, version, at)
            .execute(&mut **tx)
            .await?;
    Ok(done.rows_affected() == 1)
}

pub(super) async fn has_open_session(tx: &mut Tx, target: Uuid) -> Result<bool, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM session WHERE target_id = $1 AND ended_at IS NULL) AS "open!""#, target)
        .fetch_one(&mut **tx)
        .await
}

/// Keeps the SUD of one segment of a recent event; in the session that is open on this target, if one is.
pub(super) async fn insert_segment(
    tx: &mut Tx,
    id: Uuid,
    client: Uuid,
    target: Uuid,
    (segment, sud): (i16, i16),
    at: DateTime<Utc>,
) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO rating (id, client_id, session_id, target_id, scale, value, segment, moment, entered_by, at)
         SELECT $1, $2, s.id, $3, 'sud', $4, $5, 'back_at_target', access.me(), $6
         FROM (SELECT) one LEFT JOIN session s ON s.target_id = $3 AND s.ended_at IS NULL",
        id,
        client,
        target,
        sud,
        segment,
        at
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}
