//! One device has the seat; a second one asks.

use leeward_core::wire::{FromStage, RoomState, SeatState, WIRE_VERSION};
use leeward_tests::device;
use serde_json::json;

use crate::page::{Stage, upgrade};
use crate::scene::{Scene, join};

#[tokio::test]
async fn a_second_device_is_refused_then_moved_and_never_let_in_silently() {
    let mut scene = Scene::new().await;
    let (mut desk, stage, _) = scene.ready().await;
    scene.house.clock.advance(chrono::Duration::seconds(20));
    let (link, code) = scene.link().await;
    let mut tablet = scene.house.visitor();
    let asked = join(&mut tablet, &link, &code).await;
    assert_eq!((asked.status, asked.body.as_str()), (409, r#"{"seat":"asked"}"#));
    desk.view("another device asks", |view| view.seat_asked_for && view.seat == SeatState::Admitted).await;
    let mut waiting = Stage::open(&tablet, &scene.house.origin).await;
    let view = waiting.view("waiting", |_| true).await;
    assert_eq!((view.state, view.set, view.desk_here), (RoomState::Waiting, None, false), "it learns nothing");

    let asking = scene.asking().await;
    let refuse = json!({ "decision": "refuse", "seat": asking });
    let refused = scene.clinician.post_json(&scene.path("seat"), &refuse).await;
    assert_eq!(refused.status, 204, "{}", refused.body);
    assert_eq!(waiting.closed().await, Some(4004));
    desk.view("nobody asks", |view| !view.seat_asked_for).await;
    assert_eq!(tablet.get("/stage").await.status, 401);
    assert!(stage.is_open(), "the first device noticed nothing");
    let again = scene.clinician.post_json(&scene.path("seat"), &refuse).await;
    assert_eq!(again.status, 204, "sent again, it stands as it was decided");
    let late = scene.clinician.post_json(&scene.path("seat"), &json!({ "decision": "move", "seat": asking })).await;
    assert_eq!(late.status, 409, "that device does not ask any more");

    let code = scene.new_code().await;
    assert_eq!(join(&mut tablet, &link, &code).await.status, 409);
    let waiting = Stage::open(&tablet, &scene.house.origin).await;
    desk.view("another device asks again", |view| view.seat_asked_for).await;
    let first = scene.seat().await;
    let to_tablet = json!({ "decision": "move", "seat": scene.asking().await });
    for _ in 0..2 {
        let moved = scene.clinician.post_json(&scene.path("seat"), &to_tablet).await;
        assert_eq!(moved.status, 204, "{}", moved.body);
    }
    let body = json!({ "location": "x", "call_back": "112", "private": true, "seat": first });
    assert_eq!(scene.clinician.post_json(&scene.path("admit"), &body).await.status, 409, "the first device has not got the seat any more");
    assert_eq!(stage.closed().await, Some(4004), "the first device has lost the seat");
    assert_eq!(waiting.closed().await, Some(1012), "the second one comes in by the ordinary door");
    assert_eq!(scene.client.get("/stage").await.status, 401);
    let mut tablet_stage = Stage::open(&tablet, &scene.house.origin).await;
    tablet_stage.view("waiting to be admitted", |view| view.state == RoomState::AtTheDoor).await;
    desk.view("admission anew", |view| view.seat == SeatState::Waiting && view.needs.sight).await;
    scene.admit().await;
    tablet_stage.view("admitted", |view| view.state == RoomState::Hold).await;
    assert_eq!(join(&mut tablet, &link, "000000").await.status, 200, "pressing Join again on the device that has the seat");
}

#[tokio::test]
async fn the_same_device_joins_again_in_its_own_place() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let old = scene.stage().await;
    scene.join().await;
    assert_eq!(old.closed().await, Some(4004));
    let open: i64 = sqlx::query_scalar("SELECT count(*) FROM access.seat WHERE closed_at IS NULL")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(open, 1);
}

#[tokio::test]
async fn a_newer_socket_of_the_seat_replaces_the_older_one() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let old = scene.stage().await;
    let mut new = scene.stage().await;
    assert_eq!(old.closed().await, Some(4001));
    new.view("its view", |view| view.state == RoomState::AtTheDoor).await;
}

