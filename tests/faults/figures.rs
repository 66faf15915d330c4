//! Figures that have to be reached: asserted in the short form, printed with what is required in the full one.

use std::time::Duration;

/// Whether everything is done at its full size.
pub fn is_full() -> bool {
    std::env::var("LEEWARD_FAULTS").is_ok_and(|size| size == "full")
}

/// `full` or `short`, by the form that runs.
pub fn size<T>(full: T, short: T) -> T {
    if is_full() { full } else { short }
}

/// One figure: `reached`, or the test fails after the line is printed.
pub fn figure(what: &str, reached: bool, found: &str, required: &str) {
    if is_full() {
        println!("{} {what}: {found} (required: {required})", if reached { "PASS" } else { "SHORT" });
    }
    assert!(reached, "{what}: {found} (required: {required})");
}

pub fn seconds(time: Duration) -> String {
    format!("{:.2} s", time.as_secs_f64())
}
