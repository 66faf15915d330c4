//! Turning to another target in mid-session, and back: nothing of the first is lost.

use leeward_core::wire::{Answer, Ending, EntryValue, Moment};
use leeward_tests::Answer as Reply;
use serde_json::json;
use uuid::Uuid;

use crate::scene::{Scene, target};

async fn turns(scene: &mut Scene, to: Uuid, from: Option<Uuid>) -> Reply {
    let (path, key) = (format!("/sessions/{}/target", scene.session), leeward::base::ids::new_id(&scene.house.app.world).to_string());
    scene.clinician.post_json_once(&path, &json!({ "target": to, "from": from }), &key).await
}

async fn states(scene: &Scene) -> Vec<(Uuid, String)> {
    sqlx::query_as("SELECT target_id, state FROM target_course").fetch_all(&scene.house.database.superuser).await.unwrap()
}

async fn state(scene: &Scene, target: Uuid) -> String {
    states(scene).await.into_iter().find(|(one, _)| *one == target).unwrap().1
}

#[tokio::test]
async fn the_first_is_set_aside_and_keeps_all_that_is_its_own() {
    let mut scene = Scene::build().await;
    let (first, second) = (scene.target, target(&scene.house, &scene.clinician, scene.client).await);
    let desk = scene.clinician.get(&format!("/sessions/{}/desk", scene.session)).await.body;
    assert!(desk.contains("data-act=\"turn\"") && desk.contains(&format!("data-target=\"{second}\"")), "the desk offers it");
    let set = Some(scene.set(1, Some(24.0), Ending::Done).await);
    assert_eq!(turns(&mut scene, second, Some(first)).await.status, 200);
    assert_eq!((state(&scene, first).await, state(&scene, second).await), ("incomplete".to_owned(), "planned".to_owned()));
    // Of the set before, though the session has turned.
    scene.kept(set, None, Moment::AfterSet, EntryValue::Sud { value: 6 }).await;
    let later = Some(scene.set(2, Some(24.0), Ending::Done).await);
    scene.kept(later, None, Moment::AfterSet, EntryValue::Sud { value: 2 }).await;
    let rated: Vec<(Uuid, i16)> = sqlx::query_as("SELECT target_id, value FROM rating WHERE set_id IS NOT NULL ORDER BY seq")
        .fetch_all(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(rated, [(first, 6), (second, 2)]);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(page.contains("Before that") && page.contains("set 1<"), "{page}");
    assert_eq!(turns(&mut scene, first, Some(second)).await.status, 200, "and back");
    scene.set(3, Some(24.0), Ending::Done).await;
    assert_eq!((state(&scene, first).await, state(&scene, second).await), ("active".to_owned(), "incomplete".to_owned()));
    let found = leeward::course::rebuild(&crate::course::owner(&scene.house.database)).await.unwrap();
    assert_eq!((found.targets, found.different), (2, vec![]));
}

#[tokio::test]
async fn what_cannot_be_turned_to_is_said() {
    let mut scene = Scene::build().await;
    let (first, second) = (scene.target, target(&scene.house, &scene.clinician, scene.client).await);
    assert_eq!(turns(&mut scene, first, Some(first)).await.status, 409, "already");
    assert_eq!(turns(&mut scene, second, None).await.status, 409, "the desk showed another");
    let other =
        leeward::clients::create(&scene.house.app, &scene.clinician.subject(), leeward::clients::NewClient::default()).await.unwrap();
    let foreign = target(&scene.house, &scene.clinician, other).await;
    assert_eq!(turns(&mut scene, foreign, Some(first)).await.status, 404, "of another client");
    sqlx::query("UPDATE target SET archived_at = '2026-01-05T00:00:00Z' WHERE id = $1")
        .bind(second)
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
    let archived = turns(&mut scene, second, Some(first)).await;
    assert!(archived.status == 409 && archived.body.contains("Restore it"), "{}", archived.body);
    sqlx::query("UPDATE session SET ended_at = opened_at, closing = 'no_reprocessing'")
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(turns(&mut scene, second, Some(first)).await.status, 409, "closed");
}

/// Risk turns the hour: its closing asks for nothing that would have to settle, and says whom to call in the practice's words.
#[tokio::test]
async fn an_hour_that_risk_turned_has_a_short_closing() {
    let mut scene = Scene::build().await;
    let practice = &scene.house.database.superuser;
    sqlx::query("UPDATE practice SET crisis_words = 'The night line of the practice.'").execute(practice).await.unwrap();
    scene.kept(None, None, Moment::Opening, EntryValue::Answered { answer: Answer::Acute, again: false }).await;
    let panel = scene.clinician.get_json(&format!("/sessions/{}/closing", scene.session)).await.json();
    assert_eq!((panel["short"].as_bool(), panel["crisis"].as_str()), (Some(true), Some("The night line of the practice.")));
    assert_eq!((panel["form"]["kind"].as_str(), panel["form"]["effect"].as_str()), (Some("no_reprocessing"), Some("")));
    let mut form = panel["form"].clone();
    for (name, value) in [("state", "calm"), ("companion", "Edwin"), ("next_contact", "tomorrow at nine")] {
        form[name] = json!(value);
    }
    let key = leeward::base::ids::new_id(&scene.house.app.world).to_string();
    let closed = scene.clinician.post_json_once(&format!("/sessions/{}/closing", scene.session), &form, &key).await;
    assert_eq!(closed.status, 200, "{}", closed.body);
    let list = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(list.contains("no reprocessing"), "{list}");
}
