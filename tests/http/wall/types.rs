//! Foreign code: what somebody puts where a function looks for names.

use leeward::store::subject::Subject;
use sqlx::{Connection, PgConnection};

use super::probe::ground;

/// Types under the names that our functions use, each with a check that tells when it runs as somebody else.
const TRAP: &str = "
CREATE FUNCTION pg_temp.trap() RETURNS pg_catalog.bool LANGUAGE plpgsql AS $$ BEGIN
  IF current_user <> session_user THEN RAISE EXCEPTION 'foreign code ran as %', current_user USING ERRCODE = 'P6666'; END IF;
  RETURN true;
END $$;
DO $$ DECLARE name pg_catalog.text; BEGIN
  FOREACH name IN ARRAY ARRAY['uuid','text','bytea','timestamptz','interval','bool','int4','int8','int2','jsonb','regclass'] LOOP
    EXECUTE format('CREATE DOMAIN pg_temp.%I AS pg_catalog.%I CHECK (pg_temp.trap())', name, name);
  END LOOP;
END $$;
CREATE TEMPORARY TABLE pg_namespace (nspname pg_catalog.text, nspowner pg_catalog.oid);
INSERT INTO pg_temp.pg_namespace SELECT 'access', oid FROM pg_catalog.pg_roles WHERE rolname = current_user;";

/// With the right to make temporary objects given back, as in a database where that was forgotten.
#[tokio::test]
async fn no_function_runs_what_the_caller_put_into_its_way() {
    let ground = ground().await;
    let house = &ground.scene.house;
    let database: String = sqlx::query_scalar("SELECT current_database()").fetch_one(&house.database.superuser).await.unwrap();
    let give_back = format!("GRANT TEMPORARY ON DATABASE {database} TO leeward_app");
    sqlx::query(sqlx::AssertSqlSafe(give_back)).execute(&house.database.superuser).await.unwrap();
    let mut app = PgConnection::connect_with(&house.database.app()).await.unwrap();
    sqlx::raw_sql(TRAP).execute(&mut app).await.unwrap();
    let mut wrong = Vec::new();
    for (name, subject) in [
        ("a clinician", ground.scene.clinician.subject()),
        ("a seat", Subject::Seat(ground.seat_token.clone())),
        ("a room", Subject::Room(ground.room_token.clone())),
    ] {
        let said = ground.said(name, &subject).await;
        let outcomes = ground.call_all_over(&mut app, &said).await;
        wrong.extend(outcomes.iter().filter(|o| o.fault.as_deref() == Some("P6666")).map(|o| format!("{name}: {}", o.call)).take(12));
        let owner = outcomes.iter().filter(|o| o.function == "access.is_owner" && o.told != "false");
        wrong.extend(owner.map(|o| format!("{name} passes for the owner: {o}")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// For functions of every migration, those to come too; the start-up check demands the same of what is there.
#[tokio::test]
async fn every_function_of_the_owners_rights_looks_for_names_in_the_system_first() {
    let ground = ground().await;
    let open: Vec<String> = sqlx::query_scalar(
        "SELECT p.oid::regprocedure::text FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
         WHERE n.nspname IN ('access', 'public')
           AND NOT (coalesce('search_path=pg_catalog, pg_temp' = ANY (p.proconfig), false)
             -- Inlined or asked often, so without a setting of their own: they name nothing that could be elsewhere.
             OR NOT p.prosecdef AND p.prosrc !~ '::(?!pg_catalog\\.)' AND p.prosrc !~* '(from|join)\\s+(?!pg_catalog\\.|access\\.|public\\.)')",
    )
    .fetch_all(&ground.scene.house.database.superuser)
    .await
    .unwrap();
    assert!(open.is_empty(), "{open:?}");
    let public: Vec<String> = sqlx::query_scalar(
        "SELECT p.oid::regprocedure::text FROM pg_proc p, aclexplode(coalesce(p.proacl, acldefault('f', p.proowner))) a
         WHERE p.pronamespace = 'access'::regnamespace AND a.grantee = 0",
    )
    .fetch_all(&ground.scene.house.database.superuser)
    .await
    .unwrap();
    assert!(public.is_empty(), "for everybody: {public:?}");
}
