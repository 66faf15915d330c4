//! The client's own pages: one form at a time, all of it on one page; a script shows one question at a time and keeps what was answered. What the
//! practice says about reading stands before the questions, and whom the client can call after every form that was handed in, whatever it says.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::State;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::measures::Measure;
use uuid::Uuid;

use super::hand_in::{Form, Handing, Sender, Work, answer_from, must_be_of, work};
use super::queries_errand as queries;
use super::{Closed, Draft, Given};
use crate::base::ids::new_id;
use crate::measures::ITEMS;
use crate::platform::assets::Assets;
use crate::platform::forms::Sent;
use crate::platform::page::{Frame, page};
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
    /// What stands over it in the file; empty: nothing.
    under: String,
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
    sender: Sender,
    /// The how-manieth sending of this page was kept last.
    sendings: i32,
    /// What became of it when it was sent; empty: it was not yet.
    notice: &'static str,
    /// Of the asking's forms, some were handed in.
    some_sent: bool,
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

/// A page behind the link. Its address has no secret, and browsers that say no more than where a form came from must say that.
fn behind_link(status: StatusCode, template: &impl Template) -> Result<Response, Error> {
    Ok((status, [(header::REFERRER_POLICY, "same-origin")], page(template)?).into_response())
}

/// How a form is shown.
#[derive(Clone, Copy, PartialEq, Eq)]
enum As {
    /// To be filled in.
    Kept,
    /// It was sent with questions that were neither answered nor left out.
    NotWhole,
    /// It was sent from a page that did not know of what another page had kept.
    Behind,
}

impl As {
    fn status(self) -> StatusCode {
        match self {
            Self::Kept => StatusCode::OK,
            Self::NotWhole => StatusCode::UNPROCESSABLE_ENTITY,
            Self::Behind => StatusCode::CONFLICT,
        }
    }

    fn notice(self) -> &'static str {
        match self {
            Self::Kept => "",
            Self::NotWhole => say("forms_incomplete"),
            Self::Behind => say("forms_behind"),
        }
    }
}

fn question(form: &Form, at: usize, given: Given, incomplete: bool) -> Option<Question> {
    let (_, wording) = form.wording.as_ref()?;
    let one = wording.questions.get(at)?;
    let answers = one.answers.iter().map(|(score, words)| (Given::Answer(*score), words.clone()));
    let answers = answers.chain([(Given::LeftOut, say("forms_leave_out").to_owned())]);
    Some(Question {
        name: ITEMS.get(at)?,
        number: at + 1,
        under: one.under.clone(),
        text: one.text.clone(),
        answers: answers.map(|(answer, words)| (answer.word(), words, answer == given)).collect(),
        missing: incomplete && given == Given::NotYet,
    })
}

/// The page of one form of `work`, with what `draft` has of it, as the page that `sender` names.
fn fill(frame: Frame, (work, form): (&Work, &Form), said: Said, (draft, how): (&Draft, As), sender: Sender) -> Result<Response, Error> {
    let Some((_, wording)) = &form.wording else { return Err(Error::Inconsistent("wording")) };
    let incomplete = how == As::NotWhole;
    let questions = draft.given().iter().enumerate().filter_map(|(at, given)| question(form, at, *given, incomplete)).collect();
    behind_link(
        how.status(),
        &FillPage {
            nonce: frame.nonce,
            assets: frame.assets,
            words: words::json(words::Page::Forms),
            measure: form.measure,
            title: wording.title.clone(),
            language: if wording.language.is_empty() { "en".to_owned() } else { wording.language.clone() },
            intro: wording.intro.clone(),
            about: work.event_of(form.measure)?.reveal().to_owned(),
            said,
            questions,
            sendings: form.sendings(sender.page),
            sender,
            notice: how.notice(),
            some_sent: work.forms.iter().any(|form| form.handed_in),
        },
    )
}

