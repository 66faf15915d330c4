//! The two ratings of the trade, in types that cannot hold a bad value.
//!
//! SUD, subjective units of disturbance: 0 (none) to 10 (Wolpe 1990). VOC, validity of the wanted
//! belief: 1 (completely false) to 7 (completely true) (Shapiro 1989). Whole numbers only; nothing
//! is ever rescaled or rounded.

use std::fmt;

/// Subjective units of disturbance, 0 to 10.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Sud(u8);

/// Validity of the wanted belief, 1 to 7.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Voc(u8);

/// Why a typed rating was not taken. Displays as one sentence for the person who typed it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleError {
    /// Nothing was typed.
    Blank,
    /// Not a number.
    NotANumber,
    /// Between two points of the scale.
    NotWhole {
        /// Least value of the scale.
        least: u8,
        /// Greatest value of the scale.
        most: u8,
    },
    /// Off the scale.
    OutOfRange {
        /// Least value of the scale.
        least: u8,
        /// Greatest value of the scale.
        most: u8,
    },
    /// A 0 for VOC: some people say "0 to 7" aloud, so it is asked about, never rescaled.
    VocZero,
}

impl fmt::Display for ScaleError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ScaleError::Blank => f.write_str("Type a number, or leave the rating out."),
            ScaleError::NotANumber => f.write_str("Type the rating as a number, for example 5."),
            ScaleError::NotWhole { least, most } => {
                write!(f, "Only whole numbers from {least} to {most} are kept. Ask which of the two it is.")
            }
            ScaleError::OutOfRange { least, most } => {
                write!(f, "The rating must be a whole number from {least} to {most}.")
            }
            ScaleError::VocZero => f.write_str("VOC runs from 1 to 7. Did you mean 1?"),
        }
    }
}

impl std::error::Error for ScaleError {}

impl Sud {
    /// No disturbance.
    pub const LEAST: u8 = 0;
    /// The worst imaginable.
    pub const MOST: u8 = 10;

    /// # Errors
    /// [`ScaleError::OutOfRange`] above 10.
    pub fn new(value: u8) -> Result<Self, ScaleError> {
        in_range(value, Self::LEAST, Self::MOST).map(Sud)
    }

    /// The rating that was typed.
    ///
    /// # Errors
    /// The reason, for the person who typed it.
    ///
    /// ```
    /// use leeward_core::scale::Sud;
    /// assert_eq!(Sud::parse(" 7 ").map(Sud::get), Ok(7));
    /// assert!(Sud::parse("6.5").is_err());
    /// ```
    pub fn parse(typed: &str) -> Result<Self, ScaleError> {
        parse(typed, Self::LEAST, Self::MOST).map(Sud)
    }

    /// 0 to 10.
    pub const fn get(self) -> u8 {
        self.0
    }
}

impl Voc {
    /// Completely false.
    pub const LEAST: u8 = 1;
    /// Completely true.
    pub const MOST: u8 = 7;

    /// # Errors
    /// [`ScaleError::VocZero`] for 0, [`ScaleError::OutOfRange`] above 7.
    pub fn new(value: u8) -> Result<Self, ScaleError> {
        if value == 0 {
            return Err(ScaleError::VocZero);
        }
        in_range(value, Self::LEAST, Self::MOST).map(Voc)
    }

    /// The rating that was typed.
    ///
    /// # Errors
    /// The reason, for the person who typed it.
    ///
    /// ```
    /// use leeward_core::scale::{ScaleError, Voc};
    /// assert_eq!(Voc::parse("7").map(Voc::get), Ok(7));
    /// assert_eq!(Voc::parse("0"), Err(ScaleError::VocZero));
    /// ```
    pub fn parse(typed: &str) -> Result<Self, ScaleError> {
        if matches!(number(typed)?, Number::Whole(0)) {
            return Err(ScaleError::VocZero);
        }
        parse(typed, Self::LEAST, Self::MOST).map(Voc)
    }

    /// 1 to 7.
    pub const fn get(self) -> u8 {
        self.0
    }
}

enum Number {
    Whole(i64),
    Between(f64),
}

