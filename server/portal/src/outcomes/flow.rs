//! Who came, stayed and left.

use std::collections::HashMap;

use chrono::{Days, NaiveDate, Weekday};
use leeward_core::chart::{Chart, FlowWeek, flow_by_week};

use super::figures::Figures;
use super::period::Period;
use super::queries_practice::WeekRow;
use crate::episodes::Reason;
use crate::platform::when::When;

/// The panel.
pub(super) struct Flow {
    /// What it says, in a sentence.
    pub(super) finding: String,
    pub(super) chart: Chart,
    /// Each reason in words, how many ended so, and how many of these without any reprocessing.
    pub(super) ends: Vec<(&'static str, i64, i64)>,
    pub(super) ended: i64,
    pub(super) in_treatment: i64,
    /// Of those in treatment, without any reprocessing yet.
    pub(super) not_yet: i64,
}

/// Who came, stayed and left in a period.
pub(super) fn flow(figures: &Figures, period: Period, when: When) -> Flow {
    let rows = &figures.weeks;
    let by_reason: HashMap<&str, (i64, i64)> = figures.ends.iter().map(|row| (row.reason.as_str(), (row.count, row.never))).collect();
    let ends: Vec<(&'static str, i64, i64)> = Reason::ALL
        .iter()
        .filter_map(|reason| by_reason.get(reason.name()).map(|(count, never)| (reason.words(), *count, *never)))
        .collect();
    let began = rows.iter().map(|week| week.began).sum::<i64>();
    let ended: i64 = ends.iter().map(|(_, count, _)| count).sum();
    let finding = format!("{began} began, {ended} ended, {} were in treatment at the end of the period", figures.in_treatment);
    let chart = flow_by_week(&weeks(rows, period, when));
    Flow { finding, chart, ends, ended, in_treatment: figures.in_treatment, not_yet: figures.not_yet }
}

fn monday(day: NaiveDate) -> NaiveDate {
    day.week(Weekday::Mon).first_day()
}

/// All weeks of the period, those too in which nothing was.
fn weeks(rows: &[WeekRow], period: Period, when: When) -> Vec<FlowWeek> {
    let first = monday(period.first);
    let all = u64::try_from((monday(period.last) - first).num_weeks()).unwrap_or_default();
    let count = |count: i64| u32::try_from(count).unwrap_or(u32::MAX);
    (0..=all)
        .filter_map(|week| first.checked_add_days(Days::new(7 * week)))
        .map(|week| {
            let row = rows.iter().find(|row| row.week == week);
            FlowWeek {
                label: when.day_of_year(week),
                began: row.map_or(0, |row| count(row.began)),
                reprocessed: row.map_or(0, |row| count(row.reprocessed)),
                ended: row.map_or(0, |row| count(row.ended)),
            }
        })
        .collect()
}
