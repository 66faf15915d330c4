//! The database hangs, or somebody holds a lock: pages say so in time, and what runs stays in hand.

use std::time::{Duration, Instant};

use futures_util::future::join_all;
use leeward::app::route_list;
use leeward::clients::{Asked, Cautions};
use leeward_core::wire::{Order, Plan, Refusal, RoomState};
use leeward_tests::{Browser, House};
use sqlx::Executor;
use tokio::time::sleep;

use crate::figures::{figure, seconds, size};
use crate::live_scene::Scene;
use crate::page::Desk;

const NO: Cautions = Cautions { seizures: Asked::No, eye_condition: Asked::No };

/// Every page that can be read, with the ids of this session or of nothing in its path.
fn pages(scene: &Scene) -> Vec<String> {
    let fill = |part: &str| match part {
        "{session}" => scene.session.to_string(),
        "{client}" => scene.client_id.to_string(),
        "{hash}" | "{name}" | "{role}" => "clinician".to_owned(),
        part if part.starts_with('{') => uuid::Uuid::nil().to_string(),
        part => part.to_owned(),
    };
    let reads = route_list().into_iter().filter(|route| route.method == "GET");
    reads.map(|route| route.path.split('/').map(fill).collect::<Vec<_>>().join("/")).collect()
}

/// All pages at once; how long the slowest took.
async fn slowest(scene: &Scene) -> Duration {
    let ask = |path: String| {
        let mut browser: Browser = scene.clinician.clone();
        async move {
            let began = Instant::now();
            let answer = browser.get(&path).await;
            assert!(answer.status < 500 || answer.status == 503, "{path}: {} {}", answer.status, answer.body);
            assert!(answer.status != 503 || path == "/readyz" || answer.body.contains("Try again in a moment"), "{path}: {}", answer.body);
            began.elapsed()
        }
    };
    join_all(pages(scene).into_iter().map(ask)).await.into_iter().max().unwrap()
}

async fn stays_alive(scene: &Scene) {
    let mut browser = scene.clinician.clone();
    let began = Instant::now();
    assert_eq!(browser.get("/livez").await.status, 200);
    let asset = leeward::platform::assets::Assets.url("desk.js");
    assert!(browser.get(&asset).await.status < 500);
    assert!(began.elapsed() < Duration::from_secs(1), "{:?}: neither asks the database", began.elapsed());
}

async fn timed(desk: &mut Desk, epoch: u32, order: Order) -> Duration {
    let began = Instant::now();
    assert_eq!(desk.order(epoch, order).await, None);
    began.elapsed()
}

/// What has to be true while the record does not answer, for `lasts`.
async fn goes_on(what: &str, scene: &mut Scene, desk: &mut Desk, epoch: u32, lasts: Duration) {
    let until = Instant::now() + lasts;
    let plan = leeward_core::safety::default_plan();
    let mut orders = Vec::new();
    for rate in [1.1, 1.2, 1.3, 1.4] {
        orders.push(timed(desk, epoch, Order::Plan { plan: Plan { rate, ..plan } }).await);
        sleep(Duration::from_millis(300)).await;
    }
    let began = Instant::now();
    desk.view("that the record waits", |view| view.record_waits).await;
    let told = began.elapsed() + Duration::from_millis(1_200);
    figure(&format!("{what}: the desk is told"), told < Duration::from_secs(6), &seconds(told), "before the next entry would fail, 6 s");
    orders.push(timed(desk, epoch, Order::Stop).await);
    let mut page = Duration::ZERO;
    loop {
        stays_alive(scene).await;
        page = page.max(slowest(scene).await);
        if Instant::now() > until {
            break;
        }
    }
    assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::NotSaved), "nothing starts without a record");
    figure(&format!("{what}: every page is answered"), page < Duration::from_secs(5), &seconds(page), "5 s");
    orders.sort_unstable();
    // The slowest of a few, on a machine that does other things too: the short form is no bench.
    let (slowest, limit) = (orders[orders.len() - 1], Duration::from_millis(size(50, 500)));
    figure(&format!("{what}: stop and rate"), slowest < limit, &seconds(slowest), &seconds(limit));
}

/// Once the record answers again, so does everything.
async fn comes_back(scene: &mut Scene, desk: &mut Desk, epoch: u32) {
    desk.view("that the record does not wait any more", |view| !view.record_waits).await;
    assert_eq!(scene.clinician.get(&format!("/sessions/{}", scene.session)).await.status, 200);
    assert_eq!(desk.order(epoch, Order::Start).await, None);
    desk.view("a running set", |view| view.state == RoomState::Running).await;
}

async fn running(house: House) -> (Scene, Desk, crate::page::Stage, u32) {
    let mut scene = Scene::inside(house, NO).await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    sleep(Duration::from_millis(1_500)).await;
    (scene, desk, stage, epoch)
}

#[tokio::test]
async fn a_database_that_hangs_holds_up_no_page_and_no_stop() {
    let (mut scene, mut desk, _stage, epoch) = running(House::build_behind_wire().await).await;
    scene.house.wire.as_ref().unwrap().hold(true);
    goes_on("database hung", &mut scene, &mut desk, epoch, Duration::from_secs(size(60, 5))).await;
    scene.house.wire.as_ref().unwrap().hold(false);
    comes_back(&mut scene, &mut desk, epoch).await;
}

#[tokio::test]
async fn a_lock_that_is_held_holds_up_no_page_and_no_stop() {
    let (mut scene, mut desk, _stage, epoch) = running(House::build_behind_wire().await).await;
    let pool = scene.house.database.superuser.clone();
    let mut lock = pool.begin().await.unwrap();
    lock.execute("LOCK TABLE session, set_order, stimulus_set, access.signin IN ACCESS EXCLUSIVE MODE").await.unwrap();
    goes_on("lock held", &mut scene, &mut desk, epoch, Duration::from_secs(size(30, 5))).await;
    lock.rollback().await.unwrap();
    comes_back(&mut scene, &mut desk, epoch).await;
}
