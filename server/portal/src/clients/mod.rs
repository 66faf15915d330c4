//! Clients: who a client is.

mod change;
mod form;
pub(crate) mod one_form;
mod queries;
mod rehearsal;

pub use change::archive_client;
pub(crate) use queries::{client as row, read_cautions};
pub use rehearsal::{is_rehearsal, my_rehearsal, rehearsal};
pub use strum::{EnumString, IntoStaticStr, VariantArray};

use axum::routing::{get, post};
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::base::named::named;
use crate::platform::when::When;
use crate::platform::{App, Routes, Rule};
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, PracticeKey, Private, SealError};
use crate::store::subject::{Act, Subject, Tx};

/// Who a client is and how to reach somebody. All of it is sealed; an empty text means "not given". As it is
/// read, each may turn out not to open.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Details<T = Private> {
    /// Full name; at most 120 characters, never empty.
    pub name: T,
    /// How to be addressed; at most 120 characters.
    pub addressed_as: T,
    /// Where to call back when the link drops; 3 to 15 digits.
    pub phone: T,
    /// Whom to call in an emergency; at most 120 characters.
    pub contact_name: T,
    /// That person's number; 3 to 15 digits.
    pub contact_phone: T,
    /// Where the client usually sits; at most 300 characters.
    pub usual_location: T,
}

impl Details<Opened> {
    /// All of them as texts, for a form or to be sealed again.
    ///
    /// # Errors
    /// [`SealError`] when one did not open.
    pub fn whole(self) -> Result<Details, SealError> {
        Ok(Details {
            name: self.name.text()?,
            addressed_as: self.addressed_as.text()?,
            phone: self.phone.text()?,
            contact_name: self.contact_name.text()?,
            contact_phone: self.contact_phone.text()?,
            usual_location: self.usual_location.text()?,
        })
    }
}

/// The answer to a question of the medical screen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Asked {
    /// Nobody asked yet.
    #[default]
    NotAsked,
    /// Asked; it is not so.
    No,
    /// Asked; it is so.
    Yes,
}

named!(Asked);

impl Asked {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::NotAsked => "not asked",
            Self::No => "no",
            Self::Yes => "yes",
        }
    }
}

/// The cautions that lock the moving dot.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cautions {
    /// Seizures, now or ever, or sensitivity to flashing light.
    pub seizures: Asked,
    /// An eye condition: pain, surgery, retinal disease, nystagmus.
    pub eye_condition: Asked,
}

impl Cautions {
    /// Whether the moving dot may not be used: what was not asked locks like a yes.
    #[must_use]
    pub fn eyes_locked(self) -> bool {
        self.seizures != Asked::No || self.eye_condition != Asked::No
    }

    /// The flags that stand beside a name, in words; none when both were asked and are not so.
    #[must_use]
    pub fn flags(self) -> Vec<String> {
        let open = [("Seizures", self.seizures), ("Eye condition", self.eye_condition)];
        let mut flags: Vec<String> =
            open.into_iter().filter(|(_, asked)| *asked != Asked::No).map(|(what, asked)| format!("{what}: {}", asked.words())).collect();
        if self.eyes_locked() {
            flags.push("Moving dot locked".to_owned());
        }
        flags
    }
}

/// What a client's record starts with.
#[derive(Clone, Debug, Default)]
pub struct NewClient {
    /// Who it is.
    pub details: Details,
    /// What was asked so far.
    pub cautions: Cautions,
}

/// The key that opens a client's sealed values; all of them are unreadable when it does not open itself.
///
/// # Errors
/// [`Error::NotFound`] when there is no such client, or the one who asks does not treat them.
pub async fn key(tx: &mut Tx, app: &App, client: Uuid) -> Result<ClientKey, Error> {
    let wrapped = queries::wrapped_key(tx, client).await?.ok_or(Error::NotFound)?;
    Ok(app.key.unwrap(client, &wrapped))
}

/// Opens a record: the one who asks treats the new client from now on. Returns the client's id once it is saved.
///
/// # Errors
/// [`Error::WrongRole`] for anybody but a clinician; [`Error::Database`]: nothing was kept.
pub async fn create(app: &App, subject: &Subject, new: NewClient) -> Result<Uuid, Error> {
    let client = new_id(&app.world);
    let mut tx = app.database.act(subject, Act::new("client.create").client(client)).await?;
    add(&mut tx, app, client, &new, Kind::Treated).await?;
    tx.commit().await?;
    Ok(client)
}

/// Whether a record is of somebody.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    /// Somebody in treatment.
    Treated,
    /// Nobody: see [`rehearsal()`].
    Rehearsal,
}

