//! The lead's first page: what needs a person today, and for a period who came, stayed and left, and whether totals changed. Each panel is one
//! sentence that says the finding, the figure, the table and what it does not show. No text about a person, nobody ranked, nothing by clinician. A
//! quarter that is over can be frozen: it then shows what stood there on that day.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use chrono::NaiveDate;
use uuid::Uuid;

use super::change::{Change, changes};
use super::figures::{Figures, Frozen, figures_of, freeze, frozen};
use super::flow::{Flow, flow};
use super::period::{Period, Span};
use super::queries_practice as queries;
use super::today::{Today, today};
use crate::platform::forms::{Asks, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member, Role};
use crate::signin::{News, unread};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "outcomes/practice.html")]
struct PracticePage {
    frame: Frame,
    /// Of the periods that can be chosen: what is sent, how it reads, and whether it is the one shown.
    periods: Vec<(String, String, bool)>,
    news: Vec<News>,
    period: String,
    /// The first day of the quarter that may be frozen now.
    may_freeze: Option<NaiveDate>,
    /// When and by whom this was frozen; `None`: it is as it is now.
    frozen: Option<String>,
    /// What waits now; not on a page that shows how it was.
    today: Option<Today>,
    /// The span shown, as the address names it.
    span: &'static str,
    /// Leads may open single courses.
    single: bool,
    flow: Flow,
    changes: Vec<Change>,
    /// Of measures by which no change is judged, a sentence each.
    unjudged: Vec<String>,
}

fn periods(span: Option<Span>, all: &[Frozen], chosen: Option<Uuid>, when: When) -> Vec<(String, String, bool)> {
    let spans = Span::ALL.map(|one| (one.name().to_owned(), one.words().to_owned(), Some(one) == span));
    let frozen = all.iter().map(|one| (one.id.to_string(), format!("Frozen: {}", one.period.words(when)), Some(one.id) == chosen));
    spans.into_iter().chain(frozen).collect()
}

/// Which time the address asks for.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Asked {
    period: String,
    /// The id of the list of today that is to name all of its records.
    whole: String,
}

/// `GET /practice?period=&whole=`: the name of a span, or the id of a quarter that was frozen; and a list of today.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Asks(asked): Asks<Asked>) -> Result<Html<String>, Error> {
    member.needs(Role::Lead)?;
    let chosen: Option<Uuid> = asked.period.parse().ok();
    let span = chosen.is_none().then(|| Span::read(&asked.period));
    let mut tx = app.database.act(&member.subject, Act::new("practice.outcomes.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = unread(&mut tx, when).await?;
    let now = app.world.now();
    let all = frozen(&mut tx).await?;
    let (period, figures, today) = match (chosen, span) {
        (Some(id), _) => {
            let one = all.iter().find(|one| one.id == id).ok_or(Error::NotFound)?;
            (one.period, figures_of(&mut tx, id).await?, None)
        }
        (None, span) => {
            let period = Period::of(span.unwrap_or_default(), when.date(&now));
            (period, Figures::now(&mut tx, period, when).await?, Some(today(&mut tx, when, now, &asked.whole).await?))
        }
    };
    let single = queries::single_courses(&mut tx).await?;
    tx.commit().await?;
    let is_frozen = all.iter().any(|one| one.period.first == period.first);
    let may_freeze = (span == Some(Span::Before) && !is_frozen).then_some(period.first);
    let said = all.iter().find(|one| Some(one.id) == chosen).map(|one| format!("{} by {}", when.moment(&one.made_at), one.made_by));
    let (flow, (changes, unjudged)) = (flow(&figures, period, when), changes(&figures)?);
    let periods = periods(span, &all, chosen, when);
    page(&PracticePage {
        frame,
        periods,
        news,
        period: period.words(when),
        may_freeze,
        frozen: said,
        today,
        span: span.unwrap_or_default().name(),
        single,
        flow,
        changes,
        unjudged,
    })
}

/// Which quarter the page offered.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Quarter {
    first: String,
}

/// `POST /practice/snapshots`: freezes the quarter before this one.
pub(super) async fn make(member: Member, State(app): State<App>, Keyed(once, quarter): Keyed<Quarter>) -> Result<Answer, Error> {
    member.needs(Role::Lead)?;
    let mut tx = app.database.act_once(&member.subject, Act::new("practice.snapshot.make"), &once).await?;
    let when = When::in_practice(&mut tx).await?;
    let period = Period::of(Span::Before, when.date(&app.world.now()));
    if quarter.first != period.first.to_string() {
        return Err(Error::Conflict(
            "Another quarter has begun since the page was opened. Open it again, and freeze the one that it shows.",
        ));
    }
    let already = Error::Conflict("This quarter was frozen already. Choose it from the list of periods.");
    let id = freeze(&mut tx, &app, period, when).await?.ok_or(already)?;
    tx.is_about(id);
    tx.commit(Answer::see(format!("/practice?period={id}"))).await
}
