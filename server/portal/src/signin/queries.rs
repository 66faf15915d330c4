//! All SQL of sign-in: calls of the `access` functions, which alone reach its tables. Those that make somebody somebody run on
//! the connections for signing in.

use chrono::{DateTime, Utc};
use serde_json::Value;
use uuid::Uuid;

use crate::platform::Role;
use crate::store::subject::Tx;

type Done<T> = Result<T, sqlx::Error>;

pub(super) async fn begin_ceremony(tx: &mut Tx, hash: &[u8], state: &Value) -> Done<()> {
    sqlx::query!("SELECT access.begin_ceremony($1, $2)", hash, state).execute(&mut **tx).await.map(drop)
}

pub(super) async fn end_ceremony(tx: &mut Tx, hash: &[u8]) -> Done<Option<Value>> {
    sqlx::query_scalar!("SELECT access.end_ceremony($1)", hash).fetch_one(&mut **tx).await
}

/// Who an invitation is for.
pub(super) struct Invitee {
    /// Set when it adds a passkey to somebody who is a member already.
    pub(super) member: Option<Uuid>,
    pub(super) name: String,
}

pub(super) async fn open_invitation(tx: &mut Tx, hash: &[u8]) -> Done<Option<Invitee>> {
    sqlx::query_as!(Invitee, r#"SELECT member_id AS member, name AS "name!" FROM access.open_invitation($1)"#, hash)
        .fetch_optional(&mut **tx)
        .await
}

pub(super) async fn invite(tx: &mut Tx, hash: &[u8], member: Option<Uuid>, name: &str, roles: &[String], until: DateTime<Utc>) -> Done<()> {
    sqlx::query!("SELECT access.invite($1, $2, $3, $4, $5)", hash, member, name, roles, until).execute(&mut **tx).await.map(drop)
}

/// A passkey to be kept.
pub(super) struct NewPasskey {
    pub(super) id: Uuid,
    pub(super) credential: Vec<u8>,
    pub(super) passkey: Value,
    pub(super) label: String,
}

/// The member, or `None` when the invitation is not open any more.
pub(super) async fn accept_invitation(tx: &mut Tx, hash: &[u8], member: Uuid, new: &NewPasskey) -> Done<Option<Uuid>> {
    sqlx::query_scalar!(
        "SELECT access.accept_invitation($1, $2, $3, $4, $5, $6)",
        hash,
        member,
        new.id,
        new.credential,
        new.passkey,
        new.label
    )
    .fetch_one(&mut **tx)
    .await
}

/// That a member has shown a passkey again; false when the sign-in that asks is not theirs.
pub(super) async fn passkey_shown(tx: &mut Tx, member: Uuid) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.passkey_shown($1) AS "done!""#, member).fetch_one(&mut **tx).await
}

/// Whether the passkey was shown lately enough for what decides who gets at records.
pub(crate) async fn is_fresh(tx: &mut Tx) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.is_fresh() AS "fresh!""#).fetch_one(&mut **tx).await
}

pub(super) async fn passkeys_of(tx: &mut Tx, member: Uuid) -> Done<Vec<(Uuid, Value)>> {
    let rows =
        sqlx::query!(r#"SELECT id AS "id!", passkey AS "passkey!" FROM access.passkeys_of($1)"#, member).fetch_all(&mut **tx).await?;
    Ok(rows.into_iter().map(|row| (row.id, row.passkey)).collect())
}

pub(super) async fn passkey_used(tx: &mut Tx, id: Uuid, newer: &Value) -> Done<()> {
    sqlx::query!("SELECT access.passkey_used($1, $2)", id, newer).execute(&mut **tx).await.map(drop)
}

/// False when the member has left.
pub(super) async fn open_signin(tx: &mut Tx, id: Uuid, hash: &[u8], member: Uuid, device: &str) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.open_signin($1, $2, $3, $4) AS "open!""#, id, hash, member, device).fetch_one(&mut **tx).await
}

pub(super) async fn close_signin(tx: &mut Tx, id: Uuid) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.close_signin($1) AS "closed!""#, id).fetch_one(&mut **tx).await
}

pub(super) async fn end_membership(tx: &mut Tx, member: Uuid) -> Done<()> {
    sqlx::query!(r#"SELECT access.end_membership($1) AS "signin!""#, member).fetch_all(&mut **tx).await.map(drop)
}

/// False when the member has other roles than `were` by now, or it would take the asker's own administration away.
pub(super) async fn change_roles(tx: &mut Tx, member: Uuid, were: &[String], wanted: &[String]) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.change_roles($1, $2, $3) AS "done!""#, member, were, wanted).fetch_one(&mut **tx).await
}

pub(super) async fn ask_replacement(tx: &mut Tx, id: Uuid, member: Uuid) -> Done<()> {
    sqlx::query!("SELECT access.ask_replacement($1, $2)", id, member).execute(&mut **tx).await.map(drop)
}

/// The member whose passkey will be replaced; nothing when the asker has nothing to agree to.
pub(super) async fn agree_replacement(tx: &mut Tx, id: Uuid, hash: &[u8], until: DateTime<Utc>) -> Done<Option<Uuid>> {
    sqlx::query_scalar!("SELECT access.agree_replacement($1, $2, $3)", id, hash, until).fetch_one(&mut **tx).await
}

/// False when there is none, or it is not the asker's to refuse.
pub(super) async fn refuse_replacement(tx: &mut Tx, id: Uuid) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.refuse_replacement($1) AS "done!""#, id).fetch_one(&mut **tx).await
}

