//! What the client's screen showed, on its way into the record: kept once by set and number, from
//! the room while its socket is open, from the page's own request after that.

use chrono::{DateTime, Utc};
use leeward_core::wire::{Evidence, Fact};
use sqlx::PgConnection;
use uuid::Uuid;

use super::names;
use crate::store::error::Error;

/// The same facts as columns.
#[derive(Default)]
struct Columns {
    set: Vec<Uuid>,
    seq: Vec<i32>,
    kind: Vec<&'static str>,
    at: Vec<f64>,
    phase: Vec<Option<f64>>,
    width: Vec<Option<f64>>,
    frames: Vec<Option<i32>>,
    longest_gap: Vec<Option<f64>>,
    ending: Vec<Option<&'static str>>,
}

impl Columns {
    fn of(facts: &[Evidence]) -> Result<Self, Error> {
        let mut columns = Self::default();
        for evidence in facts {
            columns.add(evidence)?;
        }
        Ok(columns)
    }

    fn add(&mut self, evidence: &Evidence) -> Result<(), Error> {
        let impossible = |_| Error::BadRequest("Evidence that no screen can give. Reload the page.");
        self.set.push(evidence.set.parse().map_err(|_| Error::BadRequest("Evidence needs the id of its set."))?);
        self.seq.push(i32::try_from(evidence.seq).map_err(impossible)?);
        self.at.push(evidence.at);
        let (kind, phase, width, frames, longest_gap, ending) = match evidence.fact {
            Fact::Shown { width } => ("shown", None, Some(width), None, None, None),
            Fact::Second { phase, frames, longest_gap } => ("second", Some(phase), None, Some(frames), Some(longest_gap), None),
            Fact::Rested { phase, ending } => ("rested", Some(phase), None, None, None, Some(names::ending(ending))),
        };
        self.kind.push(kind);
        self.phase.push(phase);
        self.width.push(width);
        self.frames.push(frames.map(i32::try_from).transpose().map_err(impossible)?);
        self.longest_gap.push(longest_gap);
        self.ending.push(ending);
        Ok(())
    }
}

/// Keeps facts of sets that the asker may add to; what is of other sets, or kept already, is left alone.
///
/// # Errors
/// [`Error::BadRequest`] when a set's id is not one; [`Error::Database`]: none was kept.
pub(super) async fn save(db: &mut PgConnection, facts: &[Evidence], now: DateTime<Utc>) -> Result<(), Error> {
    let columns = Columns::of(facts)?;
    sqlx::query!(
        "INSERT INTO set_evidence
           (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at)
         SELECT s.id, f.seq, s.session_id, s.client_id, f.kind, f.at, f.phase, f.width, f.frames, f.longest_gap, f.ending, $10
         FROM unnest($1::uuid[], $2::int[], $3::text[], $4::float8[], $5::float8[], $6::float8[], $7::int[], $8::float8[], $9::text[])
           AS f (set_id, seq, kind, at, phase, width, frames, longest_gap, ending)
         JOIN stimulus_set s ON s.id = f.set_id
         ON CONFLICT DO NOTHING",
        &columns.set,
        &columns.seq,
        &columns.kind as &[&str],
        &columns.at,
        &columns.phase as &[Option<f64>],
        &columns.width as &[Option<f64>],
        &columns.frames as &[Option<i32>],
        &columns.longest_gap as &[Option<f64>],
        &columns.ending as &[Option<&str>],
        now
    )
    .execute(db)
    .await?;
    Ok(())
}

/// The highest number of this set's evidence below which nothing is missing.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn kept_up_to(db: &mut PgConnection, set: Uuid) -> Result<Option<i32>, Error> {
    let seq = sqlx::query_scalar!(
        "SELECT max(seq) FROM (SELECT seq, row_number() OVER (ORDER BY seq) AS place FROM set_evidence WHERE set_id = $1) kept
         WHERE place = seq + 1",
        set
    );
    Ok(seq.fetch_one(db).await?)
}
