//! Courses small enough for a line of a table.

use std::collections::HashMap;

use leeward_core::chart::LaneSpan;
use leeward_core::scale::Sud;
use uuid::Uuid;

use super::queries::{self, SpanRow};
use crate::store::error::Error;
use crate::store::subject::Tx;

/// By target: its sessions in order, each with its first and its last SUD. A session that asked for none is not there.
pub(crate) struct Spans(HashMap<Uuid, Vec<(Uuid, Sud, Sud)>>);

/// Of all clients whom the asker treats, or of one of them.
///
/// # Errors
/// [`Error::Inconsistent`] when a rating is none.
pub(crate) async fn spans(tx: &mut Tx, client: Option<Uuid>) -> Result<Spans, Error> {
    let mut all: HashMap<Uuid, Vec<(Uuid, Sud, Sud)>> = HashMap::new();
    for SpanRow { target, session, first, last } in queries::spans(tx, client).await? {
        all.entry(target).or_default().push((session, sud(first)?, sud(last)?));
    }
    Ok(Spans(all))
}

fn sud(value: i16) -> Result<Sud, Error> {
    u8::try_from(value).ok().and_then(|value| Sud::new(value).ok()).ok_or(Error::Inconsistent("rating.value"))
}

impl Spans {
    /// The sessions of one target one after the other, and how many.
    pub(crate) fn close_up(&self, target: Uuid) -> (usize, Vec<LaneSpan>) {
        let own = self.of(target);
        (own.len(), own.iter().zip(0..).map(|((_, first, last), column)| LaneSpan { column, first: *first, last: *last }).collect())
    }

    /// The sessions of one target at their places among `sessions`, which are in order.
    pub(crate) fn among(&self, target: Uuid, sessions: &[Uuid]) -> Vec<LaneSpan> {
        let place = |session: &Uuid| sessions.iter().position(|one| one == session);
        self.of(target)
            .iter()
            .filter_map(|(session, first, last)| Some(LaneSpan { column: place(session)?, first: *first, last: *last }))
            .collect()
    }

    /// The first and the last SUD that a session has of a target.
    pub(crate) fn in_session(&self, target: Uuid, session: Uuid) -> Option<(Sud, Sud)> {
        self.of(target).iter().find(|(one, ..)| *one == session).map(|(_, first, last)| (*first, *last))
    }

    /// The last one.
    pub(crate) fn last_in(&self, target: Uuid, session: Uuid) -> Option<Sud> {
        self.in_session(target, session).map(|(_, last)| last)
    }

    fn of(&self, target: Uuid) -> &[(Uuid, Sud, Sud)] {
        self.0.get(&target).map_or(&[], Vec::as_slice)
    }
}
