//! Changing a member's roles. They bite with the next request; an open desk closes at once.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::invite::{RoleBoxes, role_names};
use super::members::alone;
use super::queries;
use crate::platform::App;
use crate::platform::forms::{Id, Keyed};
use crate::platform::page::{Frame, page};
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "signin/roles.html")]
struct RolesPage {
    frame: Frame,
    id: Uuid,
    name: String,
    /// As they are, and as they are ticked.
    were: Vec<String>,
    roles: Vec<String>,
    me: bool,
    /// The records of clients whom nobody else treats, when the role of a clinician is about to go.
    alone: Vec<i32>,
    problem: &'static str,
}

/// What the form holds.
#[derive(Deserialize)]
pub(super) struct RolesForm {
    /// The roles that the form showed, one space between them.
    #[serde(default)]
    were: String,
    /// Whether whoever takes the role of a clinician away knows of the clients that this leaves alone.
    leaves: Option<String>,
    #[serde(flatten)]
    boxes: RoleBoxes,
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
    let (were, me) = (row.roles.clone(), who == member.id);
    let shown = RolesPage { frame, id: who, name: row.name, were, roles: row.roles, me, alone: Vec::new(), problem: "" };
    Ok(page(&shown)?.into_response())
}

/// `POST /members/{member}/roles`.
pub(super) async fn change(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(who): Id,
    Keyed(once, typed): Keyed<RolesForm>,
) -> Result<Response, Error> {
    let roles = typed.boxes.roles();
    let were: Vec<String> = typed.were.split_whitespace().map(str::to_owned).collect();
    let mut tx = app.database.act_once(&member.subject, Act::new("member.roles").object(who), &once).await?;
    let row = queries::members(&mut tx).await?.into_iter().find(|row| row.id == who && row.left_at.is_none()).ok_or(Error::NotFound)?;
    let again = |alone, problem| {
        let shown = RolesPage {
            frame: frame.not_saved(),
            id: who,
            name: row.name,
            were: were.clone(),
            roles: role_names(&roles),
            me: who == member.id,
            alone,
            problem,
        };
        Ok((axum::http::StatusCode::UNPROCESSABLE_ENTITY, page(&shown)?).into_response())
    };
    if roles.is_empty() {
        return again(Vec::new(), "Choose at least one role. To take all of them away, end the membership.");
    }
    if who == member.id && !roles.contains(&Role::Administrator) {
        return again(
            Vec::new(),
            "Nobody takes their own administration away, so that one administrator always stays. Ask another administrator.",
        );
    }
    let alone = if roles.contains(&Role::Clinician) { Vec::new() } else { alone(&mut tx, who).await? };
    if !alone.is_empty() && typed.leaves.is_none() {
        return again(alone, "Hand these clients over first, or say that you know of them.");
    }
    if !queries::change_roles(&mut tx, who, &were, &role_names(&roles)).await? {
        return Err(Error::Conflict("Somebody else has changed these roles meanwhile. Open them again, look, and decide anew."));
    }
    let _told = app.revocations.follow();
    Ok(tx.saved("/members").await?.into_response())
}
