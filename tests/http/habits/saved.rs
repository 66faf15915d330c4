//! "Saved 14:02": by whom it was sent, where it led, and for some minutes only; its time is the record's.

use chrono::{Duration, Timelike};
use leeward::platform::Role;
use leeward_tests::{Answer, House};

use crate::scene::Scene;

fn said(answer: &Answer) -> Option<&str> {
    let (_, rest) = answer.body.split_once(">Saved ")?;
    rest.split('<').next()
}

const PRESET: [(&str, &str); 7] =
    [("name", "Evening"), ("owner", "mine"), ("purpose", "processing"), ("eyes", "on"), ("rate", "0.9"), ("width", "16"), ("cycles", "30")];

#[tokio::test]
async fn a_page_to_which_a_kept_form_led_says_when_it_was_kept() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    // UTC is the zone of a practice that has set none.
    let now = house.app.world.now();
    let kept = format!("{:02}:{:02}", now.hour(), now.minute());
    let sent = clinician.post_form("/presets/new", &PRESET).await;
    assert_eq!((sent.status, sent.place()), (303, "/presets"));
    house.clock.advance(Duration::minutes(2));
    assert_eq!(said(&clinician.get(&sent.location).await), Some(kept.as_str()), "the time of the record, not of the look");
    // Somebody else, another page, the bare page, and a made-up key: nothing is said.
    let key = sent.location.split_once('=').unwrap().1;
    assert_eq!(said(&house.member(&[Role::Clinician]).await.get(&sent.location).await), None, "somebody else's");
    for elsewhere in
        [format!("/clients?saved={key}"), "/presets".into(), "/presets?saved=14:02".into(), format!("/presets?saved={key}&x=1")]
    {
        let answer = clinician.get(&elsewhere).await;
        assert_eq!((answer.status, said(&answer)), (200, None), "{elsewhere}");
    }
    assert_eq!(said(&clinician.get("/presets?saved=00000000-0000-4000-8000-000000000000").await), None);
    house.clock.advance(Duration::minutes(4));
    let later = clinician.get(&sent.location).await;
    assert_eq!((later.status, said(&later)), (200, None), "it is news for five minutes");
}

/// What was refused, or done by a page that is no form to be kept, leads to no such line.
#[tokio::test]
async fn only_what_was_kept_is_called_saved() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let refused = clinician.post_form("/presets/new", &[("name", "Evening")]).await;
    assert_eq!((refused.status, said(&refused)), (422, None));
    // Sent under a key that was not kept, and looked for under it.
    let key = "6f0e7f1e-8f0a-4c55-9d1e-0a1b2c3d4e5f";
    clinician.post_form("/presets/new", &[("name", "Evening"), ("once", key)]).await;
    assert_eq!(said(&clinician.get(&format!("/presets?saved={key}")).await), None);
}

#[tokio::test]
async fn every_form_of_a_record_leads_to_a_page_that_says_so() {
    let mut scene = Scene::build().await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    let new: &[(&str, &str)] = &[("name", "Tomas Lindahl"), ("seizures", "no"), ("eye_condition", "no")];
    let words: &[(&str, &str)] = &[("label", "the landing stage"), ("prong", "past")];
    let sheet: &[(&str, &str)] = &[
        ("path", "eight"),
        ("dot", "2.5"),
        ("sweep", "constant"),
        ("colours", "lake"),
        ("timbre", "wood"),
        ("pitch", "400"),
        ("tone_ms", "90"),
        ("level", "60"),
        ("vibration", "felt"),
    ];
    for (path, fields) in [
        ("/clients/new".to_owned(), new),
        (format!("/clients/{client}/edit"), new),
        (format!("/clients/{client}/comfort"), sheet),
        (format!("/clients/{client}/targets/new"), words),
        (format!("/targets/{target}/edit"), words),
        (format!("/sessions/{session}/note"), &[("note", "Phase 4 begun.")]),
    ] {
        let sent = scene.clinician.fill_in(&path, fields).await;
        assert_eq!(sent.status, 303, "{path}: {}", sent.body);
        let led = sent.location.split('#').next().unwrap();
        assert!(said(&scene.clinician.get(led).await).is_some(), "{path} led to {led}");
    }
    let said_of_it = [("said", "scan.felt"), ("stood", "planned")];
    let sent = scene.clinician.post_form(&format!("/targets/{target}/facts"), &said_of_it).await;
    assert!(said(&scene.clinician.get(&sent.location).await).is_some(), "{}", sent.location);
}
