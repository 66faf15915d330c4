//! How long anything in the portal waits, and why. A person at a page has an answer within [`REQUEST`] and a little,
//! whatever the database does; what a room needs to keep a client safe waits for no database at all.
//!
//! A database that hangs enforces nothing, so each of its own limits stands beside one of ours that is longer: the
//! server's comes first and says what was wrong. What has to do with a set in motion stands in `leeward_core::safety` and
//! `leeward_core::room`.

use std::time::Duration;

use backon::{BackoffBuilder, ExponentialBuilder};

use crate::store::error::{Error, Fault};

/// A page is answered within this time: with what was asked for, or with words that say it was not done. Less than the 5 s
/// after which people give a page up, by enough for the answer to get there.
pub const REQUEST: Duration = Duration::from_secs(4);
/// A request waits so long for its turn among many: less than [`REQUEST`], so that the answer can say so.
pub const TURN: Duration = Duration::from_secs(3);
/// The whole of a request's body has arrived by then: far more than a form takes on a poor line, and no more, since a body
/// that dribbles in holds a connection.
pub const BODY: Duration = Duration::from_secs(30);
/// The same for the head of a request.
pub const HEAD: Duration = Duration::from_secs(10);

/// A free connection is waited for so long. With what an answer takes after it, this is less than [`REQUEST`].
pub const CONNECTION: Duration = Duration::from_millis(1_500);
/// The longest wait for a lock: locks here are held for some ms, so a longer one is somebody's repair or a fault.
pub const LOCK: Duration = Duration::from_millis(2_000);
/// The longest that a statement runs. None here comes near; the slowest page's takes some tens of ms.
pub const STATEMENT: Duration = Duration::from_millis(3_000);
/// An open transaction that says nothing for so long is ended by the server, and its locks with it: the portal that opened it
/// has gone, for it lives no longer than its request or its room's job.
pub const IDLE_IN_TRANSACTION: Duration = Duration::from_secs(8);
/// What opens or ends a transaction is answered by then, or the server hangs.
pub const ANSWER: Duration = Duration::from_millis(2_500);
/// A connection that was let go in the middle of something is clean by then, or it is closed.
pub const TIDY: Duration = Duration::from_secs(1);
/// Whether the portal is ready is said within this time, before those who ask give up.
pub const READY: Duration = Duration::from_secs(2);

/// A room's recorder gives a job up after this time and tries it again. Longer than the server's own limits.
pub const JOB: Duration = Duration::from_secs(4);
/// A job that has waited so long is worth a word at the desk: an entry would wait as well, and is given up after [`REQUEST`].
pub const NOTICE: Duration = Duration::from_secs(1);
/// A set is in the record by then, or is not started. Before the room gives it up by itself (`RECORD_WAIT_MS`), so that
/// the desk has the reason.
pub const START: Duration = Duration::from_secs(4);

/// When the portal stops, requests that are under way are given so long. Rooms end beside them, not after them.
pub const GRACE: Duration = Duration::from_secs(3);
/// When a room ends, so long for what is not written yet. What is left over the desks hand back to the next room. With the
/// stop of a whole process, which ends all rooms at once, this is well within the 20 s of the systemd unit.
pub const LAST_WORDS: Duration = Duration::from_secs(10);

/// `work`, or [`Error::Database`] once `limit` is over. What was under way is dropped; see `subject::Tx` for its connection.
///
/// # Errors
/// Those of `work`; [`Error::Database`].
pub async fn within<T, E: Into<Error>>(limit: Duration, work: impl Future<Output = Result<T, E>>) -> Result<T, Error> {
    match tokio::time::timeout(limit, work).await {
        Ok(done) => done.map_err(Into::into),
        Err(_) => Err(Error::Database(no_answer())),
    }
}

/// That nothing came back in time.
#[must_use]
pub fn no_answer() -> Fault {
    sqlx::Error::Io(std::io::ErrorKind::TimedOut.into()).into()
}

/// Pauses between tries: doubled from `first` to `last`, and `last` from then on, without an end.
pub fn pauses(first: Duration, last: Duration) -> impl Iterator<Item = Duration> {
    ExponentialBuilder::new().with_min_delay(first).with_max_delay(last).with_factor(2.0).without_max_times().build()
}
