use chrono::Duration;
use leeward::app::route_list;
use leeward::clients;
use leeward::live;
use leeward::platform::Role;
use leeward::platform::Rule;
use leeward::sessions::{self, Closing, ClosingKind, NewSession};
use leeward::store::subject::Subject;
use leeward_core::wire::{Ending, EntryValue, Moment};
use leeward_tests::Browser;
use serde_json::json;
use uuid::Uuid;

use super::has;
use crate::scene::{Scene, target};

/// Presses the button; the session and its pretend client.
async fn rehearse(scene: &Scene, browser: &mut Browser) -> (Uuid, Uuid) {
    let answer = browser.post_form("/rehearsal", &[]).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    let session: Uuid = answer.location.split('/').nth(2).and_then(|id| id.parse().ok()).expect("the way leads to a desk");
    let client = sqlx::query_scalar("SELECT client_id FROM session WHERE id = $1")
        .bind(session)
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    (session, client)
}

/// A rehearsal that would show in any count: a target, sets, ratings, an incomplete closing.
async fn a_full_rehearsal(scene: &mut Scene) -> Uuid {
    let mut clinician = scene.house.sign_in(scene.clinician.member).await;
    let (_, pretend) = rehearse(scene, &mut clinician).await;
    let (client, session, target_before) = (scene.client, scene.session, scene.target);
    // The rehearsal gets a target, so the open one without gives way.
    close(scene, pretend).await;
    scene.client = pretend;
    scene.target = target(&scene.house, &clinician, pretend).await;
    let new = NewSession { client: pretend, target: Some(scene.target) };
    scene.session = sessions::open(&scene.house.app, &clinician.subject(), new).await.unwrap();
    for (number, sud) in [(1, 9), (2, 0)] {
        let set = scene.set(number, Some(24.0), Ending::Done).await;
        scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: sud }).await;
    }
    close(scene, pretend).await;
    (scene.client, scene.session, scene.target) = (client, session, target_before);
    pretend
}

async fn close(scene: &Scene, client: Uuid) {
    let open: Uuid = sqlx::query_scalar("SELECT id FROM session WHERE client_id = $1 AND ended_at IS NULL")
        .bind(client)
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    let said = |text: &str| leeward::store::seal::Private::new(text);
    let closing = Closing {
        over: None,
        kind: ClosingKind::Incomplete,
        because: None,
        unsteady: false,
        resource: said("a quiet room"),
        leaving_state: said("Calm"),
        companion: said("nobody"),
        next_contact: said("none"),
        client_words: said(""),
        note: said(""),
        sud: None,
    };
    sessions::close(&scene.house.app, &scene.clinician.subject(), open, closing).await.unwrap();
}

/// Every page that a lead may read.
async fn lead_pages(browser: &mut Browser, client: Uuid) -> Vec<(String, String)> {
    let mut pages = Vec::new();
    for route in route_list().into_iter().filter(|route| route.rule == Rule::Role(Role::Lead) && route.method == "GET") {
        let path = route.path.replace("{client}", &client.to_string());
        assert!(!path.contains('{'), "{path}: this test does not know what stands there; tell it");
        let answer = browser.get(&path).await;
        assert_eq!(answer.status, 200, "{path}");
        // Each response has a nonce of its own.
        let nonce = answer.body.split("nonce=\"").nth(1).and_then(|rest| rest.split('"').next()).unwrap_or_default().to_owned();
        pages.push((path, answer.body.replace(&nonce, "")));
    }
    assert!(pages.len() >= 2);
    pages
}

#[tokio::test]
async fn no_page_of_the_lead_changes_by_a_rehearsal_not_even_by_their_own() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead]).await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: 5 }).await;
    let mut own = scene.house.sign_in(scene.clinician.member).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    // A clinician who treats nobody is no choice on the lead's list either.
    let mut trying = scene.house.member(&[Role::Clinician]).await;
    let before = (lead_pages(&mut own, scene.client).await, lead_pages(&mut lead, scene.client).await);
    let pretend = a_full_rehearsal(&mut scene).await;
    rehearse(&scene, &mut trying).await;
    let after = (lead_pages(&mut own, scene.client).await, lead_pages(&mut lead, scene.client).await);
    assert_eq!(before, after);
    for browser in [&mut own, &mut lead] {
        assert_eq!(browser.get(&format!("/practice/clients/{pretend}")).await.status, 404);
    }
    // The control: as a treated client's, the same record would show on all of them.
    sqlx::query("DELETE FROM access.rehearsal").execute(&scene.house.database.superuser).await.unwrap();
    assert_ne!(lead_pages(&mut lead, scene.client).await, before.1);
    assert_eq!(lead.get(&format!("/practice/clients/{pretend}")).await.status, 200);
}

