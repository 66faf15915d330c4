//! What a client's errand does: keeps a draft, hands a form in, declines.

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use chrono::{DateTime, Utc};
use leeward_core::measures::Measure;
use leeward_core::measures::wording::Wording;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::queries_errand::{self as queries, FormRow};
use super::{Closed, Draft, Given, ONLY_VERSION};
use crate::base::ids::new_id;
use crate::measures::{Handed, Sheet, hand_in, has_event};
use crate::platform::{App, Errand};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private};
use crate::store::subject::{Act, Subject, Tx};

/// All that an errand is for.
pub(super) struct Work {
    pub(super) from_at: DateTime<Utc>,
    event: Opened,
    pub(super) closed: Option<Closed>,
    pub(super) forms: Vec<Form>,
    key: ClientKey,
}

impl Work {
    /// The next form that can be filled in; `None`: none, or the asking is closed.
    pub(super) fn next(&self) -> Option<&Form> {
        self.forms.iter().find(|form| self.closed.is_none() && !form.handed_in && form.wording.is_some())
    }

    /// The event that `measure` is answered about; nothing where it asks about none.
    ///
    /// # Errors
    /// [`Error::Seal`] when it does not open: answers about an event that nobody read would be about another one.
    pub(super) fn event_of(&self, measure: Measure) -> Result<Private, Error> {
        if has_event(measure) { Ok(self.event.clone().text()?) } else { Ok(Private::default()) }
    }
}

/// One form of it.
pub(super) struct Form {
    pub(super) measure: Measure,
    /// `None`: the practice has ended its wording meanwhile.
    pub(super) wording: Option<(Uuid, Wording)>,
    pub(super) handed_in: bool,
    /// What is filled in so far, and its version; 0: nothing was kept yet.
    pub(super) draft: Draft,
    pub(super) draft_version: i32,
    draft_id: Uuid,
    /// The page that wrote it last, and its how-manieth sending that was.
    writer: Option<(Uuid, i32)>,
    /// The page that it was handed in from.
    handed_from: Option<Uuid>,
}

/// What a page of the client says of itself.
#[derive(Clone, Copy, Debug, Deserialize)]
pub(super) struct Sender {
    /// The asking that it was made for.
    pub(super) asking: Uuid,
    /// Itself: two pages of one form are told apart.
    pub(super) page: Uuid,
    /// The version of the draft that it knows of; 0: none.
    pub(super) was: i32,
    /// The wording that it shows.
    pub(super) wording: Uuid,
}

/// On a device that more than one client uses, a page that was left open belongs to another link than the one that was opened last.
///
/// # Errors
/// [`Error::Conflict`] when a page of `asking` is not of this errand.
pub(super) fn must_be_of(errand: &Errand, asking: Uuid) -> Result<(), Error> {
    if asking == errand.asking {
        return Ok(());
    }
    Err(Error::Conflict("Another link was opened on this device. Open your own link again."))
}

impl Form {
    fn of(app: &App, key: &ClientKey, row: FormRow) -> Result<Self, Error> {
        let measure = Measure::parse(&row.measure).ok_or(Error::Inconsistent("asking.measures"))?;
        let wording = match row.wording.zip(row.body) {
            Some((id, body)) => Some((id, serde_json::from_value(body).map_err(|_| Error::Inconsistent("wording.body"))?)),
            None => None,
        };
        let form = measure.form();
        let (draft, draft_id, draft_version) = match (row.draft, row.draft_id, row.draft_version) {
            // What was answered to other words answers none of these.
            (Some(_), Some(id), Some(version)) if wording.as_ref().map(|(id, _): &(Uuid, Wording)| *id) != row.draft_wording => {
                (Draft::empty(form), id, version)
            }
            (Some(sealed), Some(id), Some(version)) => {
                let text = key.row(id, version).open(Field::ResponseDraft, &sealed).text()?;
                (Draft::read(form, text.reveal()).ok_or(Error::Inconsistent("response_draft"))?, id, version)
            }
            _ => (Draft::empty(form), new_id(&app.world), 0),
        };
        let writer = row.draft_page.zip(row.draft_sending);
        Ok(Self { measure, wording, handed_in: row.handed_in, draft, draft_version, draft_id, writer, handed_from: row.handed_page })
    }

