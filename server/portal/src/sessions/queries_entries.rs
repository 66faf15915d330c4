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
           SELECT 'change', code IS NOT NULL, EXISTS (SELECT FROM fact n WHERE n.replaces = f.id)
           FROM fact f WHERE id = $1 AND session_id = $2 AND kind = 'mark'
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
            Some("change") => Some(Kind::Change),
            _ => None,
        };
        Replaced { id, kind, says: row.says, corrected: row.corrected }
    }))
}

/// When the entry of this id was kept in this session.
pub(super) async fn kept_at(tx: &mut Tx, session: Uuid, id: Uuid) -> sqlx::Result<Option<DateTime<Utc>>> {
    sqlx::query_scalar!(
        r#"SELECT at AS "at!" FROM rating WHERE id = $1 AND session_id = $2
           UNION ALL SELECT at FROM fact WHERE id = $1 AND session_id = $2 AND kind = 'mark'
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
    let What::Rating { scale, value } = &entry.what else { return Ok(None) };
    sqlx::query_scalar!(
        "INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, access.me(), $10) ON CONFLICT DO NOTHING RETURNING target_id",
        entry.id,
        place.client,
        place.session,
        place.target,
        entry.set,
        scale,
        *value,
        entry.moment,
        entry.replaces,
        now
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Writes what a set changed; no code: what it replaces is taken back. False: its id, or what it replaces, has been used meanwhile.
pub(super) async fn add_mark(
    tx: &mut Tx,
    place: &EntryContext,
    entry: &Checked,
    code: Option<&str>,
    now: DateTime<Utc>,
) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO fact (id, client_id, session_id, target_id, set_id, kind, code, moment, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, 'mark', $6, $7, $8, access.me(), $9) ON CONFLICT DO NOTHING",
        entry.id,
        place.client,
        place.session,
        place.target,
        entry.set,
        code,
        entry.moment,
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
    pub scale: Option<String>,
    pub value: Option<i16>,
    pub change: Option<String>,
    pub words: Option<Vec<u8>>,
    pub at: DateTime<Utc>,
    pub seq: i64,
}

/// All entries of a session, the corrected and taken-back ones too, with corrections that were made outside of it.
pub(super) async fn entries(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<EntryRow>> {
    sqlx::query_as!(
        EntryRow,
        r#"SELECT id AS "id!", set_id, target_id, replaces, moment AS "moment!", scale, value, NULL::text AS change, NULL::bytea AS words,
             at AS "at!", seq AS "seq!"
           FROM rating WHERE segment IS NULL AND (session_id = $1 OR first_id IN (SELECT id FROM rating WHERE session_id = $1))
           UNION ALL SELECT id, set_id, NULL, replaces, moment, NULL, NULL, code, NULL, at, seq FROM fact WHERE session_id = $1 AND kind = 'mark'
           UNION ALL SELECT id, set_id, NULL, replaces, moment, NULL, NULL, NULL, words, at, seq FROM process_note WHERE session_id = $1
           ORDER BY 11"#,
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
