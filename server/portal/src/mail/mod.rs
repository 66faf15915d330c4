//! Mail: where a member is told that something waits, and the telling. A message says nothing about anybody, not even that it is about a form: it
//! lies on servers that are not the practice's. Off unless the one who runs the portal gives it a server of mail.

mod address;
mod post;
mod queries;
mod tell;

use axum::routing::{get, post};

use crate::platform::{Routes, Rule};

pub use post::Post;
pub use tell::{keep_telling, tell};

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/account/mail", Rule::Member, get(address::show)).post("/account/mail", Rule::Member, post(address::save))
}
