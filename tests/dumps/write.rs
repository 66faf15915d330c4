//! Writes `tests/dumps/NNNN.sql`: a small practice as the newest migration's version keeps it, made by the portal's own
//! functions and sealed under the tests' key. Later versions are shown to open it (`tests/http/upgrade.rs`).
//!
//! `./tests/run --dump` runs it. What has landed is never written anew: it is what that version left behind.
#![expect(clippy::unwrap_used, clippy::expect_used, reason = "what cannot be made must fail loudly")]

#[path = "../http/scene.rs"]
#[expect(dead_code, reason = "the tests over HTTP use the rest of it")]
mod scene;

use chrono::Duration;
use leeward::askings;
use leeward::clients::{self, Asked, NewClient};
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::sessions::{self, NewSession};
use leeward::store::database::MIGRATIONS;
use leeward::store::seal::Private;
use leeward::wordings;
use leeward_core::course::{Because, Belief};
use leeward_core::measures::Measure;
use leeward_core::wire::{Answer, Change, Ending, EntryValue, Matter, Moment, ReachStep, Rung, Saw, Showed, Unmeasured};
use leeward_tests::forms::{draft, file, of_page, wording};
use leeward_tests::{Browser, key_digits};
use scene::{LABEL, NAME, PICTURE, Scene};
use serde_json::json;
use uuid::Uuid;

#[tokio::main]
async fn main() {
    let newest = MIGRATIONS.iter().map(|migration| migration.version).max().expect("there are migrations");
    let path = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(format!("dumps/{newest:04}.sql"));
    if path.exists() {
        eprintln!("{} is there already. If that migration has not landed yet, remove the file and run this again.", path.display());
        std::process::exit(1);
    }
    let mut scene = Scene::build().await;
    let target = format!("/targets/{}", scene.target);
    the_house(&scene).await;
    the_record(&mut scene, &target).await;
    a_session(&mut scene).await;
    the_week_after(&mut scene).await;
    forms(&mut scene).await;
    let head = format!("-- Written by ./tests/run --dump at migration {newest}. Sealed under the tests' key, {}.\n", key_digits());
    std::fs::write(&path, head + &scene.house.database.dump()).expect("the folder takes it");
    println!("{} written: commit it with its migration", path.display());
}

/// Sends a form that must be taken.
async fn sends(who: &mut Browser, path: &str, fields: &[(&str, &str)]) {
    let answer = who.post_form(path, fields).await;
    assert!(answer.status < 400, "{path}: {} {}", answer.status, answer.body);
}

/// As a script of the portal sends it.
async fn asks(who: &mut Browser, path: &str, body: serde_json::Value) -> leeward_tests::Answer {
    let answer = who.post_json(path, &body).await;
    assert!(answer.status < 400, "{path}: {} {}", answer.status, answer.body);
    answer
}

async fn id(scene: &Scene, query: &'static str) -> Uuid {
    sqlx::query_scalar(query).fetch_one(&scene.house.database.superuser).await.unwrap()
}

/// Members, one who is invited, presets.
async fn the_house(scene: &Scene) {
    scene.house.member(&[Role::Lead]).await;
    let mut administrator = scene.house.member(&[Role::Administrator]).await;
    sends(&mut administrator, "/members/invite", &[("name", "Somebody New"), ("lead", "on")]).await;
    let settings =
        [("day_order", "month_first"), ("clock", "12"), ("tells_whom", "yes"), ("shown", "day_first 24 no no 50 10 24 72 2 5 t= t=")];
    let numbers = [("minutes", "90"), ("reserve", "15"), ("check_from", "12"), ("check_until", "48"), ("stuck_after", "3")];
    let words = [("places", "Fjordgata"), ("crisis_words", "The night line of the practice.")];
    let call = [("direct_calls", "yes"), ("unseen_seconds", "8")];
    sends(&mut administrator, "/practice/settings", &[&settings[..], &numbers, &words, &call].concat()).await;
    let mut clinician = scene.clinician.clone();
    for name in ["Evening", "Given up"] {
        let fields = [("owner", "mine"), ("purpose", "processing"), ("eyes", "on"), ("rate", "0.9"), ("width", "16"), ("cycles", "30")];
        sends(&mut clinician, "/presets/new", &[&fields[..], &[("name", name)]].concat()).await;
    }
    let given_up = id(scene, "SELECT id FROM preset WHERE name = 'Given up'").await;
    sends(&mut clinician, &format!("/presets/{given_up}/archive"), &[("version", "1")]).await;
}

