//! The clinician's live screen, as it is before its socket opens.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Preset, Purpose};
use uuid::Uuid;

use super::admit::outside;
use super::desk_turns::{self, Turn};
use super::queries::{self, SessionRow};
use super::queries_room::call_settings;
use crate::askings;
use crate::clients::{self, Details};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::assets::Assets;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::security::PERMISSIONS_OF_A_CALL;
use crate::platform::when::When;
use crate::presets;
use crate::reach::{self, Reach};
use crate::safety_plan;
use crate::sessions;
use crate::steadying;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened, Private};
use crate::store::subject::{Act, Tx};
use crate::targets::{self, Target};

/// The digits from 2 to 9.
const MOST_RESOURCES: usize = 8;

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
    /// What else may be worked on, linked targets first; as many as there are digits.
    turns: Vec<Turn>,
    card: EmergencyCard,
    /// Where the client was last time, to be confirmed anew.
    last_location: Option<String>,
    presets: Vec<Preset>,
    presets_json: String,
    client_id: Uuid,
    /// What shows that it is too much, the way back, first words.
    steadying: Vec<(&'static str, String)>,
    /// What has helped, as the client's page may show it.
    resources: Vec<String>,
    resources_json: String,
    assess: Option<AssessForm>,
    /// The safety plan part by part.
    safety: Vec<(&'static str, String)>,
    /// What is due of forms, in words.
    due: Option<String>,
    /// Whether picture and voice go through this portal's pages at all.
    calls: bool,
}

/// What is worked on; an empty text was not recorded.
struct TargetCard {
    label: String,
    picture: String,
    negative: String,
    positive: String,
    emotions: String,
    body: String,
    /// SUD and VOC at its assessment.
    assessed: String,
    /// The same as the page came, where they are others by now.
    before: Option<String>,
}

/// The assessment as it stands, to be typed on. Ratings are asked anew.
struct AssessForm {
    target: Uuid,
    version: i32,
    /// What comes before the ratings: name, label, words.
    before: [(&'static str, &'static str, String); 3],
    emotions: String,
    body: String,
}

impl AssessForm {
    /// `None` when a part of it does not open: then nothing may be typed over it.
    fn of(target: &Target) -> Option<Self> {
        let words = target.words.clone().whole().ok()?;
        let text = |private: &Private| private.reveal().to_owned();
        Some(Self {
            target: target.id,
            version: target.version,
            before: [
                ("picture", "Worst picture", text(&words.picture)),
                ("negative_belief", "Negative belief", text(&words.negative_belief)),
                ("positive_belief", "Positive belief", text(&words.positive_belief)),
            ],
            emotions: text(&words.emotions),
            body: text(&words.body_location),
        })
    }
}

/// What is needed when something happens to the client.
struct EmergencyCard {
    /// Confirmed today.
    location: Option<String>,
    /// When, in the session's zone.
    confirmed_at: Option<String>,
    /// It is none of the places where the practice may treat, in words; empty: nothing speaks against it.
    outside: String,
    /// What the client dials.
    emergency_number: String,
    /// Dialled from the clinician's seat.
    help_from_here: String,
    help_tried: String,
    phone_use: &'static str,
    contact_use: &'static str,
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
        Some(target) => Some(targets::find(&mut tx, &app, target).await?),
        None => None,
    };
    let presets = presets::on_offer(&mut tx).await?;
    let resources = resources(&mut tx, &app, row.client).await?;
    let when = When::in_practice(&mut tx).await?.in_zone(&row.zone);
    let today = when.date(&app.world.now());
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
        assess: target.as_ref().and_then(AssessForm::of),
        turns: desk_turns::turns(&mut tx, &app, row.client, target.as_ref()).await?,
        card: emergency_card(&mut tx, &app, &key, session, &row, &details, &when).await?,
        target: target.as_ref().map(TargetCard::of),
        last_location: last_location(&mut tx, &key, &row).await?,
        presets_json: json(&presets)?,
        presets,
        client_id: row.client,
        steadying: steadying_lines(&mut tx, &app, row.client).await?,
        resources_json: json(&resources)?,
        resources,
        safety: safety_lines(&mut tx, &app, row.client).await?,
        due: askings::due(&mut tx, row.client, today).await?.map(|due| due.words(today)),
        calls: app.calls().reach(call_settings(&mut tx).await?.0).is_some(),
    };
    tx.commit().await?;
    Ok(([PERMISSIONS_OF_A_CALL], page(&desk)?).into_response())
}

