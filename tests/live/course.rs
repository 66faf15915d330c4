//! A whole session over two sockets, and the same in the record.

use std::time::Duration;

use leeward::clients::{Asked, Cautions};
use leeward::sessions::{self, Closing, ClosingKind};
use leeward::store::seal::Private;
use leeward_core::wire::{Channels, Ending, Evidence, Fact, FromStage, Order, Plan, Refusal, RoomState, SeatState, Timeline, ToStage};
use sqlx::PgPool;
use tokio::time::sleep;

use crate::page::upgrade;
use crate::scene::Scene;

async fn texts(pool: &PgPool, query: &'static str) -> Vec<String> {
    sqlx::query_scalar(query).fetch_all(pool).await.unwrap()
}

/// The timeline of one order of a set, as it is in the record.
async fn ordered(pool: &PgPool, number: i32, seq: i32) -> Timeline {
    let query = "SELECT o.timeline FROM set_order o JOIN stimulus_set s ON s.id = o.set_id WHERE s.number = $1 AND o.seq = $2";
    let value: serde_json::Value = sqlx::query_scalar(query).bind(number).bind(seq).fetch_one(pool).await.unwrap();
    serde_json::from_value(value).unwrap()
}

/// Waits until `query`, a count, gives `wanted`: what the room writes down it writes beside what it does.
pub async fn counted(pool: &PgPool, query: &'static str, wanted: i64) {
    let mut last = -1;
    for _ in 0..400 {
        last = sqlx::query_scalar(query).fetch_one(pool).await.unwrap();
        if last == wanted {
            return;
        }
        sleep(Duration::from_millis(10)).await;
    }
    panic!("{query}: {last}, not {wanted}");
}

#[tokio::test]
async fn a_session_from_the_link_to_the_second_set_is_in_the_record_as_it_was() {
    let mut scene = Scene::new().await;
    let mut desk = scene.desk().await;
    let epoch = desk.view("an empty seat", |view| view.seat == SeatState::Empty && view.in_control).await.epoch;
    assert_eq!(epoch, 1);
    scene.join().await;
    desk.view("somebody waits", |view| view.seat == SeatState::Waiting).await;
    let mut stage = scene.stage().await;
    stage.view("waiting", |view| view.state == RoomState::AtTheDoor && view.set.is_none()).await;
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::WrongState), "before admission");

    scene.admit().await;
    stage.view("admitted", |view| view.state == RoomState::Hold).await;
    let view = desk.view("admitted", |view| view.seat == SeatState::Admitted && view.stage_here).await;
    assert!(view.needs.sight);
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::Needs), "before the clinician sees the client");
    assert_eq!(desk.order(epoch, Order::Sight).await, None);

    let first = Scene::start(&mut desk, &mut stage, epoch).await;
    let plan = Plan { rate: 1.2, ..view.plan };
    sleep(Duration::from_millis(1_500)).await;
    assert_eq!(desk.order(epoch, Order::Plan { plan }).await, None, "a live change of rate");
    let changed = stage.view("the new rate", |view| view.set.as_ref().is_some_and(|set| set.plan.rate == 1.2)).await;
    let facts = vec![
        Evidence { set: first.clone(), seq: 0, at: 4_000.5, fact: Fact::Shown { width: 17.9 } },
        Evidence { set: first.clone(), seq: 1, at: 5_000.5, fact: Fact::Second { phase: 0.5, frames: 60, longest_gap: 17.25 } },
    ];
    stage.send(&FromStage::Evidence { facts: facts.clone() });
    let kept = |seq| {
        let first = first.clone();
        move |message| matches!(&message, ToStage::Kept { set, seq: kept } if *set == first && *kept == seq).then_some(())
    };
    stage.until("kept", kept(1)).await;
    stage.send(&FromStage::Evidence { facts });
    stage.until("kept, once more", kept(1)).await;

    stage.send(&FromStage::Stop);
    let stopped = desk.view("the client's stop", |view| view.state == RoomState::StoppedByClient).await;
    assert_eq!(stopped.set.as_ref().unwrap().ended, Some(Ending::StoppedByClient));
    stage.view("that the desk has drawn it", |view| view.desk_knows).await;
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::Needs), "after the client's stop");
    stage.send(&FromStage::Ready);
    desk.view("ready again", |view| view.state == RoomState::Ready).await;
    let second = Scene::start(&mut desk, &mut stage, epoch).await;
    assert_eq!(desk.order(epoch, Order::Stop).await, None);
    let last_view = desk.view("the clinician's stop", |view| view.set.as_ref().is_some_and(|set| set.ended.is_some())).await;

    let pool = &scene.house.database.superuser;
    counted(pool, "SELECT count(*) FROM set_ending", 2).await;
    assert_eq!(texts(pool, "SELECT id::text FROM stimulus_set ORDER BY number").await, [first.clone(), second.clone()]);
    assert_eq!(
        texts(pool, "SELECT s.number || ' ' || o.cause FROM set_order o JOIN stimulus_set s ON s.id = o.set_id ORDER BY s.number, o.seq")
            .await,
        ["1 started", "1 rate", "1 stopped", "2 started", "2 stopped"]
    );
    assert_eq!(
        texts(pool, "SELECT ending FROM set_ending e JOIN stimulus_set s ON s.id = e.set_id ORDER BY s.number").await,
        ["stopped_by_client", "stopped_by_clinician"]
    );
    assert_eq!(
        texts(
            pool,
            "SELECT concat_ws(' ', set_id, seq, kind, at_ms, phase, width, frames, longest_gap, ending) FROM set_evidence ORDER BY seq"
        )
        .await,
        [format!("{first} 0 shown 4000.5 17.9"), format!("{first} 1 second 5000.5 0.5 60 17.25")],
        "evidence sent twice is kept once"
    );
    assert_eq!(ordered(pool, 1, 1).await, changed.set.unwrap().timeline, "the change as both ends had it");
    assert_eq!(ordered(pool, 2, 1).await, last_view.set.unwrap().timeline, "the stop as the desk saw it");
    assert_eq!(texts(pool, "SELECT kind FROM session_moment ORDER BY id").await, ["admitted", "sight", "client_stop", "client_ready"]);
}

