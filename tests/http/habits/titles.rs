//! Titles: no two pages share one, none holds a name, and a form that comes back says so.

use std::collections::BTreeMap;

use leeward::app::route_list;
use leeward::live;
use leeward::measures::{Filled, Occasion, Sheet};
use leeward::platform::{Role, Rule};
use leeward::steadying::{self, Resource};
use leeward::store::seal::Private;
use leeward::targets::{self, Belongs, Wanted};
use leeward_core::measures::Measure;
use leeward_core::wire::{Ending, Preset, Purpose};
use leeward_tests::Browser;
use uuid::Uuid;

use super::title;
use crate::scene::{LABEL, NAME, Scene};

/// What shows no page of its own: addresses for scripts and machines, and what leads on.
const NO_PAGES: [&str; 8] = [
    "/livez",
    "/readyz",
    "/assets/{hash}/{name}",
    "/",
    "/sessions/{session}/entries",
    "/sessions/{session}/closing",
    "/stage/socket",
    "/sessions/{session}/desk/socket",
];

async fn all_roles(scene: &Scene) -> Browser {
    let roles = "UPDATE access.member SET roles = '{clinician,lead,administrator}' WHERE id = $1";
    sqlx::query(roles).bind(scene.clinician.member).execute(&scene.house.database.superuser).await.unwrap();
    scene.clinician.clone()
}

async fn preset(scene: &Scene) -> Uuid {
    let plan = leeward_core::safety::default_plan();
    let preset = Preset {
        name: "Evening pace".into(),
        purpose: Purpose::Processing,
        channels: plan.channels,
        rate: plan.rate,
        width: plan.width,
        length: plan.length,
    };
    leeward::presets::create(&scene.house.app, &scene.clinician.subject(), leeward::presets::Owner::Mine, &preset).await.unwrap()
}

#[tokio::test]
async fn no_two_pages_share_a_title_and_none_names_anybody() {
    let scene = Scene::inside(leeward_tests::House::build_demo().await, &[Role::Clinician]).await;
    scene.set(1, Some(24.0), Ending::Done).await;
    let cluster = Wanted { belongs: Belongs::New(Private::new("On the water")), ..Wanted::default() };
    targets::arrange(&scene.house.app, &scene.clinician.subject(), scene.target, &cluster).await.unwrap();
    let (subject, plan) = (scene.clinician.subject(), crate::safety_plan::staying_safe());
    assert!(leeward::safety_plan::save(&scene.house.app, &subject, scene.client, &plan, 0).await.unwrap());
    let quay = Resource { cue: Private::new("Quay"), ..Resource::default() };
    steadying::add(&scene.house.app, &subject, scene.client, &quay).await.unwrap();
    let mut member = all_roles(&scene).await;
    let other = scene.house.member(&[Role::Clinician]).await.member;
    let mut ids: BTreeMap<&str, String> = BTreeMap::new();
    for (place, id) in [
        ("{client}", scene.client),
        ("{target}", scene.target),
        ("{session}", scene.session),
        ("{member}", other),
        ("{preset}", preset(&scene).await),
    ] {
        ids.insert(place, id.to_string());
    }
    let sheet = Sheet::new(Measure::Phq9.form(), vec![Some(1); 9]).unwrap();
    let filled = Filled {
        measure: Measure::Phq9,
        occasion: Occasion::Intake,
        answered_at: scene.house.app.world.now(),
        sheet,
        event: Private::default(),
    };
    leeward::measures::enter(&scene.house.app, &subject, scene.client, &filled).await.unwrap();
    ids.extend([("{number}", "1".to_owned()), ("{measure}", "phq9".to_owned()), ("{role}", "clinician".to_owned())]);
    let mut seen: BTreeMap<String, String> = BTreeMap::new();
    let mut faults = Vec::new();
    let pages: Vec<_> = route_list().into_iter().filter(|route| route.method == "GET" && !NO_PAGES.contains(&route.path)).collect();
    // What a client can read has neutral titles, which say little and the same of every client.
    let of_client = |path: &str| matches!(path, "/j" | "/left" | "/q") || path.starts_with("/stage") || path.starts_with("/q/");
    for route in pages.iter().filter(|route| !of_client(route.path) && route.rule != Rule::Seat) {
        let path = ids.iter().fold(route.path.to_owned(), |path, (place, id)| path.replace(place, id));
        // The sign-in sends on who is signed in.
        let answer = if path == "/signin" { scene.house.visitor().get(&path).await } else { member.get(&path).await };
        assert_eq!(answer.status, 200, "{path}: {}", answer.body);
        let title = title(&answer).to_owned();
        if title.is_empty() || [NAME, LABEL, "Member "].iter().any(|word| title.contains(word)) {
            faults.push(format!("{path}: {title:?}"));
        }
        if let Some(before) = seen.insert(title.clone(), path.clone()) {
            faults.push(format!("{path} and {before}: {title:?}"));
        }
    }
    assert!(seen.len() >= 25, "only {} pages", seen.len());
    assert!(faults.is_empty(), "{faults:#?}");
}

