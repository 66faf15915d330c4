//! The one error of the portal: a variant for each outcome that a person can see.
//!
//! Handlers return it; the response body is written by `page::show_errors`, which knows whether a page
//! or JSON is wanted. The inner text of a fault goes to the log, never to the response.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use sqlx::postgres::PgDatabaseError;

use crate::store::once::Answer;
use crate::store::seal::SealError;

/// SQLSTATE of [`Error::PasskeyNeeded`]: `access.must_be_fresh()` raises it.
pub const PASSKEY_NEEDED: &str = "LW001";

/// What a person is told went wrong.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// Not there, or not theirs to see: the two look the same.
    #[error("not found")]
    NotFound,
    /// No sign-in, or it has ended.
    #[error("sign-in needed")]
    SignInNeeded,
    /// Signed in, but the passkey was not shown for ten minutes, and this asks for it.
    #[error("passkey needed")]
    PasskeyNeeded,
    /// No seat in a session, or it has ended.
    #[error("no seat")]
    SeatNeeded,
    /// No link of a client that still holds.
    #[error("no errand")]
    ErrandNeeded,
    /// Signed in, but this is not for their role.
    #[error("not for this role")]
    WrongRole,
    /// The request did not come from a page of this portal.
    #[error("foreign origin")]
    ForeignOrigin,
    /// The request cannot be read; the text says what to do.
    #[error("bad request: {0}")]
    BadRequest(&'static str),
    /// Somebody changed the row meanwhile; the text says what to do.
    #[error("conflict: {0}")]
    Conflict(&'static str),
    /// Too many tries.
    #[error("too many tries")]
    SlowDown,
    /// The portal is at its limit or about to stop; the text says what. Nothing was begun.
    #[error("busy: {0}")]
    Busy(&'static str),
    /// The database did not do it.
    #[error("database: {0}")]
    Database(Fault),
    /// It was sent to be kept, and no answer came: it is kept, or it is not.
    #[error("commit without an answer: {0}")]
    Unconfirmed(Fault),
    /// The same was sent before and is done; this is the answer it had. No fault of anybody's.
    #[error("sent before")]
    Before(Answer),
    /// Something else was sent and kept under the same key.
    #[error("another body under the same key")]
    OtherBody,
    /// A sealed value did not open.
    #[error("sealed value: {0}")]
    Seal(#[from] SealError),
    /// The database took a change that changed no row, where there must be one; the text names the table.
    #[error("nothing was written: {0}")]
    NothingWritten(&'static str),
    /// A row does not say what it must; the text names table and column.
    #[error("inconsistent row: {0}")]
    Inconsistent(&'static str),
    /// A template or another inner part failed; the text names it.
    #[error("inner fault: {0}")]
    Inner(String),
}

/// A fault of the database. As text it says of what sort it is and nothing else: Postgres repeats in its messages
/// what was in the row, and the log must never hold that.
pub struct Fault(sqlx::Error);

impl Fault {
    /// The SQLSTATE, where the database gave one: PostgreSQL, appendix A.
    #[must_use]
    pub fn code(&self) -> Option<String> {
        self.0.as_database_error()?.code().map(|code| code.into_owned())
    }

    /// Whether a row with the same unique value is there already: 23505 of PostgreSQL, appendix A.
    #[must_use]
    pub fn is_taken(&self) -> bool {
        self.code().as_deref() == Some("23505")
    }

    /// Whether the database's disk or memory is full: class 53, but for 53300, since connections become free again.
    #[must_use]
    pub fn is_out_of_room(&self) -> bool {
        self.code().is_some_and(|code| code.starts_with("53") && code != "53300")
    }
}

impl std::fmt::Display for Fault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match &self.0 {
            sqlx::Error::Database(fault) => {
                write!(f, "SQLSTATE {}", fault.code().unwrap_or_default())?;
                fault.table().map_or(Ok(()), |table| write!(f, " on {table}"))?;
                fault.constraint().map_or(Ok(()), |name| write!(f, ", {name}"))
            }
            sqlx::Error::Io(fault) => write!(f, "connection, {}", fault.kind()),
            sqlx::Error::PoolTimedOut => f.write_str("no connection became free in time"),
            sqlx::Error::PoolClosed => f.write_str("the portal stops"),
            sqlx::Error::RowNotFound => f.write_str("a row that must be there is not"),
            sqlx::Error::Tls(_) | sqlx::Error::Protocol(_) => f.write_str("connection, lost"),
            _ => f.write_str("an answer that this version does not understand"),
        }
    }
}

impl std::fmt::Debug for Fault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        std::fmt::Display::fmt(self, f)
    }
}

impl From<sqlx::Error> for Fault {
    fn from(fault: sqlx::Error) -> Self {
        Self(fault)
    }
}

impl From<sqlx::Error> for Error {
    fn from(fault: sqlx::Error) -> Self {
        if fault.as_database_error().and_then(|fault| fault.code()).is_some_and(|code| code == PASSKEY_NEEDED) {
            return Self::PasskeyNeeded;
        }
        if refused_by_a_function(&fault) {
            return Self::WrongRole;
        }
        Self::Database(fault.into())
    }
}

/// Whether a function of the `access` schema refused whoever asks: with SQLSTATE 42501, as for a missing grant, but raised by its own
/// statement. The pages ask for the role first, so it comes as far as this when a role was taken away at the same moment.
fn refused_by_a_function(fault: &sqlx::Error) -> bool {
    let fault = fault.as_database_error().and_then(|fault| fault.try_downcast_ref::<PgDatabaseError>());
    fault.is_some_and(|fault| fault.code() == "42501" && fault.routine() == Some("exec_stmt_raise"))
}

/// What the error page needs to know; carried in the response's extensions.
#[derive(Clone, Copy, Debug)]
pub struct Told {
    /// Its status.
    pub status: StatusCode,
    /// What happened, in a few words.
    pub title: &'static str,
    /// What is safe, and what to do.
    pub advice: &'static str,
    /// Whether signing in is the way on.
    pub sign_in: bool,
    /// Whether showing the passkey again is.
    pub passkey: bool,
    /// Whether a client may be reading: then the page has the client's frame and words.
    pub client: bool,
}

impl Error {
    fn told(&self) -> Told {
        let (status, title, advice) = match self {
            Self::NotFound => (
                StatusCode::NOT_FOUND,
                "Not found",
                "This page is not there, or it is not yours to see. Go back, or start from your caseload.",
            ),
            Self::SignInNeeded => (
                StatusCode::UNAUTHORIZED,
                "Please sign in",
                "Your sign-in has ended or was never there. Nothing is lost that was shown as saved.",
            ),
            Self::PasskeyNeeded => (
                StatusCode::UNAUTHORIZED,
                "Show your passkey again",
                "This decides who gets at people's records, and you have not shown your passkey for ten minutes. Nothing was done yet.",
            ),
            Self::SeatNeeded | Self::ErrandNeeded => (
                StatusCode::UNAUTHORIZED,
                "This page is not open",
                "Use the link you were sent. If it does not work, ask the person you are meeting for a new one.",
            ),
            Self::WrongRole => (StatusCode::FORBIDDEN, "Not for your role", "Ask an administrator of the practice if you need this."),
            Self::ForeignOrigin => (
                StatusCode::FORBIDDEN,
                "Sent from elsewhere",
                "This was not sent from a page of this portal, so nothing was done. Open the page here and try again.",
            ),
            Self::BadRequest(advice) => (StatusCode::BAD_REQUEST, "That could not be read", *advice),
            Self::Conflict(advice) => (StatusCode::CONFLICT, "Changed meanwhile", *advice),
            Self::SlowDown => (StatusCode::TOO_MANY_REQUESTS, "Too many tries", "Wait a minute, then try again."),
            Self::Database(fault) if fault.is_out_of_room() => (
                StatusCode::SERVICE_UNAVAILABLE,
                "The server is out of room",
                "The disk or memory of the database is full, so count this as not saved. What was shown as saved before is safe. \
                 Tell the administrator; once there is room again, send this again.",
            ),
            Self::Busy(advice) => (StatusCode::SERVICE_UNAVAILABLE, "Try again in a moment", *advice),
            Self::Database(_) => (
                StatusCode::SERVICE_UNAVAILABLE,
                "Not saved",
                "The database did not answer, so this was not saved. Try again in a moment: if an earlier sending got through, it is done once all the same.",
            ),
            Self::Unconfirmed(_) => (
                StatusCode::SERVICE_UNAVAILABLE,
                "Not known whether this was saved",
                "The database's answer was lost. Send it again: it is done once, whether or not the first sending got through.",
            ),
            Self::OtherBody => (
                StatusCode::CONFLICT,
                "Saved before, and not the same",
                "This form was saved when it was sent first. What it says now differs and was not saved: open the record, look, and enter the change there.",
            ),
            Self::Before(_) => (StatusCode::OK, "Done before", "This was done when it was sent first."),
            Self::Seal(_) => (
                StatusCode::INTERNAL_SERVER_ERROR,
                "This entry does not open",
                "A part of it does not open with the practice's key, so nothing was changed: saving would replace what could not be \
                 shown. Tell the administrator, who can put it back from a backup.",
            ),
            Self::NothingWritten(_) | Self::Inconsistent(_) | Self::Inner(_) => (
                StatusCode::INTERNAL_SERVER_ERROR,
                "Something went wrong",
                "Nothing of this was saved. Try again; if it comes back, tell the administrator.",
            ),
        };
        Told {
            status,
            title,
            advice,
            sign_in: matches!(self, Self::SignInNeeded),
            passkey: matches!(self, Self::PasskeyNeeded),
            client: matches!(self, Self::SeatNeeded | Self::ErrandNeeded),
        }
    }
}

impl IntoResponse for Error {
    fn into_response(self) -> Response {
        if let Self::Before(answer) = self {
            return answer.into_response();
        }
        let told = self.told();
        if told.status.is_server_error() {
            tracing::error!(fault = %self, "request failed");
        }
        let mut response = told.status.into_response();
        response.extensions_mut().insert(told);
        response
    }
}

impl From<askama::Error> for Error {
    fn from(fault: askama::Error) -> Self {
        Self::Inner(format!("template: {fault}"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fault_names_its_sort_and_nothing_that_was_sent() {
        let said = |fault: sqlx::Error| format!("{0} {0:?}", Error::from(fault));
        for fault in [
            sqlx::Error::Protocol("canary".into()),
            sqlx::Error::Io(std::io::Error::other("canary")),
            sqlx::Error::ColumnNotFound("canary".into()),
            sqlx::Error::Decode("canary".into()),
            sqlx::Error::Encode("canary".into()),
        ] {
            assert!(!said(fault).contains("canary"));
        }
    }
}
