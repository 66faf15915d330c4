//! Who is asking: members by passkey, clients by the seat that a link gave them.

mod account;
mod again;
mod ceremony;
mod closings;
mod demo;
mod device;
mod enrol;
mod entry;
mod invite;
mod link;
mod members;
mod news;
mod open;
mod owner;
mod queries;
mod replace;
mod roles;
mod refused;
mod seat;
mod way;

pub(crate) use news::{News, unread};
pub(crate) use queries::{ClientRow, clients_of, is_fresh};

pub use closings::{Closing, Closings};
pub use invite::{Invitation, Newcomer, invite};
pub use open::{close, vouch};
pub use owner::{OwnerError, agree_replacement_as_owner, ask_replacement_as_owner, invite_as_owner};
pub use refused::note_refused;
pub use seat::Seat;

use axum::extract::{FromRequestParts, Request, State};
use axum::http::header::{self, HeaderValue};
use axum::http::request::Parts;
use axum::http::{Extensions, HeaderMap};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use cookie::{Cookie, SameSite};
use uuid::Uuid;

use crate::app::{App, Repeats, Routes, Rule};
use crate::error::Error;
use crate::ids::Token;
use crate::subject::Subject;

/// What a member may do in the practice. One person can have several.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Treats clients.
    Clinician,
    /// Reviews the caseload, without clinical text.
    Lead,
    /// Invites and releases members.
    Administrator,
}

impl Role {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Clinician, Self::Lead, Self::Administrator];

    /// This role and no other, for a rule.
    #[must_use]
    pub const fn alone(self) -> &'static [Self] {
        match self {
            Self::Clinician => &[Self::Clinician],
            Self::Lead => &[Self::Lead],
            Self::Administrator => &[Self::Administrator],
        }
    }

    /// Its name in the database and in forms.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Clinician => "clinician",
            Self::Lead => "lead",
            Self::Administrator => "administrator",
        }
    }

    /// The role of that name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|role| role.name() == name)
    }
}

/// A signed-in member. Only the layer of the member routes makes one, so a handler that takes it
/// cannot be reached without a sign-in.
#[derive(Clone, Debug)]
pub struct Member {
    /// The member's id.
    pub id: Uuid,
    /// The name, as colleagues read it.
    pub name: String,
    /// At least one.
    pub roles: Vec<Role>,
    /// This sign-in's id: what a socket is closed by when it is revoked.
    pub signin: Uuid,
    /// How many passkeys the member has; two are advised.
    pub passkeys: i64,
    /// To act in the database as this member.
    pub subject: Subject,
}

impl Member {
    /// Whether the member has this role.
    #[must_use]
    pub fn has(&self, role: Role) -> bool {
        self.roles.contains(&role)
    }

    /// Goes on only with this role.
    ///
    /// # Errors
    /// [`Error::WrongRole`].
    pub fn needs(&self, role: Role) -> Result<(), Error> {
        if self.has(role) { Ok(()) } else { Err(Error::WrongRole) }
    }
}

impl<S: Send + Sync> FromRequestParts<S> for Member {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Error> {
        parts.extensions.get::<Self>().cloned().ok_or(Error::SignInNeeded)
    }
}

/// Finds out who is signed in, for the frame of a page; lets everybody through.
pub async fn recognise(State(app): State<App>, mut request: Request, next: Next) -> Response {
    let member = match member_of(&app, request.headers()).await {
        Ok(member) => Some(member),
        Err(Error::SignInNeeded) => None,
        Err(fault) => return fault.into_response(),
    };
    request.extensions_mut().extend(member.clone().map(extension).unwrap_or_default());
    let mut response = next.run(request).await;
    // The frame of an error page, which is made further out, names who is signed in.
    response.extensions_mut().extend(member.map(extension).unwrap_or_default());
    response
}

fn extension(member: Member) -> Extensions {
    let mut extensions = Extensions::new();
    extensions.insert(member);
    extensions
}

/// The layer of the member routes: nobody passes without a sign-in.
pub async fn members_only(request: Request, next: Next) -> Response {
    if request.extensions().get::<Member>().is_none() {
        return Error::SignInNeeded.into_response();
    }
    next.run(request).await
}

/// The layer of the routes for these roles, before anything of the request is read.
pub async fn needs_role(State(roles): State<&'static [Role]>, member: Member, request: Request, next: Next) -> Response {
    if roles.iter().any(|role| member.has(*role)) { next.run(request).await } else { Error::WrongRole.into_response() }
}

async fn member_of(app: &App, headers: &HeaderMap) -> Result<Member, Error> {
    let token = token_in(headers, &app.origin.member_cookie()).ok_or(Error::SignInNeeded)?;
    resolve(app, Subject::Member(token)).await
}

