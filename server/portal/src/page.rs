//! The frame around every page of records, and the pages that say what went wrong.

use std::convert::Infallible;

use askama::Template;
use axum::extract::{FromRequestParts, Request};
use axum::http::header;
use axum::http::request::Parts;
use axum::middleware::Next;
use axum::response::{Html, IntoResponse, Response};

use crate::assets::Assets;
use crate::error::{Error, Told};
use crate::security::Nonce;
use crate::signin::{Member, Role};

/// What `page.html` needs: extractable in every handler, whether or not somebody is signed in.
#[derive(Clone, Debug)]
pub struct Frame {
    /// The nonce of this response.
    pub nonce: String,
    /// The addresses of scripts and styles.
    pub assets: Assets,
    /// Who is signed in.
    pub member: Option<Member>,
}

impl Frame {
    fn of(extensions: &axum::http::Extensions) -> Self {
        Self {
            nonce: extensions.get::<Nonce>().map(|nonce| nonce.0.clone()).unwrap_or_default(),
            assets: Assets,
            member: extensions.get::<Member>().cloned(),
        }
    }

    /// Whether the signed-in member has a role, by its name in templates.
    #[must_use]
    pub fn is(&self, role: &str) -> bool {
        Role::parse(role).is_some_and(|role| self.member.as_ref().is_some_and(|member| member.has(role)))
    }
}

impl<S: Send + Sync> FromRequestParts<S> for Frame {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Self::of(&parts.extensions))
    }
}

/// Renders a template as a page.
///
/// # Errors
/// [`Error::Inner`] when the template fails.
pub fn page(template: &impl Template) -> Result<Html<String>, Error> {
    Ok(Html(template.render()?))
}

#[derive(Template)]
#[template(path = "error.html")]
struct ErrorPage {
    frame: Frame,
    told: Told,
    next: String,
}

/// Turns an [`Error`] that a handler returned into a page, or into JSON for a script.
pub async fn show_errors(request: Request, next: Next) -> Response {
    let frame = Frame::of(request.extensions());
    let wants_page =
        request.headers().get(header::ACCEPT).and_then(|value| value.to_str().ok()).is_some_and(|accept| accept.contains("text/html"));
    let here = request.uri().path_and_query().map(ToString::to_string).unwrap_or_default();
    let here = if request.method() == axum::http::Method::GET { here } else { String::new() };
    let response = next.run(request).await;
    let Some(told) = response.extensions().get::<Told>().copied() else { return response };
    if !wants_page {
        let body = serde_json::json!({ "title": told.title, "advice": told.advice });
        return (told.status, axum::Json(body)).into_response();
    }
    match (ErrorPage { frame, told, next: here }).render() {
        Ok(body) => (told.status, Html(body)).into_response(),
        Err(fault) => {
            tracing::error!(%fault, "the error page failed");
            (told.status, told.advice).into_response()
        }
    }
}
