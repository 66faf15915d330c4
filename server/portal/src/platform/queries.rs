//! SQL of who asks, and of the practice's zone.

use uuid::Uuid;

use crate::store::subject::Tx;

type Done<T> = Result<T, sqlx::Error>;

pub(super) struct MemberRow {
    pub(super) signin: Uuid,
    pub(super) id: Uuid,
    pub(super) name: String,
    pub(super) roles: Vec<String>,
    pub(super) passkeys: i64,
    /// The practice's name.
    pub(super) practice: String,
}

/// The member whose sign-in asks; nothing when it does not hold.
pub(super) async fn whoami(tx: &mut Tx) -> Done<Option<MemberRow>> {
    sqlx::query_as!(
        MemberRow,
        r#"SELECT signin_id AS "signin!", member_id AS "id!", name AS "name!", roles AS "roles!", passkeys AS "passkeys!",
             (SELECT name FROM practice) AS "practice!" FROM access.whoami()"#
    )
    .fetch_optional(&mut **tx)
    .await
}

/// That the sign-in was used now.
pub(super) async fn touch_signin(tx: &mut Tx) -> Done<()> {
    sqlx::query!("SELECT access.touch_signin()").execute(&mut **tx).await.map(drop)
}

pub(super) struct SeatRow {
    pub(super) id: Uuid,
    pub(super) session: Uuid,
    pub(super) state: String,
}

/// The seat that asks; nothing when it does not hold.
pub(super) async fn seat_state(tx: &mut Tx) -> Done<Option<SeatRow>> {
    sqlx::query_as!(SeatRow, r#"SELECT seat_id AS "id!", session_id AS "session!", state AS "state!" FROM access.seat_state()"#)
        .fetch_optional(&mut **tx)
        .await
}

/// Notes that the asker reached for a record of somebody else's; nothing when there is none of that id.
pub(super) async fn note_refused(tx: &mut Tx, which: Uuid) -> Done<()> {
    sqlx::query!("SELECT access.note_refused($1)", which).execute(&mut **tx).await.map(drop)
}

/// The IANA name of the zone of the practice's days.
pub(super) async fn zone(tx: &mut Tx) -> Done<String> {
    sqlx::query_scalar!("SELECT zone FROM practice").fetch_one(&mut **tx).await
}
