//! The page of what the practice goes by with forms: from how many points on a change is reliable, who is told of a flag, how much is asked at
//! once, and what a client reads before answering.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use leeward_core::measures::{Measure, Threshold};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::queries;
use crate::platform::forms::{Again, Fields, Keyed, Lines, Need, Problems, SaveOutcome, answer, comes_back};
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member, Role};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::Act;

/// What the practice goes by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct MeasureSettings {
    /// From so many points on a change counts as reliable.
    pub(super) points_pcl5: i16,
    pub(super) points_anxiety5: i16,
    /// Who is told of a flag beside the one who treats.
    pub(super) told_too: Option<Uuid>,
    /// After so many hours an open flag is late.
    pub(super) flag_hours: i16,
    /// After so many weeks without contact the end of a treatment is proposed.
    pub(super) weeks_without: i16,
    /// So many questions are asked at once.
    pub(super) items_at_once: i16,
    /// When somebody reads what comes in, in the practice's own words.
    pub(super) reading_hours: String,
    /// Leads may open single courses by record.
    pub(super) single_courses: bool,
}

/// As it was typed.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub(super) struct MeasuresForm {
    points_pcl5: String,
    points_anxiety5: String,
    told_too: String,
    flag_hours: String,
    weeks_without: String,
    items_at_once: String,
    reading_hours: String,
    single_courses: String,
    /// The settings that the form showed, as JSON: nothing else is replaced.
    shown: String,
}

/// Whether leads may open single courses, as the form asks it.
const SINGLE_COURSES: [(&str, &str); 2] = [("no", "No: figures alone"), ("yes", "Yes, by record, on the trail")];

impl MeasuresForm {
    fn of(kept: &MeasureSettings) -> Result<Self, Error> {
        Ok(Self {
            points_pcl5: kept.points_pcl5.to_string(),
            points_anxiety5: kept.points_anxiety5.to_string(),
            told_too: kept.told_too.map(|member| member.to_string()).unwrap_or_default(),
            flag_hours: kept.flag_hours.to_string(),
            weeks_without: kept.weeks_without.to_string(),
            items_at_once: kept.items_at_once.to_string(),
            reading_hours: kept.reading_hours.clone(),
            single_courses: SINGLE_COURSES[usize::from(kept.single_courses)].0.to_owned(),
            shown: serde_json::to_string(kept).map_err(|fault| Error::Inner(format!("settings: {fault}")))?,
        })
    }

    fn check(&self, members: &[(Uuid, String)]) -> Result<MeasureSettings, Problems> {
        let mut problems = Problems::default();
        let points = |problems: &mut Problems, name, typed: &str, measure: Measure| {
            let known = |typed: &str| {
                typed.parse::<i16>().ok().filter(|points| offered(measure).any(|one| i16::try_from(one.points) == Ok(*points)))
            };
            problems.choice(name, typed, known)
        };
        let points_pcl5 = points(&mut problems, "points_pcl5", &self.points_pcl5, Measure::Pcl5);
        let points_anxiety5 = points(&mut problems, "points_anxiety5", &self.points_anxiety5, Measure::Anxiety5);
        let told_too = match self.told_too.as_str() {
            "" => None,
            typed => problems.choice("told_too", typed, |typed| members.iter().map(|(id, _)| *id).find(|id| id.to_string() == typed)),
        };
        let flag_hours = problems.within("flag_hours", &self.flag_hours, 1..=168);
        let weeks_without = problems.within("weeks_without", &self.weeks_without, 2..=52);
        let items_at_once = problems.within("items_at_once", &self.items_at_once, 5..=80);
        let reading_hours = problems.text("reading_hours", &self.reading_hours, 300, Need::Optional, Lines::Many);
        let single =
            problems.choice("single_courses", &self.single_courses, |typed| SINGLE_COURSES.iter().position(|(name, _)| *name == typed));
        let all = (points_pcl5, points_anxiety5, flag_hours, weeks_without, items_at_once.zip(single));
        match all {
            (Some(points_pcl5), Some(points_anxiety5), Some(flag_hours), Some(weeks_without), Some((items_at_once, single)))
                if problems.none() =>
            {
                let single_courses = single == 1;
                Ok(MeasureSettings {
                    points_pcl5,
                    points_anxiety5,
                    told_too,
                    flag_hours,
                    weeks_without,
                    items_at_once,
                    reading_hours,
                    single_courses,
                })
            }
            _ => Err(problems),
        }
    }
}

/// The thresholds that are published for a form.
fn offered(measure: Measure) -> impl Iterator<Item = &'static Threshold> {
    measure.form().reliable.iter()
}