async fn add(tx: &mut Tx, app: &App, client: Uuid, new: &NewClient, kind: Kind) -> Result<(), Error> {
    let (key, wrapped) = app.key.new_client_key(&app.world, client)?;
    let sealed = seal(app, &key, client, 1, &new.details)?;
    let opened_on = When::in_practice(tx).await?.date(&app.world.now());
    queries::take_on(tx, new_id(&app.world), client, kind).await?;
    queries::insert_client(tx, client, opened_on, new.cautions).await?;
    queries::insert_key(tx, client, PracticeKey::ID, &wrapped).await?;
    Ok(queries::keep_details(tx, client, &sealed).await?)
}

/// Who the client is.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat them.
pub async fn details(tx: &mut Tx, app: &App, client: Uuid) -> Result<Details<Opened>, Error> {
    let key = key(tx, app, client).await?;
    let sealed = queries::details(tx, client).await?.ok_or(Error::NotFound)?;
    Ok(open(&key, client, &sealed))
}

/// The number of the client's record, for the page of a form that comes back; `None` when the database does not answer.
pub(crate) async fn number_again(app: &App, member: &Member, client: Uuid) -> Option<i32> {
    let mut tx = app.database.look(&member.subject).await.ok()?;
    queries::client(&mut tx, client).await.ok()?.map(|row| row.number)
}

/// What was asked about seizures and eyes; a room may ask too.
///
/// # Errors
/// [`Error::NotFound`] when the row is hidden from the one who asks.
pub async fn cautions(tx: &mut Tx, client: Uuid) -> Result<Cautions, Error> {
    queries::cautions(tx, client).await?.ok_or(Error::NotFound)
}

/// Locks the client's row until the end of the transaction: sessions are opened, and treatments ended, one at a time.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat them.
pub async fn lock(tx: &mut Tx, client: Uuid) -> Result<(), Error> {
    queries::lock(tx, client).await?.map(drop).ok_or(Error::NotFound)
}

/// Goes on only while the record is not archived. Locks the client's row until the end of the transaction,
/// so that numbers within the client are given one at a time and nothing is added while it is archived.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat them, [`Error::Conflict`] when it is archived.
pub async fn must_be_open(tx: &mut Tx, client: Uuid) -> Result<(), Error> {
    if queries::lock(tx, client).await?.ok_or(Error::NotFound)? {
        return Err(Error::Conflict("This client's record is archived, so nothing new can be added. Restore the record first."));
    }
    Ok(())
}

/// The details of one row at one version, sealed.
struct SealedDetails {
    name: Vec<u8>,
    addressed_as: Vec<u8>,
    phone: Vec<u8>,
    contact_name: Vec<u8>,
    contact_phone: Vec<u8>,
    usual_location: Vec<u8>,
    version: i32,
}

fn seal(app: &App, key: &ClientKey, client: Uuid, version: i32, details: &Details) -> Result<SealedDetails, Error> {
    let row = key.row(client, version);
    Ok(SealedDetails {
        name: row.seal(&app.world, Field::ClientName, &details.name)?,
        addressed_as: row.seal(&app.world, Field::ClientAddressedAs, &details.addressed_as)?,
        phone: row.seal(&app.world, Field::ClientPhone, &details.phone)?,
        contact_name: row.seal(&app.world, Field::ClientContactName, &details.contact_name)?,
        contact_phone: row.seal(&app.world, Field::ClientContactPhone, &details.contact_phone)?,
        usual_location: row.seal(&app.world, Field::ClientUsualLocation, &details.usual_location)?,
        version,
    })
}

fn open(key: &ClientKey, client: Uuid, sealed: &SealedDetails) -> Details<Opened> {
    let row = key.row(client, sealed.version);
    Details {
        name: row.open(Field::ClientName, &sealed.name),
        addressed_as: row.open(Field::ClientAddressedAs, &sealed.addressed_as),
        phone: row.open(Field::ClientPhone, &sealed.phone),
        contact_name: row.open(Field::ClientContactName, &sealed.contact_name),
        contact_phone: row.open(Field::ClientContactPhone, &sealed.contact_phone),
        usual_location: row.open(Field::ClientUsualLocation, &sealed.usual_location),
    }
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    let clinician = Rule::Role(Role::Clinician);
    routes
        .get("/clients/new", clinician, get(change::new_form))
        .post("/clients/new", clinician, post(change::save_new))
        .get("/clients/{client}/edit", Rule::Care, get(change::edit_form))
        .post("/clients/{client}/edit", Rule::Care, post(change::save_edit))
        .post("/clients/{client}/archive", Rule::Care, post(change::archive))
        .post("/clients/{client}/restore", Rule::Care, post(change::restore))
}
