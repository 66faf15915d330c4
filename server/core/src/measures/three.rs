//! Yes, no, or not to be told: what a rule over answers says when some are blank.

use serde::{Deserialize, Serialize};

use super::Answers;

/// What a rule says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Three {
    /// Met, whatever a blank would have said.
    Met,
    /// Not met, whatever a blank would have said.
    NotMet,
    /// It hangs on a blank.
    Indeterminate,
}

impl Three {
    /// Whether at least `wanted` of these items, from 1, are answered with `from` or more.
    pub(super) fn at_least(wanted: usize, from: u8, answers: Answers<'_>, items: impl IntoIterator<Item = usize>) -> Self {
        let (mut yes, mut open) = (0, 0);
        for item in items {
            match answers[item - 1] {
                Some(answer) if answer >= from => yes += 1,
                Some(_) => {}
                None => open += 1,
            }
        }
        if yes >= wanted {
            Self::Met
        } else if yes + open < wanted {
            Self::NotMet
        } else {
            Self::Indeterminate
        }
    }

    /// All of them.
    pub(super) fn all(rules: impl IntoIterator<Item = Self>) -> Self {
        rules.into_iter().fold(Self::Met, |all, one| match (all, one) {
            (Self::NotMet, _) | (_, Self::NotMet) => Self::NotMet,
            (Self::Met, Self::Met) => Self::Met,
            _ => Self::Indeterminate,
        })
    }

    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Met => "met",
            Self::NotMet => "not met",
            Self::Indeterminate => "cannot be told, for blanks",
        }
    }
}
