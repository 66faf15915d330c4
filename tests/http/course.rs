//! How far a target has come: what the pages say, what the row says that lists read, and what the record carries are one.

use chrono::Duration;
use leeward::course;
use leeward::platform::Role;
use leeward_core::wire::{Change, Ending, EntryValue, Moment, Rung, Saw};
use leeward_tests::{House, TestDatabase};
use sqlx::ConnectOptions as _;

use crate::scene::{Scene, rows};

/// How the scene's target stands: on its page, and in the row for lists.
async fn stands(scene: &mut Scene) -> (String, String) {
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    let shown = page.split("aria-label=\"How it stands\"><li>").nth(1).unwrap().split('<').next().unwrap().to_owned();
    let kept: String = sqlx::query_scalar(
        "SELECT concat_ws(' ', state, held, because, CASE WHEN unfounded THEN 'unfounded' END) FROM target_course WHERE target_id = $1",
    )
    .bind(scene.target)
    .fetch_one(&scene.house.database.superuser)
    .await
    .unwrap();
    (shown, kept)
}

async fn says(scene: &mut Scene, said: &str, because: &str) -> u16 {
    let (stood, _) = stands(scene).await;
    let path = format!("/targets/{}/facts", scene.target);
    scene.clinician.post_form(&path, &[("said", said), ("because", because), ("stood", &stood)]).await.status
}

async fn sud(scene: &mut Scene, moment: Moment, value: u8) -> String {
    scene.kept(None, None, moment, EntryValue::Sud { value }).await
}

async fn voc(scene: &mut Scene, moment: Moment, value: u8) -> String {
    scene.kept(None, None, moment, EntryValue::Voc { value }).await
}

pub fn owner(database: &TestDatabase) -> String {
    database.owner().to_url_lossy().to_string()
}

fn both(words: &str, kept: &str) -> (String, String) {
    (words.to_owned(), kept.to_owned())
}

/// Worked through to the standard end: SUD 0, VOC 7, a clear scan (EMDRIA's description of the eight phases).
async fn worked_through(scene: &mut Scene) {
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Change { change: Change::Settled }).await;
    sud(scene, Moment::BackAtTarget, 0).await;
    voc(scene, Moment::Installation, 7).await;
    assert_eq!(says(scene, "scan.clear", "").await, 303);
}

#[tokio::test]
async fn work_begins_with_a_set_and_nothing_ends_by_itself() {
    let mut scene = Scene::build().await;
    assert_eq!(stands(&mut scene).await, both("planned", "planned"));
    scene.set(1, Some(24.0), Ending::Done).await;
    assert_eq!(stands(&mut scene).await, both("active", "active"));
    worked_through_again(&mut scene).await;
    assert_eq!(stands(&mut scene).await, both("active", "active"), "all is reached, and nobody has decided");
    assert_eq!(says(&mut scene, "decided.complete", "").await, 303);
    assert_eq!(stands(&mut scene).await, both("complete, provisional", "complete not_yet"));
}

async fn worked_through_again(scene: &mut Scene) {
    sud(scene, Moment::BackAtTarget, 0).await;
    voc(scene, Moment::Installation, 7).await;
    assert_eq!(says(scene, "scan.clear", "").await, 303);
}

#[tokio::test]
async fn a_session_is_not_closed_as_complete_against_the_end_without_a_code() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    sud(&mut scene, Moment::BackAtTarget, 4).await;
    let path = format!("/sessions/{}/close", scene.session);
    let closing = |because: &'static str| {
        let common =
            [("effect", "settled"), ("resource", "calm place"), ("state", "calm"), ("companion", "nobody"), ("next_contact", "Friday")];
        common
            .into_iter()
            .chain([("kind", "complete"), ("because", because), ("target_was", "active"), ("version", "1")])
            .collect::<Vec<_>>()
    };
    let form = scene.clinician.get(&path).await.body;
    assert!(
        form.contains("Open: 4. Asked for: 0, or 1 where that fits") && form.contains("Open: not yet, or something disturbed since"),
        "{form}"
    );
    let refused = scene.clinician.post_form(&path, &closing("")).await;
    assert_eq!(refused.status, 422);
    assert!(refused.body.contains("id=\"because-error\""));
    assert_eq!(scene.clinician.post_form(&path, &closing("client_declines")).await.status, 303);
    assert_eq!(stands(&mut scene).await, both("complete, provisional", "complete not_yet client_declines"));
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert!(page.contains("complete, provisional; the client does not want it asked."), "the code is shown beside it");
}