/// The client's record and comfort sheet; a target that was assessed again, and a typing error in that.
async fn the_record(scene: &mut Scene, target: &str) {
    let client = scene.client;
    let who = &mut scene.clinician;
    let record = [
        ("name", NAME),
        ("addressed_as", "Mina, she"),
        ("phone", "+46 8 555 0142"),
        ("contact_name", "Edwin Quillfeather"),
        ("contact_phone", "08 555 0177"),
        ("usual_location", "Fjordgata, the yellow house"),
        ("seizures", "no"),
        ("eye_condition", "no"),
        ("version", "1"),
    ];
    sends(who, &format!("/clients/{client}/edit"), &record).await;
    let sheet = [
        ("path", "eight"),
        ("dot", "2.5"),
        ("sweep", "constant"),
        ("colours", "lake"),
        ("timbre", "wood"),
        ("pitch", "400"),
        ("tone_ms", "90"),
        ("level", "60"),
        ("vibration", "felt"),
        ("version", "0"),
    ];
    sends(who, &format!("/clients/{client}/comfort"), &sheet).await;
    let words = [
        ("label", LABEL),
        ("prong", "past"),
        ("picture", PICTURE),
        ("negative_belief", "I am powerless out there"),
        ("positive_belief", "I can choose my footing"),
        ("emotions", "dread and shame"),
        ("body_location", "throat and wrists"),
    ];
    let safe = [("signs", "not eating"), ("helps", "cold water"), ("professionals", "the practice until six"), ("version", "0")];
    sends(who, &format!("/clients/{client}/safety-plan/edit"), &safe).await;
    let steady = [("signs", "eyes go still"), ("way_back", "cold water, the window"), ("version", "0")];
    sends(who, &format!("/clients/{client}/steadying/edit"), &steady).await;
    let numbers = [
        ("phone_use", "call"),
        ("contact_use", "message"),
        ("help_from_here", "+46 8 454 2400"),
        ("tried_on", "2026-03-01"),
        ("help_there", "112"),
        ("version", "0"),
    ];
    sends(who, &format!("/clients/{client}/reach"), &numbers).await;
    let quay = [("cue", "Quay"), ("image", "The quay at six"), ("helped", "yes"), ("on_offer", "yes")];
    sends(who, &format!("/clients/{client}/resources/new"), &quay).await;
    let event = [("kind", "panic"), ("day", "2026-01-02"), ("time", "09:30"), ("done", "called"), ("account", "on the stairs")];
    sends(who, &format!("/clients/{client}/events/new"), &event).await;
    scene.house.clock.advance(Duration::minutes(1));
    let edit = format!("{target}/edit");
    sends(who, &edit, &[&words[..], &[("sud", "7"), ("voc", "3"), ("version", "1")]].concat()).await;
    let wrong = id(scene, "SELECT id FROM rating WHERE scale = 'sud' AND value = 7").await.to_string();
    let slip = [("sud", ""), ("voc", ""), ("wrong", &wrong), ("right", "8"), ("version", "2")];
    let planned = [("age", "9"), ("year", "1998"), ("new_cluster", "On the water")];
    sends(&mut scene.clinician, &edit, &[&words[..], &slip, &planned].concat()).await;
    let marked = [("name", "On the water"), ("theme", "safety"), ("earliest", "1"), ("worst", ""), ("version", "1")];
    sends(&mut scene.clinician, &format!("/clients/{client}/clusters/1/edit"), &marked).await;
    let trigger = [("label", "harbour bell"), ("prong", "present"), ("cluster", "1"), ("parent", "1")];
    sends(&mut scene.clinician, &format!("/clients/{client}/targets/new"), &trigger).await;
    let moving = [("target", "2"), ("to", "1"), ("version", &plan_version(scene).await)];
    sends(&mut scene.clinician, &format!("/clients/{client}/plan/move"), &moving).await;
}

async fn plan_version(scene: &Scene) -> String {
    sqlx::query_scalar("SELECT max(plan_version)::text FROM client").fetch_one(&scene.house.database.superuser).await.unwrap()
}

