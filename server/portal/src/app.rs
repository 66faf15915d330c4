//! What all requests share, and THE list of routes.

use std::net::SocketAddr;
use std::sync::Arc;

use axum::Router;
use axum::extract::{DefaultBodyLimit, FromRef};
use axum::http::StatusCode;
use axum::middleware::{from_fn, from_fn_with_state};
use axum::routing::{MethodRouter, get};
use axum_server::accept::NoDelayAcceptor;
use tower_http::compression::CompressionLayer;

use crate::clock::World;
use crate::config::Origin;
use crate::database::Database;
use crate::key_check::CheckedKey;
use crate::observe::{self, Counts};
use crate::page::{MOST_FORM, show_errors};
use crate::security::{self, Limits};
use crate::signin::{Closings, Role, members_only, needs_role, recognise};
use crate::{assets, clients, comfort, live, outcomes, presets, sessions, signin, targets};

/// What the portal is built from.
pub struct Parts {
    /// The database, checked.
    pub database: Database,
    /// Clock and randomness.
    pub world: World,
    /// Opens the clients' keys.
    pub key: CheckedKey,
    /// Where browsers reach the portal.
    pub origin: Origin,
    /// See `config::ServeArgs::proxies`.
    pub proxies: usize,
    /// Whether the demo's own sign-in exists here.
    pub demo: bool,
}

/// Shared by all requests; cheap to clone.
#[derive(Clone)]
pub struct App(Arc<Shared>);

/// See [`App`].
pub struct Shared {
    #[expect(missing_docs, reason = "see Parts")]
    pub database: Database,
    #[expect(missing_docs, reason = "see Parts")]
    pub world: World,
    #[expect(missing_docs, reason = "see Parts")]
    pub key: CheckedKey,
    #[expect(missing_docs, reason = "see Parts")]
    pub origin: Origin,
    #[expect(missing_docs, reason = "see Parts")]
    pub proxies: usize,
    /// Limits on tries.
    pub limits: Limits,
    /// Sign-ins as they are closed.
    pub closings: Closings,
    /// The live rooms.
    pub rooms: live::Rooms,
    /// Requests by route.
    pub counts: Counts,
}

impl std::ops::Deref for App {
    type Target = Shared;
    fn deref(&self) -> &Shared {
        &self.0
    }
}

impl FromRef<App> for Database {
    fn from_ref(app: &App) -> Self {
        app.database.clone()
    }
}

/// Who may use a route. Every route has exactly one rule; the test of all routes by all sorts of
/// people is generated from them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// Everybody.
    Anybody,
    /// Whoever has a seat in the session at hand; there is no id in the path to try.
    Seat,
    /// Every member.
    Member,
    /// Members with this role.
    Role(Role),
    /// Members who treat the client that the path's id leads to; to others it is not there.
    Care,
}

/// One route, for the list.
#[derive(Clone, Copy, Debug)]
pub struct Route {
    /// `GET`, `POST`.
    pub method: &'static str,
    /// As axum writes it.
    pub path: &'static str,
    /// Who may.
    pub rule: Rule,
}

/// Collects routes and their rules together, so that none can be without.
#[derive(Default)]
pub struct Routes {
    open: Router<App>,
    members: Router<App>,
    list: Vec<Route>,
}

impl Routes {
    /// A route that is read.
    #[must_use]
    pub fn get(self, path: &'static str, rule: Rule, handler: MethodRouter<App>) -> Self {
        self.add("GET", path, rule, handler)
    }

    /// A route that changes something.
    #[must_use]
    pub fn post(self, path: &'static str, rule: Rule, handler: MethodRouter<App>) -> Self {
        self.add("POST", path, rule, handler)
    }

    fn add(mut self, method: &'static str, path: &'static str, rule: Rule, handler: MethodRouter<App>) -> Self {
        self.list.push(Route { method, path, rule });
        match rule {
            Rule::Anybody | Rule::Seat => self.open = self.open.route(path, handler),
            Rule::Member | Rule::Care => self.members = self.members.route(path, handler),
            Rule::Role(role) => self.members = self.members.route(path, handler.layer(from_fn_with_state(role, needs_role))),
        }
        self
    }
}

/// THE route list. Handlers of member routes also take `Member`, those of client routes `Seat`, and the
/// database's policies hide the rows once more.
fn routes(demo: bool) -> Routes {
    use Rule::Anybody;
    let routes = Routes::default().get("/livez", Anybody, get(|| async { "alive" })).get("/readyz", Anybody, get(ready)).get(
        "/assets/{hash}/{name}",
        Anybody,
        get(assets::show),
    );
    let routes = signin::routes(routes, demo);
    let routes = clients::routes(routes);
    let routes = comfort::routes(routes);
    let routes = targets::routes(routes);
    let routes = presets::routes(routes);
    let routes = sessions::routes(routes);
    let routes = live::routes(routes);
    outcomes::routes(routes)
}

/// The list of routes with their rules, for tests.
#[must_use]
pub fn route_list() -> Vec<Route> {
    routes(true).list
}

/// Builds the portal.
pub fn build(parts: Parts) -> (App, Router) {
    let Parts { database, world, key, origin, proxies, demo } = parts;
    let Routes { open, members, list } = routes(demo);
    let app = App(Arc::new(Shared {
        database,
        world,
        key,
        origin,
        proxies,
        limits: Limits::default(),
        closings: Closings::default(),
        rooms: live::Rooms::default(),
        counts: Counts::of(list.iter().map(|route| route.path).collect()),
    }));
    let router = open
        .merge(members.layer(from_fn(members_only)))
        .fallback(|| async { crate::error::Error::NotFound })
        .layer(DefaultBodyLimit::max(MOST_FORM))
        .layer(from_fn_with_state(app.clone(), security::same_origin))
        .layer(from_fn_with_state(app.clone(), recognise))
        .layer(from_fn(show_errors))
        .layer(from_fn_with_state(app.clone(), security::caller))
        .layer(from_fn_with_state(app.clone(), security::headers))
        .layer(CompressionLayer::new())
        .layer(from_fn_with_state(app.clone(), observe::requests))
        .with_state(app.clone());
    (app, router)
}

async fn ready(axum::extract::State(database): axum::extract::State<Database>) -> StatusCode {
    if database.answers().await { StatusCode::OK } else { StatusCode::SERVICE_UNAVAILABLE }
}

/// Serves until `handle` is told to stop.
///
/// # Errors
/// When the port cannot be listened on.
pub async fn serve(router: Router, listener: std::net::TcpListener, handle: axum_server::Handle<SocketAddr>) -> std::io::Result<()> {
    // Stops and beats are small and must not wait to be joined with what comes after them.
    let mut server = axum_server::from_tcp(listener)?.acceptor(NoDelayAcceptor::new()).handle(handle);
    // Half-sent requests do not hold a connection for long.
    server.http_builder().http1().timer(hyper_util::rt::TokioTimer::new()).header_read_timeout(std::time::Duration::from_secs(10));
    server.serve(router.into_make_service_with_connect_info::<SocketAddr>()).await
}
