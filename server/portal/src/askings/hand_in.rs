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
use crate::measures::{Handed, Sheet, hand_in};
use crate::platform::{App, Errand};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private};
use crate::store::subject::{Act, Subject, Tx};

/// All that an errand is for.
pub(super) struct Work {
    pub(super) from_at: DateTime<Utc>,
    pub(super) event: Opened,
    pub(super) closed: Option<Closed>,
    pub(super) forms: Vec<Form>,
    key: ClientKey,
}

/// One form of it.
pub(super) struct Form {
    pub(super) measure: Measure,
    /// `None`: the practice has ended its wording meanwhile.
    pub(super) wording: Option<(Uuid, Wording)>,
    pub(super) handed_in: bool,
    /// What is filled in so far, under which id, and its version; 0: nothing was kept yet.
    pub(super) draft: Draft,
    pub(super) draft_id: Uuid,
    pub(super) draft_version: i32,
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
            (Some(sealed), Some(id), Some(version)) => {
                let text = key.row(id, version).open(Field::ResponseDraft, &sealed).text()?;
                (Draft::read(form, text.reveal()).ok_or(Error::Inconsistent("response_draft"))?, id, version)
            }
            _ => (Draft::empty(form), new_id(&app.world), 0),
        };
        Ok(Self { measure, wording, handed_in: row.handed_in, draft, draft_id, draft_version })
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

/// Hands one form in, in a transaction of its own. False: it was handed in already, or its time is not now.
///
/// # Errors
/// [`Error::ErrandNeeded`] when the link does not hold; [`Error::NotFound`] when the form is not asked; [`Error::Conflict`] when the practice has
/// ended its wording.
pub async fn answer(app: &App, subject: &Subject, measure: Measure, sheet: &Sheet) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("errand.hand_in")).await?;
    let Work { forms, event, key, .. } = work(&mut tx, app).await?;
    let form = forms.into_iter().find(|form| form.measure == measure).ok_or(Error::NotFound)?;
    let (wording, _) = form.wording.ok_or(Error::Conflict("These questions are not used any more."))?;
    let event = super::event_for(&[measure], event.text()?);
    let handed = Handed { measure, wording, sheet, event: &event };
    let done = hand_in(&mut tx, app, &key, &handed).await?;
    if done {
        tx.commit().await?;
    }
    Ok(done)
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
    draft: Uuid,
    /// The version that this follows; 0: none.
    was: i32,
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
    let sent: Sent = serde_json::from_slice(&body).map_err(|_| NOT_WHOLE)?;
    let measure = Measure::parse(&sent.measure).ok_or(NOT_WHOLE)?;
    let given: Option<Vec<Given>> = sent.answers.iter().map(|word| Given::read(word.as_deref().unwrap_or_default())).collect();
    let draft = given.and_then(|given| Draft::new(measure.form(), given)).ok_or(NOT_WHOLE)?;
    let mut tx = app.database.look(&errand.subject).await?;
    let Work { key, forms, .. } = work(&mut tx, &app).await?;
    let version = sent.was.checked_add(1).filter(|version| *version > 0).ok_or(NOT_WHOLE)?;
    let sealed = key.row(sent.draft, version).seal(&app.world, Field::ResponseDraft, &Private::new(draft.text()))?;
    let Some(version) = queries::keep_draft(&mut tx, sent.draft, measure.name(), &sealed, sent.was).await? else {
        // Sent again because the answer was lost: it is what stands.
        let stands =
            |form: &Form| form.measure == measure && form.draft_id == sent.draft && form.draft_version == version && form.draft == draft;
        let elsewhere = Error::Conflict("This was filled in on another device, or handed in already. Open the page again.");
        return if forms.iter().any(stands) { Ok(Json(Kept { version })) } else { Err(elsewhere) };
    };
    tx.commit().await?;
    Ok(Json(Kept { version }))
}
