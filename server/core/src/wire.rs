//! Every message between the desk (the clinician's live screen), the stage (the client's page)
//! and the server.
//!
//! Conventions: times are `f64` milliseconds. *Room time* is the server's monotonic time since the
//! room's holder started (see `epoch`); *page time* is a page's `performance.now()`. Rates are
//! cycles per second (Hz), a cycle is there and back, widths are degrees of visual angle. Every
//! message that describes the room carries the whole of it: the latest `(epoch, seq)` wins, so a
//! lost or repeated message does no harm. Types are exported to `web/src/wire/` by ts-rs.

use serde::{Deserialize, Serialize};

/// The version a page names in its first message. The server accepts this one and the one before.
pub const WIRE_VERSION: u32 = 1;

// ---------------------------------------------------------------------------------------------
// What a set is

/// The line the dot moves along. A set starts at the extreme that `phase` 0 stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Path {
    /// Left, right, left. Phase 0 is the left end.
    Across,
    /// Up and down. Phase 0 is the top end.
    UpDown,
    /// From the upper left to the lower right. Phase 0 is the upper left end.
    Falling,
    /// From the lower left to the upper right. Phase 0 is the lower left end.
    Rising,
}

/// Which ways of stimulation are on. At least one must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Channels {
    /// The moving dot.
    pub eyes: bool,
    /// Tones that alternate between the sides, one at each extreme.
    pub ears: bool,
}

/// How long a set is meant to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind", content = "cycles")]
pub enum Length {
    /// This many whole cycles, 1 or more.
    Cycles(u32),
    /// Until the clinician ends it, or the hard limit of `safety` does.
    Open,
}

/// What the clinician has chosen for the set that runs, or for the next one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Plan {
    /// Cycles per second, within `safety::RATE_HZ`.
    pub rate: f64,
    /// From extreme to extreme, degrees of visual angle.
    pub width: f64,
    /// Diameter of the dot, degrees of visual angle.
    pub dot: f64,
    /// The line it moves along.
    pub path: Path,
    /// How long.
    pub length: Length,
    /// By eyes, by ears, or both.
    pub channels: Channels,
}

/// One piece of the stimulus: the rate goes linearly from `rate_from` to `rate_to`.
///
/// Within a segment, with `s` = seconds since `starts_at` and `d` = `lasts` in seconds,
/// phase(s) = phase + rate_from*s + (rate_to - rate_from)*s*s/(2*d).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Segment {
    /// Room time of its beginning, ms.
    pub starts_at: f64,
    /// Its length, ms; above 0.
    pub lasts: f64,
    /// Cycles since the set began, at `starts_at`.
    pub phase: f64,
    /// Hz at its beginning.
    pub rate_from: f64,
    /// Hz at its end.
    pub rate_to: f64,
}

/// A whole set as data, with the end always in it: contiguous segments in order of time. Before
/// the first the dot rests at the first phase, after the last it rests at the last.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Timeline {
    /// In order; each starts where the one before ends, in time and in phase.
    pub segments: Vec<Segment>,
}

/// Who or what ended a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Ending {
    /// It came to its planned end.
    Done,
    /// The clinician asked for an end at the next extreme.
    EndedByClinician,
    /// The clinician stopped it at once.
    StoppedByClinician,
    /// The client stopped it at once.
    StoppedByClient,
    /// The clinician could not see the client.
    CannotSee,
    /// The client's page was hidden, turned, resized, or left full screen.
    PageInterrupted,
    /// The line to the stage was lost, or the stage was left without a sign of the desk.
    LinkLost,
    /// The hard limit on the length of a set.
    HardLimit,
    /// Nothing was heard of its end: the server stopped meanwhile.
    Unknown,
}

/// A set as both pages see it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct SetView {
    /// The set's id in the record (a UUID).
    pub id: String,
    /// 1 for the first of the session.
    pub number: u32,
    /// As ordered, with every later change in it.
    pub plan: Plan,
    /// The stimulus itself.
    pub timeline: Timeline,
    /// `None` while it runs or eases.
    pub ended: Option<Ending>,
}

