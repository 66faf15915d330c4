//! The frame around every page of records, and the pages that say what went wrong.

use std::convert::Infallible;

use askama::Template;
use axum::body::{Body, Bytes};
use axum::extract::{FromRequestParts, Request};
use axum::http::header::{self, HeaderName};
use axum::http::request::Parts;
use axum::http::{Method, StatusCode};
use axum::middleware::Next;
use axum::response::{Html, IntoResponse, Response};
use uuid::Uuid;

use crate::platform::assets::Assets;
use crate::platform::observe::Number;
use crate::platform::saved::Saved;
use crate::platform::security::Nonce;
use crate::platform::{Member, Role};
use crate::store::error::{Error, Told};
use crate::store::once::{self, Once};
use crate::store::patience::{BODY, REQUEST, no_answer};

/// The largest request body, bytes.
pub const MOST_FORM: usize = 256 * 1024;
/// Fields of a form that is shown again; the longest has about forty.
const MOST_FIELDS: usize = 100;
/// Bytes of what was typed there; the closing list takes some 12,000 characters, of up to four bytes each.
const MOST_TYPED: usize = 64 * 1024;

/// What `page.html` needs: extractable in every handler, whether or not somebody is signed in.
#[derive(Clone, Debug)]
pub struct Frame {
    /// The nonce of this response.
    pub nonce: String,
    /// The addresses of scripts and styles.
    pub assets: Assets,
    /// Who is signed in.
    pub member: Option<Member>,
    /// When the form was kept that led to this page.
    pub saved: Option<String>,
    /// What the title begins with: what became of a form that comes back.
    pub title_begins: &'static str,
    /// The key of the forms on this page: a new one, or on a page that shows again what was sent, that one's.
    pub once: Uuid,
    /// Which of the main places the page belongs to, by the first part of its address.
    place: &'static str,
}

/// The main places, and how the addresses of their pages begin.
const PLACES: [(&str, &[&str]); 5] = [
    ("caseload", &["/clients", "/targets", "/sessions", "/rehearsal"]),
    // Administrators change the settings, and get there from the members.
    ("members", &["/members", "/handover", "/replacements", "/practice/settings", "/practice/wordings"]),
    ("practice", &["/practice"]),
    ("presets", &["/presets"]),
    ("account", &["/account"]),
];

/// How the addresses of a client's pages begin: nothing there tells what it is for, an error least of all.
const CLIENT_PAGES: [&str; 5] = ["j", "join", "stage", "left", "q"];

fn place_of(path: &str) -> &'static str {
    let found = PLACES.iter().find(|(_, begins)| begins.iter().any(|begin| path.starts_with(begin)));
    found.map_or("", |(place, _)| place)
}

impl Frame {
    fn of(extensions: &axum::http::Extensions, path: &str) -> Self {
        Self {
            place: place_of(path),
            nonce: extensions.get::<Nonce>().map(|nonce| nonce.0.clone()).unwrap_or_default(),
            assets: Assets,
            member: extensions.get::<Member>().cloned(),
            title_begins: "",
            saved: extensions.get::<Saved>().map(|saved| saved.0.clone()),
            once: extensions.get::<FormKey>().map(|key| key.0).unwrap_or_default(),
        }
    }

    /// The same frame for a page that shows again what was not saved: the tab says so too.
    #[must_use]
    pub fn not_saved(self) -> Self {
        self.begins("Not saved: ")
    }

    /// The same frame with a title that begins like this.
    #[must_use]
    pub fn begins(self, title_begins: &'static str) -> Self {
        Self { title_begins, ..self }
    }

    /// The way on from a page that is none: where this person's work is, and what the link says.
    #[must_use]
    pub fn way_on(&self) -> (&'static str, &'static str) {
        self.member.as_ref().map_or(("/signin", "Go to the sign-in"), |member| Role::start(&member.roles))
    }

