//! All SQL about clients.

use chrono::NaiveDate;
use uuid::Uuid;

use super::{Asked, Cautions, SealedDetails};
use crate::error::Error;
use crate::subject::Tx;

pub(super) async fn wrapped_key(tx: &mut Tx, client: Uuid) -> Result<Option<Vec<u8>>, sqlx::Error> {
    sqlx::query_scalar!("SELECT wrapped FROM client_key WHERE client_id = $1", client).fetch_optional(&mut **tx).await
}

pub(super) async fn take_on(tx: &mut Tx, link: Uuid, client: Uuid) -> Result<(), sqlx::Error> {
    sqlx::query!("SELECT access.take_on($1, $2)", link, client).execute(&mut **tx).await?;
    Ok(())
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

pub(super) async fn insert_details(tx: &mut Tx, client: Uuid, sealed: &SealedDetails) -> Result<(), sqlx::Error> {
    sqlx::query!(
        "INSERT INTO client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
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

fn read_cautions(seizures: &str, eye_condition: &str) -> Result<Cautions, Error> {
    Ok(Cautions {
        seizures: Asked::parse(seizures).ok_or(Error::Inconsistent("client.seizures"))?,
        eye_condition: Asked::parse(eye_condition).ok_or(Error::Inconsistent("client.eye_condition"))?,
    })
}

/// Whether the record is archived; locks its row.
pub(super) async fn lock(tx: &mut Tx, client: Uuid) -> Result<Option<bool>, sqlx::Error> {
    sqlx::query_scalar!(r#"SELECT archived_at IS NOT NULL AS "archived!" FROM client WHERE id = $1 FOR UPDATE"#, client)
        .fetch_optional(&mut **tx)
        .await
}

pub(super) async fn zone(tx: &mut Tx) -> Result<String, sqlx::Error> {
    sqlx::query_scalar!("SELECT zone FROM practice").fetch_one(&mut **tx).await
}
