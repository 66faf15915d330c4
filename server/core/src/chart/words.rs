//! What charts say in words.

use super::by_second::{SetCourse, Stretch};
use super::finding::finding;
use super::{LONG_GAP_MS, Occasion, SessionSpan, SetStep};
use crate::scale::{Sud, Voc};
use crate::wire::Ending;

/// Why no band of reliable change is drawn around a rating.
pub const NO_BAND: &str = "No band of reliable change is drawn: SUD and VOC are single questions, \
    and no reliability is published for them that would carry one.";

/// A rating in a table.
pub(super) fn rating(value: Option<u8>) -> String {
    value.map_or("not asked".into(), |value| value.to_string())
}

/// The lowest and the highest of several ratings, in a table.
pub(super) fn range(values: &[u8]) -> String {
    match (values.iter().min(), values.iter().max()) {
        (Some(lowest), Some(highest)) if lowest == highest => lowest.to_string(),
        (Some(lowest), Some(highest)) => format!("{lowest} to {highest}"),
        _ => "not asked".into(),
    }
}

/// How a set ended, for a table.
pub fn ending(ending: Ending) -> &'static str {
    match ending {
        Ending::Done => "as planned",
        Ending::EndedByClinician => "ended by the clinician",
        Ending::StoppedByClinician => "stopped by the clinician",
        Ending::StoppedByClient => "stopped by the client",
        Ending::CannotSee => "stopped: client not seen",
        Ending::Unseen => "stopped: no picture of the client",
        Ending::Unheard => "stopped: no sound of the client",
        Ending::PageInterrupted => "stopped: page interrupted",
        Ending::LinkLost => "stopped: link lost",
        Ending::HardLimit => "ended at the time limit",
        Ending::Unknown => "not known",
    }
}

/// The mark on the chart, for sets that did not come to an end that somebody chose beforehand.
pub(super) fn stop(ending: Ending) -> Option<&'static str> {
    match ending {
        Ending::Done | Ending::EndedByClinician => None,
        Ending::StoppedByClinician => Some("stopped"),
        Ending::StoppedByClient => Some("client stopped"),
        Ending::CannotSee => Some("not seen"),
        Ending::Unseen => Some("no picture"),
        Ending::Unheard => Some("no sound"),
        Ending::PageInterrupted => Some("interrupted"),
        Ending::LinkLost => Some("link lost"),
        Ending::HardLimit => Some("time limit"),
        Ending::Unknown => Some("end not known"),
    }
}

pub(super) fn by_set_description(has_voc: bool) -> String {
    let voc = if has_voc { " A second panel shows VOC, 1 to 7, the same way." } else { "" };
    format!(
        "Step chart. Across: the sets in order. Up: SUD, 0 to 10. A rating holds until the next; \
         where none was asked there is a gap. Of several in one place the last is drawn. Start is what was asked before the first set, or else \
         the assessment, if nothing was rated since. Dashed lines mark sets that were stopped, reached the time limit or whose \
         end is not known.{voc}"
    )
}

pub(super) fn by_session_description(has_voc: bool) -> String {
    let voc = if has_voc { " A second panel shows VOC, 1 to 7, the same way." } else { "" };
    format!(
        "Across: the sessions in order, and between them what was assessed outside of sessions. Up: SUD, \
         0 to 10. A ring is the first rating, a diamond the last; the bar reaches from the lowest to \
         the highest.{voc}"
    )
}

pub(super) fn by_set_caption(course: &[SetStep]) -> String {
    let mut sentences = vec![of_sets("SUD", course, |step| step.sud.map(Sud::get))];
    if course.iter().any(|step| step.voc.is_some()) {
        sentences.push(of_sets("VOC", course, |step| step.voc.map(Voc::get)));
    }
    let count = |fits: fn(Ending) -> bool| course.iter().filter(|step| step.ending.is_some_and(fits)).count();
    match count(Ending::is_stop) {
        0 => {}
        1 => sentences.push("One set was stopped.".into()),
        many => sentences.push(format!("{many} sets were stopped.")),
    }
    match count(|ending| ending == Ending::HardLimit) {
        0 => {}
        1 => sentences.push("One set reached the time limit.".into()),
        many => sentences.push(format!("{many} sets reached the time limit.")),
    }
    match count(|ending| ending == Ending::Unknown) {
        0 => {}
        1 => sentences.push("The end of one set is not known.".into()),
        many => sentences.push(format!("The ends of {many} sets are not known.")),
    }
    sentences.join(" ")
}

