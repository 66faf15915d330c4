//! The call between the two pages. Picture and voice go from page to page; here is what the pages need to find each other. It has a budget of its
//! own, and nothing that goes wrong with it touches the room: the hour goes on by telephone.

use serde::{Deserialize, Serialize};

/// What one page tells the other on the way to a connection (RFC 8829).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Signal {
    /// A description that asks for an answer.
    Offer {
        /// As the browser wrote it.
        sdp: String,
    },
    /// The answer.
    Answer {
        /// As the browser wrote it.
        sdp: String,
    },
    /// One way to this page; empty: there are no more.
    Candidate {
        /// As the browser wrote it.
        candidate: String,
        /// The media section that it belongs to.
        mid: Option<String>,
        /// Its place among them.
        line: Option<u16>,
    },
    /// The page that answers asks the other for another offer: its network has changed. One side alone offers, so that two offers never meet: a browser
    /// that takes its own back (the rollback of RFC 8829, 4.1.10.2) goes on decoding, and shows nothing of it.
    Again,
    /// What the page sends at this moment. Said at the beginning of each call and at every change.
    Sends(Sends),
}

/// What a page sends, and what is in the way of the rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Sends {
    /// Its camera.
    pub picture: OwnDevice,
    /// Its microphone.
    pub voice: OwnDevice,
    /// From a desk: how the clinician's picture is to be shown while a set runs. From a stage: how it is shown there.
    pub during: During,
    /// The page is in front: not behind another tab or program.
    pub visible: bool,
}

/// How a camera or a microphone stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum OwnDevice {
    /// It is sent.
    On,
    /// Whoever sits there does not send it.
    Off,
    /// The microphone is open, and nothing of it is sent.
    Muted,
    /// The line is poor: the picture is held back so that the voice gets through.
    Spared,
    /// The browser may not use it.
    Refused,
    /// There is none.
    Absent,
    /// Another program has it.
    Taken,
    /// It was unplugged, or the browser may not use it any more.
    Stopped,
    /// The browser cannot, and does not say why.
    Unable,
}

/// How the clinician's picture is shown on the client's page while a set runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum During {
    /// As between sets.
    Shown,
    /// Much darker than the dot.
    Dimmed,
    /// Not at all.
    Hidden,
}

/// What did not come from the client, though it is sent.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Missing {
    /// No picture was decoded.
    Picture,
    /// No sound came.
    Voice,
}

/// From either page.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum FromCaller {
    /// For the other page.
    Signal {
        /// Which call: see [`ToCaller::Begin`]. What is of another is dropped.
        call: u32,
        /// What.
        signal: Signal,
    },
    /// The relay's password is about to end, and a new way is needed.
    Renew {
        /// Which call.
        call: u32,
    },
}

/// To either page.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum ToCaller {
    /// The other is there: connect to them, and let go of any call before this.
    Begin {
        /// Counts the calls of a room.
        call: u32,
        /// This page makes the offers; the other answers.
        offers: bool,
        /// By which ways.
        ways: Ways,
    },
    /// From the other page.
    Signal {
        /// Which call.
        call: u32,
        /// What.
        signal: Signal,
    },
    /// New ways for the call that goes on.
    Ways {
        /// Which call.
        call: u32,
        /// By which ways.
        ways: Ways,
    },
    /// The other is not there any more.
    Over,
    /// There is no way to call each other here.
    Unable {
        /// Why.
        why: Unable,
    },
}

/// By which ways a page may connect.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Ways {
    /// By the relay alone: neither page learns where the other is.
    pub relay_only: bool,
    /// Addresses of the relay (RFC 7065); none: there is no relay.
    pub urls: Vec<String>,
    /// For the relay.
    pub username: String,
    /// For the relay.
    pub credential: String,
    /// So long does the password hold, ms.
    pub holds_for: f64,
}

/// Why nobody can be called.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Unable {
    /// The practice connects by a relay alone, and has none.
    NoRelay,
    /// This page signals far more than a call needs.
    TooMuch,
    /// What this page signals is not passed on.
    Unfit,
}

/// Whether a set comes to rest by itself when nothing comes of the client.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Watch {
    /// After so many seconds: 3 to 15, as the practice has it.
    pub seconds: u8,
    /// Why not in this session; `None`: it does.
    pub off: Option<Unwatched>,
}

impl Default for Watch {
    fn default() -> Self {
        Self { seconds: 5, off: None }
    }
}

/// Why a set goes on though nothing comes of the client.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Unwatched {
    /// The work is by sound alone, as both have agreed.
    SoundOnly,
    /// The clinician sees and hears them by other means, such as a telephone.
    OtherMeans,
}
