//! Sessions: opened, written in, closed, read.

mod at_desk;
mod closing;
mod turn;

use leeward::platform::Role;
use leeward::sessions::{self, NewSession};
use leeward_core::wire::{Change, Ending, EntryValue, Moment, SessionLog};
use serde_json::json;

use crate::scene::{LABEL, NAME, Scene, rows, target};

const CLOSING: [(&str, &str); 8] = [
    ("kind", "incomplete"),
    ("resource", "calm place"),
    ("effect", "settled"),
    ("state", "tired"),
    ("companion", "sister in the next room"),
    ("next_contact", "Friday by phone, we call"),
    ("client_words", "We are done for today."),
    ("note", "Phase 4 begun.\nGo on next week."),
];

#[tokio::test]
async fn a_client_has_one_open_session_at_a_time() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/sessions", scene.client);
    let target = scene.target.to_string();
    let again = scene.clinician.post_form(&path, &[("target", &target)]).await;
    assert_eq!((again.status, again.location), (303, format!("/sessions/{}/desk", scene.session)));
    let closed = scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &CLOSING).await;
    assert_eq!((closed.status, closed.place()), (303, format!("/sessions/{}", scene.session).as_str()), "{}", closed.body);
    let next = scene.clinician.post_form(&path, &[("target", "")]).await;
    assert_eq!(next.status, 303);
    assert_ne!(next.location, format!("/sessions/{}/desk", scene.session));
    let rows: Vec<(i32, Option<uuid::Uuid>, bool)> = sqlx::query_as(
        "SELECT number, target_id, EXISTS (SELECT FROM session_words w WHERE w.session_id = s.id) FROM session s ORDER BY number",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    assert_eq!(rows, [(1, Some(scene.target), true), (2, None, true)]);
}

#[tokio::test]
async fn a_session_takes_only_its_own_clients_live_targets() {
    let mut scene = Scene::build().await;
    scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &CLOSING).await;
    let path = format!("/clients/{}/sessions", scene.client);
    let other = leeward::clients::create(&scene.house.app, &scene.clinician.subject(), Default::default()).await.unwrap();
    let foreign = target(&scene.house, &scene.clinician, other).await.to_string();
    assert_eq!(scene.clinician.post_form(&path, &[("target", &foreign)]).await.status, 404);
    assert_eq!(scene.clinician.post_form(&path, &[("target", "seven")]).await.status, 400);
    let now = scene.house.app.world.now();
    for (table, id) in [("target", scene.target), ("client", scene.client)] {
        let archive = format!("UPDATE {table} SET archived_at = $1 WHERE id = $2");
        sqlx::query(sqlx::AssertSqlSafe(archive)).bind(now).bind(id).execute(&scene.house.database.superuser).await.unwrap();
        let own = scene.target.to_string();
        assert_eq!(scene.clinician.post_form(&path, &[("target", &own)]).await.status, 409, "archived {table}");
    }
}

#[tokio::test]
async fn an_entry_sent_again_is_kept_once() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    for value in [EntryValue::Sud { value: 7 }, EntryValue::Words { words: "the railing again".into() }] {
        let entry = scene.entry(Some(set), None, Moment::AfterSet, value);
        let (first, again) = (scene.enter(&entry).await, scene.enter(&entry).await);
        assert_eq!((first.status, again.status), (200, 200));
        assert_eq!(first.json(), again.json(), "the same answer, time included");
        assert_eq!(first.json()["id"], json!(entry.id));
    }
    let rows: (i64, i64) =
        sqlx::query_as("SELECT (SELECT count(*) FROM rating WHERE session_id = $1), (SELECT count(*) FROM process_note)")
            .bind(scene.session)
            .fetch_one(&scene.house.database.superuser)
            .await
            .unwrap();
    assert_eq!(rows, (1, 1));
}

#[tokio::test]
async fn two_requests_with_one_id_at_once_keep_one_entry() {
    let scene = Scene::build().await;
    let entry = scene.entry(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 5 });
    let path = format!("/sessions/{}/entries", scene.session);
    let (mut one, mut two) = (scene.clinician.clone(), scene.clinician.clone());
    let (a, b) = tokio::join!(one.post_json(&path, &entry), two.post_json(&path, &entry));
    assert_eq!((a.status, b.status), (200, 200), "{} {}", a.body, b.body);
    assert_eq!(a.json(), b.json());
}

