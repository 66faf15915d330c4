//! What goes into a room and what comes out.

use crate::call::Reach;
use crate::safety;
use crate::wire::{
    Ending, Evidence, FromDesk, FromStage, Holds, Interruption, Plan, SeatState, SetView, Timeline, ToDesk, ToStage, Unwatched, Watch,
};

/// What a room starts from, taken from the record.
#[derive(Clone, Debug)]
pub struct Start {
    /// Counts the starts of this session's room, 1 or more.
    pub epoch: u32,
    /// Plan of the next set.
    pub plan: Plan,
    /// The highest number of a set in the record, 0 when there is none.
    pub sets_so_far: u32,
    /// Ids of the sets in the record: evidence of these is taken.
    pub known_sets: Vec<String>,
    /// The eyes channel is locked by the client's cautions.
    pub eyes_locked: bool,
    /// Who sits at the client's end.
    pub seat: SeatState,
    /// The device that has the seat.
    pub seat_id: Option<String>,
    /// The device that asks for it while another has it.
    pub asking: Option<String>,
    /// What the opening has against a start.
    pub holds: Holds,
    /// How the two pages may be connected for picture and voice; `None`: not at all.
    pub reach: Option<Reach>,
    /// A set comes to rest so many seconds after nothing came of the client.
    pub watch: u8,
}

impl Start {
    /// A new session without anybody in it, in which nothing holds a start.
    pub fn first(epoch: u32) -> Self {
        Start {
            epoch,
            plan: safety::default_plan(),
            sets_so_far: 0,
            known_sets: Vec::new(),
            eyes_locked: false,
            seat: SeatState::Empty,
            seat_id: None,
            asking: None,
            holds: Holds::default(),
            reach: None,
            watch: Watch::default().seconds,
        }
    }
}

/// What the record says of a session, as far as its room has to follow it. The room is told whenever something
/// may have changed, and from time to time without that; the same facts again change nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct Facts {
    /// The session has ended: then this, with the words that the client sees.
    pub ended: Option<LastWords>,
    /// The eyes channel is locked by the client's cautions.
    pub eyes_locked: bool,
    /// Who sits at the client's end.
    pub seat: SeatState,
    /// The device that has the seat, by its id in the record.
    pub seat_id: Option<String>,
    /// The device that asked for the seat last, while another has it.
    pub asking: Option<String>,
    /// What the opening has against a start.
    pub holds: Holds,
    /// How the two pages may be connected for picture and voice; `None`: not at all.
    pub reach: Option<Reach>,
    /// A set comes to rest so many seconds after nothing came of the client.
    pub watch: u8,
}

/// What a client reads at the end; `None`: nothing was written for them.
pub type LastWords = Option<String>;

/// What happened. `desk` and `stage` number sockets: every new socket has a new one.
#[derive(Clone, Debug, PartialEq)]
pub enum Event {
    /// A desk's socket opened. It is part of the room once it has said hello.
    DeskJoined {
        /// The socket.
        desk: u64,
    },
    /// A desk's message.
    DeskSaid {
        /// The socket.
        desk: u64,
        /// The message.
        said: FromDesk,
    },
    /// A desk's socket closed.
    DeskLeft {
        /// The socket.
        desk: u64,
    },
    /// The socket of the seat's stage opened. An older one is closed.
    StageJoined {
        /// The socket.
        stage: u64,
    },
    /// The stage's message.
    StageSaid {
        /// The socket.
        stage: u64,
        /// The message.
        said: FromStage,
    },
    /// The stage's socket closed.
    StageLeft {
        /// The socket.
        stage: u64,
    },
    /// The set of [`Effect::RecordSet`] is in the record.
    SetRecorded {
        /// Its number.
        number: u32,
        /// The id it has there (a UUID).
        id: String,
    },
    /// The set of [`Effect::RecordSet`] is surely not in the record. When that is not sure, send
    /// nothing: the room gives up by itself.
    SetNotRecorded {
        /// Its number.
        number: u32,
    },
    /// Evidence of this set up to and with `seq` is in the record, nothing missing below.
    Kept {
        /// The set.
        set: String,
        /// The highest `seq` below which nothing is missing.
        seq: u32,
    },
    /// See [`Facts`].
    Facts(Facts),
    /// Nothing that this room does gets into the record any more, or it does again.
    RecordRefuses(bool),
    /// The clock that the record is dated by was set, by so many seconds since this room opened.
    ClockSet(f64),
    /// What this room does has waited for the record longer than it ever should, or waits no longer.
    RecordWaits(bool),
    /// The room is about to end: what runs eases to rest, and is told so before its sockets close.
    RoomEnds,
    /// Nothing but time; see [`super::Room::next_wake`].
    Tick,
}

