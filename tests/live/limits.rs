//! What a page may send: anything else closes its own socket, with the right code, and nothing more.
//! Close codes: RFC 6455, section 7.4.1.

use std::time::{Duration, Instant};

use leeward_core::wire::{Comfort, Device, FromDesk, FromStage, Order, Plan, Refusal, WIRE_VERSION};
use leeward_tests::device;
use tokio::time::sleep;
use tokio_tungstenite::tungstenite::Message;
use uuid::Uuid;

use crate::page::{Desk, Stage};
use crate::scene::Scene;

/// A second session of the same house in which a set runs, to see that nobody else is hurt.
async fn bystander(house: leeward_tests::House) -> (Scene, Desk, Stage, String) {
    let cautions = leeward::clients::Cautions { seizures: leeward::clients::Asked::No, eye_condition: leeward::clients::Asked::No };
    let mut scene = Scene::inside(house, cautions).await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    (scene, desk, stage, set)
}

fn text(text: &str) -> Message {
    Message::text(text.to_owned())
}

/// An order to change the plan.
fn plan(rate: &str, pitch: i32) -> Message {
    text(&format!(
        r#"{{"type":"order","epoch":1,"id":1,"order":{{"kind":"plan","plan":{{{rate},"width":18,"dot":1.5,"path":"across","length":{{"kind":"open"}},"channels":{{"eyes":true,"ears":false}},"comfort":{{"pitch":{pitch}}}}}}}}}"#
    ))
}

/// What no page may send once it has said hello, and the code it is closed with.
fn breaches() -> Vec<(&'static str, Message, u16)> {
    vec![
        ("not JSON", text("{\"type\":"), 1007),
        ("nested deeply", text(&format!("{{\"type\":\"hello\",\"x\":{}", "[".repeat(10_000))), 1007),
        ("JSON of another shape", text("[1]"), 1008),
        ("binary", Message::binary(vec![1, 2, 3]), 1003),
        ("no such message", text(r#"{"type":"jump"}"#), 1008),
        ("half a message", text(r#"{"type":"order","epoch":1}"#), 1008),
        ("a number that is none", text(r#"{"type":"beat","id":-1,"page":0,"drawn":0}"#), 1008),
        ("a rate of NaN", plan(r#""rate":NaN"#, 450), 1007),
        ("a rate of null", plan(r#""rate":null"#, 450), 1008),
        ("a pitch below 0", plan(r#""rate":1"#, -1), 1008),
        ("too large", text(&format!("{{\"type\":\"hello\",\"x\":\"{}\"}}", "x".repeat(49 * 1024))), 1009),
        ("a megabyte", text(&"x".repeat(1 << 20)), 1009),
        ("hello twice", text(&format!(r#"{{"type":"hello","wire":{WIRE_VERSION}}}"#)), 1008),
    ]
}

#[tokio::test]
async fn a_breach_closes_that_socket_alone() {
    let (scene, mut desk, mut stage, set) = bystander(leeward_tests::House::build().await).await;
    for (what, message, code) in breaches() {
        let rogue = Desk::open(&scene.clinician, &scene.house.origin, scene.session).await;
        rogue.raw(message);
        assert_eq!(rogue.closed().await, Some(code), "{what}");
    }
    let early = Desk::silent(&scene.clinician, &scene.house.origin, &scene.path("desk/socket")).await;
    early.send(&FromDesk::Order { epoch: 1, id: 1, order: Order::Stop });
    assert_eq!(early.closed().await, Some(1008), "an order before hello");
    // The set next door ran on through all of it.
    assert!(desk.is_open() && stage.is_open());
    let epoch = desk.view("any view", |_| true).await.epoch;
    let running = desk.all().into_iter().rev().find_map(|message| match message {
        leeward_core::wire::ToDesk::View(view) => view.set,
        _ => None,
    });
    assert_eq!(running.map(|own| (own.id, own.ended)), Some((set.clone(), None)));
    assert_eq!(desk.order(epoch, Order::Stop).await, None);
    stage.view("its own stop", |view| view.set.as_ref().is_some_and(|own| own.id == set && own.ended.is_some())).await;
}

#[tokio::test]
async fn a_client_may_not_order_and_not_act_before_admission() {
    let mut scene = Scene::new().await;
    scene.join().await;
    for (what, message) in [
        ("an order of the desk", r#"{"type":"order","epoch":1,"id":1,"order":{"kind":"start"}}"#),
        ("evidence before admission", r#"{"type":"evidence","facts":[]}"#),
        ("an interruption before admission", r#"{"type":"interrupted","cause":"hidden"}"#),
    ] {
        let stage = scene.stage().await;
        stage.raw(text(message));
        assert_eq!(stage.closed().await, Some(1008), "{what}");
    }
    let early = Stage::silent(&scene.client, &scene.house.origin, "/stage/socket").await;
    early.send(&FromStage::Device { device: device() });
    assert_eq!(early.closed().await, Some(1008), "before hello");
    scene.admit().await;
    let stage = scene.stage().await;
    let foreign =
        format!(r#"{{"type":"evidence","facts":[{{"set":"{}","seq":0,"at":1,"fact":{{"kind":"shown","width":10}}}}]}}"#, Uuid::nil());
    stage.raw(text(&foreign));
    assert_eq!(stage.closed().await, Some(1008), "evidence of a set of another session");
}

#[tokio::test]
async fn a_revoked_sign_in_closes_its_desk_within_two_seconds_and_no_other() {
    let mut scene = Scene::new().await;
    let (desk, stage, _) = scene.ready().await;
    let mut other = scene.house.sign_in(scene.clinician.member).await;
    let other_desk = Desk::open(&other, &scene.house.origin, scene.session).await;
    sleep(Duration::from_millis(200)).await;
    let signins: Vec<(Uuid, Vec<u8>)> =
        sqlx::query_as("SELECT id, token_hash FROM access.signin").fetch_all(&scene.house.database.superuser).await.unwrap();
    let cookie = scene.clinician.cookies.values().next().unwrap();
    let hash = leeward::base::ids::Token::parse(cookie).unwrap().hash();
    let (mine, _) = signins.into_iter().find(|(_, own)| *own == hash).unwrap();
    let began = Instant::now();
    let answer = other.post_form(&format!("/account/signins/{mine}/revoke"), &[]).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    assert_eq!(desk.closed().await, Some(4005));
    assert!(began.elapsed() < Duration::from_secs(2), "{:?}", began.elapsed());
    assert!(other_desk.is_open() && stage.is_open());
}

// A card 3 px wide, an eye 5 m away: the page stays, and the desk reads that it is uncalibrated.
#[tokio::test]
async fn a_nonsense_calibration_counts_as_none() {
    let mut scene = Scene::new().await;
    let (mut desk, stage, epoch) = scene.ready().await;
    let nonsense = Device { px_per_mm: Some(3.0 / 85.6), distance_mm: Some(5_000.0), sound: false, ..device() };
    stage.send(&FromStage::Device { device: nonsense });
    let view = desk.view("the new device", |view| view.device.is_some_and(|device| !device.sound)).await;
    let taken_in = view.device.expect("a device");
    assert_eq!((taken_in.px_per_mm, taken_in.distance_mm), (None, None));
    assert!(stage.is_open());
    let loud = Plan { comfort: Comfort { level: 255, ..view.plan.comfort }, ..view.plan };
    assert!(matches!(desk.order(epoch, Order::Plan { plan: loud }).await, Some(Refusal::Limit { .. })));
}
