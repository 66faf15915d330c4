//! For each route that changes something: somebody who may, and something to send that does it.

mod askings;
mod measures;
mod people;

use leeward::base::ids::new_id;
use leeward::live;
use leeward::platform::Role;
use leeward::platform::Route;
use leeward::presets::{self, Owner};
use leeward::steadying::{self, Resource};
use leeward::store::seal::Private;
use leeward::targets::{self, Belongs, Wanted};
use leeward_core::safety::default_plan;
use leeward_core::wire::{Ending, EntryValue, Moment, Preset, Purpose};
use leeward_tests::{Answer, Browser, House};
use serde_json::{Value, json};
use sqlx::AssertSqlSafe;
use uuid::Uuid;

use crate::scene::Scene;

/// Something to send, and who sends it.
pub struct Sample {
    pub scene: Scene,
    pub who: Browser,
    pub path: String,
    /// The browser that has the seat, once somebody sits there.
    pub seated: Option<Browser>,
    body: Body,
    key: Uuid,
}

enum Body {
    Form(Vec<(&'static str, String)>),
    Json(Value),
}

impl Sample {
    /// Sends it, the second time as the first: with the cookies that the browser had then.
    pub async fn send(&self) -> Answer {
        let (mut who, key) = (self.who.clone(), self.key.to_string());
        match &self.body {
            Body::Json(value) => who.post_json_once(&self.path, value, &key).await,
            Body::Form(fields) => {
                let fields: Vec<(&str, &str)> = fields.iter().map(|(name, value)| (*name, value.as_str())).collect();
                who.post_form(&self.path, &[&fields[..], &[("once", key.as_str())]].concat()).await
            }
        }
    }

    /// Something else under the same key: a field more.
    pub async fn send_another(&mut self) -> Answer {
        match &mut self.body {
            Body::Form(fields) => fields.push(("more", "x".into())),
            Body::Json(value) => value["more"] = json!("x"),
        }
        self.send().await
    }

    fn house(&self) -> &House {
        &self.scene.house
    }

    async fn sql(&self, statement: &str) {
        sqlx::query(AssertSqlSafe(statement.to_owned())).execute(&self.house().database.superuser).await.unwrap();
    }

    async fn id(&self, query: &str) -> Uuid {
        sqlx::query_scalar(AssertSqlSafe(query.to_owned())).fetch_one(&self.house().database.superuser).await.unwrap()
    }

    fn typed(&mut self, fields: &[(&'static str, &str)]) {
        self.body = Body::Form(fields.iter().map(|(name, value)| (*name, (*value).to_owned())).collect());
    }

    fn json(&mut self, value: Value) {
        self.body = Body::Json(value);
    }

    /// The client takes the seat, or asks for it where it is taken; it, and its browser.
    pub async fn seat(&mut self) -> (Uuid, Browser) {
        let (seat, token) = live::sit_down(&self.house().app, &self.scene.clinician.subject(), self.scene.session).await.unwrap();
        let mut browser = self.house().visitor();
        browser.cookies.insert(self.house().app.origin.seat_cookie(), token.reveal());
        self.seated.get_or_insert_with(|| browser.clone());
        (seat, browser)
    }

    /// A link of the session's that holds, and its code; earlier ones end.
    pub async fn link(&self) -> (String, String) {
        let (link, code) = live::mint(&self.house().app, &self.scene.clinician.subject(), self.scene.session).await.unwrap();
        (link.split('#').nth(1).unwrap().to_owned(), code)
    }
}

const RECORD: [(&str, &str); 8] = [
    ("name", "Tomas Lindahl"),
    ("addressed_as", "Tomas"),
    ("phone", "+46 8 555 0142"),
    ("contact_name", "Jonas Ekelund"),
    ("contact_phone", "08 555 0177"),
    ("usual_location", "Tallbacken 9"),
    ("seizures", "no"),
    ("eye_condition", "no"),
];
const TARGET: [(&str, &str); 4] = [("label", "the landing stage"), ("prong", "past"), ("sud", "8"), ("voc", "2")];
const PRESET: [(&str, &str); 7] =
    [("name", "Evening"), ("owner", "mine"), ("purpose", "processing"), ("eyes", "on"), ("rate", "0.9"), ("width", "16"), ("cycles", "30")];
const SHEET: [(&str, &str); 9] = [
    ("path", "eight"),
    ("dot", "2.5"),
    ("sweep", "constant"),
    ("colours", "lake"),
    ("timbre", "wood"),
    ("pitch", "400"),
    ("tone_ms", "90"),
    ("level", "60"),
    ("vibration", "felt"),
];
const CLOSING: [(&str, &str); 10] = [
    ("kind", "incomplete"),
    ("target_was", "planned"),
    ("resource", "calm place"),
    ("effect", "settled"),
    ("state", "tired"),
    ("companion", "nobody"),
    ("next_contact", "Friday"),
    ("sud", "4"),
    ("note", "Phase 4 begun."),
    ("version", "1"),
];
const V1: (&str, &str) = ("version", "1");

fn with<'a>(fields: &[(&'a str, &'a str)], more: (&'a str, &'a str)) -> Vec<(&'a str, &'a str)> {
    [fields, &[more]].concat()
}

/// A sample for `route`, in a practice of its own behind a wire.
///
/// # Panics
/// For a route that it does not know: tell it what to send there.
pub async fn sample(route: &Route) -> Sample {
    let scene = Scene::inside(House::build_behind_wire().await, &[Role::Clinician]).await;
    let who = scene.clinician.clone();
    let (client, target, session) = (scene.client, scene.target, scene.session);
    let path = route.path.replace("{client}", &client.to_string()).replace("{target}", &target.to_string());
    let path = path.replace("{session}", &session.to_string());
    let key = new_id(&scene.house.app.world);
    let mut sample = Sample { scene, who, path, seated: None, body: Body::Form(Vec::new()), key };
    match route.path {
        path if askings::ROUTES.iter().any(|start| path.starts_with(start)) => askings::of_asking(&mut sample, path).await,
        path if measures::ROUTES.iter().any(|start| path.starts_with(start)) => measures::of_treatment(&mut sample, path).await,
        path if path.starts_with("/clients") || path.starts_with("/rehearsal") => of_client(&mut sample, path).await,
        path if path.starts_with("/targets") => of_target(&mut sample, path).await,
        path if path.starts_with("/presets") => of_preset(&mut sample, path).await,
        path if people::ROUTES.iter().any(|start| path.starts_with(start)) => people::of_member(&mut sample, path).await,
        path => of_session(&mut sample, path).await,
    }
    assert!(!sample.path.contains('{'), "{}: this test does not know what stands there; tell it", sample.path);
    sample
}

async fn of_client(sample: &mut Sample, route: &str) {
    match route {
        "/rehearsal" => {}
        "/clients/new" => sample.typed(&RECORD),
        "/clients/{client}/edit" => sample.typed(&with(&RECORD, V1)),
        "/clients/{client}/archive" => {
            sample.sql("UPDATE session SET ended_at = opened_at").await;
            sample.typed(&[V1]);
        }
        "/clients/{client}/restore" => {
            sample.sql("UPDATE client SET archived_at = '2026-03-01T00:00:00Z'").await;
            sample.typed(&[V1]);
        }
        "/clients/{client}/comfort" => sample.typed(&with(&SHEET, ("version", "0"))),
        "/clients/{client}/targets/new" => sample.typed(&TARGET),
        // Its one target came into the plan as the second version of it.
        "/clients/{client}/plan/move" => sample.typed(&[("target", "1"), ("to", "1"), ("version", "2")]),
        "/clients/{client}/clusters/new" => sample.typed(&[("name", "On the water")]),
        "/clients/{client}/clusters/{number}/edit" => {
            let wanted = Wanted { belongs: Belongs::New(Private::new("On the water")), ..Wanted::default() };
            targets::arrange(&sample.house().app, &sample.who.subject(), sample.scene.target, &wanted).await.unwrap();
            sample.path = sample.path.replace("{number}", "1");
            sample.typed(&with(&[("name", "Ferries")], V1));
        }
        "/clients/{client}/safety-plan/edit" => sample.typed(&[("signs", "not eating"), ("version", "0")]),
        "/clients/{client}/reach" => sample.typed(&[("phone_use", "call"), ("contact_use", "never"), ("version", "0")]),
        "/clients/{client}/steadying/edit" => sample.typed(&[("signs", "eyes go still"), ("version", "0")]),
        "/clients/{client}/events/new" => sample.typed(&[("kind", "panic"), ("day", "2026-01-05"), ("time", "09:30"), ("done", "called")]),
        "/clients/{client}/resources/new" => sample.typed(&[("cue", "Quay"), ("helped", "yes")]),
        "/clients/{client}/resources/{number}/edit" => {
            let quay = Resource { cue: Private::new("Quay"), ..Resource::default() };
            steadying::add(&sample.house().app, &sample.who.subject(), sample.scene.client, &quay).await.unwrap();
            sample.path = sample.path.replace("{number}", "1");
            sample.typed(&with(&[("cue", "Harbour"), ("helped", "no")], V1));
        }
        "/clients/{client}/sessions" => sample.sql("UPDATE session SET ended_at = opened_at").await,
        _ => unknown(route),
    }
}

async fn of_target(sample: &mut Sample, route: &str) {
    match route {
        "/targets/{target}/edit" => sample.typed(&with(&TARGET, V1)),
        "/targets/{target}/facts" => sample.typed(&[("said", "decided.incomplete"), ("stood", "planned")]),
        "/targets/{target}/assessment" => sample.json(json!({ "picture": "grey water", "sud": "7", "voc": "3", "version": 1 })),
        "/targets/{target}/archive" => {
            sample.sql("UPDATE session SET ended_at = opened_at").await;
            sample.typed(&[V1]);
        }
        "/targets/{target}/restore" => {
            sample.sql("UPDATE target SET archived_at = '2026-03-01T00:00:00Z'").await;
            sample.typed(&[V1]);
        }
        _ => unknown(route),
    }
}

async fn of_preset(sample: &mut Sample, route: &str) {
    let plan = default_plan();
    let preset = Preset {
        name: "Mine".into(),
        purpose: Purpose::Processing,
        channels: plan.channels,
        rate: plan.rate,
        width: plan.width,
        length: plan.length,
    };
    let id = presets::create(&sample.house().app, &sample.who.subject(), Owner::Mine, &preset).await.unwrap();
    sample.path = sample.path.replace("{preset}", &id.to_string());
    match route {
        "/presets/new" => sample.typed(&PRESET),
        "/presets/{preset}/edit" => sample.typed(&with(&PRESET, V1)),
        "/presets/{preset}/archive" => sample.typed(&[V1]),
        "/presets/{preset}/restore" => {
            sample.sql("UPDATE preset SET put_away_at = '2026-03-01T00:00:00Z' WHERE member_id IS NOT NULL").await;
            sample.typed(&[V1]);
        }
        _ => unknown(route),
    }
}

async fn of_session(sample: &mut Sample, route: &str) {
    match route {
        "/sessions/{session}/entries" => {
            let entry = sample.scene.entry(None, None, Moment::BackAtTarget, EntryValue::Sud { value: 5 });
            sample.json(serde_json::to_value(entry).unwrap());
        }
        "/sessions/{session}/close" => sample.typed(&CLOSING),
        "/sessions/{session}/target" => {
            let other = crate::scene::target(sample.house(), &sample.who, sample.scene.client).await;
            let from = sample.scene.target;
            sample.json(json!({ "target": other, "from": from }));
        }
        "/sessions/{session}/closing" => sample.json(closing_json()),
        "/sessions/{session}/closing/draft" => sample.json(json!({ "form": closing_json(), "draft": 0 })),
        "/sessions/{session}/note" => sample.typed(&[("note", "A few words."), V1]),
        "/sessions/{session}/link" => sample.json(json!({})),
        "/sessions/{session}/code" => {
            sample.link().await;
            sample.json(json!({}));
        }
        "/sessions/{session}/check" => {
            sample.sql("INSERT INTO after_check (session_id, client_id, member_id, reason, due_from, due_until) SELECT id, client_id, member_id, 'incomplete', now(), now() + interval '1 day' FROM session").await;
            sample.typed(&[("outcome", "well")]);
        }
        "/sessions/{session}/admit" => {
            let (seat, _) = sample.seat().await;
            sample.json(json!({ "location": "Room 4", "call_back": "112", "private": true, "seat": seat }));
        }
        "/sessions/{session}/seat" => {
            sample.seat().await;
            let (asking, _) = sample.seat().await;
            sample.json(json!({ "decision": "move", "seat": asking }));
        }
        "/join" => {
            let (link, code) = sample.link().await;
            (sample.who, sample.key) = (sample.house().visitor(), sample.key);
            sample.json(json!({ "link": link, "code": code, "once": sample.key }));
        }
        "/stage/leave" => sample.who = sample.seat().await.1,
        "/stage/evidence" => {
            let set = sample.scene.set(1, None, Ending::Done).await;
            sample.who = sample.seat().await.1;
            let fact = json!({ "set": set, "seq": 0, "at": 1000.0, "fact": { "kind": "second", "phase": 1.0, "frames": 60, "longest_gap": 17.0 } });
            sample.json(json!({ "facts": [fact] }));
        }
        _ => unknown(route),
    }
}

/// The closing as the desk sends it.
fn closing_json() -> Value {
    CLOSING.iter().map(|(name, value)| ((*name).to_owned(), Value::from(*value))).collect::<serde_json::Map<_, _>>().into()
}

fn unknown(route: &str) -> ! {
    panic!("{route}: this test does not know what to send there; tell it")
}
