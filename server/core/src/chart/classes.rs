//! What became of those who ended, as one strip: a stretch a class, as wide as it is many, each with its count and a shading of its own.

use super::draw::text;
use super::layout::{WIDTH, tenth, text_width};
use super::{Anchor, Element};

const HEIGHT: f64 = 56.0;
const FOOT: f64 = 34.0;

/// How each class is shaded, in the order of the classes: for the stretch, and for what names it beside.
pub const SHADES: [&str; 4] = ["share full", "share most", "share some", "share none"];
/// How those are shaded of whom nobody knows.
pub const MISSING: &str = "share missing";

/// A strip.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassStrip {
    /// User units.
    pub width: f64,
    /// User units.
    pub height: f64,
    /// From the back to the front.
    pub elements: Vec<Element>,
}

/// `counts`: in the order of the classes; `missing`: of whom nobody knows, at the end of the strip, so that those of whom something is known do not
/// look like all. What stands beside it in words says all of it.
#[must_use]
pub fn class_strip(counts: [u64; 4], missing: u64) -> ClassStrip {
    let all: u64 = counts.iter().sum::<u64>() + missing;
    let mut elements = vec![];
    let mut from = 0.0;
    for (count, class) in counts.into_iter().zip(SHADES).chain([(missing, MISSING)]) {
        if count == 0 {
            continue;
        }
        let wide = WIDTH * count as f64 / all as f64;
        let (x, width) = (tenth(from), tenth(wide));
        elements.push(Element::Path { d: format!("M{x} 0h{width}v{FOOT}h-{width}Z"), class });
        let figure = count.to_string();
        if text_width(&figure) + 4.0 <= wide {
            elements.push(text(from + wide / 2.0, FOOT + 16.0, Anchor::Middle, "tick", figure));
        }
        from += wide;
    }
    ClassStrip { width: WIDTH, height: HEIGHT, elements }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_strip_is_as_wide_as_all_of_them_and_leaves_out_what_is_not_there() {
        let drawn = class_strip([10, 0, 5, 1], 0);
        let widths: Vec<f64> = drawn
            .elements
            .iter()
            .filter_map(|one| match one {
                Element::Path { d, .. } => d.split('h').nth(1)?.split('v').next()?.parse().ok(),
                _ => None,
            })
            .collect();
        assert_eq!(widths, [400.0, 200.0, 40.0]);
        assert!(class_strip([0; 4], 0).elements.is_empty());
        let known = class_strip([1, 0, 0, 0], 3);
        assert!(matches!(&known.elements[0], Element::Path { d, .. } if d.contains("h160v")), "a quarter of all: {:?}", known.elements);
    }
}
