//! The page of all parts: each part that pages of records are made of, in each of its states, so that they can be looked at and
//! tested by themselves. Only under `serve --demo`. What it shows is invented.

use askama::Template;
use axum::response::Html;
use axum::routing::get;
use leeward_core::chart::{Chart, Closings, Dots, Lane, LaneSize, LaneSpan, SetStep, Week, closings, dots, lane, ratings_by_set};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::Ending;

use super::page::{Frame, page};
use super::routes::{Routes, Rule};
use crate::store::error::Error;

/// Words that do not fit, and one that cannot be broken.
const LONG: &str = "What somebody wrote who had a lot to say, all of it in one field and without a pause, \
    and then a word like Donaudampfschifffahrtsgesellschaftskapitän";

#[derive(Template)]
#[template(path = "platform/parts/all.html")]
struct AllParts {
    frame: Frame,
    long: &'static str,
    /// (value, words) of a choice.
    options: [(&'static str, &'static str); 3],
    /// Field, label and message, as a refused form has them.
    refused: [(&'static str, &'static str, &'static str); 2],
    course: Chart,
    unasked: Chart,
    dots: Dots,
    closings: Closings,
    lane: Lane,
}

/// `GET /parts`
async fn show(frame: Frame) -> Result<Html<String>, Error> {
    let week = |label: &str, counts| Week { label: label.to_owned(), counts };
    let lane_spans = [(0, 8, 5), (1, 6, 3), (2, 4, 4), (4, 3, 1)].into_iter().filter_map(|(column, first, last)| span(column, first, last));
    page(&AllParts {
        frame,
        long: LONG,
        options: [("one", "The first"), ("two", "The second, chosen"), ("long", LONG)],
        refused: [("refused-line", "Refused line", "Please fill this in."), ("refused-choice", "Refused choice", "Choose one of these.")],
        course: ratings_by_set(&course()),
        unasked: ratings_by_set(&[]),
        dots: dots(&[0, 1, 3, 3, 6, 7, 12, 14, 21, 28, 30, 31, 45, 90], 30),
        closings: closings(&[
            week("2 Nov", [3, 2, 1, 0]),
            week("9 Nov", [0; 4]),
            week("16 Nov", [4, 1, 0, 0]),
            week("23 Nov", [2, 3, 0, 1]),
        ]),
        lane: lane(LaneSize::Large, 5, &lane_spans.collect::<Vec<_>>()),
    })
}

fn span(column: usize, first: u8, last: u8) -> Option<LaneSpan> {
    Some(LaneSpan { column, first: Sud::new(first).ok()?, last: Sud::new(last).ok()? })
}

fn course() -> Vec<SetStep> {
    let step = |label: &str, sud: Option<u8>, voc: Option<u8>, ending| SetStep {
        label: label.to_owned(),
        sud: sud.and_then(|value| Sud::new(value).ok()),
        voc: voc.and_then(|value| Voc::new(value).ok()),
        ending,
    };
    vec![
        step(SetStep::START, Some(8), Some(2), None),
        step("1", Some(8), None, Some(Ending::Done)),
        step("2", None, None, Some(Ending::StoppedByClient)),
        step("3", Some(5), None, Some(Ending::Done)),
        step("4", Some(3), Some(5), Some(Ending::Done)),
    ]
}

/// Adds the page, in the demo alone.
pub(crate) fn routes(routes: Routes, demo: bool) -> Routes {
    if demo { routes.get("/parts", Rule::Anybody, get(show)) } else { routes }
}
