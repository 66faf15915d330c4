//! Asking a client: which forms, when in the treatment, from which day and until which.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use chrono::{DateTime, Days, NaiveDate, TimeDelta, Utc};
use leeward_core::measures::Measure;
use uuid::Uuid;

use super::{ONLY_VERSION, event_for, link, queries, rules};
use crate::base::ids::new_id;
use crate::clients;
use crate::episodes;
use crate::measures::{Occasion, Response as Answered, has_event, responses};
use crate::platform::forms::{Again, Fields, Id, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{Field, Private};
use crate::store::subject::{Act, Subject, Tx};
use crate::wordings;

/// An answer is hoped for within so many days, unless another day is typed; and the link holds for so many days after that. Common practice, no
/// source.
const HOPED_DAYS: u64 = 7;
const LATE_DAYS: u64 = 14;
/// Nothing is asked further ahead than this.
const AHEAD_DAYS: u64 = 366;

/// An asking that is to be made.
pub struct New {
    /// When in the treatment.
    pub occasion: Occasion,
    /// The forms.
    pub measures: Vec<Measure>,
    /// From when on it can be answered.
    pub from_at: DateTime<Utc>,
    /// The day until which an answer is hoped for.
    pub due_on: NaiveDate,
    /// What a form about one event asks about.
    pub event: Private,
}

/// Asks `client`, in a transaction of its own; the text of the link.
///
/// # Errors
/// [`Error::Conflict`] when another asking is open, the record is archived or no treatment fits; [`Error::NotFound`].
pub async fn make(app: &App, subject: &Subject, client: Uuid, new: New) -> Result<String, Error> {
    let mut tx = app.database.act(subject, Act::new("asking.make").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let link = keep(&mut tx, app, client, new).await?;
    tx.commit().await?;
    Ok(link)
}

async fn keep(tx: &mut Tx, app: &App, client: Uuid, new: New) -> Result<String, Error> {
    let (now, id) = (app.world.now(), new_id(&app.world));
    // One whose link has ended waits for nobody.
    queries::close_ended(tx, client, now).await?;
    let episode = episodes::for_form(tx, app, client, new.occasion.place(), now).await?;
    let key = clients::key(tx, app, client).await?;
    let event = key.row(id, ONLY_VERSION).seal(&app.world, Field::AskingEvent, &event_for(&new.measures, new.event))?;
    let when = When::in_practice(tx).await?;
    let last = new.due_on.checked_add_days(Days::new(LATE_DAYS)).unwrap_or(new.due_on);
    let until_at = when.begin_of(last.succ_opt().unwrap_or(last)) - TimeDelta::minutes(1);
    let names: Vec<String> = new.measures.iter().map(|measure| measure.name().to_owned()).collect();
    let row = queries::NewRow {
        id,
        client,
        episode,
        occasion: new.occasion,
        measures: &names,
        from_at: new.from_at,
        due_on: new.due_on,
        until_at,
        now,
    };
    if !queries::add(tx, &row, &event).await? {
        return Err(Error::Conflict("This client is asked for forms already. Wait for the answer, or take that asking back first."));
    }
    link::next(tx, app, client, id).await
}

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
pub(super) struct AskForm {
    #[serde(default)]
    occasion: String,
    #[serde(default)]
    from: String,
    #[serde(default)]
    due: String,
    #[serde(default)]
    event: String,
    #[serde(skip)]
    version: String,
    /// The rest: a box a form, by its name.
    #[serde(flatten)]
    ticked: BTreeMap<String, String>,
}

/// What it is checked against.
struct Facts {
    when: When,
    now: DateTime<Utc>,
    /// How many questions the practice asks at once.
    most: i16,
    /// The forms that have a wording in use.
    worded: Vec<Measure>,
    /// When each was answered last.
    last: BTreeMap<&'static str, NaiveDate>,
}

impl AskForm {
    fn has(&self, measure: Measure) -> bool {
        self.ticked.contains_key(measure.name())
    }

    fn check(&self, facts: &Facts) -> Result<New, Problems> {
        let mut problems = Problems::default();
        let measures: Vec<Measure> = Measure::ALL.into_iter().filter(|measure| self.has(*measure)).collect();
        let occasion = problems.choice("occasion", &self.occasion, Occasion::parse);
        if let Some(why) = rules::together(&measures, facts.most) {
            problems.add("forms", why);
        }
        if let Some(without) = measures.iter().find(|measure| !facts.worded.contains(measure)) {
            problems
                .add("forms", format!("{} has no wording in use. Load it first, or enter it from the official form.", without.form().name));
        }
        if let Some(why) = occasion.and_then(|occasion| measures.iter().find_map(|measure| rules::at(*measure, occasion))) {
            problems.add("forms", why);
        }
        let today = facts.when.date(&facts.now);
        let from = day(&mut problems, "from", &self.from, today, today);
        if let Some(from) = from {
            for measure in &measures {
                let first = facts.last.get(measure.name()).map(|last| rules::again(*measure, *last));
                if let Some(first) = first.filter(|first| from < *first) {
                    let name = measure.form().name;
                    let asks = measure.form().window;
                    problems.add("from", format!("{name} asks about {asks} days and was answered within them. Not before {first}."));
                }
            }
        }
        let due = from.and_then(|from| day(&mut problems, "due", &self.due, from, today));
        let event = Private::new(problems.text("event", &self.event, 200, Need::Optional, Lines::One));
        match (occasion, from, due) {
            (Some(occasion), Some(from), Some(due_on)) if problems.none() => {
                let from_at = if from > today { facts.when.begin_of(from) } else { facts.now };
                Ok(New { occasion, measures, from_at, due_on, event })
            }
            _ => Err(problems),
        }
    }
}

/// A day that is not before `first`.
fn day(problems: &mut Problems, name: &'static str, typed: &str, first: NaiveDate, today: NaiveDate) -> Option<NaiveDate> {
    let last = today.checked_add_days(Days::new(AHEAD_DAYS)).unwrap_or(today);
    match typed.trim().parse::<NaiveDate>() {
        Err(_) => problems.add(name, "A day as year, month and day, such as 2026-03-24."),
        Ok(day) if day < first => problems.add(name, format!("Not before {first}.")),
        Ok(day) if day > last => problems.add(name, "This is more than a year away. Look at the year."),
        Ok(day) => return Some(day),
    }
    None
}

impl Fields for AskForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("forms", "Forms"),
        ("occasion", "When in the treatment"),
        ("from", "Open from"),
        ("due", "Hoped for until"),
        ("event", "The event that is asked about"),
    ];

    fn shown(&self, name: &str) -> String {
        match name {
            "occasion" => Occasion::parse(&self.occasion).map_or("", Occasion::words).to_owned(),
            "from" => self.from.clone(),
            "due" => self.due.clone(),
            "event" => self.event.clone(),
            _ => super::names(&Measure::ALL.into_iter().filter(|measure| self.has(*measure)).collect::<Vec<_>>()),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "askings/ask.html")]
struct AskPage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    /// The forms that have a wording; empty as well when the database did not answer.
    worded: Vec<Measure>,
    again: Again<AskForm>,
}

