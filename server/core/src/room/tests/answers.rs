//! Every order has its answer, whatever the state: a desk shows an order as pending until it comes.

use super::play::*;
use crate::room::{Effect, Event, RECORD_WAIT_MS, Start};
use crate::safety::default_plan;
use crate::wire::*;

fn orders() -> Vec<Order> {
    let plan = Plan { rate: 1.1, ..default_plan() };
    let wide = Plan { width: 39.0, ..default_plan() };
    vec![
        Order::TakeControl,
        Order::Sight,
        Order::CannotSee,
        Order::Start,
        Order::Stop,
        Order::End,
        Order::Extend,
        Order::AskSides,
        Order::Show { steadying: Some(Steadying::Orient) },
        Order::Show { steadying: None },
        Order::Ask { pad: Some(Pad { scale: Scale::Voc, moment: Moment::Installation }) },
        Order::Ask { pad: None },
        Order::Plan { plan },
        Order::Plan { plan: wide },
    ]
}

fn with_seat(seat: SeatState, stage: bool) -> Play {
    let mut play = Play::new(Start::first(3));
    play.join_desk(DESK);
    if stage {
        play.join_stage(STAGE);
    }
    play.seat(seat);
    play.run(2_000.0);
    play
}

fn then(mut play: Play, change: impl FnOnce(&mut Play)) -> Play {
    change(&mut play);
    play
}

/// A room in each state, with a second desk that watches.
fn in_every_state() -> Vec<(RoomState, Play)> {
    let mut rooms = vec![
        (RoomState::Waiting, with_seat(SeatState::Empty, false)),
        (RoomState::AtTheDoor, with_seat(SeatState::Waiting, true)),
        (RoomState::Left, with_seat(SeatState::Left, false)),
        (RoomState::Hold, Play::admitted()),
        (RoomState::Ready, Play::ready()),
        (
            RoomState::Starting,
            then(Play::ready(), |play| {
                play.recording = false;
                play.order(Order::Start);
            }),
        ),
        (RoomState::Starting, then(Play::ready(), |play| drop(play.order(Order::Start)))),
        (RoomState::Running, Play::running(3_000.0)),
        (RoomState::Easing, then(Play::running(3_000.0), |play| drop(play.order(Order::End)))),
        (RoomState::Easing, Play::running(25_000.0)),
        (RoomState::Stopped, then(Play::running(3_000.0), |play| drop(play.order(Order::Stop)))),
        (RoomState::StoppedByClient, then(Play::running(3_000.0), |play| drop(play.stage_says(FromStage::Stop)))),
        (RoomState::LinkLost, then(Play::running(3_000.0), |play| drop(play.send(Event::StageLeft { stage: STAGE })))),
        (RoomState::Closed, then(Play::running(3_000.0), |play| drop(play.close(None)))),
    ];
    for (state, play) in &mut rooms {
        play.join_desk(OTHER_DESK);
        assert_eq!(play.room.state(), *state);
    }
    rooms
}

#[test]
fn every_order_in_every_state_is_answered_once() {
    for desk in [DESK, OTHER_DESK] {
        for order in orders() {
            for epoch in [3, 2] {
                for (state, mut play) in in_every_state() {
                    let from = play.log.len();
                    let said = FromDesk::Order { epoch, id: 900, order: order.clone() };
                    for _ in 0..2 {
                        play.send(Event::DeskSaid { desk, said: said.clone() });
                    }
                    play.run(RECORD_WAIT_MS + 1.0);
                    let is_answer = |effect: &Effect| matches!(effect, Effect::ToDesk(to, ToDesk::Answer { id: 900, .. }) if *to == desk);
                    let answers = play.log[from..].iter().filter(|(_, effect)| is_answer(effect)).count();
                    // The same order again has its answer again; a start that came twice has one, when it is in the record.
                    assert!((1..=2).contains(&answers), "{order:?} in {state:?}, epoch {epoch}: {answers} answers");
                }
            }
        }
    }
}

#[test]
fn a_stop_is_carried_out_in_every_state_but_the_last() {
    for (state, mut play) in in_every_state() {
        let refused = play.order(Order::Stop);
        assert_eq!(refused, (state == RoomState::Closed).then_some(Refusal::WrongState), "{state:?}");
    }
}

#[test]
fn an_order_of_long_ago_is_answered_though_nobody_knows_how() {
    let mut play = Play::ready();
    for _ in 0..70 {
        play.order(Order::Stop);
        play.run(20.0);
    }
    let said = FromDesk::Order { epoch: 3, id: 1, order: Order::Start };
    let effects = play.send(Event::DeskSaid { desk: DESK, said });
    assert_eq!(effects, [Effect::ToDesk(DESK, ToDesk::Answer { id: 1, refused: Some(Refusal::WrongState) })]);
}
