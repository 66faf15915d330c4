//! The page of the caseload.

use std::collections::{HashMap, HashSet};

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use chrono::{DateTime, NaiveDate, Utc};
use leeward_core::chart::{Lane, LaneSize, lane};
use leeward_core::scale::Sud;
use uuid::Uuid;

use super::duties::{Duty, duties};
use super::queries::{self, CaseRow, CheckDue};
use crate::askings::due_of_mine;
use crate::clients::{Asked, Cautions, my_rehearsal};
use crate::measures::{open_flags, told};
use crate::outcomes::{self, ClientRow, Spans};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes::{self, closing_words};
use crate::platform::forms::Asks;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::sessions::Reason;
use crate::signin::{News, unread};
use crate::store::error::Error;
use crate::store::seal::Field;
use crate::store::subject::Act;

/// Lines of a page.
const PAGE: usize = 50;

/// What the list is narrowed to, how it is sorted, and which page of it.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Wanted {
    find: String,
    archived: String,
    sort: String,
    page: String,
}

#[derive(Template)]
#[template(path = "caseload/list.html")]
struct Caseload {
    frame: Frame,
    news: Vec<News>,
    now: String,
    find: String,
    archived: bool,
    by_since: bool,
    /// How many there are before the filter, and after it.
    all: usize,
    found: usize,
    page: usize,
    pages: usize,
    duties: Vec<Duty>,
    /// Flags of clients whom others treat, for the member whom the practice named: a sentence each.
    told_too: Vec<String>,
    lines: Vec<Case>,
    /// The pretend client, once there is one.
    rehearsal: Option<Uuid>,
    today: NaiveDate,
}

/// A form raised it, and it is open.
pub(super) struct Flag {
    /// The form's number in the record.
    pub(super) number: i32,
    pub(super) says: String,
    /// Such as "today at 11:05".
    pub(super) when: String,
}

/// A client who is gone, of whom nobody has heard.
pub(super) struct Gone {
    pub(super) session: Uuid,
    pub(super) number: i32,
    /// What was done last.
    pub(super) step: &'static str,
    /// Such as "today at 11:05".
    pub(super) when: String,
    /// The session is open.
    pub(super) open: bool,
}

/// A session that is open.
#[derive(Clone)]
pub(super) struct Open {
    pub(super) id: Uuid,
    pub(super) number: i32,
    /// Such as "today at 11:05".
    pub(super) when: String,
}

/// A call that is to be made now.
pub(super) struct Check {
    pub(super) session: Uuid,
    pub(super) number: i32,
    pub(super) reason: &'static str,
    /// Such as "today at 11:05".
    pub(super) until: String,
    pub(super) overdue: bool,
}

/// One client, as the page speaks of them.
#[derive(Default)]
pub(super) struct Case {
    pub(super) id: Uuid,
    pub(super) number: i32,
    pub(super) name: String,
    pub(super) addressed_as: String,
    pub(super) flags: Vec<String>,
    /// Which cautions were not asked about.
    pub(super) not_asked: Vec<&'static str>,
    pub(super) flag: Option<Flag>,
    pub(super) gone: Option<Gone>,
    pub(super) open: Option<Open>,
    pub(super) check: Option<Check>,
    /// What is due of forms, in words.
    pub(super) due: Option<String>,
    /// The last session was closed as incomplete, on this target and with this SUD at its end.
    pub(super) unfinished: bool,
    pub(super) last_target: String,
    pub(super) last_sud: Option<Sud>,
    pub(super) open_targets: i64,
    /// The day of the last session.
    pub(super) seen: Option<NaiveDate>,
    pub(super) closing: &'static str,
    pub(super) next_contact: String,
    /// The target that was worked on last, and its course.
    pub(super) worked_on: String,
    pub(super) course: Option<Lane>,
    pub(super) sud: String,
}

impl Case {
    /// Days since the last session; 0: today.
    pub(super) fn days(&self, today: NaiveDate) -> Option<i64> {
        self.seen.map(|day| (today - day).num_days())
    }

