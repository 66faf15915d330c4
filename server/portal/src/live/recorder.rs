//! Writes down what a room says, in its order, so that the room never waits for the database.
//!
//! What fails because the database does not answer is tried again until it is written; what the
//! database refuses for good is logged and left out, so that it does not hold up the rest.

use std::time::Duration;

use chrono::{DateTime, Utc};
use leeward_core::room::Event;
use leeward_core::wire::{Ending, Evidence, SetView};
use tokio::sync::mpsc::{Sender, UnboundedReceiver};
use tokio::time::{sleep, timeout};
use uuid::Uuid;

use super::lease::{Found, Lease};
use super::queries_room::{self as queries, EndingRow, OrderRow, Witness};
use super::room_task::Mail;
use super::{names, queries_evidence};
use crate::store::error::Error;
use crate::store::patience::{JOB, NOTICE, pauses, within};
use crate::store::subject::Tx;

/// Pauses between tries: doubled from the first to the last.
const FIRST_PAUSE: Duration = Duration::from_millis(100);
const LAST_PAUSE: Duration = Duration::from_secs(2);

/// One thing to write down, or to read after what was written before it.
#[derive(Debug)]
pub(super) enum Job {
    /// What was ordered.
    Order(OrderRow),
    /// How a set ended, by the room's own word.
    Ending(EndingRow),
    /// What a desk hands back of a set of an earlier room.
    HandedBack { set: SetView, recorded_at: DateTime<Utc> },
    /// What the screen showed; the room hears when it is kept.
    Evidence { facts: Vec<Evidence>, recorded_at: DateTime<Utc> },
    /// What happened beside the sets; `once` is its name in the record.
    Moment { kind: &'static str, once: Uuid, at: DateTime<Utc> },
    /// Read what the record says now.
    Facts,
}

/// Works until the room lets go of the other end and all is done.
pub(super) async fn work(lease: Lease, mut jobs: UnboundedReceiver<Box<Job>>, mail: Sender<Mail>) {
    while let Some(job) = jobs.recv().await {
        // Boxed: a recorder waits nearly all the time, and there is one for each room.
        let mut working = Box::pin(carry_through(&lease, &job, &mail));
        if timeout(NOTICE, &mut working).await.is_err() {
            let _ = mail.send(Event::RecordWaits(true).into()).await;
            working.await;
            let _ = mail.send(Event::RecordWaits(false).into()).await;
        }
        lease.app.rooms().row_done();
    }
}

/// Tries until it is done, or refused for good.
async fn carry_through(lease: &Lease, job: &Job, mail: &Sender<Mail>) {
    let (mut refused, mut pauses) = (false, pauses(FIRST_PAUSE, LAST_PAUSE));
    while let Err(fault) = within(JOB, attempt(lease, job, mail)).await {
        if !passes_by_itself(&fault) {
            tracing::error!(%fault, job = job.name(), "a room's record was refused");
            give_up(job, mail).await;
            break;
        }
        tracing::warn!(%fault, job = job.name(), "a room's record waits for the database");
        tell_refusal(&mut refused, matches!(fault, Error::NothingWritten(_)), mail).await;
        sleep(pauses.next().unwrap_or(LAST_PAUSE)).await;
    }
    tell_refusal(&mut refused, false, mail).await;
}

/// The room hears at once that nothing it does is written any more, and when that has passed.
async fn tell_refusal(known: &mut bool, refused: bool, mail: &Sender<Mail>) {
    if std::mem::replace(known, refused) != refused {
        let _ = mail.send(Event::RecordRefuses(refused).into()).await;
    }
}

async fn give_up(job: &Job, mail: &Sender<Mail>) {
    let told = match job {
        // It is not kept, but it waits no longer.
        Job::Evidence { .. } => Mail::EvidenceDone,
        Job::Facts => Mail::NotRead,
        Job::Order(_) | Job::Ending(_) | Job::HandedBack { .. } | Job::Moment { .. } => return,
    };
    let _ = mail.send(told).await;
}

impl Job {
    fn name(&self) -> &'static str {
        match self {
            Self::Order(_) => "order",
            Self::Ending(_) => "ending",
            Self::HandedBack { .. } => "handed back",
            Self::Evidence { .. } => "evidence",
            Self::Moment { .. } => "moment",
            Self::Facts => "facts",
        }
    }
}

