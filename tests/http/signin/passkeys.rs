//! Passkeys over HTTP: made, used, refused. Sections are those of W3C Web Authentication Level 3.

use leeward::platform::Role;
use leeward_tests::House;
use serde_json::{Value, json};

use super::{Device, audited, enrol, invited, sign_in};

#[tokio::test]
async fn an_invitation_makes_one_member_once() {
    let house = House::build().await;
    let (token, mut browser, mut device) = (invited(&house, &[Role::Administrator]).await, house.visitor(), Device::new(&house.origin));
    for _ in 0..3 {
        assert_eq!(browser.get("/enrol").await.status, 200);
    }
    let asked = browser.post_json("/enrol/begin", &json!({ "token": token })).await.json();
    let selection = &asked["publicKey"]["authenticatorSelection"];
    assert_eq!((&selection["residentKey"], &selection["userVerification"]), (&json!("required"), &json!("required")));
    // Section 13.4.3: a challenge has 16 bytes at least; base64 needs 22 characters for them.
    assert!(asked["publicKey"]["challenge"].as_str().unwrap().len() >= 22);

    let made = enrol(&mut browser, &mut device, &token).await;
    assert_eq!(made.json(), json!({ "next": "/account" }), "neither opening the page nor beginning spends the link");
    let cookie = made.headers.iter().find(|(name, _)| name == "set-cookie").map(|(_, value)| value.clone()).unwrap();
    // OWASP ASVS 5.0, 3.3.1 to 3.3.4
    assert!(cookie.starts_with("__Host-leeward-member-"), "{cookie}");
    for attribute in ["Secure", "HttpOnly", "SameSite=Strict", "Path=/"] {
        assert!(cookie.contains(attribute), "{cookie} lacks {attribute}");
    }
    let account = browser.get("/account").await;
    assert!(account.body.contains("Ines Marsh") && account.body.contains("Add a second one now"), "{}", account.body);

    let again = house.visitor().post_json("/enrol/begin", &json!({ "token": token })).await;
    let random = house.visitor().post_json("/enrol/begin", &json!({ "token": "A".repeat(43) })).await;
    assert_eq!((again.status, &again.body), (403, &random.body), "a spent link looks like one that never was");
    for act in ["member.invite", "member.join", "signin.open"] {
        assert_eq!(audited(&house, act).await, 1, "{act}");
    }
}

#[tokio::test]
async fn two_who_hold_one_invitation_do_not_both_get_in() {
    let house = House::build().await;
    let token = invited(&house, &[Role::Clinician]).await;
    let (mut first, mut second) = (house.visitor(), house.visitor());
    let mut begun = Vec::new();
    for browser in [&mut first, &mut second] {
        begun.push(browser.post_json("/enrol/begin", &json!({ "token": token })).await.json());
    }
    let mut made = begun.iter().map(|begun| {
        let credential = Device::new(&house.origin).make(&begun["publicKey"]);
        json!({ "ceremony": begun["ceremony"], "credential": credential, "label": "" })
    });
    let (one, other) = (made.next().unwrap(), made.next().unwrap());
    let (a, b) = tokio::join!(first.post_json("/enrol/finish", &one), second.post_json("/enrol/finish", &other));
    let mut statuses = [a.status, b.status];
    statuses.sort_unstable();
    assert_eq!(statuses, [200, 403]);
    assert_eq!(count(&house, "SELECT count(*) FROM access.member").await, 1);
}

#[tokio::test]
async fn an_invitation_ends_after_72_hours() {
    let house = House::build().await;
    let token = invited(&house, &[Role::Clinician]).await;
    house.clock.advance(chrono::Duration::hours(72) - chrono::Duration::seconds(1));
    let begun = house.visitor().post_json("/enrol/begin", &json!({ "token": token })).await;
    assert_eq!(begun.status, 200);
    house.clock.advance(chrono::Duration::seconds(2));
    let made = json!({ "ceremony": begun.json()["ceremony"], "credential": Device::new(&house.origin).make(&begun.json()["publicKey"]), "label": "" });
    assert_eq!(house.visitor().post_json("/enrol/finish", &made).await.status, 403, "begun in time, finished late");
    assert_eq!(house.visitor().post_json("/enrol/begin", &json!({ "token": token })).await.status, 403);
}

