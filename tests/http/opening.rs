//! What the opening of an hour found: kept as entries are, and shown where it belongs.

use leeward::platform::Role;
use leeward_core::course::Because;
use leeward_core::wire::{Answer, EntryValue, Matter, Moment};

use crate::scene::Scene;

async fn says(scene: &mut Scene, value: EntryValue) -> u16 {
    let entry = scene.entry(None, None, Moment::Opening, value);
    scene.enter(&entry).await.status
}

fn answered(answer: Answer, again: bool) -> EntryValue {
    EntryValue::Answered { answer, again }
}

// Location, risk, privacy and consent are answered anew every time (clinical reference 1.10).
#[tokio::test]
async fn what_is_asked_anew_every_time_is_never_as_last_time() {
    let mut scene = Scene::build().await;
    for (answer, status) in [
        (Answer::UsualPlace, 422),
        (Answer::Private, 422),
        (Answer::NothingNew, 422),
        (Answer::Consents, 422),
        (Answer::Nobody, 200),
        (Answer::Reachable, 200),
        (Answer::Fit, 200),
        (Answer::WayAgreed, 200),
    ] {
        assert_eq!(says(&mut scene, answered(answer, true)).await, status, "{answer:?}");
    }
}

#[tokio::test]
async fn the_sessions_page_says_what_was_found_last_and_by_what_code_a_matter_was_gone_past() {
    let mut scene = Scene::build().await;
    let first = scene.kept(None, None, Moment::Opening, answered(Answer::Acute, false)).await;
    assert_eq!(says(&mut scene, EntryValue::Passed { matter: Matter::Risk, because: Because::Judgement }).await, 200);
    assert_eq!(says(&mut scene, answered(Answer::SomebodyToHelp, true)).await, 200);
    assert_eq!(says(&mut scene, EntryValue::Time { minutes: 90, reserve: 15 }).await, 200);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    for part in [
        "<dt>Risk</dt><dd>gone past: clinical judgement",
        "<dt>Who is near</dt><dd>somebody who can help, as last time",
        "90 min, the last 15 for closing",
    ] {
        assert!(page.contains(part), "{part}\n{page}");
    }
    let taken_back = scene.entry(None, Some(&first), Moment::Opening, EntryValue::TakenBack);
    assert_eq!(scene.enter(&taken_back).await.status, 200);
    let kept: Vec<(Option<String>, Option<String>)> =
        sqlx::query_as("SELECT code, because FROM hour_fact ORDER BY seq").fetch_all(&scene.house.database.superuser).await.unwrap();
    assert_eq!(kept.len(), 5, "nothing is ever taken away: {kept:?}");
}

#[tokio::test]
async fn bad_input_is_refused_with_the_reason() {
    let mut scene = Scene::build().await;
    for (minutes, reserve) in [(5, 0), (241, 10), (50, 61), (50, 50)] {
        assert_eq!(says(&mut scene, EntryValue::Time { minutes, reserve }).await, 422, "{minutes} {reserve}");
    }
    assert_eq!(says(&mut scene, EntryValue::Sud { value: 3 }).await, 422, "nothing is rated in the opening");
    let misplaced = scene.entry(None, None, Moment::AfterSet, answered(Answer::Fit, false));
    assert_eq!(scene.enter(&misplaced).await.status, 422);
}

/// It is about a person and today: for those who treat them.
#[tokio::test]
async fn nobody_else_reads_it() {
    let mut scene = Scene::build().await;
    assert_eq!(says(&mut scene, answered(Answer::Acute, false)).await, 200);
    for role in [Role::Clinician, Role::Lead] {
        let other = scene.house.member(&[role]).await;
        let mut tx = scene.house.app.database.look(&other.subject()).await.unwrap();
        let seen: i64 = sqlx::query_scalar("SELECT count(*) FROM hour_fact").fetch_one(&mut *tx).await.unwrap();
        assert_eq!(seen, 0, "{role:?}");
    }
}

/// The next session is offered what may be said again, and told of whom a re-evaluation would be.
#[tokio::test]
async fn the_log_brings_what_the_session_before_found() {
    let mut scene = Scene::build().await;
    for answer in [Answer::SomebodyToHelp, Answer::NothingNew] {
        assert_eq!(says(&mut scene, answered(answer, false)).await, 200);
    }
    super::outcomes::next_session(&mut scene, leeward::sessions::ClosingKind::NoReprocessing).await;
    let log = scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await.json();
    assert_eq!(log["opened_before"], serde_json::json!(["somebody_to_help", "nothing_new"]));
    assert_eq!(log["reevaluates"], crate::scene::LABEL);
}
