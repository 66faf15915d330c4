//! The answers of one form as they are typed, sealed and read back.

use leeward_core::measures::{Fault, Form};

/// Names of the fields, one an item, in the order of the longest form.
pub(crate) const ITEMS: [&str; 28] = [
    "item_1", "item_2", "item_3", "item_4", "item_5", "item_6", "item_7", "item_8", "item_9", "item_10", "item_11", "item_12", "item_13",
    "item_14", "item_15", "item_16", "item_17", "item_18", "item_19", "item_20", "item_21", "item_22", "item_23", "item_24", "item_25",
    "item_26", "item_27", "item_28",
];
/// In place of an answer: the item was left blank.
pub(crate) const BLANK: &str = "-";

/// The answers of one form; `None`: left blank.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet(Vec<Option<u8>>);

impl Sheet {
    /// Answers to `form`.
    ///
    /// # Errors
    /// [`Fault`] when they are none.
    pub fn new(form: &Form, answers: Vec<Option<u8>>) -> Result<Self, Fault> {
        form.check(&answers)?;
        Ok(Self(answers))
    }

    /// In the form's order.
    #[must_use]
    pub fn answers(&self) -> &[Option<u8>] {
        &self.0
    }

    /// As it is sealed: answers with spaces between, a dash for a blank.
    #[must_use]
    pub fn text(&self) -> String {
        let words = self.0.iter().map(|answer| answer.map_or_else(|| BLANK.to_owned(), |answer| answer.to_string()));
        words.collect::<Vec<_>>().join(" ")
    }

    /// What [`Sheet::text`] made of answers to `form`; `None`: it is none of that.
    #[must_use]
    pub fn read(form: &Form, text: &str) -> Option<Self> {
        let answers = text.split(' ').map(|word| if word == BLANK { Some(None) } else { word.parse().ok().map(Some) });
        Self::new(form, answers.collect::<Option<_>>()?).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use leeward_core::measures::Measure;

    #[test]
    fn what_was_sealed_is_read_back_and_nothing_else_is() {
        for measure in Measure::ALL {
            let form = measure.form();
            let mut answers = vec![Some(form.most); form.topics.len()];
            answers[2] = None;
            let sheet = Sheet::new(form, answers).unwrap();
            assert_eq!(Sheet::read(form, &sheet.text()), Some(sheet));
            assert!(form.topics.len() <= ITEMS.len());
        }
        for text in ["", "0 0", "0 1 2 3 3 2 1", "x 0 0 0 0 0 0"] {
            let read = Sheet::read(Measure::Gad7.form(), text);
            assert_eq!(read.is_some(), text == "0 1 2 3 3 2 1", "{text:?}");
        }
        assert_eq!(Sheet::read(Measure::Gad7.form(), "9 0 0 0 0 0 0"), None);
    }
}
