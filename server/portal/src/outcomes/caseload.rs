//! The practice lead's list of clients: counts, dates, first and last ratings. No text about a
//! person, and no name unless the lead also treats that client. In order of record number: nobody
//! is ranked.

use std::collections::HashMap;

use askama::Template;
use axum::extract::{Query, State};
use axum::response::Html;
use chrono::{DateTime, Utc};
use leeward_core::chart::{Dots, dots};
use uuid::Uuid;

use super::closings::{self, Strip};
use super::queries::{self, CareRow, ClientRow};
use super::queries_practice;
use crate::clients;
use crate::platform::App;
use crate::platform::codes::closing_words;
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
    closing: &'static str,
    /// Days since it was closed as incomplete, when it was.
    left: Option<i64>,
}

/// Nobody is left for longer without a word why, days.
pub(crate) const LONG: u32 = 30;
/// Nor a target incomplete.
const LEFT_LONG: u32 = 14;

/// What stands out, each with its figure: of clients who are not archived, whoever treats them.
struct Findings {
    clients: usize,
    since: Dots,
    left: Dots,
    incomplete: usize,
    closings: Strip,
}

impl Findings {
    fn of(lines: &[ClientLine], closings: Strip) -> Self {
        let days = |of: fn(&ClientLine) -> Option<i64>| -> Vec<u32> {
            let there = lines.iter().filter(|line| !line.row.archived);
            there.filter_map(of).filter_map(|days| u32::try_from(days.max(0)).ok()).collect()
        };
        let (since, left) = (days(|line| line.days), days(|line| line.left));
        Self { clients: since.len(), since: dots(&since, LONG), left: dots(&left, LEFT_LONG), incomplete: left.len(), closings }
    }
}

/// Which records the table shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Show {
    #[default]
    All,
    Long,
    Left,
}

impl Show {
    fn read(asked: &str) -> Self {
        match asked {
            "long" => Self::Long,
            "left" => Self::Left,
            _ => Self::All,
        }
    }

    fn keeps(self, line: &ClientLine) -> bool {
        match self {
            Self::All => true,
            Self::Long => !line.row.archived && line.days.is_some_and(|days| days > i64::from(LONG)),
            Self::Left => !line.row.archived && line.left.is_some_and(|days| days > i64::from(LEFT_LONG)),
        }
    }
}

#[derive(Template)]
#[template(path = "outcomes/caseload.html")]
struct Caseload {
    frame: Frame,
    news: Vec<News>,
    /// Everybody who treats somebody, by name.
    clinicians: Vec<(Uuid, String)>,
    chosen: Option<Uuid>,
    findings: Findings,
    show: Show,
    by_days: bool,
    today: String,
    lines: Vec<ClientLine>,
    total: Total,
    /// Leads may open single courses.
    single: bool,
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
    for row in queries::clients(&mut tx, None).await? {
        if chosen.is_none_or(|member| care.iter().any(|link| link.client == row.id && link.member == member)) {
            lines.push(line(&mut tx, &app, row, &care, when).await?);
        }
    }
    let single = queries_practice::single_courses(&mut tx).await?;
    let today = when.date(&app.world.now());
    let sessions = queries::closings(&mut tx, closings::since(today)).await?;
    tx.commit().await?;
    let listed = |client| lines.iter().any(|line| line.row.id == client);
    let strip = Strip::of(sessions.iter().filter(|session| listed(session.client)), today, when);
    let findings = Findings::of(&lines, strip);
    let (show, by_days) = (Show::read(asked.get("show").map_or("", String::as_str)), asked.get("sort").is_some_and(|sort| sort == "days"));
    lines.retain(|line| show.keeps(line));
    if by_days {
        lines.sort_by_key(|line| std::cmp::Reverse(line.days));
    }
    let mut clinicians: Vec<_> = care.into_iter().map(|link| (link.member, link.name)).collect();
    clinicians.dedup();
    let today = when.day(&app.world.now());
    page(&Caseload { frame, news, clinicians, chosen, findings, show, by_days, today, total: Total::of(&lines), single, lines })
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
        closing: if row.closed_at.is_some() { closing_words(true, row.closing.as_deref()) } else { "" },
        left: row.closed_at.filter(|_| row.closing.as_deref() == Some("incomplete")).map(|at| (today - when.date(&at)).num_days()),
        row,
    })
}
