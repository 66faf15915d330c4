//! What a set is: as planned, as it runs, and how it ended.

use serde::{Deserialize, Serialize};

use super::{Comfort, Purpose};

/// The line the dot moves along. A set starts at the extreme that `phase` 0 stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Path {
    /// Left, right, left. Phase 0 is the left end.
    Across,
    /// Up and down. Phase 0 is the top end.
    UpDown,
    /// From the upper left to the lower right. Phase 0 is the upper left end.
    Falling,
    /// From the lower left to the upper right. Phase 0 is the lower left end.
    Rising,
    /// A figure of eight lying on its side, once through in a cycle. Phase 0 is the left end.
    Eight,
}

/// Which ways of stimulation are on. At least one must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Channels {
    /// The moving dot.
    pub eyes: bool,
    /// Tones that alternate between the sides, one at each extreme.
    pub ears: bool,
    /// A pacer for tapping: the tones, a large figure of the two sides when the eyes are off, and
    /// vibration when the plan's comfort has it.
    #[serde(default)]
    pub hands: bool,
}

/// How long a set is meant to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind", content = "cycles")]
pub enum Length {
    /// This many whole cycles, 1 or more.
    Cycles(u32),
    /// Until the clinician ends it, or the hard limit of `safety` does.
    Open,
}

/// What the clinician has chosen for the set that runs, or for the next one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Plan {
    /// Cycles per second, within `safety::RATE_HZ`.
    pub rate: f64,
    /// From extreme to extreme, degrees of visual angle.
    pub width: f64,
    /// Diameter of the dot, degrees of visual angle.
    pub dot: f64,
    /// The line it moves along.
    pub path: Path,
    /// How long.
    pub length: Length,
    /// By eyes, by ears, by hands.
    pub channels: Channels,
    /// As the client bears it best. Absent from what was written before there was a choice.
    #[serde(default)]
    pub comfort: Comfort,
    /// What the set is for. Absent from what was written before it was kept: reprocessing.
    #[serde(default)]
    pub purpose: Purpose,
}

impl Channels {
    /// `width` where a dot moves, which is for the eyes alone; tones and taps have none.
    pub fn seen(self, width: f64) -> Option<f64> {
        self.eyes.then_some(width)
    }
}

/// One piece of the stimulus: the rate goes linearly from `rate_from` to `rate_to`.
///
/// Within a segment, with `s` = seconds since `starts_at` and `d` = `lasts` in seconds,
/// phase(s) = phase + rate_from*s + (rate_to - rate_from)*s*s/(2*d).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Segment {
    /// Room time of its beginning, ms.
    pub starts_at: f64,
    /// Its length, ms; above 0.
    pub lasts: f64,
    /// Cycles since the set began, at `starts_at`.
    pub phase: f64,
    /// Hz at its beginning.
    pub rate_from: f64,
    /// Hz at its end.
    pub rate_to: f64,
}

/// A whole set as data, with the end always in it: contiguous segments in order of time. Before
/// the first the dot rests at the first phase, after the last it rests at the last.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Timeline {
    /// In order; each starts where the one before ends, in time and in phase.
    pub segments: Vec<Segment>,
}

/// Who or what ended a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Ending {
    /// It came to its planned end.
    Done,
    /// The clinician asked for an end at the next extreme.
    EndedByClinician,
    /// The clinician stopped it at once.
    StoppedByClinician,
    /// The client stopped it at once.
    StoppedByClient,
    /// The clinician could not see the client.
    CannotSee,
    /// No picture came from the client for too long: it came to rest.
    Unseen,
    /// No sound came from the client for too long: it came to rest.
    Unheard,
    /// The client's page was hidden, turned, resized, or left full screen.
    PageInterrupted,
    /// The line to the stage was lost, or the stage was left without a sign of the desk.
    LinkLost,
    /// The hard limit on the length of a set.
    HardLimit,
    /// Nothing was heard of its end: the server stopped meanwhile.
    Unknown,
}

impl Ending {
    /// It was stopped, by somebody or by a guard, before an end that was foreseen. The time limit eases a set
    /// out like any planned end, and what is not known is not counted as a stop.
    pub const fn is_stop(self) -> bool {
        match self {
            Self::Done | Self::EndedByClinician | Self::HardLimit | Self::Unknown => false,
            Self::StoppedByClinician | Self::StoppedByClient | Self::CannotSee | Self::Unseen | Self::Unheard => true,
            Self::PageInterrupted | Self::LinkLost => true,
        }
    }
}

/// A set as both pages see it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct SetView {
    /// The set's id in the record (a UUID).
    pub id: String,
    /// 1 for the first of the session.
    pub number: u32,
    /// As ordered, with every later change in it.
    pub plan: Plan,
    /// The stimulus itself.
    pub timeline: Timeline,
    /// `None` while it runs or eases.
    pub ended: Option<Ending>,
}
