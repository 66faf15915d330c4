//! Days and times as people read them: in the zone of the practice, or of a session in the zone of its time, and written
//! the practice's way. No other place of the pages writes any.

use chrono::format::{DelayedFormat, StrftimeItems};
use chrono::{DateTime, NaiveDate, NaiveTime, TimeZone, Utc};
use chrono_tz::Tz;
use strum::{EnumString, IntoStaticStr, VariantArray};

use super::queries;
use crate::base::named::named;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// What stands first in a date.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum DayOrder {
    /// 2 Nov 2026.
    #[default]
    DayFirst,
    /// Nov 2, 2026.
    MonthFirst,
    /// 2026-11-02, as ISO 8601 has it.
    YearFirst,
}

named!(DayOrder);

/// How many hours a clock counts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
pub enum Clock {
    /// 2:07 pm.
    #[strum(serialize = "12")]
    Twelve,
    /// 14:07.
    #[default]
    #[strum(serialize = "24")]
    TwentyFour,
}

named!(Clock);

impl Clock {
    /// How many.
    #[must_use]
    pub const fn hours(self) -> i16 {
        match self {
            Self::Twelve => 12,
            Self::TwentyFour => 24,
        }
    }
}

/// How days and times are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Style {
    /// Of a date.
    pub order: DayOrder,
    /// Of a time.
    pub clock: Clock,
}

impl Style {
    /// As the columns of `practice` say it.
    ///
    /// # Errors
    /// [`Error::Inconsistent`] when they say nothing that is known.
    pub(crate) fn read(order: &str, clock: i16) -> Result<Self, Error> {
        Ok(Self {
            order: DayOrder::parse(order).ok_or(Error::Inconsistent("practice.day_order"))?,
            clock: Clock::ALL.iter().copied().find(|one| one.hours() == clock).ok_or(Error::Inconsistent("practice.clock"))?,
        })
    }
}

/// Writes days and times in one zone.
#[derive(Clone, Copy, Debug)]
pub struct When {
    zone: Tz,
    known: Known,
    style: Style,
}

/// Whether the zone is the one that was asked for.
#[derive(Clone, Copy, Debug)]
enum Known {
    Yes,
    /// There is none of that name; then it is UTC, and says so.
    No,
}

impl When {
    /// In the zone of that IANA name. One row whose zone this version does not know takes no page away: its
    /// times are then in UTC, and [`When::zone`] says why.
    #[must_use]
    pub fn new(zone: &str, style: Style) -> Self {
        let (zone, known) = zone.parse().map_or((Tz::UTC, Known::No), |zone| (zone, Known::Yes));
        Self { zone, known, style }
    }

    /// In the zone of the practice's days, written its way.
    ///
    /// # Errors
    /// [`Error::Database`]; [`Error::Inconsistent`] when the practice's row says nothing that is known.
    pub async fn in_practice(tx: &mut Tx) -> Result<Self, Error> {
        queries::when(tx).await
    }

    /// In another zone, written the same way.
    #[must_use]
    pub fn in_zone(self, name: &str) -> Self {
        Self::new(name, self.style)
    }

    /// How many hours its clock has: 12 or 24.
    #[must_use]
    pub const fn hours(self) -> i16 {
        self.style.clock.hours()
    }

    /// Whether both are of the same zone, and that is known.
    #[must_use]
    pub fn is(self, other: Self) -> bool {
        self.zone == other.zone && matches!((self.known, other.known), (Known::Yes, Known::Yes))
    }

    /// The day on which it is.
    #[must_use]
    pub fn date(self, at: &DateTime<Utc>) -> NaiveDate {
        at.with_timezone(&self.zone).date_naive()
    }

