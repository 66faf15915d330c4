//! How the practice writes its days and times: who changes it, and that every page follows.

use chrono::{Datelike, Duration, Timelike};
use leeward::platform::Role;
use leeward_core::wire::{EntryValue, Moment};
use leeward_tests::House;
use sqlx::Connection;

use crate::scene::Scene;

const AMERICAN: [(&str, &str); 10] = [
    ("day_order", "month_first"),
    ("clock", "12"),
    ("tells_whom", "yes"),
    ("minutes", "90"),
    ("reserve", "15"),
    ("check_from", "12"),
    ("check_until", "48"),
    ("stuck_after", "3"),
    ("direct_calls", "yes"),
    ("unseen_seconds", "8"),
];
/// The rest of the form as it is at first.
const USUAL: [(&str, &str); 7] = [
    ("minutes", "50"),
    ("reserve", "10"),
    ("check_from", "24"),
    ("check_until", "72"),
    ("stuck_after", "2"),
    ("direct_calls", "no"),
    ("unseen_seconds", "5"),
];

#[tokio::test]
async fn an_administrator_changes_the_settings_and_nobody_else() {
    let house = House::build().await;
    let mut administrator = house.member(&[Role::Administrator]).await;
    let form = administrator.get("/practice/settings").await;
    assert_eq!(form.status, 200, "{}", form.body);
    for chosen in ["day_first", "24", "no"] {
        assert!(form.body.contains(&format!("value=\"{chosen}\" checked")), "{chosen} is the usual\n{}", form.body);
    }
    let changed = administrator.fill_in("/practice/settings", &AMERICAN).await;
    assert_eq!((changed.status, changed.place()), (303, "/practice/settings"), "{}", changed.body);
    assert!(administrator.get(&changed.location).await.body.contains(">Saved "));
    let said = [("places", "Ternhaven\r\nNorth Skerry"), ("crisis_words", "The night line of the practice.")];
    let with_words = administrator.fill_in("/practice/settings", &[&AMERICAN[..], &said[..]].concat()).await;
    assert_eq!(with_words.status, 303, "{}", with_words.body);
    let places: String = sqlx::query_scalar("SELECT places FROM practice").fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(places, "Ternhaven\nNorth Skerry");
    let kept: (String, i16, bool, i16, i16, i16, i16, bool, i16) = sqlx::query_as(
        "SELECT day_order, clock, tells_whom, minutes, reserve, check_from, check_until, direct_calls, unseen_seconds FROM practice",
    )
    .fetch_one(&house.database.superuser)
    .await
    .unwrap();
    assert_eq!(kept, ("month_first".to_owned(), 12, true, 90, 15, 12, 48, true, 8));
    for (field, value) in [
        ("minutes", "9"),
        ("minutes", "an hour"),
        ("reserve", "61"),
        ("reserve", "-1"),
        ("check_from", "0"),
        ("check_until", "12"),
        ("stuck_after", "4"),
        ("direct_calls", "sometimes"),
        ("unseen_seconds", "2"),
        ("unseen_seconds", "16"),
    ] {
        let typed: Vec<(&str, &str)> = AMERICAN.iter().map(|(name, usual)| (*name, if *name == field { value } else { *usual })).collect();
        let refused = administrator.fill_in("/practice/settings", &typed).await;
        assert_eq!(refused.status, 422, "{field} {value}");
        assert!(refused.body.contains(&format!("id=\"{field}-error\"")), "{field} {value}");
    }
    let acts: i64 = sqlx::query_scalar("SELECT count(*) FROM audit WHERE act = 'practice.settings.change'")
        .fetch_one(&house.database.superuser)
        .await
        .unwrap();
    assert_eq!(acts, 2);
    for role in [Role::Clinician, Role::Lead] {
        let mut other = house.member(&[role]).await;
        assert_eq!(other.get("/practice/settings").await.status, 403, "{role:?}");
        assert_eq!(other.post_form("/practice/settings", &AMERICAN).await.status, 403, "{role:?}");
    }
}

