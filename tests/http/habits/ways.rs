//! A way on from every error, and what a device puts on its home screen.

use leeward::platform::Role;
use leeward::platform::assets::Assets;
use leeward_tests::House;
use serde_json::Value;

use super::title;

#[tokio::test]
async fn an_error_page_leads_to_where_ones_work_is() {
    let house = House::build().await;
    for (role, start) in [(Role::Clinician, "/clients"), (Role::Lead, "/practice"), (Role::Administrator, "/members")] {
        let mut member = house.member(&[role]).await;
        let wrong_role = if role == Role::Clinician { "/members" } else { "/clients/new" };
        for (path, status) in [("/none", 404), ("/clients/7", 404), (wrong_role, 403)] {
            let answer = member.get(path).await;
            assert_eq!(answer.status, status, "{path}");
            let main = answer.body.split_once("<main").unwrap().1;
            assert!(main.contains(&format!("<a class=\"button\" href=\"{start}\">")), "{role:?} {path}: {main}");
        }
    }
    let nobody = house.visitor().get("/none").await;
    assert!(nobody.body.contains("<a class=\"button\" href=\"/signin\">"), "{}", nobody.body);
    let signed_out = house.visitor().get("/clients").await;
    assert_eq!((signed_out.status, title(&signed_out)), (401, "Please sign in"));
    assert!(signed_out.body.contains("href=\"/signin?next=%2Fclients\""), "{}", signed_out.body);
}

/// A client who is somewhere else reads what to do, whatever went wrong, and nothing of what it is for.
#[tokio::test]
async fn a_clients_error_page_says_what_to_do() {
    let house = House::build().await;
    for path in ["/stage", "/stage/none", "/left/none", "/j/none"] {
        let answer = house.visitor().get(path).await;
        assert!(answer.status >= 400, "{path}");
        assert!(answer.body.contains("ask the person you are meeting for a new one"), "{path}: {}", answer.body);
    }
}

/// Members of a manifest and its media type: W3C Web Application Manifest (from memory).
async fn manifest(house: &House, address: &str) -> Value {
    let answer = house.visitor().get(address).await;
    assert_eq!(answer.status, 200, "{address}: build the web part first");
    let kind = answer.headers.iter().find(|(name, _)| name == "content-type").map(|(_, value)| value.as_str());
    assert_eq!(kind, Some("application/manifest+json"));
    let manifest: Value = answer.json();
    assert_eq!(manifest["display"], "standalone");
    for icon in manifest["icons"].as_array().unwrap() {
        let src = icon["src"].as_str().unwrap();
        let icon = house.visitor().get(&format!("/assets/{}", src.strip_prefix("../").unwrap())).await;
        assert_eq!(icon.status, 200, "{src}");
    }
    manifest
}

#[tokio::test]
async fn the_home_screen_tells_no_more_than_the_page() {
    let house = House::build().await;
    let page = house.visitor().get("/j").await;
    let policy = page.headers.iter().find(|(name, _)| name == "content-security-policy").map(|(_, value)| value.as_str()).unwrap();
    // Content Security Policy Level 3, manifest-src.
    assert!(policy.contains("manifest-src 'self';"), "{policy}");
    let link = page.body.split_once("<link rel=\"manifest\" href=\"").unwrap().1.split('"').next().unwrap();
    let stage = manifest(&house, link).await;
    assert_eq!(stage["name"], title(&page));
    let all = stage.to_string().to_lowercase();
    for word in ["leeward", "therap", "trauma", "emdr", "clinic"] {
        assert!(!all.contains(word), "{all}");
    }
    assert_eq!(house.visitor().get(stage["start_url"].as_str().unwrap()).await.status, 401, "opened without a seat, it says what to do");
    let desk = manifest(&house, &Assets.url("desk.webmanifest")).await;
    assert_eq!((desk["name"].as_str(), desk["start_url"].as_str()), (Some("Leeward"), Some("/")));
}
