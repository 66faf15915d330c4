//! A target's course over its sessions.

use chrono::{Datelike, NaiveDate};
use leeward_core::chart::{Chart, Occasion, SessionSpan, course_over_sessions};
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use super::queries::{self, RatingRow, SessionRow};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// The chart of the sessions that worked on `target` or re-evaluated it, and of what was assessed outside of
/// them: every SUD and VOC that counts, neither corrected nor taken back. No text about the person is in it.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must. A target that the subject may not
/// see looks like one without sessions.
pub async fn course(tx: &mut Tx, target: Uuid) -> Result<Chart, Error> {
    let Some(client) = queries::client_of(tx, target).await? else { return Ok(course_over_sessions(&[])) };
    let when = When::in_practice(tx).await?;
    chart(target, &queries::sessions(tx, client).await?, &queries::ratings(tx, client).await?, when)
}

/// The course of one of a client's targets. `when` writes the practice's way, and its zone is that of days outside of sessions.
pub(super) fn chart(target: Uuid, sessions: &[SessionRow], ratings: &[RatingRow], when: When) -> Result<Chart, Error> {
    let ratings: Vec<&RatingRow> = ratings.iter().filter(|rating| rating.target == Some(target)).collect();
    let columns = columns(target, sessions, &ratings, when)?;
    let one_year = columns.windows(2).all(|pair| pair[0].day.year() == pair[1].day.year());
    let spans = columns.iter().map(|column| {
        let label = if one_year { when.day_of_year(column.day) } else { when.brief(column.day) };
        let occasion = if column.session.is_some() { Occasion::Session } else { Occasion::Assessment };
        Ok(SessionSpan { label, occasion, sud: suds(&column.ratings)?, voc: vocs(&column.ratings)? })
    });
    Ok(course_over_sessions(&spans.collect::<Result<Vec<_>, Error>>()?))
}

/// A session, or a day outside of any between two of them.
struct Column<'a> {
    place: i64,
    session: Option<Uuid>,
    day: NaiveDate,
    ratings: Vec<&'a RatingRow>,
}

/// In the order of the record. A session has its column even if it asked nothing; `ratings` are in order.
fn columns<'a>(target: Uuid, sessions: &[SessionRow], ratings: &[&'a RatingRow], when: When) -> Result<Vec<Column<'a>>, Error> {
    let mut columns = Vec::new();
    for session in sessions {
        let own: Vec<_> = ratings.iter().copied().filter(|rating| rating.session == Some(session.id)).collect();
        if session.target_id == Some(target) || !own.is_empty() {
            columns.push(Column {
                place: session.place,
                session: Some(session.id),
                day: when.in_zone(&session.zone).date(&session.opened_at),
                ratings: own,
            });
        }
    }
    for rating in ratings.iter().copied().filter(|rating| rating.session.is_none()) {
        columns.push(Column { place: rating.place, session: None, day: when.date(&rating.asked_at), ratings: vec![rating] });
    }
    columns.sort_by_key(|column| column.place);
    columns.dedup_by(|next, before| {
        let same = (next.session, before.session) == (None, None) && next.day == before.day;
        if same {
            before.ratings.append(&mut next.ratings);
        }
        same
    });
    Ok(columns)
}

/// The ratings of one scale, as they stand in the record.
pub(super) fn of_scale<'a>(ratings: &'a [&RatingRow], scale: &'a str) -> impl DoubleEndedIterator<Item = i16> + 'a {
    ratings.iter().filter(move |rating| rating.scale == scale).map(|rating| rating.value)
}

fn suds(ratings: &[&RatingRow]) -> Result<Vec<Sud>, Error> {
    let sud = |value| u8::try_from(value).ok().and_then(|value| Sud::new(value).ok()).ok_or(Error::Inconsistent("rating.value"));
    of_scale(ratings, "sud").map(sud).collect()
}

fn vocs(ratings: &[&RatingRow]) -> Result<Vec<Voc>, Error> {
    let voc = |value| u8::try_from(value).ok().and_then(|value| Voc::new(value).ok()).ok_or(Error::Inconsistent("rating.value"));
    of_scale(ratings, "voc").map(voc).collect()
}
