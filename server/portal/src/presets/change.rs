//! Making, editing and putting away a preset.

use axum::extract::State;
use axum::response::Response;
use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::form::{FormPage, PresetForm};
use super::{StoredPreset, add, queries};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Again, Id, Keyed, Problems, RowChange, SaveOutcome, answer, version};
use crate::platform::page::Frame;
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Tx};

const CHANGED: Error = Error::Conflict("Somebody changed this preset meanwhile, so nothing was done. Look at the list again first.");

pub(super) async fn new_form(_: Member, frame: Frame) -> Result<Response, Error> {
    FormPage::show(frame, None, Again::first(PresetForm::default()))
}

pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<PresetForm>,
) -> Result<Response, Error> {
    let tried = try_new(&member, &app, &once, &typed).await;
    answer(typed, tried, |again| FormPage::show(frame, None, again))
}

async fn try_new(member: &Member, app: &App, once: &Once, typed: &PresetForm) -> Result<SaveOutcome<PresetForm>, Error> {
    let mut problems = Problems::default();
    let owner = typed.owner(member, &mut problems);
    let (Some(owner), Some(preset)) = (owner, typed.check(&mut problems)) else { return Ok(SaveOutcome::Refused(problems)) };
    let mut tx = app.database.act_once(&member.subject, Act::new("preset.create"), once).await?;
    add(&mut tx, app, owner, &preset).await?;
    Ok(SaveOutcome::Saved(tx.saved("/presets").await?))
}

/// The preset, if the member may change it: to others it can be seen at most.
async fn mine_to_change(tx: &mut Tx, member: &Member, id: Uuid) -> Result<StoredPreset, Error> {
    let kept = queries::preset(tx, id).await?.ok_or(Error::NotFound)?;
    if kept.owner.is_open_to(member) { Ok(kept) } else { Err(Error::WrongRole) }
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("preset.view").object(id)).await?;
    let typed = PresetForm::of(&mine_to_change(&mut tx, &member, id).await?);
    tx.commit().await?;
    FormPage::show(frame, Some(id), Again::first(typed))
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(id): Id,
    Keyed(once, typed): Keyed<PresetForm>,
) -> Result<Response, Error> {
    let tried = try_edit(&member, &app, id, &once, &typed).await;
    answer(typed, tried, |again| FormPage::show(frame, Some(id), again))
}

async fn try_edit(member: &Member, app: &App, id: Uuid, once: &Once, typed: &PresetForm) -> Result<SaveOutcome<PresetForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("preset.change").object(id), once).await?;
    mine_to_change(&mut tx, member, id).await?;
    let mut problems = Problems::default();
    let Some(preset) = typed.check(&mut problems) else { return Ok(SaveOutcome::Refused(problems)) };
    if !queries::change(&mut tx, id, version(&typed.version)?, &preset).await? {
        return Ok(SaveOutcome::Changed(Box::new(PresetForm::of(&mine_to_change(&mut tx, member, id).await?))));
    }
    Ok(SaveOutcome::Saved(tx.saved("/presets").await?))
}

pub(super) async fn archive(change: RowChange) -> Result<Answer, Error> {
    let now = change.app.world.now();
    set_archived(change, Act::new("preset.put_away"), Some(now)).await
}

pub(super) async fn restore(change: RowChange) -> Result<Answer, Error> {
    set_archived(change, Act::new("preset.take_back"), None).await
}

async fn set_archived(change: RowChange, act: Act, at: Option<DateTime<Utc>>) -> Result<Answer, Error> {
    let RowChange { app, member, id, once, against } = change;
    let mut tx = app.database.act_once(&member.subject, act.object(id), &once).await?;
    mine_to_change(&mut tx, &member, id).await?;
    if !queries::archive(&mut tx, id, against.version()?, at).await? {
        return Err(CHANGED);
    }
    tx.commit(Answer::see("/presets")).await
}
