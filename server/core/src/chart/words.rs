//! What charts say in words.

use super::by_second::{SetCourse, Stretch};
use super::{LONG_GAP_MS, SessionSpan, SetStep};
use crate::scale::{Sud, Voc};
use crate::wire::Ending;

/// Why no band of reliable change is drawn around a rating.
pub const NO_BAND: &str = "No band of reliable change is drawn: SUD and VOC are single questions, \
    and no reliability is published for them that would carry one.";

/// A rating in a table.
pub(super) fn rating(value: Option<u8>) -> String {
    value.map_or("not asked".into(), |value| value.to_string())
}

/// How a set ended, for a table.
pub fn ending(ending: Ending) -> &'static str {
    match ending {
        Ending::Done => "as planned",
        Ending::EndedByClinician => "ended by the clinician",
        Ending::StoppedByClinician => "stopped by the clinician",
        Ending::StoppedByClient => "stopped by the client",
        Ending::CannotSee => "stopped: client not seen",
        Ending::PageInterrupted => "stopped: page interrupted",
        Ending::LinkLost => "stopped: link lost",
        Ending::HardLimit => "stopped: time limit",
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
         where none was asked there is a gap. Dashed lines mark sets that were stopped.{voc}"
    )
}

pub(super) fn by_session_description(has_voc: bool) -> String {
    let voc = if has_voc { " A second panel shows VOC, 1 to 7, the same way." } else { "" };
    format!(
        "Across: the sessions in order. Up: SUD, 0 to 10. A ring is the first rating of a \
         session, a diamond the last; a bar joins them.{voc}"
    )
}

pub(super) fn by_set_caption(course: &[SetStep]) -> String {
    let sud = rated(course, |step| step.sud.map(Sud::get));
    let voc = rated(course, |step| step.voc.map(Voc::get));
    let mut parts = vec![course_of("SUD", &sud)];
    if !voc.is_empty() {
        parts.push(course_of("VOC", &voc));
    }
    let stopped = course.iter().filter(|step| step.ending.and_then(stop).is_some()).count();
    match stopped {
        0 => {}
        1 => parts.push("one set was stopped".into()),
        many => parts.push(format!("{many} sets were stopped")),
    }
    format!("{}.", parts.join("; "))
}

pub(super) fn by_session_caption(course: &[SessionSpan]) -> String {
    let suds: Vec<(u8, u8)> = (course.iter()).filter_map(|session| session.sud.map(|(first, last)| (first.get(), last.get()))).collect();
    let (Some((first, _)), Some((_, last))) = (suds.first(), suds.last()) else {
        return "SUD was not asked in any session of this target.".into();
    };
    let sessions = match suds.len() {
        1 => "one session".to_string(),
        many => format!("{many} sessions"),
    };
    format!("{} over {sessions}.", moved("SUD", *first, *last))
}

/// Where a rating was given, and what.
fn rated(course: &[SetStep], value: impl Fn(&SetStep) -> Option<u8>) -> Vec<(&str, u8)> {
    course.iter().filter_map(|step| Some((step.label.as_str(), value(step)?))).collect()
}

fn course_of(name: &str, rated: &[(&str, u8)]) -> String {
    match rated {
        [] => format!("{name} was not asked"),
        [(label, value)] => format!("{name} was asked once, {} ({value})", place(label)),
        [(_, first), .., (label, last)] => {
            format!("{}, last asked {}", moved(name, *first, *last), place(label))
        }
    }
}

fn moved(name: &str, first: u8, last: u8) -> String {
    match last.cmp(&first) {
        std::cmp::Ordering::Less => format!("{name} fell from {first} to {last}"),
        std::cmp::Ordering::Equal => format!("{name} stayed at {first}"),
        std::cmp::Ordering::Greater => format!("{name} rose from {first} to {last}"),
    }
}

fn place(label: &str) -> String {
    if label.chars().all(|c| c.is_ascii_digit()) { format!("after set {label}") } else { format!("at \u{201c}{label}\u{201d}") }
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
