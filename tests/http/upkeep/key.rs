//! A wrong key file is refused at the start.

use leeward::clients::{self, NewClient};
use leeward::platform::App;
use leeward::platform::Role;
use leeward::store::key_check::{Refused, check};
use leeward::store::seal::{PracticeKey, Private};
use leeward_tests::House;
use sqlx::PgPool;

fn key(byte: &str) -> PracticeKey {
    PracticeKey::parse(&byte.repeat(32)).unwrap()
}

/// The one that `House` serves with.
fn own() -> PracticeKey {
    key("5a")
}

async fn with_clients(how_many: usize) -> House {
    let house = House::build().await;
    let clinician = house.member(&[Role::Clinician]).await;
    for _ in 0..how_many {
        let mut new = NewClient::default();
        new.details.name = Private::new("Wilhelmina Quillfeather");
        clients::create(&house.app, &clinician.subject(), new).await.unwrap();
    }
    house
}

async fn as_before_the_upgrade(database: &PgPool) {
    sqlx::query("DELETE FROM access.key_check").execute(database).await.unwrap();
}

async fn values(database: &PgPool) -> i64 {
    sqlx::query_scalar("SELECT count(*) FROM access.key_check").fetch_one(database).await.unwrap()
}

async fn refuses(app: &App, key: PracticeKey) -> bool {
    matches!(check(&app.database, key).await, Err(Refused::Wrong))
}

#[tokio::test]
async fn the_first_key_of_an_empty_practice_becomes_its_key() {
    let house = House::build().await;
    assert_eq!(values(&house.database.superuser).await, 1);
    assert!(check(&house.app.database, own()).await.is_ok());
    assert!(refuses(&house.app, key("a5")).await);
    let Err(refused) = check(&house.app.database, key("a5")).await else { panic!("taken") };
    assert!(refused.to_string().contains("Put the practice's own key file back"), "{refused}");
}

/// A practice from before there were check values.
#[tokio::test]
async fn a_practice_without_a_check_value_is_tried_by_its_clients_keys() {
    let house = with_clients(3).await;
    let database = &house.database.superuser;
    as_before_the_upgrade(database).await;
    assert!(refuses(&house.app, key("a5")).await);
    assert_eq!(values(database).await, 0, "a wrong key leaves nothing behind");
    // One damaged row does not speak for all.
    sqlx::query("UPDATE client_key SET wrapped = '\\x00' WHERE client_id = (SELECT id FROM client WHERE number = 1)")
        .execute(database)
        .await
        .unwrap();
    assert!(check(&house.app.database, own()).await.is_ok());
    assert_eq!(values(database).await, 1);
    assert!(refuses(&house.app, key("a5")).await);
}

#[tokio::test]
async fn a_key_that_this_version_does_not_know_is_named() {
    let house = with_clients(1).await;
    sqlx::query("UPDATE client_key SET key_id = 2").execute(&house.database.superuser).await.unwrap();
    assert!(matches!(check(&house.app.database, own()).await, Err(Refused::Unknown(2))));
}

/// The app role adds a value once and takes none away, whatever it is made to run.
#[tokio::test]
async fn a_check_value_is_written_once() {
    let house = House::build().await;
    let other = key("a5").check_value(&house.app.world).unwrap();
    let mut tx = house.app.database.look(&leeward::store::subject::Subject::Visitor).await.unwrap();
    let stands: Vec<u8> = sqlx::query_scalar("SELECT access.keep_key_check(1, $1)").bind(&other).fetch_one(&mut *tx).await.unwrap();
    assert!(own().made(&stands) && !key("a5").made(&stands));
    // Nor for a key that nothing is sealed under: the portal would not start again.
    let unknown: Option<Vec<u8>> =
        sqlx::query_scalar("SELECT access.keep_key_check(2, $1)").bind(&other).fetch_one(&mut *tx).await.unwrap();
    assert_eq!(unknown, None);
    for attempt in ["DELETE FROM access.key_check", "UPDATE access.key_check SET key_id = 2", "SELECT sealed FROM access.key_check"] {
        let mut tx = house.app.database.look(&leeward::store::subject::Subject::Visitor).await.unwrap();
        let refused = sqlx::query(attempt).execute(&mut *tx).await.unwrap_err();
        assert!(refused.to_string().contains("permission denied"), "{attempt}");
    }
    // A wrapped key is handed out only while there is no value to compare with.
    let mut tx = house.app.database.look(&leeward::store::subject::Subject::Visitor).await.unwrap();
    let shown = sqlx::query("SELECT * FROM access.keys_to_try(1)").fetch_all(&mut *tx).await.unwrap();
    assert!(shown.is_empty());
}
