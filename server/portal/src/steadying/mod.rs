//! What steadies a client: what shows early that they are leaving, what brought them back, what to say first, and what has helped
//! before. It stands on the record and, when it is too much, at the desk.

mod form;
mod queries;
mod resource_form;
mod resources;
mod show;

use axum::routing::{get, post};
use chrono::{DateTime, Utc};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::clients::{self, one_form};
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private, SealError};
use crate::store::subject::{Act, Subject, Tx};

/// One of the three lines.
pub(crate) struct Line {
    /// Its name in forms and its column.
    pub(crate) name: &'static str,
    /// As a person reads it.
    pub(crate) words: &'static str,
    /// What to write down.
    pub(crate) hint: &'static str,
    field: Field,
}

/// The lines, in the order in which they are needed. Common practice, no source.
pub(crate) const LINES: [Line; 3] = [
    Line {
        name: "signs",
        words: "Early signs",
        hint: "What shows early that they are leaving: eyes, breath, hands, voice.",
        field: Field::SteadyingSigns,
    },
    Line { name: "way_back", words: "Way back", hint: "What brought them back before.", field: Field::SteadyingWayBack },
    Line { name: "first_words", words: "First words", hint: "What to say first, and what not to say.", field: Field::SteadyingFirstWords },
];

/// One client's lines. As they are read, each may turn out not to open.
#[derive(Clone, Debug)]
pub struct Steadying<T = Private> {
    /// Signs, way back, first words; each at most 200 characters. Empty: nothing is written down.
    pub lines: [T; 3],
}

impl Steadying<Opened> {
    /// All of it as texts, to be sealed again.
    ///
    /// # Errors
    /// [`SealError`] when a line did not open.
    pub fn whole(self) -> Result<Steadying, SealError> {
        let [signs, way_back, first_words] = self.lines;
        Ok(Steadying { lines: [signs.text()?, way_back.text()?, first_words.text()?] })
    }
}

/// Whether something has helped.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Helped {
    /// It has.
    Yes,
    /// It was tried, and did not.
    No,
    /// Not tried yet, or not known.
    #[default]
    NotKnown,
}

named!(Helped);

impl Helped {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Yes => "helped",
            Self::No => "did not help",
            Self::NotKnown => "not known yet",
        }
    }
}

/// Something that may steady a client, in their words. As it is read, each part may turn out not to open.
#[derive(Clone, Debug, Default)]
pub struct Resource<T = Private> {
    /// The cue word; at most 60 characters, needed.
    pub cue: T,
    /// The picture; at most 200 characters.
    pub image: T,
    /// Where it is felt, and how; at most 200 characters.
    pub body_feeling: T,
    /// Whether it has helped.
    pub helped: Helped,
    /// It can be put on the client's page from the desk.
    pub on_offer: bool,
}

impl Resource<Opened> {
    fn whole(self) -> Result<Resource, SealError> {
        let Self { cue, image, body_feeling, helped, on_offer } = self;
        Ok(Resource { cue: cue.text()?, image: image.text()?, body_feeling: body_feeling.text()?, helped, on_offer })
    }

    /// As the client's page shows it: the cue word, then the picture. `None`: the cue did not open, so there is nothing to show.
    #[must_use]
    pub fn on_page(&self) -> Option<String> {
        let Opened::Text(cue) = &self.cue else { return None };
        let cue = cue.reveal().trim_end_matches('.');
        Some(match &self.image {
            Opened::Text(image) if !image.is_empty() => format!("{cue}. {}", image.reveal()),
            _ => cue.to_owned(),
        })
    }
}

/// One that is kept.
#[derive(Clone, Debug)]
pub struct KeptResource {
    /// Within the client, from 1.
    pub number: i32,
    /// What it is.
    pub resource: Resource<Opened>,
    /// When it was found.
    pub found_at: DateTime<Utc>,
    /// Edits are saved against it.
    pub version: i32,
}

