//! Questionnaires that clients fill in: how each is scored, in which direction it moves, which cuts and thresholds of change the literature
//! has. No questionnaire's wording is here: items have topics in our own words, and a practice brings wording of its own.
//!
//! Facts and their sources: the reference of measures (its sections are named at each). A score is a provisional reading and never a
//! diagnosis. Scores are figures of what was answered: raw items are kept beside them, with [`Form::rules`], and nothing is rescored.

pub mod anxiety5;
pub mod des2;
pub mod gad7;
pub mod iesr;
pub mod itq;
pub mod pcl5;
pub mod phq9;
#[cfg(test)]
mod tests;
mod three;
pub mod who5;
pub mod wording;

use serde::{Deserialize, Serialize};
use thiserror::Error;

pub use three::Three;

/// The answers of one form in its order; `None`: left blank.
pub type Answers<'a> = &'a [Option<u8>];

/// Which form.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// Trauma symptoms of the past month, 20 items.
    Pcl5,
    /// Low mood of two weeks, 9 items.
    Phq9,
    /// Anxiety of two weeks, 7 items.
    Gad7,
    /// Dissociation, 28 items: belongs to intake, and is no measure of change.
    Des2,
    /// Trauma symptoms and those of organising oneself, 18 items.
    Itq,
    /// Well-being of two weeks, 5 items: more is better.
    Who5,
    /// Trauma symptoms of a week, 22 items. Offered once the practice has its wording.
    Iesr,
    /// Anxiety of a week, 5 items. Offered once the practice has its wording.
    Anxiety5,
}

impl Measure {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 8] = [Self::Pcl5, Self::Itq, Self::Iesr, Self::Phq9, Self::Gad7, Self::Anxiety5, Self::Who5, Self::Des2];

    /// Its name in the database and in addresses.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Pcl5 => "pcl5",
            Self::Phq9 => "phq9",
            Self::Gad7 => "gad7",
            Self::Des2 => "des2",
            Self::Itq => "itq",
            Self::Who5 => "who5",
            Self::Iesr => "iesr",
            Self::Anxiety5 => "anxiety5",
        }
    }

    /// The one of that name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|measure| measure.name() == name)
    }

    /// What is known of its form.
    #[must_use]
    pub const fn form(self) -> &'static Form {
        match self {
            Self::Pcl5 => &pcl5::FORM,
            Self::Phq9 => &phq9::FORM,
            Self::Gad7 => &gad7::FORM,
            Self::Des2 => &des2::FORM,
            Self::Itq => &itq::FORM,
            Self::Who5 => &who5::FORM,
            Self::Iesr => &iesr::FORM,
            Self::Anxiety5 => &anxiety5::FORM,
        }
    }

    /// What these answers come to.
    ///
    /// # Errors
    /// [`Fault`] when they are not answers to this form. Then there is no score.
    pub fn score(self, answers: Answers<'_>) -> Result<Score, Fault> {
        self.form().check(answers)?;
        match self {
            Self::Pcl5 => pcl5::score(answers).map(|score| score.summary()),
            Self::Phq9 => phq9::score(answers).map(|score| score.summary()),
            Self::Gad7 => gad7::score(answers).map(|score| score.summary()),
            Self::Des2 => des2::score(answers).map(|score| score.summary()),
            Self::Itq => itq::score(answers).map(|score| score.summary()),
            Self::Who5 => who5::score(answers).map(|score| score.summary()),
            Self::Iesr => iesr::score(answers).map(|score| score.summary()),
            Self::Anxiety5 => anxiety5::score(answers).map(|score| score.summary()),
        }
    }
}

/// What is known of a form.
#[derive(Debug)]
pub struct Form {
    /// How the trade calls it.
    pub name: &'static str,
    /// What it asks about, in a few words of our own.
    pub about: &'static str,
    /// The topic of each item, in its order, in our own words.
    pub topics: &'static [&'static str],
    /// The highest answer to an item; the lowest is 0.
    pub most: u8,
    /// Between two answers that may be given.
    pub step: u8,
    /// The highest total; the lowest is 0.
    pub highest: u16,
    /// The days that it asks about: it is never asked again sooner. 0: it names none.
    pub window: u16,
    /// Whether a higher total is better.
    pub better: Better,
    /// Bands where the literature has them, from the lowest.
    pub bands: &'static [Band],
    /// At or beyond it, towards worse, is a case; `None`: the literature has no such cut on the total.
    pub cut: Option<Cut>,
    /// From so many points on a change counts as reliable, the default first; empty: none is published.
    pub reliable: &'static [Threshold],
    /// People who come for treatment, for what chance alone would bring; `None`: no figures are at hand.
    pub population: Option<Population>,
    /// The item, from 1, that is a sign of risk to life.
    pub risk: Option<usize>,
    /// It may be shown as a measure of change.
    pub is_outcome: bool,
    /// It may be entered item by item from the official form. Else it is offered only once the practice has loaded its wording.
    pub by_topics: bool,
    /// The version of the rules here. It is kept with each score.
    pub rules: i16,
}

/// The direction of a total.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Better {
    /// Less is better.
    Lower,
    /// More is better.
    Higher,
}