    /// Whether the page belongs to this main place.
    #[must_use]
    pub fn at(&self, place: &str) -> bool {
        self.place == place
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
        Ok(Self::of(&parts.extensions, parts.uri.path()))
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
#[template(path = "platform/error.html")]
struct ErrorPage {
    frame: Frame,
    told: Told,
    here: String,
    /// What was typed into the form that could not be saved, to send it again.
    typed: Vec<(String, String)>,
    /// By which the administrator finds this in the log.
    number: String,
}

#[derive(Template)]
#[template(path = "platform/error_client.html")]
struct ClientErrorPage {
    nonce: String,
    assets: Assets,
    /// It is not the client's link: the same address may open in a moment.
    later: bool,
    /// Between sessions, where nobody is about to call.
    between: bool,
}

/// The key that the forms of a page carry; see `once`.
#[derive(Clone, Copy, Debug)]
pub struct FormKey(pub Uuid);

/// Answers within [`REQUEST`], whatever holds the rest up.
pub async fn answer_in_time(request: Request, next: Next) -> Response {
    let changes = !request.method().is_safe();
    match tokio::time::timeout(REQUEST, next.run(request)).await {
        Ok(response) => response,
        // How far it had come is not known.
        Err(_) if changes => Error::Unconfirmed(no_answer()).into_response(),
        Err(_) => Error::Database(no_answer()).into_response(),
    }
}

/// Turns an [`Error`] that a handler or a layer returned into a page, or into JSON for a script.
///
/// When a form was not saved because the database or the sign-in was gone, or something in here failed, the
/// page holds what was typed and offers to send it again.
pub async fn show_errors(request: Request, next: Next) -> Response {
    let number = request.extensions().get::<Number>().cloned().unwrap_or_default().0;
    let wants_page = says(&request, header::ACCEPT, "text/html");
    let here = request.uri().path_and_query().map(ToString::to_string).unwrap_or_default();
    let (request, sent) = if request.method() == Method::POST {
        match tokio::time::timeout(BODY, Box::pin(keep_sent(request))).await {
            Ok(kept) => kept,
            Err(_) => {
                return (StatusCode::REQUEST_TIMEOUT, "The form did not arrive in time, so nothing was saved. Send it again.")
                    .into_response();
            }
        }
    } else {
        (request, Bytes::new())
    };
    let mut frame = Frame::of(request.extensions(), request.uri().path());
    let client_page = is_clients(request.uri().path());
    let between = request.uri().path().starts_with("/q");
    let response = next.run(request).await;
    let Some(told) = response.extensions().get::<Told>().copied() else { return response };
    frame.member = response.extensions().get::<Member>().cloned();
    if !wants_page {
        let body = serde_json::json!({ "title": told.title, "advice": told.advice });
        return (told.status, axum::Json(body)).into_response();
    }
    let again = told.status.is_server_error() || told.status == StatusCode::UNAUTHORIZED;
    let typed = if again { typed(&sent) } else { Vec::new() };
    let rendered = if told.client || client_page {
        ClientErrorPage { nonce: frame.nonce, assets: frame.assets, later: told.status.is_server_error(), between }.render()
    } else {
        ErrorPage { frame, told, here, typed, number }.render()
    };
    match rendered {
        Ok(body) => (told.status, Html(body)).into_response(),
        Err(fault) => {
            tracing::error!(%fault, "the error page failed");
            (told.status, told.advice).into_response()
        }
    }
}

/// Whether a client may be reading, whatever went wrong.
fn is_clients(path: &str) -> bool {
    CLIENT_PAGES.contains(&path.split('/').nth(1).unwrap_or_default())
}

/// The fields of a form to be sent again; none of what no form of ours can have sent. Escaped, a page of them is a few times as
/// long, and anybody may ask for it.
fn typed(sent: &[u8]) -> Vec<(String, String)> {
    let fields: Vec<_> = form_urlencoded::parse(sent).into_owned().take(MOST_FIELDS + 1).collect();
    let long: usize = fields.iter().map(|(name, value)| name.len() + value.len()).sum();
    if fields.len() <= MOST_FIELDS && long <= MOST_TYPED { fields } else { Vec::new() }
}

fn says(request: &Request, name: HeaderName, what: &str) -> bool {
    request.headers().get(name).and_then(|value| value.to_str().ok()).is_some_and(|value| value.contains(what))
}

/// Reads what was sent and puts it back for the handler, with the key it was sent under. Something too large is
/// left to the handler's own limit. Returns the fields of a form alone.
async fn keep_sent(request: Request) -> (Request, Bytes) {
    let is_form = says(&request, header::CONTENT_TYPE, "application/x-www-form-urlencoded");
    let (mut parts, body) = request.into_parts();
    let Ok(bytes) = axum::body::to_bytes(body, MOST_FORM).await else {
        return (Request::from_parts(parts, Body::from(vec![b'x'; MOST_FORM + 1])), Bytes::new());
    };
    if is_form && let Some(key) = once::key_in(&bytes) {
        parts.extensions.insert(FormKey(key));
    }
    if let Some(once) = Once::read(parts.uri.path(), &parts.headers, is_form, &bytes) {
        parts.extensions.insert(once);
    }
    let sent = if is_form { bytes.clone() } else { Bytes::new() };
    (Request::from_parts(parts, Body::from(bytes)), sent)
}
