//! Every route by every sort of person, generated from the portal's own list of routes; and the
//! database's policies alone, without any handler.

use leeward::app::route_list;
use leeward::comfort::{self, Sheet};
use leeward::live;
use leeward::platform::Role;
use leeward::platform::{Route, Rule};
use leeward::safety_plan;
use leeward::store::subject::Subject;
use leeward_tests::{Answer, Browser};
use serde_json::json;
use uuid::Uuid;

use crate::askings::on_errand;
use crate::safety_plan::staying_safe;
use crate::scene::{LABEL, NAME, PICTURE, Scene};

/// Who tries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Who {
    Nobody,
    Client,
    Errand,
    Treating,
    OtherClinician,
    Lead,
    Administrator,
}

const EVERYBODY: [Who; 7] = [Who::Nobody, Who::Client, Who::Errand, Who::Treating, Who::OtherClinician, Who::Lead, Who::Administrator];

/// Whether the rule lets them through.
fn may(who: Who, rule: Rule) -> bool {
    match rule {
        Rule::Anybody => true,
        Rule::Seat => who == Who::Client,
        Rule::Errand => who == Who::Errand,
        Rule::Member => !matches!(who, Who::Nobody | Who::Client | Who::Errand),
        Rule::Role(Role::Clinician) => matches!(who, Who::Treating | Who::OtherClinician),
        Rule::Role(Role::Lead) => who == Who::Lead,
        Rule::Role(Role::Administrator) => who == Who::Administrator,
        Rule::Roles(roles) => roles.iter().any(|role| may(who, Rule::Role(*role))),
        Rule::Care => who == Who::Treating,
    }
}

/// A route that changes something in a scene of its own, all others in one: those who are kept out come first and must change nothing.
struct Try {
    scene: Scene,
    bystander: Uuid,
    /// The one client there is at a time, and the one errand.
    client: Option<Browser>,
    errand: Option<Browser>,
    /// As the last who was kept out left it: to read it costs more than most tries.
    record: Option<String>,
}

impl Try {
    async fn new() -> Self {
        let scene = Scene::build().await;
        let bystander = scene.house.member(&[Role::Clinician]).await.member;
        Self { scene, bystander, client: None, errand: None, record: None }
    }

    /// `None`: the route only reads.
    async fn for_changes(route: &Route) -> Option<Self> {
        if route.method == "GET" { None } else { Some(Self::new().await) }
    }

    async fn browser(&mut self, who: Who) -> Browser {
        let house = &self.scene.house;
        match who {
            Who::Nobody => house.visitor(),
            Who::Client => {
                if self.client.is_none() {
                    self.record = None;
                    self.client = Some(seated(&mut self.scene).await);
                }
                self.client.clone().expect("seated")
            }
            Who::Errand => {
                if self.errand.is_none() {
                    self.record = None;
                    self.errand = Some(on_errand(&self.scene).await);
                }
                self.errand.clone().expect("on an errand")
            }
            Who::Treating => house.sign_in(self.scene.clinician.member).await,
            Who::OtherClinician => house.member(&[Role::Clinician]).await,
            Who::Lead => house.member(&[Role::Lead]).await,
            Who::Administrator => house.member(&[Role::Administrator]).await,
        }
    }

    fn path(&self, route: &Route) -> String {
        let mut path = route.path.to_owned();
        for (place, id) in [
            ("{client}", self.scene.client),
            ("{target}", self.scene.target),
            ("{session}", self.scene.session),
            ("{member}", self.bystander),
            ("{passkey}", Uuid::nil()),
            ("{signin}", Uuid::nil()),
            ("{preset}", Uuid::nil()),
            ("{news}", Uuid::nil()),
            ("{replacement}", Uuid::nil()),
        ] {
            path = path.replace(place, &id.to_string());
        }
        path = path
            .replace("{role}", "clinician")
            .replace("{hash}", "0")
            .replace("{name}", "x.js")
            .replace("{number}", "1")
            .replace("{measure}", "phq9");
        assert!(!path.contains('{'), "{path}: this test does not know what stands there; tell it");
        path
    }

