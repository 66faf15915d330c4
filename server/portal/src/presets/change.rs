//! Making, editing and putting away a preset.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::form::{FormPage, Typed};
use super::{Kept, create, queries};
use crate::app::App;
use crate::clients::{Against, Id, Sent, notice, version};
use crate::error::Error;
use crate::forms::Problems;
use crate::page::Frame;
use crate::signin::Member;
use crate::subject::{Act, Tx};

const CHANGED: Error = Error::Conflict("Somebody changed this preset meanwhile, so nothing was done. Look at the list again first.");

pub(super) async fn new_form(_: Member, frame: Frame) -> Result<Response, Error> {
    FormPage { frame, preset: None, typed: Typed::default(), problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
}

pub(super) async fn save_new(member: Member, State(app): State<App>, frame: Frame, Sent(typed): Sent<Typed>) -> Result<Response, Error> {
    let page = |typed, problems, notice| FormPage { frame, preset: None, typed, problems, notice };
    let mut problems = Problems::default();
    let owner = typed.owner(&member, &mut problems);
    let (Some(owner), Some(preset)) = (owner, typed.check(&mut problems)) else {
        return page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY);
    };
    match create(&app, &member.subject, owner, &preset).await {
        Ok(_) => Ok(Redirect::to("/presets").into_response()),
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a new preset was not saved");
            page(typed, problems, notice::unsaved(&fault)).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

/// The preset, if the member may change it: to others it can be seen at most.
async fn mine_to_change(tx: &mut Tx, member: &Member, id: Uuid) -> Result<Kept, Error> {
    let kept = queries::preset(tx, id).await?.ok_or(Error::NotFound)?;
    if kept.owner.is_open_to(member) { Ok(kept) } else { Err(Error::WrongRole) }
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("preset.view").object(id)).await?;
    let typed = Typed::of(&mine_to_change(&mut tx, &member, id).await?);
    tx.commit().await?;
    FormPage { frame, preset: Some(id), typed, problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
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
    let page = |typed, problems, notice| FormPage { frame, preset: Some(id), typed, problems, notice };
    match try_edit(&member, &app, id, &typed).await {
        Ok(Edit::Saved) => Ok(Redirect::to("/presets").into_response()),
        Ok(Edit::Refused(problems)) => page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY),
        Ok(Edit::ChangedMeanwhile(kept)) => {
            let problems = typed.differences(&kept);
            typed.version = kept.version;
            page(typed, problems, notice::CHANGED).answer(StatusCode::CONFLICT)
        }
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a change to a preset was not saved");
            page(typed, Problems::default(), notice::unsaved(&fault)).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

async fn try_edit(member: &Member, app: &App, id: Uuid, typed: &Typed) -> Result<Edit, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("preset.change").object(id)).await?;
    mine_to_change(&mut tx, member, id).await?;
    let mut problems = Problems::default();
    let Some(preset) = typed.check(&mut problems) else { return Ok(Edit::Refused(problems)) };
    if !queries::change(&mut tx, id, version(&typed.version)?, &preset).await? {
        return Ok(Edit::ChangedMeanwhile(Box::new(Typed::of(&mine_to_change(&mut tx, member, id).await?))));
    }
    tx.commit().await?;
    Ok(Edit::Saved)
}

pub(super) async fn put_away(member: Member, State(app): State<App>, Id(id): Id, Sent(against): Sent<Against>) -> Result<Redirect, Error> {
    let now = app.world.now();
    keep_away(&member, &app, Act::new("preset.put_away").object(id), id, &against, Some(now)).await
}

pub(super) async fn take_back(member: Member, State(app): State<App>, Id(id): Id, Sent(against): Sent<Against>) -> Result<Redirect, Error> {
    keep_away(&member, &app, Act::new("preset.take_back").object(id), id, &against, None).await
}

async fn keep_away(
    member: &Member,
    app: &App,
    act: Act,
    id: Uuid,
    against: &Against,
    at: Option<DateTime<Utc>>,
) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, act).await?;
    mine_to_change(&mut tx, member, id).await?;
    if !queries::put_away(&mut tx, id, against.version()?, at).await? {
        return Err(CHANGED);
    }
    tx.commit().await?;
    Ok(Redirect::to("/presets"))
}
