//! What is done with the rest of a cluster once one of it is at its end: each is asked anew before it is opened.

use uuid::Uuid;

use super::{Target, queries};
use crate::store::error::Error;
use crate::store::subject::Tx;

/// Another memory or trigger of the cluster, still to be done.
pub(in crate::targets) struct Other {
    pub(in crate::targets) id: Uuid,
    pub(in crate::targets) number: i32,
    pub(in crate::targets) label: String,
    /// Such as "SUD 6", or that it was not rated.
    pub(in crate::targets) rated: String,
    /// It was asked anew since this one came to its end.
    pub(in crate::targets) since: bool,
}

/// The others in the cluster of `target`, in the order of the work; `all` are the client's targets. None while it is not at its end.
pub(in crate::targets) async fn others(tx: &mut Tx, target: &Target, all: &[Target]) -> Result<Vec<Other>, Error> {
    if !target.stand.state.is_over() {
        return Ok(vec![]);
    }
    let rows = queries::others(tx, target.id).await?;
    let other = |row: queries::OtherRow| {
        let found = all.iter().find(|one| one.id == row.target)?;
        Some(Other {
            id: row.target,
            number: found.number,
            label: found.words.label.shown().to_owned(),
            rated: row.sud.map_or_else(|| "not rated".to_owned(), |sud| format!("SUD {sud}")),
            since: row.since,
        })
    };
    Ok(rows.into_iter().filter_map(other).collect())
}
