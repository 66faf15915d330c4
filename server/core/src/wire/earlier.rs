//! What pages of the version before this one are told, in words that they know and that promise no more.
//!
//! Version 1 had READY for all that stands still, RUNNING from the moment a set was in the record, and no word for a client at
//! the door or one who has left. Fields that a page does not know it passes over.

use super::{DeskView, RoomState, SeatState, StageView};

/// The last version without the words of this one.
const BEFORE_HOLD: u32 = 1;

impl RoomState {
    fn before_hold(self) -> Self {
        match self {
            RoomState::AtTheDoor | RoomState::Left => RoomState::Waiting,
            RoomState::Hold => RoomState::Stopped,
            known => known,
        }
    }
}

impl DeskView {
    /// The same for a page that speaks `wire`.
    pub(crate) fn for_page(self, wire: u32) -> Self {
        if wire > BEFORE_HOLD {
            return self;
        }
        let seat = if self.seat == SeatState::Left { SeatState::Empty } else { self.seat };
        DeskView { state: self.state.before_hold(), seat, ..self }
    }
}

impl StageView {
    /// The same for a page that speaks `wire`.
    pub(crate) fn for_page(self, wire: u32) -> Self {
        if wire > BEFORE_HOLD {
            return self;
        }
        // Such a page shows a set only while the word is RUNNING.
        let runs = self.state == RoomState::Starting && self.set.as_ref().is_some_and(|set| set.ended.is_none());
        let state = if runs { RoomState::Running } else { self.state.before_hold() };
        StageView { state, ..self }
    }
}
