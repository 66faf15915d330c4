//! A clinician with a client, a target and a session, made through the portal's own functions; and
//! sets as a room would have recorded them.

use chrono::Duration;
use leeward::base::ids::new_id;
use leeward::clients::{self, NewClient};
use leeward::live::{PastOrder, PastSet, keep_past};
use leeward::platform::Role;
use leeward::sessions::{self, NewSession};
use leeward::store::seal::Private;
use leeward::targets::{self, NewTarget, Prong};
use leeward_core::room::Cause;
use leeward_core::safety::default_plan;
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Ending, Entry, EntryValue, Evidence, Fact, Moment, Plan, Timeline};
use leeward_tests::{Browser, House};
use uuid::Uuid;

/// Words that only those who treat this client may ever see on a page.
pub const NAME: &str = "Wilhelmina Quillfeather";
pub const LABEL: &str = "the ferry in fog";
pub const PICTURE: &str = "grey water over the rail";

/// One clinician at work.
pub struct Scene {
    pub house: House,
    pub clinician: Browser,
    pub client: Uuid,
    pub target: Uuid,
    pub session: Uuid,
}

impl Scene {
    pub async fn build() -> Self {
        Self::with(&[Role::Clinician]).await
    }

    pub async fn with(roles: &[Role]) -> Self {
        Self::inside(House::build().await, roles).await
    }

    /// In a house that is there.
    pub async fn inside(house: House, roles: &[Role]) -> Self {
        let clinician = house.member(roles).await;
        let mut new = NewClient::default();
        new.details.name = Private::new(NAME);
        let client = clients::create(&house.app, &clinician.subject(), new).await.unwrap();
        let target = target(&house, &clinician, client).await;
        house.clock.advance(Duration::minutes(1));
        let new = NewSession { client, target: Some(target) };
        let session = sessions::open(&house.app, &clinician.subject(), new).await.unwrap();
        Self { house, clinician, client, target, session }
    }

    /// Sends an entry a second later than the one before.
    pub async fn enter(&mut self, entry: &Entry) -> leeward_tests::Answer {
        self.house.clock.advance(Duration::seconds(1));
        self.clinician.post_json(&format!("/sessions/{}/entries", self.session), entry).await
    }

    /// An entry that must be kept; its id.
    pub async fn kept(&mut self, set: Option<Uuid>, replaces: Option<&str>, moment: Moment, value: EntryValue) -> String {
        let entry = self.entry(set, replaces, moment, value);
        let answer = self.enter(&entry).await;
        assert_eq!(answer.status, 200, "{}", answer.body);
        entry.id
    }

    pub fn entry(&self, set: Option<Uuid>, replaces: Option<&str>, moment: Moment, value: EntryValue) -> Entry {
        Entry {
            id: new_id(&self.house.app.world).to_string(),
            set: set.map(|id| id.to_string()),
            replaces: replaces.map(str::to_owned),
            moment,
            segment: None,
            from_client: false,
            value,
        }
    }

    /// A set as the room records it: the rate raised on the way, shown for `cycles`, ended as said.
    /// Nothing is heard from the screen when `cycles` is `None`.
    pub async fn set(&self, number: u32, cycles: Option<f64>, ending: Ending) -> Uuid {
        let id = new_id(&self.house.app.world);
        let plan = default_plan();
        let order = |cause, at, rate| PastOrder { cause, at, plan: Plan { rate, ..plan }, timeline: Timeline::default() };
        let set = PastSet {
            id,
            number,
            plan,
            orders: vec![order(Cause::Started, 5_000.0, 1.0), order(Cause::Rate, 11_500.0, 1.2)],
            evidence: cycles.map(|cycles| evidence(id, cycles, ending)).unwrap_or_default(),
            ending,
            ended_at: 26_500.0,
        };
        let began = self.house.app.world.now();
        keep_past(&self.house.app, &self.clinician.subject(), self.session, began, &[set]).await.unwrap();
        self.house.clock.advance(Duration::seconds(30));
        id
    }
}

/// 2 s in which 60 and then 52 frames were drawn, the longest 84 ms apart; at rest 20.5 s after the first motion.
fn evidence(set: Uuid, cycles: f64, ending: Ending) -> Vec<Evidence> {
    let fact = |seq, at, fact| Evidence { set: set.to_string(), seq, at, fact };
    vec![
        fact(0, 6_000.0, Fact::Shown { width: 18.0 }),
        fact(1, 7_000.0, Fact::Second { phase: 1.0, frames: 60, longest_gap: 17.0 }),
        fact(2, 8_000.0, Fact::Second { phase: 2.0, frames: 52, longest_gap: 84.0 }),
        fact(3, 26_500.0, Fact::Rested { phase: cycles, ending }),
    ]
}

pub async fn target(house: &House, clinician: &Browser, client: Uuid) -> Uuid {
    let mut words = targets::Words::default();
    (words.label, words.picture) = (Private::new(LABEL), Private::new(PICTURE));
    let (sud, voc) = (Some(Sud::new(8).unwrap()), Some(Voc::new(2).unwrap()));
    let new = NewTarget { client, prong: Prong::Past, words, sud, voc };
    targets::create(&house.app, &clinician.subject(), new).await.unwrap()
}

/// The rows of the table with this in its caption: the text of their cells, divided by bars.
pub fn rows(page: &str, caption: &str) -> Vec<String> {
    let table = &page[page.find(caption).expect("the table is there")..];
    let body = &table[table.find("<tbody>").unwrap() + 7..table.find("</tbody>").unwrap()];
    body.split("</tr>").filter(|row| row.contains("<td")).map(|row| cells(row).join("|")).collect()
}

fn cells(row: &str) -> Vec<String> {
    let row = row.replace("</th>", "</td>");
    row.split("</td>").filter_map(|cell| cell.find("<t").map(|at| text(&cell[at..]))).collect()
}

/// The text between the tags.
fn text(html: &str) -> String {
    html.split('<').filter_map(|part| part.split_once('>')).map(|(_, text)| text).collect::<String>().trim().to_owned()
}
