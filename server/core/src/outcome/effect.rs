//! Effect sizes of scores before and after (section 2). Each has several denominators in use, so each says which is its own; none of them may
//! stand beside a trial's difference between groups.

use statrs::distribution::{ChiSquared, Continuous, ContinuousCDF, Normal, StudentsT};
use statrs::function::gamma::ln_gamma;

use super::{Refused, finite};

/// Of pairs of scores. A change is before less after: positive is a fall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Paired {
    /// How many pairs.
    pub n: usize,
    /// Mean of the changes.
    pub mean_change: f64,
    /// Standard deviation of the changes.
    pub sd_change: f64,
    /// Standard deviations before and after.
    pub sds: (f64, f64),
    /// Correlation of before and after; `None`: one of them has no spread.
    pub r: Option<f64>,
    /// Interval of the mean change.
    pub mean_interval: (f64, f64),
    /// What needs a spread of the changes; `None`: there is none.
    pub of_change: Option<OfChange>,
    /// By the mean of the two standard deviations (Lakens 2013); `None`: there is no spread.
    pub d_av_mean: Option<f64>,
    /// By the root of the mean of their squares (Bonett 2008).
    pub d_av_square: Option<f64>,
    /// By the standard deviation before (Becker 1988).
    pub d_before: Option<f64>,
}

/// What is made with the standard deviation of the changes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OfChange {
    /// Of a paired t test.
    pub t: f64,
    /// Two-sided.
    pub p: f64,
    /// Mean change by its own standard deviation.
    pub d_z: f64,
    /// Its interval, by the non-central t distribution.
    pub d_z_interval: (f64, f64),
}

/// Hedges's correction for `df` degrees of freedom, by gamma functions.
///
/// # Errors
/// [`Refused::Figure`] when `df` is not above 1.
pub fn hedges(df: f64) -> Result<f64, Refused> {
    finite(&[df])?;
    if df <= 1.0 {
        return Err(Refused::Figure);
    }
    let half = df / 2.0;
    Ok((ln_gamma(half) - half.ln() / 2.0 - ln_gamma(half - 0.5)).exp())
}

/// The usual approximation of it.
#[must_use]
pub fn hedges_approximately(df: f64) -> f64 {
    1.0 - 3.0 / 4.0f64.mul_add(df, -1.0)
}

fn mean(all: &[f64]) -> f64 {
    all.iter().sum::<f64>() / all.len() as f64
}

/// Sum of the products of distances from the means, by n − 1.
fn covariance(one: &[f64], other: &[f64]) -> f64 {
    let (a, b) = (mean(one), mean(other));
    one.iter().zip(other).map(|(x, y)| (x - a) * (y - b)).sum::<f64>() / (one.len() - 1) as f64
}

/// Of these pairs, with this confidence.
///
/// # Errors
/// [`Refused`] when the two have not the same length or fewer than two pairs, or a figure is none.
pub fn paired(before: &[f64], after: &[f64], confidence: f64) -> Result<Paired, Refused> {
    let n = before.len();
    if n != after.len() || n < 2 {
        return Err(Refused::Count);
    }
    finite(before)?;
    finite(after)?;
    if !(confidence > 0.0 && confidence < 1.0) {
        return Err(Refused::Confidence);
    }
    let changes: Vec<f64> = before.iter().zip(after).map(|(before, after)| before - after).collect();
    let (mean_change, sd_change) = (mean(&changes), covariance(&changes, &changes).sqrt());
    let sds = (covariance(before, before).sqrt(), covariance(after, after).sqrt());
    let df = (n - 1) as f64;
    let student = StudentsT::new(0.0, 1.0, df).map_err(|_| Refused::Figure)?;
    let error = sd_change / (n as f64).sqrt();
    let half = student.inverse_cdf(0.5 + confidence / 2.0) * error;
    let by = |spread: f64| (spread > 0.0).then(|| mean_change / spread);
    // What rounding leaves is no spread.
    let largest = changes.iter().fold(0.0, |most: f64, change| most.max(change.abs()));
    let sd_change = if sd_change <= largest * 1e-12 { 0.0 } else { sd_change };
    let of_change = if sd_change > 0.0 { Some(of_change(mean_change, sd_change, n, confidence, &student)?) } else { None };
    Ok(Paired {
        n,
        mean_change,
        sd_change,
        sds,
        r: (sds.0 > 0.0 && sds.1 > 0.0).then(|| covariance(before, after) / (sds.0 * sds.1)),
        mean_interval: (mean_change - half, mean_change + half),
        of_change,
        d_av_mean: by(f64::midpoint(sds.0, sds.1)),
        d_av_square: by(f64::midpoint(sds.0 * sds.0, sds.1 * sds.1).sqrt()),
        d_before: by(sds.0),
    })
}

