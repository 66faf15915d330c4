//! The page of one form: its score, its answers, the flag that it raised; and taking it back.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::measures::Score;
use uuid::Uuid;

use super::flags::{Done, Flag};
use super::overview::{figure, total_words};
use super::{Sheet, queries, responses};
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::forms::{InPath, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::seal::{DOES_NOT_OPEN, Opened};
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "measures/response.html")]
struct ResponsePage {
    frame: Frame,
    client: Uuid,
    name: Opened,
    record: i32,
    archived: bool,
    /// Why it can be neither corrected nor taken back.
    bound: Option<&'static str>,
    one: super::Response,
    when: When,
    /// Name and words of what it came to.
    facts: Vec<(&'static str, String)>,
    /// Number, topic and answer of each item.
    items: Vec<(usize, &'static str, String)>,
    flag: Option<Flag>,
    /// Whom the client can call, in the practice's words.
    crisis: String,
}

impl ResponsePage {
    fn dones(&self) -> Vec<(&'static str, &'static str)> {
        [("", "Choose")].into_iter().chain(Done::ALL.iter().map(|done| (done.name(), done.words()))).collect()
    }
}

/// `GET /clients/{client}/measures/{number}`
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, number)): InPath<(Uuid, i32)>,
) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("measure.view").client(client)).await?;
    let row = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let one = responses(&mut tx, &app, client).await?.into_iter().find(|one| one.number == number).ok_or(Error::NotFound)?;
    let flag = match queries::flag(&mut tx, one.id).await? {
        Some(flag) => {
            if flag.done.is_none() {
                queries::told(&mut tx, one.id, client, app.world.now()).await?;
            }
            Some(Flag::of(flag, one.measure, queries::all_told(&mut tx, one.id).await?)?)
        }
        None => None,
    };
    let bound = queries::kept(&mut tx, client, number).await?.ok_or(Error::NotFound)?.bound();
    let name = clients::details(&mut tx, &app, client).await?.name;
    let when = When::in_practice(&mut tx).await?;
    let crisis = queries::crisis_words(&mut tx).await?;
    tx.commit().await?;
    let sheet = one.answers.clone().text().ok().and_then(|text| Sheet::read(one.measure.form(), text.reveal()));
    let score = sheet.as_ref().and_then(|sheet| one.measure.score(sheet.answers()).ok());
    let (facts, items) = (facts(&one, score.as_ref()), items(&one, sheet.as_ref()));
    let (record, archived) = (row.number, row.archived_at.is_some());
    page(&ResponsePage { frame, client, name, record, archived, bound, one, when, facts, items, flag, crisis })
}

/// The total is the one that was kept; what stands beside it is made anew from the answers by today's rules, where these are the same.
fn facts(one: &super::Response, score: Option<&Score>) -> Vec<(&'static str, String)> {
    let form = one.measure.form();
    let of = if one.total.is_some() { format!(", of {}", form.highest) } else { String::new() };
    let mut facts = vec![("Total", format!("{}{of}", total_words(one)))];
    let Some(score) = score.filter(|_| one.rules == form.rules) else {
        facts.push(("Parts", "not shown: it was scored by other rules, or does not open".to_owned()));
        return facts;
    };
    facts.extend(score.band.map(|band| ("Band", band.to_owned())));
    // What was filled up is read in whole points, as its band is.
    let read = |total: f64| if one.prorated { (total + 0.5).floor() } else { total };
    facts.extend(one.total.and_then(|total| form.is_case(read(total))).zip(form.cut).map(|(case, cut)| {
        let side = if case { "at or beyond it" } else { "on the other side; that is no all-clear" };
        ("Cut", format!("{}, {side} ({})", cut.at, cut.source))
    }));
    let whole = |part: &Option<f64>| part.map_or_else(|| "none, for blanks".to_owned(), figure);
    facts.extend(score.parts.iter().map(|(name, part)| (*name, whole(part))));
    facts.extend(score.readings.iter().map(|(name, words)| (*name, format!("{words}; provisional, no diagnosis"))));
    facts.extend(score.to_ask.iter().map(|(item, why)| ("To ask about", format!("item {item}: {why}"))));
    facts
}

fn items(one: &super::Response, sheet: Option<&Sheet>) -> Vec<(usize, &'static str, String)> {
    let topics = one.measure.form().topics;
    let words = |at: usize| match sheet {
        None => DOES_NOT_OPEN.to_owned(),
        Some(sheet) => sheet.answers()[at].map_or_else(|| "left blank".to_owned(), |answer| answer.to_string()),
    };
    topics.iter().enumerate().map(|(at, topic)| (at + 1, *topic, words(at))).collect()
}

/// What the form of taking back sends.
#[derive(Default, serde::Deserialize)]
pub(super) struct Nothing {}

/// `POST /clients/{client}/measures/{number}/withdraw`
pub(super) async fn withdraw(
    member: Member,
    State(app): State<App>,
    InPath((client, number)): InPath<(Uuid, i32)>,
    Keyed(once, Nothing {}): Keyed<Nothing>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("measure.withdraw").client(client), &once).await?;
    clients::must_be_open(&mut tx, client).await?;
    let kept = queries::kept(&mut tx, client, number).await?.ok_or(Error::NotFound)?;
    kept.must_be_free()?;
    queries::withdraw(&mut tx, new_id(&app.world), kept.id, app.world.now()).await?;
    tx.saved(format!("/clients/{client}/measures")).await
}
