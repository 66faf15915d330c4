//! What has to follow a commit, whatever becomes of its answer and of the one who asked: the room reads the
//! record again. A room that is not reached by this does so by itself, every few seconds.

use uuid::Uuid;

use crate::app::App;

/// Take it before the commit. Dropped, on whatever way out, it sends the rooms to the record.
#[must_use = "the room is told when this is dropped"]
pub struct Follows {
    app: App,
    whose: Whose,
}

#[derive(Clone, Copy)]
enum Whose {
    Session(Uuid),
    Client(Uuid),
}

/// The room of this session.
pub fn follows(app: &App, session: Uuid) -> Follows {
    Follows { app: app.clone(), whose: Whose::Session(session) }
}

/// The rooms of this client's sessions.
pub fn follows_client(app: &App, client: Uuid) -> Follows {
    Follows { app: app.clone(), whose: Whose::Client(client) }
}

impl Drop for Follows {
    fn drop(&mut self) {
        let (app, whose) = (self.app.clone(), self.whose);
        let tell = async move {
            match whose {
                Whose::Session(session) => app.rooms.read_again(session).await,
                Whose::Client(client) => app.rooms.read_again_for(client).await,
            }
        };
        // Without a runtime the process ends, and its rooms with it.
        if let Ok(runtime) = tokio::runtime::Handle::try_current() {
            runtime.spawn(tell);
        }
    }
}
