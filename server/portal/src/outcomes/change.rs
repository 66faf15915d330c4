//! Whether totals changed in those whose treatment ended: counts in each class first, then what those without a total at the end leave open. No
//! claim of cause, no colour of merit.

use leeward_core::chart::{ClassStrip, SHADES, class_strip};
use leeward_core::measures::{Form, Measure};
use leeward_core::outcome::Refused;
use leeward_core::outcome::change::{Class, Rule};
use leeward_core::outcome::missing::{Group, Outcome, of_groups};
use leeward_core::outcome::proportion::wilson;
use leeward_core::outcome::regression::selected;

use super::figures::{Figures, JudgedBy};
use super::queries_practice::GroupRow;
use crate::store::error::Error;

/// Figures with fewer totals at the end than this share are greyed: they are of those who stayed.
const COMPLETE_ENOUGH: f64 = 0.7;
const CONFIDENCE: f64 = 0.95;

/// The panel of one measure.
pub(super) struct Change {
    pub(super) form: &'static Form,
    /// What it says, in a sentence.
    pub(super) finding: String,
    pub(super) strip: ClassStrip,
    /// Each class in words, how it is shaded, how many, and its share with the interval.
    pub(super) classes: Vec<(&'static str, &'static str, u64, String)>,
    /// Without a total at the end.
    pub(super) missing: u64,
    /// Names and figures side by side: of those with a total at the end, carried forward, and the bounds.
    pub(super) aside: Vec<(&'static str, String)>,
    /// Too few totals at the end to be read as of all.
    pub(super) greyed: bool,
    pub(super) completeness: String,
    /// By what a change is judged, with its source.
    pub(super) rule: String,
    /// What chance alone would bring.
    pub(super) by_chance: String,
}

/// The panels of the measures that anybody whose treatment ended in the period has; and, in a sentence each, those by which no change is judged.
pub(super) fn changes(figures: &Figures) -> Result<(Vec<Change>, Vec<String>), Error> {
    let (mut judged, mut unjudged) = (vec![], vec![]);
    for measure in Measure::ALL {
        let form = measure.form();
        let groups: Vec<Group> = figures.groups.iter().filter(|row| row.measure == measure.name()).map(group).collect::<Result<_, _>>()?;
        if groups.is_empty() {
            continue;
        }
        match figures.judged(measure) {
            Some(by) => judged.push(change(form, &groups, &by).map_err(|fault| Error::Inner(format!("an outcome: {fault}")))?),
            None => unjudged.push(format!(
                "{}: {}. From how many points on its change is reliable is not published, so none is judged.",
                form.name,
                began(
                    groups.iter().map(|group| group.count).sum(),
                    groups.iter().filter(|group| group.after.is_some()).map(|group| group.count).sum()
                )
            )),
        }
    }
    Ok((judged, unjudged))
}

/// How many treatments that ended had a total of a form before the end, and how many at the end.
fn began(began: u64, with_after: u64) -> String {
    format!(
        "{} that ended began with it, {} a total of it at the end too",
        counted(began, "treatment", "treatments"),
        counted(with_after, "has", "have")
    )
}

fn group(row: &GroupRow) -> Result<Group, Error> {
    let count = u64::try_from(row.count).map_err(|_| Error::Inconsistent("episode_measure"))?;
    Ok(Group { before: row.first, last: row.last, after: row.end, count })
}

fn counted(count: u64, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}

fn percent(share: f64) -> String {
    format!("{:.0} %", 100.0 * share)
}

/// The share of `count` in `of`, with its interval.
fn share(count: u64, of: u64) -> Result<String, Refused> {
    if of == 0 {
        return Ok("nobody with a total at the end".to_owned());
    }
    let interval = wilson(count, of, CONFIDENCE)?;
    Ok(format!("{} ({} to {})", percent(count as f64 / of as f64), percent(interval.lo), percent(interval.hi)))
}

fn change(form: &'static Form, groups: &[Group], by: &JudgedBy) -> Result<Change, Refused> {
    let rule = Rule { points: by.threshold.points.into(), cut: by.cut.map(|cut| cut.at.into()), better: form.better };
    let outcome = of_groups(groups, rule, CONFIDENCE)?;
    let classes = Class::ALL
        .into_iter()
        .zip(SHADES)
        .zip(outcome.classes)
        .map(|((class, shade), count)| Ok((class.words(form.better), shade, count, share(count, outcome.with_after)?)));
    let missing = outcome.began.saturating_sub(outcome.with_after);
    let (reliable, with_after) = (outcome.reliable, outcome.with_after);
    Ok(Change {
        form,
        finding: format!(
            "{}: {}; {reliable} of these {with_after} {} reliably better",
            form.name,
            began(outcome.began, with_after),
            if reliable == 1 { "is" } else { "are" }
        ),
        strip: class_strip(outcome.classes, missing),
        classes: classes.collect::<Result<_, _>>()?,
        missing,
        aside: aside(&outcome),
        greyed: outcome.completeness() < COMPLETE_ENOUGH,
        completeness: format!("{} of {} ({})", with_after, outcome.began, percent(outcome.completeness())),
        rule: judged_by(by),
        by_chance: by_chance(form)?,
    })
}

/// What stands beside the classes: where they began, means of those with a total at the end, of all, and the bounds of what is missing.
fn aside(outcome: &Outcome) -> Vec<(&'static str, String)> {
    let gain = |gain: f64| format!("{gain:.1} points");
    let mean = |mean: f64| format!("{mean:.1}");
    vec![
        ("Mean at the start, all who began with it", mean(outcome.start)),
        ("Mean at the start, those with a total at the end", outcome.completers_start.map_or_else(|| "none".to_owned(), mean)),
        ("Mean improvement, those with a total at the end", outcome.completers.map_or_else(|| "none".to_owned(), gain)),
        ("Mean improvement, all, the last total in treatment in place of one at the end", gain(outcome.last_forward)),
        ("Mean improvement, all, no change where there is none at the end", gain(outcome.first_forward)),
        ("Reliably better, of all, if none of those without one at the end is", percent(outcome.if_none)),
        ("Reliably better, of all, if all of those without one at the end are", percent(outcome.if_all)),
    ]
}

fn judged_by(by: &JudgedBy) -> String {
    let judged = format!("{} points: {}; rules of the form, version {}", by.threshold.points, by.threshold.source, by.rules);
    by.cut.map_or(judged.clone(), |cut| format!("{judged}; cut {}: {}", cut.at, cut.source))
}

/// What those who were admitted from the cut on would gain next time with nothing done.
fn by_chance(form: &Form) -> Result<String, Refused> {
    let (Some(population), Some(cut)) = (form.population, form.cut) else { return Ok(String::new()) };
    let group = leeward_core::outcome::change::Group { mean: population.mean, sd: population.sd };
    let found = selected(group, population.reliability, cut.at.into())?;
    Ok(format!(
        "Whoever comes at their worst tends to score better the next time by chance alone: about {:.1} points of this form for those from the cut on ({}).",
        found.fall, population.source
    ))
}
