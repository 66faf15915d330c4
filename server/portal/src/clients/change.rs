//! Opening, editing and archiving a record.

use axum::extract::State;
use axum::response::Response;
use uuid::Uuid;

use super::form::{ClientForm, FormPage};
use super::{Kind, NewClient, add, is_rehearsal, key, lock, number_again, open, queries, seal};
use crate::base::ids::new_id;
use crate::platform::App;
use crate::platform::forms::{Again, Id, Keyed, Problems, RowChange, SaveOutcome, answer, comes_back, version};
use crate::platform::page::Frame;
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::{Act, Subject, Tx};

pub(super) async fn new_form(member: Member, frame: Frame) -> Result<Response, Error> {
    member.needs(Role::Clinician)?;
    FormPage::show(frame, None, None, Again::first(ClientForm::of(&NewClient::default(), String::new())))
}

pub(super) async fn save_new(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<ClientForm>,
) -> Result<Response, Error> {
    member.needs(Role::Clinician)?;
    let tried = try_new(&member, &app, &once, &typed).await;
    answer(typed, tried, |again| FormPage::show(frame, None, None, again))
}

async fn try_new(member: &Member, app: &App, once: &Once, typed: &ClientForm) -> Result<SaveOutcome<ClientForm>, Error> {
    let (problems, new) = typed.check();
    if !problems.none() {
        return Ok(SaveOutcome::Refused(problems));
    }
    let client = new_id(&app.world);
    let mut tx = app.database.act_once(&member.subject, Act::new("client.create").client(client), once).await?;
    add(&mut tx, app, client, &new, Kind::Treated).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}")).await?))
}

pub(super) async fn edit_form(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    let typed = stored_form(&mut tx, &app, client).await?;
    let number = queries::client(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, Some(client), number, Again::first(typed))
}

pub(super) async fn save_edit(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<ClientForm>,
) -> Result<Response, Error> {
    let (problems, new) = typed.check();
    let tried = try_edit(&member, &app, client, &once, &typed, problems, &new).await;
    let number = if comes_back(&tried) { number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, Some(client), number, again))
}

async fn try_edit(
    member: &Member,
    app: &App,
    client: Uuid,
    once: &Once,
    typed: &ClientForm,
    problems: Problems,
    new: &NewClient,
) -> Result<SaveOutcome<ClientForm>, Error> {
    // Told whatever becomes of the commit: the room reads the record for itself.
    let _told = app.bell.follows_client(client);
    let mut tx = app.database.act_once(&member.subject, Act::new("client.change").client(client), once).await?;
    // Whose record it is comes before what is wrong with the form: to others it is not there.
    let key = key(&mut tx, app, client).await?;
    if !problems.none() {
        return Ok(SaveOutcome::Refused(problems));
    }
    if !queries::change_client(&mut tx, client, version(&typed.version)?, new.cautions).await? {
        return Ok(SaveOutcome::Changed(Box::new(stored_form(&mut tx, app, client).await?)));
    }
    let before = queries::details(&mut tx, client).await?.ok_or(Error::NotFound)?;
    // The form showed all of it, or nothing is replaced.
    open(&key, client, &before).whole()?;
    let next = before.version + 1;
    queries::keep_details(&mut tx, client, &seal(app, &key, client, next, &new.details)?).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}")).await?))
}

/// The form as the record now fills it.
async fn stored_form(tx: &mut Tx, app: &App, client: Uuid) -> Result<ClientForm, Error> {
    let key = key(tx, app, client).await?;
    let row = queries::client(tx, client).await?.ok_or(Error::NotFound)?;
    let sealed = queries::details(tx, client).await?.ok_or(Error::NotFound)?;
    Ok(ClientForm::of(&NewClient { details: open(&key, client, &sealed).whole()?, cautions: row.cautions }, row.version.to_string()))
}

pub(super) async fn archive(change: RowChange) -> Result<Answer, Error> {
    let RowChange { app, member, id: client, once, against } = change;
    let mut tx = app.database.act_once(&member.subject, Act::new("client.archive").client(client), &once).await?;
    key(&mut tx, &app, client).await?;
    archive_in(&mut tx, &app, client, against.version()?).await?;
    tx.commit(Answer::see(format!("/clients/{client}"))).await
}

/// Archives a client's record as it stood at `version`.
///
/// # Errors
/// [`Error::NotFound`] when the subject does not treat the client; [`Error::Conflict`] while a session is
/// open, or when the record has another version.
pub async fn archive_client(app: &App, subject: &Subject, client: Uuid, version: i32) -> Result<(), Error> {
    let mut tx = app.database.act(subject, Act::new("client.archive").client(client)).await?;
    key(&mut tx, app, client).await?;
    archive_in(&mut tx, app, client, version).await?;
    tx.commit().await
}

async fn archive_in(tx: &mut Tx, app: &App, client: Uuid, version: i32) -> Result<(), Error> {
    if is_rehearsal(tx, client).await? {
        return Err(Error::Conflict("This is the pretend client of your rehearsals, on no list, so it was not archived."));
    }
    // A client who hands a form in waits for this, or this for them: the flag that it raises is seen.
    lock(tx, client).await?;
    if queries::has_open_session(tx, client).await? {
        return Err(Error::Conflict("A session with this client is still open, so the record was not archived. End the session first."));
    }
    if queries::has_open_flag(tx, client).await? {
        return Err(Error::Conflict(
            "A form of this client raised a flag that is open, so the record was not archived. Write down what was done about it first.",
        ));
    }
    set_archived(tx, client, version, Some(app.world.now())).await
}

pub(super) async fn restore(change: RowChange) -> Result<Answer, Error> {
    let RowChange { app, member, id: client, once, against } = change;
    let mut tx = app.database.act_once(&member.subject, Act::new("client.restore").client(client), &once).await?;
    key(&mut tx, &app, client).await?;
    set_archived(&mut tx, client, against.version()?, None).await?;
    tx.commit(Answer::see(format!("/clients/{client}"))).await
}

async fn set_archived(tx: &mut Tx, client: Uuid, version: i32, at: Option<chrono::DateTime<chrono::Utc>>) -> Result<(), Error> {
    if !queries::archive(tx, client, version, at).await? {
        return Err(Error::Conflict("Somebody changed this record meanwhile, so nothing was done. Open the record again and look first."));
    }
    Ok(())
}
