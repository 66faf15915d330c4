//! What pages of the version before are told of each state, and that they still lead a session.

use super::play::*;
use crate::room::Start;
use crate::wire::*;

/// A room with pages of version 1, everybody admitted.
fn with_old_pages() -> Play {
    let mut play = Play::new(Start::first(3));
    play.wire = 1;
    play.join_desk(DESK);
    play.join_stage(STAGE);
    play.seat(SeatState::Admitted);
    play.run(2_000.0);
    play
}

#[test]
fn each_new_state_is_told_as_one_that_promises_no_more() {
    let mut play = with_old_pages();
    assert_eq!(
        (play.room.state(), play.desk_view().state, play.stage_view().state),
        (RoomState::Hold, RoomState::Stopped, RoomState::Stopped)
    );
    assert!(play.desk_view().needs.sight);
    for (seat, state, told) in
        [(SeatState::Waiting, RoomState::AtTheDoor, SeatState::Waiting), (SeatState::Left, RoomState::Left, SeatState::Empty)]
    {
        play.seat(seat);
        assert_eq!((play.room.state(), play.desk_view().state, play.stage_view().state), (state, RoomState::Waiting, RoomState::Waiting));
        assert_eq!(play.desk_view().seat, told);
    }
}

/// A stage of version 1 shows a set while the word is RUNNING; a desk of version 1 takes the word for what the client sees.
#[test]
fn a_set_runs_with_old_pages_at_both_ends() {
    let mut play = with_old_pages();
    play.order(Order::Sight);
    assert_eq!(play.desk_view().state, RoomState::Ready);
    assert_eq!(play.order(Order::Start), None);
    assert_eq!((play.desk_view().state, play.stage_view().state), (RoomState::Starting, RoomState::Running));
    play.run(3_000.0);
    assert_eq!((play.desk_view().state, play.stage_view().state), (RoomState::Running, RoomState::Running));
    play.run(30_000.0);
    assert_eq!((play.ended(), play.desk_view().state), (Some(Ending::Done), RoomState::Ready));
}

/// While it is only being written down there is nothing to show.
#[test]
fn an_old_stage_is_not_told_that_a_set_runs_before_it_is_in_the_record() {
    let mut play = with_old_pages();
    play.order(Order::Sight);
    play.order(Order::Start);
    play.run(3_000.0);
    play.order(Order::Stop);
    play.run(2_000.0);
    play.recording = false;
    assert_eq!(play.order(Order::Start), None);
    assert_eq!(play.stage_view().state, RoomState::Starting);
}
