//! The words of a session: where the client sits, how it was closed, the note. Sealed together, so
//! that they open only in the version they were saved as.

use uuid::Uuid;

use super::queries::{self, SealedWords};
use crate::app::App;
use crate::error::Error;
use crate::seal::{ClientKey, Field, Opened, Private, SealError, SealedRow};
use crate::subject::Tx;

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

/// The words of `session` and the version they were saved as.
///
/// # Errors
/// [`Error::NotFound`] when there is no such session for this subject.
pub async fn words(tx: &mut Tx, key: &ClientKey, session: Uuid) -> Result<(Words<Opened>, i32), Error> {
    let (sealed, version) = queries::words(tx, session).await?.ok_or(Error::NotFound)?;
    Ok((Words::open(&sealed, &key.row(session, version)), version))
}

/// Changes the words of `session` whatever their version; the row is locked meanwhile, so nobody's
/// change is lost. For one that was typed against a version there is [`save_words`].
///
/// # Errors
/// [`Error::NotFound`] when there is no such session for this subject; [`Error::Seal`] when a part of them does
/// not open, for they are sealed together and it would be lost.
pub async fn change_words(tx: &mut Tx, app: &App, key: &ClientKey, session: Uuid, change: impl FnOnce(&mut Words)) -> Result<(), Error> {
    queries::lock_words(tx, session).await?;
    let (current, version) = words(tx, key, session).await?;
    let mut current = current.whole()?;
    change(&mut current);
    if save_words(tx, app, key, session, &current, version).await? { Ok(()) } else { Err(Error::NotFound) }
}

/// Saves the words against the version they were read at. False: somebody changed them meanwhile.
///
/// # Errors
/// [`Error::Database`], [`Error::Seal`]: nothing was kept.
pub async fn save_words(tx: &mut Tx, app: &App, key: &ClientKey, session: Uuid, words: &Words, version: i32) -> Result<bool, Error> {
    let sealed = words.seal(app, &key.row(session, version + 1))?;
    Ok(queries::update_words(tx, session, &sealed, version).await?)
}

/// The first, empty words of a new session.
pub(super) async fn add_words(tx: &mut Tx, app: &App, key: &ClientKey, session: Uuid, client: Uuid) -> Result<(), Error> {
    let sealed = Words::default().seal(app, &key.row(session, 1))?;
    Ok(queries::insert_words(tx, session, client, &sealed).await?)
}