    async fn send(&mut self, route: &Route, mut browser: Browser) -> Answer {
        let path = self.path(route);
        match route.method {
            "GET" => browser.get(&path).await,
            "POST" => {
                let to = self.bystander.to_string();
                browser.post_form(&path, &[("version", "1"), ("name", "Somebody"), ("clinician", "1"), ("from", ""), ("to", &to)]).await
            }
            other => panic!("{other}: this test does not know the method; tell it"),
        }
    }
}

/// A client who has used a link and given the code.
async fn seated(scene: &mut Scene) -> Browser {
    let (link, code) = live::mint(&scene.house.app, &scene.clinician.subject(), scene.session).await.unwrap();
    let mut client = scene.house.visitor();
    let answer = client.post_json("/join", &json!({ "link": link.split('#').nth(1), "code": code, "once": uuid::Uuid::nil() })).await;
    assert_eq!(answer.status, 200, "{}", answer.body);
    client
}

/// All that a client's record consists of, in one text, so that any change shows.
async fn record(scene: &Scene) -> String {
    let tables = [
        "client",
        "client_details",
        "client_key",
        "target",
        "target_words",
        "session",
        "session_words",
        "session_moment",
        "rating",
        "process_note",
        "fact",
        "hour_fact",
        "after_check",
        "after_check_try",
        "target_course",
        "cluster",
        "target_plan",
        "safety_plan",
        "steadying",
        "resource",
        "unmeasured",
        "closing_draft",
        "reach_step",
        "client_reach",
        "adverse_event",
        "adverse_account",
        "episode",
        "response",
        "response_answers",
        "episode_measure",
        "risk_flag",
        "risk_told",
        "risk_mail",
        "mail_address",
        "wording",
        "schedule",
        "asking",
        "asking_words",
        "response_draft",
        "stimulus_set",
        "comfort",
        "preset",
    ];
    let of = tables.map(|table| format!("(SELECT string_agg(t::text, ';' ORDER BY t::text) FROM {table} t)"));
    let query = format!("SELECT concat_ws('|', {})", of.join(", "));
    sqlx::query_scalar(sqlx::AssertSqlSafe(query)).fetch_one(&scene.house.database.superuser).await.unwrap()
}

async fn check(attempt: &mut Try, route: &Route, who: Who) -> Result<(), String> {
    let browser = attempt.browser(who).await;
    let lets_in = may(who, route.rule);
    let before = match attempt.record.take() {
        None if !lets_in => record(&attempt.scene).await,
        kept => kept.unwrap_or_default(),
    };
    let answer = attempt.send(route, browser).await;
    let say = |why: &str| Err(format!("{} {} as {who:?}: {} {why}", route.method, route.path, answer.status));
    if answer.status >= 500 {
        return say("is a fault of the portal");
    }
    if lets_in {
        // A passkey that is refused answers 403 as well; the words tell the two apart.
        let kept_out = answer.status == 401 || answer.body.contains("Not for your role");
        return if kept_out && route.rule != Rule::Anybody { say("though the rule lets them through") } else { Ok(()) };
    }
    let refused = match route.rule {
        Rule::Seat | Rule::Errand => answer.status == 401,
        _ if matches!(who, Who::Nobody | Who::Client | Who::Errand) => answer.status == 401,
        Rule::Role(_) | Rule::Roles(_) => answer.status == 403,
        // 400, 415 and 422 say that the form was not read: nothing was looked up either.
        _ => matches!(answer.status, 404 | 400 | 415 | 422),
    };
    if !refused {
        return say("though the rule keeps them out");
    }
    if [NAME, LABEL, PICTURE].iter().any(|words| answer.body.contains(words)) {
        return say("and tells words of the record");
    }
    let after = record(&attempt.scene).await;
    if after != before {
        return say("and the record was changed all the same");
    }
    attempt.record = Some(after);
    Ok(())
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_route_by_everybody() {
    let routes = route_list();
    let mut faults = Vec::new();
    let mut reading = Try::new().await;
    for route in &routes {
        let mut own = Try::for_changes(route).await;
        let attempt = own.as_mut().unwrap_or(&mut reading);
        let (let_in, kept_out): (Vec<Who>, Vec<Who>) = EVERYBODY.into_iter().partition(|who| may(*who, route.rule));
        for who in kept_out.into_iter().chain(let_in) {
            if let Err(fault) = check(attempt, route, who).await {
                faults.push(fault);
            }
        }
    }
    assert!(routes.len() > 50, "only {} routes: is this the whole list?", routes.len());
    assert!(faults.is_empty(), "{} of {}:\n{}", faults.len(), routes.len() * EVERYBODY.len(), faults.join("\n"));
}

/// What decides who gets at people's records: refused once the passkey was shown ten minutes ago.
const STEP_UP: [&str; 9] = [
    "/account/passkeys/begin",
    "/account/passkeys/link",
    "/account/passkeys/{passkey}/remove",
    "/handover/{client}",
    "/members/invite",
    "/members/{member}/end",
    "/members/{member}/passkey",
    "/members/{member}/roles",
    "/replacements/{replacement}/agree",
];

/// Who is a member of what role, how they get in, and whom they treat.
async fn standing(scene: &Scene) -> String {
    let query = "SELECT concat_ws(';', (SELECT string_agg(m::text, ',' ORDER BY m.id) FROM access.member m),
        (SELECT string_agg(p.id::text, ',' ORDER BY p.id) FROM access.passkey p), (SELECT count(*) FROM access.invitation),
        (SELECT string_agg(l::text, ',' ORDER BY l.id) FROM access.care_link l), (SELECT count(*) FROM access.replacement))";
    sqlx::query_scalar(query).fetch_one(&scene.house.database.superuser).await.unwrap()
}

