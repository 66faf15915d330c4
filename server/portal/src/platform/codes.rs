//! Codes of the wire as the database keeps them, and as a page says them.

use leeward_core::course::{Belief, Rehearsal, Scan};
use leeward_core::wire::{Change, Channels, EntryValue, Length, Moment, Path, Plan, ReachStep, Rung, Saw, Scale, Showed, Unmeasured};
use serde::Serialize;
use serde::de::DeserializeOwned;
use strum::{EnumString, IntoStaticStr, VariantArray};

use crate::base::named::named;
use crate::store::error::Error;

/// The name of a wire code, as it stands in a column of text.
pub(crate) fn name(code: impl Serialize) -> Result<String, Error> {
    match serde_json::to_value(code) {
        Ok(serde_json::Value::String(name)) => Ok(name),
        other => Err(Error::Inner(format!("not a plain code: {other:?}"))),
    }
}

/// The wire code of that name.
pub(crate) fn read<T: DeserializeOwned>(name: &str, column: &'static str) -> Result<T, Error> {
    serde_json::from_value(serde_json::Value::String(name.to_owned())).map_err(|_| Error::Inconsistent(column))
}

/// The plan in a column of JSON, if it is one that this version knows.
pub(crate) fn plan(value: serde_json::Value) -> Option<Plan> {
    serde_json::from_value(value).ok()
}

/// A path, as every page says it.
pub(crate) const fn path(path: Path) -> &'static str {
    match path {
        Path::Across => "across",
        Path::UpDown => "up-down",
        Path::Falling => "diagonal, down to the right",
        Path::Rising => "diagonal, up to the right",
        Path::Eight => "figure of eight",
    }
}

/// A width of the dot in words; `None`: nothing was heard of it. Without a dot there is none.
pub(crate) fn width(channels: Channels, width: Option<f64>) -> String {
    match (channels.seen(0.0), width) {
        (None, _) => "no dot".into(),
        (Some(_), None) => "unknown".into(),
        (Some(_), Some(width)) => format!("{width:.0}\u{b0}"),
    }
}

/// For example "across, eyes and tones"; without a dot there is no path.
pub(crate) fn how(plan: &Plan) -> String {
    let channels = channels(plan.channels);
    if plan.channels.eyes { format!("{}, {channels}", path(plan.path)) } else { channels }
}

/// For example "eyes and tones".
pub(crate) fn channels(Channels { eyes, ears, hands }: Channels) -> String {
    let on = [(eyes, "eyes"), (ears, "tones"), (hands, "taps")];
    on.into_iter().filter_map(|(on, name)| on.then_some(name)).collect::<Vec<_>>().join(" and ")
}

/// For example "24 cycles".
pub(crate) fn length(length: Length) -> String {
    match length {
        Length::Cycles(1) => "1 cycle".into(),
        Length::Cycles(cycles) => format!("{cycles} cycles"),
        Length::Open => "open-ended".into(),
    }
}

/// What a client told of the change, as pages say it.
pub(crate) const fn change(change: Change) -> &'static str {
    match change {
        Change::Changing => "changing",
        Change::Same => "same",
        Change::Settled => "settled",
    }
}

/// What the clinician saw, as pages say it.
pub(crate) const fn saw(saw: Saw) -> &'static str {
    match saw {
        Saw::Glazed => "glazed",
        Saw::Tears => "tears",
        Saw::Numb => "numb",
        Saw::FarAway => "far away",
        Saw::Other => "something else",
    }
}

/// What was tried, as pages say it.
pub(crate) const fn rung(rung: Rung) -> &'static str {
    match rung {
        Rung::Arousal => "grounding or a resource",
        Rung::Mechanics => "other mechanics",
        Rung::Focus => "another focus",
        Rung::Earlier => "an earlier memory or a belief in the way",
        Rung::Interweave => "a brief interweave",
    }
}

/// A step on the way after a client who is gone, as pages say it.
pub(crate) const fn reach_step(step: ReachStep) -> &'static str {
    match step {
        ReachStep::NoAnswer => "called, no answer",
        ReachStep::Messaged => "a message was left",
        ReachStep::ContactCalled => "the emergency contact was called",
        ReachStep::WelfareAsked => "somebody was asked to look in on them",
        ReachStep::HelpCalled => "help was called for them",
        ReachStep::Reached => "reached",
        ReachStep::Safe => "known to be safe",
    }
}

