//! Waiting for a database that is not there yet, or not yet of this version's shape.
//!
//! A machine that starts brings up everything at once. Who comes first says what it waits for and goes on
//! once that is there; only what a person must mend ends the start at once.

use std::time::Duration;

use tokio::time::{Instant, sleep};

use crate::notify;
use crate::store::database::Unfit;
use crate::store::patience::pauses;

/// Pauses between tries: doubled from the first to the last.
const FIRST_PAUSE: Duration = Duration::from_millis(250);
const LAST_PAUSE: Duration = Duration::from_secs(5);
/// So long in all. A service manager starts the whole program again afterwards.
const PATIENCE: Duration = Duration::from_secs(120);

/// Tries until it works, a person is needed, or two minutes are over.
///
/// # Errors
/// The last answer: it says what is wrong and what to do.
pub async fn for_database<T>(mut attempt: impl AsyncFnMut() -> Result<T, Unfit>) -> Result<T, Unfit> {
    let until = Instant::now() + PATIENCE;
    let mut pauses = pauses(FIRST_PAUSE, LAST_PAUSE);
    loop {
        let unfit = match attempt().await {
            Ok(done) => return Ok(done),
            Err(unfit) => unfit,
        };
        let pause = pauses.next().unwrap_or(LAST_PAUSE);
        if !passes_by_itself(&unfit) || Instant::now() + pause > until {
            return Err(unfit);
        }
        tracing::warn!(reason = %unfit, "waiting for the database");
        notify::status("waiting for the database");
        sleep(pause).await;
    }
}

/// Whether the same may work later without anybody doing something about it here.
fn passes_by_itself(unfit: &Unfit) -> bool {
    match unfit {
        // The migrations run beside this, or are about to.
        Unfit::Version { .. } => true,
        Unfit::Unreachable(fault) => match fault {
            sqlx::Error::Io(_) | sqlx::Error::PoolTimedOut => true,
            // PostgreSQL, appendix A: 08 connection, 3D the database is not there, 3F and 42P01 nor its schema and tables,
            // 53 out of something, 57 starting up or shutting down.
            sqlx::Error::Database(fault) => {
                fault.code().is_some_and(|code| ["08", "3D", "3F", "42P01", "53", "57"].iter().any(|class| code.starts_with(class)))
            }
            _ => false,
        },
        Unfit::Role(_)
        | Unfit::Open(_)
        | Unfit::Commit(_)
        | Unfit::Makes { .. }
        | Unfit::Paths(_)
        | Unfit::NoSignIn(_)
        | Unfit::SignIn { .. } => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Error, ErrorKind};

    fn refused() -> Unfit {
        Unfit::Unreachable(sqlx::Error::Io(Error::from(ErrorKind::ConnectionRefused)))
    }

    #[tokio::test]
    async fn what_passes_is_waited_for_and_what_a_person_must_mend_is_not() {
        let mut answers = vec![Ok("there"), Err(Unfit::Version { found: 9, needed: 10 }), Err(refused())];
        let there = for_database(async || answers.pop().unwrap_or_else(|| Err(refused()))).await;
        assert_eq!(there.ok(), Some("there"));
        assert!(answers.is_empty());
        let mut tries = 0;
        let answer: Result<(), Unfit> = for_database(async || {
            tries += 1;
            Err(Unfit::Role("postgres".into()))
        })
        .await;
        assert!(matches!(answer, Err(Unfit::Role(_))));
        assert_eq!(tries, 1);
    }
}
