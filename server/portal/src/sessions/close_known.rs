//! What the record knows when a session is about to be closed. It is shown beside the fields that it bears on and fills none of them: a
//! rating that nobody asked, or a calm place that nobody went to, must not get into the record by a form that was not read.

use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use super::close_choices::EFFECTS;
use super::queries::{self, SessionRow};
use super::queries_entries::{self, LastRating};
use super::words;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Private};
use crate::store::subject::Tx;
use crate::targets::Target;

/// How the session's target stands, and what settled the client last time.
pub(super) struct Known {
    /// Facts by name.
    pub stands: Vec<(&'static str, String)>,
    pub settled: Option<Settled>,
}

/// What was used to settle at the last closing.
pub(super) struct Settled {
    /// Such as "session 4, Tuesday 3 March 2026".
    pub when: String,
    pub used: Private,
}

/// What is known before `session` is closed.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn known(tx: &mut Tx, key: &ClientKey, session: Uuid, row: &SessionRow, target: Option<&Target>) -> Result<Known, Error> {
    let practice = When::in_practice(tx).await?;
    let when = practice.in_zone(&row.zone);
    let asked = queries_entries::last_ratings(tx, session, row.target_id).await?;
    let last = |scale: &str| asked.iter().find(|one| one.scale == scale);
    let named = target.map_or_else(|| "none in this session".to_owned(), |one| format!("{}, {}", one.words.label.shown(), one.stands()));
    let sud = rated(last("sud"), target.and_then(|one| one.latest_sud).map(Sud::get), when);
    let voc = rated(last("voc"), target.and_then(|one| one.latest_voc).map(Voc::get), when);
    Ok(Known { stands: vec![("Target", named), ("Last SUD", sud), ("Last VOC", voc)], settled: settled(tx, key, row, practice).await? })
}

fn rated(last: Option<&LastRating>, ever: Option<u8>, when: When) -> String {
    match (last, ever) {
        (Some(last), _) => format!("{}, asked at {}", last.value, when.time(&last.asked_at)),
        (None, Some(value)) => format!("not asked in this session; {value} before it"),
        (None, None) => "not asked".to_owned(),
    }
}

async fn settled(tx: &mut Tx, key: &ClientKey, row: &SessionRow, practice: When) -> Result<Option<Settled>, Error> {
    let Some(before) = queries::closed_before(tx, row.client_id, row.number).await? else { return Ok(None) };
    let (words, _) = match words::words(tx, key, before.id).await {
        // A suggestion that is missing keeps no session from being closed.
        Err(Error::NotFound) => return Ok(None),
        words => words?,
    };
    // What does not open is no suggestion; its own page says so.
    let resource = words.readable().resource;
    let when = || format!("session {}, {}", before.number, practice.in_zone(&before.zone).day(&before.opened_at));
    Ok(used(resource.reveal()).map(|used| Settled { when: when(), used: Private::new(used) }))
}

/// What was used, of a sentence about that and its effect.
fn used(resource: &str) -> Option<&str> {
    let before = EFFECTS.iter().find_map(|(_, effect)| resource.strip_suffix(effect)).unwrap_or(resource).trim_end();
    Some(before.strip_suffix('.').unwrap_or(before)).filter(|used| !used.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_last_time_only_what_was_used_is_offered() {
        for (resource, offered) in [
            ("calm place. Settled after it", Some("calm place")),
            ("calm place, then the container. Partly settled after it", Some("calm place, then the container")),
            ("calm place", Some("calm place")),
            ("Nothing was needed", None),
            ("", None),
        ] {
            assert_eq!(used(resource), offered, "{resource:?}");
        }
    }
}
