//! Writes down what a room says, in its order, so that the room never waits for the database.
//!
//! What fails because the database does not answer is tried again until it is written; what the
//! database refuses for good is logged and left out, so that it does not hold up the rest.

use std::time::Duration;

use chrono::{DateTime, Utc};
use leeward_core::room::Event;
use leeward_core::wire::Evidence;
use tokio::sync::mpsc::{Sender, UnboundedReceiver};
use tokio::time::sleep;
use uuid::Uuid;

use super::queries_room::{self as queries, OrderRow};
use super::room_task::Mail;
use super::{evidence, holder::Holder};
use crate::error::Error;

/// Pauses between tries: doubled from the first to the last.
const FIRST_PAUSE: Duration = Duration::from_millis(100);
const LAST_PAUSE: Duration = Duration::from_secs(5);

/// One thing to write down, or to read after what was written before it.
#[derive(Debug)]
pub(super) enum Job {
    /// What was ordered.
    Order(OrderRow),
    /// How a set ended.
    Ending { set: Uuid, ending: &'static str, at: f64, recorded_at: DateTime<Utc> },
    /// What the screen showed; the room hears when it is kept.
    Evidence { facts: Vec<Evidence>, recorded_at: DateTime<Utc> },
    /// What happened beside the sets.
    Moment { kind: &'static str, at: DateTime<Utc> },
    /// Who has the seat, and who asks for it.
    Seats,
}

/// Works until the room lets go of the other end and all is done.
pub(super) async fn work(holder: Holder, mut jobs: UnboundedReceiver<Box<Job>>, mail: Sender<Mail>) {
    while let Some(job) = jobs.recv().await {
        let mut pause = FIRST_PAUSE;
        // Boxed: a clerk waits nearly all the time, and there is one for each room.
        while let Err(fault) = Box::pin(attempt(&holder, &job, &mail)).await {
            if !passes_by_itself(&fault) {
                tracing::error!(%fault, job = job.name(), "a room's record was refused");
                give_up(&job, &mail).await;
                break;
            }
            tracing::warn!(%fault, job = job.name(), "a room's record waits for the database");
            sleep(pause).await;
            pause = (pause * 2).min(LAST_PAUSE);
        }
        holder.app.rooms.row_done();
    }
}

async fn give_up(job: &Job, mail: &Sender<Mail>) {
    if matches!(job, Job::Evidence { .. }) {
        // It is not kept, but it waits no longer.
        let _ = mail.send(Mail::EvidenceDone).await;
    }
}

impl Job {
    fn name(&self) -> &'static str {
        match self {
            Self::Order(_) => "order",
            Self::Ending { .. } => "ending",
            Self::Evidence { .. } => "evidence",
            Self::Moment { .. } => "moment",
            Self::Seats => "seats",
        }
    }
}

async fn attempt(holder: &Holder, job: &Job, mail: &Sender<Mail>) -> Result<(), Error> {
    let mut tx = holder.look().await?;
    let mut answers = Vec::new();
    match job {
        Job::Order(order) => queries::insert_order(&mut tx, order).await?,
        Job::Ending { set, ending, at, recorded_at } => queries::insert_ending(&mut tx, *set, ending, *at, *recorded_at).await?,
        Job::Moment { kind, at } => queries::insert_moment(&mut tx, holder.session, holder.client, kind, *at).await?,
        Job::Seats => answers.push(Mail::Seats(queries::seats(&mut tx, holder.session).await?)),
        Job::Evidence { facts, recorded_at } => {
            evidence::keep(&mut tx, facts, *recorded_at).await?;
            answers.push(Mail::EvidenceDone);
            for set in sets_of(facts) {
                answers.extend(evidence::kept_up_to(&mut tx, set).await?.map(|seq| kept(set, seq)));
            }
        }
    }
    tx.commit().await?;
    for answer in answers {
        // The room is gone when nobody takes this; its pages are told by the next one.
        let _ = mail.send(answer).await;
    }
    Ok(())
}

fn kept(set: Uuid, seq: i32) -> Mail {
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
        _ => false,
    }
}
