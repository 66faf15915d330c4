//! The client's own pages: one form at a time, all of it on one page; a script shows one question at a time and keeps what was answered. What the
//! practice says about reading stands before the questions, and whom the client can call after every form that was handed in, whatever it says.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::measures::Measure;
use uuid::Uuid;

use super::hand_in::{Form, Work, answer, work};
use super::open::quiet;
use super::queries_errand as queries;
use super::{Closed, Draft, Given};
use crate::measures::ITEMS;
use crate::platform::assets::Assets;
use crate::platform::forms::Sent;
use crate::platform::page::Frame;
use crate::platform::when::When;
use crate::platform::{App, Errand};
use crate::store::error::Error;
use crate::store::subject::Act;
use crate::words;

/// One question as the page shows it.
struct Question {
    /// Its field.
    name: &'static str,
    number: usize,
    text: String,
    /// What each answer sends, how it reads, and whether it was given.
    answers: Vec<(String, String, bool)>,
    missing: bool,
}

/// What the practice says to everybody.
struct Said {
    reading_hours: String,
    crisis: String,
}

#[derive(Template)]
#[template(path = "askings/fill.html")]
struct FillPage {
    nonce: String,
    assets: Assets,
    words: String,
    measure: Measure,
    title: String,
    language: String,
    intro: Vec<String>,
    about: String,
    said: Said,
    questions: Vec<Question>,
    draft_id: Uuid,
    draft_version: i32,
    /// Some questions were neither answered nor left out when it was sent.
    incomplete: bool,
}

/// A page with nothing to answer.
#[derive(Template)]
#[template(path = "askings/said.html")]
struct SaidPage {
    nonce: String,
    assets: Assets,
    heading: &'static str,
    text: String,
    said: Said,
    /// There is another form.
    more: bool,
}

fn say(id: &str) -> &'static str {
    words::get(id).unwrap_or_default()
}

/// All that a page needs, read in one transaction.
async fn read(app: &App, errand: &Errand) -> Result<(Work, Said, When), Error> {
    let mut tx = app.database.act(&errand.subject, Act::new("errand.open")).await?;
    let work = work(&mut tx, app).await?;
    let (reading_hours, crisis_words, emergency) = queries::said(&mut tx).await?;
    let when = When::in_practice(&mut tx).await?;
    tx.commit().await?;
    let reading_hours = if reading_hours.is_empty() { say("forms_reading_none").to_owned() } else { reading_hours };
    let danger = say("forms_danger").replace("{number}", &emergency);
    let crisis = [crisis_words, danger].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("\n");
    Ok((work, Said { reading_hours, crisis }, when))
}

fn question(form: &Form, at: usize, given: Given, incomplete: bool) -> Option<Question> {
    let (_, wording) = form.wording.as_ref()?;
    let one = wording.questions.get(at)?;
    let answers = one.answers.iter().map(|(score, words)| (Given::Answer(*score), words.clone()));
    let answers = answers.chain([(Given::LeftOut, say("forms_leave_out").to_owned())]);
    Some(Question {
        name: ITEMS.get(at)?,
        number: at + 1,
        text: one.text.clone(),
        answers: answers.map(|(answer, words)| (answer.word(), words, answer == given)).collect(),
        missing: incomplete && given == Given::NotYet,
    })
}

fn fill(frame: Frame, form: &Form, about: String, said: Said, (draft, incomplete): (&Draft, bool)) -> Result<Response, Error> {
    let Some((_, wording)) = &form.wording else { return Err(Error::Inconsistent("wording")) };
    let questions = draft.given().iter().enumerate().filter_map(|(at, given)| question(form, at, *given, incomplete)).collect();
    let status = if incomplete { StatusCode::UNPROCESSABLE_ENTITY } else { StatusCode::OK };
    quiet(
        status,
        &FillPage {
            nonce: frame.nonce,
            assets: frame.assets,
            words: words::json(words::Page::Forms),
            measure: form.measure,
            title: wording.title.clone(),
            language: if wording.language.is_empty() { "en".to_owned() } else { wording.language.clone() },
            intro: wording.intro.clone(),
            about,
            said,
            questions,
            draft_id: form.draft_id,
            draft_version: form.draft_version,
            incomplete,
        },
    )
}

