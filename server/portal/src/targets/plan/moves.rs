//! Moving a target within the order of the work, by hand.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{page, queries};
use crate::clients;
use crate::platform::forms::{Id, Keyed, version};
use crate::platform::page::Frame;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

const MEANWHILE: &str = "Not moved: somebody changed this plan meanwhile. It stands now as below; look first, then move again.";

const LIST: Error = Error::BadRequest("This is no place in the list. Open the plan again and move the target there.");

/// Which target goes where.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Moving {
    /// Its number.
    target: String,
    /// Its place in the list afterwards, from 1.
    to: String,
    /// The version of the plan that the page showed.
    version: String,
}

/// How it went.
enum Moved {
    Done(Answer),
    /// The plan is another than the page showed.
    Meanwhile,
}

/// `POST /clients/{client}/plan/move`
pub(super) async fn post(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<Moving>,
) -> Result<Response, Error> {
    match try_move(&member, &app, client, &once, &typed).await? {
        Moved::Done(answer) => Ok(answer.into_response()),
        Moved::Meanwhile => {
            Ok((StatusCode::CONFLICT, page::read(&member, &app, frame.not_saved(), client, MEANWHILE).await?).into_response())
        }
    }
}

async fn try_move(member: &Member, app: &App, client: Uuid, once: &Once, typed: &Moving) -> Result<Moved, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("plan.move").client(client), once).await?;
    clients::must_be_open(&mut tx, client).await?;
    let now = queries::lock(&mut tx, client).await?.ok_or(Error::NotFound)?;
    if version(&typed.version)? != now {
        return Ok(Moved::Meanwhile);
    }
    let places = queries::places(&mut tx, client).await?;
    let (archived, shown): (Vec<_>, Vec<_>) = places.iter().partition(|row| row.archived);
    let from = shown.iter().position(|row| row.number.to_string() == typed.target).ok_or(LIST)?;
    let to = typed.to.parse().ok().filter(|to| (1..=shown.len()).contains(to)).ok_or(LIST)?;
    let mut order: Vec<Uuid> = shown.iter().map(|row| row.target).collect();
    let moving = order.remove(from);
    order.insert(to - 1, moving);
    // What is archived is on no list: it goes to the end.
    order.extend(archived.iter().map(|row| row.target));
    queries::order(&mut tx, client, &order).await?;
    queries::changed(&mut tx, client).await?;
    Ok(Moved::Done(tx.commit(Answer::see(format!("/clients/{client}/plan#target-{}", typed.target))).await?))
}