// ---------------------------------------------------------------------------------------------
// The room

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
    /// The client stopped, and something of [`Needs`] is still open. Then it is `Ready` again.
    StoppedByClient,
    /// Something else stopped the last set before its end, and something of [`Needs`] is still
    /// open. Then it is `Ready` again.
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
    /// Less than 1 s has passed since a stop.
    pub pause: bool,
}

// ---------------------------------------------------------------------------------------------
// Clock and signs of life

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
    /// To the stage alone: ms since the desk in control was last heard, `None` if there is none.
    pub desk_silent: Option<f64>,
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

// ---------------------------------------------------------------------------------------------
// Stage

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
    /// The screen will stay on.
    pub wake_lock: bool,
    /// The page fills the screen.
    pub full_screen: bool,
}

/// What the stage shows at this moment, sent every 250 ms while a set runs and once at its end.
/// For the desk's eyes; the record is made of [`Evidence`].
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Showing {
    /// The set it belongs to.
    pub set: String,
    /// Whether anything moves or sounds.
    pub moving: bool,
    /// Page's own estimate of the room time of this reading.
    pub at: f64,
    /// Cycles since the set began, as shown.
    pub phase: f64,
    /// Hz, as shown.
    pub rate: f64,
    /// Degrees from extreme to extreme, as shown on that screen.
    pub width: f64,
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
    /// The dot (or first tone) was first shown.
    Shown {
        /// Degrees delivered from extreme to extreme.
        width: f64,
    },
    /// Once a second while it runs.
    Second {
        /// Cycles shown so far.
        phase: f64,
        /// Frames drawn in this second.
        frames: u32,
        /// The longest time between two of them, ms.
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
    /// After the end: the closing words the clinician chose for the client, if any.
    pub closing_words: Option<String>,
}

// ---------------------------------------------------------------------------------------------
// Desk

/// An order from the desk.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Order {
    /// Take control from the other desk. Ends no set.
    TakeControl,
    /// "I can see and hear them."
    Sight,
    /// "I can't see them": ends the set, needs `Sight` again.
    CannotSee,
    /// Start the next set with the room's plan.
    Start,
    /// Stop now.
    Stop,
    /// Ease out at the next extreme.
    End,
    /// The same length again, for the set that runs.
    Extend,
    /// Change the plan. While a set runs, only `rate` may differ from its plan; it is changed live.
    Plan {
        /// The whole plan.
        plan: Plan,
    },
}

/// From the desk.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "type")]
pub enum FromDesk {
    /// The first message.
    Hello {
        /// See [`WIRE_VERSION`].
        wire: u32,
    },
    /// The answer to a beat.
    Beat(BeatReply),
    /// An order. Refused when `epoch` is not the room's. The same `id` twice acts once.
    Order {
        /// The room's epoch that the desk saw when the key was pressed.
        epoch: u32,
        /// Counts up within this socket's life. Never send an order again on another socket.
        id: u32,
        /// What to do.
        order: Order,
    },
}

/// Why an order was refused. The desk has the words for each.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Refusal {
    /// Meant for the room before its restart.
    OldEpoch,
    /// This desk is view-only.
    NotInControl,
    /// The order does not fit the state (for example a start while a set runs).
    WrongState,
    /// Something is needed first: see [`Needs`].
    Needs,
    /// Above a limit of `safety`. `limit` says it in words with its figure.
    Limit {
        /// For example "The rate must be between 0.3 and 2 Hz."
        limit: String,
    },
    /// That screen cannot show this width; `widest` fits.
    TooWide {
        /// Degrees.
        widest: f64,
    },
    /// The eyes channel is locked by the client's cautions.
    EyesLocked,
    /// The record could not be written, so nothing was started.
    NotSaved,
}

/// To the desk.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "type")]
pub enum ToDesk {
    /// See [`Beat`].
    Beat(Beat),
    /// The whole room.
    View(DeskView),
    /// What became of an order. `refused` `None`: it was carried out.
    Answer {
        /// The order's id.
        id: u32,
        /// Why not.
        refused: Option<Refusal>,
    },
    /// What the client's page shows now.
    Showing(Showing),
    /// This page is older than the server: reload once nothing moves.
    Reload,
}

