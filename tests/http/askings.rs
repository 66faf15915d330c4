//! Asking a client for forms: wording that is loaded and looked at, what may be asked, the client's own pages behind the link, and what an
//! errand can reach.

use chrono::{Duration, NaiveDate};
use leeward::askings::{self, New, Schedule};
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::store::subject::Subject;
use leeward::wordings;
use leeward_core::measures::Measure;
use leeward_core::wire::Ending;
use leeward_tests::forms::{file, wording};
use leeward_tests::{Answer, Browser};
use serde_json::json;
use uuid::Uuid;

use crate::scene::{LABEL, NAME, Scene, rows};

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

async fn send(client: &mut Browser, fields: &[(String, String)]) -> Answer {
    let fields: Vec<(&str, &str)> = fields.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    client.post_form("/q/forms", &fields).await
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
        (String::new(), "Choose the file"),
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
    assert_eq!(lead.post_form(&format!("{path}/end"), &[]).await.status, 303);
    assert_eq!(lead.post_form(&format!("{path}/end"), &[]).await.status, 409);
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

#[tokio::test]
async fn a_client_fills_in_a_form_by_link_and_the_clinician_reads_it() {
    let mut scene = Scene::build().await;
    sqlx::query("UPDATE practice SET crisis_words = $1, reading_hours = 'Weekdays, nine to five.'")
        .bind(CRISIS)
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
    worded(&scene, &[Measure::Pcl5, Measure::Phq9]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Pcl5, Measure::Phq9]).await;
    let mut scanner = scene.house.visitor();
    for _ in 0..3 {
        assert_eq!(scanner.get("/q").await.status, 200, "a program that follows links");
    }
    let (mut client, opened) = open(&scene, &link).await;
    assert_eq!(opened.status, 204, "it spends nothing: {}", opened.body);
    let page = client.get("/q/forms").await.body;
    assert!(page.contains("Weekdays, nine to five.") && page.contains(CRISIS) && page.contains("the crossing"), "{page}");
    assert!(page.contains("Invented question 20") && !page.contains("Invented question 21"));
    for words in [NAME, LABEL] {
        assert!(!page.contains(words), "the client's page names nobody");
    }
    let mut some = answers(Measure::Pcl5, "2");
    some.remove(4);
    let refused = send(&mut client, &some).await;
    assert!(refused.status == 422 && refused.body.contains("id=\"item_5-error\"") && refused.body.contains("value=\"2\" checked"));
    let sent = send(&mut client, &answers(Measure::Pcl5, "2")).await;
    assert_eq!((sent.status, sent.place()), (303, "/q/thanks"), "{}", sent.body);
    let thanks = client.get("/q/thanks").await.body;
    assert!(thanks.contains(CRISIS) && thanks.contains("href=\"/q/forms\""), "after every form: {thanks}");
    assert!(client.get("/q/forms").await.body.contains("Invented question 9"), "the next one");
    let mut risky = answers(Measure::Phq9, "0");
    risky[8].1 = "1".to_owned();
    assert_eq!(send(&mut client, &risky).await.place(), "/q/thanks");
    assert_eq!(send(&mut client, &risky).await.place(), "/q/thanks", "sent again: it is there already");
    let thanks = client.get("/q/thanks").await.body;
    assert!(thanks.contains(CRISIS) && !thanks.contains("href=\"/q/forms\""), "{thanks}");
    let caseload = scene.clinician.get("/clients").await.body;
    assert!(caseload.contains("Flag open") && caseload.contains("PHQ-9, item 9"), "{caseload}");
    let page = scene.clinician.get(&format!("/clients/{}/measures/1", scene.client)).await.body;
    assert!(page.contains("Filled in by the client.") && page.contains("<dd>40, of 80</dd>") && page.contains("the crossing"), "{page}");
    let page = scene.clinician.get(&format!("/clients/{}/askings", scene.client)).await.body;
    assert!(rows(&page, "Askings before this")[0].starts_with("PCL-5, PHQ-9|answered"), "{page}");
    let counts: (i64, i64) =
        sqlx::query_as("SELECT count(*), count(DISTINCT number) FROM response").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(counts, (2, 2), "once each");
}

