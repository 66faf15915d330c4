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

/// Makes the next link of `asking` of `client`; the one before it ends. Its text.
///
/// # Errors
/// [`Error::Conflict`] when it is not open any more.
pub(super) async fn next(tx: &mut Tx, app: &App, client: Uuid, asking: Uuid) -> Result<String, Error> {
    let over = Error::Conflict(
        "This asking was answered, declined or taken back meanwhile, so it has no link any more. Open the page again and look.",
    );
    let number = queries::next_link(tx, client, asking, app.world.now()).await?.ok_or(over)?;
    queries::mint(tx, new_id(&app.world), &token(app, asking, number).hash(), asking).await?;
    Ok(text(app, asking, number))
}

/// Makes the next link of the asking of `client` that is open, in a transaction of its own. Its text.
///
/// # Errors
/// [`Error::Conflict`] when none is open.
pub async fn mint(app: &App, subject: &Subject, client: Uuid) -> Result<String, Error> {
    let mut tx = app.database.act(subject, Act::new("asking.link").client(client)).await?;
    let none = Error::Conflict("Nothing is asked of this client now, so there is no link. Ask for forms first.");
    let asking = queries::open_now(&mut tx, client, app.world.now()).await?.ok_or(none)?;
    let link = next(&mut tx, app, client, asking).await?;
    tx.commit().await?;
    Ok(link)
}

/// Which asking the page showed.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Which {
    asking: String,
}

impl Which {
    /// Read last: to others the client is not there, whatever they send.
    ///
    /// # Errors
    /// [`Error::BadRequest`] when it is none.
    pub(super) fn read(&self) -> Result<Uuid, Error> {
        self.asking.parse().map_err(|_| Error::BadRequest("The form did not arrive whole, so nothing was done. Open the page again."))
    }
}

/// `POST /clients/{client}/askings/link`
pub(super) async fn make(
    member: Member,
    State(app): State<App>,
    Id(client): Id,
    Keyed(once, which): Keyed<Which>,
) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("asking.link").client(client), &once).await?;
    clients::must_be_open(&mut tx, client).await?;
    next(&mut tx, &app, client, which.read()?).await?;
    tx.saved(format!("/clients/{client}/askings")).await
}
