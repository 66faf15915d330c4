use leeward::base::ids::new_id;
use leeward::live::{PastOrder, PastSet, keep_past};
use leeward::platform::Role;
use leeward_core::room::Cause;
use leeward_core::safety::default_plan;
use leeward_core::wire::{Ending, Evidence, Fact, Length, Plan, Timeline};

use super::has;
use crate::scene::{Scene, rows};

/// 6 cycles at 1 Hz from room time 5,000 ms, as the room orders them and a screen shows them; the facts whose
/// `seq` is in `lost` were never heard.
async fn a_set(scene: &Scene, number: u32, lost: &[u32], ending: Ending) {
    let id = new_id(&scene.house.app.world);
    let plan = Plan { length: Length::Cycles(6), ..default_plan() };
    let timeline = Timeline::start(&plan, 5_000.0);
    let mut facts = vec![(5_000.0, Fact::Shown { width: 17.0 })];
    for second in 1..7 {
        let at = 5_000.0 + f64::from(second) * 1_000.0;
        let (frames, longest_gap) = if second == 2 { (52, 84.0) } else { (60, 17.0) };
        facts.push((at, Fact::Second { phase: timeline.read(at).phase, frames, longest_gap }));
    }
    facts.push((12_000.0, Fact::Rested { phase: 6.0, ending }));
    let evidence = facts.into_iter().zip(0..).map(|((at, fact), seq)| Evidence { set: id.to_string(), seq, at, fact });
    let set = PastSet {
        id,
        number,
        plan,
        orders: vec![PastOrder { cause: Cause::Started, at: 4_000.0, plan, timeline }],
        evidence: evidence.filter(|fact| !lost.contains(&fact.seq)).collect(),
        ending,
        ended_at: 12_000.0,
    };
    keep_past(&scene.house.app, &scene.clinician.subject(), scene.session, scene.house.app.world.now(), &[set]).await.unwrap();
}

// A ramp of a second passes half a cycle (the area under a triangle): 0.5 Hz in the mean.
#[tokio::test]
async fn ordered_stands_against_shown_second_by_second() {
    let mut scene = Scene::build().await;
    a_set(&scene, 1, &[], Ending::Done).await;
    a_set(&scene, 2, &[], Ending::StoppedByClient).await;
    let path = format!("/sessions/{}/sets/1", scene.session);
    has(
        &scene.clinician.get(&format!("/sessions/{}", scene.session)).await.body,
        &[&format!(r#"<a href="{path}" aria-label="Set 1">1</a>"#)],
    );
    let page = scene.clinician.get(&path).await;
    assert_eq!(page.status, 200, "{}", page.body);
    assert_eq!(
        rows(&page.body, "Figures ordered against shown</caption>"),
        [
            "Cycles|6|6.0",
            "Width|18°|17°",
            "Rate, Hz|1.00|see below, by second",
            "Seconds of motion|7.0|7.0",
            "Frames||352 frames looked at, longest gap 84 ms, 1 s with a gap over 50 ms",
            "Seconds with a gap over 50 ms||1",
            "Hidden or hung: no frame drawn||0.0 s",
            "Unknown: nothing heard||none",
        ]
    );
    let seconds = rows(&page.body, "Rate and frames by second</caption>");
    assert_eq!(seconds[..2], ["0.0 to 1.0|0.50|0.50|0.50|0.50|60|17", "1.0 to 2.0|1.00|1.00|1.50|1.50|52|84"]);
    assert_eq!(seconds.len(), 7);
    has(&page.body, &["6.0 of 6.0 ordered cycles shown; a gap over 50 ms in 1 second; heard all the way.", "Set 2 after", "<svg"]);
    assert_eq!(rows(&page.body, "Orders of set 1</caption>"), ["0.0|started|1.00|6 cycles|18°"]);
    let second = scene.clinician.get(&format!("/sessions/{}/sets/2", scene.session)).await.body;
    has(&second, &["Set 1 before", "stopped by the client", "client stopped</text>"]);
}

#[tokio::test]
async fn what_was_not_heard_is_unknown_and_never_filled_in() {
    let mut scene = Scene::build().await;
    a_set(&scene, 1, &[3, 4], Ending::Done).await;
    a_set(&scene, 2, &[0, 1, 2, 3, 4, 5, 6, 7], Ending::LinkLost).await;
    let first = scene.clinician.get(&format!("/sessions/{}/sets/1", scene.session)).await.body;
    assert_eq!(rows(&first, "Rate and frames by second</caption>")[2], "2.0 to 5.0|1.00|unknown|4.50|unknown|unknown|unknown");
    has(&first, &["3.0 s, from second 2.0", "nothing heard for 3.0 s"]);
    let second = scene.clinician.get(&format!("/sessions/{}/sets/2", scene.session)).await.body;
    assert_eq!(rows(&second, "Rate and frames by second</caption>"), ["0.0 to 7.0|0.86|unknown|6.00|unknown|unknown|unknown"]);
    let figures = rows(&second, "Figures ordered against shown</caption>");
    assert_eq!(figures[0], "Cycles|6|unknown");
    assert_eq!(
        figures[5..],
        [
            "Seconds with a gap over 50 ms||unknown",
            "Hidden or hung: no frame drawn||unknown",
            "Unknown: nothing heard||7.0 s, from second 0.0"
        ]
    );
    has(&second, &["Nothing was heard from the screen."]);
}

#[tokio::test]
async fn a_set_that_is_not_there_is_not_found_and_to_others_none_is() {
    let mut scene = Scene::build().await;
    a_set(&scene, 1, &[], Ending::Done).await;
    for last in ["0", "2", "-1", "one", "99999999999"] {
        assert_eq!(scene.clinician.get(&format!("/sessions/{}/sets/{last}", scene.session)).await.status, 404, "{last}");
    }
    for role in [Role::Clinician, Role::Lead, Role::Administrator] {
        let mut other = scene.house.member(&[role]).await;
        assert_eq!(other.get(&format!("/sessions/{}/sets/1", scene.session)).await.status, 404, "{role:?}");
    }
}

/// Its room was lost before it wrote an end: what happened is shown up to the last that the screen said.
#[tokio::test]
async fn what_happened_in_a_set_whose_room_was_lost_is_shown() {
    let mut scene = Scene::build().await;
    a_set(&scene, 1, &[], Ending::Done).await;
    let superuser = &scene.house.database.superuser;
    sqlx::query("DELETE FROM set_ending").execute(superuser).await.unwrap();
    for (kind, after) in [("stage_lost", "2 seconds"), ("desk_lost", "1 hour")] {
        sqlx::query(
            "INSERT INTO session_moment (session_id, client_id, kind, once, at)
             SELECT s.session_id, s.client_id, $1, gen_random_uuid(), s.recorded_at + $2::interval FROM stimulus_set s",
        )
        .bind(kind)
        .bind(after)
        .execute(superuser)
        .await
        .unwrap();
    }
    let page = scene.clinician.get(&format!("/sessions/{}/sets/1", scene.session)).await.body;
    has(&page, &["Meanwhile", "Client\u{2019}s page not heard"]);
    assert!(!page.contains("desk not heard"), "an hour later is not meanwhile");
}
