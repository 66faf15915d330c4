//! SQL of mail.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

/// Where the asker is told; empty: not by mail.
pub(super) async fn own(tx: &mut Tx) -> sqlx::Result<String> {
    let address = sqlx::query_scalar!("SELECT address FROM mail_address WHERE member_id = access.me()").fetch_optional(&mut **tx).await?;
    Ok(address.unwrap_or_default())
}

/// The same, not to change until the transaction is over.
pub(super) async fn own_to_change(tx: &mut Tx) -> sqlx::Result<String> {
    let address =
        sqlx::query_scalar!("SELECT address FROM mail_address WHERE member_id = access.me() FOR UPDATE").fetch_optional(&mut **tx).await?;
    Ok(address.unwrap_or_default())
}

/// Keeps an address; false: it was not kept.
pub(super) async fn keep(tx: &mut Tx, address: &str, now: DateTime<Utc>) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "INSERT INTO mail_address (member_id, address, changed_at) SELECT access.me(), $1, $2
         ON CONFLICT (member_id) DO UPDATE SET address = excluded.address, changed_at = excluded.changed_at",
        address,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// One member who is to be told of one flag.
pub(super) struct Untold {
    pub(super) response: Uuid,
    pub(super) member: Uuid,
    pub(super) address: String,
}

/// All of them, the flag first that was raised first.
pub(super) async fn untold(tx: &mut Tx) -> sqlx::Result<Vec<Untold>> {
    sqlx::query_as!(
        Untold,
        r#"SELECT response_id AS "response!", member_id AS "member!", address AS "address!" FROM access.flags_to_mail()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// Writes down that `member` was told of the flag of `response`.
pub(super) async fn told(tx: &mut Tx, response: Uuid, member: Uuid) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT access.flag_mailed($1, $2) AS "so!""#, response, member).fetch_one(&mut **tx).await
}
