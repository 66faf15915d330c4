//! The portal's clock and source of randomness, passed in so that tests and the demo can set them.

use std::sync::Arc;

use chrono::{DateTime, Utc};

/// Tells the time of day and fills bytes with randomness.
pub trait Surroundings: Send + Sync {
    /// The present moment.
    fn now(&self) -> DateTime<Utc>;
    /// Fills `bytes` with numbers nobody can guess (in the real one).
    fn fill(&self, bytes: &mut [u8]);
}

/// The clock and randomness that the portal was built with.
pub type World = Arc<dyn Surroundings>;

/// The machine's own clock and random source.
pub struct Machine;

impl Surroundings for Machine {
    #[expect(clippy::disallowed_methods, reason = "the one place that reads the machine's clock")]
    fn now(&self) -> DateTime<Utc> {
        Utc::now()
    }

    fn fill(&self, bytes: &mut [u8]) {
        if let Err(fault) = getrandom::fill(bytes) {
            // Going on with predictable tokens would be worse than stopping.
            tracing::error!(%fault, "the system's random source failed");
            std::process::abort();
        }
    }
}
