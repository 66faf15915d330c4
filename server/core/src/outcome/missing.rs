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

/// So many people with the same scores.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// At the start.
    pub before: f64,
    /// The last one in treatment, before its end; the first where there is no other.
    pub last: f64,
    /// At the end; `None`: it is missing.
    pub after: Option<f64>,
    /// How many they are.
    pub count: u64,
}

/// What may be said of many. A mean change is a gain: positive is better.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outcome {
    /// Who began.
    pub began: u64,
    /// Who has a score at the end.
    pub with_after: u64,
    /// Of these, how many are of each of [`Class::ALL`], in that order.
    pub classes: [u64; 4],
    /// Mean score at the start of all who began.
    pub start: f64,
    /// The same of those with a score at the end; `None`: nobody has one.
    pub completers_start: Option<f64>,
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
    let group =
        |case: &Case| Group { before: case.before, last: case.during.last().copied().unwrap_or(case.before), after: case.after, count: 1 };
    for case in cases {
        finite(&case.during)?;
    }
    of_groups(&cases.iter().map(group).collect::<Vec<_>>(), rule, confidence)
}

/// The same of groups: a practice has many people, and few different scores.
///
/// # Errors
/// As [`outcome`].
pub fn of_groups(groups: &[Group], rule: Rule, confidence: f64) -> Result<Outcome, Refused> {
    let mut all = Sums::default();
    for group in groups {
        all.add(group, rule)?;
    }
    if all.began == 0 {
        return Err(Refused::Count);
    }
    let reliable = all.classes[Class::Recovered as usize] + all.classes[Class::Improved as usize];
    let (began, with_after, some) = (all.began, all.with_after, all.with_after > 0);
    let of_all = |count: u64| count as f64 / began as f64;
    Ok(Outcome {
        began,
        with_after,
        classes: all.classes,
        start: all.start / began as f64,
        completers_start: some.then(|| all.completers_start / with_after as f64),
        completers: some.then(|| all.gain / with_after as f64),
        last_forward: all.last_gain / began as f64,
        first_forward: all.gain / began as f64,
        reliable,
        reliable_share: some.then(|| reliable as f64 / with_after as f64),
        reliable_interval: if some { Some(wilson(reliable, with_after, confidence)?) } else { None },
        if_none: of_all(reliable),
        if_all: of_all(reliable + began - with_after),
        last_forward_share: of_all(all.last_reliable),
    })
}

#[derive(Default)]
struct Sums {
    began: u64,
    with_after: u64,
    classes: [u64; 4],
    start: f64,
    /// Of those with a score at the end.
    completers_start: f64,
    gain: f64,
    last_gain: f64,
    last_reliable: u64,
}

impl Sums {
    fn add(&mut self, group: &Group, rule: Rule) -> Result<(), Refused> {
        let Group { before, last, after, count } = *group;
        finite(&[before, last])?;
        let weight = count as f64;
        let gain = |to: f64| {
            weight
                * match rule.better {
                    Better::Lower => before - to,
                    Better::Higher => to - before,
                }
        };
        let carried = after.unwrap_or(last);
        self.began += count;
        self.start += weight * before;
        self.last_gain += gain(carried);
        if matches!(classify(before, carried, rule)?, Class::Recovered | Class::Improved) {
            self.last_reliable += count;
        }
        if let Some(after) = after {
            self.with_after += count;
            self.completers_start += weight * before;
            self.gain += gain(after);
            self.classes[classify(before, after, rule)? as usize] += count;
        }
        Ok(())
    }
}
