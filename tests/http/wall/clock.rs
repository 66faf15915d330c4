//! What has expired stays expired, whatever clock the app role claims to have.

use chrono::Duration;
use leeward::base::clock::{Machine, Surroundings};
use leeward::live;
use leeward::store::subject::Subject;
use sqlx::{Connection, PgConnection};

use super::probe::{Ground, ask, ground};

/// As in service: the database's clock, give or take a minute. The scene's clock stands where the real one is.
async fn in_service() -> Ground {
    let ground = ground().await;
    let house = &ground.scene.house;
    house.clock.advance(Machine.now() - house.clock.now());
    let mut owner = PgConnection::connect_with(&house.database.owner()).await.unwrap();
    sqlx::query("UPDATE access.clock SET ahead = '0', slack = '1 minute'").execute(&mut owner).await.unwrap();
    ground
}

/// Two minutes before what is asked about was over, by the clock that the app role claims; and other claims.
fn claims() -> Vec<String> {
    let back = |by: Duration| (Machine.now() - by).to_rfc3339();
    vec![back(Duration::minutes(5)), back(Duration::days(1)), back(Duration::days(400)), String::new(), "-infinity".into(), "epoch".into()]
}

#[tokio::test]
async fn a_clock_that_is_set_back_revives_nothing() {
    let ground = in_service().await;
    let (house, clinician) = (&ground.scene.house, &ground.scene.clinician);
    let member = ground.said("member", &clinician.subject()).await;
    let seat = ground.said("seat", &Subject::Seat(ground.seat_token.clone())).await;
    let room = ground.said("room", &Subject::Room(ground.room_token.clone())).await;
    let hash = "\\x0a0b";
    let superuser = &house.database.superuser;
    // All of it was over two minutes ago.
    let now = house.app.world.now();
    for statement in [
        "UPDATE access.signin SET opened_at = $1 - interval '13 hours', seen_at = $1 - interval '3 minutes', ends_at = $1 - interval '2 minutes'",
        "UPDATE access.room_token SET ends_at = $1 - interval '2 minutes'",
        "UPDATE access.join_link SET revoked_at = NULL, token_hash = '\\x0a0b', ends_at = $1 - interval '2 minutes', code_ends_at = $1 + interval '1 hour', code_spent_at = NULL
         WHERE id = (SELECT id FROM access.join_link ORDER BY made_at LIMIT 1)",
        "UPDATE access.join_link SET revoked_at = NULL, token_hash = '\\x0a0c', ends_at = $1 + interval '1 hour', code_ends_at = $1 - interval '2 minutes', code_spent_at = NULL
         WHERE token_hash <> '\\x0a0b'",
        "UPDATE session SET ended_at = $1 - interval '17 minutes'",
        "INSERT INTO access.invitation (token_hash, name, roles, made_at, ends_at) VALUES ('\\x0a0d', 'A', '{clinician}', $1 - interval '3 days', $1 - interval '2 minutes')",
        "INSERT INTO access.ceremony VALUES ('\\x0a0e', '{}', $1 - interval '2 minutes')",
    ] {
        sqlx::query(statement).bind(now).execute(superuser).await.unwrap();
    }
    for claim in claims() {
        let nothing = [
            ask(&ground, &member, &claim, "access.me()").await,
            ask(&ground, &member, &claim, "access.my_clients()").await,
            ask(&ground, &room, &claim, "access.my_room()").await,
            ask(&ground, &seat, &claim, "access.my_late_seat()").await,
            ask(&ground, &seat, &claim, &format!("access.try_code('{hash}')")).await,
            ask(&ground, &seat, &claim, "access.try_code('\\x0a0c')").await,
        ];
        assert!(nothing.iter().all(Option::is_none), "at {claim:?}: {nothing:?}");
        let mut signin = PgConnection::connect_with(&ground.signin_role()).await.unwrap();
        let mut tx = signin.begin().await.unwrap();
        super::probe::speak(&mut tx, &member, &claim).await;
        let open: (i64, Option<serde_json::Value>) =
            sqlx::query_as("SELECT (SELECT count(*) FROM access.open_invitation('\\x0a0d')), access.end_ceremony('\\x0a0e')")
                .fetch_one(&mut *tx)
                .await
                .unwrap();
        assert_eq!(open, (0, None), "at {claim:?}");
    }
}

