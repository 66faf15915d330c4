//! Many at the door: sockets that say nothing, links that are made up. Those who are in notice nothing.

use std::time::{Duration, Instant};

use futures_util::StreamExt;
use leeward::base::ids::new_id;
use leeward::clients::{Asked, Cautions};
use leeward_core::wire::{FromStage, Order, RoomState};
use leeward_tests::{House, Served};
use serde_json::json;
use tokio_tungstenite::tungstenite::Message;

use crate::figures::{figure, is_full, seconds, size};
use crate::live_scene::{Scene, join};
use crate::page::{Stage, upgrade};

const NO: Cautions = Cautions { seizures: Asked::No, eye_condition: Asked::No };

#[tokio::test]
async fn silent_sockets_of_a_waiting_device_are_few_and_do_not_last() {
    let mut scene = Scene::inside(House::build().await, NO).await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    let (link, code) = scene.link().await;
    let mut rogue = scene.house.visitor();
    assert_eq!(join(&mut rogue, &link, &code).await.body, r#"{"seat":"asked"}"#);

    let began = Instant::now();
    let (mut held, mut refused) = (Vec::new(), 0);
    for _ in 0..size(3_000, 300) {
        match upgrade(&rogue, &scene.house.origin, "/stage/socket", Some(&scene.house.origin)).await {
            Ok(socket) => held.push(socket),
            Err(status) => {
                assert_eq!(status, 503);
                refused += 1;
            }
        }
    }
    let words = format!("{} held, {refused} turned away in {}", held.len(), seconds(began.elapsed()));
    figure("silent sockets of one waiting device", held.len() <= 8, &words, "8 at most");

    let began = Instant::now();
    assert_eq!(scene.clinician.get("/livez").await.status, 200);
    assert_eq!(scene.clinician.get("/").await.status / 100, 3);
    assert_eq!(scene.clinician.get(&format!("/sessions/{}", scene.session)).await.status, 200);
    assert_eq!(desk.order(epoch, Order::Stop).await, None);
    stage.view("the stop", |view| view.state == RoomState::Stopped || view.set.as_ref().is_some_and(|set| set.ended.is_some())).await;
    let served = began.elapsed();
    figure("beside them, pages and the admitted pair", served < Duration::from_secs(1), &seconds(served), "1 s");

    // Silence: the room closes them after 20 s, as it does with any page.
    let socket = held.pop().unwrap();
    let code = tokio::time::timeout(Duration::from_secs(25), last_word(socket)).await.expect("a silent socket is closed");
    assert_eq!(code, Some(1013));
    assert!(stage.is_open() && desk.is_open());
    drop(held);
    tokio::time::sleep(Duration::from_millis(1_500)).await;
    let mut honest = Stage::open(&rogue, &scene.house.origin).await;
    honest.view("the same device, once it speaks", |view| view.state == RoomState::Waiting).await;
}

async fn last_word(
    mut socket: impl futures_util::Stream<Item = Result<Message, tokio_tungstenite::tungstenite::Error>> + Unpin,
) -> Option<u16> {
    loop {
        match socket.next().await {
            Some(Ok(Message::Close(frame))) => return frame.map(|frame| frame.code.into()),
            Some(Ok(_)) => {}
            Some(Err(_)) | None => return None,
        }
    }
}

#[tokio::test]
async fn a_waiting_device_is_held_to_the_rate_of_an_admitted_one_and_stays_while_it_answers() {
    let mut scene = Scene::inside(House::build().await, NO).await;
    let (_desk, _stage, _) = scene.ready().await;
    let (link, code) = scene.link().await;
    let mut tablet = scene.house.visitor();
    join(&mut tablet, &link, &code).await;
    let loud = Stage::open(&tablet, &scene.house.origin).await;
    for _ in 0..200 {
        loud.send(&FromStage::Device { device: leeward_tests::device() });
    }
    assert_eq!(loud.closed().await, Some(1008));
    let steady = Stage::open(&tablet, &scene.house.origin).await;
    let patience = if is_full() { 45 } else { 2 };
    tokio::time::sleep(Duration::from_secs(patience)).await;
    assert!(steady.is_open(), "it answers beats");
    assert!(steady.all().iter().any(|message| matches!(message, leeward_core::wire::ToStage::Beat(_))), "it is asked for a sign of life");
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn made_up_links_cost_nothing_and_an_honest_one_gets_in() {
    let mut house = House::build().await;
    let served = Served::of(&mut house, env!("CARGO_BIN_EXE_leeward-served"));
    let mut scene = Scene::inside(house, NO).await;
    served.welcomes(&mut scene.clinician);
    // One honest round first: what the portal holds once it has done each thing.
    scene.join().await;
    let rest = served.memory();

    let (link, code) = scene.link().await;
    let posts = size(1_000, 60);
    let flood = (0..posts).map(|number| {
        let (mut nobody, origin) = (scene.house.visitor(), served.origin.clone());
        // Each from an address of its own, so that nothing but the code's own cost holds them back.
        let (once, address) = (new_id(&scene.house.app.world), format!("198.51.{}.{}", number / 250, number % 250 + 1));
        let made_up = new_id(&scene.house.app.world).simple().to_string().repeat(2);
        async move {
            let body = json!({ "link": made_up, "code": "000000", "once": once }).to_string();
            let headers = [("origin", origin.as_str()), ("sec-fetch-site", "same-origin"), ("x-forwarded-for", address.as_str())];
            nobody.post_raw("/join", &headers, &body).await.status
        }
    });
    let flood = tokio::spawn(futures_util::future::join_all(flood.collect::<Vec<_>>()));
    tokio::time::sleep(Duration::from_millis(50)).await;
    let began = Instant::now();
    let mut tablet = scene.house.visitor();
    let answer = join(&mut tablet, &link, &code).await;
    let honest = began.elapsed();
    assert_eq!((answer.status, answer.body.as_str()), (409, r#"{"seat":"asked"}"#));
    let mut most = served.memory();
    let mut flood = flood;
    let statuses = loop {
        tokio::select! {
            done = &mut flood => break done.unwrap(),
            () = tokio::time::sleep(Duration::from_millis(20)) => most = most.max(served.memory()),
        }
    };
    assert!(statuses.iter().all(|status| matches!(status, 403 | 503)), "{statuses:?}");
    let grown = most.max(served.memory()) - rest;
    figure("made-up joins: memory above rest", grown <= 30.0, &format!("{grown:.1} MiB"), "30 MiB at most");
    figure("made-up joins: an honest one", honest < Duration::from_secs(size(1, 3)), &seconds(honest), "1 s");
}
