//! What others cannot see: another clinician, the lead, whoever reads the database.

use leeward::app::route_list;
use leeward::clients;
use leeward::platform::Role;
use leeward::platform::Rule;
use leeward::store::error::Error;
use leeward_tests::House;
use sqlx::{AssertSqlSafe, PgPool};

use super::{CLIENT, TARGET, client, has, target, with};

#[tokio::test]
async fn to_others_no_page_of_a_record_is_there() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let target = target(&mut clinician, client).await;
    let ours = |path: &str| (path.starts_with("/clients/") || path.starts_with("/targets/")) && !path.contains("/sessions");
    let routes: Vec<_> = route_list().into_iter().filter(|route| route.rule == Rule::Care && ours(route.path)).collect();
    assert!(routes.len() >= 13, "{routes:?}");
    let state = "SELECT md5(string_agg(t::text, '|')) FROM (SELECT c::text FROM client c UNION ALL SELECT d::text FROM client_details d
                 UNION ALL SELECT t::text FROM target t UNION ALL SELECT w::text FROM target_words w UNION ALL SELECT r::text FROM rating r) t";
    let before: String = sqlx::query_scalar(state).fetch_one(&house.database.superuser).await.unwrap();
    for roles in [&[Role::Clinician][..], &[Role::Lead], &[Role::Administrator], &[Role::Clinician, Role::Lead]] {
        let mut other = house.member(roles).await;
        for route in &routes {
            let path = route.path.replace("{client}", &client.to_string()).replace("{target}", &target.to_string());
            let fields = [&with(&CLIENT, "version", "1")[..], &TARGET, &[("status", "active")]].concat();
            for fields in [&fields[..], &[("version", "1"), ("status", "active")], &[]] {
                let answer = if route.method == "GET" { other.get(&path).await } else { other.post_form(&path, fields).await };
                assert_eq!(answer.status, 404, "{} {path} as {roles:?}", route.method);
                assert!(!answer.body.contains("Marit") && !answer.body.contains("ferry"));
            }
        }
    }
    let after: String = sqlx::query_scalar(state).fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(before, after, "and nothing changed");
    for route in &routes {
        let path = route.path.replace("{client}", &client.to_string()).replace("{target}", &target.to_string());
        let answer = if route.method == "GET" { house.visitor().get(&path).await } else { house.visitor().post_form(&path, &[]).await };
        assert_eq!(answer.status, 401, "{path} as nobody");
    }
}

#[tokio::test]
async fn the_lead_gets_no_names_even_without_the_handlers() {
    let house = House::build().await;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let id = client(&mut clinician).await;
    let target = target(&mut clinician, id).await;
    let mut lead = house.member(&[Role::Lead]).await;
    assert_eq!(lead.get("/clients").await.status, 403);
    assert_eq!(lead.get("/clients/new").await.status, 403);
    assert_eq!(lead.post_form("/clients/new", &CLIENT).await.status, 403);
    let mut both = house.member(&[Role::Lead, Role::Clinician]).await;
    has(&both.get("/clients").await.body, &["You have no clients here yet"]);

    let mut tx = house.app.database.look(&lead.subject()).await.unwrap();
    let seen: i64 = sqlx::query_scalar("SELECT count(*) FROM client").fetch_one(&mut *tx).await.unwrap();
    assert_eq!(seen, 1, "the lead counts clients");
    for table in ["client_details", "client_key", "target_words"] {
        let rows: i64 = sqlx::query_scalar(AssertSqlSafe(format!("SELECT count(*) FROM {table}"))).fetch_one(&mut *tx).await.unwrap();
        assert_eq!(rows, 0, "{table}");
    }
    assert!(matches!(clients::key(&mut tx, &house.app, id).await, Err(Error::NotFound)));
    assert!(matches!(clients::details(&mut tx, &house.app, id).await, Err(Error::NotFound)));
    assert!(matches!(leeward::targets::find(&mut tx, &house.app, target).await, Err(Error::NotFound)));
    assert!(matches!(leeward::targets::list(&mut tx, &house.app, id).await, Err(Error::NotFound)));
    let said = leeward::course::say(&mut tx, &house.app, id, target, leeward::course::Saying::SudFits).await;
    assert!(matches!(said, Err(Error::NotFound)));
    let new = clients::create(&house.app, &lead.subject(), clients::NewClient::default()).await;
    assert!(matches!(new, Err(Error::WrongRole)));
}

