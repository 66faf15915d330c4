//! Reading the closing checklist: what is asked of whom, and what may be called what.

use chrono::{DateTime, Utc};
use leeward_core::course::{Because, Procedure};
use leeward_core::scale::Sud;

use super::close::{Closing, carries};
use super::close_choices::{Choice, EFFECTS, STATES, UNSTEADY};
use super::close_context::Context;
use super::close_form::ClosingForm;
use crate::platform::codes::{self, ClosingKind};
use crate::platform::forms::{Lines, Need, Problems};
use crate::store::seal::Private;

/// A closing that can be kept; `None` when something is wrong, which `problems` says.
pub(super) fn read(typed: &ClosingForm, context: &Context, problems: &mut Problems) -> Option<Closing> {
    let kind = problems.choice("kind", &typed.kind, ClosingKind::parse);
    let because = match typed.because.as_str() {
        "" => None,
        _ => problems.choice("because", &typed.because, |code| codes::read::<Because>(code, "because").ok()),
    };
    if let Some(kind) = kind.filter(|kind| !kind.took_place()) {
        return no_session(typed, context, kind, problems);
    }
    let leaving_state = state(typed, problems);
    let resource = settled(typed, context, problems);
    let mut line = |name, typed: &str, need| Private::new(problems.text(name, typed, 200, need, Lines::One));
    let companion = line("companion", &typed.companion, Need::Required);
    let next_contact = line("next_contact", &typed.next_contact, Need::Required);
    let client_words = Private::new(problems.text("client_words", &typed.client_words, 500, Need::Optional, Lines::Many));
    let note = Private::new(problems.text("note", &typed.note, super::note::MOST, Need::Optional, Lines::Many));
    let sud = sud(typed, problems);
    let over = over(typed, context, problems);
    if let Some(kind) = kind {
        check_end(context, kind, because, sud, problems);
    }
    let unsteady = UNSTEADY.contains(&typed.state.as_str());
    Some(Closing { kind: kind?, because, resource, leaving_state, unsteady, companion, next_contact, client_words, note, sud, over })
}

/// What did not take place has nobody who left in some state: when they are in touch next, and words, are all that may be said.
fn no_session(typed: &ClosingForm, context: &Context, kind: ClosingKind, problems: &mut Problems) -> Option<Closing> {
    if context.began {
        problems.add("kind", "The client was let in, so this took place. Choose how far it came.");
    }
    let need = if kind == ClosingKind::DidNotAttend { Need::Required } else { Need::Optional };
    let next_contact = Private::new(problems.text("next_contact", &typed.next_contact, 200, need, Lines::One));
    let client_words = Private::new(problems.text("client_words", &typed.client_words, 500, Need::Optional, Lines::Many));
    let note = Private::new(problems.text("note", &typed.note, super::note::MOST, Need::Optional, Lines::Many));
    let nothing = Private::default;
    Some(Closing {
        kind,
        because: None,
        resource: nothing(),
        leaving_state: nothing(),
        unsteady: false,
        companion: nothing(),
        next_contact,
        client_words,
        note,
        sud: None,
        over: None,
    })
}

/// Complete or reduced is what the rules or a code carry; everything else always closes.
fn check_end(context: &Context, kind: ClosingKind, because: Option<Because>, sud: Option<Sud>, problems: &mut Problems) {
    if !matches!(kind, ClosingKind::Complete | ClosingKind::Reduced) {
        return;
    }
    if context.target.is_none() {
        problems.add("kind", "This session has no target, so none is at its end. Choose incomplete, or no reprocessing.");
    } else if !carries(&context.course, kind, because, sud) {
        refuse_end(context, kind, problems);
    }
}

fn refuse_end(context: &Context, kind: ClosingKind, problems: &mut Problems) {
    if (kind == ClosingKind::Complete) == (context.course.known.procedure == Procedure::Restricted) {
        problems.add("kind", "This is not how the target is worked on. Choose another, or change that on the target's page.");
    } else {
        problems
            .add("because", "What the target's end asks for is still open. Say why it is complete all the same, or close as incomplete.");
    }
}

fn choose(problems: &mut Problems, name: &'static str, typed: &str, from: &[Choice]) -> &'static str {
    problems.choice(name, typed, |typed| from.iter().find(|(name, _)| *name == typed)).map_or("", |(_, words)| *words)
}

fn state(typed: &ClosingForm, problems: &mut Problems) -> Private {
    let state = choose(problems, "state", &typed.state, &STATES);
    let more = problems.text("state_more", &typed.state_more, 200, Need::Optional, Lines::One);
    Private::new(if more.is_empty() { state.to_owned() } else { format!("{state}. {more}") })
}

fn settled(typed: &ClosingForm, context: &Context, problems: &mut Problems) -> Private {
    // Nothing was stirred up that would have to settle; what was done about the risk stands with the state and in the note.
    if context.turned && typed.effect.is_empty() && typed.resource.trim().is_empty() {
        return Private::default();
    }
    let effect = choose(problems, "effect", &typed.effect, &EFFECTS);
    let need = if typed.effect == "not_needed" { Need::Optional } else { Need::Required };
    let used = problems.text("resource", &typed.resource, 300, need, Lines::One);
    Private::new(if used.is_empty() { effect.to_owned() } else { format!("{used}. {effect}") })
}

/// When the work was over, of a session that was left.
fn over(typed: &ClosingForm, context: &Context, problems: &mut Problems) -> Option<DateTime<Utc>> {
    if typed.over.trim().is_empty() || context.left_at.is_none() {
        return None;
    }
    let at = context.over(typed.over.trim());
    if at.is_none() {
        problems.add(
            "over",
            "A time of day as this page writes it, not before the session was opened and not after now. Empty: it is over now.",
        );
    }
    at
}

fn sud(typed: &ClosingForm, problems: &mut Problems) -> Option<Sud> {
    if typed.sud.trim().is_empty() {
        return None;
    }
    Sud::parse(&typed.sud).map_err(|fault| problems.add("sud", fault.to_string())).ok()
}
