//! Every message between the desk (the clinician's live screen), the stage (the client's page)
//! and the server.
//!
//! Conventions: times are `f64` milliseconds. *Room time* is the server's monotonic time since the
//! room's holder started (see `epoch`); *page time* is a page's `performance.now()`. Rates are
//! cycles per second (Hz), a cycle is there and back, widths are degrees of visual angle. Every
//! message that describes the room carries the whole of it: the latest `(epoch, seq)` wins, so a
//! lost or repeated message does no harm. Types are exported to `web/src/wire/` by ts-rs.

mod aid;
mod call;
mod comfort;
mod desk;
mod entries;
mod opening;
mod preset;
mod room;
mod set;
mod signs;
mod stage;

pub use aid::{ByClient, OpenPad, Pad, Scale, Steadying};
pub use call::{During, FromCaller, Missing, OwnDevice, Sends, Signal, ToCaller, Unable, Unwatched, Watch, Ways};
pub use comfort::{Colours, Comfort, Sweep, Timbre};
pub use desk::{DeskView, FromDesk, Order, Refusal, SeatState, ToDesk};
pub use entries::{
    Asks, Change, Entry, EntryValue, LogSet, Moment, Next, ReachStep, Rung, Saved, SavedEntry, Saw, SessionLog, Showed, Start, StuckBy,
    Unmeasured,
};
pub use opening::{Answer, Hold, Holds, Matter};
pub use preset::{Preset, Purpose};
pub use room::{Needs, RoomState};
pub use set::{Channels, Ending, Length, Path, Plan, Segment, SetView, Timeline};
pub use signs::{Beat, BeatReply, Echo};
pub use stage::{ClockError, Device, Evidence, Fact, FromStage, Interruption, Showing, StageView, ToStage};

/// The version a page names in its first message. The server accepts this one and, of a client's page, the one before: a desk of the
/// version before does not know all that its log holds, and would show it wrong.
pub const WIRE_VERSION: u32 = 5;
