//! WHO-5 (reference of measures, section 6): the sum of five items times four, 0 to 100, and more is better. Cuts and change from Topp 2015
//! and secondary pages of it. That a blank leaves no total is a decision of our own.

use super::{Answers, Band, Better, Cut, Fault, Form, Risk, Score, Threshold, blanks, sum};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "WHO-5",
    about: "well-being, two weeks",
    topics: &["good mood", "calm", "vigour", "rested", "interest in the day"],
    most: 5,
    step: 1,
    highest: 100,
    window: 14,
    better: Better::Higher,
    bands: &[Band { from: 0, name: "very low" }, Band { from: 29, name: "low" }, Band { from: 51, name: "not low" }],
    cut: Some(Cut { at: 50, source: "Topp 2015" }),
    reliable: &[Threshold { points: 10, source: "Topp 2015, second-hand" }],
    population: None,
    risk: None,
    is_outcome: true,
    by_topics: true,
    rules: 1,
};

/// Up to here well-being is very low.
pub const VERY_LOW: u16 = 28;

/// What it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Who5 {
    /// 0 to 25.
    pub raw: Option<u16>,
    /// 0 to 100.
    pub percent: Option<u16>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Who5, Fault> {
    FORM.check(answers)?;
    let raw = sum(answers, 1..=5);
    Ok(Who5 { raw, percent: raw.map(|raw| raw * 4), blank: blanks(answers) })
}

impl Who5 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        Score {
            total: self.percent.map(f64::from),
            prorated: false,
            band: self.percent.and_then(|percent| FORM.band(percent)),
            parts: vec![],
            readings: vec![],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: vec![],
        }
    }
}