/// Every row of every table as text: bytes appear as hexadecimal digits.
async fn everything(database: &PgPool) -> Vec<(String, String)> {
    let tables: Vec<(String, String)> = sqlx::query_as(
        "SELECT n.nspname::text, c.relname::text FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
         WHERE c.relkind IN ('r', 'p') AND n.nspname IN ('public', 'access')",
    )
    .fetch_all(database)
    .await
    .unwrap();
    let mut rows = Vec::new();
    for (schema, table) in tables {
        let all = AssertSqlSafe(format!("SELECT t::text FROM {schema}.{table} t"));
        rows.extend(sqlx::query_scalar::<_, String>(all).fetch_all(database).await.unwrap().into_iter().map(|row| (table.clone(), row)));
    }
    rows
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A text as it may stand in a row: plain, hexadecimal, base64 in each of its three alignments, and each
/// of them again as bytes.
async fn disguises(database: &PgPool, text: &str) -> Vec<String> {
    let mut plain = vec![text.to_owned(), hex(text.as_bytes())];
    for skip in 0..3 {
        let whole = &text.as_bytes()[skip..];
        let whole = &whole[..whole.len() / 3 * 3];
        plain.push(sqlx::query_scalar("SELECT encode($1, 'base64')").bind(whole).fetch_one(database).await.unwrap());
    }
    let bytes: Vec<String> = plain.iter().map(|text| hex(text.as_bytes())).collect();
    [plain, bytes].concat()
}

async fn places(database: &PgPool, text: &str) -> Vec<String> {
    let rows = everything(database).await;
    let disguises = disguises(database, text).await;
    rows.into_iter().filter(|(_, row)| disguises.iter().any(|form| row.contains(form))).map(|(table, _)| table).collect()
}

#[tokio::test]
async fn nothing_of_a_record_stands_in_the_database_in_clear() {
    let house = House::build().await;
    let database = &house.database.superuser;
    let mut clinician = house.member(&[Role::Clinician]).await;
    let client = client(&mut clinician).await;
    let target = target(&mut clinician, client).await;
    // A second version of each row, so that both ways of writing are looked at.
    let version = ("version", "1");
    assert_eq!(clinician.post_form(&format!("/clients/{client}/edit"), &[&CLIENT[..], &[version]].concat()).await.status, 303);
    assert_eq!(clinician.post_form(&format!("/targets/{target}/edit"), &[&TARGET[..], &[version]].concat()).await.status, 303);
    let private = [&CLIENT[..6], &TARGET[..1], &TARGET[2..5], &TARGET[6..7], &TARGET[8..]].concat();
    assert_eq!(private.len(), 12);
    for (field, text) in private {
        let text = text.split('\n').next().unwrap();
        assert_eq!(places(database, text).await, Vec::<String>::new(), "{field} is not sealed");
    }
}

/// The search itself: it finds a text in each of the forms that it looks for.
#[tokio::test]
async fn the_search_for_clear_text_finds_what_is_there() {
    let house = House::build().await;
    let database = &house.database.superuser;
    let text = "Marit Holmqvist";
    for form in [
        "$1::text",
        "convert_to($1, 'UTF8')",
        "encode(convert_to($1, 'UTF8'), 'hex')",
        "encode(convert_to('xy' || $1, 'UTF8'), 'base64')",
        "convert_to(encode(convert_to('x' || $1, 'UTF8'), 'base64'), 'UTF8')",
    ] {
        assert!(places(database, text).await.is_empty());
        sqlx::query(AssertSqlSafe(format!("CREATE TABLE planted AS SELECT {form} AS it"))).bind(text).execute(database).await.unwrap();
        assert_eq!(places(database, text).await, ["planted"], "{form}");
        sqlx::query("DROP TABLE planted").execute(database).await.unwrap();
    }
}
