//! Writing a safety plan: what was typed, what is wrong with it, and keeping it.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use chrono::NaiveDate;
use uuid::Uuid;

use super::{PARTS, Part, SafetyPlan, change, plan};
use crate::clients;
use crate::platform::forms::{Again, Fields, Id, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back, list, version};
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{Opened, Private, SealError};
use crate::store::subject::Act;

/// Most characters of a part.
const MOST: usize = 1200;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct PlanForm {
    signs: String,
    helps: String,
    people: String,
    places: String,
    professionals: String,
    surroundings: String,
    review_on: String,
    version: String,
}

impl PlanForm {
    /// The form filled with what is kept.
    ///
    /// # Errors
    /// [`SealError`] when a part of it did not open: then there is no form.
    fn of(kept: Option<(SafetyPlan<Opened>, i32)>) -> Result<Self, SealError> {
        let Some((plan, version)) = kept else { return Ok(Self { version: "0".to_owned(), ..Self::default() }) };
        let SafetyPlan { parts, review_on } = plan.whole()?;
        let [signs, helps, people, places, professionals, surroundings] = parts.map(|text| text.reveal().to_owned());
        let review_on = review_on.map(|day| day.to_string()).unwrap_or_default();
        Ok(Self { signs, helps, people, places, professionals, surroundings, review_on, version: version.to_string() })
    }

    /// What was typed for a part.
    fn typed(&self, part: &Part) -> &str {
        match part.name {
            "signs" => &self.signs,
            "helps" => &self.helps,
            "people" => &self.people,
            "places" => &self.places,
            "professionals" => &self.professionals,
            _ => &self.surroundings,
        }
    }

    fn check(&self) -> Result<SafetyPlan, Problems> {
        let mut problems = Problems::default();
        let parts =
            PARTS.each_ref().map(|part| Private::new(problems.text(part.name, self.typed(part), MOST, Need::Optional, Lines::Many)));
        let day = self.review_on.trim();
        let review_on = day.parse::<NaiveDate>().ok();
        if review_on.is_none() && !day.is_empty() {
            problems.add("review_on", "A day as year, month and day, such as 2026-03-24.");
        }
        if problems.none() { Ok(SafetyPlan { parts, review_on }) } else { Err(problems) }
    }
}

impl Fields for PlanForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("signs", "Warning signs"),
        ("helps", "What helps"),
        ("people", "People"),
        ("places", "Places"),
        ("professionals", "Professionals"),
        ("surroundings", "Making the surroundings safer"),
        ("review_on", "Go through it again on"),
    ];

    fn shown(&self, name: &str) -> String {
        PARTS.iter().find(|part| part.name == name).map_or_else(|| self.review_on.clone(), |part| self.typed(part).to_owned())
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "safety_plan/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    number: Option<i32>,
    typed: PlanForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<PlanForm>(&self.problems)
    }

    fn show(frame: Frame, client: Uuid, number: Option<i32>, again: Again<PlanForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, client, number, typed, problems, notice })?).into_response())
    }
}

/// `GET /clients/{client}/safety-plan/edit`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("safety_plan.view").client(client)).await?;
    let typed = PlanForm::of(plan(&mut tx, &app, client).await?)?;
    let number = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, client, number, Again::first(typed))
}

/// `POST /clients/{client}/safety-plan/edit`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<PlanForm>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, client, &once, &typed).await;
    let number = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, client, number, again))
}

async fn try_save(member: &Member, app: &App, client: Uuid, once: &Once, typed: &PlanForm) -> Result<SaveOutcome<PlanForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("safety_plan.change").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    let key = clients::key(&mut tx, app, client).await?;
    let good = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    if !change(&mut tx, app, &key, client, &good, version(&typed.version)?).await? {
        return Ok(SaveOutcome::Changed(Box::new(PlanForm::of(plan(&mut tx, app, client).await?)?)));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/safety-plan")).await?))
}