/// Sets with every sort of end, entries that were corrected and taken back, a closing, a note written on.
async fn a_session(scene: &mut Scene) {
    use EntryValue::{Sud, TakenBack, Voc};
    let words = |words: &str| EntryValue::Words { words: words.to_owned() };
    scene.kept(None, None, Moment::BackAtTarget, Sud { value: 8 }).await;
    let first = Some(scene.set(1, Some(24.5), Ending::Done).await);
    let note = scene.kept(first, None, Moment::AfterSet, words("the railing, nearer")).await;
    scene.kept(first, Some(&note), Moment::AfterSet, words("the railing, further off")).await;
    let sud = scene.kept(first, None, Moment::AfterSet, Sud { value: 9 }).await;
    scene.kept(first, Some(&sud), Moment::AfterSet, Sud { value: 6 }).await;
    let second = Some(scene.set(2, None, Ending::StoppedByClient).await);
    let voc = scene.kept(second, None, Moment::Installation, Voc { value: 4 }).await;
    scene.kept(second, Some(&voc), Moment::Installation, TakenBack).await;
    let third = Some(scene.set(3, Some(11.0), Ending::StoppedByClinician).await);
    let mark = scene.kept(third, None, Moment::AfterSet, EntryValue::Change { change: Change::Same }).await;
    scene.kept(third, Some(&mark), Moment::AfterSet, EntryValue::Change { change: Change::Changing }).await;
    scene.kept(third, None, Moment::AfterSet, EntryValue::Saw { saw: Saw::Glazed }).await;
    scene.kept(third, None, Moment::AfterSet, EntryValue::Tried { rung: Rung::Arousal }).await;
    said(scene, &[("said", "procedure.recent_event"), ("stood", "active")]).await;
    said(scene, &[("said", "segment"), ("segment", "1"), ("sud", "3")]).await;
    said(scene, &[("said", "scan.felt"), ("stood", "active")]).await;
    let fourth = Some(scene.set(4, None, Ending::Unknown).await);
    for value in [EntryValue::TooMuch, EntryValue::Showed { showed: Showed::Orient }, EntryValue::Belief { belief: Belief::Another }] {
        scene.kept(fourth, None, Moment::AfterSet, value).await;
    }
    scene.kept(None, None, Moment::AfterSet, EntryValue::Reach { step: ReachStep::NoAnswer }).await;
    let own = scene.kept(None, None, Moment::AfterSet, EntryValue::Unmeasured { way: Unmeasured::OwnTapping }).await;
    scene.kept(None, Some(&own), Moment::AfterSet, TakenBack).await;
    let mut by_client = scene.entry(fourth, None, Moment::AfterSet, Sud { value: 6 });
    by_client.from_client = true;
    assert_eq!(scene.enter(&by_client).await.status, 200);
    let risk = scene.kept(None, None, Moment::Opening, EntryValue::Answered { answer: Answer::Acute, again: false }).await;
    scene.kept(None, Some(&risk), Moment::Opening, TakenBack).await;
    scene.kept(None, None, Moment::Opening, EntryValue::Passed { matter: Matter::Risk, because: Because::Judgement }).await;
    scene.kept(None, None, Moment::Opening, EntryValue::Time { minutes: 60, reserve: 10 }).await;
    let close = format!("/sessions/{}/close", scene.session);
    let closing = [
        ("kind", "incomplete"),
        ("resource", "calm place"),
        ("effect", "settled"),
        ("state", "tired"),
        ("companion", "her brother"),
        ("next_contact", "Friday by phone"),
        ("client_words", "Until Friday."),
        ("sud", "5"),
        ("note", "Written at the close."),
    ];
    let at_desk = format!("/sessions/{}/closing", scene.session);
    let mut typed = scene.clinician.get(&at_desk).await.json()["form"].take();
    for (name, value) in closing {
        typed[name] = json!(value);
    }
    asks(&mut scene.clinician, &format!("{at_desk}/draft"), json!({ "form": typed, "draft": 0 })).await;
    let closed = scene.clinician.fill_in(&close, &closing).await;
    assert_eq!(closed.status, 303, "{}", closed.body);
    sends(&mut scene.clinician, &format!("/sessions/{}/check", scene.session), &[("outcome", "not_reached")]).await;
    let note = format!("/sessions/{}/note", scene.session);
    assert_eq!(scene.clinician.fill_in(&note, &[("note", "Written at the close. Read again on Monday.")]).await.status, 303);
}

