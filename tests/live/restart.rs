//! The portal dies in the middle of a set.

use leeward::clients::{Asked, Cautions};
use leeward_core::wire::{Ending, Evidence, Fact, FromDesk, FromStage, Order, Refusal, RoomState, SetView, Timeline};
use leeward_tests::House;

use crate::course::counted;
use crate::page::{Desk, Stage};
use crate::scene::Scene;

#[test]
fn a_crash_in_a_set_leaves_it_unknown_and_never_starts_it_again() {
    // The first portal has a runtime of its own: dropping it is the crash.
    let doomed = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    let test = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    let house = doomed.block_on(House::build());
    let (mut scene, mut desk, mut stage, epoch, shown) = test.block_on(async {
        let mut scene = Scene::inside(house, Cautions { seizures: Asked::No, eye_condition: Asked::No }).await;
        let (mut desk, mut stage, epoch) = scene.ready().await;
        let set = Scene::start(&mut desk, &mut stage, epoch).await;
        counted(&scene.house.database.superuser, "SELECT count(*) FROM set_order WHERE cause = 'started'", 1).await;
        let plan = leeward_core::safety::default_plan();
        let shown = SetView { id: set.clone(), number: 1, plan, timeline: Timeline::default(), ended: Some(Ending::StoppedByClinician) };
        (scene, desk, stage, epoch, shown)
    });
    doomed.shutdown_background();
    test.block_on(async {
        // The tasks of a runtime that ends go one after another, so a line may hear a last word or just break.
        desk.closed().await;
        stage.closed().await;
        let old_cookie = scene.house.app.origin.seat_cookie();
        let house = scene.house.restart().await;
        let clinician = house.sign_in(scene.clinician.member).await;
        let mut client = house.visitor();
        client.cookies.insert(house.app.origin.seat_cookie(), scene.client.cookies[&old_cookie].clone());
        (scene.clinician, scene.client, scene.house) = (clinician, client, house);
        stage = Stage::open(&scene.client, &scene.house.origin).await;
        desk = Desk::open(&scene.clinician, &scene.house.origin, scene.session).await;
        let view = desk.view("the room again", |view| view.stage_here && view.device.is_some()).await;
        assert_eq!(view.epoch, epoch + 1);
        assert!(view.set.is_none() && view.state == RoomState::Hold, "{view:?}");
        assert!(view.needs.sight && view.needs.client_ready, "both look and say ready anew: {view:?}");
        counted(
            &scene.house.database.superuser,
            "SELECT count(*) FROM set_outcome WHERE ending = 'unknown' AND NOT EXISTS (SELECT FROM set_ending)",
            1,
        )
        .await;
        // What the lost room had shown before it could write it, the desk hands back: twice, as on a bad line.
        for _ in 0..2 {
            desk.send(&FromDesk::HandBack { set: Box::new(shown.clone()) });
        }
        // Another desk had been away, and shows what was ordered before that: it is in the record already.
        let first: sqlx::types::Json<Timeline> = sqlx::query_scalar("SELECT timeline FROM set_order WHERE cause = 'started'")
            .fetch_one(&scene.house.database.superuser)
            .await
            .unwrap();
        let before = SetView { timeline: first.0, ended: None, ..shown.clone() };
        desk.send(&FromDesk::HandBack { set: Box::new(before) });
        let told = "SELECT count(*) FROM set_outcome WHERE ending = 'stopped_by_clinician'";
        counted(&scene.house.database.superuser, told, 1).await;
        counted(&scene.house.database.superuser, "SELECT count(*) FROM set_order WHERE cause = 'handed_back'", 1).await;
        // The screen was cut off by the new room's first view and does not know why: that is no word against the desk's.
        let fact = Fact::Rested { phase: 0.5, ending: Ending::Unknown };
        stage.send(&FromStage::Evidence { facts: vec![Evidence { set: shown.id.clone(), seq: 0, at: 900.0, fact }] });
        counted(&scene.house.database.superuser, "SELECT count(*) FROM set_evidence WHERE kind = 'rested' AND ending = 'unknown'", 1).await;
        counted(&scene.house.database.superuser, told, 1).await;
        assert_eq!(desk.order(epoch, Order::Start).await, Some(Refusal::OldEpoch), "an order from before");
        assert_eq!(desk.order(epoch + 1, Order::Start).await, Some(Refusal::Needs));
        stage.send(&FromStage::Ready);
        assert_eq!(desk.order(epoch + 1, Order::Sight).await, None);
        desk.view("nothing needed", |view| !view.needs.sight && !view.needs.client_ready).await;
        let next = Scene::start(&mut desk, &mut stage, epoch + 1).await;
        assert_ne!(next, shown.id);
        let last: Vec<String> =
            sqlx::query_scalar("SELECT cause FROM set_order o JOIN stimulus_set s ON s.id = o.set_id WHERE s.number = 1 ORDER BY o.seq")
                .fetch_all(&scene.house.database.superuser)
                .await
                .unwrap();
        assert_eq!(last, ["started", "handed_back"], "once, and nothing after it");
        let numbers: Vec<i32> =
            sqlx::query_scalar("SELECT number FROM stimulus_set ORDER BY number").fetch_all(&scene.house.database.superuser).await.unwrap();
        assert_eq!(numbers, [1, 2]);
    });
}
