//! The client's pages: where the link leads, the stage, and the way out. They name nobody but, where the practice allows it, whom
//! the client meets; and that only on the stage, where link and code were right.

use askama::Template;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::room::check_evidence;
use leeward_core::wire::Evidence;
use serde::Deserialize;
use uuid::Uuid;

use super::queries_room::call_settings;
use super::{queries, queries_evidence};
use crate::platform::App;
use crate::platform::assets::Assets;
use crate::platform::page::{Frame, page};
use crate::platform::security::PERMISSIONS_OF_A_CALL;
use crate::platform::{Seat, token_cookie, token_in};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject};
use crate::words;

#[derive(Template)]
#[template(path = "live/join.html")]
struct JoinPage {
    nonce: String,
    assets: Assets,
    words: String,
    once: Uuid,
}

#[derive(Template)]
#[template(path = "live/stage.html")]
struct StagePage {
    nonce: String,
    assets: Assets,
    words: String,
    meets: Option<String>,
    rehearsal: bool,
    /// Whether picture and voice go through this portal's pages at all.
    calls: bool,
}

#[derive(Template)]
#[template(path = "live/left.html")]
struct LeftPage {
    nonce: String,
    assets: Assets,
}

/// `GET /j`: the same for every link, and for none.
pub(super) async fn link(frame: Frame) -> Result<Response, Error> {
    quiet(&JoinPage { nonce: frame.nonce, assets: frame.assets, words: words::json(words::Page::Join), once: frame.once })
}

/// `GET /stage`
pub(super) async fn show(seat: Seat, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let mut tx = app.database.look(&seat.subject).await?;
    let rehearsal = queries::seat_rehearses(&mut tx).await?;
    let meets = if seat.taken { queries::whom_we_meet(&mut tx).await? } else { None };
    let calls = app.calls().reach(call_settings(&mut tx).await?.0).is_some();
    tx.commit().await?;
    let words = words::json(if calls { words::Page::Calling } else { words::Page::Stage });
    let page = StagePage { nonce: frame.nonce, assets: frame.assets, words, meets, rehearsal, calls };
    Ok(([PERMISSIONS_OF_A_CALL], quiet(&page)?).into_response())
}

/// `GET /left`
pub(super) async fn left(frame: Frame) -> Result<Response, Error> {
    quiet(&LeftPage { nonce: frame.nonce, assets: frame.assets })
}

/// A page from which no address is handed on.
fn quiet(template: &impl Template) -> Result<Response, Error> {
    Ok(([(header::REFERRER_POLICY, "no-referrer")], page(template)?).into_response())
}

/// `POST /stage/leave`: gives the seat up and makes the browser forget it, and nothing else of it.
pub(super) async fn leave(State(app): State<App>, headers: HeaderMap) -> Result<Response, Error> {
    let token = token_in(&headers, &app.origin.seat_cookie()).ok_or(Error::SeatNeeded)?;
    let subject = Subject::Seat(token);
    let mut tx = app.database.look(&subject).await?;
    let state = queries::seat_state(&mut tx).await?;
    tx.commit().await?;
    if let Some((session, _)) = state {
        let _told = app.bell.follows(session);
        let mut tx = app.database.act(&subject, Act::new("seat.leave").object(session)).await?;
        queries::leave_seat(&mut tx).await?;
        tx.commit().await?;
    }
    let forget = token_cookie(&app.origin.seat_cookie(), None)?;
    Ok(([(header::SET_COOKIE, forget)], Redirect::to("/left")).into_response())
}

#[derive(Deserialize)]
struct HandedIn {
    facts: Vec<Evidence>,
}

/// Whether the asker had the seat of a session that has ended in the last 15 minutes, or has it still; or asked for it
/// until the end; or had it until it was removed.
pub(super) async fn seat_is_late(app: &App, headers: &HeaderMap) -> Result<bool, Error> {
    let Some(token) = token_in(headers, &app.origin.seat_cookie()) else { return Ok(false) };
    let mut tx = app.database.look(&Subject::Seat(token)).await?;
    Ok(queries::late_seat(&mut tx).await?.is_some() || queries::seat_is_over(&mut tx).await?)
}

/// `POST /stage/evidence`: what the screen showed, until 15 minutes after the end. Reads nothing.
pub(super) async fn hand_in(State(app): State<App>, headers: HeaderMap, body: Bytes) -> Result<StatusCode, Error> {
    let token = token_in(&headers, &app.origin.seat_cookie()).ok_or(Error::SeatNeeded)?;
    let subject = Subject::Seat(token);
    let mut tx = app.database.look(&subject).await?;
    let session = queries::late_seat(&mut tx).await?.ok_or(Error::SeatNeeded)?;
    tx.commit().await?;
    let HandedIn { facts } = super::read(&body)?;
    // Whose sets they are, the database judges.
    check_evidence(&facts).map_err(|_| Error::BadRequest("Send at most 20 facts at once, as a screen can show them."))?;
    let mut tx = app.database.act(&subject, Act::new("evidence.hand_in").object(session)).await?;
    queries_evidence::save(&mut tx, &facts, app.world.now()).await?;
    tx.commit().await?;
    Ok(StatusCode::NO_CONTENT)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stage(meets: Option<&str>) -> Result<String, askama::Error> {
        let meets = meets.map(str::to_owned);
        StagePage { nonce: String::new(), assets: Assets, words: words::json(words::Page::Stage), meets, rehearsal: false, calls: false }
            .render()
    }

    #[test]
    fn whom_the_client_meets_is_said_where_it_is_known_and_nowhere_else() -> Result<(), askama::Error> {
        let named = stage(Some("Ines <Tarrow>"))?;
        assert!(named.contains("<template id=\"meets\"><p>You will meet Ines &#60;Tarrow&#62;.</p></template>"), "{named}");
        assert!(!stage(None)?.contains("id=\"meets\""));
        Ok(())
    }
}
