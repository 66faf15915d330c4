//! SQL of the practice's settings.

use super::Settings;
use crate::platform::when::Style;
use crate::store::error::Error;
use crate::store::subject::Tx;

pub(super) async fn settings(tx: &mut Tx) -> Result<Settings, Error> {
    let row = sqlx::query!("SELECT day_order, clock, tells_whom FROM practice").fetch_one(&mut **tx).await?;
    Ok(Settings { style: Style::read(&row.day_order, row.clock)?, tells_whom: row.tells_whom })
}

/// False when they are not `was` any more, or the asker is no administrator any more.
pub(super) async fn change(tx: &mut Tx, was: Settings, wanted: Settings) -> Result<bool, sqlx::Error> {
    let done = sqlx::query!(
        "UPDATE practice SET day_order = $1, clock = $2, tells_whom = $3 WHERE day_order = $4 AND clock = $5 AND tells_whom = $6",
        wanted.style.order.name(),
        wanted.style.clock.hours(),
        wanted.tells_whom,
        was.style.order.name(),
        was.style.clock.hours(),
        was.tells_whom
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}
