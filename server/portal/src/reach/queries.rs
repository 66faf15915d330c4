//! SQL of reaching clients and help.

use chrono::{DateTime, NaiveDate, Utc};
use uuid::Uuid;

use super::{Reach, Use};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened};
use crate::store::subject::Tx;

pub(super) struct Row {
    phone_use: String,
    contact_use: String,
    help_from_here: Vec<u8>,
    tried_on: Option<NaiveDate>,
    help_there: Vec<u8>,
    version: i32,
}

impl Row {
    pub(super) fn open(self, key: &ClientKey, client: Uuid) -> Result<(Reach<Opened>, i32), Error> {
        let row = key.row(client, self.version);
        let reach = Reach {
            phone: Use::parse(&self.phone_use).ok_or(Error::Inconsistent("client_reach.phone_use"))?,
            contact: Use::parse(&self.contact_use).ok_or(Error::Inconsistent("client_reach.contact_use"))?,
            help_from_here: row.open(Field::ReachHelpFromHere, &self.help_from_here),
            tried_on: self.tried_on,
            help_there: row.open(Field::ReachHelpThere, &self.help_there),
        };
        Ok((reach, self.version))
    }
}

pub(super) async fn reach(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<Row>> {
    sqlx::query_as!(
        Row,
        "SELECT phone_use, contact_use, help_from_here, tried_on, help_there, version FROM client_reach WHERE client_id = $1",
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// The numbers at one version, sealed.
pub(super) struct Sealed {
    pub(super) help_from_here: Vec<u8>,
    pub(super) help_there: Vec<u8>,
}

/// Keeps it at this version. False when the row is not at the one before any more.
pub(super) async fn keep(
    tx: &mut Tx,
    client: Uuid,
    reach: &Reach,
    sealed: &Sealed,
    (version, at): (i32, DateTime<Utc>),
) -> Result<bool, Error> {
    let done = sqlx::query!(
        "INSERT INTO client_reach AS r (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
         ON CONFLICT (client_id) DO UPDATE SET (phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version)
           = (EXCLUDED.phone_use, EXCLUDED.contact_use, EXCLUDED.help_from_here, EXCLUDED.tried_on, EXCLUDED.help_there,
              EXCLUDED.written_at, EXCLUDED.version)
           WHERE r.version = EXCLUDED.version - 1",
        client,
        reach.phone.name(),
        reach.contact.name(),
        sealed.help_from_here,
        reach.tried_on,
        sealed.help_there,
        at,
        version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
