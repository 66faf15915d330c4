//! The sign-in page, its ceremony, and the way out.

use askama::Template;
use axum::Json;
use axum::body::Bytes;
use axum::extract::{Query, State};
use axum::http::header::{HeaderMap, SET_COOKIE};
use axum::response::{IntoResponse, Redirect, Response};
use serde::Deserialize;
use uuid::Uuid;
use webauthn_rs::prelude::{DiscoverableAuthentication, PublicKeyCredential};

use super::ceremony::{self, Begun, Ceremony};
use super::open::{Opening, close, close_earlier};
use super::{queries, way};
use crate::platform::App;
use crate::platform::page::{Frame, page};
use crate::platform::token_cookie;
use crate::platform::{Counted, Role};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// Where to go once signed in.
#[derive(Deserialize)]
pub(super) struct Next {
    pub(super) next: Option<String>,
}

impl Next {
    /// The path to carry through a page; empty for the start page.
    pub(super) fn path(&self) -> &str {
        self.next.as_deref().and_then(way::local_path).unwrap_or_default()
    }
}

/// `GET /`: everybody's own start.
pub(super) async fn start(frame: Frame) -> Redirect {
    Redirect::to(frame.member.as_ref().map_or("/signin", |member| Role::start(&member.roles).0))
}

#[derive(Template)]
#[template(path = "signin/entry.html")]
struct EntryPage {
    frame: Frame,
    next: String,
}

/// `GET /signin`. Who is signed in already goes on: a link from elsewhere arrives here without its cookie.
pub(super) async fn show(frame: Frame, Query(next): Query<Next>) -> Result<Response, Error> {
    if let Some(member) = &frame.member {
        return Ok(Redirect::to(&way::onward(next.next.as_deref(), member)).into_response());
    }
    Ok(page(&EntryPage { frame, next: next.path().to_owned() })?.into_response())
}

#[derive(Template)]
#[template(path = "signin/done.html")]
struct DonePage {
    frame: Frame,
}

/// `GET /signin/done`: where a sign-in in a second tab ends.
pub(super) async fn done(frame: Frame) -> Result<impl IntoResponse, Error> {
    page(&DonePage { frame })
}

/// `POST /signin/begin`: a challenge for any passkey of this portal.
pub(super) async fn begin(Counted(app): Counted) -> Result<Json<Begun>, Error> {
    let (options, state) = ceremony::ask_to_sign_in(&app)?;
    let mut tx = app.database.look_to_sign_in(&Subject::Visitor).await?;
    let begun = ceremony::store(&app, &mut tx, &Ceremony::SignIn(state), options).await?;
    tx.commit().await?;
    Ok(Json(begun))
}

#[derive(Deserialize)]
struct Answer {
    ceremony: String,
    credential: PublicKeyCredential,
    next: Option<String>,
}

/// `POST /signin/finish`: the browser's answer; a new sign-in, or the one refusal.
pub(super) async fn finish(Counted(app): Counted, headers: HeaderMap, body: Bytes) -> Result<Response, Error> {
    let Ok(answer) = serde_json::from_slice::<Answer>(&body) else { return refuse(&app).await };
    let Some(Ceremony::SignIn(state)) = ceremony::spend(&app, &answer.ceremony).await? else { return refuse(&app).await };
    let mut opening = Opening::begin(&app).await?;
    let Some(member) = check(&app, opening.tx(), *state, &answer.credential).await? else { return refuse(&app).await };
    let Some(opened) = opening.finish(&app, member, &headers).await? else { return refuse(&app).await };
    close_earlier(&app, &headers).await?;
    let next = way::onward(answer.next.as_deref(), &opened.member);
    Ok(([(SET_COOKIE, opened.cookie)], Json(serde_json::json!({ "next": next }))).into_response())
}

/// Whose passkey answered, with its counter and backup state kept as it now has them.
pub(super) async fn check(
    app: &App,
    tx: &mut Tx,
    state: DiscoverableAuthentication,
    answer: &PublicKeyCredential,
) -> Result<Option<Uuid>, Error> {
    let relying_party = ceremony::relying_party(app)?;
    let Ok((member, credential)) = relying_party.identify_discoverable_authentication(answer) else { return Ok(None) };
    for (id, row) in queries::passkeys_of(tx, member).await? {
        let mut passkey = ceremony::from_json(row)?;
        if passkey.cred_id().as_slice() != credential {
            continue;
        }
        return match relying_party.finish_discoverable_authentication_v2(answer, state, &passkey) {
            Ok(result) => {
                passkey.update_credential(&result);
                queries::passkey_used(tx, id, &ceremony::as_json(&passkey)?).await?;
                Ok(Some(member))
            }
            Err(fault) => {
                tracing::warn!(%fault, "a passkey was refused");
                Ok(None)
            }
        };
    }
    Ok(None)
}

/// The same words for a wrong, an unknown and a late answer, and for a member who has left.
async fn refuse(app: &App) -> Result<Response, Error> {
    app.database.act(&Subject::Visitor, Act::new("signin.refused")).await?.commit().await?;
    Ok(ceremony::refused(
        "Not signed in",
        "That passkey did not sign you in. Try again, or use another passkey of yours. If none works, ask an administrator of the practice.",
    ))
}

/// `POST /signout`: ends this sign-in, and makes the browser forget it even when it had ended before.
pub(super) async fn sign_out(State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    if let Some(member) = &frame.member {
        close(&app, member, member.signin).await?;
    }
    forget(&app)
}

/// Makes the browser forget the sign-in and leads back to the sign-in page.
pub(super) fn forget(app: &App) -> Result<Response, Error> {
    let cookie = token_cookie(&app.origin.member_cookie(), None)?;
    Ok(([(SET_COOKIE, cookie)], Redirect::to("/signin")).into_response())
}
