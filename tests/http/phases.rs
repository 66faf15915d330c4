//! The phases of an hour: what was found in each is kept, the phase follows the record, and what steadies a client is written down.

use leeward_core::course::{Belief, End, Phase, Procedure, Rehearsal, Scan};
use leeward_core::wire::{Answer, Asks, Ending, EntryValue, Moment, Scale, SessionLog, Showed, Unmeasured};
use serde_json::json;

use crate::scene::{NAME, PICTURE, Scene, rows};

/// All that is confirmed when nothing speaks against the hour.
const WELL: [Answer; 8] = [
    Answer::UsualPlace,
    Answer::Private,
    Answer::Nobody,
    Answer::Reachable,
    Answer::NothingNew,
    Answer::Fit,
    Answer::Consents,
    Answer::WayAgreed,
];

async fn log(scene: &mut Scene) -> SessionLog {
    let answer = scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await;
    assert_eq!(answer.status, 200, "{}", answer.body);
    serde_json::from_value(answer.json()).unwrap()
}

async fn phase(scene: &mut Scene) -> Phase {
    log(scene).await.phase
}

async fn opened(scene: &mut Scene) {
    for answer in WELL {
        scene.kept(None, None, Moment::Opening, EntryValue::Answered { answer, again: false }).await;
    }
}

async fn stands(scene: &Scene) -> (String, i16) {
    let row = sqlx::query_as("SELECT state, rules FROM target_course WHERE target_id = $1").bind(scene.target);
    row.fetch_one(&scene.house.database.superuser).await.unwrap()
}

// The published eight phases and the standard end (clinical reference 1.0 and 1.6, source 1).
#[tokio::test]
async fn the_phase_follows_the_record_forth_and_back() {
    let mut scene = Scene::build().await;
    assert_eq!(phase(&mut scene).await, Phase::Opening);
    opened(&mut scene).await;
    assert_eq!(phase(&mut scene).await, Phase::Desensitisation);
    let set = Some(scene.set(1, Some(24.0), Ending::Done).await);
    let sud = scene.kept(set, None, Moment::BackAtTarget, EntryValue::Sud { value: 0 }).await;
    assert_eq!(phase(&mut scene).await, Phase::Installation);
    scene.kept(set, None, Moment::Installation, EntryValue::Voc { value: 7 }).await;
    assert_eq!(phase(&mut scene).await, Phase::Scan);
    let felt = scene.kept(set, None, Moment::AfterSet, EntryValue::Scan { scan: Scan::Felt }).await;
    assert_eq!(phase(&mut scene).await, Phase::Scan);
    scene.kept(set, Some(&felt), Moment::AfterSet, EntryValue::Scan { scan: Scan::Clear }).await;
    let now = log(&mut scene).await;
    assert_eq!((now.phase, now.asks.iter().any(|asked| asked.open)), (Phase::Closing, false));
    scene.kept(set, None, Moment::Installation, EntryValue::Belief { belief: Belief::Another }).await;
    let now = log(&mut scene).await;
    assert_eq!(now.phase, Phase::Installation, "a VOC is of one belief");
    assert_eq!(now.asks[1], Asks { end: End::Voc, open: true });
    scene.kept(set, Some(&sud), Moment::BackAtTarget, EntryValue::Sud { value: 3 }).await;
    assert_eq!(phase(&mut scene).await, Phase::Desensitisation, "corrected, it never was at its end");
    scene.kept(None, None, Moment::Opening, EntryValue::Answered { answer: Answer::Acute, again: false }).await;
    assert_eq!(phase(&mut scene).await, Phase::Preparation, "risk turns the hour");
    assert_eq!(stands(&scene).await, ("active".into(), 2), "no phase is a decision");
}

#[tokio::test]
async fn what_fits_is_said_of_a_rating_that_stands_and_needs_it() {
    let mut scene = Scene::build().await;
    for scale in [Scale::Sud, Scale::Voc] {
        let entry = scene.entry(None, None, Moment::AfterSet, EntryValue::Fits { scale });
        let status = scene.enter(&entry).await.status;
        assert_eq!(status, if scale == Scale::Sud { 422 } else { 200 }, "SUD 8 and VOC 2 stand: {scale:?}");
    }
    scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 1 }).await;
    let fits = scene.kept(None, None, Moment::AfterSet, EntryValue::Fits { scale: Scale::Sud }).await;
    assert!(!log(&mut scene).await.asks[0].open);
    scene.kept(None, Some(&fits), Moment::AfterSet, EntryValue::TakenBack).await;
    assert!(log(&mut scene).await.asks[0].open, "taken back, it is open again");
}

