//! A target's page: what was said in assessment, the ratings, how far it has come.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::Chart;
use leeward_core::scale::{Sud, Voc};

use super::assessments::{self, Assessed};
use super::{Status, Target, find};
use crate::clients::{details, row};
use crate::outcomes;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::Act;

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

    fn may_become(&self) -> &'static [Status] {
        self.target.status.may_become()
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
    tx.commit().await?;
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
    })
}
