//! What the opening of an hour found, and what of it holds a start.

use leeward_core::course::{Because, Before, Opened, holds};
use leeward_core::wire::{Answer, Holds, Matter};
use sqlx::PgConnection;
use uuid::Uuid;

use super::queries_hour::{self as queries, HourRow};
use crate::platform::codes;
use crate::store::error::Error;

/// What holds a start in `session`, as the record stands. As a room, or as a member who treats the client.
///
/// # Errors
/// [`Error::NotFound`] when the asker does not see the session; [`Error::Inconsistent`] when a row does not say what it must.
pub async fn holding(db: &mut PgConnection, session: Uuid) -> Result<Holds, Error> {
    let opened = queries::opened(db, session).await?.iter().map(read).collect::<Result<Vec<_>, _>>()?;
    // A session that cannot be seen holds everything: "nothing is due" would let a start through.
    let row = queries::before(db, session).await?.ok_or(Error::NotFound)?;
    Ok(holds(&opened, Before { reevaluation_due: row.reevaluation_due, assessment_due: row.assessment_due }))
}

/// What the last session before `session` found in its opening.
///
/// # Errors
/// As [`holding`].
pub async fn opened_before(db: &mut PgConnection, session: Uuid) -> Result<Vec<Answer>, Error> {
    let rows = queries::opened_before(db, session).await?;
    rows.iter()
        .map(read)
        .filter_map(|one| match one {
            Ok(Opened::Answered(answer)) => Some(Ok(answer)),
            Ok(Opened::Passed(..)) => None,
            Err(fault) => Some(Err(fault)),
        })
        .collect()
}

fn read(row: &HourRow) -> Result<Opened, Error> {
    match (row.kind.as_str(), &row.because) {
        ("answered", None) => Ok(Opened::Answered(codes::read::<Answer>(&row.code, "hour_fact.code")?)),
        ("passed", Some(because)) => {
            Ok(Opened::Passed(codes::read::<Matter>(&row.code, "hour_fact.code")?, codes::read::<Because>(because, "hour_fact.because")?))
        }
        _ => Err(Error::Inconsistent("hour_fact.kind")),
    }
}