fn json(value: &impl serde::Serialize) -> Result<String, Error> {
    serde_json::to_string(value).map_err(|fault| Error::Inner(format!("for the desk's script: {fault}")))
}

/// Each line with its name; nothing where nothing is written down.
async fn steadying_lines(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<(&'static str, String)>, Error> {
    let Some((kept, _)) = steadying::steadying(tx, app, client).await? else { return Ok(vec![]) };
    let written = steadying::LINES.iter().zip(&kept.lines).filter(|(_, text)| !text.is_empty());
    Ok(written.map(|(line, words)| (line.words, text(words))).collect())
}

/// What is on offer, as far as there are digits for it.
async fn resources(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<String>, Error> {
    let all = steadying::resources(tx, app, client).await?;
    let on_offer = all.iter().filter(|kept| kept.resource.on_offer).filter_map(|kept| kept.resource.on_page());
    Ok(on_offer.take(MOST_RESOURCES).collect())
}

/// Each part that says something, in one line.
async fn safety_lines(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<(&'static str, String)>, Error> {
    let Some((plan, _)) = safety_plan::plan(tx, app, client).await? else { return Ok(vec![]) };
    let written = safety_plan::PARTS.iter().zip(&plan.parts).filter(|(_, text)| !text.is_empty());
    Ok(written.map(|(part, words)| (part.words, text(words).lines().collect::<Vec<_>>().join("; "))).collect())
}

pub(super) fn text(read: &Opened) -> String {
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
        let rated = |sud: Option<Sud>, voc: Option<Voc>| {
            let value = |value: Option<u8>| value.map_or_else(|| "not asked".to_owned(), |value| value.to_string());
            format!("SUD {}, VOC {}", value(sud.map(Sud::get)), value(voc.map(Voc::get)))
        };
        let assessed = rated(target.assessed_sud, target.assessed_voc);
        let before = Some(rated(target.latest_sud, target.latest_voc)).filter(|before| *before != assessed);
        Self {
            label: text(&words.label),
            picture: text(&words.picture),
            negative: text(&words.negative_belief),
            positive: text(&words.positive_belief),
            emotions: text(&words.emotions),
            body: text(&words.body_location),
            assessed,
            before,
        }
    }
}

async fn emergency_card(
    tx: &mut Tx,
    app: &App,
    key: &ClientKey,
    session: Uuid,
    row: &SessionRow,
    details: &Details<Opened>,
    when: &When,
) -> Result<EmergencyCard, Error> {
    let (words, _) = sessions::words(tx, key, session).await?;
    let known = reach::reach(tx, app, row.client).await?.map(|(known, _)| known);
    let known = known.unwrap_or_else(Reach::nothing);
    let location = row.admitted_at.map(|_| text(&words.location));
    let places = queries::places(tx).await?;
    let call_back = if words.call_back.is_empty() { &details.phone } else { &words.call_back };
    Ok(EmergencyCard {
        outside: location.as_deref().map(|location| outside(&places, location)).unwrap_or_default(),
        location,
        confirmed_at: row.admitted_at.map(|at| when.time(&at)),
        emergency_number: if known.help_there.is_empty() { queries::emergency_number(tx).await? } else { text(&known.help_there) },
        help_from_here: text(&known.help_from_here),
        help_tried: known.tried(*when),
        phone_use: known.phone.words(),
        contact_use: known.contact.words(),
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
