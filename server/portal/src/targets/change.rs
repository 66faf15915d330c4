//! Entering, editing and archiving a target, and saying how far it has come.

use axum::extract::State;
use axum::response::Response;
use chrono::{DateTime, Utc};
use uuid::Uuid;

use super::assessments;
use super::form::{Around, FormPage, Good, Purpose, TargetForm};
use super::form_plan::Plan;
use super::{NewTarget, Target, add, clusters, find, list, plan, queries, seal};
use crate::clients;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Again, Id, Keyed, RowChange, SaveOutcome, answer, comes_back, version};
use crate::platform::page::Frame;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Tx};

pub(super) async fn new_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let around = Around { title: title(&mut tx, client, None).await?, assessed: None, plan: plan_of(&mut tx, &app, client, None).await? };
    tx.commit().await?;
    FormPage::show(frame, Purpose::New(client), around, Again::first(TargetForm::default()))
}

pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<TargetForm>,
) -> Result<Response, Error> {
    let tried = try_new(&member, &app, client, &once, &typed).await;
    let around = if comes_back(&tried) { new_again(&member, &app, client).await } else { None };
    let around = around.unwrap_or_else(|| Around { title: "New target".to_owned(), assessed: None, plan: Plan::default() });
    answer(typed, tried, |again| FormPage::show(frame, Purpose::New(client), around, again))
}

async fn try_new(member: &Member, app: &App, client: Uuid, once: &Once, typed: &TargetForm) -> Result<SaveOutcome<TargetForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("target.create").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, app, client).await?;
    let Good { prong, words, wanted, ratings } = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    let target = add(&mut tx, app, NewTarget { client, prong, words, sud: ratings.sud, voc: ratings.voc }).await?;
    if let Err(problems) = plan::keep(&mut tx, app, client, target, &wanted).await? {
        return Ok(SaveOutcome::Refused(problems));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/targets/{target}")).await?))
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("target.view").object(id)).await?;
    let target = find(&mut tx, &app, id).await?;
    let around = around(&mut tx, &app, &target).await?;
    tx.commit().await?;
    let typed = TargetForm::of(&target, &around.plan)?;
    FormPage::show(frame, Purpose::Edit(id), around, Again::first(typed))
}

/// Names the record, and the target in it, by their numbers: a tab is seen by others.
fn titled(record: i32, target: Option<i32>) -> String {
    target.map_or_else(|| format!("New target of record {record}"), |target| format!("Edit target {target} of record {record}"))
}

async fn title(tx: &mut Tx, client: Uuid, target: Option<i32>) -> Result<String, Error> {
    Ok(titled(clients::row(tx, client).await?.ok_or(Error::NotFound)?.number, target))
}

/// What stands around the form of a target: the assessments, and how it writes their days.
async fn around(tx: &mut Tx, app: &App, target: &Target) -> Result<Around, Error> {
    let title = title(tx, target.client, Some(target.number)).await?;
    let assessed = (assessments::list(tx, target.id).await?, When::in_practice(tx).await?);
    Ok(Around { title, assessed: Some(assessed), plan: plan_of(tx, app, target.client, Some(target.id)).await? })
}

/// What a target may belong with or have come up from; `own` is the one that asks.
async fn plan_of(tx: &mut Tx, app: &App, client: Uuid, own: Option<Uuid>) -> Result<Plan, Error> {
    let others = list(tx, app, client).await?.into_iter().filter(|target| Some(target.id) != own).collect();
    Ok(Plan { clusters: clusters(tx, app, client).await?, others })
}

/// What stands around the form of a new target that comes back; nothing when the database does not answer.
async fn new_again(member: &Member, app: &App, client: Uuid) -> Option<Around> {
    let mut tx = app.database.look(&member.subject).await.ok()?;
    let plan = plan_of(&mut tx, app, client, None).await.ok()?;
    Some(Around { title: title(&mut tx, client, None).await.ok()?, assessed: None, plan })
}

/// The same for a form that comes back; nothing when the database does not answer.
async fn around_again(member: &Member, app: &App, id: Uuid) -> Option<Around> {
    let mut tx = app.database.look(&member.subject).await.ok()?;
    let target = find(&mut tx, app, id).await.ok()?;
    around(&mut tx, app, &target).await.ok()
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(id): Id,
    Keyed(once, typed): Keyed<TargetForm>,
) -> Result<Response, Error> {
    let tried = try_edit(&member, &app, id, &once, &typed).await;
    let around = if comes_back(&tried) { around_again(&member, &app, id).await } else { None };
    let around = around.unwrap_or_else(|| Around { title: "Edit target".to_owned(), assessed: None, plan: Plan::default() });
    answer(typed, tried, |again| FormPage::show(frame, Purpose::Edit(id), around, again))
}

async fn try_edit(member: &Member, app: &App, id: Uuid, once: &Once, typed: &TargetForm) -> Result<SaveOutcome<TargetForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("target.change").object(id), once).await?;
    let before = find(&mut tx, app, id).await?;
    let Good { prong, words, wanted, ratings } = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    if !queries::change_target(&mut tx, id, version(&typed.version)?, prong).await? {
        let plan = plan_of(&mut tx, app, before.client, Some(id)).await?;
        return Ok(SaveOutcome::Changed(Box::new(TargetForm::of(&find(&mut tx, app, id).await?, &plan)?)));
    }
    // The form showed all of it, or nothing is replaced.
    before.words.whole()?;
    let key = clients::key(&mut tx, app, before.client).await?;
    let next = queries::words_version(&mut tx, id).await? + 1;
    queries::keep_words(&mut tx, before.client, &seal(app, &key, id, next, &words)?).await?;
    if let Err(problems) = plan::keep(&mut tx, app, before.client, id, &wanted).await? {
        return Ok(SaveOutcome::Refused(problems));
    }
    if let Err(problems) = assessments::correct(&mut tx, app, id, typed.slip()).await? {
        return Ok(SaveOutcome::Refused(problems));
    }
    assessments::assess(&mut tx, app, before.client, id, ratings).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/targets/{id}")).await?))
}

const CHANGED: Error =
    Error::Conflict("Somebody changed this target meanwhile, so nothing was done. Open the target again and look first.");

pub(super) async fn archive(change: RowChange) -> Result<Answer, Error> {
    let now = change.app.world.now();
    set_archived(change, Act::new("target.archive"), Some(now)).await
}

pub(super) async fn restore(change: RowChange) -> Result<Answer, Error> {
    set_archived(change, Act::new("target.restore"), None).await
}

async fn set_archived(change: RowChange, act: Act, at: Option<DateTime<Utc>>) -> Result<Answer, Error> {
    let RowChange { app, member, id, once, against } = change;
    let mut tx = app.database.act_once(&member.subject, act.object(id), &once).await?;
    find(&mut tx, &app, id).await?;
    if at.is_some() && queries::has_open_session(&mut tx, id).await? {
        return Err(Error::Conflict("A session on this target is still open, so it was not archived. End the session first."));
    }
    if !queries::archive(&mut tx, id, against.version()?, at).await? {
        return Err(CHANGED);
    }
    tx.commit(Answer::see(format!("/targets/{id}"))).await
}
