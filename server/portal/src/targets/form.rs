//! The form of a target, in the order of an assessment: picture, negative belief, wanted belief, VOC,
//! emotions, SUD, body. What was typed, what is wrong with it, and its page.

use askama::Template;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use leeward_core::scale::{ScaleError, Sud, Voc};
use uuid::Uuid;

use super::{Baseline, Prong, Target, Words};
use crate::clients::{list, now_stands};
use crate::error::Error;
use crate::forms::{Lines, Need, Problems};
use crate::page::{Frame, page};
use crate::seal::{Private, SealError};

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Typed {
    label: String,
    prong: String,
    picture: String,
    negative_belief: String,
    positive_belief: String,
    voc: String,
    emotions: String,
    sud: String,
    body_location: String,
    pub(super) version: String,
}

/// A form that can be kept.
pub(super) struct Good {
    pub(super) prong: Prong,
    pub(super) words: Words,
    pub(super) baseline: Baseline,
}

impl Typed {
    /// The form filled with what is kept.
    ///
    /// # Errors
    /// [`SealError`] when a part of it did not open: then there is no form.
    pub(super) fn of(target: &Target) -> Result<Self, SealError> {
        let text = |private: &Private| private.reveal().to_owned();
        let words = target.words.clone().whole()?;
        let rating = |value: Option<u8>| value.map(|value| value.to_string()).unwrap_or_default();
        Ok(Self {
            label: text(&words.label),
            prong: target.prong.name().to_owned(),
            picture: text(&words.picture),
            negative_belief: text(&words.negative_belief),
            positive_belief: text(&words.positive_belief),
            voc: rating(target.baseline_voc.map(Voc::get)),
            emotions: text(&words.emotions),
            sud: rating(target.baseline_sud.map(Sud::get)),
            body_location: text(&words.body_location),
            version: target.version.to_string(),
        })
    }

    /// Reads it.
    ///
    /// # Errors
    /// What is wrong, field by field.
    pub(super) fn check(&self) -> Result<Good, Problems> {
        let mut problems = Problems::default();
        let words = Words {
            label: Private::new(problems.text("label", &self.label, 60, Need::Required, Lines::One)),
            picture: long(&mut problems, "picture", &self.picture, 600),
            negative_belief: long(&mut problems, "negative_belief", &self.negative_belief, 600),
            positive_belief: long(&mut problems, "positive_belief", &self.positive_belief, 600),
            emotions: long(&mut problems, "emotions", &self.emotions, 300),
            body_location: long(&mut problems, "body_location", &self.body_location, 300),
        };
        let prong = problems.choice("prong", &self.prong, Prong::parse);
        let sud = rating(&mut problems, "sud", Sud::parse(&self.sud));
        let voc = rating(&mut problems, "voc", Voc::parse(&self.voc));
        match prong {
            Some(prong) if problems.none() => Ok(Good { prong, words, baseline: Baseline { sud, voc } }),
            _ => Err(problems),
        }
    }

    /// Beside each field that now stands differently in the record: how it stands there.
    pub(super) fn differences(&self, kept: &Self) -> Problems {
        let mut problems = Problems::default();
        for (name, typed, kept) in [
            ("label", &self.label, &kept.label),
            ("prong", &self.prong, &kept.prong),
            ("picture", &self.picture, &kept.picture),
            ("negative_belief", &self.negative_belief, &kept.negative_belief),
            ("positive_belief", &self.positive_belief, &kept.positive_belief),
            ("voc", &self.voc, &kept.voc),
            ("emotions", &self.emotions, &kept.emotions),
            ("sud", &self.sud, &kept.sud),
            ("body_location", &self.body_location, &kept.body_location),
        ] {
            now_stands(&mut problems, name, typed, kept);
        }
        problems
    }
}

fn long(problems: &mut Problems, name: &'static str, typed: &str, most: usize) -> Private {
    Private::new(problems.text(name, typed, most, Need::Optional, Lines::Many))
}

/// A rating may be left out; anything else that is none gets its reason.
fn rating<T>(problems: &mut Problems, name: &'static str, parsed: Result<T, ScaleError>) -> Option<T> {
    match parsed {
        Ok(value) => Some(value),
        Err(ScaleError::Blank) => None,
        Err(ScaleError::VocZero) => {
            problems.add(name, "VOC runs from 1 (feels completely false) to 7 (completely true). Did you mean 1?");
            None
        }
        Err(fault) => {
            problems.add(name, fault.to_string());
            None
        }
    }
}

/// What the form is for.
#[derive(Clone, Copy)]
pub(super) enum Place {
    /// A new target of this client.
    New(Uuid),
    /// This target.
    Edit(Uuid),
}

impl Place {
    fn is_new(self) -> bool {
        matches!(self, Self::New(_))
    }

    /// Where one comes from, and goes back to.
    fn back(self) -> String {
        match self {
            Self::New(client) => format!("/clients/{client}"),
            Self::Edit(target) => format!("/targets/{target}"),
        }
    }

    /// Where the form is sent.
    fn action(self) -> String {
        self.back() + if self.is_new() { "/targets/new" } else { "/edit" }
    }
}

#[derive(Template)]
#[template(path = "targets/form.html")]
pub(super) struct FormPage {
    pub(super) frame: Frame,
    pub(super) place: Place,
    pub(super) typed: Typed,
    pub(super) problems: Problems,
    pub(super) notice: &'static str,
}

impl FormPage {
    fn prongs(&self) -> [(&'static str, &'static str); 3] {
        Prong::ALL.map(|prong| (prong.name(), prong.words()))
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        const LABELS: [(&str, &str); 9] = [
            ("label", "Label"),
            ("prong", "Prong"),
            ("picture", "Worst picture"),
            ("negative_belief", "Negative belief"),
            ("positive_belief", "Positive belief"),
            ("voc", "VOC"),
            ("emotions", "Emotions"),
            ("sud", "SUD"),
            ("body_location", "Body location"),
        ];
        list(&LABELS, &self.problems)
    }

    pub(super) fn answer(&self, status: StatusCode) -> Result<Response, Error> {
        Ok((status, page(self)?).into_response())
    }
}
