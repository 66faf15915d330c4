//! Hours that went otherwise than planned, so that the demo has one of each: a client who is to be called, one who cannot be reached, one
//! whose session was left open, one who did not come. All of them are the first clinician's, and each comes after the rest of their course.

use leeward::sessions::ClosingKind;
use leeward_core::course::Because;
use leeward_core::wire::{Change, Ending, Length, Matter, Moment, Plan};

use crate::course::Course;
use crate::people::CLINICIANS;
use crate::plan::{End, SessionPlan, SetPlan};

/// The hour that befell the client at this place of the practice; none to most, and none where it would come before the last of the course.
pub fn hour(at: usize, course: &Course, plan: Plan) -> Option<SessionPlan> {
    let (days_ago, end, words, note) = match (at % CLINICIANS.len(), at / CLINICIANS.len()) {
        (0, 5) => (2, End::Unsteady, "it is too close", "It rose and did not settle. Stayed on together for twenty minutes."),
        (0, 3) => (1, End::NotReached, "I want to stop", ""),
        (0, 7) => (1, End::Left, "further away", ""),
        (0, 8) => (1, End::DidNotAttend, "", "Waited for twenty minutes and called twice."),
        _ => return None,
    };
    let last = course.sessions.last()?;
    if last.days_ago <= days_ago {
        return None;
    }
    let sud = last.sets.iter().rev().find_map(|set| set.sud).or(course.targets.last().map(|target| target.sud))?;
    let attended = end != End::DidNotAttend;
    let sets =
        if attended { [(None, Ending::Done), (Some(sud), last_ending(end))].map(|after| set(plan, after, words)).into() } else { vec![] };
    Some(SessionPlan {
        days_ago,
        minute: last.minute,
        target: course.targets.len().checked_sub(1),
        opening: last.opening.clone(),
        // The emergency contact had been asked by somebody else that morning.
        passed: (end == End::Left).then_some((Matter::Contact, Because::AskedElsewhere)),
        reevaluation: Some(sud),
        sets,
        closing: if attended { ClosingKind::Incomplete } else { ClosingKind::DidNotAttend },
        closing_sud: None,
        reopened: false,
        end,
        note: note.to_owned(),
    })
}

fn last_ending(end: End) -> Ending {
    if end == End::NotReached { Ending::LinkLost } else { Ending::Done }
}

fn set(plan: Plan, (sud, ending): (Option<u8>, Ending), words: &'static str) -> SetPlan {
    let Length::Cycles(cycles) = plan.length else { unreachable!("courses are drawn with counted sets") };
    let shown = if ending == Ending::Done { 1.0 } else { 0.4 };
    let moment = if sud.is_some() { Moment::BackAtTarget } else { Moment::AfterSet };
    SetPlan { plan, change: None, ending: (ending, f64::from(cycles) * shown), moment, mark: Change::Same, words, sud, voc: None }
}
