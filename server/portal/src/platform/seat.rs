//! A client's seat in one session.

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use uuid::Uuid;

use super::cookie::token_in;
use super::queries;
use super::state::App;
use crate::store::error::Error;
use crate::store::subject::Subject;

/// Somebody who used a link and gave the right code, in a session that has not ended.
#[derive(Clone, Debug)]
pub struct Seat {
    /// The seat's id.
    pub id: Uuid,
    /// The session.
    pub session: Uuid,
    /// False while another device has the seat and the clinician has not moved it.
    pub taken: bool,
    /// To act in the database as this seat.
    pub subject: Subject,
}

impl FromRequestParts<App> for Seat {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Error> {
        let token = token_in(&parts.headers, &app.origin.seat_cookie()).ok_or(Error::SeatNeeded)?;
        let subject = Subject::Seat(token);
        let mut tx = app.database.look(&subject).await?;
        let row = queries::seat_state(&mut tx).await?.ok_or(Error::SeatNeeded)?;
        Ok(Self { id: row.id, session: row.session, taken: row.state == "taken", subject })
    }
}
