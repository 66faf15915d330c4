//! PHQ-9 (reference of measures, section 2): bands and the rule by symptoms from Kroenke 2001; that item 9 counts at 1 is from memory of it;
//! one or two blanks take the mean of the rest (NHS Data Dictionary), and that the filled total is rounded half up is a decision of our own.

use super::{Answers, Band, Better, Cut, Fault, Form, Population, Risk, Score, Threshold, blanks, filled, whole};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "PHQ-9",
    about: "low mood, two weeks",
    topics: &[
        "interest",
        "mood",
        "sleep",
        "energy",
        "appetite",
        "self-worth",
        "concentration",
        "slowed or restless",
        "thoughts of death or self-harm",
    ],
    most: 3,
    step: 1,
    highest: 27,
    window: 14,
    better: Better::Lower,
    bands: &[
        Band { from: 0, name: "minimal" },
        Band { from: 5, name: "mild" },
        Band { from: 10, name: "moderate" },
        Band { from: 15, name: "moderately severe" },
        Band { from: 20, name: "severe" },
    ],
    cut: Some(Cut { at: 10, source: "Kroenke 2001" }),
    reliable: &[Threshold { points: 6, source: "NHS definitions of outcome" }],
    population: Some(Population {
        mean: 15.4,
        sd: 5.5,
        reliability: 0.84,
        source: "NHS at the start of treatment, 2022 to 2023; retest .84 over two days, from memory of Kroenke 2001",
    }),
    risk: Some(RISK),
    is_outcome: true,
    by_topics: true,
    rules: 1,
};

/// The item about death or self-harm.
const RISK: usize = 9;

/// What it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Phq9 {
    /// 0 to 27, filled up for one or two blanks.
    pub total: Option<f64>,
    /// In whole points, halves up.
    pub rounded: Option<u16>,
    /// It was filled up.
    pub prorated: bool,
    /// Of the whole points.
    pub band: Option<&'static str>,
    /// By symptoms; `None` with any blank.
    pub syndrome: Option<Syndrome>,
    /// Whatever the total, and whether there is one.
    pub risk: Risk,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What the symptoms come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Syndrome {
    /// Five or more, one of them interest or mood.
    Major,
    /// Two to four, one of them interest or mood.
    Other,
    /// Neither.
    None,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Phq9, Fault> {
    FORM.check(answers)?;
    let (total, prorated) = filled(answers);
    let rounded = total.map(whole);
    let risk = match answers[RISK - 1] {
        None => Risk::Unknown,
        Some(0) => Risk::Silent,
        Some(_) => Risk::Flag,
    };
    Ok(Phq9 {
        total,
        rounded,
        prorated,
        band: rounded.and_then(|total| FORM.band(total)),
        syndrome: syndrome(answers),
        risk,
        blank: blanks(answers),
    })
}

fn syndrome(answers: Answers<'_>) -> Option<Syndrome> {
    let all: Vec<u8> = answers.iter().copied().collect::<Option<_>>()?;
    let counts = |(at, answer): (usize, &u8)| *answer >= if at + 1 == RISK { 1 } else { 2 };
    let count = all.iter().enumerate().filter(|one| counts(*one)).count();
    let core = all[..2].iter().any(|answer| *answer >= 2);
    Some(match count {
        5.. if core => Syndrome::Major,
        2..=4 if core => Syndrome::Other,
        _ => Syndrome::None,
    })
}

impl Syndrome {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Major => "five symptoms or more, interest or mood among them",
            Self::Other => "two to four symptoms, interest or mood among them",
            Self::None => "the rule is not met",
        }
    }
}

impl Phq9 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        let words = self.syndrome.map_or("cannot be told, for blanks", Syndrome::words);
        Score {
            total: self.total,
            prorated: self.prorated,
            band: self.band,
            parts: vec![],
            readings: vec![("provisional rule by symptoms", words)],
            blank: self.blank,
            risk: self.risk,
            to_ask: vec![],
        }
    }
}
