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
