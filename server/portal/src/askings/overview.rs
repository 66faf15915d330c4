//! What one client is asked: the schedule, what is due, the asking that is open with its link, and those before it.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use chrono::{DateTime, Utc};
use leeward_core::measures::Measure;
use uuid::Uuid;

use super::link::Which;
use super::schedule::Schedule;
use super::{Asking, Due, due, link, names, queries};
use crate::clients::{self, details};
use crate::platform::forms::{Id, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::seal::Opened;
use crate::store::subject::Act;
use crate::wordings;

#[derive(Template)]
#[template(path = "askings/overview.html")]
struct OverviewPage {
    frame: Frame,
    client: Uuid,
    name: Opened,
    record: i32,
    archived: bool,
    /// What is asked over a treatment, in words.
    schedule: Option<String>,
    /// What is to be done now, in words.
    due: Option<String>,
    /// When it is due next, where that day is still to come.
    next: Option<String>,
    open: Option<Open>,
    earlier: Vec<Asking>,
    when: When,
    now: DateTime<Utc>,
}

/// The asking that is open.
struct Open {
    asking: Asking,
    /// `None`: none holds.
    link: Option<String>,
    /// The forms of it that have no wording in use: the client finds nothing to answer there.
    unworded: String,
}

/// `GET /clients/{client}/askings`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("asking.view").client(client)).await?;
    let row = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let (key, name) = (clients::key(&mut tx, &app, client).await?, details(&mut tx, &app, client).await?.name);
    let (when, now) = (When::in_practice(&mut tx).await?, app.world.now());
    let today = when.date(&now);
    let set = queries::schedule(&mut tx, client).await?;
    let due = due(&mut tx, client, today).await?;
    let all: Vec<Asking> = queries::askings(&mut tx, client).await?.into_iter().map(|one| one.open(&key)).collect::<Result<_, _>>()?;
    let worded = wordings::in_use(&mut tx).await?;
    tx.commit().await?;
    let (mut open, earlier): (Vec<_>, Vec<_>) = all.into_iter().partition(|one| one.holds(now));
    let open = open.pop().map(|asking| {
        let unworded: Vec<Measure> = asking.measures.iter().filter(|measure| !worded.contains(measure)).copied().collect();
        let link = asking.link_holds.then(|| link::text(&app, asking.id, asking.links));
        Open { link, unworded: names(&unworded), asking }
    });
    let next = set.as_ref().and_then(|set| set.due_on).filter(|on| *on > today).map(|on| when.of_day(on));
    let schedule = set.as_ref().map(|row| Schedule::of(row).map(|schedule| schedule.words())).transpose()?;
    let (record, archived, due) = (row.number, row.archived_at.is_some(), due.map(|due: Due| due.words(today)));
    page(&OverviewPage { frame, client, name, record, archived, schedule, due, next, open, earlier, when, now })
}

/// `POST /clients/{client}/askings/withdraw`
pub(super) async fn withdraw(
    member: Member,
    State(app): State<App>,
    Id(client): Id,
    Keyed(once, which): Keyed<Which>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("asking.withdraw").client(client), &once).await?;
    clients::lock(&mut tx, client).await?;
    if !queries::withdraw(&mut tx, client, which.read()?, app.world.now()).await? {
        return Err(Error::Conflict("It was answered, declined or taken back meanwhile. Open the page again and look."));
    }
    tx.saved(format!("/clients/{client}/askings")).await
}
