//! One client as the practice lead sees it: dates, counts, ratings by session. No text about the
//! person.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::Chart;

use super::course;
use super::queries::{self, SessionRow, TargetRow};
use crate::app::App;
use crate::error::Error;
use crate::forms::Id;
use crate::page::{Frame, page};
use crate::sessions::ClosingKind;
use crate::signin::{Member, Role};
use crate::subject::Act;
use crate::when::When;

struct Line {
    row: SessionRow,
    day: String,
    closing: &'static str,
}

#[derive(Template)]
#[template(path = "outcomes/client.html")]
struct Numbers {
    frame: Frame,
    number: i32,
    lines: Vec<Line>,
    targets: Vec<(TargetRow, Chart)>,
}

/// `GET /practice/clients/{client}`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Html<String>, Error> {
    member.needs(Role::Lead)?;
    let mut tx = app.database.act(&member.subject, Act::new("practice.client.view").client(id)).await?;
    let number = queries::number(&mut tx, id).await?.ok_or(Error::NotFound)?;
    let sessions = queries::sessions_of_client(&mut tx, id).await?;
    let mut targets = Vec::new();
    for target in queries::targets(&mut tx, id).await? {
        let chart = course::course(&mut tx, target.id).await?;
        targets.push((target, chart));
    }
    tx.commit().await?;
    let lines = sessions.into_iter().map(line).collect::<Result<_, _>>()?;
    page(&Numbers { frame, number, lines, targets })
}

fn line(row: SessionRow) -> Result<Line, Error> {
    let when = When::in_zone(&row.zone)?;
    let closing =
        if row.ended { row.closing.as_deref().and_then(ClosingKind::parse).map_or("not recorded", ClosingKind::words) } else { "open" };
    Ok(Line { day: when.day(&row.opened_at), closing, row })
}
