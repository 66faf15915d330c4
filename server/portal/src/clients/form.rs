//! The form of a client's record: what was typed, what is wrong with it, and its page.

use askama::Template;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{Asked, Cautions, Details, NewClient};
use crate::platform::forms::{Again, Fields, Lines, Need, Problems, list};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::seal::Private;

/// As it was typed.
#[derive(Clone, serde::Deserialize)]
#[serde(default)]
pub(super) struct ClientForm {
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

impl Default for ClientForm {
    /// Nothing typed and nothing chosen: what a form has that lacks a field.
    fn default() -> Self {
        Self::of(&NewClient::default(), String::new()).choosing("", "")
    }
}

impl ClientForm {
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
}

impl Fields for ClientForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("name", "Name"),
        ("addressed_as", "How to be addressed"),
        ("phone", "Call-back number"),
        ("contact_name", "Emergency contact"),
        ("contact_phone", "Number of the emergency contact"),
        ("usual_location", "Usual location"),
        ("seizures", "Seizures"),
        ("eye_condition", "Eye condition"),
    ];

    fn shown(&self, name: &str) -> String {
        let answer = |name: &str| Asked::parse(name).map_or_else(|| name.to_owned(), |asked| asked.words().to_owned());
        match name {
            "name" => self.name.clone(),
            "addressed_as" => self.addressed_as.clone(),
            "phone" => self.phone.clone(),
            "contact_name" => self.contact_name.clone(),
            "contact_phone" => self.contact_phone.clone(),
            "usual_location" => self.usual_location.clone(),
            "seizures" => answer(&self.seizures),
            _ => answer(&self.eye_condition),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "clients/form.html")]
pub(super) struct FormPage {
    frame: Frame,
    /// The client whose record is changed; `None` for a new one.
    client: Option<Uuid>,
    /// Its number; `None` also when the database did not answer.
    number: Option<i32>,
    typed: ClientForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn answers(&self) -> [(&'static str, &'static str); 3] {
        [(Asked::NotAsked.name(), "Not asked"), (Asked::No.name(), "No"), (Asked::Yes.name(), "Yes")]
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<ClientForm>(&self.problems)
    }

    pub(super) fn show(frame: Frame, client: Option<Uuid>, number: Option<i32>, again: Again<ClientForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, client, number, typed, problems, notice })?).into_response())
    }
}
