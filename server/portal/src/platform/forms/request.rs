//! Reading a request of the records: what cannot be read gets a page that says what to do, and an id
//! that is no id is a page that is not there.

use axum::Form;
use axum::extract::rejection::FormRejection;
use axum::extract::{FromRequest, FromRequestParts, Path, Query, Request};
use axum::http::request::Parts;
use serde::de::DeserializeOwned;
use uuid::Uuid;

use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;

/// What stands in the path: an id, or several parts. A path of another shape leads nowhere.
pub(crate) struct InPath<T>(pub(crate) T);

impl<S: Send + Sync, T: DeserializeOwned + Send> FromRequestParts<S> for InPath<T> {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &S) -> Result<Self, Error> {
        let Path(found) = Path::from_request_parts(parts, state).await.map_err(|_| Error::NotFound)?;
        Ok(Self(found))
    }
}

/// The id in the path.
pub(crate) struct Id(pub(crate) Uuid);

impl<S: Send + Sync> FromRequestParts<S> for Id {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &S) -> Result<Self, Error> {
        let InPath(id) = InPath::from_request_parts(parts, state).await?;
        Ok(Self(id))
    }
}

/// The fields of a form that was sent.
pub(crate) struct Sent<T>(pub(crate) T);

impl<S: Send + Sync, T: DeserializeOwned> FromRequest<S> for Sent<T> {
    type Rejection = Error;

    async fn from_request(request: Request, state: &S) -> Result<Self, Error> {
        match Form::from_request(request, state).await {
            Ok(Form(fields)) => Ok(Self(fields)),
            Err(FormRejection::BytesRejection(_)) => Err(Error::BadRequest("That was too much text for one form. Go back and shorten it.")),
            Err(_) => Err(Error::BadRequest("The form did not arrive whole, so nothing was saved. Go back and send it again.")),
        }
    }
}

/// The fields of a form that was sent, and the key that it was sent under.
pub(crate) struct Keyed<T>(pub(crate) Once, pub(crate) T);

impl<S: Send + Sync, T: DeserializeOwned> FromRequest<S> for Keyed<T> {
    type Rejection = Error;

    async fn from_request(request: Request, state: &S) -> Result<Self, Error> {
        let (mut parts, body) = request.into_parts();
        let once = Once::from_request_parts(&mut parts, state).await;
        // What was too long carries no key either: that it was too long comes first.
        let Sent(fields) = Sent::from_request(Request::from_parts(parts, body), state).await?;
        Ok(Self(once?, fields))
    }
}

/// What the address asks for behind its question mark.
pub(crate) struct Asks<T>(pub(crate) T);

impl<S: Send + Sync, T: DeserializeOwned> FromRequestParts<S> for Asks<T> {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &S) -> Result<Self, Error> {
        match Query::from_request_parts(parts, state).await {
            Ok(Query(fields)) => Ok(Self(fields)),
            Err(_) => Err(Error::BadRequest("This address is not complete. Start again from your caseload.")),
        }
    }
}

/// The version of the row that a form was made from.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(crate) struct Against {
    version: String,
}

impl Against {
    /// Reads it.
    ///
    /// # Errors
    /// [`Error::BadRequest`] when it is no version.
    pub(crate) fn version(&self) -> Result<i32, Error> {
        version(&self.version)
    }
}

/// A change of one row that needs no more than the row's version: who asks, of which row, under which key.
pub(crate) struct RowChange {
    pub(crate) app: App,
    pub(crate) member: Member,
    pub(crate) id: Uuid,
    pub(crate) once: Once,
    /// The version that the page showed. Read it last: to others the row is not there, whatever they send.
    pub(crate) against: Against,
}

impl FromRequest<App> for RowChange {
    type Rejection = Error;

    async fn from_request(request: Request, app: &App) -> Result<Self, Error> {
        let (mut parts, body) = request.into_parts();
        let member = Member::from_request_parts(&mut parts, app).await?;
        let Id(id) = Id::from_request_parts(&mut parts, app).await?;
        let Keyed(once, against) = Keyed::<Against>::from_request(Request::from_parts(parts, body), app).await?;
        Ok(Self { app: app.clone(), member, id, once, against })
    }
}

/// Reads the version of the row that a form was made from.
///
/// # Errors
/// [`Error::BadRequest`] when it is none.
pub(crate) fn version(typed: &str) -> Result<i32, Error> {
    typed.parse().map_err(|_| Error::BadRequest("The form did not arrive whole, so nothing was saved. Open it again and send it again."))
}
