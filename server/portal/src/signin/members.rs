//! Who belongs to the practice: for administrators.

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::invite::{Newcomer, RoleBoxes, invite};
use super::link::LinkPage;
use super::news::News;
use super::queries;
use crate::platform::App;
use crate::platform::forms::{Id, Keyed, Problems, Sent};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Tx};

#[derive(Template)]
#[template(path = "signin/members.html")]
struct MembersPage {
    frame: Frame,
    news: Vec<News>,
    members: Vec<MemberLine>,
    left: Vec<MemberLine>,
    invitations: Vec<Open>,
    typed: NewcomerForm,
    problems: Problems,
}

impl MembersPage {
    /// What a field of the form is called.
    fn label(&self, field: &str) -> &'static str {
        if field == "roles" { "Roles" } else { "Name" }
    }
}

struct MemberLine {
    id: Uuid,
    name: String,
    roles: String,
    joined: String,
    left: String,
    passkeys: i64,
    me: bool,
}

struct Open {
    hash: String,
    name: String,
    roles: String,
    until: String,
}

/// What the form to invite somebody holds.
#[derive(Default, Deserialize)]
pub(super) struct NewcomerForm {
    #[serde(default)]
    name: String,
    #[serde(flatten)]
    boxes: RoleBoxes,
}

/// `GET /members`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    list(&app, &member, frame, NewcomerForm::default(), Problems::default()).await
}

async fn list(app: &App, me: &Member, frame: Frame, typed: NewcomerForm, problems: Problems) -> Result<Response, Error> {
    let mut tx = app.database.act(&me.subject, Act::new("member.list")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = super::news::unread(&mut tx, when).await?;
    let (rows, invitations) = (queries::members(&mut tx).await?, queries::invitations(&mut tx).await?);
    tx.commit().await?;
    let line = |row: queries::MemberRow| MemberLine {
        me: row.id == me.id,
        id: row.id,
        name: row.name,
        roles: row.roles.join(", "),
        joined: when.weekday(&row.joined_at),
        left: row.left_at.map(|at| when.weekday(&at)).unwrap_or_default(),
        passkeys: row.passkeys,
    };
    let open = |row: queries::InvitationRow| Open {
        hash: hex::encode(&row.hash),
        name: row.name,
        roles: row.roles.join(", "),
        until: when.moment(&row.ends_at),
    };
    let (left, members) = rows.into_iter().map(line).partition(|line| !line.left.is_empty());
    let (status, frame) = if problems.none() { (StatusCode::OK, frame) } else { (StatusCode::UNPROCESSABLE_ENTITY, frame.not_saved()) };
    let invitations = invitations.into_iter().map(open).collect();
    Ok((status, page(&MembersPage { frame, news, members, left, invitations, typed, problems })?).into_response())
}

/// `POST /members/invite`: answers with the link itself, since it is shown this once.
pub(super) async fn invite_member(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<NewcomerForm>,
) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let newcomer = match Newcomer::check(&typed.name, typed.boxes.roles()) {
        Ok(newcomer) => newcomer,
        Err(problems) => return list(&app, &member, frame, typed, problems).await,
    };
    let invitation = invite(&app, &member, &newcomer, &once).await?;
    LinkPage::show(&app, &member, frame, &newcomer.name, invitation, "/members").await
}

/// Which invitation to withdraw, by the hash of its token in hexadecimal digits.
#[derive(Deserialize)]
pub(super) struct Which {
    invitation: String,
}

/// `POST /members/withdraw`.
pub(super) async fn withdraw(member: Member, State(app): State<App>, once: Once, Sent(which): Sent<Which>) -> Result<Answer, Error> {
    member.needs(Role::Administrator)?;
    let hash = bytes(&which.invitation).ok_or(Error::NotFound)?;
    let mut tx = app.database.act_once(&member.subject, Act::new("member.withdraw"), &once).await?;
    if !queries::withdraw_invitation(&mut tx, &hash).await? {
        return Err(Error::Conflict("This invitation was used or withdrawn meanwhile. Look at the list of members again."));
    }
    tx.commit(Answer::see("/members")).await
}

fn bytes(hex: &str) -> Option<Vec<u8>> {
    let pairs = hex.as_bytes().chunks(2).map(|pair| std::str::from_utf8(pair).ok().and_then(|pair| u8::from_str_radix(pair, 16).ok()));
    pairs.collect()
}

#[derive(Template)]
#[template(path = "signin/end.html")]
struct EndPage {
    frame: Frame,
    line: MemberLine,
    /// The records of clients whom nobody else treats.
    alone: Vec<i32>,
    problem: &'static str,
}

/// `GET /members/{member}/end`: what ending a membership does, before it is done.
pub(super) async fn ask_end(member: Member, State(app): State<App>, frame: Frame, Id(who): Id) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let mut tx = app.database.act(&member.subject, Act::new("member.view").object(who)).await?;
    let when = When::in_practice(&mut tx).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    let alone = alone(&mut tx, who).await?;
    tx.commit().await?;
    let shown = EndPage { line: end_line(row, &member, when), frame, alone, problem: "" };
    Ok(page(&shown)?.into_response())
}

/// The records of clients whom nobody but this member treats.
pub(super) async fn alone(tx: &mut Tx, who: Uuid) -> Result<Vec<i32>, Error> {
    Ok(queries::clients_of(tx, Some(who)).await?.into_iter().filter(|row| row.alone).map(|row| row.number).collect())
}

fn end_line(row: queries::MemberRow, me: &Member, when: When) -> MemberLine {
    let (roles, joined) = (row.roles.join(", "), when.weekday(&row.joined_at));
    MemberLine { me: row.id == me.id, id: row.id, name: row.name, roles, joined, left: String::new(), passkeys: row.passkeys }
}

/// Whether whoever ends a membership knows of the clients that it leaves without a clinician.
#[derive(Default, Deserialize)]
pub(super) struct Known {
    leaves: Option<String>,
}

/// `POST /members/{member}/end`: sign-ins and open sockets end with the membership.
pub(super) async fn end(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(who): Id,
    Keyed(once, known): Keyed<Known>,
) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    if who == member.id {
        return Err(Error::Conflict("Nobody ends their own membership. Ask another administrator."));
    }
    let mut tx = app.database.act_once(&member.subject, Act::new("member.end").object(who), &once).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    let alone = alone(&mut tx, who).await?;
    if !alone.is_empty() && known.leaves.is_none() {
        let when = When::in_practice(&mut tx).await?;
        let problem = "Hand these clients over first, or say that you know of them.";
        let shown = EndPage { line: end_line(row, &member, when), frame: frame.begins("Not done: "), alone, problem };
        return Ok((StatusCode::UNPROCESSABLE_ENTITY, page(&shown)?).into_response());
    }
    queries::end_membership(&mut tx, who).await?;
    let _told = app.revocations.follow();
    Ok(tx.commit(Answer::see("/members")).await?.into_response())
}
