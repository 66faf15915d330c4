//! The caseload: the clients whom a clinician treats.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use uuid::Uuid;

use super::{my_rehearsal, queries};
use crate::platform::App;
use crate::platform::forms::Asks;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{Member, Role};
use crate::signin::{News, unread};
use crate::store::error::Error;
use crate::store::seal::Field;
use crate::store::subject::Act;

/// What the list is narrowed to.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Wanted {
    find: String,
    archived: String,
}

#[derive(Template)]
#[template(path = "clients/list.html")]
struct Caseload {
    frame: Frame,
    news: Vec<News>,
    find: String,
    archived: bool,
    /// How many there are before the filter.
    all: usize,
    lines: Vec<ClientLine>,
    /// The pretend client, once there is one.
    rehearsal: Option<Uuid>,
}

struct ClientLine {
    id: Uuid,
    number: i32,
    name: String,
    addressed_as: String,
    flags: Vec<String>,
    open_targets: i64,
    last_session: Option<String>,
}

impl ClientLine {
    /// Whether the name, the form of address or the record number holds what is looked for.
    fn is_meant(&self, find: &str) -> bool {
        let find = find.trim().to_lowercase();
        find.trim_start_matches("no.").trim() == self.number.to_string()
            || self.name.to_lowercase().contains(&find)
            || self.addressed_as.to_lowercase().contains(&find)
    }
}

pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Asks(wanted): Asks<Wanted>) -> Result<Html<String>, Error> {
    member.needs(Role::Clinician)?;
    let archived = wanted.archived == "1";
    let mut tx = app.database.act(&member.subject, Act::new("caseload.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = unread(&mut tx, when).await?;
    let rows = queries::caseload(&mut tx, archived).await?;
    let rehearsal = my_rehearsal(&mut tx).await?;
    tx.commit().await?;
    let mut lines: Vec<ClientLine> = rows.into_iter().map(|row| read(&app, row, when)).collect();
    let all = lines.len();
    lines.retain(|line| line.is_meant(&wanted.find));
    // Names are sealed, so the database cannot sort by them.
    lines.sort_by_cached_key(|line| (line.name.to_lowercase(), line.number));
    page(&Caseload { frame, news, find: wanted.find, archived, all, lines, rehearsal })
}

fn read(app: &App, row: queries::CaseRow, when: When) -> ClientLine {
    let key = app.key.unwrap(row.id, &row.wrapped);
    let sealed = key.row(row.id, row.details_version);
    ClientLine {
        id: row.id,
        number: row.number,
        name: sealed.open(Field::ClientName, &row.name).shown().to_owned(),
        addressed_as: sealed.open(Field::ClientAddressedAs, &row.addressed_as).shown().to_owned(),
        flags: row.cautions.flags(),
        open_targets: row.open_targets,
        last_session: row.last_session.map(|at| when.short_day(&at)),
    }
}
