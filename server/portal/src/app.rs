//! What all requests share, and THE list of routes.

use std::sync::Arc;

use axum::Router;
use axum::extract::{DefaultBodyLimit, FromRef};
use axum::http::StatusCode;
use axum::middleware::{from_fn, from_fn_with_state};
use axum::routing::{MethodRouter, get};
use tower_http::compression::CompressionLayer;

use crate::clock::World;
use crate::config::Origin;
use crate::database::Database;
use crate::key_check::CheckedKey;
use crate::observe::{self, Counts};
use crate::once::Derived;
use crate::page::{MOST_FORM, answer_in_time, show_errors};
use crate::security::{self, Limits};
use crate::signin::{Closings, Role, members_only, needs_role, note_refused, recognise};
use crate::{assets, clients, comfort, handover, live, outcomes, presets, sessions, signin, targets};

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
    /// Makes links, codes and seats from the keys of requests.
    pub derived: Derived,
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
    /// Members with one of these roles.
    Roles(&'static [Role]),
    /// Members who treat the client that the path's id leads to; to others it is not there.
    Care,
}

/// What becomes of a request that is sent again because its answer was lost. Every route that changes
/// something says so; the test of this is generated from the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Repeats {
    /// It carries a key: see `once`. The second time has the first one's answer.
    Keyed,
    /// What it says names its one effect, as here.
    ByNature(&'static str),
    /// It does not repeat, for this reason.
    Not(&'static str),
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
    /// Whether it may be sent again; nothing for what is only read.
    pub repeats: Option<Repeats>,
}

/// Collects routes and their rules together, so that none can be without.
#[derive(Default)]
pub struct Routes {
    /// Asks no database, whatever cookies come: answered while there is none.
    still: Router<App>,
    open: Router<App>,
    members: Router<App>,
    /// Of records: who is refused there is noted.
    care: Router<App>,
    list: Vec<Route>,
}

impl Routes {
    /// A route that is read.
    #[must_use]
    pub fn get(self, path: &'static str, rule: Rule, handler: MethodRouter<App>) -> Self {
        self.add(Route { method: "GET", path, rule, repeats: None }, handler)
    }

    /// A route that changes something, once for its key.
    #[must_use]
    pub fn post(self, path: &'static str, rule: Rule, handler: MethodRouter<App>) -> Self {
        self.post_repeated(path, rule, Repeats::Keyed, handler)
    }

    /// A route that changes something without a key.
    #[must_use]
    pub fn post_repeated(self, path: &'static str, rule: Rule, repeats: Repeats, handler: MethodRouter<App>) -> Self {
        self.add(Route { method: "POST", path, rule, repeats: Some(repeats) }, handler)
    }

    /// A route that everybody reads and that asks no database, not even who is asking.
    fn get_still(mut self, path: &'static str, handler: MethodRouter<App>) -> Self {
        self.list.push(Route { method: "GET", path, rule: Rule::Anybody, repeats: None });
        self.still = self.still.route(path, handler);
        self
    }

    fn add(mut self, route: Route, handler: MethodRouter<App>) -> Self {
        let Route { path, rule, .. } = route;
        self.list.push(route);
        match rule {
            Rule::Anybody | Rule::Seat => self.open = self.open.route(path, handler),
            Rule::Member => self.members = self.members.route(path, handler),
            Rule::Care => self.care = self.care.route(path, handler),
            Rule::Role(role) => self.members = self.members.route(path, handler.layer(from_fn_with_state(role.alone(), needs_role))),
            Rule::Roles(roles) => self.members = self.members.route(path, handler.layer(from_fn_with_state(roles, needs_role))),
        }
        self
    }
}

/// THE route list. Handlers of member routes also take `Member`, those of client routes `Seat`, and the
/// database's policies hide the rows once more.
fn routes(demo: bool) -> Routes {
    let routes = Routes::default().get_still("/livez", get(|| async { "alive" })).get_still("/readyz", get(ready));
    let routes = routes.get_still("/assets/{hash}/{name}", get(assets::show));
    let routes = signin::routes(routes, demo);
    let routes = clients::routes(routes);
    let routes = comfort::routes(routes);
    let routes = targets::routes(routes);
    let routes = presets::routes(routes);
    let routes = sessions::routes(routes);
    let routes = live::routes(routes);
    let routes = handover::routes(routes);
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
    let Routes { still, open, members, care, list } = routes(demo);
    let app = App(Arc::new(Shared {
        derived: key.derived(),
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
    let members = members.merge(care.route_layer(from_fn_with_state(app.clone(), note_refused)));
    let router = open
        .merge(members.layer(from_fn(members_only)))
        .fallback(|| async { crate::error::Error::NotFound })
        .layer(DefaultBodyLimit::max(MOST_FORM))
        .layer(from_fn_with_state(app.clone(), security::same_origin))
        .layer(from_fn_with_state(app.clone(), recognise))
        .layer(from_fn(answer_in_time))
        .merge(still)
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
