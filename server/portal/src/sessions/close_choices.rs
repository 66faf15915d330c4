//! What the closing list offers to choose from, in words.

use std::sync::LazyLock;

use crate::platform::codes::ClosingKind;

/// Choices in words: the name in the form, and what the record says.
pub(super) type Choice = (&'static str, &'static str);

pub(super) static KINDS: LazyLock<[Choice; 6]> = LazyLock::new(|| {
    [
        (ClosingKind::Complete.name(), "Complete: the target is at its end"),
        (ClosingKind::Reduced.name(), "Reduced as planned: the restricted work is done"),
        (ClosingKind::Incomplete.name(), "Incomplete: begun, and set aside for now"),
        (ClosingKind::NoReprocessing.name(), "No reprocessing took place"),
        (ClosingKind::DidNotAttend.name(), "The client did not attend: no session"),
        (ClosingKind::ByMistake.name(), "Opened by mistake: no session"),
    ]
});
pub(super) const EFFECTS: [Choice; 4] = [
    ("settled", "Settled after it"),
    ("partly", "Partly settled after it"),
    ("no_change", "No change after it"),
    ("not_needed", "Nothing was needed"),
];
/// States in which a client is called afterwards.
pub(super) const UNSTEADY: [&str; 3] = ["unsettled", "in_contact", "left"];
pub(super) const STATES: [Choice; 5] = [
    ("calm", "Calm, knows where and when they are"),
    ("tired", "Tired or tearful, knows where and when they are"),
    ("unsettled", "Still unsettled, safe to leave, plan agreed"),
    ("in_contact", "Not settled: we stay in contact, see the note"),
    ("left", "Left, or the link was lost, before this could be seen"),
];