#[tokio::test]
async fn what_is_no_good_entry_is_refused_beside_its_field() {
    let mut scene = Scene::build().await;
    let kept = scene.kept(None, None, Moment::Assessment, EntryValue::Sud { value: 8 }).await;
    let taken = scene.kept(None, None, Moment::Assessment, EntryValue::Sud { value: 8 }).await;
    let back = scene.kept(None, Some(&taken), Moment::Assessment, EntryValue::TakenBack).await;
    let nowhere = "00000000-0000-4000-8000-000000000001";
    let path = format!("/sessions/{}/entries", scene.session);
    // SUD 0 to 10 (Wolpe 1990), VOC 1 to 7 (Shapiro 1989); the length of words is ours
    for (field, changed, why) in [
        ("value", json!({"value": {"kind": "sud", "value": 11}}), "SUD 11"),
        ("value", json!({"value": {"kind": "voc", "value": 0}}), "VOC 0"),
        ("value", json!({"value": {"kind": "voc", "value": 8}}), "VOC 8"),
        ("value", json!({"value": {"kind": "sud", "value": -1}}), "SUD -1"),
        ("value", json!({"value": {"kind": "sud", "value": 300}}), "SUD 300"),
        ("value", json!({"value": {"kind": "sud", "value": 6.5}}), "a half point"),
        ("words", json!({"value": {"kind": "words", "words": "  "}}), "blank words"),
        ("words", json!({"value": {"kind": "words", "words": "x".repeat(2001)}}), "2001 characters"),
        ("words", json!({"value": {"kind": "words", "words": "a\u{202e}b"}}), "a direction mark"),
        ("words", json!({"value": {"kind": "words", "words": "<script>"}}), "markup"),
        ("id", json!({"id": "seven"}), "an id that is none"),
        ("set", json!({"set": nowhere}), "a set of nowhere"),
        ("set", json!({"set": "seven"}), "a set that is no id"),
        ("replaces", json!({"replaces": nowhere}), "an entry of nowhere"),
        ("replaces", json!({"replaces": taken}), "one corrected already"),
        ("replaces", json!({"replaces": back, "value": {"kind": "taken_back"}}), "a taking back of a taking back"),
        ("replaces", json!({"replaces": back, "value": {"kind": "voc", "value": 3}}), "another kind put back"),
        ("replaces", json!({"replaces": kept, "value": {"kind": "voc", "value": 3}}), "another kind"),
        ("replaces", json!({"value": {"kind": "taken_back"}}), "nothing to take back"),
        ("entry", json!({"moment": "teatime"}), "a moment that is none"),
        ("entry", json!({"value": {"kind": "mood", "value": 3}}), "a kind that is none"),
    ] {
        let mut entry = json!(scene.entry(None, None, Moment::AfterSet, EntryValue::Sud { value: 5 }));
        entry.as_object_mut().unwrap().extend(changed.as_object().unwrap().clone());
        let answer = scene.clinician.post_json(&path, &entry).await;
        assert_eq!(answer.status, 422, "{why}: {}", answer.body);
        assert!(answer.json()["errors"][field].is_string(), "{why}: {}", answer.body);
    }
    let own = scene.house.origin.clone();
    let broken = scene.clinician.post_raw(&path, &[("origin", &own), ("content-type", "application/json")], "{").await;
    assert_eq!(broken.status, 400);
    let log: SessionLog = serde_json::from_value(scene.clinician.get_json(&path).await.json()).unwrap();
    assert_eq!(log.entries.len(), 3, "nothing refused was kept");
}

#[tokio::test]
async fn a_set_of_another_session_is_no_set_of_this_one() {
    let mut scene = Scene::build().await;
    let old = scene.set(1, Some(24.0), Ending::Done).await;
    scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &CLOSING).await;
    let new = NewSession { client: scene.client, target: None };
    let first = std::mem::replace(&mut scene.session, sessions::open(&scene.house.app, &scene.clinician.subject(), new).await.unwrap());
    let entry = scene.entry(Some(old), None, Moment::AfterSet, EntryValue::Sud { value: 5 });
    assert_eq!(scene.enter(&entry).await.status, 422);
    scene.session = first;
    assert_eq!(scene.enter(&entry).await.status, 200, "and after the end, its own session still takes it");
    let page = scene.clinician.get(&format!("/sessions/{first}")).await;
    assert!(page.body.contains("entered after the end"));
}

#[tokio::test]
async fn the_log_tells_everything_that_was_entered() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.5), Ending::Done).await;
    let unheard = scene.set(2, None, Ending::StoppedByClient).await;
    let sud = scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Sud { value: 9 }).await;
    let right = scene.kept(Some(set), Some(&sud), Moment::AfterSet, EntryValue::Sud { value: 6 }).await;
    let words = scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Words { words: "shoulders lower".into() }).await;
    scene.kept(Some(set), Some(&words), Moment::AfterSet, EntryValue::TakenBack).await;
    scene.kept(Some(unheard), None, Moment::AfterSet, EntryValue::Change { change: Change::Same }).await;
    let log: SessionLog =
        serde_json::from_value(scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await.json()).unwrap();
    let said: Vec<_> = log.entries.iter().map(|kept| (kept.entry.value.clone(), kept.entry.replaces.clone())).collect();
    assert_eq!(
        said,
        [
            (EntryValue::Sud { value: 9 }, None),
            (EntryValue::Sud { value: 6 }, Some(sud)),
            (EntryValue::Words { words: "shoulders lower".into() }, None),
            (EntryValue::TakenBack, Some(words)),
            (EntryValue::Change { change: Change::Same }, None),
        ]
    );
    assert_eq!(log.entries[1].entry.id, right);
    let sets: Vec<_> = log.sets.iter().map(|set| (set.number, set.plan.map(|plan| plan.rate), set.cycles, set.ending)).collect();
    assert_eq!(sets, [(1, Some(1.2), Some(24.5), Some(Ending::Done)), (2, Some(1.2), None, Some(Ending::StoppedByClient))]);
}