#[tokio::test]
async fn what_somebody_else_changed_meanwhile_is_not_replaced() {
    let house = House::build().await;
    let mut one = house.member(&[Role::Administrator]).await;
    let mut two = house.member(&[Role::Administrator]).await;
    assert_eq!(one.fill_in("/practice/settings", &AMERICAN).await.status, 303);
    let late = [("day_order", "year_first"), ("clock", "24"), ("tells_whom", "no"), ("shown", "day_first 24 no no 50 10 24 72 2 5 t= t=")];
    let answer = two.post_form("/practice/settings", &[&late[..], &USUAL].concat()).await;
    assert_eq!(answer.status, 409);
    assert!(answer.body.contains("The record now says “month first”"), "{}", answer.body);
    assert!(
        answer.body.contains("name=\"shown\" value=\"month_first 12 yes yes 90 15 12 48 3 8 t= t=\""),
        "sent again, it replaces what was shown"
    );
    let order: String = sqlx::query_scalar("SELECT day_order FROM practice").fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(order, "month_first");
    for shown in ["", "sideways 24 no no 50 10 24 72 2 5 t= t=", "day_first 24 no", "day_first 24 no no 50 10 24 72 2 5"] {
        let torn = [("day_order", "year_first"), ("clock", "24"), ("tells_whom", "no"), ("shown", shown)];
        assert_eq!(two.post_form("/practice/settings", &[&torn[..], &USUAL].concat()).await.status, 400, "{shown:?}");
    }
}

/// The wall behind the page: with the app role's connection alone, a clinician changes nothing and an administrator nothing else.
#[tokio::test]
async fn the_database_lets_administrators_change_these_columns_alone() {
    let house = House::build().await;
    let (clinician, administrator) = (house.member(&[Role::Clinician]).await, house.member(&[Role::Administrator]).await);
    let mut tx = house.app.database.look(&clinician.subject()).await.unwrap();
    let changed = sqlx::query("UPDATE practice SET clock = 12").execute(&mut *tx).await.unwrap().rows_affected();
    assert_eq!(changed, 0);
    drop(tx);
    for denied in ["name = 'x'", "zone = 'UTC'", "emergency_number = '1'", "demo = true"] {
        let mut tx = house.app.database.look(&administrator.subject()).await.unwrap();
        let fault = sqlx::query(sqlx::AssertSqlSafe(format!("UPDATE practice SET {denied}"))).execute(&mut *tx).await.unwrap_err();
        assert!(fault.to_string().contains("permission denied"), "{denied}: {fault}");
    }
    let mut owner = sqlx::PgConnection::connect_with(&house.database.owner()).await.unwrap();
    for wrong in [
        "day_order = 'sideways'",
        "clock = 13",
        "clock = NULL",
        "day_order = NULL",
        "tells_whom = NULL",
        "places = NULL",
        "crisis_words = repeat('x', 601)",
    ] {
        let fault = sqlx::query(sqlx::AssertSqlSafe(format!("UPDATE practice SET {wrong}"))).execute(&mut owner).await.unwrap_err();
        let code = fault.as_database_error().and_then(|fault| fault.code()).unwrap_or_default().into_owned();
        assert!(matches!(code.as_str(), "23514" | "23502"), "{wrong}: {fault}");
    }
}

