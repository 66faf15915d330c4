//! A session's page, line by line, in the words it is read in.

use chrono::{DateTime, Utc};
use leeward_core::chart::{self, LONG_GAP_MS, SetStep};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{EntryValue, Length, Matter, Plan};
use uuid::Uuid;

use super::queries::SessionRow;
use super::queries_sets::OrderRow;
use super::sets::Set;
use super::standing::Standing;
use crate::course;
use crate::platform::codes;
use crate::platform::when::When;
use crate::store::seal::DOES_NOT_OPEN;

/// In place of an order that this version cannot read.
const UNREADABLE: &str = "does not open: tell the administrator";

/// A row of the table of sets, with what stands behind it.
pub(super) struct SetLine {
    pub number: u32,
    /// By which channels, and along which path if a dot moves.
    pub how: String,
    pub ordered_cycles: String,
    pub rate: String,
    pub ordered_width: String,
    pub cycles: String,
    pub shown_width: String,
    pub seconds: String,
    pub frames: String,
    pub ending: &'static str,
    pub sud: Option<u8>,
    pub voc: Option<u8>,
    /// What it changed, what the clinician saw, what was tried after it.
    pub change: String,
    pub orders: Vec<OrderLine>,
}

/// One order within a set.
pub(super) struct OrderLine {
    pub seconds: String,
    pub cause: String,
    pub rate: String,
    pub length: String,
    pub width: String,
}

/// A rating, mark or report in the list of entries.
pub(super) struct EntryLine {
    pub at: DateTime<Utc>,
    pub what: &'static str,
    pub text: String,
    pub moment: &'static str,
    pub set: Option<u32>,
    pub late: bool,
    /// A rating of another target than the session's.
    pub other_target: bool,
    pub corrected: bool,
    /// The client gave it on their own page.
    pub from_client: bool,
    pub kind: EntryKind,
}

/// Where an entry is listed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum EntryKind {
    /// Among the ratings.
    Rating,
    /// Beside its set.
    Mark,
    /// Among the process notes.
    Words,
    /// In the opening.
    Opening,
    /// Among what was found and done beside the ratings.
    Found,
}

impl EntryLine {
    pub(super) fn remarks(&self) -> String {
        let remarks = [
            (self.from_client, "by the client, on their page"),
            (self.other_target, "of the target before"),
            (self.corrected, "corrected"),
            (self.late, "entered after the end"),
        ];
        let said: Vec<&str> = remarks.into_iter().filter(|(so, _)| *so).map(|(_, words)| words).collect();
        said.join(", ")
    }
}

pub(super) fn set_lines(sets: &[Set], orders: Vec<OrderRow>, steps: &[SetStep], entries: &[Standing]) -> Vec<SetLine> {
    let mut lines: Vec<SetLine> = sets.iter().map(|set| set_line(set, steps, entries)).collect();
    let mut first_at = None;
    for order in orders {
        let Some(at) = sets.iter().position(|set| set.id == order.set_id) else { continue };
        let start = match first_at {
            Some((set, start)) if set == order.set_id => start,
            _ => order.at_ms,
        };
        first_at = Some((order.set_id, start));
        lines[at].orders.push(order_line(order, start));
    }
    lines
}

fn set_line(set: &Set, steps: &[SetStep], entries: &[Standing]) -> SetLine {
    let shown = &set.shown;
    let ordered = |say: &dyn Fn(&Plan) -> String| set.plan.as_ref().map_or_else(|| UNREADABLE.to_owned(), say);
    let step = steps.iter().find(|step| step.label == set.number.to_string());
    let said = entries.iter().filter(|entry| entry.set == Some(set.id)).filter_map(|entry| match entry.value {
        EntryValue::Change { change } => Some(codes::change(change).to_owned()),
        EntryValue::Saw { saw } => Some(format!("saw: {}", codes::saw(saw))),
        EntryValue::Tried { rung } => Some(format!("tried: {}", codes::rung(rung))),
        _ => None,
    });
    let change = said.collect::<Vec<_>>().join("; ");
    SetLine {
        number: set.number,
        how: ordered(&|plan| codes::how(plan)),
        ordered_cycles: ordered(&|plan| ordered_cycles(plan.length)),
        rate: ordered(&|plan| rates(set.first_plan.map_or(plan.rate, |first| first.rate), plan.rate)),
        ordered_width: ordered(&|plan| codes::width(plan.channels, Some(plan.width))),
        cycles: shown.cycles.map_or("unknown".into(), |cycles| at_least(shown.to_rest, format!("{cycles:.1}"))),
        shown_width: ordered(&|plan| codes::width(plan.channels, shown.width)),
        seconds: shown.seconds.map_or("unknown".into(), |seconds| at_least(shown.to_rest, format!("{seconds:.1}"))),
        frames: frames(set),
        ending: set.ending.map_or("runs", chart::ending),
        sud: step.and_then(|step| step.sud).map(Sud::get),
        voc: step.and_then(|step| step.voc).map(Voc::get),
        change,
        orders: Vec::new(),
    }
}

