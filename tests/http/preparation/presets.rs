use leeward::platform::Role;
use leeward::store::subject::Subject;
use leeward_tests::House;
use uuid::Uuid;

use super::{has, refused, with};
use crate::scene::{Scene, rows};

/// An invented preset.
const MINE: [(&str, &str); 8] = [
    ("name", "Evening pace"),
    ("owner", "mine"),
    ("purpose", "processing"),
    ("eyes", "on"),
    ("ears", "on"),
    ("rate", "0,9"),
    ("width", "16"),
    ("cycles", "30"),
];

/// Slow, standard and fast: van Veen et al. 2015, doi 10.3389/fpsyt.2015.00045. 24 cycles: a handbook's
/// starting point (Shapiro 2018, from memory), 30, 24 and 20 s of motion by arithmetic; the ramps cost one more.
/// 6 cycles for a calm place: common practice, no source.
#[tokio::test]
async fn the_published_rates_are_there_from_the_start_and_a_calm_place_apart_from_them() {
    let house = House::build().await;
    let body = house.member(&[Role::Clinician]).await.get("/presets").await.body;
    assert_eq!(
        rows(&body, "Processing <small>"),
        [
            "Slow|the practice’s|eyes|0.80|18°|24 cycles|31 s|",
            "Standard|the practice’s|eyes|1.00|18°|24 cycles|25 s|",
            "Fast|the practice’s|eyes|1.20|18°|24 cycles|21 s|",
        ]
    );
    assert_eq!(rows(&body, "Calm place <small>"), ["Calm place|the practice’s|eyes|0.50|18°|6 cycles|13 s|"]);
}

/// Fields of a form with what is typed into them.
type Fields<'a> = [(&'a str, &'a str)];

async fn the_only_own(house: &House) -> Uuid {
    sqlx::query_scalar("SELECT id FROM preset WHERE member_id IS NOT NULL").fetch_one(&house.database.superuser).await.unwrap()
}

async fn the_practices(house: &House, name: &str) -> Uuid {
    let query = "SELECT id FROM preset WHERE member_id IS NULL AND name = $1";
    sqlx::query_scalar(query).bind(name).fetch_one(&house.database.superuser).await.unwrap()
}

