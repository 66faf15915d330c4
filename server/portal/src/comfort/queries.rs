//! SQL of comfort sheets, and of what a client was comfortable with last.

use chrono::{DateTime, Utc};
use leeward_core::safety;
use leeward_core::wire::Plan;
use uuid::Uuid;

use super::{PATHS, Sheet, named, of};
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn sheet(tx: &mut Tx, client: Uuid) -> Result<Option<(Sheet, i32)>, Error> {
    let row =
        sqlx::query!("SELECT path, dot, comfort, version FROM comfort WHERE client_id = $1", client).fetch_optional(&mut **tx).await?;
    let Some(row) = row else { return Ok(None) };
    let sheet = Sheet {
        path: named(&PATHS, &row.path).ok_or(Error::Inconsistent("comfort.path"))?,
        dot: row.dot,
        comfort: serde_json::from_value(row.comfort).map_err(|_| Error::Inconsistent("comfort.comfort"))?,
    };
    Ok(Some((sheet, row.version)))
}

/// False when the sheet is not at `version` any more; 0 stands for none.
pub(super) async fn save(tx: &mut Tx, client: Uuid, sheet: &Sheet, version: i32, now: DateTime<Utc>) -> Result<bool, Error> {
    let comfort = serde_json::to_value(sheet.comfort).map_err(|fault| Error::Inner(format!("comfort: {fault}")))?;
    let done = if version == 0 {
        sqlx::query!(
            "INSERT INTO comfort (client_id, path, dot, comfort, filled_at, version) VALUES ($1, $2, $3, $4, $5, 1) ON CONFLICT DO NOTHING",
            client,
            of(&PATHS, sheet.path).0,
            sheet.dot,
            comfort,
            now
        )
        .execute(&mut **tx)
        .await?
    } else {
        sqlx::query!(
            "UPDATE comfort SET path = $3, dot = $4, comfort = $5, filled_at = $6, version = version + 1 WHERE client_id = $1 AND version = $2",
            client,
            version,
            of(&PATHS, sheet.path).0,
            sheet.dot,
            comfort,
            now
        )
        .execute(&mut **tx)
        .await?
    };
    Ok(done.rows_affected() == 1)
}

/// The plan, as last ordered, of the client's latest set that came to its planned end or that the clinician
/// ended, by the screen's word and the room's. A stop, by whomever, is no sign of comfort. Sets as short as
/// those for a calm place are left out: they say nothing about processing.
pub(super) async fn last_comfortable(tx: &mut Tx, client: Uuid) -> Result<Option<Plan>, Error> {
    let plan = sqlx::query_scalar!(
        r#"SELECT p.plan AS "plan!" FROM stimulus_set s
           CROSS JOIN LATERAL (
             SELECT coalesce((SELECT o.plan FROM set_order o WHERE o.set_id = s.id ORDER BY o.seq DESC LIMIT 1), s.plan) AS plan) p
           CROSS JOIN LATERAL (
             SELECT array_agg(ending) AS endings FROM (
               SELECT ending FROM set_ending WHERE set_id = s.id AND ending <> 'unknown'
               UNION ALL SELECT ending FROM set_evidence WHERE set_id = s.id AND kind = 'rested' AND ending <> 'unknown') heard) e
           WHERE s.client_id = $1 AND e.endings <@ ARRAY['done', 'ended_by_clinician']
             AND (p.plan #>> '{length,kind}' = 'open' OR (p.plan #>> '{length,cycles}')::integer > $2)
           ORDER BY (SELECT h.seq FROM session h WHERE h.id = s.session_id) DESC, s.number DESC LIMIT 1"#,
        client,
        i32::try_from(*safety::CALM_CYCLES.end()).unwrap_or(i32::MAX)
    );
    let plan = plan.fetch_optional(&mut **tx).await?;
    // An order that this version cannot read is none to start from.
    Ok(plan.and_then(|plan| serde_json::from_value(plan).ok()))
}
