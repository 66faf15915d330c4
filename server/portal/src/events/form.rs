//! Writing an event down, anew or as the correction of one.

use askama::Template;
use axum::extract::{Query, State};
use axum::response::{IntoResponse, Response};
use chrono::NaiveDate;
use uuid::Uuid;

use super::{Done, Event, KeptEvent, Kind, add_in, events};
use crate::clients;
use crate::platform::forms::{Again, Fields, Id, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back, list};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{Private, SealError};
use crate::store::subject::Act;

/// Most characters of the account.
const MOST: usize = 2000;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct EventForm {
    kind: String,
    day: String,
    time: String,
    done: String,
    account: String,
    /// Number of the session in which it was; empty: between sessions.
    session: String,
    /// Number of the event that it corrects; empty: none.
    corrects: String,
    version: String,
}

/// What the address asks for.
#[derive(serde::Deserialize)]
pub(super) struct Asked {
    session: Option<i32>,
    corrects: Option<i32>,
}

impl EventForm {
    /// Filled with what is to be corrected.
    ///
    /// # Errors
    /// [`SealError`] when its account did not open: then there is no form, since it would leave the account out.
    fn of(kept: KeptEvent, when: When) -> Result<Self, SealError> {
        let Event { kind, happened_at, done, account, session } = kept.event;
        Ok(Self {
            kind: kind.name().to_owned(),
            day: when.date(&happened_at).to_string(),
            time: when.time(&happened_at),
            done: done.name().to_owned(),
            account: account.text()?.reveal().to_owned(),
            session: session.map(|number| number.to_string()).unwrap_or_default(),
            corrects: kept.number.to_string(),
            version: String::new(),
        })
    }

    /// The event and the number of the one that it corrects, if all is as it should be by `when` and the time it is.
    fn check(&self, when: When, now: chrono::DateTime<chrono::Utc>) -> Result<(Event, Option<i32>), Problems> {
        let mut problems = Problems::default();
        let kind = problems.choice("kind", &self.kind, Kind::parse);
        let done = problems.choice("done", &self.done, Done::parse);
        let day = self.day.trim().parse::<NaiveDate>().ok();
        if day.is_none() {
            problems.add("day", "A day as year, month and day, such as 2026-03-24.");
        }
        let at = day.and_then(|day| when.at_time(day, self.time.trim()));
        if day.is_some() && at.is_none() {
            problems.add("time", "A time of that day, such as 14:05 or 2:05 pm.");
        }
        if at.is_some_and(|at| at > now) {
            problems.add("time", "This is still to come. Write down what has happened.");
        }
        let account = Private::new(problems.text("account", &self.account, MOST, Need::Optional, Lines::Many));
        let number = |typed: &str| typed.trim().parse::<i32>().ok().filter(|number| *number > 0);
        let session = number(&self.session);
        if session.is_none() && !self.session.trim().is_empty() {
            problems.add("session", "The number of a session of this client, or nothing.");
        }
        match (kind, at, done) {
            (Some(kind), Some(happened_at), Some(done)) if problems.none() => {
                Ok((Event { kind, happened_at, done, account, session }, number(&self.corrects)))
            }
            _ => Err(problems),
        }
    }
}

impl Fields for EventForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("kind", "What it was"),
        ("day", "Day"),
        ("time", "Time"),
        ("session", "In session"),
        ("done", "What was done first"),
        ("account", "What happened, and what was done"),
    ];

    fn shown(&self, name: &str) -> String {
        match name {
            "kind" => Kind::parse(&self.kind).map_or_else(|| self.kind.clone(), |kind| kind.words().to_owned()),
            "done" => Done::parse(&self.done).map_or_else(|| self.done.clone(), |done| done.words().to_owned()),
            "day" => self.day.clone(),
            "time" => self.time.clone(),
            "session" => self.session.clone(),
            _ => self.account.clone(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "events/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    again: Again<EventForm>,
}

impl FormPage {
    fn kinds(&self) -> Vec<(&'static str, &'static str)> {
        [("", "Choose")].into_iter().chain(Kind::ALL.iter().map(|kind| (kind.name(), kind.words()))).collect()
    }

    fn dones(&self) -> Vec<(&'static str, &'static str)> {
        [("", "Choose")].into_iter().chain(Done::ALL.iter().map(|done| (done.name(), done.words()))).collect()
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<EventForm>(&self.again.problems)
    }

    fn show(frame: Frame, client: Uuid, record: Option<i32>, again: Again<EventForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let status = again.status;
        Ok((status, page(&Self { frame, client, record, again })?).into_response())
    }
}

/// `GET /clients/{client}/events/new`; `?session=` says in which session it was, `?corrects=` which event it takes the place of.
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("event.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let when = When::in_practice(&mut tx).await?;
    let now = app.world.now();
    let typed = match asked.corrects {
        Some(number) => {
            let found = events(&mut tx, &app, client).await?.into_iter().find(|one| one.number == number).ok_or(Error::NotFound)?;
            EventForm::of(found, when)?
        }
        None => EventForm {
            day: when.date(&now).to_string(),
            session: asked.session.map(|number| number.to_string()).unwrap_or_default(),
            ..EventForm::default()
        },
    };
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, client, record, Again::first(typed))
}

/// `POST /clients/{client}/events/new`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<EventForm>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, client, &once, &typed).await;
    let number = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, client, number, again))
}

async fn try_save(member: &Member, app: &App, client: Uuid, once: &Once, typed: &EventForm) -> Result<SaveOutcome<EventForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("event.create").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, app, client).await?;
    let when = When::in_practice(&mut tx).await?;
    match typed.check(when, app.world.now()) {
        Err(problems) => Ok(SaveOutcome::Refused(problems)),
        Ok((event, corrects)) => match add_in(&mut tx, app, client, &event, corrects).await {
            Err(Error::Conflict(why)) => Ok(SaveOutcome::TooLate(why)),
            Err(fault) => Err(fault),
            // Back to where it was written: its session shows it.
            Ok(Some(session)) => Ok(SaveOutcome::Saved(tx.saved(format!("/sessions/{session}")).await?)),
            Ok(None) => Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/events")).await?)),
        },
    }
}
