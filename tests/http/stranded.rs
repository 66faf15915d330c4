//! Nobody ends up where nobody can help them: clients are handed over, a lost passkey is replaced by two, roles change, and what
//! decides about records asks for the passkey again.

use chrono::Duration;
use leeward::platform::Role;
use leeward::signin::{agree_replacement_as_owner, ask_replacement_as_owner};
use leeward_tests::{Browser, House};
use serde_json::json;
use sqlx::ConnectOptions;
use uuid::Uuid;

use crate::scene::{NAME, Scene};
use crate::signin::{Device, audited, enrol, invited};

pub async fn hand(who: &mut Browser, client: Uuid, from: &str, to: Uuid) -> leeward_tests::Answer {
    who.post_form(&format!("/handover/{client}"), &[("from", from), ("to", &to.to_string())]).await
}

#[tokio::test]
async fn a_client_is_handed_over_both_are_told_and_no_word_is_seen() {
    let mut scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let mut next = scene.house.member(&[Role::Clinician]).await;
    let from = scene.clinician.member.to_string();
    let shown = lead.get(&format!("/handover?from={from}")).await;
    assert_eq!(shown.status, 200, "{}", shown.body);
    assert!(shown.body.contains("this clinician alone") && shown.body.contains("open now") && !shown.body.contains(NAME), "{}", shown.body);

    let done = hand(&mut lead, scene.client, &from, next.member).await;
    assert_eq!(done.status, 303, "{}", done.body);
    assert_eq!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.status, 404);
    assert!(next.get(&format!("/clients/{}", scene.client)).await.body.contains(NAME));
    assert_eq!(next.get(&format!("/sessions/{}/desk", scene.session)).await.status, 200, "the session goes on with the next clinician");
    let told = next.get("/clients").await.body;
    assert!(told.contains("handed record 1 over to you from"), "{told}");
    assert!(scene.clinician.get("/clients").await.body.contains("handed record 1 over from you to"));
    let news = told.split("/news/").nth(1).unwrap().split('/').next().unwrap().to_owned();
    assert_eq!(next.post_form(&format!("/news/{news}/read"), &[]).await.status, 303);
    assert!(!next.get("/clients").await.body.contains("over to you"), "read once");
    assert_eq!(scene.clinician.post_form(&format!("/news/{news}/read"), &[]).await.status, 404, "somebody else's");
    assert_eq!(audited(&scene.house, "client.hand_over").await, 1);
    let again = hand(&mut lead, scene.client, &from, next.member).await;
    assert_eq!(again.status, 409, "{}", again.body);
}

#[tokio::test]
async fn who_may_not_hand_over_does_not_and_nobody_becomes_a_clinician_by_it() {
    let mut scene = Scene::build().await;
    let mut other = scene.house.member(&[Role::Clinician]).await;
    let administrator = scene.house.member(&[Role::Administrator]).await;
    let from = scene.clinician.member.to_string();
    let to = other.member;
    assert_eq!(hand(&mut other, scene.client, &from, to).await.status, 403);
    assert_eq!(hand(&mut scene.clinician, scene.client, &from, to).await.status, 403);
    let mut lead = scene.house.member(&[Role::Lead]).await;
    assert_eq!(hand(&mut lead, scene.client, &from, administrator.member).await.status, 409, "no clinician");
    assert_eq!(hand(&mut lead, scene.client, &from, Uuid::nil()).await.status, 409);
    assert_eq!(hand(&mut lead, Uuid::nil(), &from, to).await.status, 409);
    assert_eq!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.status, 200);
}

#[tokio::test]
async fn ending_a_membership_asks_for_its_clients_and_what_is_left_alone_is_seen() {
    let scene = Scene::build().await;
    let mut administrator = scene.house.member(&[Role::Administrator]).await;
    let next = scene.house.member(&[Role::Clinician]).await;
    let end = format!("/members/{}/end", scene.clinician.member);
    assert!(administrator.get(&end).await.body.contains("1 client has no other clinician"));
    let refused = administrator.post_form(&end, &[]).await;
    assert_eq!(refused.status, 422);
    assert!(refused.body.contains("Hand these clients over first"), "{}", refused.body);
    assert_eq!(administrator.post_form(&end, &[("leaves", "yes")]).await.status, 303);
    let untreated = administrator.get("/handover").await.body;
    assert!(untreated.contains("1 client has no clinician") && untreated.contains("Clients without a clinician"), "{untreated}");
    assert_eq!(hand(&mut administrator, scene.client, "", next.member).await.status, 303);
    assert!(administrator.get("/handover").await.body.contains("Every client has a clinician"));
    assert_eq!(hand(&mut administrator, scene.client, "", scene.clinician.member).await.status, 409, "who has left takes nobody on");
}

