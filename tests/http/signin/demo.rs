//! The demo's own sign-in: only in a demo, only from this computer, only on a demo's database.

use leeward::platform::Role;
use leeward_tests::House;

#[tokio::test]
async fn without_the_demo_there_is_no_such_route() {
    let house = House::build().await;
    make_demo(&house).await;
    house.member(&[Role::Clinician]).await;
    assert_eq!(house.visitor().get("/demo/clinician").await.status, 404);
    assert_eq!(house.visitor().post_form("/demo/clinician", &[]).await.status, 404);
}

#[tokio::test]
async fn it_signs_in_on_a_database_that_the_demo_seeded_alone() {
    let house = House::build_demo().await;
    house.member(&[Role::Clinician]).await;
    assert_eq!(house.visitor().post_form("/demo/clinician", &[]).await.status, 403);
    make_demo(&house).await;
    let mut visitor = house.visitor();
    let page = visitor.get("/demo/clinician?next=/clients?a=1").await;
    assert!(page.status == 200 && visitor.cookies.is_empty(), "opening the page signs nobody in");
    let entered = visitor.post_form("/demo/clinician", &[("next", "/clients")]).await;
    assert_eq!((entered.status, entered.location.as_str()), (303, "/clients"));
    assert_eq!(visitor.get("/account").await.status, 200);
    for next in ["//elsewhere.example", "https://elsewhere.example"] {
        assert_eq!(visitor.post_form("/demo/clinician", &[("next", next)]).await.location, "/clients");
    }
    assert_eq!(visitor.post_form("/demo/lead", &[]).await.status, 403, "there is no lead here");
    assert_eq!(visitor.post_form("/demo/owner", &[]).await.status, 404);
}

#[tokio::test]
async fn it_answers_this_computers_own_browser_alone() {
    let house = House::build_demo().await;
    make_demo(&house).await;
    house.member(&[Role::Lead]).await;
    let own = ("origin", house.origin.as_str());
    let form = ("content-type", "application/x-www-form-urlencoded");
    assert_eq!(house.visitor().post_raw("/demo/lead", &[own, form], "").await.location, "/practice");
    for header in [
        ("x-forwarded-for", "127.0.0.1"),
        ("x-forwarded-proto", "https"),
        ("forwarded", "for=127.0.0.1"),
        ("via", "1.1 proxy"),
        ("host", "portal.example.org"),
        ("host", "127.0.0.1:8080"),
    ] {
        let answer = house.visitor().post_raw("/demo/lead", &[own, form, header], "").await;
        assert_eq!(answer.status, 403, "{header:?}");
    }
}

async fn make_demo(house: &House) {
    sqlx::query("UPDATE practice SET demo = true").execute(&house.database.superuser).await.unwrap();
}
