//! Joining without an account: a link, and a code that is told by telephone.
//!
//! The link's token stands behind a `#`, which browsers send to nobody. Opening the page does
//! nothing; only *Join* does, so a scanner that follows links uses nothing up.

use axum::Json;
use axum::body::Bytes;
use axum::extract::{Extension, Path, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Response};
use chrono::TimeDelta;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{code, queries};
use crate::app::App;
use crate::error::Error;
use crate::ids::{Token, new_id, spoken_code};
use crate::security::Caller;
use crate::signin::{Member, token_cookie, token_in};
use crate::subject::{Act, Subject};

/// A link ends by itself after this time; the end of the session ends it earlier.
const LINK_LASTS: TimeDelta = TimeDelta::hours(4);

/// Makes a link for a session and its code; earlier links end. Returns both as text; neither is kept in clear.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` treats the session's client and the session is open.
pub async fn mint(app: &App, subject: &Subject, session: Uuid) -> Result<(String, String), Error> {
    let (token, digits) = (Token::new(&app.world), spoken_code(&app.world));
    let phc = code::seal(&app.world, digits.clone()).await?;
    let mut tx = app.database.act(subject, Act::new("link.make").object(session)).await?;
    let open = queries::open_session(&mut tx, session).await?;
    tx.concerns(open.client);
    let until = app.world.now() + LINK_LASTS;
    queries::mint_link(&mut tx, new_id(&app.world), &token.hash(), session, until, &phc).await?;
    tx.commit().await?;
    Ok((format!("{}/j#{}", app.origin.text, token.reveal()), digits))
}

/// Makes a new code for the link that is open.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` treats the session's client and the session is open;
/// [`Error::Conflict`] when there is no open link to make a code for.
pub async fn mint_code(app: &App, subject: &Subject, session: Uuid) -> Result<String, Error> {
    let digits = spoken_code(&app.world);
    let phc = code::seal(&app.world, digits.clone()).await?;
    let mut tx = app.database.act(subject, Act::new("code.make").object(session)).await?;
    let open = queries::open_session(&mut tx, session).await?;
    tx.concerns(open.client);
    if !queries::mint_code(&mut tx, session, &phc).await? {
        return Err(Error::Conflict("The link has ended. Make a new link; it comes with a code."));
    }
    tx.commit().await?;
    Ok(digits)
}

#[derive(Serialize)]
pub(super) struct Minted {
    link: String,
    code: String,
}

/// `POST /sessions/{session}/link`
pub(super) async fn make_link(State(app): State<App>, member: Member, Path(session): Path<Uuid>) -> Result<Json<Minted>, Error> {
    let (link, code) = mint(&app, &member.subject, session).await?;
    Ok(Json(Minted { link, code }))
}

#[derive(Serialize)]
pub(super) struct MintedCode {
    code: String,
}

/// `POST /sessions/{session}/code`
pub(super) async fn make_code(State(app): State<App>, member: Member, Path(session): Path<Uuid>) -> Result<Json<MintedCode>, Error> {
    let code = mint_code(&app, &member.subject, session).await?;
    Ok(Json(MintedCode { code }))
}

/// What the page of the link sends.
#[derive(Deserialize)]
struct Asked {
    link: String,
    code: String,
}

/// `POST /join`: all failures look the same and take as long.
pub(super) async fn join(
    State(app): State<App>,
    Extension(caller): Extension<Caller>,
    headers: HeaderMap,
    body: Bytes,
) -> Result<Response, Error> {
    app.limits.count(caller)?;
    let asked: Asked = super::read(&body)?;
    let hash = Token::parse(&asked.link).map_or_else(Vec::new, |token| token.hash());
    let mut tx = app.database.look(&Subject::Visitor).await?;
    let found = queries::try_code(&mut tx, &hash).await?;
    // Counted before the answer is known: a dropped connection gives no further try.
    tx.commit().await?;
    let (phc, link) = found.map_or((None, None), |found| (Some(found.phc), Some((found.link, found.session))));
    let right = code::matches(phc, asked.code.trim().to_owned()).await?;
    match link {
        Some((link, session)) if right => return take_seat(&app, &headers, link, session).await,
        Some((_, session)) => app.database.act(&Subject::Visitor, Act::new("code.wrong").object(session)).await?.commit().await?,
        None => {}
    }
    own_seat(&app, &headers).await
}

async fn take_seat(app: &App, headers: &HeaderMap, link: Uuid, session: Uuid) -> Result<Response, Error> {
    leave_own(app, headers).await?;
    let token = Token::new(&app.world);
    let mut tx = app.database.act(&Subject::Visitor, Act::new("seat.claim").object(session)).await?;
    let claim = queries::claim_seat(&mut tx, link, new_id(&app.world), &token.hash(), device(headers)).await?;
    let Some(claim) = claim else { return Ok(refused()) };
    tx.commit().await?;
    app.rooms.look_at_seats(session).await;
    let cookie = token_cookie(&app.origin.seat_cookie(), Some(&token))?;
    Ok(([(header::SET_COOKIE, cookie)], seat_answer(&claim)).into_response())
}

/// Somebody who joins once more on the same device takes their own place, not a second one.
async fn leave_own(app: &App, headers: &HeaderMap) -> Result<(), Error> {
    let Some(token) = token_in(headers, &app.origin.seat_cookie()) else { return Ok(()) };
    let mut tx = app.database.look(&Subject::Seat(token)).await?;
    queries::leave_seat(&mut tx).await?;
    tx.commit().await
}

/// A device that has asked for the seat, or has it, hears how that stands: its code is used up.
async fn own_seat(app: &App, headers: &HeaderMap) -> Result<Response, Error> {
    let Some(token) = token_in(headers, &app.origin.seat_cookie()) else { return Ok(refused()) };
    let mut tx = app.database.look(&Subject::Seat(token)).await?;
    let state = queries::seat_state(&mut tx).await?;
    tx.commit().await?;
    Ok(state.map_or_else(refused, |(_, state)| seat_answer(&state)))
}

fn seat_answer(state: &str) -> Response {
    let status = if state == "taken" { StatusCode::OK } else { StatusCode::CONFLICT };
    (status, Json(serde_json::json!({ "seat": state }))).into_response()
}

fn refused() -> Response {
    let words = serde_json::json!({
        "title": "That did not work",
        "advice": "Check the six digits and try again. If it still does not work, ask the person you are meeting for a new code.",
    });
    (StatusCode::FORBIDDEN, Json(words)).into_response()
}

/// What sort of device joins, for the clinician's eyes: its family, never its serial or version.
fn device(headers: &HeaderMap) -> &'static str {
    let agent = headers.get(header::USER_AGENT).and_then(|value| value.to_str().ok()).unwrap_or_default();
    [
        ("iPhone", "iPhone"),
        ("iPad", "iPad"),
        ("Android", "Android device"),
        ("CrOS", "Chromebook"),
        ("Windows", "Windows computer"),
        ("Macintosh", "Mac"),
        ("Linux", "Linux computer"),
    ]
    .into_iter()
    .find(|(mark, _)| agent.contains(mark))
    .map_or("device", |(_, name)| name)
}
