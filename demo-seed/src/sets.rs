//! From a planned set to what a room would have ordered and a screen would have shown.

use leeward::live::{PastOrder, PastSet};
use leeward_core::room::Cause;
use leeward_core::timeline::Goal;
use leeward_core::wire::{Ending, Evidence, Fact, Timeline};
use uuid::Uuid;

use crate::plan::SetPlan;

/// The record of `plan` as the set `id`, started at room time `at`, ms; and the room time of its end.
///
/// # Errors
/// When the plan has no room for its change of rate: a fault of the seeder.
pub fn record(plan: &SetPlan, id: Uuid, number: u32, at: f64) -> Result<(PastSet, f64), String> {
    let start = at + 1_500.0;
    let first = Timeline::start(&plan.plan, start);
    let mut orders = vec![PastOrder { cause: Cause::Started, at, plan: plan.plan, timeline: first.clone() }];
    let mut timeline = first;
    if let Some((after, rate)) = plan.change {
        let when = time_of(&timeline, after);
        timeline = timeline
            .change_rate(when, rate, Goal::of(&plan.plan, start))
            .map_err(|_| format!("set {number} has no room for its change"))?;
        let changed = leeward_core::wire::Plan { rate, ..plan.plan };
        orders.push(PastOrder { cause: Cause::Rate, at: when, plan: changed, timeline: timeline.clone() });
    }
    let (ending, cycles) = plan.ending;
    let last = orders.last().map_or(plan.plan, |order| order.plan);
    if let Some((cause, ended)) = cut(&timeline, ending, time_of(&timeline, cycles)) {
        timeline = ended;
        orders.push(PastOrder { cause, at: time_of(&timeline, cycles), plan: last, timeline: timeline.clone() });
    }
    let end = timeline.ends_at().unwrap_or(at);
    let evidence = evidence(&timeline, id, start, end, plan.plan.width, ending);
    Ok((PastSet { id, number, plan: plan.plan, orders, evidence, ending, ended_at: end }, end))
}

fn cut(timeline: &Timeline, ending: Ending, when: f64) -> Option<(Cause, Timeline)> {
    match ending {
        Ending::Done => None,
        Ending::EndedByClinician => Some((Cause::End, timeline.end_at_next_extreme(when))),
        _ => Some((Cause::Stopped(ending), timeline.stop(when))),
    }
}

/// The room time at which so many cycles have been shown, to the millisecond.
fn time_of(timeline: &Timeline, cycles: f64) -> f64 {
    let (mut low, mut high) = (timeline.starts_at().unwrap_or(0.0), timeline.ends_at().unwrap_or(0.0));
    while high - low > 0.5 {
        let middle = f64::midpoint(low, high);
        if timeline.read(middle).phase < cycles { low = middle } else { high = middle }
    }
    high
}

/// What a screen of 60 frames a second would have reported.
fn evidence(timeline: &Timeline, id: Uuid, start: f64, end: f64, width: f64, ending: Ending) -> Vec<Evidence> {
    let set = id.to_string();
    let mut facts = vec![(start, Fact::Shown { width })];
    let mut at = start + 1_000.0;
    while at < end {
        facts.push((at, Fact::Second { phase: timeline.read(at).phase, frames: 8, longest_gap: 17.0 }));
        at += 1_000.0;
    }
    facts.push((end, Fact::Rested { phase: timeline.read(end).phase, ending }));
    facts.into_iter().zip(0..).map(|((at, fact), seq)| Evidence { set: set.clone(), seq, at, fact }).collect()
}
