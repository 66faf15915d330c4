//! Forms that were filled in: entered item by item, scored, corrected, taken back; the flag that one raises; who may read what.

use chrono::Duration;
use leeward::platform::Role;
use leeward_tests::Answer;
use uuid::Uuid;

use crate::scene::{Scene, rows};

/// Fields of a form: when, and its answers.
fn typed(answers: &[&str], occasion: &str, day: &str) -> Vec<(String, String)> {
    let items = answers.iter().enumerate().map(|(at, answer)| (format!("item_{}", at + 1), (*answer).to_owned()));
    items.chain([("occasion".to_owned(), occasion.to_owned()), ("day".to_owned(), day.to_owned())]).collect()
}

async fn enter(scene: &mut Scene, measure: &str, answers: &[&str], occasion: &str, more: &[(&str, &str)]) -> Answer {
    let day = scene.house.app.world.now().date_naive().to_string();
    let all = typed(answers, occasion, &day);
    let more = more.iter().map(|(name, value)| ((*name).to_owned(), (*value).to_owned()));
    let fields: Vec<(String, String)> =
        all.into_iter().filter(|(name, _)| !more.clone().any(|(other, _)| other == *name)).chain(more.clone()).collect();
    let fields: Vec<(&str, &str)> = fields.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    scene.clinician.fill_in(&format!("/clients/{}/measures/new/{measure}", scene.client), &fields).await
}

async fn weeks_later(scene: &mut Scene, weeks: i64) {
    scene.house.clock.advance(Duration::weeks(weeks));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
}

/// Of each treatment and measure: first, last, at the end, how many.
async fn summaries(scene: &Scene) -> Vec<(String, f64, f64, Option<f64>, i32)> {
    sqlx::query_as("SELECT measure, first_total, last_total, end_total, totals FROM episode_measure ORDER BY measure")
        .fetch_all(&scene.house.database.superuser)
        .await
        .unwrap()
}

const PHQ9: [&str; 9] = ["2", "2", "1", "1", "2", "1", "1", "0", "0"];

#[tokio::test]
async fn a_form_is_entered_scored_and_shown_over_time_and_its_summary_follows() {
    let mut scene = Scene::build().await;
    let saved = enter(&mut scene, "phq9", &PHQ9, "intake", &[]).await;
    assert_eq!((saved.status, saved.place()), (303, format!("/clients/{}/measures/1", scene.client).as_str()), "{}", saved.body);
    let page = scene.clinician.get(saved.place()).await.body;
    assert!(
        page.contains("<dt>Total</dt><dd>10, of 27</dd>") && page.contains("<dd>moderate</dd>") && page.contains("Kroenke 2001"),
        "{page}"
    );
    assert_eq!(rows(&page, "Answers by item")[1], "2|mood|2");
    weeks_later(&mut scene, 4).await;
    let answers = ["1", "0", "1", "0", "0", "0", "0", "0", "0"];
    assert_eq!(enter(&mut scene, "phq9", &answers, "regular", &[]).await.status, 303);
    weeks_later(&mut scene, 4).await;
    let answers = ["1", "0", "-", "0", "0", "0", "0", "0", "0"];
    assert_eq!(enter(&mut scene, "phq9", &answers, "end", &[]).await.status, 303);
    assert_eq!(summaries(&scene).await, [("phq9".to_owned(), 10.0, 2.0, Some(1.125), 3)]);
    let page = scene.clinician.get(&format!("/clients/{}/measures", scene.client)).await.body;
    // 6 points by the NHS's definition, cut 10: reference of measures.
    assert!(page.contains("from 10 to 1.1: reliably lower and below the cut (from 6 points on"), "{page}");
    assert_eq!(rows(&page, "Forms by day").len(), 3);
    assert!(page.contains("moderately severe"), "bands are named in the chart");
}

#[tokio::test]
async fn what_is_no_answer_is_refused_beside_its_item_and_nothing_is_lost() {
    let mut scene = Scene::build().await;
    for (name, value, words) in [
        ("item_3", "7", "Item 3: 7 is no answer to it"),
        ("item_3", "", "Choose the answer, or: left blank."),
        ("item_3", "two", "Choose the answer"),
        ("day", "2126-01-01", "still to come"),
        ("day", "today", "year, month and day"),
        ("occasion", "whenever", "Choose one of these"),
    ] {
        let refused = enter(&mut scene, "phq9", &PHQ9, "intake", &[(name, value)]).await;
        assert!(refused.status == 422 && refused.body.contains(words), "{name} {value:?}: {} {}", refused.status, refused.body);
        assert!(refused.body.contains("name=\"item_5\" value=\"2\" checked"), "what was chosen is still there");
    }
    assert!(summaries(&scene).await.is_empty());
    let path = format!("/clients/{}/measures/new", scene.client);
    for unknown in ["iesr", "anxiety5", "mood"] {
        assert_eq!(scene.clinician.get(&format!("{path}/{unknown}")).await.status, 404, "{unknown} is not offered");
    }
}

