//! The lead's first page: who came, stayed and left in a period, and whether totals changed in those whose treatment ended.

use chrono::Duration;
use leeward::clients::{self, NewClient};
use leeward::episodes::{self, Reason};
use leeward::measures::{self, Filled, Occasion, Sheet};
use leeward::platform::Role;
use leeward::sessions;
use leeward::store::seal::Private;
use leeward_core::measures::Measure;
use leeward_core::wire::{Ending, EntryValue, Moment};
use leeward_tests::Browser;
use sqlx::{Connection, PgConnection};
use uuid::Uuid;

use crate::scene::{LABEL, NAME, Scene, rows};

async fn fill_in(scene: &Scene, occasion: Occasion, answer: u8) {
    let form = Measure::Pcl5.form();
    let sheet = Sheet::new(form, vec![Some(answer); form.topics.len()]).unwrap();
    let filled = Filled { measure: Measure::Pcl5, occasion, answered_at: scene.house.app.world.now(), sheet, event: Private::default() };
    measures::enter(&scene.house.app, &scene.clinician.subject(), scene.client, &filled).await.unwrap();
}

/// A client with a form at intake, one session, and an end; `at_end`: the answers of the form there.
async fn treated(answers: (u8, Option<u8>), reason: Reason) -> Scene {
    let mut scene = Scene::build().await;
    fill_in(&scene, Occasion::Intake, answers.0).await;
    scene.set(1, Some(24.0), Ending::Done).await;
    let closing = [
        ("kind", "incomplete"),
        ("effect", "settled"),
        ("resource", "x"),
        ("state", "calm"),
        ("companion", "nobody"),
        ("next_contact", "x"),
    ];
    assert_eq!(scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &closing).await.status, 303);
    if let Some(answer) = answers.1 {
        fill_in(&scene, Occasion::End, answer).await;
    }
    scene.house.clock.advance(Duration::minutes(1));
    let now = scene.house.app.world.now();
    episodes::end(&scene.house.app, &scene.clinician.subject(), scene.client, now, reason).await.unwrap();
    scene
}

async fn page(lead: &mut Browser, period: &str) -> String {
    let answer = lead.get(&format!("/practice?period={period}")).await;
    assert_eq!(answer.status, 200, "{}", answer.body);
    answer.body
}

// Marx 2022: 15 points. Wilson's interval of 1 of 1 is 20.7 to 100 % (Newcombe 1998's method 3, by hand: 1 / (1 + z²)).
#[tokio::test]
async fn a_treatment_that_ended_is_counted_with_its_reason_and_its_change() {
    let scene = treated((3, Some(1)), Reason::AsAgreed).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let page = page(&mut lead, "year").await;
    assert!(page.contains("1 began, 1 ended, 0 were in treatment at the end of the period"), "{page}");
    assert_eq!(rows(&page, "How the 1 that ended did so"), ["completed as agreed|1|0"]);
    assert!(
        page.contains("PCL-5: 1 treatment that ended began with it, 1 has a total of it at the end too; 1 of these 1 is reliably better"),
        "{page}"
    );
    let classes = rows(&page, "PCL-5, from the first form");
    assert_eq!(classes[0], "reliably lower and below the cut|1|100 % (21 % to 100 %)", "{classes:?}");
    assert_eq!(classes[3], "reliably higher|0|0 % (0 % to 79 %)");
    assert!(page.contains("Mean at the start, all who began with it</dt><dd>60.0</dd>"), "20 answers of 3: {page}");
    assert!(page.contains("Mean at the start, those with a total at the end</dt><dd>60.0</dd>"), "{page}");
    assert!(page.contains("Mean improvement, those with a total at the end</dt><dd>40.0 points"), "{page}");
    assert!(page.contains("about 1.2 points of this form"), "what chance alone brings, by the reference's example: {page}");
    assert!(!page.contains("Greyed") && !page.contains(NAME) && !page.contains(LABEL));
}

