//! An invented client in a session with an invented clinician, up to where a test begins.

use leeward::clients::{Asked, Cautions, Details, NewClient};
use leeward::platform::Role;
use leeward::sessions::{self, NewSession};
use leeward::store::seal::Private;
use leeward_core::wire::Answer::{Consents, Fit, Nobody, NothingNew, Reachable, WayAgreed};
use leeward_core::wire::{DeskView, Entry, EntryValue, Moment, Order, RoomState, SeatState};
use leeward_tests::{Answer, Browser, House};
use serde_json::json;
use uuid::Uuid;

use crate::page::{Desk, Stage};

pub struct Scene {
    pub house: House,
    pub clinician: Browser,
    pub client: Browser,
    pub client_id: Uuid,
    pub session: Uuid,
}

impl Scene {
    /// A session that was opened, and nobody in it.
    pub async fn new() -> Self {
        Self::with(Cautions { seizures: Asked::No, eye_condition: Asked::No }).await
    }

    pub async fn with(cautions: Cautions) -> Self {
        let house = House::build().await;
        Self::inside(house, cautions).await
    }

    pub async fn inside(house: House, cautions: Cautions) -> Self {
        let clinician = house.member(&[Role::Clinician]).await;
        let client = house.visitor();
        let details = Details {
            name: Private::new("Ilse Brandvold"),
            contact_name: Private::new("Per Brandvold"),
            contact_phone: Private::new("+47 22 00 00 01"),
            phone: Private::new("+47 22 00 00 00"),
            ..Details::default()
        };
        let new = NewClient { details, cautions };
        let client_id = leeward::clients::create(&house.app, &clinician.subject(), new).await.unwrap();
        let session = sessions::open(&house.app, &clinician.subject(), NewSession { client: client_id, target: None }).await.unwrap();
        Self { house, clinician, client, client_id, session }
    }

    pub fn path(&self, last: &str) -> String {
        format!("/sessions/{}/{last}", self.session)
    }

    /// A new link's token, and its code.
    pub async fn link(&mut self) -> (String, String) {
        let answer = self.clinician.post_json(&self.path("link"), &json!({})).await;
        assert_eq!(answer.status, 200, "{}", answer.body);
        let (link, code) = (answer.json()["link"].as_str().unwrap().to_owned(), answer.json()["code"].as_str().unwrap().to_owned());
        let token = link.strip_prefix(&format!("{}/j#", self.house.origin)).expect("the token stands in the fragment").to_owned();
        (token, code)
    }

    pub async fn new_code(&mut self) -> String {
        let answer = self.clinician.post_json(&self.path("code"), &json!({})).await;
        assert_eq!(answer.status, 200, "{}", answer.body);
        answer.json()["code"].as_str().unwrap().to_owned()
    }

    /// The client's own browser joins.
    pub async fn join(&mut self) {
        let (link, code) = self.link().await;
        let answer = join(&mut self.client, &link, &code).await;
        assert_eq!((answer.status, answer.body.as_str()), (200, r#"{"seat":"taken"}"#));
    }

    /// Lets the client in, and goes through the opening with nothing against the hour.
    pub async fn admit(&mut self) {
        self.admit_only().await;
        self.open().await;
    }

    pub async fn admit_only(&mut self) {
        let seat = self.seat().await;
        let body = json!({ "location": "12 Fjordgata, Tromsø", "call_back": "+47 22 00 00 00", "private": true, "seat": seat });
        let answer = self.clinician.post_json(&self.path("admit"), &body).await;
        assert_eq!(answer.status, 204, "{}", answer.body);
    }

    /// The rest of the opening, with nothing against the hour.
    pub async fn open(&mut self) {
        for answer in [Nobody, Reachable, NothingNew, Fit, Consents, WayAgreed] {
            self.answers(answer).await;
        }
    }

    /// One matter of the opening is answered.
    pub async fn answers(&mut self, answer: leeward_core::wire::Answer) {
        self.enter(EntryValue::Answered { answer, again: false }).await;
    }

    /// Something is said in the opening; it must be kept.
    pub async fn enter(&mut self, value: EntryValue) {
        let id = leeward::base::ids::new_id(&self.house.app.world).to_string();
        let entry = Entry { id, set: None, replaces: None, moment: Moment::Opening, segment: None, from_client: false, value };
        let answer = self.clinician.post_json(&self.path("entries"), &entry).await;
        assert_eq!(answer.status, 200, "{}", answer.body);
    }

    /// The device that has the seat.
    pub async fn seat(&self) -> Uuid {
        self.device("taken_at IS NOT NULL").await
    }

    /// The device that asks for the seat.
    pub async fn asking(&self) -> Uuid {
        self.device("taken_at IS NULL").await
    }

    async fn device(&self, which: &str) -> Uuid {
        let query = format!("SELECT id FROM access.seat WHERE session_id = $1 AND closed_at IS NULL AND {which}");
        sqlx::query_scalar(sqlx::AssertSqlSafe(query)).bind(self.session).fetch_one(&self.house.database.superuser).await.unwrap()
    }

    pub async fn desk(&self) -> Desk {
        Desk::open(&self.clinician, &self.house.origin, self.session).await
    }

    /// The desk's page, told to connect again.
    pub async fn desk_again(&self) -> (Desk, DeskView) {
        Desk::again(&self.clinician, &self.house.origin, self.session).await
    }

    pub async fn stage(&self) -> Stage {
        Stage::open(&self.client, &self.house.origin).await
    }

    /// Joined, admitted, in sight: the next start works. Returns the epoch too.
    pub async fn ready(&mut self) -> (Desk, Stage, u32) {
        self.join().await;
        self.admit().await;
        let stage = self.stage().await;
        let mut desk = self.desk().await;
        let epoch =
            desk.view("a ready client", |view| view.stage_here && view.device.is_some() && view.seat == SeatState::Admitted).await.epoch;
        assert_eq!(desk.order(epoch, Order::Sight).await, None);
        (desk, stage, epoch)
    }

    /// Starts a set and waits until both ends have it; returns its id.
    pub async fn start(desk: &mut Desk, stage: &mut Stage, epoch: u32) -> String {
        desk.until_ready().await;
        desk.order_only(epoch, Order::Start);
        let running = desk.view("a running set", |view| view.state == RoomState::Running).await;
        let set = running.set.expect("a running set is in the view");
        let shown = stage.view("the same set", |view| view.set.as_ref().is_some_and(|own| own.id == set.id)).await;
        assert_eq!(shown.set.unwrap().timeline, set.timeline, "both ends have the same timeline");
        set.id
    }
}

pub async fn join(browser: &mut Browser, link: &str, code: &str) -> Answer {
    let once = leeward::base::ids::new_id(&(std::sync::Arc::new(leeward::base::clock::Machine) as leeward::base::clock::World));
    browser.post_json("/join", &json!({ "link": link, "code": code, "once": once })).await
}
