//! SQL of the store itself: who asks, the trail, what is done once, the check of the key.

use uuid::Uuid;

use super::subject::Tx;

type Done<T> = Result<T, sqlx::Error>;

/// Says for this transaction who asks, by what token, and at what time.
pub(super) async fn say_who(connection: &mut sqlx::PgConnection, kind: &str, token: &str, now: &str) -> Done<()> {
    let settings = sqlx::query!(
        "SELECT set_config('leeward.kind', $1, true) AS a, set_config('leeward.token', $2, true) AS b, set_config('leeward.now', $3, true) AS c",
        kind,
        token,
        now
    );
    settings.fetch_one(connection).await.map(drop)
}

/// A row of the trail.
pub(super) async fn audit(connection: &mut sqlx::PgConnection, act: &str, client: Option<Uuid>, object: Option<Uuid>) -> Done<()> {
    sqlx::query!("SELECT access.audit($1, $2, $3)", act, client, object).execute(connection).await.map(drop)
}

pub(super) struct BegunRow {
    /// Nothing was done under this key yet.
    pub(super) fresh: bool,
    /// What was done under it said the same.
    pub(super) same: bool,
    /// How that was answered, as JSON.
    pub(super) answer: Option<String>,
}

/// Takes the key of a request; nothing for anybody but a member.
pub(super) async fn begin_request(tx: &mut Tx, key: Uuid, act: &str, body: &[u8]) -> Done<Option<BegunRow>> {
    sqlx::query_as!(BegunRow, r#"SELECT fresh AS "fresh!", same AS "same!", answer FROM access.begin_request($1, $2, $3)"#, key, act, body)
        .fetch_optional(&mut **tx)
        .await
}

/// Keeps the answer beside the key; false when the key is not there.
pub(super) async fn answer_request(tx: &mut Tx, key: Uuid, answer: &str) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.answer_request($1, $2) AS "kept!""#, key, answer).fetch_one(&mut **tx).await
}

/// Numbers of the keys that something is sealed under.
pub(super) async fn keys_in_use(tx: &mut Tx) -> Done<Vec<i32>> {
    sqlx::query_scalar!(r#"SELECT id AS "id!" FROM access.keys_in_use() id"#).fetch_all(&mut **tx).await
}

pub(super) struct WrappedRow {
    pub(super) client: Uuid,
    pub(super) wrapped: Vec<u8>,
}

/// Clients' keys wrapped by this key, while no check value stands.
pub(super) async fn keys_to_try(tx: &mut Tx, key: i32) -> Done<Vec<WrappedRow>> {
    sqlx::query_as!(WrappedRow, r#"SELECT client_id AS "client!", wrapped AS "wrapped!" FROM access.keys_to_try($1)"#, key)
        .fetch_all(&mut **tx)
        .await
}

/// The check value of this key, when there is one.
pub(super) async fn key_check(tx: &mut Tx, key: i32) -> Done<Option<Vec<u8>>> {
    sqlx::query_scalar!("SELECT access.key_check($1)", key).fetch_one(&mut **tx).await
}

/// Keeps a check value unless there is one. Returns the one that stands.
pub(super) async fn keep_key_check(tx: &mut Tx, key: i32, fresh: &[u8]) -> Done<Vec<u8>> {
    sqlx::query_scalar!(r#"SELECT access.keep_key_check($1, $2) AS "standing!""#, key, fresh).fetch_one(&mut **tx).await
}

/// Waits until nobody else folds what is kept of these treatments or targets, and holds such folds up until the transaction ends: `fold_sessions` and
/// `fold_still` take the same locks.
///
/// # Errors
/// When the database does not answer.
pub(crate) async fn hold_folds(tx: &mut sqlx::PgConnection, of: &[Uuid]) -> Done<()> {
    let locked = sqlx::query_scalar!(
        r#"SELECT count(pg_advisory_xact_lock(hashtextextended(id::text, 32))) AS "count!" FROM unnest($1::uuid[]) id"#,
        of
    );
    locked.fetch_one(tx).await?;
    Ok(())
}
