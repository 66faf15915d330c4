//! One's own sign-ins and passkeys.

use askama::Template;
use axum::extract::State;
use axum::http::HeaderMap;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::device::device;
use super::entry::forget;
use super::invite::invite_oneself;
use super::link::LinkPage;
use super::open::close;
use super::queries;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "signin/account.html")]
struct AccountPage {
    frame: Frame,
    name: String,
    roles: String,
    device: String,
    /// Whether a passkey may be added or removed without showing one again.
    fresh: bool,
    passkeys: Vec<Key>,
    signins: Vec<SigninLine>,
}

struct Key {
    id: Uuid,
    label: String,
    kept: &'static str,
    added: String,
    used: String,
}

struct SigninLine {
    id: Uuid,
    device: String,
    opened: String,
    seen: String,
    this: bool,
}

/// `GET /account`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, headers: HeaderMap) -> Result<impl IntoResponse, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("account.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let (passkeys, signins) = (queries::my_passkeys(&mut tx).await?, queries::my_signins(&mut tx).await?);
    let fresh = queries::is_fresh(&mut tx).await?;
    tx.commit().await?;
    let key = |row: queries::PasskeyRow| Key {
        id: row.id,
        label: row.label,
        kept: if row.synced { "Synced by its maker" } else { "On one device" },
        added: when.moment(&row.added_at),
        used: row.used_at.map_or_else(|| "Not yet".to_owned(), |at| when.moment(&at)),
    };
    let line = |row: queries::SigninRow| SigninLine {
        id: row.id,
        device: row.device,
        opened: when.moment(&row.opened_at),
        seen: when.moment(&row.seen_at),
        this: row.id == member.signin,
    };
    page(&AccountPage {
        frame,
        fresh,
        roles: member.roles.iter().map(|role| role.name()).collect::<Vec<_>>().join(", "),
        name: member.name.clone(),
        device: device(&headers),
        passkeys: passkeys.into_iter().map(key).collect(),
        signins: signins.into_iter().map(line).collect(),
    })
}

/// `POST /account/signins/{signin}/revoke`. The present one is a sign-out.
pub(super) async fn revoke(member: Member, State(app): State<App>, Id(signin): Id, once: Once) -> Result<Response, Error> {
    if signin == member.signin {
        close(&app, &member, signin).await?;
        return forget(&app);
    }
    let mut tx = app.database.act_once(&member.subject, Act::new("signin.close").object(signin), &once).await?;
    if !queries::close_signin(&mut tx, signin).await? {
        return Err(Error::NotFound);
    }
    let _told = app.revocations.follow();
    Ok(tx.commit(Answer::see("/account")).await?.into_response())
}

/// `POST /account/passkeys/link`: answers with the link itself, since it is shown this once.
pub(super) async fn link(member: Member, State(app): State<App>, frame: Frame, once: Once) -> Result<Response, Error> {
    let invitation = invite_oneself(&app, &member, &once).await?;
    LinkPage::show(&app, &member, frame, &member.name, invitation, "/account").await
}

/// `POST /account/passkeys/{passkey}/remove`.
pub(super) async fn remove_passkey(member: Member, State(app): State<App>, Id(passkey): Id, once: Once) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("passkey.remove").object(passkey), &once).await?;
    if !queries::remove_passkey(&mut tx, passkey).await? {
        let mine = queries::my_passkeys(&mut tx).await?.iter().any(|row| row.id == passkey);
        return Err(if mine { Error::Conflict("This is your last passkey, so it stays. Add another one first.") } else { Error::NotFound });
    }
    tx.commit(Answer::see("/account")).await
}
