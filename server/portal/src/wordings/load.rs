//! Loading a file: what it says is checked before anything of it is kept.

use axum::extract::State;
use axum::response::Response;
use leeward_core::measures::Measure;
use leeward_core::measures::wording::{Questionnaire, Wording};

use super::keep;
use super::page::{Standing, WordingPage, named, standing};
use crate::base::ids::new_id;
use crate::platform::forms::{Fields, InPath, Keyed, Problems, SaveOutcome, answer, comes_back};
use crate::platform::page::Frame;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::Act;

/// As it was pasted.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct LoadForm {
    pub(super) file: String,
    #[serde(skip)]
    version: String,
}

impl LoadForm {
    /// The wording that it says, checked against the form.
    pub(super) fn check(&self, measure: Measure) -> Result<Wording, Problems> {
        let mut problems = Problems::default();
        let read = match serde_json::from_str::<Questionnaire>(self.file.trim()) {
            _ if self.file.trim().is_empty() => Err("Paste here what stands in the file, or choose the file.".to_owned()),
            Err(fault) => {
                let (line, column) = (fault.line(), fault.column());
                Err(format!(
                    "This is no FHIR R4 Questionnaire as JSON: it cannot be read at line {line}, column {column}. Look at the file there."
                ))
            }
            Ok(file) => Wording::read(measure, &file).map_err(|unfit| unfit.to_string()),
        };
        read.map_err(|message| {
            problems.add("file", message);
            problems
        })
    }
}

impl Fields for LoadForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[("file", "The file")];

    fn shown(&self, _: &str) -> String {
        self.file.clone()
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

/// `POST /practice/wordings/{measure}`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    InPath(measure): InPath<String>,
    Keyed(once, typed): Keyed<LoadForm>,
) -> Result<Response, Error> {
    let measure = named(&measure)?;
    let tried = try_save(&app, &member, measure, &once, &typed).await;
    // What is in use stands around the form; where the database does not answer, the form comes back without it.
    let around = if comes_back(&tried) { standing(&app, &member, measure).await.unwrap_or_default() } else { Standing::default() };
    answer(typed, tried, |again| WordingPage::show(frame, measure, around, again))
}

async fn try_save(app: &App, member: &Member, measure: Measure, once: &Once, typed: &LoadForm) -> Result<SaveOutcome<LoadForm>, Error> {
    let id = new_id(&app.world);
    let mut tx = app.database.act_once(&member.subject, Act::new("wording.load").object(id), once).await?;
    let wording = match typed.check(measure) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(wording) => wording,
    };
    keep(&mut tx, app, id, measure, &wording).await?;
    Ok(SaveOutcome::Saved(tx.saved(format!("/practice/wordings/{}", measure.name())).await?))
}