#[tokio::test]
async fn without_a_form_at_the_end_it_is_greyed_and_the_bounds_say_how_little_is_known() {
    let scene = treated((3, None), Reason::ClientEnded).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let page = page(&mut lead, "year").await;
    assert!(page.contains("Greyed: only 0 of 1 (0 %) have a total at the end"), "{page}");
    assert!(
        page.contains("if none of those without one at the end is</dt><dd>0 %")
            && page.contains("if all of those without one at the end are</dt><dd>100 %")
            && page.contains("Mean at the start, those with a total at the end</dt><dd>none</dd>"),
        "{page}"
    );
}

#[tokio::test]
async fn what_lies_outside_of_the_period_is_not_in_it() {
    let scene = treated((3, Some(1)), Reason::AsAgreed).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let before = page(&mut lead, "before").await;
    assert!(before.contains("0 began, 0 ended"), "{before}");
    assert!(before.contains("No treatment that ended in this time has a form"));
    scene.house.clock.advance(Duration::days(370));
    let mut lead = scene.house.sign_in(lead.member).await;
    assert!(page(&mut lead, "year").await.contains("0 began, 0 ended"), "a year has passed");
}

#[tokio::test]
async fn only_a_lead_reads_it() {
    let scene = Scene::build().await;
    for roles in [&[Role::Clinician][..], &[Role::Administrator]] {
        let mut other = scene.house.member(roles).await;
        assert_eq!(other.get("/practice").await.status, 403, "{roles:?}");
    }
}

/// Three sessions on the target, each from one SUD to another.
async fn three_sessions(scene: &mut Scene, suds: [(u8, u8); 3]) {
    for (at, (from, to)) in suds.into_iter().enumerate() {
        if at > 0 {
            let close = "UPDATE session SET ended_at = opened_at + interval '1 hour', closing = 'no_reprocessing' WHERE ended_at IS NULL";
            sqlx::query(close).execute(&scene.house.database.superuser).await.unwrap();
            scene.house.clock.advance(Duration::weeks(1));
            scene.clinician = scene.house.sign_in(scene.clinician.member).await;
            let new = sessions::NewSession { client: scene.client, target: Some(scene.target) };
            scene.session = sessions::open(&scene.house.app, &scene.clinician.subject(), new).await.unwrap();
        }
        scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: from }).await;
        let set = scene.set(1, Some(24.0), Ending::Done).await;
        scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: to }).await;
    }
}

#[tokio::test]
async fn a_course_that_has_not_moved_in_three_sessions_is_named_by_record_and_no_other() {
    for (suds, still) in
        [([(7, 7), (8, 7), (7, 8)], true), ([(7, 7), (8, 7), (7, 6)], false), ([(7, 3), (6, 7), (7, 7)], false), ([(0, 0); 3], false)]
    {
        let mut scene = Scene::build().await;
        three_sessions(&mut scene, suds).await;
        let mut lead = scene.house.member(&[Role::Lead]).await;
        let page = page(&mut lead, "year").await;
        assert_eq!(page.contains("1 record has a course that has not moved in three sessions"), still, "{suds:?}: {page}");
        assert!(!page.contains(NAME) && !page.contains(LABEL));
        // A correction counts as what it says.
        let last = "SELECT id::text FROM rating WHERE scale = 'sud' ORDER BY seq DESC LIMIT 1";
        let last: String = sqlx::query_scalar(last).fetch_one(&scene.house.database.superuser).await.unwrap();
        let set =
            sqlx::query_scalar("SELECT set_id FROM rating WHERE id::text = $1").bind(&last).fetch_one(&scene.house.database.superuser);
        let set: Option<Uuid> = set.await.unwrap();
        scene.kept(set, Some(&last), Moment::AfterSet, EntryValue::Sud { value: 2 }).await;
        let differ: i64 = sqlx::query_scalar(
            "SELECT count(*) FROM target_still k FULL JOIN target_still_fold f USING (target_id) WHERE k.still IS DISTINCT FROM f.still",
        )
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
        assert_eq!(differ, 0, "{suds:?}");
        assert!(!self::page(&mut lead, "year").await.contains("1 record has a course"), "{suds:?}, corrected");
    }
}

