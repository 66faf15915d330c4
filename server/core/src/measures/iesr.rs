//! IES-R (reference of measures, section 6): subscales are means, as its authors advise; the total is the sum, which is what is kept, since a
//! total of means circulates too. Sets of items second-hand, two pages agree; cut from Creamer 2003. A blank leaves no total, our own decision.

use super::{Answers, Better, Cut, Fault, Form, Risk, Score, Threshold, blanks, mean, sum};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "IES-R",
    about: "trauma symptoms, seven days",
    topics: &[
        "cues bring feelings back",
        "staying asleep",
        "other things remind",
        "irritable",
        "holds upset down",
        "thoughts unbidden",
        "as if unreal",
        "keeps away",
        "images",
        "jumpy",
        "tries not to think",
        "feelings not dealt with",
        "numb",
        "back then",
        "falling asleep",
        "waves of feeling",
        "tries to erase",
        "concentration",
        "the body reacts",
        "dreams",
        "watchful",
        "will not talk",
    ],
    most: 4,
    step: 1,
    highest: 88,
    window: 7,
    better: Better::Lower,
    bands: &[],
    cut: Some(Cut { at: 33, source: "Creamer 2003" }),
    reliable: &[Threshold { points: 9, source: "NHS manual, from memory" }],
    population: None,
    risk: None,
    is_outcome: true,
    by_topics: false,
    rules: 1,
};

const INTRUSION: [usize; 8] = [1, 2, 3, 6, 9, 14, 16, 20];
const AVOIDANCE: [usize; 8] = [5, 7, 8, 11, 12, 13, 17, 22];
const HYPERAROUSAL: [usize; 6] = [4, 10, 15, 18, 19, 21];

/// What it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Iesr {
    /// The sum, 0 to 88.
    pub total: Option<u16>,
    /// Mean, 0 to 4.
    pub intrusion: Option<f64>,
    /// Mean, 0 to 4.
    pub avoidance: Option<f64>,
    /// Mean, 0 to 4.
    pub hyperarousal: Option<f64>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Iesr, Fault> {
    FORM.check(answers)?;
    Ok(Iesr {
        total: sum(answers, 1..=22),
        intrusion: mean(answers, &INTRUSION),
        avoidance: mean(answers, &AVOIDANCE),
        hyperarousal: mean(answers, &HYPERAROUSAL),
        blank: blanks(answers),
    })
}

impl Iesr {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        Score {
            total: self.total.map(f64::from),
            prorated: false,
            band: None,
            parts: vec![("intrusion", self.intrusion), ("avoidance", self.avoidance), ("arousal", self.hyperarousal)],
            readings: vec![],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: vec![],
        }
    }
}
