//! Reliable and clinically significant change of one person (Jacobson & Truax 1991; section 1).
//!
//! Their standard error ignores that spreads before and after may differ (Maassen 2004 prefers a variant): it is kept, since the published
//! thresholds are made with it.

use serde::{Deserialize, Serialize};

use super::{Refused, finite};
use crate::measures::Better;

/// From so many standard errors of a difference on a change is reliable: the normal quantile that the literature writes as 1.96.
const RELIABLE: f64 = 1.959_963_984_540_054;

/// How a change stands to what the measure's error alone would bring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReliableChange {
    /// Standard error of one score.
    pub se: f64,
    /// Standard error of the difference of two.
    pub sdiff: f64,
    /// After less before, in such errors: its sign is that of the difference.
    pub rc: f64,
    /// From so many points on a change is reliable; not rounded.
    pub threshold: f64,
}

/// The reliable change index. `reliability`: which one was used belongs beside the result, since the consistency of a form gives a smaller
/// threshold than its retest.
///
/// # Errors
/// [`Refused`] when `sd` is not above 0, or `reliability` is not within 0 and below 1.
pub fn reliable_change(before: f64, after: f64, sd: f64, reliability: f64) -> Result<ReliableChange, Refused> {
    finite(&[before, after, sd, reliability])?;
    if sd <= 0.0 {
        return Err(Refused::Spread);
    }
    if !(0.0..1.0).contains(&reliability) {
        return Err(Refused::Reliability);
    }
    let se = sd * (1.0 - reliability).sqrt();
    let sdiff = (2.0 * se * se).sqrt();
    Ok(ReliableChange { se, sdiff, rc: (after - before) / sdiff, threshold: RELIABLE * sdiff })
}

/// A threshold in whole points, as forms without fractions need it.
///
/// # Errors
/// [`Refused::Figure`] when it is negative or no number.
pub fn whole_points(threshold: f64) -> Result<u32, Refused> {
    finite(&[threshold])?;
    // What a binary fraction adds to a whole number is no point more.
    let points = (threshold - 1e-9).ceil();
    if !(0.0..=f64::from(u32::MAX)).contains(&points.max(0.0)) || threshold < 0.0 {
        return Err(Refused::Figure);
    }
    Ok(points.max(0.0) as u32)
}

/// Mean and standard deviation of a group.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// Its mean.
    pub mean: f64,
    /// Its standard deviation.
    pub sd: f64,
}

/// Where a score leaves the one group for the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cutoffs {
    /// Two deviations from the dysfunctional mean, towards health.
    pub a: f64,
    /// Two deviations from the functional mean, towards illness.
    pub b: f64,
    /// Between both, each mean weighed by the other group's deviation.
    pub c: f64,
}

/// The three cut-offs.
///
/// # Errors
/// [`Refused`] when a deviation is not above 0.
pub fn cutoffs(dysfunctional: Group, functional: Group) -> Result<Cutoffs, Refused> {
    finite(&[dysfunctional.mean, dysfunctional.sd, functional.mean, functional.sd])?;
    if dysfunctional.sd <= 0.0 || functional.sd <= 0.0 {
        return Err(Refused::Spread);
    }
    let healthier = (functional.mean - dysfunctional.mean).signum();
    Ok(Cutoffs {
        a: (2.0 * dysfunctional.sd).mul_add(healthier, dysfunctional.mean),
        b: (2.0 * functional.sd).mul_add(-healthier, functional.mean),
        c: functional.sd.mul_add(dysfunctional.mean, dysfunctional.sd * functional.mean) / (functional.sd + dysfunctional.sd),
    })
}

/// What became of somebody, in the literature's order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Class {
    /// Reliably better, and across the cut ("recovered").
    Recovered,
    /// Reliably better, and not across it, or never beyond it ("improved").
    Improved,
    /// Neither ("unchanged").
    Unchanged,
    /// Reliably worse ("deteriorated").
    Deteriorated,
}

impl Class {
    /// In the literature's order.
    pub const ALL: [Self; 4] = [Self::Recovered, Self::Improved, Self::Unchanged, Self::Deteriorated];

    /// As pages say it: a direction and a fact, no praise.
    #[must_use]
    pub const fn words(self, better: Better) -> &'static str {
        match (self, better) {
            (Self::Recovered, Better::Lower) => "reliably lower and below the cut",
            (Self::Recovered, Better::Higher) => "reliably higher and above the cut",
            (Self::Improved, Better::Lower) | (Self::Deteriorated, Better::Higher) => "reliably lower",
            (Self::Unchanged, _) => "no reliable change",
            (Self::Improved, Better::Higher) | (Self::Deteriorated, Better::Lower) => "reliably higher",
        }
    }
}

/// What a change is judged by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rule {
    /// From so many points on it is reliable.
    pub points: f64,
    /// Where a case begins, towards worse. Lower is better: a score at it is a case. Higher is: a score at it is one too. `None`: no cut.
    pub cut: Option<f64>,
    /// The direction of the measure.
    pub better: Better,
}

/// What became of somebody. Who starts on the healthy side of the cut can get better, and not cross it.
///
/// # Errors
/// [`Refused`] when a figure is none, or the rule's points are not above 0.
pub fn classify(before: f64, after: f64, rule: Rule) -> Result<Class, Refused> {
    finite(&[before, after, rule.points])?;
    if rule.points <= 0.0 {
        return Err(Refused::Spread);
    }
    let (gained, is_case): (f64, fn(f64, f64) -> bool) = match rule.better {
        Better::Lower => (before - after, |score, cut| score >= cut),
        Better::Higher => (after - before, |score, cut| score <= cut),
    };
    let crossed = rule.cut.is_some_and(|cut| is_case(before, cut) && !is_case(after, cut));
    Ok(if gained <= -rule.points {
        Class::Deteriorated
    } else if gained < rule.points {
        Class::Unchanged
    } else if crossed {
        Class::Recovered
    } else {
        Class::Improved
    })
}

/// What the NHS counts of two measures together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Paired {
    /// One is reliably better, and the other not reliably worse.
    pub improved: bool,
    /// One is reliably worse, and the other not reliably better.
    pub deteriorated: bool,
    /// A case on one or both at the start.
    pub case_at_start: bool,
    /// A case at the start, and on neither at the end.
    pub recovery: bool,
    /// Recovery, and improved.
    pub reliable_recovery: bool,
}

/// PHQ-9 (6 points, case from 10) with GAD-7 (4 points, case from 8), each before and after: a definition of the NHS; that neither may be
/// reliably worse is from memory of its manual.
#[must_use]
pub fn paired(phq9: (f64, f64), gad7: (f64, f64)) -> Paired {
    const PHQ9: (f64, f64) = (6.0, 10.0);
    const GAD7: (f64, f64) = (4.0, 8.0);
    let (low, anxious) = (phq9.0 - phq9.1, gad7.0 - gad7.1);
    let (better, worse) = (low >= PHQ9.0 || anxious >= GAD7.0, low <= -PHQ9.0 || anxious <= -GAD7.0);
    let is_case = |phq9: f64, gad7: f64| phq9 >= PHQ9.1 || gad7 >= GAD7.1;
    let case_at_start = is_case(phq9.0, gad7.0);
    let recovery = case_at_start && !is_case(phq9.1, gad7.1);
    let improved = better && !worse;
    Paired { improved, deteriorated: worse && !better, case_at_start, recovery, reliable_recovery: recovery && improved }
}
