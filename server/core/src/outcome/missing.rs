//! Those who gave no score at the end belong to those who began (section 9). Said side by side: who completed, the last score in treatment
//! carried forward, the first carried forward, and the two bounds.

use super::change::{Class, Rule, classify};
use super::proportion::{Interval, wilson};
use super::{Refused, finite};
use crate::measures::Better;

/// The scores of one person over a course of treatment.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// At its start.
    pub before: f64,
    /// During it, first to last.
    pub during: Vec<f64>,
    /// At its end; `None`: it is missing.
    pub after: Option<f64>,
}

/// What may be said of many. A mean change is a gain: positive is better.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outcome {
    /// Who began.
    pub began: u64,
    /// Who has a score at the end.
    pub with_after: u64,
    /// Mean gain of these; `None`: nobody has one.
    pub completers: Option<f64>,
    /// Mean gain of all with the last score carried forward.
    pub last_forward: f64,
    /// Mean gain of all with the first score carried forward.
    pub first_forward: f64,
    /// How many of those with a score at the end are reliably better.
    pub reliable: u64,
    /// The same as a share of them; `None`: nobody has one.
    pub reliable_share: Option<f64>,
    /// And its interval.
    pub reliable_interval: Option<Interval>,
    /// The share of all who are reliably better if none of those missing is.
    pub if_none: f64,
    /// The same if all of them are.
    pub if_all: f64,
    /// The same with the last score carried forward.
    pub last_forward_share: f64,
}

impl Outcome {
    /// Who gave a score at the end, of those who began: 0 to 1.
    #[must_use]
    pub fn completeness(&self) -> f64 {
        self.with_after as f64 / self.began as f64
    }
}

/// What may be said of these. `confidence`: of the interval.
///
/// # Errors
/// [`Refused`] when there is nobody, or a figure is none.
pub fn outcome(cases: &[Case], rule: Rule, confidence: f64) -> Result<Outcome, Refused> {
    let began = u64::try_from(cases.len()).map_err(|_| Refused::Count)?;
    if began == 0 {
        return Err(Refused::Count);
    }
    let all: Vec<f64> =
        cases.iter().flat_map(|case| [case.before].into_iter().chain(case.during.iter().copied()).chain(case.after)).collect();
    finite(&all)?;
    let gain = |case: &Case, after: f64| match rule.better {
        Better::Lower => case.before - after,
        Better::Higher => after - case.before,
    };
    let better = |case: &Case, after: f64| {
        classify(case.before, after, rule).map(|class| u64::from(matches!(class, Class::Recovered | Class::Improved)))
    };
    let last = |case: &Case| case.after.or(case.during.last().copied()).unwrap_or(case.before);
    let (mut completers, mut last_gain, mut first_gain) = (0.0, 0.0, 0.0);
    let (mut with_after, mut reliable, mut last_reliable) = (0, 0, 0);
    for case in cases {
        last_gain += gain(case, last(case));
        last_reliable += better(case, last(case))?;
        if let Some(after) = case.after {
            with_after += 1;
            completers += gain(case, after);
            first_gain += gain(case, after);
            reliable += better(case, after)?;
        }
    }
    let of_all = |count: u64| count as f64 / began as f64;
    let some = with_after > 0;
    Ok(Outcome {
        began,
        with_after,
        completers: some.then(|| completers / with_after as f64),
        last_forward: last_gain / began as f64,
        first_forward: first_gain / began as f64,
        reliable,
        reliable_share: some.then(|| reliable as f64 / with_after as f64),
        reliable_interval: if some { Some(wilson(reliable, with_after, confidence)?) } else { None },
        if_none: of_all(reliable),
        if_all: of_all(reliable + began - with_after),
        last_forward_share: of_all(last_reliable),
    })
}
