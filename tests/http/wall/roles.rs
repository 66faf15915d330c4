//! Three roles, each bound to its part: what the portal demands of them before it serves.

use leeward::store::database::{Access, Database};
use leeward_tests::{House, TestDatabase};
use sqlx::{AssertSqlSafe, Connection, PgConnection};

async fn name(database: &TestDatabase) -> String {
    sqlx::query_scalar("SELECT current_database()").fetch_one(&database.superuser).await.unwrap()
}

async fn run(database: &TestDatabase, statement: &str) {
    sqlx::raw_sql(AssertSqlSafe(statement.to_owned())).execute(&database.superuser).await.unwrap();
}

/// Why the portal does not serve on this database now.
async fn unfit(house: &House) -> String {
    match Database::connect_with(house.database.app(), house.app.world.clone()).await {
        Ok(_) => "it serves".into(),
        Err(unfit) => unfit.to_string(),
    }
}

#[tokio::test]
async fn nobody_but_the_owner_makes_anything_in_the_database() {
    let house = House::build().await;
    for role in [house.database.app(), house.database.app().username("leeward_signin")] {
        let mut connection = PgConnection::connect_with(&role).await.unwrap();
        for statement in ["CREATE TEMPORARY TABLE t ()", "CREATE TABLE public.t ()", "CREATE SCHEMA t", "CREATE TABLE access.t ()"] {
            let fault = sqlx::query(statement).execute(&mut connection).await.unwrap_err();
            assert!(fault.to_string().contains("permission denied"), "{statement}: {fault}");
        }
    }
}

#[tokio::test]
async fn it_refuses_to_serve_where_the_app_role_may_make_objects() {
    let house = House::build().await;
    let name = name(&house.database).await;
    run(&house.database, &format!("GRANT TEMPORARY ON DATABASE {name} TO PUBLIC")).await;
    let words = unfit(&house).await;
    assert!(words.contains("leeward_app") && words.contains("REVOKE TEMPORARY ON DATABASE"), "{words}");
    run(&house.database, &format!("REVOKE TEMPORARY ON DATABASE {name} FROM PUBLIC; GRANT CREATE ON SCHEMA public TO leeward_app")).await;
    let words = unfit(&house).await;
    assert!(words.contains("REVOKE CREATE ON SCHEMA public"), "{words}");
}

#[tokio::test]
async fn it_refuses_to_serve_when_a_function_looks_for_names_elsewhere() {
    let house = House::build().await;
    for setting in ["RESET search_path", "SET search_path = ''", "SET search_path = pg_temp, pg_catalog"] {
        run(&house.database, &format!("ALTER FUNCTION access.me() {setting}")).await;
        let words = unfit(&house).await;
        assert!(words.contains("access.me()") && words.contains("leeward migrate"), "{setting}: {words}");
    }
}

#[tokio::test]
async fn it_refuses_to_serve_when_the_two_roles_are_not_apart() {
    let house = House::build().await;
    let serve =
        async |access: Access| Database::connect_with(access, house.app.world.clone()).await.map(drop).map_err(|unfit| unfit.to_string());
    let app = house.database.app();
    let same = serve(Access { app: app.clone(), signin: app.clone() }).await.unwrap_err();
    assert!(same.contains("LEEWARD_SIGNIN_URL"), "{same}");
    let owner = serve(Access { app: app.clone(), signin: house.database.owner() }).await.unwrap_err();
    assert!(owner.contains("LEEWARD_SIGNIN_URL"), "{owner}");
    let nobody = serve(Access { app: app.clone(), signin: app.clone().username("leeward_nobody") }).await.unwrap_err();
    assert!(nobody.contains("deploy/roles.sql") && nobody.contains("LEEWARD_SIGNIN_URL"), "{nobody}");
    for (change, back) in [
        (
            "GRANT EXECUTE ON FUNCTION access.open_signin(uuid, bytea, uuid, text) TO leeward_app",
            "REVOKE EXECUTE ON FUNCTION access.open_signin(uuid, bytea, uuid, text) FROM leeward_app",
        ),
        (
            "GRANT EXECUTE ON FUNCTION access.my_clients() TO leeward_signin",
            "REVOKE EXECUTE ON FUNCTION access.my_clients() FROM leeward_signin",
        ),
        ("GRANT SELECT ON practice TO leeward_signin", "REVOKE SELECT ON practice FROM leeward_signin"),
        ("GRANT SELECT (id) ON access.member TO leeward_signin", "REVOKE SELECT (id) ON access.member FROM leeward_signin"),
    ] {
        run(&house.database, change).await;
        let words = unfit(&house).await;
        assert!(words.contains("leeward_signin"), "{change}: {words}");
        run(&house.database, back).await;
        assert_eq!(unfit(&house).await, "it serves", "{back}");
    }
}

/// Who has only the app role's connection becomes nobody: no call, and no table, makes a sign-in.
#[tokio::test]
async fn the_app_role_cannot_become_somebody() {
    let house = House::build().await;
    let mut app = PgConnection::connect_with(&house.database.app()).await.unwrap();
    for call in [
        "access.open_signin(gen_random_uuid(), sha256('x'), gen_random_uuid(), 'x')",
        "access.accept_invitation('x', gen_random_uuid(), gen_random_uuid(), 'x', '{}', 'x')",
        "access.passkeys_of(gen_random_uuid())",
        "access.passkey_used(gen_random_uuid(), '{}')",
        "access.open_invitation('x')",
        "access.begin_ceremony('x', '{}')",
        "access.end_ceremony('x')",
        "access.demo_member('clinician')",
    ] {
        let fault = sqlx::query(AssertSqlSafe(format!("SELECT {call}"))).execute(&mut app).await.unwrap_err();
        assert!(fault.to_string().contains("permission denied for function"), "{call}: {fault}");
    }
    let fault = sqlx::query("SET ROLE leeward_signin").execute(&mut app).await.unwrap_err();
    assert!(fault.to_string().contains("permission denied"), "{fault}");
}

/// A role is made by a superuser, so a migration can only say that it is missing.
#[tokio::test]
async fn a_migration_without_the_role_says_what_to_run() {
    let database = TestDatabase::before(12).await;
    let mut connection = PgConnection::connect_with(&database.owner()).await.unwrap();
    let mut tx = connection.begin().await.unwrap();
    let migration = leeward::store::database::MIGRATIONS.iter().find(|migration| migration.version == 12).unwrap();
    // The role belongs to the whole server, where other tests need it: its name alone is another one here.
    let sql = migration.sql.as_str().replace("leeward_signin", "leeward_not_there");
    let fault = sqlx::raw_sql(AssertSqlSafe(sql)).execute(&mut *tx).await.unwrap_err();
    assert!(fault.to_string().contains("run deploy/roles.sql again"), "{fault}");
}
