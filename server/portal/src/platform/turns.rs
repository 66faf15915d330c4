//! How many requests are worked on at once. Each takes some 30 kB while it is; the others wait for less, so that a flood of
//! requests does not become a flood of memory. What asks no database waits for nobody.

use axum::extract::{Request, State};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use super::state::App;
use crate::store::error::Error;
use crate::store::patience::TURN;

/// Worked on at once: nearly three times the connections to the database, for which they would wait in here.
pub(super) const AT_ONCE: usize = 64;

/// Goes on once it is the request's turn, its body having come.
pub async fn in_turn(State(app): State<App>, request: Request, next: Next) -> Response {
    match tokio::time::timeout(TURN, app.turns.acquire()).await {
        Ok(Ok(_turn)) => next.run(request).await,
        _ => Error::Busy("Many pages are asked for at once, so nothing of this was done. Try again in a moment.").into_response(),
    }
}
