//! The closing checklist as it is typed.

use serde::{Deserialize, Serialize};

use super::close_choices::{Choice, EFFECTS, KINDS, STATES};
use super::words::Words;
use crate::course::BECAUSE;
use crate::platform::forms::Fields;
use crate::targets::Target;

/// The form as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(super) struct ClosingForm {
    pub(super) kind: String,
    pub(super) because: String,
    pub(super) resource: String,
    pub(super) effect: String,
    pub(super) state: String,
    pub(super) state_more: String,
    pub(super) companion: String,
    pub(super) next_contact: String,
    pub(super) sud: String,
    pub(super) client_words: String,
    pub(super) note: String,
    /// When the work was over, where that was before the closing: a time of day.
    pub(super) over: String,
    /// The version of the session's words that the form started from.
    pub(super) version: String,
    /// How the target stood that the form showed.
    pub(super) target_was: String,
}

impl Fields for ClosingForm {
    const LABELS: &'static [Choice] = &[
        ("kind", "How far the session came"),
        ("target_was", "How the target stands"),
        ("because", "Why it is complete all the same"),
        ("over", "When it was over"),
        ("sud", "Closing SUD"),
        ("resource", "What was used"),
        ("effect", "Its effect"),
        ("state", "The client on leaving"),
        ("state_more", "More about that state"),
        ("companion", "Who is with the client now"),
        ("next_contact", "Next contact"),
        ("client_words", "Last words on the client\u{2019}s page"),
        ("note", "Note"),
    ];

    fn shown(&self, name: &str) -> String {
        let text = |choices: &[Choice], typed: &str| {
            choices.iter().find(|(name, _)| *name == typed).map_or_else(|| typed.to_owned(), |(_, words)| (*words).to_owned())
        };
        match name {
            "kind" => text(&*KINDS, &self.kind),
            "target_was" => self.target_was.clone(),
            "because" => text(&BECAUSE, &self.because),
            "resource" => self.resource.clone(),
            "effect" => text(&EFFECTS, &self.effect),
            "over" => self.over.clone(),
            "sud" => self.sud.clone(),
            "state" => text(&STATES, &self.state),
            "state_more" => self.state_more.clone(),
            "companion" => self.companion.clone(),
            "next_contact" => self.next_contact.clone(),
            "client_words" => self.client_words.clone(),
            _ => self.note.clone(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

impl ClosingForm {
    /// What stands in the record already: nothing of a closing, perhaps a note.
    pub(super) fn begun(words: &Words, version: i32, target: Option<&Target>) -> Self {
        Self {
            note: words.note.reveal().to_owned(),
            client_words: words.client_words.reveal().to_owned(),
            version: version.to_string(),
            target_was: was(target),
            ..Self::default()
        }
    }

    /// The same form with what the record holds of it now.
    pub(super) fn with(&self, words: &Words, version: i32, target: Option<&Target>) -> Self {
        let Self { note, client_words, version, target_was, .. } = Self::begun(words, version, target);
        Self { note, client_words, version, target_was, ..self.clone() }
    }
}

pub(super) fn was(target: Option<&Target>) -> String {
    target.map(|target| target.stands().to_owned()).unwrap_or_default()
}
