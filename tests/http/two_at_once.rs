//! What two who act at once must not bring about, what outlives nobody's right, and what the app role may not write even when
//! everything above the database is lost.

use chrono::Duration;
use leeward::base::ids::Token;
use leeward::platform::Role;
use leeward::store::subject::Subject;
use leeward_tests::{Answer, Browser, House};
use sqlx::{AssertSqlSafe, Connection, PgConnection};
use uuid::Uuid;

use crate::scene::Scene;
use crate::signin::{Device, enrol};
use crate::stranded::{hand, token, waiting};

async fn count(house: &House, query: &str) -> i64 {
    sqlx::query_scalar(AssertSqlSafe(query.to_owned())).fetch_one(&house.database.superuser).await.unwrap()
}

async fn strip(house: &House, member: Uuid) {
    let roles = "UPDATE access.member SET roles = '{lead}' WHERE id = $1";
    sqlx::query(roles).bind(member).execute(&house.database.superuser).await.unwrap();
}

#[tokio::test]
async fn whom_somebody_treats_is_given_to_nobody_beside_them_and_nobodys_client_to_one() {
    let scene = Scene::build().await;
    let (one, two) = (scene.house.member(&[Role::Clinician]).await, scene.house.member(&[Role::Clinician]).await);
    let (mut first, mut second) = (scene.house.member(&[Role::Lead]).await, scene.house.member(&[Role::Administrator]).await);
    let refused = hand(&mut first, scene.client, "", one.member).await;
    assert_eq!(refused.status, 409, "somebody treats them: {}", refused.body);
    strip(&scene.house, scene.clinician.member).await;
    let (a, b) = tokio::join!(hand(&mut first, scene.client, "", one.member), hand(&mut second, scene.client, "", two.member));
    let mut answers = [a.status, b.status];
    answers.sort_unstable();
    assert_eq!(answers, [303, 409]);
    assert_eq!(count(&scene.house, "SELECT count(*) FROM access.care_link WHERE until IS NULL").await, 1);
    assert_eq!(count(&scene.house, "SELECT count(*) FROM access.news WHERE kind = 'client_given'").await, 1);
}

#[tokio::test]
async fn clients_of_somebody_who_treats_nobody_any_more_are_found_and_the_page_says_what_was_done() {
    let scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let next = scene.house.member(&[Role::Clinician]).await;
    let caseload = lead.get("/practice/caseload").await.body;
    assert!(caseload.contains("href=\"/handover\"") && caseload.contains("href=\"/replacements\""), "the way there");
    strip(&scene.house, scene.clinician.member).await;
    let from = scene.clinician.member.to_string();
    let shown = lead.get(&format!("/handover?from={from}")).await;
    assert!(shown.status == 200 && shown.body.contains("no clinician any more"), "{} {}", shown.status, shown.body);
    let done = hand(&mut lead, scene.client, &from, next.member).await;
    let after = lead.get(&done.location).await;
    assert!(after.body.contains("Record 1 is with Member"), "{} {}", done.location, after.body);
    let untrue = format!("/handover?client={}&to={from}", scene.client);
    assert!(!lead.get(&untrue).await.body.contains("Record 1 is with"), "only what stands so");
}

async fn administrators(house: &House) -> i64 {
    count(house, "SELECT count(*) FROM access.member WHERE 'administrator' = ANY (roles) AND left_at IS NULL").await
}

async fn roles_of(who: &mut Browser, of: Uuid, were: &str, wanted: &str) -> Answer {
    who.post_form(&format!("/members/{of}/roles"), &[("were", were), (wanted, "yes")]).await
}

#[tokio::test]
async fn two_administrators_who_act_on_each_other_leave_one() {
    for end in [true, false] {
        let house = House::build().await;
        let (mut one, mut two) = (house.member(&[Role::Administrator]).await, house.member(&[Role::Administrator]).await);
        let (a, b) = (one.member, two.member);
        let act = async |who: &mut Browser, other: Uuid| match end {
            true => who.post_form(&format!("/members/{other}/end"), &[]).await,
            false => roles_of(who, other, "administrator", "lead").await,
        };
        let (first, second) = tokio::join!(act(&mut one, b), act(&mut two, a));
        let answers = [first.status, second.status];
        // Whose right went while they asked may find nobody there to act on.
        let refused = answers.iter().filter(|status| matches!(status, 401 | 403 | 404)).count();
        assert!(answers.contains(&303) && refused == 1, "{answers:?} {} {}", first.body, second.body);
        assert_eq!(administrators(&house).await, 1);
    }
}