/// One scale over the sets, with how often it was asked and where last.
fn of_sets(name: &str, course: &[SetStep], value: impl Fn(&SetStep) -> Option<u8>) -> String {
    let asked: Vec<(&SetStep, u8)> = course.iter().filter_map(|step| Some((step, value(step)?))).collect();
    let values: Vec<u8> = asked.iter().map(|(_, value)| *value).collect();
    let says = finding(name, &values);
    let Some((last, _)) = asked.last() else { return format!("{says}.") };
    let sets = course.iter().filter(|step| step.is_set()).count();
    let rated = asked.iter().filter(|(step, _)| step.is_set()).count();
    match (values.len(), sets) {
        (1, _) => format!("{says}, {}.", place(last)),
        (_, 0) => format!("{says} (last asked {}).", place(last)),
        (_, 1) => format!("{says} (asked after {rated} of 1 set, last {}).", place(last)),
        _ => format!("{says} (asked after {rated} of {sets} sets, last {}).", place(last)),
    }
}

fn place(step: &SetStep) -> String {
    if step.is_set() { format!("after set {}", step.label) } else { format!("at the {}", step.label) }
}

pub(super) fn by_session_caption(course: &[SessionSpan]) -> String {
    let mut sentences = vec![of_sessions("SUD", course, |span| span.sud.iter().map(|sud| sud.get()).collect())];
    if course.iter().any(|span| !span.voc.is_empty()) {
        sentences.push(of_sessions("VOC", course, |span| span.voc.iter().map(|voc| voc.get()).collect()));
    }
    sentences.join(" ")
}

/// One scale over the sessions, with how many of them asked for it.
fn of_sessions(name: &str, course: &[SessionSpan], values: impl Fn(&SessionSpan) -> Vec<u8>) -> String {
    let all: Vec<u8> = course.iter().flat_map(&values).collect();
    let says = finding(name, &all);
    let asked = |occasion: Occasion| course.iter().filter(|span| span.occasion == occasion && !values(span).is_empty()).count();
    let sessions = course.iter().filter(|span| span.occasion == Occasion::Session).count();
    let of_sessions = match sessions {
        0 => None,
        1 => Some(format!("in {} of 1 session", asked(Occasion::Session))),
        many => Some(format!("in {} of {many} sessions", asked(Occasion::Session))),
    };
    let outside = match asked(Occasion::Assessment) {
        0 => None,
        1 => Some("once outside of sessions".to_owned()),
        many => Some(format!("{many} times outside of sessions")),
    };
    let counts: Vec<String> = [outside, of_sessions].into_iter().flatten().collect();
    if all.is_empty() || counts.is_empty() { format!("{says}.") } else { format!("{says} (asked {}).", counts.join(" and ")) }
}

/// What became of a set, in one sentence.
pub(super) fn by_second_caption(course: &SetCourse, parts: &[Stretch]) -> String {
    let Some(last) = course.heard.last() else { return "Nothing was heard from the screen.".into() };
    let cycles = match course.ordered.segments.is_empty() {
        true => format!("{:.1} cycles shown", last.phase),
        false => format!("{:.1} of {:.1} ordered cycles shown", last.phase, course.ordered.end_phase()),
    };
    let gaps = match parts.iter().filter(|part| part.has_long_gap()).count() {
        0 => format!("no gap over {LONG_GAP_MS:.0} ms"),
        1 => format!("a gap over {LONG_GAP_MS:.0} ms in 1 second"),
        count => format!("a gap over {LONG_GAP_MS:.0} ms in {count} seconds"),
    };
    let unknown: f64 = parts.iter().filter(|part| part.shown.is_none()).map(Stretch::lasts).sum();
    let heard = if unknown > 0.0 { format!("nothing heard for {unknown:.1} s") } else { "heard all the way".into() };
    format!("{cycles}; {gaps}; {heard}.")
}