    /// Whether the name, the form of address or the record number holds what is looked for.
    fn is_meant(&self, find: &str) -> bool {
        let find = find.trim().to_lowercase();
        find.trim_start_matches("no.").trim() == self.number.to_string()
            || self.name.to_lowercase().contains(&find)
            || self.addressed_as.to_lowercase().contains(&find)
    }
}

/// `GET /clients?find=&sort=&page=&archived=`.
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Asks(wanted): Asks<Wanted>) -> Result<Html<String>, Error> {
    let archived = wanted.archived == "1";
    let mut tx = app.database.act(&member.subject, Act::new("caseload.view")).await?;
    let when = When::in_practice(&mut tx).await?;
    let news = unread(&mut tx, when).await?;
    let rows = queries::cases(&mut tx, archived).await?;
    let numbers = outcomes::clients(&mut tx, Some(&rows.iter().map(|row| row.id).collect::<Vec<_>>())).await?;
    let spans = outcomes::spans(&mut tx, None).await?;
    let rehearsal = my_rehearsal(&mut tx).await?;
    let now = app.world.now();
    let flags = open_flags(&mut tx).await?;
    let due = due_of_mine(&mut tx, when.date(&now)).await?;
    // Of several of one client the oldest is shown: it waits longest. The list of archived records shows none.
    let mut shown = HashSet::new();
    for flag in flags.iter().filter(|flag| !archived && (flag.form.is_none() || shown.insert(flag.client))) {
        told(&mut tx, flag, now).await?;
    }
    tx.commit().await?;
    let reader =
        Reader { app: &app, when, today: when.date(&now), now, numbers: numbers.into_iter().map(|row| (row.id, row)).collect(), spans };
    let mut cases = rows.into_iter().map(|row| reader.read(row)).collect::<Result<Vec<Case>, Error>>()?;
    for one in due {
        if let Some(case) = cases.iter_mut().find(|case| case.id == one.client) {
            case.due = Some(one.words(reader.today));
        }
    }
    let mut told_too = vec![];
    for flag in flags {
        let when = reader.moment(&flag.raised_at);
        match (flag.form, cases.iter_mut().find(|case| case.id == flag.client)) {
            (Some((number, says)), Some(case)) if case.flag.is_none() => case.flag = Some(Flag { number, says, when }),
            (Some(_), _) => {}
            (None, _) if archived => {}
            (None, _) if flag.treats.is_empty() => {
                told_too.push(format!(
                    "A form in record {} raised a flag {when}. Nobody treats this client at present: hand them over.",
                    flag.record
                ));
            }
            (None, _) => {
                told_too.push(format!(
                    "A form in record {} raised a flag {when}. Treated by {}: see that they know.",
                    flag.record, flag.treats
                ));
            }
        }
    }
    // Names are sealed, so the database cannot sort by them.
    cases.sort_by_cached_key(|case| (case.name.to_lowercase(), case.number));
    let duties = if archived { Vec::new() } else { duties(&cases, reader.today) };
    let (all, by_since) = (cases.len(), wanted.sort == "since");
    cases.retain(|case| case.is_meant(&wanted.find));
    if by_since {
        cases.sort_by_key(|case| (case.seen.is_none(), case.seen));
    }
    let (found, pages) = (cases.len(), cases.len().div_ceil(PAGE).max(1));
    let number = wanted.page.parse().unwrap_or(1).clamp(1, pages);
    let lines = cases.into_iter().skip((number - 1) * PAGE).take(PAGE).collect();
    page(&Caseload {
        frame,
        news,
        now: format!("{}, {}", when.day(&now), when.time(&now)),
        find: wanted.find,
        archived,
        by_since,
        all,
        found,
        page: number,
        pages,
        duties,
        told_too,
        lines,
        rehearsal,
        today: reader.today,
    })
}

struct Reader<'a> {
    app: &'a App,
    when: When,
    today: NaiveDate,
    now: DateTime<Utc>,
    numbers: HashMap<Uuid, ClientRow>,
    spans: Spans,
}

