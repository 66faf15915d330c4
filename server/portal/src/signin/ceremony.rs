//! The server's half of a passkey ceremony: what a browser is asked, and what is kept until it answers.
//!
//! W3C Web Authentication Level 3: a challenge is used once (section 13.4.3), kept at the server, for five minutes.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;
use webauthn_rs::prelude::{
    CredentialID, DiscoverableAuthentication, Passkey, PasskeyRegistration, RegisterPublicKeyCredential, Url, Webauthn, WebauthnBuilder,
    WebauthnError,
};

use super::queries;
use crate::base::ids::Token;
use crate::platform::App;
use crate::store::error::{Error, Told};
use crate::store::subject::{Subject, Tx};

/// A ceremony that waits for the browser's answer.
#[derive(Serialize, Deserialize)]
pub(super) enum Ceremony {
    /// Somebody signs in.
    SignIn(Box<DiscoverableAuthentication>),
    /// Somebody makes a passkey with an invitation, by its hash: to become a member, or as one already.
    Enrol { invitation: Vec<u8>, joins: bool, member: Uuid, state: Box<PasskeyRegistration> },
    /// A signed-in member makes a further passkey.
    Add { member: Uuid, state: Box<PasskeyRegistration> },
}

/// What a browser gets to begin with.
#[derive(Serialize)]
pub(super) struct Begun {
    /// To be sent back with the answer.
    ceremony: String,
    /// The options, as `PublicKeyCredential.parse…OptionsFromJSON` takes them.
    #[serde(rename = "publicKey")]
    options: Value,
}

/// Passkeys are bound to the host that people type.
pub(super) fn relying_party(app: &App) -> Result<Webauthn, Error> {
    let origin = Url::parse(&app.origin.text).map_err(|fault| Error::Inner(format!("origin: {fault}")))?;
    WebauthnBuilder::new(&app.origin.host, &origin).and_then(|builder| builder.rp_name("Leeward").build()).map_err(inner)
}

/// A fault of ours in a ceremony, never of the one who answers it.
fn inner(fault: WebauthnError) -> Error {
    Error::Inner(format!("passkeys: {fault}"))
}

/// Keeps a ceremony and hands out what the browser is asked.
pub(super) async fn store(app: &App, tx: &mut Tx, ceremony: &Ceremony, options: Value) -> Result<Begun, Error> {
    let token = Token::new(&app.world);
    let state = serde_json::to_value(ceremony).map_err(|fault| Error::Inner(format!("ceremony: {fault}")))?;
    queries::begin_ceremony(tx, &token.hash(), &state).await?;
    Ok(Begun { ceremony: token.reveal(), options })
}

/// Takes a kept ceremony out, whatever comes of it: each has one answer. `None` when there is none.
pub(super) async fn spend(app: &App, token: &str) -> Result<Option<Ceremony>, Error> {
    let Some(token) = Token::parse(token) else { return Ok(None) };
    let mut tx = app.database.look_to_sign_in(&Subject::Visitor).await?;
    let state = queries::end_ceremony(&mut tx, &token.hash()).await?;
    tx.commit().await?;
    state.map(|state| serde_json::from_value(state).map_err(|_| Error::Inconsistent("access.ceremony.state"))).transpose()
}

/// Asks for a passkey that a sign-in finds without a name, and that checks who holds the device.
pub(super) fn ask_for_passkey(
    app: &App,
    member: Uuid,
    name: &str,
    have: Vec<CredentialID>,
) -> Result<(Value, Box<PasskeyRegistration>), Error> {
    let (asked, state) = relying_party(app)?.start_passkey_registration(member, name, name, Some(have)).map_err(inner)?;
    let mut options = options(&asked.public_key)?;
    // The crate asks for "discouraged"; without a discoverable key nobody could sign in here.
    options["authenticatorSelection"]["residentKey"] = "required".into();
    options["authenticatorSelection"]["requireResidentKey"] = true.into();
    Ok((options, Box::new(state)))
}

/// Asks for any passkey of this portal.
pub(super) fn ask_to_sign_in(app: &App) -> Result<(Value, Box<DiscoverableAuthentication>), Error> {
    let (asked, state) = relying_party(app)?.start_discoverable_authentication().map_err(inner)?;
    Ok((options(&asked.public_key)?, Box::new(state)))
}

fn options(asked: &impl Serialize) -> Result<Value, Error> {
    serde_json::to_value(asked).map_err(|fault| Error::Inner(format!("ceremony: {fault}")))
}

/// The passkey in a browser's answer, or `None` when the answer does not hold.
pub(super) fn made_passkey(app: &App, answer: &RegisterPublicKeyCredential, state: &PasskeyRegistration) -> Result<Option<Passkey>, Error> {
    let found = relying_party(app)?.finish_passkey_registration(answer, state);
    if let Err(fault) = &found {
        tracing::warn!(%fault, "a new passkey was refused");
    }
    Ok(found.ok())
}

/// A passkey as its row keeps it.
pub(super) fn as_json(passkey: &Passkey) -> Result<Value, Error> {
    serde_json::to_value(passkey).map_err(|fault| Error::Inner(format!("passkey: {fault}")))
}

/// A passkey out of its row.
pub(super) fn from_json(passkey: Value) -> Result<Passkey, Error> {
    serde_json::from_value(passkey).map_err(|_| Error::Inconsistent("access.passkey.passkey"))
}

/// The one answer to everything that can be wrong with a ceremony, so that it tells a stranger nothing.
pub(super) fn refused(title: &'static str, advice: &'static str) -> Response {
    let told = Told { status: StatusCode::FORBIDDEN, title, advice, sign_in: false, passkey: false, client: false };
    let mut response = told.status.into_response();
    response.extensions_mut().insert(told);
    response
}
