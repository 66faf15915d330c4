//! What to send to the routes of members: their own account, who is a member, who treats whom.

use leeward::platform::Role;
use uuid::Uuid;

use super::{Sample, unknown};

/// How their paths begin.
pub(super) const ROUTES: [&str; 7] = ["/account", "/members", "/signout", "/replacements", "/handover", "/news", "/practice"];

pub(super) async fn of_member(sample: &mut Sample, route: &str) {
    if !route.starts_with("/account") && route != "/signout" {
        sample.who = sample.house().member(&[Role::Administrator]).await;
    }
    match route {
        "/signout" | "/account/passkeys/link" => {}
        "/account/mail" => sample.typed(&[("address", "somebody@practice.example"), ("shown", "")]),
        "/account/passkeys/{passkey}/remove" => {
            let add = "INSERT INTO access.passkey (id, member_id, credential_id, passkey, label, added_at)
                       SELECT gen_random_uuid(), id, decode(md5(random()::text), 'hex'), '{}', 'a key', joined_at FROM access.member";
            sample.sql(add).await;
            sample.sql(add).await;
            let own = format!("SELECT id FROM access.passkey WHERE member_id = '{}' LIMIT 1", sample.who.member);
            sample.path = sample.path.replace("{passkey}", &sample.id(&own).await.to_string());
        }
        "/account/signins/{signin}/revoke" => {
            sample.house().sign_in(sample.who.member).await;
            let other =
                format!("SELECT id FROM access.signin WHERE member_id = '{}' ORDER BY opened_at DESC, id LIMIT 1", sample.who.member);
            let mut other = sample.id(&other).await;
            let own = sample.house().app.database.look(&sample.who.subject()).await.unwrap();
            let mut own = own;
            let this: Uuid = sqlx::query_scalar("SELECT access.my_signin()").fetch_one(&mut *own).await.unwrap();
            if other == this {
                let rest = format!("SELECT id FROM access.signin WHERE member_id = '{}' AND id <> '{this}'", sample.who.member);
                other = sample.id(&rest).await;
            }
            sample.path = sample.path.replace("{signin}", &other.to_string());
        }
        "/practice/settings" => {
            let wanted = [
                ("day_order", "month_first"),
                ("clock", "12"),
                ("tells_whom", "yes"),
                ("shown", "day_first 24 no no 50 10 24 72 2 5 t= t="),
            ];
            let numbers = [("minutes", "90"), ("reserve", "10"), ("check_from", "24"), ("check_until", "72"), ("stuck_after", "3")];
            let call = [("direct_calls", "no"), ("unseen_seconds", "5")];
            sample.typed(&[&wanted[..], &numbers, &call].concat());
        }
        "/practice/settings/measures" => {
            let shown = r#"{"points_pcl5":15,"points_anxiety5":4,"told_too":null,"flag_hours":24,"weeks_without":8,"items_at_once":36,"reading_hours":"","single_courses":true}"#;
            let points = [("points_pcl5", "18"), ("points_anxiety5", "5"), ("told_too", ""), ("shown", shown), ("single_courses", "no")];
            let rest = [("flag_hours", "12"), ("weeks_without", "6"), ("items_at_once", "40"), ("reading_hours", "Weekdays.")];
            sample.typed(&[&points[..], &rest[..]].concat());
        }
        "/practice/snapshots" => {
            sample.who = sample.house().member(&[Role::Lead]).await;
            let page = sample.who.get("/practice?period=before").await.body;
            let first = page.split("name=\"first\" value=\"").nth(1).and_then(|rest| rest.split('"').next()).unwrap().to_owned();
            sample.typed(&[("first", &first)]);
        }
        "/members/invite" => sample.typed(&[("name", "Somebody New"), ("lead", "on")]),
        "/members/withdraw" => {
            let answer = sample.who.post_form("/members/invite", &[("name", "Somebody New"), ("lead", "on")]).await;
            assert_eq!(answer.status, 200, "{}", answer.body);
            let query = "SELECT encode(token_hash, 'hex') FROM access.invitation";
            let hash: String = sqlx::query_scalar(query).fetch_one(&sample.house().database.superuser).await.unwrap();
            sample.typed(&[("invitation", &hash)]);
        }
        "/members/{member}/end" | "/members/{member}/passkey" => somebody(sample).await,
        "/members/{member}/roles" => {
            somebody(sample).await;
            sample.typed(&[("were", "lead"), ("clinician", "yes"), ("lead", "yes")]);
        }
        "/replacements/{replacement}/agree" | "/replacements/{replacement}/refuse" => {
            let mut other = sample.house().member(&[Role::Administrator]).await;
            let lost = sample.house().member(&[Role::Lead]).await.member;
            let asked = other.post_form(&format!("/members/{lost}/passkey"), &[]).await;
            assert_eq!(asked.status, 303, "{}", asked.body);
            let replacement = sample.id("SELECT id FROM access.replacement").await;
            sample.path = sample.path.replace("{replacement}", &replacement.to_string());
        }
        "/news/{news}/read" => {
            let told = format!("INSERT INTO access.news (member_id, kind, at) VALUES ('{}', 'roles_changed', now())", sample.who.member);
            sample.sql(&told).await;
            let news = sample.id("SELECT id FROM access.news").await;
            sample.path = sample.path.replace("{news}", &news.to_string());
        }
        "/handover/{client}" => {
            let (from, to) = (sample.scene.clinician.member, sample.house().member(&[Role::Clinician]).await.member);
            sample.typed(&[("from", &from.to_string()), ("to", &to.to_string())]);
        }
        _ => unknown(route),
    }
}

/// Another member, a lead, in the path.
async fn somebody(sample: &mut Sample) {
    let other = sample.house().member(&[Role::Lead]).await.member;
    sample.path = sample.path.replace("{member}", &other.to_string());
}
