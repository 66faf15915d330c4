//! A client's plan for staying safe: what shows that it gets hard, what helps, whom to ask. Written together, reviewed on a day, and given to
//! the client line by line as they wish. It replaces no emergency service and no judgement.

mod form;
mod queries;
mod show;

use axum::routing::{get, post};
use chrono::NaiveDate;
use uuid::Uuid;

use crate::clients::{self, one_form};
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private, SealError};
use crate::store::subject::{Act, Subject, Tx};

/// A part of the plan.
pub(crate) struct Part {
    /// Its name in forms and its column.
    pub(crate) name: &'static str,
    /// As a person reads it.
    pub(crate) words: &'static str,
    /// What to write down.
    pub(crate) hint: &'static str,
    field: Field,
}

/// The parts in their order: from what one does alone to what others do. Common practice in safety planning, no source.
pub(crate) const PARTS: [Part; 6] = [
    Part { name: "signs", words: "Warning signs", hint: "What shows that it is getting hard. One a line.", field: Field::SafetySigns },
    Part { name: "helps", words: "What helps", hint: "What the client can do alone.", field: Field::SafetyHelps },
    Part { name: "people", words: "People", hint: "Who may be asked, and how to reach them.", field: Field::SafetyPeople },
    Part { name: "places", words: "Places", hint: "Where it is easier to be.", field: Field::SafetyPlaces },
    Part {
        name: "professionals",
        words: "Professionals",
        hint: "Whom to call, at what hours, and what to call when nobody answers.",
        field: Field::SafetyProfessionals,
    },
    Part {
        name: "surroundings",
        words: "Making the surroundings safer",
        hint: "What is put away, with whom, and who looks after it.",
        field: Field::SafetySurroundings,
    },
];

/// One client's plan. As it is read, each part may turn out not to open.
#[derive(Clone, Debug)]
pub struct SafetyPlan<T = Private> {
    /// What is written, part by part, one matter a line; each at most 1200 characters. Empty: nothing is.
    pub parts: [T; 6],
    /// When it is to be gone through again.
    pub review_on: Option<NaiveDate>,
}

impl SafetyPlan<Opened> {
    /// All of it as texts, to be sealed again.
    ///
    /// # Errors
    /// [`SealError`] when a part did not open.
    pub fn whole(self) -> Result<SafetyPlan, SealError> {
        let [signs, helps, people, places, professionals, surroundings] = self.parts;
        let parts = [signs.text()?, helps.text()?, people.text()?, places.text()?, professionals.text()?, surroundings.text()?];
        Ok(SafetyPlan { parts, review_on: self.review_on })
    }
}

/// The plan of `client` and its version, if one was written.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn plan(tx: &mut Tx, app: &App, client: Uuid) -> Result<Option<(SafetyPlan<Opened>, i32)>, Error> {
    let key = clients::key(tx, app, client).await?;
    Ok(queries::plan(tx, client).await?.map(|row| row.open(&key, client)))
}

/// Keeps the plan of a client against the version it was read at, 0 when there was none. False: somebody has changed it meanwhile.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, [`Error::Conflict`] when the record is archived,
/// [`Error::Database`]: nothing was kept.
pub async fn save(app: &App, subject: &Subject, client: Uuid, plan: &SafetyPlan, version: i32) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("safety_plan.change").client(client)).await?;
    let key = clients::key(&mut tx, app, client).await?;
    if !change(&mut tx, app, &key, client, plan, version).await? {
        return Ok(false);
    }
    tx.commit().await?;
    Ok(true)
}

async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, plan: &SafetyPlan, version: i32) -> Result<bool, Error> {
    clients::must_be_open(tx, client).await?;
    let before = queries::plan(tx, client).await?.map(|row| row.open(key, client));
    if !one_form::may_replace(before.map(|(plan, at)| (plan.whole().map(drop), at)), version)? {
        return Ok(false);
    }
    let row = key.row(client, version + 1);
    let mut sealed = Vec::with_capacity(PARTS.len());
    for (part, text) in PARTS.iter().zip(&plan.parts) {
        sealed.push(row.seal(&app.world, part.field, text)?);
    }
    let [signs, helps, people, places, professionals, surroundings] =
        sealed.try_into().map_err(|_| Error::Inner("a safety plan has six parts".into()))?;
    let sealed = queries::Sealed { signs, helps, people, places, professionals, surroundings };
    queries::keep(tx, client, &sealed, plan.review_on, (version + 1, app.world.now())).await
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/clients/{client}/safety-plan", Rule::Care, get(show::show))
        .get("/clients/{client}/safety-plan/copy", Rule::Care, get(show::copy))
        .get("/clients/{client}/safety-plan/edit", Rule::Care, get(one_form::show::<form::PlanForm>))
        .post("/clients/{client}/safety-plan/edit", Rule::Care, post(one_form::save::<form::PlanForm>))
}
