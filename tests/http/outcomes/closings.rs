//! The practice page's strip of closings, against what the database counts by itself.

use chrono::Duration;
use leeward::platform::Role;
use leeward::sessions::ClosingKind;

use super::next_session;
use crate::scene::{Scene, rows};

const CAPTION: &str = "How sessions were closed, by week</caption>";

#[tokio::test]
async fn the_strip_of_closings_counts_as_the_database_does() {
    let mut scene = Scene::build().await;
    for kind in [ClosingKind::Incomplete, ClosingKind::NoReprocessing, ClosingKind::Incomplete, ClosingKind::Complete] {
        next_session(&mut scene, kind).await;
    }
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let page = lead.get("/practice/caseload").await.body;
    // Weeks are those of date_trunc: "ISO 8601 weeks", PostgreSQL 9.9.2 and 9.9.1, from memory.
    let counted: Vec<(String, i64, i64, i64, i64)> = sqlx::query_as(
        "SELECT to_char(date_trunc('week', s.opened_at AT TIME ZONE p.zone), 'FMDD Mon'), count(*) FILTER (WHERE s.closing = 'complete'),
           count(*) FILTER (WHERE s.closing = 'incomplete'), count(*) FILTER (WHERE s.closing = 'no_reprocessing'),
           count(*) FILTER (WHERE s.ended_at IS NULL)
         FROM session s, practice p GROUP BY date_trunc('week', s.opened_at AT TIME ZONE p.zone), 1 ORDER BY date_trunc('week', s.opened_at AT TIME ZONE p.zone)",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    assert_eq!(counted.len(), 5, "a session a week");
    let drawn = rows(&page, CAPTION);
    assert_eq!(drawn.len(), 12, "twelve weeks, whether or not there was anything in them");
    let expected: Vec<String> = counted.iter().map(|(week, a, b, c, d)| format!("{week}|{a}|{b}|{c}|{d}")).collect();
    assert_eq!(drawn[7..], expected);
    assert!(drawn[..7].iter().all(|row| row.ends_with("|0|0|0|0")));
    assert!(page.contains("2 of 5 sessions in 12 weeks were closed as incomplete, 1 is not closed"));
    for (words, count) in
        [("Complete, or reduced as planned", 1), ("Incomplete", 2), ("No reprocessing, or not recorded", 1), ("Not closed", 1)]
    {
        assert!(page.contains(&format!("</svg>{words}</dt><dd>{count}</dd>")), "{words}");
    }
}

#[tokio::test]
async fn what_is_older_than_the_strip_or_of_another_clinician_is_not_in_it() {
    let mut scene = Scene::build().await;
    next_session(&mut scene, ClosingKind::Complete).await;
    let other = scene.house.member(&[Role::Clinician]).await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let theirs = lead.get(&format!("/practice/caseload?clinician={}", other.member)).await.body;
    assert!(theirs.contains("No session in the last 12 weeks"));
    scene.house.clock.advance(Duration::weeks(11));
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let page = lead.get("/practice/caseload").await.body;
    assert!(page.contains("0 of 1 session in 12 weeks were closed as incomplete, 1 is not closed"), "the first has moved out of it");
}
