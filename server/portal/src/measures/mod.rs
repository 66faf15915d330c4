//! Questionnaires: what came of them, what a change of them comes to, and the flags that an answer raises. Forms, scores and their sources are
//! in `leeward_core::measures`.

mod answers;
mod by_client;
mod entry;
mod flags;
mod overview;
mod queries;
mod response;

use axum::routing::{get, post};
use chrono::{DateTime, Utc};
use leeward_core::measures::{Measure, Risk, Score, Threshold};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::clients;
use crate::episodes::{self, Place};
use crate::platform::{App, Routes, Rule};
use crate::store::database::as_owner;
use crate::store::error::Error;
use crate::store::seal::{Field, Opened, Private};
use crate::store::subject::{Act, Subject, Tx};

pub use answers::Sheet;
pub(crate) use answers::{BLANK, ITEMS};
pub(crate) use by_client::{Handed, hand_in};
pub use entry::has_event;
pub use flags::{Done, OpenFlag, close_flag, open_flags, told};

/// When in a treatment a form was filled in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Occasion {
    /// Before it, or at its beginning.
    Intake,
    /// In its course.
    Regular,
    /// At its end.
    End,
    /// After its end.
    FollowUp,
}

named!(Occasion);

impl Occasion {
    /// Where in a treatment that is.
    #[must_use]
    pub const fn place(self) -> Place {
        match self {
            Self::Intake => Place::Beginning,
            Self::Regular => Place::Course,
            Self::End => Place::End,
            Self::FollowUp => Place::After,
        }
    }

    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Intake => "intake",
            Self::Regular => "in its course",
            Self::End => "at its end",
            Self::FollowUp => "after its end",
        }
    }
}

/// A form that was filled in.
pub struct Filled {
    /// Which.
    pub measure: Measure,
    /// When in the treatment.
    pub occasion: Occasion,
    /// When it was answered.
    pub answered_at: DateTime<Utc>,
    /// Its answers.
    pub sheet: Sheet,
    /// What it was asked about; empty where the form asks about no event.
    pub event: Private,
}

/// One that is kept.
pub struct Response {
    /// Its id.
    pub id: Uuid,
    /// Within the client, from 1.
    pub number: i32,
    /// Which form.
    pub measure: Measure,
    /// Of which treatment, by its number.
    pub episode: i32,
    /// When in it.
    pub occasion: Occasion,
    /// When it was answered.
    pub answered_at: DateTime<Utc>,
    /// The total by the rules that scored it; `None`: it cannot be told, for blanks.
    pub total: Option<f64>,
    /// It was filled up for one or two blanks.
    pub prorated: bool,
    /// From so many points on a change counted as reliable when it was kept.
    pub points: Option<i16>,
    /// The version of the rules.
    pub rules: i16,
    /// The client filled it in.
    pub by_client: bool,
    /// Who entered it.
    pub by: String,
    /// Number of the one that it corrects.
    pub corrects: Option<i32>,
    /// Its answers, as far as they open.
    pub answers: Opened,
    /// What it was asked about.
    pub event: Opened,
}

