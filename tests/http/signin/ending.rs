//! How sign-ins and memberships end, and who may end them.

use chrono::Duration as Span;
use leeward::platform::Role;
use leeward_tests::{Browser, House};
use uuid::Uuid;

use super::audited;

/// NIST SP 800-63B-4, section 2.2.3 (AAL2): inactivity of an hour and 24 hours in all are the most; the
/// portal keeps 30 minutes and 12 hours.
#[tokio::test]
async fn a_sign_in_ends_when_idle_for_30_minutes() {
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician]).await;
    for _ in 0..3 {
        house.clock.advance(Span::minutes(29));
        assert_eq!(member.get("/account").await.status, 200, "each use begins the half hour anew");
    }
    house.clock.advance(Span::minutes(30));
    let ended = member.get("/account").await;
    assert_eq!(ended.status, 401);
    assert!(ended.body.contains("/signin?next=%2Faccount"), "{}", ended.body);
}

#[tokio::test]
async fn a_sign_in_ends_after_12_hours_however_busy() {
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician]).await;
    for minutes in (20..720).step_by(20) {
        house.clock.advance(Span::minutes(20));
        assert_eq!(member.get("/account").await.status, 200, "after {minutes} minutes");
    }
    house.clock.advance(Span::minutes(20));
    assert_eq!(member.get("/account").await.status, 401);
}

#[tokio::test]
async fn a_revoked_sign_in_ends_at_once_and_its_sockets_hear_of_it() {
    let house = House::build().await;
    let mut desk = house.member(&[Role::Clinician]).await;
    let mut lost = house.sign_in(desk.member).await;
    let mut colleague = house.member(&[Role::Clinician]).await;
    let id = signin_of(&house, &mut lost).await;
    let revocations = house.app.revocations.subscribe();
    let revoke = format!("/account/signins/{id}/revoke");

    assert_eq!(colleague.post_form(&revoke, &[]).await.status, 404, "only one's own");
    assert_eq!(lost.get("/account").await.status, 200);
    assert_eq!(desk.get("/account").await.body.matches("(this one)").count(), 1);
    assert_eq!(desk.post_form(&revoke, &[]).await.status, 303);
    assert!(revocations.has_changed().unwrap(), "open sockets look again");
    assert_eq!(lost.get("/account").await.status, 401);
    assert_eq!(desk.get("/account").await.status, 200);
    assert_eq!(desk.post_form(&revoke, &[]).await.status, 404, "it is closed already");
    assert_eq!(audited(&house, "signin.close").await, 1);
}

#[tokio::test]
async fn signing_out_ends_the_sign_in_and_not_only_the_cookie() {
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician]).await;
    let mut copy = member.clone();
    let revocations = house.app.revocations.subscribe();
    let out = member.post_form("/signout", &[]).await;
    assert_eq!((out.status, out.location.as_str()), (303, "/signin"));
    assert!(member.cookies.is_empty());
    assert!(revocations.has_changed().unwrap(), "open sockets look again");
    assert_eq!(copy.get("/account").await.status, 401);
    assert_eq!(copy.post_form("/signout", &[]).await.status, 303, "signing out twice is no error");
    let named: bool = sqlx::query_scalar("SELECT member_id = $1 FROM audit WHERE act = 'signin.close'")
        .bind(copy.member)
        .fetch_one(&house.database.superuser)
        .await
        .unwrap();
    assert!(named, "the audit names who signed out");
}

#[tokio::test]
async fn ending_a_membership_ends_its_sign_ins_and_invitations() {
    let house = House::build().await;
    let mut administrator = house.member(&[Role::Administrator]).await;
    let mut leaver = house.member(&[Role::Administrator]).await;
    let made = leaver.post_form("/members/invite", &[("name", "A friend"), ("administrator", "yes")]).await;
    let token = made.body.split("/enrol#").nth(1).and_then(|rest| rest.get(..43)).unwrap().to_owned();
    let revocations = house.app.revocations.subscribe();
    let end = format!("/members/{}/end", leaver.member);

    assert!(administrator.get(&end).await.body.contains("End the membership of Member"));
    assert_eq!(administrator.post_form(&end, &[]).await.status, 303);
    assert!(revocations.has_changed().unwrap(), "open sockets look again");
    assert_eq!(leaver.get("/account").await.status, 401);
    let begun = house.visitor().post_json("/enrol/begin", &serde_json::json!({ "token": token })).await;
    assert_eq!(begun.status, 403, "an invitation made on the way out does not work");
    assert_eq!(administrator.post_form(&end, &[]).await.status, 404);
    assert!(administrator.get("/members").await.body.contains("Left the practice"));
    let own = format!("/members/{}/end", administrator.member);
    assert_eq!(administrator.post_form(&own, &[]).await.status, 409, "nobody ends their own");
    assert_eq!(audited(&house, "member.end").await, 1);
}

