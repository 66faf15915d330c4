//! SQL of a client's record that is nobody else's: the list of its sessions.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

/// One line of the list of sessions.
pub(super) struct SessionRow {
    pub(super) id: Uuid,
    pub(super) number: i32,
    pub(super) target_id: Option<Uuid>,
    pub(super) zone: String,
    pub(super) opened_at: DateTime<Utc>,
    pub(super) ended_at: Option<DateTime<Utc>>,
    pub(super) closing: Option<String>,
    /// Not: the client did not attend, or it was opened by mistake.
    pub(super) took_place: bool,
    pub(super) sets: i64,
}

/// What the opening of an hour said of risk.
pub(super) struct RiskRow {
    pub(super) session: Uuid,
    pub(super) number: i32,
    pub(super) present: bool,
    pub(super) at: DateTime<Utc>,
}

/// What was said of risk last; `None`: it was never asked.
pub(super) async fn risk(tx: &mut Tx, client: Uuid) -> Result<Option<RiskRow>, sqlx::Error> {
    sqlx::query_as!(
        RiskRow,
        r#"SELECT s.id AS session, s.number, f.code = 'acute' AS "present!", f.at AS "at!"
           FROM standing_hour_fact f JOIN session s ON s.id = f.session_id
           WHERE f.client_id = $1 AND f.kind = 'answered' AND f.code IN ('nothing_new', 'plan_stands', 'acute') ORDER BY f.seq DESC LIMIT 1"#,
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// The sessions of a client, latest first.
pub(super) async fn sessions(tx: &mut Tx, client: Uuid) -> Result<Vec<SessionRow>, sqlx::Error> {
    sqlx::query_as!(
        SessionRow,
        r#"SELECT id, number, target_id, zone, opened_at, ended_at, closing, took_place AS "took_place!",
             (SELECT count(*) FROM stimulus_set WHERE session_id = session.id) AS "sets!"
           FROM session WHERE client_id = $1 ORDER BY seq DESC"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}