impl Reader<'_> {
    fn read(&self, row: CaseRow) -> Result<Case, Error> {
        let numbers = self.numbers.get(&row.id).ok_or(Error::Inconsistent("client_count"))?;
        let key = self.app.key.unwrap(row.id, &row.wrapped);
        let details = key.row(row.id, row.details_version);
        let label = |target: Uuid| {
            let worked_on = row.target.as_ref().filter(|one| one.id == target);
            worked_on.map(|one| key.row(one.id, one.version).open(Field::TargetLabel, &one.label).shown().to_owned()).unwrap_or_default()
        };
        let last = row.last.as_ref();
        let next =
            last.map(|last| key.row(last.id, last.words_version).open(Field::SessionNextContact, &last.next_contact).shown().to_owned());
        Ok(Case {
            id: row.id,
            number: numbers.number,
            name: details.open(Field::ClientName, &row.name).shown().to_owned(),
            addressed_as: details.open(Field::ClientAddressedAs, &row.addressed_as).shown().to_owned(),
            flags: row.cautions.flags(),
            not_asked: not_asked(row.cautions),
            check: row.check.filter(|check| check.from <= self.now).map(|check| self.check(&check)).transpose()?,
            flag: None,
            due: None,
            gone: row.gone.as_ref().map(|gone| self.gone(gone, row.open.as_ref())).transpose()?,
            open: row.open.map(|open| Open { id: open.id, number: open.number, when: self.moment(&open.opened_at) }),
            unfinished: last.is_some_and(|last| last.closing.as_deref() == Some("incomplete")),
            last_target: last.and_then(|last| last.target).map(label).unwrap_or_default(),
            last_sud: last.and_then(|last| self.spans.last_in(last.target?, last.id)),
            open_targets: numbers.open,
            seen: numbers.last_at.map(|at| self.when.date(&at)),
            closing: last.map_or("none yet", |last| closing_words(true, last.closing.as_deref())),
            next_contact: next.unwrap_or_default(),
            worked_on: row.target.as_ref().map(|target| label(target.id)).unwrap_or_default(),
            course: row.target.as_ref().and_then(|target| {
                let (columns, spans) = self.spans.close_up(target.id);
                (columns > 0).then(|| lane(LaneSize::Small, columns, &spans))
            }),
            sud: first_to_last(numbers.first_sud, numbers.last_sud),
        })
    }

    fn gone(&self, gone: &queries::Gone, open: Option<&queries::OpenSession>) -> Result<Gone, Error> {
        let step = codes::reach_step(codes::read(&gone.step, "reach_step.step")?);
        let open = open.is_some_and(|open| open.id == gone.session);
        Ok(Gone { session: gone.session, number: gone.number, step, when: self.moment(&gone.at), open })
    }

    fn check(&self, due: &CheckDue) -> Result<Check, Error> {
        let reason = Reason::parse(&due.reason).ok_or(Error::Inconsistent("after_check.reason"))?.words();
        let (until, overdue) = (self.moment(&due.until), due.until < self.now);
        Ok(Check { session: due.session, number: due.number, reason, until, overdue })
    }

    fn moment(&self, at: &chrono::DateTime<chrono::Utc>) -> String {
        let day = self.when.date(at);
        if day == self.today {
            format!("today at {}", self.when.time(at))
        } else {
            format!("on {} at {}", self.when.weekday(at), self.when.time(at))
        }
    }
}

fn not_asked(cautions: Cautions) -> Vec<&'static str> {
    let all = [("Seizures", cautions.seizures), ("Eye condition", cautions.eye_condition)];
    all.into_iter().filter(|(_, asked)| *asked == Asked::NotAsked).map(|(what, _)| what).collect()
}

fn first_to_last(first: Option<i16>, last: Option<i16>) -> String {
    match (first, last) {
        (Some(first), Some(last)) if first == last => first.to_string(),
        (Some(first), Some(last)) => format!("{first} to {last}"),
        _ => "not asked".to_owned(),
    }
}
