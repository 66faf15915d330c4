//! One value that does not open is shown as such, takes nothing else away, and is never replaced unseen.

use leeward::clients::{self, NewClient};
use leeward::platform::Role;
use leeward::store::seal::{DOES_NOT_OPEN, Private};
use leeward_core::wire::{Ending, EntryValue, Moment};
use leeward_tests::Answer;
use sqlx::PgPool;

use crate::scene::{LABEL, NAME, Scene};

/// Bends the last byte of a sealed value, as a fault of a disk would.
async fn damage(database: &PgPool, table: &'static str, column: &'static str, whose: uuid::Uuid, key: &'static str) {
    let statement = format!(
        "UPDATE {table} SET {column} = set_byte({column}, length({column}) - 1, get_byte({column}, length({column}) - 1) # 1) WHERE {key} = $1"
    );
    let done = sqlx::query(sqlx::AssertSqlSafe(statement)).bind(whose).execute(database).await.unwrap();
    assert_eq!(done.rows_affected(), 1);
}

fn shows(answer: &Answer, parts: &[&str]) {
    assert_eq!(answer.status, 200, "{}", answer.body);
    for part in parts {
        assert!(answer.body.contains(part), "{part} is missing in {}", answer.body);
    }
}

async fn second_client(scene: &Scene) -> uuid::Uuid {
    let mut new = NewClient::default();
    new.details.name = Private::new("Ottoline Marsh");
    clients::create(&scene.house.app, &scene.clinician.subject(), new).await.unwrap()
}