/// Runs `second` while the transaction of `first` is open, each of one row, and lets both be kept.
async fn at_the_same_moment(db: &sqlx::PgPool, first: &'static str, second: &'static str) {
    let mut other = PgConnection::connect_with(&db.connect_options()).await.unwrap();
    let mut early = db.begin().await.unwrap();
    assert_eq!(sqlx::query(first).execute(&mut *early).await.unwrap().rows_affected(), 1);
    let second = tokio::spawn(async move {
        let mut late = other.begin().await.unwrap();
        assert_eq!(sqlx::query(second).execute(&mut *late).await.unwrap().rows_affected(), 1);
        late.commit().await.unwrap();
    });
    let waits = "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'";
    while sqlx::query_scalar::<_, i64>(waits).fetch_one(db).await.unwrap() == 0 {
        tokio::time::sleep(std::time::Duration::from_millis(20)).await;
    }
    early.commit().await.unwrap();
    second.await.unwrap();
}

/// One SUD more, of a session by its number, behind its last.
macro_rules! one_more {
    ($value:literal of session $number:literal) => {
        concat!(
            "INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, entered_by, at)
             SELECT gen_random_uuid(), r.client_id, r.session_id, r.target_id, r.set_id, r.scale, ",
            $value,
            ", r.moment, r.entered_by, r.at FROM rating r JOIN session s ON s.id = r.session_id WHERE r.scale = 'sud' AND s.number = ",
            $number,
            " ORDER BY r.seq DESC LIMIT 1"
        )
    };
}

#[tokio::test]
async fn what_is_kept_at_the_same_moment_is_all_in_what_is_said_of_the_course() {
    let mut scene = Scene::build().await;
    three_sessions(&mut scene, [(7, 7), (8, 7), (7, 8)]).await;
    let db = &scene.house.database.superuser;
    at_the_same_moment(db, one_more!(2 of session 3), one_more!(9 of session 2)).await;
    let kept = sqlx::query_as::<_, (bool, bool)>("SELECT k.still, f.still FROM target_still k JOIN target_still_fold f USING (target_id)");
    assert_eq!(kept.fetch_one(db).await.unwrap(), (false, false));
    let earlier = "UPDATE session SET opened_at = opened_at - interval '10 days', closing = closing WHERE number = 1";
    let later =
        "UPDATE session SET opened_at = opened_at + interval '10 days', admitted_at = opened_at + interval '10 days' WHERE number = 3";
    at_the_same_moment(db, earlier, later).await;
    let kept = "SELECT e.started_at = f.started_at AND e.last_at = f.last_at FROM episode e JOIN episode_fold f USING (id)";
    assert!(sqlx::query_scalar::<_, bool>(kept).fetch_one(db).await.unwrap());
}

#[tokio::test]
async fn what_waits_for_a_person_is_named_by_record_and_never_what_it_says() {
    let mut scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    assert!(page(&mut lead, "year").await.contains("Nothing waits for a person today"));
    let form = Measure::Phq9.form();
    let filled = Filled {
        measure: Measure::Phq9,
        occasion: Occasion::Intake,
        answered_at: scene.house.app.world.now(),
        sheet: Sheet::new(form, vec![Some(1); form.topics.len()]).unwrap(),
        event: Private::default(),
    };
    measures::enter(&scene.house.app, &scene.clinician.subject(), scene.client, &filled).await.unwrap();
    scene.clinician.get("/clients").await;
    let set = leeward::askings::Schedule { measures: vec![Measure::Pcl5], every: 4, follow_up_weeks: None };
    leeward::askings::set(&scene.house.app, &scene.clinician.subject(), scene.client, &set).await.unwrap();
    scene.house.clock.advance(Duration::days(16));
    let mut lead = scene.house.sign_in(lead.member).await;
    let page = page(&mut lead, "year").await;
    assert!(page.contains("1 flag is open past its time; 1 session was left open; 1 record has forms overdue"), "{page}");
    assert!(page.contains("15 days late; clinician told") && !page.contains("item 9") && !page.contains(NAME), "{page}");
}

