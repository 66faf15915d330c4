//! What one page may say about the call: a budget of its own beside the room's, taken before anything is looked at.

use crate::wire::{FromCaller, Signal, Unable};

/// What a page may say at once, and how much more in a second. A browser says some forty things for one connection.
const SAID: (f64, f64) = (100.0, 20.0);
/// The same of offers: one begins a call, and each change of a device or of the network takes one more.
const OFFERS: (f64, f64) = (10.0, 0.2);
/// The same of new passwords for the relay: each holds ten minutes, and another network asks for one.
const RENEWALS: (f64, f64) = (3.0, 1.0 / 60.0);
/// So much more than its budget within a minute is no page's mistake. A page that only tries again and again stays far below.
const FLOOD: u32 = 2_000;
const MINUTE: f64 = 60_000.0;
/// What is not passed on is said again after this time, ms.
const SAID_AGAIN: f64 = 10_000.0;

/// Tokens that come back with time.
#[derive(Clone, Copy, Debug)]
struct Budget {
    most: f64,
    per_second: f64,
    left: f64,
    at: f64,
}

impl Budget {
    fn full((most, per_second): (f64, f64), now: f64) -> Self {
        Self { most, per_second, left: most, at: now }
    }

    fn take(&mut self, now: f64) -> bool {
        self.left = (self.left + (now - self.at) / 1_000.0 * self.per_second).min(self.most);
        self.at = now;
        let is_there = self.left >= 1.0;
        if is_there {
            self.left -= 1.0;
        }
        is_there
    }
}

/// What one socket has left.
#[derive(Clone, Copy, Debug)]
pub(super) struct Caller {
    said: Budget,
    offers: Budget,
    renewals: Budget,
    /// Refused since then.
    refused: u32,
    since: f64,
    /// What it was told of what is not passed on, and when.
    told: Option<(Unable, f64)>,
}

impl Caller {
    pub(super) fn new(now: f64) -> Self {
        let [said, offers, renewals] = [SAID, OFFERS, RENEWALS].map(|budget| Budget::full(budget, now));
        Self { said, offers, renewals, refused: 0, since: now, told: None }
    }

    /// Whether this is looked at.
    ///
    /// # Errors
    /// The words for the close when it floods the line.
    pub(super) fn may(&mut self, said: &FromCaller, now: f64) -> Result<bool, &'static str> {
        let may = self.said.take(now)
            && match said {
                FromCaller::Renew { .. } => self.renewals.take(now),
                FromCaller::Signal { signal: Signal::Offer { .. } | Signal::Again, .. } => self.offers.take(now),
                FromCaller::Signal { .. } => true,
            };
        if may {
            return Ok(true);
        }
        if now - self.since >= MINUTE {
            (self.since, self.refused) = (now, 0);
        }
        self.refused += 1;
        if self.refused > FLOOD { Err("too many signals") } else { Ok(false) }
    }

    /// Whether it is to be told of this now: at once, and again after a while.
    pub(super) fn tells(&mut self, why: Unable, now: f64) -> bool {
        let tells = self.told.is_none_or(|(told, at)| told != why || now - at >= SAID_AGAIN);
        if tells {
            self.told = Some((why, now));
        }
        tells
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn who_tries_again_for_hours_is_never_shut_out_and_who_pours_is() {
        let mut caller = Caller::new(0.0);
        let again = FromCaller::Signal { call: 1, signal: Signal::Again };
        let taken = (0..4 * 3_600).filter(|second| caller.may(&again, f64::from(*second) * 1_000.0) == Ok(true)).count();
        assert!((2_800..3_000).contains(&taken), "{taken}: ten, and one in five seconds");
        let mut caller = Caller::new(0.0);
        assert!((0..3_000).any(|n| caller.may(&again, f64::from(n)) == Err("too many signals")));
    }

    #[test]
    fn new_passwords_are_few() {
        let mut caller = Caller::new(0.0);
        let minted = (0..600).filter(|second| caller.may(&FromCaller::Renew { call: 1 }, f64::from(*second) * 1_000.0) == Ok(true)).count();
        assert_eq!(minted, 12, "three, and one a minute for nine minutes and a half");
    }

    #[test]
    fn what_is_in_the_way_is_said_again_after_a_while() {
        let mut caller = Caller::new(0.0);
        let told: Vec<bool> = [0.0, 1.0, 9_999.0, 10_000.0].map(|now| caller.tells(Unable::TooMuch, now)).into();
        assert_eq!(told, [true, false, false, true]);
        assert!(caller.tells(Unable::Unfit, 10_001.0));
    }
}
