//! Whether it helped: change in one person, and what may be said of many. Sections are those of the reference of statistics.

pub mod change;
pub mod effect;
pub mod missing;
pub mod proportion;
pub mod regression;
#[cfg(test)]
mod tests;

use thiserror::Error;

/// Why nothing was computed. A guess would be read as a result.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum Refused {
    /// A count above the number that it is of, or of nobody.
    #[error("a count must lie within the number that it is of, and that must be 1 or more")]
    Count,
    /// A reliability that is none.
    #[error("a reliability lies from 0 up to, but not at, 1")]
    Reliability,
    /// A spread that is none.
    #[error("a standard deviation is more than 0")]
    Spread,
    /// A confidence that is none.
    #[error("a confidence lies between 0 and 1")]
    Confidence,
    /// Not a number, or without end.
    #[error("every figure must be a number")]
    Figure,
}

/// All of them are figures that can be computed with.
fn finite(figures: &[f64]) -> Result<(), Refused> {
    if figures.iter().all(|figure| figure.is_finite()) { Ok(()) } else { Err(Refused::Figure) }
}
