//! Changing a member's roles. They bite with the next request; an open desk closes at once.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::invite::{RoleBoxes, role_names};
use super::queries;
use crate::platform::App;
use crate::platform::forms::{Id, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "signin/roles.html")]
struct RolesPage {
    frame: Frame,
    id: Uuid,
    name: String,
    roles: Vec<String>,
    me: bool,
    problem: &'static str,
}

impl RolesPage {
    fn has(&self, role: &str) -> bool {
        self.roles.iter().any(|have| have == role)
    }
}

/// `GET /members/{member}/roles`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(who): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("member.view").object(who)).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    tx.commit().await?;
    let shown = RolesPage { frame, id: who, name: row.name, roles: row.roles, me: who == member.id, problem: "" };
    Ok(page(&shown)?.into_response())
}

/// `POST /members/{member}/roles`.
pub(super) async fn change(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(who): Id,
    Keyed(once, typed): Keyed<RoleBoxes>,
) -> Result<Response, Error> {
    let roles = typed.roles();
    let mut tx = app.database.act_once(&member.subject, Act::new("member.roles").object(who), &once).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    let again = |problem| {
        let shown = RolesPage { frame, id: who, name: row.name, roles: role_names(&roles), me: who == member.id, problem };
        Ok((axum::http::StatusCode::UNPROCESSABLE_ENTITY, page(&shown)?).into_response())
    };
    if roles.is_empty() {
        return again("Choose at least one role. To take all of them away, end the membership.");
    }
    if who == member.id && !roles.contains(&Role::Administrator) {
        return again("Nobody takes their own administration away, so that one administrator always stays. Ask another administrator.");
    }
    if !queries::change_roles(&mut tx, who, &role_names(&roles)).await? {
        return Err(Error::NotFound);
    }
    let answer = tx.commit(Answer::see("/members")).await?;
    app.closings.look_again();
    Ok(answer.into_response())
}
