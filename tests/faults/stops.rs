//! The portal is told to stop in the middle of sets, while the database hangs: all come to rest at once.

use std::time::{Duration, Instant};

use futures_util::future::join_all;
use leeward::clients::{Asked, Cautions};
use leeward_core::wire::ToStage;
use leeward_tests::{House, Served};

use crate::figures::{figure, seconds, size};
use crate::live_scene::Scene;
use crate::page::{Desk, Stage, upgrade};

const NO: Cautions = Cautions { seizures: Asked::No, eye_condition: Asked::No };

/// The stage has been told that its set is over, or to come back: it stops by itself then.
fn at_rest(stage: &Stage) -> bool {
    let ended = |message: &ToStage| matches!(message, ToStage::View(view) if view.set.as_ref().is_some_and(|set| set.ended.is_some()));
    stage.all().iter().any(ended)
}

async fn rest(stage: &Stage, began: Instant) -> Duration {
    while !at_rest(stage) && began.elapsed() < Duration::from_secs(20) {
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
    began.elapsed()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn told_to_stop_while_the_database_hangs_all_sets_rest_at_once_and_the_process_goes() {
    let mut house = House::build_behind_wire().await;
    let mut served = Served::of(&mut house, env!("CARGO_BIN_EXE_leeward-served"));
    let mut sets: Vec<(Desk, Stage)> = Vec::new();
    for number in 0..size(20, 5) {
        // From one address ten may join at once, and one every three seconds after that.
        if number >= 9 {
            tokio::time::sleep(Duration::from_secs(3)).await;
        }
        let mut scene = Scene::inside(house, NO).await;
        served.welcomes(&mut scene.clinician);
        let (mut desk, mut stage, epoch) = scene.ready().await;
        Scene::start(&mut desk, &mut stage, epoch).await;
        sets.push((desk, stage));
        house = scene.house;
    }
    let mut opening = Scene::inside(house, NO).await;
    served.welcomes(&mut opening.clinician);
    opening.house.wire.as_ref().unwrap().hold(true);
    // One more room hangs in opening.
    let (path, origin, clinician) = (opening.path("desk/socket"), served.origin.clone(), opening.clinician.clone());
    let hangs = tokio::spawn(async move { upgrade(&clinician, &origin, &path, Some(&origin)).await.err() });
    tokio::time::sleep(Duration::from_millis(300)).await;

    let began = Instant::now();
    served.terminate();
    let rests = join_all(sets.iter().map(|(_, stage)| rest(stage, began))).await;
    let last = rests.into_iter().max().unwrap();
    figure("SIGTERM, database hung: all sets at rest", last < Duration::from_secs(3), &seconds(last), "3 s");
    for (desk, stage) in &sets {
        assert_eq!((desk.closed().await, stage.closed().await), (Some(1012), Some(1012)), "both pages come back by themselves");
    }
    let status = served.ended(Duration::from_secs(20)).await;
    let gone = began.elapsed();
    figure("SIGTERM, database hung: the process has gone", status.is_some() && gone < Duration::from_secs(15), &seconds(gone), "15 s");
    assert!(status.unwrap().success());
    hangs.abort();
}
