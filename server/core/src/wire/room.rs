//! The room: its states, and what it still needs before a set.

use serde::{Deserialize, Serialize};

/// The one state word of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum RoomState {
    /// Nobody has the seat.
    Waiting,
    /// Somebody has the seat and waits to be admitted.
    AtTheDoor,
    /// The client has left by their own press of Leave, and nobody has come since.
    Left,
    /// Nothing moves, and a set cannot be started: `needs` or the desk's `refused` says why.
    Hold,
    /// A start by the desk in control, at this moment, is carried out.
    Ready,
    /// The set is being written to the record, or the client's page has not said yet that it shows it.
    Starting,
    /// The client's page has said that a set moves.
    Running,
    /// A set comes to rest at an extreme, or was over and the client's page has not said yet that it rests.
    Easing,
    /// The client stopped, and their Ready, the clinician's sight, the pause or the rest of their page is still open.
    StoppedByClient,
    /// Something else stopped the last set before its end, and one of these is still open.
    Stopped,
    /// The stage is not heard.
    LinkLost,
    /// The session is over.
    Closed,
}

/// What must happen at either end before a set may start. All false: nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Needs {
    /// The clinician's "I can see and hear them": before the first set and after any loss.
    pub sight: bool,
    /// The client's tap on Ready: after the client's Stop, a hidden page or a gap over 10 s.
    pub client_ready: bool,
    /// The stage is not heard, or has no room time yet.
    pub stage: bool,
    /// The client is still in the check of the device, which shows nothing else meanwhile.
    #[serde(default)]
    pub check: bool,
    /// Less than 1 s has passed since a stop.
    pub pause: bool,
    /// The desk in control answers late: the stage would take it for lost.
    #[serde(default)]
    pub desk: bool,
    /// The stage has not said that the last set is at rest there.
    #[serde(default)]
    pub rest: bool,
    /// The client's device asks for less motion, and they have not said that a moving dot is welcome.
    #[serde(default)]
    pub motion: bool,
    /// Nothing of the plan would be seen, heard or felt: it has no dot, and the client has not heard the test sound.
    #[serde(default)]
    pub sound: bool,
}
