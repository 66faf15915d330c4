//! The page of one session; prints on one sheet.

use std::collections::HashMap;

use askama::Template;
use axum::extract::{Query, State};
use axum::response::Html;
use leeward_core::chart::{Chart, SetStep, ratings_by_set};
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use super::after::{self, Check, Outcome};
use super::queries::{self, SessionRow};
use super::record::{self, EntryKind, EntryLine, SetLine};
use super::{Words, queries_entries, queries_sets, sets, standing, steps, words};
use crate::clients;
use crate::events::{self, KeptEvent};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes::closing_words;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::{Act, Tx};
use crate::targets;

#[derive(Template)]
#[template(path = "sessions/session.html")]
struct SessionPage {
    frame: Frame,
    id: Uuid,
    row: SessionRow,
    when: When,
    client_name: Opened,
    target: Option<targets::Target>,
    /// What else was worked on, with its sets.
    others: Vec<(targets::Target, String)>,
    closing: &'static str,
    words: Words<Opened>,
    check: Option<Check>,
    /// What went wrong in it; what was corrected is left to its own page.
    events: Vec<KeptEvent>,
    moments: Vec<(String, String)>,
    sets: Vec<SetLine>,
    entries: Vec<EntryLine>,
    chart: Chart,
    /// How all sets were given, when that is the same: then no column says it.
    alike: Option<String>,
    /// The session in a few figures, each with what it counts.
    figures: Vec<(String, &'static str)>,
    print_notes: bool,
}

impl SessionPage {
    /// How the call after it stands, in words.
    fn check_words(&self, check: &Check) -> String {
        let now = if check.is_due() { "to be made" } else { "made" };
        format!(
            "{} ({now}), by {}, between {} and {}",
            check.reason.words(),
            check.by,
            self.when.moment(&check.due_from),
            self.when.moment(&check.due_until)
        )
    }

    fn outcomes(&self) -> Vec<(&'static str, &'static str)> {
        Outcome::ALL.iter().map(|outcome| (outcome.name(), outcome.words())).collect()
    }

    fn reports(&self) -> impl Iterator<Item = &EntryLine> {
        self.entries.iter().filter(|entry| entry.kind == EntryKind::Words)
    }

    /// What the opening found: of each matter what was said last.
    fn opening(&self) -> Vec<&EntryLine> {
        let said = self.entries.iter().filter(|entry| entry.kind == EntryKind::Opening);
        said.fold(Vec::new(), |mut all: Vec<&EntryLine>, entry| {
            match all.iter_mut().find(|one| one.what == entry.what) {
                Some(earlier) => *earlier = entry,
                None => all.push(entry),
            }
            all
        })
    }

    /// What was found and done beside sets and ratings.
    fn found(&self) -> impl Iterator<Item = &EntryLine> {
        self.entries.iter().filter(|entry| entry.kind == EntryKind::Found)
    }

    fn ratings(&self) -> impl Iterator<Item = &EntryLine> {
        self.entries.iter().filter(|entry| entry.kind == EntryKind::Rating)
    }
}

/// `GET /sessions/{session}`; `?print=notes` lets the process notes onto paper too.
pub(super) async fn get(
    State(app): State<App>,
    member: Member,
    frame: Frame,
    Id(session): Id,
    Query(asked): Query<HashMap<String, String>>,
) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("session.view").object(session)).await?;
    let content = load(&mut tx, &app, frame, session, asked.get("print").is_some_and(|what| what == "notes")).await?;
    tx.commit().await?;
    page(&content)
}

async fn load(tx: &mut Tx, app: &App, frame: Frame, id: Uuid, print_notes: bool) -> Result<SessionPage, Error> {
    let row = queries::session(tx, id).await?.ok_or(Error::NotFound)?;
    tx.concerns(row.client_id);
    let when = When::in_practice(tx).await?.in_zone(&row.zone);
    let key = clients::key(tx, app, row.client_id).await?;
    let client_name = clients::details(tx, app, row.client_id).await?.name;
    let target = match row.target_id {
        Some(target) => Some(targets::find(tx, app, target).await?),
        None => None,
    };
    let others = others(tx, app, id).await?;
    let (words, _) = words::words(tx, &key, id).await?;
    let check = after::check(tx, id).await?;
    let events = events::events(tx, app, row.client_id).await?;
    let events = events.into_iter().filter(|one| one.event.session == Some(row.number) && one.corrected_by.is_none()).collect();
    let moments = record::moment_lines(queries::moments(tx, id).await?, when);
    let entries = standing::standing(&queries_entries::entries(tx, id).await?, &key)?;
    let sets = sets::of_session(tx, id).await?;
    let orders = queries_sets::orders(tx, id).await?;
    let start = steps::start(tx, id).await?;
    let steps = steps::steps(&sets, &entries, row.target_id, start);
    let lines = record::entry_lines(&entries, &sets, &row);
    let sets = record::set_lines(&sets, orders, &steps, &entries);
    Ok(SessionPage {
        frame,
        id,
        when,
        client_name,
        target,
        others,
        closing: closing_words(row.ended_at.is_some(), row.closing.as_deref()),
        words,
        check,
        events,
        moments,
        alike: alike(&sets),
        figures: figures(&row, &sets, &steps),
        sets,
        entries: lines,
        chart: ratings_by_set(&steps),
        print_notes,
        row,
    })
}

/// What else was worked on in `session`, each with the numbers of its sets in words.
async fn others(tx: &mut Tx, app: &App, session: Uuid) -> Result<Vec<(targets::Target, String)>, Error> {
    let mut all = vec![];
    for (target, sets) in queries::other_targets(tx, session).await? {
        let numbers: Vec<String> = sets.iter().map(ToString::to_string).collect();
        let words = format!("set{} {}", if sets.len() == 1 { "" } else { "s" }, numbers.join(", "));
        all.push((targets::find(tx, app, target).await?, words));
    }
    Ok(all)
}

fn alike(sets: &[SetLine]) -> Option<String> {
    let first = sets.first()?;
    sets.iter().all(|set| set.how == first.how).then(|| first.how.clone())
}

fn figures(row: &SessionRow, sets: &[SetLine], steps: &[SetStep]) -> Vec<(String, &'static str)> {
    let lasted = row
        .over_at
        .or(row.ended_at)
        .map_or_else(|| "open".to_owned(), |ended| format!("{} min", (ended - row.admitted_at.unwrap_or(row.opened_at)).num_minutes()));
    let otherwise = sets.iter().filter(|set| set.ending != "as planned").count();
    let rated = |of: fn(&SetStep) -> Option<u8>| {
        let mut values = steps.iter().filter_map(of);
        match (values.next(), values.next_back()) {
            (Some(first), Some(last)) if first != last => format!("{first} to {last}"),
            (Some(only), _) => only.to_string(),
            (None, _) => "not asked".to_owned(),
        }
    };
    vec![
        (lasted, "lasted"),
        (sets.len().to_string(), if sets.len() == 1 { "set" } else { "sets" }),
        (otherwise.to_string(), "not as planned"),
        (rated(|step| step.sud.map(Sud::get)), "SUD, first to last"),
        (rated(|step| step.voc.map(Voc::get)), "VOC, first to last"),
    ]
}
