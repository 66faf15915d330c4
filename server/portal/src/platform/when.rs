//! Times as people read them: in the zone of the practice, or of a session in the zone of its time.

use chrono::{DateTime, NaiveDate, Utc};
use chrono_tz::Tz;

use super::queries;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// Writes times in one zone.
#[derive(Clone, Copy, Debug)]
pub struct When(Tz, Known);

/// Whether the zone is the one that was asked for.
#[derive(Clone, Copy, Debug)]
enum Known {
    Yes,
    /// There is none of that name; then it is UTC, and says so.
    No,
}

impl When {
    /// The zone of that IANA name. One row whose zone this version does not know takes no page away: its
    /// times are then in UTC, and [`When::zone`] says why.
    #[must_use]
    pub fn in_zone(name: &str) -> Self {
        name.parse().map_or(Self(Tz::UTC, Known::No), |zone| Self(zone, Known::Yes))
    }

    /// The zone of the practice's days.
    ///
    /// # Errors
    /// [`Error::Database`].
    pub async fn in_practice(tx: &mut Tx) -> Result<Self, Error> {
        Ok(Self::in_zone(&queries::zone(tx).await?))
    }

    /// Whether both are of the same zone, and that is known.
    #[must_use]
    pub fn is(self, other: Self) -> bool {
        self.0 == other.0 && matches!((self.1, other.1), (Known::Yes, Known::Yes))
    }

    /// The zone itself.
    #[must_use]
    pub const fn tz(self) -> Tz {
        self.0
    }

    /// The day on which it is.
    #[must_use]
    pub fn date(self, at: &DateTime<Utc>) -> NaiveDate {
        at.with_timezone(&self.0).date_naive()
    }

    /// Such as "Mon 2 Nov 2026, 14:07 GMT".
    #[must_use]
    pub fn moment(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%a %-d %b %Y, %H:%M %Z").to_string()
    }

    /// Such as "Mon 2 Nov 2026".
    #[must_use]
    pub fn weekday(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%a %-d %b %Y").to_string()
    }

    /// Such as "Tuesday 3 March 2026".
    #[must_use]
    pub fn day(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%A %-d %B %Y").to_string()
    }

    /// Such as "3 Mar 2026".
    #[must_use]
    pub fn short_day(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%-d %b %Y").to_string()
    }

    /// Such as "3 Mar 26".
    #[must_use]
    pub fn brief_day(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%-d %b %y").to_string()
    }

    /// Such as "09:05".
    #[must_use]
    pub fn time(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%H:%M").to_string()
    }

    /// Such as "09:05:30".
    #[must_use]
    pub fn second(self, at: &DateTime<Utc>) -> String {
        at.with_timezone(&self.0).format("%H:%M:%S").to_string()
    }

    /// The zone with its distance from UTC on that day, such as "Europe/Dublin, UTC+01:00".
    #[must_use]
    pub fn zone(self, at: &DateTime<Utc>) -> String {
        match self.1 {
            Known::Yes => format!("{}, UTC{}", self.0.name(), at.with_timezone(&self.0).format("%:z")),
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
    use chrono::TimeZone;

    // Irish summer time began on 29 March 2026 at 01:00 UTC (IANA time zone database).
    #[test]
    fn a_time_is_written_in_its_zone_on_its_day() {
        let dublin = When::in_zone("Europe/Dublin");
        let winter = Utc.with_ymd_and_hms(2026, 3, 28, 23, 30, 5).unwrap();
        let summer = Utc.with_ymd_and_hms(2026, 3, 29, 23, 30, 5).unwrap();
        assert_eq!((dublin.day(&winter).as_str(), dublin.time(&winter).as_str()), ("Saturday 28 March 2026", "23:30"));
        assert_eq!((dublin.day(&summer).as_str(), dublin.second(&summer).as_str()), ("Monday 30 March 2026", "00:30:05"));
        assert_eq!(dublin.zone(&winter), "Europe/Dublin, UTC+00:00");
        assert_eq!(dublin.zone(&summer), "Europe/Dublin, UTC+01:00");
        let unknown = When::in_zone("Nowhere/Else");
        assert_eq!(
            (unknown.time(&summer).as_str(), unknown.zone(&summer).as_str()),
            ("23:30", "UTC, for its own time zone cannot be read")
        );
    }
}
