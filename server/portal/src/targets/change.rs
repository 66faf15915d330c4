//! Entering, editing and archiving a target, and saying how far it has come.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::assessments::{self, Assessed};
use super::form::{FormPage, Good, Place, Typed};
use super::{NewTarget, Status, create, find, queries, seal};
use crate::app::App;
use crate::clients::{self, Against, Id, Sent, notice, version};
use crate::error::Error;
use crate::forms::Problems;
use crate::page::Frame;
use crate::sessions::When;
use crate::signin::Member;
use crate::subject::{Act, Tx};

pub(super) async fn new_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    tx.commit().await?;
    FormPage { frame, place: Place::New(client), typed: Typed::default(), assessed: None, problems: Problems::default(), notice: "" }
        .answer(StatusCode::OK)
}

pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Sent(typed): Sent<Typed>,
) -> Result<Response, Error> {
    let page = |typed, problems, notice| FormPage { frame, place: Place::New(client), typed, assessed: None, problems, notice };
    match try_new(&member, &app, client, &typed).await {
        Ok(Ok(target)) => Ok(Redirect::to(&format!("/targets/{target}")).into_response()),
        Ok(Err(problems)) => page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a new target was not saved");
            page(typed, Problems::default(), notice::NO_DATABASE).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

async fn try_new(member: &Member, app: &App, client: Uuid, typed: &Typed) -> Result<Result<Uuid, Problems>, Error> {
    let Good { prong, words, ratings } = match typed.check() {
        Ok(good) => good,
        Err(problems) => {
            // To those who do not treat the client, the form is not there at all.
            let mut tx = app.database.look(&member.subject).await?;
            clients::key(&mut tx, app, client).await?;
            return Ok(Err(problems));
        }
    };
    let new = NewTarget { client, prong, words, sud: ratings.sud, voc: ratings.voc };
    create(app, &member.subject, new).await.map(Ok)
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("target.view").object(id)).await?;
    let typed = Typed::of(&find(&mut tx, &app, id).await?);
    let assessed = Some(shown(&mut tx, id).await?);
    tx.commit().await?;
    FormPage { frame, place: Place::Edit(id), typed, assessed, problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
}

/// The assessments that the form shows, and how it writes their days.
async fn shown(tx: &mut Tx, target: Uuid) -> Result<(Vec<Assessed>, When), Error> {
    Ok((assessments::list(tx, target).await?, When::in_zone(clients::zone(tx).await?.name())?))
}

/// The same for a form that comes back; `None` when the database does not answer.
async fn shown_again(member: &Member, app: &App, target: Uuid) -> Option<(Vec<Assessed>, When)> {
    let mut tx = app.database.look(&member.subject).await.ok()?;
    shown(&mut tx, target).await.ok()
}

/// How an edit went.
enum Edit {
    Saved,
    Refused(Problems),
    ChangedMeanwhile(Box<Typed>),
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(id): Id,
    Sent(mut typed): Sent<Typed>,
) -> Result<Response, Error> {
    let tried = try_edit(&member, &app, id, &typed).await;
    let assessed = if matches!(tried, Ok(Edit::Saved)) { None } else { shown_again(&member, &app, id).await };
    let page = |typed, problems, notice| FormPage { frame, place: Place::Edit(id), typed, assessed, problems, notice };
    match tried {
        Ok(Edit::Saved) => Ok(Redirect::to(&format!("/targets/{id}")).into_response()),
        Ok(Edit::Refused(problems)) => page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY),
        Ok(Edit::ChangedMeanwhile(kept)) => {
            let problems = typed.differences(&kept);
            typed.version = kept.version;
            page(typed, problems, notice::CHANGED).answer(StatusCode::CONFLICT)
        }
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a change to a target was not saved");
            page(typed, Problems::default(), notice::NO_DATABASE).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

async fn try_edit(member: &Member, app: &App, id: Uuid, typed: &Typed) -> Result<Edit, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("target.change").object(id)).await?;
    let before = find(&mut tx, app, id).await?;
    let Good { prong, words, ratings } = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(Edit::Refused(problems)),
    };
    if !queries::change_target(&mut tx, id, version(&typed.version)?, prong).await? {
        return Ok(Edit::ChangedMeanwhile(Box::new(Typed::of(&find(&mut tx, app, id).await?))));
    }
    let key = clients::key(&mut tx, app, before.client).await?;
    let next = queries::words_version(&mut tx, id).await? + 1;
    queries::change_words(&mut tx, &seal(app, &key, id, next, &words)?).await?;
    if let Err(problems) = assessments::correct(&mut tx, app, id, typed.slip()).await? {
        return Ok(Edit::Refused(problems));
    }
    assessments::assess(&mut tx, app, before.client, id, ratings).await?;
    tx.commit().await?;
    Ok(Edit::Saved)
}

const CHANGED: Error =
    Error::Conflict("Somebody changed this target meanwhile, so nothing was done. Open the target again and look first.");

/// What the form of the status sends.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Chosen {
    status: String,
    version: String,
}

pub(super) async fn status(member: Member, State(app): State<App>, Id(id): Id, Sent(chosen): Sent<Chosen>) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("target.status").object(id)).await?;
    let target = find(&mut tx, &app, id).await?;
    if target.version != version(&chosen.version)? {
        return Err(CHANGED);
    }
    let status = Status::parse(&chosen.status)
        .filter(|status| target.status.may_become().contains(status))
        .ok_or(Error::BadRequest("This status cannot follow. Open the target again and choose one of those on offer."))?;
    if !queries::set_status(&mut tx, id, status, Some(target.version)).await? {
        return Err(CHANGED);
    }
    tx.commit().await?;
    Ok(Redirect::to(&format!("/targets/{id}")))
}

pub(super) async fn archive(member: Member, State(app): State<App>, Id(id): Id, Sent(against): Sent<Against>) -> Result<Redirect, Error> {
    let now = app.world.now();
    put_away(&member, &app, Act::new("target.archive").object(id), id, &against, Some(now)).await
}

pub(super) async fn restore(member: Member, State(app): State<App>, Id(id): Id, Sent(against): Sent<Against>) -> Result<Redirect, Error> {
    put_away(&member, &app, Act::new("target.restore").object(id), id, &against, None).await
}

async fn put_away(member: &Member, app: &App, act: Act, id: Uuid, against: &Against, at: Option<DateTime<Utc>>) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, act).await?;
    find(&mut tx, app, id).await?;
    if at.is_some() && queries::has_open_session(&mut tx, id).await? {
        return Err(Error::Conflict("A session on this target is still open, so it was not archived. End the session first."));
    }
    if !queries::archive(&mut tx, id, against.version()?, at).await? {
        return Err(CHANGED);
    }
    tx.commit().await?;
    Ok(Redirect::to(&format!("/targets/{id}")))
}
