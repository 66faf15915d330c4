//! SQL of ratings, marks and process notes. All are append-only.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::entry::{Checked, What};
use crate::store::subject::Tx;

/// What an entry says, without its value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    Sud,
    Voc,
    Words,
    Change,
    Saw,
    Tried,
    Scan,
    Rehearsal,
    Fits,
    Belief,
    TooMuch,
    Showed,
    Unmeasured,
    Reach,
    Answered,
    Passed,
    Time,
}

/// An entry that another one means to replace.
pub(super) struct Replaced {
    pub id: Uuid,
    /// What it says, or said before it was taken back.
    pub kind: Option<Kind>,
    /// False: it says that an earlier one is taken back.
    pub says: bool,
    /// Something else replaces it already.
    pub corrected: bool,
}

pub(super) async fn has_set(tx: &mut Tx, session: Uuid, set: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM stimulus_set WHERE id = $1 AND session_id = $2) AS "has!""#, set, session)
        .fetch_one(&mut **tx)
        .await
}

pub(super) async fn replaced(tx: &mut Tx, session: Uuid, id: Uuid) -> sqlx::Result<Option<Replaced>> {
    let row = sqlx::query!(
        r#"SELECT scale AS kind, value IS NOT NULL AS "says!", EXISTS (SELECT FROM rating n WHERE n.replaces = r.id) AS "corrected!"
           FROM rating r WHERE id = $1 AND session_id = $2
           UNION ALL
           SELECT kind, code IS NOT NULL, EXISTS (SELECT FROM fact n WHERE n.replaces = f.id)
           FROM fact f WHERE id = $1 AND session_id = $2 AND kind IN ('mark', 'saw', 'tried', 'scan', 'rehearsal', 'fits', 'belief', 'too_much', 'showed')
           UNION ALL
           SELECT 'unmeasured', way IS NOT NULL, EXISTS (SELECT FROM unmeasured n WHERE n.replaces = u.id)
           FROM unmeasured u WHERE id = $1 AND session_id = $2
           UNION ALL
           SELECT 'reach', step IS NOT NULL, EXISTS (SELECT FROM reach_step n WHERE n.replaces = s.id)
           FROM reach_step s WHERE id = $1 AND session_id = $2
           UNION ALL
           SELECT kind, code IS NOT NULL, EXISTS (SELECT FROM hour_fact n WHERE n.replaces = h.id)
           FROM hour_fact h WHERE id = $1 AND session_id = $2
           UNION ALL
           SELECT 'words', words IS NOT NULL, EXISTS (SELECT FROM process_note n WHERE n.replaces = p.id)
           FROM process_note p WHERE id = $1 AND session_id = $2"#,
        id,
        session
    )
    .fetch_optional(&mut **tx)
    .await?;
    Ok(row.map(|row| {
        let kind = match row.kind.as_deref() {
            Some("sud") => Some(Kind::Sud),
            Some("voc") => Some(Kind::Voc),
            Some("words") => Some(Kind::Words),
            Some("mark") => Some(Kind::Change),
            Some("saw") => Some(Kind::Saw),
            Some("tried") => Some(Kind::Tried),
            Some("scan") => Some(Kind::Scan),
            Some("rehearsal") => Some(Kind::Rehearsal),
            Some("fits") => Some(Kind::Fits),
            Some("belief") => Some(Kind::Belief),
            Some("too_much") => Some(Kind::TooMuch),
            Some("showed") => Some(Kind::Showed),
            Some("unmeasured") => Some(Kind::Unmeasured),
            Some("reach") => Some(Kind::Reach),
            Some("answered") => Some(Kind::Answered),
            Some("passed") => Some(Kind::Passed),
            Some("time") => Some(Kind::Time),
            _ => None,
        };
        Replaced { id, kind, says: row.says, corrected: row.corrected }
    }))
}

