//! Tries at a code, a link or a passkey: counted before anything of the request is read.

use axum::extract::FromRequestParts;
use axum::http::request::Parts;

use super::security::Caller;
use super::state::App;
use crate::store::error::Error;

/// The portal, for a request that counts as a try of its caller.
pub struct Counted(pub App);

impl FromRequestParts<App> for Counted {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Error> {
        let caller = parts.extensions.get::<Caller>().copied().ok_or(Error::Inner("a request without its caller".into()))?;
        app.limits.count(caller)?;
        Ok(Self(app.clone()))
    }
}
