//! One client as the practice lead sees it: dates, counts, ratings by session. No text about the
//! person.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::Chart;

use super::course;
use super::queries::{self, RatingRow, SessionRow, TargetRow};
use super::queries_practice;
use crate::course::state_words;
use crate::platform::App;
use crate::platform::codes::closing_words;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{Member, Role};
use crate::store::error::Error;
use crate::store::subject::Act;

struct SessionLine {
    row: SessionRow,
    day: String,
    closing: &'static str,
    sud: Ends,
    voc: Ends,
}

/// The first and the last rating of a session, of its own target.
struct Ends {
    first: Option<i16>,
    last: Option<i16>,
}

#[derive(Template)]
#[template(path = "outcomes/client.html")]
struct Numbers {
    frame: Frame,
    number: i32,
    lines: Vec<SessionLine>,
    targets: Vec<TargetPart>,
}

/// A target in numbers.
struct TargetPart {
    number: i32,
    /// How it stands.
    stands: &'static str,
    chart: Chart,
}

/// `GET /practice/clients/{client}`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Html<String>, Error> {
    member.needs(Role::Lead)?;
    let mut tx = app.database.act(&member.subject, Act::new("practice.client.view").client(id)).await?;
    if !queries_practice::single_courses(&mut tx).await? {
        return Err(Error::Conflict(
            "The practice has switched single courses off for leads. An administrator decides that in the settings of forms.",
        ));
    }
    let number = queries::number(&mut tx, id).await?.ok_or(Error::NotFound)?;
    let when = When::in_practice(&mut tx).await?;
    let (sessions, ratings) = (queries::sessions(&mut tx, id).await?, queries::ratings(&mut tx, id).await?);
    let targets = queries::targets(&mut tx, id).await?;
    tx.commit().await?;
    let drawn = |target: TargetRow| {
        let chart = course::chart(target.id, &sessions, &ratings, when)?;
        Ok::<_, Error>(TargetPart { number: target.number, stands: state_words(target.stand()?), chart })
    };
    let targets = targets.into_iter().map(drawn).collect::<Result<_, _>>()?;
    let lines = sessions.into_iter().map(|row| line(row, &ratings, when)).collect();
    page(&Numbers { frame, number, lines, targets })
}

fn line(row: SessionRow, ratings: &[RatingRow], practice: When) -> SessionLine {
    let when = practice.in_zone(&row.zone);
    let closing = closing_words(row.ended, row.closing.as_deref());
    let own: Vec<&RatingRow> = ratings.iter().filter(|rating| rating.session == Some(row.id) && rating.target == row.target_id).collect();
    let ends = |scale| Ends { first: course::of_scale(&own, scale).next(), last: course::of_scale(&own, scale).next_back() };
    let (sud, voc) = (ends("sud"), ends("voc"));
    SessionLine { day: when.day(&row.opened_at), closing, sud, voc, row }
}
