//! The page of a comfort sheet: what was typed, what is wrong with it, and keeping it.

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use leeward_core::safety;
use leeward_core::wire::{Comfort, Length, Plan};
use uuid::Uuid;

use super::{COLOURS, Choice, PATHS, SWEEPS, Sheet, TIMBRES, keep, named, of, sheet};
use crate::app::App;
use crate::clients::{self, Id, Sent, list, notice, now_stands, version};
use crate::error::Error;
use crate::forms::Problems;
use crate::page::{Frame, page};
use crate::signin::Member;
use crate::subject::Act;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Typed {
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

impl Typed {
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

    /// Beside each field that now stands differently in the record: how it stands there.
    fn differences(&self, kept: &Self) -> Problems {
        let mut problems = Problems::default();
        for (name, typed, kept) in [
            ("path", &self.path, &kept.path),
            ("dot", &self.dot, &kept.dot),
            ("sweep", &self.sweep, &kept.sweep),
            ("colours", &self.colours, &kept.colours),
            ("timbre", &self.timbre, &kept.timbre),
            ("pitch", &self.pitch, &kept.pitch),
            ("tone_ms", &self.tone_ms, &kept.tone_ms),
            ("level", &self.level, &kept.level),
            ("vibration", &self.vibration, &kept.vibration),
        ] {
            now_stands(&mut problems, name, &typed.replace('_', " "), &kept.replace('_', " "));
        }
        problems
    }
}

#[derive(Template)]
#[template(path = "comfort/form.html")]
struct FormPage {
    frame: Frame,
    client: Uuid,
    typed: Typed,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        const LABELS: [(&str, &str); 9] = [
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
        list(&LABELS, &self.problems)
    }

    fn answer(&self, status: StatusCode) -> Result<Response, Error> {
        Ok((status, page(self)?).into_response())
    }
}

/// The form as the record fills it, or with the usual settings.
async fn kept(member: &Member, app: &App, client: Uuid) -> Result<Typed, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("comfort.view").client(client)).await?;
    clients::key(&mut tx, app, client).await?;
    let kept = sheet(&mut tx, client).await?;
    tx.commit().await?;
    let usual = safety::default_plan();
    let (sheet, version) = kept.unwrap_or((Sheet { path: usual.path, dot: usual.dot, comfort: usual.comfort }, 0));
    Ok(Typed::of(&sheet, version))
}

/// `GET /clients/{client}/comfort`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let typed = kept(&member, &app, client).await?;
    FormPage { frame, client, typed, problems: Problems::default(), notice: "" }.answer(StatusCode::OK)
}

/// `POST /clients/{client}/comfort`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Sent(mut typed): Sent<Typed>,
) -> Result<Response, Error> {
    let page = |typed, problems, notice| FormPage { frame, client, typed, problems, notice };
    match try_save(&member, &app, client, &typed).await {
        Ok(Edit::Saved) => Ok(Redirect::to(&format!("/clients/{client}")).into_response()),
        Ok(Edit::Refused(problems)) => page(typed, problems, notice::LOOK).answer(StatusCode::UNPROCESSABLE_ENTITY),
        Ok(Edit::ChangedMeanwhile(kept)) => {
            let problems = typed.differences(&kept);
            typed.version = kept.version;
            page(typed, problems, notice::CHANGED).answer(StatusCode::CONFLICT)
        }
        Err(Error::Database(fault)) => {
            tracing::error!(%fault, "a comfort sheet was not saved");
            page(typed, Problems::default(), notice::unsaved(&fault)).answer(StatusCode::SERVICE_UNAVAILABLE)
        }
        Err(fault) => Err(fault),
    }
}

/// How an edit went.
enum Edit {
    Saved,
    Refused(Problems),
    ChangedMeanwhile(Box<Typed>),
}

async fn try_save(member: &Member, app: &App, client: Uuid, typed: &Typed) -> Result<Edit, Error> {
    let sheet = match typed.check() {
        Ok(sheet) => sheet,
        Err(problems) => {
            // To those who do not treat the client, the form is not there at all.
            let mut tx = app.database.look(&member.subject).await?;
            clients::key(&mut tx, app, client).await?;
            return Ok(Edit::Refused(problems));
        }
    };
    if keep(app, &member.subject, client, &sheet, version(&typed.version)?).await? {
        return Ok(Edit::Saved);
    }
    Ok(Edit::ChangedMeanwhile(Box::new(kept(member, app, client).await?)))
}
