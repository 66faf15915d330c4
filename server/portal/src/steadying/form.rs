//! Writing the three lines: what was typed, what is wrong with it, and keeping it.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{LINES, Line, Steadying, change, steadying};
use crate::clients;
use crate::platform::forms::{Again, Fields, Id, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back, list, version};
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{Opened, Private, SealError};
use crate::store::subject::Act;

/// Most characters of a line: it is read at a glance.
const MOST: usize = 200;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct LinesForm {
    signs: String,
    way_back: String,
    first_words: String,
    version: String,
}

impl LinesForm {
    /// The form filled with what is kept.
    ///
    /// # Errors
    /// [`SealError`] when a line did not open: then there is no form.
    fn of(kept: Option<(Steadying<Opened>, i32)>) -> Result<Self, SealError> {
        let Some((lines, version)) = kept else { return Ok(Self { version: "0".to_owned(), ..Self::default() }) };
        let [signs, way_back, first_words] = lines.whole()?.lines.map(|text| text.reveal().to_owned());
        Ok(Self { signs, way_back, first_words, version: version.to_string() })
    }

    /// What was typed for a line.
    fn typed(&self, line: &Line) -> &str {
        match line.name {
            "signs" => &self.signs,
            "way_back" => &self.way_back,
            _ => &self.first_words,
        }
    }

    fn check(&self) -> Result<Steadying, Problems> {
        let mut problems = Problems::default();
        let lines = LINES.each_ref().map(|line| Private::new(problems.text(line.name, self.typed(line), MOST, Need::Optional, Lines::One)));
        if problems.none() { Ok(Steadying { lines }) } else { Err(problems) }
    }
}

impl Fields for LinesForm {
    const LABELS: &'static [(&'static str, &'static str)] =
        &[("signs", "Early signs"), ("way_back", "Way back"), ("first_words", "First words")];

    fn shown(&self, name: &str) -> String {
        LINES.iter().find(|line| line.name == name).map_or_else(String::new, |line| self.typed(line).to_owned())
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "steadying/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    number: Option<i32>,
    typed: LinesForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<LinesForm>(&self.problems)
    }

    fn show(frame: Frame, client: Uuid, number: Option<i32>, again: Again<LinesForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, client, number, typed, problems, notice })?).into_response())
    }
}

/// `GET /clients/{client}/steadying/edit`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("steadying.view").client(client)).await?;
    let typed = LinesForm::of(steadying(&mut tx, &app, client).await?)?;
    let number = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, client, number, Again::first(typed))
}

/// `POST /clients/{client}/steadying/edit`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<LinesForm>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, client, &once, &typed).await;
    let number = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, client, number, again))
}

async fn try_save(member: &Member, app: &App, client: Uuid, once: &Once, typed: &LinesForm) -> Result<SaveOutcome<LinesForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("steadying.change").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    let key = clients::key(&mut tx, app, client).await?;
    let good = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    if !change(&mut tx, app, &key, client, &good, version(&typed.version)?).await? {
        return Ok(SaveOutcome::Changed(Box::new(LinesForm::of(steadying(&mut tx, app, client).await?)?)));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/steadying")).await?))
}
