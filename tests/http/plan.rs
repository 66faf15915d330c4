//! The plan of treatment: order by hand, clusters, what came up from what, and what is asked once one of a cluster is at its end.

use chrono::Duration;
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::targets::{self, Belongs, NewTarget, Prong, Wanted, Words};
use leeward_core::scale::Sud;
use leeward_tests::Answer;
use uuid::Uuid;

use crate::scene::{LABEL, Scene, rows};

/// Another target, with its place in the plan.
async fn another(scene: &Scene, label: &str, prong: Prong, wanted: Wanted) -> Uuid {
    let words = Words { label: Private::new(label), ..Words::default() };
    let new = NewTarget { client: scene.client, prong, words, sud: Sud::new(6).ok(), voc: None };
    let subject = scene.clinician.subject();
    scene.house.clock.advance(Duration::seconds(1));
    let target = targets::create(&scene.house.app, &subject, new).await.unwrap();
    targets::arrange(&scene.house.app, &subject, target, &wanted).await.unwrap();
    target
}

/// Three targets: the scene's at the age of 9 and a trigger, in a cluster; a memory by itself.
async fn three(scene: &Scene) -> (Uuid, Uuid) {
    let subject = scene.clinician.subject();
    let first = Wanted { age: Some(9), year: Some(1998), belongs: Belongs::New(Private::new("On the water")), parent: None };
    targets::arrange(&scene.house.app, &subject, scene.target, &first).await.unwrap();
    let trigger =
        another(scene, "harbour bell", Prong::Present, Wanted { belongs: Belongs::To(1), parent: Some(1), ..Wanted::default() }).await;
    let alone = another(scene, "the attic", Prong::Past, Wanted { year: Some(2004), ..Wanted::default() }).await;
    (trigger, alone)
}

async fn plan(scene: &mut Scene) -> String {
    let page = scene.clinician.get(&format!("/clients/{}/plan", scene.client)).await;
    assert_eq!(page.status, 200, "{}", page.body);
    page.body
}

/// The labels in the order of the work.
async fn order(scene: &mut Scene) -> Vec<String> {
    let page = plan(scene).await;
    let label = |row: String| row.split('|').nth(1).unwrap().split("target ").next().unwrap().to_owned();
    rows(&page, "Targets in the order of the work").into_iter().map(label).collect()
}

