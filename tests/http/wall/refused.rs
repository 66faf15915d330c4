//! Who reaches for a record that is not theirs is told that it is not there, and it is noted.

use chrono::Duration;
use leeward::app::route_list;
use leeward::platform::Role;
use leeward::platform::Rule;
use uuid::Uuid;

use crate::scene::Scene;

async fn noted(scene: &Scene, member: Uuid) -> Vec<(Uuid, Uuid)> {
    sqlx::query_as("SELECT client_id, object_id FROM audit WHERE act = 'record.refused' AND member_id = $1 ORDER BY seq")
        .bind(member)
        .fetch_all(&scene.house.database.superuser)
        .await
        .unwrap()
}

#[tokio::test]
async fn each_route_to_a_record_notes_who_was_refused() {
    let scene = Scene::build().await;
    let mut refused = 0;
    for route in route_list().into_iter().filter(|route| route.rule == Rule::Care) {
        let mut other = scene.house.member(&[Role::Clinician]).await;
        let ids = [("{client}", scene.client), ("{target}", scene.target), ("{session}", scene.session)];
        let about = ids.iter().find(|(place, _)| route.path.contains(place)).map(|(_, id)| *id);
        let path =
            ids.iter().fold(route.path.to_owned(), |path, (place, id)| path.replace(place, &id.to_string())).replace("{number}", "1");
        let answer = match route.method {
            "GET" => other.get(&path).await,
            _ => other.post_form(&path, &[("version", "1")]).await,
        };
        if answer.status == 404 {
            let about = about.unwrap_or_else(|| panic!("{path}: of no client that this test knows"));
            assert_eq!(noted(&scene, other.member).await, [(scene.client, about)], "{} {path}", route.method);
            refused += 1;
        }
    }
    assert!(refused > 20, "only {refused}");
}

#[tokio::test]
async fn what_is_not_there_and_ones_own_are_not_noted_and_many_are_only_counted() {
    let mut scene = Scene::build().await;
    let mut other = scene.house.member(&[Role::Clinician]).await;
    let missing = Uuid::from_u128(7);
    assert_eq!(other.get(&format!("/clients/{missing}")).await.status, 404);
    assert_eq!(scene.clinician.get(&format!("/sessions/{}/sets/77", scene.session)).await.status, 404);
    assert!(noted(&scene, other.member).await.is_empty() && noted(&scene, scene.clinician.member).await.is_empty());
    let path = format!("/clients/{}", scene.client);
    for _ in 0..25 {
        assert_eq!(other.get(&path).await.status, 404);
    }
    assert_eq!(noted(&scene, other.member).await.len(), 20);
    for _ in 0..3 {
        scene.house.clock.advance(Duration::minutes(25));
        other.get("/account").await;
    }
    assert_eq!(other.get(&path).await.status, 404);
    assert_eq!(noted(&scene, other.member).await.len(), 21, "another hour");
}
