//! Telling by mail of flags that are on nobody's screen yet. Who is to be told is found from the record each time: a message that could not be
//! sent is sent the next time, also by a portal that was started again meanwhile. One that the server of mail took, and that could not be written
//! down, is sent twice rather than never.

use std::time::Duration;

use tokio::time::{MissedTickBehavior, interval};

use super::post::Post;
use super::queries;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::subject::Subject;

/// A flag is looked for so often.
const EVERY: Duration = Duration::from_secs(15);
/// After a message that could not be sent.
const PAUSE: Duration = Duration::from_secs(60);

/// How many were told at once, and why others could not be.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// With the server of mail, and written down.
    pub sent: usize,
    /// What went wrong with each of the others.
    pub failed: Vec<String>,
}

/// Tells everybody who is to be told now, and once only.
///
/// # Errors
/// [`Error::Database`]: who is to be told could not be found out, or written down.
pub async fn tell(app: &App, post: &Post) -> Result<Told, Error> {
    let mut tx = app.database.look(&Subject::Visitor).await?;
    let untold = queries::untold(&mut tx).await?;
    tx.commit().await?;
    let mut told = Told::default();
    for one in untold {
        if let Err(fault) = post.something_waits(&one.address).await {
            told.failed.push(fault);
            continue;
        }
        let mut tx = app.database.look(&Subject::Visitor).await?;
        if !queries::told(&mut tx, one.response, one.member).await? {
            tracing::warn!("a member was told by mail by two portals at once");
        }
        tx.commit().await?;
        told.sent += 1;
    }
    Ok(told)
}

/// Tells whoever is to be told, for as long as the portal runs. Never returns.
pub async fn keep_telling(app: App, post: Post) {
    let mut turn = interval(EVERY);
    turn.set_missed_tick_behavior(MissedTickBehavior::Delay);
    loop {
        turn.tick().await;
        let faults = match tell(&app, &post).await {
            Ok(told) => told.failed,
            Err(fault) => vec![fault.to_string()],
        };
        for fault in &faults {
            tracing::error!(%fault, "nobody could be told of a flag by mail; tried again in a minute");
        }
        if !faults.is_empty() {
            tokio::time::sleep(PAUSE).await;
        }
    }
}