/// Another session with the client in the seat and one more device that asks for it; a rehearsal; a client who is archived.
async fn the_week_after(scene: &mut Scene) {
    scene.house.clock.advance(Duration::days(7));
    scene.clinician = scene.house.sign_in(scene.clinician.member).await;
    let subject = scene.clinician.subject();
    let new = NewSession { client: scene.client, target: Some(scene.target) };
    let session = sessions::open(&scene.house.app, &subject, new).await.unwrap();
    let path = |last: &str| format!("/sessions/{session}/{last}");
    let minted = asks(&mut scene.clinician, &path("link"), json!({})).await.json();
    let link = minted["link"].as_str().unwrap().split('#').nth(1).unwrap().to_owned();
    join(scene, &link, minted["code"].as_str().unwrap()).await;
    let seat = id(scene, "SELECT id FROM access.seat WHERE taken_at IS NOT NULL AND closed_at IS NULL").await;
    let admission = json!({ "location": "12 Fjordgata", "call_back": "+46 8 555 0142", "private": true, "seat": seat });
    asks(&mut scene.clinician, &path("admit"), admission).await;
    let code = asks(&mut scene.clinician, &path("code"), json!({})).await.json();
    join(scene, &link, code["code"].as_str().unwrap()).await;
    sends(&mut scene.clinician, "/rehearsal", &[]).await;
    let mut other = NewClient::default();
    (other.details.name, other.cautions.seizures) = (Private::new("Tomas Lindahl"), Asked::Yes);
    let other = clients::create(&scene.house.app, &subject, other).await.unwrap();
    sends(&mut scene.clinician, &format!("/clients/{other}/archive"), &[("version", "1")]).await;
}

/// Forms: one entered, one that its client handed in by link with a flag, one begun; wording in use, and one to be looked at; a schedule.
async fn forms(scene: &mut Scene) {
    let lead = scene.house.member(&[Role::Lead]).await;
    for measure in [Measure::Phq9, Measure::Gad7] {
        wordings::load_and_use(&scene.house.app, &lead.subject(), measure, &wording(measure)).await.unwrap();
    }
    let mut lead = lead;
    sends(&mut lead, "/practice/wordings/gad7", &[("file", &file(Measure::Gad7).to_string())]).await;
    let client = scene.client;
    sends(&mut scene.clinician, &format!("/clients/{client}/askings/schedule"), &[("phq9", "yes"), ("every", "4"), ("version", "0")]).await;
    let day = scene.house.app.world.now().date_naive();
    let today = day.to_string();
    let items: Vec<(String, String)> = (1..=20).map(|item| (format!("item_{item}"), "2".to_owned())).collect();
    let entered: Vec<(&str, &str)> = items.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    let entered = [&entered[..], &[("day", &today), ("occasion", "intake"), ("event", "the crossing")]].concat();
    sends(&mut scene.clinician, &format!("/clients/{client}/measures/new/pcl5"), &entered).await;
    let (now, measures) = (scene.house.app.world.now(), vec![Measure::Phq9, Measure::Gad7]);
    let new = askings::New { occasion: Occasion::Regular, measures, from_at: now, due_on: day, event: Private::default() };
    let link = askings::make(&scene.house.app, &scene.clinician.subject(), client, new).await.unwrap();
    let mut phone = scene.house.visitor();
    asks(&mut phone, "/q", json!({ "link": link.split('#').nth(1).unwrap() })).await;
    let answers: Vec<(String, String)> = (1..=9).map(|item| (format!("item_{item}"), "1".to_owned())).collect();
    let answers: Vec<(&str, &str)> = answers.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    let page = phone.get("/q/forms").await.body;
    let own = of_page(&page);
    let own: Vec<(&str, &str)> = own.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    sends(&mut phone, "/q/forms", &[&answers[..], &own, &[("measure", "phq9")]].concat()).await;
    let page = phone.get("/q/forms").await.body;
    asks(&mut phone, "/q/draft", draft(&page, 0, 1, &[Some("1"), Some("-"), None, None, None, None, None])).await;
    sends(&mut scene.clinician.clone(), "/account/mail", &[("address", "hofer@practice.example"), ("shown", "")]).await;
}

async fn join(scene: &Scene, link: &str, code: &str) {
    let mut device = scene.house.visitor();
    let once = leeward::base::ids::new_id(&scene.house.app.world);
    let answer = device.post_json("/join", &json!({ "link": link, "code": code, "once": once })).await;
    // 409: another device has the seat, and this one asks for it.
    assert!([200, 409].contains(&answer.status), "{}", answer.body);
}

/// Something that is said about the target on its page.
async fn said(scene: &mut Scene, fields: &[(&str, &str)]) {
    let answer = scene.clinician.post_form(&format!("/targets/{}/facts", scene.target), fields).await;
    assert_eq!(answer.status, 303, "{fields:?}: {}", answer.body);
}