/// The member behind a sign-in's token; counts as activity.
///
/// # Errors
/// [`Error::SignInNeeded`] when it is unknown, idle for 30 minutes, 12 hours old, closed, or the member has left.
pub async fn resolve(app: &App, subject: Subject) -> Result<Member, Error> {
    let mut tx = app.database.look(&subject).await?;
    let row = sqlx::query!(
        r#"SELECT signin_id AS "signin!", member_id AS "id!", name AS "name!", roles AS "roles!", passkeys AS "passkeys!" FROM access.whoami()"#
    )
    .fetch_optional(&mut *tx)
    .await?
    .ok_or(Error::SignInNeeded)?;
    sqlx::query!("SELECT access.touch_signin()").execute(&mut *tx).await?;
    tx.commit().await?;
    let roles = row.roles.iter().filter_map(|name| Role::parse(name)).collect();
    Ok(Member { id: row.id, name: row.name, roles, signin: row.signin, passkeys: row.passkeys, subject })
}

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

/// Who may say who treats whom, and agree to a new passkey for somebody.
pub(crate) const MAY_HAND_OVER: &[Role] = &[Role::Administrator, Role::Lead];

/// A challenge is answered once, by a passkey that counts its uses (Web Authentication Level 3, 13.4.3, from memory).
const CEREMONY: Repeats = Repeats::Not("a challenge of a passkey ceremony is spent by its first answer");

/// Adds this feature's routes. The demo's sign-in is only there for the demo.
pub(crate) fn routes(routes: Routes, demo: bool) -> Routes {
    let routes = routes
        .get("/", Rule::Anybody, get(entry::start))
        .get("/signin", Rule::Anybody, get(entry::show))
        .get("/signin/done", Rule::Anybody, get(entry::done))
        .post_repeated("/signin/begin", Rule::Anybody, CEREMONY, post(entry::begin))
        .post_repeated("/signin/finish", Rule::Anybody, CEREMONY, post(entry::finish))
        .get("/signin/again", Rule::Member, get(again::show))
        .post_repeated("/signin/again/begin", Rule::Member, CEREMONY, post(again::begin))
        .post_repeated("/signin/again/finish", Rule::Member, CEREMONY, post(again::finish))
        .post_repeated("/signout", Rule::Anybody, Repeats::ByNature("who is signed out stays so"), post(entry::sign_out))
        .get("/enrol", Rule::Anybody, get(enrol::show))
        .post_repeated("/enrol/begin", Rule::Anybody, CEREMONY, post(enrol::begin))
        .post_repeated("/enrol/finish", Rule::Anybody, CEREMONY, post(enrol::finish));
    let routes = member_routes(routes);
    if !demo {
        return routes;
    }
    let signs_in = Repeats::Not("each sending signs in anew, as each try with a passkey does");
    routes.get("/demo/{role}", Rule::Anybody, get(demo::show)).post_repeated("/demo/{role}", Rule::Anybody, signs_in, post(demo::enter))
}

fn member_routes(routes: Routes) -> Routes {
    let administrator = Rule::Role(Role::Administrator);
    routes
        .get("/account", Rule::Member, get(account::show))
        .post_repeated("/account/passkeys/begin", Rule::Member, CEREMONY, post(enrol::begin_further))
        .post_repeated("/account/passkeys/finish", Rule::Member, CEREMONY, post(enrol::finish_further))
        .post("/account/passkeys/link", Rule::Member, post(account::link))
        .post("/account/passkeys/{passkey}/remove", Rule::Member, post(account::remove_passkey))
        .post("/account/signins/{signin}/revoke", Rule::Member, post(account::revoke))
        .get("/members", administrator, get(members::show))
        .post("/members/invite", administrator, post(members::invite_member))
        .post("/members/withdraw", administrator, post(members::withdraw))
        .get("/members/{member}/end", administrator, get(members::ask_end))
        .post("/members/{member}/end", administrator, post(members::end))
        .get("/members/{member}/roles", administrator, get(roles::show))
        .post("/members/{member}/roles", administrator, post(roles::change))
        .get("/members/{member}/passkey", administrator, get(replace::show))
        .post("/members/{member}/passkey", administrator, post(replace::ask))
        .post_repeated("/news/{news}/read", Rule::Member, Repeats::ByNature("what is read stays so"), post(news::read))
        .get("/replacements", Rule::Roles(MAY_HAND_OVER), get(replace::list))
        .post("/replacements/{replacement}/agree", Rule::Roles(MAY_HAND_OVER), post(replace::agree))
}
