//! The pages: which forms have a wording, and one form with what its file says beside what each question is about.

use askama::Template;
use axum::extract::State;
use axum::response::{Html, IntoResponse, Response};
use leeward_core::measures::wording::Wording;
use leeward_core::measures::{Form, Measure};
use uuid::Uuid;

use super::load::LoadForm;
use super::queries::{self, WordingRow};
use crate::platform::forms::{Again, InPath, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::Act;

/// One that is in use or waits, as its page shows it.
pub(super) struct Shown {
    id: Uuid,
    wording: Wording,
    /// When it was loaded, and by whom.
    loaded: String,
    /// When it was looked at, and by whom; `None`: nobody has yet.
    used: Option<String>,
}

impl Shown {
    fn of(row: WordingRow, when: When) -> Result<(Measure, Self), Error> {
        let measure = Measure::parse(&row.measure).ok_or(Error::Inconsistent("wording.measure"))?;
        let wording = serde_json::from_value(row.body).map_err(|_| Error::Inconsistent("wording.body"))?;
        let said = |at, by: Option<String>| format!("{} by {}", when.moment(&at), by.unwrap_or_default());
        let used = row.checked_at.map(|at| said(at, row.checked_by));
        Ok((measure, Self { id: row.id, wording, loaded: said(row.loaded_at, row.loaded_by), used }))
    }
}

/// A form's wordings that have not ended.
#[derive(Default)]
pub(super) struct Standing {
    waiting: Option<Shown>,
    used: Option<Shown>,
}

pub(super) fn named(measure: &str) -> Result<Measure, Error> {
    Measure::parse(measure).ok_or(Error::NotFound)
}

async fn all(app: &App, member: &Member) -> Result<Vec<(Measure, Shown)>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("wording.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let rows = queries::standing(&mut tx).await?;
    tx.commit().await?;
    rows.into_iter().map(|row| Shown::of(row, when)).collect()
}

pub(super) async fn standing(app: &App, member: &Member, measure: Measure) -> Result<Standing, Error> {
    let mut found = Standing::default();
    for (of, shown) in all(app, member).await? {
        if of == measure {
            let place = if shown.used.is_some() { &mut found.used } else { &mut found.waiting };
            *place = Some(shown);
        }
    }
    Ok(found)
}

#[derive(Template)]
#[template(path = "wordings/list.html")]
struct ListPage {
    frame: Frame,
    /// Name in addresses, what is known of the form, and what became of its wording.
    forms: Vec<(&'static str, &'static Form, String)>,
}

/// `GET /practice/wordings`
pub(super) async fn list(member: Member, State(app): State<App>, frame: Frame) -> Result<Html<String>, Error> {
    let found = all(&app, &member).await?;
    let state = |measure: Measure| {
        let of = |used: bool| found.iter().find(|(of, shown)| *of == measure && shown.used.is_some() == used);
        let used = of(true).and_then(|(_, shown)| shown.used.as_ref()).map(|used| format!("In use since {used}."));
        let waiting = of(false).map(|(_, shown)| format!("Loaded {}, to be looked at.", shown.loaded));
        let all: Vec<String> = used.into_iter().chain(waiting).collect();
        if all.is_empty() { "None.".to_owned() } else { all.join(" ") }
    };
    let forms = Measure::ALL.into_iter().map(|measure| (measure.name(), measure.form(), state(measure))).collect();
    page(&ListPage { frame, forms })
}

#[derive(Template)]
#[template(path = "wordings/wording.html")]
pub(super) struct WordingPage {
    frame: Frame,
    measure: Measure,
    standing: Standing,
    again: Again<LoadForm>,
}

impl WordingPage {
    fn form(&self) -> &'static Form {
        self.measure.form()
    }

    /// Number, topic, what stands over the question, question and answers of each.
    fn lines<'a>(&self, shown: &'a Shown) -> Vec<(usize, &'static str, &'a str, &'a str, String)> {
        let answers =
            |answers: &[(u8, String)]| answers.iter().map(|(score, words)| format!("{score}: {words}")).collect::<Vec<_>>().join("; ");
        let questions = shown.wording.questions.iter().zip(self.form().topics).zip(1..);
        questions
            .map(|((question, topic), number)| {
                (number, *topic, question.under.as_str(), question.text.as_str(), answers(&question.answers))
            })
            .collect()
    }

    pub(super) fn show(frame: Frame, measure: Measure, standing: Standing, again: Again<LoadForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, measure, standing, again })?).into_response())
    }
}

/// `GET /practice/wordings/{measure}`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, InPath(measure): InPath<String>) -> Result<Response, Error> {
    let measure = named(&measure)?;
    let standing = standing(&app, &member, measure).await?;
    WordingPage::show(frame, measure, standing, Again::first(LoadForm::default()))
}

/// Which one the page showed.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Which {
    wording: String,
}

impl Which {
    fn read(&self) -> Result<Uuid, Error> {
        const NOT_WHOLE: Error = Error::BadRequest("The form did not arrive whole, so nothing was saved. Open the page again.");
        self.wording.parse().map_err(|_| NOT_WHOLE)
    }
}

/// `POST /practice/wordings/{measure}/use`
pub(super) async fn put_to_use(
    member: Member,
    State(app): State<App>,
    InPath(measure): InPath<String>,
    Keyed(once, which): Keyed<Which>,
) -> Result<Answer, Error> {
    let measure = named(&measure)?;
    let wording = which.read()?;
    let mut tx = app.database.act_once(&member.subject, Act::new("wording.use").object(wording), &once).await?;
    super::put_to_use(&mut tx, &app, measure, wording).await?;
    tx.saved(format!("/practice/wordings/{}", measure.name())).await
}

/// `POST /practice/wordings/{measure}/end`: it is used no more.
pub(super) async fn end(
    member: Member,
    State(app): State<App>,
    InPath(measure): InPath<String>,
    Keyed(once, which): Keyed<Which>,
) -> Result<Answer, Error> {
    let measure = named(&measure)?;
    let wording = which.read()?;
    let mut tx = app.database.act_once(&member.subject, Act::new("wording.end").object(wording), &once).await?;
    if !queries::end(&mut tx, wording, measure.name(), app.world.now()).await? {
        return Err(Error::Conflict("This wording is not in use any more. Open the page again and look."));
    }
    tx.saved(format!("/practice/wordings/{}", measure.name())).await
}