#[tokio::test]
async fn a_device_without_the_seat_may_only_say_who_it_is() {
    let mut scene = Scene::new().await;
    let (_desk, stage, _) = scene.ready().await;
    let (link, code) = scene.link().await;
    let mut tablet = scene.house.visitor();
    assert_eq!(join(&mut tablet, &link, &code).await.status, 409);
    let waiting = Stage::open(&tablet, &scene.house.origin).await;
    waiting.send(&FromStage::Device { device: device() });
    waiting.send(&FromStage::Stop);
    assert_eq!(waiting.closed().await, Some(1008));
    assert!(stage.is_open());
}

#[tokio::test]
async fn a_page_of_another_origin_gets_no_socket() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let house = scene.house.origin.clone();
    for origin in [Some("https://elsewhere.example"), Some("null"), None, Some("http://localhost:1")] {
        assert_eq!(upgrade(&scene.clinician, &house, &scene.path("desk/socket"), origin).await.err(), Some(403), "{origin:?}");
        assert_eq!(upgrade(&scene.client, &house, "/stage/socket", origin).await.err(), Some(403), "{origin:?}");
    }
    assert_eq!(upgrade(&scene.house.visitor(), &house, "/stage/socket", Some(&house)).await.err(), Some(401));
    assert_eq!(upgrade(&scene.client, &house, &scene.path("desk/socket"), Some(&house)).await.err(), Some(401));
    let stage = Stage::silent(&scene.client, &house, "/stage/socket").await;
    stage.send(&FromStage::Hello { wire: WIRE_VERSION + 1, device: device() });
    assert_eq!(stage.closed().await, Some(4002), "a page of a newer portal");
}

/// The client has the seat, another device asks for it, and no room is open: the portal was restarted, and nobody has come.
async fn asked_before_there_is_a_room() -> (Scene, leeward_tests::Browser) {
    let mut scene = Scene::new().await;
    scene.join().await;
    let (link, code) = scene.link().await;
    let mut tablet = scene.house.visitor();
    assert_eq!(join(&mut tablet, &link, &code).await.status, 409);
    (scene, tablet)
}

async fn rooms(scene: &Scene) -> (usize, i64) {
    let tokens = sqlx::query_scalar("SELECT count(*) FROM access.room_token").fetch_one(&scene.house.database.superuser).await.unwrap();
    (scene.house.app.rooms().count(), tokens)
}

#[tokio::test]
async fn a_device_that_only_asks_waits_without_a_room_until_there_is_one() {
    let (scene, tablet) = asked_before_there_is_a_room().await;
    let mut waiting = Stage::open(&tablet, &scene.house.origin).await;
    let view = waiting.view("waiting", |_| true).await;
    assert_eq!((view.state, view.set, view.desk_here), (RoomState::Waiting, None, false), "it learns nothing");
    // Its second view comes after five seconds: until then its line is kept alive by beats.
    let later = waiting.view("waiting on", |view| view.seq == 2).await;
    assert_eq!(later.state, RoomState::Waiting);
    assert_eq!(rooms(&scene).await, (0, 0), "it has opened none");

    let mut desk = scene.desk().await;
    desk.view("another device asks", |view| view.seat_asked_for).await;
    assert_eq!(waiting.closed().await, Some(1012), "it comes into the room by the door");
    let mut waiting = Stage::open(&tablet, &scene.house.origin).await;
    waiting.view("waiting in the room", |view| view.state == RoomState::Waiting).await;
    let to_tablet = json!({ "decision": "move", "seat": scene.asking().await });
    let mut clinician = scene.clinician.clone();
    assert_eq!(clinician.post_json(&scene.path("seat"), &to_tablet).await.status, 204);
    assert_eq!(waiting.closed().await, Some(1012));
    let mut seated = Stage::open(&tablet, &scene.house.origin).await;
    seated.view("at the door", |view| view.state == RoomState::AtTheDoor).await;
}

