//! What it adds up to: a target's course, and the lead's caseload without a word about anybody.

mod closings;
mod counts;
mod numbering;
mod practice;
mod standing;

use chrono::Duration;
use leeward::clients::{self, NewClient};
use leeward::platform::Role;
use leeward::sessions::{self, Closing, ClosingKind, NewSession};
use leeward_core::course::Because;
use leeward_core::wire::{Ending, EntryValue, Moment};

use crate::scene::{LABEL, NAME, PICTURE, Scene, rows, target};

fn closing(kind: ClosingKind) -> Closing {
    let said = |text: &str| leeward::store::seal::Private::new(text);
    Closing {
        over: None,
        kind,
        because: Some(Because::Judgement),
        unsteady: false,
        resource: said("the quince tree"),
        leaving_state: said("Calm"),
        companion: said("aunt Ottoline"),
        next_contact: said("Friday"),
        client_words: said("Rest well."),
        note: said("a marmalade jar on the sill"),
        sud: None,
    }
}

/// Closes the session that is open and opens the next one a week later.
pub async fn next_session(scene: &mut Scene, kind: ClosingKind) {
    let subject = scene.clinician.subject();
    sessions::close(&scene.house.app, &subject, scene.session, closing(kind)).await.unwrap();
    scene.house.clock.advance(Duration::days(7));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let new = NewSession { client: scene.client, target: Some(scene.target) };
    scene.session = sessions::open(&scene.house.app, &scene.clinician.subject(), new).await.unwrap();
}

/// Three sessions with these ratings after their sets; made up for this test.
async fn a_course(scene: &mut Scene) {
    let sessions: [(&[u8], &[u8]); 3] = [(&[8, 9, 7, 6], &[2, 3]), (&[6, 5, 4, 3], &[3, 4]), (&[4, 2, 1, 0], &[4, 7])];
    for (at, (suds, vocs)) in sessions.into_iter().enumerate() {
        if at > 0 {
            next_session(scene, ClosingKind::Incomplete).await;
        }
        for (number, sud) in suds.iter().enumerate() {
            let set = scene.set(number as u32 + 1, Some(24.0), Ending::Done).await;
            scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: *sud }).await;
        }
        for voc in vocs {
            scene.kept(None, None, Moment::Installation, EntryValue::Voc { value: *voc }).await;
        }
        scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "a heron in the reeds".into() }).await;
    }
}

#[tokio::test]
async fn a_targets_page_shows_first_and_last_ratings_of_each_session() {
    let mut scene = Scene::build().await;
    a_course(&mut scene).await;
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await;
    assert_eq!(page.status, 200);
    assert_eq!(
        rows(&page.body, "over sessions</caption>"),
        ["3 Mar, assessed|8|8|8|2|2|2", "3 Mar|8|6|6 to 9|2|3|2 to 3", "10 Mar|6|3|3 to 6|3|4|3 to 4", "17 Mar|4|0|0 to 4|4|7|4 to 7"]
    );
    assert!(page.body.contains("SUD went from 8 to 0, highest 9 in between (asked once outside of sessions and in 3 of 3 sessions)."));
    assert!(page.body.contains("No band of reliable change"), "and says why there is none");
}

#[tokio::test]
async fn a_taken_back_rating_is_not_charted_and_a_corrected_one_keeps_its_place() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    let first = scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: 3 }).await;
    let last = scene.set(2, Some(24.0), Ending::Done).await;
    scene.kept(Some(last), None, Moment::AfterSet, EntryValue::Sud { value: 6 }).await;
    let slip = scene.kept(Some(last), None, Moment::AfterSet, EntryValue::Sud { value: 10 }).await;
    scene.kept(Some(last), Some(&slip), Moment::AfterSet, EntryValue::TakenBack).await;
    let once = scene.kept(Some(set), Some(&first), Moment::AfterSet, EntryValue::Sud { value: 9 }).await;
    scene.kept(Some(set), Some(&once), Moment::AfterSet, EntryValue::Sud { value: 7 }).await;
    let target = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert_eq!(rows(&target, "over sessions</caption>"), ["3 Mar, assessed|8|8|8|2|2|2", "3 Mar|7|6|6 to 7|not asked|not asked|not asked"]);
    let session = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert_eq!(rows(&session, "Ratings by set</caption>"), ["start|8|2|", "1|7|not asked|as planned", "2|6|not asked|as planned"]);
    assert!(session.contains("SUD fell from 8 to 6 (asked after 2 of 2 sets, last after set 2)."));
}

// EMDRIA's eight phases: re-evaluation opens a session and looks at the target of the one before.
#[tokio::test]
async fn a_reevaluation_is_of_the_target_that_was_worked_on_last() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: 1 }).await;
    let first = scene.target;
    scene.target = target(&scene.house, &scene.clinician, scene.client).await;
    next_session(&mut scene, ClosingKind::Complete).await;
    scene.kept(None, None, Moment::Reevaluation, EntryValue::Sud { value: 2 }).await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: 9 }).await;
    let before = scene.clinician.get(&format!("/targets/{first}")).await.body;
    assert_eq!(
        rows(&before, "over sessions</caption>"),
        ["3 Mar, assessed|8|8|8|2|2|2", "3 Mar|1|1|1|not asked|not asked|not asked", "10 Mar|2|2|2|not asked|not asked|not asked"]
    );
    let now = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert_eq!(rows(&now, "over sessions</caption>"), ["3 Mar, assessed|8|8|8|2|2|2", "10 Mar|9|9|9|not asked|not asked|not asked"]);
    let session = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert_eq!(rows(&session, "Ratings by set</caption>"), ["start|8|2|", "1|9|not asked|as planned"]);
    assert!(session.contains("of the target before"));
}