fn in_range(value: u8, least: u8, most: u8) -> Result<u8, ScaleError> {
    if (least..=most).contains(&value) { Ok(value) } else { Err(ScaleError::OutOfRange { least, most }) }
}

fn parse(typed: &str, least: u8, most: u8) -> Result<u8, ScaleError> {
    let out = ScaleError::OutOfRange { least, most };
    match number(typed)? {
        Number::Whole(value) => in_range(u8::try_from(value).map_err(|_| out)?, least, most),
        Number::Between(value) if value < f64::from(least) || value > f64::from(most) => Err(out),
        Number::Between(_) => Err(ScaleError::NotWhole { least, most }),
    }
}

/// Digits with at most one sign and one point or comma; no exponents, no words.
fn number(typed: &str) -> Result<Number, ScaleError> {
    let text = typed.trim();
    if text.is_empty() {
        return Err(ScaleError::Blank);
    }
    let plain = text.chars().all(|c| c.is_ascii_digit() || "+-.,".contains(c));
    let value: f64 = text.replace(',', ".").parse().map_err(|_| ScaleError::NotANumber)?;
    if !plain {
        return Err(ScaleError::NotANumber);
    }
    if value.fract() == 0.0 {
        // Saturates for absurdly long numbers, which are out of every range anyway.
        Ok(Number::Whole(value as i64))
    } else {
        Ok(Number::Between(value))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    // Wolpe 1990, by way of Kim, Bae & Park 2008: 11 points, 0 to 10.
    #[test]
    fn sud_has_eleven_points() {
        let kept: Vec<u8> = (0..=255).filter_map(|v| Sud::new(v).ok()).map(Sud::get).collect();
        assert_eq!(kept, (0..=10).collect::<Vec<_>>());
        let out = Err(ScaleError::OutOfRange { least: 0, most: 10 });
        assert_eq!(Sud::parse("11"), out);
        assert_eq!(Sud::parse("-1"), out);
        assert_eq!(Sud::parse("99999999999999999999999"), out);
    }

    // Shapiro 1989: 1 to 7; 0 and 8 are no values of it.
    #[test]
    fn voc_runs_from_one_to_seven_and_asks_about_nought() {
        let kept: Vec<u8> = (0..=255).filter_map(|v| Voc::new(v).ok()).map(Voc::get).collect();
        assert_eq!(kept, (1..=7).collect::<Vec<_>>());
        assert_eq!(Voc::parse("8"), Err(ScaleError::OutOfRange { least: 1, most: 7 }));
        for nought in ["0", " 0 ", "00", "0.0", "-0"] {
            assert_eq!(Voc::parse(nought), Err(ScaleError::VocZero), "{nought}");
        }
        assert_eq!(ScaleError::VocZero.to_string(), "VOC runs from 1 to 7. Did you mean 1?");
    }

    #[test]
    fn half_points_are_refused_with_the_reason() {
        let half = ScaleError::NotWhole { least: 0, most: 10 };
        assert_eq!(Sud::parse("6.5"), Err(half));
        assert_eq!(Sud::parse("6,5"), Err(half));
        assert_eq!(half.to_string(), "Only whole numbers from 0 to 10 are kept. Ask which of the two it is.");
        assert_eq!(Voc::parse("0.5"), Err(ScaleError::OutOfRange { least: 1, most: 7 }));
    }

    #[test]
    fn what_is_no_number_is_refused() {
        assert_eq!(Sud::parse("  "), Err(ScaleError::Blank));
        for typed in ["seven", "1e1", "NaN", "inf", "5/10", "٧", "1.2.3", "-"] {
            assert_eq!(Sud::parse(typed), Err(ScaleError::NotANumber), "{typed}");
        }
        assert_eq!(Sud::parse("+7").map(Sud::get), Ok(7));
    }

    proptest! {
        #[test]
        fn no_text_makes_a_value_off_the_scale(typed in ".{0,12}") {
            if let Ok(sud) = Sud::parse(&typed) {
                prop_assert!(sud.get() <= 10);
            }
            if let Ok(voc) = Voc::parse(&typed) {
                prop_assert!((1..=7).contains(&voc.get()));
            }
        }
    }
}
