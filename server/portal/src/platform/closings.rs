//! Tells open sockets that the sign-in they were opened with has ended.

use tokio::sync::broadcast;
use uuid::Uuid;

/// The ids of sign-ins as they are closed: revoked, signed out, or ended with a membership.
pub struct Closings(broadcast::Sender<Closing>);

/// What sockets are told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Closing {
    /// This sign-in has ended.
    Of(Uuid),
    /// Who may do what has changed: each looks for itself whether it still may.
    LookAgain,
}

impl Default for Closings {
    fn default() -> Self {
        Self(broadcast::Sender::new(256))
    }
}

impl Closings {
    /// Hears of every sign-in that is closed from now on. A receiver that lagged has missed some and
    /// asks `signin::resolve` whether its own still holds.
    #[must_use]
    pub fn subscribe(&self) -> broadcast::Receiver<Closing> {
        self.0.subscribe()
    }

    /// Only after the commit, so that nobody who asks the database at once finds it still open.
    pub(crate) fn publish(&self, signin: Uuid) {
        // With no socket open nobody listens, and there is nothing to close.
        let _ = self.0.send(Closing::Of(signin));
    }

    /// Likewise, when roles or care have changed.
    pub(crate) fn look_again(&self) {
        let _ = self.0.send(Closing::LookAgain);
    }
}
