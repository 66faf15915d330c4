//! What a course of ratings is said to do. "Fell", "rose" and "stayed" are said only where they are
//! true of every step; otherwise the two ends are named, and what lies beyond them.
//!
//! The desk says the same by `web/src/desk/finding.ts`; both are bound to `tests/reference/ratings.json`.

/// The finding without a full stop. `values` is all that was asked, in order.
pub(super) fn finding(name: &str, values: &[u8]) -> String {
    let (first, last) = match values {
        [] => return format!("{name} was not asked"),
        [only] => return format!("{name} was asked once: {only}"),
        [first, .., last] => (*first, *last),
    };
    let every = |fits: fn(u8, u8) -> bool| values.windows(2).all(|pair| fits(pair[0], pair[1]));
    if every(|a, b| a == b) {
        format!("{name} stayed at {first}")
    } else if every(|a, b| a >= b) {
        format!("{name} fell from {first} to {last}")
    } else if every(|a, b| a <= b) {
        format!("{name} rose from {first} to {last}")
    } else {
        format!("{name} {}, {} in between", ends(first, last), between(values, first, last))
    }
}

fn ends(first: u8, last: u8) -> String {
    if first == last { format!("began and ended at {first}") } else { format!("went from {first} to {last}") }
}

fn between(values: &[u8], first: u8, last: u8) -> String {
    let lowest = values.iter().min().filter(|&&value| value < first.min(last)).map(|value| format!("lowest {value}"));
    let highest = values.iter().max().filter(|&&value| value > first.max(last)).map(|value| format!("highest {value}"));
    let beyond: Vec<String> = [lowest, highest].into_iter().flatten().collect();
    if beyond.is_empty() { "up and down".into() } else { beyond.join(" and ") }
}

#[cfg(test)]
mod tests {
    use serde::Deserialize;

    use super::finding;

    #[derive(Deserialize)]
    struct Vectors {
        courses: Vec<Course>,
    }

    #[derive(Deserialize)]
    struct Course {
        values: Vec<Option<u8>>,
        says: String,
    }

    #[test]
    fn what_a_course_is_said_to_do_agrees_with_its_sorted_values() {
        let vectors: Vectors = serde_json::from_str(include_str!("../../../../tests/reference/ratings.json")).unwrap();
        assert!(vectors.courses.len() > 20);
        for Course { values, says } in vectors.courses {
            let asked: Vec<u8> = values.iter().copied().flatten().collect();
            assert_eq!(finding("SUD", &asked), says, "{values:?}");
        }
    }
}
