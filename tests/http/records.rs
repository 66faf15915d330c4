//! Clients and targets: kept, sealed, found, hidden from others, and never lost on the way.

mod bad_input;
mod hidden;

use chrono::Duration;
use leeward::clients::{Asked, Cautions};
use leeward::platform::Role;
use leeward_tests::{Browser, House};
use uuid::Uuid;

/// An invented client.
const CLIENT: [(&str, &str); 8] = [
    ("name", "Marit Holmqvist"),
    ("addressed_as", "Marit, she"),
    ("phone", "+46 8 555 0142"),
    ("contact_name", "Jonas Ekelund"),
    ("contact_phone", "08 555 0177"),
    ("usual_location", "Tallbacken 9\nVinterby"),
    ("seizures", "no"),
    ("eye_condition", "no"),
];

/// An invented target.
const TARGET: [(&str, &str); 9] = [
    ("label", "the ferry landing"),
    ("prong", "past"),
    ("picture", "gangway lifting early"),
    ("negative_belief", "I am powerless out there"),
    ("positive_belief", "I can choose my footing"),
    ("voc", "2"),
    ("emotions", "dread and shame"),
    ("sud", "8"),
    ("body_location", "throat and wrists"),
];

fn with<'a>(fields: &[(&'a str, &'a str)], name: &'a str, value: &'a str) -> Vec<(&'a str, &'a str)> {
    let mut fields: Vec<_> = fields.iter().copied().filter(|(field, _)| *field != name).collect();
    fields.push((name, value));
    fields
}

fn id_in(location: &str) -> Uuid {
    location.rsplit('/').next().and_then(|id| id.parse().ok()).unwrap_or_else(|| panic!("no id in {location:?}"))
}

async fn client(browser: &mut Browser) -> Uuid {
    let answer = browser.post_form("/clients/new", &CLIENT).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    id_in(answer.place())
}

async fn target(browser: &mut Browser, client: Uuid) -> Uuid {
    let answer = browser.post_form(&format!("/clients/{client}/targets/new"), &TARGET).await;
    assert_eq!(answer.status, 303, "{}", answer.body);
    id_in(answer.place())
}

fn has(body: &str, texts: &[&str]) {
    for text in texts {
        assert!(body.contains(text), "{text:?} is missing from\n{body}");
    }
}

