//! The page of what steadies a client.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use uuid::Uuid;

use super::{KeptResource, LINES, resources, steadying};
use crate::clients::{self, details};
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "steadying/steadying.html")]
struct SteadyingPage {
    frame: Frame,
    client: Uuid,
    name: Opened,
    record: i32,
    archived: bool,
    /// Each line's name and what it says; `None`: nothing was written yet.
    lines: Option<Vec<(&'static str, String)>>,
    resources: Vec<KeptResource>,
    when: When,
}

/// `GET /clients/{client}/steadying`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("steadying.view").client(client)).await?;
    let row = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let name = details(&mut tx, &app, client).await?.name;
    let lines = steadying(&mut tx, &app, client).await?.map(|(kept, _)| {
        let said = |text: &Opened| if text.is_empty() { "nothing is written down".to_owned() } else { text.shown().to_owned() };
        LINES.iter().zip(&kept.lines).map(|(line, text)| (line.words, said(text))).collect()
    });
    let resources = resources(&mut tx, &app, client).await?;
    let when = When::in_practice(&mut tx).await?;
    tx.commit().await?;
    let (record, archived) = (row.number, row.archived_at.is_some());
    page(&SteadyingPage { frame, client, name, record, archived, lines, resources, when })
}
