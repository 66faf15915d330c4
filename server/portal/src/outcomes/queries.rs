//! SQL over sessions, sets and ratings: counts and numbers, never a word about a person.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::subject::Tx;

/// One session in numbers.
pub(super) struct SessionRow {
    pub number: i32,
    pub target: Option<i32>,
    pub zone: String,
    pub opened_at: DateTime<Utc>,
    pub ended: bool,
    pub closing: Option<String>,
    pub clinician: String,
    pub sets: i64,
    pub first_sud: Option<i16>,
    pub last_sud: Option<i16>,
    pub first_voc: Option<i16>,
    pub last_voc: Option<i16>,
}

/// The sessions that worked on `target` or re-evaluated it, in order.
pub(super) async fn sessions_of_target(tx: &mut Tx, target: Uuid) -> sqlx::Result<Vec<SessionRow>> {
    sessions(tx, None, Some(target)).await
}

/// The sessions of `client`, in order.
pub(super) async fn sessions_of_client(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<SessionRow>> {
    sessions(tx, Some(client), None).await
}

async fn sessions(tx: &mut Tx, client: Option<Uuid>, target: Option<Uuid>) -> sqlx::Result<Vec<SessionRow>> {
    sqlx::query_as!(
        SessionRow,
        r#"SELECT s.number, t.number AS "target?", s.zone, s.opened_at, s.ended_at IS NOT NULL AS "ended!", s.closing,
             (SELECT m.name FROM access.members() m WHERE m.id = s.member_id) AS "clinician!",
             (SELECT count(*) FROM stimulus_set x WHERE x.session_id = s.id) AS "sets!",
             r.first_sud, r.last_sud, r.first_voc, r.last_voc
           FROM session s LEFT JOIN target t ON t.id = s.target_id
           LEFT JOIN LATERAL (
             SELECT (array_agg(value ORDER BY asked_at, id) FILTER (WHERE scale = 'sud'))[1] AS first_sud,
               (array_agg(value ORDER BY asked_at DESC, id DESC) FILTER (WHERE scale = 'sud'))[1] AS last_sud,
               (array_agg(value ORDER BY asked_at, id) FILTER (WHERE scale = 'voc'))[1] AS first_voc,
               (array_agg(value ORDER BY asked_at DESC, id DESC) FILTER (WHERE scale = 'voc'))[1] AS last_voc
             FROM standing_rating WHERE session_id = s.id AND target_id IS NOT DISTINCT FROM coalesce($2, s.target_id)) r ON true
           WHERE s.client_id = coalesce($1, (SELECT client_id FROM target WHERE id = $2)) AND ($2 IS NULL OR s.target_id = $2 OR EXISTS (SELECT FROM standing_rating WHERE session_id = s.id AND target_id = $2))
           ORDER BY s.opened_at, s.number"#,
        client,
        target
    )
    .fetch_all(&mut **tx)
    .await
}

/// One client in numbers.
pub(super) struct ClientRow {
    pub id: Uuid,
    pub number: i32,
    pub archived: bool,
    pub open: i64,
    pub complete: i64,
    pub incomplete: i64,
    pub sessions: i64,
    pub sets: i64,
    pub first_at: Option<DateTime<Utc>>,
    pub last_at: Option<DateTime<Utc>>,
    /// SUD of the target that was worked on last: its first and its last.
    pub first_sud: Option<i16>,
    pub last_sud: Option<i16>,
    /// Targets whose latest closed session was closed as incomplete.
    pub unfinished: i64,
    /// The asker treats this client.
    pub mine: bool,
}

/// All clients of the practice by record number. Pretend ones are no clients: see `access.rehearsals()`.
pub(super) async fn clients(tx: &mut Tx) -> sqlx::Result<Vec<ClientRow>> {
    sqlx::query_as!(
        ClientRow,
        r#"WITH targets AS (
             SELECT client_id, count(*) FILTER (WHERE status IN ('planned', 'active', 'reopened')) AS open,
               count(*) FILTER (WHERE status = 'complete') AS complete, count(*) FILTER (WHERE status = 'incomplete') AS incomplete
             FROM target WHERE archived_at IS NULL GROUP BY client_id),
           sessions AS (SELECT client_id, count(*) AS n, min(opened_at) AS first_at, max(opened_at) AS last_at FROM session GROUP BY client_id),
           sets AS (SELECT client_id, count(*) AS n FROM stimulus_set GROUP BY client_id),
           closings AS (
             SELECT DISTINCT ON (client_id, target_id) client_id, closing FROM session WHERE ended_at IS NOT NULL
             ORDER BY client_id, target_id, number DESC),
           unfinished AS (SELECT client_id, count(*) AS n FROM closings WHERE closing = 'incomplete' GROUP BY client_id),
           latest AS (
             SELECT DISTINCT ON (client_id) client_id, target_id FROM session WHERE target_id IS NOT NULL ORDER BY client_id, number DESC),
           suds AS (
             SELECT l.client_id, (array_agg(r.value ORDER BY r.asked_at, r.id))[1] AS first_sud,
               (array_agg(r.value ORDER BY r.asked_at DESC, r.id DESC))[1] AS last_sud
             FROM latest l JOIN standing_rating r ON r.target_id = l.target_id AND r.scale = 'sud' GROUP BY l.client_id)
           SELECT c.id, c.number AS "number!", c.archived_at IS NOT NULL AS "archived!", coalesce(t.open, 0) AS "open!",
             coalesce(t.complete, 0) AS "complete!", coalesce(t.incomplete, 0) AS "incomplete!", coalesce(s.n, 0) AS "sessions!",
             coalesce(x.n, 0) AS "sets!", s.first_at, s.last_at, d.first_sud, d.last_sud, coalesce(u.n, 0) AS "unfinished!",
             c.id IN (SELECT access.my_clients()) AS "mine!"
           FROM client c LEFT JOIN targets t ON t.client_id = c.id LEFT JOIN sessions s ON s.client_id = c.id
           LEFT JOIN sets x ON x.client_id = c.id LEFT JOIN unfinished u ON u.client_id = c.id LEFT JOIN suds d ON d.client_id = c.id
           WHERE c.id NOT IN (SELECT access.rehearsals()) ORDER BY c.number"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// Who treats whom at present.
pub(super) struct CareRow {
    pub client: Uuid,
    pub member: Uuid,
    pub name: String,
}

/// By name. For a lead: all of the practice.
pub(super) async fn care(tx: &mut Tx) -> sqlx::Result<Vec<CareRow>> {
    sqlx::query_as!(
        CareRow,
        r#"SELECT l.client_id AS "client!", l.member_id AS "member!", m.name AS "name!"
           FROM access.care_links() l JOIN access.members() m ON m.id = l.member_id
           WHERE l.client_id NOT IN (SELECT access.rehearsals()) AND l.since <= access.now() AND (l.until IS NULL OR l.until > access.now()) ORDER BY m.name, l.client_id"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// A client's record number, if the asker may see its row; not of a pretend one.
pub(super) async fn number(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<i32>> {
    sqlx::query_scalar!(r#"SELECT number AS "number!" FROM client WHERE id = $1 AND id NOT IN (SELECT access.rehearsals())"#, client)
        .fetch_optional(&mut **tx)
        .await
}

/// A client's targets as numbers and codes.
pub(super) struct TargetRow {
    pub id: Uuid,
    pub number: i32,
    pub status: String,
}

pub(super) async fn targets(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<TargetRow>> {
    sqlx::query_as!(TargetRow, "SELECT id, number, status FROM target WHERE client_id = $1 ORDER BY number", client)
        .fetch_all(&mut **tx)
        .await
}
