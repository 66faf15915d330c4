//! Adding and changing what may steady a client.

use axum::extract::State;
use axum::response::Response;
use uuid::Uuid;

use super::resource_form::{FormPage, ResourceForm};
use super::{KeptResource, add_in, queries, seal};
use crate::clients;
use crate::platform::forms::{Again, Id, InPath, Keyed, SaveOutcome, answer, comes_back, version};
use crate::platform::page::Frame;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::{Act, Tx};

/// Whose resource, and which of theirs.
#[derive(Clone, Copy, serde::Deserialize)]
pub(super) struct Which {
    client: Uuid,
    number: i32,
}

/// `GET /clients/{client}/resources/new`
pub(super) async fn new_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("steadying.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, (client, None, record), Again::first(ResourceForm::blank()))
}

/// `GET /clients/{client}/resources/{number}/edit`
pub(super) async fn edit_form(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath(Which { client, number }): InPath<Which>,
) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("steadying.view").client(client)).await?;
    let (_, kept) = find(&mut tx, &app, client, number).await?;
    let record = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, (client, Some(number), record), Again::first(ResourceForm::of(kept)?))
}

/// `POST /clients/{client}/resources/new`
pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<ResourceForm>,
) -> Result<Response, Error> {
    let tried = try_new(&member, &app, client, &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, (client, None, record), again))
}

async fn try_new(member: &Member, app: &App, client: Uuid, once: &Once, typed: &ResourceForm) -> Result<SaveOutcome<ResourceForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("resource.create").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, app, client).await?;
    let good = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    add_in(&mut tx, app, client, &good).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/steadying")).await?))
}

/// `POST /clients/{client}/resources/{number}/edit`
pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath(which): InPath<Which>,
    Keyed(once, typed): Keyed<ResourceForm>,
) -> Result<Response, Error> {
    let tried = try_edit(&member, &app, which, &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, which.client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, (which.client, Some(which.number), record), again))
}

async fn try_edit(
    member: &Member,
    app: &App,
    Which { client, number }: Which,
    once: &Once,
    typed: &ResourceForm,
) -> Result<SaveOutcome<ResourceForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("resource.change").client(client), once).await?;
    clients::must_be_open(&mut tx, client).await?;
    let (id, before) = find(&mut tx, app, client, number).await?;
    let good = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    let at = version(&typed.version)?;
    if before.version != at {
        return Ok(SaveOutcome::Changed(Box::new(ResourceForm::of(before)?)));
    }
    // The form showed all of it, or nothing is replaced.
    before.resource.whole()?;
    let key = clients::key(&mut tx, app, client).await?;
    if !queries::change(&mut tx, id, &seal(app, &key, id, at + 1, &good)?, at + 1).await? {
        return Err(Error::NothingWritten("resource"));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/steadying")).await?))
}

/// The one of this number.
async fn find(tx: &mut Tx, app: &App, client: Uuid, number: i32) -> Result<(Uuid, KeptResource), Error> {
    let key = clients::key(tx, app, client).await?;
    let row = queries::resource(tx, client, number).await?.ok_or(Error::NotFound)?;
    Ok((row.id, row.open(&key)?))
}
