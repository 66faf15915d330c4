//! What the invented practice consists of, before anything is written.

use leeward::clients::Asked;
use leeward::comfort::Sheet;
use leeward::platform::Role;
use leeward::sessions::ClosingKind;
use leeward::targets::Prong;
use leeward_core::course::{Because, Procedure};
use leeward_core::wire::{Answer, Change, Ending, Matter, Moment, Plan};

use crate::people::Memory;

/// All of it.
pub struct Practice {
    /// Members, clinicians first.
    pub members: Vec<MemberPlan>,
    /// Clients, in the order of their coming.
    pub clients: Vec<ClientPlan>,
}

/// A member.
pub struct MemberPlan {
    /// Invented.
    pub name: &'static str,
    /// What they may do.
    pub roles: &'static [Role],
}

/// A client with the whole course of work.
pub struct ClientPlan {
    /// Index of the clinician.
    pub clinician: usize,
    /// Invented.
    pub name: String,
    /// How to be addressed.
    pub addressed_as: String,
    /// Of a range kept free for fiction.
    pub phone: String,
    /// Emergency contact.
    pub contact_name: String,
    /// See `phone`.
    pub contact_phone: String,
    /// Where they usually sit.
    pub location: String,
    /// Cautions.
    pub seizures: Asked,
    /// Cautions.
    pub eye_condition: Asked,
    /// The comfort sheet, where one was filled.
    pub comfort: Option<Sheet>,
    /// The safety plan part by part, where one was written.
    pub safety: Option<[&'static str; 6]>,
    /// Targets in their order.
    pub targets: Vec<TargetPlan>,
    /// Sessions in their order.
    pub sessions: Vec<SessionPlan>,
    /// The record was put away this long after the last session.
    pub archived: bool,
}

/// A target.
pub struct TargetPlan {
    /// What it is about.
    pub memory: &'static Memory,
    /// Past, present or future.
    pub prong: Prong,
    /// How old the client was, of a memory.
    pub age: Option<i16>,
    /// How it is worked on.
    pub procedure: Procedure,
    /// What it shares with others.
    pub cluster: &'static str,
    /// Baseline, 0 to 10.
    pub sud: u8,
    /// Baseline, 1 to 7.
    pub voc: u8,
}

/// What became of an hour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// Closed, the client settled.
    Closed,
    /// Closed, the client not settled: somebody calls.
    Unsteady,
    /// Nobody closed it.
    Left,
    /// The line was lost, and the client has not been heard of since.
    NotReached,
    /// The client did not come.
    DidNotAttend,
}

/// A session as it went.
pub struct SessionPlan {
    /// Days before the day of seeding.
    pub days_ago: i64,
    /// Minutes after midnight, UTC.
    pub minute: i64,
    /// Index of the target, or none for preparation.
    pub target: Option<usize>,
    /// What its opening found beyond place and privacy, and whether as last time.
    pub opening: Vec<(Answer, bool)>,
    /// What its opening went past, and why.
    pub passed: Option<(Matter, Because)>,
    /// The first rating, of the target worked on last time.
    pub reevaluation: Option<u8>,
    /// The sets.
    pub sets: Vec<SetPlan>,
    /// How it was closed.
    pub closing: ClosingKind,
    /// SUD asked at the close.
    pub closing_sud: Option<u8>,
    /// The target had been at its end, and was reopened.
    pub reopened: bool,
    /// What became of the hour.
    pub end: End,
    /// The note.
    pub note: String,
}

/// A set that took place.
pub struct SetPlan {
    /// As ordered.
    pub plan: Plan,
    /// A change of rate on the way: after so many cycles, to so many Hz.
    pub change: Option<(f64, f64)>,
    /// How it ended; a stop after so many cycles.
    pub ending: (Ending, f64),
    /// When in the protocol.
    pub moment: Moment,
    /// The mark of what came up.
    pub mark: Change,
    /// What came up, in a few words; may be empty.
    pub words: &'static str,
    /// A rating after it.
    pub sud: Option<u8>,
    /// A rating after it.
    pub voc: Option<u8>,
}
