//! Joining: what a link does, and what it never tells.

use futures_util::future::join_all;
use leeward::platform::Role;
use leeward_core::wire::RoomState;
use serde_json::json;
use uuid::Uuid;

use crate::course::counted;
use crate::scene::{Scene, join};

/// The page without its nonce and its key, which are new in every response.
fn without_nonce(answer: &leeward_tests::Answer) -> String {
    let policy = &answer.headers.iter().find(|(name, _)| name == "content-security-policy").unwrap().1;
    let nonce = policy.split("'nonce-").nth(1).unwrap().split('\'').next().unwrap().to_owned();
    let key = answer.body.split(r#"id="once" value=""#).nth(1).unwrap().split('"').next().unwrap();
    answer.body.replace(&nonce, "").replace(key, "")
}

#[tokio::test]
async fn the_page_of_a_link_is_the_same_for_everybody_and_changes_nothing() {
    let mut scene = Scene::new().await;
    let (link, code) = scene.link().await;
    let visitor = scene.client.get("/j").await;
    assert_eq!(visitor.status, 200);
    let member = scene.clinician.get("/j").await;
    let guessed = scene.client.get("/j?x=1").await;
    assert_eq!(without_nonce(&visitor), without_nonce(&member));
    assert_eq!(without_nonce(&visitor), without_nonce(&guessed));
    assert!(visitor.headers.contains(&("referrer-policy".into(), "no-referrer".into())));
    assert!(visitor.headers.iter().all(|(name, _)| name != "set-cookie"));
    // Looking used nothing up.
    assert_eq!(join(&mut scene.client, &link, &code).await.status, 200);
}

#[tokio::test]
async fn five_wrong_codes_end_a_code_and_all_failures_look_the_same() {
    let mut scene = Scene::new().await;
    let (link, code) = scene.link().await;
    let wrong = if code == "000000" { "000001" } else { "000000" };
    let first = join(&mut scene.client, &link, wrong).await;
    assert_eq!(first.status, 403);
    for _ in 1..5 {
        let again = join(&mut scene.client, &link, wrong).await;
        assert_eq!((again.status, &again.body), (403, &first.body));
    }
    let too_late = join(&mut scene.client, &link, &code).await;
    assert_eq!((too_late.status, &too_late.body), (403, &first.body), "the right code, after five wrong ones");
    let no_link = join(&mut scene.client, &"A".repeat(43), &code).await;
    assert_eq!((no_link.status, &no_link.body), (403, &first.body), "a link that never was");
    let new = scene.new_code().await;
    let joined = join(&mut scene.client, &link, &new).await;
    assert_eq!((joined.status, joined.body.as_str()), (200, r#"{"seat":"taken"}"#));
    assert_eq!(scene.client.get("/stage").await.status, 200);
    let wrong_ones: i64 =
        sqlx::query_scalar("SELECT count(*) FROM audit WHERE act = 'code.wrong'").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(wrong_ones, 5);
}

#[tokio::test]
async fn whom_the_client_meets_is_read_from_the_record_where_the_practice_says_so_and_while_they_treat() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let database = scene.house.database.superuser.clone();
    let name: String =
        sqlx::query_scalar("SELECT m.name FROM session s JOIN access.member m ON m.id = s.member_id").fetch_one(&database).await.unwrap();
    let says = format!("You will meet {name}.");
    assert!(!scene.client.get("/stage").await.body.contains(&says), "no practice says so unasked");
    sqlx::query("UPDATE practice SET tells_whom = true").execute(&database).await.unwrap();
    let told = scene.client.get("/stage").await;
    assert!(told.body.contains(&says), "{}", told.body);
    sqlx::query("UPDATE access.care_link SET until = since + interval '1 second'").execute(&database).await.unwrap();
    assert!(!scene.client.get("/stage").await.body.contains(&says), "the client was handed over");
}

#[tokio::test]
async fn guessing_is_slowed_down() {
    let scene = Scene::new().await;
    // At once: hashing takes so long here that one after the other is slow enough to be let through.
    let tries = (0..14).map(|_| {
        let mut browser = scene.client.clone();
        async move { join(&mut browser, "nothing", "123456").await.status }
    });
    let statuses = join_all(tries).await;
    assert!(statuses.iter().filter(|status| **status == 403).count() >= 10, "{statuses:?}");
    assert!(statuses.contains(&429), "{statuses:?}");
}

#[tokio::test]
async fn a_code_is_kept_as_argon2id_and_a_token_as_its_hash() {
    let mut scene = Scene::new().await;
    let (link, code) = scene.link().await;
    let (phc, hash): (String, Vec<u8>) =
        sqlx::query_as("SELECT code_phc, token_hash FROM access.join_link").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert!(phc.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"), "{phc}");
    assert!(!phc.contains(&code));
    assert_eq!(hash, leeward::base::ids::Token::parse(&link).unwrap().hash());
}

#[tokio::test]
async fn a_link_ends_with_time_with_a_new_one_and_with_the_session() {
    let mut scene = Scene::new().await;
    let (old, old_code) = scene.link().await;
    let (link, code) = scene.link().await;
    assert_eq!(join(&mut scene.client, &old, &old_code).await.status, 403, "an earlier link");
    scene.house.clock.advance(chrono::Duration::minutes(11));
    assert_eq!(join(&mut scene.client, &link, &code).await.status, 403, "a code of eleven minutes ago");
    let code = scene.new_code().await;
    scene.house.clock.advance(chrono::Duration::minutes(1));
    sqlx::query("UPDATE session SET ended_at = '2026-03-03T09:12:00Z', closing = 'no_reprocessing'")
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(join(&mut scene.client, &link, &code).await.status, 403, "a session that has ended");
    assert_eq!(scene.clinician.post_json(&scene.path("link"), &json!({})).await.status, 404);
    let desk = scene.clinician.get(&scene.path("desk")).await;
    assert_eq!((desk.status, desk.location), (303, format!("/sessions/{}", scene.session)));
}

#[tokio::test]
async fn only_the_clients_own_clinician_makes_links_codes_and_admits() {
    let mut scene = Scene::new().await;
    for roles in [vec![Role::Clinician], vec![Role::Lead], vec![Role::Administrator]] {
        let mut other = scene.house.member(&roles).await;
        for path in ["link", "code", "admit", "seat"] {
            let body = json!({ "location": "x", "call_back": "112", "private": true, "decision": "move", "seat": Uuid::nil() });
            assert_eq!(other.post_json(&scene.path(path), &body).await.status, 404, "{roles:?} {path}");
        }
        assert_eq!(other.get(&scene.path("desk")).await.status, 404, "{roles:?}");
        assert_eq!(other.get(&scene.path("desk/socket")).await.status, 404, "{roles:?}");
    }
    assert_eq!(scene.client.post_json(&scene.path("link"), &json!({})).await.status, 401);
    assert_eq!(scene.client.get("/stage").await.status, 401);
}

#[tokio::test]
async fn admission_says_what_is_missing_and_needs_somebody_to_admit() {
    let mut scene = Scene::new().await;
    let empty = scene
        .clinician
        .post_json(&scene.path("admit"), &json!({ "location": " ", "call_back": "soon", "private": false, "seat": Uuid::nil() }))
        .await;
    assert_eq!(empty.status, 422);
    let errors = &empty.json()["errors"];
    for field in ["location", "call_back", "private"] {
        assert!(errors[field].is_string(), "{errors}");
    }
    let good = |seat: Uuid| json!({ "location": "12 Fjordgata", "call_back": "+47 22 00 00 00", "private": true, "seat": seat });
    assert_eq!(scene.clinician.post_json(&scene.path("admit"), &good(Uuid::nil())).await.status, 409, "nobody has joined");
    scene.join().await;
    let seat = scene.seat().await;
    for _ in 0..2 {
        assert_eq!(scene.clinician.post_json(&scene.path("admit"), &good(seat)).await.status, 204, "and again, when the answer was lost");
    }
    let desk = scene.clinician.get(&scene.path("desk")).await;
    assert_eq!(desk.status, 200);
    for shown in ["12 Fjordgata", "confirmed 09:00", "Per Brandvold", "+47 22 00 00 01", "Ilse Brandvold"] {
        assert!(desk.body.contains(shown), "{shown}");
    }
    let sealed: Vec<u8> =
        sqlx::query_scalar("SELECT location FROM session_words").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert!(!String::from_utf8_lossy(&sealed).contains("Fjordgata"), "the place is kept sealed");
}

/// The page's own line may be dead when its Leave gets through: nobody is told of a lost line then.
#[tokio::test]
async fn who_leaves_has_stopped_what_runs_whatever_becomes_of_their_line() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    Scene::start(&mut desk, &mut stage, epoch).await;
    assert_eq!(scene.client.post_form("/stage/leave", &[]).await.status, 303);
    desk.view("a client who has left", |view| view.state == RoomState::Left).await;
    counted(&scene.house.database.superuser, "SELECT count(*) FROM set_ending WHERE witness = 'room' AND ending = 'stopped_by_client'", 1)
        .await;
}

#[tokio::test]
async fn leaving_gives_the_seat_up_and_forgets_only_it() {
    let mut scene = Scene::new().await;
    scene.join().await;
    let left = scene.client.post_form("/stage/leave", &[]).await;
    assert_eq!((left.status, left.location.as_str()), (303, "/left"));
    assert!(left.headers.iter().all(|(name, _)| name != "clear-site-data"));
    assert!(scene.client.cookies.is_empty());
    assert_eq!(scene.client.get("/stage").await.status, 401);
    let page = scene.client.get("/left").await;
    assert_eq!(page.status, 200);
    assert!(!page.body.contains("Leeward"), "the blank page names nothing");
}
