//! What the service manager is told, when there is one: `sd_notify(3)`.

use std::time::Duration;

use sd_notify::NotifyState;
use tokio::time::{MissedTickBehavior, interval};

/// Connections are taken from now on.
pub fn ready() {
    tell(&[NotifyState::Ready, NotifyState::Status("serving")]);
}

/// What is being waited for, for `systemctl status`.
pub fn status(words: &str) {
    tell(&[NotifyState::Status(words)]);
}

fn tell(state: &[NotifyState<'_>]) {
    if let Err(fault) = sd_notify::notify(state) {
        tracing::warn!(%fault, "the service manager could not be told");
    }
}

/// Says in time that the runtime still runs its tasks. Says nothing about the database: a portal without
/// one still leads the rooms that are open, and to kill it would end them. Returns where nobody asked.
pub async fn keep_alive() {
    let Some(within) = sd_notify::watchdog_enabled() else { return };
    // sd_watchdog_enabled(3) recommends half of the time.
    let mut half = interval((within / 2).max(Duration::from_millis(100)));
    half.set_missed_tick_behavior(MissedTickBehavior::Delay);
    loop {
        half.tick().await;
        tell(&[NotifyState::Watchdog]);
    }
}
