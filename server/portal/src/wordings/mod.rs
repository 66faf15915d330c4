//! The wording of forms, as the practice brings it: loaded from a file, looked at question by question, then used. No form's wording comes with
//! the portal. What was in use once stays kept: answers were given to it.

mod load;
mod page;
mod queries;

use axum::routing::{get, post};
use leeward_core::measures::Measure;
use leeward_core::measures::wording::Wording;
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::platform::{App, MAY_HAND_OVER, Routes, Rule};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// Who may load and use one.
const KEEPERS: Rule = Rule::Roles(MAY_HAND_OVER);

/// The forms that have a wording in use.
///
/// # Errors
/// [`Error::Database`].
pub async fn in_use(tx: &mut Tx) -> Result<Vec<Measure>, Error> {
    let names = queries::in_use(tx).await?;
    names.iter().map(|name| Measure::parse(name).ok_or(Error::Inconsistent("wording.measure"))).collect()
}

/// Whether a clinician may enter this form from the official one that lies beside: where its topics may stand on a page of ours, or the
/// practice has its wording.
///
/// # Errors
/// [`Error::Database`].
pub async fn may_be_entered(tx: &mut Tx, measure: Measure) -> Result<bool, Error> {
    Ok(measure.form().by_topics || in_use(tx).await?.contains(&measure))
}

/// Puts a wording into use in one step: for a practice that is set up by its owner's own words, where nobody looks question by question.
///
/// # Errors
/// [`Error::NothingWritten`] when `subject` may not; [`Error::Database`].
pub async fn load_and_use(app: &App, subject: &Subject, measure: Measure, wording: &Wording) -> Result<(), Error> {
    let id = new_id(&app.world);
    let mut tx = app.database.act(subject, Act::new("wording.load").object(id)).await?;
    keep(&mut tx, app, id, measure, wording).await?;
    tx.commit().await?;
    let mut tx = app.database.act(subject, Act::new("wording.use").object(id)).await?;
    put_to_use(&mut tx, app, measure, id).await?;
    tx.commit().await
}

/// Keeps one to be looked at; the one before it that nobody had looked at is let go of.
async fn keep(tx: &mut Tx, app: &App, id: Uuid, measure: Measure, wording: &Wording) -> Result<(), Error> {
    let body = serde_json::to_value(wording).map_err(|fault| Error::Inner(format!("a wording: {fault}")))?;
    let now = app.world.now();
    queries::drop_unchecked(tx, measure.name(), now).await?;
    Ok(queries::add(tx, id, measure.name(), &body, now).await?)
}

/// Puts the one that was looked at into use, in the place of the one that was.
async fn put_to_use(tx: &mut Tx, app: &App, measure: Measure, id: Uuid) -> Result<(), Error> {
    let now = app.world.now();
    queries::end_used(tx, measure.name(), now).await?;
    if queries::put_to_use(tx, id, measure.name(), now).await? {
        return Ok(());
    }
    Err(Error::Conflict("Another file was loaded meanwhile, or this one was used or put away already. Open the page again and look."))
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/practice/wordings", KEEPERS, get(page::list))
        .get("/practice/wordings/{measure}", KEEPERS, get(page::show))
        .post("/practice/wordings/{measure}", KEEPERS, post(load::save))
        .post("/practice/wordings/{measure}/use", KEEPERS, post(page::put_to_use))
        .post("/practice/wordings/{measure}/end", KEEPERS, post(page::end))
}
