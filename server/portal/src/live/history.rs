//! Sets that took place before: written as a room would have written them, for a practice that is set
//! up from what it has.

use chrono::{DateTime, TimeDelta, Utc};
use leeward_core::room::Cause;
use leeward_core::wire::{Ending, Evidence, Plan, Timeline};
use serde_json::Value;
use uuid::Uuid;

use super::lease::{self, Lease};
use super::queries_room::{self as queries, EndingRow, OrderRow, Witness};
use super::{names, queries as queries_join, queries_evidence};
use crate::base::ids::{Token, new_id};
use crate::platform::App;
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// One set that took place.
#[derive(Debug)]
pub struct PastSet {
    /// Its id.
    pub id: Uuid,
    /// 1 for the session's first.
    pub number: u32,
    /// As first ordered.
    pub plan: Plan,
    /// Everything that was ordered, the start first.
    pub orders: Vec<PastOrder>,
    /// What the screen showed.
    pub evidence: Vec<Evidence>,
    /// What ended it.
    pub ending: Ending,
    /// Room time of the end, ms.
    pub ended_at: f64,
}

/// One order within a set.
#[derive(Debug)]
pub struct PastOrder {
    /// Why.
    pub cause: Cause,
    /// Room time, ms.
    pub at: f64,
    /// The plan from then on.
    pub plan: Plan,
    /// The timeline from then on.
    pub timeline: Timeline,
}

/// Lets a client take the seat of an open session without a link and a code, so that they can be admitted:
/// for a practice that is set up from what it has. Returns the seat, to be admitted, and its token, for the cookie of
/// a page that is to sit there.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` treats the session's client; [`Error::Database`].
pub async fn sit_down(app: &App, subject: &Subject, session: Uuid) -> Result<(Uuid, Token), Error> {
    let (link, now) = (new_id(&app.world), app.world.now());
    let mut tx = app.database.act(subject, Act::new("link.make").object(session)).await?;
    let open = queries_join::open_session(&mut tx, session).await?;
    tx.concerns(open.client);
    queries_join::mint_link(&mut tx, link, &Token::new(&app.world).hash(), session, now + TimeDelta::seconds(1), "no code opens this")
        .await?;
    let (seat, token) = (new_id(&app.world), Token::new(&app.world));
    queries_join::claim_seat(&mut tx, link, seat, &token.hash(), "a device of the past", None).await?;
    tx.commit().await?;
    Ok((seat, token))
}

/// Keeps sets of an open session whose room began at `began`, all or none.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` may open the session's room, [`Error::Conflict`] when another
/// room of it is open, [`Error::Database`].
pub async fn keep_past(app: &App, subject: &Subject, session: Uuid, began: DateTime<Utc>, sets: &[PastSet]) -> Result<(), Error> {
    let (lease, _, _) = lease::take(app, subject, session).await?;
    let mut tx = lease.look().await?;
    for set in sets {
        keep_one(&lease, &mut tx, began, set).await?;
    }
    tx.commit().await
}

async fn keep_one(lease: &Lease, tx: &mut Tx, began: DateTime<Utc>, set: &PastSet) -> Result<(), Error> {
    let time = |ms: f64| began + TimeDelta::microseconds((ms * 1_000.0) as i64);
    let first = set.orders.first().map_or(0.0, |order| order.at);
    if !lease.insert(tx, set.id, set.number, &set.plan, time(first)).await? {
        return Err(Error::Conflict("A live room of this session is open. Close it first."));
    }
    for (order, seq) in set.orders.iter().zip(0..) {
        let row = OrderRow {
            set: set.id,
            seq,
            cause: names::cause(order.cause),
            at: order.at,
            plan: json(&order.plan)?,
            timeline: json(&order.timeline)?,
            recorded_at: time(order.at),
        };
        queries::insert_order(tx, &row).await?;
    }
    queries_evidence::save(tx, &set.evidence, time(set.ended_at)).await?;
    let (at, recorded_at) = (Some(set.ended_at), time(set.ended_at));
    queries::insert_ending(tx, &EndingRow { set: set.id, witness: Witness::Room, ending: names::ending(set.ending), at, recorded_at }).await
}

fn json(value: &impl serde::Serialize) -> Result<Value, Error> {
    serde_json::to_value(value).map_err(|fault| Error::Inner(format!("a set's order: {fault}")))
}