impl AskPage {
    fn occasions(&self) -> Vec<(&'static str, &'static str)> {
        Occasion::ALL.iter().map(|one| (one.name(), one.words())).collect()
    }

    /// What can be asked, and what was ticked: where the database does not say which have a wording, that is not lost.
    fn offered(&self) -> impl Iterator<Item = Measure> {
        Measure::ALL.into_iter().filter(|measure| self.worded.contains(measure) || self.again.typed.has(*measure))
    }

    /// Name, label and whether it is ticked.
    fn forms(&self) -> impl Iterator<Item = (&'static str, String, bool)> {
        self.offered().map(|measure| {
            let form = measure.form();
            (measure.name(), format!("{}: {}, {} questions", form.name, form.about, form.topics.len()), self.again.typed.has(measure))
        })
    }

    fn has_event(&self) -> bool {
        self.offered().any(has_event) || !self.again.typed.event.is_empty()
    }

    fn has_risk(&self) -> bool {
        self.offered().any(|measure| measure.form().risk.is_some())
    }

    fn show(frame: Frame, client: Uuid, (record, worded): (Option<i32>, Vec<Measure>), again: Again<AskForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, client, record, worded, again })?).into_response())
    }
}

async fn facts(tx: &mut Tx, app: &App, answered: &[Answered]) -> Result<Facts, Error> {
    let when = When::in_practice(tx).await?;
    let last = answered.iter().map(|one| (one.measure.name(), when.date(&one.answered_at))).collect();
    let (most, worded) = (queries::items_at_once(tx).await?, in_order(&wordings::in_use(tx).await?));
    Ok(Facts { when, now: app.world.now(), most, worded, last })
}

