//! Opening a session.

use axum::extract::State;
use axum::response::Redirect;
use serde::Deserialize;
use uuid::Uuid;

use super::{Words, queries, words};
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Id, Sent};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject};

/// What a new session is about.
#[derive(Clone, Copy, Debug)]
pub struct NewSession {
    /// The client; must not be archived.
    pub client: Uuid,
    /// The target that is worked on, of the same client and not archived; or none yet.
    pub target: Option<Uuid>,
}

/// Opens a session of the member who asks, with its empty words. One is open at a time for a
/// client: when there is one already, that one is returned and nothing is changed.
///
/// # Errors
/// [`Error::NotFound`] when the client is not theirs or the target not this client's,
/// [`Error::Conflict`] when either is archived.
pub async fn open(app: &App, subject: &Subject, new: NewSession) -> Result<Uuid, Error> {
    let id = new_id(&app.world);
    let mut tx = app.database.act(subject, Act::new("session.open").client(new.client).object(id)).await?;
    clients::must_be_open(&mut tx, new.client).await?;
    if let Some(open) = queries::running(&mut tx, new.client).await? {
        return Ok(open);
    }
    if let Some(target) = new.target
        && queries::target_archived(&mut tx, target, new.client).await?.ok_or(Error::NotFound)?
    {
        return Err(Error::Conflict("This target is archived. Choose another one, or restore it first."));
    }
    let key = clients::key(&mut tx, app, new.client).await?;
    queries::insert_session(&mut tx, id, new.client, new.target, app.world.now()).await?;
    words::add_version(&mut tx, app, &key, id, &Words::default(), 1).await?;
    tx.commit().await?;
    Ok(id)
}

#[derive(Deserialize)]
pub(super) struct OpenForm {
    #[serde(default)]
    target: String,
}

/// `POST /rehearsal`: a session with the pretend client of the clinician who asks.
pub(super) async fn rehearse(State(app): State<App>, member: Member) -> Result<Redirect, Error> {
    let client = clients::rehearsal(&app, &member.subject).await?;
    let id = open(&app, &member.subject, NewSession { client, target: None }).await?;
    Ok(Redirect::to(&format!("/sessions/{id}/desk")))
}

/// `POST /clients/{client}/sessions`
pub(super) async fn post(State(app): State<App>, member: Member, Id(client): Id, Sent(typed): Sent<OpenForm>) -> Result<Redirect, Error> {
    let target = match typed.target.trim() {
        "" => None,
        text => Some(text.parse().map_err(|_| Error::BadRequest("Choose the target from the list on the client's page."))?),
    };
    let id = open(&app, &member.subject, NewSession { client, target }).await?;
    Ok(Redirect::to(&format!("/sessions/{id}/desk")))
}
