//! Folding every target anew: after the rules have changed, or to see that nothing else ever wrote what lists read.

use sqlx::{Connection, PgConnection};
use uuid::Uuid;

use super::{Columns, RULES, Stand, of, queries};
use crate::store::error::Error;

/// What was found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rebuilt {
    /// How many targets there are.
    pub targets: usize,
    /// Folded by earlier rules, and made anew.
    pub outdated: usize,
    /// Kept otherwise than these rules make of the record, and made anew: that should never be.
    pub different: Vec<Uuid>,
}

/// Folds every target as the database's owner, each in a transaction of its own.
///
/// # Errors
/// [`Error::Database`], also when `url` is not the owner's: what was made anew until then stays.
pub async fn rebuild(url: &str) -> Result<Rebuilt, Error> {
    let mut db = PgConnection::connect(url).await?;
    let all = queries::all(&mut db).await?;
    fold(&mut db, &all).await
}

/// Folds what was folded by other rules, which is nothing but after an update. How many there were.
///
/// # Errors
/// As [`rebuild`].
pub async fn bring_up_to_rules(url: &str) -> Result<usize, Error> {
    let mut db = PgConnection::connect(url).await?;
    let outdated = queries::outdated(&mut db, RULES).await?;
    Ok(fold(&mut db, &outdated).await?.targets)
}

async fn fold(db: &mut PgConnection, targets: &[Uuid]) -> Result<Rebuilt, Error> {
    let mut rebuilt = Rebuilt::default();
    for &target in targets {
        let mut tx = db.begin().await?;
        let before = queries::locked(&mut tx, target).await?.ok_or(Error::NothingWritten("target_course"))?;
        let now = Stand::of(&of(&mut tx, target).await?);
        rebuilt.targets += 1;
        if before.rules != RULES {
            rebuilt.outdated += 1;
        } else if before.stand()? != now {
            rebuilt.different.push(target);
        } else {
            continue;
        }
        queries::keep(&mut tx, target, &Columns::of(now)?).await?;
        tx.commit().await?;
    }
    Ok(rebuilt)
}
