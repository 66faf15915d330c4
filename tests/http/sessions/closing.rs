//! Closing a session, and its note.

use leeward_core::wire::{EntryValue, Moment};

use super::CLOSING;
use crate::scene::{LABEL, Scene};

fn closing_with(name: &'static str, value: &'static str) -> Vec<(&'static str, &'static str)> {
    CLOSING.iter().copied().filter(|(n, _)| *n != name).chain([(name, value)]).collect()
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
        ("kind", "reduced", "the target is not worked on as restricted"),
        ("because", "a whim", "a code that is not offered"),
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
    assert_eq!(scene.clinician.fill_in(&path, &closing).await.status, 303);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    for part in
        ["incomplete", "calm place. Settled after it", "Tired or tearful", "sister in the next room", "Friday by phone", "Phase 4 begun."]
    {
        assert!(page.contains(part), "{part}");
    }
    let row: (String, String, i16) = sqlx::query_as(
        "SELECT s.closing, t.state, r.value FROM session s JOIN target_course t ON t.target_id = s.target_id
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

#[tokio::test]
async fn a_note_written_before_the_closing_is_still_there_after_it() {
    let mut scene = Scene::build().await;
    let (note, close) = (format!("/sessions/{}/note", scene.session), format!("/sessions/{}/close", scene.session));
    assert_eq!(scene.clinician.fill_in(&note, &[("note", "Began with the calm place.")]).await.status, 303);
    let form = scene.clinician.get(&close).await.body;
    assert!(form.contains("Began with the calm place."), "the list starts from what is there");

    // Somebody goes on writing in another tab while the list is open.
    let version = form.split(r#"name="version" value=""#).nth(1).unwrap().split('"').next().unwrap().to_owned();
    assert_eq!(scene.clinician.fill_in(&note, &[("note", "Began with the calm place. Then phase 4.")]).await.status, 303);
    let typed =
        |note: &'static str| [&closing_with("note", note)[..], &[("version", version.as_str()), ("target_was", "planned")]].concat();
    let both = scene.clinician.post_form(&close, &typed("Began elsewhere.")).await;
    assert_eq!(both.status, 409, "both were changed: a person has to look");
    assert!(both.body.contains("Began elsewhere.") && both.body.contains("The record now says “Began with the calm place. Then phase 4.”"));
    assert_eq!(scene.clinician.post_form(&close, &typed("Began with the calm place.")).await.status, 303);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(page.contains("Then phase 4."), "what was not touched in the list gives way to what was written meanwhile");
}

#[tokio::test]
async fn every_version_of_a_note_stays_and_can_be_read() {
    let mut scene = Scene::build().await;
    let note = format!("/sessions/{}/note", scene.session);
    for text in ["First.", "Second.", "Third."] {
        assert_eq!(scene.clinician.fill_in(&note, &[("note", text)]).await.status, 303);
    }
    let page = scene.clinician.get(&note).await.body;
    assert!(page.contains("First.") && page.contains("Second.") && page.contains("As it stood before"));
    let pool = &scene.house.database.superuser;
    let rows: i64 = sqlx::query_scalar("SELECT count(*) FROM session_words").fetch_one(pool).await.unwrap();
    assert_eq!(rows, 4, "the empty first one and three");
    let mut tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    let refused = sqlx::query("UPDATE session_words SET note = ''").execute(&mut *tx).await.unwrap_err();
    assert!(refused.to_string().contains("permission denied"), "{refused}");
}

#[tokio::test]
async fn a_target_whose_status_changed_meanwhile_is_not_closed_over() {
    let mut scene = Scene::build().await;
    let close = format!("/sessions/{}/close", scene.session);
    sqlx::query("UPDATE target_course SET state = 'reopened'").execute(&scene.house.database.superuser).await.unwrap();
    let late = scene.clinician.post_form(&close, &[&CLOSING[..], &[("version", "1"), ("target_was", "planned")]].concat()).await;
    assert_eq!(late.status, 409);
    assert!(late.body.contains("The record now says “reopened"), "{}", late.body);
}

/// What a page offers is not what anybody said: nothing is chosen, and no field is filled with what was asked or used at another time.
#[tokio::test]
async fn the_list_shows_what_the_record_knows_and_fills_in_none_of_it() {
    let mut scene = Scene::build().await;
    let path = |scene: &Scene| format!("/sessions/{}/close", scene.session);
    let first = scene.clinician.get(&path(&scene)).await.body;
    assert!(first.contains("not asked in this session; 8 before it"), "the assessment's");
    assert!(!first.contains("Last time") && !first.contains("data-words"), "there was no other session");

    scene.clinician.fill_in(&path(&scene), &CLOSING).await;
    let target = scene.target.to_string();
    scene.clinician.post_form(&format!("/clients/{}/sessions", scene.client), &[("target", &target)]).await;
    scene.session = sqlx::query_scalar("SELECT id FROM session WHERE number = 2").fetch_one(&scene.house.database.superuser).await.unwrap();
    scene.kept(None, None, Moment::Reevaluation, EntryValue::Sud { value: 7 }).await;
    scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 3 }).await;
    let page = scene.clinician.get(&path(&scene)).await.body;
    let last: (i16, String) = sqlx::query_as(
        "SELECT r.value, to_char(r.at AT TIME ZONE s.zone, 'HH24:MI') FROM rating r JOIN session s ON s.id = r.session_id
         WHERE s.number = 2 AND r.scale = 'sud' ORDER BY r.seq DESC LIMIT 1",
    )
    .fetch_one(&scene.house.database.superuser)
    .await
    .unwrap();
    assert!(page.contains(&format!("<dt>Last SUD</dt><dd>{}, asked at {}</dd>", last.0, last.1)), "{last:?}");
    assert!(page.contains("<dt>Last VOC</dt><dd>not asked in this session; 2 before it</dd>"));
    assert!(page.contains(&format!("<dt>Target</dt><dd>{LABEL}, incomplete</dd>")));
    assert!(page.contains("Last time, session 1, Tuesday 3 March 2026: calm place</span>"), "where it is from is said");
    for name in ["resource", "sud", "companion", "next_contact", "state_more"] {
        assert!(page.contains(&format!("name=\"{name}\" value=\"\"")), "{name} is empty");
    }
    assert!(!page.contains(" checked") && !page.contains(" selected"), "nothing is chosen beforehand");
    // Not used this time: then nothing of last time gets into the record.
    let closing = [closing_with("resource", ""), vec![("effect", "not_needed")]].concat();
    let closing: Vec<_> = closing.into_iter().filter(|(name, value)| *name != "effect" || *value == "not_needed").collect();
    assert_eq!(scene.clinician.fill_in(&path(&scene), &closing).await.status, 303);
    let kept = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(kept.contains("<dt>To settle</dt><dd>Nothing was needed</dd>"));
    let asked: i64 = sqlx::query_scalar("SELECT count(*) FROM rating WHERE moment = 'closing'")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(asked, 0, "no SUD was asked at a close");
}

/// In the order in which a clinician closes; the summary of what was refused has the same.
#[tokio::test]
async fn the_list_and_its_summary_have_one_order() {
    let mut scene = Scene::build().await;
    let path = format!("/sessions/{}/close", scene.session);
    let order = |body: &str, mark: &dyn Fn(&str) -> String, names: &[&'static str]| {
        let mut places: Vec<_> = names.iter().map(|name| (body.find(&mark(name)).unwrap_or_else(|| panic!("{name}")), *name)).collect();
        places.sort_unstable();
        places.into_iter().map(|(_, name)| name).collect::<Vec<_>>()
    };
    let names = ["kind", "because", "sud", "resource", "effect", "state", "companion", "next_contact"];
    let page = scene.clinician.get(&path).await.body;
    assert_eq!(order(&page, &|name| format!(" name=\"{name}\""), &names), names);
    let refused = scene.clinician.post_form(&path, &[("sud", "11")]).await;
    assert_eq!(refused.status, 422);
    // Why it is complete is asked only of what is called so.
    let needed: Vec<&str> = names.into_iter().filter(|name| *name != "because").collect();
    assert_eq!(order(&refused.body, &|name| format!("<a href=\"#{name}\">"), &needed), needed);
}

/// Who did not come was not seen: it stays in the record, and counts nowhere.
#[tokio::test]
async fn an_appointment_that_did_not_take_place_is_no_session() {
    for (kind, next, words) in [("did_not_attend", "Friday by phone", "did not attend"), ("by_mistake", "", "opened by mistake")] {
        let mut scene = Scene::build().await;
        let path = format!("/sessions/{}/close", scene.session);
        let refused = scene.clinician.post_form(&path, &[("kind", "did_not_attend"), ("target_was", "planned"), ("version", "1")]).await;
        assert_eq!(refused.status, 422);
        assert!(
            refused.body.contains("id=\"next_contact-error\"") && !refused.body.contains("id=\"state-error\""),
            "only what comes next is asked"
        );
        let closed =
            scene.clinician.post_form(&path, &[("kind", kind), ("next_contact", next), ("target_was", "planned"), ("version", "1")]).await;
        assert_eq!(closed.status, 303, "{}", closed.body);
        let record = scene.clinician.get(&format!("/clients/{}", scene.client)).await.body;
        assert!(record.contains(words), "{record}");
        let caseload = scene.clinician.get("/clients").await.body;
        assert!(caseload.contains("no SUD yet") && !caseload.contains("Call due"), "{caseload}");
        let counted: (i64, i64) =
            sqlx::query_as("SELECT sessions, open FROM client_count").fetch_one(&scene.house.database.superuser).await.unwrap();
        assert_eq!(counted, (0, 1));
    }
}

#[tokio::test]
async fn what_took_place_is_not_closed_as_if_it_had_not() {
    let mut scene = Scene::build().await;
    sqlx::query("UPDATE session SET admitted_at = opened_at").execute(&scene.house.database.superuser).await.unwrap();
    sqlx::query("INSERT INTO session_moment (session_id, client_id, kind, at) SELECT id, client_id, 'admitted', opened_at FROM session")
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
    let path = format!("/sessions/{}/close", scene.session);
    assert!(!scene.clinician.get(&path).await.body.contains("did_not_attend"));
    let typed = [("kind", "did_not_attend"), ("next_contact", "Friday"), ("target_was", "planned"), ("version", "1")];
    let refused = scene.clinician.post_form(&path, &typed).await;
    assert_eq!(refused.status, 422);
    assert!(refused.body.contains("id=\"kind-error\""));
}
