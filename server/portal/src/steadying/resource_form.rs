//! The form of a resource: what was typed, what is wrong with it, and its page.

use askama::Template;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{Helped, KeptResource, Resource};
use crate::platform::forms::{Again, Fields, Lines, Need, Problems, list};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::seal::{Private, SealError};

/// As it was typed.
#[derive(Clone, serde::Deserialize)]
#[serde(default)]
pub(super) struct ResourceForm {
    cue: String,
    image: String,
    body_feeling: String,
    helped: String,
    on_offer: String,
    pub(super) version: String,
}

impl Default for ResourceForm {
    /// What a form has that lacks a field.
    fn default() -> Self {
        let [cue, image, body_feeling, helped, on_offer, version] = std::array::from_fn(|_| String::new());
        Self { cue, image, body_feeling, helped, on_offer, version }
    }
}

impl ResourceForm {
    /// As a new one begins: on offer, and not known to help.
    pub(super) fn blank() -> Self {
        Self { helped: Helped::default().name().to_owned(), on_offer: "yes".to_owned(), ..Self::default() }
    }

    /// The form filled with what is kept.
    ///
    /// # Errors
    /// [`SealError`] when a part did not open: then there is no form.
    pub(super) fn of(kept: KeptResource) -> Result<Self, SealError> {
        let Resource { cue, image, body_feeling, helped, on_offer } = kept.resource.whole()?;
        let text = |private: Private| private.reveal().to_owned();
        Ok(Self {
            cue: text(cue),
            image: text(image),
            body_feeling: text(body_feeling),
            helped: helped.name().to_owned(),
            on_offer: if on_offer { "yes" } else { "" }.to_owned(),
            version: kept.version.to_string(),
        })
    }

    pub(super) fn check(&self) -> Result<Resource, Problems> {
        let mut problems = Problems::default();
        let mut line = |name, typed: &str, most, need| Private::new(problems.text(name, typed, most, need, Lines::One));
        let cue = line("cue", &self.cue, 60, Need::Required);
        let image = line("image", &self.image, 200, Need::Optional);
        let body_feeling = line("body_feeling", &self.body_feeling, 200, Need::Optional);
        let helped = problems.choice("helped", &self.helped, Helped::parse).unwrap_or_default();
        let resource = Resource { cue, image, body_feeling, helped, on_offer: !self.on_offer.is_empty() };
        if problems.none() { Ok(resource) } else { Err(problems) }
    }
}

impl Fields for ResourceForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("cue", "Cue word"),
        ("image", "Picture"),
        ("body_feeling", "In the body"),
        ("helped", "Whether it has helped"),
        ("on_offer", "At the desk"),
    ];

    fn shown(&self, name: &str) -> String {
        match name {
            "cue" => self.cue.clone(),
            "image" => self.image.clone(),
            "body_feeling" => self.body_feeling.clone(),
            "helped" => Helped::parse(&self.helped).map_or_else(|| self.helped.clone(), |helped| helped.words().to_owned()),
            "on_offer" => if self.on_offer.is_empty() { "not offered" } else { "offered" }.to_owned(),
            _ => String::new(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "steadying/resource.html")]
pub(super) struct FormPage {
    frame: Frame,
    client: Uuid,
    /// Which one is changed; `None`: a new one.
    number: Option<i32>,
    /// The record's number; `None` when the database did not answer.
    record: Option<i32>,
    typed: ResourceForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn heading(&self) -> &'static str {
        if self.number.is_some() { "Edit resource" } else { "New resource" }
    }

    fn title(&self) -> String {
        let what = self.number.map_or_else(|| "New resource".to_owned(), |number| format!("Edit resource {number}"));
        self.record.map_or_else(|| what.clone(), |record| format!("{what} of record {record}"))
    }

    fn action(&self) -> String {
        let what = self.number.map_or_else(|| "new".to_owned(), |number| format!("{number}/edit"));
        format!("/clients/{}/resources/{what}", self.client)
    }

    fn answers(&self) -> Vec<(&'static str, &'static str)> {
        Helped::ALL.iter().map(|helped| (helped.name(), helped.words())).collect()
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<ResourceForm>(&self.problems)
    }

    pub(super) fn show(
        frame: Frame,
        (client, number, record): (Uuid, Option<i32>, Option<i32>),
        again: Again<ResourceForm>,
    ) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, client, number, record, typed, problems, notice })?).into_response())
    }
}
