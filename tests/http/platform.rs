//! Headers, origins, the start-up check, the audit chain.

use leeward::platform::Role;
use leeward::store::database::{Database, Unfit};
use leeward::store::subject::{Act, Subject};
use leeward_tests::House;

#[tokio::test]
async fn every_answer_carries_the_security_headers() {
    let house = House::build().await;
    let mut visitor = house.visitor();
    for path in ["/livez", "/nowhere", "/assets/missing/x.js"] {
        let answer = visitor.get(path).await;
        let header = |name: &str| answer.headers.iter().find(|(n, _)| n == name).map(|(_, v)| v.clone()).unwrap_or_default();
        // OWASP ASVS 5.0, 3.4.1 to 3.4.6 and 3.4.8
        assert!(header("content-security-policy").contains("default-src 'none'"), "{path}");
        assert!(header("content-security-policy").contains("frame-ancestors 'none'"), "{path}");
        assert_eq!(header("x-content-type-options"), "nosniff", "{path}");
        assert_eq!(header("cross-origin-opener-policy"), "same-origin", "{path}");
        assert!(header("strict-transport-security").contains("includeSubDomains"), "{path}");
        assert_eq!(header("cache-control"), "no-store", "{path}");
    }
}

#[tokio::test]
async fn an_error_page_never_tells_inner_text() {
    let house = House::build().await;
    let answer = house.visitor().get("/nowhere").await;
    assert_eq!(answer.status, 404);
    assert!(answer.body.contains("Not found"));
    let json = house.visitor().get_json("/nowhere").await;
    assert_eq!(json.json()["title"], "Not found");
}

#[tokio::test]
async fn a_change_from_another_origin_is_refused() {
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician]).await;
    let own = house.origin.clone();
    for (headers, why) in [
        (vec![], "no sign of its origin"),
        (vec![("origin", "https://elsewhere.example")], "a foreign origin"),
        (vec![("origin", own.as_str()), ("sec-fetch-site", "cross-site")], "a browser that says cross-site"),
        (vec![("origin", "null")], "a null origin alone"),
        (vec![("sec-fetch-site", "same-site")], "another port or sub-domain"),
        (vec![("origin", own.as_str()), ("origin", own.as_str())], "two origins"),
        (vec![("origin", own.as_str()), ("origin", "https://elsewhere.example")], "a second origin"),
        (vec![("origin", "https://elsewhere.example"), ("origin", own.as_str())], "a first origin"),
        (vec![("sec-fetch-site", "same-origin"), ("sec-fetch-site", "cross-site")], "two words on the site"),
    ] {
        assert_eq!(member.post_raw("/signout", &headers, "").await.status, 403, "{why}");
    }
}

#[tokio::test]
async fn it_refuses_to_serve_as_a_role_that_passes_by_the_policies() {
    let house = House::build().await;
    let owner = Database::connect_with(house.database.owner(), house.app.world.clone()).await;
    assert!(matches!(owner, Err(Unfit::Role(name)) if name == "leeward_owner"));
    let superuser = Database::connect_with(house.database.app().username("postgres"), house.app.world.clone()).await;
    assert!(matches!(superuser, Err(Unfit::Role(name)) if name == "postgres"));
}

#[tokio::test]
async fn it_refuses_to_serve_when_a_table_lacks_force() {
    let house = House::build().await;
    sqlx::query("ALTER TABLE client_details NO FORCE ROW LEVEL SECURITY").execute(&house.database.superuser).await.unwrap();
    let again = Database::connect_with(house.database.app(), house.app.world.clone()).await;
    assert!(matches!(again, Err(Unfit::Open(tables)) if tables == "client_details"));
}

#[tokio::test]
async fn acts_are_audited_in_a_chain_that_shows_every_change() {
    let house = House::build().await;
    let member = house.member(&[Role::Administrator]).await;
    for _ in 0..5 {
        house.app.database.act(&member.subject(), Act::new("member.list")).await.unwrap().commit().await.unwrap();
    }
    drop(house.app.database.act(&member.subject(), Act::new("member.view")).await.unwrap());
    let broken = "SELECT count(*) FROM (SELECT seq, hash, previous, access.audit_hash(previous, seq, at, kind, member_id, act, client_id, object_id) AS made,
                    lag(hash) OVER (ORDER BY seq) AS before FROM audit) a WHERE hash <> made OR (seq > 1 AND previous <> before)";
    let count: i64 = sqlx::query_scalar("SELECT count(*) FROM audit").fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(count, 5, "a dropped transaction leaves no row");
    let faults: i64 = sqlx::query_scalar(broken).fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(faults, 0);
    sqlx::query("UPDATE audit SET act = 'other' WHERE seq = 3").execute(&house.database.superuser).await.unwrap();
    let faults: i64 = sqlx::query_scalar(broken).fetch_one(&house.database.superuser).await.unwrap();
    assert_eq!(faults, 1);
}

