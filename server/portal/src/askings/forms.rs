//! What a client has filled in so far, as it is kept between two looks.

use leeward_core::measures::Form;

use crate::measures::{BLANK, Sheet};

/// In place of an answer: none was given yet.
const NOT_YET: &str = ".";

/// One question so far.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Given {
    /// It was not answered yet.
    NotYet,
    /// The client leaves it out.
    LeftOut,
    /// This answer.
    Answer(u8),
}

impl Given {
    /// What a form sends: a number, [`BLANK`] for what is left out; `None`: none of that.
    pub(super) fn read(word: &str) -> Option<Self> {
        match word {
            NOT_YET | "" => Some(Self::NotYet),
            BLANK => Some(Self::LeftOut),
            number => number.parse().ok().map(Self::Answer),
        }
    }

    /// As a form sends it, and as it is sealed.
    pub(super) fn word(self) -> String {
        match self {
            Self::NotYet => NOT_YET.to_owned(),
            Self::LeftOut => BLANK.to_owned(),
            Self::Answer(answer) => answer.to_string(),
        }
    }
}

/// All questions of one form so far, in its order.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft(Vec<Given>);

impl Draft {
    /// Nothing was answered yet.
    #[must_use]
    pub fn empty(form: &Form) -> Self {
        Self(vec![Given::NotYet; form.topics.len()])
    }

    /// These; `None`: they are no answers to `form`, however few of them there are.
    #[must_use]
    pub fn new(form: &Form, given: Vec<Given>) -> Option<Self> {
        let answers: Vec<Option<u8>> = given.iter().map(|one| if let Given::Answer(answer) = one { Some(*answer) } else { None }).collect();
        form.check(&answers).ok().map(|()| Self(given))
    }

    /// In the form's order.
    #[must_use]
    pub fn given(&self) -> &[Given] {
        &self.0
    }

    /// As it is sealed.
    #[must_use]
    pub fn text(&self) -> String {
        self.0.iter().map(|given| given.word()).collect::<Vec<_>>().join(" ")
    }

    /// What [`Draft::text`] made; `None`: it is none of that.
    #[must_use]
    pub fn read(form: &Form, text: &str) -> Option<Self> {
        Self::new(form, text.split(' ').map(Given::read).collect::<Option<_>>()?)
    }

    /// The questions that were neither answered nor left out, from 1.
    #[must_use]
    pub fn missing(&self) -> Vec<usize> {
        self.0.iter().zip(1..).filter(|(given, _)| **given == Given::NotYet).map(|(_, number)| number).collect()
    }

    /// As it is handed in; `None`: something is missing.
    #[must_use]
    pub fn sheet(&self, form: &Form) -> Option<Sheet> {
        let answers = self.0.iter().map(|given| match given {
            Given::NotYet => None,
            Given::LeftOut => Some(None),
            Given::Answer(answer) => Some(Some(*answer)),
        });
        Sheet::new(form, answers.collect::<Option<_>>()?).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use leeward_core::measures::Measure;

    #[test]
    fn what_is_kept_is_read_back_and_becomes_a_sheet_once_it_is_whole() {
        let form = Measure::Gad7.form();
        let text = "0 1 . - 3 2 1";
        let draft = Draft::read(form, text).unwrap();
        assert_eq!((draft.text().as_str(), draft.missing(), draft.sheet(form)), (text, vec![3], None));
        let whole = Draft::read(form, "0 1 2 - 3 2 1").unwrap().sheet(form).unwrap();
        assert_eq!(whole.answers(), [Some(0), Some(1), Some(2), None, Some(3), Some(2), Some(1)]);
        for wrong in ["", "0 1", "0 1 2 3 4 0 0", "0 1 2 x 0 0 0", "0 1 2 3 0 0 0 0"] {
            assert_eq!(Draft::read(form, wrong), None, "{wrong:?}");
        }
        assert_eq!(Draft::empty(form).missing().len(), 7);
    }
}