/// What to do. Messages to one socket keep their order.
#[derive(Clone, Debug, PartialEq)]
#[expect(clippy::large_enum_variant, reason = "what is large is most of what comes")]
pub enum Effect {
    /// Send to this desk.
    ToDesk(u64, ToDesk),
    /// Send to this stage.
    ToStage(u64, ToStage),
    /// Tell both of these to connect ([`crate::wire::ToCaller::Begin`]), each with ways of its own; the desk makes the offers.
    BeginCall {
        /// The desk's socket.
        desk: u64,
        /// The stage's socket.
        stage: u64,
        /// Another for each call.
        call: u32,
        /// By the relay alone.
        relay_only: bool,
    },
    /// Give this page new ways ([`crate::wire::ToCaller::Ways`]).
    RenewWays {
        /// Its socket.
        socket: u64,
        /// It is a desk's.
        of_desk: bool,
        /// The call that goes on.
        call: u32,
        /// By the relay alone.
        relay_only: bool,
    },
    /// Close this desk's socket after what was sent. The room has forgotten it already.
    CloseDesk(u64, Why),
    /// Close this stage's socket after what was sent. The room has forgotten it already.
    CloseStage(u64, Why),
    /// Write a new set, then answer with [`Event::SetRecorded`] or [`Event::SetNotRecorded`].
    RecordSet {
        /// 1 for the session's first.
        number: u32,
        /// As ordered.
        plan: Plan,
    },
    /// Append to what was ordered. `(set, seq)` names the row; nothing waits for it.
    RecordOrdered {
        /// The set.
        set: String,
        /// 0 for the set's first.
        seq: u32,
        /// Why.
        cause: Cause,
        /// The plan from now on.
        plan: Plan,
        /// The whole timeline from now on.
        timeline: Timeline,
        /// Room time of the order, ms.
        at: f64,
    },
    /// Write how a set ended, as the server knows it. At most once a set.
    RecordEnding {
        /// The set.
        set: String,
        /// Who or what ended it.
        ending: Ending,
        /// Room time, ms.
        at: f64,
    },
    /// A desk hands back what an earlier room showed of its last set: keep what of it is not in the record.
    KeepHandedBack(SetView),
    /// Keep these facts once each, then send [`Event::Kept`]. All are of this session's sets.
    KeepEvidence(Vec<Evidence>),
    /// Write down something that happened beside the sets.
    RecordMoment {
        /// What.
        kind: MomentKind,
        /// Room time, ms.
        at: f64,
    },
}

/// Why there is a new timeline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// The set was started.
    Started,
    /// The clinician changed the rate.
    Rate,
    /// The clinician extended the set.
    Extended,
    /// The clinician asked for the end at the next extreme.
    End,
    /// The desk's page found that nothing comes of the client: it comes to rest.
    Eased(Ending),
    /// It was cut off.
    Stopped(Ending),
}

/// Something that happened beside the sets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MomentKind {
    /// The clinician can see and hear the client.
    Sight,
    /// The clinician cannot see the client.
    CannotSee,
    /// No picture came from the client, which the desk's page found by itself.
    Unseen,
    /// No sound came from the client, likewise.
    Unheard,
    /// Sets come to rest by themselves when nothing comes of the client, or do not, for this reason.
    Watched(Option<Unwatched>),
    /// A second desk took control.
    ControlTaken,
    /// The stage was no longer heard.
    StageLost,
    /// The stage was heard again.
    StageBack,
    /// The desk in control was no longer heard.
    DeskLost,
    /// A desk in control was heard again.
    DeskBack,
    /// The client tapped Ready when it was needed.
    ClientReady,
    /// The client stopped.
    ClientStop,
    /// The client has said that they need longer.
    ClientLonger,
    /// The client left by their own press of Leave.
    ClientLeft,
    /// The client's page stopped by itself.
    Interrupted(Interruption),
}

/// Why a socket is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// It broke the rules of the wire, as the words say. They hold no data of a person.
    Breach(&'static str),
    /// A newer socket of the same seat took its place.
    Replaced,
    /// The page speaks another version of the wire.
    Outdated,
    /// Nothing was heard for too long.
    Silent,
}

impl Why {
    /// The close code: RFC 6455 has 1008 for a breach of policy and 4000 to 4999 for private use, and
    /// its registry at IANA 1013 for "try again later": a page that slept has done nothing wrong.
    pub fn code(self) -> u16 {
        match self {
            Why::Breach(_) => 1008,
            Why::Replaced => 4001,
            Why::Outdated => 4002,
            Why::Silent => 1013,
        }
    }

    /// For the close frame and the log.
    pub fn reason(self) -> &'static str {
        match self {
            Why::Breach(words) => words,
            Why::Replaced => "opened elsewhere",
            Why::Outdated => "reload this page",
            Why::Silent => "nothing was heard",
        }
    }
}