#[tokio::test]
async fn of_a_long_list_the_first_are_named_and_all_on_asking() {
    let scene = Scene::build().await;
    for _ in 0..21 {
        let client = clients::create(&scene.house.app, &scene.clinician.subject(), NewClient::default()).await.unwrap();
        sessions::open(&scene.house.app, &scene.clinician.subject(), sessions::NewSession { client, target: None }).await.unwrap();
    }
    scene.house.clock.advance(Duration::days(1));
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let named = |page: &str| page.matches(", 1 day open</li>").count();
    let first = page(&mut lead, "before").await;
    assert!(first.contains("22 sessions were left open") && named(&first) == 20, "{first}");
    assert!(first.contains("<a href=\"/practice?period=before&amp;whole=unclosed#unclosed\">and 2 more</a>"), "{first}");
    let whole = page(&mut lead, "before&whole=unclosed").await;
    assert!(whole.contains("22 sessions were left open") && named(&whole) == 22 && !whole.contains("more</a>"), "{whole}");
    assert_eq!(named(&page(&mut lead, "before&whole=calls").await), 20, "another list");
}

#[tokio::test]
async fn a_quarter_that_was_frozen_stays_as_it_was_whatever_comes_in_later() {
    let mut scene = treated((3, None), Reason::AsAgreed).await;
    scene.house.clock.advance(Duration::days(92));
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let before = page(&mut lead, "before").await;
    assert!(before.contains("Greyed: only 0 of 1") && before.contains("Freeze this quarter"), "{before}");
    let first = before.split("name=\"first\" value=\"").nth(1).unwrap().split('"').next().unwrap().to_owned();
    assert_eq!(lead.post_form("/practice/snapshots", &[("first", "2020-01-01")]).await.status, 409, "another quarter");
    let made = lead.post_form("/practice/snapshots", &[("first", &first)]).await;
    assert_eq!(made.status, 303, "{}", made.body);
    assert_eq!(lead.post_form("/practice/snapshots", &[("first", &first)]).await.status, 409, "once");
    // A form of the end comes in late, and the threshold is set otherwise.
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    fill_in(&scene, Occasion::End, 1).await;
    sqlx::query("UPDATE practice SET points_pcl5 = 18").execute(&scene.house.database.superuser).await.unwrap();
    let now = page(&mut lead, "before").await;
    assert!(now.contains("1 of 1 (100 %)") && now.contains("18 points") && !now.contains("Greyed"), "{now}");
    assert!(!now.contains("Freeze this quarter"), "it was frozen");
    let kept = lead.get(&made.location).await.body;
    assert!(kept.contains("<strong>Frozen ") && kept.contains("Greyed: only 0 of 1") && kept.contains("15 points: "), "{kept}");
    assert!(!kept.contains("Nothing waits") && !kept.contains("id=\"today\""), "what waits is now, not then");
    assert_eq!(lead.get(&format!("/practice?period={}", Uuid::from_u128(3))).await.status, 404);
}

#[tokio::test]
async fn single_courses_are_offered_as_long_as_they_open() {
    let scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let course = format!("/practice/clients/{}", scene.client);
    assert!(lead.get("/practice/caseload").await.body.contains(&course) && lead.get(&course).await.status == 200);
    sqlx::query("UPDATE practice SET single_courses = false").execute(&scene.house.database.superuser).await.unwrap();
    assert!(!lead.get("/practice/caseload").await.body.contains(&course));
    let refused = lead.get(&course).await;
    assert!(refused.status == 409 && refused.body.contains("switched single courses off"), "{}", refused.body);
}
