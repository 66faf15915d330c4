//! Sign-in: passkeys, sign-ins that end, invitations, members.

mod authenticator;
mod demo;
mod ending;
mod passkeys;

pub(crate) use authenticator::Device;
use leeward::platform::Role;
use leeward::signin::{Newcomer, invite_as_owner};
use leeward_tests::{Answer, Browser, House};
use serde_json::json;
use sqlx::ConnectOptions;

/// An invitation's token, made as `leeward member invite` makes it.
pub(crate) async fn invited(house: &House, roles: &[Role]) -> String {
    let newcomer = Newcomer::check("Ines Marsh", roles.to_vec()).unwrap_or_else(|problems| panic!("{problems:?}"));
    let owner = house.database.owner().to_url_lossy().to_string();
    let invitation = invite_as_owner(&owner, &house.app.world, &house.app.origin, &newcomer).await.unwrap();
    let (page, token) = invitation.link.split_once('#').unwrap();
    assert_eq!(page, format!("{}/enrol", house.origin));
    token.to_owned()
}

/// Makes a passkey on `device` with an invitation.
pub(crate) async fn enrol(browser: &mut Browser, device: &mut Device, token: &str) -> Answer {
    let begun = browser.post_json("/enrol/begin", &json!({ "token": token })).await;
    assert_eq!(begun.status, 200, "{}", begun.body);
    let begun = begun.json();
    let made = json!({ "ceremony": begun["ceremony"], "credential": device.make(&begun["publicKey"]), "label": "desk" });
    browser.post_json("/enrol/finish", &made).await
}

/// Signs in with `device`, asking to go on to `next`.
async fn sign_in(browser: &mut Browser, device: &mut Device, next: &str) -> Answer {
    let begun = browser.post_json("/signin/begin", &json!({})).await.json();
    let answer = json!({ "ceremony": begun["ceremony"], "credential": device.answer(&begun["publicKey"]), "next": next });
    browser.post_json("/signin/finish", &answer).await
}

/// How often the audit names an act.
pub(crate) async fn audited(house: &House, act: &str) -> i64 {
    let count = sqlx::query_scalar("SELECT count(*) FROM audit WHERE act = $1").bind(act);
    count.fetch_one(&house.database.superuser).await.unwrap()
}
