//! The client's own pages behind the link: what is kept and handed in, by which page, and what an errand can reach.

use leeward::askings::{self, New};
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::store::subject::Subject;
use leeward_core::measures::Measure;
use serde_json::json;
use uuid::Uuid;

use leeward_tests::forms::{draft, hidden};

use super::{CRISIS, answers, ask, open, send, send_from, today, worded};
use crate::scene::{LABEL, NAME, Scene, rows};

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
    let page = client.get("/q/forms").await.body;
    assert_eq!(send_from(&mut client, &page, &risky).await.place(), "/q/thanks");
    assert_eq!(send_from(&mut client, &page, &risky).await.place(), "/q/thanks", "sent again: it is there already");
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
async fn what_was_filled_in_is_kept_and_two_pages_do_not_overwrite_each_other() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut phone, _) = open(&scene, &link).await;
    let (mut tablet, _) = open(&scene, &link).await;
    let some = |third| [Some("1"), Some("-"), third, None, None, None, None];
    let on_phone = phone.get("/q/forms").await.body;
    let kept = phone.post_json("/q/draft", &draft(&on_phone, 0, 1, &some(None))).await;
    assert_eq!((kept.status, kept.json()["version"].as_i64()), (200, Some(1)), "{}", kept.body);
    let on_tablet = tablet.get("/q/forms").await.body;
    assert_eq!(hidden(&on_tablet, "was"), "1");
    assert!(on_tablet.contains("name=\"item_2\" value=\"-\" checked"), "{on_tablet}");
    // The answers to the phone's sendings were lost: it still thinks of version 0, and goes on from its own.
    for (sending, third) in [(2, "3"), (3, "2")] {
        assert_eq!(phone.post_json("/q/draft", &draft(&on_phone, 0, sending, &some(Some(third)))).await.status, 200, "{sending}");
    }
    let late = phone.post_json("/q/draft", &draft(&on_phone, 0, 2, &some(Some("3")))).await;
    assert_eq!((late.status, late.json()["version"].as_i64()), (200, Some(3)), "what comes late changes nothing");
    let other = tablet.post_json("/q/draft", &draft(&on_tablet, 1, 1, &some(Some("0")))).await;
    assert_eq!(other.status, 409, "{}", other.body);
    let mut unlike = [draft(&on_phone, 0, 4, &[Some("9")]), json!({ "measure": "phq9" }), draft(&on_phone, 0, 0, &some(None))];
    unlike[2]["wording"] = json!(Uuid::from_u128(9));
    for wrong in &unlike {
        let refused = phone.post_json("/q/draft", wrong).await;
        assert!(matches!(refused.status, 400 | 409), "{wrong}: {}", refused.status);
    }
    // What the tablet has is older than what the phone kept: it is not handed in, and the phone's is shown.
    let behind = send_from(&mut tablet, &on_tablet, &answers(Measure::Gad7, "1")).await;
    assert!(behind.status == 409 && behind.body.contains("You went on with this on another page"), "{} {}", behind.status, behind.body);
    assert!(behind.body.contains("name=\"item_3\" value=\"2\" checked"), "what the phone kept last: {}", behind.body);
    assert_eq!(send_from(&mut tablet, &behind.body, &answers(Measure::Gad7, "1")).await.place(), "/q/thanks", "now it was looked at");
    assert_eq!(phone.post_json("/q/draft", &draft(&on_phone, 3, 4, &some(Some("0")))).await.status, 409, "it was handed in");
    let before = send_from(&mut phone, &on_phone, &answers(Measure::Gad7, "3")).await;
    assert!(before.status == 200 && before.body.contains("What you chose here was not sent"), "{} {}", before.status, before.body);
    let left: (i64, i64) = sqlx::query_as("SELECT (SELECT count(*) FROM response_draft), (SELECT sum(total)::bigint FROM response)")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(left, (0, 7), "the tablet's, and no draft");
}

