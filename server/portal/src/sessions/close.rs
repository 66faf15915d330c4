//! Closing a session. It always can be closed, whatever the numbers say.

use chrono::{DateTime, Utc};
use leeward_core::scale::Sud;
use leeward_core::wire::Moment;
use uuid::Uuid;

use super::entry::{Checked, What};
use super::queries::{self, SessionRow};
use super::queries_entries::{self, EntryContext};
use super::words;
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::App;
use crate::platform::codes;
use crate::platform::codes::ClosingKind;
use crate::store::error::Error;
use crate::store::seal::Private;
use crate::store::subject::{Act, Subject, Tx};
use crate::targets::{self, Status};

/// How a session was closed.
#[derive(Clone, Debug)]
pub struct Closing {
    /// How far it came.
    pub kind: ClosingKind,
    /// How far the session's target has come, if the session has one.
    pub target_status: Option<Status>,
    /// What was used to settle, and its effect; at most 400 characters.
    pub resource: Private,
    /// The client's state on leaving; at most 400 characters.
    pub leaving_state: Private,
    /// Who is with the client; at most 200 characters.
    pub companion: Private,
    /// When and how they are in touch next; at most 200 characters.
    pub next_contact: Private,
    /// What the client's page shows at the end; empty: its own neutral words. At most 500 characters.
    pub client_words: Private,
    /// The note; at most 10,000 characters.
    pub note: Private,
    /// A SUD asked at the close.
    pub sud: Option<Sud>,
}

/// Closes `session` at the time of the app's clock: its words, its end, the target's status. Once that
/// is saved its live room ends, if there is one: a set that runs is stopped, and the client's page
/// shows its last words.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat this session's client, [`Error::Conflict`]
/// when it is closed already. Then nothing was kept.
pub async fn close(app: &App, subject: &Subject, session: Uuid, closing: Closing) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("session.close").object(session)).await?;
    let row = queries::session(&mut tx, session).await?.ok_or(Error::NotFound)?;
    let _told = app.bell.follows(session);
    close_in(&mut tx, app, session, &row, closing).await?;
    tx.commit().await
}

/// As [`close`], in the caller's transaction.
pub(super) async fn close_in(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow, closing: Closing) -> Result<(), Error> {
    tx.concerns(row.client_id);
    let now = app.world.now();
    if !queries::end_session(tx, session, closing.kind.name(), now).await? {
        return Err(Error::Conflict("This session is closed already. Add what is missing to its note."));
    }
    if let (Some(target), Some(status)) = (row.target_id, closing.target_status) {
        targets::set_status(tx, target, status).await?;
    }
    if let Some(sud) = closing.sud {
        add_sud(tx, app, session, row, sud, now).await?;
    }
    let key = clients::key(tx, app, row.client_id).await?;
    words::change_words(tx, app, &key, session, |words| {
        words.resource = closing.resource;
        words.leaving_state = closing.leaving_state;
        words.companion = closing.companion;
        words.next_contact = closing.next_contact;
        words.client_words = closing.client_words;
        words.note = closing.note;
    })
    .await
}

async fn add_sud(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow, sud: Sud, now: DateTime<Utc>) -> Result<(), Error> {
    let place = EntryContext { session, client: row.client_id, target: row.target_id };
    let what = What::Rating { scale: "sud", value: Some(sud.get().into()) };
    let rating = Checked { id: new_id(&app.world), set: None, replaces: None, moment: codes::name(Moment::Closing)?, what };
    queries_entries::add_rating(tx, &place, &rating, now).await?;
    Ok(())
}
