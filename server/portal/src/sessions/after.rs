//! The call after a session: when one is due, and what came of it.

use axum::extract::State;
use chrono::{DateTime, TimeDelta, Utc};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use super::queries_after::{self as queries, CheckRow};
use crate::base::ids::new_id;
use crate::base::named::named;
use crate::platform::codes::ClosingKind;
use crate::platform::forms::{Id, Keyed};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::{Act, Tx};

/// Why a client is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Reason {
    /// They left unsteady, or before that could be seen.
    Unsteady,
    /// In the session it was too much.
    TooMuch,
    /// Reprocessing was begun and is not finished.
    Incomplete,
    /// It was the first reprocessing of all.
    FirstReprocessing,
}

named!(Reason);

impl Reason {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Unsteady => "left unsteady",
            Self::TooMuch => "it was too much",
            Self::Incomplete => "closed as incomplete",
            Self::FirstReprocessing => "first reprocessing",
        }
    }
}

/// What came of a call.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Outcome {
    /// Reached, and well.
    Well,
    /// Reached, and more was arranged.
    Support,
    /// Not reached: it stays due.
    NotReached,
    /// Reached, and they did not want to talk.
    Declined,
}

named!(Outcome);

impl Outcome {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Well => "Reached, and well",
            Self::Support => "Reached, and more was arranged: see the note",
            Self::NotReached => "Not reached: to be tried again",
            Self::Declined => "Reached, did not want to talk",
        }
    }
}

/// A call that was agreed after a session, as pages show it.
pub struct Check {
    /// Why.
    pub reason: Reason,
    /// Who calls.
    pub by: String,
    /// From when.
    pub due_from: DateTime<Utc>,
    /// Until when.
    pub due_until: DateTime<Utc>,
    /// What was tried, first to last.
    pub tries: Vec<(Outcome, DateTime<Utc>, String)>,
}

impl Check {
    /// Nobody has reached them yet.
    #[must_use]
    pub fn is_due(&self) -> bool {
        self.tries.iter().all(|(outcome, ..)| *outcome == Outcome::NotReached)
    }
}

/// The call after `session`, if one was agreed.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub(super) async fn check(tx: &mut Tx, session: Uuid) -> Result<Option<Check>, Error> {
    let Some(CheckRow { reason, by, due_from, due_until }) = queries::check(tx, session).await? else { return Ok(None) };
    let tries = queries::tries(tx, session)
        .await?
        .into_iter()
        .map(|row| Ok((Outcome::parse(&row.outcome).ok_or(Error::Inconsistent("after_check_try.outcome"))?, row.at, row.by)));
    let reason = Reason::parse(&reason).ok_or(Error::Inconsistent("after_check.reason"))?;
    Ok(Some(Check { reason, by, due_from, due_until, tries: tries.collect::<Result<_, Error>>()? }))
}

/// Agrees a call after `session` where its closing asks for one: the most urgent reason counts.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn agree(tx: &mut Tx, session: Uuid, kind: ClosingKind, unsteady: bool, now: DateTime<Utc>) -> Result<(), Error> {
    let reason = if unsteady {
        Reason::Unsteady
    } else if queries::was_too_much(tx, session).await? {
        Reason::TooMuch
    } else if kind == ClosingKind::Incomplete {
        Reason::Incomplete
    } else if kind != ClosingKind::NoReprocessing && queries::is_first(tx, session).await? {
        Reason::FirstReprocessing
    } else {
        return Ok(());
    };
    let (from, until) = queries::window(tx).await?;
    let at = |hours: i16| now + TimeDelta::hours(hours.into());
    Ok(queries::agree(tx, session, reason.name(), at(from), at(until)).await?)
}

/// What the form sends.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Tried {
    outcome: String,
}

/// `POST /sessions/{session}/check`
pub(super) async fn post(
    member: Member,
    State(app): State<App>,
    Id(session): Id,
    Keyed(once, typed): Keyed<Tried>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("session.check").object(session), &once).await?;
    let row = super::queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let outcome =
        Outcome::parse(&typed.outcome).ok_or(Error::BadRequest("Choose what came of the call from the list on the session's page."))?;
    let due = check(&mut tx, session).await?.is_some_and(|check| check.is_due());
    if !due {
        return Err(Error::Conflict("No call is due after this session any more. Open the session and look first."));
    }
    queries::tried(&mut tx, new_id(&app.world), session, outcome.name(), app.world.now()).await?;
    tx.saved(format!("/sessions/{session}")).await
}