/// Who sits at the client's end, as the server knows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum SeatState {
    /// Nobody has used the link.
    Empty,
    /// Somebody waits to be admitted.
    Waiting,
    /// Admitted.
    Admitted,
}

/// The room as the desk knows it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct DeskView {
    /// See [`StageView::epoch`].
    pub epoch: u32,
    /// See [`StageView::seq`].
    pub seq: u32,
    /// The state word.
    pub state: RoomState,
    /// See [`Needs`].
    pub needs: Needs,
    /// The plan of the next set; while one runs, of that one.
    pub plan: Plan,
    /// The set that runs, or the last one.
    pub set: Option<SetView>,
    /// This desk has control.
    pub in_control: bool,
    /// Another desk is connected too.
    pub other_desk: bool,
    /// Who sits at the client's end.
    pub seat: SeatState,
    /// A second device asks for the seat.
    pub seat_asked_for: bool,
    /// The stage's socket is open and was heard lately.
    pub stage_here: bool,
    /// Room time when the stage was last heard.
    pub stage_heard: Option<f64>,
    /// What the stage found out about itself.
    pub device: Option<Device>,
    /// The widest path that screen can show for the chosen path and dot, degrees.
    pub widest: Option<f64>,
    /// The eyes channel is locked by the client's cautions.
    pub eyes_locked: bool,
    /// Room time at which the hard limit ends the set that runs.
    pub hard_end: Option<f64>,
}

// ---------------------------------------------------------------------------------------------
// Entries: what the clinician writes down beside the sets. They go by HTTP, not by the socket:
// the room never waits for the database, and an entry is only shown as saved once it is.

/// When in the protocol a rating was asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Moment {
    /// The baseline, with the worst picture in mind.
    Assessment,
    /// Straight after a set.
    AfterSet,
    /// Back at the target.
    BackAtTarget,
    /// While the wanted belief is strengthened.
    Installation,
    /// At the close of the session.
    Closing,
    /// At the start of a later session.
    Reevaluation,
}

/// The clinician's one-key mark of what came up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// Something new came up.
    Changing,
    /// The same as before.
    Same,
    /// Nothing disturbing is left.
    Settled,
}

/// What an entry says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum EntryValue {
    /// What the client reported, in a few words: process notes, sealed apart.
    Words {
        /// 1 to 2,000 characters.
        words: String,
    },
    /// See [`Change`].
    Change {
        /// The mark.
        change: Change,
    },
    /// Subjective units of disturbance.
    Sud {
        /// 0 to 10.
        value: u8,
    },
    /// Validity of the wanted belief.
    Voc {
        /// 1 to 7.
        value: u8,
    },
    /// The entry that this one replaces is taken back.
    TakenBack,
}

/// One entry, append-only. `POST /sessions/{id}/entries` takes one and answers [`Kept`] once it
/// is in the record. The same `id` sent twice is kept once.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Entry {
    /// A UUID made by the page: the idempotency key.
    pub id: String,
    /// The set it belongs to (a UUID), or none.
    pub set: Option<String>,
    /// The entry that this one corrects or takes back.
    pub replaces: Option<String>,
    /// When in the protocol.
    pub moment: Moment,
    /// What it says.
    pub value: EntryValue,
}

/// The answer to an [`Entry`]: it is in the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Kept {
    /// The entry's id.
    pub id: String,
    /// Server's time of keeping, RFC 3339 in UTC.
    pub at: String,
}

/// An entry that is in the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct KeptEntry {
    /// As it was sent.
    pub entry: Entry,
    /// See [`Kept::at`].
    pub at: String,
}

/// A set in the log of a session.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct LogSet {
    /// The set's id (a UUID).
    pub id: String,
    /// 1 for the first.
    pub number: u32,
    /// As last ordered.
    pub plan: Plan,
    /// Cycles shown at the screen, from evidence; `None` when nothing was heard.
    pub cycles: Option<f64>,
    /// `None` while it runs.
    pub ending: Option<Ending>,
}

/// `GET /sessions/{id}/entries`: all that the desk's log shows, to fill it after a reload.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct SessionLog {
    /// In order of number.
    pub sets: Vec<LogSet>,
    /// In order of keeping, corrected and taken-back ones included.
    pub entries: Vec<KeptEntry>,
}
