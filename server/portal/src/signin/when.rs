//! Moments as the practice reads them.

use chrono::{DateTime, Utc};
use chrono_tz::Tz;

/// Such as "Mon 2 Nov 2026, 14:07 GMT".
pub(super) fn moment(at: DateTime<Utc>, zone: Tz) -> String {
    at.with_timezone(&zone).format("%a %-d %b %Y, %H:%M %Z").to_string()
}

/// Such as "Mon 2 Nov 2026".
pub(super) fn day(at: DateTime<Utc>, zone: Tz) -> String {
    at.with_timezone(&zone).format("%a %-d %b %Y").to_string()
}
