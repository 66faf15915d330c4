//! Who is signed in, and the layers that let nobody else pass.

use axum::extract::{FromRequestParts, Request, State};
use axum::http::request::Parts;
use axum::http::{Extensions, HeaderMap};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use super::cookie::token_in;
use super::queries;
use super::saved::saved;
use super::state::App;
use super::when::{Style, When};
use crate::base::named::named;
use crate::store::error::Error;
use crate::store::subject::Subject;

/// What a member may do in the practice. One person can have several.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Role {
    /// Treats clients.
    Clinician,
    /// Reviews the caseload, without clinical text.
    Lead,
    /// Invites and releases members.
    Administrator,
}

named!(Role);

impl Role {
    /// This role and no other, for a rule.
    #[must_use]
    pub const fn alone(self) -> &'static [Self] {
        match self {
            Self::Clinician => &[Self::Clinician],
            Self::Lead => &[Self::Lead],
            Self::Administrator => &[Self::Administrator],
        }
    }

    /// The page that the work of somebody with these roles starts from, and what a link to it says.
    #[must_use]
    pub fn start(roles: &[Self]) -> (&'static str, &'static str) {
        if roles.contains(&Self::Clinician) {
            ("/clients", "Go to your caseload")
        } else if roles.contains(&Self::Lead) {
            ("/practice", "Go to the practice in figures")
        } else {
            ("/members", "Go to the members")
        }
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
    /// The name of the practice.
    pub practice: String,
    /// The zone of the practice's times with its distance from UTC today, as its pages say it.
    pub zone: String,
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
    if let Some(member) = &member {
        match saved(&app, member, request.uri()).await {
            Ok(Some(saved)) => drop(request.extensions_mut().insert(saved)),
            Ok(None) => {}
            Err(fault) => return fault.into_response(),
        }
    }
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
    let row = queries::whoami(&mut tx).await?.ok_or(Error::SignInNeeded)?;
    queries::touch_signin(&mut tx).await?;
    tx.commit().await?;
    let roles = row.roles.iter().filter_map(|name| Role::parse(name)).collect();
    let zone = When::new(&row.zone, Style::default()).zone(&app.world.now());
    Ok(Member { id: row.id, name: row.name, roles, signin: row.signin, passkeys: row.passkeys, practice: row.practice, zone, subject })
}

/// Who may say who treats whom, and agree to a new passkey for somebody.
pub(crate) const MAY_HAND_OVER: &[Role] = &[Role::Administrator, Role::Lead];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_start_page_follows_the_first_role() {
        assert_eq!(Role::start(&[Role::Administrator, Role::Clinician]).0, "/clients");
        assert_eq!(Role::start(&[Role::Administrator, Role::Lead]).0, "/practice");
        assert_eq!(Role::start(&[Role::Administrator]).0, "/members");
    }
}
