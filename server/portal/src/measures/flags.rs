//! Flags: an answer that is a sign of risk to life, or a blank where one was asked for. Each stays open until a person writes down what was
//! done. The software suggests no level of risk; that no flag was raised says nothing.

use axum::extract::State;
use chrono::{DateTime, Utc};
use leeward_core::measures::{Form, Measure};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use super::queries::{self, FlagRow, OpenRow, ToldRow};
use crate::base::named::named;
use crate::clients;
use crate::platform::forms::{InPath, Keyed};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::{Act, Subject, Tx};

/// What was done about a flag. Common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Done {
    /// It was known; it was looked at, and the plan stands.
    PlanStands,
    /// Asked by voice, and a plan made or changed.
    Asked,
    /// Met, and a plan made or changed.
    Seen,
    /// Somebody near them, or another professional, was called.
    OthersCalled,
    /// Sent on to other care.
    SentOn,
    /// Emergency help was called.
    Emergency,
}

named!(Done);

impl Done {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::PlanStands => "known, looked at today, the plan stands",
            Self::Asked => "asked by voice, the plan made or changed",
            Self::Seen => "met, the plan made or changed",
            Self::OthersCalled => "somebody near them or another professional called",
            Self::SentOn => "sent on to other care",
            Self::Emergency => "emergency help called",
        }
    }
}

/// A flag that is open and for the asker.
pub struct OpenFlag {
    /// The form that raised it.
    response: Uuid,
    /// Whose.
    pub client: Uuid,
    /// The number of their record.
    pub record: i32,
    /// The number of the form and what its item says; `None`: the asker does not treat the client, and learns no more than that there is one.
    pub form: Option<(i32, String)>,
    /// Since when.
    pub raised_at: DateTime<Utc>,
    /// Who treats the client.
    pub treats: String,
}

/// The flags that are open and for the asker, the oldest first.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub async fn open_flags(tx: &mut Tx) -> Result<Vec<OpenFlag>, Error> {
    let mut all = vec![];
    for row in queries::open_flags(tx).await? {
        let OpenRow { response, client, record, number, measure, says, raised_at, treats } = row;
        let form = match (number, measure, says) {
            (Some(number), Some(measure), Some(says)) => {
                let form = Measure::parse(&measure).ok_or(Error::Inconsistent("response.measure"))?.form();
                Some((number, says_words(form, &says)?))
            }
            _ => None,
        };
        all.push(OpenFlag { response, client, record, form, raised_at, treats });
    }
    Ok(all)
}

/// Writes down that the asker has this flag on screen; the first time counts.
///
/// # Errors
/// [`Error::Database`].
pub async fn told(tx: &mut Tx, flag: &OpenFlag, now: DateTime<Utc>) -> Result<(), Error> {
    Ok(queries::told(tx, flag.response, flag.client, now).await?)
}

/// What the form's item about risk says, in words.
fn says_words(form: &Form, says: &str) -> Result<String, Error> {
    let (name, item) = (form.name, form.risk.ok_or(Error::Inconsistent("risk_flag.response_id"))?);
    match says {
        "unknown" => Ok(format!("{name}, item {item} (thoughts of death or self-harm) was left blank: ask")),
        "flag" => Ok(format!("{name}, item {item} (thoughts of death or self-harm) was answered with 1 or more")),
        _ => Err(Error::Inconsistent("risk_flag.says")),
    }
}

/// A flag as the page of its form shows it.
pub(super) struct Flag {
    pub(super) says: String,
    pub(super) raised_at: DateTime<Utc>,
    /// What was done, when, and by whom.
    pub(super) done: Option<(&'static str, DateTime<Utc>, String)>,
    /// Who was told, how and when; the first first.
    pub(super) told: Vec<(String, &'static str, DateTime<Utc>)>,
}

impl Flag {
    pub(super) fn of(row: FlagRow, measure: Measure, told: Vec<ToldRow>) -> Result<Self, Error> {
        let form = measure.form();
        let done = match (row.done, row.done_at, row.done_by) {
            (Some(done), Some(at), by) => {
                let done = Done::parse(&done).ok_or(Error::Inconsistent("risk_flag.done"))?;
                Some((done.words(), at, by.unwrap_or_default()))
            }
            _ => None,
        };
        let how = |one: &ToldRow| if one.by_mail { "told by mail" } else { "had it on screen" };
        let told = told.into_iter().map(|one| (one.name.clone().unwrap_or_default(), how(&one), one.at)).collect();
        Ok(Self { says: says_words(form, &row.says)?, raised_at: row.raised_at, done, told })
    }
}

/// Writes down what was done about the flag of form `number`.
///
/// # Errors
/// [`Error::NothingWritten`] when it is closed already, or the one who asks does not treat the client.
pub async fn close_flag(app: &App, subject: &Subject, client: Uuid, number: i32, done: Done) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("flag.close").client(client)).await?;
    if !queries::close(&mut tx, client, number, done.name(), app.world.now()).await? {
        return Err(Error::NothingWritten("risk_flag"));
    }
    tx.commit().await
}

/// What the form sends.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Closing {
    done: String,
    /// "yes": by the button that closes it in one action, whatever the list shows.
    known: String,
}

/// `POST /clients/{client}/measures/{number}/flag`
pub(super) async fn close(
    member: Member,
    State(app): State<App>,
    InPath((client, number)): InPath<(Uuid, i32)>,
    Keyed(once, typed): Keyed<Closing>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("flag.close").client(client), &once).await?;
    clients::key(&mut tx, &app, client).await?;
    let done = match (typed.known.as_str(), typed.done.as_str()) {
        ("yes", "") => Some(Done::PlanStands),
        ("yes", _) => {
            return Err(Error::BadRequest("The list says one thing and the button another, so nothing was written down. Use one of them."));
        }
        (_, done) => Done::parse(done),
    };
    let done = done.ok_or(Error::BadRequest("Choose what was done from the list on the form\u{2019}s page."))?;
    if !queries::close(&mut tx, client, number, done.name(), app.world.now()).await? {
        return Err(Error::Conflict("This flag is closed already, or this form has none. Open its page and look."));
    }
    tx.saved(format!("/clients/{client}/measures/{number}")).await
}