#[tokio::test]
async fn roles_are_changed_from_what_the_form_showed() {
    let house = House::build().await;
    let (mut one, mut two) = (house.member(&[Role::Administrator]).await, house.member(&[Role::Administrator]).await);
    let who = house.member(&[Role::Lead]).await.member;
    let form = one.get(&format!("/members/{who}/roles")).await.body;
    assert!(form.contains("name=\"were\" value=\"lead\""), "{form}");
    assert_eq!(roles_of(&mut two, who, "lead", "clinician").await.status, 303);
    let late = roles_of(&mut one, who, "lead", "administrator").await;
    assert_eq!(late.status, 409, "{}", late.body);
    assert_eq!(administrators(&house).await, 2);
    assert!(one.get("/members").await.body.contains("changed the roles of"), "the other administrator is told");
}

#[tokio::test]
async fn a_role_whose_clients_would_be_alone_is_asked_about() {
    let scene = Scene::build().await;
    let mut administrator = scene.house.member(&[Role::Administrator]).await;
    let asked = roles_of(&mut administrator, scene.clinician.member, "clinician", "lead").await;
    assert_eq!(asked.status, 422);
    assert!(asked.body.contains("1 client has no other clinician") && asked.body.contains("name=\"leaves\""), "{}", asked.body);
    let other = scene.house.member(&[Role::Clinician]).await.member;
    assert_eq!(roles_of(&mut administrator, other, "clinician", "lead").await.status, 303, "who treats nobody");
}

async fn begin_enrolment(house: &House, link: &str) -> u16 {
    house.visitor().post_json("/enrol/begin", &serde_json::json!({ "token": link })).await.status
}

#[tokio::test]
async fn invitations_end_with_the_administration_that_made_them_and_a_new_lead_is_announced() {
    let house = House::build().await;
    let (mut one, mut two) = (house.member(&[Role::Administrator]).await, house.member(&[Role::Administrator]).await);
    let invite = [("name", "A friend"), ("lead", "yes")];
    let first = token(&one.post_form("/members/invite", &invite).await.body);
    let second = token(&one.post_form("/members/invite", &invite).await.body);
    enrol(&mut house.visitor(), &mut Device::new(&house.origin), &first).await;
    assert!(two.get("/members").await.body.contains("A friend joined the practice as a lead or an administrator, invited by Member"));
    assert_eq!(begin_enrolment(&house, &second).await, 200);
    assert_eq!(roles_of(&mut two, one.member, "administrator", "clinician").await.status, 303);
    assert_eq!(begin_enrolment(&house, &second).await, 403);
}

async fn ask(who: &mut Browser, lost: Uuid) -> u16 {
    who.post_form(&format!("/members/{lost}/passkey"), &[]).await.status
}

#[tokio::test]
async fn who_became_a_lead_after_it_was_asked_does_not_agree_and_anybody_told_may_refuse() {
    let house = House::build().await;
    let mut asker = house.member(&[Role::Administrator]).await;
    let mut before = house.member(&[Role::Lead]).await;
    let mut lost = house.member(&[Role::Clinician]).await;
    let mut made = house.member(&[Role::Clinician]).await;
    house.clock.advance(Duration::seconds(1));
    assert_eq!(ask(&mut asker, lost.member).await, 303);
    house.clock.advance(Duration::seconds(1));
    assert_eq!(roles_of(&mut asker, made.member, "clinician", "lead").await.status, 303);
    let agree = format!("/replacements/{}/agree", waiting(&house).await);
    let refuse = agree.replace("agree", "refuse");
    assert!(made.get("/replacements").await.body.contains("after this was asked"));
    assert_eq!(made.post_form(&agree, &[]).await.status, 409);
    let link = token(&before.post_form(&agree, &[]).await.body);
    assert_eq!(begin_enrolment(&house, &link).await, 200);
    assert!(before.get("/replacements").await.body.contains("agreed to: a link is out"));
    // The member is told in a sign-in that is still open, and says that it is not so.
    let told = lost.get("/clients").await.body;
    assert!(told.contains("says that Member") && told.contains("href=\"/replacements\""), "{told}");
    assert!(lost.get("/replacements").await.body.contains("Refuse"));
    assert_eq!(house.member(&[Role::Clinician]).await.post_form(&refuse, &[]).await.status, 404, "not theirs");
    assert_eq!(lost.post_form(&refuse, &[]).await.status, 303);
    assert_eq!(begin_enrolment(&house, &link).await, 403, "the link is of no use");
    assert!(asker.get("/members").await.body.contains("refused a new passkey for"));
}

