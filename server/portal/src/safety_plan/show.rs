//! The page of a safety plan, and the client's own copy of it: the lines that the client wishes to have.

use askama::Template;
use axum::extract::{RawQuery, State};
use axum::response::Html;
use chrono::NaiveDate;
use uuid::Uuid;

use super::{PARTS, plan};
use crate::clients::{self, details};
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::{Act, Tx};

/// A part as it is shown: its lines, each with the name under which the copy leaves it out.
struct Shown {
    words: &'static str,
    lines: Vec<(String, String)>,
}

struct Found {
    name: Opened,
    record: i32,
    archived: bool,
    /// `None`: none was written yet.
    plan: Option<(Vec<Shown>, Option<NaiveDate>)>,
    when: When,
}

async fn find(tx: &mut Tx, app: &App, client: Uuid) -> Result<Found, Error> {
    let row = clients::row(tx, client).await?.ok_or(Error::NotFound)?;
    let name = details(tx, app, client).await?.name;
    let plan = plan(tx, app, client).await?.map(|(plan, _)| {
        let lines = |at: usize, text: &Opened| {
            let lines = text.shown().lines().filter(|line| !line.trim().is_empty());
            lines.enumerate().map(|(nth, line)| (format!("{}.{nth}", PARTS[at].name), line.trim().to_owned())).collect()
        };
        let parts = plan.parts.iter().enumerate().map(|(at, text)| Shown { words: PARTS[at].words, lines: lines(at, text) });
        (parts.collect(), plan.review_on)
    });
    Ok(Found { name, record: row.number, archived: row.archived_at.is_some(), plan, when: When::in_practice(tx).await? })
}

#[derive(Template)]
#[template(path = "safety_plan/plan.html")]
struct PlanPage {
    frame: Frame,
    client: Uuid,
    found: Found,
    /// The day of the review, and whether it is over.
    review: Option<(String, bool)>,
}

/// `GET /clients/{client}/safety-plan`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("safety_plan.view").client(client)).await?;
    let found = find(&mut tx, &app, client).await?;
    tx.commit().await?;
    let today = found.when.date(&app.world.now());
    let review = found.plan.as_ref().and_then(|(_, review_on)| *review_on).map(|day| (found.when.of_day(day), day < today));
    page(&PlanPage { frame, client, found, review })
}

#[derive(Template)]
#[template(path = "safety_plan/copy.html")]
struct CopyPage {
    frame: Frame,
    client: Uuid,
    found: Found,
    chosen: Vec<Shown>,
}

/// `GET /clients/{client}/safety-plan/copy`: the lines named by `with`, or all of them while none is named. The names say nothing.
pub(super) async fn copy(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    RawQuery(query): RawQuery,
) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("safety_plan.view").client(client)).await?;
    let mut found = find(&mut tx, &app, client).await?;
    tx.commit().await?;
    let wanted: Vec<&str> = query.as_deref().unwrap_or_default().split('&').filter_map(|pair| pair.strip_prefix("with=")).collect();
    let (parts, _) = found.plan.take().ok_or(Error::NotFound)?;
    let kept = |line: &(String, String)| wanted.is_empty() || wanted.contains(&line.0.as_str());
    let parts = parts.into_iter().map(|part| Shown { lines: part.lines.into_iter().filter(kept).collect(), ..part });
    page(&CopyPage { frame, client, found, chosen: parts.filter(|part| !part.lines.is_empty()).collect() })
}