/// When the entry of this id was kept in this session.
pub(super) async fn kept_at(tx: &mut Tx, session: Uuid, id: Uuid) -> sqlx::Result<Option<DateTime<Utc>>> {
    sqlx::query_scalar!(
        r#"SELECT at AS "at!" FROM rating WHERE id = $1 AND session_id = $2
           UNION ALL SELECT at FROM fact WHERE id = $1 AND session_id = $2 AND kind IN ('mark', 'saw', 'tried', 'scan', 'rehearsal', 'fits', 'belief', 'too_much', 'showed')
           UNION ALL SELECT at FROM unmeasured WHERE id = $1 AND session_id = $2
           UNION ALL SELECT at FROM reach_step WHERE id = $1 AND session_id = $2
           UNION ALL SELECT at FROM hour_fact WHERE id = $1 AND session_id = $2
           UNION ALL SELECT at FROM process_note WHERE id = $1 AND session_id = $2"#,
        id,
        session
    )
    .fetch_optional(&mut **tx)
    .await
}

/// The rating of its scale that counts and was asked last.
pub(super) struct LastRating {
    pub scale: String,
    pub value: i16,
    pub asked_at: DateTime<Utc>,
}

/// The last SUD and the last VOC that `session` has of `target`, or of none.
pub(super) async fn last_ratings(tx: &mut Tx, session: Uuid, target: Option<Uuid>) -> sqlx::Result<Vec<LastRating>> {
    sqlx::query_as!(
        LastRating,
        r#"SELECT DISTINCT ON (scale) scale AS "scale!", value AS "value!", asked_at AS "asked_at!" FROM standing_rating
           WHERE session_id = $1 AND target_id IS NOT DISTINCT FROM $2 ORDER BY scale, asked DESC"#,
        session,
        target
    )
    .fetch_all(&mut **tx)
    .await
}

/// Where an entry belongs.
pub(super) struct EntryContext {
    pub session: Uuid,
    pub client: Uuid,
    pub target: Option<Uuid>,
}

