//! What the stage and the server tell each other, and what the stage shows as evidence.

use serde::{Deserialize, Serialize};

use super::{Beat, BeatReply, Ending, FromCaller, Needs, OpenPad, RoomState, SetView, Steadying, ToCaller};

/// What the client's page found out about itself. Sent with hello and again when it changes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Device {
    /// Field's width and height, CSS px.
    pub width_px: f64,
    /// See `width_px`.
    pub height_px: f64,
    /// CSS px per mm, from the card; `None` when it was skipped (then 96 px an inch is assumed).
    pub px_per_mm: Option<f64>,
    /// Eye to screen, mm, as the client stated it; `None` when it was skipped.
    pub distance_mm: Option<f64>,
    /// The system asks for reduced motion.
    pub reduced_motion: bool,
    /// The client heard the test sound.
    pub sound: bool,
    /// Whether the client told the left tone from the right one; `None` while that was not asked, or
    /// the sound has changed since.
    #[serde(default)]
    pub sides: Option<bool>,
    /// The client felt the test buzz.
    #[serde(default)]
    pub vibration: bool,
    /// The screen will stay on.
    pub wake_lock: bool,
    /// The page fills the screen.
    pub full_screen: bool,
    /// The client still answers the questions of the device check: no set can be shown.
    #[serde(default)]
    pub checking: bool,
}

/// What the stage shows at this moment, sent every 250 ms while a set runs and once at its end.
/// For the desk's eyes; the record is made of [`Evidence`].
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Showing {
    /// The set it belongs to.
    pub set: String,
    /// Whether a set is shown: the rest before its first motion included.
    pub moving: bool,
    /// Page's own estimate of the room time of this reading.
    pub at: f64,
    /// Cycles since the set began, as shown.
    pub phase: f64,
    /// Hz, as shown.
    pub rate: f64,
    /// Degrees from extreme to extreme, as shown on that screen.
    pub width: f64,
    /// How far `at` may be off; `None` from a page that was loaded before this could be told.
    #[serde(default)]
    pub clock: Option<ClockError>,
}

/// How far a page's estimate of the room time may be off, ms from 0.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct ClockError {
    /// What to expect, one standard deviation.
    pub spread: f64,
    /// What it cannot exceed.
    pub bound: f64,
}

/// Why a stage stopped by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Interruption {
    /// The page was hidden or the screen locked.
    Hidden,
    /// Full screen was left.
    FullScreenLeft,
    /// The screen was turned or the window resized.
    Resized,
    /// Sound was suspended or interrupted while it was in use.
    SoundLost,
    /// No sign of the desk for longer than the silence limit.
    Silence,
}

/// What happened at the screen, the stuff the record is made of. Append-only: `(set, seq)` names
/// it, and the same one sent twice is kept once.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Evidence {
    /// The set it belongs to.
    pub set: String,
    /// 0 for the set's first, counting up.
    pub seq: u32,
    /// Page's estimate of the room time.
    pub at: f64,
    /// What was seen.
    pub fact: Fact,
}

/// One fact in [`Evidence`].
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Fact {
    /// It began to move, or the pace began by which the first tone or tap came. Told once that was seen or heard.
    Shown {
        /// Degrees delivered from extreme to extreme.
        width: f64,
    },
    /// Once a second while it runs.
    Second {
        /// Cycles shown so far.
        phase: f64,
        /// Frames that the page looked at in this second, a few now and then; 0: none was drawn.
        frames: u32,
        /// The longest time for which it waited for one of them, or for which its script was held up, ms.
        longest_gap: f64,
    },
    /// It came to rest.
    Rested {
        /// Cycles shown in all.
        phase: f64,
        /// What brought it to rest, as the page knows it.
        ending: Ending,
    },
}

/// From the client's page.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "type")]
pub enum FromStage {
    /// The first message.
    Hello {
        /// See [`WIRE_VERSION`].
        wire: u32,
        /// See [`Device`].
        device: Device,
    },
    /// The answer to a beat.
    Beat(BeatReply),
    /// The device changed, or was calibrated.
    Device {
        /// See [`Device`].
        device: Device,
    },
    /// The client tapped Ready.
    Ready,
    /// The client rated on the scale that was open, or passed it over. Repeated until a view shows that it is gone.
    Rated {
        /// A UUID of the page's making.
        id: String,
        /// See [`OpenPad::asked`].
        asked: u32,
        /// On that scale; `None`: passed over.
        value: Option<u8>,
    },
    /// The client needs longer before anything starts again. Repeated until a view shows it.
    Longer,
    /// The client stopped. The page has stopped already. Repeated until a view shows it.
    Stop,
    /// The page stopped by itself. Repeated until a view shows it.
    Interrupted {
        /// Why.
        cause: Interruption,
    },
    /// See [`Showing`].
    Showing(Showing),
    /// Facts that no [`ToStage::Kept`] has named yet; 20 at most in one message.
    Evidence {
        /// In order.
        facts: Vec<Evidence>,
    },
    /// About the call. Only once admitted; else it is a breach.
    Call(FromCaller),
}

/// To the client's page.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "type")]
pub enum ToStage {
    /// See [`Beat`].
    Beat(Beat),
    /// The whole room as the client may know it.
    View(StageView),
    /// Evidence of this set up to and with this `seq` is in the record.
    Kept {
        /// The set.
        set: String,
        /// The highest `seq` below which nothing is missing.
        seq: u32,
    },
    /// About the call. Never before the client is admitted.
    Call(ToCaller),
    /// This page is older than the server: reload once nothing moves.
    Reload,
}

/// The room as the client's page knows it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct StageView {
    /// Counts the starts of the room's holder. Room time starts anew with each.
    pub epoch: u32,
    /// Counts the views within an epoch, from 1,000,000 times the epoch.
    pub seq: u32,
    /// The state word.
    pub state: RoomState,
    /// See [`Needs`].
    pub needs: Needs,
    /// The set that runs, or the last one. `None` before the first and while not admitted.
    pub set: Option<SetView>,
    /// The desk has drawn the client's last Stop or interruption: only now may the page say so.
    pub desk_knows: bool,
    /// A desk is connected.
    pub desk_here: bool,
    /// The figure of the tapping pacer may be drawn. It is not while the eyes are locked, because it blinks.
    pub figure: bool,
    /// How often the desk has asked for the check of left and right. When it grows the page asks again.
    pub sides_asked: u32,
    /// After the end: the closing words the clinician chose for the client, if any.
    pub closing_words: Option<String>,
    /// Something to steady by.
    #[serde(default)]
    pub steadying: Option<Steadying>,
    /// The scale that is open.
    #[serde(default)]
    pub pad: Option<OpenPad>,
    /// It is known that the client needs longer.
    #[serde(default)]
    pub longer: bool,
}