#[tokio::test]
async fn the_lead_sees_numbers_and_no_word_about_anybody() {
    let mut scene = Scene::build().await;
    a_course(&mut scene).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let caseload = lead.get("/practice/caseload").await;
    let client = lead.get(&format!("/practice/clients/{}", scene.client)).await;
    assert_eq!((caseload.status, client.status), (200, 200));
    let name: String = sqlx::query_scalar("SELECT name FROM access.member WHERE id = $1")
        .bind(scene.clinician.member)
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    // targets open, of them incomplete, complete; sessions; sets; dates; days since; first and last SUD
    assert_eq!(rows(&caseload.body, "By record number"), [format!("1|{name}|1|0|0|3|12|3 Mar 26|17 Mar 26|0|8|0|incomplete")]);
    let day = |day: &str, ratings: &str, closing: &str| format!("{day} March 2026|{name}|target 1|{closing}|4|{ratings}");
    assert_eq!(
        rows(&client.body, "First and last ratings"),
        [
            format!("1|{}", day("Tuesday 3", "8|6|2|3", "incomplete")),
            format!("2|{}", day("Tuesday 10", "6|3|3|4", "incomplete")),
            format!("3|{}", day("Tuesday 17", "4|0|4|7", "still open")),
        ]
    );
    let planted = [NAME, "Wilhelmina", LABEL, PICTURE, "heron", "quince", "Ottoline", "Friday", "Rest well", "marmalade"];
    for (page, body) in [("caseload", &caseload.body), ("client", &client.body)] {
        for words in planted {
            assert!(!body.contains(words), "{page}: {words}");
        }
    }
    for path in ["/clients", "/clients/", "/targets/", "/sessions/"] {
        let path = match path {
            "/clients/" => format!("/clients/{}", scene.client),
            "/targets/" => format!("/targets/{}", scene.target),
            "/sessions/" => format!("/sessions/{}", scene.session),
            path => path.to_owned(),
        };
        assert!(matches!(lead.get(&path).await.status, 403 | 404), "{path}");
    }
}

/// Nothing is seen of tones or taps, so they have neither a width nor a path.
#[tokio::test]
async fn a_set_of_tones_is_shown_without_a_width() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    let tones = r#"{"eyes": false, "ears": true, "hands": false}"#;
    for table in ["stimulus_set", "set_order"] {
        let change = format!("UPDATE {table} SET plan = jsonb_set(plan, '{{channels}}', $1::jsonb)");
        sqlx::query(sqlx::AssertSqlSafe(change)).bind(tones).execute(&scene.house.database.superuser).await.unwrap();
    }
    for path in [format!("/sessions/{}", scene.session), format!("/sessions/{}/sets/1", scene.session)] {
        let page = scene.clinician.get(&path).await.body;
        assert!(page.contains("no dot") && page.contains("tones"), "{path}");
        assert!(!page.contains('\u{b0}') && !page.contains("across"), "{path}");
    }
}

#[tokio::test]
async fn the_practice_is_for_leads_alone() {
    let scene = Scene::build().await;
    for roles in [&[Role::Clinician][..], &[Role::Administrator]] {
        let mut other = scene.house.member(roles).await;
        assert_eq!(other.get("/practice/caseload").await.status, 403, "{roles:?}");
        assert_eq!(other.get(&format!("/practice/clients/{}", scene.client)).await.status, 403, "{roles:?}");
    }
    let mut lead = scene.house.member(&[Role::Lead]).await;
    assert_eq!(lead.get("/practice/clients/00000000-0000-4000-8000-000000000001").await.status, 404);
    assert_eq!(lead.get("/practice/clients/seven").await.status, 404);
    assert_eq!(lead.get("/practice/caseload?clinician=seven").await.status, 400);
}

#[tokio::test]
async fn a_lead_who_treats_sees_the_names_of_their_own_clients_and_can_narrow_the_list() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead]).await;
    let other = scene.house.member(&[Role::Clinician]).await;
    let mut new = NewClient::default();
    new.details.name = leeward::store::seal::Private::new("Ambrose Thistlewood");
    clients::create(&scene.house.app, &other.subject(), new).await.unwrap();
    let all = scene.clinician.get("/practice/caseload").await.body;
    assert!(all.contains(NAME) && !all.contains("Ambrose"));
    assert_eq!(rows(&all, "By record number").len(), 2);
    let theirs = scene.clinician.get(&format!("/practice/caseload?clinician={}", other.member)).await.body;
    let left = rows(&theirs, "By record number");
    assert_eq!(left.len(), 1);
    assert!(left[0].starts_with("2|"), "{left:?}");
}
