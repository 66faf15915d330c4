//! Text about a person, and what became of it when it was read.

use secrecy::{ExposeSecret, SecretString};

use super::SealError;

/// Text about a person, opened. It has no `Display`, `Debug` hides it, and it is wiped when it is let go of: only a page
/// that means to show it calls [`Private::reveal`].
#[derive(Clone)]
pub struct Private(SecretString);

impl Private {
    /// Marks a text as private.
    #[must_use]
    pub fn new(text: impl Into<String>) -> Self {
        Self(SecretString::from(text.into()))
    }

    /// The text itself.
    #[must_use]
    pub fn reveal(&self) -> &str {
        self.0.expose_secret()
    }

    /// Whether there is no text.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.reveal().is_empty()
    }
}

impl Default for Private {
    fn default() -> Self {
        Self::new("")
    }
}

impl PartialEq for Private {
    fn eq(&self, other: &Self) -> bool {
        self.reveal() == other.reveal()
    }
}

impl Eq for Private {}

impl std::fmt::Debug for Private {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("[private]")
    }
}

/// What a page shows in place of a value that does not open.
pub const DOES_NOT_OPEN: &str = "This entry does not open. Tell the administrator.";

/// A sealed value as it was read. A page shows it either way, so that one value that does not open takes
/// nothing else away; only [`Opened::text`] makes it something that can be edited or sealed again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Opened {
    /// Its text.
    Text(Private),
    /// Wrong key, damaged, or moved from where it was sealed.
    Unreadable,
}

impl Opened {
    /// What a page shows: the text, or that there is none to be had.
    #[must_use]
    pub fn shown(&self) -> &str {
        match self {
            Self::Text(text) => text.reveal(),
            Self::Unreadable => DOES_NOT_OPEN,
        }
    }

    /// Whether it is known that there is no text.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        matches!(self, Self::Text(text) if text.is_empty())
    }

    /// Whether there is a text to be copied.
    #[must_use]
    pub fn is_there(&self) -> bool {
        matches!(self, Self::Text(text) if !text.is_empty())
    }

    /// The text, for a form to show or a row to keep.
    ///
    /// # Errors
    /// [`SealError::Closed`] when it did not open: whoever replaced it would replace what was not shown.
    pub fn text(self) -> Result<Private, SealError> {
        match self {
            Self::Text(text) => Ok(text),
            Self::Unreadable => Err(SealError::Closed),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_open_is_shown_and_never_kept_again() {
        assert_eq!(Opened::Unreadable.shown(), DOES_NOT_OPEN);
        assert!(!Opened::Unreadable.is_empty() && Opened::Unreadable.text().is_err());
        assert!(Opened::Text(Private::new("")).is_empty() && !Opened::Text(Private::new("")).is_there());
        assert!(Opened::Text(Private::new("x")).is_there() && !Opened::Unreadable.is_there());
    }
}
