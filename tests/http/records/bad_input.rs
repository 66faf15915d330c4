//! Every field, with everything that can be wrong with it.

use leeward::platform::Role;
use leeward_tests::{Browser, House};

use super::{CLIENT, TARGET, client, has, target, with};

/// Field, most characters, whether it is needed, whether it takes lines.
const TEXTS: [(&str, usize, bool, bool); 10] = [
    ("name", 120, true, false),
    ("addressed_as", 120, false, false),
    ("contact_name", 120, false, false),
    ("usual_location", 300, false, true),
    ("label", 60, true, false),
    ("picture", 600, false, true),
    ("negative_belief", 600, false, true),
    ("positive_belief", 600, false, true),
    ("emotions", 300, false, true),
    ("body_location", 300, false, true),
];

/// Sends the form with one field changed and expects the message beside that field, and all that was typed.
async fn refused(browser: &mut Browser, path: &str, fields: &[(&str, &str)], name: &str, value: &str, message: &str) {
    let answer = browser.post_form(path, &with(fields, name, value)).await;
    assert_eq!(answer.status, 422, "{name} {value:?} to {path}");
    let start = answer.body.find(&format!(r#"id="{name}-error">"#)).unwrap_or_else(|| panic!("{name} {value:?}: no message beside it"));
    let beside = answer.body[start..].split("</span>").next().unwrap_or_default();
    assert!(beside.contains(message), "{name} {value:?}: {beside}");
    assert!(answer.body.contains("Not saved yet"));
    for (other, kept) in fields.iter().filter(|(other, _)| *other != name) {
        let kept = kept.split('\n').next().unwrap_or_default();
        assert!(answer.body.contains(kept), "{other} was lost when {name} was wrong");
    }
}

#[tokio::test]
async fn each_field_says_what_is_wrong_and_the_rest_is_kept() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let target = target(&mut clinician, client).await;
    let client_fields = with(&CLIENT, "version", "1");
    let target_fields = with(&TARGET, "version", "1");
    let forms = [
        ("/clients/new".to_owned(), &CLIENT[..]),
        (format!("/clients/{client}/edit"), &client_fields[..]),
        (format!("/clients/{client}/targets/new"), &TARGET[..]),
        (format!("/targets/{target}/edit"), &target_fields[..]),
    ];
    for (path, fields) in &forms {
        for (name, value, message) in faults().iter().filter(|(name, ..)| fields.iter().any(|(field, _)| field == name)) {
            refused(&mut clinician, path, fields, name, value, message).await;
        }
        let one = fields[0].0;
        let all_missing = clinician.post_form(path, &[("version", "1")]).await;
        assert_eq!(all_missing.status, 422);
        has(&all_missing.body, &[&format!(r#"id="{one}-error">Please fill this in."#)]);
    }
    let rows: (i64, i64, i64) = sqlx::query_as(
        "SELECT (SELECT count(*) FROM client), (SELECT count(*) FROM target), (SELECT sum(version)::bigint FROM client_details)",
    )
    .fetch_one(&house.database.superuser)
    .await
    .unwrap();
    assert_eq!(rows, (1, 1, 1), "nothing of it was kept");
}

fn faults() -> Vec<(&'static str, String, &'static str)> {
    let mut faults = Vec::new();
    for (name, most, needed, lines) in TEXTS {
        faults.push((name, "å".repeat(most + 1), "Shorten it"));
        faults.push((name, "bell\u{7}".into(), "control characters"));
        faults.push((name, "nul\0".into(), "control characters"));
        faults.push((name, "turned\u{202E}round".into(), "direction of writing"));
        faults.push((name, "<script>alert(1)</script>".into(), "looks like markup"));
        if needed {
            faults.push((name, "  \t ".into(), "Please fill this in"));
        }
        if !lines {
            faults.push((name, "two\nlines".into(), "one line"));
        }
    }
    for name in ["phone", "contact_phone"] {
        for value in ["call me", "12", "1234567890123456", "+46 8 555 01 x", "٠٧٠١٢٣٤"] {
            faults.push((name, value.into(), "Give a telephone number"));
        }
        faults.push((name, "1\u{202E}23".into(), "direction of writing"));
    }
    for name in ["seizures", "eye_condition", "prong"] {
        for value in ["", "maybe", "YES", "yes "] {
            faults.push((name, value.into(), "Choose one of these"));
        }
    }
    // SUD 0 to 10: Wolpe 1990; VOC 1 to 7: Shapiro 1989.
    for (name, value, message) in [
        ("sud", "11", "whole number from 0 to 10"),
        ("sud", "-1", "whole number from 0 to 10"),
        ("sud", "6.5", "Only whole numbers from 0 to 10"),
        ("sud", "6,5", "Only whole numbers from 0 to 10"),
        ("sud", "seven", "as a number"),
        ("sud", "1e1", "as a number"),
        ("sud", "99999999999999999999", "whole number from 0 to 10"),
        ("voc", "8", "whole number from 1 to 7"),
        ("voc", "-1", "whole number from 1 to 7"),
        ("voc", "3.5", "Only whole numbers from 1 to 7"),
        ("voc", "true", "as a number"),
        ("voc", "0", "VOC runs from 1 (feels completely false) to 7 (completely true). Did you mean 1?"),
        ("voc", "00", "Did you mean 1?"),
    ] {
        faults.push((name, value.into(), message));
    }
    faults
}

#[tokio::test]
async fn the_longest_and_the_plainest_are_kept_whole() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let long = "å".repeat(120);
    let answer = clinician.post_form("/clients/new", &with(&with(&CLIENT, "name", &long), "addressed_as", "Mx O'Dell & <3 \"Zoë\"")).await;
    assert_eq!(answer.status, 303);
    has(&clinician.get(&answer.location).await.body, &[&long, "Mx O&#39;Dell &#38; &#60;3 &#34;Zoë&#34;"]);
    let bare =
        clinician.post_form("/clients/new", &[("name", "Only Name"), ("seizures", "not_asked"), ("eye_condition", "not_asked")]).await;
    assert_eq!(bare.status, 303);
    let target = clinician.post_form(&format!("{}/targets/new", bare.place()), &[("label", "later"), ("prong", "future")]).await;
    assert_eq!(target.status, 303);
    has(&clinician.get(&target.location).await.body, &["not asked", "not rated"]);
}

#[tokio::test]
async fn a_voc_of_nought_is_asked_about_and_nothing_is_rated() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let path = format!("/clients/{client}/targets/new");
    let answer = clinician.post_form(&path, &with(&TARGET, "voc", "0")).await;
    assert_eq!(answer.status, 422);
    has(&answer.body, &[r#"name="voc" value="0""#, "Did you mean 1?"]);
    let count: i64 = sqlx::query_scalar("SELECT count(*) FROM rating").fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(count, 0);
    assert_eq!(clinician.post_form(&path, &with(&TARGET, "voc", "1")).await.status, 303);
}

#[tokio::test]
async fn what_no_form_of_ours_would_send_gets_a_page_that_says_what_to_do() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let id = client(&mut clinician).await;
    let twice = clinician.post_form("/clients/new", &[("name", "A"), ("name", "B")]).await;
    assert_eq!(twice.status, 400);
    has(&twice.body, &["did not arrive whole"]);
    for version in ["", "x", "99999999999"] {
        let answer = clinician.post_form(&format!("/clients/{id}/edit"), &with(&CLIENT, "version", version)).await;
        assert_eq!(answer.status, 400, "{version:?}");
    }
    let origin = house.origin.clone();
    let own = [("origin", origin.as_str()), ("content-type", "application/json"), ("accept", "text/html")];
    assert_eq!(clinician.post_raw("/clients/new", &own, "{}").await.status, 400);
    for path in ["/clients/not-an-id", "/targets/not-an-id", "/clients/00000000-0000-0000-0000-000000000000"] {
        assert_eq!(clinician.get(path).await.status, 404, "{path}");
    }
    assert_eq!(clinician.get("/clients?find=a&find=b").await.status, 400);
}

#[tokio::test]
async fn a_database_that_fails_is_told_as_not_saved_and_the_form_is_kept() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let id = client(&mut clinician).await;
    let target_id = target(&mut clinician, id).await;
    let forms = [
        ("/clients/new".to_owned(), CLIENT.to_vec()),
        (format!("/clients/{id}/edit"), with(&CLIENT, "version", "1")),
        (format!("/clients/{id}/targets/new"), TARGET.to_vec()),
        (format!("/targets/{target_id}/edit"), with(&TARGET, "version", "1")),
    ];
    sqlx::query("REVOKE INSERT, UPDATE ON client, client_details, target, target_words FROM leeward_app")
        .execute(&house.database.superuser)
        .await
        .unwrap();
    for (path, fields) in &forms {
        let answer = clinician.post_form(path, fields).await;
        assert_eq!(answer.status, 503, "{path}");
        has(&answer.body, &["Not saved: the database did not answer"]);
        for (name, value) in fields {
            assert!(answer.body.contains(value), "{name} was lost at {path}");
        }
    }
}

/// The first sending got through and its answer was lost; what was written after it is not lost with the refusal.
#[tokio::test]
async fn what_was_typed_after_a_sending_that_got_through_stays() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let key = uuid::Uuid::from_u128(7).to_string();
    let sent = with(&CLIENT, "once", &key);
    assert_eq!(clinician.post_form("/clients/new", &sent).await.status, 303);
    let more = with(&sent, "usual_location", "the mill, upstairs");
    let answer = clinician.post_form("/clients/new", &more).await;
    assert_eq!(answer.status, 409);
    has(&answer.body, &["the mill, upstairs", "What you sent first was saved; what you changed after that was not."]);
}
