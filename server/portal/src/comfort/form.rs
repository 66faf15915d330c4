//! The page of a comfort sheet: what was typed, what is wrong with it, and keeping it.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use leeward_core::safety;
use leeward_core::wire::{Comfort, Length, Plan};
use uuid::Uuid;

use super::{COLOURS, Choice, PATHS, SWEEPS, Sheet, TIMBRES, change, named, of, sheet};
use crate::clients;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Again, Fields, Id, Keyed, Problems, SaveOutcome, answer, comes_back, list, version};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::{Act, Tx};

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct ComfortForm {
    path: String,
    dot: String,
    sweep: String,
    colours: String,
    timbre: String,
    pitch: String,
    tone_ms: String,
    level: String,
    vibration: String,
    version: String,
}

/// Whether the client felt the buzz, as a form asks it.
const FELT: [Choice<bool>; 2] = [("felt", "The client said: I felt it", true), ("no", "Not felt, or not tried", false)];

impl ComfortForm {
    fn of(sheet: &Sheet, version: i32) -> Self {
        let Comfort { sweep, colours, timbre, pitch, tone_ms, level, vibration } = sheet.comfort;
        Self {
            path: of(&PATHS, sheet.path).0.to_owned(),
            dot: sheet.dot.to_string(),
            sweep: of(&SWEEPS, sweep).0.to_owned(),
            colours: of(&COLOURS, colours).0.to_owned(),
            timbre: of(&TIMBRES, timbre).0.to_owned(),
            pitch: pitch.to_string(),
            tone_ms: tone_ms.to_string(),
            level: level.to_string(),
            vibration: of(&FELT, vibration).0.to_owned(),
            version: version.to_string(),
        }
    }

    /// Reads it; each setting is checked alone against the limits of a set.
    fn check(&self) -> Result<Sheet, Problems> {
        let mut problems = Problems::default();
        let usual = safety::default_plan();
        let path = problems.choice("path", &self.path, |typed| named(&PATHS, typed));
        let dot = problems.number("dot", &self.dot).filter(|dot| problems.plan("dot", &Plan { dot: *dot, ..usual }));
        let sweep = problems.choice("sweep", &self.sweep, |typed| named(&SWEEPS, typed));
        let colours = problems.choice("colours", &self.colours, |typed| named(&COLOURS, typed));
        let timbre = problems.choice("timbre", &self.timbre, |typed| named(&TIMBRES, typed));
        let alone = |comfort| Plan { comfort, length: Length::Open, ..usual };
        let pitch =
            problems.whole("pitch", &self.pitch).filter(|pitch| problems.plan("pitch", &alone(Comfort { pitch: *pitch, ..usual.comfort })));
        let tone_ms = problems
            .whole("tone_ms", &self.tone_ms)
            .filter(|tone_ms| problems.plan("tone_ms", &alone(Comfort { tone_ms: *tone_ms, ..usual.comfort })));
        let level =
            problems.whole("level", &self.level).filter(|level| problems.plan("level", &alone(Comfort { level: *level, ..usual.comfort })));
        let vibration = problems.choice("vibration", &self.vibration, |typed| named(&FELT, typed));
        let sheet = || {
            let comfort = Comfort {
                sweep: sweep?,
                colours: colours?,
                timbre: timbre?,
                pitch: pitch?,
                tone_ms: tone_ms?,
                level: level?,
                vibration: vibration?,
            };
            Some(Sheet { path: path?, dot: dot?, comfort })
        };
        sheet().ok_or(problems)
    }
}

impl Fields for ComfortForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("path", "Path"),
        ("dot", "Dot"),
        ("sweep", "Sweep"),
        ("colours", "Colours"),
        ("timbre", "Timbre"),
        ("pitch", "Pitch"),
        ("tone_ms", "Length of a tone"),
        ("level", "Level"),
        ("vibration", "Vibration"),
    ];

    fn shown(&self, name: &str) -> String {
        let field = match name {
            "path" => &self.path,
            "dot" => &self.dot,
            "sweep" => &self.sweep,
            "colours" => &self.colours,
            "timbre" => &self.timbre,
            "pitch" => &self.pitch,
            "tone_ms" => &self.tone_ms,
            "level" => &self.level,
            _ => &self.vibration,
        };
        field.replace('_', " ")
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "comfort/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    /// The record's number; `None` when the database did not answer.
    number: Option<i32>,
    typed: ComfortForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<ComfortForm>(&self.problems)
    }

    fn show(frame: Frame, client: Uuid, number: Option<i32>, again: Again<ComfortForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, client, number, typed, problems, notice })?).into_response())
    }
}

/// The form as the record fills it, or with the usual settings.
async fn stored_form(tx: &mut Tx, client: Uuid) -> Result<ComfortForm, Error> {
    let usual = safety::default_plan();
    let usual = (Sheet { path: usual.path, dot: usual.dot, comfort: usual.comfort }, 0);
    let (sheet, version) = sheet(tx, client).await?.unwrap_or(usual);
    Ok(ComfortForm::of(&sheet, version))
}

/// `GET /clients/{client}/comfort`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("comfort.view").client(client)).await?;
    clients::key(&mut tx, &app, client).await?;
    let typed = stored_form(&mut tx, client).await?;
    let number = clients::row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    FormPage::show(frame, client, number, Again::first(typed))
}

/// `POST /clients/{client}/comfort`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<ComfortForm>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, client, &once, &typed).await;
    let number = if comes_back(&tried) { clients::number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| FormPage::show(frame, client, number, again))
}

async fn try_save(member: &Member, app: &App, client: Uuid, once: &Once, typed: &ComfortForm) -> Result<SaveOutcome<ComfortForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("comfort.change").client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    clients::key(&mut tx, app, client).await?;
    let sheet = match typed.check() {
        Ok(sheet) => sheet,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    if !change(&mut tx, app, client, &sheet, version(&typed.version)?).await? {
        return Ok(SaveOutcome::Changed(Box::new(stored_form(&mut tx, client).await?)));
    }
    Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}")).await?))
}
