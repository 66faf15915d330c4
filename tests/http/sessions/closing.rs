//! Closing a session, and its note.

use leeward_core::wire::{EntryValue, Moment};

use super::CLOSING;
use crate::scene::Scene;

fn closing_with(name: &str, value: &'static str) -> Vec<(&'static str, &'static str)> {
    CLOSING.iter().map(|(n, v)| if *n == name { (*n, value) } else { (*n, *v) }).collect()
}

#[tokio::test]
async fn closing_needs_the_whole_list_and_keeps_what_was_typed() {
    let mut scene = Scene::build().await;
    let path = format!("/sessions/{}/close", scene.session);
    let blank = scene.clinician.get(&path).await;
    assert_eq!(blank.status, 200);
    assert!(!blank.body.contains(" checked") && !blank.body.contains(" selected"), "nothing is chosen beforehand");
    for (field, value, why) in [
        ("kind", "", "no kind"),
        ("target_status", "", "no status of the target"),
        ("target_status", "complete", "complete and incomplete at once"),
        ("effect", "wonderful", "an effect that is not offered"),
        ("state", "", "no state"),
        ("companion", "", "nobody named"),
        ("next_contact", "", "no next contact"),
        ("resource", "", "nothing used, though it had an effect"),
        ("note", "<b>bold</b>", "markup"),
    ] {
        let answer = scene.clinician.post_form(&path, &closing_with(field, value)).await;
        assert_eq!(answer.status, 422, "{why}");
        assert!(answer.body.contains(&format!("id=\"{field}-error\"")), "{why}");
        assert!(field == "companion" || answer.body.contains("sister in the next room"), "{why}: the rest is still there");
    }
    let mut with_sud = CLOSING.to_vec();
    with_sud.push(("sud", "11"));
    assert!(scene.clinician.post_form(&path, &with_sud).await.body.contains("id=\"sud-error\""));
    let ended: Option<chrono::DateTime<chrono::Utc>> =
        sqlx::query_scalar("SELECT ended_at FROM session").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(ended, None, "it is open as long as the list is not whole");
}

#[tokio::test]
async fn a_session_closes_whatever_the_number_says() {
    let mut scene = Scene::build().await;
    scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 10 }).await;
    let path = format!("/sessions/{}/close", scene.session);
    let mut closing = CLOSING.to_vec();
    closing.push(("sud", "10"));
    assert_eq!(scene.clinician.post_form(&path, &closing).await.status, 303);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    for part in
        ["incomplete", "calm place. Settled after it", "Tired or tearful", "sister in the next room", "Friday by phone", "Phase 4 begun."]
    {
        assert!(page.contains(part), "{part}");
    }
    let row: (String, String, i16) = sqlx::query_as(
        "SELECT s.closing, t.status, r.value FROM session s JOIN target t ON t.id = s.target_id
         JOIN rating r ON r.session_id = s.id AND r.moment = 'closing' WHERE s.id = $1",
    )
    .bind(scene.session)
    .fetch_one(&scene.house.database.superuser)
    .await
    .unwrap();
    assert_eq!(row, ("incomplete".into(), "incomplete".into(), 10));
    assert_eq!(scene.clinician.get(&path).await.status, 303, "the list is not shown again");
    let again = scene.clinician.post_form(&path, &CLOSING).await;
    assert_eq!(again.status, 409);
    assert!(again.body.contains("sister in the next room"), "what was typed is still there");
    let acts: Vec<String> =
        sqlx::query_scalar("SELECT act FROM audit WHERE object_id = $1 AND act IN ('session.open', 'session.close') ORDER BY seq")
            .bind(scene.session)
            .fetch_all(&scene.house.database.superuser)
            .await
            .unwrap();
    assert_eq!(acts, ["session.open", "session.close"]);
}

#[tokio::test]
async fn a_note_is_saved_against_its_version() {
    let mut scene = Scene::build().await;
    let path = format!("/sessions/{}/note", scene.session);
    assert_eq!(scene.clinician.post_form(&path, &[("version", "1"), ("note", "First.")]).await.status, 303);
    let late = scene.clinician.post_form(&path, &[("version", "1"), ("note", "Second thoughts.")]).await;
    assert_eq!(late.status, 409);
    assert!(late.body.contains("Second thoughts.") && late.body.contains("First."), "both versions are on the page");
    assert!(late.body.contains("name=\"version\" value=\"2\""));
    assert_eq!(scene.clinician.post_form(&path, &[("version", "2"), ("note", "Both.")]).await.status, 303);
    let long = "x".repeat(10_001);
    let refused = scene.clinician.post_form(&path, &[("version", "3"), ("note", &long)]).await;
    assert_eq!(refused.status, 422);
    assert!(refused.body.contains(&long));
    let torn = scene.clinician.post_form(&path, &[("note", "Without its version.")]).await;
    assert!(torn.status == 409 && torn.body.contains("Without its version."));
    assert!(scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body.contains("Both."));
}
