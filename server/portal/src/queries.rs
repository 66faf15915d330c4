//! SQL of the program itself: tidying up, and what the demo's terminal asks.

use uuid::Uuid;

use crate::sessions::NewSession;
use crate::store::subject::Tx;
use crate::upkeep::Tidied;

type Done<T> = Result<T, sqlx::Error>;

/// Removes what has long expired.
pub(crate) async fn tidy(tx: &mut Tx) -> Done<Tidied> {
    sqlx::query_as!(
        Tidied,
        r#"SELECT signins AS "signins!", invitations AS "invitations!", ceremonies AS "ceremonies!", seats AS "seats!", links AS "links!",
             room_tokens AS "room_tokens!", request_keys AS "request_keys!", rehearsals AS "rehearsals!" FROM access.tidy()"#
    )
    .fetch_one(&mut **tx)
    .await
}

/// The member of the demo with this role, on a database that the demo seeded.
pub(crate) async fn demo_member(tx: &mut Tx, role: &str) -> Done<Option<Uuid>> {
    sqlx::query_scalar!("SELECT access.demo_member($1)", role).fetch_one(&mut **tx).await
}

/// The first client whose moving dot is free, with the target that is being worked on.
pub(crate) async fn next_session(tx: &mut Tx) -> Done<Option<NewSession>> {
    sqlx::query_as!(
        NewSession,
        "SELECT c.id AS client, t.id AS \"target?\" FROM client c JOIN target t ON t.client_id = c.id JOIN target_course n ON n.target_id = t.id
         WHERE c.archived_at IS NULL AND c.seizures = 'no' AND c.eye_condition = 'no' AND t.archived_at IS NULL
           AND c.id IN (SELECT access.my_clients())
         ORDER BY (n.state IN ('active', 'incomplete', 'reopened')) DESC, c.number, t.number DESC LIMIT 1"
    )
    .fetch_optional(&mut **tx)
    .await
}
