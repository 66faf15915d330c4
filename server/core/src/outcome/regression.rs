//! What scores do by themselves: who was admitted at their worst is better next time by chance alone (section 8).

use statrs::distribution::{Continuous, ContinuousCDF, Normal};

use super::{Refused, finite};
use crate::outcome::change::Group;

/// The score to be expected next time with nothing done, of somebody at `before` (mean + reliability × distance from it).
///
/// # Errors
/// [`Refused`] when a figure is none, or the reliability is not within 0 and 1.
pub fn expected_after(before: f64, mean: f64, reliability: f64) -> Result<f64, Refused> {
    finite(&[before, mean, reliability])?;
    if !(0.0..=1.0).contains(&reliability) {
        return Err(Refused::Reliability);
    }
    Ok(reliability.mul_add(before - mean, mean))
}

/// What is to be expected of those who were admitted from a cut on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Selected {
    /// Their mean at admission.
    pub before: f64,
    /// Their mean next time, with nothing done.
    pub after: f64,
    /// The first less the second.
    pub fall: f64,
}

/// The fall to be expected by chance alone of those with `cut` or more, of a normal population (Davis 1976, from memory; checked by
/// simulation in the reference). Which population is taken makes a large difference: it is said beside the figure.
///
/// # Errors
/// [`Refused`] when a figure is none, the deviation is not above 0, or the reliability is not within 0 and 1.
pub fn selected(population: Group, reliability: f64, cut: f64) -> Result<Selected, Refused> {
    finite(&[population.mean, population.sd, reliability, cut])?;
    if population.sd <= 0.0 {
        return Err(Refused::Spread);
    }
    if !(0.0..=1.0).contains(&reliability) {
        return Err(Refused::Reliability);
    }
    let normal = Normal::standard();
    let a = (cut - population.mean) / population.sd;
    let above = normal.sf(a);
    if above <= 0.0 {
        return Err(Refused::Figure);
    }
    let beyond = population.sd * normal.pdf(a) / above;
    let before = population.mean + beyond;
    let after = reliability.mul_add(beyond, population.mean);
    Ok(Selected { before, after, fall: before - after })
}