/// A SUD asked at the close counts: the session is closed on what is true then.
#[tokio::test]
async fn a_sud_at_the_close_opens_the_end_again() {
    let mut scene = Scene::build().await;
    worked_through(&mut scene).await;
    let path = format!("/sessions/{}/close", scene.session);
    let closing = [
        ("effect", "settled"),
        ("resource", "calm place"),
        ("state", "calm"),
        ("companion", "nobody"),
        ("next_contact", "Friday"),
        ("kind", "complete"),
        ("sud", "5"),
        ("target_was", "active"),
        ("version", "1"),
    ];
    assert_eq!(scene.clinician.post_form(&path, &closing).await.status, 422);
    assert_eq!(stands(&mut scene).await, both("active", "active"));
}

#[tokio::test]
async fn a_completion_holds_or_rises_at_the_next_session_and_reopening_is_a_decision() {
    let mut scene = Scene::build().await;
    worked_through(&mut scene).await;
    super::outcomes::next_session(&mut scene, leeward::sessions::ClosingKind::Complete).await;
    assert_eq!(stands(&mut scene).await, both("complete, provisional", "complete not_yet"));
    sud(&mut scene, Moment::Reevaluation, 0).await;
    let again = voc(&mut scene, Moment::Reevaluation, 7).await;
    assert_eq!(stands(&mut scene).await, both("complete, held", "complete yes"));
    scene.kept(None, Some(&again), Moment::Reevaluation, EntryValue::Voc { value: 4 }).await;
    assert_eq!(stands(&mut scene).await, both("complete, came up again", "complete no"), "a corrected rating is a corrected finding");
    assert_eq!(says(&mut scene, "decided.reopened", "").await, 303);
    assert_eq!(stands(&mut scene).await, both("reopened", "reopened"));
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let numbers = lead.get(&format!("/practice/clients/{}", scene.client)).await.body;
    assert!(numbers.contains("Target 1, reopened"), "the lead reads the same");
}

#[tokio::test]
async fn a_completion_that_the_corrected_record_does_not_carry_is_told() {
    let mut scene = Scene::build().await;
    worked_through(&mut scene).await;
    let slip = sud(&mut scene, Moment::BackAtTarget, 0).await;
    assert_eq!(says(&mut scene, "decided.complete", "").await, 303);
    scene.kept(None, Some(&slip), Moment::BackAtTarget, EntryValue::Sud { value: 6 }).await;
    assert_eq!(stands(&mut scene).await, both("active", "active unfounded"));
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert!(page.contains("it was called complete, and the record does not carry that"));
}

#[tokio::test]
async fn each_procedure_asks_for_its_own_end() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    assert_eq!(says(&mut scene, "procedure.restricted", "").await, 303);
    assert_eq!(says(&mut scene, "decided.complete", "judgement").await, 409, "restricted work is never complete");
    assert_eq!(says(&mut scene, "decided.reduced", "").await, 303);
    assert_eq!(stands(&mut scene).await, both("reduced as planned", "reduced"));
    assert_eq!(says(&mut scene, "decided.reopened", "").await, 303);
    assert_eq!(says(&mut scene, "procedure.recent_event", "").await, 303);
    let path = format!("/targets/{}/facts", scene.target);
    for (segment, value, status) in [("1", "0", 303), ("2", "3", 303), ("0", "3", 400), ("2", "11", 400), ("two", "3", 400)] {
        let answer = scene.clinician.post_form(&path, &[("said", "segment"), ("segment", segment), ("sud", value)]).await;
        assert_eq!(answer.status, status, "segment {segment}, SUD {value}");
    }
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert!(page.contains("<strong>Open</strong>: 1: 0, 2: 3. Asked for: 0, or 1 where that fits"), "{page}");
    assert!(
        page.contains("<tr><th scope=\"row\">SUD</th><td>8 of 10</td><td>8 of 10</td><td>8 of 10</td></tr>"),
        "a segment's SUD is not the target's"
    );
    voc(&mut scene, Moment::Installation, 7).await;
    assert_eq!(says(&mut scene, "scan.clear", "").await, 303);
    assert_eq!(says(&mut scene, "decided.complete", "").await, 409, "the second segment is open");
    scene.clinician.post_form(&path, &[("said", "segment"), ("segment", "2"), ("sud", "0")]).await;
    assert_eq!(says(&mut scene, "scan.clear", "").await, 303);
    assert_eq!(says(&mut scene, "decided.complete", "").await, 303);
}

