//! The page of a client's adverse events.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use uuid::Uuid;

use super::{KeptEvent, events};
use crate::clients::{self, details};
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "events/events.html")]
struct EventsPage {
    frame: Frame,
    client: Uuid,
    name: Opened,
    record: i32,
    archived: bool,
    events: Vec<KeptEvent>,
    when: When,
}

/// `GET /clients/{client}/events`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("event.view").client(client)).await?;
    let row = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let name = details(&mut tx, &app, client).await?.name;
    let events = events(&mut tx, &app, client).await?;
    let when = When::in_practice(&mut tx).await?;
    tx.commit().await?;
    page(&EventsPage { frame, client, name, record: row.number, archived: row.archived_at.is_some(), events, when })
}
