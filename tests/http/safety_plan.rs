//! The safety plan: written, reviewed, shown in front, and given to the client line by line.

use chrono::Duration;
use leeward::platform::Role;
use leeward::safety_plan::SafetyPlan;
use leeward::store::seal::Private;

use crate::scene::{NAME, Scene};

/// An invented plan.
pub fn staying_safe() -> SafetyPlan {
    let parts = ["not eating\nthe window", "cold water", "Edwin", "the library", "the practice until six", "keys with Edwin"];
    SafetyPlan { parts: parts.map(Private::new), review_on: None }
}

const TYPED: [(&str, &str); 8] = [
    ("signs", "not eating\r\nstanding at the window"),
    ("helps", "cold water on the wrists"),
    ("people", "Edwin, most evenings"),
    ("places", ""),
    ("professionals", "the practice until six"),
    ("surroundings", "keys with Edwin"),
    ("review_on", "2026-12-24"),
    ("version", "0"),
];

fn with(name: &'static str, value: &'static str) -> Vec<(&'static str, &'static str)> {
    TYPED.into_iter().map(|(field, typed)| if field == name { (field, value) } else { (field, typed) }).collect()
}

#[tokio::test]
async fn a_plan_is_written_shown_and_given_line_by_line() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/safety-plan", scene.client);
    assert!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.body.contains(&format!("href=\"{path}\"")));
    assert!(scene.clinician.get(&path).await.body.contains("None is written yet"));
    assert_eq!(scene.clinician.get(&format!("{path}/copy")).await.status, 404);
    let edit = format!("{path}/edit");
    let saved = scene.clinician.post_form(&edit, &TYPED).await;
    assert_eq!((saved.status, saved.place()), (303, path.as_str()), "{}", saved.body);
    let page = scene.clinician.get(&path).await.body;
    for words in [
        "<li>not eating</li><li>standing at the window</li>",
        "cold water on the wrists",
        "Nothing is written down",
        "To be gone through again",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    let whole = scene.clinician.get(&format!("{path}/copy")).await.body;
    assert!(whole.contains("keys with Edwin") && whole.contains("standing at the window"));
    let chosen = scene.clinician.get(&format!("{path}/copy?with=signs.0&with=helps.0")).await.body;
    assert!(chosen.contains("not eating") && chosen.contains("cold water"), "{chosen}");
    for left_out in ["standing at the window", "keys with Edwin", "Professionals"] {
        assert!(!chosen.contains(left_out), "{left_out}");
    }
}

#[tokio::test]
async fn two_who_write_it_at_once_and_a_day_that_is_none() {
    let mut scene = Scene::build().await;
    let edit = format!("/clients/{}/safety-plan/edit", scene.client);
    for (field, typed, message) in
        [("review_on", "next week", "A day as year"), ("review_on", "2026-02-30", "A day as year"), ("people", "<b>Edwin", "markup")]
    {
        let refused = scene.clinician.post_form(&edit, &with(field, typed)).await;
        assert!(
            refused.status == 422 && refused.body.contains(message) && refused.body.contains("cold water"),
            "{typed}: {}",
            refused.body
        );
    }
    assert_eq!(scene.clinician.post_form(&edit, &TYPED).await.status, 303);
    let late = scene.clinician.post_form(&edit, &with("people", "Nobody yet")).await;
    assert!(late.status == 409 && late.body.contains("The record now says “Edwin, most evenings”."), "{}", late.body);
    let again = [&with("people", "Nobody yet")[..7], &[("version", "1")]].concat();
    assert_eq!(scene.clinician.post_form(&edit, &again).await.status, 303);
    scene.house.clock.advance(Duration::days(60));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let page = scene.clinician.get(&format!("/clients/{}/safety-plan", scene.client)).await.body;
    assert!(page.contains("Nobody yet"), "{page}");
}

#[tokio::test]
async fn nobody_else_reads_it() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/safety-plan", scene.client);
    assert_eq!(scene.clinician.post_form(&format!("{path}/edit"), &TYPED).await.status, 303);
    for role in [Role::Lead, Role::Clinician, Role::Administrator] {
        let mut other = scene.house.member(&[role]).await;
        for path in [path.clone(), format!("{path}/copy"), format!("{path}/edit")] {
            let answer = other.get(&path).await;
            assert!(answer.status == 404 && !answer.body.contains(NAME), "{role:?} {path}");
        }
    }
    let acts: Vec<String> = sqlx::query_scalar("SELECT DISTINCT act FROM audit WHERE act LIKE 'safety_plan.%' ORDER BY act")
        .fetch_all(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(acts, ["safety_plan.change"]);
}
