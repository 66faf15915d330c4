//! What stands above a form and beside its fields.

use super::{Fields, Problems};

/// What stands above a form that was not saved, or not surely.
pub(crate) mod notice {
    pub(crate) const LOOK: &str = "Not saved yet. Please look at these fields:";
    pub(crate) const CHANGED: &str = "Not saved: somebody changed this meanwhile. What you typed is still here. Compare, then save again to replace what the record now says.";
    pub(crate) const OTHER_BODY: &str = "What you sent first was saved; what you changed after that was not. What you typed is still here: copy it, open the record again, and enter the change there.";
    const NO_DATABASE: &str = "Not saved: the database did not answer. What you typed is still here. Try again in a moment: if an earlier sending got through, it is done once all the same.";
    const NO_ROOM: &str =
        "Not saved: the server is out of room. What you typed is still here. Tell the administrator; once there is room again, save again.";
    pub(crate) const UNCONFIRMED: &str = "Not known whether this was saved: the database's answer was lost. What you typed is still here. Send it again: it is saved once, whether or not the first sending got through.";

    /// The database did not do it.
    pub(crate) fn unsaved(fault: &crate::store::error::Fault) -> &'static str {
        if fault.is_out_of_room() { NO_ROOM } else { NO_DATABASE }
    }
}

/// Field, label and message of each problem, in the order of the form.
pub(crate) fn list<F: Fields>(problems: &Problems) -> Vec<(&'static str, &'static str, String)> {
    let message = |name: &str| Some(problems.at(name).to_owned()).filter(|message| !message.is_empty());
    F::LABELS.iter().filter_map(|(name, label)| Some((*name, *label, message(name)?))).collect()
}

/// Beside each field that stands differently in the record: how it stands there.
pub(crate) fn differences<F: Fields>(typed: &F, kept: &F) -> Problems {
    let mut problems = Problems::default();
    for (name, _) in F::LABELS {
        let (typed, kept) = (typed.shown(name), kept.shown(name));
        if typed.replace("\r\n", "\n").trim() != kept {
            let kept = if kept.is_empty() { "nothing".to_owned() } else { format!("“{kept}”") };
            problems.add(name, format!("The record now says {kept}."));
        }
    }
    problems
}
