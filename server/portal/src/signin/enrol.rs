//! Making a passkey: with an invitation, or a further one while signed in.

use askama::Template;
use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::header::{HeaderMap, SET_COOKIE};
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use uuid::Uuid;
use webauthn_rs::prelude::{CredentialID, Passkey, RegisterPublicKeyCredential};

use super::ceremony::{self, Ceremony};
use super::device::device;
use super::invite::role_names;
use super::open::{close_earlier, open};
use super::queries::{self, NewPasskey};
use crate::base::ids::{Token, new_id};
use crate::platform::App;
use crate::platform::Counted;
use crate::platform::Member;
use crate::platform::forms::{Lines, Need, Problems};
use crate::platform::page::{Frame, page};
use crate::store::error::{Error, Fault};
use crate::store::subject::{Act, Subject, Tx};

#[derive(Template)]
#[template(path = "signin/enrol.html")]
struct EnrolPage {
    frame: Frame,
    device: String,
}

/// `GET /enrol`: the same for every link, since the token stands in the fragment, which no server sees.
pub(super) async fn show(frame: Frame, headers: HeaderMap) -> Result<impl IntoResponse, Error> {
    page(&EnrolPage { frame, device: device(&headers) })
}

#[derive(Deserialize)]
struct Invited {
    token: String,
}

/// `POST /enrol/begin`: what to ask the device for. Does not spend the invitation.
pub(super) async fn begin(Counted(app): Counted, body: Bytes) -> Result<Response, Error> {
    let token = serde_json::from_slice::<Invited>(&body).ok().and_then(|invited| Token::parse(&invited.token));
    let Some(token) = token else { return Ok(not_open()) };
    let mut tx = app.database.look_to_sign_in(&Subject::Visitor).await?;
    let Some(invitee) = queries::open_invitation(&mut tx, &token.hash()).await? else { return Ok(not_open()) };
    let member = invitee.member.unwrap_or_else(|| new_id(&app.world));
    let have = credentials(&mut tx, member).await?;
    let (options, state) = ceremony::ask_for_passkey(&app, member, &invitee.name, have)?;
    let enrol = Ceremony::Enrol { invitation: token.hash(), joins: invitee.member.is_none(), member, state };
    let begun = ceremony::store(&app, &mut tx, &enrol, options).await?;
    tx.commit().await?;
    Ok(Json(begun).into_response())
}

#[derive(Deserialize)]
struct Made {
    ceremony: String,
    credential: RegisterPublicKeyCredential,
    label: String,
}

/// `POST /enrol/finish`: spends the invitation, keeps the passkey, and signs in: making a passkey has
/// checked who holds the device just as using one does.
pub(super) async fn finish(Counted(app): Counted, headers: HeaderMap, body: Bytes) -> Result<Response, Error> {
    let Ok(made) = serde_json::from_slice::<Made>(&body) else { return Ok(not_made()) };
    let Some(Ceremony::Enrol { invitation, joins, member, state }) = ceremony::spend(&app, &made.ceremony).await? else {
        return Ok(not_made());
    };
    let Some(passkey) = ceremony::made_passkey(&app, &made.credential, &state)? else { return Ok(not_made()) };
    let new = to_keep(&app, &passkey, &made.label, &headers)?;
    let act = if joins { Act::new("member.join").object(member) } else { Act::new("passkey.add").object(new.id) };
    let mut tx = app.database.act_to_sign_in(&Subject::Visitor, act).await?;
    match accept(&mut tx, &invitation, member, &new).await? {
        Accepted::Yes => {}
        Accepted::NotOpen => return Ok(not_open()),
        Accepted::Known => return Ok(known_here()),
    }
    tx.commit().await?;
    let Some(opened) = open(&app, member, &headers).await? else { return Ok(not_open()) };
    close_earlier(&app, &headers).await?;
    Ok(([(SET_COOKIE, opened.cookie)], Json(serde_json::json!({ "next": "/account" }))).into_response())
}

