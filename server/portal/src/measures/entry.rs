//! Entering a form item by item, from the official one that lies beside.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Query, State};
use axum::response::{IntoResponse, Response};
use chrono::{DateTime, Datelike, NaiveDate, Utc};
use leeward_core::measures::{Fault, Form, Measure};
use uuid::Uuid;

use super::answers::{BLANK, ITEMS};
use super::{Filled, Occasion, Sheet, keep, queries, responses};
use crate::clients;
use crate::platform::forms::{Again, Fields, InPath, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back, list};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::Private;
use crate::store::subject::{Act, Tx};
use crate::wordings;

/// No form of these is older.
const OLDEST: i32 = 1990;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
pub(super) struct EntryForm {
    #[serde(default)]
    day: String,
    #[serde(default)]
    occasion: String,
    /// What it was asked about.
    #[serde(default)]
    event: String,
    /// Number of the form that it corrects; empty: none.
    #[serde(default)]
    corrects: String,
    #[serde(skip)]
    version: String,
    /// The rest: an answer an item, by the item's field.
    #[serde(flatten)]
    answers: BTreeMap<String, String>,
}

/// What the address asks for.
#[derive(serde::Deserialize)]
pub(super) struct Asked {
    corrects: Option<i32>,
}

/// Whether a form is about one event, which is kept with it.
#[must_use]
pub const fn has_event(measure: Measure) -> bool {
    matches!(measure, Measure::Pcl5 | Measure::Itq | Measure::Iesr)
}

impl EntryForm {
    /// Filled with what is to be corrected; `None`: a part of it does not open, and a form would leave that out.
    fn of(kept: &super::Response, when: When) -> Option<Self> {
        let sheet = Sheet::read(kept.measure.form(), kept.answers.clone().text().ok()?.reveal())?;
        let typed = |answer: &Option<u8>| answer.map_or_else(|| BLANK.to_owned(), |answer| answer.to_string());
        Some(Self {
            day: when.date(&kept.answered_at).to_string(),
            occasion: kept.occasion.name().to_owned(),
            event: kept.event.clone().text().ok()?.reveal().to_owned(),
            corrects: kept.number.to_string(),
            version: String::new(),
            answers: ITEMS.iter().zip(sheet.answers()).map(|(name, answer)| ((*name).to_owned(), typed(answer))).collect(),
        })
    }

    /// What is typed for an item.
    fn item(&self, name: &str) -> &str {
        self.answers.get(name).map_or("", String::as_str)
    }

    fn check(&self, measure: Measure, when: When, now: DateTime<Utc>) -> Result<Filled, Problems> {
        let mut problems = Problems::default();
        let occasion = problems.choice("occasion", &self.occasion, Occasion::parse);
        let answered_at = self.day(&mut problems, when, now);
        let event = Private::new(problems.text("event", &self.event, 200, Need::Optional, Lines::One));
        let sheet = self.sheet(measure.form(), &mut problems);
        match (occasion, answered_at, sheet) {
            (Some(occasion), Some(answered_at), Some(sheet)) if problems.none() => {
                Ok(Filled { measure, occasion, answered_at, sheet, event })
            }
            _ => Err(problems),
        }
    }

    fn day(&self, problems: &mut Problems, when: When, now: DateTime<Utc>) -> Option<DateTime<Utc>> {
        let Ok(day) = self.day.trim().parse::<NaiveDate>() else {
            problems.add("day", "A day as year, month and day, such as 2026-03-24.");
            return None;
        };
        let today = when.date(&now);
        if day > today {
            problems.add("day", "This day is still to come. Enter what was answered.");
            return None;
        }
        if day.year() < OLDEST {
            problems.add("day", "This day is too long ago for the form. Look at the year.");
            return None;
        }
        // Of another day nobody says the hour: its noon.
        if day == today { Some(now) } else { when.at_time(day, "12:00") }
    }

    fn sheet(&self, form: &Form, problems: &mut Problems) -> Option<Sheet> {
        let read = |typed: &str| match typed {
            BLANK => Some(None),
            typed => typed.parse::<u8>().ok().map(Some),
        };
        let mut answers = vec![];
        for name in ITEMS.iter().take(form.topics.len()) {
            match read(self.item(name)) {
                Some(answer) => answers.push(answer),
                None => problems.add(name, "Choose the answer, or: left blank."),
            }
        }
        if answers.len() < form.topics.len() {
            return None;
        }
        Sheet::new(form, answers)
            .map_err(|fault| {
                let at = if let Fault::Answer { item, .. } = fault { item - 1 } else { 0 };
                problems.add(ITEMS[at], fault.to_string());
            })
            .ok()
    }
}