#[tokio::test]
async fn the_caseload_shows_a_name_that_does_not_open_and_all_the_others() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead]).await;
    let database = scene.house.database.superuser.clone();
    second_client(&scene).await;
    damage(&database, "client_details", "name", scene.client, "client_id").await;
    let row = format!(r#"<a href="/clients/{}">{DOES_NOT_OPEN}</a>"#, scene.client);
    shows(&scene.clinician.get("/clients").await, &["Ottoline Marsh", &row, r#"<td class="number only-wide">1</td>"#]);
    shows(&scene.clinician.get("/practice/caseload").await, &["Ottoline Marsh", DOES_NOT_OPEN]);
    // The key itself: nothing of this client opens, and all of the other.
    damage(&database, "client_key", "wrapped", scene.client, "client_id").await;
    shows(&scene.clinician.get("/clients").await, &["Ottoline Marsh", &row]);
    shows(&scene.clinician.get("/practice/caseload").await, &["Ottoline Marsh", DOES_NOT_OPEN]);
    shows(&scene.clinician.get(&format!("/clients/{}", scene.client)).await, &[DOES_NOT_OPEN, "Tuesday 3 March 2026", "Record 1"]);
    shows(&scene.clinician.get(&format!("/sessions/{}", scene.session)).await, &[DOES_NOT_OPEN, "Session 1"]);
    shows(&scene.clinician.get(&format!("/sessions/{}/desk", scene.session)).await, &[DOES_NOT_OPEN]);
}

#[tokio::test]
async fn a_target_that_does_not_open_is_listed_and_not_overwritten() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    let other = crate::scene::target(&scene.house, &scene.clinician, scene.client).await;
    damage(&database, "target_words", "picture", scene.target, "target_id").await;
    damage(&database, "target_words", "label", other, "target_id").await;
    shows(
        &scene.clinician.get(&format!("/clients/{}", scene.client)).await,
        &[NAME, LABEL, &format!(r#"<a href="/targets/{other}">{DOES_NOT_OPEN}</a>"#)],
    );
    shows(&scene.clinician.get(&format!("/targets/{}", scene.target)).await, &[LABEL, DOES_NOT_OPEN]);
    shows(&scene.clinician.get(&format!("/sessions/{}/close", scene.session)).await, &[LABEL]);

    let edit = format!("/targets/{}/edit", scene.target);
    let form = scene.clinician.get(&edit).await;
    assert_eq!(form.status, 500);
    assert!(form.body.contains("saving would replace what could not be shown") && !form.body.contains("<textarea"), "{}", form.body);
    let before: Vec<u8> = stored(&database, "SELECT picture FROM target_words WHERE target_id = $1", scene.target).await;
    let typed = [("label", "new label"), ("prong", "past"), ("picture", "new picture"), ("version", "1")];
    let saved = scene.clinician.post_form(&edit, &typed).await;
    assert_eq!(saved.status, 500, "{}", saved.body);
    assert!(saved.body.contains(r#"value="new picture""#), "what was typed is still there");
    assert_eq!(stored(&database, "SELECT picture FROM target_words WHERE target_id = $1", scene.target).await, before);
}

async fn stored(database: &PgPool, ask: &'static str, whose: uuid::Uuid) -> Vec<u8> {
    sqlx::query_scalar(ask).bind(whose).fetch_one(database).await.unwrap()
}

#[tokio::test]
async fn details_and_a_session_s_words_are_not_overwritten_either() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    damage(&database, "client_details", "phone", scene.client, "client_id").await;
    shows(&scene.clinician.get(&format!("/clients/{}", scene.client)).await, &[NAME, DOES_NOT_OPEN]);
    // The number is no text for the form of admission to begin from.
    let desk = scene.clinician.get(&format!("/sessions/{}/desk", scene.session)).await;
    shows(&desk, &[r#"name="call_back" type="tel" maxlength="40" autocomplete="off" value="""#, DOES_NOT_OPEN]);
    let edit = format!("/clients/{}/edit", scene.client);
    assert_eq!(scene.clinician.get(&edit).await.status, 500);
    let typed = [("name", NAME), ("phone", "+353 1 5550100"), ("seizures", "no"), ("eye_condition", "no"), ("version", "1")];
    let before = stored(&database, "SELECT phone FROM client_details WHERE client_id = $1", scene.client).await;
    assert_eq!(scene.clinician.post_form(&edit, &typed).await.status, 500);
    assert_eq!(stored(&database, "SELECT phone FROM client_details WHERE client_id = $1", scene.client).await, before);

    damage(&database, "session_words", "location", scene.session, "session_id").await;
    shows(&scene.clinician.get(&format!("/sessions/{}", scene.session)).await, &[NAME, DOES_NOT_OPEN]);
    let note = format!("/sessions/{}/note", scene.session);
    assert_eq!(scene.clinician.get(&note).await.status, 500);
    let before = stored(&database, "SELECT location FROM session_words WHERE session_id = $1", scene.session).await;
    let saved = scene.clinician.post_form(&note, &[("note", "a new note"), ("version", "1")]).await;
    assert_eq!(saved.status, 500);
    assert!(saved.body.contains(r#"value="a new note""#), "{}", saved.body);
    assert_eq!(stored(&database, "SELECT location FROM session_words WHERE session_id = $1", scene.session).await, before);
}

#[tokio::test]
async fn the_logs_show_a_report_that_does_not_open_among_the_others() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    let first = scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "the railing again".into() }).await;
    scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "shoulders lower".into() }).await;
    damage(&database, "process_note", "words", first.parse().unwrap(), "id").await;
    shows(&scene.clinician.get(&format!("/sessions/{}", scene.session)).await, &["shoulders lower", DOES_NOT_OPEN]);
    let log = scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await.json();
    assert_eq!(log["entries"][0]["entry"]["value"]["kind"], "unreadable");
    assert_eq!(log["entries"][1]["entry"]["value"]["words"], "shoulders lower");
    let entry = scene.entry(None, None, Moment::AfterSet, EntryValue::Unreadable);
    assert_eq!(scene.enter(&entry).await.status, 422, "it cannot be sent");
}

/// Columns that the database does not hold to a list of values, as another version may have written them.
#[tokio::test]
async fn a_set_a_zone_or_an_ending_of_another_version_takes_no_page_away() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead]).await;
    let database = scene.house.database.superuser.clone();
    scene.set(1, Some(24.0), Ending::Done).await;
    let odd = scene.set(2, Some(12.0), Ending::Done).await;
    for statement in [
        "UPDATE set_order SET plan = '{\"odd\": 1}', timeline = '[]' WHERE set_id = $1",
        "UPDATE set_evidence SET ending = 'odd' WHERE set_id = $1 AND kind = 'rested'",
        "UPDATE session SET zone = 'Nowhere/Else' WHERE id = (SELECT session_id FROM stimulus_set WHERE id = $1)",
    ] {
        sqlx::query(statement).bind(odd).execute(&database).await.unwrap();
    }
    let session = scene.session;
    shows(
        &scene.clinician.get(&format!("/sessions/{session}")).await,
        &["24.0", "12.0", "does not open: tell the administrator", "its own time zone cannot be read"],
    );
    shows(&scene.clinician.get(&format!("/sessions/{session}/sets/2")).await, &["does not open: tell the administrator"]);
    shows(&scene.clinician.get(&format!("/clients/{}", scene.client)).await, &["its own time zone cannot be read"]);
    shows(&scene.clinician.get(&format!("/practice/clients/{}", scene.client)).await, &["3 March 2026"]);
    shows(&scene.clinician.get(&format!("/targets/{}", scene.target)).await, &[LABEL]);
    shows(&scene.clinician.get(&format!("/sessions/{session}/desk")).await, &[LABEL]);
    let log = scene.clinician.get_json(&format!("/sessions/{session}/entries")).await.json();
    assert_eq!((log["sets"][0]["plan"]["rate"].as_f64(), log["sets"][1]["plan"].is_null()), (Some(1.2), true));
    assert_eq!(log["sets"][1]["ending"], "unknown");
}