/// Whether the text holds a time such as 14:07 that no am or pm follows: what a page of a 12-hour clock does not write.
fn twenty_four_hours(body: &str) -> Option<String> {
    let time = regex_lite::Regex::new(r"\b\d{1,2}:\d{2}(:\d{2})?\b( [ap]m)?").unwrap();
    let zone = regex_lite::Regex::new(r#"UTC[+-]\d{2}:\d{2}|datetime="[^"]*""#).unwrap();
    let body = zone.replace_all(body, "");
    time.captures_iter(&body).find(|found| found.get(2).is_none()).map(|found| {
        let at = found.get(0).unwrap().start();
        body[at.saturating_sub(60)..].chars().take(100).collect()
    })
}

/// A day written with the day first, such as 2 Nov.
fn day_first(body: &str) -> Option<String> {
    let months = "Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec";
    let day = regex_lite::Regex::new(&format!(r"\b\d{{1,2}} ({months})[a-z]*( \d{{2,4}})?\b")).unwrap();
    day.find(body).map(|found| found.as_str().to_owned())
}

#[tokio::test]
async fn every_page_writes_days_and_times_as_the_practice_does() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead, Role::Administrator]).await;
    scene.kept(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 5 }).await;
    scene.set(1, Some(24.0), leeward_core::wire::Ending::Done).await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    scene.clinician.fill_in(&format!("/sessions/{session}/note"), &[("note", "First.")]).await;
    scene.clinician.fill_in(&format!("/sessions/{session}/note"), &[("note", "Second.")]).await;
    let pages = [
        "/clients".to_owned(),
        format!("/clients/{client}"),
        format!("/targets/{target}"),
        format!("/targets/{target}/edit"),
        format!("/sessions/{session}"),
        format!("/sessions/{session}?print=notes"),
        format!("/sessions/{session}/sets/1"),
        format!("/sessions/{session}/note"),
        "/practice/caseload".to_owned(),
        format!("/practice/clients/{client}"),
        "/members".to_owned(),
        "/account".to_owned(),
        "/replacements".to_owned(),
    ];
    // The checks see what is there by default, so that they can fail.
    let session_page = scene.clinician.get(&format!("/sessions/{session}")).await.body;
    assert!(twenty_four_hours(&session_page).is_some() && day_first(&session_page).is_some(), "{session_page}");
    assert_eq!(scene.clinician.fill_in("/practice/settings", &AMERICAN).await.status, 303);
    scene.house.clock.advance(Duration::seconds(1));
    let (twelve, mut written) = (regex_lite::Regex::new(r"\b\d{1,2}:\d{2}(:\d{2})? [ap]m\b").unwrap(), 0);
    for path in &pages {
        let answer = scene.clinician.get(path).await;
        assert_eq!(answer.status, 200, "{path}");
        assert_eq!((twenty_four_hours(&answer.body), day_first(&answer.body)), (None, None), "{path}");
        written += usize::from(twelve.is_match(&answer.body));
    }
    assert!(written >= 7, "only {written} pages have a time at all");
    let now = scene.house.app.world.now();
    let (pm, hour) = now.hour12();
    let opened = scene.clinician.get("/clients").await.body;
    let expected = format!("{}, {}, {hour}:{:02} {}", now.format("%A %B %-d"), now.year(), now.minute(), if pm { "pm" } else { "am" });
    assert!(opened.contains(&expected), "{expected} is missing from {opened}");
}

/// The zone stands once on a page of the practice; a session's pages name the session's, which may be another.
#[tokio::test]
async fn the_zone_is_told_once_on_every_page() {
    let mut scene = Scene::with(&[Role::Clinician, Role::Lead, Role::Administrator]).await;
    scene.set(1, Some(24.0), leeward_core::wire::Ending::Done).await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    sqlx::query("UPDATE practice SET zone = 'Europe/Dublin'").execute(&scene.house.database.superuser).await.unwrap();
    for (path, zone) in [
        ("/clients".to_owned(), "Europe/Dublin, UTC"),
        (format!("/targets/{target}"), "Europe/Dublin, UTC"),
        (format!("/targets/{target}/edit"), "Europe/Dublin, UTC"),
        ("/practice/caseload".to_owned(), "Europe/Dublin, UTC"),
        (format!("/practice/clients/{client}"), "Europe/Dublin, UTC"),
        ("/members".to_owned(), "Europe/Dublin, UTC"),
        ("/account".to_owned(), "Europe/Dublin, UTC"),
        ("/replacements".to_owned(), "Europe/Dublin, UTC"),
        (format!("/sessions/{session}"), "UTC, UTC+00:00"),
        (format!("/sessions/{session}/sets/1"), "UTC, UTC+00:00"),
        (format!("/sessions/{session}/note"), "UTC, UTC+00:00"),
    ] {
        let body = scene.clinician.get(&path).await.body;
        assert_eq!(body.matches(zone).count(), 1, "{path}: {zone}\n{body}");
        assert_eq!(body.matches(", UTC+").count(), 1, "{path}: no other zone\n{body}");
    }
    // A session in another zone than today's names its own beside its times.
    let record = scene.clinician.get(&format!("/clients/{client}")).await.body;
    assert_eq!((record.matches("Europe/Dublin, UTC").count(), record.matches("UTC, UTC+00:00").count()), (1, 1), "{record}");
}
