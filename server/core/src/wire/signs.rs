//! Clock and signs of life, the same for desk and stage.

use serde::{Deserialize, Serialize};

/// A sign of life from the server, and half of a clock exchange. Pages answer it at once, in the
/// message handler (timers of hidden pages are throttled). 20 quick ones first, then 4 a second
/// from READY to EASING, one in 5 s otherwise.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Beat {
    /// Counts up by one.
    pub id: u32,
    /// Room time when it was sent.
    pub sent: f64,
    /// The last answer the server has from this page.
    pub echo: Option<Echo>,
    /// To the stage alone: ms since the desk in control was last known to be there, which is when the beat was sent that it
    /// answered last. However long the answer took, the desk was there no earlier. `None`: there is no desk.
    pub desk_silent: Option<f64>,
    /// To the stage alone: how much of that was the way of the beat and its answer, as far as it is usual on the desk's line, ms.
    /// So much silence is no silence.
    #[serde(default)]
    pub desk_trip: f64,
}

/// What the server knows of a page's answer to an earlier beat: the page-to-server half of the
/// clock exchange.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Echo {
    /// The beat that was answered.
    pub id: u32,
    /// Page time in that answer.
    pub page: f64,
    /// Room time when that answer arrived.
    pub heard: f64,
}

/// A page's answer to a beat.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct BeatReply {
    /// The beat's id.
    pub id: u32,
    /// Page time when the beat arrived.
    pub page: f64,
    /// The highest `seq` of a view of this socket that this page has drawn, 0 at first.
    pub drawn: u32,
}
