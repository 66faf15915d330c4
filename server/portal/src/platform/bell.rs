//! What has to follow a commit, whatever becomes of its answer and of the one who asked: the live room reads the
//! record again. A room that is not reached by this does so by itself, every few seconds.

use std::pin::Pin;
use std::sync::Arc;

use uuid::Uuid;

/// Rung by whoever changed a record, heard by the live rooms, which stand above and are not known here.
#[derive(Clone)]
pub struct Bell(Arc<dyn Fn(Whose) -> Heard + Send + Sync>);

type Heard = Pin<Box<dyn Future<Output = ()> + Send>>;

impl Bell {
    /// A bell that does this when it is rung.
    pub fn new<F: Future<Output = ()> + Send + 'static>(heard: impl Fn(Whose) -> F + Send + Sync + 'static) -> Self {
        Self(Arc::new(move |whose| Box::pin(heard(whose))))
    }

    /// Rings for the room of this session.
    pub fn follows(&self, session: Uuid) -> Follows {
        Follows { bell: self.clone(), whose: Whose::Session(session) }
    }

    /// Rings for the rooms of this client's sessions.
    pub fn follows_client(&self, client: Uuid) -> Follows {
        Follows { bell: self.clone(), whose: Whose::Client(client) }
    }
}

/// Take it before the commit. Dropped, on whatever way out, it sends the rooms to the record.
#[must_use = "the room is told when this is dropped"]
pub struct Follows {
    bell: Bell,
    whose: Whose,
}

/// Whose record has changed.
#[derive(Clone, Copy, Debug)]
pub enum Whose {
    /// This session's.
    Session(Uuid),
    /// That of all of this client's sessions.
    Client(Uuid),
}

impl Drop for Follows {
    fn drop(&mut self) {
        // Without a runtime the process ends, and its rooms with it.
        if let Ok(runtime) = tokio::runtime::Handle::try_current() {
            runtime.spawn((self.bell.0)(self.whose));
        }
    }
}
