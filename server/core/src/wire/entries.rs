//! Entries: what the clinician writes down beside the sets. They go by HTTP, not by the socket:
//! the room never waits for the database, and an entry is only shown as saved once it is.

use serde::{Deserialize, Serialize};

use super::{Answer, Ending, Matter, Plan, Scale};
use crate::course::{Because, Belief, End, Phase, Procedure, Rehearsal, Scan};

/// When in the protocol a rating was asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Moment {
    /// The baseline, with the worst picture in mind.
    Assessment,
    /// Straight after a set.
    AfterSet,
    /// Back at the target.
    BackAtTarget,
    /// While the wanted belief is strengthened.
    Installation,
    /// At the close of the session.
    Closing,
    /// At the start of a later session.
    Reevaluation,
    /// In the opening of the hour. Nothing is rated there.
    Opening,
}

/// The clinician's one-key mark of what came up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// Something new came up.
    Changing,
    /// The same as before.
    Same,
    /// Nothing disturbing is left.
    Settled,
}

/// What the clinician saw in a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Saw {
    /// A look that is glazed.
    Glazed,
    /// Tears.
    Tears,
    /// Numb.
    Numb,
    /// Far away.
    FarAway,
    /// Something else; words may follow.
    Other,
}

/// What may be tried when it is stuck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Rung {
    /// Over or under: ground, resource, shorter sets, or stop.
    Arousal,
    /// Direction, speed, width, length, another channel.
    Mechanics,
    /// Body, sound, another part of the picture.
    Focus,
    /// An earlier memory, or a belief in the way.
    Earlier,
    /// A few words of one's own, and on.
    Interweave,
}

/// What the clinician put on the client's page to steady by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Showed {
    /// The page's own words about here and now.
    Orient,
    /// What has helped before.
    Resource,
    /// Nothing: it was taken away.
    Nothing,
}

/// Work that no page of ours paced: it is recorded, and nothing about it was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Unmeasured {
    /// In the same room.
    InPerson,
    /// Without stimulation.
    Without,
    /// The client's own tapping, unpaced.
    OwnTapping,
}

/// A step on the way after a client who is gone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum ReachStep {
    /// Called, and nobody answered.
    NoAnswer,
    /// A message was left, in words that anybody may read.
    Messaged,
    /// The emergency contact was called.
    ContactCalled,
    /// Somebody was asked to look in on them.
    WelfareAsked,
    /// Help was called for them.
    HelpCalled,
    /// They were reached.
    Reached,
    /// They were not spoken to, and are known to be safe.
    Safe,
}

/// Why it is called stuck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum StuckBy {
    /// The same, and disturbing, in a row.
    Same,
    /// SUD no lower at two returns to the target.
    NotLower,
}

/// What may come next between sets: an offer. See `course::next`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Next {
    /// Nothing disturbing came up twice: back to the target, and SUD.
    BackToTarget,
    /// It does not move.
    Stuck {
        /// By what sign.
        why: StuckBy,
        /// What may be tried, in this order.
        ladder: Vec<Rung>,
        /// What was tried since anything last changed.
        tried: Vec<Rung>,
    },
}

