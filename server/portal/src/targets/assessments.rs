//! The dated assessments of a target. One made anew is a row of its own, so the first stays the first; a typing
//! error is corrected by a row that names the wrong one, and both values stay in the record.

use chrono::{DateTime, Utc};
use leeward_core::scale::{ScaleError, Sud, Voc};
use uuid::Uuid;

use super::queries;
use crate::base::ids::new_id;
use crate::course;
use crate::platform::App;
use crate::platform::forms::Problems;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// The ratings of one assessment.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Ratings {
    pub(super) sud: Option<Sud>,
    pub(super) voc: Option<Voc>,
}

/// A rating of an assessment that stands.
#[derive(Clone, Debug)]
pub(super) struct Assessed {
    pub(super) id: Uuid,
    scale: String,
    value: i16,
    asked_at: DateTime<Utc>,
    /// When it was corrected last, if it was.
    corrected_at: Option<DateTime<Utc>>,
    /// The values it was corrected from, first to last; `None`: taken back.
    before: Vec<Option<i16>>,
}

impl Assessed {
    pub(super) fn of(row: queries::AssessedRow) -> Self {
        let (id, scale, value, asked_at) = (row.id, row.scale, row.value, row.asked_at);
        Self { id, scale, value, asked_at, corrected_at: row.corrected.then_some(row.at), before: row.before }
    }

    /// Such as "SUD 8".
    pub(super) fn rating(&self) -> String {
        format!("{} {}", self.scale.to_uppercase(), self.value)
    }

    pub(super) fn day(&self, when: When) -> String {
        when.day(&self.asked_at)
    }

    /// Such as "SUD 8, Tuesday 3 March 2026".
    pub(super) fn words(&self, when: When) -> String {
        format!("{}, {}", self.rating(), self.day(when))
    }

    /// What was corrected; empty where nothing was.
    pub(super) fn remarks(&self, when: When) -> String {
        let Some(at) = &self.corrected_at else { return String::new() };
        let before: Vec<String> = self.before.iter().map(|value| value.map_or("taken back".into(), |value| value.to_string())).collect();
        format!("Typing error corrected {}: {} before", when.day(at), before.join(", then "))
    }

    pub(super) fn is(&self, scale: &str) -> bool {
        self.scale == scale
    }
}

/// The assessments of `target` that stand, in the order they were asked.
pub(super) async fn list(tx: &mut Tx, target: Uuid) -> Result<Vec<Assessed>, Error> {
    Ok(queries::assessed(tx, target).await?.into_iter().map(Assessed::of).collect())
}

/// Keeps an assessment of now. One that is made while a session on this target is open belongs to it.
pub(super) async fn assess(tx: &mut Tx, app: &App, client: Uuid, target: Uuid, ratings: Ratings) -> Result<(), Error> {
    let now = app.world.now();
    let given = [("sud", ratings.sud.map(Sud::get)), ("voc", ratings.voc.map(Voc::get))];
    for (scale, value) in given.into_iter().filter_map(|(scale, value)| Some((scale, value?))) {
        queries::insert_assessment(tx, new_id(&app.world), client, target, scale, value.into(), now).await?;
    }
    course::fold(tx, target).await?;
    Ok(())
}

/// A typing error as the form names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Slip<'a> {
    /// Which rating is wrong: an id, or nothing.
    pub(super) wrong: &'a str,
    /// What it should be: a value, or nothing if it was never asked.
    pub(super) right: &'a str,
}

/// Corrects one rating of an assessment, or takes it back. The inner `Err`: what is wrong with the form.
pub(super) async fn correct(tx: &mut Tx, app: &App, target: Uuid, slip: Slip<'_>) -> Result<Result<(), Problems>, Error> {
    let mut problems = Problems::default();
    if slip.wrong.is_empty() {
        if !slip.right.trim().is_empty() {
            problems.add("wrong", "Choose the value that is wrong, or leave what it should be empty.");
            return Ok(Err(problems));
        }
        return Ok(Ok(()));
    }
    let all = list(tx, target).await?;
    let Some(wrong) = all.iter().find(|one| one.id.to_string() == slip.wrong) else {
        problems.add("wrong", "This value was corrected meanwhile. Look at the assessments as they are now and choose again.");
        return Ok(Err(problems));
    };
    let value = match if wrong.is("sud") { Sud::parse(slip.right).map(Sud::get) } else { Voc::parse(slip.right).map(Voc::get) } {
        Ok(value) => Some(i16::from(value)),
        Err(ScaleError::Blank) => None,
        Err(fault) => {
            problems.add("right", fault.to_string());
            return Ok(Err(problems));
        }
    };
    if value == Some(wrong.value) {
        problems.add("right", "This is the value that stands already. Type the right one, or choose no value as wrong.");
        return Ok(Err(problems));
    }
    if !queries::correct_assessment(tx, new_id(&app.world), wrong.id, value, app.world.now()).await? {
        problems.add("wrong", "This value was corrected meanwhile. Open the target again and look first.");
        return Ok(Err(problems));
    }
    course::fold(tx, target).await?;
    Ok(Ok(()))
}
