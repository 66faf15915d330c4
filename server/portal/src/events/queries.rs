//! SQL of adverse events.

use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::{Done, Event, KeptEvent, Kind, ONLY_VERSION};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field};
use crate::store::subject::Tx;

pub(super) struct EventRow {
    id: Uuid,
    number: i32,
    session: Option<i32>,
    kind: String,
    happened_at: DateTime<Utc>,
    done: String,
    corrects: Option<i32>,
    corrected_by: Option<i32>,
    account: Vec<u8>,
    by: String,
}

impl EventRow {
    pub(super) fn open(self, key: &ClientKey) -> Result<KeptEvent, Error> {
        let event = Event {
            kind: Kind::parse(&self.kind).ok_or(Error::Inconsistent("adverse_event.kind"))?,
            happened_at: self.happened_at,
            done: Done::parse(&self.done).ok_or(Error::Inconsistent("adverse_event.done"))?,
            account: key.row(self.id, ONLY_VERSION).open(Field::EventAccount, &self.account),
            session: self.session,
        };
        Ok(KeptEvent { number: self.number, event, corrected_by: self.corrected_by, corrects: self.corrects, by: self.by })
    }
}

pub(super) async fn events(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<EventRow>> {
    sqlx::query_as!(
        EventRow,
        r#"SELECT e.id, e.number, s.number AS "session?", e.kind, e.happened_at, e.done, before.number AS "corrects?",
             (SELECT m.name FROM access.members() m WHERE m.id = e.written_by) AS "by!",
             later.number AS "corrected_by?", a.account
           FROM adverse_event e JOIN adverse_account a ON a.event_id = e.id
           LEFT JOIN session s ON s.id = e.session_id
           LEFT JOIN adverse_event before ON before.id = e.replaces LEFT JOIN adverse_event later ON later.replaces = e.id
           WHERE e.client_id = $1 ORDER BY e.happened_at DESC, e.number DESC"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

pub(super) async fn session(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<Uuid>> {
    sqlx::query_scalar!("SELECT id FROM session WHERE client_id = $1 AND number = $2", client, number).fetch_optional(&mut **tx).await
}

/// An event that is to be corrected.
pub(super) struct ToCorrect {
    pub(super) id: Uuid,
    /// It was, already.
    pub(super) corrected: bool,
}

pub(super) async fn to_correct(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<ToCorrect>> {
    sqlx::query_as!(
        ToCorrect,
        r#"SELECT e.id, EXISTS (SELECT FROM adverse_event later WHERE later.replaces = e.id) AS "corrected!"
           FROM adverse_event e WHERE e.client_id = $1 AND e.number = $2"#,
        client,
        number
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Adds one. The client's row is locked by then, so that numbers are given, and events corrected, one at a time.
pub(super) async fn add(
    tx: &mut Tx,
    (id, client, session, replaces): (Uuid, Uuid, Option<Uuid>, Option<Uuid>),
    event: &Event,
    account: &[u8],
    now: DateTime<Utc>,
) -> Result<(), Error> {
    sqlx::query!(
        "INSERT INTO adverse_event (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at)
         SELECT $1, $2, $3, coalesce(max(e.number), 0) + 1, $4, $5, $6, $7, access.me(), $8 FROM adverse_event e WHERE e.client_id = $2",
        id,
        client,
        session,
        event.kind.name(),
        event.happened_at,
        event.done.name(),
        replaces,
        now
    )
    .execute(&mut **tx)
    .await?;
    sqlx::query!("INSERT INTO adverse_account (event_id, client_id, account) VALUES ($1, $2, $3)", id, client, account)
        .execute(&mut **tx)
        .await?;
    Ok(())
}
