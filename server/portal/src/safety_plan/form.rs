//! Writing a safety plan: what was typed, what is wrong with it, and keeping it.

use chrono::NaiveDate;
use uuid::Uuid;

use super::{PARTS, Part, SafetyPlan, change, plan};
use crate::clients::one_form::{OneForm, one_page};
use crate::platform::App;
use crate::platform::forms::{Fields, Lines, Need, Problems};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened, Private, SealError};
use crate::store::subject::Tx;

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

one_page!(PlanForm, "safety_plan/form.html");

impl OneForm for PlanForm {
    const ACTS: [&'static str; 2] = ["safety_plan.view", "safety_plan.change"];
    const SHOWN: &'static str = "/safety-plan";
    type Good = SafetyPlan;

    async fn filled(tx: &mut Tx, app: &App, client: Uuid) -> Result<Self, Error> {
        Ok(Self::of(plan(tx, app, client).await?)?)
    }

    fn check(&self) -> Result<Self::Good, Problems> {
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

    async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, good: &Self::Good, version: i32) -> Result<bool, Error> {
        change(tx, app, key, client, good, version).await
    }
}