#[tokio::test]
async fn a_correction_takes_the_place_of_what_it_corrects_and_what_is_taken_back_counts_no_more() {
    let mut scene = Scene::build().await;
    assert_eq!(enter(&mut scene, "gad7", &["3"; 7], "intake", &[]).await.status, 303);
    let form = format!("/clients/{}/measures/new/gad7?corrects=1", scene.client);
    assert!(scene.clinician.get(&form).await.body.contains("name=\"item_7\" value=\"3\" checked"));
    let corrected = [("corrects", "1"), ("item_1", "0")];
    assert_eq!(enter(&mut scene, "gad7", &["3"; 7], "intake", &corrected).await.status, 303);
    assert_eq!(summaries(&scene).await, [("gad7".to_owned(), 18.0, 18.0, None, 1)]);
    let twice = enter(&mut scene, "gad7", &["3"; 7], "intake", &corrected).await;
    assert!(twice.status == 409 && twice.body.contains("corrected or taken back already"), "{}", twice.body);
    assert_eq!(scene.clinician.get(&format!("/clients/{}/measures/1", scene.client)).await.status, 404, "it stands no more");
    let withdraw = format!("/clients/{}/measures/2/withdraw", scene.client);
    assert_eq!(scene.clinician.post_form(&withdraw, &[]).await.status, 303);
    assert!(summaries(&scene).await.is_empty());
    assert_eq!(scene.clinician.post_form(&withdraw, &[]).await.status, 409);
    let page = scene.clinician.get(&format!("/clients/{}/measures", scene.client)).await.body;
    assert!(page.contains("None was entered yet"), "{page}");
}

// Louzon 2016, Simon 2013: reference of measures, section 2. 0 never says "no risk".
#[tokio::test]
async fn an_answer_about_death_raises_a_flag_that_stays_open_until_a_person_says_what_was_done() {
    let mut scene = Scene::build().await;
    let mut answers = ["0"; 9];
    answers[8] = "1";
    let saved = enter(&mut scene, "phq9", &answers, "intake", &[]).await;
    let page = scene.clinician.get(saved.place()).await.body;
    assert!(page.contains("item 9 (thoughts of death or self-harm) was answered with 1 or more"), "{page}");
    let caseload = scene.clinician.get("/clients").await.body;
    assert!(caseload.contains("Flag open") && caseload.contains("Look, and write it down"), "{caseload}");
    let record = format!("/clients/{}", scene.client);
    assert!(scene.clinician.get(&record).await.body.contains("look, and write down what was done"));
    let refused = scene.clinician.post_form(&format!("{}/withdraw", saved.place()), &[]).await;
    assert!(refused.status == 409 && refused.body.contains("Its flag is open"), "{}", refused.body);
    // What is refused is not offered either, and the page says why.
    let correct = format!("{record}/measures/new/phq9?corrects=1");
    let offers = |page: &str| (page.contains(&correct), page.contains("Take this form back"));
    assert!(offers(&page) == (false, false) && page.contains("Write down first what was done about it"), "{page}");
    assert_eq!(scene.clinician.get(&correct).await.status, 409);
    let refused = enter(&mut scene, "phq9", &answers, "intake", &[("corrects", "1"), ("item_3", "2")]).await;
    assert!(refused.status == 409 && refused.body.contains("Its flag is open"), "{}", refused.body);
    let close_session = "UPDATE session SET ended_at = opened_at, closing = 'no_reprocessing'";
    sqlx::query(close_session).execute(&scene.house.database.superuser).await.unwrap();
    let archive = scene.clinician.post_form(&format!("{record}/archive"), &[("version", "1")]).await;
    assert!(archive.status == 409 && archive.body.contains("raised a flag that is open"), "{}", archive.body);
    let close = format!("{}/flag", saved.place());
    for wrong in [[("done", "nothing"), ("known", "")], [("done", "emergency"), ("known", "yes")]] {
        assert_eq!(scene.clinician.post_form(&close, &wrong).await.status, 400, "{wrong:?}");
    }
    assert_eq!(scene.clinician.post_form(&close, &[("done", ""), ("known", "yes")]).await.status, 303);
    assert_eq!(scene.clinician.post_form(&close, &[("done", "asked")]).await.status, 409, "once");
    let page = scene.clinician.get(saved.place()).await.body;
    assert!(page.contains("known, looked at today, the plan stands") && offers(&page) == (true, true), "{page}");
    assert_eq!(scene.clinician.get(&correct).await.status, 200);
    assert!(!scene.clinician.get("/clients").await.body.contains("Flag open"));
    // Another form closes nothing and opens nothing; a blank asks.
    let nothing = enter(&mut scene, "phq9", &["0"; 9], "regular", &[]).await;
    assert!(!scene.clinician.get(nothing.place()).await.body.contains("item 9 (thoughts"), "0 says nothing");
    answers[8] = "-";
    let blank = enter(&mut scene, "phq9", &answers, "regular", &[]).await;
    assert!(scene.clinician.get(blank.place()).await.body.contains("was left blank: ask"));
}

