//! SQL of what steadies clients.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::{Helped, KeptResource, Resource, Steadying};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened};
use crate::store::subject::Tx;

pub(super) struct LinesRow {
    signs: Vec<u8>,
    way_back: Vec<u8>,
    first_words: Vec<u8>,
    version: i32,
}

impl LinesRow {
    /// The lines and their version.
    pub(super) fn open(self, key: &ClientKey, client: Uuid) -> (Steadying<Opened>, i32) {
        let row = key.row(client, self.version);
        let signs = row.open(Field::SteadyingSigns, &self.signs);
        let way_back = row.open(Field::SteadyingWayBack, &self.way_back);
        let first_words = row.open(Field::SteadyingFirstWords, &self.first_words);
        (Steadying { lines: [signs, way_back, first_words] }, self.version)
    }
}

pub(super) async fn steadying(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<LinesRow>> {
    sqlx::query_as!(LinesRow, "SELECT signs, way_back, first_words, version FROM steadying WHERE client_id = $1", client)
        .fetch_optional(&mut **tx)
        .await
}

/// The lines at one version, sealed.
pub(super) struct SealedLines {
    pub(super) signs: Vec<u8>,
    pub(super) way_back: Vec<u8>,
    pub(super) first_words: Vec<u8>,
}

/// Keeps the lines at this version. False when the row is not at the one before any more.
pub(super) async fn keep(tx: &mut Tx, client: Uuid, sealed: &SealedLines, (version, at): (i32, DateTime<Utc>)) -> Result<bool, Error> {
    let done = sqlx::query!(
        "INSERT INTO steadying AS s (client_id, signs, way_back, first_words, written_at, version) VALUES ($1, $2, $3, $4, $5, $6)
         ON CONFLICT (client_id) DO UPDATE SET (signs, way_back, first_words, written_at, version)
           = (EXCLUDED.signs, EXCLUDED.way_back, EXCLUDED.first_words, EXCLUDED.written_at, EXCLUDED.version)
           WHERE s.version = EXCLUDED.version - 1",
        client,
        sealed.signs,
        sealed.way_back,
        sealed.first_words,
        at,
        version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

pub(super) struct ResourceRow {
    pub(super) id: Uuid,
    number: i32,
    cue: Vec<u8>,
    image: Vec<u8>,
    body_feeling: Vec<u8>,
    helped: String,
    on_offer: bool,
    found_at: DateTime<Utc>,
    pub(super) version: i32,
}

impl ResourceRow {
    pub(super) fn open(self, key: &ClientKey) -> Result<KeptResource, Error> {
        let row = key.row(self.id, self.version);
        let resource = Resource {
            cue: row.open(Field::ResourceCue, &self.cue),
            image: row.open(Field::ResourceImage, &self.image),
            body_feeling: row.open(Field::ResourceBodyFeeling, &self.body_feeling),
            helped: Helped::parse(&self.helped).ok_or(Error::Inconsistent("resource.helped"))?,
            on_offer: self.on_offer,
        };
        Ok(KeptResource { number: self.number, resource, found_at: self.found_at, version: self.version })
    }
}

pub(super) async fn resources(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<ResourceRow>> {
    sqlx::query_as!(
        ResourceRow,
        "SELECT id, number, cue, image, body_feeling, helped, on_offer, found_at, version FROM resource WHERE client_id = $1 ORDER BY number",
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// The one of this number, locked until the end of the transaction.
pub(super) async fn resource(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<ResourceRow>> {
    sqlx::query_as!(
        ResourceRow,
        "SELECT id, number, cue, image, body_feeling, helped, on_offer, found_at, version FROM resource
         WHERE client_id = $1 AND number = $2 FOR NO KEY UPDATE",
        client,
        number
    )
    .fetch_optional(&mut **tx)
    .await
}

/// A resource at one version, sealed.
pub(super) struct SealedResource {
    pub(super) cue: Vec<u8>,
    pub(super) image: Vec<u8>,
    pub(super) body_feeling: Vec<u8>,
    pub(super) helped: Helped,
    pub(super) on_offer: bool,
}

/// Adds one. The client's row is locked, so that numbers are given one at a time.
pub(super) async fn add(tx: &mut Tx, id: Uuid, client: Uuid, sealed: &SealedResource, now: DateTime<Utc>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO resource (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version)
         SELECT $1, $2, coalesce(max(r.number), 0) + 1, $3, $4, $5, $6, $7, $8, 1 FROM resource r WHERE r.client_id = $2",
        id,
        client,
        sealed.cue,
        sealed.image,
        sealed.body_feeling,
        sealed.helped.name(),
        sealed.on_offer,
        now
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Changes one to this version. False when it is not at the one before any more.
pub(super) async fn change(tx: &mut Tx, id: Uuid, sealed: &SealedResource, version: i32) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE resource SET cue = $2, image = $3, body_feeling = $4, helped = $5, on_offer = $6, version = $7
         WHERE id = $1 AND version = $7 - 1",
        id,
        sealed.cue,
        sealed.image,
        sealed.body_feeling,
        sealed.helped.name(),
        sealed.on_offer,
        version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
