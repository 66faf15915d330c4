//! The five-item anxiety scale (reference of measures, section 6), under a name of our own, since its short name means another instrument in
//! the vocabularies of health records. Cut from Campbell-Sills 2009. A blank leaves no total, our own decision.

use super::{Answers, Better, Cut, Fault, Form, Risk, Score, Threshold, blanks, sum};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "Anxiety, five items",
    about: "anxiety, one week",
    topics: &["how often", "how strong", "avoids", "work or home", "with people"],
    most: 4,
    step: 1,
    highest: 20,
    window: 7,
    better: Better::Lower,
    bands: &[],
    cut: Some(Cut { at: 8, source: "Campbell-Sills 2009" }),
    reliable: &[
        Threshold { points: 4, source: "Moore 2015, a US clinic for anxiety" },
        Threshold { points: 5, source: "German primary care, 2023" },
    ],
    population: None,
    risk: None,
    is_outcome: true,
    by_topics: false,
    rules: 1,
};

/// What it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Anxiety5 {
    /// 0 to 20.
    pub total: Option<u16>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Anxiety5, Fault> {
    FORM.check(answers)?;
    Ok(Anxiety5 { total: sum(answers, 1..=5), blank: blanks(answers) })
}

impl Anxiety5 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        Score {
            total: self.total.map(f64::from),
            prorated: false,
            band: None,
            parts: vec![],
            readings: vec![],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: vec![],
        }
    }
}