/// A stretch of totals that the literature gives a name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Band {
    /// Its lowest total.
    pub from: u16,
    /// Its name.
    pub name: &'static str,
}

/// A cut on the total.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cut {
    /// Where lower is better: totals from here on are above the cut. Where higher is: totals up to here are below it.
    pub at: u16,
    /// Where it comes from.
    pub source: &'static str,
}

/// A change from which on it counts as reliable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Threshold {
    /// Whole points.
    pub points: u16,
    /// Where it comes from.
    pub source: &'static str,
}

/// Mean, deviation and reliability of a form in people who come for treatment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Population {
    /// Its mean.
    pub mean: f64,
    /// Its standard deviation.
    pub sd: f64,
    /// Over the longest time that is published.
    pub reliability: f64,
    /// Where they come from, all three.
    pub source: &'static str,
}

/// Why answers are no answers to a form.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Fault {
    /// Another number of items.
    #[error("This form has {asked} items, and {given} came.")]
    Length {
        /// So many it has.
        asked: usize,
        /// So many came.
        given: usize,
    },
    /// An answer that the form does not have.
    #[error("Item {item}: {given} is no answer to it. It has 0 to {most}{}.", if *step == 1 { String::new() } else { format!(" in steps of {step}") })]
    Answer {
        /// From 1.
        item: usize,
        /// What came.
        given: u8,
        /// The highest that it has.
        most: u8,
        /// Between two answers.
        step: u8,
    },
}

impl Form {
    /// Whether these are answers to this form.
    ///
    /// # Errors
    /// [`Fault`]: they are not.
    pub fn check(&self, answers: Answers<'_>) -> Result<(), Fault> {
        let (asked, given) = (self.topics.len(), answers.len());
        if asked != given {
            return Err(Fault::Length { asked, given });
        }
        let wrong = answers.iter().zip(1..).find_map(|(answer, item)| {
            let given = (*answer)?;
            (given > self.most || given % self.step != 0).then_some(Fault::Answer { item, given, most: self.most, step: self.step })
        });
        wrong.map_or(Ok(()), Err)
    }

    /// The band of a total; `None`: this form has none.
    #[must_use]
    pub fn band(&self, total: u16) -> Option<&'static str> {
        self.bands.iter().rev().find(|band| total >= band.from).map(|band| band.name)
    }

    /// Whether a total lies at or beyond the cut, towards worse; `None`: there is no cut.
    #[must_use]
    pub fn is_case(&self, total: f64) -> Option<bool> {
        let at = f64::from(self.cut?.at);
        Some(match self.better {
            Better::Lower => total >= at,
            Better::Higher => total <= at,
        })
    }
}

/// What a form came to, as it is kept and shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Score {
    /// The total; `None`: it cannot be told, for blanks.
    pub total: Option<f64>,
    /// The total was filled up for one or two blanks.
    pub prorated: bool,
    /// The band of the total, where there are bands.
    pub band: Option<&'static str>,
    /// Parts of it by name.
    pub parts: Vec<(&'static str, Option<f64>)>,
    /// Provisional readings by name: of rules that count symptoms.
    pub readings: Vec<(&'static str, &'static str)>,
    /// Items left blank, from 1.
    pub blank: Vec<usize>,
    /// What the item says that is a sign of risk to life.
    pub risk: Risk,
    /// Items to ask about, from 1, each with why: no signs of risk to life.
    pub to_ask: Vec<(usize, &'static str)>,
}

/// What the item of risk says. That it says nothing is no sign that there is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Risk {
    /// The form has no such item, or it was answered with 0: this says nothing.
    Silent,
    /// It was left blank: a question to ask.
    Unknown,
    /// It was answered with 1 or more.
    Flag,
}

/// Items left blank, from 1.
fn blanks(answers: Answers<'_>) -> Vec<usize> {
    answers.iter().zip(1..).filter(|(answer, _)| answer.is_none()).map(|(_, item)| item).collect()
}

/// The sum of these items, from 1; `None` when one of them is blank.
fn sum(answers: Answers<'_>, items: impl IntoIterator<Item = usize>) -> Option<u16> {
    items.into_iter().map(|item| answers[item - 1].map(u16::from)).sum()
}

/// The mean of these items, from 1; `None` when one of them is blank.
fn mean(answers: Answers<'_>, items: &[usize]) -> Option<f64> {
    let count = u32::try_from(items.len()).ok().filter(|count| *count > 0)?;
    sum(answers, items.iter().copied()).map(|sum| f64::from(sum) / f64::from(count))
}

/// A total with one or two blanks filled by the mean of what was answered; with more there is none. `true`: it was filled.
fn filled(answers: Answers<'_>) -> (Option<f64>, bool) {
    let answered: Vec<u8> = answers.iter().flatten().copied().collect();
    let blank = answers.len() - answered.len();
    if blank > 2 {
        return (None, false);
    }
    let sum: f64 = answered.iter().copied().map(f64::from).sum();
    let [items, given] = [answers.len(), answered.len()].map(|count| count as f64);
    (Some(sum * items / given), blank > 0)
}

/// A total in whole points, halves up; totals are never negative.
fn whole(total: f64) -> u16 {
    (total + 0.5).floor() as u16
}