/// What an entry says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum EntryValue {
    /// What the client reported, in a few words: process notes, sealed apart.
    Words {
        /// 1 to 2,000 characters.
        words: String,
    },
    /// See [`Change`].
    Change {
        /// The mark.
        change: Change,
    },
    /// What the clinician saw.
    Saw {
        /// See [`Saw`].
        saw: Saw,
    },
    /// What was tried after a set.
    Tried {
        /// See [`Rung`].
        rung: Rung,
    },
    /// Subjective units of disturbance.
    Sud {
        /// 0 to 10.
        value: u8,
    },
    /// Validity of the wanted belief.
    Voc {
        /// 1 to 7.
        value: u8,
    },
    /// A matter of the opening was answered.
    Answered {
        /// The answer.
        answer: Answer,
        /// It was not asked anew: as last time.
        again: bool,
    },
    /// A matter of the opening was gone past.
    Passed {
        /// Which.
        matter: Matter,
        /// Why.
        because: Because,
    },
    /// What a scan of the body found.
    Scan {
        /// See [`Scan`].
        scan: Scan,
    },
    /// How a situation to come was gone through.
    Rehearsal {
        /// See [`Rehearsal`].
        rehearsal: Rehearsal,
    },
    /// The rating that stands on this scale fits this life.
    Fits {
        /// Which.
        scale: Scale,
    },
    /// Whether the belief is still the wanted one.
    Belief {
        /// See [`Belief`].
        belief: Belief,
    },
    /// It was too much, and the clinician stopped.
    TooMuch,
    /// What was put on the client's page to steady by.
    Showed {
        /// See [`Showed`].
        showed: Showed,
    },
    /// Work that no page of ours paced.
    Unmeasured {
        /// See [`Unmeasured`].
        way: Unmeasured,
    },
    /// A step on the way after a client who is gone.
    Reach {
        /// See [`ReachStep`].
        step: ReachStep,
    },
    /// How long the appointment is, and how much of that is kept for closing.
    Time {
        /// 10 to 240.
        minutes: u16,
        /// 0 to 60, and fewer than `minutes`.
        reserve: u16,
    },
    /// The entry that this one replaces is taken back.
    TakenBack,
    /// What was sealed does not open. In the log only: it cannot be sent.
    Unreadable,
}

/// One entry, append-only. `POST /sessions/{id}/entries` takes one and answers [`Saved`] once it
/// is in the record. The same `id` sent twice is kept once.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Entry {
    /// A UUID made by the page: the idempotency key.
    pub id: String,
    /// The set it belongs to (a UUID), or none.
    pub set: Option<String>,
    /// The entry that this one corrects or takes back.
    pub replaces: Option<String>,
    /// When in the protocol.
    pub moment: Moment,
    /// Of a SUD of a recent event: which segment, from 1.
    #[serde(default)]
    pub segment: Option<u8>,
    /// The client gave it on their own page.
    #[serde(default)]
    pub from_client: bool,
    /// What it says.
    pub value: EntryValue,
}

/// The answer to an [`Entry`]: it is in the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Saved {
    /// The entry's id.
    pub id: String,
    /// Server's time of keeping, RFC 3339 in UTC.
    pub at: String,
}

/// An entry that is in the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct SavedEntry {
    /// As it was sent.
    pub entry: Entry,
    /// See [`Saved::at`].
    pub at: String,
}

/// A set in the log of a session.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct LogSet {
    /// The set's id (a UUID).
    pub id: String,
    /// 1 for the first.
    pub number: u32,
    /// As last ordered; `None` when the record of it cannot be read.
    pub plan: Option<Plan>,
    /// Cycles shown at the screen, from evidence; `None` when nothing was heard.
    pub cycles: Option<f64>,
    /// `None` while it runs.
    pub ending: Option<Ending>,
}

/// `GET /sessions/{id}/entries`: all that the desk's log shows, to fill it after a reload.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct SessionLog {
    /// In order of number.
    pub sets: Vec<LogSet>,
    /// In order of keeping, corrected and taken-back ones included.
    pub entries: Vec<SavedEntry>,
    /// What the course of the session starts from.
    pub start: Start,
    /// A re-evaluation in this session is of another target than the session's, and no part of its course.
    pub other_reevaluated: bool,
    /// What may come next, by the record as it stands.
    #[serde(default)]
    pub next: Option<Next>,
    /// The label of the target that a re-evaluation in this session is of.
    #[serde(default)]
    pub reevaluates: Option<String>,
    /// What the last session's opening found, for what may be "as last time".
    #[serde(default)]
    pub opened_before: Vec<Answer>,
    /// Where the hour stands.
    pub phase: Phase,
    /// What the end of today's target asks for, in the order of the work.
    #[serde(default)]
    pub asks: Vec<Asks>,
    /// How today's target is worked on; `None`: there is none.
    #[serde(default)]
    pub procedure: Option<Procedure>,
}

/// One thing that a target's end asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Asks {
    /// What.
    pub end: End,
    /// It is not reached yet.
    pub open: bool,
}

/// The assessment of the session's target, where nothing was rated between it and the session.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Start {
    /// SUD, 0 to 10.
    pub sud: Option<u8>,
    /// VOC, 1 to 7.
    pub voc: Option<u8>,
}