fn say_only(frame: Frame, heading: &str, text: String, said: Said, more: bool) -> Result<Response, Error> {
    quiet(StatusCode::OK, &SaidPage { nonce: frame.nonce, assets: frame.assets, heading: say(heading), text, said, more })
}

/// What the client reads of the event, where the form asks about one.
fn about(work: &Work, measure: Measure) -> String {
    match work.event.clone().text() {
        Ok(event) if crate::measures::has_event(measure) => event.reveal().to_owned(),
        _ => String::new(),
    }
}

/// `GET /q/forms`: the next form that was not handed in.
pub(super) async fn show(errand: Errand, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let (work, said, when) = read(&app, &errand).await?;
    match work.closed {
        Some(Closed::Answered) => return say_only(frame, "forms_done_heading", say("forms_done_text").to_owned(), said, false),
        Some(Closed::Declined) => return say_only(frame, "forms_declined_heading", say("forms_declined_text").to_owned(), said, false),
        // Its link holds no more, and nobody comes here.
        Some(Closed::Withdrawn) => return Err(Error::ErrandNeeded),
        None => {}
    }
    if work.from_at > app.world.now() {
        let text = say("forms_early_text").replace("{day}", &when.day(&work.from_at));
        return say_only(frame, "forms_early_heading", text, said, false);
    }
    match work.forms.iter().find(|form| !form.handed_in && form.wording.is_some()) {
        Some(form) => fill(frame, form, about(&work, form.measure), said, (&form.draft, false)),
        None => say_only(frame, "forms_unable_heading", say("forms_unable_text").to_owned(), said, false),
    }
}

/// `GET /q/thanks`: after a form was handed in, whatever it says.
pub(super) async fn thanks(errand: Errand, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let (work, said, _) = read(&app, &errand).await?;
    let more = work.closed.is_none() && work.forms.iter().any(|form| !form.handed_in);
    let text = say(if more { "forms_more_text" } else { "forms_done_text" });
    say_only(frame, "forms_done_heading", text.to_owned(), said, more)
}

/// What the form sends.
#[derive(serde::Deserialize)]
pub(super) struct Filled {
    measure: String,
    /// The rest: an answer a question, by its field.
    #[serde(flatten)]
    answers: BTreeMap<String, String>,
}

/// `POST /q/forms`
pub(super) async fn send(errand: Errand, State(app): State<App>, frame: Frame, Sent(filled): Sent<Filled>) -> Result<Response, Error> {
    const NOT_WHOLE: Error = Error::BadRequest("This did not arrive whole, so it was not sent. Open the page again.");
    let measure = Measure::parse(&filled.measure).ok_or(NOT_WHOLE)?;
    let form = measure.form();
    let given = ITEMS.iter().take(form.topics.len()).map(|name| Given::read(filled.answers.get(*name).map_or("", String::as_str)));
    let draft = given.collect::<Option<Vec<_>>>().and_then(|given| Draft::new(form, given)).ok_or(NOT_WHOLE)?;
    let Some(sheet) = draft.sheet(form) else {
        let (work, said, _) = read(&app, &errand).await?;
        let form = work.forms.iter().find(|one| one.measure == measure && !one.handed_in && one.wording.is_some());
        return match form {
            Some(form) if work.closed.is_none() => fill(frame, form, about(&work, measure), said, (&draft, true)),
            _ => Ok(Redirect::to("/q/forms").into_response()),
        };
    };
    // Sent again, it is there already.
    let there = answer(&app, &errand.subject, measure, &sheet).await? || was_handed_in(&app, &errand, measure).await?;
    Ok(Redirect::to(if there { "/q/thanks" } else { "/q/forms" }).into_response())
}

async fn was_handed_in(app: &App, errand: &Errand, measure: Measure) -> Result<bool, Error> {
    let mut tx = app.database.look(&errand.subject).await?;
    let work = work(&mut tx, app).await?;
    Ok(work.forms.iter().any(|form| form.measure == measure && form.handed_in))
}

/// `POST /q/decline`
pub(super) async fn decline(errand: Errand, State(app): State<App>) -> Result<Redirect, Error> {
    super::decline(&app, &errand.subject).await?;
    Ok(Redirect::to("/q/forms"))
}
