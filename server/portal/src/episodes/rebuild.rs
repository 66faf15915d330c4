//! Folding every treatment anew from its sessions, to see that nothing else ever wrote what lists read.

use uuid::Uuid;

use super::queries;
use crate::store::database::as_owner;
use crate::store::error::Error;

/// What was found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rebuilt {
    /// How many treatments there are.
    pub episodes: i64,
    /// Kept otherwise than their sessions say, and made anew: that should never be.
    pub different: Vec<Uuid>,
}

/// Folds all of them as the database's owner.
///
/// # Errors
/// [`Error::Database`], also when `url` is not the owner's.
pub async fn rebuild(url: &str) -> Result<Rebuilt, Error> {
    let (episodes, different) = as_owner(url, async |db| queries::refold(db).await).await?;
    Ok(Rebuilt { episodes, different })
}
