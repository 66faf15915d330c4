//! Prints the server's time for every page of records at the demo's size, each beside the floor of the
//! same run: the smallest answer over the same connection. `tests/bench/pages` sets it up.
#![expect(clippy::expect_used, reason = "a benchmark that cannot go on must fail loudly")]

use std::time::Instant;

use leeward_tests::Browser;

/// How often each page is asked for.
const ROUNDS: usize = 41;

/// What a page of records may take, ms.
const GOAL_MS: f64 = 50.0;

/// What the pages of a record of 200 sessions may take, ms.
const GOAL_LONG_MS: f64 = 100.0;

/// What the resting server may hold in memory, MB.
const GOAL_MB: f64 = 60.0;

/// How soon after its start the server may be ready on a migrated database, ms.
const GOAL_READY_MS: f64 = 1_000.0;

#[tokio::main]
async fn main() -> std::process::ExitCode {
    let origin = std::env::var("LEEWARD_ORIGIN").expect("LEEWARD_ORIGIN: tests/bench/pages sets it");
    if std::env::args().any(|argument| argument == "--long") {
        return long_course(&origin).await;
    }
    let resting = resident_mb();
    let (mut clinician, mut administrator) = (Browser::new(&origin), Browser::new(&origin));
    enter(&mut clinician, "clinician").await;
    enter(&mut administrator, "administrator").await;
    let (floor, _) = median(&mut clinician, "/livez").await;
    let mut all = true;
    for path in pages(&mut clinician).await {
        all &= line(&mut clinician, &path, floor, GOAL_MS).await;
    }
    for path in ["/members", "/account"] {
        all &= line(&mut administrator, path, floor, GOAL_MS).await;
    }
    let light = resting.is_some_and(|mb| mb <= GOAL_MB);
    println!("{} memory {}", if light { "PASS" } else { "SHORT" }, say_memory(resting));
    all &= light;
    let ready = ready_ms();
    println!(
        "{} ready {ready:.0} ms after its start, {:.2} of {GOAL_READY_MS} ms",
        if ready <= GOAL_READY_MS { "PASS" } else { "SHORT" },
        ready / GOAL_READY_MS
    );
    all &= ready <= GOAL_READY_MS;
    if all { std::process::ExitCode::SUCCESS } else { std::process::ExitCode::FAILURE }
}

/// The pages that draw the whole course of one record.
async fn long_course(origin: &str) -> std::process::ExitCode {
    let mut browser = Browser::new(origin);
    enter(&mut browser, "clinician").await;
    let (floor, _) = median(&mut browser, "/livez").await;
    let (sessions, client) = longest(&mut browser).await;
    println!("a record of {sessions} sessions, each within {GOAL_LONG_MS} ms:");
    let target = links(&browser.get(&client).await.body, "/targets/").into_iter().next().expect("the longest record has a target");
    let of_lead = client.replace("/clients/", "/practice/clients/");
    let mut all = sessions >= 200;
    for path in ["/clients".to_owned(), format!("{client}/plan"), client, target, of_lead, "/practice/caseload".to_owned()] {
        all &= line(&mut browser, &path, floor, GOAL_LONG_MS).await;
    }
    if all { std::process::ExitCode::SUCCESS } else { std::process::ExitCode::FAILURE }
}

/// The record with the most sessions, and how many those are.
async fn longest(browser: &mut Browser) -> (usize, String) {
    let (mut most, mut client) = (0, String::new());
    for path in links(&browser.get("/clients").await.body, "/clients/") {
        let sessions = links(&browser.get(&path).await.body, "/sessions/").len();
        if sessions > most {
            (most, client) = (sessions, path);
        }
    }
    (most, client)
}

fn say_memory(resting: Option<f64>) -> String {
    resting
        .map_or("of the server could not be read".into(), |mb| format!("{mb:.1} MB resident at rest, {:.2} of {GOAL_MB} MB", mb / GOAL_MB))
}

/// Resident memory of the server before anything is asked of it.
fn resident_mb() -> Option<f64> {
    let pid = std::env::var("LEEWARD_PORTAL_PID").ok()?;
    let status = std::fs::read_to_string(format!("/proc/{pid}/status")).ok()?;
    let kilobytes: f64 = status.lines().find_map(|line| line.strip_prefix("VmRSS:"))?.trim().trim_end_matches(" kB").parse().ok()?;
    Some(kilobytes / 1024.0)
}

/// From the start of its process to its "ready", as the script that started it saw it, to 50 ms.
fn ready_ms() -> f64 {
    std::env::var("LEEWARD_READY_MS").ok().and_then(|ms| ms.parse().ok()).expect("LEEWARD_READY_MS: tests/bench/pages sets it")
}

async fn enter(browser: &mut Browser, role: &str) {
    let answer = browser.post_form(&format!("/demo/{role}"), &[]).await;
    assert_eq!(answer.status, 303, "the demo's sign-in as {role}: {}", answer.body);
}

/// One page of each kind; those of a client by the longest record.
async fn pages(browser: &mut Browser) -> Vec<String> {
    let mut pages = ["/clients", "/clients/new", "/practice", "/practice/caseload", "/presets", "/presets/new"].map(str::to_owned).to_vec();
    let (_, client) = longest(browser).await;
    let record = browser.get(&client).await.body;
    let target = links(&record, "/targets/").into_iter().next().expect("the longest record has a target");
    let session = links(&record, "/sessions/").into_iter().next().expect("the longest record has a session");
    let of_lead = client.replace("/clients/", "/practice/clients/");
    let set = format!("{session}/sets/1");
    pages.extend([
        format!("{client}/edit"),
        format!("{client}/comfort"),
        format!("{client}/plan"),
        format!("{client}/safety-plan"),
        format!("{client}/steadying"),
        format!("{client}/reach"),
        format!("{client}/events"),
        format!("{client}/measures"),
        format!("{client}/measures/new/pcl5"),
        format!("{client}/measures/1"),
        format!("{client}/episodes/1"),
        client,
        format!("{target}/edit"),
        target,
    ]);
    pages.extend([format!("{session}/note"), set, session, of_lead]);
    pages
}

/// Links to single rows under `prefix`, each once.
fn links(body: &str, prefix: &str) -> Vec<String> {
    let mut found: Vec<String> = body
        .split("href=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .filter(|href| href.strip_prefix(prefix).is_some_and(|id| id.len() == 36 && !id.contains('/')))
        .map(str::to_owned)
        .collect();
    found.sort();
    found.dedup();
    found
}

async fn line(browser: &mut Browser, path: &str, floor: f64, goal: f64) -> bool {
    let (ms, bytes) = median(browser, path).await;
    let kind: String = path.split('/').map(|part| if part.len() == 36 { "…" } else { part }).collect::<Vec<_>>().join("/");
    let reached = ms <= goal;
    println!(
        "{} {kind}: median {ms:.1} ms, {:.1} times the floor of {floor:.1} ms, {bytes} bytes",
        if reached { "PASS" } else { "SHORT" },
        ms / floor
    );
    reached
}

/// The median time of an answer, ms, and its size.
async fn median(browser: &mut Browser, path: &str) -> (f64, usize) {
    let (mut times, mut bytes) = (Vec::new(), 0);
    for _ in 0..ROUNDS {
        let start = Instant::now();
        let answer = browser.get(path).await;
        times.push(start.elapsed().as_secs_f64() * 1_000.0);
        assert_eq!(answer.status, 200, "{path}");
        bytes = answer.body.len();
    }
    times.sort_by(f64::total_cmp);
    (times.get(ROUNDS / 2).copied().expect("there were rounds"), bytes)
}
