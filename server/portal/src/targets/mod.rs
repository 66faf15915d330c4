//! Targets: the memories, triggers and future situations that are worked on.

mod assessments;
mod at_desk;
mod beliefs;
mod change;
mod facts;
mod form;
mod form_plan;
mod plan;
mod queries;
mod show;

use axum::routing::{get, post};
use chrono::{DateTime, Utc};
use leeward_core::scale::{Sud, Voc};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use assessments::Ratings;
pub use plan::{Belongs, Cluster, Planned, Theme, Wanted, clusters};

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::clients;
use crate::course::{self, Stand};
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private, SealError};
use crate::store::subject::{Act, Subject, Tx};

/// What was said about a target in assessment. All of it is sealed; an empty text means "not asked". As it is
/// read, each may turn out not to open.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Words<T = Private> {
    /// A name that gives nothing away; at most 60 characters, never empty.
    pub label: T,
    /// The worst picture; at most 600 characters.
    pub picture: T,
    /// The negative belief about oneself that goes with it; at most 600 characters.
    pub negative_belief: T,
    /// The belief that is wanted instead; at most 600 characters.
    pub positive_belief: T,
    /// The emotions; at most 300 characters.
    pub emotions: T,
    /// Where in the body it is felt; at most 300 characters.
    pub body_location: T,
}

impl Words<Opened> {
    /// All of them as texts, for a form or to be sealed again.
    ///
    /// # Errors
    /// [`SealError`] when one did not open.
    pub fn whole(self) -> Result<Words, SealError> {
        Ok(Words {
            label: self.label.text()?,
            picture: self.picture.text()?,
            negative_belief: self.negative_belief.text()?,
            positive_belief: self.positive_belief.text()?,
            emotions: self.emotions.text()?,
            body_location: self.body_location.text()?,
        })
    }
}

/// Which of the three prongs of a treatment plan a target belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Prong {
    /// A memory.
    Past,
    /// Something that sets it off now.
    Present,
    /// A situation to come.
    Future,
}

named!(Prong);

impl Prong {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Past => "Past: a memory",
            Self::Present => "Present: a trigger",
            Self::Future => "Future: a situation to come",
        }
    }
}

/// A target as it stands.
#[derive(Clone, Debug)]
pub struct Target {
    /// Its id.
    pub id: Uuid,
    /// Whose it is.
    pub client: Uuid,
    /// Within the client, from 1.
    pub number: i32,
    /// Past, present or future.
    pub prong: Prong,
    /// Where it stands in the plan.
    pub planned: Planned,
    /// How far it has come.
    pub stand: Stand,
    /// When it was entered.
    pub opened_at: DateTime<Utc>,
    /// When it was archived, if it was.
    pub archived_at: Option<DateTime<Utc>>,
    /// Edits are saved against it.
    pub version: i32,
    /// What was said.
    pub words: Words<Opened>,
    /// The SUD given first; an assessment made anew leaves it as it is.
    pub first_sud: Option<Sud>,
    /// The VOC given first, likewise.
    pub first_voc: Option<Voc>,
    /// The SUD assessed last.
    pub assessed_sud: Option<Sud>,
    /// The VOC assessed last.
    pub assessed_voc: Option<Voc>,
    /// The SUD given last, wherever in the work.
    pub latest_sud: Option<Sud>,
    /// The VOC given last, wherever in the work.
    pub latest_voc: Option<Voc>,
}

impl Target {
    /// How it stands, in words.
    #[must_use]
    pub fn stands(&self) -> &'static str {
        course::state_words(self.stand)
    }
}

/// What a target starts with.
#[derive(Clone, Debug)]
pub struct NewTarget {
    /// Whose it is.
    pub client: Uuid,
    /// Past, present or future.
    pub prong: Prong,
    /// What was said.
    pub words: Words,
    /// SUD at assessment, if it was asked.
    pub sud: Option<Sud>,
    /// VOC at assessment, if it was asked.
    pub voc: Option<Voc>,
}

/// Enters a target: planned. Returns its id once it is saved.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, [`Error::Conflict`] when the
/// client's record is archived, [`Error::Database`]: nothing was kept.
pub async fn create(app: &App, subject: &Subject, new: NewTarget) -> Result<Uuid, Error> {
    let mut tx = app.database.act(subject, Act::new("target.create").client(new.client)).await?;
    let target = add(&mut tx, app, new).await?;
    tx.commit().await?;
    Ok(target)
}

