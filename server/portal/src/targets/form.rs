//! The form of a target, in the order of an assessment: picture, negative belief, wanted belief, VOC,
//! emotions, SUD, body. What was typed, what is wrong with it, and its page.

use askama::Template;
use axum::response::{IntoResponse, Response};
use leeward_core::scale::{ScaleError, Sud, Voc};
use uuid::Uuid;

use super::assessments::{Assessed, Ratings, Slip};
use super::beliefs::Side;
use super::form_plan::{Plan, PlanFields, numbered, wanted, with_chosen};
use super::plan::Wanted;
use super::{Prong, Target, Words};
use crate::platform::forms::{Again, Fields, Lines, Need, Problems, list};
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::{Private, SealError};

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct TargetForm {
    label: String,
    prong: String,
    age: String,
    year: String,
    /// The number of a cluster, or nothing.
    cluster: String,
    /// The name of a new one.
    new_cluster: String,
    /// The number of the target it came up from, or nothing.
    parent: String,
    picture: String,
    negative_belief: String,
    /// One of the list, or nothing.
    negative_listed: String,
    positive_belief: String,
    positive_listed: String,
    voc: String,
    emotions: String,
    sud: String,
    body_location: String,
    /// The id of a rating that is a typing error, or nothing.
    wrong: String,
    /// What it should be.
    right: String,
    pub(super) version: String,
}

/// A form that can be kept.
pub(super) struct Good {
    pub(super) prong: Prong,
    pub(super) words: Words,
    pub(super) wanted: Wanted,
    /// Asked now.
    pub(super) ratings: Ratings,
}

impl TargetForm {
    /// The form filled with what is kept. Ratings are not: what stands in their fields was asked anew.
    ///
    /// # Errors
    /// [`SealError`] when a part of it did not open: then there is no form.
    pub(super) fn of(target: &Target, around: &Plan) -> Result<Self, SealError> {
        let number = |number: Option<i16>| number.map(|number| number.to_string()).unwrap_or_default();
        let text = |private: &Private| private.reveal().to_owned();
        let words = target.words.clone().whole()?;
        Ok(Self {
            label: text(&words.label),
            prong: target.prong.name().to_owned(),
            age: number(target.planned.age),
            year: number(target.planned.year),
            cluster: around.cluster(target),
            parent: around.parent(target),
            picture: text(&words.picture),
            negative_belief: text(&words.negative_belief),
            positive_belief: text(&words.positive_belief),
            emotions: text(&words.emotions),
            body_location: text(&words.body_location),
            version: target.version.to_string(),
            ..Self::default()
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
            negative_belief: belief(
                &mut problems,
                ("negative_belief", &self.negative_belief),
                ("negative_listed", &self.negative_listed),
                Side::Negative,
            ),
            positive_belief: belief(
                &mut problems,
                ("positive_belief", &self.positive_belief),
                ("positive_listed", &self.positive_listed),
                Side::Positive,
            ),
            emotions: long(&mut problems, "emotions", &self.emotions, 300),
            body_location: long(&mut problems, "body_location", &self.body_location, 300),
        };
        let prong = problems.choice("prong", &self.prong, Prong::parse);
        let sud = rating(&mut problems, "sud", Sud::parse(&self.sud));
        let voc = rating(&mut problems, "voc", Voc::parse(&self.voc));
        let plan =
            PlanFields { age: &self.age, year: &self.year, cluster: &self.cluster, new_cluster: &self.new_cluster, parent: &self.parent };
        let wanted = wanted(&plan, &mut problems);
        match prong {
            Some(prong) if problems.none() => Ok(Good { prong, words, wanted, ratings: Ratings { sud, voc } }),
            _ => Err(problems),
        }
    }

    /// The typing error that it names.
    pub(super) fn slip(&self) -> Slip<'_> {
        Slip { wrong: &self.wrong, right: &self.right }
    }
}