#[tokio::test]
async fn a_client_is_opened_edited_archived_and_restored() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    assert!(clinician.get("/clients").await.body.contains("Choose “New client”"), "an empty caseload says what to do");
    let form = clinician.get("/clients/new").await;
    assert_eq!(form.body.matches(r#"value="not_asked" checked"#).count(), 2, "not asked is preselected for both cautions");

    let id = client(&mut clinician).await;
    let record = clinician.get(&format!("/clients/{id}")).await;
    has(&record.body, &["Marit Holmqvist", "Marit, she", "+46 8 555 0142", "Jonas Ekelund", "08 555 0177", "Tallbacken 9<br>Vinterby"]);
    assert!(!record.body.contains("Moving dot locked") && !record.body.contains("Still to ask"));
    has(&clinician.get("/clients").await.body, &["Marit Holmqvist", "none yet"]);

    let edit = format!("/clients/{id}/edit");
    has(
        &clinician.get(&edit).await.body,
        &[r#"value="Marit Holmqvist""#, r#"name="version" value="1""#, "Tallbacken 9\nVinterby</textarea>"],
    );
    let typed = with(&with(&with(&CLIENT, "version", "1"), "seizures", "yes"), "phone", "");
    assert_eq!(clinician.post_form(&edit, &typed).await.place(), format!("/clients/{id}"));
    let record = clinician.get(&format!("/clients/{id}")).await.body;
    has(&record, &["Seizures: yes", "Moving dot locked", "Still to ask before a remote session: call-back number", "Jonas Ekelund"]);
    has(&clinician.get("/clients").await.body, &["Seizures: yes. Moving dot locked"]);

    assert_eq!(clinician.post_form(&format!("/clients/{id}/archive"), &[("version", "1")]).await.status, 409, "an old version");
    assert_eq!(clinician.post_form(&format!("/clients/{id}/archive"), &[("version", "2")]).await.status, 303);
    assert!(!clinician.get("/clients").await.body.contains("Marit"));
    has(&clinician.get("/clients?archived=1").await.body, &["Marit Holmqvist"]);
    let record = clinician.get(&format!("/clients/{id}")).await.body;
    assert!(!record.contains("Start session 1") && record.contains("This record is archived"));
    assert_eq!(clinician.post_form(&format!("/clients/{id}/targets/new"), &TARGET).await.status, 409);
    assert_eq!(clinician.post_form(&format!("/clients/{id}/restore"), &[("version", "3")]).await.status, 303);
    has(&clinician.get(&format!("/clients/{id}")).await.body, &["Start session 1"]);
    assert_eq!(
        acts(&house).await,
        [
            "caseload.view",
            "client.create",
            "client.view",
            "caseload.view",
            "client.view",
            "client.change",
            "client.view",
            "caseload.view",
            "client.archive",
            "caseload.view",
            "caseload.view",
            "client.view",
            "client.restore",
            "client.view"
        ],
        "what was seen and done is in the audit, what was refused is not"
    );
}

/// Only two plain answers of no unlock the moving dot.
#[test]
fn what_was_not_asked_locks_the_moving_dot_like_a_yes() {
    for &seizures in Asked::ALL {
        for &eye_condition in Asked::ALL {
            let cautions = Cautions { seizures, eye_condition };
            let unlocked = (seizures, eye_condition) == (Asked::No, Asked::No);
            assert_eq!(cautions.eyes_locked(), !unlocked, "{cautions:?}");
            assert_eq!(cautions.flags().is_empty(), unlocked, "{cautions:?}");
        }
    }
    assert!(Cautions::default().eyes_locked());
}

/// An archived record or target gets no new session.
#[tokio::test]
async fn what_is_archived_gets_no_session() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let target = target(&mut clinician, client).await;
    let (start, chosen) = (format!("/clients/{client}/sessions"), target.to_string());
    assert_eq!(clinician.post_form(&format!("/targets/{target}/archive"), &[("version", "1")]).await.status, 303);
    assert_eq!(clinician.post_form(&start, &[("target", &chosen)]).await.status, 409);
    assert_eq!(clinician.post_form(&format!("/clients/{client}/archive"), &[("version", "1")]).await.status, 303);
    assert_eq!(clinician.post_form(&start, &[("target", "")]).await.status, 409);
    assert_eq!(clinician.post_form(&format!("/clients/{client}/restore"), &[("version", "2")]).await.status, 303);
    assert_eq!(clinician.post_form(&start, &[("target", "")]).await.status, 303);
    let open = clinician.post_form(&format!("/clients/{client}/archive"), &[("version", "3")]).await;
    assert_eq!(open.status, 409);
    has(&open.body, &["A session with this client is still open"]);
    has(&clinician.get(&format!("/clients/{client}")).await.body, &["Tuesday 3 March 2026</a>", "09:00", "still open"]);
    has(&clinician.get("/clients").await.body, &["Session 1, opened today at 09:00 and not closed."]);
}

async fn acts(house: &House) -> Vec<String> {
    sqlx::query_scalar("SELECT act FROM audit ORDER BY seq").fetch_all(&house.database.superuser).await.unwrap()
}

#[tokio::test]
async fn the_caseload_is_sorted_by_name_and_found_by_name_or_number() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    for name in ["Örjan Falk", "bea Lund", "Ada Berg"] {
        let answer = clinician.post_form("/clients/new", &with(&CLIENT, "name", name)).await;
        assert_eq!(answer.status, 303);
    }
    let at = |body: &str, name: &str| body.find(&format!(">{name}</a>")).unwrap_or_else(|| panic!("{name} is not listed"));
    let all = clinician.get("/clients").await.body;
    assert!(at(&all, "Ada Berg") < at(&all, "bea Lund") && at(&all, "bea Lund") < at(&all, "Örjan Falk"));
    for (find, meant) in [("BEA", "bea Lund"), ("örjan", "Örjan Falk"), ("3", "Ada Berg"), ("no. 1", "Örjan Falk")] {
        let body = clinician.get(&format!("/clients?find={}", find.replace(' ', "+"))).await.body;
        at(&body, meant);
        assert_eq!(body.matches(r#"<th scope="row">"#).count(), 1, "{find}");
    }
    has(&clinician.get("/clients?find=nobody%3Cb").await.body, &["None of the 3 records fits “nobody&#60;b”"]);
}

#[tokio::test]
async fn a_target_is_entered_in_the_order_of_an_assessment_edited_and_archived() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let id = target(&mut clinician, client).await;
    let page = clinician.get(&format!("/targets/{id}")).await.body;
    // The order of the assessment phase: Shapiro 2018 (3rd edition), from memory.
    let order = ["gangway lifting", "powerless", "my footing", "2 of 7", "dread and shame", "8 of 10", "throat and wrists"];
    let assessment = &page[page.find("id=\"assessment\"").unwrap()..];
    let places: Vec<usize> = order.iter().map(|part| assessment.find(part).unwrap_or_else(|| panic!("{part} is missing"))).collect();
    assert!(places.is_sorted(), "{places:?}");
    has(&page, &["Past: a memory", "planned"]);
    has(&clinician.get(&format!("/clients/{client}")).await.body, &["the ferry landing", "planned", &format!(r#"<option value="{id}">"#)]);

    let edit = format!("/targets/{id}/edit");
    let typed = with(&with(&with(&edited(), "version", "1"), "sud", "7"), "picture", "gangway gone");
    assert_eq!(clinician.post_form(&edit, &typed).await.place(), format!("/targets/{id}"));
    let page = clinician.get(&format!("/targets/{id}")).await.body;
    has(&page, &["gangway gone", "7 of 10", "powerless"]);
    let form = clinician.get(&edit).await.body;
    has(&form, &[r#"name="version" value="2""#, "Assessed last: SUD 7, Tuesday 3 March 2026", r#"name="sud" value="""#]);

    assert_eq!(clinician.post_form(&format!("/targets/{id}/archive"), &[("version", "2")]).await.status, 303);
    let record = clinician.get(&format!("/clients/{client}")).await.body;
    assert!(!record.contains("<option value=\"0") && record.contains("Archived targets (1)"));
    assert!(!record.contains(&format!(r#"<option value="{id}">"#)), "an archived target is not offered for a session");
    assert_eq!(clinician.post_form(&format!("/targets/{id}/restore"), &[("version", "3")]).await.status, 303);
    has(&clinician.get(&format!("/clients/{client}")).await.body, &[&format!(r#"<option value="{id}">"#)]);
}

/// What the form of a target that is there already sends when nothing was changed: no rating was asked anew.
fn edited() -> Vec<(&'static str, &'static str)> {
    with(&with(&TARGET, "sud", ""), "voc", "")
}

/// The ratings of the table as value and replaced value, in order of keeping.
async fn chain(house: &House, scale: &str) -> Vec<(Option<i16>, Option<i16>)> {
    sqlx::query_as(
        "SELECT r.value, before.value FROM rating r LEFT JOIN rating before ON before.id = r.replaces WHERE r.scale = $1 ORDER BY r.seq",
    )
    .bind(scale)
    .fetch_all(&house.database.superuser)
    .await
    .unwrap()
}

#[tokio::test]
async fn an_assessment_made_anew_leaves_the_first_as_it_was() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let mut lead = house.member(&[Role::Lead]).await;
    let client = client(&mut clinician).await;
    let id = target(&mut clinician, client).await;
    assert_eq!(clinician.post_form(&format!("/clients/{client}/sessions"), &[("target", &id.to_string())]).await.status, 303);
    let edit = format!("/targets/{id}/edit");
    for (version, sud) in [("1", "6"), ("2", ""), ("3", "6")] {
        house.clock.advance(Duration::minutes(1));
        let answer = clinician.post_form(&edit, &with(&with(&edited(), "version", version), "sud", sud)).await;
        assert_eq!(answer.status, 303, "{}", answer.body);
    }
    assert_eq!(
        chain(&house, "sud").await,
        [(Some(8), None), (Some(6), None), (Some(6), None)],
        "the same value asked again is a rating too"
    );
    assert_eq!(chain(&house, "voc").await, [(Some(2), None)], "what was not asked anew is not kept anew");
    has(&clinician.get(&format!("/targets/{id}")).await.body, &["<td>8 of 10</td><td>6 of 10</td><td>6 of 10</td>", "<td>2 of 7</td>"]);
    let list = lead.get("/practice/caseload").await.body;
    has(&list, &[r#"<td class="number">8</td><td class="number">6</td>"#]);
    let page = clinician.get(&format!("/targets/{id}")).await.body;
    has(&page, &["SUD fell from 8 to 6 (asked once outside of sessions and in 1 of 1 session)."]);
}

#[tokio::test]
async fn a_typing_error_is_corrected_in_its_place_and_both_values_are_kept() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let id = target(&mut clinician, client).await;
    let edit = format!("/targets/{id}/edit");
    house.clock.advance(Duration::minutes(1));
    assert_eq!(clinician.post_form(&edit, &with(&with(&edited(), "version", "1"), "sud", "6")).await.status, 303);
    let (first, voc): (Uuid, Uuid) = sqlx::query_as(
        "SELECT (SELECT id FROM rating WHERE scale = 'sud' ORDER BY seq LIMIT 1), (SELECT id FROM rating WHERE scale = 'voc')",
    )
    .fetch_one(&house.database.superuser)
    .await
    .unwrap();
    let (first, voc) = (first.to_string(), voc.to_string());
    has(
        &clinician.get(&edit).await.body,
        &[&format!(r#"<option value="{first}">SUD 8, Tuesday 3 March 2026</option>"#), "No typing error"],
    );
    let slip = |version, wrong, right| with(&with(&with(&edited(), "version", version), "wrong", wrong), "right", right);
    for (wrong, right, says) in [
        (first.as_str(), "11", "must be a whole number from 0 to 10"),
        (&voc, "0", "Did you mean 1?"),
        (&first, "8", "stands already"),
        ("", "7", "Choose the value that is wrong"),
        ("00000000-0000-4000-8000-000000000001", "7", "corrected meanwhile"),
    ] {
        let answer = clinician.post_form(&edit, &slip("2", wrong, right)).await;
        assert_eq!(answer.status, 422, "{wrong} {right}");
        has(&answer.body, &[says]);
    }
    assert_eq!(chain(&house, "sud").await.len(), 2, "what was refused is not kept, in no part");
    assert_eq!(clinician.post_form(&edit, &slip("2", &first, "9")).await.status, 303);
    assert_eq!(chain(&house, "sud").await, [(Some(8), None), (Some(6), None), (Some(9), Some(8))]);
    let page = clinician.get(&format!("/targets/{id}")).await.body;
    has(&page, &["<td>9 of 10</td><td>6 of 10</td><td>6 of 10</td>", "Typing error corrected Tuesday 3 March 2026: 8 before"]);
    assert_eq!(clinician.post_form(&edit, &slip("3", &voc, "")).await.status, 303);
    assert_eq!(chain(&house, "voc").await, [(Some(2), None), (None, Some(2))], "what was never asked is taken back");
    has(&clinician.get(&format!("/targets/{id}")).await.body, &["<td>not rated</td><td>not rated</td><td>not rated</td>"]);
}

/// A rating that the desk took belongs to its session, also once the target's form corrects it.
#[tokio::test]
async fn correcting_an_assessment_of_a_session_leaves_it_in_the_session() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let id = target(&mut clinician, client).await;
    let opened = clinician.post_form(&format!("/clients/{client}/sessions"), &[("target", &id.to_string())]).await.location;
    let session = opened.trim_end_matches("/desk").to_owned();
    let rating = Uuid::from_u128(77).to_string();
    let entry =
        serde_json::json!({"id": rating, "set": null, "replaces": null, "moment": "assessment", "value": {"kind": "sud", "value": 3}});
    assert_eq!(clinician.post_json(&format!("{session}/entries"), &entry).await.status, 200);
    let typed = with(&with(&with(&edited(), "version", "1"), "wrong", &rating), "right", "7");
    assert_eq!(clinician.post_form(&format!("/targets/{id}/edit"), &typed).await.status, 303);
    let page = clinician.get(&session).await.body;
    has(&page, &["<td class=\"number\">7</td><td>assessment</td>", "corrected"]);
    assert!(!page.contains("<td class=\"number\">3</td><td>assessment</td>"));
    let log = clinician.get_json(&format!("{session}/entries")).await.json();
    assert_eq!(log["entries"].as_array().unwrap().len(), 2, "the desk's log has both");
}

#[tokio::test]
async fn what_was_complete_is_reopened_never_quietly_changed() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let id = target(&mut clinician, client).await;
    let path = format!("/targets/{id}/facts");
    let steps = [
        ("decided.complete", "", "planned", 409, "its end is open and there is no code"),
        ("decided.complete", "a whim", "planned", 400, "no such code"),
        ("decided.complete", "judgement", "active", 409, "the page showed another state"),
        ("decided.complete", "judgement", "planned", 303, ""),
        ("decided.incomplete", "", "complete, provisional", 409, "what is complete is reopened first"),
        ("nonsense", "", "complete, provisional", 400, "nothing that can be said"),
        ("decided.reopened", "", "complete, provisional", 303, ""),
    ];
    for (said, because, stood, expected, why) in steps {
        let answer = clinician.post_form(&path, &[("said", said), ("because", because), ("stood", stood)]).await;
        assert_eq!(answer.status, expected, "{said} {because}: {why}");
    }
    has(&clinician.get(&format!("/targets/{id}")).await.body, &["<li>reopened</li>"]);
    let kept: Vec<(String, Option<String>)> = sqlx::query_as("SELECT code, because FROM fact WHERE kind = 'decided' ORDER BY seq")
        .fetch_all(&house.database.superuser)
        .await
        .unwrap();
    assert_eq!(kept, [("complete".into(), Some("judgement".into())), ("reopened".into(), None)]);
}

#[tokio::test]
async fn a_conflict_keeps_what_was_typed_and_shows_what_stands() {
    let house = House::build().await;
    let mut one = house.member(&[Role::Clinician]).await;
    let mut again = house.sign_in(one.member).await;
    let client = client(&mut one).await;
    let target = target(&mut one, client).await;
    let first = [with(&CLIENT, "version", "1"), with(&edited(), "version", "1")];
    let cases =
        [(format!("/clients/{client}/edit"), "contact_name", &first[0]), (format!("/targets/{target}/edit"), "emotions", &first[1])];
    for (path, field, fields) in cases {
        assert_eq!(one.post_form(&path, &with(fields, field, "Disa Norr")).await.status, 303);
        let answer = again.post_form(&path, &with(fields, field, "Ebbe Sand")).await;
        assert_eq!(answer.status, 409);
        has(
            &answer.body,
            &["Not saved: somebody changed this meanwhile", "Ebbe Sand", "The record now says “Disa Norr”.", r#"name="version" value="2""#],
        );
        assert_eq!(answer.body.matches("The record now says").count(), 2, "only the field that differs: beside it and in the list");
        assert_eq!(again.post_form(&path, &with(&with(fields, field, "Ebbe Sand"), "version", "2")).await.status, 303);
        has(&one.get(&path).await.body, &["Ebbe Sand"]);
    }
}
