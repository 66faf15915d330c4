//! The seeder's clock: set to the time of whatever is being written. Its randomness is the machine's,
//! for keys and nonces must never come from a fixed seed.

use std::sync::Mutex;

use chrono::{DateTime, Utc};
use leeward::base::clock::{Machine, Surroundings};

/// A clock that the seeder sets.
pub struct SeedWorld(Mutex<DateTime<Utc>>);

impl SeedWorld {
    /// Set to the machine's present.
    pub fn new() -> Self {
        Self(Mutex::new(Machine.now()))
    }

    /// Sets the clock.
    pub fn set(&self, now: DateTime<Utc>) {
        *self.lock() = now;
    }

    fn lock(&self) -> std::sync::MutexGuard<'_, DateTime<Utc>> {
        // A panic while the clock was held leaves a whole time behind.
        self.0.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }
}

impl Surroundings for SeedWorld {
    fn now(&self) -> DateTime<Utc> {
        *self.lock()
    }

    fn fill(&self, bytes: &mut [u8]) {
        Machine.fill(bytes);
    }
}