#[tokio::test]
async fn a_comfort_sheet_of_another_version_is_shown_as_such_and_not_replaced() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    sqlx::query("INSERT INTO comfort (client_id, path, dot, comfort, filled_at, version) VALUES ($1, 'eight', 2, '{\"colours\": \"odd\"}', now(), 1)")
        .bind(scene.client)
        .execute(&database)
        .await
        .unwrap();
    shows(&scene.clinician.get(&format!("/clients/{}", scene.client)).await, &[NAME, LABEL, DOES_NOT_OPEN]);
    let sheet = format!("/clients/{}/comfort", scene.client);
    assert_eq!(scene.clinician.get(&sheet).await.status, 500);
    let typed = [
        ("path", "eight"),
        ("dot", "2.5"),
        ("sweep", "constant"),
        ("colours", "lake"),
        ("timbre", "wood"),
        ("pitch", "400"),
        ("tone_ms", "90"),
        ("level", "60"),
        ("vibration", "felt"),
        ("version", "1"),
    ];
    let saved = scene.clinician.post_form(&sheet, &typed).await;
    assert_eq!(saved.status, 500, "{}", saved.body);
    let kept: String = sqlx::query_scalar("SELECT comfort::text FROM comfort").fetch_one(&database).await.unwrap();
    assert_eq!(kept, "{\"colours\": \"odd\"}");
}

/// A session can always be closed: every version of its words stays, so closing over one that does not open replaces nothing.
#[tokio::test]
async fn a_session_whose_words_do_not_open_is_closed_all_the_same_and_they_stay() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    let note = format!("/sessions/{}/note", scene.session);
    assert_eq!(scene.clinician.post_form(&note, &[("note", "written before"), ("version", "1")]).await.status, 303);
    let versions = "SELECT count(*) FROM session_words WHERE session_id = $1";
    let count: i64 = sqlx::query_scalar(versions).bind(scene.session).fetch_one(&database).await.unwrap();
    let done = sqlx::query(
        "UPDATE session_words SET note = set_byte(note, length(note) - 1, get_byte(note, length(note) - 1) # 1)
         WHERE session_id = $1 AND version = (SELECT max(version) FROM session_words WHERE session_id = $1)",
    );
    assert_eq!(done.bind(scene.session).execute(&database).await.unwrap().rows_affected(), 1);

    let close = format!("/sessions/{}/close", scene.session);
    shows(&scene.clinician.get(&close).await, &["What was written about this session before does not open"]);
    let typed = [
        ("kind", "incomplete"),
        ("resource", "the orchard"),
        ("effect", "settled"),
        ("state", "calm"),
        ("companion", "her brother"),
        ("next_contact", "Thursday, by phone"),
        ("note", "closed after the outage"),
    ];
    let closed = scene.clinician.fill_in(&close, &typed).await;
    assert_eq!(closed.status, 303, "{}", closed.body);
    let after: i64 = sqlx::query_scalar(versions).bind(scene.session).fetch_one(&database).await.unwrap();
    assert_eq!(after, count + 1, "beside the version that does not open");
    shows(&scene.clinician.get(&note).await, &["closed after the outage", DOES_NOT_OPEN]);
}
