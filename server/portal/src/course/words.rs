//! What the rules call things, as pages say it.

use leeward_core::course::{Because, Course, Decision, End, Held, Procedure, Rehearsal, Scan, State};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Answer, Matter};

use super::Stand;

/// Procedures by their names in forms, with what their end asks for.
pub(crate) const PROCEDURES: [(&str, &str); 5] = [
    ("standard", "Standard: until SUD 0, VOC 7 and a clear scan"),
    ("resource", "Resource: strengthening something good, without SUD and VOC"),
    ("restricted", "Restricted: part of it, ends reduced as planned"),
    ("recent_event", "Recent event: in segments, belief and scan over the whole"),
    ("future", "Future: rehearsed without disturbance, belief strong"),
];

/// Codes for what is done out of its order.
pub(crate) const BECAUSE: [(&str, &str); 6] = [
    ("fits_the_facts", "What is left fits the facts"),
    ("client_declines", "The client does not want it asked"),
    ("too_much_now", "It would be too much now"),
    ("asked_elsewhere", "Asked before, or by somebody else"),
    ("does_not_apply", "Does not apply to this work"),
    ("judgement", "Clinical judgement"),
];

/// A code in words.
pub(crate) const fn because_words(because: Because) -> &'static str {
    match because {
        Because::FitsTheFacts => "what is left fits the facts",
        Because::ClientDeclines => "the client does not want it asked",
        Because::TooMuchNow => "it would be too much now",
        Because::AskedElsewhere => "asked before, or by somebody else",
        Because::DoesNotApply => "does not apply to this work",
        Because::Judgement => "clinical judgement",
    }
}

/// A procedure in a word or two.
pub(crate) const fn procedure_words(procedure: Procedure) -> &'static str {
    match procedure {
        Procedure::Standard => "standard",
        Procedure::Resource => "resource",
        Procedure::Restricted => "restricted",
        Procedure::RecentEvent => "recent event",
        Procedure::Future => "future",
    }
}

/// A state in a word or two.
pub(crate) const fn state_name(state: State) -> &'static str {
    match state {
        State::Planned => "planned",
        State::Active => "active",
        State::Incomplete => "incomplete",
        State::Complete => "complete",
        State::Reduced => "reduced as planned",
        State::Reopened => "reopened",
    }
}

/// How a target stands, for lists: a completion never without whether it held.
pub(crate) const fn state_words(stand: Stand) -> &'static str {
    match (stand.state, stand.held) {
        (State::Complete, Some(Held::Yes)) => "complete, held",
        (State::Complete, Some(Held::No)) => "complete, came up again",
        (State::Complete, _) => "complete, provisional",
        (state, _) => state_name(state),
    }
}

/// A decision, as a form offers it.
pub(crate) const fn decision_words(decision: Decision) -> &'static str {
    match decision {
        Decision::Incomplete => "Incomplete: begun, set aside for now",
        Decision::Complete => "Complete: at its end",
        Decision::Reduced => "Reduced as planned: what was meant to be done is done",
        Decision::Reopened => "Reopened: came up again, worked on again",
    }
}

/// What an end asks for: its name, and what reaches it.
pub(crate) const fn end_words(end: End) -> (&'static str, &'static str) {
    match end {
        End::Sud => ("SUD", "0, or 1 where that fits"),
        End::Segments => ("SUD of each segment", "0, or 1 where that fits"),
        End::Rehearsal => ("Rehearsal", "without disturbance"),
        End::Voc => ("VOC", "7, or lower where that fits"),
        End::Scan => ("Body scan", "clear"),
    }
}

/// How far it is: what stands there now.
pub(crate) fn reached_words(end: End, course: &Course) -> String {
    let known = &course.known;
    let rated = |value: Option<u8>, fits: bool| {
        value.map_or_else(|| "not asked".to_owned(), |value| if fits { format!("{value}, which fits") } else { value.to_string() })
    };
    match end {
        End::Sud => rated(known.sud.map(Sud::get), known.sud_fits),
        End::Voc if known.voc.is_none() && course.first_voc.is_some() => "to be asked anew".to_owned(),
        End::Voc => rated(known.voc.map(Voc::get), known.voc_fits),
        End::Segments if known.segments.is_empty() => "none rated".to_owned(),
        End::Segments => {
            let each: Vec<String> = known.segments.iter().map(|(segment, sud)| format!("{segment}: {}", sud.get())).collect();
            format!("{}{}", each.join(", "), if known.sud_fits { ", where 1 fits" } else { "" })
        }
        End::Rehearsal => match known.rehearsal {
            Some(Rehearsal::Undisturbed) => "gone through undisturbed".to_owned(),
            Some(Rehearsal::Disturbed) => "something disturbed".to_owned(),
            None => "not yet".to_owned(),
        },
        End::Scan => match known.scan {
            Some(Scan::Clear) => "clear".to_owned(),
            Some(Scan::Felt) => "something was felt".to_owned(),
            None => "not yet, or something disturbed since".to_owned(),
        },
    }
}

/// A matter of the opening.
pub(crate) const fn matter_words(matter: Matter) -> &'static str {
    match matter {
        Matter::Location => "Where they are",
        Matter::Privacy => "Private",
        Matter::Nearby => "Who is near",
        Matter::Contact => "Emergency contact",
        Matter::Risk => "Risk",
        Matter::Fitness => "Fit today",
        Matter::Consent => "Consent",
        Matter::LineDrop => "If the line drops",
        Matter::Arrival => "How they are",
        Matter::Agreed => "What was agreed",
        Matter::Reevaluation => "Re-evaluation",
        Matter::Assessment => "Assessment",
        Matter::Reprocessing => "Reprocessing",
        Matter::Time => "Time",
    }
}

/// An answer in the opening.
pub(crate) const fn answer_words(answer: Answer) -> &'static str {
    match answer {
        Answer::UsualPlace => "where they usually are",
        Answer::AnotherPlace => "at another place",
        Answer::Private => "alone, or content with who is near",
        Answer::Overheard => "somebody may listen",
        Answer::Nobody => "nobody",
        Answer::SomebodyToHelp => "somebody who can help",
        Answer::Others => "others",
        Answer::Reachable => "can be reached",
        Answer::NotReachable => "cannot be reached",
        Answer::NothingNew => "nothing new",
        Answer::PlanStands => "present, the plan stands",
        Answer::Acute => "present now",
        Answer::Fit => "fit",
        Answer::Strained => "strained, and enough",
        Answer::NotFit => "not fit today",
        Answer::Consents => "stands",
        Answer::NoReprocessing => "withdrawn for reprocessing",
        Answer::NoStimulation => "withdrawn for all stimulation",
        Answer::WayAgreed => "agreed who calls whom",
        Answer::WayOpen => "not agreed",
        Answer::Steady => "steady",
        Answer::Unsteady => "unsteady",
        Answer::Kept => "kept",
        Answer::PartlyKept => "kept in part",
        Answer::NotKept => "not kept",
        Answer::Planned => "planned for today",
        Answer::NotForRisk => "not today: the risk there is",
        Answer::NotAsTheyAre => "not today: as the client is",
        Answer::NotByWish => "not today: the client's wish",
        Answer::NotForTime => "not today: too little time",
    }
}
