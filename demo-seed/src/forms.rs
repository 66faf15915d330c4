//! Forms that the invented clients filled in: at intake, every fourth session, at the end. Made from what their sessions were rated at, without
//! another draw, so that the courses stay as they are; the rules are invented for the demo and are no finding about anybody.

use leeward::episodes::Reason;
use leeward::measures::{Filled, Occasion, Sheet};
use leeward::store::seal::Private;
use leeward_core::measures::Measure;

use chrono::{DateTime, Utc};

use crate::plan::{ClientPlan, SessionPlan};
use crate::write::Fault;

/// In the course of a treatment forms are asked every so many sessions.
pub const EVERY: usize = 5;

/// How disturbed a client is at an hour, 0 to 10: its last SUD.
pub fn disturbed(session: &SessionPlan) -> Option<u8> {
    session.sets.iter().rev().find_map(|set| set.sud)
}

/// What a client fills in when they are so disturbed; `place`: of the client in the practice, so that people differ.
pub fn sheets(place: usize, occasion: Occasion, disturbed: u8, at: DateTime<Utc>) -> Result<Vec<Filled>, Fault> {
    let asked: &[Measure] = match (occasion, place % 3) {
        (Occasion::Intake, 0) => &[Measure::Pcl5, Measure::Phq9, Measure::Des2],
        (Occasion::Intake, 1) => &[Measure::Pcl5, Measure::Phq9, Measure::Gad7],
        (Occasion::Intake, _) => &[Measure::Pcl5, Measure::Phq9, Measure::Who5],
        (_, 1) => &[Measure::Pcl5, Measure::Phq9, Measure::Gad7],
        (_, 2) => &[Measure::Pcl5, Measure::Phq9, Measure::Who5],
        _ => &[Measure::Pcl5, Measure::Phq9],
    };
    let event = |measure| Private::new(if measure == Measure::Pcl5 { "the one that was chosen first" } else { "" });
    asked
        .iter()
        .map(|measure| {
            let sheet = Sheet::new(measure.form(), answers(*measure, place, disturbed)).map_err(|fault| fault.to_string())?;
            Ok(Filled { measure: *measure, occasion, answered_at: at, sheet, event: event(*measure) })
        })
        .collect()
}

/// Answers that add up to about what somebody so disturbed would have, spread over the items.
fn answers(measure: Measure, place: usize, disturbed: u8) -> Vec<Option<u8>> {
    let form = measure.form();
    let (items, steps) = (form.topics.len(), usize::from(form.most / form.step));
    // In tenths of the highest: 3 where nothing disturbs any more, 7 at the worst; well-being the other way round.
    let tenths = 2 + usize::from(disturbed) / 2 + place % 2;
    let tenths = if measure == Measure::Who5 { 9 - tenths } else { tenths };
    let wanted = items * steps * tenths / 10;
    let (each, more) = (wanted / items, wanted % items);
    let answer = |at: usize| {
        let steps = each + usize::from((at * 7 + place) % items < more);
        // The item about death says nothing, unless the demo wants a flag of it.
        let silent = form.risk == Some(at + 1);
        u8::try_from(if silent { 0 } else { steps * usize::from(form.step) }).unwrap_or(form.most).min(form.most)
    };
    let mut all: Vec<Option<u8>> = (0..items).map(|at| Some(answer(at))).collect();
    // Some leave an item blank.
    if measure == Measure::Phq9 && place % 11 == 4 {
        all[4] = None;
    }
    all
}

/// A PHQ-9 whose item about death is answered with 1.
pub fn with_a_flag(at: DateTime<Utc>) -> Result<Filled, Fault> {
    let mut all = answers(Measure::Phq9, 0, 6);
    all[8] = Some(1);
    let sheet = Sheet::new(Measure::Phq9.form(), all).map_err(|fault| fault.to_string())?;
    Ok(Filled { measure: Measure::Phq9, occasion: Occasion::Regular, answered_at: at, sheet, event: Private::default() })
}

/// Whether a treatment has ended: whoever has not been seen for longer than this many days.
pub fn ended(plan: &ClientPlan) -> Option<i64> {
    const QUIET: i64 = 45;
    plan.sessions.last().map(|last| last.days_ago).filter(|days| *days > QUIET || plan.archived)
}

/// As what the treatment of the client at `place` ended, each in a way of their own. A treatment that took place was no mistake.
pub fn reason(place: usize) -> Reason {
    let reasons: Vec<Reason> = Reason::ALL.iter().copied().filter(|reason| *reason != Reason::Mistake).collect();
    reasons.get(place % reasons.len()).copied().unwrap_or(Reason::Unknown)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::End;
    use crate::practice;

    #[test]
    fn the_whole_practice_has_treatments_that_ended_for_every_reason_and_none_by_mistake() {
        let practice = practice::draw(1, practice::CLIENTS);
        let has_ended = |plan: &ClientPlan| {
            ended(plan).is_some() && plan.sessions.last().is_some_and(|last| !matches!(last.end, End::Left | End::NotReached))
        };
        let ends: Vec<Reason> = practice.clients.iter().enumerate().filter(|(_, plan)| has_ended(plan)).map(|(at, _)| reason(at)).collect();
        assert!(!ends.contains(&Reason::Mistake), "{ends:?}");
        let missing: Vec<_> = Reason::ALL.iter().filter(|reason| **reason != Reason::Mistake && !ends.contains(reason)).collect();
        assert!(missing.is_empty(), "no treatment ended as {missing:?}");
    }
}
