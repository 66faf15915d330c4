//! Which numbers may be used how, what is dialled for help, and the way after a client who is gone.

use chrono::Duration;
use leeward::platform::Role;
use leeward_core::wire::{EntryValue, Moment, ReachStep};

use crate::scene::{NAME, Scene};

const TYPED: [(&str, &str); 6] = [
    ("phone_use", "message"),
    ("contact_use", "never"),
    ("help_from_here", "+46 8 454 2400"),
    ("tried_on", "2026-03-01"),
    ("help_there", "112"),
    ("version", "0"),
];

fn with(name: &'static str, value: &'static str) -> Vec<(&'static str, &'static str)> {
    TYPED.into_iter().map(|(field, typed)| if field == name { (field, value) } else { (field, typed) }).collect()
}

// An emergency number reaches help at the caller's place only (clinical reference 1.1, source 3).
#[tokio::test]
async fn the_card_at_the_desk_says_what_may_be_called_and_what_reaches_help_there() {
    let mut scene = Scene::build().await;
    let (path, desk) = (format!("/clients/{}/reach", scene.client), format!("/sessions/{}/desk", scene.session));
    assert!(scene.clinician.get(&desk).await.body.contains("not asked whether it is safe"));
    for (field, typed) in [("phone_use", "sometimes"), ("help_from_here", "the police"), ("tried_on", "last week"), ("help_there", "1")] {
        assert_eq!(scene.clinician.post_form(&path, &with(field, typed)).await.status, 422, "{field} {typed}");
    }
    assert_eq!(scene.clinician.post_form(&path, &TYPED).await.status, 303);
    assert_eq!(scene.clinician.post_form(&path, &TYPED).await.status, 409, "somebody wrote it meanwhile");
    let page = scene.clinician.get(&desk).await.body;
    for words in [
        "+46 8 454 2400",
        "tried 1 Mar 26",
        "what the client dials</dt><dd class=\"number\">112",
        "safe to message, not to call",
        "never call or message",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    let record = scene.clinician.get(&format!("/clients/{}", scene.client)).await.body;
    assert!(record.contains("safe to message, not to call") && record.contains("+46 8 454 2400, tried 1 Mar 26"), "{record}");
    for role in [Role::Lead, Role::Clinician] {
        let answer = scene.house.member(&[role]).await.get(&path).await;
        assert!(answer.status == 404 && !answer.body.contains(NAME), "{role:?}");
    }
}

/// Tops the list until somebody has heard of them (common practice, no source).
#[tokio::test]
async fn who_is_gone_stands_first_until_they_were_heard_of() {
    let mut scene = Scene::build().await;
    let step = |step| EntryValue::Reach { step };
    scene.kept(None, None, Moment::AfterSet, step(ReachStep::NoAnswer)).await;
    let wrong = scene.kept(None, None, Moment::AfterSet, step(ReachStep::Safe)).await;
    scene.kept(None, Some(&wrong), Moment::AfterSet, EntryValue::TakenBack).await;
    let page = scene.clinician.get("/clients").await.body;
    assert!(page.contains("Not reached") && page.contains("called, no answer") && page.contains("Go on looking"), "{page}");
    let closing =
        [("kind", "no_reprocessing"), ("effect", "not_needed"), ("state", "left"), ("companion", "nobody"), ("next_contact", "tonight")];
    assert_eq!(scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &closing).await.status, 303);
    assert!(scene.clinician.get("/clients").await.body.contains("Not reached"), "closing is no news of them");
    scene.house.clock.advance(Duration::minutes(20));
    scene.kept(None, None, Moment::AfterSet, step(ReachStep::Reached)).await;
    let page = scene.clinician.get("/clients").await.body;
    assert!(!page.contains("Not reached"), "{page}");
    let session = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(session.contains("Looking for the client") && session.contains("reached"), "{session}");
    let steps: i64 = sqlx::query_scalar("SELECT count(*) FROM reach_step").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(steps, 4, "nothing is ever taken away");
}
