//! Joining without an account: a link, and a code that is told by telephone.
//!
//! The link's token stands behind a `#`, which browsers send to nobody. Opening the page does
//! nothing; only *Join* does, so a scanner that follows links uses nothing up.

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Response};
use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{code, queries};
use crate::base::ids::{Token, new_id, spoken_code};
use crate::platform::App;
use crate::platform::Counted;
use crate::platform::forms::Id;
use crate::platform::{Member, token_cookie, token_in};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Subject, Tx};

/// A link ends by itself after this time; the end of the session ends it earlier.
const LINK_LASTS: TimeDelta = TimeDelta::hours(4);
/// So long a code holds, as `access.mint_code` says.
const CODE_LASTS: TimeDelta = TimeDelta::minutes(10);

/// Makes a link for a session and its code; earlier links end. Returns both as text; neither is kept in clear.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` treats the session's client and the session is open.
pub async fn mint(app: &App, subject: &Subject, session: Uuid) -> Result<(String, String), Error> {
    let secrets = Secrets::of(app, session, new_id(&app.world));
    let mut tx = app.database.act(subject, Act::new("link.make").object(session)).await?;
    secrets.keep_link(app, &mut tx, session).await?;
    tx.commit().await?;
    Ok((secrets.link(app), secrets.code))
}

/// A link and its code, made from the key of the request that asks for them: sent again, they come out the same, though
/// the database has nothing but their hashes.
struct Secrets {
    token: Token,
    code: String,
}

impl Secrets {
    fn of(app: &App, session: Uuid, key: Uuid) -> Self {
        let derived = |purpose| app.derived.bytes(purpose, &[session.as_bytes(), key.as_bytes()]);
        Self { token: Token::of(derived("link")), code: spoken_code(derived("code")) }
    }

    fn link(&self, app: &App) -> String {
        format!("{}/j#{}", app.origin.text, self.token.reveal())
    }

    async fn keep_link(&self, app: &App, tx: &mut Tx, session: Uuid) -> Result<(), Error> {
        let open = queries::open_session(tx, session).await?;
        tx.concerns(open.client);
        let phc = code::turn()?.seal(&app.world, self.code.clone()).await?;
        let until = app.world.now() + LINK_LASTS;
        queries::mint_link(tx, new_id(&app.world), &self.token.hash(), session, until, &phc).await
    }

    async fn keep_code(&self, app: &App, tx: &mut Tx, session: Uuid) -> Result<(), Error> {
        let open = queries::open_session(tx, session).await?;
        tx.concerns(open.client);
        let phc = code::turn()?.seal(&app.world, self.code.clone()).await?;
        if queries::mint_code(tx, session, &phc).await? {
            return Ok(());
        }
        Err(Error::Conflict("The link has ended. Make a new link; it comes with a code."))
    }
}

/// When the code that is made now ends, as the answer that is kept.
fn code_ends(app: &App) -> Answer {
    Answer::Json(serde_json::json!(app.world.now() + CODE_LASTS))
}

/// When the code ends that was made, now or when this was sent first: then what it made is made again.
fn or_before(kept: Result<Answer, Error>) -> Result<DateTime<Utc>, Error> {
    match kept {
        Ok(Answer::Json(until)) | Err(Error::Before(Answer::Json(until))) => {
            serde_json::from_value(until).map_err(|_| Error::Inconsistent("access.request_key.answer"))
        }
        Ok(_) | Err(Error::Before(_)) => Err(Error::Inconsistent("access.request_key.answer")),
        Err(fault) => Err(fault),
    }
}

#[derive(Serialize)]
pub(super) struct Minted {
    link: String,
    code: String,
    code_until: DateTime<Utc>,
}

/// `POST /sessions/{session}/link`
pub(super) async fn make_link(State(app): State<App>, member: Member, Id(session): Id, once: Once) -> Result<Json<Minted>, Error> {
    let secrets = Secrets::of(&app, session, once.key);
    let keep = async {
        let mut tx = app.database.act_once(&member.subject, Act::new("link.make").object(session), &once).await?;
        secrets.keep_link(&app, &mut tx, session).await?;
        tx.commit(code_ends(&app)).await
    };
    let code_until = or_before(keep.await)?;
    Ok(Json(Minted { link: secrets.link(&app), code: secrets.code, code_until }))
}

#[derive(Serialize)]
pub(super) struct MintedCode {
    code: String,
    code_until: DateTime<Utc>,
}

/// `POST /sessions/{session}/code`
pub(super) async fn make_code(State(app): State<App>, member: Member, Id(session): Id, once: Once) -> Result<Json<MintedCode>, Error> {
    let secrets = Secrets::of(&app, session, once.key);
    let keep = async {
        let mut tx = app.database.act_once(&member.subject, Act::new("code.make").object(session), &once).await?;
        secrets.keep_code(&app, &mut tx, session).await?;
        tx.commit(code_ends(&app)).await
    };
    let code_until = or_before(keep.await)?;
    Ok(Json(MintedCode { code: secrets.code, code_until }))
}

/// What the page of the link sends.
#[derive(Deserialize)]
struct Asked {
    link: String,
    code: String,
    /// The key of the page: sending the same again asks for the same seat.
    once: Uuid,
}

/// `POST /join`: all failures look the same. Only a link that exists has a code to hash, so the time tells whether a link
/// exists; to learn that, somebody would have to hit one of 2^256, and who has a link has nothing without its code.
pub(super) async fn join(Counted(app): Counted, headers: HeaderMap, body: Bytes) -> Result<Response, Error> {
    let asked: Asked = super::read(&body)?;
    let hash = Token::parse(&asked.link).map_or_else(Vec::new, |token| token.hash());
    let seat = Token::of(app.derived.bytes("seat", &[&hash, asked.once.as_bytes()]));
    let mut tx = app.database.look(&Subject::Visitor).await?;
    if let Some((session, state)) = queries::claimed_seat(&mut tx, &hash, &seat.hash()).await? {
        // Its answer was lost the first time.
        let _told = app.bell.follows(session);
        return if state == "closed" { Ok(refused()) } else { seat_given(&app, &seat, &state) };
    }
    let turn = code::turn()?;
    let found = queries::try_code(&mut tx, &hash).await?;
    // Counted before the answer is known: a dropped connection gives no further try.
    tx.commit().await?;
    if let Some(found) = found {
        if turn.matches(found.phc, asked.code.trim().to_owned()).await? {
            return take_seat(&app, &headers, found.link, found.session, &seat).await;
        }
        app.database.act(&Subject::Visitor, Act::new("code.wrong").object(found.session)).await?.commit().await?;
    }
    own_seat(&app, &headers).await
}

/// Somebody who joins once more on the same device takes their own place, not a second one.
async fn take_seat(app: &App, headers: &HeaderMap, link: Uuid, session: Uuid, seat: &Token) -> Result<Response, Error> {
    let _told = app.bell.follows(session);
    let earlier = token_in(headers, &app.origin.seat_cookie()).map(|token| token.hash());
    let mut tx = app.database.act(&Subject::Visitor, Act::new("seat.claim").object(session)).await?;
    let claim = queries::claim_seat(&mut tx, link, new_id(&app.world), &seat.hash(), device(headers), earlier.as_deref()).await?;
    let Some(claim) = claim else { return Ok(refused()) };
    tx.commit().await?;
    seat_given(app, seat, &claim)
}

fn seat_given(app: &App, seat: &Token, state: &str) -> Result<Response, Error> {
    let cookie = token_cookie(&app.origin.seat_cookie(), Some(seat))?;
    Ok(([(header::SET_COOKIE, cookie)], seat_answer(state)).into_response())
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
