//! SQL of who asks, and of how the practice writes its days and times.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::when::{Style, When};
use crate::store::error::Error;
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
    /// The IANA name of its zone.
    pub(super) zone: String,
}

/// The member whose sign-in asks; nothing when it does not hold.
pub(super) async fn whoami(tx: &mut Tx) -> Done<Option<MemberRow>> {
    sqlx::query_as!(
        MemberRow,
        r#"SELECT w.signin_id AS "signin!", w.member_id AS "id!", w.name AS "name!", w.roles AS "roles!", w.passkeys AS "passkeys!",
             p.name AS practice, p.zone FROM access.whoami() w, practice p"#
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

/// What the errand that asks is for; nothing when its link does not hold.
pub(super) async fn errand(tx: &mut Tx) -> Done<Option<Uuid>> {
    sqlx::query_scalar!("SELECT access.my_errand()").fetch_one(&mut **tx).await
}

/// Notes that the asker reached for a record of somebody else's; nothing when there is none of that id.
pub(super) async fn note_refused(tx: &mut Tx, which: Uuid) -> Done<()> {
    sqlx::query!("SELECT access.note_refused($1)", which).execute(&mut **tx).await.map(drop)
}

/// The zone of the practice's days, and how it writes them.
pub(super) async fn when(tx: &mut Tx) -> Result<When, Error> {
    let row = sqlx::query!("SELECT zone, day_order, clock FROM practice").fetch_one(&mut **tx).await?;
    Ok(When::new(&row.zone, Style::read(&row.day_order, row.clock)?))
}

/// A request that was kept some minutes ago at most.
pub(super) struct KeptRow {
    /// As JSON: see `once::Answer`.
    pub(super) answer: String,
    pub(super) at: DateTime<Utc>,
}

/// The asker's own request of that key; nothing when there is none, or it was kept longer ago.
pub(super) async fn saved_now(tx: &mut Tx, key: Uuid) -> Done<Option<KeptRow>> {
    sqlx::query_as!(KeptRow, r#"SELECT answer AS "answer!", at AS "at!" FROM access.saved_now($1)"#, key).fetch_optional(&mut **tx).await
}