#[tokio::test]
async fn roles_change_and_bite_at_once() {
    let mut scene = Scene::build().await;
    let mut administrator = scene.house.member(&[Role::Administrator]).await;
    let roles = format!("/members/{}/roles", scene.clinician.member);
    assert_eq!(administrator.post_form(&roles, &[]).await.status, 422, "none at all");
    assert_eq!(administrator.post_form(&roles, &[("were", "clinician"), ("lead", "yes"), ("leaves", "yes")]).await.status, 303);
    assert_eq!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.status, 404, "no clinician any more");
    assert_eq!(scene.clinician.get("/practice/caseload").await.status, 200);
    assert!(scene.clinician.get("/practice/caseload").await.body.contains("changed your roles"));
    let own = format!("/members/{}/roles", administrator.member);
    assert_eq!(administrator.post_form(&own, &[("lead", "yes")]).await.status, 422, "one administrator stays");
    assert_eq!(administrator.post_form(&own, &[("were", "administrator"), ("lead", "yes"), ("administrator", "yes")]).await.status, 303);
    assert_eq!(audited(&scene.house, "member.roles").await, 2);
}

/// The link on a page that shows one.
pub fn token(page: &str) -> String {
    let rest = page.split("/enrol#").nth(1).expect("a link is shown");
    rest.chars().take_while(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_')).collect()
}

pub async fn waiting(house: &House) -> Uuid {
    let which = "SELECT id FROM access.replacement WHERE agreed_at IS NULL ORDER BY asked_at DESC LIMIT 1";
    sqlx::query_scalar(which).fetch_one(&house.database.superuser).await.unwrap()
}

#[tokio::test]
async fn a_lost_passkey_is_replaced_by_two_and_the_clients_stay() {
    let mut scene = Scene::build().await;
    let mut asker = scene.house.member(&[Role::Administrator]).await;
    let mut other = scene.house.member(&[Role::Lead]).await;
    let who = scene.clinician.member;
    assert_eq!(asker.post_form(&format!("/members/{who}/passkey"), &[]).await.status, 303);
    assert!(other.get("/practice/caseload").await.body.contains("says that Member"));
    let which = waiting(&scene.house).await;
    let agree = format!("/replacements/{which}/agree");
    assert_eq!(asker.post_form(&agree, &[]).await.status, 409, "one person is not two");
    assert_eq!(scene.clinician.post_form(&agree, &[]).await.status, 403);
    let link = other.post_form(&agree, &[]).await;
    assert_eq!(link.status, 200, "{}", link.body);
    assert_eq!(other.post_form(&agree, &[]).await.status, 409, "agreed to once");
    assert_eq!(scene.clinician.get("/clients").await.status, 200, "nothing has changed before the new passkey is there");

    let mut fresh = scene.house.visitor();
    let made = enrol(&mut fresh, &mut Device::new(&scene.house.origin), &token(&link.body)).await;
    assert_eq!(made.status, 200, "{}", made.body);
    assert_eq!(scene.clinician.get("/clients").await.status, 401, "the old sign-in has ended");
    assert!(fresh.get("/clients").await.body.contains(NAME), "the clients are still there");
    let passkeys: i64 = sqlx::query_scalar("SELECT count(*) FROM access.passkey WHERE member_id = $1")
        .bind(who)
        .fetch_one(&scene.house.database.superuser)
        .await
        .unwrap();
    assert_eq!(passkeys, 1);
    assert!(asker.get("/members").await.body.contains("were replaced by a new one"));
}

#[tokio::test]
async fn the_terminal_may_be_one_of_the_two_and_both_where_there_is_nobody_else() {
    let house = House::build().await;
    let owner = house.database.owner().to_url_lossy().to_string();
    let (world, origin) = (&house.app.world, &house.app.origin);
    let alone = house.member(&[Role::Administrator]).await;
    let name: String = sqlx::query_scalar("SELECT name FROM access.member WHERE id = $1")
        .bind(alone.member)
        .fetch_one(&house.database.superuser)
        .await
        .unwrap();
    assert!(agree_replacement_as_owner(&owner, world, origin, &name).await.is_err(), "nothing was asked for");
    ask_replacement_as_owner(&owner, world, &name).await.unwrap();
    assert!(agree_replacement_as_owner(&owner, world, origin, &name).await.is_ok(), "a practice of one");

    let second = house.member(&[Role::Lead]).await;
    sqlx::query("UPDATE access.member SET name = 'Second ' || name WHERE id = $1")
        .bind(second.member)
        .execute(&house.database.superuser)
        .await
        .unwrap();
    ask_replacement_as_owner(&owner, world, &name).await.unwrap();
    assert!(agree_replacement_as_owner(&owner, world, origin, &name).await.is_err(), "there is somebody who could agree");
    assert!(ask_replacement_as_owner(&owner, world, "Nobody").await.is_err());
    assert_eq!(audited(&house, "replacement.agree").await, 1);
}

#[tokio::test]
async fn what_decides_about_records_asks_for_the_passkey_after_ten_minutes() {
    let mut scene = Scene::build().await;
    let mut administrator = scene.house.member(&[Role::Administrator, Role::Lead]).await;
    let next = scene.house.member(&[Role::Clinician]).await;
    let from = scene.clinician.member;
    scene.house.clock.advance(Duration::minutes(10));
    let tried = [
        (format!("/members/{from}/roles"), vec![("lead", "yes".to_owned()), ("leaves", "yes".to_owned())]),
        (format!("/members/{from}/end"), vec![("leaves", "yes".to_owned())]),
        (format!("/members/{from}/passkey"), vec![]),
        (format!("/handover/{}", scene.client), vec![("from", from.to_string()), ("to", next.member.to_string())]),
        ("/members/invite".to_owned(), vec![("name", "Ines Marsh".to_owned()), ("lead", "yes".to_owned())]),
        ("/account/passkeys/link".to_owned(), vec![]),
    ];
    for (path, fields) in &tried {
        let fields: Vec<_> = fields.iter().map(|(name, value)| (*name, value.as_str())).collect();
        let answer = administrator.post_form(path, &fields).await;
        assert_eq!(answer.status, 401, "{path}: {}", answer.body);
        assert!(answer.body.contains("Show your passkey"), "{path}: {}", answer.body);
    }
    assert_eq!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.status, 200, "nothing was done");
    assert_eq!(administrator.get("/account").await.status, 200, "the sign-in itself goes on");
}

