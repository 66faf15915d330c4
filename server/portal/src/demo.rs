//! The demo's waiting session, and the links with which a newcomer holds it with themselves.

use uuid::Uuid;

use crate::platform::App;
use crate::sessions::{self, NewSession};
use crate::store::error::Error;
use crate::store::subject::Subject;
use crate::{live, queries, signin};

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
    queries::demo_member(&mut tx, role).await?.ok_or(Error::NotFound)
}

/// The first client whose moving dot is free, with the target that is being worked on.
async fn next_session(app: &App, subject: &Subject) -> Result<NewSession, Error> {
    let mut tx = app.database.look(subject).await?;
    queries::next_session(&mut tx).await?.ok_or(Error::NotFound)
}
