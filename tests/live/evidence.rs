//! What the client's screen showed, handed in after the end.

use leeward_core::wire::{Evidence, Fact};
use serde_json::json;
use uuid::Uuid;

use crate::course::counted;
use crate::scene::Scene;

fn fact(set: &str, seq: u32) -> Evidence {
    Evidence {
        set: set.to_owned(),
        seq,
        at: 1_000.0 * f64::from(seq),
        fact: Fact::Second { phase: f64::from(seq), frames: 60, longest_gap: 17.0 },
    }
}

#[tokio::test]
async fn evidence_is_taken_by_request_until_a_quarter_of_an_hour_after_the_end_and_once() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    let pool = scene.house.database.superuser.clone();
    sqlx::query("UPDATE session SET ended_at = '2026-03-03T09:00:00Z', closing = 'incomplete'").execute(&pool).await.unwrap();
    // Nobody tells the room: it reads the record by itself.
    assert_eq!(stage.closed().await, Some(4000));
    let mut hand_in = async |facts: Vec<Evidence>| scene.client.post_json("/stage/evidence", &json!({ "facts": facts })).await.status;
    assert_eq!(hand_in(vec![fact(&set, 0), fact(&set, 1)]).await, 204);
    assert_eq!(hand_in(vec![fact(&set, 1), fact(&set, 2)]).await, 204, "one of them twice");
    counted(&pool, "SELECT count(*) FROM set_evidence", 3).await;
    assert_eq!(hand_in(vec![fact(&Uuid::nil().to_string(), 0)]).await, 204, "of no set of theirs: left alone");
    assert_eq!(hand_in((0..21).map(|seq| fact(&set, seq)).collect()).await, 400, "too many at once");
    let impossible = Evidence { fact: Fact::Shown { width: -1.0 }, ..fact(&set, 9) };
    assert_eq!(hand_in(vec![impossible]).await, 400);
    counted(&pool, "SELECT count(*) FROM set_evidence", 3).await;
    scene.house.clock.advance(chrono::Duration::minutes(16));
    let late = scene.client.post_json("/stage/evidence", &json!({ "facts": [fact(&set, 3)] })).await;
    assert_eq!(late.status, 401, "after a quarter of an hour");
    counted(&pool, "SELECT count(*) FROM set_evidence", 3).await;
}

#[tokio::test]
async fn a_seat_adds_to_no_other_sessions_sets() {
    let mut scene = Scene::new().await;
    let (mut desk, mut stage, epoch) = scene.ready().await;
    let set = Scene::start(&mut desk, &mut stage, epoch).await;
    let Scene { house, .. } = scene;
    let cautions = leeward::clients::Cautions::default();
    let mut other = Scene::inside(house, cautions).await;
    other.join().await;
    assert_eq!(other.client.post_json("/stage/evidence", &json!({ "facts": [fact(&set, 0)] })).await.status, 204);
    counted(&other.house.database.superuser, "SELECT count(*) FROM set_evidence", 0).await;
    assert_eq!(other.house.visitor().post_json("/stage/evidence", &json!({ "facts": [] })).await.status, 401);
}
