//! The trail: only acts that the portal knows, by whom they can be done, at the time that it is.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use leeward::base::ids::Token;
use leeward::store::subject::{Act, Subject};
use leeward_tests::TestDatabase;

use super::probe::ground;

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

/// Every act that the code names.
fn acts_in_the_code() -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut files = Vec::new();
    for folder in ["server/portal/src", "demo-seed/src"] {
        sources(&root.join(folder), &mut files);
    }
    let mut acts = BTreeSet::new();
    for file in files {
        let text = std::fs::read_to_string(file).unwrap();
        for opening in ["Act::new(\"", "access.audit('"] {
            acts.extend(text.split(opening).skip(1).filter_map(|rest| rest.split(['"', '\'']).next()).map(str::to_owned));
        }
        // The two of a form of what is kept once for a client.
        if let Some((_, both)) = text.split_once("const ACTS: [&'static str; 2] = [\"") {
            acts.extend(both.split('"').step_by(2).take(2).map(str::to_owned));
        }
    }
    // The example in the words of `Act` is one of them.
    acts
}

#[tokio::test]
async fn the_database_knows_the_acts_of_the_code_and_no_others() {
    let database = TestDatabase::new().await;
    let known: BTreeSet<String> =
        sqlx::query_scalar("SELECT DISTINCT act FROM access.audit_act").fetch_all(&database.superuser).await.unwrap().into_iter().collect();
    let code = acts_in_the_code();
    assert!(code.len() > 50, "only {}: is this all of the code?", code.len());
    let (lacking, left_over): (Vec<_>, Vec<_>) = (code.difference(&known).collect(), known.difference(&code).collect());
    assert!(lacking.is_empty() && left_over.is_empty(), "a migration adds to access.audit_act: {lacking:?}, and takes away: {left_over:?}");
}

/// Whoever can speak SQL as the app role may not fill the trail with acts of others.
#[tokio::test]
async fn an_act_is_of_the_askers_kind() {
    let ground = ground().await;
    let (app, clinician) = (&ground.scene.house.app, ground.scene.clinician.subject());
    let made_up = Subject::Member(Token::new(&app.world));
    let seat = Subject::Seat(ground.seat_token.clone());
    let room = Subject::Room(ground.room_token.clone());
    for (subject, act, may) in [
        (&clinician, "client.view", true),
        (&clinician, "signin.refused", false),
        (&clinician, "made.up", false),
        (&made_up, "client.view", false),
        (&made_up, "signin.close", false),
        (&Subject::Visitor, "code.wrong", true),
        (&Subject::Visitor, "client.view", false),
        (&Subject::Visitor, "rehearsal.end", false),
        (&Subject::Visitor, "member.invite", false),
        (&seat, "seat.leave", true),
        (&seat, "client.view", false),
        (&room, "client.view", false),
    ] {
        let kept = app.database.act(subject, Act::new(act)).await.unwrap().commit().await;
        assert_eq!(kept.is_ok(), may, "{act} as {subject:?}: {kept:?}");
    }
    // Signed out, the last act is that one alone.
    sqlx::query("UPDATE access.signin SET closed_at = seen_at").execute(&ground.scene.house.database.superuser).await.unwrap();
    for (act, may) in [("client.view", false), ("signin.close", true)] {
        let kept = app.database.act(&clinician, Act::new(act)).await.unwrap().commit().await;
        assert_eq!(kept.is_ok(), may, "{act} after the end");
    }
}