#[tokio::test]
async fn the_member_whom_the_practice_named_learns_of_a_flag_and_not_what_it_says_and_a_lead_that_it_is_late() {
    let mut scene = Scene::build().await;
    let mut named = scene.house.member(&[Role::Clinician]).await;
    let lead = scene.house.member(&[Role::Lead]).await;
    let pool = scene.house.database.superuser.clone();
    sqlx::query("UPDATE practice SET told_too = $1").bind(named.member).execute(&pool).await.unwrap();
    assert_eq!(enter(&mut scene, "phq9", &["1"; 9], "intake", &[]).await.status, 303);
    let page = named.get("/clients").await.body;
    assert!(page.contains("raised a flag") && page.contains("Treated by") && !page.contains("item 9"), "{page}");
    let told: Vec<Uuid> = sqlx::query_scalar("SELECT member_id FROM risk_told").fetch_all(&pool).await.unwrap();
    assert_eq!(told, [named.member]);
    let late = async |scene: &Scene| {
        let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
        let flags: i64 = sqlx::query_scalar("SELECT count(*) FROM risk_flag").fetch_one(&mut *tx).await.unwrap();
        assert_eq!(flags, 0, "a lead reads no flag");
        sqlx::query_as::<_, (i64, Option<i64>)>("SELECT count(*), max(told) FROM access.flags_past_time()")
            .fetch_one(&mut *tx)
            .await
            .unwrap()
    };
    assert_eq!(late(&scene).await, (0, None));
    sqlx::query("UPDATE risk_flag SET raised_at = raised_at - interval '25 hours'").execute(&pool).await.unwrap();
    assert_eq!(late(&scene).await, (1, Some(0)), "who treats them has not had it on screen");
    scene.clinician.get("/clients").await;
    assert_eq!(late(&scene).await, (1, Some(1)));
}

#[tokio::test]
async fn others_reach_no_form_and_a_lead_reads_totals_and_no_answers() {
    let mut scene = Scene::build().await;
    assert_eq!(enter(&mut scene, "pcl5", &["2"; 20], "intake", &[("event", "the ferry")]).await.status, 303);
    for role in [Role::Clinician, Role::Lead] {
        let mut other = scene.house.member(&[role]).await;
        for path in ["measures", "measures/1", "measures/new/pcl5"] {
            assert_eq!(other.get(&format!("/clients/{}/{path}", scene.client)).await.status, 404, "{role:?} {path}");
        }
    }
    let lead = scene.house.member(&[Role::Lead]).await;
    let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
    let counts: (i64, i64, i64) = sqlx::query_as(
        "SELECT (SELECT count(*) FROM response), (SELECT count(*) FROM response_answers), (SELECT count(*) FROM episode_measure)",
    )
    .fetch_one(&mut *tx)
    .await
    .unwrap();
    assert_eq!(counts, (1, 0, 1));
    let answers: Vec<u8> =
        sqlx::query_scalar("SELECT answers || event FROM response_answers").fetch_one(&scene.house.database.superuser).await.unwrap();
    let clear = String::from_utf8_lossy(&answers);
    assert!(!clear.contains("2 2 2") && !clear.contains("ferry"), "sealed");
}