#[tokio::test]
async fn the_lead_counts_marks_and_reads_no_word() {
    let mut scene = Scene::build().await;
    let set = scene.set(1, Some(24.0), Ending::Done).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Change { change: Change::Same }).await;
    scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Words { words: "a heron in the reeds".into() }).await;
    let lead = scene.house.member(&[Role::Lead]).await;
    let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
    let marks: Vec<String> = sqlx::query_scalar("SELECT code FROM standing_fact WHERE kind = 'mark'").fetch_all(&mut *tx).await.unwrap();
    assert_eq!(marks, ["same"]);
    let words: i64 = sqlx::query_scalar("SELECT count(*) FROM process_note").fetch_one(&mut *tx).await.unwrap();
    assert_eq!(words, 0);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(rows(&page, "Sets as ordered")[0].contains("same"), "and the session's page says it beside its set");
}

/// What lists read is what the rules make of the record: nothing else writes it.
#[tokio::test]
async fn rebuilding_finds_no_difference_and_mends_one() {
    let mut scene = Scene::build().await;
    worked_through(&mut scene).await;
    super::outcomes::next_session(&mut scene, leeward::sessions::ClosingKind::Complete).await;
    sud(&mut scene, Moment::Reevaluation, 2).await;
    let owner = &owner(&scene.house.database);
    let found = course::rebuild(owner).await.unwrap();
    assert_eq!((found.targets, found.outdated, found.different.as_slice()), (1, 0, [].as_slice()));
    let pool = &scene.house.database.superuser.clone();
    sqlx::query("UPDATE target_course SET state = 'planned', held = NULL").execute(pool).await.unwrap();
    assert_eq!(course::rebuild(owner).await.unwrap().different, [scene.target]);
    assert_eq!(stands(&mut scene).await, both("complete, came up again", "complete no"));
    sqlx::query("UPDATE target_course SET rules = 9").execute(pool).await.unwrap();
    assert_eq!(course::rebuild(owner).await.unwrap().outdated, 1);
}

/// All that is folded, but not by which rules nor how often.
async fn folded(database: &TestDatabase) -> Vec<String> {
    sqlx::query_scalar("SELECT (to_jsonb(n) - '{rules,version}'::text[])::text FROM target_course n ORDER BY target_id")
        .fetch_all(&database.superuser)
        .await
        .unwrap()
}

/// What a migration carries over is what the rules make of it.
#[tokio::test]
async fn every_dump_is_carried_over_as_the_rules_fold_it() {
    let dumps = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("dumps");
    let mut states = std::collections::BTreeSet::new();
    for entry in std::fs::read_dir(dumps).unwrap().map(|entry| entry.unwrap().path()) {
        if entry.extension().is_none_or(|ending| ending != "sql") {
            continue;
        }
        let database = TestDatabase::from_dump(&entry).await;
        let carried = folded(&database).await;
        // As `leeward migrate` ends.
        course::bring_up_to_rules(&owner(&database)).await.unwrap();
        assert_eq!(folded(&database).await, carried, "{}: newer rules make the same of an older record", entry.display());
        let found = course::rebuild(&owner(&database)).await.unwrap();
        assert!(found.targets > 0 && found.different.is_empty() && found.outdated == 0, "{}: {found:?}", entry.display());
        let kept: Vec<(String, i64)> = sqlx::query_as(
            "SELECT n.state, (SELECT count(*) FROM fact f WHERE f.target_id = n.target_id AND f.kind = 'carried_over') FROM target_course n",
        )
        .fetch_all(&database.superuser)
        .await
        .unwrap();
        states.extend(kept);
        let marks: i64 = sqlx::query_scalar("SELECT count(*) FROM fact WHERE kind = 'mark'").fetch_one(&database.superuser).await.unwrap();
        assert!(marks > 0, "{}: marks are carried over", entry.display());
    }
    assert!(states.iter().any(|(state, carried)| state != "planned" && *carried == 1), "{states:?}");
}

