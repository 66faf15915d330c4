//! SQL of what is said about targets, and of the row that lists read. As a member, as a room for [`locked`] and [`keep`], or as the owner.

use chrono::{DateTime, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

use super::{Columns, Stand};
use crate::store::error::Error;

/// Something that stands, of whatever kind.
pub(super) struct SaidRow {
    /// A kind of `fact`, or "sud", "voc", "set".
    pub kind: String,
    pub code: Option<String>,
    pub value: Option<i16>,
    pub moment: Option<String>,
    pub segment: Option<i16>,
    pub because: Option<String>,
}

/// What is said about `target`, in the order of the record.
pub(super) async fn said(db: &mut PgConnection, target: Uuid) -> sqlx::Result<Vec<SaidRow>> {
    sqlx::query_as!(
        SaidRow,
        r#"SELECT kind AS "kind!", code, value, moment, segment, because FROM (
             SELECT place, asked, kind, code, NULL::smallint AS value, moment, NULL::smallint AS segment, because
             FROM standing_fact WHERE target_id = $1 AND kind NOT IN ('saw', 'tried', 'too_much', 'showed')
             UNION ALL SELECT place, asked, scale, NULL, value, moment, NULL, NULL FROM standing_rating WHERE target_id = $1
             UNION ALL SELECT place, asked, 'sud', NULL, value, moment, segment, NULL FROM standing_segment WHERE target_id = $1
             UNION ALL SELECT s.seq, x.seq, 'set', NULL, NULL, NULL, NULL, NULL
             FROM stimulus_set x JOIN session s ON s.id = x.session_id
             WHERE x.target_id = $1 AND coalesce(x.plan->>'purpose', 'processing') = 'processing') said
           ORDER BY place, asked"#,
        target
    )
    .fetch_all(db)
    .await
}

/// A row of `target_course`.
pub struct Row {
    /// The version of the rules that folded it.
    pub rules: i16,
    procedure: String,
    state: String,
    held: Option<String>,
    because: Option<String>,
    unfounded: bool,
}

impl Row {
    pub(super) fn stand(&self) -> Result<Stand, Error> {
        Stand::read(&self.procedure, &self.state, self.held.as_deref(), self.because.as_deref(), self.unfounded)
    }
}

/// The row of `target`, locked until the end of the transaction: whatever is said about it waits.
pub(super) async fn locked(db: &mut PgConnection, target: Uuid) -> sqlx::Result<Option<Row>> {
    sqlx::query_as!(
        Row,
        "SELECT rules, procedure, state, held, because, unfounded FROM target_course WHERE target_id = $1 FOR NO KEY UPDATE",
        target
    )
    .fetch_optional(db)
    .await
}

pub(super) async fn insert(db: &mut PgConnection, client: Uuid, target: Uuid, columns: &Columns) -> sqlx::Result<()> {
    let Columns { rules, procedure, state, held, because, unfounded } = columns;
    sqlx::query!(
        "INSERT INTO target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, 1)",
        target,
        client,
        rules,
        procedure,
        state,
        held.as_deref(),
        because.as_deref(),
        unfounded
    )
    .execute(db)
    .await?;
    Ok(())
}

pub(super) async fn keep(db: &mut PgConnection, target: Uuid, columns: &Columns) -> Result<(), Error> {
    let Columns { rules, procedure, state, held, because, unfounded } = columns;
    let done = sqlx::query!(
        "UPDATE target_course SET rules = $2, procedure = $3, state = $4, held = $5, because = $6, unfounded = $7, version = version + 1
         WHERE target_id = $1",
        target,
        rules,
        procedure,
        state,
        held.as_deref(),
        because.as_deref(),
        unfounded
    )
    .execute(db)
    .await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("target_course")) }
}

/// Adds a fact about `target`, in the client's session that is open, if one is.
pub(super) async fn add(
    db: &mut PgConnection,
    id: Uuid,
    client: Uuid,
    target: Uuid,
    (kind, code, because): (&str, &str, Option<&str>),
    at: DateTime<Utc>,
) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO fact (id, client_id, session_id, target_id, kind, code, because, entered_by, at)
         VALUES ($1, $2, (SELECT s.id FROM session s WHERE s.client_id = $2 AND s.ended_at IS NULL ORDER BY s.seq DESC LIMIT 1),
           $3, $4, $5, $6, access.me(), $7)",
        id,
        client,
        target,
        kind,
        code,
        because,
        at
    )
    .execute(db)
    .await?;
    Ok(())
}

/// Every target whose row was folded by other rules than these, as the owner.
pub(super) async fn outdated(db: &mut PgConnection, rules: i16) -> sqlx::Result<Vec<Uuid>> {
    sqlx::query_scalar!("SELECT target_id FROM target_course WHERE rules <> $1 ORDER BY target_id", rules).fetch_all(db).await
}

/// Every target there is, as the owner.
pub(super) async fn all(db: &mut PgConnection) -> sqlx::Result<Vec<Uuid>> {
    sqlx::query_scalar!("SELECT target_id FROM target_course ORDER BY target_id").fetch_all(db).await
}
