//! All that came of forms for one client: each measure over time, what the last change of it comes to, and the forms one by one.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use chrono::NaiveDate;
use leeward_core::chart::{AskedTotal, Came, Chart, totals_over_time};
use leeward_core::measures::{Measure, Threshold};
use leeward_core::outcome::change::{Rule, classify};
use uuid::Uuid;

use super::entry::has_event;
use super::queries::{self, Missed};
use super::{Occasion, Response, responses, threshold};
use crate::clients::{self, details};
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::{Act, Tx};
use crate::wordings;

#[derive(Template)]
#[template(path = "measures/overview.html")]
struct OverviewPage {
    frame: Frame,
    client: Uuid,
    name: Opened,
    record: i32,
    archived: bool,
    /// The forms that have a wording in use.
    worded: Vec<Measure>,
    courses: Vec<Course>,
    /// The forms one by one, the latest first.
    lines: Vec<Line>,
}

/// One measure over time.
struct Course {
    measure: Measure,
    chart: Chart,
    /// What the change from the first to the last comes to in this treatment, and by what it is judged; empty: there is none to judge.
    verdict: String,
}

struct Line {
    number: i32,
    name: &'static str,
    day: String,
    total: String,
    occasion: &'static str,
    by: String,
}

impl OverviewPage {
    /// The forms that may be entered.
    fn offered(&self) -> impl Iterator<Item = (&'static str, &'static str)> {
        let may = |measure: &Measure| measure.form().by_topics || self.worded.contains(measure);
        Measure::ALL.into_iter().filter(may).map(|measure| (measure.name(), measure.form().name))
    }
}

/// `GET /clients/{client}/measures`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("measure.view").client(client)).await?;
    let row = clients::row(&mut tx, client).await?.ok_or(Error::NotFound)?;
    let name = details(&mut tx, &app, client).await?.name;
    let all = responses(&mut tx, &app, client).await?;
    let when = When::in_practice(&mut tx).await?;
    let missed = queries::missed(&mut tx, client, app.world.now()).await?;
    let courses = courses(&mut tx, &all, &missed, when).await?;
    let worded = wordings::in_use(&mut tx).await?;
    tx.commit().await?;
    let lines = all.iter().rev().map(|one| line(one, when)).collect();
    let (record, archived) = (row.number, row.archived_at.is_some());
    page(&OverviewPage { frame, client, name, record, archived, worded, courses, lines })
}

fn line(one: &Response, when: When) -> Line {
    Line {
        number: one.number,
        name: one.measure.form().name,
        day: when.day(&one.answered_at),
        total: total_words(one),
        occasion: one.occasion.words(),
        by: one.by.clone(),
    }
}

/// A total as pages say it.
pub(super) fn total_words(one: &Response) -> String {
    let filled = if one.prorated { ", filled up for blanks" } else { "" };
    one.total.map_or_else(|| "none, for blanks".to_owned(), |total| format!("{}{filled}", figure(total)))
}

/// To a tenth, where it is not whole.
pub(super) fn figure(total: f64) -> String {
    let tenths = (total * 10.0).round() / 10.0;
    if tenths.fract() == 0.0 { format!("{tenths:.0}") } else { format!("{tenths:.1}") }
}

/// Each form that was ever answered, with what was asked for by link and did not come.
async fn courses(tx: &mut Tx, all: &[Response], missed: &[Missed], when: When) -> Result<Vec<Course>, Error> {
    let mut courses = vec![];
    for measure in Measure::ALL {
        let own: Vec<&Response> = all.iter().filter(|one| one.measure == measure).collect();
        if own.is_empty() {
            continue;
        }
        let threshold = in_force(&own, threshold(tx, measure).await?);
        let chart = totals_over_time(measure.form(), threshold, &asked(&own, missed, when));
        courses.push(Course { measure, chart, verdict: verdict(&own, threshold) });
    }
    Ok(courses)
}

/// The threshold by which the last form was kept; before any was, today's.
fn in_force(own: &[&Response], today: Option<Threshold>) -> Option<Threshold> {
    let points = own.last().and_then(|last| last.points);
    let kept = own.last().map_or(&[][..], |last| last.measure.form().reliable);
    kept.iter().find(|one| points.is_some_and(|points| i16::try_from(one.points) == Ok(points))).copied().or(today)
}

/// What came of each asking, in the order of days.
fn asked(own: &[&Response], missed: &[Missed], when: When) -> Vec<AskedTotal> {
    let measure = own.first().map(|one| one.measure);
    let came = own.iter().map(|one| (when.date(&one.answered_at), came(one)));
    let missed = missed.iter().filter(|one| Measure::parse(&one.measure) == measure);
    let missed = missed.map(|one| (when.date(&one.at), if one.declined { Came::Declined } else { Came::Nothing }));
    let mut all: Vec<(NaiveDate, Came)> = came.chain(missed).collect();
    all.sort_by_key(|(day, _)| *day);
    let Some(begun) = all.first().map(|(day, _)| *day) else { return vec![] };
    let days = |day: NaiveDate| u32::try_from((day - begun).num_days()).unwrap_or_default();
    all.into_iter().map(|(day, came)| AskedTotal { day: days(day), label: when.brief(day), came }).collect()
}

fn came(one: &Response) -> Came {
    match one.total {
        Some(total) if one.prorated => Came::Filled(total),
        Some(total) => Came::Total(total),
        None => Came::Blank,
    }
}

/// Both say what they were asked about, and it is the same; or neither says anything.
fn same_event(one: &Response, other: &Response) -> bool {
    match (one.event.clone().text(), other.event.clone().text()) {
        (Ok(one), Ok(other)) => one.reveal().trim().eq_ignore_ascii_case(other.reveal().trim()),
        _ => false,
    }
}

/// What the change within the latest treatment comes to (Jacobson & Truax); what was asked after its end is no part of it.
fn verdict(own: &[&Response], threshold: Option<Threshold>) -> String {
    let counts = |one: &&&Response| one.total.is_some() && one.occasion != Occasion::FollowUp;
    let Some(last) = own.iter().rfind(counts) else { return String::new() };
    let form = last.measure.form();
    let within: Vec<&&Response> = own.iter().filter(|one| counts(one) && one.episode == last.episode).collect();
    let (Some(first), Some(latest)) = (within.first(), within.last().filter(|_| within.len() > 1)) else { return String::new() };
    if has_event(last.measure) && !same_event(first, latest) {
        return "The first and the last are not known to be about the same event, so no change is judged.".to_owned();
    }
    let (Some(points), Some(before), Some(after)) = (latest.points, first.total, latest.total) else { return String::new() };
    let rule = Rule { points: points.into(), cut: form.cut.map(|cut| cut.at.into()), better: form.better };
    let Ok(class) = classify(before, after, rule) else { return String::new() };
    let source =
        form.reliable.iter().find(|one| i16::try_from(one.points) == Ok(points)).or(threshold.as_ref()).map_or("", |one| one.source);
    let cut = form.cut.map(|cut| format!("; cut {}: {}", cut.at, cut.source)).unwrap_or_default();
    format!(
        "In this treatment, from {} to {}: {} (from {points} points on: {source}{cut}).",
        figure(before),
        figure(after),
        class.words(form.better)
    )
}
