//! Opening, editing and archiving a record.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use uuid::Uuid;

use super::form::{FormPage, Typed, notice};
use super::request::{Against, Id, Sent, version};
use super::{NewClient, create, is_rehearsal, key, open, queries, seal};
use crate::app::App;
use crate::error::Error;
use crate::forms::Problems;
use crate::live;
use crate::page::Frame;
use crate::signin::{Member, Role};
use crate::subject::{Act, Subject, Tx};

pub(super) async fn new_form(member: Member, frame: Frame) -> Result<Response, Error> {
    member.needs(Role::Clinician)?;
    let typed = Typed::of(&NewClient::default(), String::new());
    FormPage { frame, client: None, typed, problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
}

pub(super) async fn save_new(member: Member, State(app): State<App>, frame: Frame, Sent(typed): Sent<Typed>) -> Result<Response, Error> {
    member.needs(Role::Clinician)?;
    let (problems, new) = typed.check();
    if !problems.none() {
        return FormPage { frame, client: None, typed, problems, notice: notice::LOOK }.answer(StatusCode::UNPROCESSABLE_ENTITY);
    }
    match create(&app, &member.subject, new).await {
        Ok(client) => Ok(Redirect::to(&format!("/clients/{client}")).into_response()),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a new client was not saved");
            FormPage { frame, client: None, typed, problems, notice: notice::unsaved(&fault) }.answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    let typed = kept(&mut tx, &app, client).await?;
    tx.commit().await?;
    FormPage { frame, client: Some(client), typed, problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Sent(mut typed): Sent<Typed>,
) -> Result<Response, Error> {
    let (problems, new) = typed.check();
    let page = |typed, problems, notice| FormPage { frame, client: Some(client), typed, problems, notice };
    match try_edit(&member, &app, client, &typed, &problems, &new).await {
        Ok(Edit::Saved) => Ok(Redirect::to(&format!("/clients/{client}")).into_response()),
        Ok(Edit::Refused) => page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY),
        Ok(Edit::ChangedMeanwhile(kept)) => {
            let problems = typed.differences(&kept);
            typed.version = kept.version;
            page(typed, problems, notice::CHANGED).answer(StatusCode::CONFLICT)
        }
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a change to a client was not saved");
            page(typed, problems, notice::unsaved(&fault)).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

/// How an edit went.
enum Edit {
    Saved,
    Refused,
    ChangedMeanwhile(Box<Typed>),
}

async fn try_edit(member: &Member, app: &App, client: Uuid, typed: &Typed, problems: &Problems, new: &NewClient) -> Result<Edit, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.change").client(client)).await?;
    // Whose record it is comes before what is wrong with the form: to others it is not there.
    let key = key(&mut tx, app, client).await?;
    if !problems.none() {
        return Ok(Edit::Refused);
    }
    if !queries::change_client(&mut tx, client, version(&typed.version)?, new.cautions).await? {
        return Ok(Edit::ChangedMeanwhile(Box::new(kept(&mut tx, app, client).await?)));
    }
    let before = queries::details(&mut tx, client).await?.ok_or(Error::NotFound)?;
    // The form showed all of it, or nothing is replaced.
    open(&key, client, &before).whole()?;
    let next = before.version + 1;
    queries::change_details(&mut tx, client, &seal(app, &key, client, next, &new.details)?).await?;
    tx.commit().await?;
    live::tell(app, client, new.cautions.eyes_locked()).await;
    Ok(Edit::Saved)
}

/// The form as the record now fills it.
async fn kept(tx: &mut Tx, app: &App, client: Uuid) -> Result<Typed, Error> {
    let key = key(tx, app, client).await?;
    let row = queries::client(tx, client).await?.ok_or(Error::NotFound)?;
    let sealed = queries::details(tx, client).await?.ok_or(Error::NotFound)?;
    Ok(Typed::of(&NewClient { details: open(&key, client, &sealed).whole()?, cautions: row.cautions }, row.version.to_string()))
}

pub(super) async fn archive(
    member: Member,
    State(app): State<App>,
    Id(client): Id,
    Sent(against): Sent<Against>,
) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.archive").client(client)).await?;
    key(&mut tx, &app, client).await?;
    archive_in(tx, &app, client, against.version()?).await?;
    Ok(Redirect::to(&format!("/clients/{client}")))
}

/// Archives a client's record as it stood at `version`.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat the client; [`Error::Conflict`] while a session is
/// open, or when the record has another version.
pub async fn archive_client(app: &App, subject: &Subject, client: Uuid, version: i32) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("client.archive").client(client)).await?;
    key(&mut tx, app, client).await?;
    archive_in(tx, app, client, version).await
}

async fn archive_in(mut tx: Tx, app: &App, client: Uuid, version: i32) -> Result<(), Error> {
    if is_rehearsal(&mut tx, client).await? {
        return Err(Error::Conflict("This is the pretend client of your rehearsals, on no list, so it was not archived."));
    }
    if queries::has_open_session(&mut tx, client).await? {
        return Err(Error::Conflict("A session with this client is still open, so the record was not archived. End the session first."));
    }
    put_away(tx, client, version, Some(app.world.now())).await
}

pub(super) async fn restore(
    member: Member,
    State(app): State<App>,
    Id(client): Id,
    Sent(against): Sent<Against>,
) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.restore").client(client)).await?;
    key(&mut tx, &app, client).await?;
    put_away(tx, client, against.version()?, None).await?;
    Ok(Redirect::to(&format!("/clients/{client}")))
}

async fn put_away(mut tx: Tx, client: Uuid, version: i32, at: Option<chrono::DateTime<chrono::Utc>>) -> Result<(), Error> {
    if !queries::archive(&mut tx, client, version, at).await? {
        return Err(Error::Conflict("Somebody changed this record meanwhile, so nothing was done. Open the record again and look first."));
    }
    tx.commit().await
}
