//! SQL of a client's errand: functions alone, which look at who asks (migrations 0027 and 0029), and what the practice says to everybody. No table of
//! a record is within its reach.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use crate::store::subject::Tx;

pub(super) struct ErrandRow {
    pub(super) asking: Uuid,
    pub(super) client: Uuid,
    pub(super) from_at: DateTime<Utc>,
    pub(super) event: Vec<u8>,
    pub(super) closed_as: Option<String>,
    pub(super) wrapped: Vec<u8>,
}

/// What the errand that asks is for; nothing when its link does not hold.
pub(super) async fn errand(tx: &mut Tx) -> sqlx::Result<Option<ErrandRow>> {
    sqlx::query_as!(
        ErrandRow,
        r#"SELECT asking_id AS "asking!", client_id AS "client!", from_at AS "from_at!", event AS "event!", closed_as, wrapped AS "wrapped!"
           FROM access.errand_asking()"#
    )
    .fetch_optional(&mut **tx)
    .await
}

pub(super) struct FormRow {
    pub(super) measure: String,
    pub(super) wording: Option<Uuid>,
    pub(super) body: Option<serde_json::Value>,
    pub(super) handed_in: bool,
    pub(super) draft_id: Option<Uuid>,
    pub(super) draft: Option<Vec<u8>>,
    pub(super) draft_version: Option<i32>,
    pub(super) draft_wording: Option<Uuid>,
    pub(super) draft_page: Option<Uuid>,
    pub(super) draft_sending: Option<i32>,
    pub(super) handed_page: Option<Uuid>,
}

/// The forms of the errand that asks, in their order.
pub(super) async fn forms(tx: &mut Tx) -> sqlx::Result<Vec<FormRow>> {
    sqlx::query_as!(
        FormRow,
        r#"SELECT measure AS "measure!", wording_id AS wording, body, handed_in AS "handed_in!", draft_id, draft, draft_version,
             draft_wording, draft_page, draft_sending, handed_page
           FROM access.errand_forms()"#
    )
    .fetch_all(&mut **tx)
    .await
}

/// What is filled in so far, to be kept.
pub(super) struct DraftRow<'a> {
    pub(super) id: Uuid,
    pub(super) measure: &'a str,
    pub(super) sealed: &'a [u8],
    /// The version in whose place it comes; 0: none.
    pub(super) was: i32,
    /// The wording that it answers.
    pub(super) wording: Uuid,
    /// Which page sends it, and its how-manieth sending.
    pub(super) page: Uuid,
    pub(super) sending: i32,
}

/// Keeps it; the version it has now. `None`: another page kept more since, or it was handed in.
pub(super) async fn keep_draft(tx: &mut Tx, row: &DraftRow<'_>) -> sqlx::Result<Option<i32>> {
    let DraftRow { id, measure, sealed, was, wording, page, sending } = *row;
    sqlx::query_scalar!("SELECT access.keep_draft($1, $2, $3, $4, $5, $6, $7)", id, measure, sealed, was, wording, page, sending)
        .fetch_one(&mut **tx)
        .await
}

/// False: it is closed already.
pub(super) async fn decline(tx: &mut Tx) -> sqlx::Result<bool> {
    sqlx::query_scalar!(r#"SELECT access.decline() AS "done!""#).fetch_one(&mut **tx).await
}

/// When somebody reads what comes in, whom a client can call, and the number for emergencies, as the practice says it to everybody.
pub(super) async fn said(tx: &mut Tx) -> sqlx::Result<(String, String, String)> {
    let row = sqlx::query!("SELECT reading_hours, crisis_words, emergency_number FROM practice").fetch_one(&mut **tx).await?;
    Ok((row.reading_hours, row.crisis_words, row.emergency_number))
}
