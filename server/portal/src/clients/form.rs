//! The form of a client's record: what was typed, what is wrong with it, and its page.

use askama::Template;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{Asked, Cautions, Details, NewClient};
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::page::{Frame, page};
use crate::seal::Private;

/// As it was typed.
#[derive(Clone, serde::Deserialize)]
#[serde(default)]
pub(super) struct Typed {
    pub(super) name: String,
    pub(super) addressed_as: String,
    pub(super) phone: String,
    pub(super) contact_name: String,
    pub(super) contact_phone: String,
    pub(super) usual_location: String,
    pub(super) seizures: String,
    pub(super) eye_condition: String,
    pub(super) version: String,
}

impl Default for Typed {
    /// Nothing typed and nothing chosen: what a form has that lacks a field.
    fn default() -> Self {
        Self::of(&NewClient::default(), String::new()).choosing("", "")
    }
}

impl Typed {
    /// The form filled with what is kept.
    pub(super) fn of(kept: &NewClient, version: String) -> Self {
        let text = |private: &Private| private.reveal().to_owned();
        let Details { name, addressed_as, phone, contact_name, contact_phone, usual_location } = &kept.details;
        Self {
            name: text(name),
            addressed_as: text(addressed_as),
            phone: text(phone),
            contact_name: text(contact_name),
            contact_phone: text(contact_phone),
            usual_location: text(usual_location),
            seizures: kept.cautions.seizures.name().to_owned(),
            eye_condition: kept.cautions.eye_condition.name().to_owned(),
            version,
        }
    }

    fn choosing(mut self, seizures: &str, eye_condition: &str) -> Self {
        self.seizures = seizures.to_owned();
        self.eye_condition = eye_condition.to_owned();
        self
    }

    /// Reads it; with any problem the second part is not to be kept.
    pub(super) fn check(&self) -> (Problems, NewClient) {
        let mut problems = Problems::default();
        let details = Details {
            name: Private::new(problems.text("name", &self.name, 120, Need::Required, Lines::One)),
            addressed_as: Private::new(problems.text("addressed_as", &self.addressed_as, 120, Need::Optional, Lines::One)),
            phone: Private::new(problems.phone("phone", &self.phone, Need::Optional)),
            contact_name: Private::new(problems.text("contact_name", &self.contact_name, 120, Need::Optional, Lines::One)),
            contact_phone: Private::new(problems.phone("contact_phone", &self.contact_phone, Need::Optional)),
            usual_location: Private::new(problems.text("usual_location", &self.usual_location, 300, Need::Optional, Lines::Many)),
        };
        let seizures = problems.choice("seizures", &self.seizures, Asked::parse).unwrap_or_default();
        let eye_condition = problems.choice("eye_condition", &self.eye_condition, Asked::parse).unwrap_or_default();
        (problems, NewClient { details, cautions: Cautions { seizures, eye_condition } })
    }

    /// Beside each field that now stands differently in the record: how it stands there.
    pub(super) fn differences(&self, kept: &Self) -> Problems {
        let mut problems = Problems::default();
        let answer = |name: &str| Asked::parse(name).map_or_else(|| name.to_owned(), |asked| asked.words().to_owned());
        for (name, typed, kept) in [
            ("name", self.name.clone(), kept.name.clone()),
            ("addressed_as", self.addressed_as.clone(), kept.addressed_as.clone()),
            ("phone", self.phone.clone(), kept.phone.clone()),
            ("contact_name", self.contact_name.clone(), kept.contact_name.clone()),
            ("contact_phone", self.contact_phone.clone(), kept.contact_phone.clone()),
            ("usual_location", self.usual_location.clone(), kept.usual_location.clone()),
            ("seizures", answer(&self.seizures), answer(&kept.seizures)),
            ("eye_condition", answer(&self.eye_condition), answer(&kept.eye_condition)),
        ] {
            now_stands(&mut problems, name, &typed, &kept);
        }
        problems
    }
}

/// Says how a field stands in the record now, when that is not what was typed.
pub(crate) fn now_stands(problems: &mut Problems, name: &'static str, typed: &str, kept: &str) {
    if typed.replace("\r\n", "\n").trim() != kept {
        let kept = if kept.is_empty() { "nothing".to_owned() } else { format!("“{kept}”") };
        problems.add(name, format!("The record now says {kept}."));
    }
}

/// What stands above a form that was not saved.
pub(crate) mod notice {
    pub(crate) const LOOK: &str = "Not saved yet. Please look at these fields:";
    pub(crate) const CHANGED: &str = "Not saved: somebody changed this meanwhile. What you typed is still here. Compare, then save again to replace what the record now says.";
    const NO_DATABASE: &str = "Not saved: the database did not answer. What you typed is still here. Try again in a moment.";
    const NO_ROOM: &str =
        "Not saved: the server is out of room. What you typed is still here. Tell the administrator; once there is room again, save again.";

    /// The database did not do it.
    pub(crate) fn unsaved(fault: &crate::error::Fault) -> &'static str {
        if fault.is_out_of_room() { NO_ROOM } else { NO_DATABASE }
    }
}

#[derive(Template)]
#[template(path = "clients/form.html")]
pub(super) struct FormPage {
    pub(super) frame: Frame,
    /// The client whose record is changed; `None` for a new one.
    pub(super) client: Option<Uuid>,
    pub(super) typed: Typed,
    pub(super) problems: Problems,
    pub(super) notice: &'static str,
}

impl FormPage {
    fn answers(&self) -> [(&'static str, &'static str); 3] {
        [(Asked::NotAsked.name(), "Not asked"), (Asked::No.name(), "No"), (Asked::Yes.name(), "Yes")]
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        const LABELS: [(&str, &str); 8] = [
            ("name", "Name"),
            ("addressed_as", "How to be addressed"),
            ("phone", "Call-back number"),
            ("contact_name", "Emergency contact"),
            ("contact_phone", "Number of the emergency contact"),
            ("usual_location", "Usual location"),
            ("seizures", "Seizures"),
            ("eye_condition", "Eye condition"),
        ];
        list(&LABELS, &self.problems)
    }

    pub(super) fn answer(&self, status: StatusCode) -> Result<Response, Error> {
        Ok((status, page(self)?).into_response())
    }
}

/// Field, label and message of each problem, in the order of the form.
pub(crate) fn list(labels: &[(&'static str, &'static str)], problems: &Problems) -> Vec<(&'static str, &'static str, String)> {
    let message = |name: &str| Some(problems.at(name).to_owned()).filter(|message| !message.is_empty());
    labels.iter().filter_map(|(name, label)| Some((*name, *label, message(name)?))).collect()
}