/// Two records in two tabs: nothing but the number tells them apart.
#[tokio::test]
async fn pages_of_a_record_say_which_one() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), Ending::Done).await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    for (path, expected) in [
        (format!("/clients/{client}"), "Record 1"),
        (format!("/clients/{client}/edit"), "Edit record 1"),
        (format!("/clients/{client}/comfort"), "Comfort sheet of record 1"),
        (format!("/clients/{client}/targets/new"), "New target of record 1"),
        (format!("/clients/{client}/plan"), "Plan of record 1"),
        (format!("/clients/{client}/safety-plan"), "Safety plan of record 1"),
        (format!("/clients/{client}/safety-plan/edit"), "Edit safety plan of record 1"),
        (format!("/clients/{client}/clusters/new"), "New cluster of record 1"),
        (format!("/targets/{target}"), "Target 1 of record 1"),
        (format!("/targets/{target}/edit"), "Edit target 1 of record 1"),
        (format!("/sessions/{session}"), "Session 1 of record 1"),
        (format!("/sessions/{session}/sets/1"), "Set 1 of session 1, record 1"),
        (format!("/sessions/{session}/note"), "Note of session 1 of record 1"),
        (format!("/sessions/{session}/close"), "Close session 1 of record 1"),
    ] {
        assert_eq!(title(&scene.clinician.get(&path).await), expected, "{path}");
    }
}

#[tokio::test]
async fn a_form_that_was_refused_says_so_in_its_title_and_at_its_head() {
    let scene = Scene::build().await;
    let mut member = all_roles(&scene).await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    let preset = preset(&scene).await;
    for (path, begins) in [
        ("/clients/new".to_owned(), "Not saved: New client"),
        (format!("/clients/{client}/edit"), "Not saved: Edit record 1"),
        (format!("/clients/{client}/comfort"), "Not saved: Comfort sheet of record 1"),
        (format!("/clients/{client}/targets/new"), "Not saved: New target of record 1"),
        (format!("/clients/{client}/clusters/new"), "Not saved: New cluster of record 1"),
        (format!("/targets/{target}/edit"), "Not saved: Edit target 1 of record 1"),
        ("/presets/new".to_owned(), "Not saved: New preset"),
        (format!("/presets/{preset}/edit"), "Not saved: Edit preset"),
        (format!("/sessions/{session}/close"), "Not saved: Close session 1 of record 1"),
        ("/members/invite".to_owned(), "Not saved: Members"),
        (format!("/members/{}/roles", scene.clinician.member), "Not saved: Roles of a member"),
        ("/practice/settings".to_owned(), "Not saved: Settings of the practice"),
    ] {
        let answer = member.post_form(&path, &[("version", "1"), ("shown", "day_first 24 no")]).await;
        assert_eq!((answer.status, title(&answer)), (422, begins), "{path}");
        assert_eq!(answer.body.matches("role=\"alert\"").count(), 1, "{path}: one summary, which the focus goes to");
    }
    let long = "x".repeat(10_001);
    let note = member.post_form(&format!("/sessions/{session}/note"), &[("note", &long), ("version", "1")]).await;
    assert_eq!((note.status, title(&note)), (422, "Not saved: Note of session 1 of record 1"));
    // Seen again, and changed by somebody else meanwhile: the same.
    let late = member.post_form(&format!("/sessions/{session}/note"), &[("note", "x"), ("version", "7")]).await;
    assert!(late.status >= 400, "{}", late.status);
    assert!(title(&member.get(&format!("/sessions/{session}/note")).await).starts_with("Note of"));
}

#[tokio::test]
async fn a_membership_that_was_not_ended_says_so() {
    let scene = Scene::build().await;
    let mut administrator = scene.house.member(&[Role::Administrator]).await;
    let answer = administrator.post_form(&format!("/members/{}/end", scene.clinician.member), &[]).await;
    assert_eq!((answer.status, title(&answer)), (422, "Not done: End a membership"));
    assert!(answer.body.contains("role=\"alert\""));
}

/// The client's tab says the same on every page, whatever happens.
#[tokio::test]
async fn a_clients_pages_have_one_neutral_title() {
    let scene = Scene::build().await;
    live::mint(&scene.house.app, &scene.clinician.subject(), scene.session).await.unwrap();
    let mut visitor = scene.house.visitor();
    for path in ["/j", "/left", "/stage", "/stage/none", "/j/none"] {
        let answer = visitor.get(path).await;
        assert_eq!(title(&answer), "Meeting page", "{path}: {}", answer.status);
        assert!(!answer.body.contains("Leeward") && !answer.body.contains("clinician"), "{path}: {}", answer.body);
    }
}

/// Between sessions too, whatever stands on the page.
#[tokio::test]
async fn a_clients_pages_between_sessions_have_neutral_titles() {
    let scene = Scene::build().await;
    let mut client = crate::askings::on_errand(&scene).await;
    let page = client.get("/q/forms").await;
    let unsent = crate::askings::send_empty(&mut client, &page.body).await;
    let mut visitor = scene.house.visitor();
    for (answer, wanted) in [
        (visitor.get("/q").await, "Questions"),
        (page, "Questions"),
        (unsent, "Not sent yet: Questions"),
        (visitor.get("/q/forms").await, "Meeting page"),
        (visitor.get("/q/none").await, "Meeting page"),
    ] {
        assert_eq!(title(&answer), wanted, "{}", answer.status);
        for telling in ["Leeward", "clinician", NAME] {
            assert!(!answer.body.contains(telling), "{wanted}: {telling}: {}", answer.body);
        }
    }
}