#[tokio::test]
async fn a_passkey_signs_in_and_its_counter_is_kept() {
    let house = House::build().await;
    let (mut browser, mut device) = (house.visitor(), Device::new(&house.origin));
    let token = invited(&house, &[Role::Clinician]).await;
    enrol(&mut browser, &mut device, &token).await;
    let earlier = browser.clone();
    device.counter = 7;
    let signed_in = sign_in(&mut browser, &mut device, "/clients?x=1").await;
    assert_eq!(signed_in.json(), json!({ "next": "/clients?x=1" }));
    assert_eq!(count(&house, "SELECT (passkey #>> '{cred,counter}')::bigint FROM access.passkey").await, 7);
    assert_ne!(browser.cookies, earlier.cookies);
    assert_eq!(browser.get("/account").await.status, 200);
    assert_eq!(earlier.clone().get("/account").await.status, 401, "the token this browser had before is dead");

    // Section 6.1.1: a counter that does not rise hints at a copied passkey.
    let refused = sign_in(&mut house.visitor(), &mut device, "").await;
    assert_eq!(refused.status, 403);
    for elsewhere in ["//elsewhere.example", "/\\elsewhere.example"] {
        device.counter += 1;
        assert_eq!(sign_in(&mut house.visitor(), &mut device, elsewhere).await.json(), json!({ "next": "/clients" }));
    }
}

#[tokio::test]
async fn whatever_is_wrong_the_answer_is_the_same() {
    let house = House::build().await;
    let (mut browser, mut device) = (house.visitor(), Device::new(&house.origin));
    let token = invited(&house, &[Role::Clinician]).await;
    enrol(&mut browser, &mut device, &token).await;
    let mut stranger = house.visitor();
    let mut refusals: Vec<Value> = Vec::new();

    let begun = stranger.post_json("/signin/begin", &json!({})).await.json();
    device.counter += 1;
    let good = json!({ "ceremony": begun["ceremony"], "credential": device.answer(&begun["publicKey"]) });
    assert_eq!(stranger.post_json("/signin/finish", &good).await.status, 200);
    // Section 13.4.3: a challenge is used once.
    refusals.push(refusal(&house, &good).await);

    // Section 7.2, steps 13 and 17: another origin, or a device that did not check who holds it.
    let mut unverified = device;
    unverified.verifies = false;
    unverified.counter += 1;
    let begun = house.visitor().post_json("/signin/begin", &json!({})).await.json();
    refusals.push(refusal(&house, &json!({ "ceremony": begun["ceremony"], "credential": unverified.answer(&begun["publicKey"]) })).await);
    let mut phished = unverified;
    (phished.verifies, phished.origin) = (true, "https://elsewhere.example".into());
    let begun = house.visitor().post_json("/signin/begin", &json!({})).await.json();
    refusals.push(refusal(&house, &json!({ "ceremony": begun["ceremony"], "credential": phished.answer(&begun["publicKey"]) })).await);

    refusals.push(refusal(&house, &json!({ "nothing": 1 })).await);
    assert!(refusals.iter().all(|told| *told == refusals[0]), "{refusals:#?}");
    assert_eq!(audited(&house, "signin.refused").await, 4);
}

#[tokio::test]
async fn a_ceremony_lasts_five_minutes_and_a_passkey_must_be_known() {
    let house = House::build().await;
    let (mut browser, mut device) = (house.visitor(), Device::new(&house.origin));
    let token = invited(&house, &[Role::Clinician]).await;
    enrol(&mut browser, &mut device, &token).await;
    device.counter += 1;
    let begun = browser.post_json("/signin/begin", &json!({})).await.json();
    house.clock.advance(chrono::Duration::minutes(5));
    let late = json!({ "ceremony": begun["ceremony"], "credential": device.answer(&begun["publicKey"]) });
    let told = refusal(&house, &late).await;

    let mut unknown = Device::new(&house.origin);
    unknown.make(&json!({ "rp": { "id": "localhost" }, "user": { "id": "AAAAAAAAAAAAAAAAAAAAAA" }, "challenge": "" }));
    let begun = browser.post_json("/signin/begin", &json!({})).await.json();
    let answer = json!({ "ceremony": begun["ceremony"], "credential": unknown.answer(&begun["publicKey"]) });
    assert_eq!(refusal(&house, &answer).await, told);
}

