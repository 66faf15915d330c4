//! What the log and the counters know of a request: its route as the list of routes has it, its method,
//! its status, how long it took, and a number made for it. Never a path, a query, an address or a text.

use std::collections::BTreeMap;
use std::fmt::Write;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use axum::extract::{MatchedPath, Request, State};
use axum::http::{HeaderName, HeaderValue, Method};
use axum::middleware::Next;
use axum::response::Response;
use tracing::Instrument;

use crate::base::clock::World;
use crate::platform::App;

/// The header that gives a request's number back.
const HEADER: HeaderName = HeaderName::from_static("x-request-id");
/// What the list of routes does not have, or a method that no route has: a caller can put anything there.
const OTHER: &str = "other";

/// The number of a request: to find its lines in the log by, short enough to be read out.
#[derive(Clone, Debug, Default)]
pub struct Number(pub String);

impl Number {
    fn new(world: &World) -> Self {
        let mut bytes = [0; 8];
        world.fill(&mut bytes);
        let drawn = u64::from_be_bytes(bytes) % 1_000_000_000;
        Self(format!("{:03}-{:03}-{:03}", drawn / 1_000_000, drawn / 1_000 % 1_000, drawn % 1_000))
    }
}

/// Gives each request its number, and writes one line and one count when it was answered.
pub async fn requests(State(app): State<App>, mut request: Request, next: Next) -> Response {
    let number = Number::new(&app.world);
    let method = known(request.method());
    let route = request.extensions().get::<MatchedPath>().map_or(OTHER, |path| app.counts.name(path.as_str()));
    let begun = Instant::now();
    request.extensions_mut().insert(number.clone());
    let span = tracing::info_span!("request", number = number.0);
    let mut response = next.run(request).instrument(span.clone()).await;
    let (status, took) = (response.status().as_u16(), begun.elapsed());
    if let Ok(value) = HeaderValue::from_str(&number.0) {
        response.headers_mut().insert(HEADER, value);
    }
    app.counts.add(Key { route, method, status }, took);
    let ms = took.as_micros() as f64 / 1_000.0;
    span.in_scope(|| tracing::info!(method, route, status, ms, "answered"));
    response
}

fn known(method: &Method) -> &'static str {
    match *method {
        Method::GET => "GET",
        Method::HEAD => "HEAD",
        Method::POST => "POST",
        _ => OTHER,
    }
}

#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    route: &'static str,
    method: &'static str,
    status: u16,
}

#[derive(Clone, Copy, Default)]
struct Sum {
    requests: u64,
    took: Duration,
}

/// Requests counted since the start.
pub struct Counts {
    routes: Vec<&'static str>,
    sums: Mutex<BTreeMap<Key, Sum>>,
}

impl Counts {
    /// For the routes of these patterns.
    #[must_use]
    pub fn of(routes: Vec<&'static str>) -> Self {
        Self { routes, sums: Mutex::default() }
    }

    /// The pattern as the list of routes has it.
    fn name(&self, pattern: &str) -> &'static str {
        self.routes.iter().find(|route| **route == pattern).copied().unwrap_or(OTHER)
    }

    fn add(&self, key: Key, took: Duration) {
        let mut sums = self.sums.lock().unwrap_or_else(PoisonError::into_inner);
        let sum = sums.entry(key).or_default();
        sum.requests += 1;
        sum.took += took;
    }
}

/// A figure of this moment: name, what it is, value.
pub type Gauge = (&'static str, &'static str, f64);

/// All figures in the text format of Prometheus, version 0.0.4, with `gauges` of what stands above.
#[must_use]
pub fn figures(app: &App, gauges: &[Gauge]) -> String {
    let sums = app.counts.sums.lock().unwrap_or_else(PoisonError::into_inner).clone();
    let mut text = String::new();
    head(&mut text, "leeward_requests_total", "counter", "Requests answered, by route as the list of routes has it.");
    for (Key { route, method, status }, sum) in &sums {
        line(
            &mut text,
            "leeward_requests_total",
            &format!("{{route=\"{route}\",method=\"{method}\",status=\"{status}\"}}"),
            sum.requests as f64,
        );
    }
    head(&mut text, "leeward_request_seconds_total", "counter", "Seconds that they took together.");
    for (Key { route, method, status }, sum) in &sums {
        let labels = format!("{{route=\"{route}\",method=\"{method}\",status=\"{status}\"}}");
        line(&mut text, "leeward_request_seconds_total", &labels, sum.took.as_secs_f64());
    }
    let (open, used) = app.database.connections();
    let connections = [
        ("leeward_database_connections", "Connections to the database that are open.", f64::from(open)),
        ("leeward_database_connections_used", "Those of them that are in use.", f64::from(used)),
    ];
    for (name, help, value) in gauges.iter().copied().chain(connections) {
        head(&mut text, name, "gauge", help);
        line(&mut text, name, "", value);
    }
    text
}

// Writing into a text does not fail.
fn head(text: &mut String, name: &str, kind: &str, help: &str) {
    let _ = writeln!(text, "# HELP {name} {help}\n# TYPE {name} {kind}");
}

fn line(text: &mut String, name: &str, labels: &str, value: f64) {
    let _ = writeln!(text, "{name}{labels} {value}");
}

/// The one page of the listener for figures.
pub fn figures_page(app: App, gauges: fn(&App) -> Vec<Gauge>) -> axum::Router {
    let page = move || async move { ([("content-type", "text/plain; version=0.0.4; charset=utf-8")], figures(&app, &gauges(&app))) };
    axum::Router::new().route("/metrics", axum::routing::get(page))
}
