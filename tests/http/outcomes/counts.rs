//! What the lists count, on the clinician's page and on the lead's.

use leeward::platform::Role;

use crate::scene::{Scene, rows, target};

#[tokio::test]
async fn clinician_and_lead_count_the_same_open_targets() {
    let mut scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let pool = scene.house.database.superuser.clone();
    let second = target(&scene.house, &scene.clinician, scene.client).await;
    for state in ["planned", "active", "incomplete", "complete", "reduced", "reopened"] {
        for archived in [false, true] {
            sqlx::query("UPDATE target SET archived_at = CASE WHEN $1 THEN now() END WHERE id = $2")
                .bind(archived)
                .bind(second)
                .execute(&pool)
                .await
                .unwrap();
            sqlx::query("UPDATE target_course SET state = $1, held = CASE $1 WHEN 'complete' THEN 'not_yet' END WHERE target_id = $2")
                .bind(state)
                .bind(second)
                .execute(&pool)
                .await
                .unwrap();
            let own = rows(&scene.clinician.get("/clients").await.body, "Clients you treat</caption>");
            let all = rows(&lead.get("/practice/caseload").await.body, "By record number");
            let cells: Vec<&str> = all[0].split('|').collect();
            // The other target is planned: open.
            let open = 1 + i64::from(!matches!(state, "complete" | "reduced") && !archived);
            assert_eq!(cells[2], open.to_string(), "{state}, archived {archived}: the lead's");
            let said = format!("{open} open target");
            assert!(own[0].split('|').nth(3).unwrap().contains(&said), "{state}, archived {archived}: the clinician's {}", own[0]);
            assert_eq!(cells[3], i64::from(state == "incomplete" && !archived).to_string());
            assert_eq!(cells[4], i64::from(state == "complete" && !archived).to_string());
        }
    }
}
