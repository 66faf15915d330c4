//! The passkey, shown again: before what decides who gets at people's records, when it was not shown lately.

use askama::Template;
use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use webauthn_rs::prelude::PublicKeyCredential;

use super::ceremony::{self, Begun, Ceremony};
use super::entry::{Next, check};
use super::{queries, way};
use crate::platform::App;
use crate::platform::Counted;
use crate::platform::Member;
use crate::platform::forms::Asks;
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "signin/again.html")]
struct AgainPage {
    frame: Frame,
    next: String,
    /// A member of the demo has none.
    none: bool,
}

/// `GET /signin/again`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Asks(next): Asks<Next>) -> Result<impl IntoResponse, Error> {
    let mut tx = app.database.look(&member.subject).await?;
    let none = queries::my_passkeys(&mut tx).await?.is_empty();
    page(&AgainPage { frame, next: next.path().to_owned(), none })
}

/// `POST /signin/again/begin`: a challenge for a passkey of the member who is signed in.
pub(super) async fn begin(member: Member, Counted(app): Counted) -> Result<Json<Begun>, Error> {
    let (options, state) = ceremony::ask_to_sign_in(&app)?;
    let mut tx = app.database.look_to_sign_in(&member.subject).await?;
    let begun = ceremony::store(&app, &mut tx, &Ceremony::SignIn(state), options).await?;
    tx.commit().await?;
    Ok(Json(begun))
}

#[derive(Deserialize)]
struct Shown {
    ceremony: String,
    credential: PublicKeyCredential,
    next: Option<String>,
}

/// `POST /signin/again/finish`. Somebody else's passkey is refused: whoever is signed in has to be there.
pub(super) async fn finish(member: Member, Counted(app): Counted, body: Bytes) -> Result<Response, Error> {
    let Ok(shown) = serde_json::from_slice::<Shown>(&body) else { return Ok(refused()) };
    let Some(Ceremony::SignIn(state)) = ceremony::spend(&app, &shown.ceremony).await? else { return Ok(refused()) };
    let mut tx = app.database.act_to_sign_in(&member.subject, Act::new("passkey.show")).await?;
    let whose = check(&app, &mut tx, *state, &shown.credential).await?;
    if whose != Some(member.id) || !queries::passkey_shown(&mut tx, member.id).await? {
        return Ok(refused());
    }
    tx.commit().await?;
    let next = shown.next.as_deref().and_then(way::local_path).unwrap_or("/signin/done");
    Ok(Json(serde_json::json!({ "next": next })).into_response())
}

fn refused() -> Response {
    ceremony::refused(
        "That was not your passkey",
        "Nothing has changed. Use a passkey of the person who is signed in here, or sign out and sign in as yourself.",
    )
}
