//! Making and editing a cluster.

use axum::extract::State;
use axum::response::Response;
use uuid::Uuid;

use super::cluster_form::{Around, ClusterForm, FormPage, Purpose};
use super::{Cluster, NAME, queries};
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::forms::{Again, Id, InPath, Keyed, Problems, SaveOutcome, answer, comes_back, version};
use crate::platform::page::Frame;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::{Act, Tx};
use crate::targets::list;

pub(super) async fn new_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    clients::must_be_open(&mut tx, client).await?;
    let record = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?.number;
    tx.commit().await?;
    FormPage::show(frame, Purpose::New(client), Around { record: Some(record), memories: vec![] }, Again::first(ClusterForm::default()))
}

pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<ClusterForm>,
) -> Result<Response, Error> {
    let tried = try_new(&member, &app, client, &once, &typed).await;
    let record = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, Purpose::New(client), Around { record, memories: vec![] }, again))
}

async fn try_new(member: &Member, app: &App, client: Uuid, once: &Once, typed: &ClusterForm) -> Result<SaveOutcome<ClusterForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("plan.cluster").client(client), once).await?;
    let key = clients::key(&mut tx, app, client).await?;
    clients::must_be_open(&mut tx, client).await?;
    let mut problems = Problems::default();
    let Some((name, theme)) = typed.check(&mut problems) else { return Ok(SaveOutcome::Refused(problems)) };
    let id = new_id(&app.world);
    queries::insert_cluster(&mut tx, id, client, &key.row(id, 1).seal(&app.world, NAME, &name)?, theme).await?;
    queries::changed(&mut tx, client).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/plan")).await?))
}

/// The cluster, what stands around its form, and the numbers of its targets.
async fn find(tx: &mut Tx, app: &App, client: Uuid, number: i32) -> Result<(Cluster, Around, Vec<(Uuid, i32)>), Error> {
    let key = clients::key(tx, app, client).await?;
    let cluster = queries::cluster(tx, client, number).await?.ok_or(Error::NotFound)?.open(&key)?;
    let targets: Vec<_> = list(tx, app, client).await?.into_iter().filter(|target| target.planned.cluster == Some(cluster.id)).collect();
    let memories = targets.iter().map(|target| (target.number.to_string(), format!("{}. {}", target.number, target.words.label.shown())));
    let record = clients::row(tx, client).await?.ok_or(Error::NotFound)?.number;
    let around = Around { record: Some(record), memories: memories.collect() };
    Ok((cluster, around, targets.iter().map(|target| (target.id, target.number)).collect()))
}

pub(super) async fn edit_form(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, number)): InPath<(Uuid, i32)>,
) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    let (cluster, around, numbers) = find(&mut tx, &app, client, number).await?;
    tx.commit().await?;
    FormPage::show(frame, Purpose::Edit(client, number), around, Again::first(ClusterForm::of(cluster, &numbers)?))
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath((client, number)): InPath<(Uuid, i32)>,
    Keyed(once, typed): Keyed<ClusterForm>,
) -> Result<Response, Error> {
    let tried = try_edit(&member, &app, client, number, &once, &typed).await;
    let around = if comes_back(&tried) { around_again(&member, &app, client, number).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, Purpose::Edit(client, number), around.unwrap_or_default(), again))
}

/// What stands around a form that comes back; nothing when the database does not answer.
async fn around_again(member: &Member, app: &App, client: Uuid, number: i32) -> Option<Around> {
    let mut tx = app.database.look(&member.subject).await.ok()?;
    let (_, around, _) = find(&mut tx, app, client, number).await.ok()?;
    Some(around)
}

async fn try_edit(
    member: &Member,
    app: &App,
    client: Uuid,
    number: i32,
    once: &Once,
    typed: &ClusterForm,
) -> Result<SaveOutcome<ClusterForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("plan.cluster").client(client), once).await?;
    let key = clients::key(&mut tx, app, client).await?;
    queries::lock(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let (before, _, numbers) = find(&mut tx, app, client, number).await?;
    if version(&typed.version)? != before.version {
        return Ok(SaveOutcome::Changed(Box::new(ClusterForm::of(before, &numbers)?)));
    }
    let mut problems = Problems::default();
    let good = typed.check(&mut problems);
    let earliest = ClusterForm::marked(&mut problems, "earliest", &typed.earliest, &numbers);
    let worst = ClusterForm::marked(&mut problems, "worst", &typed.worst, &numbers);
    let (Some((name, theme)), true) = (good, problems.none()) else { return Ok(SaveOutcome::Refused(problems)) };
    // The form showed the name, or nothing is replaced.
    before.name.clone().text()?;
    let next = before.version + 1;
    let sealed = key.row(before.id, next).seal(&app.world, NAME, &name)?;
    let cluster = Cluster { theme, earliest, worst, version: next, ..before };
    if !queries::change_cluster(&mut tx, &cluster, &sealed).await? {
        return Err(Error::NothingWritten("cluster"));
    }
    queries::changed(&mut tx, client).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}/plan")).await?))
}
