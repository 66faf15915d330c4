//! How the practice's sessions of the last weeks were closed.

use chrono::{DateTime, Days, NaiveDate, NaiveTime, Utc, Weekday};
use leeward_core::chart::{ClosedAs, Closings, Element, Week, closings};

use super::queries::ClosingRow;
use crate::platform::codes::ClosingKind;
use crate::platform::when::When;

/// How far back it looks: this week and those before it.
pub(super) const WEEKS: u32 = 12;

/// The sessions of the last [`WEEKS`], by the week in which they were opened.
pub(super) struct Strip {
    pub drawn: Closings,
    pub weeks: Vec<Week>,
    pub kinds: Vec<Kind>,
    pub all: u32,
}

/// One way to be closed, or not.
pub(super) struct Kind {
    /// As in the strip.
    pub mark: [Element; 1],
    pub words: &'static str,
    pub count: u32,
}

/// The first day of a week, ISO 8601: Monday.
fn monday(day: NaiveDate) -> NaiveDate {
    day.week(Weekday::Mon).first_day()
}

/// The first moment that may belong to the strip, whatever the zone.
pub(super) fn since(today: NaiveDate) -> DateTime<Utc> {
    let days = Days::new(u64::from(WEEKS) * 7);
    monday(today).checked_sub_days(days).unwrap_or(NaiveDate::MIN).and_time(NaiveTime::MIN).and_utc()
}

const fn words(closed: ClosedAs) -> &'static str {
    match closed {
        ClosedAs::Complete => "Complete, or reduced as planned",
        ClosedAs::Incomplete => "Incomplete",
        ClosedAs::Otherwise => "No reprocessing, or not recorded",
        ClosedAs::NotClosed => "Not closed",
    }
}

fn closed_as(row: &ClosingRow) -> ClosedAs {
    match row.closing.as_deref().and_then(ClosingKind::parse) {
        _ if !row.ended => ClosedAs::NotClosed,
        Some(ClosingKind::Complete | ClosingKind::Reduced) => ClosedAs::Complete,
        Some(ClosingKind::Incomplete) => ClosedAs::Incomplete,
        Some(ClosingKind::NoReprocessing | ClosingKind::DidNotAttend | ClosingKind::ByMistake) | None => ClosedAs::Otherwise,
    }
}

impl Strip {
    /// Of these sessions, those of the last weeks. Days are those of `when`.
    pub(super) fn of<'a>(rows: impl Iterator<Item = &'a ClosingRow>, today: NaiveDate, when: When) -> Self {
        let first = |back: u32| monday(today).checked_sub_days(Days::new(u64::from(back) * 7)).unwrap_or(NaiveDate::MIN);
        let mut weeks: Vec<Week> = (0..WEEKS).rev().map(|back| Week { label: when.day_of_year(first(back)), counts: [0; 4] }).collect();
        let oldest = first(WEEKS - 1);
        for row in rows {
            let place = (monday(when.date(&row.opened_at)) - oldest).num_weeks();
            if let Some(week) = usize::try_from(place).ok().and_then(|place| weeks.get_mut(place)) {
                week.counts[closed_as(row) as usize] += 1;
            }
        }
        let count = |closed: ClosedAs| weeks.iter().map(|week| week.counts[closed as usize]).sum();
        let kinds: Vec<Kind> =
            ClosedAs::ALL.into_iter().map(|closed| Kind { mark: [closed.mark()], words: words(closed), count: count(closed) }).collect();
        Self { drawn: closings(&weeks), all: kinds.iter().map(|kind| kind.count).sum(), weeks, kinds }
    }

    /// What the strip says.
    pub(super) fn finding(&self) -> String {
        let count = |closed: ClosedAs| self.kinds[closed as usize].count;
        let (incomplete, open) = (count(ClosedAs::Incomplete), count(ClosedAs::NotClosed));
        let were = |count| if count == 1 { "was" } else { "were" };
        let sessions = if self.all == 1 { "session" } else { "sessions" };
        match (self.all, open) {
            (0, _) => format!("No session in the last {WEEKS} weeks"),
            (all, 0) => format!("{incomplete} of {all} {sessions} in {WEEKS} weeks {} closed as incomplete", were(incomplete)),
            (all, open) => format!(
                "{incomplete} of {all} {sessions} in {WEEKS} weeks {} closed as incomplete, {open} {} not closed",
                were(incomplete),
                if open == 1 { "is" } else { "are" }
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::when::Style;
    use chrono::TimeZone;

    fn row(day: u32, hour: u32, closing: Option<&str>) -> ClosingRow {
        let opened_at = Utc.with_ymd_and_hms(2026, 11, day, hour, 0, 0).unwrap();
        ClosingRow { client: uuid::Uuid::nil(), opened_at, ended: closing.is_some(), closing: closing.map(str::to_owned) }
    }

    /// Weeks begin on Monday (ISO 8601, 2.2.8, from memory), days are those of the practice: 16 November 2026 is a Monday.
    #[test]
    fn a_session_belongs_to_the_week_of_its_day_in_the_practice() {
        let today = NaiveDate::from_ymd_opt(2026, 11, 28).unwrap();
        let rows = [
            row(15, 23, Some("complete")),
            row(16, 0, Some("incomplete")),
            row(22, 23, Some("no_reprocessing")),
            row(23, 0, Some("of another version")),
            row(28, 9, None),
        ];
        let counts = |zone: &str| {
            let strip = Strip::of(rows.iter(), today, When::new(zone, Style::default()));
            strip.weeks[9..].iter().map(|week| (week.label.clone(), week.counts)).collect::<Vec<_>>()
        };
        let weeks = |counts: [[u32; 4]; 3]| ["9 Nov", "16 Nov", "23 Nov"].map(str::to_owned).into_iter().zip(counts).collect::<Vec<_>>();
        assert_eq!(counts("UTC"), weeks([[1, 0, 0, 0], [0, 1, 1, 0], [0, 0, 1, 1]]));
        // Two hours ahead: late on Sunday is Monday there.
        assert_eq!(counts("Europe/Helsinki"), weeks([[0, 0, 0, 0], [1, 1, 0, 0], [0, 0, 2, 1]]));
    }

    #[test]
    fn the_finding_says_what_there_is() {
        let today = NaiveDate::from_ymd_opt(2026, 11, 28).unwrap();
        let said = |rows: &[ClosingRow]| Strip::of(rows.iter(), today, When::new("UTC", Style::default())).finding();
        assert_eq!(said(&[]), "No session in the last 12 weeks");
        assert_eq!(said(&[row(3, 9, Some("incomplete"))]), "1 of 1 session in 12 weeks was closed as incomplete");
        let two = [row(3, 9, Some("complete")), row(4, 9, None)];
        assert_eq!(said(&two), "0 of 2 sessions in 12 weeks were closed as incomplete, 1 is not closed");
    }
}
