//! What the desk and the server tell each other.

use serde::{Deserialize, Serialize};

use super::{
    Beat, BeatReply, ByClient, Device, FromCaller, Hold, Missing, Needs, Pad, Plan, RoomState, SetView, Showing, Steadying, ToCaller,
    Unwatched, Watch,
};

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
    /// Nothing came of the client for so long as the practice allows, though they send it: what runs comes to rest, and needs `Sight` again.
    Unseen {
        /// What.
        missing: Missing,
    },
    /// Whether sets come to rest by themselves when nothing comes of the client.
    Watch {
        /// Why not; `None`: they do.
        off: Option<Unwatched>,
    },
    /// Start the next set with the room's plan.
    Start,
    /// Stop now.
    Stop,
    /// Ease out at the next extreme.
    End,
    /// The same length again, for the set that runs.
    Extend,
    /// Ask the client which side the tones come from. Only while nothing runs.
    AskSides,
    /// Put something to steady by on the client's page; `None` takes it away. Only while nothing runs.
    Show {
        /// What.
        steadying: Option<Steadying>,
    },
    /// Open a scale on the client's page; `None` takes it away. Only while nothing runs.
    Ask {
        /// Which, and when in the protocol.
        pad: Option<Pad>,
    },
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
    /// What the room before this one showed of its last set and may not have been able to write down.
    HandBack {
        /// As it was shown last.
        set: Box<SetView>,
    },
    /// An order. Refused when `epoch` is not the room's. The same `id` twice acts once.
    Order {
        /// The room's epoch that the desk saw when the key was pressed.
        epoch: u32,
        /// Counts up within this socket's life. Never send an order again on another socket.
        id: u32,
        /// What to do.
        order: Order,
    },
    /// About the call. Only while this desk has control and the client is admitted; else it is dropped.
    Call(FromCaller),
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
    /// The opening holds it: see [`DeskView::holds`].
    Held,
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
#[expect(clippy::large_enum_variant, reason = "nothing else is sent as often as what is large")]
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
    /// About the call.
    Call(ToCaller),
    /// This page is older than the server: reload once nothing moves.
    Reload,
}

/// Who sits at the client's end, as the server knows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum SeatState {
    /// Nobody has it.
    Empty,
    /// Somebody waits to be admitted.
    Waiting,
    /// Admitted.
    Admitted,
    /// The client gave it up by their own press of Leave.
    Left,
}

/// The room as the desk knows it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct DeskView {
    /// See `StageView::epoch`.
    pub epoch: u32,
    /// See `StageView::seq`.
    pub seq: u32,
    /// The state word.
    pub state: RoomState,
    /// See [`Needs`].
    pub needs: Needs,
    /// How a start by this desk would be answered at this moment; `None`: it would be carried out.
    #[serde(default)]
    pub refused: Option<Refusal>,
    /// What the opening has against a start with this plan, in the order of the hour.
    #[serde(default)]
    pub holds: Vec<Hold>,
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
    /// The device that has the seat: what is to be admitted.
    #[serde(default)]
    pub seat_id: Option<String>,
    /// The device that asks for the seat: what the seat is to be moved to.
    #[serde(default)]
    pub asking: Option<String>,
    /// Nothing gets into the record any more. Nothing starts; what ran was stopped.
    #[serde(default)]
    pub record_refuses: bool,
    /// The server's clock was set while this room was open, by so many seconds: times in the record may be wrong.
    #[serde(default)]
    pub clock_set: f64,
    /// The record does not answer: what is entered now waits, and nothing starts. What runs goes on under the desk's hand.
    #[serde(default)]
    pub record_waits: bool,
    /// The stage's socket is open and was heard lately.
    pub stage_here: bool,
    /// Room time of the stage's last sign of life: when the last beat was sent that it has answered.
    pub stage_heard: Option<f64>,
    /// What the stage found out about itself.
    pub device: Option<Device>,
    /// The widest path that screen can show for the chosen path and dot, degrees.
    pub widest: Option<f64>,
    /// The width that was asked for, degrees: the plan's is as much of it as that screen shows. 0: from a server that does not say.
    #[serde(default)]
    pub asked_width: f64,
    /// The eyes channel is locked by the client's cautions.
    pub eyes_locked: bool,
    /// Room time at which the hard limit ends the set that runs.
    pub hard_end: Option<f64>,
    /// What the client's page shows to steady by.
    #[serde(default)]
    pub steadying: Option<Steadying>,
    /// The scale that is open on the client's page.
    #[serde(default)]
    pub pad: Option<Pad>,
    /// What came from the last one, until another is opened.
    #[serde(default)]
    pub rated: Option<ByClient>,
    /// After a stop the client has said that they need longer.
    #[serde(default)]
    pub longer: bool,
    /// See [`Watch`].
    #[serde(default)]
    pub watch: Watch,
}
