//! The form of a preset: what was typed, what is wrong with it, and its page.

use askama::Template;
use axum::response::{IntoResponse, Response};
use leeward_core::safety;
use leeward_core::wire::{Channels, Length, Plan, Preset, Purpose};
use uuid::Uuid;

use super::{Owner, StoredPreset, parse_purpose, purpose_name};
use crate::platform::Member;
use crate::platform::forms::{Again, Fields, Lines, Need, Problems, list, refusal_words};
use crate::platform::page::{Frame, page};
use crate::store::error::Error;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct PresetForm {
    name: String,
    pub(super) owner: String,
    purpose: String,
    /// A box that is ticked sends something.
    eyes: String,
    ears: String,
    hands: String,
    rate: String,
    width: String,
    cycles: String,
    pub(super) version: String,
}

const TICKED: &str = "on";

impl PresetForm {
    /// The form filled with what is kept.
    pub(super) fn of(kept: &StoredPreset) -> Self {
        let preset = &kept.preset;
        let ticked = |on: bool| if on { TICKED.to_owned() } else { String::new() };
        Self {
            name: preset.name.clone(),
            owner: kept.owner.name().to_owned(),
            purpose: purpose_name(preset.purpose).to_owned(),
            eyes: ticked(preset.channels.eyes),
            ears: ticked(preset.channels.ears),
            hands: ticked(preset.channels.hands),
            rate: preset.rate.to_string(),
            width: preset.width.to_string(),
            cycles: match preset.length {
                Length::Cycles(cycles) => cycles.to_string(),
                Length::Open => String::new(),
            },
            version: kept.version.to_string(),
        }
    }

    /// Reads whose a new one is to be, among those that the member may make.
    pub(super) fn owner(&self, member: &Member, problems: &mut Problems) -> Option<Owner> {
        problems
            .choice("owner", &self.owner, |typed| Owner::ALL.into_iter().find(|owner| owner.name() == typed && owner.is_open_to(member)))
    }

    /// Reads the settings. Each is checked alone against the limits of a set, so that the message stands
    /// beside the field it speaks of; then all together.
    pub(super) fn check(&self, problems: &mut Problems) -> Option<Preset> {
        let name = problems.text("name", &self.name, 40, Need::Required, Lines::One);
        let purpose = problems.choice("purpose", &self.purpose, parse_purpose);
        let channels = Channels { eyes: !self.eyes.is_empty(), ears: !self.ears.is_empty(), hands: !self.hands.is_empty() };
        let usual = Plan { length: Length::Open, ..safety::default_plan() };
        let has_channel = problems.plan("channels", &Plan { channels, ..usual });
        // Hands have a lower limit of the rate than the others.
        let with = if has_channel { Plan { channels, ..usual } } else { usual };
        let rate = problems.number("rate", &self.rate).filter(|rate| problems.plan("rate", &Plan { rate: *rate, ..with }));
        let width = problems.number("width", &self.width).filter(|width| problems.plan("width", &Plan { width: *width, ..usual }));
        let length = self.length(problems, rate.unwrap_or(usual.rate));
        let preset = Preset { name, purpose: purpose?, channels, rate: rate?, width: width?, length: length? };
        if let Err(refusal) = safety::check_preset(&preset) {
            // What is left to be wrong is a calm place that is not short and slow.
            let field = if safety::CALM_RATE_HZ.contains(&preset.rate) { "cycles" } else { "rate" };
            problems.add(if preset.purpose == Purpose::CalmPlace { field } else { "purpose" }, refusal_words(&refusal));
        }
        problems.none().then_some(preset)
    }

    /// An empty field is open-ended.
    fn length(&self, problems: &mut Problems, rate: f64) -> Option<Length> {
        if self.cycles.trim().is_empty() {
            return Some(Length::Open);
        }
        let Ok(cycles) = self.cycles.trim().parse() else {
            problems.add("cycles", "Give a whole number of cycles, such as 24, or leave it empty for open-ended.");
            return None;
        };
        let length = Length::Cycles(cycles);
        problems.plan("cycles", &Plan { length, rate, ..safety::default_plan() }).then_some(length)
    }

    fn channels(&self) -> String {
        let on = [(&self.eyes, "eyes"), (&self.ears, "tones"), (&self.hands, "taps")];
        on.into_iter().filter(|(on, _)| !on.is_empty()).map(|(_, word)| word).collect::<Vec<_>>().join(" and ")
    }
}

impl Fields for PresetForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("name", "Name"),
        ("owner", "Whose"),
        ("purpose", "Purpose"),
        ("channels", "Channels"),
        ("rate", "Rate"),
        ("width", "Width"),
        ("cycles", "Length"),
    ];

    fn shown(&self, name: &str) -> String {
        match name {
            "name" => self.name.clone(),
            "purpose" => self.purpose.replace('_', " "),
            "channels" => self.channels(),
            "rate" => self.rate.clone(),
            "width" => self.width.clone(),
            "cycles" => self.cycles.clone(),
            // Whose it is stays as it was made: an edit does not show it.
            _ => String::new(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

#[derive(Template)]
#[template(path = "presets/form.html")]
pub(super) struct FormPage {
    frame: Frame,
    /// The one that is changed; `None` for a new one.
    preset: Option<Uuid>,
    typed: PresetForm,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn purposes(&self) -> [(&'static str, &'static str); 2] {
        [("processing", "Processing: work on a target"), ("calm_place", "Calm place: short and slow")]
    }

    /// Whose a new one may be.
    fn owners(&self) -> Vec<(&'static str, &'static str)> {
        let open = |owner: &Owner| self.frame.member.as_ref().is_some_and(|member| owner.is_open_to(member));
        Owner::ALL.into_iter().filter(open).map(|owner| (owner.name(), owner.words())).collect()
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<PresetForm>(&self.problems)
    }

    pub(super) fn show(frame: Frame, preset: Option<Uuid>, again: Again<PresetForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, preset, typed, problems, notice })?).into_response())
    }
}
