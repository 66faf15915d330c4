//! The database is slow or gone, another server takes the room, the portal stops.

use std::time::{Duration, Instant};

use leeward_core::wire::{Order, Plan, Refusal, RoomState};
use sqlx::Executor;

use crate::course::counted;
use crate::scene::Scene;

#[tokio::test]
async fn rate_and_stop_never_wait_for_the_database_and_nothing_is_lost() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let pool = scene.house.database.superuser.clone();
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    counted(&pool, "SELECT count(*) FROM set_order", 1).await;
    let mut lock = pool.begin().await.unwrap();
    lock.execute("LOCK TABLE set_order IN ACCESS EXCLUSIVE MODE").await.unwrap();
    // Until the dot moves, there is nothing whose rate could change.
    tokio::time::sleep(Duration::from_millis(1_500)).await;
    let plan = leeward_core::safety::default_plan();
    let began = Instant::now();
    assert_eq!(desk.order(epoch, Order::Plan { plan: Plan { rate: 1.3, ..plan } }).await, None);
    assert_eq!(desk.order(epoch, Order::Stop).await, None);
    stage.view("the stop", |view| view.set.as_ref().is_some_and(|own| own.id == set && own.ended.is_some())).await;
    assert!(began.elapsed() < Duration::from_secs(1), "{:?}", began.elapsed());
    // What waits is broken off, as when the database restarts.
    let killed: i64 = sqlx::query_scalar(
        "SELECT count(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE usename = 'leeward_app' AND datname = current_database()",
    )
    .fetch_one(&mut *lock)
    .await
    .unwrap();
    assert!(killed > 0);
    tokio::time::sleep(Duration::from_millis(300)).await;
    lock.rollback().await.unwrap();
    counted(&pool, "SELECT count(*) FROM set_ending WHERE ending = 'stopped_by_clinician'", 1).await;
    let causes: Vec<String> = sqlx::query_scalar("SELECT cause FROM set_order ORDER BY seq").fetch_all(&pool).await.unwrap();
    assert_eq!(causes, ["started", "rate", "stopped"]);
}

#[tokio::test]
async fn a_set_that_cannot_be_written_does_not_start() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let pool = scene.house.database.superuser.clone();
    pool.execute("ALTER TABLE stimulus_set ADD CONSTRAINT full_disk CHECK (false)").await.unwrap();
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::NotSaved));
    pool.execute("ALTER TABLE stimulus_set DROP CONSTRAINT full_disk").await.unwrap();
    assert!(desk.view("nothing runs", |view| view.state == RoomState::Ready).await.set.is_none());
    Scene::start(&mut desk, &mut stage, epoch).await;
    counted(&pool, "SELECT count(*) FROM stimulus_set", 1).await;
}

#[tokio::test]
async fn a_room_that_another_server_has_taken_starts_nothing() {
    let mut scene = Scene::new().await;
    let (mut desk, stage, epoch) = scene.ready().await;
    let pool = scene.house.database.superuser.clone();
    pool.execute("UPDATE session SET room_epoch = room_epoch + 1, room_holder = gen_random_uuid()").await.unwrap();
    desk.order_only(epoch, Order::Start);
    assert_eq!((desk.closed().await, stage.closed().await), (Some(1012), Some(1012)));
    counted(&pool, "SELECT count(*) FROM stimulus_set", 0).await;
    assert_eq!(scene.desk_again().await.1.epoch, epoch + 2);
}

#[tokio::test]
async fn an_orderly_stop_ends_the_set_writes_it_down_and_calls_everybody_back() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    scene.house.app.rooms().shut().await;
    assert_eq!((desk.closed().await, stage.closed().await), (Some(1012), Some(1012)));
    counted(&scene.house.database.superuser, "SELECT count(*) FROM set_ending WHERE ending = 'link_lost'", 1).await;
    let (_desk, view) = scene.desk_again().await;
    assert_eq!((view.epoch, view.set), (epoch + 1, None));
}

#[tokio::test]
async fn many_doors_at_once_lead_into_one_room() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let (a, b, c, d) = tokio::join!(scene.desk(), scene.desk(), scene.stage(), scene.desk());
    for mut desk in [a, b, d] {
        assert_eq!(desk.view("its view", |_| true).await.epoch, 1);
    }
    assert!(c.is_open());
    let epoch: i32 = sqlx::query_scalar("SELECT room_epoch FROM session").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(epoch, 1);
}

/// Rows that a room can no longer write are not passed over in silence, and neither is the clock that is to blame.
#[tokio::test]
async fn a_clock_set_forward_past_the_rooms_right_to_write_is_said_and_nothing_starts() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    scene.house.clock.advance(chrono::Duration::hours(25));
    let told = |view: &leeward_core::wire::DeskView| view.record_refuses && view.clock_set > 89_000.0;
    let view = desk.view("the record refuses, and why", told).await;
    assert!(view.set.unwrap().ended.is_some(), "nothing moves without a record");
    assert_ne!(view.state, RoomState::Ready);
    scene.house.clock.advance(chrono::Duration::hours(-25));
    let back = desk.view("the record again", |view| !view.record_refuses && view.clock_set.abs() < 60.0).await;
    assert_eq!(back.epoch, epoch, "the same room: its right was only covered");
    counted(&scene.house.database.superuser, "SELECT count(*) FROM set_ending WHERE ending = 'stopped_by_clinician'", 1).await;
}

/// Who is at the door is told by states, not by comparing times.
#[tokio::test]
async fn a_clock_set_back_leaves_an_admitted_client_admitted() {
    let mut scene = Scene::new().await;
    scene.join().await;
    scene.house.clock.advance(chrono::Duration::minutes(-10));
    scene.admit().await;
    let mut desk = scene.desk().await;
    desk.view("the client is in", |view| view.seat == leeward_core::wire::SeatState::Admitted).await;
}
