//! Folding every treatment anew from its sessions, to see that nothing else ever wrote what lists read.

use sqlx::{Connection, PgConnection};
use uuid::Uuid;

use super::queries;
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
    let mut db = PgConnection::connect(url).await?;
    let (episodes, different) = queries::refold(&mut db).await?;
    Ok(Rebuilt { episodes, different })
}
