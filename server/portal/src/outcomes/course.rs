//! A target's course over its sessions.

use chrono::Datelike;
use chrono_tz::Tz;
use leeward_core::chart::{Chart, SessionSpan, course_over_sessions};
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use super::queries::{self, SessionRow};
use crate::error::Error;
use crate::subject::Tx;

/// The chart of the sessions that worked on `target` or re-evaluated it: first and last SUD and VOC of each. Only
/// ratings that count: neither corrected nor taken back. No text about the person is in it.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must. A target that the subject may not
/// see looks like one without sessions.
pub async fn course(tx: &mut Tx, target: Uuid) -> Result<Chart, Error> {
    chart(&queries::sessions_of_target(tx, target).await?)
}

pub(super) fn chart(sessions: &[SessionRow]) -> Result<Chart, Error> {
    let days: Vec<_> = sessions.iter().map(day).collect();
    let one_year = days.windows(2).all(|pair| pair[0].year() == pair[1].year());
    let format = if one_year { "%-d %b" } else { "%-d %b %y" };
    let span = |(row, day): (&SessionRow, &chrono::DateTime<Tz>)| {
        Ok(SessionSpan { label: day.format(format).to_string(), sud: suds(row)?, voc: vocs(row)? })
    };
    Ok(course_over_sessions(&sessions.iter().zip(&days).map(span).collect::<Result<Vec<_>, Error>>()?))
}

/// In UTC when the zone is none that this version knows.
fn day(row: &SessionRow) -> chrono::DateTime<Tz> {
    row.opened_at.with_timezone(&row.zone.parse().unwrap_or(Tz::UTC))
}

fn suds(row: &SessionRow) -> Result<Option<(Sud, Sud)>, Error> {
    let sud = |value| u8::try_from(value).ok().and_then(|value| Sud::new(value).ok()).ok_or(Error::Inconsistent("rating.value"));
    both(row.first_sud, row.last_sud, sud)
}

fn vocs(row: &SessionRow) -> Result<Option<(Voc, Voc)>, Error> {
    let voc = |value| u8::try_from(value).ok().and_then(|value| Voc::new(value).ok()).ok_or(Error::Inconsistent("rating.value"));
    both(row.first_voc, row.last_voc, voc)
}

fn both<T>(first: Option<i16>, last: Option<i16>, read: impl Fn(i16) -> Result<T, Error>) -> Result<Option<(T, T)>, Error> {
    match (first, last) {
        (Some(first), Some(last)) => Ok(Some((read(first)?, read(last)?))),
        _ => Ok(None),
    }
}
