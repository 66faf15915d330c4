//! A clock that the test moves, and real randomness.

use std::sync::Mutex;

use chrono::{DateTime, Duration, TimeZone, Utc};
use leeward::base::clock::Surroundings;

/// Stands still at Tuesday 2026-03-03 09:00 UTC until it is moved.
pub struct TestWorld {
    now: Mutex<DateTime<Utc>>,
}

impl Default for TestWorld {
    fn default() -> Self {
        Self { now: Mutex::new(Utc.with_ymd_and_hms(2026, 3, 3, 9, 0, 0).single().expect("a valid date")) }
    }
}

impl TestWorld {
    /// Moves the clock on (or back, by a negative length).
    pub fn advance(&self, by: Duration) {
        *self.now.lock().expect("no test holds the clock") += by;
    }
}

impl Surroundings for TestWorld {
    fn now(&self) -> DateTime<Utc> {
        *self.now.lock().expect("no test holds the clock")
    }

    fn fill(&self, bytes: &mut [u8]) {
        getrandom::fill(bytes).expect("the system gives randomness");
    }
}
