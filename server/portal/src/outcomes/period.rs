//! The time that the lead's figures are of.

use chrono::{DateTime, Datelike, Months, NaiveDate, Utc};

use crate::platform::when::When;

/// Which time.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Span {
    /// Twelve months until today.
    #[default]
    Year,
    /// The quarter that today is in, until today.
    Quarter,
    /// The quarter before it.
    Before,
}

impl Span {
    pub(super) const ALL: [Self; 3] = [Self::Year, Self::Quarter, Self::Before];

    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Year => "year",
            Self::Quarter => "quarter",
            Self::Before => "before",
        }
    }

    pub(super) const fn words(self) -> &'static str {
        match self {
            Self::Year => "Twelve months until today",
            Self::Quarter => "This quarter",
            Self::Before => "The quarter before",
        }
    }

    /// The one of that name, else the usual one.
    pub(super) fn read(name: &str) -> Self {
        Self::ALL.into_iter().find(|span| span.name() == name).unwrap_or_default()
    }
}

/// Days from the first, up to and with the last.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Period {
    pub(super) first: NaiveDate,
    pub(super) last: NaiveDate,
}

impl Period {
    pub(super) fn of(span: Span, today: NaiveDate) -> Self {
        let quarter = today.with_day(1).and_then(|day| day.checked_sub_months(Months::new((today.month() - 1) % 3))).unwrap_or(today);
        let back = |day: NaiveDate, months| day.checked_sub_months(Months::new(months)).unwrap_or(day);
        match span {
            Span::Year => Self { first: back(today, 12).succ_opt().unwrap_or(today), last: today },
            Span::Quarter => Self { first: quarter, last: today },
            Span::Before => Self { first: back(quarter, 3), last: quarter.pred_opt().unwrap_or(quarter) },
        }
    }

    /// Its moments in the practice's zone: from the first of the first day, up to but without the first of the day after the last.
    pub(super) fn moments(self, when: When) -> (DateTime<Utc>, DateTime<Utc>) {
        (when.begin_of(self.first), when.begin_of(self.last.succ_opt().unwrap_or(self.last)))
    }

    pub(super) fn words(self, when: When) -> String {
        format!("{} to {}", when.of_day(self.first), when.of_day(self.last))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(year: i32, month: u32, day: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(year, month, day).unwrap()
    }

    #[test]
    fn quarters_are_those_of_the_calendar_and_a_year_has_a_year_of_days() {
        let of = |span, today| {
            let Period { first, last } = Period::of(span, today);
            (first, last)
        };
        assert_eq!(of(Span::Quarter, day(2026, 11, 29)), (day(2026, 10, 1), day(2026, 11, 29)));
        assert_eq!(of(Span::Before, day(2026, 11, 29)), (day(2026, 7, 1), day(2026, 9, 30)));
        assert_eq!(of(Span::Before, day(2026, 1, 1)), (day(2025, 10, 1), day(2025, 12, 31)));
        assert_eq!(of(Span::Year, day(2026, 11, 29)), (day(2025, 11, 30), day(2026, 11, 29)));
        assert_eq!(of(Span::Year, day(2028, 2, 29)), (day(2027, 3, 1), day(2028, 2, 29)));
        assert_eq!(Span::read("anything"), Span::Year);
    }
}