/// What was found or done beside the ratings: what it is about, and what it says. Empty for other entries.
pub(crate) fn found(value: &EntryValue) -> (&'static str, String) {
    let (what, said) = match value {
        EntryValue::Scan { scan: Scan::Clear } => ("Body scan", "clear"),
        EntryValue::Scan { scan: Scan::Felt } => ("Body scan", "something is felt"),
        EntryValue::Rehearsal { rehearsal: Rehearsal::Undisturbed } => ("Rehearsal", "nothing disturbed"),
        EntryValue::Rehearsal { rehearsal: Rehearsal::Disturbed } => ("Rehearsal", "something disturbed"),
        EntryValue::Fits { scale: Scale::Sud } => ("SUD", "what is left fits the facts"),
        EntryValue::Fits { scale: Scale::Voc } => ("VOC", "what is there fits the facts"),
        EntryValue::Belief { belief: Belief::Still } => ("Wanted belief", "still the one that fits"),
        EntryValue::Belief { belief: Belief::Another } => ("Wanted belief", "another one fits better"),
        EntryValue::TooMuch => ("Too much", "it was too much here"),
        EntryValue::Showed { showed: Showed::Orient } => ("On the client\u{2019}s page", "words about here and now"),
        EntryValue::Showed { showed: Showed::Resource } => ("On the client\u{2019}s page", "something that has helped"),
        EntryValue::Showed { showed: Showed::Nothing } => ("On the client\u{2019}s page", "nothing any more"),
        EntryValue::Unmeasured { way: Unmeasured::InPerson } => ("Not measured", "in the same room"),
        EntryValue::Unmeasured { way: Unmeasured::Without } => ("Not measured", "without stimulation"),
        EntryValue::Unmeasured { way: Unmeasured::OwnTapping } => ("Not measured", "the client\u{2019}s own tapping"),
        EntryValue::Reach { step } => ("Looking for the client", reach_step(*step)),
        _ => ("", ""),
    };
    (what, said.to_owned())
}

/// When something was rated, as pages say it.
pub(crate) const fn moment(moment: Moment) -> &'static str {
    match moment {
        Moment::Assessment => "assessment",
        Moment::AfterSet => "after the set",
        Moment::BackAtTarget => "back at the target",
        Moment::Installation => "installation",
        Moment::Closing => "closing",
        Moment::Reevaluation => "re-evaluation",
        Moment::Opening => "opening",
    }
}

/// How far the work of a session came.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum ClosingKind {
    /// The target was worked through.
    Complete,
    /// Restricted work did what was planned.
    Reduced,
    /// Reprocessing was begun and is not finished: contained and settled.
    Incomplete,
    /// No reprocessing took place.
    NoReprocessing,
    /// The client did not come: it is no session.
    DidNotAttend,
    /// It was opened by mistake: it is no session.
    ByMistake,
}

named!(ClosingKind);

impl ClosingKind {
    /// It took place, and is counted.
    #[must_use]
    pub const fn took_place(self) -> bool {
        !matches!(self, Self::DidNotAttend | Self::ByMistake)
    }

    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Complete => "complete",
            Self::Reduced => "reduced as planned",
            Self::Incomplete => "incomplete",
            Self::NoReprocessing => "no reprocessing",
            Self::DidNotAttend => "did not attend",
            Self::ByMistake => "opened by mistake",
        }
    }
}

/// How a session was closed, as every list says it.
pub(crate) fn closing_words(ended: bool, closing: Option<&str>) -> &'static str {
    if ended { closing.and_then(ClosingKind::parse).map_or("not recorded", ClosingKind::words) } else { "still open" }
}

/// What happened beside the sets, as the room names it.
pub(crate) fn happened(kind: &str) -> String {
    match kind {
        "admitted" => "Client admitted",
        "sight" => "Clinician can see and hear the client",
        "cannot_see" => "Clinician cannot see the client",
        "unseen" => "No picture came from the client: the set came to rest",
        "unheard" => "No sound came from the client: the set came to rest",
        "watched" => "Sets come to rest when nothing comes of the client",
        "unwatched_sound_only" => "Sets go on without a picture: work by sound alone",
        "unwatched_other_means" => "Sets go on without a picture: seen and heard by other means",
        "control_taken" => "Control taken by another desk",
        "stage_lost" => "Client\u{2019}s page not heard",
        "stage_back" => "Client\u{2019}s page heard again",
        "desk_lost" => "Clinician\u{2019}s desk not heard",
        "desk_back" => "Clinician\u{2019}s desk heard again",
        "client_ready" => "Client ready again",
        "client_stop" => "Client stopped",
        "client_longer" => "Client needs longer",
        "client_left" => "Client left",
        "interrupted_hidden" => "Client\u{2019}s page hidden: stopped by itself",
        "interrupted_full_screen_left" => "Full screen left: stopped by itself",
        "interrupted_resized" => "Client\u{2019}s screen turned or resized: stopped by itself",
        "interrupted_sound_lost" => "Sound lost: stopped by itself",
        "interrupted_silence" => "No sign of the desk: stopped by itself",
        other => return other.replace('_', " "),
    }
    .to_owned()
}

/// Why there was another order within a set, as the room names it.
pub(crate) fn cause(name: &str) -> String {
    match name {
        "started" => "started",
        "rate" => "rate changed",
        "extended" => "extended",
        "end" => "end asked for",
        "eased" => "nothing came of the client: eased",
        "stopped" => "stopped",
        other => return other.replace('_', " "),
    }
    .to_owned()
}
