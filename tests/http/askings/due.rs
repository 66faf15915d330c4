//! What is due and when, and when askings and their links end.

use chrono::{Duration, NaiveDate};
use leeward::askings::{self, Schedule};
use leeward::measures::Occasion;
use leeward_core::measures::Measure;
use leeward_core::wire::Ending;
use uuid::Uuid;

use leeward_tests::forms::hidden;

use super::{answers, ask, decline, open, send, send_from, worded};
use crate::course::owner;
use crate::scene::{Scene, rows};

#[tokio::test]
async fn an_asking_and_its_link_end_with_what_they_belong_to() {
    let mut scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let app = scene.house.app.clone();
    let path = format!("/clients/{}/askings", scene.client);
    // The link ends with the right of its maker; whoever treats the client now makes another.
    let link = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &link).await;
    let until = "UPDATE access.care_link SET until = $1 WHERE client_id = $2";
    let now = app.world.now();
    sqlx::query(until).bind(now).bind(scene.client).execute(&scene.house.database.superuser).await.unwrap();
    assert_eq!(client.get("/q/forms").await.status, 401);
    let again = "INSERT INTO access.care_link (id, member_id, client_id, since) VALUES (gen_random_uuid(), $1, $2, $3)";
    sqlx::query(again).bind(scene.clinician.member).bind(scene.client).bind(now).execute(&scene.house.database.superuser).await.unwrap();
    let page = scene.clinician.get(&path).await.body;
    assert!(page.contains("No link holds") && !page.contains("/q#"), "{page}");
    assert_eq!(scene.clinician.post_form(&format!("{path}/link"), &[("asking", &hidden(&page, "asking"))]).await.status, 303);
    assert!(scene.clinician.get(&path).await.body.contains("/q#"));
    // Taking back and making a link act on the asking that was shown.
    let stranger = Uuid::from_u128(5).to_string();
    for act in ["link", "withdraw"] {
        assert_eq!(scene.clinician.post_form(&format!("{path}/{act}"), &[("asking", &stranger)]).await.status, 409, "{act}");
    }
    // What was asked in its course ends with the treatment.
    let close = "UPDATE session SET ended_at = opened_at + interval '1 hour', closing = 'no_reprocessing'";
    sqlx::query(close).execute(&scene.house.database.superuser).await.unwrap();
    scene.house.clock.advance(Duration::hours(2));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let reason = leeward::episodes::Reason::ClientEnded;
    leeward::episodes::end(&app, &scene.clinician.subject(), scene.client, app.world.now(), reason).await.unwrap();
    let page = scene.clinician.get(&path).await.body;
    assert!(page.contains("taken back") && !page.contains("Asked now"), "{page}");
}

#[tokio::test]
async fn a_link_that_is_over_opens_nothing() {
    let mut scene = Scene::build().await;
    worded(&scene, &[Measure::Gad7]).await;
    let first = ask(&scene, Occasion::Regular, &[Measure::Gad7]).await;
    let (mut client, _) = open(&scene, &first).await;
    let path = format!("/clients/{}/askings", scene.client);
    let page = scene.clinician.get(&path).await.body;
    let which = hidden(&page, "asking");
    assert_eq!(scene.clinician.post_form(&format!("{path}/link"), &[("asking", &which)]).await.status, 303);
    assert_eq!(client.get("/q/forms").await.status, 401, "a new link ends the old one");
    assert_eq!(open(&scene, &first).await.1.status, 401);
    let page = scene.clinician.get(&path).await.body;
    let second = page.split("/q#").nth(1).unwrap().split('<').next().unwrap().to_owned();
    let (mut client, opened) = open(&scene, &second).await;
    assert_eq!(opened.status, 204, "{}", opened.body);
    let page = client.get("/q/forms").await.body;
    assert_eq!(scene.clinician.post_form(&format!("{path}/withdraw"), &[("asking", &which)]).await.status, 303);
    assert_eq!(scene.clinician.post_form(&format!("{path}/withdraw"), &[("asking", &which)]).await.status, 409);
    assert_eq!(send_from(&mut client, &page, &answers(Measure::Gad7, "1")).await.status, 401, "taken back");
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
    let page = client.get("/q/forms").await.body;
    assert_eq!(decline(&mut client).await.status, 303);
    assert!(client.get("/q/forms").await.body.contains("You chose not to answer"));
    assert_eq!(send_from(&mut client, &page, &answers(Measure::Gad7, "1")).await.place(), "/q/forms", "nothing is taken after that");
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
    assert_eq!(decline(&mut client).await.status, 303);
    let course = scene.clinician.get(&format!("/clients/{}/measures", scene.client)).await.body;
    assert!(rows(&course, "PHQ-9").iter().any(|row| row.ends_with("|declined")), "{course}");
    let next: (String, NaiveDate) =
        sqlx::query_as("SELECT due_for, due_on FROM schedule").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(next, ("follow_up".to_owned(), now.date_naive() + Duration::weeks(12)), "declined is dealt with");
}

