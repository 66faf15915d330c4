//! Closing from the desk: what the panel is told, what was typed so far, and what comes of it.

use chrono::Duration;
use leeward_core::wire::{Ending, EntryValue, Moment};
use leeward_tests::Answer;
use serde_json::{Value, json};

use crate::scene::Scene;

fn path(scene: &Scene, last: &str) -> String {
    format!("/sessions/{}/closing{last}", scene.session)
}

async fn panel(scene: &mut Scene) -> Value {
    let path = path(scene, "");
    let answer = scene.clinician.get_json(&path).await;
    assert_eq!(answer.status, 200, "{}", answer.body);
    answer.json()
}

/// The form as the panel has it, with these fields typed.
async fn typed(scene: &mut Scene, fields: &[(&str, &str)]) -> Value {
    let mut form = panel(scene).await["form"].clone();
    for (name, value) in fields {
        form[*name] = json!(value);
    }
    form
}

async fn closes(scene: &mut Scene, form: &Value) -> Answer {
    let (path, key) = (path(scene, ""), leeward::base::ids::new_id(&scene.house.app.world).to_string());
    scene.clinician.post_json_once(&path, form, &key).await
}

const LEAVES: [(&str, &str); 5] =
    [("resource", "the quay"), ("effect", "settled"), ("state", "calm"), ("companion", "nobody"), ("next_contact", "Thursday")];

fn with<'a>(more: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    [&LEAVES[..], more].concat()
}

// Complete at SUD 0, VOC 7 and a clear scan; incomplete skips both (clinical reference 1.6 and 1.7, source 1).
#[tokio::test]
async fn the_panel_says_what_the_record_says_and_chooses_nothing() {
    let mut scene = Scene::build().await;
    let before = panel(&mut scene).await;
    assert_eq!((before["proposed"].as_str(), before["form"]["kind"].as_str()), (Some("no_reprocessing"), Some("")));
    let set = Some(scene.set(1, Some(24.0), Ending::Done).await);
    let begun = panel(&mut scene).await;
    assert_eq!(begun["proposed"], "incomplete");
    assert_eq!(begun["asked"][0][2], true, "{}", begun["asked"]);
    for (moment, value) in [
        (Moment::BackAtTarget, EntryValue::Sud { value: 0 }),
        (Moment::Installation, EntryValue::Voc { value: 7 }),
        (Moment::AfterSet, EntryValue::Scan { scan: leeward_core::course::Scan::Clear }),
    ] {
        scene.kept(set, None, moment, value).await;
    }
    assert_eq!(panel(&mut scene).await["proposed"], "complete");
    let form = typed(&mut scene, &with(&[("kind", "complete")])).await;
    let closed = closes(&mut scene, &form).await;
    assert_eq!((closed.status, closed.json()["closed"].as_bool()), (200, Some(true)), "{}", closed.body);
    let stands: String = sqlx::query_scalar("SELECT state FROM target_course").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(stands, "complete");
    let path = path(&scene, "");
    assert_eq!(scene.clinician.get_json(&path).await.status, 409, "closed already");
}

#[tokio::test]
async fn what_is_wrong_is_said_by_field_and_nothing_is_closed() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    for (more, field) in [
        (&[("kind", "complete")][..], "because"),
        (&[("kind", "")], "kind"),
        (&[("kind", "incomplete"), ("sud", "11")], "sud"),
        (&[("kind", "incomplete"), ("companion", "")], "companion"),
        (&[("kind", "incomplete"), ("effect", "lovely")], "effect"),
    ] {
        let form = typed(&mut scene, &with(more)).await;
        let refused = closes(&mut scene, &form).await;
        assert!(refused.status == 422 && refused.json()["errors"][field].is_string(), "{field}: {}", refused.body);
    }
    let form = typed(&mut scene, &with(&[("kind", "complete"), ("because", "judgement")])).await;
    assert_eq!(closes(&mut scene, &form).await.status, 200);
}

