//! Prints the server's time for the lead's page over a practice of a size, beside the naive query that makes the same from sessions, sets and
//! forms in the same run; at full size also how much more it costs than at a tenth. `tests/bench/outcomes` sets it up.
#![expect(clippy::expect_used, reason = "a benchmark that cannot go on must fail loudly")]

use std::time::Instant;

use leeward_tests::Browser;
use sqlx::{Connection, PgConnection};

/// How often the page is asked for, and the naive query.
const ROUNDS: usize = 40;
const NAIVE_ROUNDS: usize = 3;
/// What the page may take at the 95th percentile, ms, and how many times faster than the naive query it is at least at full size: over a
/// tenth the naive query has a tenth to read, and the page's words cost what they cost, so there the ratio is printed without a verdict.
const GOAL_MS: f64 = 300.0;
const GOAL_RATIO: f64 = 50.0;

/// How many episodes end in the page's year: its cost may grow no faster than they do.
const EPISODES: &str = "SELECT count(*)::float8 FROM episode WHERE ended_at >= now() - interval '1 year'";

/// One run over a practice: the page's median, ms, and the episodes of its year, as the run over a tenth leaves them for the whole.
struct Cost {
    ms: f64,
    episodes: f64,
}

/// The greater part of what the page shows, from the records themselves: who began, reprocessed and ended in a year, the totals of those who ended, and
/// today's lists of sessions left open, calls not made and forms overdue. Left out, so that the ratio is rather too small: courses that have not moved,
/// flags, and all the words.
const NAIVE: &str = "
    WITH attended AS (
        SELECT s.episode_id, min(s.opened_at) AS started_at FROM session s
        WHERE s.took_place AND (s.admitted_at IS NOT NULL OR s.ended_at IS NOT NULL) GROUP BY s.episode_id),
      reprocessed AS (
        SELECT s.episode_id, min(x.recorded_at) AS at FROM stimulus_set x JOIN session s ON s.id = x.session_id
        WHERE x.target_id IS NOT NULL AND coalesce(x.plan->>'purpose', 'processing') = 'processing' GROUP BY s.episode_id),
      totals AS (
        SELECT r.episode_id, r.measure, (array_agg(r.total ORDER BY r.answered_at) FILTER (WHERE r.occasion <> 'end'))[1] AS first,
          (array_agg(r.total ORDER BY r.answered_at DESC) FILTER (WHERE r.occasion <> 'end'))[1] AS last,
          (array_agg(r.total ORDER BY r.answered_at DESC) FILTER (WHERE r.occasion = 'end'))[1] AS ended
        FROM response r WHERE NOT r.withdrawn AND NOT EXISTS (SELECT FROM response later WHERE later.replaces = r.id) GROUP BY 1, 2)
    SELECT (SELECT count(*) FROM attended WHERE started_at >= now() - interval '1 year')
      + (SELECT count(*) FROM reprocessed WHERE at >= now() - interval '1 year')
      + (SELECT count(*) FROM (SELECT measure, first, last, ended, count(*) FROM episode e JOIN attended a ON a.episode_id = e.id
          JOIN totals t ON t.episode_id = e.id WHERE e.ended_at >= now() - interval '1 year' GROUP BY 1, 2, 3, 4) g)
      + (SELECT count(*) FROM session s WHERE s.ended_at IS NULL AND s.opened_at < now() - interval '12 hours')
      + (SELECT count(*) FROM after_check a JOIN session s ON s.id = a.session_id WHERE a.due_until >= now() - interval '90 days' AND a.due_until < now()
          AND NOT EXISTS (SELECT FROM after_check_try y WHERE y.session_id = a.session_id AND y.outcome <> 'not_reached')
          AND NOT EXISTS (SELECT FROM session later WHERE later.client_id = a.client_id AND later.seq > s.seq AND later.admitted_at IS NOT NULL))
      + (SELECT count(*) FROM asking WHERE closed_at IS NULL AND due_on < current_date)
      + (SELECT count(*) FROM schedule_fold f WHERE f.due_on < current_date - 14
          AND NOT EXISTS (SELECT FROM asking a WHERE a.client_id = f.client_id AND a.closed_at IS NULL))";

