//! Adverse events: written down once, corrected beside what they correct, read by those who treat.

use leeward::platform::Role;

use crate::scene::{Scene, rows};

const TYPED: [(&str, &str); 6] = [
    ("kind", "reliving"),
    ("day", "2026-01-05"),
    ("time", "02:30"),
    ("session", ""),
    ("done", "called"),
    ("account", "woke twice, called the practice in the morning"),
];

fn with<'a>(name: &'a str, value: &'a str) -> Vec<(&'a str, &'a str)> {
    TYPED.into_iter().filter(|(field, _)| *field != name).chain([(name, value)]).collect()
}

#[tokio::test]
async fn an_event_is_written_down_and_its_correction_stands_beside_it() {
    let mut scene = Scene::build().await;
    let path = format!("/clients/{}/events", scene.client);
    let new = format!("{path}/new");
    assert!(scene.clinician.get(&format!("/clients/{}", scene.client)).await.body.contains(&format!("href=\"{path}\"")));
    assert!(scene.clinician.get(&path).await.body.contains("None is written down"));
    let of_session = scene.clinician.get(&format!("{new}?session=1")).await.body;
    assert!(of_session.contains("name=\"session\" value=\"1\""), "from the session's page its number stands there: {of_session}");
    let saved = scene.clinician.fill_in(&new, &TYPED).await;
    assert_eq!((saved.status, saved.place()), (303, path.as_str()), "{}", saved.body);
    let again = scene.clinician.get(&format!("{new}?corrects=1")).await.body;
    assert!(again.contains("woke twice") && again.contains("name=\"corrects\" value=\"1\""), "{again}");
    let corrected = [("kind", "panic"), ("session", "1"), ("corrects", "1")];
    let right: Vec<_> = TYPED.into_iter().filter(|(name, _)| !corrected.iter().any(|(field, _)| field == name)).chain(corrected).collect();
    let of_session = format!("/sessions/{}", scene.session);
    let saved = scene.clinician.fill_in(&new, &right).await;
    assert_eq!((saved.status, saved.place()), (303, of_session.as_str()), "back to the session");
    assert!(scene.clinician.get(&of_session).await.body.contains(&format!("<a href=\"{path}#event-2\">Panic</a>")), "which shows it");
    let page = scene.clinician.get(&path).await.body;
    let lines = rows(&page, "Adverse events by the time");
    assert_eq!(lines.len(), 2, "{lines:?}");
    assert!(lines.iter().any(|line| line.contains("Panic") && line.contains("session 1")), "{lines:?}");
    assert!(page.contains("<s>Reliving between sessions</s>") && page.contains("corrected by no. 2"), "{page}");
    let twice = scene.clinician.fill_in(&new, &right).await;
    assert!(twice.status == 409 && twice.body.contains("corrected already"), "{}: {}", twice.status, twice.body);
}

#[tokio::test]
async fn what_is_wrong_is_said_and_nothing_is_kept() {
    let mut scene = Scene::build().await;
    let new = format!("/clients/{}/events/new", scene.client);
    for (name, value) in [
        ("kind", ""),
        ("kind", "dreadful"),
        ("day", "5 January"),
        ("time", "25:00"),
        ("time", ""),
        ("day", "2031-01-05"),
        ("done", ""),
        ("session", "x"),
    ] {
        let refused = scene.clinician.fill_in(&new, &with(name, value)).await;
        assert_eq!(refused.status, 422, "{name} {value}: {}", refused.body);
        assert!(refused.body.contains("woke twice"), "what was typed stays");
    }
    assert_eq!(scene.clinician.fill_in(&new, &with("session", "7")).await.status, 404, "no such session");
    let kept: i64 = sqlx::query_scalar("SELECT count(*) FROM adverse_event").fetch_one(&scene.house.database.superuser).await.unwrap();
    assert_eq!(kept, 0);
}

/// Leads count kinds and times; the account is for those who treat.
#[tokio::test]
async fn a_lead_reads_codes_and_no_account() {
    let mut scene = Scene::build().await;
    assert_eq!(scene.clinician.fill_in(&format!("/clients/{}/events/new", scene.client), &TYPED).await.status, 303);
    let lead = scene.house.member(&[Role::Lead]).await;
    let mut tx = scene.house.app.database.look(&lead.subject()).await.unwrap();
    let kinds: Vec<String> = sqlx::query_scalar("SELECT kind FROM adverse_event").fetch_all(&mut *tx).await.unwrap();
    let accounts: i64 = sqlx::query_scalar("SELECT count(*) FROM adverse_account").fetch_one(&mut *tx).await.unwrap();
    assert_eq!((kinds, accounts), (vec!["reliving".to_owned()], 0));
}
