//! Closing a session. It always can be closed, whatever the numbers say.

use chrono::{DateTime, Utc};
use leeward_core::course::{Because, Course, Decision, Said, State};
use leeward_core::scale::Sud;
use leeward_core::wire::Moment;
use uuid::Uuid;

use super::after;
use super::entry::{Checked, What};
use super::queries::{self, SessionRow};
use super::queries_entries::{self, EntryContext};
use super::words;
use crate::base::ids::new_id;
use crate::clients;
use crate::course::{self, Saying};
use crate::platform::App;
use crate::platform::codes;
use crate::platform::codes::ClosingKind;
use crate::store::error::Error;
use crate::store::seal::Private;
use crate::store::subject::{Act, Subject, Tx};

/// How a session was closed.
#[derive(Clone, Debug)]
pub struct Closing {
    /// How far it came.
    pub kind: ClosingKind,
    /// Why it is complete though what its end asks for is open.
    pub because: Option<Because>,
    /// What was used to settle, and its effect; at most 400 characters.
    pub resource: Private,
    /// The client's state on leaving; at most 400 characters.
    pub leaving_state: Private,
    /// That state is an unsteady one, or could not be seen.
    pub unsteady: bool,
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
    /// When the work was over, where that was before now; not before the session was opened.
    pub over: Option<DateTime<Utc>>,
}

/// Closes `session` at the time of the app's clock: its words, its end, what it decides about its target. Once that
/// is saved its live room ends, if there is one: a set that runs is stopped, and the client's page
/// shows its last words.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat this session's client, [`Error::Conflict`]
/// when it is closed already, or is called complete with neither a record that carries it nor a code. Then nothing was kept.
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
    let (now, kind, over) = (app.world.now(), closing.kind, closing.over);
    if let Some(sud) = closing.sud {
        add_sud(tx, app, session, row, sud, now).await?;
    }
    if let Some(target) = row.target_id {
        decide(tx, app, row.client_id, target, &closing).await?;
    }
    if kind.took_place() {
        after::agree(tx, session, kind, closing.unsteady, now).await?;
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
    .await?;
    // Last, so that what closing decides stands in this session.
    if queries::end_session(tx, session, kind.name(), (now, over)).await? {
        return Ok(());
    }
    Err(Error::Conflict("This session is closed already. Add what is missing to its note."))
}

/// What a closing decides about its target. What is at its end stays so when it is called that again; set aside, it was taken up anew.
async fn decide(tx: &mut Tx, app: &App, client: Uuid, target: Uuid, closing: &Closing) -> Result<(), Error> {
    let course = course::fold(tx, target).await?;
    for decision in decisions(course.state, closing.kind) {
        course::say(tx, app, client, target, Saying::Decided(decision, closing.because)).await?;
    }
    Ok(())
}

/// The decisions that follow from closing as `kind` a session on a target in `state`.
pub(super) fn decisions(state: State, kind: ClosingKind) -> Vec<Decision> {
    match kind {
        ClosingKind::NoReprocessing | ClosingKind::DidNotAttend | ClosingKind::ByMistake => vec![],
        ClosingKind::Complete if state == State::Complete => vec![],
        ClosingKind::Reduced if state == State::Reduced => vec![],
        ClosingKind::Incomplete if state == State::Incomplete => vec![],
        kind => {
            let decision = match kind {
                ClosingKind::Complete => Decision::Complete,
                ClosingKind::Reduced => Decision::Reduced,
                _ => Decision::Incomplete,
            };
            if state.is_over() { vec![Decision::Reopened, decision] } else { vec![decision] }
        }
    }
}

/// Whether closing as `kind` can be kept, `sud` being asked at the close: the record carries it, or the code does.
pub(super) fn carries(course: &Course, kind: ClosingKind, because: Option<Because>, sud: Option<Sud>) -> bool {
    let mut course = course.clone();
    if let Some(value) = sud {
        course.take(Said::Sud { value, moment: Moment::Closing, segment: None });
    }
    decisions(course.state, kind).into_iter().all(|decision| {
        let carried = course.carries(decision, because);
        course.take(Said::Decided(decision, because));
        carried
    })
}

async fn add_sud(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow, sud: Sud, now: DateTime<Utc>) -> Result<(), Error> {
    let place = EntryContext { session, client: row.client_id, target: row.target_id };
    let what = What::Rating { scale: "sud", value: Some(sud.get().into()), segment: None, from_client: false };
    let rating = Checked { id: new_id(&app.world), set: None, replaces: None, moment: codes::name(Moment::Closing)?, what };
    queries_entries::add_rating(tx, &place, &rating, now).await?;
    Ok(())
}
