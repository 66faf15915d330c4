//! SQL of handing over.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::error::Error;
use crate::subject::Tx;

/// A clinician of the practice.
pub(super) struct ClinicianRow {
    pub(super) id: Uuid,
    pub(super) name: String,
}

pub(super) async fn clinicians(tx: &mut Tx) -> Result<Vec<ClinicianRow>, Error> {
    let rows = sqlx::query_as!(
        ClinicianRow,
        r#"SELECT id AS "id!", name AS "name!" FROM access.members() WHERE left_at IS NULL AND 'clinician' = ANY (roles)"#
    );
    Ok(rows.fetch_all(&mut **tx).await?)
}

/// False when it does not stand like this any more, or `to` treats nobody here.
pub(super) async fn hand_over(tx: &mut Tx, link: Uuid, client: Uuid, from: Option<Uuid>, to: Uuid) -> Result<bool, Error> {
    let done = sqlx::query_scalar!(r#"SELECT access.hand_over($1, $2, $3, $4) AS "done!""#, link, client, from, to);
    Ok(done.fetch_one(&mut **tx).await?)
}

/// What somebody has not read yet.
pub(super) struct NewsRow {
    pub(super) id: Uuid,
    pub(super) kind: String,
    pub(super) number: Option<i32>,
    pub(super) about: Option<String>,
    pub(super) by: Option<String>,
    pub(super) at: DateTime<Utc>,
}

pub(super) async fn news(tx: &mut Tx) -> Result<Vec<NewsRow>, Error> {
    let rows = sqlx::query_as!(
        NewsRow,
        r#"SELECT id AS "id!", kind AS "kind!", number, about, by_name AS by, at AS "at!" FROM access.my_news()"#
    );
    Ok(rows.fetch_all(&mut **tx).await?)
}

/// False when it is nothing of one's own.
pub(super) async fn read(tx: &mut Tx, which: Uuid) -> Result<bool, Error> {
    Ok(sqlx::query_scalar!(r#"SELECT access.news_read($1) AS "read!""#, which).fetch_one(&mut **tx).await?)
}
