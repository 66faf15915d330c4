//! Every request that changes something, sent again after its answer was lost: one effect, and the first answer.

use std::collections::BTreeMap;

use leeward::app::route_list;
use leeward::platform::{Repeats, Route};
use leeward_tests::{Answer, House};
use sqlx::AssertSqlSafe;
use uuid::Uuid;

use crate::figures::{figure, is_full};
use crate::samples::{Sample, sample};

/// The routes that may be sent again.
pub fn routes() -> Vec<Route> {
    let repeated = |route: &Route| matches!(route.repeats, Some(Repeats::Keyed | Repeats::ByNature(_)));
    route_list().into_iter().filter(repeated).collect()
}

/// Rows of each table. What is written of a look at something, and of the sending itself, is no effect.
async fn effect(house: &House) -> BTreeMap<String, i64> {
    let tables: Vec<String> = sqlx::query_scalar(
        "SELECT format('%I.%I', schemaname, tablename) FROM pg_tables WHERE schemaname IN ('public', 'access')
           AND tablename NOT IN ('audit', 'audit_head', 'request_key', 'room_token')",
    )
    .fetch_all(&house.database.superuser)
    .await
    .unwrap();
    let mut rows = BTreeMap::new();
    for table in tables {
        let count = sqlx::query_scalar(AssertSqlSafe(format!("SELECT count(*) FROM {table}")));
        rows.insert(table, count.fetch_one(&house.database.superuser).await.unwrap());
    }
    rows
}

/// What came back, without what is new in every response.
fn said(answer: &Answer) -> (u16, String, String, Vec<String>) {
    let policy = answer.headers.iter().find(|(name, _)| name == "content-security-policy").map(|(_, value)| value.as_str());
    let nonce = policy.and_then(|policy| policy.split("'nonce-").nth(1)?.split('\'').next()).unwrap_or_default();
    let mut body = if nonce.is_empty() { answer.body.clone() } else { answer.body.replace(nonce, "") };
    while let Some((before, after)) = body.split_once(r#"name="once" value=""#) {
        let rest = after.split_once('"').map_or("", |(_, rest)| rest).to_owned();
        body = format!("{before}{rest}");
    }
    let cookies = answer.headers.iter().filter(|(name, _)| name == "set-cookie").map(|(_, value)| value.clone()).collect();
    (answer.status, answer.location.clone(), body, cookies)
}

/// Ids apart, where an answer leads and what sort it is: for comparing one practice with another.
fn shape(answer: &Answer) -> (u16, String) {
    let parts = answer.location.split(['/', '#', '?', '=', '&']).map(|part| if part.parse::<Uuid>().is_ok() { "an id" } else { part });
    (answer.status, parts.collect::<Vec<_>>().join("/"))
}

#[tokio::test]
async fn what_is_sent_twice_is_done_once_and_answered_alike() {
    for route in routes() {
        let mut sent = sample(&route).await;
        let first = sent.send().await;
        assert!(first.status < 400, "{}: {} {}", route.path, first.status, first.body);
        let done = effect(&sent.scene.house).await;
        let again = sent.send().await;
        assert_eq!(said(&again), said(&first), "{}", route.path);
        assert_eq!(effect(&sent.scene.house).await, done, "{}", route.path);
        if route.repeats == Some(Repeats::Keyed) && !route.path.ends_with("/link") && !route.path.ends_with("/code") {
            let other = sent.send_another().await;
            assert_eq!(other.status, 409, "{}: another body under the same key", route.path);
            assert_eq!(effect(&sent.scene.house).await, done, "{}", route.path);
        }
    }
}

#[tokio::test]
async fn a_commit_whose_answer_was_lost_is_found_again_when_it_is_sent_again() {
    let mut lost = 0;
    for route in routes() {
        let control = sample(&route).await;
        let before = commits(&control);
        let first = control.send().await;
        let took = commits(&control) - before;
        let wanted = (shape(&first), effect(&control.scene.house).await);
        // Each of the commits that answering takes; in the short form the last, which holds the effect as a rule.
        for commits in (0..took).rev().take(if is_full() { 8 } else { 1 }) {
            let sent = sample(&route).await;
            assert!(answer_lost(&sent, commits).await, "{}: commit {commits} of {took}", route.path);
            lost += 1;
            let again = sent.send().await;
            let found = (shape(&again), effect(&sent.scene.house).await);
            assert_eq!(found, wanted, "{} after the answer to commit {commits} was lost: {}", route.path, again.body);
        }
    }
    let found = format!("{lost} of {lost} have one effect and the first answer");
    figure(&format!("sent again after a lost answer, {} routes", routes().len()), lost >= routes().len(), &found, "each");
}

fn commits(sent: &Sample) -> u32 {
    sent.scene.house.wire.as_ref().unwrap().commits()
}

/// Sends once, with the answer to one commit lost; false when there was no such commit.
async fn answer_lost(sent: &Sample, commits: u32) -> bool {
    sent.scene.house.wire.as_ref().unwrap().lose_answer_after(commits);
    let answer = sent.send().await;
    let lost = sent.scene.house.wire.as_ref().unwrap().has_lost();
    assert!(lost || answer.status < 400, "{}: {} {}", sent.path, answer.status, answer.body);
    lost
}

#[tokio::test]
async fn every_route_that_changes_something_says_how_it_repeats() {
    for route in route_list() {
        match (route.method, route.repeats) {
            ("GET", None) | ("POST", Some(Repeats::Keyed)) => {}
            ("POST", Some(Repeats::ByNature(why) | Repeats::Not(why))) => assert!(why.len() > 10, "{}: {why}", route.path),
            other => panic!("{}: {other:?}", route.path),
        }
    }
}
