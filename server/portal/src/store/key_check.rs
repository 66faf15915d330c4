//! A wrong key file is refused before anything is opened or sealed with it.
//!
//! A value sealed under each key in use stands in the database. A practice from before there was one is
//! tried by the keys of its clients, and then gets its value. `app::build` takes nothing but a checked key.

use std::ops::Deref;

use super::queries;
use crate::store::database::Database;
use crate::store::error::Error;
use crate::store::seal::PracticeKey;
use crate::store::subject::{Subject, Tx};

/// The practice's key, known to be the one that this database was sealed with.
#[derive(Clone)]
pub struct CheckedKey(PracticeKey);

impl Deref for CheckedKey {
    type Target = PracticeKey;
    fn deref(&self) -> &PracticeKey {
        &self.0
    }
}

/// Why a key is not taken.
#[derive(Debug, thiserror::Error)]
pub enum Refused {
    /// Another key sealed what is there.
    #[error(
        "LEEWARD_KEY_FILE does not hold the key that this practice's records are sealed with, so nothing was started and nothing \
         was changed. Put the practice's own key file back; the copy that was kept offline is the same. Only if no client was ever \
         entered here, the database's owner may let go of the earlier key: DELETE FROM access.key_check"
    )]
    Wrong,
    /// Something is sealed under a key that this version cannot be given.
    #[error(
        "records of this practice are sealed under key number {0}, which this version does not know. Install the version that sealed them"
    )]
    Unknown(i32),
    /// The database did not answer.
    #[error("the key could not be checked: {0}")]
    Fault(#[from] Error),
}

/// Checks `key` against what stands in the database; the first key of an empty practice becomes its key.
///
/// # Errors
/// See [`Refused`]; then nothing was changed.
pub async fn check(database: &Database, key: PracticeKey) -> Result<CheckedKey, Refused> {
    let mut tx = database.look(&Subject::Visitor).await?;
    if let Some(other) = queries::keys_in_use(&mut tx).await.map_err(Error::from)?.into_iter().find(|id| *id != PracticeKey::ID) {
        return Err(Refused::Unknown(other));
    }
    let standing = match queries::key_check(&mut tx, PracticeKey::ID).await.map_err(Error::from)? {
        Some(standing) => standing,
        None if opens_what_is_there(&mut tx, &key).await? => {
            let fresh = key.check_value(&database.world).map_err(Error::from)?;
            queries::keep_key_check(&mut tx, PracticeKey::ID, &fresh).await.map_err(Error::from)?
        }
        None => return Err(Refused::Wrong),
    };
    if !key.made(&standing) {
        return Err(Refused::Wrong);
    }
    tx.commit().await?;
    Ok(CheckedKey(key))
}

/// Whether the key opens any of the clients' keys that can be tried, or there is none.
async fn opens_what_is_there(tx: &mut Tx, key: &PracticeKey) -> Result<bool, Error> {
    let rows = queries::keys_to_try(tx, PracticeKey::ID).await?;
    Ok(rows.is_empty() || rows.iter().any(|row| key.unwrap(row.client, &row.wrapped).is_open()))
}
