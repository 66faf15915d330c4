//! SQL of sets, their orders and their evidence.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

pub(super) struct SetRow {
    pub id: Uuid,
    pub number: i32,
    pub first_plan: serde_json::Value,
    pub plan: serde_json::Value,
    pub cycles: Option<f64>,
    pub width: Option<f64>,
    pub seconds: Option<f64>,
    pub frames: Option<i64>,
    pub longest_gap: Option<f64>,
    pub long_gaps: i64,
    pub to_rest: bool,
    pub ending: Option<String>,
    pub recorded_at: DateTime<Utc>,
    pub seq: i64,
}

pub(super) async fn sets(tx: &mut Tx, session: Uuid, long_gap: f64) -> sqlx::Result<Vec<SetRow>> {
    sqlx::query_as!(
        SetRow,
        r#"SELECT s.id, s.number, s.plan AS "first_plan!", coalesce(o.plan, s.plan) AS "plan!",
             e.cycles, e.width, e.seconds, e.frames, e.longest_gap, coalesce(e.long_gaps, 0) AS "long_gaps!",
             coalesce(e.to_rest, false) AS "to_rest!", x.ending AS "ending?", s.recorded_at, s.seq
           FROM stimulus_set s
           LEFT JOIN LATERAL (SELECT plan FROM set_order WHERE set_id = s.id ORDER BY seq DESC LIMIT 1) o ON true
           LEFT JOIN LATERAL (
             SELECT max(phase) AS cycles, max(width) AS width, sum(frames) AS frames, max(longest_gap) AS longest_gap,
               count(*) FILTER (WHERE longest_gap > $2) AS long_gaps,
               (max(at_ms) FILTER (WHERE kind <> 'shown') - min(at_ms) FILTER (WHERE kind = 'shown')) / 1000 AS seconds,
               bool_or(kind = 'rested') AS to_rest
             FROM set_evidence WHERE set_id = s.id) e ON true
           LEFT JOIN set_outcome x ON x.set_id = s.id
           WHERE s.session_id = $1 ORDER BY s.number"#,
        session,
        long_gap
    )
    .fetch_all(&mut **tx)
    .await
}

/// One order within a set.
pub(super) struct OrderRow {
    pub set_id: Uuid,
    pub cause: String,
    pub at_ms: f64,
    pub plan: serde_json::Value,
    pub timeline: serde_json::Value,
}

/// Everything that was ordered in a session's sets, in order.
pub(super) async fn orders(tx: &mut Tx, session: Uuid) -> sqlx::Result<Vec<OrderRow>> {
    sqlx::query_as!(
        OrderRow,
        "SELECT set_id, cause, at_ms, plan, timeline FROM set_order WHERE session_id = $1 ORDER BY set_id, seq",
        session
    )
    .fetch_all(&mut **tx)
    .await
}

/// One thing that the screen said.
pub(super) struct EvidenceRow {
    pub seq: i32,
    pub kind: String,
    pub at_ms: f64,
    pub phase: Option<f64>,
    pub frames: Option<i32>,
    pub longest_gap: Option<f64>,
}

/// What the screen said of one set, in order.
pub(super) async fn evidence(tx: &mut Tx, set: Uuid) -> sqlx::Result<Vec<EvidenceRow>> {
    sqlx::query_as!(
        EvidenceRow,
        "SELECT seq, kind, at_ms, phase, frames, longest_gap FROM set_evidence WHERE set_id = $1 ORDER BY seq",
        set
    )
    .fetch_all(&mut **tx)
    .await
}

/// What happened in the session while a set ran: from its start, as written, to its end, and 3 s more, since
/// what ended it is written beside it. A room that was lost wrote no end: then to the last that the screen said, or at most to the next set.
pub(super) async fn meanwhile(tx: &mut Tx, session: Uuid, set: Uuid) -> sqlx::Result<Vec<(String, DateTime<Utc>)>> {
    let rows = sqlx::query!(
        "SELECT m.kind, m.at FROM session_moment m JOIN stimulus_set s ON s.session_id = m.session_id
         CROSS JOIN LATERAL (SELECT coalesce(
             (SELECT max(e.recorded_at) FROM set_ending e WHERE e.set_id = s.id AND e.witness = 'room'),
             (SELECT max(v.recorded_at) FROM set_evidence v WHERE v.set_id = s.id)) + interval '3 seconds' AS at) e
         WHERE m.session_id = $1 AND s.id = $2 AND m.at >= s.recorded_at AND m.at <= coalesce(e.at, 'infinity')
           AND NOT EXISTS (SELECT FROM stimulus_set n WHERE n.session_id = s.session_id AND n.number > s.number AND n.recorded_at <= m.at)
         ORDER BY m.at, m.id",
        session,
        set
    );
    Ok(rows.fetch_all(&mut **tx).await?.into_iter().map(|row| (row.kind, row.at)).collect())
}
