//! What was acknowledged, compared with what is in the record.

use std::collections::BTreeMap;
use std::time::{Duration, Instant};

use leeward_core::wire::{Ending, Entry, EntryValue, Fact};
use serde::Serialize;
use sqlx::AssertSqlSafe;
use uuid::Uuid;

use super::desk::Desk;
use super::line::Live;
use super::stage::Stage;
use super::writer::Written;
use crate::figures::figure;
use crate::live_scene::Scene;

async fn count(scene: &Scene, query: &str) -> i64 {
    sqlx::query_scalar(AssertSqlSafe(query.to_owned())).fetch_one(&scene.house.database.superuser).await.unwrap()
}

/// Waits until the screen's last facts are kept and every set that a page showed ended has an end.
pub async fn settles(scene: &Scene, desk: &Live<Desk>, stage: &Live<Stage>) {
    let end = Instant::now() + Duration::from_secs(20);
    loop {
        let outcomes = outcomes(scene).await;
        let open = desk.with(|desk| desk.shown.keys().filter(|set| outcomes.get(*set).is_none_or(Option::is_none)).count());
        let unkept =
            stage.with(|stage| stage.told.iter().filter(|fact| stage.kept.get(&fact.set).is_none_or(|seq| *seq < fact.seq)).count());
        if open + unkept == 0 || Instant::now() > end {
            return;
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
}

async fn outcomes(scene: &Scene) -> BTreeMap<String, Option<String>> {
    let rows: Vec<(Uuid, Option<String>)> =
        sqlx::query_as("SELECT set_id, ending FROM set_outcome").fetch_all(&scene.house.database.superuser).await.unwrap();
    rows.into_iter().map(|(set, ending)| (set.to_string(), ending)).collect()
}

fn word(value: impl Serialize) -> String {
    serde_json::to_value(value).unwrap().as_str().unwrap().to_owned()
}

/// What went wrong, by sort.
#[derive(Debug, Default)]
struct Found {
    acknowledged: usize,
    lost: Vec<String>,
    doubled: Vec<String>,
    contradictory: Vec<String>,
    stops: usize,
    unknown_stops: Vec<String>,
}

/// An entry as the record has it: how often, and its value.
async fn entry(scene: &Scene, entry: &Entry) -> (i64, bool) {
    let id: Uuid = entry.id.parse().unwrap();
    let replaces: Option<Uuid> = entry.replaces.as_ref().map(|id| id.parse().unwrap());
    let pool = &scene.house.database.superuser;
    let ratings: Vec<(String, Option<i16>, Option<Uuid>)> =
        sqlx::query_as("SELECT scale, value, replaces FROM rating WHERE id = $1").bind(id).fetch_all(pool).await.unwrap();
    let notes: Vec<(Option<String>, bool, Option<Uuid>)> =
        sqlx::query_as("SELECT code, false, replaces FROM fact WHERE id = $1 UNION ALL SELECT NULL, words IS NOT NULL, replaces FROM process_note WHERE id = $1")
            .bind(id)
            .fetch_all(pool)
            .await
            .unwrap();
    let rated = |scale: &str, value: u8| ratings.iter().all(|row| *row == (scale.to_owned(), Some(value.into()), replaces));
    let same = match &entry.value {
        EntryValue::Sud { value } => rated("sud", *value),
        EntryValue::Voc { value } => rated("voc", *value),
        EntryValue::Change { change } => notes.iter().all(|row| *row == (Some(word(change)), false, replaces)),
        EntryValue::Words { .. } => notes.iter().all(|row| *row == (None, true, replaces)),
        // The writers of this test write nothing else.
        _ => false,
    };
    (i64::try_from(ratings.len() + notes.len()).unwrap(), same)
}

async fn entries(scene: &Scene, written: &Written, found: &mut Found) {
    for kept in &written.kept {
        let (rows, same) = entry(scene, kept).await;
        match rows {
            0 => found.lost.push(format!("entry {kept:?}")),
            1 if same => {}
            1 => found.contradictory.push(format!("entry {kept:?}")),
            _ => found.doubled.push(format!("entry {kept:?}")),
        }
    }
    found.acknowledged += written.kept.len();
    let rows =
        count(scene, "SELECT (SELECT count(*) FROM rating) + (SELECT count(*) FROM fact) + (SELECT count(*) FROM process_note)").await;
    if usize::try_from(rows).unwrap() != written.kept.len() {
        found.doubled.push(format!("{rows} entries in the record, {} were written", written.kept.len()));
    }
    let forked =
        count(scene, "SELECT count(*) FROM (SELECT replaces FROM rating WHERE replaces IS NOT NULL GROUP BY 1 HAVING count(*) > 1) x")
            .await;
    if forked > 0 {
        found.doubled.push(format!("{forked} entries are corrected twice"));
    }
}

/// Sets and their ends. A page's word on an end is what it showed: the desk's view, or what brought the screen to rest.
async fn sets(scene: &Scene, desk: &Live<Desk>, stage: &Live<Stage>, found: &mut Found) {
    let outcomes = outcomes(scene).await;
    let (shown, rested) = (desk.with(|desk| desk.shown.clone()), stage.with(|stage| stage.rested.clone()));
    for (set, ending) in &shown {
        found.acknowledged += 1;
        let Some(outcome) = outcomes.get(set) else {
            found.lost.push(format!("set {set}"));
            continue;
        };
        let on_screen = rested.get(set).copied();
        let stops = [*ending, on_screen].into_iter().flatten().filter(|ending| ending.is_stop());
        let words: Vec<String> = stops.map(word).collect();
        found.stops += usize::from(!words.is_empty());
        let told = format!("set {set}: the desk showed {ending:?}, the screen {on_screen:?}, the record says {outcome:?}");
        match outcome.as_deref() {
            None | Some("unknown") if !words.is_empty() => found.unknown_stops.push(told),
            Some("unknown") if ending.is_none_or(|ending| ending == Ending::Unknown) => {}
            Some(outcome) if words.iter().any(|word| word == outcome) => {}
            Some(outcome) if words.is_empty() && ending.is_some_and(|ending| word(ending) == outcome) => {}
            _ => found.contradictory.push(told),
        }
    }
    let twice = count(scene, "SELECT count(*) - count(DISTINCT number) FROM stimulus_set").await;
    if twice > 0 {
        found.doubled.push(format!("{twice} sets have the number of another"));
    }
    let double_ends = "SELECT count(*) FROM (SELECT set_id FROM set_evidence WHERE kind = 'rested' GROUP BY 1 HAVING count(*) > 1) x";
    if count(scene, double_ends).await > 0 {
        found.doubled.push("a set rested twice".into());
    }
}

async fn facts(scene: &Scene, stage: &Live<Stage>, found: &mut Found) {
    let (told, kept) = stage.with(|stage| (stage.told.clone(), stage.kept.clone()));
    let rows: Vec<(Uuid, i32, String)> =
        sqlx::query_as("SELECT set_id, seq, kind FROM set_evidence").fetch_all(&scene.house.database.superuser).await.unwrap();
    let there: BTreeMap<(String, u32), String> =
        rows.into_iter().map(|(set, seq, kind)| ((set.to_string(), seq.unsigned_abs()), kind)).collect();
    for fact in told.iter().filter(|fact| kept.get(&fact.set).is_some_and(|seq| fact.seq <= *seq)) {
        found.acknowledged += 1;
        let kind = match fact.fact {
            Fact::Shown { .. } => "shown",
            Fact::Second { .. } => "second",
            Fact::Rested { .. } => "rested",
        };
        match there.get(&(fact.set.clone(), fact.seq)) {
            None => found.lost.push(format!("{fact:?}")),
            Some(there) if there == kind => {}
            Some(there) => found.contradictory.push(format!("{fact:?}: {there}")),
        }
    }
}

async fn moments(scene: &Scene, stage: &Live<Stage>, found: &mut Found) {
    found.acknowledged += 1;
    match count(scene, "SELECT count(*) FROM session_moment WHERE kind = 'admitted'").await {
        0 => found.lost.push("the admission".into()),
        1 => {}
        more => found.doubled.push(format!("{more} admissions")),
    }
    let (pressed, there) =
        (stage.with(|stage| stage.stops), count(scene, "SELECT count(*) FROM session_moment WHERE kind = 'client_stop'").await);
    if there > i64::from(pressed) {
        found.doubled.push(format!("{there} stops by the client are in the record, {pressed} were pressed"));
    }
}

/// Prints what was found, and fails if it is anything.
pub async fn compare(what: &str, kills: usize, scene: &Scene, written: &Written, desk: &Live<Desk>, stage: &Live<Stage>) {
    let mut found = Found::default();
    entries(scene, written, &mut found).await;
    sets(scene, desk, stage, &mut found).await;
    facts(scene, stage, &mut found).await;
    moments(scene, stage, &mut found).await;
    let sent_away = (desk.with(|desk| desk.sent_away), stage.with(|stage| stage.sent_away));
    assert_eq!(sent_away, (None, None), "both pages came back by themselves");
    assert!(written.kept.len() >= kills && found.stops > 0, "too little was done: {} entries, {} stops", written.kept.len(), found.stops);
    let Found { acknowledged, lost, doubled, contradictory, stops, unknown_stops } = &found;
    let wrong = lost.len() + doubled.len() + contradictory.len();
    let said = format!(
        "{} lost, {} doubled, {} contradictory{}",
        lost.len(),
        doubled.len(),
        contradictory.len(),
        if wrong > 0 { format!(": {found:#?}") } else { String::new() }
    );
    let of = format!("{acknowledged} things acknowledged, {} entries among them, sent again {} times", written.kept.len(), written.again);
    figure(&format!("{what} {kills} times: of {of}"), wrong == 0, &said, "0, 0, 0");
    let said = format!("{} unknown {unknown_stops:?}", unknown_stops.len());
    figure(&format!("{what} {kills} times: of {stops} stops that a page showed"), unknown_stops.is_empty(), &said, "0 unknown");
}
