//! SQL of safety plans.

use chrono::{DateTime, NaiveDate, Utc};
use uuid::Uuid;

use super::{PARTS, SafetyPlan};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened};
use crate::store::subject::Tx;

pub(super) struct Row {
    signs: Vec<u8>,
    helps: Vec<u8>,
    people: Vec<u8>,
    places: Vec<u8>,
    professionals: Vec<u8>,
    surroundings: Vec<u8>,
    review_on: Option<NaiveDate>,
    version: i32,
}

impl Row {
    /// The plan and its version.
    pub(super) fn open(self, key: &ClientKey, client: Uuid) -> (SafetyPlan<Opened>, i32) {
        let row = key.row(client, self.version);
        let sealed = [self.signs, self.helps, self.people, self.places, self.professionals, self.surroundings];
        let parts = std::array::from_fn(|at| row.open(PARTS[at].field, &sealed[at]));
        (SafetyPlan { parts, review_on: self.review_on }, self.version)
    }
}

pub(super) async fn plan(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<Row>> {
    sqlx::query_as!(
        Row,
        "SELECT signs, helps, people, places, professionals, surroundings, review_on, version FROM safety_plan WHERE client_id = $1",
        client
    )
    .fetch_optional(&mut **tx)
    .await
}

/// The parts at one version, sealed.
pub(super) struct Sealed {
    pub(super) signs: Vec<u8>,
    pub(super) helps: Vec<u8>,
    pub(super) people: Vec<u8>,
    pub(super) places: Vec<u8>,
    pub(super) professionals: Vec<u8>,
    pub(super) surroundings: Vec<u8>,
}

/// Keeps a plan at this version. False when the row is not at the one before any more.
pub(super) async fn keep(
    tx: &mut Tx,
    client: Uuid,
    sealed: &Sealed,
    review_on: Option<NaiveDate>,
    (version, at): (i32, DateTime<Utc>),
) -> Result<bool, Error> {
    let done = sqlx::query!(
        "INSERT INTO safety_plan AS s (client_id, signs, helps, people, places, professionals, surroundings, review_on, written_at, version)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)
         ON CONFLICT (client_id) DO UPDATE SET (signs, helps, people, places, professionals, surroundings, review_on, written_at, version)
           = (EXCLUDED.signs, EXCLUDED.helps, EXCLUDED.people, EXCLUDED.places, EXCLUDED.professionals, EXCLUDED.surroundings,
              EXCLUDED.review_on, EXCLUDED.written_at, EXCLUDED.version)
           WHERE s.version = EXCLUDED.version - 1",
        client,
        sealed.signs,
        sealed.helps,
        sealed.people,
        sealed.places,
        sealed.professionals,
        sealed.surroundings,
        review_on,
        at,
        version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
