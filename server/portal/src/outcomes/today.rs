//! What needs a person today, by record: that something waits, never what it says. Reasons to look and to offer help; no list of anybody's failings.

use chrono::{DateTime, Days, Duration, Utc};
use uuid::Uuid;

use super::queries_today::{self as queries, WaitingRow};
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// A session that is open for longer was left open. Common practice, no source.
const LEFT_OPEN_HOURS: i64 = 12;
/// Calls that were missed longer ago are part of the record, and nobody makes them today.
const CALLS_DAYS: i64 = 90;
/// What is due is not called overdue before this: a clinician asks at the next session. Common practice, no source.
const DUE_DAYS: u64 = 14;
/// Records of a list that are named; the rest is counted, until the list is asked for whole.
const NAMED: i64 = 20;
/// Of a list asked for whole: more than this nobody reads on a page.
const NAMED_WHOLE: i64 = 1000;

/// One list.
pub(super) struct Waiting {
    /// Its id on the page.
    pub(super) id: &'static str,
    /// What it says, in a few words.
    pub(super) what: String,
    /// Record, its id, and since when, in words.
    pub(super) records: Vec<(i32, Uuid, String)>,
    /// How many more there are.
    pub(super) more: i64,
    /// It was asked for whole.
    pub(super) whole: bool,
}

/// The panel.
pub(super) struct Today {
    /// What it says, in a sentence.
    pub(super) finding: String,
    pub(super) lists: Vec<Waiting>,
}

fn days(count: i32) -> String {
    match count {
        0 => "less than a day".to_owned(),
        1 => "1 day".to_owned(),
        count => format!("{count} days"),
    }
}

/// How many there are, and the first of them.
type Found = (i64, Vec<(i32, Uuid, String)>);

fn list(id: &'static str, words: impl Fn(i64) -> String, (count, records): Found, whole: &str) -> Option<Waiting> {
    let named = i64::try_from(records.len()).unwrap_or(count);
    (count > 0).then(|| Waiting { id, what: words(count), more: count - named, records, whole: id == whole })
}

/// Each with how long it waits, and what for.
fn waiting(rows: Vec<WaitingRow>, what: &str) -> Found {
    let all = rows.first().map_or(0, |row| row.all);
    (all, rows.into_iter().map(|row| (row.record, row.client, format!("{} {what}", days(row.days)))).collect())
}

fn many(count: i64, one: &str, several: &str) -> String {
    if count == 1 { format!("1 {one}") } else { format!("{count} {several}") }
}

/// What needs a person now; `whole`: the id of the list of which all are named.
pub(super) async fn today(tx: &mut Tx, when: When, now: DateTime<Utc>, whole: &str) -> Result<Today, Error> {
    let day = when.date(&now);
    let named = |id| if id == whole { NAMED_WHOLE } else { NAMED };
    let flags = queries::flags(tx, named("flags")).await?;
    let all_flags = flags.first().map_or(0, |row| row.all);
    let flags = flags.into_iter().map(|row| {
        let told = if row.told == 0 { "no clinician of theirs has had it on screen" } else { "clinician told" };
        (row.record, row.client, format!("{} late; {told}", days(row.days)))
    });
    let flags = (all_flags, flags.collect());
    let unclosed = waiting(queries::unclosed(tx, now - Duration::hours(LEFT_OPEN_HOURS), now, named("unclosed")).await?, "open");
    let calls = waiting(queries::calls(tx, now - Duration::days(CALLS_DAYS), now, named("calls")).await?, "overdue");
    let due_before = day.checked_sub_days(Days::new(DUE_DAYS)).unwrap_or(day);
    let forms = waiting(queries::forms(tx, day, due_before, named("forms")).await?, "overdue");
    let still = queries::still(tx, named("still")).await?;
    let still = (still.first().map_or(0, |row| row.all), still.into_iter().map(|row| (row.record, row.client, String::new())).collect());
    let lists: Vec<Waiting> = [
        list("flags", |count| many(count, "flag is open past its time", "flags are open past their time"), flags, whole),
        list("unclosed", |count| many(count, "session was left open", "sessions were left open"), unclosed, whole),
        list("calls", |count| many(count, "call after a session is overdue", "calls after a session are overdue"), calls, whole),
        list("forms", |count| many(count, "record has forms overdue", "records have forms overdue"), forms, whole),
        list(
            "still",
            |count| {
                many(
                    count,
                    "record has a course that has not moved in three sessions",
                    "records have a course that has not moved in three sessions",
                )
            },
            still,
            whole,
        ),
    ]
    .into_iter()
    .flatten()
    .collect();
    let finding = if lists.is_empty() {
        "Nothing waits for a person today".to_owned()
    } else {
        format!("Today: {}", lists.iter().map(|list| list.what.as_str()).collect::<Vec<_>>().join("; "))
    };
    Ok(Today { finding, lists })
}
