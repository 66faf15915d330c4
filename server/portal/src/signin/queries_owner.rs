//! SQL of what is done from the terminal, as the database's owner. Each act leaves its row in the trail.

use chrono::{DateTime, Utc};
use sqlx::PgConnection;
use uuid::Uuid;

type Done<T> = Result<T, sqlx::Error>;

/// Says for this transaction that the owner acts, and at what time.
pub(super) async fn say_owner(db: &mut PgConnection, now: &str) -> Done<()> {
    let settings =
        sqlx::query!("SELECT set_config('leeward.kind', 'owner', true) AS kind, set_config('leeward.now', $1, true) AS now", now);
    settings.fetch_one(db).await.map(drop)
}

pub(super) async fn invite(db: &mut PgConnection, hash: &[u8], name: &str, roles: &[String], until: DateTime<Utc>) -> Done<()> {
    sqlx::query!("SELECT access.invite($1, NULL, $2, $3, $4)", hash, name, roles, until).execute(&mut *db).await?;
    sqlx::query!("SELECT access.audit('member.invite', NULL, NULL)").execute(db).await.map(drop)
}

pub(super) async fn ask_replacement(db: &mut PgConnection, id: Uuid, member: Uuid) -> Done<()> {
    sqlx::query!("SELECT access.ask_replacement($1, $2)", id, member).execute(&mut *db).await?;
    sqlx::query!("SELECT access.audit('replacement.ask', NULL, $1)", member).execute(db).await.map(drop)
}

/// The replacement that waits for somebody's agreement.
pub(super) async fn replacement_of(db: &mut PgConnection, member: Uuid) -> Done<Option<Uuid>> {
    sqlx::query_scalar!(r#"SELECT id AS "id!" FROM access.replacements() WHERE member_id = $1 AND state = 'waits'"#, member)
        .fetch_optional(db)
        .await
}

/// Agrees; the member, or nothing when there is nothing to agree to.
pub(super) async fn agree_replacement(db: &mut PgConnection, which: Uuid, hash: &[u8], until: DateTime<Utc>) -> Done<Option<Uuid>> {
    let agreed = sqlx::query_scalar!("SELECT access.agree_replacement($1, $2, $3)", which, hash, until).fetch_one(&mut *db).await?;
    sqlx::query!("SELECT access.audit('replacement.agree', NULL, $1)", which).execute(db).await?;
    Ok(agreed)
}

/// Members of this name who have not left.
pub(super) async fn members_called(db: &mut PgConnection, name: &str) -> Done<Vec<Uuid>> {
    sqlx::query_scalar!("SELECT id FROM access.member WHERE name = $1 AND left_at IS NULL", name).fetch_all(db).await
}