/// In the order in which forms are offered.
fn in_order(worded: &[Measure]) -> Vec<Measure> {
    Measure::ALL.into_iter().filter(|measure| worded.contains(measure)).collect()
}

/// `GET /clients/{client}/askings/new`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("asking.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let answered = responses(&mut tx, &app, client).await?;
    let facts = facts(&mut tx, &app, &answered).await?;
    let schedule = queries::schedule(&mut tx, client).await?;
    let event = answered.into_iter().rev().find(|one| has_event(one.measure)).map(|one| one.event.text());
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    let today = facts.when.date(&facts.now);
    let wanted = schedule.as_ref().map_or(&[][..], |schedule| &schedule.measures);
    let fits = |measure: &&Measure| wanted.iter().any(|name| name == measure.name());
    let chosen: Vec<Measure> = facts.worded.iter().filter(fits).copied().collect();
    // What has a question about risk to life is opened shortly before an appointment, so that somebody reads it: which day that is, the
    // clinician says.
    let risky = chosen.iter().any(|measure| measure.form().risk.is_some());
    let first = chosen.iter().filter_map(|measure| Some(rules::again(*measure, *facts.last.get(measure.name())?))).max();
    let from = first.map_or(today, |first| first.max(today));
    let due = from.checked_add_days(Days::new(HOPED_DAYS)).unwrap_or(from);
    let typed = AskForm {
        occasion: schedule.and_then(|schedule| schedule.due_for).unwrap_or_else(|| Occasion::Regular.name().to_owned()),
        from: if risky { String::new() } else { from.to_string() },
        due: if risky { String::new() } else { due.to_string() },
        event: event.as_ref().and_then(|event| event.as_ref().ok()).map(|event| event.reveal().to_owned()).unwrap_or_default(),
        version: String::new(),
        ticked: chosen.iter().map(|measure| (measure.name().to_owned(), "yes".to_owned())).collect(),
    };
    let mut again = Again::first(typed);
    if matches!(event, Some(Err(_))) {
        again.notice = "The event that was asked about last time does not open, so it is not filled in. Tell the administrator.";
    }
    AskPage::show(frame, client, (record, facts.worded), again)
}

/// `POST /clients/{client}/askings/new`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<AskForm>,
) -> Result<Response, Error> {
    let tried = try_save(&app, &member, client, &once, &typed).await;
    let around = if comes_back(&tried) { around(&app, &member, client).await } else { (None, vec![]) };
    answer(typed, tried, |again| AskPage::show(frame, client, around, again))
}

/// What stands around a form that comes back, as far as the database answers.
async fn around(app: &App, member: &Member, client: Uuid) -> (Option<i32>, Vec<Measure>) {
    let record = clients::number_again(app, member, client).await;
    let worded = async {
        let mut tx = app.database.look(&member.subject).await?;
        wordings::in_use(&mut tx).await
    };
    (record, worded.await.map(|worded| in_order(&worded)).unwrap_or_default())
}

async fn try_save(app: &App, member: &Member, client: Uuid, once: &Once, typed: &AskForm) -> Result<SaveOutcome<AskForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("asking.make").client(client), once).await?;
    clients::must_be_open(&mut tx, client).await?;
    let answered = responses(&mut tx, app, client).await?;
    let facts = facts(&mut tx, app, &answered).await?;
    let new = match typed.check(&facts) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(new) => new,
    };
    match keep(&mut tx, app, client, new).await {
        Err(Error::Conflict(why)) => Ok(SaveOutcome::TooLate(why)),
        Err(fault) => Err(fault),
        Ok(_) => Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/askings")).await?)),
    }
}
