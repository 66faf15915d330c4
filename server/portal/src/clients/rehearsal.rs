//! The pretend client of a clinician, for rehearsing on one machine. No number of the practice counts it.

use uuid::Uuid;

use super::{Asked, Cautions, Details, Kind, NewClient, add, queries};
use crate::base::ids::new_id;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::seal::Private;
use crate::store::subject::{Act, Subject, Tx};

/// The pretend client of the clinician who asks; made when it is wanted first. Nothing of it is locked.
///
/// # Errors
/// [`Error::WrongRole`] for anybody but a clinician; [`Error::Database`]: nothing was kept.
pub async fn rehearsal(app: &App, subject: &Subject) -> Result<Uuid, Error> {
    let client = new_id(&app.world);
    let mut tx = app.database.act(subject, Act::new("rehearsal.prepare").client(client)).await?;
    if let Some(known) = queries::my_rehearsal_locked(&mut tx).await? {
        return Ok(known);
    }
    let details = Details { name: Private::new("Rehearsal"), ..Details::default() };
    let cautions = Cautions { seizures: Asked::No, eye_condition: Asked::No };
    add(&mut tx, app, client, &NewClient { details, cautions }, Kind::Rehearsal).await?;
    tx.commit().await?;
    Ok(client)
}

/// The pretend client of the one who asks, if it was made already.
///
/// # Errors
/// [`Error::Database`].
pub async fn my_rehearsal(tx: &mut Tx) -> Result<Option<Uuid>, Error> {
    Ok(queries::my_rehearsal(tx).await?)
}

/// Whether a client is a pretend one.
///
/// # Errors
/// [`Error::Database`].
pub async fn is_rehearsal(tx: &mut Tx, client: Uuid) -> Result<bool, Error> {
    Ok(queries::is_rehearsal(tx, client).await?)
}