/// Says where a target stands in the plan.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client; [`Error::Conflict`] when the plan has no such cluster or target, or
/// the target would come up from itself. Then nothing was kept.
pub async fn arrange(app: &App, subject: &Subject, target: Uuid, wanted: &Wanted) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("target.change").object(target)).await?;
    let client = find(&mut tx, app, target).await?.client;
    let kept = plan::keep(&mut tx, app, client, target, wanted).await?;
    kept.map_err(|_| Error::Conflict("The plan holds no such cluster or target, or the target would come up from itself."))?;
    tx.commit().await
}

async fn add(tx: &mut Tx, app: &App, new: NewTarget) -> Result<Uuid, Error> {
    let target = new_id(&app.world);
    tx.is_about(target);
    let key = clients::key(tx, app, new.client).await?;
    clients::must_be_open(tx, new.client).await?;
    queries::insert_target(tx, target, &new, app.world.now()).await?;
    plan::begin(tx, new.client, target).await?;
    course::begin(tx, new.client, target).await?;
    queries::keep_words(tx, new.client, &seal(app, &key, target, 1, &new.words)?).await?;
    assessments::assess(tx, app, new.client, target, Ratings { sud: new.sud, voc: new.voc }).await?;
    Ok(target)
}

/// One target, with its words and ratings; names the client to the audit.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn find(tx: &mut Tx, app: &App, target: Uuid) -> Result<Target, Error> {
    let row = queries::target(tx, target).await?.ok_or(Error::NotFound)?;
    let key = clients::key(tx, app, row.client_id).await?;
    tx.concerns(row.client_id);
    let standing = queries::standing(tx, row.client_id).await?;
    row.open(&key, &standing)
}

/// All targets of a client by number, archived ones too.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn list(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<Target>, Error> {
    let key = clients::key(tx, app, client).await?;
    let standing = queries::standing(tx, client).await?;
    queries::targets(tx, client).await?.into_iter().map(|row| row.open(&key, &standing)).collect()
}

/// The words of one row at one version, sealed.
struct SealedWords {
    target_id: Uuid,
    label: Vec<u8>,
    picture: Vec<u8>,
    negative_belief: Vec<u8>,
    positive_belief: Vec<u8>,
    emotions: Vec<u8>,
    body_location: Vec<u8>,
    version: i32,
}

fn seal(app: &App, key: &ClientKey, target: Uuid, version: i32, words: &Words) -> Result<SealedWords, Error> {
    let row = key.row(target, version);
    Ok(SealedWords {
        target_id: target,
        label: row.seal(&app.world, Field::TargetLabel, &words.label)?,
        picture: row.seal(&app.world, Field::TargetPicture, &words.picture)?,
        negative_belief: row.seal(&app.world, Field::TargetNegativeBelief, &words.negative_belief)?,
        positive_belief: row.seal(&app.world, Field::TargetPositiveBelief, &words.positive_belief)?,
        emotions: row.seal(&app.world, Field::TargetEmotions, &words.emotions)?,
        body_location: row.seal(&app.world, Field::TargetBodyLocation, &words.body_location)?,
        version,
    })
}

fn open(key: &ClientKey, sealed: &SealedWords) -> Words<Opened> {
    let row = key.row(sealed.target_id, sealed.version);
    Words {
        label: row.open(Field::TargetLabel, &sealed.label),
        picture: row.open(Field::TargetPicture, &sealed.picture),
        negative_belief: row.open(Field::TargetNegativeBelief, &sealed.negative_belief),
        positive_belief: row.open(Field::TargetPositiveBelief, &sealed.positive_belief),
        emotions: row.open(Field::TargetEmotions, &sealed.emotions),
        body_location: row.open(Field::TargetBodyLocation, &sealed.body_location),
    }
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    plan::routes(routes)
        .get("/clients/{client}/targets/new", Rule::Care, get(change::new_form))
        .post("/clients/{client}/targets/new", Rule::Care, post(change::save_new))
        .get("/targets/{target}", Rule::Care, get(show::show))
        .get("/targets/{target}/edit", Rule::Care, get(change::edit_form))
        .post("/targets/{target}/edit", Rule::Care, post(change::save_edit))
        .post("/targets/{target}/facts", Rule::Care, post(facts::post))
        .post("/targets/{target}/assessment", Rule::Care, post(at_desk::post))
        .post("/targets/{target}/archive", Rule::Care, post(change::archive))
        .post("/targets/{target}/restore", Rule::Care, post(change::restore))
}
