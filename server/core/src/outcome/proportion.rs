//! So many of so many, with what chance leaves open (Wilson 1927; Newcombe 1998; section 3).

use statrs::distribution::{ContinuousCDF, Normal};

use super::Refused;

/// From the lowest to the highest that the figures allow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// 0 to 1.
    pub lo: f64,
    /// 0 to 1.
    pub hi: f64,
}

/// A difference of two proportions, the first less the second.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// −1 to 1.
    pub diff: f64,
    /// −1 to 1.
    pub lo: f64,
    /// −1 to 1.
    pub hi: f64,
}

/// The quantile of the normal distribution for a two-sided `confidence`: 1.959963985 for 0.95.
fn quantile(confidence: f64) -> Result<f64, Refused> {
    if !(confidence > 0.0 && confidence < 1.0) {
        return Err(Refused::Confidence);
    }
    Ok(Normal::standard().inverse_cdf(0.5 + confidence / 2.0))
}

/// `(k, n, p)` of a count.
fn share(k: u64, n: u64) -> Result<(f64, f64, f64), Refused> {
    if n == 0 || k > n {
        return Err(Refused::Count);
    }
    let (k, n) = (k as f64, n as f64);
    Ok((k, n, k / n))
}

/// The score interval of `k` of `n`: exactly 0 at its foot when k is 0, exactly 1 at its head when k is n.
///
/// # Errors
/// [`Refused`] when k is more than n, n is 0, or the confidence is none.
pub fn wilson(k: u64, n: u64, confidence: f64) -> Result<Interval, Refused> {
    let (z, (_, size, p)) = (quantile(confidence)?, share(k, n)?);
    let z2 = z * z;
    let whole = 1.0 + z2 / size;
    let centre = (p + z2 / (2.0 * size)) / whole;
    let half = z * (p * (1.0 - p) / size + z2 / (4.0 * size * size)).sqrt() / whole;
    Ok(clamped(k, n, centre - half, centre + half))
}

/// The same with the correction for continuity.
///
/// # Errors
/// As [`wilson`].
pub fn wilson_continuity(k: u64, n: u64, confidence: f64) -> Result<Interval, Refused> {
    let (z, (_, size, p)) = (quantile(confidence)?, share(k, n)?);
    let (z2, q) = (z * z, 1.0 - p);
    let below = 2.0 * (size + z2);
    // Under the root stands less than nothing only where the limit is the end of the scale.
    let root = |under: f64| under.max(0.0).sqrt();
    let lo = (2.0 * size * p + z2 - 1.0 - z * root(z2 - 2.0 - 1.0 / size + 4.0 * p * (size * q + 1.0))) / below;
    let hi = (2.0 * size * p + z2 + 1.0 + z * root(z2 + 2.0 - 1.0 / size + 4.0 * p * (size * q - 1.0))) / below;
    Ok(clamped(k, n, lo, hi))
}

fn clamped(k: u64, n: u64, lo: f64, hi: f64) -> Interval {
    Interval { lo: if k == 0 { 0.0 } else { lo.clamp(0.0, 1.0) }, hi: if k == n { 1.0 } else { hi.clamp(0.0, 1.0) } }
}

/// The difference of two proportions by the score intervals of both (Newcombe's method 10).
///
/// # Errors
/// As [`wilson`], of either.
pub fn difference((k1, n1): (u64, u64), (k2, n2): (u64, u64), confidence: f64) -> Result<Difference, Refused> {
    let (one, two) = (wilson(k1, n1, confidence)?, wilson(k2, n2, confidence)?);
    let ((.., p1), (.., p2)) = (share(k1, n1)?, share(k2, n2)?);
    let diff = p1 - p2;
    Ok(Difference { diff, lo: (diff - (p1 - one.lo).hypot(two.hi - p2)).max(-1.0), hi: (diff + (one.hi - p1).hypot(p2 - two.lo)).min(1.0) })
}