#[tokio::test]
async fn a_target_with_an_open_session_carries_its_state_over_before_what_comes() {
    let house = House::build().await;
    let scene = Scene::inside(house, &[Role::Clinician]).await;
    let pool = &scene.house.database.superuser;
    sqlx::query("INSERT INTO fact (id, client_id, session_id, target_id, kind, code, at) VALUES (gen_random_uuid(), $1, $2, $3, 'carried_over', 'complete', now())")
        .bind(scene.client)
        .bind(scene.session)
        .bind(scene.target)
        .execute(pool)
        .await
        .unwrap();
    let mut scene = scene;
    sud(&mut scene, Moment::Reevaluation, 0).await;
    assert_eq!(stands(&mut scene).await, both("complete, held", "complete yes"));
    scene.house.clock.advance(Duration::minutes(1));
    assert_eq!(says(&mut scene, "decided.reopened", "").await, 303);
    assert_eq!(stands(&mut scene).await, both("reopened", "reopened"));
}

/// The offer between sets comes with the log: by the rule of the core, from what was kept.
#[tokio::test]
async fn what_comes_next_is_offered_by_the_record() {
    let mut scene = Scene::build().await;
    let next =
        async |scene: &mut Scene| scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await.json()["next"].clone();
    let mark = async |scene: &mut Scene, number: u32, change: Change| {
        let set = scene.set(number, Some(24.0), Ending::Done).await;
        scene.kept(Some(set), None, Moment::AfterSet, EntryValue::Change { change }).await;
        set
    };
    mark(&mut scene, 1, Change::Same).await;
    assert!(next(&mut scene).await.is_null());
    let second = mark(&mut scene, 2, Change::Same).await;
    let stuck = next(&mut scene).await;
    assert_eq!((&stuck["kind"], &stuck["why"], &stuck["ladder"][0]), (&"stuck".into(), &"same".into(), &"mechanics".into()));
    scene.kept(Some(second), None, Moment::AfterSet, EntryValue::Saw { saw: Saw::FarAway }).await;
    let tried = scene.kept(Some(second), None, Moment::AfterSet, EntryValue::Tried { rung: Rung::Arousal }).await;
    let aroused = next(&mut scene).await;
    assert_eq!((&aroused["ladder"][0], &aroused["tried"][0]), (&"arousal".into(), &"arousal".into()));
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(rows(&page, "Sets as ordered")[1].contains("same; saw: far away; tried: grounding or a resource"), "{page}");
    scene.kept(Some(second), Some(&tried), Moment::AfterSet, EntryValue::TakenBack).await;
    assert_eq!(next(&mut scene).await["tried"], serde_json::json!([]));
    assert_eq!(says(&mut scene, "procedure.restricted", "").await, 303);
    assert!(next(&mut scene).await.is_null(), "restricted work is not called stuck");
    assert_eq!(says(&mut scene, "procedure.standard", "").await, 303);
    sqlx::query("UPDATE practice SET stuck_after = 3").execute(&scene.house.database.superuser).await.unwrap();
    assert!(next(&mut scene).await.is_null(), "a practice may wait for three");
    for number in [3, 4] {
        mark(&mut scene, number, Change::Settled).await;
    }
    assert_eq!(next(&mut scene).await["kind"], "back_to_target");
    sud(&mut scene, Moment::BackAtTarget, 2).await;
    assert!(next(&mut scene).await.is_null(), "it was asked");
}