#[tokio::test]
async fn cautions_that_were_not_asked_lock_the_eyes_until_the_record_says_otherwise() {
    let mut scene = Scene::with(Cautions { seizures: Asked::NotAsked, eye_condition: Asked::No }).await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let held = desk.view("what is missing", |view| view.refused == Some(Refusal::EyesLocked)).await;
    assert_eq!((held.state, desk.order(epoch, Order::Start).await), (RoomState::Hold, Some(Refusal::EyesLocked)));
    // Nobody tells the room: it reads the record by itself.
    answer_seizures(&scene, "no").await;
    desk.view("eyes free", |view| !view.eyes_locked).await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    answer_seizures(&scene, "yes").await;
    let view = desk.view("the set ended", |view| view.set.as_ref().is_some_and(|own| own.id == set && own.ended.is_some())).await;
    assert!(view.eyes_locked);
    let plan = Plan { channels: Channels { eyes: false, ears: true, hands: false }, ..view.plan };
    assert_eq!(desk.order(epoch, Order::Plan { plan }).await, None, "the ears stay free");
}

async fn answer_seizures(scene: &Scene, answer: &str) {
    sqlx::query("UPDATE client SET seizures = $1").bind(answer).execute(&scene.house.database.superuser).await.unwrap();
}

#[tokio::test]
async fn a_lost_desk_ends_the_set() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    drop(desk);
    let view = stage.view("the end", |view| view.set.as_ref().is_some_and(|own| own.id == set && own.ended.is_some())).await;
    assert_eq!(view.set.unwrap().ended, Some(Ending::LinkLost));
    assert!(view.needs.sight, "the clinician must see the client again before the next set");
}

#[tokio::test]
async fn closing_the_session_stops_the_set_tells_both_and_ends_the_room() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    let closing = Closing {
        over: None,
        kind: ClosingKind::Incomplete,
        because: None,
        unsteady: false,
        resource: Private::default(),
        leaving_state: Private::default(),
        companion: Private::new("nobody"),
        next_contact: Private::new("on Thursday"),
        client_words: Private::new("We will talk on Thursday."),
        note: Private::default(),
        sud: None,
    };
    sessions::close(&scene.house.app, &scene.clinician.subject(), scene.session, closing).await.unwrap();
    let view = stage.view("the end", |view| view.state == RoomState::Closed).await;
    assert_eq!(view.closing_words.as_deref(), Some("We will talk on Thursday."));
    assert_eq!(view.set.unwrap().ended, Some(Ending::StoppedByClinician));
    desk.view("the end", |view| view.state == RoomState::Closed).await;
    assert_eq!((desk.closed().await, stage.closed().await), (Some(4000), Some(4000)));
    counted(&scene.house.database.superuser, "SELECT count(*) FROM set_ending WHERE ending = 'stopped_by_clinician'", 1).await;
    assert_eq!(scene.client.get("/stage").await.status, 401);
    assert_eq!(scene.stage().await.closed().await, Some(4000), "a page that was away learns it too");
    assert_eq!(scene.desk().await.closed().await, Some(4000), "and so does a desk");
    scene.house.clock.advance(chrono::Duration::minutes(16));
    assert_eq!(
        upgrade(&scene.client, &scene.house.origin, "/stage/socket", Some(&scene.house.origin)).await.err(),
        Some(401),
        "not for ever"
    );
    assert_eq!(scene.desk().await.closed().await, Some(4000), "a desk is told whenever it comes");
}

#[tokio::test]
async fn a_second_desk_is_view_only_until_it_takes_control() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let mut second = scene.desk().await;
    assert!(!second.view("its view", |_| true).await.in_control);
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    assert_eq!(second.order(epoch, Order::End).await, Some(Refusal::NotInControl));
    assert_eq!(second.order(epoch, Order::TakeControl).await, None);
    let view = second.view("control", |view| view.in_control).await;
    assert_eq!(view.set.unwrap().ended, None, "taking control ends no set");
    assert_eq!(second.order(epoch, Order::Stop).await, None);
    stage.view("the stop", |view| view.set.as_ref().is_some_and(|own| own.id == set && own.ended.is_some())).await;
}
