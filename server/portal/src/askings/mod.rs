//! Asking a client for forms: what is due and when, one asking at a time, its link, and the client's own pages behind that link. A client between
//! sessions acts on an errand (`platform/errand.rs`): it reaches what its asking needs, and nothing else of the record.

mod ask;
mod due;
mod fill;
mod forms;
mod hand_in;
mod link;
mod open;
mod overview;
mod queries;
mod queries_errand;
mod rules;
mod schedule;

use axum::routing::{get, post};
use chrono::{DateTime, NaiveDate, Utc};
use leeward_core::measures::Measure;
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::named::named;
use crate::measures::Occasion;
use crate::platform::when::When;
use crate::platform::{Repeats, Routes, Rule};
use crate::store::database::as_owner;
use crate::store::error::Error;
use crate::store::seal::{Opened, Private};

pub use ask::{New, make};
pub use due::{Due, due, due_of_mine};
pub use forms::{Draft, Given};
pub use hand_in::{answer, decline};
pub use link::{mint, token};
pub use schedule::{Schedule, set};

/// The version of what is sealed once and never changed.
const ONLY_VERSION: i32 = 1;

/// What became of an asking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Closed {
    /// Every form of it was handed in.
    Answered,
    /// The client would rather not.
    Declined,
    /// The clinician took it back, or nobody answered in time.
    Withdrawn,
}

named!(Closed);

/// One asking.
pub struct Asking {
    /// Its id.
    pub id: Uuid,
    /// Within the client, from 1.
    pub number: i32,
    /// When in the treatment.
    pub occasion: Occasion,
    /// The forms, in their order.
    pub measures: Vec<Measure>,
    /// How many of them were handed in.
    pub handed_in: usize,
    /// When it was made, and by whom.
    pub asked_at: DateTime<Utc>,
    /// Who made it.
    pub asked_by: String,
    /// From when on it can be answered.
    pub from_at: DateTime<Utc>,
    /// The day until which an answer is hoped for.
    pub due_on: NaiveDate,
    /// When its link ends.
    pub until_at: DateTime<Utc>,
    /// What a form about one event asks about.
    pub event: Opened,
    /// How many links were made: none but the last one holds.
    pub links: i32,
    /// The last one holds: whoever made it treats the client still.
    pub link_holds: bool,
    /// What became of it, and when.
    pub closed: Option<(Closed, DateTime<Utc>)>,
}

impl Asking {
    /// Whether its link can still be used.
    #[must_use]
    pub fn holds(&self, now: DateTime<Utc>) -> bool {
        self.closed.is_none() && now < self.until_at
    }

    /// Where it stands, in words.
    #[must_use]
    pub fn state(&self, when: When, now: DateTime<Utc>) -> String {
        let today = when.date(&now);
        let some = if self.handed_in > 0 && self.handed_in < self.measures.len() {
            format!("; {} of {} forms handed in", self.handed_in, self.measures.len())
        } else {
            String::new()
        };
        let said = match self.closed {
            Some((Closed::Answered, at)) => {
                let late = (when.date(&at) - self.due_on).num_days();
                let late = if late > 0 { format!(", {late} {} late", if late == 1 { "day" } else { "days" }) } else { String::new() };
                format!("answered {}{late}", when.day(&at))
            }
            Some((Closed::Declined, at)) => format!("declined by the client {}", when.day(&at)),
            Some((Closed::Withdrawn, at)) if at < self.until_at => format!("taken back {}", when.day(&at)),
            Some((Closed::Withdrawn, _)) => format!("not answered; its link ended {}", when.day(&self.until_at)),
            None if now >= self.until_at => format!("not answered; its link ended {}", when.day(&self.until_at)),
            None if now < self.from_at => format!("opens {}", when.moment(&self.from_at)),
            None if today > self.due_on => format!("overdue: it was hoped for until {}", when.of_day(self.due_on)),
            None => format!("open; hoped for until {}", when.of_day(self.due_on)),
        };
        said + &some
    }

    /// The names of its forms.
    #[must_use]
    pub fn names(&self) -> String {
        names(&self.measures)
    }
}

/// Names of forms in a row.
pub(crate) fn names(measures: &[Measure]) -> String {
    measures.iter().map(|measure| measure.form().name).collect::<Vec<_>>().join(", ")
}

/// What a form about one event asks about, where none of them does: nothing.
fn event_for(measures: &[Measure], event: Private) -> Private {
    if measures.iter().any(|measure| crate::measures::has_event(*measure)) { event } else { Private::default() }
}

/// Makes every schedule anew whose next day was kept otherwise than its record says, as the database's owner: how many there are, and of which
/// clients they differed.
///
/// # Errors
/// [`Error::Database`], also when `url` is not the owner's: nothing was made anew.
pub async fn rebuild(url: &str) -> Result<(i64, Vec<Uuid>), Error> {
    as_owner(url, async |db| queries::refold(db).await).await
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    let link = Repeats::ByNature("the same link opens the same errand");
    routes
        .get("/clients/{client}/askings", Rule::Care, get(overview::show))
        .get("/clients/{client}/askings/new", Rule::Care, get(ask::show))
        .post("/clients/{client}/askings/new", Rule::Care, post(ask::save))
        .get("/clients/{client}/askings/schedule", Rule::Care, get(schedule::show))
        .post("/clients/{client}/askings/schedule", Rule::Care, post(schedule::save))
        .post("/clients/{client}/askings/link", Rule::Care, post(link::make))
        .post("/clients/{client}/askings/withdraw", Rule::Care, post(overview::withdraw))
        .get("/q", Rule::Anybody, get(open::landing))
        .post_repeated("/q", Rule::Anybody, link, post(open::open))
        .get("/q/forms", Rule::Errand, get(fill::show))
        .get("/q/thanks", Rule::Errand, get(fill::thanks))
        .post_repeated("/q/draft", Rule::Errand, Repeats::ByNature("it names the version that it follows"), post(hand_in::keep_draft))
        .post_repeated("/q/forms", Rule::Errand, Repeats::ByNature("a form of an asking is handed in once"), post(fill::send))
        .post_repeated("/q/decline", Rule::Errand, Repeats::ByNature("an asking is declined once"), post(fill::decline))
}