/// `POST /account/passkeys/begin`: a further passkey of one's own.
pub(super) async fn begin_further(member: Member, State(app): State<App>) -> Result<Response, Error> {
    // Before the device makes one that would not be kept.
    let mut asked = app.database.look(&member.subject).await?;
    if !queries::is_fresh(&mut asked).await? {
        return Err(Error::PasskeyNeeded);
    }
    asked.commit().await?;
    let mut tx = app.database.look_to_sign_in(&member.subject).await?;
    let have = credentials(&mut tx, member.id).await?;
    let (options, state) = ceremony::ask_for_passkey(&app, member.id, &member.name, have)?;
    let begun = ceremony::store(&app, &mut tx, &Ceremony::Add { member: member.id, state }, options).await?;
    tx.commit().await?;
    Ok(Json(begun).into_response())
}

/// `POST /account/passkeys/finish`.
pub(super) async fn finish_further(member: Member, State(app): State<App>, headers: HeaderMap, body: Bytes) -> Result<Response, Error> {
    let Ok(made) = serde_json::from_slice::<Made>(&body) else { return Ok(not_made()) };
    let state = match ceremony::spend(&app, &made.ceremony).await? {
        Some(Ceremony::Add { member: who, state }) if who == member.id => state,
        _ => return Ok(not_made()),
    };
    let Some(passkey) = ceremony::made_passkey(&app, &made.credential, &state)? else { return Ok(not_made()) };
    let new = to_keep(&app, &passkey, &made.label, &headers)?;
    let mut tx = app.database.act_to_sign_in(&member.subject, Act::new("passkey.add").object(new.id)).await?;
    // An invitation to oneself, spent as it is made: there is one way in for passkeys.
    let invitation = Token::new(&app.world).hash();
    let until = app.world.now() + chrono::TimeDelta::minutes(1);
    queries::invite(&mut tx, &invitation, Some(member.id), &member.name, &role_names(&member.roles), until).await?;
    match accept(&mut tx, &invitation, member.id, &new).await? {
        Accepted::Yes => {}
        Accepted::NotOpen => return Ok(not_made()),
        Accepted::Known => return Ok(known_here()),
    }
    tx.commit().await?;
    Ok(Json(serde_json::json!({ "next": "/account" })).into_response())
}

/// What became of an invitation and the passkey made for it.
enum Accepted {
    Yes,
    /// It is spent, withdrawn or too old.
    NotOpen,
    /// The passkey is kept here already, for whomever.
    Known,
}

async fn accept(tx: &mut Tx, invitation: &[u8], member: Uuid, new: &NewPasskey) -> Result<Accepted, Error> {
    match queries::accept_invitation(tx, invitation, member, new).await.map_err(Fault::from) {
        Ok(who) if who == Some(member) => Ok(Accepted::Yes),
        Ok(_) => Ok(Accepted::NotOpen),
        Err(fault) if fault.is_taken() => Ok(Accepted::Known),
        Err(fault) => Err(Error::Database(fault)),
    }
}

/// What a device holds already, so that it does not make a second passkey for the same person.
async fn credentials(tx: &mut Tx, member: Uuid) -> Result<Vec<CredentialID>, Error> {
    let rows = queries::passkeys_of(tx, member).await?;
    rows.into_iter().map(|(_, row)| ceremony::from_json(row).map(|passkey| passkey.cred_id().clone())).collect()
}

/// A passkey's row. A label that cannot be kept gives way to the device's name: refusing would waste the passkey.
fn to_keep(app: &App, passkey: &Passkey, label: &str, headers: &HeaderMap) -> Result<NewPasskey, Error> {
    let mut problems = Problems::default();
    let typed = problems.text("label", label, 60, Need::Required, Lines::One);
    let label = if problems.none() { typed } else { device(headers) };
    Ok(NewPasskey { id: new_id(&app.world), credential: passkey.cred_id().to_vec(), passkey: ceremony::as_json(passkey)?, label })
}

/// Unknown, spent, withdrawn and late links look the same.
fn not_open() -> Response {
    ceremony::refused(
        "This link does not work",
        "This link was used already, is too old, or is not complete. Ask the person who sent it for a new one.",
    )
}

fn known_here() -> Response {
    ceremony::refused(
        "This passkey is known here",
        "This device made a passkey here before, so no other was kept. Sign in with it, or use another device for this link.",
    )
}

fn not_made() -> Response {
    ceremony::refused(
        "No passkey was made",
        "The device's answer could not be used, and nothing was kept. Open the page again and try once more.",
    )
}