/// All of `client` that stand, the first answered first.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client; [`Error::Inconsistent`] when a row does not say what it must.
pub async fn responses(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<Response>, Error> {
    let key = clients::key(tx, app, client).await?;
    queries::responses(tx, client).await?.into_iter().map(|row| row.open(&key)).collect()
}

/// The threshold by which the practice judges a change of `measure` now; `None`: none is published, or it is no measure of change.
///
/// # Errors
/// [`Error::Database`].
pub async fn threshold(tx: &mut Tx, measure: Measure) -> Result<Option<Threshold>, Error> {
    let chosen = match measure {
        Measure::Pcl5 => Some(queries::points(tx).await?.0),
        Measure::Anxiety5 => Some(queries::points(tx).await?.1),
        _ => None,
    };
    let all = measure.form().reliable;
    let wanted = |one: &&Threshold| chosen.is_some_and(|points| i16::try_from(one.points) == Ok(points));
    Ok(all.iter().find(wanted).or(all.first()).copied())
}

/// Keeps a form that was filled in, in a transaction of its own; its number.
///
/// # Errors
/// As [`keep`]: nothing was kept.
pub async fn enter(app: &App, subject: &Subject, client: Uuid, filled: &Filled) -> Result<i32, Error> {
    let mut tx = app.database.act(subject, Act::new("measure.enter").client(client)).await?;
    let (number, _) = keep(&mut tx, app, client, filled, None).await?;
    tx.commit().await?;
    Ok(number)
}

/// Keeps a form that was filled in, in its treatment, with the flag that it raises; `corrects` is the number of one whose place it takes. Its
/// number and its score.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, or there is no such form; [`Error::Conflict`] when the record is archived, the
/// form is bound ([`queries::Kept::bound`]), or no treatment has ended that it could come after; [`Error::Inner`] when the answers are none to this form.
pub async fn keep(tx: &mut Tx, app: &App, client: Uuid, filled: &Filled, corrects: Option<i32>) -> Result<(i32, Score), Error> {
    clients::must_be_open(tx, client).await?;
    let key = clients::key(tx, app, client).await?;
    let measure = filled.measure;
    let score = measure.score(filled.sheet.answers()).map_err(|fault| Error::Inner(format!("a form: {fault}")))?;
    let replaces = match corrects {
        Some(number) => Some(queries::kept(tx, client, number).await?.ok_or(Error::NotFound)?),
        None => None,
    };
    if let Some(kept) = &replaces {
        kept.must_be_free()?;
    }
    // A correction belongs where the form belongs, and is judged as that was.
    let (episode, points) = match &replaces {
        Some(kept) => (kept.episode, kept.points),
        None => {
            let points = threshold(tx, measure).await?.filter(|_| measure.form().is_outcome).and_then(|one| i16::try_from(one.points).ok());
            (episodes::for_form(tx, app, client, filled.occasion.place(), filled.answered_at).await?, points)
        }
    };
    let id = new_id(&app.world);
    let row = key.row(id, ONLY_VERSION);
    let answers = row.seal(&app.world, Field::ResponseAnswers, &Private::new(filled.sheet.text()))?;
    let event = row.seal(&app.world, Field::ResponseEvent, &filled.event)?;
    let new =
        queries::New { id, client, episode, filled, score: &score, points, replaces: replaces.map(|one| one.id), now: app.world.now() };
    let number = queries::add(tx, &new, &answers, &event).await?;
    if let Some(says) = flag(score.risk) {
        queries::raise(tx, id, client, says, app.world.now()).await?;
    }
    Ok((number, score))
}

/// What a flag says; `None`: none is raised. That the item says nothing is no sign that there is no risk.
const fn flag(risk: Risk) -> Option<&'static str> {
    match risk {
        Risk::Silent => None,
        Risk::Unknown => Some("unknown"),
        Risk::Flag => Some("flag"),
    }
}

/// Makes the summaries anew that are kept otherwise than their forms say, as the database's owner: that should never be. How many there are, and
/// of which episodes they differed.
///
/// # Errors
/// [`Error::Database`], also when `url` is not the owner's: nothing was made anew.
pub async fn rebuild(url: &str) -> Result<(i64, Vec<Uuid>), Error> {
    as_owner(url, async |db| queries::refold(db).await).await
}

/// Answers never change: a correction is a row of its own.
const ONLY_VERSION: i32 = 1;

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/clients/{client}/measures", Rule::Care, get(overview::show))
        .get("/clients/{client}/measures/new/{measure}", Rule::Care, get(entry::show))
        .post("/clients/{client}/measures/new/{measure}", Rule::Care, post(entry::save))
        .get("/clients/{client}/measures/{number}", Rule::Care, get(response::show))
        .post("/clients/{client}/measures/{number}/withdraw", Rule::Care, post(response::withdraw))
        .post("/clients/{client}/measures/{number}/flag", Rule::Care, post(flags::close))
}
