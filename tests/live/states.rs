//! What both ends read, of states that come and go around a set.

use leeward_core::course::Because;
use leeward_core::wire::{
    Answer, Ending, EntryValue, FromDesk, FromStage, Hold, Length, Matter, Order, Plan, Purpose, Refusal, RoomState, SeatState, ToDesk,
    WIRE_VERSION,
};

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

/// A desk of the version before knows nothing of the opening: it is told to reload, and nothing starts from it.
#[tokio::test]
async fn a_desk_of_the_version_before_is_told_to_reload() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let mut old = Desk::silent(&scene.clinician, &scene.house.origin, &scene.path("desk/socket")).await;
    old.send(&FromDesk::Hello { wire: WIRE_VERSION - 1 });
    old.until("reload", |message| matches!(message, ToDesk::Reload).then_some(())).await;
}

/// Federal telehealth guidance (clinical reference 1.1, source 3): location, privacy, risk and consent come before the work.
#[tokio::test]
async fn a_set_waits_for_the_opening_and_the_record_says_so() {
    let mut scene = Scene::new().await;
    scene.join().await;
    scene.admit_only().await;
    let stage = scene.stage().await;
    let mut desk = scene.desk().await;
    let epoch = desk.view("here", |view| view.stage_here && view.device.is_some()).await.epoch;
    assert_eq!(desk.order(epoch, Order::Sight).await, None);
    let held = desk.view("held", |view| view.refused == Some(Refusal::Held)).await;
    let matters: Vec<Matter> = held.holds.iter().map(|hold| hold.matter).collect();
    assert_eq!(
        matters,
        [Matter::Nearby, Matter::Contact, Matter::Risk, Matter::Fitness, Matter::Consent, Matter::LineDrop],
        "admission said the rest"
    );
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::Held));
    scene.open().await;
    desk.until_ready().await;
    scene.answers(Answer::Acute).await;
    desk.view("held for risk", |view| view.holds == [Hold { matter: Matter::Risk, against: true }]).await;
    scene.enter(EntryValue::Passed { matter: Matter::Risk, because: Because::Judgement }).await;
    desk.until_ready().await;
    scene.answers(Answer::NoReprocessing).await;
    desk.view("held for consent", |view| view.refused == Some(Refusal::Held)).await;
    scene.enter(EntryValue::Passed { matter: Matter::Consent, because: Because::Judgement }).await;
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::Held), "nobody goes past a consent that was withdrawn");
    let calm = Plan { purpose: Purpose::CalmPlace, length: Length::Cycles(6), rate: 0.5, ..held.plan };
    assert_eq!(desk.order(epoch, Order::Plan { plan: calm }).await, None);
    desk.until_ready().await;
    drop(stage);
    let sets: i64 = sqlx::query_scalar("SELECT count(*) FROM stimulus_set").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(sets, 0);
}

#[tokio::test]
async fn consent_withdrawn_in_mid_set_lets_it_ease() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    scene.answers(Answer::NoReprocessing).await;
    let over = desk.view("over", |view| view.set.as_ref().is_some_and(|set| set.ended.is_some())).await;
    assert_eq!(over.set.unwrap().ended, Some(Ending::EndedByClinician));
}
