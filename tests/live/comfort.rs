//! What a session starts from: the client's comfort sheet and the last set that went to its end.

use chrono::Duration;
use leeward::base::ids::new_id;
use leeward::comfort::{self, Sheet};
use leeward::live::{PastOrder, PastSet, keep_past};
use leeward::sessions::{self, Closing, ClosingKind, NewSession};
use leeward::store::seal::Private;
use leeward_core::room::Cause;
use leeward_core::safety::default_plan;
use leeward_core::wire::{Channels, Comfort, Ending, Evidence, Fact, Length, Path, Plan, Timbre, Timeline};

use crate::scene::Scene;

fn sheet() -> Sheet {
    Sheet { path: Path::UpDown, dot: 2.0, comfort: Comfort { timbre: Timbre::Warm, pitch: 400, ..Comfort::default() } }
}

/// What a desk hears first in the session that is open: the plan of the next set.
async fn first_plan(scene: &Scene) -> Plan {
    scene.desk().await.view("the room", |_| true).await.plan
}

/// One more set of the open session, ended by the room's word and, if it was heard, by the screen's.
async fn a_set(scene: &Scene, number: u32, plan: Plan, ending: Ending, screen: Option<Ending>) {
    let id = new_id(&scene.house.app.world);
    let rested = screen.map(|ending| Evidence { set: id.to_string(), seq: 0, at: 9_000.0, fact: Fact::Rested { phase: 24.0, ending } });
    let set = PastSet {
        id,
        number,
        plan: default_plan(),
        orders: vec![PastOrder { cause: Cause::Started, at: 0.0, plan, timeline: Timeline::default() }],
        evidence: rested.into_iter().collect(),
        ending,
        ended_at: 9_000.0,
    };
    keep_past(&scene.house.app, &scene.clinician.subject(), scene.session, scene.house.app.world.now(), &[set]).await.unwrap();
    scene.house.clock.advance(Duration::minutes(1));
}

/// Closes the session that is open and opens the next.
async fn next_session(scene: &mut Scene) {
    let said = |text: &str| Private::new(text);
    let closing = Closing {
        over: None,
        kind: ClosingKind::NoReprocessing,
        because: None,
        unsteady: false,
        resource: said("the orchard"),
        leaving_state: said("Calm"),
        companion: said("a neighbour"),
        next_contact: said("Monday"),
        client_words: said(""),
        note: said(""),
        sud: None,
    };
    let subject = scene.clinician.subject();
    sessions::close(&scene.house.app, &subject, scene.session, closing).await.unwrap();
    scene.session = sessions::open(&scene.house.app, &subject, NewSession { client: scene.client_id, target: None }).await.unwrap();
}

fn slower() -> Plan {
    let channels = Channels { eyes: true, ears: true, hands: false };
    Plan { rate: 0.8, width: 14.0, length: Length::Cycles(30), channels, dot: 1.0, path: Path::Rising, ..default_plan() }
}

#[tokio::test]
async fn a_first_session_starts_from_the_usual_settings_or_the_sheet() {
    let scene = Scene::new().await;
    assert_eq!(first_plan(&scene).await, default_plan());
    let other = Scene::new().await;
    assert!(comfort::save(&other.house.app, &other.clinician.subject(), other.client_id, &sheet(), 0).await.unwrap());
    assert_eq!(first_plan(&other).await, sheet().applied_to(default_plan()));
}

#[tokio::test]
async fn a_later_session_starts_from_the_last_set_that_went_to_its_end() {
    let mut scene = Scene::new().await;
    let with_rate = |rate| Plan { rate, ..slower() };
    a_set(&scene, 1, with_rate(0.9), Ending::Done, Some(Ending::Done)).await;
    a_set(&scene, 2, slower(), Ending::EndedByClinician, None).await;
    // None of these says that the client was comfortable with it.
    a_set(&scene, 3, with_rate(1.3), Ending::StoppedByClient, Some(Ending::StoppedByClient)).await;
    a_set(&scene, 4, with_rate(1.3), Ending::Done, Some(Ending::StoppedByClient)).await;
    a_set(&scene, 5, with_rate(1.3), Ending::StoppedByClient, Some(Ending::Done)).await;
    a_set(&scene, 6, with_rate(1.3), Ending::StoppedByClinician, Some(Ending::StoppedByClinician)).await;
    a_set(&scene, 7, with_rate(1.3), Ending::LinkLost, None).await;
    // And a calm place says nothing about processing.
    a_set(&scene, 8, Plan { rate: 0.5, length: Length::Cycles(6), ..slower() }, Ending::Done, Some(Ending::Done)).await;
    next_session(&mut scene).await;
    assert_eq!(first_plan(&scene).await, slower());

    // The sheet comes before what was used last, in what stands on it.
    assert!(comfort::save(&scene.house.app, &scene.clinician.subject(), scene.client_id, &sheet(), 0).await.unwrap());
    next_session(&mut scene).await;
    assert_eq!(first_plan(&scene).await, sheet().applied_to(slower()));
}

#[tokio::test]
async fn what_another_client_was_comfortable_with_is_nobody_elses() {
    let mut scene = Scene::new().await;
    a_set(&scene, 1, slower(), Ending::Done, Some(Ending::Done)).await;
    let new = leeward::clients::NewClient::default();
    let mut named = new.clone();
    named.details.name = Private::new("Torvald Ness");
    let subject = scene.clinician.subject();
    scene.client_id = leeward::clients::create(&scene.house.app, &subject, named).await.unwrap();
    scene.session = sessions::open(&scene.house.app, &subject, NewSession { client: scene.client_id, target: None }).await.unwrap();
    assert_eq!(first_plan(&scene).await, default_plan());
}

/// The room may read what its client's earlier rooms wrote, and write into its own session alone.
#[tokio::test]
async fn a_client_who_comes_first_gets_the_same_start() {
    let mut scene = Scene::new().await;
    a_set(&scene, 1, slower(), Ending::Done, Some(Ending::Done)).await;
    next_session(&mut scene).await;
    scene.join().await;
    let _stage = scene.stage().await;
    assert_eq!(first_plan(&scene).await, slower());
}
