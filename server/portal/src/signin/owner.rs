//! What is done for members from the terminal of the server, as the database's owner: the first administrator is invited
//! like this, and it may be one of the two who replace a lost passkey.

use sqlx::{Connection, PgConnection, PgTransaction};
use uuid::Uuid;

use super::invite::{FOR_NEWCOMERS, FOR_ONESELF, Invitation, Newcomer, role_names};
use crate::clock::World;
use crate::config::Origin;
use crate::ids::{Token, new_id};

/// Why a command of the owner's was not carried out.
#[derive(Debug, thiserror::Error)]
pub enum OwnerError {
    /// The database cannot be reached, has not been migrated, or is not this role's own.
    #[error(transparent)]
    Database(#[from] sqlx::Error),
    /// Nobody of that name is a member, or more than one is.
    #[error("{0} members are called that; the name has to be that of exactly one")]
    Name(usize),
    /// There is nothing to agree to, or the terminal asked for it itself while there is somebody else who could agree.
    #[error(
        "nothing waits for this agreement: an administrator asks first, under Members; what the terminal asked for itself, another \
         administrator or lead agrees to, under Lost passkeys"
    )]
    NothingToAgree,
}

async fn begin<'a>(connection: &'a mut PgConnection, world: &World) -> Result<PgTransaction<'a>, sqlx::Error> {
    let mut tx = connection.begin().await?;
    sqlx::query!(
        "SELECT set_config('leeward.kind', 'owner', true) AS kind, set_config('leeward.now', $1, true) AS now",
        world.now().to_rfc3339()
    )
    .fetch_one(&mut *tx)
    .await?;
    Ok(tx)
}

/// Invites somebody: for 72 hours.
///
/// # Errors
/// When the database cannot be reached, has not been migrated, or is not this role's own.
pub async fn invite_as_owner(owner_url: &str, world: &World, origin: &Origin, newcomer: &Newcomer) -> Result<Invitation, sqlx::Error> {
    let token = Token::new(world);
    let invitation = Invitation::to(&token, origin, world.now() + FOR_NEWCOMERS);
    let mut connection = PgConnection::connect(owner_url).await?;
    let mut tx = begin(&mut connection, world).await?;
    sqlx::query!("SELECT access.invite($1, NULL, $2, $3, $4)", token.hash(), newcomer.name, &role_names(&newcomer.roles), invitation.until)
        .execute(&mut *tx)
        .await?;
    sqlx::query!("SELECT access.audit('member.invite', NULL, NULL)").execute(&mut *tx).await?;
    tx.commit().await?;
    connection.close().await?;
    Ok(invitation)
}

/// Asks for a new passkey for the member of this name. Administrators and leads are told, and one of them has to agree.
///
/// # Errors
/// See [`OwnerError`].
pub async fn ask_replacement_as_owner(owner_url: &str, world: &World, name: &str) -> Result<(), OwnerError> {
    let mut connection = PgConnection::connect(owner_url).await?;
    let mut tx = begin(&mut connection, world).await?;
    let member = called(&mut tx, name).await?;
    sqlx::query!("SELECT access.ask_replacement($1, $2)", new_id(world), member).execute(&mut *tx).await?;
    sqlx::query!("SELECT access.audit('replacement.ask', NULL, $1)", member).execute(&mut *tx).await?;
    tx.commit().await?;
    Ok(connection.close().await?)
}

/// Agrees to a new passkey for the member of this name, for which somebody else has asked: for one hour.
///
/// # Errors
/// See [`OwnerError`].
pub async fn agree_replacement_as_owner(owner_url: &str, world: &World, origin: &Origin, name: &str) -> Result<Invitation, OwnerError> {
    let token = Token::new(world);
    let invitation = Invitation::to(&token, origin, world.now() + FOR_ONESELF);
    let mut connection = PgConnection::connect(owner_url).await?;
    let mut tx = begin(&mut connection, world).await?;
    let member = called(&mut tx, name).await?;
    let waiting = sqlx::query_scalar!(r#"SELECT id AS "id!" FROM access.replacements() WHERE member_id = $1"#, member);
    let waiting = waiting.fetch_optional(&mut *tx).await?.ok_or(OwnerError::NothingToAgree)?;
    let agreed = sqlx::query_scalar!("SELECT access.agree_replacement($1, $2, $3)", waiting, token.hash(), invitation.until);
    agreed.fetch_one(&mut *tx).await?.ok_or(OwnerError::NothingToAgree)?;
    sqlx::query!("SELECT access.audit('replacement.agree', NULL, $1)", waiting).execute(&mut *tx).await?;
    tx.commit().await?;
    connection.close().await?;
    Ok(invitation)
}

async fn called(tx: &mut PgTransaction<'_>, name: &str) -> Result<Uuid, OwnerError> {
    let found = sqlx::query_scalar!("SELECT id FROM access.member WHERE name = $1 AND left_at IS NULL", name).fetch_all(&mut **tx).await?;
    match found[..] {
        [one] => Ok(one),
        _ => Err(OwnerError::Name(found.len())),
    }
}
