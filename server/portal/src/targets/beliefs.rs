//! Beliefs to choose from by theme, each with the one that is usually wanted instead. The wording is our own; the client's words come first.

use super::plan::Theme;

/// Of one theme: what is believed of oneself now, and what would be rather believed.
struct Pair {
    theme: Theme,
    negative: &'static str,
    positive: &'static str,
}

const fn pair(theme: Theme, negative: &'static str, positive: &'static str) -> Pair {
    Pair { theme, negative, positive }
}

// Common practice, no source: that beliefs fall into these three themes.
const PAIRS: [Pair; 12] = [
    pair(Theme::Responsibility, "It happened because of me.", "I did what could be done."),
    pair(Theme::Responsibility, "I ought to have seen it coming.", "Nobody could have known."),
    pair(Theme::Responsibility, "Something in me is wrong.", "I am all right as I am."),
    pair(Theme::Responsibility, "I have to be ashamed.", "I have nothing to hide."),
    pair(Theme::Safety, "It can happen again any moment.", "It is over, and I am here."),
    pair(Theme::Safety, "There is nowhere I am safe.", "There are places where I am safe."),
    pair(Theme::Safety, "My body gives way.", "My body carries me."),
    pair(Theme::Safety, "People hurt me.", "I can tell whom to trust."),
    pair(Theme::Choice, "I have no say.", "I have a say now."),
    pair(Theme::Choice, "I cannot bear this.", "I can bear it, and it passes."),
    pair(Theme::Choice, "I am stuck in it.", "I can leave, and I can ask."),
    pair(Theme::Choice, "I must manage alone.", "I may ask for help."),
];

/// Which of a pair.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    /// Believed now.
    Negative,
    /// Wanted instead.
    Positive,
}

impl Side {
    const fn of(self, pair: &Pair) -> &'static str {
        match self {
            Self::Negative => pair.negative,
            Self::Positive => pair.positive,
        }
    }

    /// The value of a form and the words, led by none.
    pub(super) fn options(self) -> Vec<(String, String)> {
        let listed =
            (1..).zip(&PAIRS).map(|(number, pair): (usize, _)| (number.to_string(), format!("{}: {}", pair.theme.words(), self.of(pair))));
        std::iter::once((String::new(), "In the client’s own words above".to_owned())).chain(listed).collect()
    }

    /// The one that a form's value means.
    pub(super) fn read(self, typed: &str) -> Option<&'static str> {
        let number: usize = typed.parse().ok()?;
        Some(self.of(PAIRS.get(number.checked_sub(1)?)?))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_theme_has_some_and_no_two_are_alike() {
        for theme in Theme::ALL {
            assert!(PAIRS.iter().filter(|pair| pair.theme == *theme).count() >= 3, "{theme:?}");
        }
        let mut all: Vec<&str> = PAIRS.iter().flat_map(|pair| [pair.negative, pair.positive]).collect();
        all.sort_unstable();
        all.dedup();
        assert_eq!(all.len(), 2 * PAIRS.len());
        for side in [Side::Negative, Side::Positive] {
            for (value, words) in side.options().into_iter().skip(1) {
                assert!(words.ends_with(side.read(&value).unwrap()));
            }
            assert_eq!((side.read(""), side.read("0"), side.read("13")), (None, None, None));
        }
    }
}
