//! The words of a session: where the client sits, how it was closed, the note. Sealed together, so
//! that they open only in the version they were saved as. Every version stays: a note is part of a
//! record of care, and nobody's words are lost by somebody else's.

use uuid::Uuid;

use super::queries::{self, SealedWords};
use crate::platform::App;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private, SealError, SealedRow};
use crate::store::subject::Tx;

/// Words about one session, opened. Each may be empty; as they are read, each may turn out not to open.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Words<T = Private> {
    /// Where the client sits today, as confirmed on admitting.
    pub location: T,
    /// The number to call when the link is lost.
    pub call_back: T,
    /// Closing: what was used to settle, and its effect.
    pub resource: T,
    /// Closing: the client's state on leaving.
    pub leaving_state: T,
    /// Closing: who is with the client.
    pub companion: T,
    /// Closing: when and how they are in touch next.
    pub next_contact: T,
    /// What the client's page says at the end.
    pub client_words: T,
    /// The note.
    pub note: T,
}

impl Words {
    fn seal(&self, app: &App, row: &SealedRow<'_>) -> Result<SealedWords, SealError> {
        let seal = |field, text| row.seal(&app.world, field, text);
        Ok(SealedWords {
            location: seal(Field::SessionLocation, &self.location)?,
            call_back: seal(Field::SessionCallBack, &self.call_back)?,
            resource: seal(Field::SessionResource, &self.resource)?,
            leaving_state: seal(Field::SessionLeavingState, &self.leaving_state)?,
            companion: seal(Field::SessionCompanion, &self.companion)?,
            next_contact: seal(Field::SessionNextContact, &self.next_contact)?,
            client_words: seal(Field::SessionClientWords, &self.client_words)?,
            note: seal(Field::SessionNote, &self.note)?,
        })
    }
}

impl Words<Opened> {
    /// All of them as texts, for a form or to be sealed again.
    ///
    /// # Errors
    /// [`SealError`] when one did not open.
    pub fn whole(self) -> Result<Words, SealError> {
        Ok(Words {
            location: self.location.text()?,
            call_back: self.call_back.text()?,
            resource: self.resource.text()?,
            leaving_state: self.leaving_state.text()?,
            companion: self.companion.text()?,
            next_contact: self.next_contact.text()?,
            client_words: self.client_words.text()?,
            note: self.note.text()?,
        })
    }

    /// What opened of them; what did not is left empty. For what must go on whatever happened to a row, as admitting
    /// and closing must: the version that did not open stays as it is beside the new one.
    pub(super) fn readable(self) -> Words {
        let text = |opened: Opened| opened.text().unwrap_or_default();
        Words {
            location: text(self.location),
            call_back: text(self.call_back),
            resource: text(self.resource),
            leaving_state: text(self.leaving_state),
            companion: text(self.companion),
            next_contact: text(self.next_contact),
            client_words: text(self.client_words),
            note: text(self.note),
        }
    }

    fn open(sealed: &SealedWords, row: &SealedRow<'_>) -> Self {
        Self {
            location: row.open(Field::SessionLocation, &sealed.location),
            call_back: row.open(Field::SessionCallBack, &sealed.call_back),
            resource: row.open(Field::SessionResource, &sealed.resource),
            leaving_state: row.open(Field::SessionLeavingState, &sealed.leaving_state),
            companion: row.open(Field::SessionCompanion, &sealed.companion),
            next_contact: row.open(Field::SessionNextContact, &sealed.next_contact),
            client_words: row.open(Field::SessionClientWords, &sealed.client_words),
            note: row.open(Field::SessionNote, &sealed.note),
        }
    }
}

/// The words of `session` as they stand now, and their version.
///
/// # Errors
/// [`Error::NotFound`] when there is no such session for this subject.
pub async fn words(tx: &mut Tx, key: &ClientKey, session: Uuid) -> Result<(Words<Opened>, i32), Error> {
    let (sealed, version) = queries::words(tx, session, None).await?.ok_or(Error::NotFound)?;
    Ok((Words::open(&sealed, &key.row(session, version)), version))
}

/// The words of `session` as they stood at `version`; nothing when there is no such version.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn words_at(tx: &mut Tx, key: &ClientKey, session: Uuid, version: i32) -> Result<Option<Words<Opened>>, Error> {
    let found = queries::words(tx, session, Some(version)).await?;
    Ok(found.map(|(sealed, version)| Words::open(&sealed, &key.row(session, version))))
}

/// The words that a form was made from, by the version that it sent. A form without one counts as made before
/// there was anything. What does not open was shown as empty.
pub(super) async fn seen(tx: &mut Tx, key: &ClientKey, session: Uuid, version: &str) -> Result<Option<Words>, Error> {
    match version.parse() {
        Ok(version) => Ok(words_at(tx, key, session, version).await?.map(Words::readable)),
        Err(_) => Ok(None),
    }
}

/// As [`words`], with the session locked until the end of the transaction: what is added next follows these.
///
/// # Errors
/// As [`words`].
pub(super) async fn locked_words(tx: &mut Tx, key: &ClientKey, session: Uuid) -> Result<(Words<Opened>, i32), Error> {
    queries::lock_session(tx, session).await?;
    words(tx, key, session).await
}

/// Changes the words of `session`: a new version of them, unless they stay as they were. Every earlier one stays.
///
/// # Errors
/// [`Error::NotFound`] when there is no such session for this subject.
pub async fn change_words(tx: &mut Tx, app: &App, key: &ClientKey, session: Uuid, change: impl FnOnce(&mut Words)) -> Result<(), Error> {
    let (before, version) = locked_words(tx, key, session).await?;
    let before = before.readable();
    let mut current = before.clone();
    change(&mut current);
    if current == before {
        return Ok(());
    }
    add_version(tx, app, key, session, &current, version + 1).await
}

/// Keeps the words of `session` as this version of them. Take [`locked_words`] first.
pub(super) async fn add_version(tx: &mut Tx, app: &App, key: &ClientKey, session: Uuid, words: &Words, version: i32) -> Result<(), Error> {
    let sealed = words.seal(app, &key.row(session, version))?;
    Ok(queries::insert_words(tx, session, &sealed, version, app.world.now()).await?)
}

/// What somebody typed against an earlier version of a text, and the text as it stands now: which of them is to
/// be kept, or nothing when both were changed and a person has to look.
pub(super) fn merged(typed: Private, before: &Private, now: &Private) -> Option<Private> {
    if before == now || typed == *now {
        Some(typed)
    } else if typed == *before {
        // They did not touch it, so the change made meanwhile stands.
        Some(now.clone())
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_not_touched_gives_way_to_what_was_written_meanwhile() {
        let [old, mine, theirs] = ["old", "mine", "theirs"].map(Private::new);
        for (typed, now, kept) in [
            (&mine, &old, Some(&mine)),
            (&old, &old, Some(&old)),
            (&old, &theirs, Some(&theirs)),
            (&mine, &mine, Some(&mine)),
            (&mine, &theirs, None),
        ] {
            assert_eq!(merged(typed.clone(), &old, now).as_ref(), kept);
        }
    }
}
