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
    /// Risk was present: the call is made soon. Its name says no more than a lead may read.
    Safety,
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
            Self::Safety => "for their safety",
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

/// A call that is agreed and not made.
pub struct Agreed {
    /// After which session: its id and number.
    pub session: (Uuid, i32),
    /// Why.
    pub reason: Reason,
    /// From when.
    pub due_from: DateTime<Utc>,
    /// Until when.
    pub due_until: DateTime<Utc>,
}

/// The call that is to be made next of those agreed with `client`.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub async fn agreed(tx: &mut Tx, client: Uuid) -> Result<Option<Agreed>, Error> {
    let Some(row) = queries::agreed(tx, client).await? else { return Ok(None) };
    let reason = Reason::parse(&row.reason).ok_or(Error::Inconsistent("after_check.reason"))?;
    Ok(Some(Agreed { session: (row.session, row.number), reason, due_from: row.due_from, due_until: row.due_until }))
}

/// A call for safety is made within so many hours at most.
const SOON: i16 = 24;

/// What of a session bears on the call after it, and within which hours that is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Calls {
    /// At its opening risk was said to be present.
    pub risk: bool,
    /// It was too much in it.
    pub too_much: bool,
    /// It was the first reprocessing of its client.
    pub first: bool,
    /// From so many hours after its closing.
    pub from: i16,
    /// Until so many hours after it.
    pub until: i16,
}

impl Calls {
    /// Why a call is agreed when the session is closed so: the most urgent reason counts. `None`: none is.
    #[must_use]
    pub fn reason(self, kind: ClosingKind, unsteady: bool) -> Option<Reason> {
        if !kind.took_place() {
            None
        } else if self.risk {
            Some(Reason::Safety)
        } else if unsteady {
            Some(Reason::Unsteady)
        } else if self.too_much {
            Some(Reason::TooMuch)
        } else if kind == ClosingKind::Incomplete {
            Some(Reason::Incomplete)
        } else {
            (kind != ClosingKind::NoReprocessing && self.first).then_some(Reason::FirstReprocessing)
        }
    }

    /// Within which hours it is made. That risk does not wait for the usual window is a practitioner's judgement.
    const fn hours(self, reason: Reason) -> (i16, i16) {
        if matches!(reason, Reason::Safety) { (0, if self.from < SOON { self.from } else { SOON }) } else { (self.from, self.until) }
    }

    /// The same as a sentence; empty: none is agreed.
    #[must_use]
    pub fn words(self, kind: ClosingKind, unsteady: bool) -> String {
        let Some(reason) = self.reason(kind, unsteady) else { return String::new() };
        let (from, until) = self.hours(reason);
        format!("A call is due {from} to {until} hours after this: {}.", reason.words())
    }
}

/// What bears on the call after `session`.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn calls(tx: &mut Tx, session: Uuid) -> Result<Calls, Error> {
    let (from, until) = queries::window(tx).await?;
    Ok(Calls {
        risk: queries::was_risk(tx, session).await?,
        too_much: queries::was_too_much(tx, session).await?,
        first: queries::is_first(tx, session).await?,
        from,
        until,
    })
}

/// Agrees a call after `session` where its closing asks for one.
///
/// # Errors
/// [`Error::Database`].
pub(super) async fn agree(tx: &mut Tx, session: Uuid, kind: ClosingKind, unsteady: bool, now: DateTime<Utc>) -> Result<(), Error> {
    let calls = calls(tx, session).await?;
    let Some(reason) = calls.reason(kind, unsteady) else { return Ok(()) };
    let (from, until) = calls.hours(reason);
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