fn order_line(order: OrderRow, start: f64) -> OrderLine {
    let plan = codes::plan(order.plan);
    let ordered = |say: &dyn Fn(&Plan) -> String| plan.as_ref().map_or_else(|| UNREADABLE.to_owned(), say);
    OrderLine {
        seconds: format!("{:.1}", (order.at_ms - start) / 1000.0),
        cause: codes::cause(&order.cause),
        rate: ordered(&|plan| hertz(plan.rate)),
        length: ordered(&|plan| codes::length(plan.length)),
        width: ordered(&|plan| codes::width(plan.channels, Some(plan.width))),
    }
}

pub(super) fn entry_lines(entries: &[Standing], sets: &[Set], session: &SessionRow) -> Vec<EntryLine> {
    let number = |id: Uuid| sets.iter().find(|set| set.id == id).map(|set| set.number);
    entries
        .iter()
        .map(|entry| {
            let (what, text) = said(entry);
            EntryLine {
                at: entry.asked_at,
                what,
                text,
                moment: codes::moment(entry.moment),
                set: entry.set.and_then(number),
                late: session.ended_at.is_some_and(|ended| entry.at > ended),
                other_target: entry.target.is_some() && entry.target != session.target_id,
                corrected: entry.corrected,
                from_client: entry.from_client,
                kind: kind(&entry.value),
            }
        })
        .collect()
}

fn kind(value: &EntryValue) -> EntryKind {
    match value {
        EntryValue::Words { .. } | EntryValue::Unreadable => EntryKind::Words,
        EntryValue::Answered { .. } | EntryValue::Passed { .. } | EntryValue::Time { .. } => EntryKind::Opening,
        EntryValue::Change { .. } | EntryValue::Saw { .. } | EntryValue::Tried { .. } | EntryValue::TakenBack => EntryKind::Mark,
        EntryValue::Scan { .. }
        | EntryValue::Rehearsal { .. }
        | EntryValue::Fits { .. }
        | EntryValue::Belief { .. }
        | EntryValue::TooMuch
        | EntryValue::Showed { .. }
        | EntryValue::Reach { .. }
        | EntryValue::Unmeasured { .. } => EntryKind::Found,
        EntryValue::Sud { .. } | EntryValue::Voc { .. } => EntryKind::Rating,
    }
}

fn said(entry: &Standing) -> (&'static str, String) {
    match &entry.value {
        EntryValue::Words { words } => ("Reported", words.clone()),
        EntryValue::Change { change } => ("Change", codes::change(*change).to_owned()),
        EntryValue::Saw { saw } => ("Seen", codes::saw(*saw).to_owned()),
        EntryValue::Tried { rung } => ("Tried", codes::rung(*rung).to_owned()),
        EntryValue::Sud { value } => {
            ("SUD", entry.segment.map_or_else(|| value.to_string(), |segment| format!("{value}, segment {segment}")))
        }
        EntryValue::Scan { .. }
        | EntryValue::Rehearsal { .. }
        | EntryValue::Fits { .. }
        | EntryValue::Belief { .. }
        | EntryValue::TooMuch
        | EntryValue::Showed { .. }
        | EntryValue::Reach { .. }
        | EntryValue::Unmeasured { .. } => codes::found(&entry.value),
        EntryValue::Voc { value } => ("VOC", value.to_string()),
        EntryValue::Answered { answer, again } => {
            let again = if *again { ", as last time" } else { "" };
            (course::matter_words(answer.matter()), format!("{}{again}", course::answer_words(*answer)))
        }
        EntryValue::Passed { matter, because } => {
            (course::matter_words(*matter), format!("gone past: {}", course::because_words(*because)))
        }
        EntryValue::Time { minutes, reserve } => {
            (course::matter_words(Matter::Time), format!("{minutes} min, the last {reserve} for closing"))
        }
        EntryValue::TakenBack => ("Taken back", String::new()),
        EntryValue::Unreadable => ("Reported", DOES_NOT_OPEN.to_owned()),
    }
}

/// A moment of the session with its time of day.
pub(super) fn moment_lines(moments: Vec<(String, DateTime<Utc>)>, when: When) -> Vec<(String, String)> {
    moments.into_iter().map(|(kind, at)| (when.second(&at), codes::happened(&kind))).collect()
}

fn ordered_cycles(length: Length) -> String {
    match length {
        Length::Cycles(cycles) => cycles.to_string(),
        Length::Open => "open-ended".into(),
    }
}

fn hertz(rate: f64) -> String {
    format!("{rate:.2}")
}

fn rates(from: f64, to: f64) -> String {
    if (from - to).abs() < 0.005 { hertz(to) } else { format!("{} to {}", hertz(from), hertz(to)) }
}

fn at_least(whole: bool, figure: String) -> String {
    if whole { figure } else { format!("at least {figure}") }
}

fn frames(set: &Set) -> String {
    let shown = &set.shown;
    match (shown.frames, shown.longest_gap) {
        (Some(frames), Some(gap)) if shown.long_gaps > 0 => {
            format!("{frames} frames looked at, longest gap {gap:.0} ms, {} s with a gap over {LONG_GAP_MS:.0} ms", shown.long_gaps)
        }
        (Some(frames), Some(gap)) => format!("{frames} frames looked at, longest gap {gap:.0} ms"),
        _ => "nothing heard".into(),
    }
}
