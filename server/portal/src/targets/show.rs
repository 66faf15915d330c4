//! A target's page: what was said in assessment, the ratings, how far it has come.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::Chart;
use leeward_core::course::{Course, Procedure, State as Stands};
use leeward_core::scale::{Sud, Voc};

use super::assessments::{self, Assessed};
use super::plan::{Other, others};
use super::{Cluster, Target, clusters, find, list};
use crate::clients::{details, row};
use crate::course;
use crate::outcomes;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::Act;
use uuid::Uuid;

#[derive(Template)]
#[template(path = "targets/target.html")]
struct TargetPage {
    frame: Frame,
    client_name: Opened,
    /// The number of the client's record.
    record: i32,
    opened_on: String,
    archived: bool,
    target: Target,
    assessed: Vec<Assessed>,
    when: When,
    chart: Chart,
    course: Course,
    cluster: Option<Cluster>,
    /// What it came up from, and what came up from it: id and words.
    from: Option<(Uuid, String)>,
    led_to: Vec<(Uuid, String)>,
    /// Of the same cluster, once this one is at its end.
    others: Vec<Other>,
}

/// A part of what the end asks for.
struct Asked {
    name: &'static str,
    /// What is there, and what would do.
    words: String,
    reached: bool,
}

impl TargetPage {
    /// The assessment in its order.
    fn assessment(&self) -> [(&'static str, String); 7] {
        let words = &self.target.words;
        let said = |text: &Opened| if text.is_empty() { "not asked".to_owned() } else { text.shown().to_owned() };
        [
            ("Worst picture", said(&words.picture)),
            ("Negative belief", said(&words.negative_belief)),
            ("Positive belief", said(&words.positive_belief)),
            ("VOC", self.voc(&self.target.assessed_voc)),
            ("Emotions", said(&words.emotions)),
            ("SUD", self.sud(&self.target.assessed_sud)),
            ("Body location", said(&words.body_location)),
        ]
    }

    fn sud(&self, value: &Option<Sud>) -> String {
        value.map_or_else(|| "not rated".to_owned(), |sud| format!("{} of {}", sud.get(), Sud::MOST))
    }

    fn voc(&self, value: &Option<Voc>) -> String {
        value.map_or_else(|| "not rated".to_owned(), |voc| format!("{} of {}", voc.get(), Voc::MOST))
    }

    fn stands(&self) -> &'static str {
        self.target.stands()
    }

    fn finding(&self) -> String {
        let Course { because, unfounded, .. } = self.course;
        let why = because.map(|because| format!("; {}", course::because_words(because))).unwrap_or_default();
        let doubt = if unfounded { "; it was called complete, and the record does not carry that" } else { "" };
        format!("{}{why}{doubt}", self.stands())
    }

    fn procedure(&self) -> &'static str {
        course::procedure_words(self.course.known.procedure)
    }

    fn procedures(&self) -> &'static [(&'static str, &'static str)] {
        &course::PROCEDURES
    }

    fn procedure_code(&self) -> String {
        codes::name(self.course.known.procedure).unwrap_or_default()
    }

    fn asked(&self) -> Vec<Asked> {
        let open = self.course.open();
        let asked = |end| {
            let (name, wanted) = course::end_words(end);
            let (there, reached) = (course::reached_words(end, &self.course), !open.contains(&end));
            Asked { name, words: if reached { there } else { format!("{there}. Asked for: {wanted}") }, reached }
        };
        self.course.asks().iter().copied().map(asked).collect()
    }

    /// What may be written down of what its end asks for; nothing once it is over.
    fn findings(&self) -> Vec<(&'static str, &'static str)> {
        let known = &self.course.known;
        let mut all: Vec<(&str, &str)> = match known.procedure {
            _ if self.course.state.is_over() => vec![],
            Procedure::Standard | Procedure::RecentEvent => {
                vec![("scan.clear", "Body scan: clear"), ("scan.felt", "Body scan: something is felt")]
            }
            Procedure::Future => {
                vec![("rehearsal.undisturbed", "Rehearsed: nothing disturbed"), ("rehearsal.disturbed", "Rehearsed: something disturbed")]
            }
            Procedure::Resource | Procedure::Restricted => vec![],
        };
        if !all.is_empty() {
            let ones = known.sud.into_iter().chain(known.segments.values().copied()).any(|sud| sud.get() == 1);
            all.extend((ones && !known.sud_fits).then_some(("fits.sud", "A SUD of 1 fits the facts")));
            let low = known.voc.is_some_and(|voc| voc.get() < Voc::MOST);
            all.extend((low && !known.voc_fits).then_some(("fits.voc", "A VOC below 7 fits the facts")));
        }
        all
    }

    fn in_segments(&self) -> bool {
        self.course.known.procedure == Procedure::RecentEvent && !self.course.state.is_over()
    }

    fn decisions(&self) -> Vec<(String, &'static str)> {
        let name = |decision| format!("decided.{}", codes::name(decision).unwrap_or_default());
        self.course.choices().into_iter().map(|decision| (name(decision), course::decision_words(decision))).collect()
    }

    /// Whether calling it complete needs a code.
    fn needs_code(&self) -> bool {
        !self.course.state.is_over() && !self.course.open().is_empty()
    }

    fn codes(&self) -> &'static [(&'static str, &'static str)] {
        &course::BECAUSE
    }

    /// What it is marked as in its cluster.
    fn marked(&self) -> &'static str {
        self.cluster.as_ref().map_or("", |cluster| cluster.marked(self.target.id))
    }

    /// What the clinician has to look at first.
    fn rose(&self) -> bool {
        self.target.stand.held == Some(leeward_core::course::Held::No)
    }

    fn is_provisional(&self) -> bool {
        self.course.state == Stands::Complete && self.target.stand.held == Some(leeward_core::course::Held::NotYet)
    }
}

pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("target.view").object(id)).await?;
    let target = find(&mut tx, &app, id).await?;
    let client = details(&mut tx, &app, target.client).await?;
    let record = row(&mut tx, target.client).await?.ok_or(Error::NotFound)?.number;
    let when = When::in_practice(&mut tx).await?;
    let assessed = assessments::list(&mut tx, id).await?;
    let chart = outcomes::course(&mut tx, id).await?;
    let course = course::of(&mut tx, id).await?;
    let all = list(&mut tx, &app, target.client).await?;
    let others = others(&mut tx, &target, &all).await?;
    let cluster = clusters(&mut tx, &app, target.client).await?.into_iter().find(|cluster| Some(cluster.id) == target.planned.cluster);
    tx.commit().await?;
    let named = |other: &Target| (other.id, format!("{}. {}", other.number, other.words.label.shown()));
    let from = all.iter().find(|other| Some(other.id) == target.planned.parent).map(named);
    let led_to = all.iter().filter(|other| other.planned.parent == Some(id)).map(named).collect();
    page(&TargetPage {
        frame,
        client_name: client.name,
        record,
        opened_on: when.day(&target.opened_at),
        archived: target.archived_at.is_some(),
        target,
        assessed,
        when,
        chart,
        course,
        cluster,
        from,
        led_to,
        others,
    })
}