#[tokio::test]
async fn a_clinicians_own_is_made_edited_archived_and_restored() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let made = clinician.post_form("/presets/new", &MINE).await;
    assert_eq!((made.status, made.place()), (303, "/presets"), "{}", made.body);
    let id = the_only_own(&house).await;
    let own = |body: &str| rows(body, "Processing <small>").into_iter().find(|row| row.contains("your own")).unwrap_or_default();
    assert_eq!(
        own(&clinician.get("/presets").await.body),
        "Evening pace|your own|eyes and tones|0.90|16°|30 cycles|34 s|Edit Evening pace\nArchive Evening pace"
    );

    let edit = format!("/presets/{id}/edit");
    has(&clinician.get(&edit).await.body, &[r#"value="Evening pace""#, r#"value="0.9""#, r#"name="version" value="1""#]);
    let changed = with(&with(&MINE, "cycles", ""), "version", "1");
    assert_eq!(clinician.post_form(&edit, &changed).await.status, 303);
    assert!(own(&clinician.get("/presets").await.body).contains("open-ended"));

    let late = clinician.post_form(&edit, &with(&changed, "name", "Morning pace")).await;
    assert_eq!(late.status, 409);
    has(
        &late.body,
        &[
            "Not saved: somebody changed this meanwhile",
            "Morning pace",
            "The record now says “Evening pace”.",
            r#"name="version" value="2""#,
        ],
    );

    let away = format!("/presets/{id}/archive");
    assert_eq!(clinician.post_form(&away, &[("version", "1")]).await.status, 409);
    assert_eq!(clinician.post_form(&away, &[("version", "2")]).await.status, 303);
    let body = clinician.get("/presets").await.body;
    assert_eq!(own(&body), "");
    has(&body, &["Archived (1)", "Restore"]);
    assert_eq!(clinician.post_form(&format!("/presets/{id}/restore"), &[("version", "3")]).await.status, 303);
    assert!(own(&clinician.get("/presets").await.body).contains("Evening pace"));
}

#[tokio::test]
async fn what_no_set_may_have_is_refused_beside_its_field_and_nothing_typed_is_lost() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let calm = with(&with(&MINE, "purpose", "calm_place"), "cycles", "6");
    let cases: [(&Fields<'_>, &str, &str, &str); 15] = [
        (&MINE, "name", "", "Please fill this in."),
        (&MINE, "name", "<b>loud", "looks like markup"),
        (&MINE, "name", "a name of more than forty characters in all", "At most 40 characters"),
        (&MINE, "owner", "practice", "Choose one of these."),
        (&MINE, "purpose", "nonsense", "Choose one of these."),
        (&MINE, "rate", "NaN", "Give a number"),
        (&MINE, "rate", "2.1", "The rate must be between 0.3 and 2 Hz."),
        (&MINE, "rate", "-1", "The rate must be between 0.3 and 2 Hz."),
        (&MINE, "width", "41", "The width must be between 2 and 40 degrees."),
        (&MINE, "width", "wide", "Give a number"),
        (&MINE, "cycles", "0", "A set must have 1 to 200 cycles."),
        (&MINE, "cycles", "2.5", "Give a whole number of cycles"),
        (&with(&MINE, "rate", "0.3"), "cycles", "200", "A set may last 360 seconds at most"),
        (&calm, "rate", "1.2", "The rate of a calm-place preset must be between 0.3 and 1 Hz."),
        (&calm, "cycles", "24", "A calm-place preset must have 1 to 12 cycles."),
    ];
    for (fields, field, typed, message) in cases {
        let answer = clinician.post_form("/presets/new", &with(fields, field, typed)).await;
        let kept = if ["owner", "purpose"].contains(&field) || typed.starts_with('<') { "" } else { typed };
        refused(&answer, field, message, kept);
        has(&answer.body, &[r#"value="16""#].map(|value| if field == "width" { message } else { value }));
    }
    let none: Vec<_> = MINE.iter().copied().filter(|(name, _)| !["eyes", "ears"].contains(name)).collect();
    refused(&clinician.post_form("/presets/new", &none).await, "channels", "Choose eyes, ears or hands.", "16");
    // Each side of the pacer lights once a cycle, and WCAG 2.2, 2.3.1 allows three flashes a second.
    let fast = with(&with(&none, "hands", "on"), "rate", "1.6");
    refused(&clinician.post_form("/presets/new", &fast).await, "rate", "With taps the rate must be 1.5 Hz or less", "1.6");
    let kept: i64 = sqlx::query_scalar("SELECT count(*) FROM preset").fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(kept, 4, "only those from the start");
}

#[tokio::test]
async fn the_practices_are_changed_by_a_lead_or_an_administrator_and_ones_own_by_nobody_else() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    assert_eq!(clinician.post_form("/presets/new", &MINE).await.status, 303);
    let (own, slow) = (the_only_own(&house).await, the_practices(&house, "Slow").await);
    let version = with(&with(&MINE, "version", "1"), "name", "Changed");
    for roles in [Role::Lead, Role::Administrator, Role::Clinician] {
        let mut other = house.member(&[roles]).await;
        assert!(!other.get("/presets").await.body.contains("Evening pace"), "{roles:?}");
        for (method, last) in [("GET", "edit"), ("POST", "edit"), ("POST", "archive"), ("POST", "restore")] {
            let path = format!("/presets/{own}/{last}");
            let status = if method == "GET" { other.get(&path).await.status } else { other.post_form(&path, &version).await.status };
            assert_eq!(status, 404, "{roles:?} {method} {last}");
        }
    }
    for last in ["edit", "archive", "restore"] {
        let answer = clinician.post_form(&format!("/presets/{slow}/{last}"), &version).await;
        assert_eq!(answer.status, 403, "{last}");
    }
    for (role, at) in [(Role::Lead, "1"), (Role::Administrator, "2")] {
        let mut changer = house.member(&[role]).await;
        let answer = changer.post_form(&format!("/presets/{slow}/edit"), &with(&with(&MINE, "version", at), "name", "Slower")).await;
        assert_eq!(answer.status, 303, "{role:?}: {}", answer.body);
        let new = with(&with(&MINE, "owner", "practice"), "name", role.name());
        assert_eq!(changer.post_form("/presets/new", &new).await.status, 303, "{role:?}");
        refused(&changer.post_form("/presets/new", &MINE).await, "owner", "Choose one of these.", "");
    }
    has(&clinician.get("/presets").await.body, &["Slower", "lead", "administrator"]);
}

#[tokio::test]
async fn the_policies_of_presets_hold_alone() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    assert_eq!(clinician.post_form("/presets/new", &MINE).await.status, 303);
    let other = house.member(&[Role::Clinician]).await;
    let administrator = house.member(&[Role::Administrator]).await;
    let seen = async |subject: &Subject| -> i64 {
        let mut tx = house.app.database.look(subject).await.unwrap();
        sqlx::query_scalar("SELECT count(*) FROM preset").fetch_one(&mut *tx).await.unwrap()
    };
    let changed = async |subject: &Subject| -> u64 {
        let mut tx = house.app.database.look(subject).await.unwrap();
        sqlx::query("UPDATE preset SET version = version + 1").execute(&mut *tx).await.unwrap().rows_affected()
    };
    for (who, subject, sees, changes) in [
        ("nobody", Subject::Visitor, 0, 0),
        ("the clinician", clinician.subject(), 5, 1),
        ("another clinician", other.subject(), 4, 0),
        ("the administrator", administrator.subject(), 4, 4),
    ] {
        assert_eq!((seen(&subject).await, changed(&subject).await), (sees, changes), "{who}");
    }
    let insert = "INSERT INTO preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, version)
                  VALUES (gen_random_uuid(), $1, 'x', 'processing', true, false, false, 1, 18, 24, now(), 1)";
    for (who, subject, owner) in [
        ("a clinician, the practice's", other.subject(), None),
        ("a clinician, another's", other.subject(), Some(clinician.member)),
        ("an administrator, a clinician's", administrator.subject(), Some(clinician.member)),
    ] {
        let mut tx = house.app.database.look(&subject).await.unwrap();
        let fault = sqlx::query(insert).bind(owner).execute(&mut *tx).await.unwrap_err();
        assert!(fault.to_string().contains("row-level security"), "{who}: {fault}");
    }
}

#[tokio::test]
async fn the_desk_has_them_under_digits_without_the_archived_ones() {
    let mut scene = Scene::build().await;
    let fast = the_practices(&scene.house, "Fast").await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    assert_eq!(lead.post_form(&format!("/presets/{fast}/archive"), &[("version", "1")]).await.status, 303);
    assert_eq!(scene.clinician.post_form("/presets/new", &MINE).await.status, 303);
    let desk = scene.clinician.get(&format!("/sessions/{}/desk", scene.session)).await.body;
    for (index, name) in ["Slow", "Standard", "Evening pace", "Calm place"].iter().enumerate() {
        let button = format!(r#"data-act="preset" data-index="{index}"><kbd>{}</kbd> <strong>{name}</strong>"#, index + 1);
        has(&desk, &[&button]);
    }
    assert!(!desk.contains("<strong>Fast</strong>"));
    let calm = desk.find("presets-calm").unwrap();
    assert!(
        desk.find("Evening pace</strong>").unwrap() < calm && calm < desk.find("<strong>Calm place").unwrap(),
        "each purpose has its own list"
    );
}
