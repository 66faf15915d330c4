//! The order of the work, as rules: what the record says goes in, what is reached and what is still open comes out.
//!
//! Order by default, overridden with a reason, and nothing advances by itself: a decision is always somebody's, and a rule only says
//! whether the record carries it. Whatever shows the state of a target asks [`Course::of`]; the row that lists read
//! (`target_course`) is what it said, kept with [`RULES`] and made anew by `leeward course`.
//!
//! Sources. The eight phases, and a target that is complete at SUD 0 (or 1 where that fits the case), VOC 7 and a clear body: EMDRIA's
//! published description (clinical reference, sections 1 and 6, source 1). A lower VOC where full belief would be unrealistic: a
//! practitioner's page (section 1.6, source 19, second-hand). That one asks whether the belief still fits before it is strengthened:
//! section 1.6. The ends of the other procedures, and that a completion is provisional until it was looked at again: a practitioner's
//! judgement, from memory.

mod ends;
mod opening;
mod phase;
mod stuck;
mod target;

#[cfg(test)]
mod histories;

pub use ends::End;
pub use opening::{Before, Opened, holds};
pub use phase::{Hour, Phase, phase};
pub use stuck::{Returns, SetDone, next};
pub use target::{Course, Held, Known, State};

use serde::{Deserialize, Serialize};

use crate::scale::{Sud, Voc};
use crate::wire::{Change, Moment};

/// The version of these rules. A row folded by others is made anew.
pub const RULES: i16 = 2;

/// How a target is worked on. It says what its end asks for, and may be changed at any time.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Procedure {
    /// SUD 0, or 1 where that fits; VOC 7, or lower where that fits; a clear scan.
    #[default]
    Standard,
    /// Strengthening something good: it asks for no SUD and no VOC.
    Resource,
    /// Part of a memory, to take the edge off. It ends reduced as planned, and is never complete.
    Restricted,
    /// A recent event in segments, each with its own SUD; belief and scan once, over the whole.
    RecentEvent,
    /// A situation to come: rehearsed without disturbance, and the belief strong.
    Future,
}

/// Why something was done out of its order. One key at the desk; words may follow and nobody is asked for them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Because {
    /// It was asked before, or by somebody else.
    AskedElsewhere,
    /// The client does not want it.
    ClientDeclines,
    /// It would be too much now.
    TooMuchNow,
    /// What is left fits the facts of this life.
    FitsTheFacts,
    /// It does not apply to this work.
    DoesNotApply,
    /// The clinician's judgement.
    Judgement,
}

/// Attention went through the body with memory and belief in mind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Scan {
    /// Nothing, or only what is neutral or good.
    Clear,
    /// Something is felt.
    Felt,
}

/// A situation to come was gone through in the mind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Rehearsal {
    /// From beginning to end, and nothing disturbed.
    Undisturbed,
    /// Something disturbed.
    Disturbed,
}

/// Whether the belief that is to be strengthened is still the one that is wanted. A VOC is of one belief.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Belief {
    /// It is.
    Still,
    /// Another one fits better now: its VOC is asked anew.
    Another,
}

/// What the clinician decides about a target.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Decision {
    /// Begun, and set aside for now.
    Incomplete,
    /// At its procedure's end.
    Complete,
    /// Restricted work has done what was planned.
    Reduced,
    /// It was at its end, and is worked on again.
    Reopened,
}

/// One thing that the record says about a target and that stands: neither corrected nor taken back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// From now on it is worked on so.
    Procedure(Procedure),
    /// A set of reprocessing was begun.
    Set,
    /// What a set changed.
    Mark(Change),
    /// A SUD.
    Sud {
        /// The rating.
        value: Sud,
        /// When in the protocol it was asked.
        moment: Moment,
        /// Of a recent event: which segment, from 1.
        segment: Option<u8>,
    },
    /// A VOC.
    Voc {
        /// The rating.
        value: Voc,
        /// When in the protocol it was asked.
        moment: Moment,
    },
    /// The SUD of 1 that stands fits this life.
    SudFits,
    /// The VOC that stands fits this life.
    VocFits,
    /// See [`Scan`].
    Scan(Scan),
    /// See [`Rehearsal`].
    Rehearsal(Rehearsal),
    /// See [`Belief`].
    Belief(Belief),
    /// See [`Decision`]. A code where the record does not carry it.
    Decided(Decision, Option<Because>),
    /// A state from before decisions were kept, by hand.
    CarriedOver(State),
}