#[tokio::test]
async fn a_second_passkey_lets_the_first_be_removed_and_the_last_one_stays() {
    let house = House::build().await;
    let (mut browser, mut first, mut second) = (house.visitor(), Device::new(&house.origin), Device::new(&house.origin));
    let token = invited(&house, &[Role::Clinician]).await;
    enrol(&mut browser, &mut first, &token).await;
    let only = one_id(&house, "SELECT id FROM access.passkey").await;
    let remove = format!("/account/passkeys/{only}/remove");
    assert_eq!(browser.post_form(&remove, &[]).await.status, 409);

    let begun = browser.post_json("/account/passkeys/begin", &json!({})).await.json();
    assert_eq!(begun["publicKey"]["excludeCredentials"].as_array().map(Vec::len), Some(1), "one device makes one passkey");
    let made = json!({ "ceremony": begun["ceremony"], "credential": second.make(&begun["publicKey"]), "label": "key on the ring" });
    let mut other = house.member(&[Role::Clinician]).await;
    let stolen = other.post_json("/account/passkeys/finish", &made).await;
    assert_eq!(stolen.status, 403, "a ceremony belongs to the member who began it");
    let begun = browser.post_json("/account/passkeys/begin", &json!({})).await.json();
    let made = json!({ "ceremony": begun["ceremony"], "credential": second.make(&begun["publicKey"]), "label": "key on the ring" });
    assert_eq!(browser.post_json("/account/passkeys/finish", &made).await.status, 200);
    assert!(browser.get("/account").await.body.contains("key on the ring"));

    assert_eq!(other.post_form(&remove, &[]).await.status, 404, "not theirs, so not there");
    assert_eq!(browser.post_form(&remove, &[]).await.status, 303);
    first.counter += 1;
    assert_eq!(sign_in(&mut house.visitor(), &mut first, "").await.status, 403);
    second.counter += 1;
    assert_eq!(sign_in(&mut house.visitor(), &mut second, "").await.status, 200);
    assert_eq!((audited(&house, "passkey.add").await, audited(&house, "passkey.remove").await), (1, 1));
}

#[tokio::test]
async fn tries_are_slowed_down() {
    let house = House::build().await;
    let mut visitor = house.visitor();
    for _ in 0..10 {
        assert_eq!(visitor.post_json("/signin/begin", &json!({})).await.status, 200);
    }
    // One try comes back every three seconds of real time; nobody sends forty that slowly.
    for _ in 0..40 {
        if visitor.post_json("/signin/begin", &json!({})).await.status == 429 {
            return;
        }
    }
    panic!("fifty tries in a row went through");
}

async fn refusal(house: &House, answer: &Value) -> Value {
    let told = house.visitor().post_json("/signin/finish", answer).await;
    assert_eq!(told.status, 403, "{}", told.body);
    assert!(told.headers.iter().all(|(name, _)| name != "set-cookie"));
    told.json()
}

async fn count(house: &House, query: &'static str) -> i64 {
    sqlx::query_scalar(query).fetch_one(&house.database.superuser).await.unwrap()
}

async fn one_id(house: &House, query: &'static str) -> uuid::Uuid {
    sqlx::query_scalar(query).fetch_one(&house.database.superuser).await.unwrap()
}

#[tokio::test]
async fn a_link_to_oneself_makes_a_passkey_on_another_device_within_the_hour() {
    let house = House::build().await;
    let (mut browser, mut first, mut second) = (house.visitor(), Device::new(&house.origin), Device::new(&house.origin));
    let token = invited(&house, &[Role::Clinician]).await;
    enrol(&mut browser, &mut first, &token).await;
    let page = browser.post_form("/account/passkeys/link", &[]).await;
    let token = page.body.split("/enrol#").nth(1).and_then(|rest| rest.get(..43)).unwrap();
    let mut elsewhere = house.visitor();
    assert_eq!(enrol(&mut elsewhere, &mut second, token).await.status, 200);
    assert_eq!(count(&house, "SELECT count(*) FROM access.member").await, 1, "nobody new joined");
    assert_eq!(count(&house, "SELECT count(*) FROM access.passkey").await, 2);
    assert_eq!((audited(&house, "member.join").await, audited(&house, "passkey.add").await), (1, 1));

    let page = browser.post_form("/account/passkeys/link", &[]).await;
    let token = page.body.split("/enrol#").nth(1).and_then(|rest| rest.get(..43)).unwrap();
    house.clock.advance(chrono::Duration::minutes(60));
    assert_eq!(house.visitor().post_json("/enrol/begin", &json!({ "token": token })).await.status, 403);
}

/// A device that answers with a passkey it made here before: a sentence, and the link still opens.
#[tokio::test]
async fn a_passkey_that_is_known_here_is_not_kept_again_and_says_so() {
    let house = House::build().await;
    let mut device = Device::new(&house.origin);
    let first = invited(&house, &[Role::Clinician]).await;
    assert_eq!(enrol(&mut house.visitor(), &mut device, &first).await.status, 200);
    let second = invited(&house, &[Role::Clinician]).await;
    let again = enrol(&mut house.visitor(), &mut device, &second).await;
    assert_eq!((again.status, again.json()["title"].as_str()), (403, Some("This passkey is known here")), "{}", again.body);
    assert_eq!(enrol(&mut house.visitor(), &mut Device::new(&house.origin), &second).await.status, 200, "the link is not spent");
}
