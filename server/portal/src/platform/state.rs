//! What all requests share.

use std::sync::Arc;

use axum::extract::FromRef;
use axum::http::Extensions;
use tokio::sync::Semaphore;

use super::bell::Bell;
use super::observe::Counts;
use super::revocations::Revocations;
use super::security::Limits;
use super::turns::AT_ONCE;
use crate::base::clock::World;
use crate::base::origin::Origin;
use crate::store::database::Database;
use crate::store::key_check::CheckedKey;
use crate::store::once::Derived;

/// What the portal is built from.
pub struct Parts {
    /// The database, checked.
    pub database: Database,
    /// Clock and randomness.
    pub world: World,
    /// Opens the clients' keys.
    pub key: CheckedKey,
    /// Where browsers reach the portal.
    pub origin: Origin,
    /// See `config::ServeArgs::proxies`.
    pub proxies: usize,
    /// Whether the demo's own sign-in exists here.
    pub demo: bool,
    /// Whether members are told by mail; see `config::MailServer`.
    pub mails: bool,
}

/// Shared by all requests; cheap to clone.
#[derive(Clone)]
pub struct App(Arc<Shared>);

/// See [`App`].
pub struct Shared {
    #[expect(missing_docs, reason = "see Parts")]
    pub database: Database,
    #[expect(missing_docs, reason = "see Parts")]
    pub world: World,
    #[expect(missing_docs, reason = "see Parts")]
    pub key: CheckedKey,
    #[expect(missing_docs, reason = "see Parts")]
    pub origin: Origin,
    #[expect(missing_docs, reason = "see Parts")]
    pub proxies: usize,
    #[expect(missing_docs, reason = "see Parts")]
    pub mails: bool,
    /// Makes links, codes and seats from the keys of requests.
    pub derived: Derived,
    /// Limits on tries.
    pub limits: Limits,
    /// Heard by open sockets.
    pub revocations: Revocations,
    /// Requests by route.
    pub counts: Counts,
    /// Of requests that are worked on.
    pub turns: Semaphore,
    /// Heard by the live rooms.
    pub bell: Bell,
    own: Extensions,
}

impl App {
    /// The state that the portal starts with.
    #[must_use]
    pub fn new(parts: Parts, counts: Counts, bell: Bell, own: Extensions) -> Self {
        let Parts { database, world, key, origin, proxies, demo: _, mails } = parts;
        let (limits, revocations, turns) = (Limits::default(), Revocations::default(), Semaphore::new(AT_ONCE));
        Self(Arc::new(Shared {
            derived: key.derived(),
            database,
            world,
            key,
            origin,
            proxies,
            mails,
            limits,
            revocations,
            counts,
            turns,
            bell,
            own,
        }))
    }

    /// What a feature keeps while the portal runs, by its type, so that nothing down here has to know of the feature.
    #[must_use]
    #[expect(clippy::expect_used, reason = "`app::build` puts in what features ask for, and no portal is built without it")]
    pub fn own<T: Clone + Send + Sync + 'static>(&self) -> &T {
        self.0.own.get().expect("the feature's state is there from the start")
    }
}

impl std::ops::Deref for App {
    type Target = Shared;
    fn deref(&self) -> &Shared {
        &self.0
    }
}

impl FromRef<App> for Database {
    fn from_ref(app: &App) -> Self {
        app.database.clone()
    }
}