/// The form as it is kept, on a page of its own.
fn fill_as_kept(app: &App, frame: Frame, errand: &Errand, (work, form): (&Work, &Form), said: Said, how: As) -> Result<Response, Error> {
    let (wording, _) = form.wording.as_ref().ok_or(Error::Inconsistent("wording"))?;
    let sender = Sender { asking: errand.asking, page: new_id(&app.world), was: form.draft_version, wording: *wording };
    fill(frame, (work, form), said, (&form.draft, how), sender)
}

fn say_only(frame: Frame, heading: &str, text: String, said: Said, more: bool) -> Result<Response, Error> {
    behind_link(StatusCode::OK, &SaidPage { nonce: frame.nonce, assets: frame.assets, heading: say(heading), text, said, more })
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
    match work.next() {
        Some(form) => fill_as_kept(&app, frame, &errand, (&work, form), said, As::Kept),
        None => say_only(frame, "forms_unable_heading", say("forms_unable_text").to_owned(), said, false),
    }
}

/// `GET /q/thanks`: after a form was handed in, whatever it says. Where none was, it says nothing of the kind.
pub(super) async fn thanks(errand: Errand, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let (work, said, _) = read(&app, &errand).await?;
    if !work.forms.iter().any(|form| form.handed_in) {
        return Ok(Redirect::to("/q/forms").into_response());
    }
    let more = work.next().is_some();
    let text = say(if more { "forms_more_text" } else { "forms_done_text" });
    say_only(frame, "forms_done_heading", text.to_owned(), said, more)
}

/// What the form sends.
#[derive(serde::Deserialize)]
pub(super) struct Filled {
    measure: String,
    asking: Uuid,
    page: Uuid,
    was: i32,
    wording: Uuid,
    /// The rest: an answer a question, by its field.
    #[serde(flatten)]
    answers: BTreeMap<String, String>,
}

/// `POST /q/forms`
pub(super) async fn send(errand: Errand, State(app): State<App>, frame: Frame, Sent(filled): Sent<Filled>) -> Result<Response, Error> {
    const NOT_WHOLE: Error = Error::BadRequest("This did not arrive whole, so it was not sent. Open the page again.");
    let sender = Sender { asking: filled.asking, page: filled.page, was: filled.was, wording: filled.wording };
    must_be_of(&errand, sender.asking)?;
    let measure = Measure::parse(&filled.measure).ok_or(NOT_WHOLE)?;
    let form = measure.form();
    let given = ITEMS.iter().take(form.topics.len()).map(|name| Given::read(filled.answers.get(*name).map_or("", String::as_str)));
    let draft = given.collect::<Option<Vec<_>>>().and_then(|given| Draft::new(form, given)).ok_or(NOT_WHOLE)?;
    let handing = match draft.sheet(form) {
        Some(sheet) => Some(answer_from(&app, &errand, &sender, measure, &sheet).await?),
        None => None,
    };
    if handing == Some(Handing::There) {
        return Ok(Redirect::to("/q/thanks").into_response());
    }
    let (work, said, _) = read(&app, &errand).await?;
    if handing == Some(Handing::Elsewhere) {
        let more = work.next().is_some();
        return say_only(frame, "forms_before_heading", say("forms_before_text").to_owned(), said, more);
    }
    let open = work.forms.iter().find(|one| one.measure == measure && !one.handed_in && one.wording.is_some());
    match (open.filter(|_| work.closed.is_none()), handing) {
        (Some(form), None) if form.is_worded_as(&sender) => fill(frame, (&work, form), said, (&draft, As::NotWhole), sender),
        (Some(form), None | Some(Handing::Behind)) => fill_as_kept(&app, frame, &errand, (&work, form), said, As::Behind),
        _ => Ok(Redirect::to("/q/forms").into_response()),
    }
}

/// What declining sends.
#[derive(serde::Deserialize)]
pub(super) struct Declines {
    asking: Uuid,
}

/// `POST /q/decline`
pub(super) async fn decline(errand: Errand, State(app): State<App>, Sent(declines): Sent<Declines>) -> Result<Redirect, Error> {
    must_be_of(&errand, declines.asking)?;
    super::decline(&app, &errand.subject).await?;
    Ok(Redirect::to("/q/forms"))
}
