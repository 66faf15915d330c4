//! Where the link of an asking leads. Opening the page does nothing: the token stays behind a `#`, which browsers send to nobody, until the
//! client taps. Who follows links to look at them uses nothing up; and the link opens again, on another device too.

use askama::Template;
use axum::body::Bytes;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Deserialize;

use super::hand_in::work;
use crate::base::ids::Token;
use crate::platform::assets::Assets;
use crate::platform::page::{Frame, page};
use crate::platform::{Counted, token_cookie};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject};
use crate::words;

#[derive(Template)]
#[template(path = "askings/open.html")]
struct OpenPage {
    nonce: String,
    assets: Assets,
    words: String,
}

/// A page from which no address is handed on.
fn quiet(template: &impl Template) -> Result<Response, Error> {
    Ok(([(header::REFERRER_POLICY, "no-referrer")], page(template)?).into_response())
}

/// `GET /q`: the same for every link, and for none.
pub(super) async fn landing(frame: Frame) -> Result<Response, Error> {
    quiet(&OpenPage { nonce: frame.nonce, assets: frame.assets, words: words::json(words::Page::Open) })
}

/// What the page of the link sends.
#[derive(Deserialize)]
struct Asked {
    link: String,
}

/// `POST /q`: gives the browser the errand, if the link holds.
pub(super) async fn open(Counted(app): Counted, body: Bytes) -> Result<Response, Error> {
    let asked: Asked = serde_json::from_slice(&body).map_err(|_| Error::ErrandNeeded)?;
    let token = Token::parse(&asked.link).ok_or(Error::ErrandNeeded)?;
    let mut tx = app.database.act(&Subject::Errand(token.clone()), Act::new("errand.open")).await?;
    work(&mut tx, &app).await?;
    tx.commit().await?;
    let cookie = token_cookie(&app.origin.errand_cookie(), Some(&token))?;
    Ok(([(header::SET_COOKIE, cookie)], StatusCode::NO_CONTENT).into_response())
}
