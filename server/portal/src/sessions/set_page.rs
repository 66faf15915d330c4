//! The page of one set: ordered against delivered. Prints on one sheet.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::{self, Chart, Heard, LONG_GAP_MS, SetCourse, Stretch};
use leeward_core::wire::Timeline;
use uuid::Uuid;

use super::queries::{self, SessionRow};
use super::queries_sets::{self, EvidenceRow};
use super::record::{self, SetLine};
use super::sets::{self, Set};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::InPath;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::{Act, Tx};

#[derive(Template)]
#[template(path = "sessions/set.html")]
struct SetPage {
    frame: Frame,
    session: Uuid,
    row: SessionRow,
    when: When,
    set: Set,
    line: SetLine,
    /// The numbers of the sets before and after it.
    before: Option<u32>,
    after: Option<u32>,
    figures: Vec<Figure>,
    moments: Vec<(String, String)>,
    chart: Chart,
}

/// One figure as ordered and as shown.
struct Figure {
    what: String,
    ordered: String,
    shown: String,
}

/// `GET /sessions/{session}/sets/{number}`
pub(super) async fn get(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    InPath((session, number)): InPath<(Uuid, u32)>,
) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("set.view").object(session)).await?;
    let content = load(&mut tx, frame, session, number).await?;
    tx.commit().await?;
    page(&content)
}

async fn load(tx: &mut Tx, frame: Frame, session: Uuid, number: u32) -> Result<SetPage, Error> {
    let row = queries::session(tx, session).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let when = When::in_practice(tx).await?.in_zone(&row.zone);
    let all = sets::of_session(tx, session).await?;
    let at = all.iter().position(|set| set.number == number).ok_or(Error::NotFound)?;
    let set = all[at].clone();
    let orders: Vec<_> = queries_sets::orders(tx, session).await?.into_iter().filter(|order| order.set_id == set.id).collect();
    let ordered = match orders.last() {
        Some(last) => serde_json::from_value(last.timeline.clone()).unwrap_or_default(),
        None => Timeline::default(),
    };
    let evidence = queries_sets::evidence(tx, set.id).await?;
    let course = SetCourse { ordered, heard: heard(&evidence)?, to_rest: set.shown.to_rest, ending: set.ending };
    let moments = queries_sets::meanwhile(tx, session, set.id).await?;
    let line = record::set_lines(std::slice::from_ref(&set), orders, &[], &[]).into_iter().next().ok_or(Error::NotFound)?;
    Ok(SetPage {
        frame,
        session,
        when,
        before: at.checked_sub(1).map(|before| all[before].number),
        after: all.get(at + 1).map(|after| after.number),
        figures: figures(&line, &course),
        moments: record::moment_lines(moments, when),
        chart: chart::set_by_second(&course),
        line,
        set,
        row,
    })
}

fn heard(rows: &[EvidenceRow]) -> Result<Vec<Heard>, Error> {
    let read = |row: &EvidenceRow| {
        Ok(Heard {
            seq: u32::try_from(row.seq).map_err(|_| Error::Inconsistent("set_evidence.seq"))?,
            at: row.at_ms,
            // What was first shown stands at the first extreme.
            phase: if row.kind == "shown" { 0.0 } else { row.phase.ok_or(Error::Inconsistent("set_evidence.phase"))? },
            frames: row.frames.map(u32::try_from).transpose().map_err(|_| Error::Inconsistent("set_evidence.frames"))?,
            longest_gap: row.longest_gap,
        })
    };
    rows.iter().map(read).collect()
}

fn figures(line: &SetLine, course: &SetCourse) -> Vec<Figure> {
    let parts = chart::stretches(course);
    let nothing_heard = course.heard.is_empty();
    let of = |fits: fn(&Stretch) -> bool| parts.iter().filter(|part| fits(part)).collect::<Vec<_>>();
    // A sum of no floats is -0.
    let seconds = |parts: &[&Stretch]| parts.iter().fold(0.0, |sum, part| sum + part.lasts());
    let unknown = of(|part| part.shown.is_none());
    let (undrawn, long) = (of(Stretch::is_undrawn), of(Stretch::has_long_gap));
    let shown = |text: String| if nothing_heard { "unknown".to_owned() } else { text };
    let ordered_seconds = match (course.ordered.starts_at(), course.ordered.ends_at()) {
        (Some(start), Some(end)) => format!("{:.1}", (end - start) / 1_000.0),
        _ => "unknown".into(),
    };
    let figure = |what: &str, ordered, shown| Figure { what: what.to_owned(), ordered, shown };
    vec![
        figure("Cycles", line.ordered_cycles.clone(), line.cycles.clone()),
        figure("Width", line.ordered_width.clone(), line.shown_width.clone()),
        figure("Rate, Hz", line.rate.clone(), "see below, by second".into()),
        figure("Seconds of motion", ordered_seconds, line.seconds.clone()),
        figure("Frames", String::new(), line.frames.clone()),
        figure(&format!("Seconds with a gap over {LONG_GAP_MS:.0} ms"), String::new(), shown(long.len().to_string())),
        figure("Hidden or hung: no frame drawn", String::new(), shown(format!("{:.1} s", seconds(&undrawn)))),
        figure("Unknown: nothing heard", String::new(), stretches_in_words(&unknown, seconds(&unknown))),
    ]
}

fn stretches_in_words(unknown: &[&Stretch], seconds: f64) -> String {
    match unknown {
        [] => "none".into(),
        [one] => format!("{seconds:.1} s, from second {:.1}", one.from),
        many => format!("{seconds:.1} s in {} stretches", many.len()),
    }
}
