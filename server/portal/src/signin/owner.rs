//! What is done for members from the terminal of the server, as the database's owner: the first administrator is invited
//! like this, and it may be one of the two who replace a lost passkey.

use sqlx::{Connection, PgConnection, PgTransaction};
use uuid::Uuid;

use super::invite::{FOR_NEWCOMERS, FOR_ONESELF, Invitation, Newcomer, role_names};
use super::queries_owner as queries;
use crate::base::clock::World;
use crate::base::ids::{Token, new_id};
use crate::base::origin::Origin;

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
    queries::say_owner(&mut tx, &world.now().to_rfc3339()).await?;
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
    queries::invite(&mut tx, &token.hash(), &newcomer.name, &role_names(&newcomer.roles), invitation.until).await?;
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
    queries::ask_replacement(&mut tx, new_id(world), member).await?;
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
    let waiting = queries::replacement_of(&mut tx, member).await?.ok_or(OwnerError::NothingToAgree)?;
    queries::agree_replacement(&mut tx, waiting, &token.hash(), invitation.until).await?.ok_or(OwnerError::NothingToAgree)?;
    tx.commit().await?;
    connection.close().await?;
    Ok(invitation)
}

async fn called(tx: &mut PgTransaction<'_>, name: &str) -> Result<Uuid, OwnerError> {
    let found = queries::members_called(tx, name).await?;
    match found[..] {
        [one] => Ok(one),
        _ => Err(OwnerError::Name(found.len())),
    }
}
