//! Where things go: scales, columns, and labels that do not overlap.

/// Width of every chart, user units.
pub(super) const WIDTH: f64 = 640.0;
/// Left end of the panels; the axis labels stand before it.
pub(super) const LEFT: f64 = 44.0;
/// Right end of the panels; names of lines stand after it.
pub(super) const RIGHT: f64 = 596.0;
/// From the panel's ends to the first and last column.
const INSET: f64 = 20.0;
/// Columns stand no farther apart, so that two of them do not pretend to be a long course.
const WIDEST_STEP: f64 = 110.0;
/// Mean width of a character at 12 units, on the safe side.
const CHARACTER: f64 = 6.6;
/// Kept free between two labels.
const GAP: f64 = 6.0;

/// To a tenth, so that files stay small and stable.
pub(super) fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

/// Estimated width of a text.
pub(super) fn text_width(text: &str) -> f64 {
    text.chars().count() as f64 * CHARACTER
}

/// A linear scale.
#[derive(Clone, Copy, Debug)]
pub(super) struct Linear {
    /// The values of the two ends.
    pub domain: (f64, f64),
    /// Where they are drawn.
    pub range: (f64, f64),
}

impl Linear {
    pub fn at(&self, value: f64) -> f64 {
        let share = (value - self.domain.0) / (self.domain.1 - self.domain.0);
        tenth(self.range.0 + share * (self.range.1 - self.range.0))
    }
}

/// Columns at even distances.
#[derive(Clone, Copy, Debug)]
pub(super) struct Columns {
    step: f64,
}

impl Columns {
    pub fn new(count: usize) -> Self {
        let spaces = count.saturating_sub(1).max(1) as f64;
        Columns { step: ((RIGHT - LEFT - 2.0 * INSET) / spaces).min(WIDEST_STEP) }
    }

    pub fn at(&self, index: usize) -> f64 {
        tenth(LEFT + INSET + self.step * index as f64)
    }

    /// Whether a text as wide as this fits over every column.
    pub fn fits(&self, text: &str) -> bool {
        text_width(text) <= self.step
    }

    /// Which labels to write: the first, the last, and every so many that fit between; numbers
    /// that are round, where they are numbers.
    pub fn labelled(&self, labels: &[&str]) -> Vec<usize> {
        let inner = labels.get(1..labels.len().saturating_sub(1)).unwrap_or_default();
        let widest = inner.iter().map(|label| text_width(label)).fold(0.0, f64::max);
        let fits = |stride: &usize| *stride as f64 * self.step >= widest + GAP;
        let stride = [1, 2, 5, 10, 20].into_iter().find(fits).unwrap_or(50);
        let last = labels.len().saturating_sub(1);
        let mut chosen: Vec<usize> = Vec::new();
        let round = |i: usize| labels[i].parse().unwrap_or(i) % stride == 0;
        for index in (0..labels.len()).filter(|&i| i == 0 || i == last || round(i)) {
            if index == last {
                // The ends matter most; what is in their way gives way.
                while chosen.len() > 1 && !self.apart(labels, chosen[chosen.len() - 1], index) {
                    chosen.pop();
                }
            }
            if chosen.last().is_none_or(|&before| self.apart(labels, before, index)) {
                chosen.push(index);
            }
        }
        chosen
    }

    fn apart(&self, labels: &[&str], before: usize, after: usize) -> bool {
        let half = |index: usize| text_width(labels[index]) / 2.0;
        self.at(after) - self.at(before) >= half(before) + half(after) + GAP
    }
}

/// A text centred on `x` where it may be, within the panel.
pub(super) fn centred(x: f64, text: &str) -> f64 {
    let half = text_width(text) / 2.0;
    tenth(x.clamp(LEFT + half, (RIGHT - half).max(LEFT + half)))
}

/// Stacks texts centred on their x into as few rows as needed; the row of each, 0 the lowest.
pub(super) fn rows(texts: &[(f64, &str)]) -> Vec<usize> {
    let mut ends: Vec<f64> = Vec::new();
    texts
        .iter()
        .map(|(x, text)| {
            let half = text_width(text) / 2.0;
            let (from, to) = (x - half, x + half + GAP);
            let free = ends.iter().position(|&end| end <= from).unwrap_or(ends.len());
            if free == ends.len() {
                ends.push(to);
            } else {
                ends[free] = to;
            }
            free
        })
        .collect()
}
