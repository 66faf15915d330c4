//! The call after a session: agreed by its closing, due on the caseload, and kept as often as it is tried.

use chrono::Duration;
use leeward::platform::Role;
use leeward_core::wire::{Answer, Ending, EntryValue, Moment};

use crate::scene::Scene;

/// Closes the session as said; the client leaves in this state.
async fn close(scene: &mut Scene, kind: &'static str, state: &'static str) {
    let common = [("effect", "settled"), ("resource", "calm place"), ("companion", "nobody"), ("next_contact", "Friday")];
    let closing =
        [&common[..], &[("kind", kind), ("state", state), ("because", if kind == "complete" { "judgement" } else { "" })]].concat();
    let answer = scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &closing).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
}

async fn later(scene: &mut Scene, hours: i64) {
    scene.house.clock.advance(Duration::hours(hours));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
}

async fn caseload(scene: &mut Scene) -> String {
    scene.clinician.get("/clients").await.body
}

async fn reason(scene: &Scene) -> Option<String> {
    sqlx::query_scalar("SELECT reason FROM after_check").fetch_optional(&scene.house.database.superuser).await.unwrap()
}

// 24 to 72 hours: a practitioner's judgement, from memory; a setting of the practice.
#[tokio::test]
async fn a_client_who_left_unfinished_is_called_within_the_window() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    close(&mut scene, "incomplete", "calm").await;
    assert_eq!(reason(&scene).await.as_deref(), Some("incomplete"));
    assert!(!caseload(&mut scene).await.contains("Call due"), "not before a day has gone by");
    later(&mut scene, 25).await;
    let page = caseload(&mut scene).await;
    assert!(page.contains("Call due") && page.contains("Session 1: closed as incomplete, to be called until"), "{page}");
    let path = format!("/sessions/{}/check", scene.session);
    assert_eq!(scene.clinician.post_form(&path, &[("outcome", "a chat")]).await.status, 400);
    assert_eq!(scene.clinician.post_form(&path, &[("outcome", "not_reached")]).await.status, 303);
    assert!(caseload(&mut scene).await.contains("Call due"), "who was not reached is still to be called");
    later(&mut scene, 48).await;
    assert!(caseload(&mut scene).await.contains("was to be called until"), "overdue");
    assert_eq!(scene.clinician.post_form(&path, &[("outcome", "well")]).await.status, 303);
    assert!(!caseload(&mut scene).await.contains("Call due"));
    assert_eq!(scene.clinician.post_form(&path, &[("outcome", "well")]).await.status, 409, "none is due any more");
    let session = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(session.contains("Not reached: to be tried again") && session.contains("Reached, and well"), "both tries stay");
}

#[tokio::test]
async fn the_most_urgent_reason_counts_and_a_calm_end_without_reprocessing_asks_for_none() {
    for (kind, state, sets, expected) in [
        ("incomplete", "unsettled", 1, Some("unsteady")),
        ("no_reprocessing", "left", 0, Some("unsteady")),
        ("complete", "calm", 1, Some("first_reprocessing")),
        ("no_reprocessing", "calm", 0, None),
    ] {
        let mut scene = Scene::build().await;
        for number in 1..=sets {
            scene.set(number, Some(24.0), Ending::Done).await;
        }
        close(&mut scene, kind, state).await;
        assert_eq!(reason(&scene).await.as_deref(), expected, "{kind}, {state}");
    }
}

/// Answers a line of the opening.
async fn answers(scene: &mut Scene, answer: Answer) {
    scene.kept(None, None, Moment::Opening, EntryValue::Answered { answer, again: false }).await;
}

// That a call for safety does not wait for the usual window is a practitioner's judgement, from memory.
#[tokio::test]
async fn where_risk_was_present_a_call_is_due_at_once_and_the_record_says_so_until_it_is_asked_anew() {
    let mut scene = Scene::build().await;
    answers(&mut scene, Answer::Acute).await;
    let record = format!("/clients/{}", scene.client);
    assert!(scene.clinician.get(&record).await.body.contains("Risk was said to be present"));
    let offer = scene.clinician.get(&format!("/sessions/{}/closing", scene.session)).await.body;
    assert!(offer.contains("A call is due 0 to 24 hours after this: for their safety."), "{offer}");
    // The short closing asks nothing about settling.
    let short = [("kind", "no_reprocessing"), ("state", "calm"), ("companion", "nobody"), ("next_contact", "Friday")];
    let answer = scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &short).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    assert_eq!(reason(&scene).await.as_deref(), Some("safety"));
    let session = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(session.contains("<dt>To settle</dt><dd>not asked</dd>"), "{session}");
    assert!(caseload(&mut scene).await.contains("Session 1: for their safety, to be called until"));
    let page = scene.clinician.get(&record).await.body;
    assert!(page.contains("A call is agreed") && page.contains("Risk was said to be present"), "{page}");
    assert_eq!(scene.clinician.post_form(&format!("/sessions/{}/check", scene.session), &[("outcome", "well")]).await.status, 303);
    assert!(!scene.clinician.get(&record).await.body.contains("A call is agreed"));
    let opened = scene.clinician.post_form(&format!("{record}/sessions"), &[]).await;
    scene.session = opened.place().split('/').nth(2).unwrap().parse().unwrap();
    answers(&mut scene, Answer::PlanStands).await;
    assert!(!scene.clinician.get(&record).await.body.contains("Risk was said to be present"), "asked anew");
}

#[tokio::test]
async fn nobody_else_writes_down_a_call_and_the_lead_reads_that_it_was_made() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    close(&mut scene, "incomplete", "calm").await;
    let path = format!("/sessions/{}/check", scene.session);
    for role in [Role::Clinician, Role::Lead] {
        let mut other = scene.house.member(&[role]).await;
        assert_eq!(other.post_form(&path, &[("outcome", "well")]).await.status, 404, "{role:?}");
    }
    let lead = scene.house.member(&[Role::Lead]).await;
    let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
    let due: i64 = sqlx::query_scalar("SELECT count(*) FROM after_check").fetch_one(&mut *tx).await.unwrap();
    assert_eq!(due, 1);
}
