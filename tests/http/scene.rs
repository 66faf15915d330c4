//! A clinician with a client, a target and a session, made through the portal's own functions; and
//! sets as a room would have recorded them.

use chrono::Duration;
use leeward::clients::{self, NewClient};
use leeward::ids::new_id;
use leeward::seal::Private;
use leeward::sessions::{self, NewSession};
use leeward::signin::Role;
use leeward::targets::{self, NewTarget, Prong};
use leeward_core::safety::default_plan;
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Entry, EntryValue, Moment};
use leeward_tests::{Browser, House};
use serde_json::json;
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
        let house = House::build().await;
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
            value,
        }
    }

    /// A set as the room records it: the rate raised on the way, shown for `cycles`, ended as said.
    /// Nothing is heard from the screen when `cycles` is `None`.
    pub async fn set(&self, number: i32, cycles: Option<f64>, ending: &str) -> Uuid {
        let (db, now) = (&self.house.database.superuser, self.house.app.world.now());
        let id = new_id(&self.house.app.world);
        let first = default_plan();
        let faster = leeward_core::wire::Plan { rate: 1.2, ..first };
        sqlx::query(
            "INSERT INTO stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at) VALUES ($1, $2, $3, $4, $5, 1, $6, $7)",
        )
        .bind(id)
        .bind(self.session)
        .bind(self.client)
        .bind(self.target)
        .bind(number)
        .bind(json!(first))
        .bind(now)
        .execute(db)
        .await
        .unwrap();
        for (seq, cause, at, plan) in [(0, "started", 5_000.0, first), (1, "rate", 11_500.0, faster)] {
            sqlx::query(
                "INSERT INTO set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at)
                 VALUES ($1, $2, $3, $4, $5, $6, $7, '{\"segments\":[]}', $8)",
            )
            .bind(id)
            .bind(seq)
            .bind(self.session)
            .bind(self.client)
            .bind(cause)
            .bind(at)
            .bind(json!(plan))
            .bind(now)
            .execute(db)
            .await
            .unwrap();
        }
        sqlx::query(
            "INSERT INTO set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at) VALUES ($1, $2, $3, $4, 26000, $5)",
        )
        .bind(id)
        .bind(self.session)
        .bind(self.client)
        .bind(ending)
        .bind(now)
        .execute(db)
        .await
        .unwrap();
        if let Some(cycles) = cycles {
            self.evidence(id, cycles, ending).await;
        }
        id
    }

    async fn evidence(&self, set: Uuid, cycles: f64, ending: &str) {
        let facts = [
            (0, "shown", 6_000.0, None, Some(18.0), None, None, None),
            (1, "second", 7_000.0, Some(1.0), None, Some(60), Some(17.0), None),
            (2, "second", 8_000.0, Some(2.0), None, Some(52), Some(84.0), None),
            (3, "rested", 26_500.0, Some(cycles), None, None, None, Some(ending)),
        ];
        for (seq, kind, at, phase, width, frames, gap, ending) in facts {
            sqlx::query(
                "INSERT INTO set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at)
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12)",
            )
            .bind(set)
            .bind(seq)
            .bind(self.session)
            .bind(self.client)
            .bind(kind)
            .bind(at)
            .bind(phase)
            .bind(width)
            .bind(frames)
            .bind(gap)
            .bind(ending)
            .bind(self.house.app.world.now())
            .execute(&self.house.database.superuser)
            .await
            .unwrap();
        }
    }
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
