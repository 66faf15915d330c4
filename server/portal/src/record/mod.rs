//! A client's record: who it is, the cautions, the targets, the sessions. Stands above the features whose parts it shows.

mod queries;

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use axum::routing::get;
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use crate::clients::{self, Cautions, Details, details, is_rehearsal};
use crate::comfort;
use crate::platform::Member;
use crate::platform::codes::closing_words;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{DOES_NOT_OPEN, Opened};
use crate::store::subject::Act;
use crate::targets::{self, Target};

#[derive(Template)]
#[template(path = "record/record.html")]
struct Record {
    frame: Frame,
    id: Uuid,
    number: i32,
    opened_on: String,
    archived: bool,
    rehearsal: bool,
    version: i32,
    details: Details<Opened>,
    cautions: Cautions,
    targets: Vec<TargetLine>,
    archived_targets: Vec<TargetLine>,
    sessions: Vec<SessionLine>,
    /// The comfort sheet in words, once it was filled.
    comfort: Option<Vec<(&'static str, String)>>,
}

struct TargetLine {
    id: Uuid,
    number: i32,
    label: String,
    prong: &'static str,
    status: &'static str,
    sud: String,
    voc: String,
}

struct SessionLine {
    id: Uuid,
    number: i32,
    when: String,
    zone: String,
    target: String,
    sets: i64,
    closing: &'static str,
}

impl Record {
    /// What is not known yet and will be needed when the connection drops.
    fn missing(&self) -> Vec<&'static str> {
        let asked = [
            (&self.details.phone, "call-back number"),
            (&self.details.contact_name, "emergency contact"),
            (&self.details.contact_phone, "number of the emergency contact"),
            (&self.details.usual_location, "usual location"),
        ];
        asked.into_iter().filter(|(text, _)| text.is_empty()).map(|(_, what)| what).collect()
    }
}

async fn show(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(id)).await?;
    let row = clients::row(&mut tx, id).await?.ok_or(Error::NotFound)?;
    let details = details(&mut tx, &app, id).await?;
    let all = targets::list(&mut tx, &app, id).await?;
    let sessions = queries::sessions(&mut tx, id).await?;
    let rehearsal = is_rehearsal(&mut tx, id).await?;
    let comfort = match comfort::sheet(&mut tx, id).await {
        Err(Error::Inconsistent(_)) => Some(vec![("Comfort sheet", DOES_NOT_OPEN.to_owned())]),
        sheet => sheet?.map(|(sheet, _)| sheet.in_words()),
    };
    tx.commit().await?;
    let sessions = sessions.into_iter().map(|session| session_line(session, &all)).collect();
    let (archived_targets, targets): (Vec<_>, Vec<_>) = all.iter().partition(|target| target.archived_at.is_some());
    page(&Record {
        frame,
        id,
        number: row.number,
        opened_on: row.opened_on.format("%A %-d %B %Y").to_string(),
        archived: row.archived_at.is_some(),
        rehearsal,
        version: row.version,
        details,
        cautions: row.cautions,
        targets: targets.into_iter().map(target_line).collect(),
        archived_targets: archived_targets.into_iter().map(target_line).collect(),
        sessions,
        comfort,
    })
}

fn target_line(target: &Target) -> TargetLine {
    TargetLine {
        id: target.id,
        number: target.number,
        label: target.words.label.shown().to_owned(),
        prong: target.prong.name(),
        status: target.status.name(),
        sud: rated(target.latest_sud.map(Sud::get)),
        voc: rated(target.latest_voc.map(Voc::get)),
    }
}

/// A rating as a table shows it.
fn rated(value: Option<u8>) -> String {
    value.map_or_else(|| "not rated".to_owned(), |value| value.to_string())
}

fn session_line(session: queries::SessionRow, targets: &[Target]) -> SessionLine {
    let (when, at) = (When::in_zone(&session.zone), session.opened_at);
    let target = targets.iter().find(|target| Some(target.id) == session.target_id);
    SessionLine {
        id: session.id,
        number: session.number,
        when: format!("{}, {}", when.day(&at), when.time(&at)),
        zone: when.zone(&at),
        target: target.map(|target| target.words.label.shown().to_owned()).unwrap_or_default(),
        sets: session.sets,
        closing: closing_words(session.ended_at.is_some(), session.closing.as_deref()),
    }
}

/// Adds this feature's route.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/clients/{client}", Rule::Care, get(show))
}