#[tokio::test]
async fn only_administrators_see_and_invite_members() {
    let house = House::build().await;
    let mut administrator = house.member(&[Role::Administrator]).await;
    let fields = [("name", "Tomas Reed"), ("clinician", "yes"), ("lead", "yes")];
    for role in [Role::Clinician, Role::Lead] {
        let mut member = house.member(&[role]).await;
        let end = format!("/members/{}/end", administrator.member);
        assert_eq!(member.get("/members").await.status, 403);
        assert_eq!(member.post_form("/members/invite", &fields).await.status, 403);
        assert_eq!(member.post_form(&end, &[]).await.status, 403);
    }
    assert_eq!(house.visitor().get("/members").await.status, 401);

    let bare = administrator.post_form("/members/invite", &[("name", "Tomas <b>")]).await;
    assert_eq!(bare.status, 422);
    for words in ["Choose at least one role.", "This looks like markup", "value=\"Tomas &#60;b&#62;\""] {
        assert!(bare.body.contains(words), "{words} is missing from {}", bare.body);
    }
    let made = administrator.post_form("/members/invite", &fields).await;
    assert!(made.status == 200 && made.body.contains("/enrol#"), "{}", made.body);
    let members = administrator.get("/members").await;
    assert!(members.body.contains("Tomas Reed") && !members.body.contains("/enrol#"), "the link is shown once");

    let hash = members.body.split("name=\"invitation\" value=\"").nth(1).and_then(|rest| rest.get(..64)).unwrap().to_owned();
    assert_eq!(administrator.post_form("/members/withdraw", &[("invitation", &hash)]).await.status, 303);
    let token = made.body.split("/enrol#").nth(1).and_then(|rest| rest.get(..43)).unwrap();
    assert_eq!(house.visitor().post_json("/enrol/begin", &serde_json::json!({ "token": token })).await.status, 403);
    assert_eq!(administrator.post_form("/members/withdraw", &[("invitation", &hash)]).await.status, 409);
}

#[tokio::test]
async fn the_start_is_everybodys_own_and_next_never_leads_elsewhere() {
    let house = House::build().await;
    for (roles, start) in [
        (vec![Role::Clinician, Role::Lead], "/clients"),
        (vec![Role::Lead, Role::Administrator], "/practice"),
        (vec![Role::Administrator], "/members"),
    ] {
        let mut member = house.member(&roles).await;
        assert_eq!(member.get("/").await.location, start);
        assert_eq!(member.get("/signin?next=/signin/done").await.location, "/signin/done");
        for elsewhere in ["https://elsewhere.example", "//elsewhere.example", "/%5Celsewhere.example", "/%09/elsewhere.example"] {
            assert_eq!(member.get(&format!("/signin?next={elsewhere}")).await.location, start, "{elsewhere}");
        }
    }
    assert_eq!(house.visitor().get("/").await.location, "/signin");
    let page = house.visitor().get("/signin?next=//elsewhere.example").await;
    assert!(page.body.contains("data-next=\"\""), "{}", page.body);
    assert!(house.visitor().get("/signin/done").await.body.contains("Not signed in"));
}

#[tokio::test]
async fn nothing_is_done_for_a_page_of_another_origin() {
    let house = House::build().await;
    let mut member = house.member(&[Role::Administrator]).await;
    let foreign = [("origin", "https://elsewhere.example"), ("content-type", "application/json")];
    for path in
        ["/signin/begin", "/signin/finish", "/enrol/begin", "/enrol/finish", "/account/passkeys/begin", "/members/invite", "/signout"]
    {
        assert_eq!(member.post_raw(path, &foreign, "{}").await.status, 403, "{path}");
    }
    assert_eq!(member.get("/account").await.status, 200);
}

/// The id of the sign-in that this browser is in.
async fn signin_of(house: &House, browser: &mut Browser) -> Uuid {
    leeward::platform::resolve(&house.app, browser.subject()).await.unwrap().signin
}
