//! What older versions kept, numbered by migration 0009: nothing is changed but for its place in the order.

use leeward_tests::TestDatabase;
use uuid::Uuid;

/// Small ids, so that a failure can be read.
fn id(number: u128) -> Uuid {
    Uuid::from_u128(number)
}

/// A made-up record of a clock that was set back twice. Times are minutes after nine.
async fn old_record(database: &TestDatabase) {
    let mut connection = database.superuser.acquire().await.unwrap();
    let at = |minute: i64| format!("timestamptz '2026-03-03 09:00Z' + interval '{minute} minutes'");
    let uuid = |number: u128| format!("'{}'", id(number));
    // Rows that the links below need are left out, as if their checks had passed.
    let mut rows = vec!["SET session_replication_role = replica".to_owned()];
    for (session, number, minute) in [(1, 1, 0), (2, 2, 600)] {
        rows.push(format!(
            "INSERT INTO session (id, client_id, member_id, target_id, number, zone, opened_at, room_epoch, version)
             VALUES ({}, {}, {}, {}, {number}, 'Europe/Dublin', {}, 0, 1)",
            uuid(session),
            uuid(90),
            uuid(91),
            uuid(92),
            at(minute)
        ));
    }
    // The second set of session 1 was written a minute "before" the first.
    for (set, number, minute) in [(11, 1, 20), (12, 2, 19)] {
        rows.push(format!(
            "INSERT INTO stimulus_set (id, session_id, client_id, number, epoch, plan, recorded_at) VALUES ({}, {}, {}, {number}, 1, '{{}}', {})",
            uuid(set), uuid(1), uuid(90), at(minute)
        ));
    }
    let rating = |rating: u128, session: Option<u128>, set: Option<u128>, value: Option<u8>, replaces: Option<u128>, minute: i64| {
        let link = |number: Option<u128>| number.map_or("NULL".into(), uuid);
        format!(
            "INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at)
             VALUES ({}, {}, {}, {}, {}, 'sud', {}, 'assessment', {}, {}, {})",
            uuid(rating),
            uuid(90),
            link(session),
            uuid(92),
            link(set),
            value.map_or("NULL".into(), |value| value.to_string()),
            link(replaces),
            uuid(91),
            at(minute)
        )
    };
    rows.extend([
        rating(21, None, None, Some(8), None, -60),
        // The old form replaced what was assessed, and wrote no session beside it.
        rating(22, None, None, Some(6), Some(21), 300),
        rating(23, Some(1), Some(11), Some(7), None, 21),
        rating(24, None, None, Some(5), Some(23), 15),
        rating(25, Some(1), Some(12), Some(4), None, 19),
        rating(26, Some(2), None, Some(9), None, 601),
        rating(27, Some(2), None, None, Some(26), 602),
    ]);
    for row in rows {
        sqlx::query(sqlx::AssertSqlSafe(row)).execute(&mut *connection).await.unwrap();
    }
    sqlx::query("SET session_replication_role = origin").execute(&mut *connection).await.unwrap();
}

#[tokio::test]
async fn what_was_kept_before_is_numbered_in_an_order_that_its_links_allow() {
    let database = TestDatabase::before(9).await;
    old_record(&database).await;
    database.migrate_one(9).await;
    let pool = &database.superuser;
    let order: Vec<Uuid> = sqlx::query_scalar(
        "SELECT id FROM (SELECT id, seq FROM session UNION ALL SELECT id, seq FROM stimulus_set UNION ALL SELECT id, seq FROM rating) x ORDER BY seq",
    )
    .fetch_all(pool)
    .await
    .unwrap();
    assert_eq!(order, [21, 1, 11, 12, 25, 23, 24, 22, 2, 26, 27].map(id));
    let next: i64 = sqlx::query_scalar("SELECT nextval('kept_order')").fetch_one(pool).await.unwrap();
    assert_eq!(next, 12);
    // Carried over as what it is: a replacement stays one, its value in the place of what it replaced.
    let standing: Vec<(Uuid, i16, Option<Uuid>, bool)> =
        sqlx::query_as("SELECT id, value, session_id, corrected FROM standing_rating ORDER BY place, asked").fetch_all(pool).await.unwrap();
    assert_eq!(standing, [(id(22), 6, None, true), (id(25), 4, Some(id(1)), false), (id(24), 5, Some(id(1)), true)]);
    let kept: i64 = sqlx::query_scalar("SELECT count(*) FROM rating").fetch_one(pool).await.unwrap();
    assert_eq!(kept, 7);
}

#[tokio::test]
async fn an_empty_record_is_numbered_from_one() {
    let database = TestDatabase::before(9).await;
    database.migrate_one(9).await;
    let next: i64 = sqlx::query_scalar("SELECT nextval('kept_order')").fetch_one(&database.superuser).await.unwrap();
    assert_eq!(next, 1);
}
