//! Presets: settings of a set under a name, the practice's and each clinician's own.

mod change;
mod form;
mod list;
mod queries;

use axum::routing::{get, post};
use leeward_core::safety;
use leeward_core::wire::{Preset, Purpose};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::platform::codes;
use crate::platform::{App, Routes, Rule};
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// Whose a preset is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Owner {
    /// The practice's: every member may use it, a lead or an administrator changes it.
    Practice,
    /// One clinician's own: nobody else sees it.
    Mine,
}

impl Owner {
    const ALL: [Self; 2] = [Self::Mine, Self::Practice];

    /// Its name in forms.
    const fn name(self) -> &'static str {
        match self {
            Self::Practice => "practice",
            Self::Mine => "mine",
        }
    }

    /// As a person reads it.
    const fn words(self) -> &'static str {
        match self {
            Self::Practice => "the practice\u{2019}s",
            Self::Mine => "your own",
        }
    }

    /// Whether this member may make and change such presets; the database's policies say the same.
    fn is_open_to(self, member: &Member) -> bool {
        match self {
            Self::Practice => member.has(Role::Lead) || member.has(Role::Administrator),
            Self::Mine => member.has(Role::Clinician),
        }
    }
}

/// A preset as it is kept.
#[derive(Clone, Debug)]
pub struct StoredPreset {
    /// Its id.
    pub id: Uuid,
    /// Whose it is.
    pub owner: Owner,
    /// What it sets.
    pub preset: Preset,
    /// It is archived: no desk lists it.
    pub archived: bool,
    /// Edits are saved against it.
    version: i32,
}

/// The presets that the one who asks may use, in the order of the desk's digits: processing before calm
/// place, the practice's before their own, then as they were made. One whose figures have come to lie
/// outside of the limits of a set is left out.
///
/// # Errors
/// [`Error::Database`].
pub async fn on_offer(tx: &mut Tx) -> Result<Vec<Preset>, Error> {
    let all = queries::presets(tx).await?;
    Ok(all.into_iter().filter(|kept| !kept.archived && safety::check_preset(&kept.preset).is_ok()).map(|kept| kept.preset).collect())
}

/// Keeps a new preset. Returns its id once it is saved.
///
/// # Errors
/// [`Error::BadRequest`] when it is outside of the limits of a set, [`Error::Database`] when nothing was kept, as
/// for somebody who may not make such a preset.
pub async fn create(app: &App, subject: &Subject, owner: Owner, preset: &Preset) -> Result<Uuid, Error> {
    let mut tx = app.database.act(subject, Act::new("preset.create")).await?;
    let id = add(&mut tx, app, owner, preset).await?;
    tx.commit().await?;
    Ok(id)
}

async fn add(tx: &mut Tx, app: &App, owner: Owner, preset: &Preset) -> Result<Uuid, Error> {
    safety::check_preset(preset).map_err(|_| Error::BadRequest("These settings lie outside of the limits of a set."))?;
    let id = new_id(&app.world);
    tx.is_about(id);
    queries::insert(tx, id, owner, preset, app.world.now()).await?;
    Ok(id)
}

/// A preset's settings in one line.
pub(crate) fn in_short(preset: &Preset) -> String {
    let width = preset.channels.seen(preset.width).map_or(String::new(), |width| format!(", {width}\u{b0}"));
    format!("{}, {:.2} Hz{width}, {}", codes::channels(preset.channels), preset.rate, codes::length(preset.length))
}

/// Names of purposes in the database and in forms.
const PURPOSES: [(&str, Purpose); 2] = [("processing", Purpose::Processing), ("calm_place", Purpose::CalmPlace)];

fn purpose_name(purpose: Purpose) -> &'static str {
    PURPOSES.iter().find(|(_, one)| *one == purpose).map_or("", |(name, _)| name)
}

fn parse_purpose(name: &str) -> Option<Purpose> {
    PURPOSES.iter().find(|(one, _)| *one == name).map(|(_, purpose)| *purpose)
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/presets", Rule::Member, get(list::show))
        .get("/presets/new", Rule::Member, get(change::new_form))
        .post("/presets/new", Rule::Member, post(change::save_new))
        .get("/presets/{preset}/edit", Rule::Member, get(change::edit_form))
        .post("/presets/{preset}/edit", Rule::Member, post(change::save_edit))
        .post("/presets/{preset}/archive", Rule::Member, post(change::archive))
        .post("/presets/{preset}/restore", Rule::Member, post(change::restore))
}