    fn dated<'a>(self, date: NaiveDate, [day_first, month_first, year_first]: [&'a str; 3]) -> DelayedFormat<StrftimeItems<'a>> {
        date.format(match self.style.order {
            DayOrder::DayFirst => day_first,
            DayOrder::MonthFirst => month_first,
            DayOrder::YearFirst => year_first,
        })
    }

    /// Such as "Mon 2 Nov 2026, 14:07".
    #[must_use]
    pub fn moment(self, at: &DateTime<Utc>) -> String {
        format!("{}, {}", self.weekday(at), self.time(at))
    }

    /// Such as "Mon 2 Nov 2026".
    #[must_use]
    pub fn weekday(self, at: &DateTime<Utc>) -> String {
        self.dated(self.date(at), ["%a %-d %b %Y", "%a %b %-d, %Y", "%a %Y-%m-%d"]).to_string()
    }

    /// Such as "Tuesday 3 March 2026".
    #[must_use]
    pub fn day(self, at: &DateTime<Utc>) -> String {
        self.of_day(self.date(at))
    }

    /// The same of a day that is kept without a time.
    #[must_use]
    pub fn of_day(self, date: NaiveDate) -> String {
        self.dated(date, ["%A %-d %B %Y", "%A %B %-d, %Y", "%A %Y-%m-%d"]).to_string()
    }

    /// Such as "3 Mar 26", where there is little room.
    #[must_use]
    pub fn brief_day(self, at: &DateTime<Utc>) -> String {
        self.brief(self.date(at))
    }

    /// The same of a day that is kept without a time.
    #[must_use]
    pub fn brief(self, date: NaiveDate) -> String {
        self.dated(date, ["%-d %b %y", "%b %-d, %Y", "%Y-%m-%d"]).to_string()
    }

    /// Such as "3 Mar", where the year is known.
    #[must_use]
    pub fn day_of_year(self, date: NaiveDate) -> String {
        self.dated(date, ["%-d %b", "%b %-d", "%m-%d"]).to_string()
    }

    fn timed(self, at: &DateTime<Utc>, twelve: &str, twenty_four: &str) -> String {
        let format = match self.style.clock {
            Clock::Twelve => twelve,
            Clock::TwentyFour => twenty_four,
        };
        at.with_timezone(&self.zone).format(format).to_string()
    }

    /// Such as "09:05".
    #[must_use]
    pub fn time(self, at: &DateTime<Utc>) -> String {
        self.timed(at, "%-I:%M %P", "%H:%M")
    }

    /// The time of day as [`When::time`] writes it, or as the other clock does, on that day. Of a time that comes twice when clocks are set
    /// back it is the first; `None` for one that does not come, or for what is no time.
    #[must_use]
    pub fn at_time(self, day: NaiveDate, typed: &str) -> Option<DateTime<Utc>> {
        let time = ["%H:%M", "%I:%M %p"].iter().find_map(|format| NaiveTime::parse_from_str(typed, format).ok())?;
        self.zone.from_local_datetime(&day.and_time(time)).earliest().map(|at| at.to_utc())
    }

    /// The first moment of `day`: midnight, or, where clocks are set forward over it, the moment after that.
    #[must_use]
    pub fn begin_of(self, day: NaiveDate) -> DateTime<Utc> {
        let quarters = (0..96).filter_map(|quarter| NaiveTime::from_num_seconds_from_midnight_opt(quarter * 900, 0));
        let first = quarters.into_iter().find_map(|time| self.zone.from_local_datetime(&day.and_time(time)).earliest());
        // No day of any zone is without a quarter of an hour that comes, but for days that a country left out whole.
        first.map_or_else(|| day.and_time(NaiveTime::MIN).and_utc(), |at| at.to_utc())
    }

    /// Such as "09:05:30".
    #[must_use]
    pub fn second(self, at: &DateTime<Utc>) -> String {
        self.timed(at, "%-I:%M:%S %P", "%H:%M:%S")
    }

    /// The zone with its distance from UTC on that day, such as "Europe/Dublin, UTC+01:00".
    #[must_use]
    pub fn zone(self, at: &DateTime<Utc>) -> String {
        match self.known {
            Known::Yes => format!("{}, UTC{}", self.zone.name(), at.with_timezone(&self.zone).format("%:z")),
            Known::No => "UTC, for its own time zone cannot be read".to_owned(),
        }
    }

    /// For the `datetime` of a `<time>`.
    #[must_use]
    pub fn machine(self, at: &DateTime<Utc>) -> String {
        at.to_rfc3339_opts(chrono::SecondsFormat::Secs, true)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // Irish summer time began on 29 March 2026 at 01:00 UTC (IANA time zone database).
    #[test]
    fn a_time_is_written_in_its_zone_on_its_day() {
        let dublin = When::new("Europe/Dublin", Style::default());
        let winter = Utc.with_ymd_and_hms(2026, 3, 28, 23, 30, 5).unwrap();
        let summer = Utc.with_ymd_and_hms(2026, 3, 29, 23, 30, 5).unwrap();
        assert_eq!((dublin.day(&winter).as_str(), dublin.time(&winter).as_str()), ("Saturday 28 March 2026", "23:30"));
        assert_eq!((dublin.day(&summer).as_str(), dublin.second(&summer).as_str()), ("Monday 30 March 2026", "00:30:05"));
        assert_eq!(dublin.zone(&winter), "Europe/Dublin, UTC+00:00");
        assert_eq!(dublin.zone(&summer), "Europe/Dublin, UTC+01:00");
        let unknown = dublin.in_zone("Nowhere/Else");
        assert_eq!(
            (unknown.time(&summer).as_str(), unknown.zone(&summer).as_str()),
            ("23:30", "UTC, for its own time zone cannot be read")
        );
    }

    // Irish summer time 2026: 01:00 to 02:00 does not come on 29 March and comes twice on 25 October (IANA time zone database).
    #[test]
    fn a_typed_time_is_of_its_day_in_its_zone() {
        let dublin = When::new("Europe/Dublin", Style::default());
        let at =
            |month, day, typed| dublin.at_time(NaiveDate::from_ymd_opt(2026, month, day).unwrap(), typed).map(|at| dublin.machine(&at));
        assert_eq!(at(7, 1, "14:05").as_deref(), Some("2026-07-01T13:05:00Z"));
        assert_eq!(at(7, 1, "2:05 pm").as_deref(), Some("2026-07-01T13:05:00Z"));
        assert_eq!(at(3, 29, "01:30"), None);
        assert_eq!(at(10, 25, "01:30").as_deref(), Some("2026-10-25T00:30:00Z"), "the first of the two");
        for typed in ["", "noon", "25:00", "14.05"] {
            assert_eq!(at(7, 1, typed), None, "{typed}");
        }
    }

    // Chile set its clocks forward at midnight from 5 to 6 September 2026 (IANA time zone database, by the rule of 2022, from memory).
    #[test]
    fn a_day_begins_with_its_first_moment_that_comes() {
        let begin = |zone, month, day| {
            let when = When::new(zone, Style::default());
            when.machine(&when.begin_of(NaiveDate::from_ymd_opt(2026, month, day).unwrap()))
        };
        assert_eq!(begin("Europe/Dublin", 7, 1), "2026-06-30T23:00:00Z");
        assert_eq!(begin("America/Santiago", 9, 6), "2026-09-06T04:00:00Z", "there is no midnight that day");
        assert_eq!(begin("America/Santiago", 9, 7), "2026-09-07T03:00:00Z");
    }

    // The order of a date and the hours of a clock as the Unicode CLDR has them for en-GB, en-US and en-SE or ISO 8601 (from memory);
    // noon and midnight are 12 pm and 12 am.
    #[test]
    fn a_practice_writes_days_and_times_its_own_way() {
        let written = |order, clock, hour| {
            let when = When::new("UTC", Style { order, clock });
            let at = Utc.with_ymd_and_hms(2026, 11, 2, hour, 7, 9).unwrap();
            [when.moment(&at), when.day(&at), when.brief_day(&at), when.day_of_year(when.date(&at)), when.second(&at)].join(" | ")
        };
        assert_eq!(
            written(DayOrder::DayFirst, Clock::TwentyFour, 14),
            "Mon 2 Nov 2026, 14:07 | Monday 2 November 2026 | 2 Nov 26 | 2 Nov | 14:07:09"
        );
        assert_eq!(
            written(DayOrder::MonthFirst, Clock::Twelve, 14),
            "Mon Nov 2, 2026, 2:07 pm | Monday November 2, 2026 | Nov 2, 2026 | Nov 2 | 2:07:09 pm"
        );
        assert_eq!(
            written(DayOrder::YearFirst, Clock::TwentyFour, 9),
            "Mon 2026-11-02, 09:07 | Monday 2026-11-02 | 2026-11-02 | 11-02 | 09:07:09"
        );
        assert!(written(DayOrder::DayFirst, Clock::Twelve, 0).starts_with("Mon 2 Nov 2026, 12:07 am"));
        assert!(written(DayOrder::DayFirst, Clock::Twelve, 12).starts_with("Mon 2 Nov 2026, 12:07 pm"));
    }

    #[test]
    fn what_the_practice_says_is_known_or_a_fault() {
        assert_eq!(Style::read("day_first", 24).unwrap(), Style::default());
        assert!(Style::read("month_first", 12).is_ok() && Style::read("sideways", 24).is_err() && Style::read("day_first", 10).is_err());
    }
}
