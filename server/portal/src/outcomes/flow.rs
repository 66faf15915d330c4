//! Who came, stayed and left.

use std::collections::HashMap;

use chrono::{DateTime, Days, NaiveDate, Utc, Weekday};
use leeward_core::chart::{Chart, FlowWeek, flow_by_week};

use super::period::Period;
use super::queries_practice::{self as queries, WeekRow};
use crate::episodes::Reason;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::Tx;

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

/// Who came, stayed and left from `from` up to `until`.
pub(super) async fn flow(tx: &mut Tx, period: Period, (from, until): (DateTime<Utc>, DateTime<Utc>), when: When) -> Result<Flow, Error> {
    let rows = queries::weeks(tx, from, until).await?;
    let weeks = weeks(&rows, period, when);
    let mut by_reason: HashMap<String, (i64, i64)> = HashMap::new();
    for row in queries::ends(tx, from, until).await? {
        by_reason.insert(row.reason, (row.count, row.never));
    }
    let ends: Vec<(&'static str, i64, i64)> = Reason::ALL
        .iter()
        .filter_map(|reason| by_reason.get(reason.name()).map(|(count, never)| (reason.words(), *count, *never)))
        .collect();
    let (in_treatment, not_yet) = queries::in_treatment(tx, until).await?;
    let sum = |of: fn(&WeekRow) -> i64| rows.iter().map(of).sum::<i64>();
    let began = sum(|week| week.began);
    let ended: i64 = ends.iter().map(|(_, count, _)| count).sum();
    let agreed = by_reason.get(Reason::AsAgreed.name()).map_or(0, |(count, _)| *count);
    let alone = by_reason.get(Reason::ClientEnded.name()).map_or(0, |(count, _)| *count);
    let finding =
        format!("{began} began; {ended} ended, {agreed} of them completed as agreed and {alone} ended by the client without agreement");
    Ok(Flow { finding, chart: flow_by_week(&weeks), ends, ended, in_treatment, not_yet })
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
