//! Courses of treatment. One begins with its first session, or by hand before that, and ends for a reason that a person gives; a client may
//! have several, one after the other. Nothing is counted as an outcome without one.

mod form;
mod queries;
mod rebuild;

use axum::routing::{get, post};
use chrono::{DateTime, TimeDelta, Utc};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::clients;
use crate::platform::{App, Repeats, Routes, Rule};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

pub use rebuild::{Rebuilt, rebuild};

/// Why a treatment ended. Common practice in counting who left, no source; drop-out is defined otherwise in every paper, so the reason is
/// kept and the definition printed (reference of statistics, section 10).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Reason {
    /// What was agreed is done.
    AsAgreed,
    /// Ended sooner than planned, and both wanted it.
    EarlyByAgreement,
    /// The client stayed away, or ended it alone.
    ClientEnded,
    /// Somebody else treats from now on.
    ReferredOn,
    /// Admitted to hospital, or in a crisis that needs other care.
    Crisis,
    /// They moved away.
    Moved,
    /// The clinician left.
    ClinicianLeft,
    /// They died.
    Died,
    /// Nobody knows.
    Unknown,
    /// It was begun by mistake, and nobody was treated.
    Mistake,
}

named!(Reason);

impl Reason {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::AsAgreed => "completed as agreed",
            Self::EarlyByAgreement => "ended early, by agreement",
            Self::ClientEnded => "ended by the client, without agreement",
            Self::ReferredOn => "referred on",
            Self::Crisis => "admitted, or in a crisis",
            Self::Moved => "moved away",
            Self::ClinicianLeft => "the clinician left",
            Self::Died => "died",
            Self::Unknown => "not known",
            Self::Mistake => "begun by mistake, nobody was treated",
        }
    }
}

/// How a treatment ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct End {
    /// When.
    pub at: DateTime<Utc>,
    /// Why.
    pub reason: Reason,
    /// Who judged so.
    pub judged_by: String,
}

/// One course of treatment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Episode {
    /// Its id.
    pub id: Uuid,
    /// Within the client, from 1.
    pub number: i32,
    /// When it was opened.
    pub begun_at: DateTime<Utc>,
    /// Its first session attended; `None`: none was.
    pub started_at: Option<DateTime<Utc>>,
    /// Its first set of reprocessing; `None`: there was none.
    pub reprocessed_at: Option<DateTime<Utc>>,
    /// Its last session attended.
    pub last_at: Option<DateTime<Utc>>,
    /// Sessions attended.
    pub sessions: i32,
    /// `None`: it goes on.
    pub end: Option<End>,
    /// Of what a person said of its end.
    pub version: i32,
}

impl Episode {
    fn was_mistake(&self) -> bool {
        self.end.as_ref().is_some_and(|end| end.reason == Reason::Mistake)
    }

    /// For how many weeks nobody was seen, where that is as long as an end is proposed after; it never comes by itself.
    #[must_use]
    pub fn quiet_for(&self, weeks: i16, now: DateTime<Utc>) -> Option<i64> {
        let quiet = now - self.last_at.filter(|_| self.end.is_none())?;
        (quiet >= TimeDelta::weeks(weeks.into())).then(|| quiet.num_weeks())
    }
}

/// All of `client`, the first first. Nothing for those who may not read them.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub async fn episodes(tx: &mut Tx, client: Uuid) -> Result<Vec<Episode>, Error> {
    queries::episodes(tx, client).await
}

/// After so many weeks without a session an end is proposed.
///
/// # Errors
/// [`Error::Database`].
pub async fn weeks_without(tx: &mut Tx) -> Result<i16, Error> {
    Ok(queries::weeks_without(tx).await?)
}

/// When in a treatment something was, as far as that says which treatment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Before it or at its beginning.
    Beginning,
    /// In its course.
    Course,
    /// At its end.
    End,
    /// After its end.
    After,
}

/// The treatment that a form answered at `at` belongs to: the first that had not ended by then, which begins where none is and the form is of
/// its beginning; what is of an end, or comes after one, and is later than all of them belongs to the last that ended. The client's row is
/// locked by then.
///
/// # Errors
/// [`Error::Conflict`] when there is no such treatment, or the client is a pretend one.
pub async fn for_form(tx: &mut Tx, app: &App, client: Uuid, place: Place, at: DateTime<Utc>) -> Result<Uuid, Error> {
    if clients::is_rehearsal(tx, client).await? {
        return Err(Error::Conflict("This is the pretend client of your rehearsals: nobody is treated, so no form is kept."));
    }
    let all = episodes(tx, client).await?;
    let all: Vec<&Episode> = all.iter().filter(|one| !one.was_mistake()).collect();
    let ended = all.iter().rev().find(|one| one.end.is_some());
    let then = all.iter().find(|one| one.end.as_ref().is_none_or(|end| end.at >= at));
    match (place, then, ended) {
        (Place::After, _, Some(ended)) => Ok(ended.id),
        (Place::After, _, None) => {
            Err(Error::Conflict("No treatment has ended yet, so no form can come after its end. Choose another time."))
        }
        (_, Some(then), _) => Ok(then.id),
        (Place::End, None, Some(ended)) => Ok(ended.id),
        (Place::Course, None, Some(_)) => Err(Error::Conflict(
            "No treatment was open then. Choose at its end or after its end, or begin a treatment on the record first.",
        )),
        (_, None, _) => {
            let id = new_id(&app.world);
            queries::begin(tx, id, client, app.world.now()).await?;
            Ok(id)
        }
    }
}

/// Says how the treatment of `client` that is open ended.
///
/// # Errors
/// [`Error::NotFound`] when none is open, or the one who asks does not treat the client; [`Error::NothingWritten`] when it was ended meanwhile.
pub async fn end(app: &App, subject: &Subject, client: Uuid, at: DateTime<Utc>, reason: Reason) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("episode.end").client(client)).await?;
    clients::lock(&mut tx, client).await?;
    let open = episodes(&mut tx, client).await?.into_iter().find(|one| one.end.is_none()).ok_or(Error::NotFound)?;
    if !queries::end(&mut tx, open.id, open.version, Some((at, reason))).await? {
        return Err(Error::NothingWritten("episode"));
    }
    tx.commit().await
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .post_repeated(
            "/clients/{client}/episodes",
            Rule::Care,
            Repeats::ByNature("one treatment of a client is open at a time, and that one is begun"),
            post(form::begin),
        )
        .get("/clients/{client}/episodes/{number}", Rule::Care, get(form::show))
        .post("/clients/{client}/episodes/{number}", Rule::Care, post(form::save))
}
