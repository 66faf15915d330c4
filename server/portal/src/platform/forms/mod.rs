//! Reading what people typed: each field gets a plain message beside it, and nothing typed is lost.

mod edit;
mod messages;
mod request;

pub(crate) use edit::{Again, Fields, SaveOutcome, answer, comes_back};
pub(crate) use messages::{differences, list, notice};
pub(crate) use request::{Asks, Id, InPath, Keyed, RowChange, Sent, version};

use std::collections::BTreeMap;

use leeward_core::safety;
use leeward_core::wire::{Plan, Refusal};

/// Whether a field may be left empty.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// It must be filled in.
    Required,
    /// It may be empty.
    Optional,
}

/// Whether a field may have more than one line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lines {
    /// One line.
    One,
    /// Any number.
    Many,
}

/// The messages beside the fields of a form, by the field's name.
#[derive(Clone, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(transparent)]
pub struct Problems(BTreeMap<&'static str, String>);

impl Problems {
    /// Nothing is wrong.
    #[must_use]
    pub fn none(&self) -> bool {
        self.0.is_empty()
    }

    /// The message beside `name`, or an empty text.
    #[must_use]
    pub fn at(&self, name: &str) -> &str {
        self.0.get(name).map_or("", String::as_str)
    }

    /// All messages, for the summary at the head of a form.
    pub fn each(&self) -> impl Iterator<Item = (&&'static str, &String)> {
        self.0.iter()
    }

    /// Adds a message. The first one beside a field stays.
    pub fn add(&mut self, name: &'static str, message: impl Into<String>) {
        self.0.entry(name).or_insert_with(|| message.into());
    }

    /// Checks a text and returns it without white space at its ends and with plain line ends.
    ///
    /// `most` counts characters. Refused with a message: empty when required, too long, control
    /// characters, marks that change the direction of writing, and what looks like markup.
    pub fn text(&mut self, name: &'static str, typed: &str, most: usize, need: Need, lines: Lines) -> String {
        let text = typed.replace("\r\n", "\n").trim().to_owned();
        let length = text.chars().count();
        if text.is_empty() && need == Need::Required {
            self.add(name, "Please fill this in.");
        } else if length > most {
            self.add(name, format!("At most {most} characters fit here; these are {length}. Shorten it."));
        } else if text.chars().any(|c| c.is_control() && !(lines == Lines::Many && (c == '\n' || c == '\t'))) {
            self.add(
                name,
                if lines == Lines::One {
                    "This must be one line without control characters. Type it anew."
                } else {
                    "This holds control characters that cannot be kept. Type it anew."
                },
            );
        } else if text.chars().any(turns_direction) {
            self.add(name, "This holds invisible marks that change the direction of writing. Type it anew instead of pasting it.");
        } else if looks_like_markup(&text) {
            self.add(name, "This looks like markup (a < followed by a letter). Write it in plain words.");
        }
        text
    }

    /// Checks a telephone number: digits, spaces, and `+ - ( ) / .`, with 3 to 15 digits (ITU-T E.164
    /// allows 15).
    pub fn phone(&mut self, name: &'static str, typed: &str, need: Need) -> String {
        let text = self.text(name, typed, 40, need, Lines::One);
        let digits = text.chars().filter(char::is_ascii_digit).count();
        let plain = text.chars().all(|c| c.is_ascii_digit() || " +-()/.".contains(c));
        if !text.is_empty() && (!plain || !(3..=15).contains(&digits)) {
            self.add(name, "Give a telephone number: 3 to 15 digits, with spaces and + - ( ) / . if you like.");
        }
        text
    }

    /// Checks a number, written with a point or a comma.
    pub fn number(&mut self, name: &'static str, typed: &str) -> Option<f64> {
        let value = typed.trim().replace(',', ".").parse().ok().filter(|value: &f64| value.is_finite());
        if value.is_none() {
            self.add(name, "Give a number, such as 1.5.");
        }
        value
    }

    /// Checks a whole number of a size that `T` holds.
    pub fn whole<T: std::str::FromStr>(&mut self, name: &'static str, typed: &str) -> Option<T> {
        let value = typed.trim().parse().ok();
        if value.is_none() {
            self.add(name, "Give a whole number.");
        }
        value
    }

    /// Checks a whole number within a range.
    pub fn within(&mut self, name: &'static str, typed: &str, range: std::ops::RangeInclusive<i16>) -> Option<i16> {
        let number = typed.trim().parse().ok().filter(|number| range.contains(number));
        if number.is_none() {
            self.add(name, format!("Type a whole number from {} to {}.", range.start(), range.end()));
        }
        number
    }

    /// Whether a set may have this plan; otherwise the reason stands beside the field. To be asked of each
    /// setting alone, with the usual plan around it, so that the message stands beside what it speaks of.
    pub fn plan(&mut self, name: &'static str, plan: &Plan) -> bool {
        let checked = safety::check(plan, false);
        if let Err(refusal) = &checked {
            self.add(name, refusal_words(refusal));
        }
        checked.is_ok()
    }

    /// Checks a choice from a list.
    pub fn choice<T>(&mut self, name: &'static str, typed: &str, read: impl Fn(&str) -> Option<T>) -> Option<T> {
        let found = read(typed);
        if found.is_none() {
            self.add(name, "Choose one of these.");
        }
        found
    }
}

/// What a refusal of `safety` says beside a field.
#[must_use]
pub fn refusal_words(refusal: &Refusal) -> String {
    match refusal {
        Refusal::Limit { limit } => limit.clone(),
        // No other is given where no cautions and no screen are asked about.
        other => format!("These settings are refused: {other:?}."),
    }
}

/// Marks that reorder the letters around them (Unicode Standard Annex 9: embeddings, overrides, isolates, marks).
fn turns_direction(c: char) -> bool {
    matches!(c, '\u{200E}' | '\u{200F}' | '\u{061C}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

fn looks_like_markup(text: &str) -> bool {
    text.char_indices()
        .filter(|(_, c)| *c == '<')
        .any(|(at, _)| text[at + 1..].starts_with(|c: char| c.is_ascii_alphabetic() || c == '/' || c == '!' || c == '?'))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(typed: &str, most: usize, need: Need, lines: Lines) -> (String, String) {
        let mut problems = Problems::default();
        let read = problems.text("f", typed, most, need, lines);
        (read, problems.at("f").to_owned())
    }

    #[test]
    fn good_text_passes_whole() {
        assert_eq!(text("  Zoë <3 – 5 < 6 \r\nנעמי ", 40, Need::Required, Lines::Many), ("Zoë <3 – 5 < 6 \nנעמי".into(), String::new()));
        assert_eq!(text("", 5, Need::Optional, Lines::One), (String::new(), String::new()));
    }

    #[test]
    fn each_fault_has_its_message_and_keeps_what_was_typed() {
        for (typed, word) in [
            ("", "fill this in"),
            ("abcdef", "At most 5"),
            ("a\u{7}b", "control"),
            ("a\nb", "one line"),
            ("a\u{202E}b", "direction"),
            ("<b>x", "markup"),
        ] {
            let (read, message) = text(typed, 5, Need::Required, Lines::One);
            assert!(message.contains(word), "{typed:?}: {message}");
            assert_eq!(read, typed.trim());
        }
    }

    #[test]
    fn numbers_take_a_point_or_a_comma_and_nothing_else() {
        for (typed, read) in [("1.2", Some(1.2)), (" 1,2 ", Some(1.2)), ("", None), ("NaN", None), ("inf", None), ("1.2 Hz", None)] {
            let mut problems = Problems::default();
            assert_eq!(problems.number("f", typed), read, "{typed}");
            assert_eq!(problems.none(), read.is_some(), "{typed}");
        }
        let mut problems = Problems::default();
        assert_eq!(
            (problems.whole("f", "450"), problems.whole::<u8>("g", "300"), problems.whole::<u8>("h", "-1")),
            (Some(450_u16), None, None)
        );
    }

    #[test]
    fn telephone_numbers() {
        for (typed, good) in
            [("+44 (0)20 7946-0018", true), ("112", true), ("", true), ("12", false), ("call me", false), ("1234567890123456", false)]
        {
            let mut problems = Problems::default();
            problems.phone("f", typed, Need::Optional);
            assert_eq!(problems.none(), good, "{typed}");
        }
    }
}