#[tokio::test]
async fn a_link_for_a_lost_passkey_ends_with_the_next_one_and_with_who_asked() {
    let house = House::build().await;
    let (mut asker, mut other) = (house.member(&[Role::Administrator]).await, house.member(&[Role::Administrator]).await);
    let lost = house.member(&[Role::Clinician]).await.member;
    let agree = async |other: &mut Browser| {
        let answer = other.post_form(&format!("/replacements/{}/agree", waiting(&house).await), &[]).await;
        (answer.status, answer.body)
    };
    ask(&mut asker, lost).await;
    let first = token(&agree(&mut other).await.1);
    ask(&mut asker, lost).await;
    assert_eq!(begin_enrolment(&house, &first).await, 403, "one at a time");
    assert_eq!(roles_of(&mut other, asker.member, "administrator", "clinician").await.status, 303);
    assert_eq!(agree(&mut other).await.0, 409, "who asked is no administrator any more");
}

#[tokio::test]
async fn the_app_role_writes_named_columns_only() {
    let house = House::build().await;
    let whole: Vec<String> = sqlx::query_scalar(
        "SELECT format('%s: %s', c.oid::regclass, a.privilege_type) FROM pg_class c, aclexplode(c.relacl) a
         WHERE c.relkind IN ('r', 'v') AND a.grantee IN ('leeward_app'::regrole, 'leeward_signin'::regrole, 0)
           AND a.privilege_type <> 'SELECT' AND c.relnamespace IN ('public'::regnamespace, 'access'::regnamespace)",
    )
    .fetch_all(&house.database.superuser)
    .await
    .unwrap();
    assert!(whole.is_empty(), "of whole tables: {whole:?}");
    // To whom a row belongs, and where it stands among others, is said once.
    let owned: Vec<String> = sqlx::query_scalar(
        "SELECT format('%s.%s', a.attrelid::regclass, a.attname) FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
         WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace AND a.attnum > 0
           AND a.attname IN ('id', 'client_id', 'member_id', 'session_id', 'target_id', 'set_id', 'number', 'seq', 'opened_at', 'entered_by')
           AND has_column_privilege('leeward_app', a.attrelid, a.attnum, 'UPDATE')",
    )
    .fetch_all(&house.database.superuser)
    .await
    .unwrap();
    assert!(owned.is_empty(), "{owned:?}");
}

/// Runs a statement as the app role for somebody; its SQLSTATE when it is refused.
async fn run(house: &House, subject: &Subject, statement: &str) -> Result<u64, String> {
    let mut tx = house.app.database.look(subject).await.unwrap();
    let done = sqlx::query(AssertSqlSafe(statement.to_owned())).execute(&mut *tx).await;
    let done = done.map(|done| done.rows_affected()).map_err(|fault| fault.as_database_error().unwrap().code().unwrap().into_owned());
    if done.is_ok() {
        tx.commit().await.unwrap();
    }
    done
}