impl Fields for EntryForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("day", "Answered on"),
        ("occasion", "When in the treatment"),
        ("event", "The event it was asked about"),
        ("item_1", "Item 1"),
        ("item_2", "Item 2"),
        ("item_3", "Item 3"),
        ("item_4", "Item 4"),
        ("item_5", "Item 5"),
        ("item_6", "Item 6"),
        ("item_7", "Item 7"),
        ("item_8", "Item 8"),
        ("item_9", "Item 9"),
        ("item_10", "Item 10"),
        ("item_11", "Item 11"),
        ("item_12", "Item 12"),
        ("item_13", "Item 13"),
        ("item_14", "Item 14"),
        ("item_15", "Item 15"),
        ("item_16", "Item 16"),
        ("item_17", "Item 17"),
        ("item_18", "Item 18"),
        ("item_19", "Item 19"),
        ("item_20", "Item 20"),
        ("item_21", "Item 21"),
        ("item_22", "Item 22"),
        ("item_23", "Item 23"),
        ("item_24", "Item 24"),
        ("item_25", "Item 25"),
        ("item_26", "Item 26"),
        ("item_27", "Item 27"),
        ("item_28", "Item 28"),
    ];

    fn shown(&self, name: &str) -> String {
        match name {
            "day" => self.day.clone(),
            "occasion" => Occasion::parse(&self.occasion).map_or_else(|| self.occasion.clone(), |one| one.words().to_owned()),
            "event" => self.event.clone(),
            item => self.item(item).to_owned(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "measures/entry.html")]
struct EntryPage {
    frame: Frame,
    client: Uuid,
    measure: Measure,
    form: &'static Form,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    again: Again<EntryForm>,
}

impl EntryPage {
    fn occasions(&self) -> Vec<(&'static str, &'static str)> {
        Occasion::ALL.iter().map(|one| (one.name(), one.words())).collect()
    }

    fn has_event(&self) -> bool {
        has_event(self.measure)
    }

    /// Field, number and topic of each item.
    fn items(&self) -> impl Iterator<Item = (&'static str, usize, &'static str)> {
        ITEMS.iter().zip(1..).zip(self.form.topics).map(|((name, number), topic)| (*name, number, *topic))
    }

    /// What can be answered: what is sent, and how it reads.
    fn answers(&self) -> Vec<(String, String)> {
        let all = (0..=self.form.most).step_by(self.form.step.into()).map(|answer| (answer.to_string(), answer.to_string()));
        all.chain([(BLANK.to_owned(), "left blank".to_owned())]).collect()
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<EntryForm>(&self.again.problems)
    }

    fn show(frame: Frame, (client, measure): (Uuid, Measure), record: Option<i32>, again: Again<EntryForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let status = again.status;
        Ok((status, page(&Self { frame, client, measure, form: measure.form(), record, again })?).into_response())
    }
}

fn named(name: &str) -> Result<Measure, Error> {
    Measure::parse(name).ok_or(Error::NotFound)
}

/// # Errors
/// [`Error::NotFound`] for a form whose wording the practice has not got, where topics alone are not enough.
async fn must_be_offered(tx: &mut Tx, measure: Measure) -> Result<(), Error> {
    if wordings::may_be_entered(tx, measure).await? { Ok(()) } else { Err(Error::NotFound) }
}

/// `GET /clients/{client}/measures/new/{measure}`; `?corrects=` says which form it takes the place of.
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, measure)): InPath<(Uuid, String)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Error> {
    let measure = named(&measure)?;
    let mut tx = app.database.act(&member.subject, Act::new("measure.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    must_be_offered(&mut tx, measure).await?;
    let when = When::in_practice(&mut tx).await?;
    let before = responses(&mut tx, &app, client).await?;
    let typed = match asked.corrects {
        Some(number) => {
            let kept = before.iter().find(|one| one.number == number && one.measure == measure).ok_or(Error::NotFound)?;
            queries::kept(&mut tx, client, number).await?.ok_or(Error::NotFound)?.must_be_free()?;
            EntryForm::of(kept, when)
                .ok_or(Error::Conflict("A part of this form does not open, so it cannot be corrected here. Tell the administrator."))?
        }
        None => {
            // The first of its kind is most often that of the intake.
            let occasion = if before.iter().any(|one| one.measure == measure) { Occasion::Regular } else { Occasion::Intake };
            let event = before.iter().rev().find(|one| one.measure == measure).and_then(|one| one.event.clone().text().ok());
            EntryForm {
                day: when.date(&app.world.now()).to_string(),
                occasion: occasion.name().to_owned(),
                event: event.map(|event| event.reveal().to_owned()).unwrap_or_default(),
                ..EntryForm::default()
            }
        }
    };
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    EntryPage::show(frame, (client, measure), record, Again::first(typed))
}

/// `POST /clients/{client}/measures/new/{measure}`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, measure)): InPath<(Uuid, String)>,
    Keyed(once, typed): Keyed<EntryForm>,
) -> Result<Response, Error> {
    let measure = named(&measure)?;
    let tried = try_save(&member, &app, (client, measure), &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| EntryPage::show(frame, (client, measure), record, again))
}

async fn try_save(
    member: &Member,
    app: &App,
    (client, measure): (Uuid, Measure),
    once: &Once,
    typed: &EntryForm,
) -> Result<SaveOutcome<EntryForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("measure.enter").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, app, client).await?;
    must_be_offered(&mut tx, measure).await?;
    let when = When::in_practice(&mut tx).await?;
    let corrects = match typed.corrects.as_str() {
        "" => None,
        number => Some(
            number
                .parse()
                .map_err(|_| Error::BadRequest("The form did not arrive whole, so nothing was saved. Open it again and send it again."))?,
        ),
    };
    let mut filled = match typed.check(measure, when, app.world.now()) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(filled) => filled,
    };
    if let Some(number) = corrects
        && let Some(kept) = responses(&mut tx, app, client).await?.into_iter().find(|one| one.number == number)
        && when.date(&kept.answered_at) == when.date(&filled.answered_at)
    {
        filled.answered_at = kept.answered_at;
    }
    match keep(&mut tx, app, client, &filled, corrects).await {
        Err(Error::Conflict(why)) => Ok(SaveOutcome::TooLate(why)),
        Err(fault) => Err(fault),
        Ok((number, _)) => Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/measures/{number}")).await?)),
    }
}
