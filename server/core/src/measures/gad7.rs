//! GAD-7 (reference of measures, section 3): bands from Spitzer 2006; cut 10 to screen, 8 in the NHS; blanks as PHQ-9 (from memory of the
//! NHS handbook; no source of its own was found).

use super::{Answers, Band, Better, Cut, Fault, Form, Population, Risk, Score, Threshold, blanks, filled, whole};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "GAD-7",
    about: "anxiety, two weeks",
    topics: &["nervous", "cannot stop worrying", "worry about many things", "hard to unwind", "restless", "irritable", "dread"],
    most: 3,
    step: 1,
    highest: 21,
    window: 14,
    better: Better::Lower,
    bands: &[
        Band { from: 0, name: "minimal" },
        Band { from: 5, name: "mild" },
        Band { from: 10, name: "moderate" },
        Band { from: 15, name: "severe" },
    ],
    cut: Some(Cut { at: 10, source: "Spitzer 2006" }),
    reliable: &[Threshold { points: 4, source: "NHS definitions of outcome" }],
    population: Some(Population {
        mean: 14.0,
        sd: 4.5,
        reliability: 0.83,
        source: "NHS at the start of treatment, 2022 to 2023; retest .83, from memory of Spitzer 2006",
    }),
    risk: None,
    is_outcome: true,
    by_topics: true,
    rules: 1,
};

/// The NHS counts a case from here on.
pub const NHS_CASE: u16 = 8;

/// What it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Gad7 {
    /// 0 to 21, filled up for one or two blanks.
    pub total: Option<f64>,
    /// In whole points, halves up.
    pub rounded: Option<u16>,
    /// It was filled up.
    pub prorated: bool,
    /// Of the whole points.
    pub band: Option<&'static str>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Gad7, Fault> {
    FORM.check(answers)?;
    let (total, prorated) = filled(answers);
    let rounded = total.map(whole);
    Ok(Gad7 { total, rounded, prorated, band: rounded.and_then(|total| FORM.band(total)), blank: blanks(answers) })
}

impl Gad7 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        Score {
            total: self.total,
            prorated: self.prorated,
            band: self.band,
            parts: vec![],
            readings: vec![],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: vec![],
        }
    }
}