#[tokio::test]
async fn a_made_up_token_is_nobody() {
    let house = House::build().await;
    let stranger = Subject::Member(leeward::base::ids::Token::new(&house.app.world));
    let mut tx = house.app.database.look(&stranger).await.unwrap();
    let who: Option<uuid::Uuid> = sqlx::query_scalar("SELECT access.me()").fetch_one(&mut *tx).await.unwrap();
    assert_eq!(who, None);
    let denied = sqlx::query("SELECT * FROM access.signin").execute(&mut *tx).await.unwrap_err();
    assert!(denied.to_string().contains("permission denied"));
}

/// A form is shown again for whoever typed it; nobody gets a page many times as long as what they sent.
#[tokio::test]
async fn a_form_that_is_none_of_ours_does_not_come_back() {
    let house = House::build().await;
    let own = house.origin.clone();
    let headers = [("origin", own.as_str()), ("accept", "text/html"), ("content-type", "application/x-www-form-urlencoded")];
    for body in ["a&".repeat(130_000), format!("a={}", "\"".repeat(260_000))] {
        let answer = house.visitor().post_raw("/clients/new", &headers, &body).await;
        assert_eq!(answer.status, 401);
        assert!(answer.body.len() < 20_000, "{} bytes came back", answer.body.len());
    }
    let typed = format!("note={}", "%22".repeat(10_000));
    let answer = house.visitor().post_raw("/clients/new", &headers, &typed).await;
    assert!(answer.body.contains("This page still holds what you typed"), "{}", answer.status);
}

/// The page of all parts is the demo's: a practice at work has none.
#[tokio::test]
async fn the_page_of_all_parts_is_only_there_in_the_demo() {
    let shown = House::build_demo().await.visitor().get("/parts").await;
    assert_eq!(shown.status, 200);
    assert!(shown.body.contains("Every part in every state"));
    let house = House::build().await;
    let mut member = house.member(&[Role::Clinician, Role::Lead, Role::Administrator]).await;
    assert_eq!((house.visitor().get("/parts").await.status, member.get("/parts").await.status), (404, 404));
}

#[tokio::test]
async fn an_address_of_another_shape_is_the_portals_own_page() {
    let house = House::build_demo().await;
    let mut member = house.member(&[Role::Clinician, Role::Lead, Role::Administrator]).await;
    for route in leeward::app::route_list().iter().filter(|route| route.path.contains('{')) {
        for odd in ["none", "%FF", "0", "00000000-0000-0000-0000-00000000000g"] {
            let path = route.path.split('/').map(|part| if part.starts_with('{') { odd } else { part }).collect::<Vec<_>>().join("/");
            let answer = if route.method == "GET" { member.get(&path).await } else { member.post_form(&path, &[]).await };
            assert_eq!(answer.status, 404, "{} {path}: {}", route.method, answer.body);
            assert!(answer.body.contains("Not found"), "{} {path}: {}", route.method, answer.body);
        }
    }
}

/// Connections that say nothing, begin and do not go on, or speak another version.
#[tokio::test]
async fn a_connection_that_asks_for_nothing_is_closed() {
    use tokio::io::{AsyncReadExt, AsyncWriteExt};
    let house = House::build().await;
    let address = house.origin.strip_prefix("http://").unwrap();
    let mut ends = Vec::new();
    for begun in ["", "GET /livez HT", "GET /livez HTTP/1.1\r\nhost: localhost\r\nx-slow: ", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"] {
        let mut connection = tokio::net::TcpStream::connect(address).await.unwrap();
        connection.write_all(begun.as_bytes()).await.unwrap();
        ends.push(tokio::spawn(async move {
            let mut said = Vec::new();
            let within = leeward::store::patience::HEAD + std::time::Duration::from_secs(20);
            tokio::time::timeout(within, connection.read_to_end(&mut said)).await.unwrap_or_else(|_| panic!("{begun:?} is still open"))
        }));
    }
    for end in ends {
        // Closed in whatever way.
        let _ = end.await.unwrap();
    }
}