/// The lines of `client` and their version, if any were written.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn steadying(tx: &mut Tx, app: &App, client: Uuid) -> Result<Option<(Steadying<Opened>, i32)>, Error> {
    let key = clients::key(tx, app, client).await?;
    Ok(queries::steadying(tx, client).await?.map(|row| row.open(&key, client)))
}

/// What may steady `client`, in the order in which it was found.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn resources(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<KeptResource>, Error> {
    let key = clients::key(tx, app, client).await?;
    queries::resources(tx, client).await?.into_iter().map(|row| row.open(&key)).collect()
}

/// Keeps the lines of a client against the version they were read at, 0 when there were none. False: somebody has changed them meanwhile.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, [`Error::Conflict`] when the record is archived,
/// [`Error::Database`]: nothing was kept.
pub async fn save(app: &App, subject: &Subject, client: Uuid, lines: &Steadying, version: i32) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("steadying.change").client(client)).await?;
    let key = clients::key(&mut tx, app, client).await?;
    if !change(&mut tx, app, &key, client, lines, version).await? {
        return Ok(false);
    }
    tx.commit().await?;
    Ok(true)
}

async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, lines: &Steadying, version: i32) -> Result<bool, Error> {
    clients::must_be_open(tx, client).await?;
    let before = queries::steadying(tx, client).await?.map(|row| row.open(key, client));
    if !one_form::may_replace(before.map(|(lines, at)| (lines.whole().map(drop), at)), version)? {
        return Ok(false);
    }
    let row = key.row(client, version + 1);
    let mut sealed = Vec::with_capacity(LINES.len());
    for (line, text) in LINES.iter().zip(&lines.lines) {
        sealed.push(row.seal(&app.world, line.field, text)?);
    }
    let [signs, way_back, first_words] = sealed.try_into().map_err(|_| Error::Inner("there are three lines".into()))?;
    queries::keep(tx, client, &queries::SealedLines { signs, way_back, first_words }, (version + 1, app.world.now())).await
}

/// Keeps something new that may steady a client.
///
/// # Errors
/// As [`save`].
pub async fn add(app: &App, subject: &Subject, client: Uuid, resource: &Resource) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("resource.create").client(client)).await?;
    add_in(&mut tx, app, client, resource).await?;
    tx.commit().await
}

async fn add_in(tx: &mut Tx, app: &App, client: Uuid, resource: &Resource) -> Result<(), Error> {
    clients::must_be_open(tx, client).await?;
    let key = clients::key(tx, app, client).await?;
    let id = new_id(&app.world);
    let sealed = seal(app, &key, id, 1, resource)?;
    Ok(queries::add(tx, id, client, &sealed, app.world.now()).await?)
}

fn seal(app: &App, key: &ClientKey, id: Uuid, version: i32, resource: &Resource) -> Result<queries::SealedResource, SealError> {
    let row = key.row(id, version);
    Ok(queries::SealedResource {
        cue: row.seal(&app.world, Field::ResourceCue, &resource.cue)?,
        image: row.seal(&app.world, Field::ResourceImage, &resource.image)?,
        body_feeling: row.seal(&app.world, Field::ResourceBodyFeeling, &resource.body_feeling)?,
        helped: resource.helped,
        on_offer: resource.on_offer,
    })
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/clients/{client}/steadying", Rule::Care, get(show::show))
        .get("/clients/{client}/steadying/edit", Rule::Care, get(one_form::show::<form::LinesForm>))
        .post("/clients/{client}/steadying/edit", Rule::Care, post(one_form::save::<form::LinesForm>))
        .get("/clients/{client}/resources/new", Rule::Care, get(resources::new_form))
        .post("/clients/{client}/resources/new", Rule::Care, post(resources::save_new))
        .get("/clients/{client}/resources/{number}/edit", Rule::Care, get(resources::edit_form))
        .post("/clients/{client}/resources/{number}/edit", Rule::Care, post(resources::save_edit))
}
