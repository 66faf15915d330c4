//! Tidying up: what has long expired is removed, and rehearsals that were forgotten end. How long each is
//! kept, and why, stands in `access.tidy()` (migration 0010); no record and no audit row is ever deleted.

use std::time::Duration;

use tokio::time::{MissedTickBehavior, interval};
use uuid::Uuid;

use crate::platform::App;
use crate::queries;
use crate::store::error::Error;
use crate::store::subject::Subject;

const HOUR: Duration = Duration::from_secs(3600);

/// What was removed at once, and what was ended.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[expect(missing_docs, reason = "each counts rows of the table of that name")]
pub struct Tidied {
    pub signins: i64,
    pub invitations: i64,
    pub ceremonies: i64,
    pub seats: i64,
    pub links: i64,
    pub room_tokens: i64,
    pub request_keys: i64,
    /// Sessions with a pretend client that nobody ended.
    pub rehearsals: Vec<Uuid>,
}

/// Tidies up once. Anybody may: only what has expired by the database's clock too can be removed.
///
/// # Errors
/// [`Error::Database`]: nothing was removed.
pub async fn tidy(app: &App) -> Result<Tidied, Error> {
    let mut tx = app.database.look(&Subject::Visitor).await?;
    let tidied = queries::tidy(&mut tx).await?;
    tx.commit().await?;
    for session in &tidied.rehearsals {
        // Its room, if it still has one, reads the record.
        drop(app.bell.follows(*session));
    }
    Ok(tidied)
}

/// Tidies up now and every hour, and says what it did. Never returns.
pub async fn keep_tidy(app: App) {
    let mut hour = interval(HOUR);
    hour.set_missed_tick_behavior(MissedTickBehavior::Delay);
    loop {
        hour.tick().await;
        match tidy(&app).await {
            Ok(Tidied { signins, invitations, ceremonies, seats, links, room_tokens, request_keys, rehearsals }) => {
                let rehearsals_ended = rehearsals.len();
                tracing::info!(signins, invitations, ceremonies, seats, links, room_tokens, request_keys, rehearsals_ended, "tidied up");
            }
            Err(fault) => tracing::warn!(%fault, "not tidied up; tried again in an hour"),
        }
    }
}