#[tokio::test]
async fn what_was_filled_in_is_kept_and_two_devices_do_not_overwrite_each_other() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut phone, _) = open(&scene, &link).await;
    let (mut tablet, _) = open(&scene, &link).await;
    let draft = Uuid::from_u128(7);
    let body = |was: i32, third: Option<&str>| {
        let answers: [Option<&str>; 7] = [Some("1"), Some("-"), third, None, None, None, None];
        json!({ "measure": "gad7", "draft": draft, "was": was, "answers": answers })
    };
    let kept = phone.post_json("/q/draft", &body(0, None)).await;
    assert_eq!((kept.status, kept.json()["version"].as_i64()), (200, Some(1)), "{}", kept.body);
    let page = tablet.get("/q/forms").await.body;
    assert!(page.contains("data-version=\"1\"") && page.contains("name=\"item_2\" value=\"-\" checked"), "{page}");
    assert_eq!(phone.post_json("/q/draft", &body(1, Some("3"))).await.status, 200);
    let other = tablet.post_json("/q/draft", &body(1, Some("0"))).await;
    assert_eq!(other.status, 409, "{}", other.body);
    for wrong in [body(7, None), json!({ "measure": "gad7", "draft": draft, "was": 2, "answers": ["9"] }), json!({ "measure": "phq9" })] {
        let refused = phone.post_json("/q/draft", &wrong).await;
        assert!(matches!(refused.status, 400 | 409), "{wrong}: {}", refused.status);
    }
    assert!(tablet.get("/q/forms").await.body.contains("name=\"item_3\" value=\"3\" checked"), "what the phone kept last");
    assert_eq!(send(&mut tablet, &answers(Measure::Gad7, "1")).await.place(), "/q/thanks");
    assert_eq!(phone.post_json("/q/draft", &body(2, Some("0"))).await.status, 409, "it was handed in");
    let left: i64 = sqlx::query_scalar("SELECT count(*) FROM response_draft").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(left, 0);
}

#[tokio::test]
async fn a_link_that_is_over_opens_nothing() {
    let mut scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let first = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &first).await;
    let path = format!("/clients/{}/askings", scene.client);
    assert_eq!(scene.clinician.post_form(&format!("{path}/link"), &[]).await.status, 303);
    assert_eq!(client.get("/q/forms").await.status, 401, "a new link ends the old one");
    assert_eq!(open(&scene, &first).await.1.status, 401);
    let page = scene.clinician.get(&path).await.body;
    let second = page.split("/q#").nth(1).unwrap().split('<').next().unwrap().to_owned();
    let (mut client, opened) = open(&scene, &second).await;
    assert_eq!(opened.status, 204, "{}", opened.body);
    assert_eq!(scene.clinician.post_form(&format!("{path}/withdraw"), &[]).await.status, 303);
    assert_eq!(scene.clinician.post_form(&format!("{path}/withdraw"), &[]).await.status, 409);
    assert_eq!(send(&mut client, &answers(Measure::Gad7, "1")).await.status, 401, "taken back");
    // Late is better than never, until the link ends.
    let third = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    scene.house.clock.advance(Duration::days(10));
    let (mut client, _) = open(&scene, &third).await;
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    assert!(scene.clinician.get("/clients").await.body.contains("Forms asked for (in its course) have been overdue for 10 days"));
    assert_eq!(client.get("/q/forms").await.status, 200);
    scene.house.clock.advance(Duration::days(5));
    assert_eq!(client.get("/q/forms").await.status, 401);
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    assert!(scene.clinician.get(&path).await.body.contains("not answered; its link ended"));
    // What has ended stands in nobody's way.
    let fourth = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &fourth).await;
    assert_eq!(client.post_form("/q/decline", &[]).await.status, 303);
    assert!(client.get("/q/forms").await.body.contains("You chose not to answer"));
    assert_eq!(send(&mut client, &answers(Measure::Gad7, "1")).await.place(), "/q/forms", "nothing is taken after that");
    assert!(scene.clinician.get(&path).await.body.contains("declined by the client"));
    let kept: i64 = sqlx::query_scalar("SELECT count(*) FROM response").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(kept, 0);
}

