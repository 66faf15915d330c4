//! What has expired is removed after its time and not before; no record and no audit row ever.

use std::collections::BTreeMap;

use chrono::Duration;
use leeward::live;
use leeward::upkeep::{Tidied, tidy};
use leeward_tests::House;
use sqlx::PgPool;
use uuid::Uuid;

use crate::scene::Scene;

/// So many rows of each table of the schema `public`: the record and the audit.
async fn record(database: &PgPool) -> BTreeMap<String, i64> {
    let rows: Vec<(String, i64)> = sqlx::query_as(
        "SELECT relname::text, (xpath('/row/n/text()', query_to_xml(format('SELECT count(*) AS n FROM public.%I', relname), false, true, '')))[1]::text::bigint
         FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace",
    )
    .fetch_all(database)
    .await
    .unwrap();
    rows.into_iter().collect()
}

async fn count(database: &PgPool, table: &'static str) -> i64 {
    sqlx::query_scalar(sqlx::AssertSqlSafe(format!("SELECT count(*) FROM access.{table}"))).fetch_one(database).await.unwrap()
}

/// An invitation, a ceremony, a link with its code and a seat, beside the scene's sign-in.
async fn filled() -> Scene {
    let scene = Scene::build().await;
    let (app, subject) = (&scene.house.app, scene.clinician.subject());
    live::sit_down(app, &subject, scene.session).await.unwrap();
    live::mint(app, &subject, scene.session).await.unwrap();
    let now = app.world.now();
    for row in [
        "INSERT INTO access.invitation (token_hash, name, roles, made_at, ends_at) VALUES ('\\x01', 'A', '{clinician}', $1, $1 + interval '2 days')",
        "INSERT INTO access.ceremony VALUES ('\\x02', '{}', $1 + interval '5 minutes')",
        "INSERT INTO access.room_token VALUES ('\\x03', gen_random_uuid(), $1 + interval '24 hours')",
    ] {
        sqlx::query(row).bind(now).execute(&scene.house.database.superuser).await.unwrap();
    }
    scene
}

async fn end(scene: &Scene) {
    sqlx::query("UPDATE session SET ended_at = $1 WHERE id = $2")
        .bind(scene.house.app.world.now())
        .bind(scene.session)
        .execute(&scene.house.database.superuser)
        .await
        .unwrap();
}

#[tokio::test]
async fn each_goes_after_its_time_and_not_before() {
    let scene = filled().await;
    let (house, database) = (&scene.house, &scene.house.database.superuser);
    let before = record(database).await;
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied::default(), "nothing has expired yet");

    house.clock.advance(Duration::minutes(6));
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied { ceremonies: 1, ..Tidied::default() });
    end(&scene).await;
    house.clock.advance(Duration::hours(23));
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied::default(), "a page may still ask whether its session is over");
    house.clock.advance(Duration::hours(2));
    // The first link was revoked by the second one; its seat and both links go with the session.
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied { seats: 1, links: 2, room_tokens: 1, ..Tidied::default() });
    house.clock.advance(Duration::days(28));
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied::default(), "a misuse can still be looked into");
    house.clock.advance(Duration::days(5));
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied { signins: 1, invitations: 1, ..Tidied::default() });
    for table in ["signin", "invitation", "ceremony", "seat", "join_link", "room_token"] {
        assert_eq!(count(database, table).await, 0, "{table}");
    }
    assert_eq!(record(database).await, before);
}

/// The link of a session that goes on stays, and so does a seat that was taken through a link that is over.
#[tokio::test]
async fn what_an_open_session_needs_stays() {
    let scene = filled().await;
    scene.house.clock.advance(Duration::days(3));
    let tidied = tidy(&scene.house.app).await.unwrap();
    assert_eq!((tidied.seats, tidied.rehearsals), (0, vec![]), "a session with somebody is never ended by itself");
    assert_eq!(count(&scene.house.database.superuser, "seat").await, 1);
}

#[tokio::test]
async fn a_forgotten_rehearsal_is_ended_and_its_end_audited() {
    let scene = Scene::build().await;
    let (house, database) = (&scene.house, &scene.house.database.superuser);
    let mut clinician = scene.clinician.clone();
    let begun = clinician.post_form("/rehearsal", &[]).await;
    assert_eq!(begun.status, 303, "{}", begun.body);
    let before = record(database).await;
    house.clock.advance(Duration::hours(23));
    assert_eq!(tidy(&house.app).await.unwrap().rehearsals, Vec::<Uuid>::new());
    house.clock.advance(Duration::hours(2));
    let ended = tidy(&house.app).await.unwrap().rehearsals;
    assert_eq!(ended.len(), 1);
    assert_ne!(ended[0], scene.session, "the session with somebody goes on");
    let open: Vec<Uuid> =
        sqlx::query_scalar("SELECT session_id FROM access.gate WHERE ended_at IS NULL").fetch_all(database).await.unwrap();
    assert_eq!(open, [scene.session]);
    let audited: i64 = sqlx::query_scalar("SELECT count(*) FROM audit WHERE act = 'rehearsal.end' AND object_id = $1")
        .bind(ended[0])
        .fetch_one(database)
        .await
        .unwrap();
    assert_eq!(audited, 1);
    let mut after = record(database).await;
    *after.get_mut("audit").unwrap() -= 1;
    assert_eq!(after, before);
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied::default(), "again: nothing is left to do");
    let again = house.sign_in(clinician.member).await.get(&format!("/sessions/{}", ended[0])).await;
    assert_eq!(again.status, 200);
    assert!(again.body.contains("<dt>Closed as</dt><dd>not recorded</dd>"), "what nobody said is not made up");
}

/// Whoever could set the portal's clock still removes nothing early.
#[tokio::test]
async fn a_false_clock_removes_nothing() {
    let house = House::build().await;
    let database = &house.database.superuser;
    sqlx::query("INSERT INTO access.ceremony VALUES ('\\x01', '{}', clock_timestamp() + interval '2 days')")
        .execute(database)
        .await
        .unwrap();
    house.clock.advance(Duration::days(3650));
    assert_eq!(tidy(&house.app).await.unwrap(), Tidied::default());
    assert_eq!(count(database, "ceremony").await, 1);
}
