//! SQL of handing over.

use uuid::Uuid;

use crate::store::error::Error;
use crate::store::subject::Tx;

/// A member of the practice who has not left.
#[derive(Clone)]
pub(super) struct MemberRow {
    pub(super) id: Uuid,
    pub(super) name: String,
    /// Has the role of a clinician.
    pub(super) treats: bool,
}

pub(super) async fn members(tx: &mut Tx) -> Result<Vec<MemberRow>, Error> {
    let rows = sqlx::query_as!(
        MemberRow,
        r#"SELECT id AS "id!", name AS "name!", 'clinician' = ANY (roles) AS "treats!" FROM access.members() WHERE left_at IS NULL"#
    );
    Ok(rows.fetch_all(&mut **tx).await?)
}

/// False when it does not stand like this any more, or `to` treats nobody here.
pub(super) async fn hand_over(tx: &mut Tx, link: Uuid, client: Uuid, from: Option<Uuid>, to: Uuid) -> Result<bool, Error> {
    let done = sqlx::query_scalar!(r#"SELECT access.hand_over($1, $2, $3, $4) AS "done!""#, link, client, from, to);
    Ok(done.fetch_one(&mut **tx).await?)
}
