//! SQL of the practice's settings.

use super::Settings;
use crate::platform::when::Style;
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn settings(tx: &mut Tx) -> Result<Settings, Error> {
    let row = sqlx::query!(
        "SELECT day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words FROM practice"
    )
    .fetch_one(&mut **tx)
    .await?;
    let style = Style::read(&row.day_order, row.clock)?;
    let (tells_whom, minutes, reserve) = (row.tells_whom, row.minutes, row.reserve);
    let (check_from, check_until, stuck_after) = (row.check_from, row.check_until, row.stuck_after);
    let (places, crisis_words) = (row.places, row.crisis_words);
    Ok(Settings { style, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words })
}

/// False when they are not `was` any more, or the asker is no administrator any more.
pub(super) async fn change(tx: &mut Tx, was: &Settings, wanted: &Settings) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE practice SET day_order = $1, clock = $2, tells_whom = $3, minutes = $4, reserve = $5, check_from = $6, check_until = $7,
           stuck_after = $8, places = $9, crisis_words = $10
         WHERE day_order = $11 AND clock = $12 AND tells_whom = $13 AND minutes = $14 AND reserve = $15 AND check_from = $16
           AND check_until = $17 AND stuck_after = $18 AND places = $19 AND crisis_words = $20",
        wanted.style.order.name(),
        wanted.style.clock.hours(),
        wanted.tells_whom,
        wanted.minutes,
        wanted.reserve,
        wanted.check_from,
        wanted.check_until,
        wanted.stuck_after,
        wanted.places,
        wanted.crisis_words,
        was.style.order.name(),
        was.style.clock.hours(),
        was.tells_whom,
        was.minutes,
        was.reserve,
        was.check_from,
        was.check_until,
        was.stuck_after,
        was.places,
        was.crisis_words
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
