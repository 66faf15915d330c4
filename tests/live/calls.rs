//! Picture and voice: who is told to connect, by which ways, and that nothing a page says about it costs the other its line.

use std::time::{Duration, Instant};

use leeward_core::wire::{Evidence, Fact, FromCaller, FromStage, Signal, ToCaller, ToDesk, ToStage, Unable};
use tokio::time::sleep;

use crate::page::Desk;
use crate::scene::Scene;

/// What the practice allows.
async fn allow_direct(scene: &Scene, direct: bool) {
    let done = sqlx::query("UPDATE practice SET direct_calls = $1").bind(direct).execute(&scene.house.database.superuser).await.unwrap();
    assert_eq!(done.rows_affected(), 1);
}

/// What the desk was told of the call, as soon as `wanted` is among it; it may have been told before.
async fn told<T>(desk: &Desk, what: &str, wanted: impl Fn(&ToCaller) -> Option<T>) -> T {
    let end = Instant::now() + Duration::from_secs(8);
    loop {
        let all = desk.all();
        let found = all.iter().find_map(|message| if let ToDesk::Call(said) = message { wanted(said) } else { None });
        if let Some(found) = found {
            return found;
        }
        assert!(Instant::now() < end, "never told: {what}");
        sleep(Duration::from_millis(20)).await;
    }
}

#[tokio::test]
async fn a_practice_that_takes_back_direct_connections_ends_them_in_rooms_that_are_open() {
    let mut scene = Scene::new().await;
    allow_direct(&scene, true).await;
    let (desk, stage, _) = scene.ready().await;
    let begin = |said: &ToCaller| if let ToCaller::Begin { ways, .. } = said { Some(ways.clone()) } else { None };
    let ways = told(&desk, "a call", begin).await;
    assert!(!ways.relay_only && ways.urls.is_empty(), "{ways:?}");
    allow_direct(&scene, false).await;
    // This house has no relay.
    told(&desk, "that there is no way", |said| (*said == ToCaller::Unable { why: Unable::NoRelay }).then_some(())).await;
    let overs = |all: &[ToDesk]| all.iter().filter(|message| **message == ToDesk::Call(ToCaller::Over)).count();
    assert_eq!(overs(&desk.all()), 2, "when it came, and when the call ended");
    let ended = stage.all().contains(&ToStage::Call(ToCaller::Over));
    assert!(ended && stage.is_open());
}

#[tokio::test]
async fn a_burst_of_signals_costs_neither_page_its_line_and_holds_up_no_set() {
    let mut scene = Scene::new().await;
    allow_direct(&scene, true).await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let call = told(&desk, "a call", |said| if let ToCaller::Begin { call, .. } = said { Some(*call) } else { None }).await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    for _ in 0..400 {
        let none_more = Signal::Candidate { candidate: String::new(), mid: None, line: None };
        stage.send(&FromStage::Call(FromCaller::Signal { call, signal: none_more }));
    }
    let too_much = ToStage::Call(ToCaller::Unable { why: Unable::TooMuch });
    stage.until("that it was too much", |message| (message == too_much).then_some(())).await;
    // What comes behind all of it is taken in: the burst is over.
    stage.send(&FromStage::Evidence { facts: vec![Evidence { set: set.clone(), seq: 0, at: 900.0, fact: Fact::Shown { width: 18.0 } }] });
    stage.until("that the fact is kept", |message| matches!(message, ToStage::Kept { .. }).then_some(())).await;
    let last = desk.all().into_iter().rev().find_map(|message| if let ToDesk::View(view) = message { view.set } else { None });
    assert_eq!(last.map(|own| (own.id, own.ended)), Some((set, None)), "the set runs on");
    assert!(desk.is_open() && stage.is_open());
    let passed = desk.all().into_iter().filter(|message| matches!(message, ToDesk::Call(ToCaller::Signal { .. }))).count();
    assert!((1..=110).contains(&passed), "{passed} passed on");
}
