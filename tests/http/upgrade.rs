//! What an earlier version kept, opened by this one: a dump for each migration since the seventh, each with sealed values
//! under the tests' key. `./tests/run --dump` writes the newest.

use std::collections::BTreeSet;
use std::path::PathBuf;

use leeward::store::database::MIGRATIONS;
use leeward_tests::{House, SEALED, TestDatabase, open_all};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("dumps")
}

fn dumps() -> Vec<PathBuf> {
    let mut dumps: Vec<_> = std::fs::read_dir(folder()).unwrap().map(|entry| entry.unwrap().path()).collect();
    dumps.retain(|path| path.extension().is_some_and(|ending| ending == "sql"));
    dumps.sort();
    dumps
}

fn newest() -> i64 {
    MIGRATIONS.iter().map(|migration| migration.version).max().expect("there are migrations")
}

#[test]
fn the_newest_migration_has_a_dump() {
    let dump = folder().join(format!("{:04}.sql", newest()));
    assert!(dump.exists(), "there is no {}: run ./tests/run --dump and commit what it writes with the migration", dump.display());
}

#[tokio::test]
async fn every_dump_is_upgraded_and_every_sealed_value_of_it_opens() {
    for dump in dumps() {
        // Opened as it is served, with all that is checked at the start.
        let house = House::from_dump(&dump).await;
        let pool = &house.database.superuser;
        let version: i64 = sqlx::query_scalar("SELECT max(version) FROM _sqlx_migrations").fetch_one(pool).await.unwrap();
        assert_eq!(version, newest());
        let opened = open_all(pool).await;
        for (column, text) in [
            ("client_details.contact_name", "Edwin Quillfeather"),
            ("target_words.picture", "grey water over the rail"),
            ("session_words.note", "Written at the close."),
            ("session_words.client_words", "Until Friday."),
            ("session_words.location", "12 Fjordgata"),
            ("process_note.words", "the railing, further off"),
        ] {
            let there = opened.iter().any(|(place, opened)| place == column && opened.reveal() == text);
            assert!(there, "{}: {column} holds {text:?}", dump.display());
        }
    }
}

#[tokio::test]
async fn what_was_there_is_carried_over_as_what_it_is() {
    let database = TestDatabase::from_dump(&folder().join("0007.sql")).await;
    let pool = &database.superuser;
    // Words: what the last version was, under its number; nobody is made up who wrote it.
    let words: Vec<(i32, bool)> =
        sqlx::query_as("SELECT version, written_by IS NULL AND written_at IS NULL FROM session_words ORDER BY session_id, version")
            .fetch_all(pool)
            .await
            .unwrap();
    assert_eq!(words.len(), 3);
    assert!(words.iter().all(|(_, unknown)| *unknown), "{words:?}");
    // Endings: the screen said how the third set ended, and "unknown" had been written over it.
    let endings: Vec<Option<String>> =
        sqlx::query_scalar("SELECT o.ending FROM set_outcome o JOIN stimulus_set s ON s.id = o.set_id ORDER BY s.number")
            .fetch_all(pool)
            .await
            .unwrap();
    assert_eq!(endings, ["done", "stopped_by_client", "stopped_by_clinician"].map(|ending| Some(ending.to_owned())));
    // Seats: the admitted one stays admitted, the one that asks goes on asking.
    let seats: Vec<(bool, bool)> =
        sqlx::query_as("SELECT taken_at IS NOT NULL, admitted_at IS NOT NULL FROM access.seat WHERE closed_at IS NULL ORDER BY asked_no")
            .fetch_all(pool)
            .await
            .unwrap();
    assert_eq!(seats, [(true, true), (false, false)]);
}

/// Whatever was entered before there were plans stands in one, in the order of its entry.
#[tokio::test]
async fn every_target_stands_in_its_clients_plan() {
    for dump in dumps() {
        let database = TestDatabase::from_dump(&dump).await;
        let query = "SELECT (SELECT count(*) FROM target), count(*), bool_and(p.place = t.number) FROM target_plan p JOIN target t ON t.id = p.target_id";
        let (targets, planned, in_order): (i64, i64, bool) = sqlx::query_as(query).fetch_one(&database.superuser).await.unwrap();
        assert!(targets > 0 && planned == targets, "{}", dump.display());
        assert_eq!(
            in_order,
            dump.file_stem().is_some_and(|stem| stem.to_string_lossy().as_ref() < "0019"),
            "{}: moved by hand since",
            dump.display()
        );
    }
}

/// A practice from before goes on as it did; one that has chosen keeps what it chose.
#[tokio::test]
async fn a_practice_writes_on_as_it_did() {
    for (dump, expected) in [("0015.sql", ("day_first", 24, false)), ("0016.sql", ("month_first", 12, true))] {
        let database = TestDatabase::from_dump(&folder().join(dump)).await;
        let query = "SELECT day_order, clock, tells_whom FROM practice";
        let (order, clock, tells): (String, i16, bool) = sqlx::query_as(query).fetch_one(&database.superuser).await.unwrap();
        assert_eq!((order.as_str(), clock, tells), expected, "{dump}");
    }
}

/// Bytes in the records are sealed values, keys, or the audit's chain.
#[tokio::test]
async fn the_list_of_sealed_columns_is_whole() {
    let database = TestDatabase::new().await;
    let there: BTreeSet<String> = sqlx::query_scalar(
        "SELECT concat_ws('.', table_name, column_name) FROM information_schema.columns
         WHERE table_schema = 'public' AND data_type = 'bytea' AND table_name NOT IN ('audit', 'client_key', '_sqlx_migrations')",
    )
    .fetch_all(&database.superuser)
    .await
    .unwrap()
    .into_iter()
    .collect();
    let known = SEALED.iter().flat_map(|sealed| sealed.columns.iter().map(move |(column, _)| format!("{}.{column}", sealed.table)));
    assert_eq!(there, known.collect());
}
