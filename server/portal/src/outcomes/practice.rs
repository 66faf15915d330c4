//! The lead's first page: for a period, who came, stayed and left, and whether totals changed. Each panel is one sentence that says the finding,
//! the figure, the table and what it does not show. No text about a person, nobody ranked, nothing by clinician.

use std::collections::HashMap;

use askama::Template;
use axum::extract::{Query, State};
use axum::response::Html;

use super::change::{Change, changes};
use super::flow::{Flow, flow};
use super::period::{Period, Span};
use super::today::{Today, today};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member, Role};
use crate::signin::{News, unread};
use crate::store::error::Error;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "outcomes/practice.html")]
struct PracticePage {
    frame: Frame,
    span: Span,
    news: Vec<News>,
    period: String,
    today: Today,
    flow: Flow,
    changes: Vec<Change>,
}

impl PracticePage {
    fn spans(&self) -> [(&'static str, &'static str); 3] {
        Span::ALL.map(|span| (span.name(), span.words()))
    }
}

/// `GET /practice?period=`
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Query(asked): Query<HashMap<String, String>>,
) -> Result<Html<String>, Error> {
    member.needs(Role::Lead)?;
    let span = Span::read(asked.get("period").map_or("", String::as_str));
    let mut tx = app.database.act(&member.subject, Act::new("practice.outcomes.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = unread(&mut tx, when).await?;
    let period = Period::of(span, when.date(&app.world.now()));
    let moments = period.moments(when);
    let today = today(&mut tx, when, app.world.now()).await?;
    let flow = flow(&mut tx, period, moments, when).await?;
    let changes = changes(&mut tx, moments.0, moments.1).await?;
    tx.commit().await?;
    page(&PracticePage { frame, span, news, period: period.words(when), today, flow, changes })
}
