//! PCL-5 (reference of measures, section 1): clusters and provisional rule from the published scoring; that a blank leaves no total, and is
//! read in three values by the rule, is a decision of our own, since no official rule was found. It has no bands: none are derived from data.

use super::{Answers, Better, Cut, Fault, Form, Population, Risk, Score, Three, Threshold, blanks, sum};

/// See [`Form`].
pub static FORM: Form = Form {
    name: "PCL-5",
    about: "trauma symptoms, past month",
    topics: &[
        "unwanted memories",
        "bad dreams",
        "reliving",
        "upset by cues",
        "body reacts to cues",
        "avoids inner reminders",
        "avoids outer reminders",
        "gap in memory",
        "harsh beliefs",
        "blame",
        "strong bad feelings",
        "interest lost",
        "cut off",
        "good feelings lost",
        "anger",
        "taking risks",
        "on guard",
        "startle",
        "concentration",
        "sleep",
    ],
    most: 4,
    step: 1,
    highest: 80,
    window: 30,
    better: Better::Lower,
    bands: &[],
    cut: Some(Cut { at: 33, source: "31 to 33 in use; Forkus 2022, a review" }),
    reliable: &[
        Threshold { points: 15, source: "Marx 2022, sample 1" },
        Threshold { points: 18, source: "Marx 2022, sample 2" },
        Threshold { points: 10, source: "at least a minimal difference: Blanchard 2023, 9.8 to 11.7" },
    ],
    population: Some(Population {
        mean: 38.81,
        sd: 12.4,
        reliability: 0.82,
        source: "mean and deviation of one clinical table, PMC7443209; retest .82, Blevins 2015",
    }),
    risk: None,
    is_outcome: true,
    by_topics: true,
    rules: 1,
};

/// From here on an item counts as a symptom.
const ENDORSED: u8 = 2;
/// The item about taking risks, and from which answer on it is one to ask about (our own decision).
const TAKING_RISKS: (usize, u8) = (16, 3);

/// What it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pcl5 {
    /// 0 to 80.
    pub total: Option<u16>,
    /// B 0 to 20, C 0 to 8, D 0 to 28, E 0 to 24.
    pub clusters: [Option<u16>; 4],
    /// Of each cluster, whether enough of its items count.
    pub criteria: [Three; 4],
    /// All four.
    pub provisional: Three,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
    takes_risks: bool,
}

/// Items of each cluster, from 1, and how many of them must count.
const CLUSTERS: [(std::ops::RangeInclusive<usize>, usize); 4] = [(1..=5, 1), (6..=7, 1), (8..=14, 2), (15..=20, 2)];

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Pcl5, Fault> {
    FORM.check(answers)?;
    let criteria = CLUSTERS.map(|(items, wanted)| Three::at_least(wanted, ENDORSED, answers, items));
    Ok(Pcl5 {
        total: sum(answers, 1..=20),
        clusters: CLUSTERS.map(|(items, _)| sum(answers, items)),
        criteria,
        provisional: Three::all(criteria),
        blank: blanks(answers),
        takes_risks: answers[TAKING_RISKS.0 - 1].is_some_and(|answer| answer >= TAKING_RISKS.1),
    })
}

impl Pcl5 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        let names = ["re-experiencing", "avoidance", "thoughts and mood", "arousal"];
        Score {
            total: self.total.map(f64::from),
            prorated: false,
            band: None,
            parts: names.into_iter().zip(self.clusters.map(|sum| sum.map(f64::from))).collect(),
            readings: vec![("provisional rule by symptoms", self.provisional.words())],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: if self.takes_risks { vec![(TAKING_RISKS.0, "taking risks that could harm")] } else { vec![] },
        }
    }
}
