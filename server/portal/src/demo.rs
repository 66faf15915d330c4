//! The demo's waiting session, and the links with which a newcomer holds it with themselves.

use uuid::Uuid;

use crate::app::App;
use crate::error::Error;
use crate::sessions::{self, NewSession};
use crate::subject::Subject;
use crate::{live, signin};

/// What `leeward demo links` prints.
#[derive(Debug)]
pub struct Links {
    /// Signs in as a clinician and opens the desk.
    pub desk: String,
    /// Signs in as the practice lead.
    pub lead: String,
    /// The client's link.
    pub client: String,
    /// The spoken code that goes with it.
    pub code: String,
}

/// Opens the demo's session, or finds it open, and mints a link for it.
///
/// # Errors
/// [`Error::NotFound`] on a database that the demo did not seed.
pub async fn links(app: &App) -> Result<Links, Error> {
    let clinician = member(app, "clinician").await?;
    let subject = signin::vouch(app, clinician, "the demo's terminal").await?;
    let session = sessions::open(app, &subject, next_session(app, &subject).await?).await?;
    let (client, code) = live::mint(app, &subject, session).await?;
    let origin = &app.origin.text;
    Ok(Links { desk: format!("{origin}/demo/clinician?next=/sessions/{session}/desk"), lead: format!("{origin}/demo/lead"), client, code })
}

async fn member(app: &App, role: &str) -> Result<Uuid, Error> {
    let mut tx = app.database.look_to_sign_in(&Subject::Visitor).await?;
    sqlx::query_scalar!("SELECT access.demo_member($1)", role).fetch_one(&mut *tx).await?.ok_or(Error::NotFound)
}

/// The first client whose moving dot is free, with the target that is being worked on.
async fn next_session(app: &App, subject: &Subject) -> Result<NewSession, Error> {
    let mut tx = app.database.look(subject).await?;
    sqlx::query_as!(
        NewSession,
        "SELECT c.id AS client, t.id AS \"target?\" FROM client c JOIN target t ON t.client_id = c.id
         WHERE c.archived_at IS NULL AND c.seizures = 'no' AND c.eye_condition = 'no' AND t.archived_at IS NULL
           AND c.id IN (SELECT access.my_clients())
         ORDER BY (t.status IN ('active', 'incomplete', 'reopened')) DESC, c.number, t.number DESC LIMIT 1"
    )
    .fetch_optional(&mut *tx)
    .await?
    .ok_or(Error::NotFound)
}