impl Fields for MeasuresForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("points_pcl5", "PCL-5: a change is reliable from"),
        ("points_anxiety5", "Anxiety of a week: a change is reliable from"),
        ("told_too", "Who is told of a flag too"),
        ("flag_hours", "A flag is late after, hours"),
        ("weeks_without", "An end is proposed after, weeks"),
        ("items_at_once", "Questions at once"),
        ("reading_hours", "When somebody reads what comes in"),
        ("single_courses", "Whether leads open single courses"),
    ];

    fn shown(&self, name: &str) -> String {
        let field = match name {
            "points_pcl5" => &self.points_pcl5,
            "points_anxiety5" => &self.points_anxiety5,
            // The page's list has the names; an id would say nothing.
            "told_too" if self.told_too.is_empty() => return "nobody".to_owned(),
            "told_too" => return "another member".to_owned(),
            "flag_hours" => &self.flag_hours,
            "weeks_without" => &self.weeks_without,
            "items_at_once" => &self.items_at_once,
            "single_courses" => &self.single_courses,
            _ => &self.reading_hours,
        };
        field.clone()
    }

    fn version(&mut self) -> &mut String {
        &mut self.shown
    }
}

#[derive(Template)]
#[template(path = "practice/measures.html")]
struct MeasuresPage {
    frame: Frame,
    /// Who can be told; empty as well when the database did not answer.
    members: Vec<(Uuid, String)>,
    again: Again<MeasuresForm>,
}

impl MeasuresPage {
    /// Each threshold of a form with its source.
    fn points(measure: Measure) -> Vec<(String, String)> {
        offered(measure).map(|one| (one.points.to_string(), format!("{} points: {}", one.points, one.source))).collect()
    }

    fn pcl5(&self) -> Vec<(String, String)> {
        Self::points(Measure::Pcl5)
    }

    fn anxiety5(&self) -> Vec<(String, String)> {
        Self::points(Measure::Anxiety5)
    }

    fn single_courses(&self) -> &'static [(&'static str, &'static str)] {
        &SINGLE_COURSES
    }

    fn told(&self) -> Vec<(String, String)> {
        let nobody = (String::new(), "Nobody else".to_owned());
        let mut told: Vec<_> = [nobody].into_iter().chain(self.members.iter().map(|(id, name)| (id.to_string(), name.clone()))).collect();
        // Where the database does not say who there is, what was chosen stays chosen.
        if !told.iter().any(|(id, _)| *id == self.again.typed.told_too) {
            told.push((self.again.typed.told_too.clone(), "As chosen: the list cannot be read just now".to_owned()));
        }
        told
    }

    fn show(frame: Frame, members: Vec<(Uuid, String)>, again: Again<MeasuresForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, members, again })?).into_response())
    }
}

/// `GET /practice/settings/measures`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let mut tx = app.database.act(&member.subject, Act::new("practice.settings.view")).await?;
    let typed = MeasuresForm::of(&queries::measures(&mut tx).await?)?;
    let members = queries::may_be_told(&mut tx).await?;
    tx.commit().await?;
    MeasuresPage::show(frame, members, Again::first(typed))
}

/// `POST /practice/settings/measures`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<MeasuresForm>,
) -> Result<Response, Error> {
    member.needs(Role::Administrator)?;
    let tried = try_save(&app, &member, &once, &typed).await;
    let members = if comes_back(&tried) { may_be_told_again(&app, &member).await } else { vec![] };
    answer(typed, tried, |again| MeasuresPage::show(frame, members, again))
}

/// Who can be told, around a form that comes back; none when the database does not answer.
async fn may_be_told_again(app: &App, member: &Member) -> Vec<(Uuid, String)> {
    let members = async { Ok::<_, Error>(queries::may_be_told(&mut app.database.look(&member.subject).await?).await?) };
    members.await.unwrap_or_default()
}

async fn try_save(app: &App, member: &Member, once: &Once, typed: &MeasuresForm) -> Result<SaveOutcome<MeasuresForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("practice.settings.change"), once).await?;
    let wanted = match typed.check(&queries::may_be_told(&mut tx).await?) {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(wanted) => wanted,
    };
    let shown: MeasureSettings = serde_json::from_str(&typed.shown)
        .map_err(|_| Error::BadRequest("The form did not arrive whole, so nothing was saved. Open it again and send it again."))?;
    let kept = queries::measures_to_change(&mut tx).await?;
    if kept != shown {
        return Ok(SaveOutcome::Changed(Box::new(MeasuresForm::of(&kept)?)));
    }
    if !queries::change_measures(&mut tx, &wanted).await? {
        return Err(Error::NothingWritten("practice"));
    }
    Ok(SaveOutcome::Saved(tx.saved("/practice/settings/measures").await?))
}
