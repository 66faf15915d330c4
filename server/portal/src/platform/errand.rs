//! A client between sessions, by a link: for one purpose, until it ends.

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use uuid::Uuid;

use super::cookie::token_in;
use super::queries;
use super::state::App;
use crate::store::error::Error;
use crate::store::subject::Subject;

/// Somebody who opened a link that still holds.
#[derive(Clone, Debug)]
pub struct Errand {
    /// What was asked for.
    pub asking: Uuid,
    /// To act in the database on it.
    pub subject: Subject,
}

impl FromRequestParts<App> for Errand {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Error> {
        let token = token_in(&parts.headers, &app.origin.errand_cookie()).ok_or(Error::ErrandNeeded)?;
        let subject = Subject::Errand(token);
        let mut tx = app.database.look(&subject).await?;
        let asking = queries::errand(&mut tx).await?.ok_or(Error::ErrandNeeded)?;
        tx.commit().await?;
        Ok(Self { asking, subject })
    }
}