/// What the desk's "put back" sends: a new entry in place of the taking back.
#[tokio::test]
async fn what_was_taken_back_can_be_put_back() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    for value in
        [EntryValue::Sud { value: 6 }, EntryValue::Words { words: "cold hands".into() }, EntryValue::Change { change: Change::Same }]
    {
        let first = scene.kept(Some(set), None, Moment::AfterSet, value.clone()).await;
        let back = scene.kept(Some(set), Some(&first), Moment::AfterSet, EntryValue::TakenBack).await;
        scene.kept(Some(set), Some(&back), Moment::AfterSet, value).await;
    }
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert_eq!(rows(&page, "Ratings by set</caption>"), ["start|8|2|", "1|6|not asked|as planned"]);
    assert!(page.contains("cold hands"));
}

#[tokio::test]
async fn words_are_sealed_in_the_database() {
    let mut scene = Scene::build().await;
    scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "the railing again".into() }).await;
    scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &CLOSING).await;
    let rows: Vec<String> = sqlx::query_scalar(
        "SELECT encode(words, 'escape') FROM process_note
         UNION ALL SELECT encode(note || client_words || companion || resource || next_contact || leaving_state, 'escape') FROM session_words",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    assert_eq!(rows.len(), 3, "the report, and the words before and after the closing");
    for row in rows {
        for clear in ["railing", "Phase 4", "done for today", "sister", "calm place", "Friday", "Tired"] {
            assert!(!row.contains(clear), "{clear}");
        }
    }
}

#[tokio::test]
async fn the_sessions_page_shows_what_the_rows_say() {
    let mut scene = Scene::build().await;
    let whole = scene.set(1, Some(24.0), Ending::Done).await;
    scene.set(2, Some(7.25), Ending::StoppedByClient).await;
    scene.set(3, None, Ending::LinkLost).await;
    scene.kept(Some(whole), None, Moment::AfterSet, EntryValue::Sud { value: 6 }).await;
    let wrong = scene.kept(Some(whole), None, Moment::AfterSet, EntryValue::Voc { value: 3 }).await;
    scene.kept(Some(whole), Some(&wrong), Moment::AfterSet, EntryValue::TakenBack).await;
    scene.kept(Some(whole), None, Moment::AfterSet, EntryValue::Words { words: "the railing again".into() }).await;
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await;
    assert_eq!(page.status, 200);
    let sets = rows(&page.body, "Sets as ordered");
    assert_eq!(
        sets,
        [
            "1|24|1.00 to 1.20|18°|24.0|18°|20.5|as planned|6||",
            "2|24|1.00 to 1.20|18°|7.2|18°|20.5|stopped by the client|||",
            "3|24|1.00 to 1.20|18°|unknown|unknown|unknown|stopped: link lost|||",
        ]
    );
    assert!(page.body.contains("All of them: across, eyes."), "how they were given, said once where it is the same");
    assert!(page.body.contains("112 frames looked at, longest gap 84 ms, 1 s with a gap over 50 ms"));
    for part in ["Tuesday 3 March 2026", "UTC", NAME, LABEL, "the railing again"] {
        assert!(page.body.contains(part), "{part}");
    }
    assert!(page.body.contains("data-print=\"no\"><header><h2 id=\"reports\">"), "process notes stay off paper");
    let with = scene.clinician.get(&format!("/sessions/{}?print=notes", scene.session)).await.body;
    assert!(with.contains("aria-labelledby=\"reports\"><header>"), "unless they are asked for");
}

#[tokio::test]
async fn a_session_is_not_there_for_those_who_do_not_treat_its_client() {
    let mut scene = Scene::build().await;
    let kept = scene.kept(None, None, Moment::AfterSet, EntryValue::Sud { value: 5 }).await;
    let entry = scene.entry(None, Some(&kept), Moment::AfterSet, EntryValue::Sud { value: 1 });
    for roles in [&[Role::Clinician][..], &[Role::Lead], &[Role::Administrator]] {
        let mut other = scene.house.member(roles).await;
        let path = format!("/sessions/{}", scene.session);
        for page in [path.clone(), format!("{path}/close"), format!("{path}/note"), format!("{path}/entries")] {
            assert_eq!(other.get(&page).await.status, 404, "{roles:?} {page}");
        }
        assert_eq!(other.post_json(&format!("{path}/entries"), &entry).await.status, 404, "{roles:?}");
        assert_eq!(other.post_json(&format!("{path}/entries"), &json!({"id": 1})).await.status, 404, "{roles:?}");
        assert_eq!(other.post_form(&format!("{path}/close"), &CLOSING).await.status, 404, "{roles:?}");
        assert_eq!(other.post_form(&format!("{path}/note"), &[("version", "1"), ("note", "x")]).await.status, 404, "{roles:?}");
        assert_eq!(other.post_form(&format!("/clients/{}/sessions", scene.client), &[("target", "")]).await.status, 404, "{roles:?}");
    }
}