#[tokio::main]
async fn main() -> std::process::ExitCode {
    let origin = std::env::var("LEEWARD_ORIGIN").expect("LEEWARD_ORIGIN: tests/bench/outcomes sets it");
    let url = std::env::var("LEEWARD_SUPERUSER_URL").expect("LEEWARD_SUPERUSER_URL: tests/bench/outcomes sets it");
    let mut lead = Browser::new(&origin);
    let answer = lead.post_form("/demo/lead", &[]).await;
    assert_eq!(answer.status, 303, "the demo's sign-in as lead: {}", answer.body);
    let mut db = PgConnection::connect(&url).await.expect("the database");
    let (year, mut all) = page(&mut lead, "year").await;
    all &= page(&mut lead, "before").await.1;
    let ratio = naive(&mut db).await / year;
    let cost = Cost { ms: year, episodes: sqlx::query_scalar(EPISODES).fetch_one(&mut db).await.expect("the episodes are counted") };
    let kept = std::env::var("LEEWARD_TENTH").expect("LEEWARD_TENTH, a file: tests/bench/outcomes sets it");
    if std::env::args().any(|argument| argument == "--tenth") {
        println!("     {ratio:.0} times the naive query's speed (judged at full size)");
        std::fs::write(kept, format!("{} {}", cost.ms, cost.episodes)).expect("the cost at a tenth is kept");
    } else {
        all &= verdict(ratio >= GOAL_RATIO, &format!("{ratio:.0} times the naive query's speed, at least {GOAL_RATIO}"));
        all &= growth(&tenth(&kept), &cost);
    }
    if all { std::process::ExitCode::SUCCESS } else { std::process::ExitCode::FAILURE }
}

/// The page's time over a period: its median, ms, and whether the 95th percentile is within the goal.
async fn page(lead: &mut Browser, period: &str) -> (f64, bool) {
    let path = format!("/practice?period={period}");
    let mut times = vec![];
    for _ in 0..ROUNDS {
        let begun = Instant::now();
        let answer = lead.get(&path).await;
        times.push(begun.elapsed().as_secs_f64() * 1000.0);
        assert_eq!(answer.status, 200, "{path}");
    }
    let (p95, median) = (percentile(&mut times, 0.95), percentile(&mut times, 0.5));
    (median, verdict(p95 <= GOAL_MS, &format!("{path}: p95 {p95:.1} ms of {GOAL_MS} ms, median {median:.1} ms")))
}

/// The cost at full size against that at a tenth, beside the episodes of each.
fn growth(tenth: &Cost, whole: &Cost) -> bool {
    let (cost, episodes) = (whole.ms / tenth.ms, whole.episodes / tenth.episodes);
    verdict(cost <= episodes, &format!("{cost:.1} times the cost for {episodes:.1} times the episodes"))
}

fn tenth(kept: &str) -> Cost {
    let text = std::fs::read_to_string(kept).expect("the run over a tenth left its cost");
    let (ms, episodes) = text.split_once(' ').expect("two numbers");
    Cost { ms: ms.parse().expect("ms"), episodes: episodes.parse().expect("episodes") }
}

fn verdict(reached: bool, line: &str) -> bool {
    println!("{} {line}", if reached { "PASS" } else { "SHORT" });
    reached
}

/// The naive query's median, ms.
async fn naive(db: &mut PgConnection) -> f64 {
    let mut times = vec![];
    for _ in 0..NAIVE_ROUNDS {
        let begun = Instant::now();
        let _: i64 = sqlx::query_scalar(NAIVE).fetch_one(&mut *db).await.expect("the naive query");
        times.push(begun.elapsed().as_secs_f64() * 1000.0);
    }
    let median = percentile(&mut times, 0.5);
    println!("     the naive query: {median:.0} ms");
    median
}

fn percentile(times: &mut [f64], share: f64) -> f64 {
    times.sort_by(f64::total_cmp);
    times[((times.len() - 1) as f64 * share).round() as usize]
}