async fn show_again(browser: &mut Browser, device: &mut Device) -> leeward_tests::Answer {
    device.counter += 1; // a counter that stands still is a copied passkey (WebAuthn, section 6.1.1)
    let begun = browser.post_json("/signin/again/begin", &json!({})).await.json();
    let shown = json!({ "ceremony": begun["ceremony"], "credential": device.answer(&begun["publicKey"]), "next": "/account" });
    browser.post_json("/signin/again/finish", &shown).await
}

#[tokio::test]
async fn a_passkey_shown_again_counts_for_ten_minutes_and_somebody_elses_does_not() {
    let house = House::build().await;
    let (mut browser, mut device) = (house.visitor(), Device::new(&house.origin));
    enrol(&mut browser, &mut device, &invited(&house, &[Role::Administrator]).await).await;
    let mut strange = Device::new(&house.origin);
    enrol(&mut house.visitor(), &mut strange, &invited(&house, &[Role::Lead]).await).await;
    house.clock.advance(Duration::minutes(10));
    let link = "/account/passkeys/link";
    assert_eq!(browser.post_form(link, &[]).await.status, 401);
    assert!(browser.get("/account").await.body.contains("Show your passkey again"));
    assert_eq!(browser.post_json("/account/passkeys/begin", &json!({})).await.status, 401, "before the device makes one");
    let refused = show_again(&mut browser, &mut strange).await;
    assert_eq!(refused.status, 403, "{}", refused.body);
    assert_eq!(browser.post_form(link, &[]).await.status, 401);
    let shown = show_again(&mut browser, &mut device).await;
    assert_eq!((shown.status, shown.json()["next"].as_str()), (200, Some("/account")), "{}", shown.body);
    assert_eq!(browser.post_form(link, &[]).await.status, 200);
    house.clock.advance(Duration::minutes(10));
    assert_eq!(browser.post_form(link, &[]).await.status, 401);
}

#[tokio::test]
async fn a_link_to_make_a_passkey_ends_with_the_sign_in_that_made_it() {
    let house = House::build().await;
    let mut browser = house.member(&[Role::Clinician]).await;
    let page = browser.post_form("/account/passkeys/link", &[]).await;
    let link = token(&page.body);
    browser.post_form("/signout", &[]).await;
    let begun = house.visitor().post_json("/enrol/begin", &json!({ "token": link })).await;
    assert_eq!(begun.status, 403, "{}", begun.body);
}