async fn check_stale(attempt: &mut Try, route: &Route, who: Who) -> Result<(), String> {
    let browser = attempt.browser(who).await;
    attempt.scene.house.clock.advance(chrono::Duration::minutes(10));
    let before = standing(&attempt.scene).await;
    let answer = attempt.send(route, browser).await;
    let asks = answer.status == 401 && answer.body.contains("Show your passkey again");
    let say = |why: &str| Err(format!("{} {} as {who:?}, stale: {} {why}", route.method, route.path, answer.status));
    match STEP_UP.contains(&route.path) && route.method == "POST" {
        true if !asks => say("does not ask for the passkey"),
        true if standing(&attempt.scene).await != before => say("did something all the same"),
        false if answer.status == 401 => say("asks for more than a sign-in"),
        _ => Ok(()),
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_route_by_every_member_whose_passkey_was_shown_long_ago() {
    let routes = route_list();
    for named in STEP_UP {
        assert!(routes.iter().any(|route| route.method == "POST" && route.path == named), "{named} is no route");
    }
    let mut faults = Vec::new();
    // A wrong passkey is refused with the same number, and signs nobody in anew.
    let mut reading = Try::new().await;
    for route in routes.iter().filter(|route| route.rule != Rule::Anybody) {
        let mut own = Try::for_changes(route).await;
        let attempt = own.as_mut().unwrap_or(&mut reading);
        for who in [Who::Treating, Who::OtherClinician, Who::Lead, Who::Administrator].into_iter().filter(|who| may(*who, route.rule)) {
            if let Err(fault) = check_stale(attempt, route, who).await {
                faults.push(fault);
            }
        }
    }
    assert!(faults.is_empty(), "{}:\n{}", faults.len(), faults.join("\n"));
}

/// Rows that a subject sees in a table with no handler in between.
async fn seen(scene: &Scene, subject: &Subject, table: &str) -> i64 {
    let mut tx = scene.house.app.database.look(subject).await.unwrap();
    let query = format!("SELECT count(*) FROM {table}");
    sqlx::query_scalar(sqlx::AssertSqlSafe(query)).fetch_one(&mut *tx).await.unwrap()
}

/// Tables with words about a person or what opens them, and what only concerns those who treat.
const WORDS: [&str; 22] = [
    "client_key",
    "client_details",
    "target_words",
    "session_words",
    "process_note",
    "comfort",
    "hour_fact",
    "cluster",
    "target_plan",
    "safety_plan",
    "steadying",
    "resource",
    "closing_draft",
    "client_reach",
    "adverse_account",
    "response_answers",
    "risk_flag",
    "risk_told",
    "risk_mail",
    "mail_address",
    "asking_words",
    "response_draft",
];

/// What is nobody's record.
const COMMON: [&str; 5] = ["practice", "audit", "preset", "wording", "practice_snapshot"];

#[tokio::test]
async fn the_policies_hold_alone() {
    let mut scene = Scene::build().await;
    scene.set(1, Some(24.0), leeward_core::wire::Ending::Done).await;
    let words = leeward_core::wire::EntryValue::Words { words: "a long breath".into() };
    scene.kept(None, None, leeward_core::wire::Moment::AfterSet, words).await;
    assert!(safety_plan::save(&scene.house.app, &scene.clinician.subject(), scene.client, &staying_safe(), 0).await.unwrap());
    let usual = leeward_core::safety::default_plan();
    let sheet = Sheet { path: usual.path, dot: usual.dot, comfort: usual.comfort };
    assert!(comfort::save(&scene.house.app, &scene.clinician.subject(), scene.client, &sheet, 0).await.unwrap());
    let mut clinician = scene.clinician.clone();
    assert_eq!(clinician.fill_in("/account/mail", &[("address", "hofer@practice.example")]).await.status, 303);
    let tables: Vec<String> = sqlx::query_scalar(
        "SELECT relname::text FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace AND relname <> '_sqlx_migrations' ORDER BY 1",
    )
    .fetch_all(&scene.house.database.superuser)
    .await
    .unwrap();
    let (other, lead) = (scene.house.member(&[Role::Clinician]).await.subject(), scene.house.member(&[Role::Lead]).await.subject());
    let mut with_rows = 0;
    for table in tables.iter().filter(|table| !COMMON.contains(&table.as_str())) {
        let own = seen(&scene, &scene.clinician.subject(), table).await;
        with_rows += i64::from(own > 0);
        assert_eq!(seen(&scene, &Subject::Visitor, table).await, 0, "{table}, nobody");
        assert_eq!(seen(&scene, &other, table).await, 0, "{table}, a clinician who does not treat");
        let for_lead = if WORDS.contains(&table.as_str()) { 0 } else { own };
        assert_eq!(seen(&scene, &lead, table).await, for_lead, "{table}, the lead");
    }
    assert!(with_rows >= 13, "only {with_rows} tables had rows to hide");
}

#[tokio::test]
async fn nobody_writes_into_anothers_record() {
    let scene = Scene::build().await;
    let other = scene.house.member(&[Role::Clinician]).await;
    let (client, target, session) = (scene.client, scene.target, scene.session);
    let now = scene.house.app.world.now();
    let mut tx = scene.house.app.database.look(&other.subject()).await.unwrap();
    for update in [
        "UPDATE client SET seizures = 'no'",
        "UPDATE client_details SET name = phone",
        "UPDATE target SET prong = 'future'",
        "UPDATE target_course SET state = 'planned', held = NULL",
        "UPDATE session SET ended_at = opened_at",
    ] {
        let changed = sqlx::query(update).execute(&mut *tx).await.unwrap().rows_affected();
        assert_eq!(changed, 0, "{update}");
    }
    drop(tx);
    let insert = "INSERT INTO rating (id, client_id, session_id, target_id, scale, value, moment, entered_by, at) VALUES ($1, $2, $3, $4, 'sud', 3, 'closing', $5, $6)";
    let mut tx = scene.house.app.database.look(&other.subject()).await.unwrap();
    let refused = sqlx::query(insert)
        .bind(Uuid::from_u128(9))
        .bind(client)
        .bind(session)
        .bind(target)
        .bind(other.member)
        .bind(now)
        .execute(&mut *tx)
        .await;
    assert!(refused.unwrap_err().to_string().contains("row-level security"));
    drop(tx);
    let mut tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    for forbidden in
        ["DELETE FROM rating", "UPDATE rating SET value = 0", "UPDATE stimulus_set SET number = 9", "DELETE FROM audit", "TRUNCATE client"]
    {
        let denied = sqlx::query(forbidden).execute(&mut *tx).await.unwrap_err();
        assert!(denied.to_string().contains("permission denied"), "{forbidden}: {denied}");
        drop(tx);
        tx = scene.house.app.database.look(&scene.clinician.subject()).await.unwrap();
    }
}
