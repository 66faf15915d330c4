//! One's own sign-ins and passkeys.

use askama::Template;
use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::{IntoResponse, Redirect, Response};
use uuid::Uuid;

use super::device::device;
use super::entry::forget;
use super::invite::invite_oneself;
use super::link::LinkPage;
use super::open::close;
use super::when::moment;
use super::{Member, queries};
use crate::app::App;
use crate::error::Error;
use crate::page::{Frame, page};
use crate::subject::Act;

#[derive(Template)]
#[template(path = "signin/account.html")]
struct AccountPage {
    frame: Frame,
    name: String,
    roles: String,
    device: String,
    passkeys: Vec<Key>,
    signins: Vec<Line>,
}

struct Key {
    id: Uuid,
    label: String,
    kept: &'static str,
    added: String,
    used: String,
}

struct Line {
    id: Uuid,
    device: String,
    opened: String,
    seen: String,
    this: bool,
}

/// `GET /account`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, headers: HeaderMap) -> Result<impl IntoResponse, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("account.view")).await?;
    let zone = queries::zone(&mut tx).await?;
    let (passkeys, signins) = (queries::my_passkeys(&mut tx).await?, queries::my_signins(&mut tx).await?);
    tx.commit().await?;
    let key = |row: queries::PasskeyRow| Key {
        id: row.id,
        label: row.label,
        kept: if row.synced { "Synced by its maker" } else { "On one device" },
        added: moment(row.added_at, zone),
        used: row.used_at.map_or_else(|| "Not yet".to_owned(), |at| moment(at, zone)),
    };
    let line = |row: queries::SigninRow| Line {
        id: row.id,
        device: row.device,
        opened: moment(row.opened_at, zone),
        seen: moment(row.seen_at, zone),
        this: row.id == member.signin,
    };
    page(&AccountPage {
        frame,
        roles: member.roles.iter().map(|role| role.name()).collect::<Vec<_>>().join(", "),
        name: member.name.clone(),
        device: device(&headers),
        passkeys: passkeys.into_iter().map(key).collect(),
        signins: signins.into_iter().map(line).collect(),
    })
}

/// `POST /account/signins/{signin}/revoke`. The present one is a sign-out.
pub(super) async fn revoke(member: Member, State(app): State<App>, Path(signin): Path<Uuid>) -> Result<Response, Error> {
    if !close(&app, &member, signin).await? {
        return Err(Error::NotFound);
    }
    if signin == member.signin { forget(&app) } else { Ok(Redirect::to("/account").into_response()) }
}

/// `POST /account/passkeys/link`: answers with the link itself, since it is shown this once.
pub(super) async fn link(member: Member, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let invitation = invite_oneself(&app, &member).await?;
    LinkPage::show(&app, &member, frame, &member.name, invitation, "/account").await
}

/// `POST /account/passkeys/{passkey}/remove`.
pub(super) async fn remove_passkey(member: Member, State(app): State<App>, Path(passkey): Path<Uuid>) -> Result<Redirect, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("passkey.remove").object(passkey)).await?;
    if !queries::my_passkeys(&mut tx).await?.iter().any(|row| row.id == passkey) {
        return Err(Error::NotFound);
    }
    if !queries::remove_passkey(&mut tx, passkey).await? {
        return Err(Error::Conflict("This is your last passkey, so it stays. Add another one first."));
    }
    tx.commit().await?;
    Ok(Redirect::to("/account"))
}
