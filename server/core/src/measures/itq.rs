//! ITQ (reference of measures, section 5): the rules of Cloitre 2018 as a guideline's appendix sets them out. Part P comes first (nine
//! items), then part C (nine). Sums leave the items of impairment out (from memory of the authors' sheet). Blanks are read in three values, a
//! decision of our own. Change is not judged: the published thresholds were not reached.

use super::{Answers, Better, Fault, Form, Risk, Score, Three, blanks, sum};

/// See [`Form`]. The total is the sum of the six symptoms of trauma.
pub static FORM: Form = Form {
    name: "ITQ",
    about: "trauma symptoms, past month, and how the person typically is",
    topics: &[
        "dreams of the trauma",
        "reliving in the here and now",
        "avoids inner reminders",
        "avoids outer reminders",
        "watchful",
        "jumpy",
        "trauma: social life",
        "trauma: work",
        "trauma: other roles",
        "slow to calm",
        "numb",
        "failure",
        "worthless",
        "distant",
        "hard to stay close",
        "oneself: social life",
        "oneself: work",
        "oneself: other roles",
    ],
    most: 4,
    step: 1,
    highest: 24,
    window: 30,
    better: Better::Lower,
    bands: &[],
    cut: None,
    reliable: &[],
    population: None,
    risk: None,
    is_outcome: true,
    by_topics: true,
    rules: 1,
};

/// From here on an item counts.
const ENDORSED: u8 = 2;
/// Items of each criterion, from 1: three clusters and impairment of part P, then of part C.
const CRITERIA: [std::ops::RangeInclusive<usize>; 8] = [1..=2, 3..=4, 5..=6, 7..=9, 10..=11, 12..=13, 14..=15, 16..=18];

/// What it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Itq {
    /// Re-experiencing, avoidance, threat, impairment by them; calming, view of oneself, closeness, impairment by these.
    pub criteria: [Three; 8],
    /// All four of part P.
    pub ptsd: Three,
    /// All four of part C.
    pub dso: Three,
    /// Which of the two, if one.
    pub reading: Reading,
    /// 0 to 24.
    pub ptsd_sum: Option<u16>,
    /// 0 to 24.
    pub dso_sum: Option<u16>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What the rules come to; never two at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reading {
    /// The first part's rule, and not the second's.
    Ptsd,
    /// Both.
    ComplexPtsd,
    /// Not the first part's.
    None,
    /// It hangs on a blank.
    Indeterminate,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Itq, Fault> {
    FORM.check(answers)?;
    let criteria = CRITERIA.map(|items| Three::at_least(1, ENDORSED, answers, items));
    let [ptsd, dso] = [&criteria[..4], &criteria[4..]].map(|part| Three::all(part.iter().copied()));
    let reading = match (ptsd, dso) {
        (Three::NotMet, _) => Reading::None,
        (Three::Met, Three::Met) => Reading::ComplexPtsd,
        (Three::Met, Three::NotMet) => Reading::Ptsd,
        _ => Reading::Indeterminate,
    };
    Ok(Itq { criteria, ptsd, dso, reading, ptsd_sum: sum(answers, 1..=6), dso_sum: sum(answers, 10..=15), blank: blanks(answers) })
}

impl Reading {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Ptsd => "PTSD by the rules of the form",
            Self::ComplexPtsd => "complex PTSD by the rules of the form",
            Self::None => "neither, by the rules of the form",
            Self::Indeterminate => "cannot be told, for blanks",
        }
    }
}

impl Itq {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        let [ptsd, dso] = [self.ptsd_sum, self.dso_sum].map(|sum| sum.map(f64::from));
        Score {
            total: ptsd,
            prorated: false,
            band: None,
            parts: vec![("symptoms of trauma", ptsd), ("organising oneself", dso)],
            readings: vec![("provisional rule by symptoms", self.reading.words())],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: vec![],
        }
    }
}