async fn attempt(lease: &Lease, job: &Job, mail: &Sender<Mail>) -> Result<(), Error> {
    if let Job::Facts = job {
        let found = match lease.find().await? {
            Found::Facts(facts, seats) => Mail::Facts(Box::new((facts, seats))),
            Found::RoomLost => Mail::RoomLost,
        };
        let _ = mail.send(found).await;
        return Ok(());
    }
    let mut tx = lease.look().await?;
    let mut answers = Vec::new();
    match job {
        Job::Order(order) => queries::insert_order(&mut tx, order).await?,
        Job::Ending(ending) => queries::insert_ending(&mut tx, ending).await?,
        Job::HandedBack { set, recorded_at } => hand_back(&mut tx, set, *recorded_at).await?,
        Job::Moment { kind, once, at } => queries::insert_moment(&mut tx, lease.session, lease.client, kind, *once, *at).await?,
        Job::Evidence { facts, recorded_at } => {
            queries_evidence::save(&mut tx, facts, *recorded_at).await?;
            answers.push(Mail::EvidenceDone);
            for set in sets_of(facts) {
                answers.extend(queries_evidence::kept_up_to(&mut tx, set).await?.map(|seq| acknowledge(set, seq)));
            }
        }
        Job::Facts => {}
    }
    tx.commit().await?;
    for answer in answers {
        // The room is gone when nobody takes this; its pages are told by the next one.
        let _ = mail.send(answer).await;
    }
    Ok(())
}

/// Keeps what an earlier room had shown and could not write: what was ordered last, and how it ended.
async fn hand_back(tx: &mut Tx, view: &SetView, recorded_at: DateTime<Utc>) -> Result<(), Error> {
    let set = view.id.parse().map_err(|_| Error::BadRequest("This names no set."))?;
    let json = |fault| Error::Inner(format!("a set handed back: {fault}"));
    let (plan, timeline) = (serde_json::to_value(view.plan).map_err(json)?, serde_json::to_value(&view.timeline).map_err(json)?);
    queries::insert_handed_back(tx, set, &plan, &timeline, recorded_at).await?;
    if let Some(ending) = view.ended.filter(|ending| *ending != Ending::Unknown) {
        let row = EndingRow { set, witness: Witness::Desk, ending: names::ending(ending), at: None, recorded_at };
        queries::insert_ending(tx, &row).await?;
    }
    Ok(())
}

fn acknowledge(set: Uuid, seq: i32) -> Mail {
    Event::Kept { set: set.to_string(), seq: seq.unsigned_abs() }.into()
}

fn sets_of(facts: &[Evidence]) -> Vec<Uuid> {
    let mut sets: Vec<Uuid> = facts.iter().filter_map(|fact| fact.set.parse().ok()).collect();
    sets.sort_unstable();
    sets.dedup();
    sets
}

/// Whether the same may work later: not when the database understood it and refused.
fn passes_by_itself(fault: &Error) -> bool {
    match fault {
        Error::Database(fault) => {
            // PostgreSQL, appendix A: 22 data exception, 23 integrity constraint, 42 syntax or access rule.
            !fault.code().is_some_and(|code| ["22", "23", "42"].iter().any(|class| code.starts_with(class)))
        }
        // What a lost answer left open is written again; no row is doubled by that. A token may open its session again.
        Error::Unconfirmed(_) | Error::NothingWritten(_) => true,
        _ => false,
    }
}
