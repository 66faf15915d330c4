//! What the desk may turn to in mid-session.

use uuid::Uuid;

use super::desk::text;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::subject::Tx;
use crate::targets::{self, Target};

/// The digits from 1 to 9.
const MOST_TURNS: usize = 9;

/// Another target that may be turned to.
pub(super) struct Turn {
    pub(super) target: Uuid,
    /// The target of the session as the page shows it; empty: there is none.
    pub(super) from: String,
    pub(super) label: String,
    /// What it is, and whether it is linked.
    pub(super) what: String,
    /// What pressing it does.
    pub(super) said: String,
}

/// The targets of `client` but for `now`: linked ones first, those at their end last, since one may have come up again; else in the order of
/// the plan.
pub(super) async fn turns(tx: &mut Tx, app: &App, client: Uuid, now: Option<&Target>) -> Result<Vec<Turn>, Error> {
    let linked = |one: &Target| {
        now.is_some_and(|now| {
            let kin = one.planned.parent == Some(now.id) || now.planned.parent == Some(one.id);
            kin || one.planned.cluster.is_some() && one.planned.cluster == now.planned.cluster
        })
    };
    let open = |one: &Target| one.archived_at.is_none() && now.is_none_or(|now| now.id != one.id);
    let mut all: Vec<Target> = targets::list(tx, app, client).await?.into_iter().filter(open).collect();
    all.sort_by_key(|one| (one.stand.state.is_over(), !linked(one)));
    all.truncate(MOST_TURNS);
    let of = |one: &Target| Turn {
        target: one.id,
        from: now.map(|now| now.id.to_string()).unwrap_or_default(),
        label: text(&one.words.label),
        what: format!(
            "{}{}{}",
            if linked(one) { "linked, " } else { "" },
            one.prong.words().to_lowercase(),
            if one.stand.state.is_over() { ", at its end" } else { "" }
        ),
        said: match now {
            Some(now) => {
                format!("Sets \u{201c}{}\u{201d} aside and turns to \u{201c}{}\u{201d}.", text(&now.words.label), text(&one.words.label))
            }
            None => format!("Turns to \u{201c}{}\u{201d}.", text(&one.words.label)),
        },
    };
    Ok(all.iter().map(of).collect())
}
