//! Beginning a treatment by hand, and saying how one ended.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use uuid::Uuid;

use super::{Episode, Reason, episodes, queries};
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::forms::{Again, Fields, Id, InPath, Keyed, Problems, SaveOutcome, answer, comes_back, list};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::Act;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct EndForm {
    /// Empty: it goes on.
    reason: String,
    day: String,
    version: String,
}

impl EndForm {
    fn of(episode: &Episode, when: When, now: DateTime<Utc>) -> Self {
        let (reason, at) = episode.end.as_ref().map_or(("", now), |end| (end.reason.name(), end.at));
        Self { reason: reason.to_owned(), day: when.date(&at).to_string(), version: episode.version.to_string() }
    }

    /// The end that was typed, `None` for none, by `when` and the time it is.
    fn check(&self, episode: &Episode, when: When, now: DateTime<Utc>) -> Result<Option<(DateTime<Utc>, Reason)>, Problems> {
        if self.reason.is_empty() {
            return Ok(None);
        }
        let mut problems = Problems::default();
        let reason = problems.choice("reason", &self.reason, Reason::parse);
        let day = self.day.trim().parse::<NaiveDate>().ok();
        let (today, first) = (when.date(&now), when.date(&episode.last_at.unwrap_or(episode.begun_at)));
        let at = match day {
            None => {
                problems.add("day", "A day as year, month and day, such as 2026-03-24.");
                None
            }
            Some(day) if day > today => {
                problems.add("day", "This day is still to come. A treatment that goes on has no end yet.");
                None
            }
            Some(day) if day < first => {
                let what = if episode.last_at.is_some() { "There was a session after that" } else { "It was begun after that" };
                problems.add("day", format!("{what}. Not before {first}."));
                None
            }
            // As long as the day is the same, so is the moment.
            Some(day) => Some(match &episode.end {
                Some(end) if when.date(&end.at) == day => end.at,
                _ if day == today => now,
                _ => end_of(day, when).min(now).max(episode.last_at.unwrap_or(episode.begun_at)),
            }),
        };
        match (reason, at) {
            (Some(reason), Some(at)) if problems.none() => Ok(Some((at, reason))),
            _ => Err(problems),
        }
    }
}

/// The last minute of a day.
fn end_of(day: NaiveDate, when: When) -> DateTime<Utc> {
    when.begin_of(day.succ_opt().unwrap_or(day)) - TimeDelta::minutes(1)
}

impl Fields for EndForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[("reason", "How it ended"), ("day", "Day")];

    fn shown(&self, name: &str) -> String {
        match name {
            "reason" => Reason::parse(&self.reason).map_or("it goes on", Reason::words).to_owned(),
            _ => self.day.clone(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "episodes/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    number: i32,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    again: Again<EndForm>,
}

impl FormPage {
    fn reasons(&self) -> Vec<(&'static str, &'static str)> {
        [("", "It goes on")].into_iter().chain(Reason::ALL.iter().map(|reason| (reason.name(), reason.words()))).collect()
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<EndForm>(&self.again.problems)
    }

    fn show(frame: Frame, (client, number): (Uuid, i32), record: Option<i32>, again: Again<EndForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, client, number, record, again })?).into_response())
    }
}

fn of_number(all: Vec<Episode>, number: i32) -> Result<Episode, Error> {
    all.into_iter().find(|one| one.number == number).ok_or(Error::NotFound)
}

/// `GET /clients/{client}/episodes/{number}`
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, number)): InPath<(Uuid, i32)>,
) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("episode.view").client(client)).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, &app, client).await?;
    let episode = of_number(episodes(&mut tx, client).await?, number)?;
    let when = When::in_practice(&mut tx).await?;
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, (client, number), record, Again::first(EndForm::of(&episode, when, app.world.now())))
}

/// `POST /clients/{client}/episodes/{number}`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, number)): InPath<(Uuid, i32)>,
    Keyed(once, typed): Keyed<EndForm>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, (client, number), &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, (client, number), record, again))
}

async fn try_save(
    member: &Member,
    app: &App,
    (client, number): (Uuid, i32),
    once: &Once,
    typed: &EndForm,
) -> Result<SaveOutcome<EndForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("episode.end").client(client), once).await?;
    clients::lock(&mut tx, client).await?;
    let all = episodes(&mut tx, client).await?;
    let is_last = all.last().is_some_and(|last| last.number == number);
    let episode = of_number(all, number)?;
    let (when, now) = (When::in_practice(&mut tx).await?, app.world.now());
    let end = match typed.check(&episode, when, now) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(end) => end,
    };
    if end.is_none() && !is_last {
        return Ok(SaveOutcome::TooLate("Another treatment was begun after this one, so it does not go on. Say how it ended."));
    }
    let is_mistake = end.is_some_and(|(_, reason)| reason == Reason::Mistake);
    if is_mistake && (episode.started_at.is_some() || queries::has_form(&mut tx, episode.id).await?) {
        return Ok(SaveOutcome::TooLate(
            "This treatment has a session that was attended, or a form, so it was none by mistake. Say how it ended, or take the form back first.",
        ));
    }
    if end.is_some() && queries::in_session(&mut tx, episode.id).await? {
        return Ok(SaveOutcome::TooLate("A session of this treatment is open. Close it first, then say how the treatment ended."));
    }
    // Looked at and sent again: the judgement stays whose it was.
    if end == episode.end.as_ref().map(|end| (end.at, end.reason)) {
        return Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}")).await?));
    }
    let version = typed.version.parse().unwrap_or_default();
    if !queries::end(&mut tx, episode.id, version, end).await? {
        return Ok(SaveOutcome::Changed(Box::new(EndForm::of(&episode, when, now))));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}")).await?))
}

/// `POST /clients/{client}/episodes`: begins one, where none is open.
pub(super) async fn begin(member: Member, State(app): State<App>, Id(client): Id) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("episode.begin").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    if clients::is_rehearsal(&mut tx, client).await? {
        return Err(Error::Conflict("This is the pretend client of your rehearsals: nobody is treated."));
    }
    queries::begin(&mut tx, new_id(&app.world), client, app.world.now()).await?;
    tx.commit().await?;
    Ok(Redirect::to(&format!("/clients/{client}")))
}