#[tokio::test]
async fn what_was_typed_outlives_the_browser_and_another_window_replaces_none_of_it_unseen() {
    let mut scene = Scene::build().await;
    let form = typed(&mut scene, &[("kind", "incomplete"), ("note", "Phase 4, left at the rail.")]).await;
    let draft = path(&scene, "/draft");
    let kept = scene.clinician.post_json(&draft, &json!({ "form": form, "draft": 0 })).await;
    assert_eq!((kept.status, kept.json()["draft"].as_i64()), (200, Some(1)), "{}", kept.body);
    assert_eq!(scene.clinician.post_json(&draft, &json!({ "form": form, "draft": 0 })).await.json()["draft"], 1, "sent again, found again");
    let mut elsewhere = form.clone();
    elsewhere["note"] = json!("Typed elsewhere.");
    assert_eq!(scene.clinician.post_json(&draft, &json!({ "form": elsewhere, "draft": 0 })).await.status, 409, "typed elsewhere meanwhile");
    // Another browser of theirs.
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let found = panel(&mut scene).await;
    assert_eq!((found["form"]["note"].as_str(), found["draft"].as_i64()), (Some("Phase 4, left at the rail."), Some(1)));
    let page = scene.clinician.get(&format!("/sessions/{}/close", scene.session)).await.body;
    assert!(page.contains("Phase 4, left at the rail."), "the list in a tab of its own has it too");
    // The note is written on by its own page: the draft does not replace that unseen.
    let note = format!("/sessions/{}/note", scene.session);
    assert_eq!(scene.clinician.fill_in(&note, &[("note", "Written elsewhere.")]).await.status, 303);
    let form = typed(&mut scene, &with(&[("kind", "incomplete")])).await;
    let changed = closes(&mut scene, &form).await;
    assert!(changed.status == 409 && changed.json()["errors"]["note"].as_str().unwrap().contains("Written elsewhere."), "{}", changed.body);
    let mut again = form.clone();
    (again["version"], again["target_was"]) = (changed.json()["version"].clone(), changed.json()["target_was"].clone());
    assert_eq!(closes(&mut scene, &again).await.status, 200);
    let left: i64 = sqlx::query_scalar("SELECT count(*) FROM closing_draft WHERE length(typed) > 40")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(left, 0, "nothing is left of the draft");
    assert_eq!(scene.clinician.post_json(&draft, &json!({ "form": again, "draft": 2 })).await.status, 409);
}

#[tokio::test]
async fn a_session_that_was_left_is_closed_later_with_the_time_at_which_it_was_over() {
    let mut scene = Scene::build().await;
    scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 6 }).await;
    assert!(panel(&mut scene).await["left"].is_null(), "it goes on");
    let over = scene.house.app.world.now();
    scene.house.clock.advance(Duration::hours(20));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    assert!(panel(&mut scene).await["left"].is_string());
    for wrong in ["soon", "25:10"] {
        let form = typed(&mut scene, &with(&[("kind", "no_reprocessing"), ("over", wrong)])).await;
        let refused = closes(&mut scene, &form).await;
        assert!(refused.status == 422 && refused.json()["errors"]["over"].is_string(), "{wrong}: {}", refused.body);
    }
    let zone: String = sqlx::query_scalar("SELECT zone FROM session").fetch_one(&scene.house.database.superuser).await.unwrap();
    let local: String = sqlx::query_scalar("SELECT to_char($1 AT TIME ZONE $2, 'HH24:MI')")
        .bind(over + Duration::minutes(2))
        .bind(&zone)
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    let form = typed(&mut scene, &with(&[("kind", "no_reprocessing"), ("over", &local)])).await;
    let closed = closes(&mut scene, &form).await;
    assert_eq!(closed.status, 200, "{}", closed.body);
    let minutes: f64 = sqlx::query_scalar("SELECT (extract(epoch FROM over_at - opened_at) / 60)::float8 FROM session")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert!((0.0..=10.0).contains(&minutes), "{minutes} minutes");
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(page.contains(", closed "), "{page}");
}
