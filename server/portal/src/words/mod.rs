//! Every sentence a client can see, in one catalogue by id.
//!
//! Client pages take their words from here alone: templates by [`get`], scripts from the JSON of
//! [`json`] that their template carries. A test beside this file holds the whole to reading grade
//! 6, since distress makes reading harder. "We" and "the person you are meeting" speak; no job
//! title, no name but the one that the stage may be given, and nothing that says what the meeting is about.

mod call;
mod client;
mod forms;
#[cfg(test)]
mod reading;

pub use call::CALL;
pub use client::CLIENT;
pub use forms::FORMS;

/// The sentence with this id, or `None` when there is none.
///
/// ```
/// assert_eq!(leeward::words::get("stop"), Some("Stop"));
/// ```
pub fn get(id: &str) -> Option<&'static str> {
    all().find(|(known, _)| *known == id).map(|(_, words)| *words)
}

/// All sentences, whatever page they are for.
fn all() -> impl Iterator<Item = &'static (&'static str, &'static str)> {
    CLIENT.iter().chain(CALL).chain(FORMS)
}

/// A client's page whose script says something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Page {
    /// Where the numbers are typed.
    Join,
    /// All that follows.
    Stage,
    /// The same with picture and voice.
    Calling,
    /// Where a link to forms leads.
    Open,
    /// The forms themselves.
    Forms,
}

/// What the script of `page` may say, as a JSON object; a template escapes it like any other text.
pub fn json(page: Page) -> String {
    let of = |id: &str| match id.split('_').next() {
        Some("join") => Page::Join,
        Some("open") => Page::Open,
        Some("forms") => Page::Forms,
        Some("call") => Page::Calling,
        _ => Page::Stage,
    };
    let object: serde_json::Map<String, serde_json::Value> = all()
        .filter(|(id, _)| of(id) == page || (page, of(id)) == (Page::Calling, Page::Stage))
        .map(|(id, words)| ((*id).to_owned(), (*words).into()))
        .collect();
    serde_json::Value::Object(object).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::{BTreeMap, BTreeSet};

    #[test]
    fn every_id_is_there_once() {
        let ids: BTreeSet<_> = all().map(|(id, _)| id).collect();
        assert_eq!(ids.len(), all().count());
    }

    #[test]
    fn the_pages_share_the_catalogue_out() -> Result<(), serde_json::Error> {
        let parsed = |page| serde_json::from_str::<BTreeMap<String, String>>(&json(page));
        let (join, stage) = (parsed(Page::Join)?, parsed(Page::Stage)?);
        assert_eq!(join.len() + stage.len(), CLIENT.len());
        assert_eq!(parsed(Page::Calling)?.len(), stage.len() + CALL.len());
        assert_eq!(parsed(Page::Open)?.len() + parsed(Page::Forms)?.len(), FORMS.len());
        assert_eq!((stage["stop"].as_str(), join["join_busy"].as_str()), ("Stop", "One moment."));
        Ok(())
    }

    #[test]
    fn an_unknown_id_has_no_words() {
        assert_eq!(get("nothing_of_the_kind"), None);
    }

    // Somebody else may be looking at the screen, or hold the phone.
    #[test]
    fn nothing_says_what_the_meeting_is_about() {
        let telling = ["therap", "trauma", "emdr", "clinic", "treat", "patient", "client", "session", "doctor"];
        for (id, words) in all() {
            let lower = words.to_lowercase();
            for word in telling {
                assert!(!lower.contains(word), "{id} says \"{word}\"");
            }
        }
    }
}
