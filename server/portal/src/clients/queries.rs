//! All SQL about clients.

use chrono::{DateTime, NaiveDate, Utc};
use uuid::Uuid;

use super::{Asked, Cautions, Kind, SealedDetails};
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn wrapped_key(tx: &mut Tx, client: Uuid) -> Result<Option<Vec<u8>>, sqlx::Error> {
    sqlx::query_scalar!("SELECT wrapped FROM client_key WHERE client_id = $1", client).fetch_optional(&mut **tx).await
}

pub(super) async fn take_on(tx: &mut Tx, link: Uuid, client: Uuid, kind: Kind) -> Result<(), sqlx::Error> {
    match kind {
        Kind::Treated => sqlx::query!("SELECT access.take_on($1, $2)", link, client).execute(&mut **tx).await?,
        Kind::Rehearsal => sqlx::query!("SELECT access.take_on_rehearsal($1, $2)", link, client).execute(&mut **tx).await?,
    };
    Ok(())
}

/// The asker's pretend client; locks the asker's row until the end of the transaction, so that two
/// requests cannot make two.
pub(super) async fn my_rehearsal_locked(tx: &mut Tx) -> Result<Option<Uuid>, sqlx::Error> {
    sqlx::query_scalar!("SELECT access.my_rehearsal()").fetch_one(&mut **tx).await
}

/// The asker's pretend client.
pub(super) async fn my_rehearsal(tx: &mut Tx) -> Result<Option<Uuid>, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT id AS "id!" FROM access.rehearsals() id WHERE id IN (SELECT access.my_clients())"#)
        .fetch_optional(&mut **tx)
        .await
}

pub(super) async fn is_rehearsal(tx: &mut Tx, client: Uuid) -> Result<bool, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT $1 IN (SELECT access.rehearsals()) AS "so!""#, client).fetch_one(&mut **tx).await
}

pub(super) async fn insert_client(tx: &mut Tx, client: Uuid, opened_on: NaiveDate, cautions: Cautions) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO client (id, opened_on, seizures, eye_condition, version) VALUES ($1, $2, $3, $4, 1)",
        client,
        opened_on,
        cautions.seizures.name(),
        cautions.eye_condition.name()
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

pub(super) async fn insert_key(tx: &mut Tx, client: Uuid, key: i32, wrapped: &[u8]) -> Result<(), sqlx::Error> {
    sqlx::query!("INSERT INTO client_key (client_id, key_id, wrapped) VALUES ($1, $2, $3)", client, key, wrapped)
        .execute(&mut **tx)
        .await?;
    Ok(())
}

/// Keeps the details of a client, the first ones or the next.
pub(super) async fn keep_details(tx: &mut Tx, client: Uuid, sealed: &SealedDetails) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
         ON CONFLICT (client_id) DO UPDATE SET (name, addressed_as, phone, contact_name, contact_phone, usual_location, version)
           = (EXCLUDED.name, EXCLUDED.addressed_as, EXCLUDED.phone, EXCLUDED.contact_name, EXCLUDED.contact_phone, EXCLUDED.usual_location,
              EXCLUDED.version)",
        client,
        sealed.name,
        sealed.addressed_as,
        sealed.phone,
        sealed.contact_name,
        sealed.contact_phone,
        sealed.usual_location,
        sealed.version
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

pub(super) async fn details(tx: &mut Tx, client: Uuid) -> Result<Option<SealedDetails>, sqlx::Error> {
    sqlx::query_as!(
        SealedDetails,
        "SELECT name, addressed_as, phone, contact_name, contact_phone, usual_location, version FROM client_details WHERE client_id = $1",
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

pub(super) async fn cautions(tx: &mut Tx, client: Uuid) -> Result<Option<Cautions>, Error> {
    let row = sqlx::query!("SELECT seizures, eye_condition FROM client WHERE id = $1", client).fetch_optional(&mut **tx).await?;
    row.map(|row| read_cautions(&row.seizures, &row.eye_condition)).transpose()
}

/// What the columns of the cautions say.
///
/// # Errors
/// [`Error::Inconsistent`] when they say nothing that is known.
pub(crate) fn read_cautions(seizures: &str, eye_condition: &str) -> Result<Cautions, Error> {
    Ok(Cautions {
        seizures: Asked::parse(seizures).ok_or(Error::Inconsistent("client.seizures"))?,
        eye_condition: Asked::parse(eye_condition).ok_or(Error::Inconsistent("client.eye_condition"))?,
    })
}

/// Whether a form of theirs raised a flag about which nobody has written down what was done.
pub(super) async fn has_open_flag(tx: &mut Tx, client: Uuid) -> Result<bool, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM risk_flag WHERE client_id = $1 AND done IS NULL) AS "so!""#, client)
        .fetch_one(&mut **tx)
        .await
}

/// Whether the record is archived; locks its row.
pub(super) async fn lock(tx: &mut Tx, client: Uuid) -> Result<Option<bool>, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT archived_at IS NOT NULL AS "archived!" FROM client WHERE id = $1 FOR UPDATE"#, client)
        .fetch_optional(&mut **tx)
        .await
}

/// What is not sealed about a client.
pub(crate) struct ClientRow {
    pub(crate) number: i32,
    pub(crate) opened_on: NaiveDate,
    pub(crate) archived_at: Option<DateTime<Utc>>,
    pub(crate) cautions: Cautions,
    pub(crate) version: i32,
}

pub(crate) async fn client(tx: &mut Tx, client: Uuid) -> Result<Option<ClientRow>, Error> {
    let row = sqlx::query!("SELECT number, opened_on, archived_at, seizures, eye_condition, version FROM client WHERE id = $1", client)
        .fetch_optional(&mut **tx)
        .await?;
    let Some(row) = row else { return Ok(None) };
    Ok(Some(ClientRow {
        number: row.number,
        opened_on: row.opened_on,
        archived_at: row.archived_at,
        cautions: read_cautions(&row.seizures, &row.eye_condition)?,
        version: row.version,
    }))
}

/// False when the row is not at `version` any more.
pub(super) async fn change_client(tx: &mut Tx, client: Uuid, version: i32, cautions: Cautions) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE client SET seizures = $3, eye_condition = $4, version = version + 1 WHERE id = $1 AND version = $2",
        client,
        version,
        cautions.seizures.name(),
        cautions.eye_condition.name()
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Archives, or with no time restores. False when the row is not at `version` any more.
pub(super) async fn archive(tx: &mut Tx, client: Uuid, version: i32, at: Option<DateTime<Utc>>) -> Result<bool, sqlx::Error> {
    let done =
        sqlx::query!("UPDATE client SET archived_at = $3, version = version + 1 WHERE id = $1 AND version = $2", client, version, at)
            .execute(&mut **tx)
            .await?;
    Ok(done.rows_affected() == 1)
}

pub(super) async fn has_open_session(tx: &mut Tx, client: Uuid) -> Result<bool, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT EXISTS (SELECT FROM session WHERE client_id = $1 AND ended_at IS NULL) AS "open!""#, client)
        .fetch_one(&mut **tx)
        .await
}
