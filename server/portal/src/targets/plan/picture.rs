//! The plan as one picture.

use leeward_core::chart::{Chart, LifeTime, PlanMark, plan};

use super::{Cluster, Planned, Prong, Target};

const ALONE: &str = "By itself";
const FROM_A_YEAR: &str = "Where only a year is known, the age is worked out from a target that has both: it may be a year out.";

/// The picture of `targets`, in the order of the work; none without any.
pub(super) fn picture(targets: &[Target], clusters: &[Cluster]) -> Option<Chart> {
    if targets.is_empty() {
        return None;
    }
    let born = born(targets.iter().map(|target| target.planned));
    let names: Vec<String> = clusters.iter().map(|cluster| cluster.name.shown().to_owned()).chain([ALONE.to_owned()]).collect();
    let marks: Vec<PlanMark> = targets.iter().map(|target| mark(target, targets, clusters, born)).collect();
    let worked_out =
        targets.iter().any(|target| target.prong == Prong::Past && target.planned.age.is_none() && age(target.planned, born).is_some());
    Some(plan(&marks, &names, worked_out.then_some(FROM_A_YEAR)))
}

fn mark(target: &Target, targets: &[Target], clusters: &[Cluster], born: Option<i16>) -> PlanMark {
    let group = clusters.iter().position(|cluster| Some(cluster.id) == target.planned.cluster);
    let cluster = group.and_then(|at| clusters.get(at));
    let parent = target.planned.parent.and_then(|parent| targets.iter().position(|other| other.id == parent));
    let label = |target: &Target| format!("{}. {}", target.number, target.words.label.shown());
    let marked = cluster.map_or("", |cluster| cluster.marked(target.id));
    let at = match target.prong {
        Prong::Past => LifeTime::Past(age(target.planned, born)),
        Prong::Present => LifeTime::Now,
        Prong::Future => LifeTime::ToCome,
    };
    PlanMark {
        number: u32::try_from(target.number).unwrap_or_default(),
        at,
        group: group.unwrap_or(clusters.len()),
        marked,
        over: target.stand.state.is_over(),
        parent,
        cells: [
            label(target),
            when(target),
            cluster.map_or_else(|| ALONE.to_owned(), |cluster| belongs(cluster, marked)),
            parent.and_then(|at| targets.get(at)).map(label).unwrap_or_default(),
            target.stands().to_owned(),
        ],
    }
}

/// Such as "Left alone, earliest".
pub(super) fn belongs(cluster: &Cluster, marked: &str) -> String {
    let name = cluster.name.shown();
    if marked.is_empty() { name.to_owned() } else { format!("{name}, {marked}") }
}

/// Such as "age 9, 1998"; for what lies now or ahead, that it does.
pub(super) fn when(target: &Target) -> String {
    let since = target.planned.when();
    match (target.prong, since.is_empty()) {
        (Prong::Past, true) => "age not known".to_owned(),
        (Prong::Past, false) => since,
        (Prong::Present, true) => "now".to_owned(),
        (Prong::Present, false) => format!("now, since {since}"),
        (Prong::Future, true) => "to come".to_owned(),
        (Prong::Future, false) => format!("to come, {since}"),
    }
}

/// The year of birth that a target with an age and a year implies, to within a year.
fn born(planned: impl Iterator<Item = Planned>) -> Option<i16> {
    planned.filter_map(|planned| Some(planned.year? - planned.age?)).min()
}

/// The age, or the one that the year implies.
fn age(planned: Planned, born: Option<i16>) -> Option<u8> {
    let worked_out = || Some(planned.year? - born?);
    planned.age.or_else(worked_out).and_then(|age| u8::try_from(age).ok()).filter(|age| *age <= 120)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_year_is_an_age_once_one_target_has_both() {
        let of = |age, year| Planned { age, year, ..Planned::default() };
        let all = [of(Some(9), Some(1998)), of(None, Some(2010)), of(Some(30), None), of(None, None)];
        let born = born(all.into_iter());
        assert_eq!(born, Some(1989));
        assert_eq!(all.map(|planned| age(planned, born)), [Some(9), Some(21), Some(30), None]);
        assert_eq!(all.map(|planned| age(planned, None)), [Some(9), None, Some(30), None]);
        assert_eq!(age(of(None, Some(1950)), born), None, "before they were born: somebody mistyped");
    }
}
