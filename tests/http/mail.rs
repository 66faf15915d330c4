//! Telling by mail that something waits: whom, once, what is said and what is not, and a server of mail that is down.

use leeward::mail::{Post, tell};
use leeward::measures::{Filled, Occasion, Sheet};
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward_core::measures::Measure;
use leeward_tests::Letterbox;

use crate::askings::{on_errand, send};
use crate::scene::{NAME, Scene};

/// The client hands in a PHQ-9 whose item about death is answered with 1.
async fn hands_in_a_flag(scene: &Scene) {
    let mut client = on_errand(scene).await;
    let items = (1..=9).map(|item| (format!("item_{item}"), "1".to_owned()));
    let fields: Vec<(String, String)> = items.chain([("measure".to_owned(), "phq9".to_owned())]).collect();
    let answer = send(&mut client, &fields).await;
    assert_eq!((answer.status, answer.place()), (303, "/q/thanks"), "{}", answer.body);
}

fn post(scene: &Scene, letterbox: &Letterbox) -> Post {
    Post::new(&letterbox.url, "Portal <portal@practice.example>", &scene.house.origin).unwrap()
}

async fn sent(scene: &Scene, post: &Post) -> usize {
    let told = tell(&scene.house.app, post).await.unwrap();
    assert!(told.failed.is_empty(), "{told:?}");
    told.sent
}

#[tokio::test]
async fn who_has_not_had_a_flag_on_screen_is_told_by_mail_once_and_nothing_of_it() {
    let mut scene = Scene::build().await;
    let letterbox = Letterbox::open().await;
    let post = post(&scene, &letterbox);
    let mut named = scene.house.member(&[Role::Clinician]).await;
    let mut other = scene.house.member(&[Role::Clinician]).await;
    for (who, address) in [(&mut scene.clinician, "treats"), (&mut named, "named"), (&mut other, "other")] {
        let address = format!("{address}@practice.example");
        assert_eq!(who.fill_in("/account/mail", &[("address", &address)]).await.status, 303);
    }
    let set = "UPDATE practice SET told_too = $1";
    sqlx::query(set).bind(named.member).execute(&scene.house.database.superuser).await.unwrap();
    assert_eq!(sent(&scene, &post).await, 0, "no flag is open");
    hands_in_a_flag(&scene).await;
    // The named member looks before the mail goes.
    assert!(named.get("/clients").await.body.contains("flag"));
    assert_eq!(sent(&scene, &post).await, 1);
    let letters = letterbox.empty();
    let (to, text) = &letters[0];
    assert_eq!((letters.len(), to.as_str()), (1, "treats@practice.example"));
    assert!(text.contains("Subject: Something waits for you") && text.contains("From: Portal <portal@practice.example>"), "{text}");
    assert!(text.contains(&scene.house.origin), "{text}");
    for told in [NAME, "PHQ", "risk", "client", "flag", "form"] {
        assert!(!text.contains(told), "{told}: {text}");
    }
    assert_eq!(sent(&scene, &post).await, 0, "told once");
    let page = scene.clinician.get(&format!("/clients/{}/measures/1", scene.client)).await.body;
    assert!(page.contains("told by mail"), "{page}");
}

#[tokio::test]
async fn a_server_of_mail_that_is_down_loses_nobody() {
    let mut scene = Scene::build().await;
    let letterbox = Letterbox::open().await;
    let post = post(&scene, &letterbox);
    assert_eq!(scene.clinician.fill_in("/account/mail", &[("address", "treats@practice.example")]).await.status, 303);
    hands_in_a_flag(&scene).await;
    letterbox.refuse(true);
    let told = tell(&scene.house.app, &post).await.unwrap();
    assert_eq!((told.sent, told.failed.len()), (0, 1));
    assert!(told.failed[0].contains("no room") && !told.failed[0].contains("treats@"), "{told:?}");
    letterbox.refuse(false);
    assert_eq!(sent(&scene, &post).await, 1);
    assert_eq!(letterbox.empty().len(), 1);
}

#[tokio::test]
async fn nobody_is_told_of_what_they_entered_or_of_what_was_dealt_with() {
    let mut scene = Scene::build().await;
    let letterbox = Letterbox::open().await;
    let post = post(&scene, &letterbox);
    assert_eq!(scene.clinician.fill_in("/account/mail", &[("address", "treats@practice.example")]).await.status, 303);
    let sheet = Sheet::new(Measure::Phq9.form(), vec![Some(1); 9]).unwrap();
    let at = scene.house.app.world.now();
    let filled = Filled { measure: Measure::Phq9, occasion: Occasion::Regular, answered_at: at, sheet, event: Private::default() };
    leeward::measures::enter(&scene.house.app, &scene.clinician.subject(), scene.client, &filled).await.unwrap();
    assert_eq!(sent(&scene, &post).await, 0, "entered by the one who would be told");
    hands_in_a_flag(&scene).await;
    let closed = scene.clinician.post_form(&format!("/clients/{}/measures/2/flag", scene.client), &[("known", "yes")]).await;
    assert_eq!(closed.status, 303, "{}", closed.body);
    assert_eq!(sent(&scene, &post).await, 0, "closed");
}

#[tokio::test]
async fn an_address_is_one_or_none_and_is_its_owners_alone() {
    let mut scene = Scene::build().await;
    let page = scene.clinician.get("/account/mail").await.body;
    assert!(page.contains("This portal sends no mail"), "{page}");
    for none in ["hofer", "hofer@", "a b@practice.example", "one@practice.example, two@practice.example"] {
        let refused = scene.clinician.fill_in("/account/mail", &[("address", none)]).await;
        assert!(refused.status == 422 && refused.body.contains("One address of mail"), "{none}: {} {}", refused.status, refused.body);
    }
    assert_eq!(scene.clinician.fill_in("/account/mail", &[("address", "hofer@practice.example")]).await.status, 303);
    let stale = scene.clinician.post_form("/account/mail", &[("address", "new@practice.example"), ("shown", "")]).await;
    assert!(stale.status == 409 && stale.body.contains("hofer@practice.example"), "{} {}", stale.status, stale.body);
    let mut other = scene.house.member(&[Role::Clinician, Role::Administrator]).await;
    assert!(!other.get("/account/mail").await.body.contains("hofer@"));
    assert_eq!(scene.clinician.fill_in("/account/mail", &[("address", "")]).await.status, 303);
    assert!(!scene.clinician.get("/account/mail").await.body.contains("hofer@"));
}
