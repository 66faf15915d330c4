//! The database's disk is full: said in words, and nothing is lost that was shown as saved.

use std::path::{Path, PathBuf};
use std::process::Command;

use leeward_core::wire::{EntryValue, Moment};
use sqlx::PgPool;

use crate::scene::{NAME, Scene};

const CLIENT: [(&str, &str); 3] = [("name", "Ottoline Marsh"), ("seizures", "no"), ("eye_condition", "no")];

async fn run(database: &PgPool, statement: &str) {
    sqlx::raw_sql(sqlx::AssertSqlSafe(statement.to_owned())).execute(database).await.unwrap();
}

/// While there is no room: a form says so and comes back whole, an entry is not called kept, what is there is read.
async fn without_room(scene: &mut Scene, entry: &leeward_core::wire::Entry) {
    let form = scene.clinician.post_form("/clients/new", &CLIENT).await;
    assert_eq!(form.status, 503, "{}", form.body);
    for part in ["the server is out of room", "Tell the administrator", r#"value="Ottoline Marsh""#] {
        assert!(form.body.contains(part), "{part} is missing in {}", form.body);
    }
    let answer = scene.enter(entry).await;
    assert_eq!((answer.status, answer.json()["title"].as_str()), (503, Some("The server is out of room")));
    let record = scene.clinician.get(&format!("/clients/{}", scene.client)).await;
    assert_eq!(record.status, 200);
    assert!(record.body.contains(NAME));
}

/// Once there is room again: the same requests are kept, and kept once.
async fn with_room_again(scene: &mut Scene, entry: &leeward_core::wire::Entry, before: &str) {
    assert_eq!(scene.clinician.post_form("/clients/new", &CLIENT).await.status, 303);
    assert_eq!(scene.enter(entry).await.status, 200);
    let log = scene.clinician.get_json(&format!("/sessions/{}/entries", scene.session)).await.json();
    let kept: Vec<&str> = log["entries"].as_array().unwrap().iter().filter_map(|one| one["entry"]["id"].as_str()).collect();
    assert_eq!(kept, [before, &entry.id]);
    let clients: i64 = sqlx::query_scalar("SELECT count(*) FROM client").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(clients, 2);
}

/// By a trigger that raises what Postgres raises when it cannot extend a file: SQLSTATE 53100, PostgreSQL, appendix A.
#[tokio::test]
async fn a_full_disk_is_said_in_words_and_what_was_typed_is_kept() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    let before = scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "the railing again".into() }).await;
    let entry = scene.entry(None, None, Moment::AfterSet, EntryValue::Words { words: "shoulders lower".into() });
    run(
        &database,
        "CREATE FUNCTION full_disk() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
            RAISE EXCEPTION 'could not extend file' USING ERRCODE = '53100'; END $$;
        CREATE TRIGGER full_disk BEFORE INSERT ON client_details FOR EACH ROW EXECUTE FUNCTION full_disk();
        CREATE TRIGGER full_disk BEFORE INSERT ON process_note FOR EACH ROW EXECUTE FUNCTION full_disk();",
    )
    .await;
    without_room(&mut scene, &entry).await;
    run(&database, "DROP TRIGGER full_disk ON client_details; DROP TRIGGER full_disk ON process_note").await;
    with_room_again(&mut scene, &entry, &before).await;
}

/// A file system of one MiB in memory, gone when this is dropped.
struct Tiny(PathBuf);

impl Tiny {
    /// `None` where this user may mount nothing, or the database server runs elsewhere.
    fn mount(name: &str) -> Option<Self> {
        let folder = std::env::temp_dir().join(name);
        std::fs::create_dir(&folder).ok()?;
        let tiny = Self(folder);
        let mounted = Command::new("mount").args(["-t", "tmpfs", "-o", "size=1m,mode=0777", "tmpfs"]).arg(&tiny.0).output().ok()?;
        mounted.status.success().then_some(tiny)
    }

    /// Takes all the room that is left.
    fn fill(&self) -> PathBuf {
        let file = self.0.join("filler");
        let _ = std::fs::write(&file, vec![0; 2 << 20]);
        file
    }

    /// A folder for the server, owned by the user whom it runs as.
    fn folder_like(&self, owner: &str) -> Option<PathBuf> {
        let folder = self.0.join("space");
        std::fs::create_dir(&folder).ok()?;
        let done = Command::new("chown").arg(owner).arg(&folder).output().ok()?;
        done.status.success().then_some(folder)
    }
}

impl Drop for Tiny {
    fn drop(&mut self) {
        if std::thread::panicking() {
            // Under a database that still has tables here, its checkpoints would fail.
            println!("left mounted: {}", self.0.display());
            return;
        }
        let _ = Command::new("umount").arg("--lazy").arg(&self.0).output();
        let _ = std::fs::remove_dir(&self.0);
    }
}

/// By the real thing, where this may mount: the tables lie in a tablespace on a file system of one MiB, which is filled.
#[tokio::test]
async fn a_disk_that_is_really_full_is_said_in_words_too() {
    let mut scene = Scene::build().await;
    let database = scene.house.database.superuser.clone();
    let name: String = sqlx::query_scalar("SELECT current_database()::text").fetch_one(&database).await.unwrap();
    let space = name.replace("leeward_test", "tiny");
    let Some((tiny, folder)) = Tiny::mount(&space).and_then(|tiny| tiny.folder_like("postgres").map(|folder| (tiny, folder))) else {
        println!("SKIPPED: this user may not mount a file system; the trigger's test stands for it");
        return;
    };
    let created =
        sqlx::raw_sql(sqlx::AssertSqlSafe(format!("CREATE TABLESPACE {space} LOCATION '{}'", folder.display()))).execute(&database).await;
    if created.is_err() {
        println!("SKIPPED: the database server does not see this file system; the trigger's test stands for it");
        return;
    }
    run(&database, &format!("ALTER TABLE client_details SET TABLESPACE {space}; ALTER TABLE process_note SET TABLESPACE {space}")).await;
    let before = scene.kept(None, None, Moment::AfterSet, EntryValue::Words { words: "the railing again".into() }).await;
    let entry = scene.entry(None, None, Moment::AfterSet, EntryValue::Words { words: "shoulders lower".into() });
    // Each further row fills a page, so that it needs one that is not there.
    for table in ["client_details", "process_note"] {
        run(
            &database,
            &format!(
                "ALTER TABLE {table} SET (fillfactor = 10); ALTER TABLE {table} ADD COLUMN ballast text DEFAULT repeat('x', 7000);
            ALTER TABLE {table} ALTER COLUMN ballast SET STORAGE PLAIN"
            ),
        )
        .await;
    }
    let filler = tiny.fill();
    assert_full(&filler);
    without_room(&mut scene, &entry).await;
    std::fs::remove_file(&filler).unwrap();
    with_room_again(&mut scene, &entry, &before).await;
    run(&database, "ALTER TABLE client_details SET TABLESPACE pg_default; ALTER TABLE process_note SET TABLESPACE pg_default").await;
    run(&database, &format!("DROP TABLESPACE {space}")).await;
}

fn assert_full(file: &Path) {
    let size = std::fs::metadata(file).unwrap().len();
    assert!(size > 0 && size < 2 << 20, "the file system took all of the filler: {size} bytes");
}