#[tokio::test]
async fn what_is_over_stays_over_and_a_room_keeps_to_its_columns() {
    let scene = Scene::build().await;
    let house = &scene.house;
    let room = Token::new(&house.app.world);
    let kept = "INSERT INTO access.room_token VALUES ($1, $2, $3)";
    let until = house.app.world.now() + Duration::hours(22);
    sqlx::query(kept).bind(room.hash()).bind(scene.session).bind(until).execute(&house.database.superuser).await.unwrap();
    let (room, clinician) = (Subject::Room(room), scene.clinician.subject());
    let refused = Err("42501".to_owned());
    assert_eq!(run(house, &room, "UPDATE session SET ended_at = now()").await, refused);
    assert_eq!(run(house, &room, "UPDATE session SET admitted_at = now()").await, refused);
    assert_eq!(run(house, &room, "UPDATE session SET room_epoch = room_epoch + 1").await, Ok(1));
    assert_eq!(run(house, &clinician, "UPDATE session SET admitted_at = now()").await, Ok(1));
    assert_eq!(run(house, &clinician, "UPDATE session SET admitted_at = NULL").await, refused);
    assert_eq!(run(house, &clinician, "UPDATE session SET ended_at = now(), closing = 'incomplete'").await, Ok(1));
    for again in ["ended_at = NULL", "ended_at = now() + interval '1 hour'", "closing = 'complete'"] {
        assert_eq!(run(house, &clinician, &format!("UPDATE session SET {again}")).await, refused, "{again}");
    }
    run(house, &room, "SELECT access.keep_room()").await.unwrap();
    let ends: chrono::DateTime<chrono::Utc> =
        sqlx::query_scalar("SELECT ends_at FROM access.room_token").fetch_one(&house.database.superuser).await.unwrap();
    assert!((ends - until).abs() < Duration::seconds(1), "not renewed after the end");
}

#[tokio::test]
async fn a_time_is_a_time_and_a_link_ends_within_days() {
    let scene = Scene::build().await;
    let house = &scene.house;
    let without: Vec<String> = sqlx::query_scalar(
        "SELECT format('%s.%s', a.attrelid::regclass, a.attname) FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
         WHERE c.relkind = 'r' AND c.relnamespace IN ('public'::regnamespace, 'access'::regnamespace) AND c.relname <> '_sqlx_migrations'
           AND a.attnum > 0 AND NOT a.attisdropped AND a.atttypid IN ('timestamptz'::regtype, 'timestamp'::regtype, 'date'::regtype)
           AND NOT EXISTS (SELECT FROM pg_constraint k WHERE k.conrelid = c.oid AND k.conkey = ARRAY[a.attnum]
             AND pg_get_constraintdef(k.oid) LIKE 'CHECK (isfinite(%')",
    )
    .fetch_all(&house.database.superuser)
    .await
    .unwrap();
    assert!(without.is_empty(), "ADD CHECK (isfinite(...)): sqlx reads no infinity: {without:?}");
    let administrator = house.member(&[Role::Administrator]).await.subject();
    for until in ["infinity", "-infinity", "now() + interval '9 days'", "now() - interval '1 second'"] {
        let until = if until.contains('(') { until.to_owned() } else { format!("'{until}'") };
        let invite = format!("SELECT access.invite(sha256('x'), NULL, 'X', '{{lead}}', {until})");
        assert_eq!(run(house, &administrator, &invite).await, Err("23514".into()), "{until}");
        let link = format!("SELECT access.mint_link(gen_random_uuid(), sha256('x'), '{}', {until}, 'x')", scene.session);
        assert_eq!(run(house, &scene.clinician.subject(), &link).await, Err("23514".into()), "{until}");
    }
    let key = "SELECT access.begin_request(gen_random_uuid(), repeat('x', 101), 'x')";
    assert_eq!(run(house, &administrator, key).await, Err("23514".into()), "a key is small");
}

/// A row that this version cannot read stops nobody's line, and its words stay out of the log.
#[tokio::test]
async fn a_fault_inside_is_a_page() {
    let mut scene = Scene::build().await;
    let mut owner = PgConnection::connect_with(&scene.house.database.owner()).await.unwrap();
    let infinite =
        "ALTER TABLE session DROP CONSTRAINT opened_at_is_a_time, NO FORCE ROW LEVEL SECURITY; UPDATE session SET opened_at = 'infinity'";
    sqlx::raw_sql(infinite).execute(&mut owner).await.unwrap();
    let answer = scene.clinician.get(&format!("/sessions/{}", scene.session)).await;
    assert_eq!(answer.status, 500, "{}", answer.body);
    assert!(answer.body.contains("Something went wrong"), "{}", answer.body);
    assert_eq!(scene.clinician.get("/account").await.status, 200);
}