/// Nor does a transaction that is held open, or a clock set ahead by the owner alone.
#[tokio::test]
async fn the_time_is_the_databases_give_or_take_a_minute_unless_its_owner_says_otherwise() {
    let ground = in_service().await;
    let database = &ground.scene.house.database;
    let visitor = ground.said("visitor", &Subject::Visitor).await;
    let off = |claim: String, by: &'static str| {
        let (ground, visitor) = (&ground, &visitor);
        async move {
            let query = format!("(SELECT abs(extract(epoch FROM access.now() - clock_timestamp() - interval '{by}')) < 2 AS near)");
            assert_eq!(ask(ground, visitor, &claim, &query).await.as_deref(), Some("(t)"), "{claim} is not {by} off");
        }
    };
    off((Machine.now() - Duration::days(30)).to_rfc3339(), "-1 minute").await;
    off((Machine.now() + Duration::days(30)).to_rfc3339(), "1 minute").await;
    off((Machine.now() + Duration::seconds(20)).to_rfc3339(), "20 seconds").await;
    off(String::new(), "0").await;
    for change in ["UPDATE access.clock SET slack = '1 year'", "DELETE FROM access.clock", "SELECT * FROM access.clock"] {
        let mut app = PgConnection::connect_with(&database.app()).await.unwrap();
        let fault = sqlx::query(change).execute(&mut app).await.unwrap_err();
        assert!(fault.to_string().contains("permission denied"), "{change}: {fault}");
    }
    let mut owner = PgConnection::connect_with(&database.owner()).await.unwrap();
    sqlx::query("UPDATE access.clock SET ahead = '-10 days'").execute(&mut owner).await.unwrap();
    off(String::new(), "-10 days").await;
}

/// What the portal does is done at its own clock, which is the database's within the minute.
#[tokio::test]
async fn in_service_a_session_is_held_as_before() {
    let ground = in_service().await;
    let house = &ground.scene.house;
    let mut clinician = house.sign_in(ground.scene.clinician.member).await;
    assert_eq!(clinician.get("/clients").await.status, 200);
    live::mint(&house.app, &clinician.subject(), ground.scene.session).await.unwrap();
    let at: String = sqlx::query_scalar("SELECT (max(at) > now() - interval '2 minutes')::text FROM audit")
        .fetch_one(&house.database.superuser)
        .await
        .unwrap();
    assert_eq!(at, "true");
}

/// A session that stays open overnight goes on: its room's token is renewed by the room that has it, while it holds.
#[tokio::test]
async fn a_rooms_token_is_kept_by_its_room_alone_and_not_revived() {
    let ground = ground().await;
    let (app, superuser) = (&ground.scene.house.app, &ground.scene.house.database.superuser);
    let (room, seat) = (Subject::Room(ground.room_token.clone()), Subject::Seat(ground.seat_token.clone()));
    for (left, subject, after) in [("1 hour", &seat, 1.0), ("1 hour", &room, 24.0), ("-1 hour", &room, -1.0)] {
        sqlx::query("UPDATE access.room_token SET ends_at = $1 + $2::interval")
            .bind(app.world.now())
            .bind(left)
            .execute(superuser)
            .await
            .unwrap();
        let mut tx = app.database.look(subject).await.unwrap();
        sqlx::query("SELECT access.keep_room()").execute(&mut *tx).await.unwrap();
        tx.commit().await.unwrap();
        let hours: f64 = sqlx::query_scalar("SELECT (extract(epoch FROM min(ends_at) - $1) / 3600)::float8 FROM access.room_token")
            .bind(app.world.now())
            .fetch_one(superuser)
            .await
            .unwrap();
        assert_eq!(hours, after, "{left} left, {subject:?}");
    }
}
