//! Inviting members from /members, and oneself from another device.

use chrono::{DateTime, TimeDelta, Utc};
use serde::Deserialize;
use uuid::Uuid;

use super::queries;
use crate::base::ids::Token;
use crate::base::origin::Origin;
use crate::platform::App;
use crate::platform::forms::{Lines, Need, Problems};
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

/// Somebody to be invited.
pub struct Newcomer {
    /// The name, as colleagues will read it: 1 to 120 characters.
    pub name: String,
    /// At least one.
    pub roles: Vec<Role>,
}

impl Newcomer {
    /// Checks what was typed; `Err` holds the messages for `name` and `roles`.
    ///
    /// # Errors
    /// The messages beside the fields.
    pub fn check(name: &str, roles: Vec<Role>) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let name = problems.text("name", name, 120, Need::Required, Lines::One);
        if roles.is_empty() {
            problems.add("roles", "Choose at least one role.");
        }
        if problems.none() { Ok(Self { name, roles }) } else { Err(problems) }
    }
}

/// Roles as the database names them.
pub(super) fn role_names(roles: &[Role]) -> Vec<String> {
    roles.iter().map(|role| role.name().to_owned()).collect()
}

/// A link that makes one passkey, shown once.
pub struct Invitation {
    /// What to send.
    pub link: String,
    /// When it ends.
    pub until: DateTime<Utc>,
}

/// How long a newcomer has.
pub(super) const FOR_NEWCOMERS: TimeDelta = TimeDelta::hours(72);
/// How long a member has to open a link on another device of their own.
pub(super) const FOR_ONESELF: TimeDelta = TimeDelta::hours(1);

impl Invitation {
    pub(super) fn to(token: &Token, origin: &Origin, until: DateTime<Utc>) -> Self {
        // A fragment stays in the browser: no server, proxy or log gets to see it (OWASP ASVS 5.0, 14.2.1).
        Self { link: format!("{}/enrol#{}", origin.text, token.reveal()), until }
    }
}

/// The roles of a form: boxes that are there when ticked.
#[derive(Default, Deserialize)]
pub(super) struct RoleBoxes {
    pub(super) clinician: Option<String>,
    pub(super) lead: Option<String>,
    pub(super) administrator: Option<String>,
}

impl RoleBoxes {
    pub(super) fn roles(&self) -> Vec<Role> {
        let boxes = [(&self.clinician, Role::Clinician), (&self.lead, Role::Lead), (&self.administrator, Role::Administrator)];
        boxes.into_iter().filter(|(ticked, _)| ticked.is_some()).map(|(_, role)| role).collect()
    }
}

/// Whom an invitation is for: a newcomer, or the member who makes it.
struct Whom<'a> {
    member: Option<Uuid>,
    name: &'a str,
    roles: &'a [Role],
    lasts: TimeDelta,
}

/// Invites somebody, as an administrator: for 72 hours. Sent again, the same link comes back.
///
/// # Errors
/// [`Error::Database`]: nobody was invited; also when `member` is no administrator.
pub async fn invite(app: &App, member: &Member, newcomer: &Newcomer, once: &Once) -> Result<Invitation, Error> {
    let whom = Whom { member: None, name: &newcomer.name, roles: &newcomer.roles, lasts: FOR_NEWCOMERS };
    make(app, member, Act::new("member.invite"), &whom, once).await
}

/// Invites a member to make a further passkey of their own on another device: for one hour.
pub(super) async fn invite_oneself(app: &App, member: &Member, once: &Once) -> Result<Invitation, Error> {
    let whom = Whom { member: Some(member.id), name: &member.name, roles: &member.roles, lasts: FOR_ONESELF };
    make(app, member, Act::new("passkey.invite").object(member.id), &whom, once).await
}

async fn make(app: &App, member: &Member, act: Act, whom: &Whom<'_>, once: &Once) -> Result<Invitation, Error> {
    let token = Token::of(app.derived.bytes("invitation", &[member.id.as_bytes(), once.key.as_bytes()]));
    let mut tx = match app.database.act_once(&member.subject, act, once).await {
        Ok(tx) => tx,
        Err(Error::Before(answer)) => return Ok(Invitation::to(&token, &app.origin, until(answer)?)),
        Err(fault) => return Err(fault),
    };
    let ends = app.world.now() + whom.lasts;
    queries::invite(&mut tx, &token.hash(), whom.member, whom.name, &role_names(whom.roles), ends).await?;
    tx.commit(Answer::Json(serde_json::json!(ends))).await?;
    Ok(Invitation::to(&token, &app.origin, ends))
}

/// When the invitation of the first sending ends.
pub(super) fn until(answer: Answer) -> Result<DateTime<Utc>, Error> {
    let Answer::Json(value) = answer else { return Err(Error::Inconsistent("access.request_key.answer")) };
    serde_json::from_value(value).map_err(|_| Error::Inconsistent("access.request_key.answer"))
}
