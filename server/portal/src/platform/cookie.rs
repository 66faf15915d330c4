//! Cookies that hold a token: of a sign-in, of a seat.

use axum::http::HeaderMap;
use axum::http::header::{self, HeaderValue};
use cookie::{Cookie, SameSite};

use crate::base::ids::Token;
use crate::store::error::Error;

/// The token in the cookie of this name.
pub(crate) fn token_in(headers: &HeaderMap, name: &str) -> Option<Token> {
    headers
        .get_all(header::COOKIE)
        .iter()
        .filter_map(|value| value.to_str().ok())
        .flat_map(Cookie::split_parse)
        .filter_map(Result::ok)
        .find(|cookie| cookie.name() == name)
        .and_then(|cookie| Token::parse(cookie.value()))
}

/// A cookie that holds a token, or with `None` one that makes the browser forget it.
///
/// # Errors
/// [`Error::Inner`] if the name cannot stand in a header.
pub(crate) fn token_cookie(name: &str, token: Option<&Token>) -> Result<HeaderValue, Error> {
    let mut cookie = Cookie::build((name, token.map(Token::reveal).unwrap_or_default()))
        .path("/")
        .secure(true)
        .http_only(true)
        .same_site(SameSite::Strict)
        .build();
    if token.is_none() {
        cookie.make_removal();
        // Always the same moment in the past: what is sent again is answered alike.
        cookie.set_expires(cookie::time::OffsetDateTime::UNIX_EPOCH);
    }
    HeaderValue::from_str(&cookie.to_string()).map_err(|fault| Error::Inner(format!("cookie: {fault}")))
}
