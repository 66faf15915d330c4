//! DES-II (reference of measures, section 4): the mean of 28 items from 0 to 100 in tens. Its sets of items circulate in several forms: the
//! subscales' are from memory of Carlson & Putnam 1993, the eight of the taxon from memory of Waller, Putnam & Carlson 1996, which is why
//! the total comes first. It belongs to intake: the authors of its reliability advise against it as a measure of outcome, and no change of
//! it is judged here. That a blank leaves no total, and from which score on processing waits for a review, are decisions of our own.

use super::{Answers, Better, Cut, Fault, Form, Risk, Score, Three, blanks, mean};

/// See [`Form`]. Its answers are 0 to 100 in tens, its total is a mean.
pub static FORM: Form = Form {
    name: "DES-II",
    about: "dissociation, at intake",
    topics: &[
        "gap on a journey",
        "lost part of a talk",
        "arrived without knowing how",
        "unknown clothes on",
        "unknown belongings",
        "strangers know me",
        "see myself from outside",
        "do not know my own people",
        "no memory of a big event",
        "accused of lying",
        "a stranger in the mirror",
        "the world unreal",
        "body not mine",
        "the past lived again",
        "dreamt or real",
        "a known place strange",
        "lost in a film",
        "daydream feels real",
        "shut out pain",
        "blank staring",
        "talk aloud alone",
        "like two people",
        "oddly easy skill",
        "did it or thought it",
        "done and not recalled",
        "own writing not recalled",
        "inner voices",
        "fog",
    ],
    most: 100,
    step: 10,
    highest: 100,
    window: 0,
    better: Better::Lower,
    bands: &[],
    cut: Some(Cut { at: 30, source: "Carlson 1993; below it is not clear: 12 to 20 miss fewer (Mueller-Pfeiffer 2013)" }),
    reliable: &[],
    population: None,
    risk: None,
    is_outcome: false,
    by_topics: true,
    rules: 1,
};

const AMNESIA: [usize; 6] = [3, 4, 5, 8, 25, 26];
const DEPERSONALISATION: [usize; 6] = [7, 11, 12, 13, 27, 28];
const ABSORPTION: [usize; 6] = [2, 14, 15, 17, 18, 20];
const TAXON: [usize; 8] = [3, 5, 7, 8, 12, 13, 22, 27];
/// The item about inner voices: one to ask about, too sensitive for a marker of its own (our own decision).
const VOICES: usize = 27;
/// From here on the mean of the taxon's items asks for a review before processing (our own decision).
const TAXON_REVIEW: f64 = 20.0;

/// What it comes to: means, 0 to 100.
#[derive(Clone, Debug, PartialEq)]
pub struct Des2 {
    /// Of all items.
    pub total: Option<f64>,
    /// Of the items about gaps in memory.
    pub amnesia: Option<f64>,
    /// Of those about oneself or the world being unreal.
    pub depersonalisation: Option<f64>,
    /// Of those about being absorbed.
    pub absorption: Option<f64>,
    /// Of the eight.
    pub taxon: Option<f64>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
    /// Before processing, somebody should look at it: by the total or by the eight, whatever a blank would have said.
    pub review: Three,
    hears_voices: bool,
}

/// What these answers come to.
///
/// # Errors
/// [`Fault`] when they are not answers to this form.
pub fn score(answers: Answers<'_>) -> Result<Des2, Fault> {
    FORM.check(answers)?;
    let all: [usize; 28] = std::array::from_fn(|at| at + 1);
    Ok(Des2 {
        total: mean(answers, &all),
        amnesia: mean(answers, &AMNESIA),
        depersonalisation: mean(answers, &DEPERSONALISATION),
        absorption: mean(answers, &ABSORPTION),
        taxon: mean(answers, &TAXON),
        blank: blanks(answers),
        review: review(answers, &all),
        hears_voices: answers[VOICES - 1].is_some_and(|answer| answer > 0),
    })
}

/// Whether the mean of all or of the eight reaches where it asks for a review: with every blank at 0 it does for certain, with every blank at the
/// highest it may.
fn review(answers: Answers<'_>, all: &[usize]) -> Three {
    let reaches = |blank: u8| {
        let filled: Vec<Option<u8>> = answers.iter().map(|answer| Some(answer.unwrap_or(blank))).collect();
        mean(&filled, all).is_some_and(|total| FORM.is_case(total) == Some(true))
            || mean(&filled, &TAXON).is_some_and(|taxon| taxon >= TAXON_REVIEW)
    };
    match (reaches(0), reaches(FORM.most)) {
        (true, _) => Three::Met,
        (false, true) => Three::Indeterminate,
        (false, false) => Three::NotMet,
    }
}

impl Des2 {
    /// As it is kept and shown.
    #[must_use]
    pub fn summary(self) -> Score {
        let review = match self.review {
            Three::Met => "review before processing",
            Three::NotMet => "no marker; that is no all-clear",
            Three::Indeterminate => "cannot be told, for blanks: ask about them",
        };
        Score {
            total: self.total,
            prorated: false,
            band: None,
            parts: vec![
                ("gaps in memory", self.amnesia),
                ("oneself or the world unreal", self.depersonalisation),
                ("absorption", self.absorption),
                ("the eight of the taxon", self.taxon),
            ],
            readings: vec![("before processing", review)],
            blank: self.blank,
            risk: Risk::Silent,
            to_ask: if self.hears_voices { vec![(VOICES, "inner voices")] } else { vec![] },
        }
    }
}
