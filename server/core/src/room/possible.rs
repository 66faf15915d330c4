//! What a screen can have shown, as far as that can be told without knowing the session.

use crate::wire::{ClockError, Evidence, Fact, Showing};

/// Facts in one message.
const FACTS: usize = 20;
/// Ceilings far above anything real; what lies above is a broken or hostile page.
const MOST_CYCLES: f64 = 10_000.0;
const MOST_HZ: f64 = 10.0;
const MOST_DEGREES: f64 = 180.0;
const MOST_FRAMES: u32 = 2_000;
const MOST_SEQ: u32 = 1_000_000;
const MOST_MS: f64 = 1e12;

/// Checks what a page hands in of what it has shown. Whose sets they are is for whoever knows the session.
///
/// # Errors
/// More than 20 facts at once, or one that no screen can have shown, in words for the log.
pub fn check_evidence(facts: &[Evidence]) -> Result<(), &'static str> {
    if facts.len() > FACTS {
        return Err("too much evidence in one message");
    }
    if facts.iter().all(is_possible) { Ok(()) } else { Err("impossible evidence") }
}

pub(super) fn check_showing(showing: &Showing) -> Result<(), &'static str> {
    let possible = is_time(showing.at)
        && (0.0..=MOST_CYCLES).contains(&showing.phase)
        && (0.0..=MOST_HZ).contains(&showing.rate)
        && (0.0..=MOST_DEGREES).contains(&showing.width)
        && showing.clock.is_none_or(|ClockError { spread, bound }| [spread, bound].iter().all(|ms| (0.0..=MOST_MS).contains(ms)));
    if possible { Ok(()) } else { Err("an impossible showing") }
}

fn is_time(at: f64) -> bool {
    (-MOST_MS..=MOST_MS).contains(&at)
}

fn is_possible(evidence: &Evidence) -> bool {
    let cycles = |phase: &f64| (0.0..=MOST_CYCLES).contains(phase);
    let fact = match &evidence.fact {
        Fact::Shown { width } => (0.0..=MOST_DEGREES).contains(width),
        Fact::Second { phase, frames, longest_gap } => cycles(phase) && *frames <= MOST_FRAMES && (0.0..=MOST_MS).contains(longest_gap),
        Fact::Rested { phase, .. } => cycles(phase),
    };
    fact && is_time(evidence.at) && evidence.seq <= MOST_SEQ
}

#[cfg(test)]
mod tests {
    use super::*;

    fn second(phase: f64) -> Evidence {
        Evidence { set: "set-1".into(), seq: 1, at: 5.0, fact: Fact::Second { phase, frames: 60, longest_gap: 17.0 } }
    }

    #[test]
    fn only_what_a_screen_can_show_is_taken() {
        assert!(check_evidence(&[second(1.0)]).is_ok());
        assert!(check_evidence(&vec![second(1.0); FACTS]).is_ok());
        assert!(check_evidence(&vec![second(1.0); FACTS + 1]).is_err());
        for phase in [-1.0, 1e9, f64::NAN] {
            assert!(check_evidence(&[second(phase)]).is_err(), "{phase}");
        }
    }
}