#[tokio::test]
async fn what_is_due_follows_the_record() {
    let mut scene = Scene::build().await;
    let app = scene.house.app.clone();
    let set = Schedule { measures: vec![Measure::Phq9], every: 2, follow_up_weeks: Some(12) };
    askings::set(&app, &scene.clinician.subject(), scene.client, &set).await.unwrap();
    let due = async |scene: &Scene| -> Option<String> {
        sqlx::query_scalar("SELECT due_for FROM schedule WHERE due_on IS NOT NULL")
            .fetch_optional(&scene.house.database.superuser)
            .await
            .unwrap()
    };
    assert_eq!(due(&scene).await.as_deref(), Some("intake"));
    assert!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.body.contains("Forms are due today (intake)"));
    worded(&scene, &[Measure::Phq9]).await;
    let link = ask(&scene, Occasion::Intake, &[Measure::Phq9]).await;
    let (mut client, _) = open(&scene, &link).await;
    assert_eq!(send(&mut client, &answers(Measure::Phq9, "0")).await.place(), "/q/thanks");
    assert_eq!(due(&scene).await, None);
    scene.set(1, Some(24.0), Ending::Done).await;
    for session in 1..=2 {
        if session > 1 {
            scene.house.clock.advance(Duration::weeks(1));
            scene.clinician = scene.house.sign_in(scene.clinician.member).await;
            let new = leeward::sessions::NewSession { client: scene.client, target: None };
            scene.session = leeward::sessions::open(&app, &scene.clinician.subject(), new).await.unwrap();
        }
        let end = "UPDATE session SET admitted_at = opened_at + interval '1 day', opened_at = opened_at + interval '1 day', ended_at = opened_at + interval '2 days', closing = 'no_reprocessing' WHERE id = $1";
        sqlx::query(end).bind(scene.session).execute(&scene.house.database.superuser).await.unwrap();
    }
    assert_eq!(due(&scene).await.as_deref(), Some("regular"), "two sessions after the last form");
    scene.house.clock.advance(Duration::weeks(3));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let now = app.world.now();
    leeward::episodes::end(&app, &scene.clinician.subject(), scene.client, now, leeward::episodes::Reason::AsAgreed).await.unwrap();
    assert_eq!(due(&scene).await.as_deref(), Some("end"));
    let link = ask(&scene, Occasion::End, &[Measure::Phq9]).await;
    let (mut client, _) = open(&scene, &link).await;
    assert_eq!(client.post_form("/q/decline", &[]).await.status, 303);
    let next: (String, NaiveDate) =
        sqlx::query_as("SELECT due_for, due_on FROM schedule").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(next, ("follow_up".to_owned(), now.date_naive() + Duration::weeks(12)), "declined is dealt with");
}

#[tokio::test]
async fn an_errand_reaches_no_table_and_no_other_client() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Phq9]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Phq9]).await;
    let token = leeward::base::ids::Token::parse(&link).unwrap();
    let errand = Subject::Errand(token.clone());
    let tables: Vec<String> = sqlx::query_scalar(
        "SELECT relname::text FROM pg_class WHERE relkind IN ('r', 'v') AND relnamespace = 'public'::regnamespace AND relname NOT IN ('_sqlx_migrations', 'practice')",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    for table in &tables {
        let mut tx = scene.house.app.database.look(&errand).await.unwrap();
        let rows: i64 = sqlx::query_scalar(sqlx::AssertSqlSafe(format!("SELECT count(*) FROM {table}"))).fetch_one(&mut *tx).await.unwrap();
        assert_eq!(rows, 0, "{table}");
    }
    // The same token shown as anything else is nothing.
    for subject in [Subject::Member(token.clone()), Subject::Seat(token.clone()), Subject::Room(token)] {
        let mut tx = scene.house.app.database.look(&subject).await.unwrap();
        let asking: Option<Uuid> = sqlx::query_scalar("SELECT access.my_errand()").fetch_one(&mut *tx).await.unwrap();
        assert_eq!(asking, None);
    }
    let mut tx = scene.house.app.database.look(&errand).await.unwrap();
    for forbidden in ["SELECT access.errand_writes('phq9')", "SELECT * FROM access.errand"] {
        let denied = sqlx::query(forbidden).execute(&mut *tx).await.unwrap_err();
        assert!(denied.to_string().contains("permission denied"), "{forbidden}: {denied}");
        drop(tx);
        tx = scene.house.app.database.look(&errand).await.unwrap();
    }
    let other = scene.house.member(&[Role::Clinician]).await;
    let mut other = scene.house.sign_in(other.member).await;
    assert_eq!(other.get(&format!("/clients/{}/askings", scene.client)).await.status, 404);
}
