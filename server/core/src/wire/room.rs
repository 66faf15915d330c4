//! The room: its states, and what it still needs before a set.

use serde::{Deserialize, Serialize};

/// The one state word of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum RoomState {
    /// The client has not been admitted.
    Waiting,
    /// Nothing moves; a set may start once `needs` is empty.
    Ready,
    /// The set is being written to the record; it starts when it is.
    Starting,
    /// A set runs.
    Running,
    /// A set comes to rest at an extreme.
    Easing,
    /// The client stopped, and their Ready, the clinician's sight or the pause is still open. Then it is `Ready` again.
    StoppedByClient,
    /// Something else stopped the last set before its end, and one of these is still open. Then it
    /// is `Ready` again.
    Stopped,
    /// The stage is not heard.
    LinkLost,
    /// The session is over.
    Closed,
}

/// What must happen before a set may start. All false: it may.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Needs {
    /// The clinician's "I can see and hear them": before the first set and after any loss.
    pub sight: bool,
    /// The client's tap on Ready: after the client's Stop, a hidden page or a gap over 10 s.
    pub client_ready: bool,
    /// The stage is not connected.
    pub stage: bool,
    /// The client is still in the check of the device, which shows nothing else meanwhile.
    #[serde(default)]
    pub check: bool,
    /// Less than 1 s has passed since a stop.
    pub pause: bool,
}
