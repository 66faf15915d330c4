//! The practice lead's list of clients: counts, dates, first and last ratings. No text about a
//! person, and no name unless the lead also treats that client. In order of record number: nobody
//! is ranked.

use std::collections::HashMap;

use askama::Template;
use axum::extract::{Query, State};
use axum::response::Html;
use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::queries::{self, CareRow, ClientRow};
use crate::clients;
use crate::platform::App;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{Member, Role};
use crate::signin::{News, unread};
use crate::store::error::Error;
use crate::store::subject::{Act, Tx};

struct ClientLine {
    row: ClientRow,
    /// Only where the lead also treats the client.
    name: Option<String>,
    clinicians: String,
    first: String,
    last: String,
    days: Option<i64>,
}

#[derive(Template)]
#[template(path = "outcomes/caseload.html")]
struct Caseload {
    frame: Frame,
    news: Vec<News>,
    /// Everybody who treats somebody, by name.
    clinicians: Vec<(Uuid, String)>,
    chosen: Option<Uuid>,
    lines: Vec<ClientLine>,
    total: Total,
}

/// The counts of all lines together.
#[derive(Default)]
struct Total {
    open: i64,
    incomplete: i64,
    complete: i64,
    sessions: i64,
    sets: i64,
}

impl Total {
    fn of(lines: &[ClientLine]) -> Self {
        lines.iter().map(|line| &line.row).fold(Self::default(), |sum, row| Self {
            open: sum.open + row.open,
            incomplete: sum.incomplete + row.incomplete,
            complete: sum.complete + row.complete,
            sessions: sum.sessions + row.sessions,
            sets: sum.sets + row.sets,
        })
    }
}

impl Caseload {
    fn is_chosen(&self, id: &Uuid) -> bool {
        self.chosen == Some(*id)
    }

    fn has_names(&self) -> bool {
        self.lines.iter().any(|line| line.name.is_some())
    }
}

/// `GET /practice/caseload`; `?clinician=` narrows it to those whom one member treats.
pub(super) async fn show(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Query(asked): Query<HashMap<String, String>>,
) -> Result<Html<String>, Error> {
    member.needs(Role::Lead)?;
    let chosen = match asked.get("clinician").map_or("", String::as_str) {
        "" => None,
        id => Some(id.parse().map_err(|_| Error::BadRequest("Choose the clinician from the list."))?),
    };
    let mut tx = app.database.act(&member.subject, Act::new("practice.caseload.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = unread(&mut tx, when).await?;
    let care = queries::care(&mut tx).await?;
    let mut lines = Vec::new();
    for row in queries::clients(&mut tx).await? {
        if chosen.is_none_or(|member| care.iter().any(|link| link.client == row.id && link.member == member)) {
            lines.push(line(&mut tx, &app, row, &care, when).await?);
        }
    }
    tx.commit().await?;
    let mut clinicians: Vec<_> = care.into_iter().map(|link| (link.member, link.name)).collect();
    clinicians.dedup();
    page(&Caseload { frame, news, clinicians, chosen, total: Total::of(&lines), lines })
}

async fn line(tx: &mut Tx, app: &App, row: ClientRow, care: &[CareRow], when: When) -> Result<ClientLine, Error> {
    let name = match row.mine {
        true => Some(clients::details(tx, app, row.id).await?.name.shown().to_owned()),
        false => None,
    };
    let names: Vec<&str> = care.iter().filter(|link| link.client == row.id).map(|link| link.name.as_str()).collect();
    let date = |at: Option<DateTime<Utc>>| at.map_or(String::new(), |at| when.brief_day(&at));
    let today = when.date(&app.world.now());
    Ok(ClientLine {
        name,
        clinicians: names.join(", "),
        first: date(row.first_at),
        last: date(row.last_at),
        days: row.last_at.map(|at| (today - when.date(&at)).num_days()),
        row,
    })
}
