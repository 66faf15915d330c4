//! A lost passkey is replaced: an administrator asks, somebody else agrees and passes the link on.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::invite::{self, Invitation};
use super::link::LinkPage;
use super::queries;
use crate::base::ids::{Token, new_id};
use crate::platform::App;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{MAY_HAND_OVER, Member};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "signin/replace.html")]
struct AskPage {
    frame: Frame,
    id: Uuid,
    name: String,
    me: bool,
}

/// `GET /members/{member}/passkey`: what it does, before it is asked for.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(who): Id) -> Result<impl IntoResponse, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("member.view").object(who)).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    tx.commit().await?;
    page(&AskPage { frame, id: who, name: row.name, me: who == member.id })
}

/// `POST /members/{member}/passkey`: asks; every other administrator and lead is told.
pub(super) async fn ask(member: Member, State(app): State<App>, Id(who): Id, once: Once) -> Result<Answer, Error> {
    if who == member.id {
        return Err(Error::Conflict("You are signed in, so your passkey is not lost. Add another one under your name."));
    }
    let mut tx = app.database.act_once(&member.subject, Act::new("replacement.ask").object(who), &once).await?;
    if !queries::members(&mut tx).await?.iter().any(|row| row.id == who && row.left_at.is_none()) {
        return Err(Error::NotFound);
    }
    queries::ask_replacement(&mut tx, new_id(&app.world), who).await?;
    tx.commit(Answer::see("/replacements")).await
}

#[derive(Template)]
#[template(path = "signin/replacements.html")]
struct WaitingPage {
    frame: Frame,
    waiting: Vec<Waiting>,
    may_agree: bool,
}

struct Waiting {
    id: Uuid,
    name: String,
    asked_by: String,
    asked: String,
    until: String,
    state: String,
}

/// `GET /replacements`: what waits for a second person, or for the passkey itself; to a member who may not agree, what is about them.
pub(super) async fn list(member: Member, State(app): State<App>, frame: Frame) -> Result<impl IntoResponse, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("member.list")).await?;
    let when = When::in_practice(&mut tx).await?;
    let rows = queries::replacements(&mut tx).await?;
    tx.commit().await?;
    let line = |row: queries::ReplacementRow| Waiting {
        id: row.id,
        name: row.name,
        asked_by: row.asked_by.unwrap_or_else(|| "the command line of the server".to_owned()),
        asked: when.moment(&row.asked_at),
        until: when.moment(&row.ends_at),
        state: row.state,
    };
    let may_agree = MAY_HAND_OVER.iter().any(|role| member.has(*role));
    page(&WaitingPage { frame, may_agree, waiting: rows.into_iter().map(line).collect() })
}

/// `POST /replacements/{replacement}/agree`: answers with the link, since it is shown this once.
pub(super) async fn agree(member: Member, State(app): State<App>, frame: Frame, Id(which): Id, once: Once) -> Result<Response, Error> {
    let token = Token::of(app.derived.bytes("replacement", &[member.id.as_bytes(), once.key.as_bytes()]));
    let act = Act::new("replacement.agree").object(which);
    let ends = match app.database.act_once(&member.subject, act, &once).await {
        Ok(mut tx) => {
            let ends = app.world.now() + invite::FOR_ONESELF;
            if queries::agree_replacement(&mut tx, which, &token.hash(), ends).await?.is_none() {
                return Err(Error::Conflict(
                    "There is nothing to agree to any more, or it is not yours: whoever asked, and whoever became a lead or an administrator after that, \
                     does not agree.",
                ));
            }
            tx.commit(Answer::Json(serde_json::json!(ends))).await?;
            ends
        }
        Err(Error::Before(answer)) => invite::until(answer)?,
        Err(fault) => return Err(fault),
    };
    let invitation = Invitation::to(&token, &app.origin, ends);
    LinkPage::show(&app, &member, frame, "the person whose passkey is lost", invitation, "/replacements").await
}

/// `POST /replacements/{replacement}/refuse`: a link that was made by it opens nothing any more.
pub(super) async fn refuse(member: Member, State(app): State<App>, Id(which): Id, once: Once) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("replacement.refuse").object(which), &once).await?;
    if !queries::refuse_replacement(&mut tx, which).await? {
        return Err(Error::NotFound);
    }
    tx.commit(Answer::see("/replacements")).await
}
