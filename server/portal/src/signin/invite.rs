//! Inviting members: from /members, and from the terminal for the first administrator.

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::{Connection, PgConnection};

use super::{Member, Role, queries};
use crate::app::App;
use crate::clock::World;
use crate::config::Origin;
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::ids::Token;
use crate::subject::Act;

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
const FOR_NEWCOMERS: TimeDelta = TimeDelta::hours(72);
/// How long a member has to open a link on another device of their own.
const FOR_ONESELF: TimeDelta = TimeDelta::hours(1);

impl Invitation {
    fn new(world: &World, origin: &Origin, lasts: TimeDelta) -> (Token, Self) {
        let token = Token::new(world);
        // A fragment stays in the browser: no server, proxy or log gets to see it (OWASP ASVS 5.0, 14.2.1).
        let link = format!("{}/enrol#{}", origin.text, token.reveal());
        (token, Self { link, until: world.now() + lasts })
    }
}

/// Invites somebody, as an administrator: for 72 hours.
///
/// # Errors
/// [`Error::Database`]: nobody was invited; also when `member` is no administrator.
pub async fn invite(app: &App, member: &Member, newcomer: &Newcomer) -> Result<Invitation, Error> {
    let (token, invitation) = Invitation::new(&app.world, &app.origin, FOR_NEWCOMERS);
    let mut tx = app.database.act(&member.subject, Act::new("member.invite")).await?;
    queries::invite(&mut tx, &token.hash(), None, &newcomer.name, &role_names(&newcomer.roles), invitation.until).await?;
    tx.commit().await?;
    Ok(invitation)
}

/// Invites a member to make a further passkey of their own on another device: for one hour.
pub(super) async fn invite_oneself(app: &App, member: &Member) -> Result<Invitation, Error> {
    let (token, invitation) = Invitation::new(&app.world, &app.origin, FOR_ONESELF);
    let mut tx = app.database.act(&member.subject, Act::new("passkey.invite").object(member.id)).await?;
    queries::invite(&mut tx, &token.hash(), Some(member.id), &member.name, &role_names(&member.roles), invitation.until).await?;
    tx.commit().await?;
    Ok(invitation)
}

/// Invites somebody as the database's owner: for 72 hours.
///
/// # Errors
/// When the database cannot be reached, has not been migrated, or is not this role's own.
pub async fn invite_as_owner(owner_url: &str, world: &World, origin: &Origin, newcomer: &Newcomer) -> Result<Invitation, sqlx::Error> {
    let (token, invitation) = Invitation::new(world, origin, FOR_NEWCOMERS);
    let mut connection = PgConnection::connect(owner_url).await?;
    let mut tx = connection.begin().await?;
    sqlx::query!(
        "SELECT set_config('leeward.kind', 'owner', true) AS kind, set_config('leeward.now', $1, true) AS now",
        world.now().to_rfc3339()
    )
    .fetch_one(&mut *tx)
    .await?;
    sqlx::query!("SELECT access.invite($1, NULL, $2, $3, $4)", token.hash(), newcomer.name, &role_names(&newcomer.roles), invitation.until)
        .execute(&mut *tx)
        .await?;
    sqlx::query!("SELECT access.audit('member.invite', NULL, NULL)").execute(&mut *tx).await?;
    tx.commit().await?;
    connection.close().await?;
    Ok(invitation)
}