impl Fields for TargetForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("label", "Label"),
        ("prong", "Prong"),
        ("age", "Age"),
        ("year", "Year"),
        ("cluster", "Belongs with"),
        ("new_cluster", "A new cluster"),
        ("parent", "Came up from"),
        ("picture", "Worst picture"),
        ("negative_belief", "Negative belief"),
        ("negative_listed", "Negative belief from the list"),
        ("positive_belief", "Positive belief"),
        ("positive_listed", "Positive belief from the list"),
        ("voc", "VOC"),
        ("emotions", "Emotions"),
        ("sud", "SUD"),
        ("body_location", "Body location"),
        ("wrong", "Which value is wrong"),
        ("right", "It should be"),
    ];

    fn shown(&self, name: &str) -> String {
        let prong = || Prong::parse(&self.prong).map_or_else(|| self.prong.clone(), |prong| prong.words().to_owned());
        match name {
            "label" => self.label.clone(),
            "prong" => prong(),
            "age" => self.age.trim().to_owned(),
            "year" => self.year.trim().to_owned(),
            "cluster" => numbered("cluster", &self.cluster),
            "parent" => numbered("target", &self.parent),
            "picture" => self.picture.clone(),
            "negative_belief" => self.negative_belief.clone(),
            "positive_belief" => self.positive_belief.clone(),
            "emotions" => self.emotions.clone(),
            "body_location" => self.body_location.clone(),
            // An assessment is added to the record, or a slip of it corrected: neither takes the place of anything.
            _ => String::new(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

pub(super) fn long(problems: &mut Problems, name: &'static str, typed: &str, most: usize) -> Private {
    Private::new(problems.text(name, typed, most, Need::Optional, Lines::Many))
}

/// In the client's words, or one of the list.
fn belief(problems: &mut Problems, (name, typed): (&'static str, &str), (list, chosen): (&'static str, &str), side: Side) -> Private {
    let own = long(problems, name, typed, 600);
    if chosen.is_empty() {
        return own;
    }
    if !own.is_empty() {
        problems.add(list, "There are words of the client’s own above. Keep those and choose none here, or clear them.");
        return own;
    }
    Private::new(problems.choice(list, chosen, |chosen| side.read(chosen)).unwrap_or_default())
}

/// A rating may be left out; anything else that is none gets its reason.
pub(super) fn rating<T>(problems: &mut Problems, name: &'static str, parsed: Result<T, ScaleError>) -> Option<T> {
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
pub(super) enum Purpose {
    /// A new target of this client.
    New(Uuid),
    /// This target.
    Edit(Uuid),
}

impl Purpose {
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

/// What the page holds that nobody typed.
pub(super) struct Around {
    /// The page's.
    pub(super) title: String,
    /// The assessments so far of a target that there is already; `None` also when the database did not answer.
    pub(super) assessed: Option<(Vec<Assessed>, When)>,
    /// What the client's plan has; nothing when the database did not answer.
    pub(super) plan: Plan,
}

#[derive(Template)]
#[template(path = "targets/form.html")]
pub(super) struct FormPage {
    frame: Frame,
    place: Purpose,
    typed: TargetForm,
    around: Around,
    problems: Problems,
    notice: &'static str,
}

impl FormPage {
    fn prongs(&self) -> Vec<(&'static str, &'static str)> {
        Prong::ALL.iter().map(|prong| (prong.name(), prong.words())).collect()
    }

    /// The label of a field for a rating.
    fn label(&self, scale: &str) -> String {
        if self.place.is_new() { scale.to_owned() } else { format!("{scale}, asked anew") }
    }

    /// What a field for a rating says below it: the scale, and how it was assessed last.
    fn hint(&self, scale: &str, means: &str) -> String {
        let last = self.around.assessed.iter().find_map(|(all, when)| Some(all.iter().rfind(|one| one.is(scale))?.words(*when)));
        match (last, self.place) {
            (_, Purpose::New(_)) => means.to_owned(),
            (None, Purpose::Edit(_)) => format!("{means} Fill it in only if it was asked today."),
            (Some(last), Purpose::Edit(_)) => {
                format!(
                    "Assessed last: {last}. Fill it in only if it was asked again: it is kept as a new assessment, and the earlier ones stay. {means}"
                )
            }
        }
    }

    /// What a target may belong with, led by nothing.
    fn clusters(&self) -> Vec<(String, String)> {
        let all = self.around.plan.clusters.iter().map(|cluster| (cluster.number.to_string(), cluster.name.shown().to_owned()));
        with_chosen("By itself", all, &self.typed.cluster)
    }

    /// What a target may have come up from, led by nothing.
    fn parents(&self) -> Vec<(String, String)> {
        let words = |other: &Target| (other.number.to_string(), format!("{}. {}", other.number, other.words.label.shown()));
        with_chosen("None", self.around.plan.others.iter().map(words), &self.typed.parent)
    }

    fn negatives(&self) -> Vec<(String, String)> {
        Side::Negative.options()
    }

    fn positives(&self) -> Vec<(String, String)> {
        Side::Positive.options()
    }

    /// The ratings that may be a typing error, latest first, led by none.
    fn slips(&self) -> Vec<(String, String)> {
        let none = (String::new(), "No typing error".to_owned());
        let known = self.around.assessed.iter().flat_map(|(all, when)| all.iter().rev().map(|one| (one.id.to_string(), one.words(*when))));
        let mut slips: Vec<(String, String)> = std::iter::once(none).chain(known).collect();
        if !slips.iter().any(|(id, _)| *id == self.typed.wrong) {
            slips.push((self.typed.wrong.clone(), "The value chosen before".to_owned()));
        }
        slips
    }

    fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
        list::<TargetForm>(&self.problems)
    }

    pub(super) fn show(frame: Frame, place: Purpose, around: Around, again: Again<TargetForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        let Again { typed, problems, notice, status } = again;
        Ok((status, page(&Self { frame, place, typed, around, problems, notice })?).into_response())
    }
}
