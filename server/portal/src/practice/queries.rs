//! SQL of the practice's settings.

use super::Settings;
use crate::platform::when::Style;
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn settings(tx: &mut Tx) -> Result<Settings, Error> {
    let row = sqlx::query!("SELECT day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after FROM practice")
        .fetch_one(&mut **tx)
        .await?;
    let style = Style::read(&row.day_order, row.clock)?;
    let (tells_whom, minutes, reserve) = (row.tells_whom, row.minutes, row.reserve);
    let (check_from, check_until, stuck_after) = (row.check_from, row.check_until, row.stuck_after);
    Ok(Settings { style, tells_whom, minutes, reserve, check_from, check_until, stuck_after })
}

/// False when they are not `was` any more, or the asker is no administrator any more.
pub(super) async fn change(tx: &mut Tx, was: Settings, wanted: Settings) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE practice SET day_order = $1, clock = $2, tells_whom = $3, minutes = $4, reserve = $5, check_from = $6, check_until = $7,
           stuck_after = $8
         WHERE day_order = $9 AND clock = $10 AND tells_whom = $11 AND minutes = $12 AND reserve = $13 AND check_from = $14 AND check_until = $15
           AND stuck_after = $16",
        wanted.style.order.name(),
        wanted.style.clock.hours(),
        wanted.tells_whom,
        wanted.minutes,
        wanted.reserve,
        wanted.check_from,
        wanted.check_until,
        wanted.stuck_after,
        was.style.order.name(),
        was.style.clock.hours(),
        was.tells_whom,
        was.minutes,
        was.reserve,
        was.check_from,
        was.check_until,
        was.stuck_after
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
