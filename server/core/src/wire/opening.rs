//! The opening of the hour: what is confirmed before work begins, and what holds a start.

use serde::{Deserialize, Serialize};

/// What matters before a start. Each is answered by one key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Matter {
    /// Where the client is now, and on which number they are called back.
    Location,
    /// Whether nobody listens.
    Privacy,
    /// Who is near.
    Nearby,
    /// Whether the emergency contact can be reached.
    Contact,
    /// Danger to the client or to others.
    Risk,
    /// Sleep, substances, what has happened since.
    Fitness,
    /// Whether they still agree, and to what.
    Consent,
    /// What both do when the line drops.
    LineDrop,
    /// How they are.
    Arrival,
    /// What was agreed last time.
    Agreed,
    /// How the target before is rated now.
    Reevaluation,
    /// How the target of today was assessed.
    Assessment,
    /// Whether reprocessing is planned for today.
    Reprocessing,
    /// How long the appointment is. Holds nothing.
    Time,
}

/// An answer to one matter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// Location: where they usually are.
    UsualPlace,
    /// Location: somewhere else.
    AnotherPlace,
    /// Privacy: alone, or content with who is near.
    Private,
    /// Privacy: somebody listens, or may.
    Overheard,
    /// Nearby: nobody.
    Nobody,
    /// Nearby: somebody who can help.
    SomebodyToHelp,
    /// Nearby: others.
    Others,
    /// Contact: can be reached during the hour.
    Reachable,
    /// Contact: cannot.
    NotReachable,
    /// Risk: nothing new.
    NothingNew,
    /// Risk: present, and the plan stands.
    PlanStands,
    /// Risk: present now.
    Acute,
    /// Fitness: fit for this work today.
    Fit,
    /// Fitness: strained, and enough.
    Strained,
    /// Fitness: not today.
    NotFit,
    /// Consent: stands.
    Consents,
    /// Consent: withdrawn for reprocessing.
    NoReprocessing,
    /// Consent: withdrawn for all stimulation.
    NoStimulation,
    /// Line drop: who calls whom is agreed.
    WayAgreed,
    /// Line drop: not agreed.
    WayOpen,
    /// Arrival: steady.
    Steady,
    /// Arrival: unsteady.
    Unsteady,
    /// Agreed: kept.
    Kept,
    /// Agreed: in part.
    PartlyKept,
    /// Agreed: not.
    NotKept,
    /// Reprocessing: planned for today.
    Planned,
    /// Reprocessing: not today, for the risk there is.
    NotForRisk,
    /// Reprocessing: not today, as the client is.
    NotAsTheyAre,
    /// Reprocessing: not today, by the client's wish.
    NotByWish,
    /// Reprocessing: not today, for want of time.
    NotForTime,
}

impl Answer {
    /// What it answers.
    pub const fn matter(self) -> Matter {
        match self {
            Self::UsualPlace | Self::AnotherPlace => Matter::Location,
            Self::Private | Self::Overheard => Matter::Privacy,
            Self::Nobody | Self::SomebodyToHelp | Self::Others => Matter::Nearby,
            Self::Reachable | Self::NotReachable => Matter::Contact,
            Self::NothingNew | Self::PlanStands | Self::Acute => Matter::Risk,
            Self::Fit | Self::Strained | Self::NotFit => Matter::Fitness,
            Self::Consents | Self::NoReprocessing | Self::NoStimulation => Matter::Consent,
            Self::WayAgreed | Self::WayOpen => Matter::LineDrop,
            Self::Steady | Self::Unsteady => Matter::Arrival,
            Self::Kept | Self::PartlyKept | Self::NotKept => Matter::Agreed,
            Self::Planned | Self::NotForRisk | Self::NotAsTheyAre | Self::NotByWish | Self::NotForTime => Matter::Reprocessing,
        }
    }
}

/// A matter that holds a start.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Hold {
    /// Which.
    pub matter: Matter,
    /// It was answered, and the answer is against it; false: it is open.
    pub against: bool,
}

/// What holds a start, by what the set is for. Empty: nothing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Holds {
    /// Of a set of reprocessing.
    pub processing: Vec<Hold>,
    /// Of a set for a calm place.
    pub calm_place: Vec<Hold>,
}

impl Holds {
    /// What holds a set for this.
    pub fn of(&self, purpose: super::Purpose) -> &[Hold] {
        match purpose {
            super::Purpose::Processing => &self.processing,
            super::Purpose::CalmPlace => &self.calm_place,
        }
    }
}