/// A lost passkey whose replacement waits for a second person, or was agreed to and not made yet.
pub(super) struct ReplacementRow {
    pub(super) id: Uuid,
    pub(super) name: String,
    /// Nothing: the owner's command.
    pub(super) asked_by: Option<String>,
    /// `waits` for the asker's agreement, or why not: `agreed`, `about_me`, `asked_by_me`, `too_new`.
    pub(super) state: String,
    pub(super) asked_at: DateTime<Utc>,
    pub(super) ends_at: DateTime<Utc>,
}

pub(super) async fn replacements(tx: &mut Tx) -> Done<Vec<ReplacementRow>> {
    sqlx::query_as!(
        ReplacementRow,
        r#"SELECT id AS "id!", name AS "name!", asked_by, state AS "state!", asked_at AS "asked_at!", ends_at AS "ends_at!"
           FROM access.replacements()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// A client as whoever hands over may know it.
pub(crate) struct ClientRow {
    pub(crate) client: Uuid,
    /// The number of the record.
    pub(crate) number: i32,
    /// Nobody else treats them.
    pub(crate) alone: bool,
    /// A session of theirs that is open.
    pub(crate) session: Option<Uuid>,
}

/// The clients of a member, or with `None` those whom nobody treats; empty for who may not hand over.
pub(crate) async fn clients_of(tx: &mut Tx, member: Option<Uuid>) -> Done<Vec<ClientRow>> {
    sqlx::query_as!(
        ClientRow,
        r#"SELECT client_id AS "client!", number AS "number!", alone AS "alone!", session_id AS session FROM access.clients_of($1)"#,
        member
    )
    .fetch_all(&mut **tx)
    .await
}

/// What somebody has not read yet.
pub(super) struct NewsRow {
    pub(super) id: Uuid,
    pub(super) kind: String,
    pub(super) number: Option<i32>,
    pub(super) about: Option<String>,
    pub(super) by: Option<String>,
    pub(super) at: DateTime<Utc>,
}

pub(super) async fn news(tx: &mut Tx) -> Done<Vec<NewsRow>> {
    sqlx::query_as!(NewsRow, r#"SELECT id AS "id!", kind AS "kind!", number, about, by_name AS by, at AS "at!" FROM access.my_news()"#)
        .fetch_all(&mut **tx)
        .await
}

/// False when it is nothing of one's own.
pub(super) async fn read_news(tx: &mut Tx, which: Uuid) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.news_read($1) AS "read!""#, which).fetch_one(&mut **tx).await
}

pub(super) async fn demo_member(tx: &mut Tx, role: Role) -> Done<Option<Uuid>> {
    sqlx::query_scalar!("SELECT access.demo_member($1)", role.name()).fetch_one(&mut **tx).await
}

pub(super) async fn remove_passkey(tx: &mut Tx, id: Uuid) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.remove_passkey($1) AS "removed!""#, id).fetch_one(&mut **tx).await
}

pub(super) async fn withdraw_invitation(tx: &mut Tx, hash: &[u8]) -> Done<bool> {
    sqlx::query_scalar!(r#"SELECT access.withdraw_invitation($1) AS "withdrawn!""#, hash).fetch_one(&mut **tx).await
}

/// One of one's own sign-ins.
pub(super) struct SigninRow {
    pub(super) id: Uuid,
    pub(super) device: String,
    pub(super) opened_at: DateTime<Utc>,
    pub(super) seen_at: DateTime<Utc>,
}

pub(super) async fn my_signins(tx: &mut Tx) -> Done<Vec<SigninRow>> {
    sqlx::query_as!(
        SigninRow,
        r#"SELECT id AS "id!", device AS "device!", opened_at AS "opened_at!", seen_at AS "seen_at!" FROM access.my_signins()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// One of one's own passkeys.
pub(super) struct PasskeyRow {
    pub(super) id: Uuid,
    pub(super) label: String,
    /// Whether its maker may copy it to other devices.
    pub(super) synced: bool,
    pub(super) added_at: DateTime<Utc>,
    pub(super) used_at: Option<DateTime<Utc>>,
}

pub(super) async fn my_passkeys(tx: &mut Tx) -> Done<Vec<PasskeyRow>> {
    sqlx::query_as!(
        PasskeyRow,
        r#"SELECT id AS "id!", label AS "label!", synced AS "synced!", added_at AS "added_at!", used_at FROM access.my_passkeys()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// A member of the practice, in or out.
pub(super) struct MemberRow {
    pub(super) id: Uuid,
    pub(super) name: String,
    pub(super) roles: Vec<String>,
    pub(super) joined_at: DateTime<Utc>,
    pub(super) left_at: Option<DateTime<Utc>>,
    pub(super) passkeys: i64,
}

pub(super) async fn members(tx: &mut Tx) -> Done<Vec<MemberRow>> {
    sqlx::query_as!(
        MemberRow,
        r#"SELECT id AS "id!", name AS "name!", roles AS "roles!", joined_at AS "joined_at!", left_at, passkeys AS "passkeys!"
           FROM access.members()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// An invitation that still opens something.
pub(super) struct InvitationRow {
    pub(super) hash: Vec<u8>,
    pub(super) name: String,
    pub(super) roles: Vec<String>,
    pub(super) ends_at: DateTime<Utc>,
}

pub(super) async fn invitations(tx: &mut Tx) -> Done<Vec<InvitationRow>> {
    sqlx::query_as!(
        InvitationRow,
        r#"SELECT hash AS "hash!", name AS "name!", roles AS "roles!", ends_at AS "ends_at!" FROM access.invitations()"#
    )
    .fetch_all(&mut **tx)
    .await
}
