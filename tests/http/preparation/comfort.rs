use leeward::platform::Role;

use super::{has, refused, with};
use crate::scene::Scene;

/// An invented sheet.
const SHEET: [(&str, &str); 10] = [
    ("path", "eight"),
    ("dot", "2,5"),
    ("sweep", "constant"),
    ("colours", "lake"),
    ("timbre", "wood"),
    ("pitch", "400"),
    ("tone_ms", "90"),
    ("level", "60"),
    ("vibration", "felt"),
    ("version", "0"),
];

#[tokio::test]
async fn a_sheet_is_filled_shown_and_changed() {
    let mut scene = Scene::build().await;
    let (record, path) = (format!("/clients/{}", scene.client), format!("/clients/{}/comfort", scene.client));
    has(&scene.clinician.get(&record).await.body, &["Fill the comfort sheet", "Not filled yet"]);
    has(
        &scene.clinician.get(&path).await.body,
        &[r#"value="across" checked"#, r#"name="pitch" value="450""#, r#"name="version" value="0""#],
    );
    let saved = scene.clinician.post_form(&path, &SHEET).await;
    assert_eq!((saved.status, saved.place()), (303, record.as_str()), "{}", saved.body);
    let words =
        ["figure of eight", "2.5°", "the same speed all the way", "pale blue on deep water", "wood, 400 Hz, 90 ms, level 60 %", ">felt<"];
    has(&scene.clinician.get(&record).await.body, &words);
    has(&scene.clinician.get(&path).await.body, &[r#"value="eight" checked"#, r#"value="felt" checked"#, r#"name="version" value="1""#]);

    // Filled twice from the same empty form: the second one is told what now stands.
    let late = scene.clinician.post_form(&path, &with(&SHEET, "pitch", "500")).await;
    assert_eq!(late.status, 409);
    has(
        &late.body,
        &["Not saved: somebody changed this meanwhile", r#"value="500""#, "The record now says “400”.", r#"name="version" value="1""#],
    );
    assert_eq!(scene.clinician.post_form(&path, &with(&with(&SHEET, "pitch", "500"), "version", "1")).await.status, 303);
    has(&scene.clinician.get(&record).await.body, &["wood, 500 Hz"]);
    let acts: Vec<String> = sqlx::query_scalar("SELECT DISTINCT act FROM audit WHERE act LIKE 'comfort.%' AND client_id = $1 ORDER BY act")
        .bind(scene.client)
        .fetch_all(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(acts, ["comfort.change", "comfort.view"]);
}

#[tokio::test]
async fn what_no_set_may_have_is_refused_beside_its_field() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/comfort", scene.client);
    for (field, typed, message) in [
        ("path", "round", "Choose one of these."),
        ("sweep", "", "Choose one of these."),
        ("colours", "red", "Choose one of these."),
        ("timbre", "siren", "Choose one of these."),
        ("vibration", "", "Choose one of these."),
        ("dot", "3.1", "The dot must be between 0.3 and 3 degrees."),
        ("dot", "big", "Give a number"),
        ("pitch", "1001", "The pitch of the tones must be between 200 and 1000 Hz."),
        ("pitch", "70000", "Give a whole number."),
        ("tone_ms", "10", "The length of a tone must be between 40 and 200 ms."),
        ("level", "0", "The level of the tones must be between 5 and 100 percent."),
        ("level", "101", "The level of the tones must be between 5 and 100 percent."),
    ] {
        let answer = scene.clinician.post_form(&path, &with(&SHEET, field, typed)).await;
        refused(&answer, field, message, if message.starts_with("Choose") { "" } else { typed });
        has(&answer.body, &[r#"value="lake" checked"#].map(|rest| if field == "colours" { message } else { rest }));
    }
    let broken = scene.clinician.post_form(&path, &with(&SHEET, "version", "x")).await;
    assert_eq!(broken.status, 400);
    let kept: i64 = sqlx::query_scalar("SELECT count(*) FROM comfort").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(kept, 0);
}

#[tokio::test]
async fn only_those_who_treat_the_client_see_a_sheet_and_an_archived_record_takes_none() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/comfort", scene.client);
    assert_eq!(scene.clinician.post_form(&path, &SHEET).await.status, 303);
    for role in [Role::Clinician, Role::Lead, Role::Administrator] {
        let mut other = scene.house.member(&[role]).await;
        assert_eq!((other.get(&path).await.status, other.post_form(&path, &SHEET).await.status), (404, 404), "{role:?}");
        assert_eq!(other.post_form(&path, &with(&SHEET, "dot", "9")).await.status, 404, "{role:?}: not even that the form is wrong");
    }
    sqlx::query("UPDATE client SET archived_at = now()").execute(&scene.house.database.superuser).await.unwrap();
    assert_eq!(scene.clinician.post_form(&path, &with(&SHEET, "version", "1")).await.status, 409);
}
