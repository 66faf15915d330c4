//! Routes and their rules, collected together so that no route can be without one.

use axum::Router;
use axum::middleware::from_fn_with_state;
use axum::routing::MethodRouter;

use super::member::{Role, needs_role};
use super::state::App;

/// Who may use a route. Every route has exactly one rule; the test of all routes by all sorts of
/// people is generated from them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// Everybody.
    Anybody,
    /// Whoever has a seat in the session at hand; there is no id in the path to try.
    Seat,
    /// Whoever came by a link that still holds, for what it is for; there is no id in the path to try.
    Errand,
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
    pub(crate) still: Router<App>,
    pub(crate) open: Router<App>,
    pub(crate) members: Router<App>,
    /// Of records: who is refused there is noted.
    pub(crate) care: Router<App>,
    pub(crate) list: Vec<Route>,
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
    pub(crate) fn get_still(mut self, path: &'static str, handler: MethodRouter<App>) -> Self {
        self.list.push(Route { method: "GET", path, rule: Rule::Anybody, repeats: None });
        self.still = self.still.route(path, handler);
        self
    }

    fn add(mut self, route: Route, handler: MethodRouter<App>) -> Self {
        let Route { path, rule, .. } = route;
        self.list.push(route);
        match rule {
            Rule::Anybody | Rule::Seat | Rule::Errand => self.open = self.open.route(path, handler),
            Rule::Member => self.members = self.members.route(path, handler),
            Rule::Care => self.care = self.care.route(path, handler),
            Rule::Role(role) => self.members = self.members.route(path, handler.layer(from_fn_with_state(role.alone(), needs_role))),
            Rule::Roles(roles) => self.members = self.members.route(path, handler.layer(from_fn_with_state(roles, needs_role))),
        }
        self
    }
}
