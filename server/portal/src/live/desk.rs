//! The clinician's live screen, as it is before its socket opens.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Preset, Purpose};
use uuid::Uuid;

use super::queries::{self, SessionRow};
use crate::clients::{self, Details};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::assets::Assets;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::presets;
use crate::sessions;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened};
use crate::store::subject::{Act, Tx};
use crate::targets::{self, Target};

#[derive(Template)]
#[template(path = "live/desk.html")]
struct DeskPage {
    nonce: String,
    assets: Assets,
    session: Uuid,
    /// The client's record number.
    record: i32,
    /// How many hours the practice's clock has: 12 or 24.
    hours: i16,
    /// How long ago the client was let in for the first time, ms; `None`: not yet.
    begun_ms: Option<i64>,
    /// How long an appointment usually is, and how much of that is kept for closing, minutes.
    appointment: (i16, i16),
    number: i32,
    rehearsal: bool,
    client: String,
    cautions: Vec<String>,
    target: Option<TargetCard>,
    card: EmergencyCard,
    /// Where the client was last time, to be confirmed anew.
    last_location: Option<String>,
    presets: Vec<Preset>,
    presets_json: String,
}

/// What is worked on; an empty text was not recorded.
struct TargetCard {
    label: String,
    picture: String,
    negative: String,
    positive: String,
    emotions: String,
    body: String,
    sud: Option<u8>,
    voc: Option<u8>,
}

/// What is needed when something happens to the client.
struct EmergencyCard {
    /// Confirmed today.
    location: Option<String>,
    /// When, in the session's zone.
    confirmed_at: Option<String>,
    emergency_number: String,
    contact_name: String,
    contact_phone: String,
    call_back: String,
    /// The same for the form of admission; empty when it does not open.
    call_back_to_begin_from: String,
}

impl DeskPage {
    /// The presets of one purpose, each with its place in the whole list.
    fn presets_for(&self, purpose: Purpose) -> Vec<(usize, &Preset)> {
        self.presets.iter().enumerate().filter(|(_, preset)| preset.purpose == purpose).collect()
    }
}

/// `GET /sessions/{session}/desk`
pub(super) async fn show(State(app): State<App>, member: Member, Id(session): Id, frame: Frame) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("desk.view").object(session)).await?;
    let row = queries::session(&mut tx, session).await?;
    tx.concerns(row.client);
    if row.ended_at.is_some() {
        return Ok(Redirect::to(&format!("/sessions/{session}")).into_response());
    }
    let key = clients::key(&mut tx, &app, row.client).await?;
    let details = clients::details(&mut tx, &app, row.client).await?;
    let target = match row.target {
        Some(target) => Some(TargetCard::of(&targets::find(&mut tx, &app, target).await?)),
        None => None,
    };
    let presets = presets::on_offer(&mut tx).await?;
    let when = When::in_practice(&mut tx).await?.in_zone(&row.zone);
    let desk = DeskPage {
        nonce: frame.nonce,
        assets: frame.assets,
        session,
        record: clients::row(&mut tx, row.client).await?.ok_or(Error::NotFound)?.number,
        hours: when.hours(),
        begun_ms: row.begun_at.map(|at| (app.world.now() - at).num_milliseconds()),
        appointment: queries::appointment(&mut tx).await?,
        number: row.number,
        rehearsal: clients::is_rehearsal(&mut tx, row.client).await?,
        client: addressed(&details),
        cautions: clients::cautions(&mut tx, row.client).await?.flags(),
        target,
        card: emergency_card(&mut tx, &key, session, &row, &details, &when).await?,
        last_location: last_location(&mut tx, &key, &row).await?,
        presets_json: serde_json::to_string(&presets).map_err(|fault| Error::Inner(format!("presets: {fault}")))?,
        presets,
    };
    tx.commit().await?;
    Ok(page(&desk)?.into_response())
}

fn text(read: &Opened) -> String {
    read.shown().to_owned()
}

/// For a field that somebody sends on: nothing rather than the words that it does not open.
fn to_begin_from(read: &Opened) -> String {
    match read {
        Opened::Text(text) => text.reveal().to_owned(),
        Opened::Unreadable => String::new(),
    }
}

fn addressed(details: &Details<Opened>) -> String {
    text(if details.addressed_as.is_empty() { &details.name } else { &details.addressed_as })
}

impl TargetCard {
    fn of(target: &Target) -> Self {
        let words = &target.words;
        Self {
            label: text(&words.label),
            picture: text(&words.picture),
            negative: text(&words.negative_belief),
            positive: text(&words.positive_belief),
            emotions: text(&words.emotions),
            body: text(&words.body_location),
            sud: target.assessed_sud.map(Sud::get),
            voc: target.assessed_voc.map(Voc::get),
        }
    }
}

async fn emergency_card(
    tx: &mut Tx,
    key: &ClientKey,
    session: Uuid,
    row: &SessionRow,
    details: &Details<Opened>,
    when: &When,
) -> Result<EmergencyCard, Error> {
    let (words, _) = sessions::words(tx, key, session).await?;
    let call_back = if words.call_back.is_empty() { &details.phone } else { &words.call_back };
    Ok(EmergencyCard {
        location: row.admitted_at.map(|_| text(&words.location)),
        confirmed_at: row.admitted_at.map(|at| when.time(&at)),
        emergency_number: queries::emergency_number(tx).await?,
        contact_name: text(&details.contact_name),
        contact_phone: text(&details.contact_phone),
        call_back: text(call_back),
        call_back_to_begin_from: to_begin_from(call_back),
    })
}

/// Offered as text to begin from, never as confirmed.
async fn last_location(tx: &mut Tx, key: &ClientKey, row: &SessionRow) -> Result<Option<String>, Error> {
    let Some(before) = queries::session_before(tx, row.client, row.number).await? else { return Ok(None) };
    let (words, _) = sessions::words(tx, key, before).await?;
    Ok(Some(to_begin_from(&words.location)).filter(|location| !location.is_empty()))
}