#[tokio::test]
async fn a_form_after_the_end_belongs_to_the_treatment_that_ended_and_counts_in_no_change_of_it() {
    let mut scene = Scene::build().await;
    let wait = async |scene: &mut Scene| {
        scene.house.clock.advance(Duration::minutes(5));
    };
    let early = enter(&mut scene, "who5", &["1"; 5], "follow_up", &[]).await;
    assert!(early.status == 409 && early.body.contains("No treatment has ended yet"), "{}", early.body);
    assert_eq!(enter(&mut scene, "who5", &["1"; 5], "intake", &[]).await.status, 303);
    let pool = scene.house.database.superuser.clone();
    sqlx::query("UPDATE session SET ended_at = opened_at, closing = 'no_reprocessing'").execute(&pool).await.unwrap();
    let day = scene.house.app.world.now().date_naive().to_string();
    let ended = scene.clinician.fill_in(&format!("/clients/{}/episodes/1", scene.client), &[("reason", "as_agreed"), ("day", &day)]).await;
    assert_eq!(ended.status, 303, "{}", ended.body);
    wait(&mut scene).await;
    assert_eq!(enter(&mut scene, "who5", &["4"; 5], "follow_up", &[]).await.status, 303);
    assert_eq!(summaries(&scene).await, [("who5".to_owned(), 20.0, 20.0, None, 1)]);
    let page = scene.clinician.get(&format!("/clients/{}/measures", scene.client)).await.body;
    assert!(!page.contains("In this treatment"), "one total in it is no change: {page}");
    // The paper that lay on the desk: of the treatment that has just ended, and not the beginning of another.
    assert_eq!(enter(&mut scene, "who5", &["3"; 5], "end", &[]).await.status, 303);
    assert_eq!(summaries(&scene).await, [("who5".to_owned(), 20.0, 20.0, Some(60.0), 2)]);
    let refused = enter(&mut scene, "who5", &["3"; 5], "regular", &[]).await;
    assert!(refused.status == 409 && refused.body.contains("No treatment was open then"), "{}", refused.body);
    assert_eq!(enter(&mut scene, "who5", &["2"; 5], "intake", &[("corrects", "1")]).await.status, 303);
    let treatments: i64 = sqlx::query_scalar("SELECT count(*) FROM episode").fetch_one(&pool).await.unwrap();
    assert_eq!(treatments, 1, "a correction begins none");
    assert_eq!(summaries(&scene).await, [("who5".to_owned(), 40.0, 40.0, Some(60.0), 2)]);
    assert_eq!(leeward::measures::rebuild(&crate::course::owner(&scene.house.database)).await.unwrap(), (1, vec![]));
}

#[tokio::test]
async fn a_pretend_client_has_no_forms() {
    let mut scene = Scene::build().await;
    let opened = scene.clinician.post_form("/rehearsal", &[]).await;
    assert_eq!(opened.status, 303);
    let client: Uuid =
        sqlx::query_scalar("SELECT client_id FROM access.rehearsal").fetch_one(&scene.house.database.superuser).await.unwrap();
    scene.client = client;
    let refused = enter(&mut scene, "gad7", &["1"; 7], "intake", &[]).await;
    assert!(refused.status == 409 && refused.body.contains("nobody is treated"), "{}: {}", refused.status, refused.body);
    assert_eq!(scene.clinician.post_form(&format!("/clients/{client}/episodes"), &[]).await.status, 409);
    assert!(!scene.clinician.get(&format!("/clients/{client}")).await.body.contains(">Measures</a>"));
    assert!(summaries(&scene).await.is_empty());
}

#[tokio::test]
async fn about_another_event_no_change_is_judged() {
    let mut scene = Scene::build().await;
    assert_eq!(enter(&mut scene, "pcl5", &["3"; 20], "intake", &[("event", "the ferry")]).await.status, 303);
    weeks_later(&mut scene, 5).await;
    assert_eq!(enter(&mut scene, "pcl5", &["1"; 20], "regular", &[("event", "The ferry ")]).await.status, 303);
    let path = format!("/clients/{}/measures", scene.client);
    let page = scene.clinician.get(&path).await.body;
    // 15 points: Marx 2022, sample 1; the cut is 33.
    assert!(page.contains("from 60 to 20: reliably lower and below the cut (from 15 points on: Marx 2022, sample 1"), "{page}");
    weeks_later(&mut scene, 5).await;
    assert_eq!(enter(&mut scene, "pcl5", &["0"; 20], "regular", &[("event", "the stairs")]).await.status, 303);
    assert!(scene.clinician.get(&path).await.body.contains("not known to be about the same event"));
}