#[tokio::test]
async fn the_caseload_does_not_list_or_count_it_and_leads_to_it_apart() {
    let mut scene = Scene::build().await;
    let before = scene.clinician.get("/clients").await.body;
    has(&before, &[r#"action="/rehearsal""#, "<small>1, by name</small>"]);
    let mut clinician = scene.house.sign_in(scene.clinician.member).await;
    let (session, client) = rehearse(&scene, &mut clinician).await;
    let after = scene.clinician.get("/clients").await.body;
    has(&after, &["<small>1, by name</small>", &format!(r#"<a href="/clients/{client}">Rehearsals so far</a>"#)]);
    assert!(!after.contains(&format!("/clients/{client}\">Rehearsal</a>")));
    assert!(!scene.clinician.get("/clients?find=rehearsal").await.body.contains(&format!("/clients/{client}\">Rehearsal</a>")));
    // The same again comes back to the session that is open, and to the same pretend client for good.
    assert_eq!(rehearse(&scene, &mut clinician).await, (session, client));
    close(&scene, client).await;
    scene.house.clock.advance(Duration::minutes(5));
    let (next, same) = rehearse(&scene, &mut clinician).await;
    assert!(next != session && same == client);
}

#[tokio::test]
async fn each_page_says_that_it_is_a_rehearsal() {
    let mut scene = Scene::build().await;
    let mut clinician = scene.house.sign_in(scene.clinician.member).await;
    let (session, client) = rehearse(&scene, &mut clinician).await;
    let real = (scene.session, scene.client);
    scene.session = session;
    scene.set(1, Some(24.0), Ending::Done).await;
    let paths = |(session, client): (Uuid, Uuid)| {
        [
            format!("/clients/{client}"),
            format!("/sessions/{session}"),
            format!("/sessions/{session}/note"),
            format!("/sessions/{session}/close"),
            format!("/sessions/{session}/sets/1"),
            format!("/sessions/{session}/desk"),
        ]
    };
    for path in paths((session, client)) {
        has(&clinician.get(&path).await.body, &["REHEARSAL"]);
    }
    scene.session = real.0;
    scene.set(1, Some(24.0), Ending::Done).await;
    for path in paths(real) {
        let answer = clinician.get(&path).await;
        assert_eq!(answer.status, 200, "{path}");
        assert!(!answer.body.contains("REHEARSAL"), "{path}");
    }
}

async fn stage(scene: &Scene, session: Uuid) -> String {
    let (link, code) = live::mint(&scene.house.app, &scene.clinician.subject(), session).await.unwrap();
    let mut client = scene.house.visitor();
    let joined = client.post_json("/join", &json!({ "link": link.split('#').nth(1), "code": code, "once": uuid::Uuid::nil() })).await;
    assert_eq!(joined.status, 200, "{}", joined.body);
    client.get("/stage").await.body
}

#[tokio::test]
async fn the_clients_page_says_so_in_its_help_and_in_neutral_words() {
    let scene = Scene::build().await;
    let mut clinician = scene.house.sign_in(scene.clinician.member).await;
    let (session, _) = rehearse(&scene, &mut clinician).await;
    const WORDS: &str = "<p>This is a rehearsal. It is only for trying things out.</p>";
    has(&stage(&scene, session).await, &[WORDS]);
    assert!(!stage(&scene, scene.session).await.contains(WORDS));
}

#[tokio::test]
async fn it_is_for_clinicians_each_has_one_and_two_requests_at_once_make_one() {
    let scene = Scene::build().await;
    for role in [Role::Lead, Role::Administrator] {
        let mut other = scene.house.member(&[role]).await;
        assert_eq!(other.post_form("/rehearsal", &[]).await.status, 403);
        assert!(clients::rehearsal(&scene.house.app, &other.subject()).await.is_err());
    }
    let subject = scene.clinician.subject();
    let (one, two) = tokio::join!(clients::rehearsal(&scene.house.app, &subject), clients::rehearsal(&scene.house.app, &subject));
    assert_eq!(one.unwrap(), two.unwrap());
    let another = scene.house.member(&[Role::Clinician]).await;
    clients::rehearsal(&scene.house.app, &another.subject()).await.unwrap();
    let made: i64 = sqlx::query_scalar("SELECT count(*) FROM access.rehearsal").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(made, 2);
}

#[tokio::test]
async fn no_real_client_becomes_a_rehearsal_and_a_rehearsal_is_not_archived() {
    let mut scene = Scene::build().await;
    let mut tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    let take = "SELECT access.take_on_rehearsal(gen_random_uuid(), $1)";
    let fault = sqlx::query(take).bind(scene.client).execute(&mut *tx).await.unwrap_err();
    assert!(fault.to_string().contains("not allowed to take on this client"), "{fault}");
    drop(tx);
    for subject in [scene.clinician.subject(), Subject::Visitor] {
        let mut tx = scene.house.app.database.look(&subject).await.unwrap();
        let fault = sqlx::query("INSERT INTO access.rehearsal VALUES ($1, $2)")
            .bind(scene.clinician.member)
            .bind(scene.client)
            .execute(&mut *tx)
            .await
            .unwrap_err();
        assert!(fault.to_string().contains("permission denied"), "{fault}");
    }
    let client = clients::rehearsal(&scene.house.app, &scene.clinician.subject()).await.unwrap();
    assert!(!scene.clinician.get(&format!("/clients/{client}")).await.body.contains("Archive</button>"));
    let answer = scene.clinician.post_form(&format!("/clients/{client}/archive"), &[("version", "1")]).await;
    assert_eq!(answer.status, 409);
    has(&answer.body, &["This is the pretend client of your rehearsals"]);
}
