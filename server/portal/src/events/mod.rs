//! Adverse events: what went wrong, when, and what was done. Written down once; a correction is written beside what it corrects.

mod form;
mod queries;
mod show;

use axum::routing::{get, post};
use chrono::{DateTime, Utc};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::clients;
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{Field, Opened, Private};
use crate::store::subject::{Act, Subject, Tx};

/// What went wrong. Common practice in reporting such events, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Kind {
    /// Distress that did not settle.
    Distress,
    /// It came again outside the session.
    Reliving,
    /// Away from here and now for longer.
    Away,
    /// Panic.
    Panic,
    /// Thoughts of suicide, new or stronger.
    Suicidal,
    /// Self-harm, or close to it.
    SelfHarm,
    /// Head, eyes, stomach.
    Body,
    /// A seizure, or fainting.
    Seizure,
    /// A fall, or an injury.
    Injury,
    /// Seen or overheard by somebody who should not.
    Seen,
    /// Something else.
    Other,
}

named!(Kind);

impl Kind {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Distress => "Distress that did not settle",
            Self::Reliving => "Reliving between sessions",
            Self::Away => "Away from here and now for longer",
            Self::Panic => "Panic",
            Self::Suicidal => "Thoughts of suicide, new or stronger",
            Self::SelfHarm => "Self-harm, or close to it",
            Self::Body => "Headache, dizziness, nausea or eyes",
            Self::Seizure => "Seizure, or fainting",
            Self::Injury => "A fall or an injury",
            Self::Seen => "Seen or overheard by somebody else",
            Self::Other => "Something else",
        }
    }
}

/// What was done first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Done {
    /// Settled together.
    Settled,
    /// Somebody stayed with them.
    Stayed,
    /// Called, or met again.
    Called,
    /// The safety plan was used.
    Plan,
    /// Sent on to other care.
    SentOn,
    /// Emergency help was called.
    Emergency,
    /// Nothing was needed.
    Nothing,
}

named!(Done);

impl Done {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Settled => "Settled together",
            Self::Stayed => "Somebody stayed with them",
            Self::Called => "Called or met again",
            Self::Plan => "Safety plan used",
            Self::SentOn => "Sent on to other care",
            Self::Emergency => "Emergency help called",
            Self::Nothing => "Nothing was needed",
        }
    }
}

/// One event. As it is read, the account may turn out not to open.
#[derive(Clone, Debug)]
pub struct Event<T = Private> {
    /// What went wrong.
    pub kind: Kind,
    /// When.
    pub happened_at: DateTime<Utc>,
    /// What was done first.
    pub done: Done,
    /// What happened, and all that was done; at most 2000 characters, may be empty.
    pub account: T,
    /// Number of the session in which it was; `None`: between sessions.
    pub session: Option<i32>,
}

/// One that is kept.
#[derive(Clone, Debug)]
pub struct KeptEvent {
    /// Within the client, from 1.
    pub number: i32,
    /// What it is.
    pub event: Event<Opened>,
    /// Number of the one that corrects it.
    pub corrected_by: Option<i32>,
    /// Number of the one that it corrects.
    pub corrects: Option<i32>,
    /// Who wrote it down.
    pub by: String,
}

/// All events of `client`, the latest first.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client; [`Error::Inconsistent`] when a row does not say what it must.
pub async fn events(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<KeptEvent>, Error> {
    let key = clients::key(tx, app, client).await?;
    queries::events(tx, client).await?.into_iter().map(|row| row.open(&key)).collect()
}

/// Writes an event down; `corrects` is the number of one that it takes the place of.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, or there is no such session or event; [`Error::Conflict`] when the
/// record is archived or the event was corrected already; [`Error::Database`]: nothing was kept.
pub async fn add(app: &App, subject: &Subject, client: Uuid, event: &Event, corrects: Option<i32>) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("event.create").client(client)).await?;
    add_in(&mut tx, app, client, event, corrects).await?;
    tx.commit().await
}

/// Answers the session in which it was.
async fn add_in(tx: &mut Tx, app: &App, client: Uuid, event: &Event, corrects: Option<i32>) -> Result<Option<Uuid>, Error> {
    clients::must_be_open(tx, client).await?;
    let key = clients::key(tx, app, client).await?;
    let session = match event.session {
        Some(number) => Some(queries::session(tx, client, number).await?.ok_or(Error::NotFound)?),
        None => None,
    };
    let replaces = match corrects {
        Some(number) => Some(queries::to_correct(tx, client, number).await?.ok_or(Error::NotFound)?),
        None => None,
    };
    if replaces.as_ref().is_some_and(|one| one.corrected) {
        return Err(Error::Conflict(
            "This event was corrected already. Look at its correction, and correct that one if it is still wrong.",
        ));
    }
    let id = new_id(&app.world);
    let account = key.row(id, ONLY_VERSION).seal(&app.world, Field::EventAccount, &event.account)?;
    queries::add(tx, (id, client, session, replaces.map(|one| one.id)), event, &account, app.world.now()).await?;
    Ok(session)
}

/// An account never changes: a correction is a row of its own.
const ONLY_VERSION: i32 = 1;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/clients/{client}/events", Rule::Care, get(show::show))
        .get("/clients/{client}/events/new", Rule::Care, get(form::show))
        .post("/clients/{client}/events/new", Rule::Care, post(form::save))
}
