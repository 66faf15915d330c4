//! What takes a right away: a sign-in that is closed, roles or care that have changed. Open sockets look then whether they
//! may stay. One that is not reached by this does so by itself, every minute.

use tokio::sync::watch;

/// Tells open sockets to look.
#[derive(Default)]
pub struct Revocations(watch::Sender<()>);

impl Revocations {
    /// Changes whenever something was taken away from somebody.
    #[must_use]
    pub fn subscribe(&self) -> watch::Receiver<()> {
        self.0.subscribe()
    }

    /// Take it before the commit.
    pub fn follow(&self) -> Revokes {
        Revokes(self.0.clone())
    }
}

/// Dropped, on whatever way out, it sends the sockets to the record: also when the commit's answer was lost, or whoever asked
/// has gone.
#[must_use = "the sockets are told when this is dropped"]
pub struct Revokes(watch::Sender<()>);

impl Drop for Revokes {
    fn drop(&mut self) {
        self.0.send_replace(());
    }
}
