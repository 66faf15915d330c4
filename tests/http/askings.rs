//! Asking a client for forms: wording that is loaded and looked at, what may be asked, the client's own pages behind the link, and what an
//! errand can reach.

mod due;
mod pages;

use chrono::{Duration, NaiveDate};
use leeward::askings::{self, New};
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::wordings;
use leeward_core::measures::Measure;
use leeward_tests::forms::{file, hidden, of_page, wording};
use leeward_tests::{Answer, Browser};
use serde_json::json;
use uuid::Uuid;

use crate::scene::{Scene, rows};

const CRISIS: &str = "The night line of the practice: 555 0199.";

/// The practice has the wording of these.
async fn worded(scene: &Scene, measures: &[Measure]) {
    let lead = scene.house.member(&[Role::Lead]).await;
    for measure in measures {
        wordings::load_and_use(&scene.house.app, &lead.subject(), *measure, &wording(*measure)).await.unwrap();
    }
}

fn today(scene: &Scene) -> NaiveDate {
    scene.house.app.world.now().date_naive()
}

/// Asks the client for these now; the link's token.
async fn ask(scene: &Scene, occasion: Occasion, measures: &[Measure]) -> String {
    let now = scene.house.app.world.now();
    let new = New { occasion, measures: measures.to_vec(), from_at: now, due_on: today(scene), event: Private::new("the crossing") };
    let link = askings::make(&scene.house.app, &scene.clinician.subject(), scene.client, new).await.unwrap();
    link.split('#').nth(1).unwrap().to_owned()
}

async fn open(scene: &Scene, link: &str) -> (Browser, Answer) {
    let mut client = scene.house.visitor();
    let answer = client.post_json("/q", &json!({ "link": link })).await;
    (client, answer)
}

/// A client who opened the link of an asking for a PHQ-9.
pub async fn on_errand(scene: &Scene) -> Browser {
    worded(scene, &[Measure::Phq9]).await;
    let link = ask(scene, Occasion::Regular, &[Measure::Phq9]).await;
    let (client, answer) = open(scene, &link).await;
    assert_eq!(answer.status, 204, "{}", answer.body);
    client
}

fn answers(measure: Measure, answer: &str) -> Vec<(String, String)> {
    let count = measure.form().topics.len();
    (1..=count).map(|item| (format!("item_{item}"), answer.to_owned())).chain([("measure".to_owned(), measure.name().to_owned())]).collect()
}

/// Sends these as `page` of the client would.
async fn send_from(client: &mut Browser, page: &str, fields: &[(String, String)]) -> Answer {
    let own = of_page(page);
    let fields: Vec<(&str, &str)> = own.iter().chain(fields).map(|(name, value)| (name.as_str(), value.as_str())).collect();
    client.post_form("/q/forms", &fields).await
}

/// Sends a form on which nothing was chosen.
pub async fn send_empty(client: &mut Browser, page: &str) -> Answer {
    send_from(client, page, &[("measure".to_owned(), hidden(page, "measure"))]).await
}

/// Opens the form that is next, and sends these from it.
pub async fn send(client: &mut Browser, fields: &[(String, String)]) -> Answer {
    let page = client.get("/q/forms").await.body;
    send_from(client, &page, fields).await
}

async fn decline(client: &mut Browser) -> Answer {
    let page = client.get("/q/forms").await.body;
    client.post_form("/q/decline", &[("asking", &hidden(&page, "asking"))]).await
}