    /// The how-manieth sending of `page` was kept last; 0: none was, or another page wrote since.
    pub(super) fn sendings(&self, page: Uuid) -> i32 {
        self.writer.filter(|(writer, _)| *writer == page).map_or(0, |(_, sending)| sending)
    }

    /// Whether `sender` shows the words that are in use.
    pub(super) fn is_worded_as(&self, sender: &Sender) -> bool {
        self.wording.as_ref().is_some_and(|(id, _)| *id == sender.wording)
    }

    /// Whether another page has kept something since that `sender` does not know of. What was lost on the way back to `sender` itself is its own.
    fn is_ahead_of(&self, sender: &Sender) -> bool {
        self.draft_version != sender.was && self.writer.is_none_or(|(writer, _)| writer != sender.page)
    }
}

/// What the errand that asks is for.
///
/// # Errors
/// [`Error::ErrandNeeded`] when its link does not hold any more.
pub(super) async fn work(tx: &mut Tx, app: &App) -> Result<Work, Error> {
    let row = queries::errand(tx).await?.ok_or(Error::ErrandNeeded)?;
    tx.concerns(row.client);
    tx.is_about(row.asking);
    let key = app.key.unwrap(row.client, &row.wrapped);
    let event = key.row(row.asking, ONLY_VERSION).open(Field::AskingEvent, &row.event);
    let closed = match row.closed_as {
        Some(how) => Some(Closed::parse(&how).ok_or(Error::Inconsistent("asking.closed_as"))?),
        None => None,
    };
    let forms = queries::forms(tx).await?.into_iter().map(|row| Form::of(app, &key, row)).collect::<Result<_, _>>()?;
    Ok(Work { from_at: row.from_at, event, closed, forms, key })
}

/// What became of a form that a client sent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Handing {
    /// It is handed in, from this page.
    There,
    /// It was handed in before, from another page: what this one has was not.
    Elsewhere,
    /// Another page has kept other answers since, or the words have changed: nothing was handed in.
    Behind,
    /// Its time is not now, or the asking is closed.
    Over,
}

/// Hands one form in, in a transaction of its own. False: it was handed in already, or its time is not now.
///
/// # Errors
/// [`Error::ErrandNeeded`] when the link does not hold; [`Error::NotFound`] when the form is not asked; [`Error::Conflict`] when the practice has
/// ended its wording.
pub async fn answer(app: &App, subject: &Subject, measure: Measure, sheet: &Sheet) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("errand.hand_in")).await?;
    let work = work(&mut tx, app).await?;
    let done = keep(&mut tx, app, &work, (measure, new_id(&app.world)), sheet).await?;
    if done {
        tx.commit().await?;
    }
    Ok(done)
}

async fn keep(tx: &mut Tx, app: &App, work: &Work, (measure, page): (Measure, Uuid), sheet: &Sheet) -> Result<bool, Error> {
    let form = work.forms.iter().find(|form| form.measure == measure).ok_or(Error::NotFound)?;
    let (wording, _) = form.wording.as_ref().ok_or(Error::Conflict("These questions are not used any more."))?;
    let event = work.event_of(measure)?;
    let handed = Handed { measure, wording: *wording, sheet, event: &event, follows: form.draft_version, page };
    hand_in(tx, app, &work.key, &handed).await
}