fn version(page: &str) -> String {
    page.split(r#"name="version" value=""#).nth(1).unwrap().split('"').next().unwrap().to_owned()
}

async fn moves(scene: &mut Scene, target: &str, to: &str, version: &str) -> Answer {
    let path = format!("/clients/{}/plan/move", scene.client);
    scene.clinician.post_form(&path, &[("target", target), ("to", to), ("version", version)]).await
}

/// The scene's target by its form as it stands in `three`, with these fields typed otherwise.
async fn edits(scene: &mut Scene, fields: &[(&str, &str)]) -> Answer {
    let shown = [("label", LABEL), ("prong", "past"), ("age", "9"), ("year", "1998"), ("cluster", "1")];
    let kept = shown.into_iter().filter(|(name, _)| !fields.iter().any(|(typed, _)| typed == name));
    let all: Vec<(&str, &str)> = kept.chain(fields.iter().copied()).collect();
    scene.clinician.fill_in(&format!("/targets/{}/edit", scene.target), &all).await
}

#[tokio::test]
async fn targets_stand_in_the_order_of_their_coming_until_somebody_moves_one() {
    let mut scene = Scene::build().await;
    three(&scene).await;
    assert_eq!(order(&mut scene).await, [LABEL, "harbour bell", "the attic"]);
    let page = plan(&mut scene).await;
    let now = version(&page);
    let moved = moves(&mut scene, "3", "1", &now).await;
    assert_eq!((moved.status, moved.location), (303, format!("/clients/{}/plan#target-3", scene.client)), "{}", moved.body);
    assert_eq!(order(&mut scene).await, ["the attic", LABEL, "harbour bell"]);
    // Two desks move one plan: the later sees both, and nothing of its own was done.
    let late = moves(&mut scene, "2", "1", &now).await;
    assert_eq!(late.status, 409);
    assert!(late.body.contains("somebody changed this plan meanwhile") && late.body.contains("the attic"), "{}", late.body);
    assert_eq!(order(&mut scene).await, ["the attic", LABEL, "harbour bell"]);
    let after = version(&late.body);
    assert_eq!(moves(&mut scene, "2", "1", &after).await.status, 303);
    assert_eq!(order(&mut scene).await, ["harbour bell", "the attic", LABEL]);
    for (target, to) in [("2", "0"), ("2", "4"), ("2", "first"), ("9", "1"), ("", "1")] {
        let now = version(&plan(&mut scene).await);
        assert_eq!(moves(&mut scene, target, to, &now).await.status, 400, "{target} to {to}");
    }
}

#[tokio::test]
async fn the_picture_and_the_pages_say_what_belongs_together_and_what_came_from_what() {
    let mut scene = Scene::build().await;
    let (trigger, _) = three(&scene).await;
    let page = plan(&mut scene).await;
    // One target has an age and a year, so the other's year is an age: 9 + (2004 - 1998).
    assert!(page.contains("2 memories from age 9 to 15 and 1 present trigger. None has reached its end."), "{page}");
    assert!(page.contains("may be a year out"));
    let table = rows(&page, "The plan by age");
    let second = format!("2. harbour bell|now|On the water|1. {LABEL}|planned");
    assert_eq!((table.len(), table[1].as_str()), (3, second.as_str()), "{table:?}");
    let parent = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert!(parent.contains("age 9, 1998") && parent.contains("On the water") && parent.contains("Led to"), "{parent}");
    let child = scene.clinician.get(&format!("/targets/{trigger}")).await.body;
    assert!(child.contains(&format!("<dt>Came up from</dt><dd><a href=\"/targets/{}\">1. {LABEL}</a>", scene.target)), "{child}");
}

#[tokio::test]
async fn the_form_of_a_target_takes_its_place_in_the_plan_and_says_what_cannot_be() {
    let mut scene = Scene::build().await;
    let (trigger, _) = three(&scene).await;
    for (field, typed, message) in [
        ("age", "300", "from 0 to 120"),
        ("age", "-1", "from 0 to 120"),
        ("age", "nine", "from 0 to 120"),
        ("year", "98", "A year of four figures"),
        ("cluster", "7", "Choose one of these"),
        ("cluster", "water", "Choose one of these"),
        ("new_cluster", "Somewhere else", "not both"),
        ("parent", "1", "Choose one of these"),
        ("parent", "2", "That target came up from this one"),
        ("negative_listed", "99", "Choose one of these"),
    ] {
        let answer = edits(&mut scene, &[(field, typed)]).await;
        let beside = answer.body.split(&format!(r#"id="{field}-error">"#)).nth(1).unwrap_or_default().split('<').next().unwrap_or_default();
        assert_eq!((answer.status, beside.contains(message)), (422, true), "{field} {typed}: {beside}");
    }
    // From the list, where there are no words of the client's own; beside such words it is refused.
    let listed = edits(&mut scene, &[("negative_listed", "1"), ("positive_listed", "1"), ("cluster", ""), ("age", " 10 ")]).await;
    assert_eq!(listed.status, 303, "{}", listed.body);
    let page = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
    assert!(page.contains("It happened because of me.") && page.contains("age 10, 1998") && page.contains("by itself"), "{page}");
    let both = edits(&mut scene, &[("negative_belief", "It happened because of me."), ("negative_listed", "2")]).await;
    assert!(both.status == 422 && both.body.contains("words of the client’s own above"), "{}", both.body);
    // Another ring, by way of the second: the third may not come from the first's child's child.
    let third = another(&scene, "the slipway", Prong::Past, Wanted { parent: Some(2), ..Wanted::default() }).await;
    for (target, parent) in [(third, "1"), (trigger, "4")] {
        let fields = [("label", "another"), ("prong", "past"), ("parent", parent)];
        assert_eq!(scene.clinician.fill_in(&format!("/targets/{target}/edit"), &fields).await.status, 303, "from {parent}");
    }
    assert_eq!(edits(&mut scene, &[("parent", "2")]).await.status, 422, "2 comes from 4, and 4 from 1");
    let new = format!("/clients/{}/targets/new", scene.client);
    let fields = [("label", "the slope"), ("prong", "past"), ("age", "31"), ("new_cluster", "Heights")];
    assert_eq!(scene.clinician.fill_in(&new, &fields).await.status, 303);
    assert!(plan(&mut scene).await.contains("Heights"));
}

#[tokio::test]
async fn a_cluster_is_named_and_marked_and_a_target_that_leaves_it_takes_its_mark_along() {
    let mut scene = Scene::build().await;
    three(&scene).await;
    let new = format!("/clients/{}/clusters/new", scene.client);
    assert_eq!(scene.clinician.fill_in(&new, &[("name", "")]).await.status, 422);
    assert_eq!(scene.clinician.fill_in(&new, &[("name", "Heights"), ("theme", "safety")]).await.status, 303);
    let edit = format!("/clients/{}/clusters/1/edit", scene.client);
    let form = scene.clinician.get(&edit).await.body;
    assert!(form.contains("harbour bell") && !form.contains("the attic"), "only what is in it can be marked: {form}");
    assert_eq!(scene.clinician.fill_in(&edit, &[("name", "On the water"), ("earliest", "3")]).await.status, 422);
    let fields = [("name", "On the water"), ("theme", "choice"), ("earliest", "1"), ("worst", "1"), ("version", "1")];
    assert_eq!(scene.clinician.post_form(&edit, &fields).await.status, 303);
    assert!(plan(&mut scene).await.contains(&format!("1. {LABEL}, earliest and worst")));
    let late = scene.clinician.post_form(&edit, &[("name", "Ferries"), ("version", "1")]).await;
    assert_eq!(late.status, 409);
    assert!(late.body.contains("The record now says “target 1”.") && late.body.contains("Ferries"), "{}", late.body);
    assert_eq!(edits(&mut scene, &[("cluster", "2")]).await.status, 303);
    let marks: (Option<Uuid>, Option<Uuid>) = sqlx::query_as("SELECT earliest_id, worst_id FROM cluster WHERE number = 1")
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(marks, (None, None));
    assert!(!plan(&mut scene).await.contains("earliest"));
}

/// Once one of a cluster is at its end, the rest is asked anew before it is opened.
#[tokio::test]
async fn a_target_at_its_end_offers_the_others_of_its_cluster_for_a_fresh_sud() {
    let mut scene = Scene::build().await;
    let (trigger, _) = three(&scene).await;
    another(&scene, "the new crossing", Prong::Future, Wanted { belongs: Belongs::To(1), ..Wanted::default() }).await;
    let page = format!("/targets/{}", scene.target);
    assert!(!scene.clinician.get(&page).await.body.contains("Ask the others"));
    let fields = [("said", "decided.complete"), ("because", "judgement"), ("stood", "planned")];
    assert_eq!(scene.clinician.post_form(&format!("{page}/facts"), &fields).await.status, 303);
    let offered = scene.clinician.get(&page).await.body;
    assert!(
        offered.contains("Ask the others") && offered.contains("Keep the SUD of target 2") && offered.contains("SUD 6 before"),
        "{offered}"
    );
    assert!(!offered.contains("target 3") && !offered.contains("target 4"), "neither of another cluster nor what is to come: {offered}");
    let facts = format!("/targets/{trigger}/facts");
    let of = scene.target.to_string();
    assert_eq!(scene.clinician.post_form(&facts, &[("said", "anew"), ("of", &of), ("sud", "11")]).await.status, 400);
    let kept = scene.clinician.post_form(&facts, &[("said", "anew"), ("of", &of), ("sud", "2")]).await;
    assert_eq!(kept.status, 303, "{}", kept.body);
    assert_eq!(kept.place(), page, "back to the one that is at its end");
    let after = scene.clinician.get(&page).await.body;
    assert!(after.contains("SUD 2, asked since") && !after.contains("Keep the SUD"), "{after}");
}

#[tokio::test]
async fn only_those_who_treat_the_client_read_the_plan() {
    let scene = Scene::build().await;
    three(&scene).await;
    for role in [Role::Lead, Role::Clinician, Role::Administrator] {
        let mut other = scene.house.member(&[role]).await;
        for path in [
            format!("/clients/{}/plan", scene.client),
            format!("/clients/{}/clusters/1/edit", scene.client),
            format!("/clients/{}/clusters/new", scene.client),
        ] {
            assert_eq!(other.get(&path).await.status, 404, "{role:?} {path}");
        }
    }
    // The names are sealed.
    let name: Vec<u8> = sqlx::query_scalar("SELECT name FROM cluster").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert!(!String::from_utf8_lossy(&name).contains("water"));
}

/// What was moved is moved once, however often it is sent.
#[tokio::test]
async fn a_move_that_is_sent_twice_is_done_once() {
    let mut scene = Scene::build().await;
    three(&scene).await;
    let now = version(&plan(&mut scene).await);
    let once = Uuid::from_u128(7).to_string();
    let path = format!("/clients/{}/plan/move", scene.client);
    for _ in 0..2 {
        let fields = [("once", once.as_str()), ("target", "3"), ("to", "1"), ("version", now.as_str())];
        assert_eq!(scene.clinician.post_form(&path, &fields).await.status, 303);
    }
    assert_eq!(order(&mut scene).await, ["the attic", LABEL, "harbour bell"]);
}