#[tokio::test]
async fn a_file_is_refused_with_what_to_do_or_waits_until_somebody_has_looked_at_it() {
    let scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let path = "/practice/wordings/gad7";
    let mut long = file(Measure::Gad7);
    let extra = json!({ "linkId": "q8", "text": "One more", "type": "choice", "answerOption": long["item"][0]["answerOption"] });
    long["item"].as_array_mut().unwrap().push(extra);
    let mut script = file(Measure::Gad7);
    script["title"] = json!("<script>alert(1)</script>");
    for (text, words) in [
        (long.to_string(), "has 7 questions, and this file has 8"),
        (script.to_string(), "it has markup"),
        ("{\"resourceType\": \"Questionnaire\",\n \"item\": [".to_owned(), "cannot be read at line 2"),
        (String::new(), "Paste here what stands in the file"),
    ] {
        let refused = lead.fill_in(path, &[("file", &text)]).await;
        assert!(refused.status == 422 && refused.body.contains(words), "{words}: {} {}", refused.status, refused.body);
        assert!(!refused.body.contains("<script>alert"), "what was pasted is shown as text");
    }
    let huge = lead.fill_in(path, &[("file", &"x".repeat(300_000))]).await;
    assert!(huge.status == 400 && huge.body.contains("too much text"), "{} {}", huge.status, huge.body);
    let good = file(Measure::Gad7).to_string();
    assert_eq!(lead.fill_in(path, &[("file", &good)]).await.status, 303);
    let page = lead.get(path).await.body;
    let first = &rows(&page, "Questions of")[0];
    assert!(first.starts_with("1|nervous") && first.contains("Invented question 1") && first.ends_with("3: Level 3"), "{first}");
    let waiting: Uuid = sqlx::query_scalar("SELECT id FROM wording").fetch_one(&scene.house.database.superuser).await.unwrap();
    let ask_page = format!("/clients/{}/askings/new", scene.client);
    let mut clinician = scene.clinician.clone();
    assert!(clinician.get(&ask_page).await.body.contains("No form has its wording here yet"), "nobody has looked at it");
    assert_eq!(lead.post_form(&format!("{path}/use"), &[("wording", &waiting.to_string())]).await.status, 303);
    assert_eq!(lead.post_form(&format!("{path}/use"), &[("wording", &waiting.to_string())]).await.status, 409);
    assert!(clinician.get(&ask_page).await.body.contains("name=\"gad7\""));
    // Another file takes its place once it was looked at; what was in use is kept.
    assert_eq!(lead.fill_in(path, &[("file", &good)]).await.status, 303);
    assert!(lead.get("/practice/wordings").await.body.contains("In use since"));
    let used = [("wording", waiting.to_string())];
    let used: Vec<(&str, &str)> = used.iter().map(|(name, value)| (*name, value.as_str())).collect();
    assert_eq!(
        lead.post_form(&format!("{path}/end"), &[("wording", &Uuid::from_u128(3).to_string())]).await.status,
        409,
        "not the one that is in use"
    );
    assert_eq!(lead.post_form(&format!("{path}/end"), &used).await.status, 303);
    assert_eq!(lead.post_form(&format!("{path}/end"), &used).await.status, 409);
}

#[tokio::test]
async fn forms_that_are_free_to_score_and_not_to_show_are_offered_with_their_wording_alone() {
    let scene = Scene::build().await;
    let path = format!("/clients/{}/measures/new/iesr", scene.client);
    let mut clinician = scene.clinician.clone();
    assert_eq!(clinician.get(&path).await.status, 404);
    worded(&scene, &[Measure::Iesr]).await;
    assert_eq!(clinician.get(&path).await.status, 200);
}

#[tokio::test]
async fn what_may_not_be_asked_is_refused_beside_its_field() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Pcl5, Measure::Itq, Measure::Phq9, Measure::Gad7, Measure::Who5, Measure::Des2]).await;
    let mut clinician = scene.clinician.clone();
    let path = format!("/clients/{}/askings/new", scene.client);
    let (now, later) = (today(&scene).to_string(), (today(&scene) + Duration::days(7)).to_string());
    let good = [("occasion", "regular"), ("from", now.as_str()), ("due", later.as_str())];
    for (fields, words) in [
        (vec![("pcl5", "yes"), ("itq", "yes")], "one trauma form"),
        (vec![("pcl5", "yes"), ("phq9", "yes"), ("gad7", "yes"), ("who5", "yes")], "41 questions"),
        (vec![], "Choose a form"),
        (vec![("des2", "yes")], "belongs to intake"),
        (vec![("iesr", "yes")], "no wording in use"),
        (vec![("phq9", "yes"), ("from", "2020-01-01")], "Not before"),
        (vec![("phq9", "yes"), ("from", "")], "year, month and day"),
        (vec![("phq9", "yes"), ("due", "2020-01-01")], "Not before"),
        (vec![("phq9", "yes"), ("due", "2199-01-01")], "more than a year"),
        (vec![("phq9", "yes"), ("occasion", "whenever")], "Choose one of these"),
    ] {
        let kept: Vec<_> = good.iter().filter(|(name, _)| !fields.iter().any(|(other, _)| other == name)).chain(&fields).copied().collect();
        let refused = clinician.fill_in(&path, &kept).await;
        assert!(refused.status == 422 && refused.body.contains(words), "{words}: {} {}", refused.status, refused.body);
    }
    let fields = [&good[..], &[("phq9", "yes"), ("gad7", "yes"), ("pcl5", "yes"), ("event", "the crossing")]].concat();
    assert_eq!(clinician.fill_in(&path, &fields).await.status, 303);
    let twice = clinician.fill_in(&path, &fields).await;
    assert!(twice.status == 409 && twice.body.contains("asked for forms already"), "{}", twice.body);
    let page = clinician.get(&format!("/clients/{}/askings", scene.client)).await.body;
    assert!(page.contains("Asked now: PCL-5, PHQ-9, GAD-7") && page.contains("/q#"), "{page}");
    assert!(page.contains("the crossing"));
}