/// Hands in what the page of a client sent, as long as no other page has kept other answers since.
///
/// # Errors
/// As [`answer`].
pub(super) async fn answer_from(app: &App, errand: &Errand, sender: &Sender, measure: Measure, sheet: &Sheet) -> Result<Handing, Error> {
    let mut tx = app.database.act(&errand.subject, Act::new("errand.hand_in")).await?;
    let work = work(&mut tx, app).await?;
    let form = work.forms.iter().find(|form| form.measure == measure).ok_or(Error::NotFound)?;
    if form.handed_in {
        return Ok(if form.handed_from == Some(sender.page) { Handing::There } else { Handing::Elsewhere });
    }
    if work.closed.is_some() || work.from_at > app.world.now() {
        return Ok(Handing::Over);
    }
    let is_ahead = form.is_ahead_of(sender) && form.draft.sheet(measure.form()).as_ref() != Some(sheet);
    if is_ahead || !form.is_worded_as(sender) {
        return Ok(Handing::Behind);
    }
    if !keep(&mut tx, app, &work, (measure, sender.page), sheet).await? {
        // Between the look and the lock another page was quicker: the next look shows what it did.
        return Ok(Handing::Behind);
    }
    tx.commit().await?;
    Ok(Handing::There)
}

/// Declines the asking, in a transaction of its own. False: it is closed already.
///
/// # Errors
/// [`Error::ErrandNeeded`] when the link does not hold.
pub async fn decline(app: &App, subject: &Subject) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("errand.decline")).await?;
    work(&mut tx, app).await?;
    let done = queries::decline(&mut tx).await?;
    if done {
        tx.commit().await?;
    }
    Ok(done)
}

/// What the page sends after each answer.
#[derive(Deserialize)]
struct Sent {
    measure: String,
    #[serde(flatten)]
    sender: Sender,
    /// Counts up from 1, so that one that comes late changes nothing.
    sending: i32,
    /// What a form would send, question by question; nothing for what was not answered yet.
    answers: Vec<Option<String>>,
}

/// What is kept now.
#[derive(Serialize)]
pub(super) struct Kept {
    version: i32,
}

/// `POST /q/draft`
pub(super) async fn keep_draft(errand: Errand, State(app): State<App>, body: Bytes) -> Result<Json<Kept>, Error> {
    const NOT_WHOLE: Error = Error::BadRequest("This did not arrive whole, so it was not kept. Open the page again.");
    const ELSEWHERE: Error = Error::Conflict("This was filled in on another page, or handed in already. Open the page again.");
    let sent: Sent = serde_json::from_slice(&body).map_err(|_| NOT_WHOLE)?;
    must_be_of(&errand, sent.sender.asking)?;
    let measure = Measure::parse(&sent.measure).ok_or(NOT_WHOLE)?;
    let given: Option<Vec<Given>> = sent.answers.iter().map(|word| Given::read(word.as_deref().unwrap_or_default())).collect();
    let draft = given.and_then(|given| Draft::new(measure.form(), given)).filter(|_| sent.sending > 0).ok_or(NOT_WHOLE)?;
    let mut tx = app.database.look(&errand.subject).await?;
    let Work { key, forms, .. } = work(&mut tx, &app).await?;
    let form = forms.iter().find(|form| form.measure == measure).ok_or(NOT_WHOLE)?;
    // Sent again because the answer was lost, or late on the way: what stands is this, or newer than this.
    if sent.sending <= form.sendings(sent.sender.page) {
        return Ok(Json(Kept { version: form.draft_version }));
    }
    if form.is_ahead_of(&sent.sender) || !form.is_worded_as(&sent.sender) {
        return Err(ELSEWHERE);
    }
    let version = form.draft_version.checked_add(1).ok_or(NOT_WHOLE)?;
    let sealed = key.row(form.draft_id, version).seal(&app.world, Field::ResponseDraft, &Private::new(draft.text()))?;
    let row = queries::DraftRow {
        id: form.draft_id,
        measure: measure.name(),
        sealed: &sealed,
        was: form.draft_version,
        wording: sent.sender.wording,
        page: sent.sender.page,
        sending: sent.sending,
    };
    let version = queries::keep_draft(&mut tx, &row).await?.ok_or(ELSEWHERE)?;
    tx.commit().await?;
    Ok(Json(Kept { version }))
}
