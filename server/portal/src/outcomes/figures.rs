//! What the lead's panels are made of: as it is now, or as it stood when a quarter was frozen. Counts; every rule over them stands in
//! `flow.rs` and `change.rs`, and draws both alike.

use std::collections::BTreeMap;

use chrono::{DateTime, NaiveDate, Utc};
use leeward_core::measures::{Cut, Measure, Threshold};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::period::Period;
use super::queries_practice::{self as queries, EndRow, GroupRow, SnapshotRow, WeekRow};
use crate::base::ids::new_id;
use crate::measures::threshold;
use crate::platform::App;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// The figures of one period.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Figures {
    pub(super) weeks: Vec<WeekRow>,
    pub(super) ends: Vec<EndRow>,
    pub(super) in_treatment: i64,
    /// Of these, without any reprocessing yet.
    pub(super) not_yet: i64,
    pub(super) groups: Vec<GroupRow>,
    /// By what each form was judged.
    judged: BTreeMap<String, Judged>,
}

/// By what a form was judged.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
struct Judged {
    /// From so many points on a change was reliable.
    points: u16,
    /// The version of its rules.
    rules: i16,
    /// Its cut.
    cut: Option<u16>,
}

/// By what a form is judged, with its sources.
pub(super) struct JudgedBy {
    pub(super) threshold: Threshold,
    pub(super) rules: i16,
    pub(super) cut: Option<Cut>,
}

impl Figures {
    /// By what a change of `measure` is judged; `None`: it is not.
    pub(super) fn judged(&self, measure: Measure) -> Option<JudgedBy> {
        let Judged { points, rules, cut } = *self.judged.get(measure.name())?;
        let form = measure.form();
        let threshold = form.reliable.iter().find(|one| one.points == points).copied();
        let threshold = threshold.unwrap_or(Threshold { points, source: "a threshold that is offered no more" });
        let source = |at| form.cut.filter(|cut| cut.at == at).map_or("a cut that is used no more", |cut| cut.source);
        Some(JudgedBy { threshold, rules, cut: cut.map(|at| Cut { at, source: source(at) }) })
    }

    /// Those of a period as they are now.
    pub(super) async fn now(tx: &mut Tx, period: Period, when: When) -> Result<Self, Error> {
        let (from, until) = period.moments(when);
        let mut judged = BTreeMap::new();
        for measure in Measure::ALL.into_iter().filter(|measure| measure.form().is_outcome) {
            let form = measure.form();
            if let Some(one) = threshold(tx, measure).await? {
                judged.insert(measure.name().to_owned(), Judged { points: one.points, rules: form.rules, cut: form.cut.map(|cut| cut.at) });
            }
        }
        let (in_treatment, not_yet) = queries::in_treatment(tx, until).await?;
        Ok(Self {
            weeks: queries::weeks(tx, from, until).await?,
            ends: queries::ends(tx, from, until).await?,
            in_treatment,
            not_yet,
            groups: queries::groups(tx, from, until).await?,
            judged,
        })
    }
}

/// A quarter that was frozen.
pub(super) struct Frozen {
    pub(super) id: Uuid,
    pub(super) period: Period,
    pub(super) made_at: DateTime<Utc>,
    pub(super) made_by: String,
}

impl Frozen {
    fn of(row: &SnapshotRow) -> Self {
        let period = Period { first: row.first_day, last: row.last_day };
        Self { id: row.id, period, made_at: row.made_at, made_by: row.made_by.clone().unwrap_or_default() }
    }
}

/// All quarters that were frozen, the latest first.
pub(super) async fn frozen(tx: &mut Tx) -> Result<Vec<Frozen>, Error> {
    Ok(queries::snapshots(tx).await?.iter().map(Frozen::of).collect())
}

/// The figures of one that was frozen.
pub(super) async fn figures_of(tx: &mut Tx, id: Uuid) -> Result<Figures, Error> {
    let figures = queries::snapshot(tx, id).await?.ok_or(Error::NotFound)?;
    serde_json::from_value(figures).map_err(|_| Error::Inconsistent("practice_snapshot.figures"))
}

/// Freezes the period; `None`: it was frozen already.
pub(super) async fn freeze(tx: &mut Tx, app: &App, period: Period, when: When) -> Result<Option<Uuid>, Error> {
    let figures = Figures::now(tx, period, when).await?;
    let body = serde_json::to_value(&figures).map_err(|fault| Error::Inner(format!("figures: {fault}")))?;
    let id = new_id(&app.world);
    let days: (NaiveDate, NaiveDate) = (period.first, period.last);
    Ok(queries::add_snapshot(tx, id, days, app.world.now(), &body).await?.then_some(id))
}
