//! Whether totals changed in those whose treatment ended: counts in each class first, then what those without a form at the end leave open. No
//! claim of cause, no colour of merit.

use leeward_core::chart::{ClassStrip, SHADES, class_strip};
use leeward_core::measures::{Form, Measure};
use leeward_core::outcome::change::{Class, Rule};
use leeward_core::outcome::missing::{Group, Outcome, of_groups};
use leeward_core::outcome::proportion::wilson;
use leeward_core::outcome::regression::selected;

use super::figures::Figures;
use super::queries_practice::GroupRow;
use crate::store::error::Error;

/// Figures with fewer forms at the end than this share are greyed: they are of those who stayed.
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
    /// Names and figures side by side: of those with a form at the end, carried forward, and the bounds.
    pub(super) aside: Vec<(&'static str, String)>,
    /// Too few forms at the end to be read as of all.
    pub(super) greyed: bool,
    pub(super) completeness: String,
    /// By what a change is judged, with its source.
    pub(super) rule: String,
    /// What chance alone would bring.
    pub(super) by_chance: String,
}

/// The panels of the measures that anybody whose treatment ended in the period has.
pub(super) fn changes(figures: &Figures) -> Result<Vec<Change>, Error> {
    let mut all = vec![];
    for measure in Measure::ALL {
        let Some((threshold, rules)) = figures.judged(measure) else { continue };
        let form = measure.form();
        let groups: Vec<Group> = figures.groups.iter().filter(|row| row.measure == measure.name()).map(group).collect::<Result<_, _>>()?;
        let rule = Rule { points: threshold.points.into(), cut: form.cut.map(|cut| cut.at.into()), better: form.better };
        if groups.is_empty() {
            continue;
        }
        let outcome = of_groups(&groups, rule, CONFIDENCE).map_err(|fault| Error::Inner(format!("an outcome: {fault}")))?;
        let judged = format!("{} points: {}; rules of the form, version {rules}", threshold.points, threshold.source);
        all.push(change(form, &outcome, judged));
    }
    Ok(all)
}

fn group(row: &GroupRow) -> Result<Group, Error> {
    let count = u64::try_from(row.count).map_err(|_| Error::Inconsistent("episode_measure"))?;
    Ok(Group { before: row.first, last: row.last, after: row.end, count })
}

fn percent(share: f64) -> String {
    format!("{:.0} %", 100.0 * share)
}

fn change(form: &'static Form, outcome: &Outcome, judged: String) -> Change {
    let share = |count: u64| match wilson(count, outcome.with_after, CONFIDENCE) {
        Ok(interval) => {
            format!("{} ({} to {})", percent(count as f64 / outcome.with_after as f64), percent(interval.lo), percent(interval.hi))
        }
        Err(_) => "nobody with a form at the end".to_owned(),
    };
    let classes = Class::ALL
        .into_iter()
        .zip(SHADES)
        .zip(outcome.classes)
        .map(|((class, shade), count)| (class.words(form.better), shade, count, share(count)));
    let gain = |gain: f64| format!("{gain:.1} points");
    let completeness = format!("{} of {} ({})", outcome.with_after, outcome.began, percent(outcome.completeness()));
    Change {
        form,
        finding: format!(
            "{}: of {} whose treatment ended, {} have a form at the end; {} of these are reliably better",
            form.name, outcome.began, outcome.with_after, outcome.reliable
        ),
        strip: class_strip(outcome.classes),
        classes: classes.collect(),
        aside: vec![
            ("Mean gain, with a form at the end", outcome.completers.map_or_else(|| "none".to_owned(), gain)),
            ("Mean gain, last form in treatment carried forward", gain(outcome.last_forward)),
            ("Mean gain, first form carried forward", gain(outcome.first_forward)),
            ("Reliably better, of all who began, if nobody missing is", percent(outcome.if_none)),
            ("Reliably better, of all who began, if everybody missing is", percent(outcome.if_all)),
        ],
        greyed: outcome.completeness() < COMPLETE_ENOUGH,
        completeness,
        rule: match form.cut {
            Some(cut) => format!("{judged}; cut {}: {}", cut.at, cut.source),
            None => judged,
        },
        by_chance: by_chance(form),
    }
}

/// What those who were admitted from the cut on would gain next time with nothing done.
fn by_chance(form: &Form) -> String {
    let (Some(population), Some(cut)) = (form.population, form.cut) else { return String::new() };
    let group = leeward_core::outcome::change::Group { mean: population.mean, sd: population.sd };
    match selected(group, population.reliability, cut.at.into()) {
        Ok(found) => format!(
            "Whoever comes at their worst is better next time by chance alone: about {:.1} points of this form for those from the cut on ({}).",
            found.fall, population.source
        ),
        Err(_) => String::new(),
    }
}
