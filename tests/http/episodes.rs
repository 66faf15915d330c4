//! Courses of treatment: begun by a session or by hand, ended by a person's word, and never by themselves.

use chrono::Duration;
use leeward::episodes;
use leeward::platform::Role;
use leeward_core::wire::Ending;
use leeward_tests::TestDatabase;
use sqlx::Row;

use crate::course::owner;
use crate::scene::Scene;

/// Closes the open session as one that took place.
async fn close(scene: &mut Scene) {
    let path = format!("/sessions/{}/close", scene.session);
    let closing =
        [("kind", "no_reprocessing"), ("effect", "not_needed"), ("state", "calm"), ("companion", "nobody"), ("next_contact", "Friday")];
    let answer = scene.clinician.fill_in(&path, &closing).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
}

/// Of each treatment of the practice: number, sessions attended, whether one was, whether one reprocessed, the reason of its end.
async fn kept(scene: &Scene) -> Vec<(i32, i32, bool, bool, Option<String>)> {
    sqlx::query_as(
        "SELECT number, sessions, started_at IS NOT NULL, reprocessed_at IS NOT NULL, reason FROM episode ORDER BY client_id, number",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap()
}

async fn end(scene: &mut Scene, number: i32, reason: &str, day: &str) -> leeward_tests::Answer {
    let path = format!("/clients/{}/episodes/{number}", scene.client);
    scene.clinician.fill_in(&path, &[("reason", reason), ("day", day)]).await
}

/// A sign-in does not last that long.
async fn later(scene: &mut Scene, by: Duration) {
    scene.house.clock.advance(by);
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
}

fn today(scene: &Scene) -> String {
    scene.house.app.world.now().date_naive().to_string()
}

async fn record(scene: &mut Scene) -> String {
    scene.clinician.get(&format!("/clients/{}", scene.client)).await.body
}

#[tokio::test]
async fn a_session_begins_a_treatment_and_what_is_kept_of_it_follows_its_sessions() {
    let mut scene = Scene::build().await;
    assert_eq!(kept(&scene).await, [(1, 0, false, false, None)], "opened is not attended");
    scene.set(1, Some(24.0), Ending::Done).await;
    close(&mut scene).await;
    assert_eq!(kept(&scene).await, [(1, 1, true, true, None)]);
    let page = record(&mut scene).await;
    assert!(page.contains("<dt>Treatment 1</dt><dd>one session, ") && page.contains("; reprocessing since "), "{page}");
    let owner = owner(&scene.house.database);
    assert_eq!(episodes::rebuild(&owner).await.unwrap(), episodes::Rebuilt { episodes: 1, different: vec![] });
    sqlx::query("UPDATE episode SET sessions = 7").execute(&scene.house.database.superuser).await.unwrap();
    assert_eq!(episodes::rebuild(&owner).await.unwrap().different.len(), 1, "and it is mended");
    assert_eq!(kept(&scene).await, [(1, 1, true, true, None)]);
}

#[tokio::test]
async fn who_did_not_attend_is_no_session_of_it() {
    let mut scene = Scene::build().await;
    let path = format!("/sessions/{}/close", scene.session);
    assert_eq!(scene.clinician.fill_in(&path, &[("kind", "did_not_attend"), ("next_contact", "a letter")]).await.status, 303);
    assert_eq!(kept(&scene).await, [(1, 0, false, false, None)]);
}

#[tokio::test]
async fn it_ends_by_a_persons_word_may_go_on_again_and_the_next_session_begins_another() {
    let mut scene = Scene::build().await;
    let day = today(&scene);
    let refused = end(&mut scene, 1, "as_agreed", &day).await;
    assert!(refused.status == 409 && refused.body.contains("A session of this treatment is open"), "{}", refused.body);
    close(&mut scene).await;
    for (reason, day, words) in [
        ("bored", day.as_str(), "Choose one of these"),
        ("moved", "soon", "year, month and day"),
        ("moved", "2126-01-01", "still to come"),
        ("moved", "2001-01-01", "There was a session after that"),
    ] {
        let refused = end(&mut scene, 1, reason, day).await;
        assert!(refused.status == 422 && refused.body.contains(words), "{reason} {day}: {}", refused.body);
    }
    assert_eq!(end(&mut scene, 1, "early_by_agreement", &day).await.status, 303);
    let page = record(&mut scene).await;
    assert!(page.contains("ended early, by agreement") && page.contains("Begin a treatment"), "{page}");
    assert_eq!(end(&mut scene, 1, "", &day).await.status, 303, "said too early: it goes on");
    assert_eq!(kept(&scene).await[0].4, None);
    assert_eq!(end(&mut scene, 1, "as_agreed", &day).await.status, 303);
    later(&mut scene, Duration::hours(1)).await;
    let path = format!("/clients/{}/sessions", scene.client);
    assert_eq!(scene.clinician.post_form(&path, &[]).await.status, 303);
    assert_eq!(kept(&scene).await.iter().map(|one| one.0).collect::<Vec<_>>(), [1, 2]);
    let refused = end(&mut scene, 1, "", &day).await;
    assert!(refused.status == 409 && refused.body.contains("Another treatment was begun"), "{}", refused.body);
}

#[tokio::test]
async fn one_begun_by_hand_is_the_one_that_the_first_session_belongs_to() {
    let mut scene = Scene::build().await;
    close(&mut scene).await;
    let day = today(&scene);
    assert_eq!(end(&mut scene, 1, "unknown", &day).await.status, 303);
    let path = format!("/clients/{}/episodes", scene.client);
    for _ in 0..2 {
        assert_eq!(scene.clinician.post_form(&path, &[]).await.status, 303, "sent again, it is the same one");
    }
    assert_eq!(kept(&scene).await.len(), 2);
    later(&mut scene, Duration::hours(1)).await;
    assert_eq!(scene.clinician.post_form(&format!("/clients/{}/sessions", scene.client), &[]).await.status, 303);
    assert_eq!(kept(&scene).await.len(), 2);
}

#[tokio::test]
async fn two_who_say_how_it_ended_do_not_replace_each_other() {
    let mut scene = Scene::build().await;
    close(&mut scene).await;
    let path = format!("/clients/{}/episodes/1", scene.client);
    let day = today(&scene);
    let mut other = scene.house.sign_in(scene.clinician.member).await;
    assert!(other.get(&path).await.body.contains("name=\"version\" value=\"1\""));
    assert_eq!(end(&mut scene, 1, "moved", &day).await.status, 303);
    let late = other.post_form(&path, &[("reason", "crisis"), ("day", &day), ("version", "1")]).await;
    assert!(late.status == 409 && late.body.contains("moved away"), "{}: {}", late.status, late.body);
    assert_eq!(kept(&scene).await[0].4.as_deref(), Some("moved"));
}

/// The day of an end is what was typed, however often it is looked at, and whoever sends it again does not judge.
#[tokio::test]
async fn an_end_on_an_earlier_day_stays_on_that_day() {
    let mut scene = Scene::build().await;
    close(&mut scene).await;
    let day = today(&scene);
    later(&mut scene, Duration::days(3)).await;
    let kept = async |scene: &Scene| -> (String, i32) {
        sqlx::query_as("SELECT ended_at::date::text, version FROM episode").fetch_one(&scene.house.database.superuser).await.unwrap()
    };
    for _ in 0..3 {
        assert_eq!(end(&mut scene, 1, "moved", &day).await.status, 303);
        assert_eq!(kept(&scene).await, (day.clone(), 2), "and nothing is written anew");
    }
    assert!(scene.clinician.get(&format!("/clients/{}/episodes/1", scene.client)).await.body.contains(&format!("value=\"{day}\"")));
}

#[tokio::test]
async fn after_weeks_without_a_session_an_end_is_proposed_and_nothing_happens_by_itself() {
    let mut scene = Scene::build().await;
    close(&mut scene).await;
    later(&mut scene, Duration::weeks(8) - Duration::hours(1)).await;
    assert!(!record(&mut scene).await.contains("Nobody was seen for"));
    later(&mut scene, Duration::hours(2)).await;
    assert!(record(&mut scene).await.contains("Nobody was seen for 8 weeks"));
    assert_eq!(kept(&scene).await[0].4, None);
}

#[tokio::test]
async fn nobody_else_says_how_it_ended_a_lead_reads_it_and_a_rehearsal_has_none() {
    let mut scene = Scene::build().await;
    close(&mut scene).await;
    let path = format!("/clients/{}/episodes/1", scene.client);
    for role in [Role::Clinician, Role::Lead] {
        let mut other = scene.house.member(&[role]).await;
        assert_eq!(other.get(&path).await.status, 404, "{role:?}");
        assert_eq!(other.post_form(&path, &[("reason", "died")]).await.status, 404, "{role:?}");
    }
    let lead = scene.house.member(&[Role::Lead]).await;
    let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
    let seen: i64 = sqlx::query_scalar("SELECT count(*) FROM episode").fetch_one(&mut *tx).await.unwrap();
    assert_eq!(seen, 1);
    drop(tx);
    assert_eq!(scene.clinician.post_form("/rehearsal", &[]).await.status, 303);
    assert_eq!(kept(&scene).await.len(), 1);
}

/// What a migration makes of a record is what its sessions make of it.
#[tokio::test]
async fn every_dump_gets_its_treatments() {
    let dumps = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("dumps");
    for dump in std::fs::read_dir(dumps).unwrap().map(|entry| entry.unwrap().path()) {
        if dump.extension().is_none_or(|ending| ending != "sql") {
            continue;
        }
        let database = TestDatabase::from_dump(&dump).await;
        let found = episodes::rebuild(&owner(&database)).await.unwrap();
        assert!(found.episodes > 0 && found.different.is_empty(), "{}: {found:?}", dump.display());
        let row = sqlx::query(
            "SELECT count(*) AS loose FROM session WHERE episode_id IS NULL AND client_id NOT IN (SELECT client_id FROM access.rehearsal)",
        );
        let loose: i64 = row.fetch_one(&database.superuser).await.unwrap().get("loose");
        assert_eq!(loose, 0, "{}", dump.display());
    }
}

#[tokio::test]
async fn a_treatment_begun_by_mistake_is_none_and_only_where_nobody_was_treated() {
    let mut scene = Scene::build().await;
    // Opened by mistake, and closed as such: the treatment that it began is one in which nobody was treated.
    let closing = [("kind", "by_mistake")];
    let closed = scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &closing).await;
    assert_eq!(closed.status, 303, "{}", closed.body);
    assert_eq!(kept(&scene).await, [(1, 0, false, false, None)]);
    let day = today(&scene);
    assert_eq!(end(&mut scene, 1, "mistake", &day).await.status, 303);
    assert!(record(&mut scene).await.contains("begun by mistake, nobody was treated"));
    // What is asked at a beginning begins one; nothing comes after the end of none.
    let sheet = leeward::measures::Sheet::new(leeward_core::measures::Measure::Gad7.form(), vec![Some(1); 7]).unwrap();
    let form = |occasion| leeward::measures::Filled {
        measure: leeward_core::measures::Measure::Gad7,
        occasion,
        answered_at: scene.house.app.world.now(),
        sheet: sheet.clone(),
        event: leeward::store::seal::Private::default(),
    };
    let (app, subject) = (scene.house.app.clone(), scene.clinician.subject());
    let after = leeward::measures::enter(&app, &subject, scene.client, &form(leeward::measures::Occasion::FollowUp)).await;
    assert!(after.is_err(), "no treatment has ended");
    leeward::measures::enter(&app, &subject, scene.client, &form(leeward::measures::Occasion::Intake)).await.unwrap();
    assert_eq!(kept(&scene).await.len(), 2);
    let refused = end(&mut scene, 2, "mistake", &day).await;
    assert!(refused.status == 409 && refused.body.contains("take the form back first"), "{} {}", refused.status, refused.body);
    // The database holds it too.
    let lie = sqlx::query("UPDATE episode SET ended_at = begun_at, reason = 'mistake', judged_by = $1 WHERE number = 2");
    let held = lie.bind(scene.clinician.member).execute(&scene.house.database.superuser).await.unwrap_err();
    assert!(held.to_string().contains("not allowed to change this"), "{held}");
}
