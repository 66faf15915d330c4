//! What the log, the counters and the error pages say of a request, and what they never say.

use std::io::Write;
use std::sync::{Arc, Mutex, OnceLock};

use leeward::platform::Role;
use leeward::platform::observe;
use leeward_tests::House;
use tracing::Level;
use tracing_subscriber::fmt::MakeWriter;

use crate::scene::Scene;

/// What all tests of this process have logged. There is one log for a process, so each looks for what only it can have written.
#[derive(Clone, Default)]
struct Kept(Arc<Mutex<Vec<u8>>>);

impl Write for Kept {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.lock().unwrap().extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

impl<'a> MakeWriter<'a> for Kept {
    type Writer = Self;
    fn make_writer(&'a self) -> Self {
        self.clone()
    }
}

/// The portal's own log at its most talkative.
fn log() -> &'static Kept {
    static LOG: OnceLock<Kept> = OnceLock::new();
    LOG.get_or_init(|| {
        let kept = Kept::default();
        tracing::subscriber::set_global_default(leeward::log::subscriber(Level::DEBUG, kept.clone())).unwrap();
        kept
    })
}

fn lines() -> Vec<String> {
    String::from_utf8(log().0.lock().unwrap().clone()).unwrap().lines().map(str::to_owned).collect()
}

fn number(answer: &leeward_tests::Answer) -> String {
    answer.headers.iter().find(|(name, _)| name == "x-request-id").map(|(_, value)| value.clone()).unwrap_or_default()
}

#[tokio::test]
async fn a_request_leaves_one_line_with_its_route_and_no_path() {
    log();
    let mut scene = Scene::build().await;
    let answer = scene.clinician.get(&format!("/clients/{}?find=x", scene.client)).await;
    let number = number(&answer);
    assert_eq!(number.len(), 11, "{number}");
    let told: Vec<String> = lines().into_iter().filter(|line| line.contains(&number)).collect();
    assert_eq!(told.len(), 1, "{told:?}");
    for part in [r#"method="GET""#, r#"route="/clients/{client}""#, "status=200", "ms="] {
        assert!(told[0].contains(part), "{part} is missing in {}", told[0]);
    }
    assert!(!told[0].contains(&scene.client.to_string()));
}

/// Whatever a caller puts anywhere, the log does not repeat it: paths, queries, headers, methods, forms, and what the
/// database says of a row that it refuses.
#[tokio::test]
async fn what_is_sent_is_never_logged() {
    log();
    const CANARY: &str = "kanarienvogel7";
    let mut scene = Scene::build().await;
    let mut visitor = scene.house.visitor();
    for path in [format!("/{CANARY}"), format!("/clients/{CANARY}"), format!("/clients?find={CANARY}"), format!("/assets/{CANARY}/x.js")] {
        visitor.get(&path).await;
        scene.clinician.get(&path).await;
    }
    let headers = [("x-request-id", CANARY), ("referer", CANARY), ("user-agent", CANARY), ("x-forwarded-for", CANARY), ("cookie", CANARY)];
    visitor.post_raw(&format!("/join?{CANARY}"), &headers, CANARY).await;
    let method = reqwest::Method::from_bytes(CANARY.to_uppercase().as_bytes()).unwrap();
    let answer = reqwest::Client::new().request(method, format!("{}/clients", scene.house.origin)).send().await.unwrap();
    assert!(answer.status().is_client_error());
    // A fault whose message and detail hold what was typed, as Postgres writes them.
    for statement in [
        "CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
           RAISE EXCEPTION 'invalid input: kanarienvogel7' USING ERRCODE = '22P02', DETAIL = 'Key (x)=(kanarienvogel7)'; END $$",
        "CREATE TRIGGER refuse BEFORE INSERT OR UPDATE ON client_details FOR EACH ROW EXECUTE FUNCTION refuse()",
        "CREATE TRIGGER refuse BEFORE INSERT ON process_note FOR EACH ROW EXECUTE FUNCTION refuse()",
    ] {
        sqlx::query(statement).execute(&scene.house.database.superuser).await.unwrap();
    }
    let typed = [("name", CANARY), ("seizures", "no"), ("eye_condition", "no"), ("version", "1")];
    let refused = scene.clinician.post_form("/clients/new", &typed).await;
    assert_eq!(refused.status, 503, "{}", refused.body);
    let edited = scene.clinician.post_form(&format!("/clients/{}/edit", scene.client), &typed).await;
    assert_eq!(edited.status, 503);
    use leeward_core::wire::{EntryValue, Moment};
    let entry = scene.entry(None, None, Moment::AfterSet, EntryValue::Words { words: CANARY.into() });
    assert_eq!(scene.enter(&entry).await.status, 503);

    let lines = lines();
    let leaks: Vec<_> = lines.iter().filter(|line| line.to_lowercase().contains(CANARY)).collect();
    assert!(leaks.is_empty(), "{leaks:?}");
    let number = number(&refused);
    assert!(lines.iter().any(|line| line.contains(&number) && line.contains("SQLSTATE 22P02")), "the fault is still named");
    assert!(lines.iter().any(|line| line.contains(r#"method="other""#)));
}

#[tokio::test]
async fn an_error_page_gives_the_number_that_the_log_has() {
    log();
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician]).await;
    let page = member.get("/nowhere").await;
    assert!(page.body.contains(&format!("give them this number: <strong>{}</strong>", number(&page))), "{}", page.body);
    let json = member.get_json("/nowhere").await;
    assert!(number(&json).len() == 11 && number(&page) != number(&json), "a script finds it in the header");
    assert!(lines().iter().any(|line| line.contains(&number(&page)) && line.contains(r#"route="other""#) && line.contains("status=404")));
}

/// One line of the text format of Prometheus, version 0.0.4: a name, labels, a number.
#[tokio::test]
async fn the_figures_count_by_route_and_name_nobody() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}", scene.client);
    let before = observe::figures(&scene.house.app, &leeward::live::gauges(&scene.house.app));
    for _ in 0..3 {
        scene.clinician.get(&path).await;
    }
    scene.house.visitor().get("/readyz").await;
    let text = observe::figures(&scene.house.app, &leeward::live::gauges(&scene.house.app));
    let figure =
        |text: &str, start: &str| text.lines().find_map(|line| line.strip_prefix(start).and_then(|rest| rest.trim().parse::<f64>().ok()));
    let seen = r#"leeward_requests_total{route="/clients/{client}",method="GET",status="200"}"#;
    assert_eq!((figure(&before, seen), figure(&text, seen)), (None, Some(3.0)), "{text}");
    assert_eq!(figure(&text, "leeward_rooms"), Some(0.0));
    assert_eq!(figure(&text, "leeward_room_rows_waiting"), Some(0.0));
    let (open, used) = (figure(&text, "leeward_database_connections"), figure(&text, "leeward_database_connections_used"));
    assert!(open >= Some(1.0) && used <= open, "{text}");
    assert!(!text.contains(&scene.client.to_string()));
    for line in text.lines() {
        let value = line.rsplit(' ').next().unwrap();
        assert!(line.starts_with("# HELP ") || line.starts_with("# TYPE ") || value.parse::<f64>().is_ok(), "{line}");
    }
    assert_eq!(scene.clinician.get("/metrics").await.status, 404, "the portal itself does not serve them");
}
