//! What a client is to be asked over a treatment: which forms, every how many sessions, and whether after its end.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use leeward_core::measures::Measure;
use uuid::Uuid;

use super::queries::{self, ScheduleRow};
use super::rules;
use crate::clients;
use crate::platform::forms::{Again, Fields, Id, Keyed, Problems, SaveOutcome, answer, comes_back, version};
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::{Act, Subject, Tx};

/// Unless another number is typed, forms are asked after so many sessions attended. Common practice, no source.
const EVERY: i16 = 4;

/// What is asked, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Schedule {
    /// Forms that are measures of change; none: nothing is asked by itself.
    pub measures: Vec<Measure>,
    /// In the course of a treatment: after so many sessions attended since they were answered last, 1 to 20.
    pub every: i16,
    /// So many weeks after its end, 2 to 104; `None`: not.
    pub follow_up_weeks: Option<i16>,
}

impl Schedule {
    pub(super) fn of(row: &ScheduleRow) -> Result<Self, Error> {
        Ok(Self { measures: queries::measures(&row.measures)?, every: row.every, follow_up_weeks: row.follow_up_weeks })
    }

    /// In words.
    pub(super) fn words(&self) -> String {
        if self.measures.is_empty() {
            return "Nothing is asked by itself.".to_owned();
        }
        let every = if self.every == 1 { "after every session".to_owned() } else { format!("every {} sessions", self.every) };
        let after = self.follow_up_weeks.map(|weeks| format!(", and {weeks} weeks after it")).unwrap_or_default();
        format!("{}: at the beginning, {every}, at the end{after}.", super::names(&self.measures))
    }
}

/// Sets what a client is asked, where nothing was set yet; in a transaction of its own.
///
/// # Errors
/// [`Error::Conflict`] when something was set already or the record is archived; [`Error::NotFound`].
pub async fn set(app: &App, subject: &Subject, client: Uuid, schedule: &Schedule) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("schedule.change").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    if !keep(&mut tx, app, client, 0, schedule).await? {
        return Err(Error::Conflict("A schedule was set meanwhile. Open it again and look."));
    }
    tx.commit().await
}

async fn keep(tx: &mut Tx, app: &App, client: Uuid, version: i32, schedule: &Schedule) -> Result<bool, Error> {
    let names: Vec<String> = schedule.measures.iter().map(|measure| measure.name().to_owned()).collect();
    let parts = (&names[..], schedule.every, schedule.follow_up_weeks);
    Ok(queries::set_schedule(tx, client, version, parts, app.world.now()).await?)
}

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
pub(super) struct ScheduleForm {
    #[serde(default)]
    every: String,
    /// Empty: not.
    #[serde(default)]
    follow_up: String,
    #[serde(default)]
    version: String,
    /// The rest: a box a form, by its name.
    #[serde(flatten)]
    ticked: BTreeMap<String, String>,
}

impl ScheduleForm {
    fn of(row: Option<&ScheduleRow>) -> Result<Self, Error> {
        let Some(row) = row else {
            return Ok(Self { every: EVERY.to_string(), version: "0".to_owned(), ..Self::default() });
        };
        Ok(Self {
            every: row.every.to_string(),
            follow_up: row.follow_up_weeks.map(|weeks| weeks.to_string()).unwrap_or_default(),
            version: row.version.to_string(),
            ticked: row.measures.iter().map(|name| (name.clone(), "yes".to_owned())).collect(),
        })
    }

    fn measures(&self) -> Vec<Measure> {
        offered().filter(|measure| self.ticked.contains_key(measure.name())).collect()
    }

    fn check(&self, most: i16) -> Result<Schedule, Problems> {
        let mut problems = Problems::default();
        let measures = self.measures();
        if let Some(why) = rules::together(&measures, most).filter(|_| !measures.is_empty()) {
            problems.add("forms", why);
        }
        let every = problems.within("every", &self.every, 1..=20);
        let typed = self.follow_up.trim();
        let follow_up_weeks = if typed.is_empty() { None } else { problems.within("follow_up", typed, 2..=104) };
        match every {
            Some(every) if problems.none() => Ok(Schedule { measures, every, follow_up_weeks }),
            _ => Err(problems),
        }
    }
}

/// Measures of change; what belongs to intake alone is asked by hand.
fn offered() -> impl Iterator<Item = Measure> {
    Measure::ALL.into_iter().filter(|measure| measure.form().is_outcome)
}

impl Fields for ScheduleForm {
    const LABELS: &'static [(&'static str, &'static str)] =
        &[("forms", "Forms"), ("every", "In its course, sessions between"), ("follow_up", "After its end, weeks")];

    fn shown(&self, name: &str) -> String {
        match name {
            "every" => self.every.clone(),
            "follow_up" => self.follow_up.clone(),
            _ => super::names(&self.measures()),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "askings/schedule.html")]
struct SchedulePage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    again: Again<ScheduleForm>,
}

impl SchedulePage {
    /// Name, label and whether it is ticked.
    fn forms(&self) -> impl Iterator<Item = (&'static str, String, bool)> {
        offered().map(|measure| {
            let form = measure.form();
            let ticked = self.again.typed.ticked.contains_key(measure.name());
            (measure.name(), format!("{}: {}, {} questions", form.name, form.about, form.topics.len()), ticked)
        })
    }

    fn show(frame: Frame, client: Uuid, record: Option<i32>, again: Again<ScheduleForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, client, record, again })?).into_response())
    }
}

/// `GET /clients/{client}/askings/schedule`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("schedule.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let typed = ScheduleForm::of(queries::schedule(&mut tx, client).await?.as_ref())?;
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    SchedulePage::show(frame, client, record, Again::first(typed))
}

/// `POST /clients/{client}/askings/schedule`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<ScheduleForm>,
) -> Result<Response, Error> {
    let tried = try_save(&app, &member, client, &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| SchedulePage::show(frame, client, record, again))
}

async fn try_save(app: &App, member: &Member, client: Uuid, once: &Once, typed: &ScheduleForm) -> Result<SaveOutcome<ScheduleForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("schedule.change").client(client), once).await?;
    clients::must_be_open(&mut tx, client).await?;
    if clients::is_rehearsal(&mut tx, client).await? {
        return Ok(SaveOutcome::TooLate("This is the pretend client of your rehearsals: nobody is asked."));
    }
    let schedule = match typed.check(queries::items_at_once(&mut tx).await?) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(schedule) => schedule,
    };
    let row = queries::schedule(&mut tx, client).await?;
    // Looked at and sent again: nothing changes.
    let same = match &row {
        Some(row) => Schedule::of(row)? == schedule,
        None => false,
    };
    if !same && !keep(&mut tx, app, client, version(&typed.version)?, &schedule).await? {
        return Ok(SaveOutcome::Changed(Box::new(ScheduleForm::of(row.as_ref())?)));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/askings")).await?))
}