/// What is due by the day it is.
async fn due_now(scene: &Scene) -> Option<(String, NaiveDate)> {
    let mut tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    let due: Option<(Option<String>, Option<NaiveDate>)> =
        sqlx::query_as("SELECT due_for, due_on FROM schedule_due").fetch_optional(&mut *tx).await.unwrap();
    due.and_then(|(what, on)| what.zip(on))
}

async fn enter(scene: &Scene, measure: Measure, occasion: Occasion) {
    let sheet = leeward::measures::Sheet::new(measure.form(), vec![Some(1); measure.form().topics.len()]).unwrap();
    let event = leeward::store::seal::Private::default();
    let filled = leeward::measures::Filled { measure, occasion, answered_at: scene.house.app.world.now(), sheet, event };
    leeward::measures::enter(&scene.house.app, &scene.clinician.subject(), scene.client, &filled).await.unwrap();
}

#[tokio::test]
async fn each_form_is_due_for_itself_and_those_of_the_end_do_not_wait_for_ever() {
    let mut scene = Scene::build().await;
    let app = scene.house.app.clone();
    let later = async |scene: &mut Scene, by: Duration| {
        scene.house.clock.advance(by);
        scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    };
    later(&mut scene, Duration::days(100)).await;
    let (client, subject) = (scene.client, scene.clinician.subject());
    let set = Schedule { measures: vec![], every: 4, follow_up_weeks: Some(12) };
    askings::set(&app, &subject, client, &set).await.unwrap();
    assert_eq!(due_now(&scene).await, None);
    later(&mut scene, Duration::days(50)).await;
    let form = [("pcl5", "yes"), ("phq9", "yes"), ("every", "4"), ("follow_up", "12")];
    let path = format!("/clients/{client}/askings/schedule");
    assert_eq!(scene.clinician.fill_in(&path, &form).await.status, 303);
    let day = app.world.now().date_naive();
    assert_eq!(due_now(&scene).await, Some(("intake".into(), day)), "from the day on which it was set, not before");
    enter(&scene, Measure::Phq9, Occasion::Intake).await;
    assert_eq!(due_now(&scene).await, Some(("regular".into(), day)), "the other is due still");
    enter(&scene, Measure::Pcl5, Occasion::Intake).await;
    assert_eq!(due_now(&scene).await, None);
    scene.set(1, Some(24.0), Ending::Done).await;
    let close = "UPDATE session SET admitted_at = opened_at, ended_at = opened_at + interval '1 hour', closing = 'no_reprocessing'";
    sqlx::query(close).execute(&scene.house.database.superuser).await.unwrap();
    later(&mut scene, Duration::days(1)).await;
    let ended = app.world.now();
    leeward::episodes::end(&app, &scene.clinician.subject(), client, ended, leeward::episodes::Reason::ClientEnded).await.unwrap();
    enter(&scene, Measure::Phq9, Occasion::End).await;
    assert_eq!(due_now(&scene).await, Some(("end".into(), ended.date_naive())), "one form at the end is not both");
    later(&mut scene, Duration::weeks(12) - Duration::days(1)).await;
    assert_eq!(due_now(&scene).await.map(|(what, _)| what).as_deref(), Some("end"));
    later(&mut scene, Duration::days(1)).await;
    let follow_up = ended.date_naive() + Duration::weeks(12);
    assert_eq!(due_now(&scene).await, Some(("follow_up".into(), follow_up)), "what nobody answered at the end is asked after it");
    assert!(scene.clinician.get(&format!("/clients/{client}")).await.body.contains("Forms are due today (after its end)"));
    let form = [("pcl5", "yes"), ("phq9", "yes"), ("every", "4"), ("follow_up", "")];
    assert_eq!(scene.clinician.fill_in(&path, &form).await.status, 303);
    assert_eq!(due_now(&scene).await, None, "for eight weeks, where nothing comes after");
    let form = [("pcl5", "yes"), ("phq9", "yes"), ("every", "4"), ("follow_up", "12")];
    assert_eq!(scene.clinician.fill_in(&path, &form).await.status, 303);
    later(&mut scene, Duration::days(89)).await;
    assert_eq!(due_now(&scene).await, Some(("follow_up".into(), follow_up)));
    later(&mut scene, Duration::days(1)).await;
    assert_eq!(due_now(&scene).await, None, "what nobody answers after the end is not due for ever");
    let (_, different) = askings::rebuild(&owner(&scene.house.database)).await.unwrap();
    assert!(different.is_empty(), "folded as the rules say");
}