// A recent event in segments: a practitioner's judgement, from memory.
#[tokio::test]
async fn segments_are_rated_each_and_stand_in_no_course_of_the_whole() {
    let mut scene = Scene::build().await;
    let path = format!("/targets/{}/facts", scene.target);
    assert_eq!(scene.clinician.post_form(&path, &[("said", "procedure.recent_event"), ("stood", "planned")]).await.status, 303);
    let segment = |scene: &Scene, segment, value| {
        let mut entry = scene.entry(None, None, Moment::BackAtTarget, value);
        entry.segment = Some(segment);
        entry
    };
    for (number, value, status) in [
        (1, EntryValue::Sud { value: 0 }, 200),
        (2, EntryValue::Sud { value: 4 }, 200),
        (0, EntryValue::Sud { value: 4 }, 422),
        (100, EntryValue::Sud { value: 4 }, 422),
        (1, EntryValue::Voc { value: 4 }, 422),
        (1, EntryValue::Sud { value: 11 }, 422),
    ] {
        let entry = segment(&scene, number, value);
        let answer = scene.enter(&entry).await;
        assert_eq!(answer.status, status, "{number}: {}", answer.body);
    }
    let now = log(&mut scene).await;
    assert_eq!(now.asks[0], Asks { end: End::Segments, open: true });
    let kept: Vec<Option<u8>> = now.entries.iter().map(|kept| kept.entry.segment).collect();
    assert_eq!(kept, [Some(1), Some(2)]);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    assert!(page.contains("4, segment 2"), "{page}");
    let ratings: i64 = sqlx::query_scalar("SELECT count(*) FROM standing_rating WHERE session_id IS NOT NULL")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(ratings, 0, "a segment's SUD is none of the whole");
}

#[tokio::test]
async fn a_rehearsal_ends_a_situation_to_come() {
    let mut scene = Scene::build().await;
    let path = format!("/targets/{}/facts", scene.target);
    assert_eq!(scene.clinician.post_form(&path, &[("said", "procedure.future"), ("stood", "planned")]).await.status, 303);
    opened(&mut scene).await;
    scene.kept(None, None, Moment::AfterSet, EntryValue::Rehearsal { rehearsal: Rehearsal::Disturbed }).await;
    assert_eq!(phase(&mut scene).await, Phase::Desensitisation);
    scene.kept(None, None, Moment::AfterSet, EntryValue::Rehearsal { rehearsal: Rehearsal::Undisturbed }).await;
    assert_eq!(phase(&mut scene).await, Phase::Installation);
    let mut tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    assert_eq!(leeward::course::of(&mut tx, scene.target).await.unwrap().known.procedure, Procedure::Future);
}

#[tokio::test]
async fn what_was_found_and_done_is_on_the_sessions_page_with_who_gave_it() {
    let mut scene = Scene::build().await;
    let set = Some(scene.set(1, Some(24.0), Ending::StoppedByClinician).await);
    for value in [
        EntryValue::TooMuch,
        EntryValue::Showed { showed: Showed::Orient },
        EntryValue::Showed { showed: Showed::Nothing },
        EntryValue::Unmeasured { way: Unmeasured::OwnTapping },
    ] {
        scene.kept(set, None, Moment::AfterSet, value).await;
    }
    let mut own = scene.entry(set, None, Moment::AfterSet, EntryValue::Sud { value: 5 });
    own.from_client = true;
    assert_eq!(scene.enter(&own).await.status, 200);
    let page = scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body;
    let found = rows(&page, "Found and done");
    assert_eq!(found.len(), 4, "{found:?}");
    assert!(
        found[0].contains("Too much|it was too much here") && found[3].contains("Not measured|the client\u{2019}s own tapping"),
        "{found:?}"
    );
    assert!(rows(&page, "Ratings by time")[0].ends_with("by the client, on their page"), "{page}");
    let read = log(&mut scene).await;
    assert!(read.entries.iter().any(|kept| kept.entry.from_client && kept.entry.id == own.id));
}

/// What was too much is followed up whatever the closing says (common practice, no source).
#[tokio::test]
async fn who_had_too_much_is_called_afterwards() {
    let mut scene = Scene::build().await;
    scene.kept(None, None, Moment::AfterSet, EntryValue::TooMuch).await;
    let closing = [
        ("kind", "no_reprocessing"),
        ("effect", "settled"),
        ("resource", "calm place"),
        ("state", "calm"),
        ("companion", "nobody"),
        ("next_contact", "Friday"),
    ];
    let answer = scene.clinician.fill_in(&format!("/sessions/{}/close", scene.session), &closing).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    let reason: String = sqlx::query_scalar("SELECT reason FROM after_check").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(reason, "too_much");
}

#[tokio::test]
async fn without_a_target_nothing_is_said_of_one() {
    let mut scene = Scene::build().await;
    sqlx::query("UPDATE session SET target_id = NULL").execute(&scene.house.database.superuser).await.unwrap();
    for value in
        [EntryValue::Scan { scan: Scan::Clear }, EntryValue::Belief { belief: Belief::Still }, EntryValue::Fits { scale: Scale::Voc }]
    {
        let entry = scene.entry(None, None, Moment::AfterSet, value);
        let answer = scene.enter(&entry).await;
        assert!(answer.status == 422 && answer.body.contains("no target"), "{}", answer.body);
    }
    for value in [EntryValue::TooMuch, EntryValue::Unmeasured { way: Unmeasured::InPerson }] {
        scene.kept(None, None, Moment::AfterSet, value).await;
    }
}