#[tokio::test]
async fn a_page_of_one_link_writes_nothing_under_another() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let first = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &first).await;
    let page = client.get("/q/forms").await.body;
    // Another client, or another asking, on the same tablet.
    let other = leeward::clients::create(&scene.house.app, &scene.clinician.subject(), Default::default()).await.unwrap();
    let now = scene.house.app.world.now();
    let asks =
        New { occasion: Occasion::Intake, measures: vec![Measure::Gad7], from_at: now, due_on: today(&scene), event: Private::default() };
    let link = askings::make(&scene.house.app, &scene.clinician.subject(), other, asks).await.unwrap();
    let opened = client.post_json("/q", &json!({ "link": link.split('#').nth(1).unwrap() })).await;
    assert_eq!(opened.status, 204, "{}", opened.body);
    let some = [Some("1"), None, None, None, None, None, None];
    assert_eq!(client.post_json("/q/draft", &draft(&page, 0, 1, &some)).await.status, 409);
    assert_eq!(send_from(&mut client, &page, &answers(Measure::Gad7, "1")).await.status, 409);
    assert_eq!(client.post_form("/q/decline", &[("asking", &hidden(&page, "asking"))]).await.status, 409);
    let kept: (i64, i64, i64) = sqlx::query_as(
        "SELECT (SELECT count(*) FROM response), (SELECT count(*) FROM response_draft), (SELECT count(*) FROM asking WHERE closed_at IS NOT NULL)",
    )
    .fetch_one(&scene.house.database.superuser)
    .await
    .unwrap();
    assert_eq!(kept, (0, 0, 0));
    assert!(client.get("/q/thanks").await.place() == "/q/forms", "nothing arrived");
}

#[tokio::test]
async fn what_was_answered_to_other_words_answers_none_of_these() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &link).await;
    let page = client.get("/q/forms").await.body;
    let some = [Some("1"), None, None, None, None, None, None];
    assert_eq!(client.post_json("/q/draft", &draft(&page, 0, 1, &some)).await.status, 200);
    worded(&scene, &[Measure::Gad7]).await;
    assert_eq!(client.post_json("/q/draft", &draft(&page, 1, 2, &some)).await.status, 409, "other words are in use");
    let behind = send_from(&mut client, &page, &answers(Measure::Gad7, "1")).await;
    assert!(behind.status == 409 && !behind.body.contains(" checked"), "{} {}", behind.status, behind.body);
    assert_eq!(send_from(&mut client, &behind.body, &answers(Measure::Gad7, "2")).await.place(), "/q/thanks");
    let same: bool = sqlx::query_scalar("SELECT wording_id = (SELECT id FROM wording WHERE ended_at IS NULL) FROM response")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert!(same, "kept as answered to the words that the client read");
}

#[tokio::test]
async fn an_errand_reaches_no_table_and_no_other_client() {
    let scene = Scene::build().await;
    worded(&scene, &[Measure::Phq9, Measure::Gad7]).await;
    let link = ask(&scene, Occasion::Regular, &[Measure::Phq9, Measure::Gad7]).await;
    // A form with its flag, and a draft: so that there is something to reach.
    let (mut client, _) = open(&scene, &link).await;
    assert_eq!(send(&mut client, &answers(Measure::Phq9, "1")).await.place(), "/q/thanks");
    let page = client.get("/q/forms").await.body;
    let some = [Some("1"), None, None, None, None, None, None];
    assert_eq!(client.post_json("/q/draft", &draft(&page, 0, 1, &some)).await.status, 200);
    let token = leeward::base::ids::Token::parse(&link).unwrap();
    let errand = Subject::Errand(token.clone());
    let tables: Vec<String> = sqlx::query_scalar(
        "SELECT relname::text FROM pg_class WHERE relkind IN ('r', 'v') AND relnamespace = 'public'::regnamespace AND relname NOT IN ('_sqlx_migrations', 'practice')",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    let mut with_rows = 0;
    for table in &tables {
        let all = format!("SELECT count(*) FROM {table}");
        let all: i64 = sqlx::query_scalar(sqlx::AssertSqlSafe(all)).fetch_one(&scene.house.database.superuser).await.unwrap();
        with_rows += i64::from(all > 0);
        let mut tx = scene.house.app.database.look(&errand).await.unwrap();
        let rows: i64 = sqlx::query_scalar(sqlx::AssertSqlSafe(format!("SELECT count(*) FROM {table}"))).fetch_one(&mut *tx).await.unwrap();
        assert_eq!(rows, 0, "{table}");
    }
    assert!(with_rows >= 20, "only {with_rows} tables had rows to hide");
    // What its functions tell is of its own asking alone, though another is open.
    let another = leeward::clients::create(&scene.house.app, &scene.clinician.subject(), Default::default()).await.unwrap();
    let now = scene.house.app.world.now();
    let new =
        New { occasion: Occasion::Intake, measures: vec![Measure::Gad7], from_at: now, due_on: today(&scene), event: Private::default() };
    askings::make(&scene.house.app, &scene.clinician.subject(), another, new).await.unwrap();
    let mut tx = scene.house.app.database.look(&errand).await.unwrap();
    let told: Vec<(Uuid, i64)> =
        sqlx::query_as("SELECT a.client_id, (SELECT count(*) FROM access.errand_forms()) FROM access.errand_asking() a")
            .fetch_all(&mut *tx)
            .await
            .unwrap();
    assert_eq!(told, [(scene.client, 2)]);
    drop(tx);
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
