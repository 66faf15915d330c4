//! What both ends read, of states that come and go around a set.

use leeward_core::wire::{FromDesk, FromStage, Order, Refusal, RoomState, SeatState, ToDesk, WIRE_VERSION};

use crate::course::counted;
use crate::page::Desk;
use crate::scene::Scene;

#[tokio::test]
async fn hold_says_what_is_missing_and_ready_is_what_the_key_does() {
    let mut scene = Scene::new().await;
    let mut desk = scene.desk().await;
    scene.join().await;
    let stage = scene.stage().await;
    let epoch = desk.view("somebody at the door", |view| view.state == RoomState::AtTheDoor).await.epoch;
    scene.admit().await;
    let held = desk.view("what is missing", |view| view.state == RoomState::Hold && !view.needs.stage && !view.needs.desk).await;
    assert!(held.needs.sight);
    assert_eq!((held.refused, desk.order(epoch, Order::Start).await), (Some(Refusal::Needs), Some(Refusal::Needs)));
    assert_eq!(desk.order(epoch, Order::Sight).await, None);
    desk.view("ready", |view| view.state == RoomState::Ready && view.refused.is_none()).await;
    let mut second = scene.desk().await;
    let watching = second.view("a desk that watches", |view| !view.in_control).await;
    assert_eq!((watching.state, watching.refused), (RoomState::Hold, Some(Refusal::NotInControl)));
    desk.order_only(epoch, Order::Start);
    desk.view("in the record, and the page has still to say that it moves", |view| view.state == RoomState::Starting && view.set.is_some())
        .await;
    desk.view("the page has said so", |view| view.state == RoomState::Running).await;
    assert!(stage.is_open());
}

#[tokio::test]
async fn a_stop_at_the_door_is_heard_and_in_the_record() {
    let mut scene = Scene::new().await;
    let mut desk = scene.desk().await;
    scene.join().await;
    let mut stage = scene.stage().await;
    stage.view("at the door", |view| view.state == RoomState::AtTheDoor).await;
    stage.send(&FromStage::Stop);
    desk.view("the client's stop", |view| view.seat == SeatState::Waiting && view.needs.client_ready).await;
    stage.view("that the desk has drawn it", |view| view.desk_knows).await;
    counted(&scene.house.database.superuser, "SELECT count(*) FROM session_moment WHERE kind = 'client_stop'", 1).await;
    scene.admit().await;
    desk.view("stopped by the client", |view| view.state == RoomState::StoppedByClient).await;
    stage.send(&FromStage::Ready);
    desk.view("ready said", |view| !view.needs.client_ready).await;
}

#[tokio::test]
async fn every_order_before_admission_has_its_answer() {
    let mut scene = Scene::new().await;
    let mut desk = scene.desk().await;
    let epoch = desk.view("an empty seat", |view| view.state == RoomState::Waiting).await.epoch;
    for joined in [false, true] {
        if joined {
            scene.join().await;
            desk.view("somebody at the door", |view| view.state == RoomState::AtTheDoor).await;
        }
        for order in [Order::Start, Order::End, Order::Extend, Order::Sight, Order::CannotSee, Order::AskSides] {
            assert_eq!(desk.order(epoch, order).await, Some(Refusal::WrongState));
        }
        assert_eq!(desk.order(epoch, Order::Stop).await, None);
    }
}

/// A desk of the version before, in a room of today: it reads no word that it does not know.
#[tokio::test]
async fn a_page_of_the_version_before_reads_words_that_it_knows() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let mut old = Desk::silent(&scene.clinician, &scene.house.origin, &scene.path("desk/socket")).await;
    old.send(&FromDesk::Hello { wire: WIRE_VERSION - 1 });
    old.view("waiting", |view| view.state == RoomState::Waiting && view.seat == SeatState::Waiting).await;
    scene.admit().await;
    let mut stage = scene.stage().await;
    let epoch = old.view("held", |view| view.state == RoomState::Stopped && view.stage_here).await.epoch;
    assert_eq!(old.order(epoch, Order::Sight).await, None);
    Scene::start(&mut old, &mut stage, epoch).await;
    let known = ["waiting", "ready", "starting", "running", "easing", "stopped_by_client", "stopped", "link_lost", "closed"];
    for message in old.all() {
        if let ToDesk::View(view) = message {
            let word = serde_json::to_value(view.state).unwrap();
            assert!(known.contains(&word.as_str().unwrap()), "{word}");
        }
    }
}