/// Writes a rating. Answers of which target it is, if of any; `None`: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_rating(
    tx: &mut Tx,
    place: &EntryContext,
    entry: &Checked,
    now: DateTime<Utc>,
) -> sqlx::Result<Option<Option<Uuid>>> {
    let What::Rating { scale, value, segment, from_client } = &entry.what else { return Ok(None) };
    sqlx::query_scalar!(
        "INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, segment, from_client)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, access.me(), $10, $11, $12) ON CONFLICT DO NOTHING RETURNING target_id",
        entry.id,
        place.client,
        place.session,
        place.target,
        entry.set,
        scale,
        *value,
        entry.moment,
        entry.replaces,
        now,
        *segment,
        from_client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Writes a fact; no code: what it replaces is taken back. Answers of which target it is, if of any; `None`: its id, or what it replaces,
/// has been used meanwhile.
pub(super) async fn add_fact(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> sqlx::Result<Option<Option<Uuid>>> {
    let What::Fact { kind, code } = &entry.what else { return Ok(None) };
    sqlx::query_scalar!(
        "INSERT INTO fact (id, client_id, session_id, target_id, set_id, kind, code, moment, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, access.me(), $10) ON CONFLICT DO NOTHING RETURNING target_id",
        entry.id,
        place.client,
        place.session,
        place.target,
        entry.set,
        kind,
        code.as_deref(),
        entry.moment,
        entry.replaces,
        now
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Writes a step on the way after a client who is gone. False: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_reach(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let What::Reach { step } = &entry.what else { return Ok(false) };
    let done = sqlx::query!(
        "INSERT INTO reach_step (id, client_id, session_id, step, replaces, entered_by, at) VALUES ($1, $2, $3, $4, $5, access.me(), $6)
         ON CONFLICT DO NOTHING",
        entry.id,
        place.client,
        place.session,
        step.as_deref(),
        entry.replaces,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Writes work that no page paced. False: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_unmeasured(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let What::Unmeasured { way } = &entry.what else { return Ok(false) };
    let done = sqlx::query!(
        "INSERT INTO unmeasured (id, client_id, session_id, target_id, way, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, access.me(), $7) ON CONFLICT DO NOTHING",
        entry.id,
        place.client,
        place.session,
        place.target,
        way.as_deref(),
        entry.replaces,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Writes what was said in the opening. False: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_opening(tx: &mut Tx, place: &EntryContext, entry: &Checked, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let What::Opening { kind, code, because, again } = &entry.what else { return Ok(false) };
    let done = sqlx::query!(
        "INSERT INTO hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, access.me(), $9) ON CONFLICT DO NOTHING",
        entry.id,
        place.client,
        place.session,
        kind,
        code.as_deref(),
        because.as_deref(),
        again,
        entry.replaces,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Writes a process note, its words sealed. False: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_note(
    tx: &mut Tx,
    place: &EntryContext,
    entry: &Checked,
    words: Option<Vec<u8>>,
    now: DateTime<Utc>,
) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, access.me(), $8) ON CONFLICT DO NOTHING",
        entry.id,
        place.session,
        place.client,
        entry.set,
        entry.moment,
        words,
        entry.replaces,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// A row of `rating`, a mark of `fact`, or a row of `process_note`, in order of keeping.
pub(super) struct EntryRow {
    pub id: Uuid,
    pub set_id: Option<Uuid>,
    /// Of a rating: the target it is of.
    pub target_id: Option<Uuid>,
    pub replaces: Option<Uuid>,
    pub moment: String,
    /// Of a rating; of a fact or of the opening, which kind it is.
    pub scale: Option<String>,
    pub value: Option<i16>,
    /// The code of a fact about a set.
    pub change: Option<String>,
    pub words: Option<Vec<u8>>,
    /// Of the opening: the answer, the matter that was gone past, or the time.
    pub opening: Option<String>,
    pub because: Option<String>,
    pub again: bool,
    /// Of a rating: which segment of the event.
    pub segment: Option<i16>,
    /// Of a rating: the client gave it on their own page.
    pub from_client: bool,
    pub at: DateTime<Utc>,
    pub seq: i64,
}

/// All entries of a session, the corrected and taken-back ones too, with corrections that were made outside of it.
pub(super) async fn entries(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<EntryRow>> {
    sqlx::query_as!(
        EntryRow,
        r#"SELECT id AS "id!", set_id, target_id, replaces, moment AS "moment!", scale, value, NULL::text AS change, NULL::bytea AS words,
             NULL::text AS opening, NULL::text AS because, false AS "again!", segment, from_client AS "from_client!", at AS "at!", seq AS "seq!"
           FROM rating WHERE session_id = $1 OR first_id IN (SELECT id FROM rating WHERE session_id = $1)
           UNION ALL SELECT id, set_id, NULL, replaces, coalesce(moment, 'after_set'), kind, NULL, code, NULL, NULL, NULL, false, NULL, false, at, seq
           FROM fact WHERE session_id = $1 AND (kind IN ('mark', 'saw', 'tried', 'too_much', 'showed')
             OR kind IN ('scan', 'rehearsal', 'fits', 'belief') AND target_id = (SELECT s.target_id FROM session s WHERE s.id = $1))
           UNION ALL SELECT id, NULL, NULL, replaces, 'after_set', 'unmeasured', NULL, way, NULL, NULL, NULL, false, NULL, false, at, seq
           FROM unmeasured WHERE session_id = $1
           UNION ALL SELECT id, NULL, NULL, replaces, 'after_set', 'reach', NULL, step, NULL, NULL, NULL, false, NULL, false, at, seq
           FROM reach_step WHERE session_id = $1
           UNION ALL SELECT id, NULL, NULL, replaces, 'opening', kind, NULL, NULL, NULL, code, because, again, NULL, false, at, seq
           FROM hour_fact WHERE session_id = $1
           UNION ALL SELECT id, set_id, NULL, replaces, moment, NULL, NULL, NULL, words, NULL, NULL, false, NULL, false, at, seq
           FROM process_note WHERE session_id = $1
           ORDER BY 16"#,
        session
    )
    .fetch_all(&mut **tx)
    .await
}

/// A rating by which the course of a session may start.
pub(super) struct BeforeRow {
    pub scale: String,
    pub value: i16,
    pub moment: String,
}

/// Of each scale, the rating of the session's target that was asked last before the session.
pub(super) async fn before(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<BeforeRow>> {
    sqlx::query_as!(
        BeforeRow,
        r#"SELECT DISTINCT ON (r.scale) r.scale AS "scale!", r.value AS "value!", r.moment AS "moment!"
           FROM session s JOIN standing_rating r ON r.client_id = s.client_id AND r.target_id = s.target_id AND r.place < s.seq
           WHERE s.id = $1 ORDER BY r.scale, r.place DESC, r.asked DESC"#,
        session
    )
    .fetch_all(&mut **tx)
    .await
}