fn of_change(mean: f64, sd: f64, n: usize, confidence: f64, student: &StudentsT) -> Result<OfChange, Refused> {
    let (root, df) = ((n as f64).sqrt(), (n - 1) as f64);
    let t = mean / sd * root;
    let outside = (1.0 - confidence) / 2.0;
    let deviation = relative_deviation(df)?;
    let [lo, hi] = [1.0 - outside, outside].map(|share| centre_with(t, &deviation, share) / root);
    Ok(OfChange { t, p: 2.0 * student.sf(t.abs()), d_z: mean / sd, d_z_interval: (lo, hi) })
}

/// The distribution of a standard deviation of `df` degrees of freedom relative to the true one: values, and how much of it lies about each,
/// by Simpson's rule over ten of its own deviations to both sides.
fn relative_deviation(df: f64) -> Result<Vec<(f64, f64)>, Refused> {
    const STEPS: i32 = 600;
    let chi = ChiSquared::new(df).map_err(|_| Refused::Figure)?;
    let spread = 10.0 / (2.0 * df).sqrt();
    let from = (1.0 - spread).max(0.0);
    let step = (1.0 + spread - from) / f64::from(STEPS);
    let at = |index: i32| {
        let s = step.mul_add(f64::from(index), from);
        let weight = if index == 0 || index == STEPS { 1.0 } else { f64::from(2 + 2 * (index % 2)) };
        // At 0 it is 0, but with one degree of freedom.
        let none = if df == 1.0 { weight * step / 3.0 * std::f64::consts::FRAC_2_PI.sqrt() } else { 0.0 };
        (s, if s <= 0.0 { none } else { weight * step / 3.0 * chi.pdf(df * s * s) * 2.0 * df * s })
    };
    Ok((0..=STEPS).map(at).collect())
}

/// The non-centrality with which so much of a t distribution lies at or below `t`: the normal share below t·s less the centre, over all s.
fn centre_with(t: f64, deviation: &[(f64, f64)], share: f64) -> f64 {
    let normal = Normal::standard();
    let below = |centre: f64| deviation.iter().map(|(s, weight)| weight * normal.cdf(t.mul_add(*s, -centre))).sum::<f64>();
    let mut reach = 12.0 + t.abs() / 2.0;
    // Few degrees of freedom and a large t have long tails.
    while (below(t - reach) < share || below(t + reach) > share) && reach < 1e6 {
        reach *= 2.0;
    }
    let (mut lo, mut hi) = (t - reach, t + reach);
    for _ in 0..60 {
        let middle = f64::midpoint(lo, hi);
        // The farther the centre, the less lies below.
        if below(middle) > share { lo = middle } else { hi = middle }
    }
    f64::midpoint(lo, hi)
}

/// A standardised mean change with its interval, from figures of a paper (Bonett 2008).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standardised {
    /// By the root of the mean of the squared deviations.
    pub d: f64,
    /// The same with less bias.
    pub adjusted: f64,
    /// Its standard error.
    pub se: f64,
    /// Its interval.
    pub interval: (f64, f64),
}

/// Means and standard deviations before and after, their correlation, and how many.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figures {
    /// Before and after.
    pub means: (f64, f64),
    /// Before and after.
    pub sds: (f64, f64),
    /// Of before and after.
    pub r: f64,
    /// Pairs.
    pub n: u32,
}

/// See [`Standardised`].
///
/// # Errors
/// [`Refused`] when a deviation is not above 0, the correlation is none, there are fewer than three pairs, or a figure is none.
pub fn standardised(of: Figures, confidence: f64) -> Result<Standardised, Refused> {
    let Figures { means, sds, r, n } = of;
    finite(&[means.0, means.1, sds.0, sds.1, r])?;
    if sds.0 <= 0.0 || sds.1 <= 0.0 {
        return Err(Refused::Spread);
    }
    if !(-1.0..=1.0).contains(&r) {
        return Err(Refused::Reliability);
    }
    if n < 3 {
        return Err(Refused::Count);
    }
    if !(confidence > 0.0 && confidence < 1.0) {
        return Err(Refused::Confidence);
    }
    let (v1, v2) = (sds.0 * sds.0, sds.1 * sds.1);
    let s2 = f64::midpoint(v1, v2);
    let d = (means.0 - means.1) / s2.sqrt();
    let df = f64::from(n - 1);
    let var = d * d * (v1 * v1 + v2 * v2 + 2.0 * r * r * v1 * v2) / (8.0 * df * s2 * s2) + (v1 + v2 - 2.0 * r * sds.0 * sds.1) / (df * s2);
    let (se, z) = (var.sqrt(), Normal::standard().inverse_cdf(0.5 + confidence / 2.0));
    let adjusted = d * (f64::from(n - 2) / f64::from(n - 1)).sqrt();
    Ok(Standardised { d, adjusted, se, interval: (d - z * se, d + z * se) })
}
