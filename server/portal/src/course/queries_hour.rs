//! SQL of the opening of an hour.

use sqlx::PgConnection;
use uuid::Uuid;

/// A row of `hour_fact` that stands.
pub(super) struct HourRow {
    pub kind: String,
    pub code: String,
    pub because: Option<String>,
}

/// What stands of the opening of `session`, in the order in which it was said.
pub(super) async fn opened(db: &mut PgConnection, session: Uuid) -> sqlx::Result<Vec<HourRow>> {
    sqlx::query_as!(
        HourRow,
        r#"SELECT kind AS "kind!", code AS "code!", because FROM standing_hour_fact
           WHERE session_id = $1 AND kind <> 'time' ORDER BY seq"#,
        session
    )
    .fetch_all(db)
    .await
}

/// The same of the last session before `session` in which anything was asked.
pub(super) async fn opened_before(db: &mut PgConnection, session: Uuid) -> sqlx::Result<Vec<HourRow>> {
    sqlx::query_as!(
        HourRow,
        r#"SELECT kind AS "kind!", code AS "code!", because FROM standing_hour_fact
           WHERE session_id = (SELECT f.session_id FROM session s JOIN hour_fact f ON f.client_id = s.client_id AND f.session_id <> s.id
             WHERE s.id = $1 AND f.seq < (SELECT coalesce(min(own.seq), 9223372036854775807) FROM hour_fact own WHERE own.session_id = s.id)
             ORDER BY f.seq DESC LIMIT 1) AND kind <> 'time'
           ORDER BY seq"#,
        session
    )
    .fetch_all(db)
    .await
}

/// What is due before a start.
pub(super) struct BeforeRow {
    pub reevaluation_due: bool,
    pub assessment_due: bool,
}

/// A re-evaluation: of a client with whom a target was reprocessed in an earlier session, until it was rated in this one. An assessment: of
/// a target without any SUD of its own, unless it is worked on as a resource, which has none.
pub(super) async fn before(db: &mut PgConnection, session: Uuid) -> sqlx::Result<Option<BeforeRow>> {
    sqlx::query_as!(
        BeforeRow,
        r#"SELECT EXISTS (SELECT FROM stimulus_set x WHERE x.client_id = s.client_id AND x.session_id <> s.id AND x.seq < s.seq
               AND x.target_id IS NOT NULL AND coalesce(x.plan->>'purpose', 'processing') = 'processing')
             AND NOT EXISTS (SELECT FROM standing_rating r WHERE r.session_id = s.id AND r.moment = 'reevaluation' AND r.scale = 'sud')
             AS "reevaluation_due!",
             s.target_id IS NOT NULL AND coalesce(n.procedure <> 'resource', true)
             AND NOT EXISTS (SELECT FROM rating r WHERE r.target_id = s.target_id AND r.scale = 'sud' AND r.value IS NOT NULL
               AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id)) AS "assessment_due!"
           FROM session s LEFT JOIN target_course n ON n.target_id = s.target_id WHERE s.id = $1"#,
        session
    )
    .fetch_optional(db)
    .await
}
