//! Assembles the portal: THE list of routes, and the layers around it.

use std::sync::Arc;

use axum::Router;
use axum::extract::{DefaultBodyLimit, State};
use axum::http::{Extensions, StatusCode};
use axum::middleware::{from_fn, from_fn_with_state};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use tower::ServiceBuilder;
use tower_http::catch_panic::CatchPanicLayer;
use tower_http::compression::CompressionLayer;

use crate::platform::observe::{self, Counts};
use crate::platform::page::{MOST_FORM, answer_in_time, show_errors};
use crate::platform::{App, Parts, Route, Routes, assets, in_turn, members_only, note_refused, parts, recognise, security};
use crate::store::database::Database;
use crate::store::error::Error;
use crate::{
    askings, caseload, clients, comfort, episodes, events, handover, live, mail, measures, outcomes, practice, presets, reach, record,
    safety_plan, sessions, signin, steadying, targets, wordings,
};

/// THE route list. Handlers of member routes also take `Member`, those of client routes `Seat`, and the
/// database's policies hide the rows once more.
fn routes(demo: bool) -> Routes {
    let routes = Routes::default().get_still("/livez", get(|| async { "alive" })).get_still("/readyz", get(ready));
    let routes = routes.get_still("/assets/{hash}/{name}", get(assets::show));
    let routes = signin::routes(routes, demo);
    let routes = parts::routes(routes, demo);
    let routes = mail::routes(routes);
    let routes = caseload::routes(routes);
    let routes = clients::routes(routes);
    let routes = comfort::routes(routes);
    let routes = safety_plan::routes(routes);
    let routes = steadying::routes(routes);
    let routes = reach::routes(routes);
    let routes = events::routes(routes);
    let routes = episodes::routes(routes);
    let routes = measures::routes(routes);
    let routes = wordings::routes(routes);
    let routes = askings::routes(routes);
    let routes = targets::routes(routes);
    let routes = presets::routes(routes);
    let routes = sessions::routes(routes);
    let routes = live::routes(routes);
    let routes = handover::routes(routes);
    let routes = practice::routes(routes);
    let routes = record::routes(routes);
    outcomes::routes(routes)
}

/// The list of routes with their rules, for tests.
#[must_use]
pub fn route_list() -> Vec<Route> {
    routes(true).list
}

/// Builds the portal; `relay`: by which the pages of a session send picture and voice.
pub fn build(parts: Parts, relay: Option<live::Relay>) -> (App, Router) {
    let Routes { still, open, members, care, list } = routes(parts.demo);
    let rooms = Arc::new(live::Rooms::default());
    let bell = live::bell(&rooms);
    let mut own = Extensions::new();
    own.insert(rooms);
    own.insert(Arc::new(live::Calls { relay }));
    let app = App::new(parts, Counts::of(list.iter().map(|route| route.path).collect()), bell, own);
    let members = members.merge(care.route_layer(from_fn_with_state(app.clone(), note_refused)));
    let router = open
        .merge(members.layer(from_fn(members_only)))
        .fallback(|| async { Error::NotFound })
        .layer(
            ServiceBuilder::new()
                .layer(from_fn(answer_in_time))
                .layer(from_fn_with_state(app.clone(), in_turn))
                .layer(from_fn_with_state(app.clone(), recognise))
                .layer(from_fn_with_state(app.clone(), security::same_origin))
                .layer(DefaultBodyLimit::max(MOST_FORM)),
        )
        .merge(still)
        // In one piece, the outermost first: each piece of its own is cloned whole for each request.
        .layer(
            ServiceBuilder::new()
                .layer(from_fn_with_state(app.clone(), observe::requests))
                .layer(CompressionLayer::new())
                .layer(from_fn_with_state(app.clone(), security::headers))
                .layer(from_fn_with_state(app.clone(), security::caller))
                .layer(from_fn(show_errors))
                .layer(CatchPanicLayer::custom(panicked)),
        )
        .with_state(app.clone());
    (app, router)
}

/// A fault in here is a page that says so, not a line that breaks off. What was said of it may hold what was read, so the log names
/// the place alone: see `log`.
fn panicked(_: Box<dyn std::any::Any + Send>) -> Response {
    Error::Inner("a handler panicked".into()).into_response()
}

async fn ready(State(database): State<Database>) -> StatusCode {
    if database.answers().await { StatusCode::OK } else { StatusCode::SERVICE_UNAVAILABLE }
}