#[tokio::test]
async fn the_assessment_is_kept_from_the_desk_and_never_over_what_it_did_not_show() {
    let mut scene = Scene::build().await;
    let path = format!("/targets/{}/assessment", scene.target);
    let typed = |version: i32, sud: &str, voc: &str| {
        json!({ "picture": PICTURE, "negative_belief": "I am powerless", "positive_belief": "I can choose", "emotions": "dread",
                "body_location": "throat", "sud": sud, "voc": voc, "version": version })
    };
    let world = scene.house.app.world.clone();
    let key = || leeward::base::ids::new_id(&world).to_string();
    for (sud, voc, field) in [("11", "3", "sud"), ("7", "0", "voc"), ("7", "eight", "voc")] {
        let refused = scene.clinician.post_json_once(&path, &typed(1, sud, voc), &key()).await;
        assert!(refused.status == 422 && refused.json()["errors"][field].is_string(), "{sud} {voc}: {}", refused.body);
    }
    let once = key();
    let kept = scene.clinician.post_json_once(&path, &typed(1, "7", "3"), &once).await;
    assert_eq!((kept.status, kept.json()["version"].as_i64()), (200, Some(2)), "{}", kept.body);
    let again = scene.clinician.post_json_once(&path, &typed(1, "7", "3"), &once).await;
    assert_eq!(again.body, kept.body, "sent again, it is done once");
    let late = scene.clinician.post_json_once(&path, &typed(1, "6", ""), &key()).await;
    assert_eq!(late.status, 409, "{}", late.body);
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    for words in ["I am powerless", "I can choose", "dread", "throat", "7 of 10", "3 of 7"] {
        assert!(page.contains(words), "{words}");
    }
    let desk = scene.clinician.get(&format!("/sessions/{}/desk", scene.session)).await.body;
    assert!(desk.contains("data-version=\"2\"") && desk.contains("I am powerless"), "{desk}");
}

#[tokio::test]
async fn what_steadies_a_client_is_written_offered_at_the_desk_and_guarded() {
    let mut scene = Scene::build().await;
    let of = |last: &str| format!("/clients/{}/{last}", scene.client);
    let (page, edit, new, first) = (of("steadying"), of("steadying/edit"), of("resources/new"), of("resources/1/edit"));
    assert!(scene.clinician.get(&page).await.body.contains("Nothing is written yet"));
    let lines =
        [("signs", "eyes go still"), ("way_back", "cold water, the window"), ("first_words", "Her first name, softly"), ("version", "0")];
    assert_eq!(scene.clinician.post_form(&edit, &lines).await.status, 303);
    let late = scene.clinician.post_form(&edit, &lines).await;
    assert_eq!(late.status, 409);
    let long = [("signs", "x".repeat(201))];
    let refused = scene.clinician.post_form(&edit, &[("signs", long[0].1.as_str()), ("version", "1")]).await;
    assert_eq!(refused.status, 422);
    let harbour =
        [("cue", "Harbour"), ("image", "The quay at six"), ("body_feeling", "warm hands"), ("helped", "yes"), ("on_offer", "yes")];
    assert_eq!(scene.clinician.post_form(&new, &harbour).await.status, 303);
    assert_eq!(scene.clinician.post_form(&new, &[("cue", ""), ("helped", "yes")]).await.status, 422);
    assert_eq!(scene.clinician.post_form(&new, &[("cue", "Attic"), ("helped", "maybe")]).await.status, 422);
    let shown = scene.clinician.get(&page).await.body;
    for words in ["eyes go still", "Her first name, softly", "Harbour", "warm hands", "on offer"] {
        assert!(shown.contains(words), "{words}");
    }
    let desk = format!("/sessions/{}/desk", scene.session);
    let at_desk = scene.clinician.get(&desk).await.body;
    assert!(at_desk.contains("Harbour. The quay at six") && at_desk.contains("cold water, the window"), "{at_desk}");
    let changed = [("cue", "Harbour"), ("image", ""), ("body_feeling", ""), ("helped", "no"), ("on_offer", ""), ("version", "1")];
    assert_eq!(scene.clinician.post_form(&first, &changed).await.status, 303);
    assert!(!scene.clinician.get(&desk).await.body.contains("Harbour"), "not offered any more");
    assert_eq!(scene.clinician.post_form(&first, &changed).await.status, 409);
    assert_eq!(scene.clinician.get(&of("resources/2/edit")).await.status, 404);
    for role in [leeward::platform::Role::Lead, leeward::platform::Role::Clinician] {
        let mut other = scene.house.member(&[role]).await;
        for path in [&page, &edit, &new, &first] {
            let answer = other.get(path).await;
            assert!(answer.status == 404 && !answer.body.contains(NAME), "{role:?} {path}");
        }
    }
}
