//! The form of a cluster: what was typed, what is wrong with it, and its page.

use askama::Template;
use axum::response::{IntoResponse, Response};
use uuid::Uuid;

use super::{Cluster, Theme};
use crate::platform::forms::{Again, Fields, Lines, Need, Problems, list};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::seal::{Private, SealError};

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct ClusterForm {
    name: String,
    theme: String,
    /// Numbers of targets, or nothing.
    pub(super) earliest: String,
    pub(super) worst: String,
    pub(super) version: String,
}

impl ClusterForm {
    /// The form filled with what is kept; `numbers` are those of the cluster's targets.
    ///
    /// # Errors
    /// [`SealError`] when the name did not open: then there is no form.
    pub(super) fn of(cluster: Cluster, numbers: &[(Uuid, i32)]) -> Result<Self, SealError> {
        let number = |target: Option<Uuid>| {
            let found = target.and_then(|target| numbers.iter().find(|(id, _)| *id == target));
            found.map(|(_, number)| number.to_string()).unwrap_or_default()
        };
        Ok(Self {
            name: cluster.name.text()?.reveal().to_owned(),
            theme: cluster.theme.map(|theme| theme.name().to_owned()).unwrap_or_default(),
            earliest: number(cluster.earliest),
            worst: number(cluster.worst),
            version: cluster.version.to_string(),
        })
    }

    /// Reads name and theme.
    pub(super) fn check(&self, problems: &mut Problems) -> Option<(Private, Option<Theme>)> {
        let name = Private::new(problems.text("name", &self.name, 60, Need::Required, Lines::One));
        let theme = match self.theme.as_str() {
            "" => None,
            theme => problems.choice("theme", theme, Theme::parse),
        };
        problems.none().then_some((name, theme))
    }

    /// Reads which target is marked.
    pub(super) fn marked(problems: &mut Problems, field: &'static str, typed: &str, numbers: &[(Uuid, i32)]) -> Option<Uuid> {
        if typed.is_empty() {
            return None;
        }
        problems.choice(field, typed, |typed| numbers.iter().find(|(_, number)| number.to_string() == typed).map(|(id, _)| *id))
    }
}

impl Fields for ClusterForm {
    const LABELS: &'static [(&'static str, &'static str)] =
        &[("name", "Name"), ("theme", "Theme"), ("earliest", "Earliest"), ("worst", "Worst")];

    fn shown(&self, name: &str) -> String {
        let target = |number: &str| if number.is_empty() { String::new() } else { format!("target {number}") };
        match name {
            "name" => self.name.clone(),
            "theme" => Theme::parse(&self.theme).map_or_else(|| self.theme.clone(), |theme| theme.words().to_owned()),
            "earliest" => target(&self.earliest),
            "worst" => target(&self.worst),
            _ => String::new(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

/// What the form is for.
#[derive(Clone, Copy)]
pub(super) enum Purpose {
    /// A new cluster of this client.
    New(Uuid),
    /// The cluster of this number of this client.
    Edit(Uuid, i32),
}

/// What the page holds that nobody typed.
#[derive(Default)]
pub(super) struct Around {
    /// The number of the client's record.
    pub(super) record: Option<i32>,
    /// Value and words of the targets in it.
    pub(super) memories: Vec<(String, String)>,
}

#[derive(Template)]
#[template(path = "targets/plan/cluster.html")]
pub(super) struct FormPage {
    frame: Frame,
    place: Purpose,
    around: Around,
    typed: ClusterForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn is_new(&self) -> bool {
        matches!(self.place, Purpose::New(_))
    }

    fn heading(&self) -> &'static str {
        if self.is_new() { "New cluster" } else { "Edit cluster" }
    }

    fn title(&self) -> String {
        let what = match self.place {
            Purpose::New(_) => "New cluster".to_owned(),
            Purpose::Edit(_, number) => format!("Edit cluster {number}"),
        };
        self.around.record.map_or_else(|| what.clone(), |record| format!("{what} of record {record}"))
    }

    fn action(&self) -> String {
        match self.place {
            Purpose::New(client) => format!("/clients/{client}/clusters/new"),
            Purpose::Edit(client, number) => format!("/clients/{client}/clusters/{number}/edit"),
        }
    }

    /// Where one comes from, and goes back to.
    fn back(&self) -> String {
        let (Purpose::New(client) | Purpose::Edit(client, _)) = self.place;
        format!("/clients/{client}/plan")
    }

    fn themes(&self) -> Vec<(&'static str, &'static str)> {
        std::iter::once(("", "Not said")).chain(Theme::ALL.iter().map(|theme| (theme.name(), theme.words()))).collect()
    }

    /// The targets in it, led by none; one that was chosen stays though they are not known.
    fn memories(&self, chosen: &str) -> Vec<(String, String)> {
        let none = (String::new(), "Not marked".to_owned());
        let mut all: Vec<(String, String)> = std::iter::once(none).chain(self.around.memories.iter().cloned()).collect();
        if !all.iter().any(|(number, _)| number == chosen) {
            all.push((chosen.to_owned(), format!("Target {chosen}")));
        }
        all
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<ClusterForm>(&self.problems)
    }

    pub(super) fn show(frame: Frame, place: Purpose, around: Around, again: Again<ClusterForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, place, around, typed, problems, notice })?).into_response())
    }
}
