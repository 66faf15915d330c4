//! What a copy of the database gives away: seeds a small practice and looks for its people's words in the dump.

use std::collections::BTreeSet;
use std::io::Write;

use base64::Engine;
use base64::engine::general_purpose::STANDARD_NO_PAD;
use clap::Parser;
use leeward_tests::TestDatabase;
use sqlx::ConnectOptions;

use crate::ground::IN_THE_MAKING;
use crate::plan::{ClientPlan, Practice, SessionPlan};
use crate::{Args, practice, run};

const CLIENTS: usize = 3;

/// One practice for what only looks at it, since it takes seconds to make.
#[tokio::test]
async fn a_seeded_practice_is_sealed_in_the_present_and_opened_by_its_key_alone() {
    let database = TestDatabase::new().await;
    seed(&database).await;
    a_dump_holds_no_word_about_a_client(&database).await;
    the_clock_is_the_databases_again(&database).await;
    another_key_is_refused_even_when_nothing_is_left_to_seed(&database).await;
}

async fn a_dump_holds_no_word_about_a_client(database: &TestDatabase) {
    let dump = database.dump();
    let practice = practice::draw(1, CLIENTS);
    let words = private_words(&practice);
    assert!(words.len() > 60, "{} words", words.len());
    let sessions: i64 = sqlx::query_scalar("SELECT count(*) FROM session").fetch_one(&database.superuser).await.unwrap();
    assert_eq!(usize::try_from(sessions), Ok(practice.clients.iter().map(|client| client.sessions.len()).sum()));
    // What is not sealed is found: the names of members.
    assert_eq!(found(&dump, practice.members[0].name), Some("raw"));
    let seen: Vec<_> = words.iter().filter_map(|word| found(&dump, word).map(|how| (how, word))).collect();
    assert!(seen.is_empty(), "{seen:?}");
}

#[test]
fn the_search_finds_a_word_however_it_stands() {
    let word = "Ashgrove Lane";
    assert_eq!(found("7\tAshgrove Lane\t9", word), Some("raw"));
    assert_eq!(found("\\\\x0041736867726f7665204c616e65ff", word), Some("hex"));
    for before in 0..3 {
        let bytes = [&b"<<<"[..before], word.as_bytes(), b">>"].concat();
        assert_eq!(found(&STANDARD_NO_PAD.encode(bytes), word), Some("base64"), "{before} bytes before it");
    }
    assert_eq!(found("Ashgrove Row", word), None);
}

/// The years behind are written as they pass; afterwards the time is the present, whatever the portal says it is.
async fn the_clock_is_the_databases_again(database: &TestDatabase) {
    let (clock, oldest): (String, bool) = sqlx::query_as(
        "SELECT concat_ws(' give or take ', ahead, slack), (SELECT min(at) < now() - interval '30 days' FROM audit) FROM access.clock",
    )
    .fetch_one(&database.superuser)
    .await
    .unwrap();
    assert_eq!((clock.as_str(), oldest), ("00:00:00 give or take 00:01:00", true));
}

/// A demo that is there already is not passed over with another key: nothing of it would open.
async fn another_key_is_refused_even_when_nothing_is_left_to_seed(database: &TestDatabase) {
    seed_with(database, "5e").await.unwrap();
    let refused = seed_with(database, "e5").await.unwrap_err().to_string();
    assert!(refused.contains("Put the practice's own key file back"), "{refused}");
}

#[tokio::test]
async fn a_practice_that_was_broken_off_in_the_making_is_made_anew() {
    let database = TestDatabase::new().await;
    seed(&database).await;
    let clients = async || sqlx::query_scalar::<_, i64>("SELECT count(*) FROM client").fetch_one(&database.superuser).await.unwrap();
    let at_first = clients().await;
    sqlx::query("UPDATE practice SET name = $1").bind(IN_THE_MAKING).execute(&database.superuser).await.unwrap();
    seed(&database).await;
    assert_eq!((clients().await, at_first), (at_first, 3));
    let name: String = sqlx::query_scalar("SELECT name FROM practice").fetch_one(&database.superuser).await.unwrap();
    assert_ne!(name, IN_THE_MAKING);
    // The policies hold for the owner as before.
    let forced: bool = sqlx::query_scalar("SELECT relforcerowsecurity FROM pg_class WHERE oid = 'practice'::regclass")
        .fetch_one(&database.superuser)
        .await
        .unwrap();
    assert!(forced);
}

async fn seed(database: &TestDatabase) {
    seed_with(database, "5e").await.unwrap();
}

async fn seed_with(database: &TestDatabase, digits: &str) -> Result<(), crate::write::Fault> {
    let mut key = tempfile::NamedTempFile::new().unwrap();
    writeln!(key, "{}", digits.repeat(32)).unwrap();
    let (owner, app, clients) = (database.owner().to_url_lossy(), database.app().to_url_lossy(), CLIENTS.to_string());
    let args = ["demo-seed", "--owner-url", owner.as_str(), "--database-url", app.as_str(), "--clients", &clients, "--key-file"];
    let args = args.into_iter().chain(key.path().to_str());
    run(Args::parse_from(args)).await
}

/// Everything that the plan says about a client in words or numbers of one's own.
fn private_words(practice: &Practice) -> BTreeSet<&str> {
    practice
        .clients
        .iter()
        .flat_map(|client| about(client).chain(client.sessions.iter().flat_map(said)))
        .filter(|word| !word.is_empty())
        .collect()
}

fn about(client: &ClientPlan) -> impl Iterator<Item = &str> {
    let person = [&client.name, &client.addressed_as, &client.phone, &client.contact_name, &client.contact_phone, &client.location];
    let memories = client.targets.iter().map(|target| target.memory);
    let told = memories.flat_map(|it| [it.label, it.picture, it.negative, it.positive, it.emotions, it.body]);
    person.into_iter().map(String::as_str).chain(told)
}

fn said(session: &SessionPlan) -> impl Iterator<Item = &str> {
    session.sets.iter().map(|set| set.words).chain([session.note.as_str()])
}

/// How `word` stands in `dump`, if it does: as it is, or as the two ways in which Postgres and JSON write bytes.
fn found(dump: &str, word: &str) -> Option<&'static str> {
    if dump.contains(word) {
        return Some("raw");
    }
    // So few bytes stand by chance in a sealed value.
    if word.len() < 6 {
        return None;
    }
    if dump.contains(&hex(word)) {
        return Some("hex");
    }
    base64_cores(word).iter().any(|core| dump.contains(core)).then_some("base64")
}

fn hex(word: &str) -> String {
    word.bytes().map(|byte| format!("{byte:02x}")).collect()
}

/// What of a word's base64 does not depend on its neighbours, with 0, 1 and 2 bytes before it.
fn base64_cores(word: &str) -> [String; 3] {
    [0, 1, 2].map(|before| {
        let text = STANDARD_NO_PAD.encode([&[0; 2][..before], word.as_bytes()].concat());
        // A letter holds six bits: the ones that share a byte with what comes before or after go.
        let (first, whole) = ([0, 2, 3][before], (before + word.len()) * 8 / 6);
        text[first..whole].to_owned()
    })
}
