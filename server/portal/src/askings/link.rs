//! The link of an asking. It is made from the asking and its number under the practice's secret: whoever treats the client finds it again on
//! the record, and the database has nothing but its hash.

use axum::extract::State;
use uuid::Uuid;

use super::queries;
use crate::base::ids::{Token, new_id};
use crate::clients;
use crate::platform::forms::{Id, Keyed};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::{Act, Subject, Tx};

/// The token of the link `number` of `asking`.
#[must_use]
pub fn token(app: &App, asking: Uuid, number: i32) -> Token {
    Token::of(app.derived.bytes("errand", &[asking.as_bytes(), &number.to_be_bytes()]))
}

/// The link as text.
pub(super) fn text(app: &App, asking: Uuid, number: i32) -> String {
    format!("{}/q#{}", app.origin.text, token(app, asking, number).reveal())
}

/// Makes the next link of the open asking of `client`; the one before it ends. Its text.
///
/// # Errors
/// [`Error::Conflict`] when none is open, or its time is over.
pub(super) async fn next(tx: &mut Tx, app: &App, client: Uuid) -> Result<String, Error> {
    let none = Error::Conflict("Nothing is asked of this client now, so there is no link. Ask for forms first.");
    let (asking, number) = queries::next_link(tx, client, app.world.now()).await?.ok_or(none)?;
    queries::mint(tx, new_id(&app.world), &token(app, asking, number).hash(), asking).await?;
    Ok(text(app, asking, number))
}

/// As [`next`], in a transaction of its own.
///
/// # Errors
/// As [`next`].
pub async fn mint(app: &App, subject: &Subject, client: Uuid) -> Result<String, Error> {
    let mut tx = app.database.act(subject, Act::new("asking.link").client(client)).await?;
    let link = next(&mut tx, app, client).await?;
    tx.commit().await?;
    Ok(link)
}

/// What the form of a new link sends.
#[derive(Default, serde::Deserialize)]
pub(super) struct Nothing {}

/// `POST /clients/{client}/askings/link`
pub(super) async fn make(
    member: Member,
    State(app): State<App>,
    Id(client): Id,
    Keyed(once, Nothing {}): Keyed<Nothing>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("asking.link").client(client), &once).await?;
    clients::must_be_open(&mut tx, client).await?;
    next(&mut tx, &app, client).await?;
    tx.saved(format!("/clients/{client}/askings")).await
}
