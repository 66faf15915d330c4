//! The plan's part of a target's form: age and year, what it belongs with, what it came up from.

use super::plan::{Belongs, Wanted};
use super::{Cluster, Target};
use crate::platform::forms::{Lines, Need, Problems};
use crate::store::seal::Private;

/// As they were typed.
pub(super) struct PlanFields<'a> {
    pub(super) age: &'a str,
    pub(super) year: &'a str,
    pub(super) cluster: &'a str,
    pub(super) new_cluster: &'a str,
    pub(super) parent: &'a str,
}

/// Reads the plan's part.
pub(super) fn wanted(typed: &PlanFields<'_>, problems: &mut Problems) -> Wanted {
    let age = within(problems, "age", typed.age, 0..=120, "How old the client was, in whole years from 0 to 120.");
    let year = within(problems, "year", typed.year, 1900..=2200, "A year of four figures, such as 1998.");
    let number = |problems: &mut Problems, name, typed: &str| {
        if typed.is_empty() { None } else { problems.choice(name, typed, |typed| typed.parse().ok()) }
    };
    let belongs = match (number(problems, "cluster", typed.cluster), typed.new_cluster.trim().is_empty()) {
        (None, true) => Belongs::Alone,
        (Some(number), true) => Belongs::To(number),
        (chosen, false) => {
            if chosen.is_some() {
                problems.add("new_cluster", "Choose a cluster above or name a new one here, not both.");
            }
            Belongs::New(Private::new(problems.text("new_cluster", typed.new_cluster, 60, Need::Required, Lines::One)))
        }
    };
    Wanted { age, year, belongs, parent: number(problems, "parent", typed.parent) }
}

/// A whole number within `range` that may be left out.
fn within(problems: &mut Problems, name: &'static str, typed: &str, range: std::ops::RangeInclusive<i16>, message: &str) -> Option<i16> {
    let typed = typed.trim();
    if typed.is_empty() {
        return None;
    }
    let read = typed.parse().ok().filter(|number| range.contains(number));
    if read.is_none() {
        problems.add(name, message);
    }
    read
}

/// Such as "target 2"; empty for nothing.
pub(super) fn numbered(what: &str, number: &str) -> String {
    if number.is_empty() { String::new() } else { format!("{what} {number}") }
}

/// What a target may belong with or have come up from.
#[derive(Default)]
pub(super) struct Plan {
    pub(super) clusters: Vec<Cluster>,
    /// Without the one that the form is of.
    pub(super) others: Vec<Target>,
}

impl Plan {
    /// The number of the cluster of `target`, or nothing.
    pub(super) fn cluster(&self, target: &Target) -> String {
        let found = self.clusters.iter().find(|cluster| Some(cluster.id) == target.planned.cluster);
        found.map(|cluster| cluster.number.to_string()).unwrap_or_default()
    }

    /// The number of the target that `target` came up from, or nothing.
    pub(super) fn parent(&self, target: &Target) -> String {
        let found = self.others.iter().find(|other| Some(other.id) == target.planned.parent);
        found.map(|other| other.number.to_string()).unwrap_or_default()
    }
}

/// Choices led by none; one that was chosen stays though it is not among them.
pub(super) fn with_chosen(none: &str, all: impl Iterator<Item = (String, String)>, chosen: &str) -> Vec<(String, String)> {
    let mut options: Vec<(String, String)> = std::iter::once((String::new(), none.to_owned())).chain(all).collect();
    if !options.iter().any(|(value, _)| value == chosen) {
        options.push((chosen.to_owned(), format!("Number {chosen}, as chosen before")));
    }
    options
}
