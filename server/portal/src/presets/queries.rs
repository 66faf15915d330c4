//! All SQL of presets. Row security hides those of other clinicians.

use chrono::{DateTime, Utc};
use leeward_core::wire::{Channels, Length, Preset};
use uuid::Uuid;

use super::{Owner, StoredPreset, parse_purpose, purpose_name};
use crate::store::error::Error;
use crate::store::subject::Tx;

struct Row {
    id: Uuid,
    mine: bool,
    name: String,
    purpose: String,
    eyes: bool,
    ears: bool,
    hands: bool,
    rate: f64,
    width: f64,
    cycles: Option<i32>,
    archived: bool,
    version: i32,
}

impl Row {
    fn read(self) -> Result<StoredPreset, Error> {
        let cycles = self.cycles.map(u32::try_from).transpose().map_err(|_| Error::Inconsistent("preset.cycles"))?;
        Ok(StoredPreset {
            id: self.id,
            owner: if self.mine { Owner::Mine } else { Owner::Practice },
            preset: Preset {
                name: self.name,
                purpose: parse_purpose(&self.purpose).ok_or(Error::Inconsistent("preset.purpose"))?,
                channels: Channels { eyes: self.eyes, ears: self.ears, hands: self.hands },
                rate: self.rate,
                width: self.width,
                length: cycles.map_or(Length::Open, Length::Cycles),
            },
            archived: self.archived,
            version: self.version,
        })
    }
}

fn cycles(length: Length) -> Result<Option<i32>, Error> {
    match length {
        Length::Open => Ok(None),
        Length::Cycles(cycles) => i32::try_from(cycles).map(Some).map_err(|_| Error::Inconsistent("preset.cycles")),
    }
}

/// All that the asker may use, the archived ones too; see [`super::on_offer`] for the order.
pub(super) async fn presets(tx: &mut Tx) -> Result<Vec<StoredPreset>, Error> {
    let rows = sqlx::query_as!(
        Row,
        r#"SELECT id, member_id IS NOT NULL AS "mine!", name, purpose, eyes, ears, hands, rate, width, cycles,
             put_away_at IS NOT NULL AS "archived!", version
           FROM preset ORDER BY purpose = 'calm_place', member_id IS NOT NULL, made_at, rate, name"#
    );
    rows.fetch_all(&mut **tx).await?.into_iter().map(Row::read).collect()
}

pub(super) async fn preset(tx: &mut Tx, id: Uuid) -> Result<Option<StoredPreset>, Error> {
    let row = sqlx::query_as!(
        Row,
        r#"SELECT id, member_id IS NOT NULL AS "mine!", name, purpose, eyes, ears, hands, rate, width, cycles,
             put_away_at IS NOT NULL AS "archived!", version
           FROM preset WHERE id = $1"#,
        id
    );
    row.fetch_optional(&mut **tx).await?.map(Row::read).transpose()
}

pub(super) async fn insert(tx: &mut Tx, id: Uuid, owner: Owner, preset: &Preset, at: DateTime<Utc>) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, version)
         VALUES ($1, CASE WHEN $2 THEN access.me() END, $3, $4, $5, $6, $7, $8, $9, $10, $11, 1)",
        id,
        owner == Owner::Mine,
        preset.name,
        purpose_name(preset.purpose),
        preset.channels.eyes,
        preset.channels.ears,
        preset.channels.hands,
        preset.rate,
        preset.width,
        cycles(preset.length)?,
        at
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// False when it is not at `version` any more.
pub(super) async fn change(tx: &mut Tx, id: Uuid, version: i32, preset: &Preset) -> Result<bool, Error> {
    let done = sqlx::query!(
        "UPDATE preset SET name = $3, purpose = $4, eyes = $5, ears = $6, hands = $7, rate = $8, width = $9, cycles = $10, version = version + 1
         WHERE id = $1 AND version = $2",
        id,
        version,
        preset.name,
        purpose_name(preset.purpose),
        preset.channels.eyes,
        preset.channels.ears,
        preset.channels.hands,
        preset.rate,
        preset.width,
        cycles(preset.length)?
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Takes it off the lists, or with no time puts it back. False when it is not at `version` any more.
pub(super) async fn archive(tx: &mut Tx, id: Uuid, version: i32, at: Option<DateTime<Utc>>) -> Result<bool, Error> {
    let done = sqlx::query!("UPDATE preset SET put_away_at = $3, version = version + 1 WHERE id = $1 AND version = $2", id, version, at)
        .execute(&mut **tx)
        .await?;
    Ok(done.rows_affected() == 1)
}
