//! The only door to a connection: a transaction as somebody, to do something.
//!
//! The subject's raw token is placed in transaction-local settings, which the row-level-security
//! policies resolve. The act becomes a row of the audit table in the same transaction.

use std::ops::{Deref, DerefMut};

use sqlx::pool::PoolConnection;
use sqlx::postgres::{PgPool, PgTransactionManager as Manager};
use sqlx::{PgConnection, Postgres};
use sqlx_core::transaction::TransactionManager;
use uuid::Uuid;

use super::queries;
use crate::base::ids::Token;
use crate::store::database::Database;
use crate::store::error::Error;
use crate::store::patience::{ANSWER, TIDY, no_answer, within};

/// Who acts.
#[derive(Clone, Debug)]
pub enum Subject {
    /// Somebody who has shown nothing yet: sees no row, may only call what is open to all.
    Visitor,
    /// A member of the practice, by the token of a sign-in.
    Member(Token),
    /// A client's seat in one session.
    Seat(Token),
    /// The live room of one session.
    Room(Token),
    /// A client between sessions, for one purpose.
    Errand(Token),
}

impl Subject {
    fn settings(&self) -> (&'static str, String) {
        match self {
            Self::Visitor => ("visitor", String::new()),
            Self::Member(token) => ("member", token.hex()),
            Self::Seat(token) => ("seat", token.hex()),
            Self::Room(token) => ("room", token.hex()),
            Self::Errand(token) => ("errand", token.hex()),
        }
    }
}

/// What is done, as the audit row will say it: no personal data, `noun.verb` in lower case.
#[derive(Clone, Copy, Debug)]
pub struct Act {
    name: &'static str,
    client: Option<Uuid>,
    object: Option<Uuid>,
}

impl Act {
    /// An act such as `"client.view"`.
    #[must_use]
    pub const fn new(name: &'static str) -> Self {
        Self { name, client: None, object: None }
    }

    /// Its name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.name
    }

    /// The client it concerns.
    #[must_use]
    pub const fn client(mut self, id: Uuid) -> Self {
        self.client = Some(id);
        self
    }

    /// The row it concerns: a target, a session, a sign-in.
    #[must_use]
    pub const fn object(mut self, id: Uuid) -> Self {
        self.object = Some(id);
        self
    }
}

/// A transaction of one subject. Dropped without [`Tx::commit`], nothing of it happened.
///
/// Dropped in the middle of a query, its connection is given back only once it is known to be clean. sqlx's own transaction
/// would wait for that without an end, and the pool would run out of connections while a database hangs.
pub struct Tx {
    connection: PoolConnection<Postgres>,
    /// False until the server has said that a transaction is open: before that, nobody knows.
    begun: bool,
    act: Option<Act>,
}

impl Tx {
    /// Names the client once it is known (for example after looking the target up).
    pub fn concerns(&mut self, client: Uuid) {
        if let Some(act) = &mut self.act {
            act.client = Some(client);
        }
    }

    /// Names the row that the act made, once it has its id.
    pub fn is_about(&mut self, object: Uuid) {
        if let Some(act) = &mut self.act {
            act.object = Some(object);
        }
    }

    /// Writes the audit row and commits. Only now may anything be called saved.
    ///
    /// # Errors
    /// [`Error::Database`]: nothing was kept. [`Error::Unconfirmed`]: whether it was kept is not known.
    pub async fn commit(mut self) -> Result<(), Error> {
        if let Some(Act { name, client, object }) = self.act {
            // Last, because the row that puts the audit in order stays locked until the commit.
            within(ANSWER, queries::audit(&mut self.connection, name, client, object)).await?;
        }
        match tokio::time::timeout(ANSWER, Manager::commit(&mut self.connection)).await {
            Ok(done) => done.map_err(|fault| Error::Unconfirmed(fault.into())),
            Err(_) => Err(Error::Unconfirmed(no_answer())),
        }
    }
}

impl Drop for Tx {
    fn drop(&mut self) {
        // After a commit there is none, and this does nothing.
        Manager::start_rollback(&mut self.connection);
        let back = self.connection.return_to_pool();
        // What is not given back is closed: in a state that nobody knows, or without a runtime to ask in.
        if self.begun
            && let Ok(runtime) = tokio::runtime::Handle::try_current()
        {
            runtime.spawn(async move {
                if tokio::time::timeout(TIDY, back).await.is_err() {
                    tracing::warn!("a connection to the database did not come back clean and was closed");
                }
            });
        }
    }
}

impl Deref for Tx {
    type Target = PgConnection;
    fn deref(&self) -> &PgConnection {
        &self.connection
    }
}

impl DerefMut for Tx {
    fn deref_mut(&mut self) -> &mut PgConnection {
        &mut self.connection
    }
}

impl Database {
    /// Opens a transaction as `subject` to do `act`.
    ///
    /// # Errors
    /// [`Error::Database`] when there is no connection.
    pub async fn act(&self, subject: &Subject, act: Act) -> Result<Tx, Error> {
        self.open(subject, Some(act)).await
    }

    /// Opens a transaction that leaves no audit row: for finding out who is asking, and for the beat
    /// of a room's own bookkeeping. Anything a person looks at or changes goes through [`Database::act`].
    ///
    /// # Errors
    /// [`Error::Database`] when there is no connection.
    pub async fn look(&self, subject: &Subject) -> Result<Tx, Error> {
        self.open(subject, None).await
    }

    /// As [`Database::look`], for a room that writes a new set: before all that waits for the other connections.
    ///
    /// # Errors
    /// [`Error::Database`] when there is no connection.
    pub async fn look_to_start(&self, subject: &Subject) -> Result<Tx, Error> {
        self.open_on(&self.pools.starts, subject, None).await
    }

    /// As [`Database::act`], for signing in: on the connections that may do it, which may do nothing else.
    ///
    /// # Errors
    /// [`Error::Database`] when there is no connection.
    pub async fn act_to_sign_in(&self, subject: &Subject, act: Act) -> Result<Tx, Error> {
        self.open_on(&self.pools.signin, subject, Some(act)).await
    }

    /// As [`Database::look`], for signing in.
    ///
    /// # Errors
    /// [`Error::Database`] when there is no connection.
    pub async fn look_to_sign_in(&self, subject: &Subject) -> Result<Tx, Error> {
        self.open_on(&self.pools.signin, subject, None).await
    }

    async fn open(&self, subject: &Subject, act: Option<Act>) -> Result<Tx, Error> {
        let pool = match subject {
            Subject::Room(_) => &self.pools.rooms,
            Subject::Visitor | Subject::Member(_) | Subject::Seat(_) | Subject::Errand(_) => &self.pools.pages,
        };
        self.open_on(pool, subject, act).await
    }

    async fn open_on(&self, pool: &PgPool, subject: &Subject, act: Option<Act>) -> Result<Tx, Error> {
        // Boxed: it takes 4 kB, which every request would hold for as long as it is worked on.
        let mut tx = Tx { connection: Box::pin(pool.acquire()).await?, begun: false, act };
        within(ANSWER, Manager::begin(&mut tx.connection, None)).await?;
        tx.begun = true;
        let (kind, token) = subject.settings();
        within(ANSWER, queries::say_who(&mut tx.connection, kind, &token, &self.world.now().to_rfc3339())).await?;
        Ok(tx)
    }
}