#[tokio::test]
async fn a_device_that_waits_without_a_room_hears_what_becomes_of_it() {
    for (what, code) in [("move", 1012), ("refuse", 4004), ("end", 4000)] {
        let (mut scene, tablet) = asked_before_there_is_a_room().await;
        let mut waiting = Stage::open(&tablet, &scene.house.origin).await;
        waiting.view("waiting", |view| view.state == RoomState::Waiting).await;
        if what == "end" {
            let end = "UPDATE session SET ended_at = opened_at";
            sqlx::query(end).execute(&scene.house.database.superuser).await.unwrap();
        } else {
            let decision = json!({ "decision": what, "seat": scene.asking().await });
            assert_eq!(scene.clinician.post_json(&scene.path("seat"), &decision).await.status, 204);
        }
        assert_eq!(waiting.closed().await, Some(code), "{what}");
        match what {
            "move" => {
                let mut seated = Stage::open(&tablet, &scene.house.origin).await;
                seated.view("at the door", |view| view.state == RoomState::AtTheDoor).await;
            }
            "end" => assert_eq!(Stage::open(&tablet, &scene.house.origin).await.closed().await, Some(4000), "and hears it again"),
            _ => assert_eq!(upgrade(&tablet, &scene.house.origin, "/stage/socket", Some(&scene.house.origin)).await.err(), Some(401)),
        }
    }
}

#[tokio::test]
async fn a_device_that_waits_without_a_room_is_held_to_the_same_manners() {
    let (scene, tablet) = asked_before_there_is_a_room().await;
    let waiting = Stage::open(&tablet, &scene.house.origin).await;
    waiting.send(&FromStage::Stop);
    assert_eq!(waiting.closed().await, Some(1008));
    let silent = Stage::silent(&tablet, &scene.house.origin, "/stage/socket").await;
    silent.send(&FromStage::Device { device: device() });
    assert_eq!(silent.closed().await, Some(1008), "hello comes first");
    let silent = Stage::silent(&tablet, &scene.house.origin, "/stage/socket").await;
    silent.raw(tokio_tungstenite::tungstenite::Message::text("{"));
    assert_eq!(silent.closed().await, Some(1007));
    assert_eq!(rooms(&scene).await, (0, 0));
}

#[tokio::test]
async fn a_device_is_removed_and_the_session_goes_on() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    let seat = scene.seat().await;
    let remove = json!({ "decision": "remove", "seat": seat });
    for _ in 0..2 {
        let answer = scene.clinician.post_json(&scene.path("seat"), &remove).await;
        assert_eq!(answer.status, 204, "sent again, it stands: {}", answer.body);
    }
    assert_eq!(stage.closed().await, Some(4000), "its page reads the words of an end");
    desk.view("nobody there, nothing runs", |view| view.seat == SeatState::Empty && !view.stage_here && view.state != RoomState::Running)
        .await;
    assert_eq!(scene.client.get("/stage").await.status, 401);
    assert_eq!(Stage::open(&scene.client, &scene.house.origin).await.closed().await, Some(4000), "and hears it again");
    let gone = scene.clinician.post_json(&scene.path("seat"), &json!({ "decision": "refuse", "seat": seat })).await;
    assert_eq!(gone.status, 409);

    // The client's own device comes with a new code, and is admitted anew.
    let (link, code) = scene.link().await;
    let mut own = scene.house.visitor();
    assert_eq!(join(&mut own, &link, &code).await.status, 200);
    let mut own = Stage::open(&own, &scene.house.origin).await;
    own.view("at the door", |view| view.state == RoomState::AtTheDoor).await;
    desk.view("somebody waits", |view| view.seat == SeatState::Waiting).await;
    let late = scene.clinician.post_json(&scene.path("seat"), &remove).await;
    assert_eq!(late.status, 204, "it is about the first device still");
    own.view("still there", |view| view.state == RoomState::AtTheDoor).await;
    assert!(own.is_open());
}
