//! The plan of treatment: the order in which a client's targets are to be worked on, what belongs together, how old the client was, and
//! what came up from what. In clear, for those who treat the client alone; names of clusters are sealed.

mod cluster;
mod cluster_form;
mod keep;
mod moves;
mod others;
mod page;
mod picture;
mod queries;

use axum::routing::{get, post};
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use super::{Prong, Target};
use crate::base::named::named;
use crate::clients;
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{Field, Opened};
use crate::store::subject::Tx;

pub use keep::{Belongs, Wanted};
pub(super) use keep::{begin, keep};
pub(super) use others::{Other, others};

/// What the beliefs of a cluster turn on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Theme {
    /// Fault, shame, worth.
    Responsibility,
    /// Danger, trust, the body.
    Safety,
    /// Power, having a say.
    Choice,
}

named!(Theme);

impl Theme {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Responsibility => "Responsibility",
            Self::Safety => "Safety",
            Self::Choice => "Choice",
        }
    }
}

/// Where a target stands in the plan.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Planned {
    /// In the order of the work within the client, from 1; there are gaps.
    pub place: i32,
    /// How old the client was, whole years.
    pub age: Option<i16>,
    /// In which year it was.
    pub year: Option<i16>,
    /// The cluster it belongs to.
    pub cluster: Option<Uuid>,
    /// The target it came up from.
    pub parent: Option<Uuid>,
}

impl Planned {
    /// Such as "age 9, 1998"; empty where neither is known.
    #[must_use]
    pub fn when(&self) -> String {
        let age = self.age.map(|age| format!("age {age}"));
        let year = self.year.map(|year| year.to_string());
        [age, year].into_iter().flatten().collect::<Vec<_>>().join(", ")
    }
}

/// Targets that share something.
#[derive(Clone, Debug)]
pub struct Cluster {
    /// Its id.
    pub id: Uuid,
    /// Within its client, from 1.
    pub number: i32,
    /// Its name; at most 60 characters, never empty.
    pub name: Opened,
    /// What its beliefs turn on, if that was said.
    pub theme: Option<Theme>,
    /// The earliest memory in it.
    pub earliest: Option<Uuid>,
    /// The worst.
    pub worst: Option<Uuid>,
    /// Edits are saved against it.
    pub version: i32,
}

impl Cluster {
    /// What `target` is marked as in it; empty where it is not.
    #[must_use]
    pub fn marked(&self, target: Uuid) -> &'static str {
        match (self.earliest == Some(target), self.worst == Some(target)) {
            (true, true) => "earliest and worst",
            (true, false) => "earliest",
            (false, true) => "worst",
            (false, false) => "",
        }
    }
}

/// The clusters of a client by number.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client.
pub async fn clusters(tx: &mut Tx, app: &App, client: Uuid) -> Result<Vec<Cluster>, Error> {
    let key = clients::key(tx, app, client).await?;
    queries::clusters(tx, client).await?.into_iter().map(|row| row.open(&key)).collect()
}

/// In the order of the work.
fn in_order(mut targets: Vec<Target>) -> Vec<Target> {
    targets.sort_by_key(|target| (target.planned.place, target.number));
    targets
}

/// What a name is sealed as.
const NAME: Field = Field::ClusterName;

/// Adds the plan's routes.
pub(super) fn routes(routes: Routes) -> Routes {
    routes
        .get("/clients/{client}/plan", Rule::Care, get(page::show))
        .post("/clients/{client}/plan/move", Rule::Care, post(moves::post))
        .get("/clients/{client}/clusters/new", Rule::Care, get(cluster::new_form))
        .post("/clients/{client}/clusters/new", Rule::Care, post(cluster::save_new))
        .get("/clients/{client}/clusters/{number}/edit", Rule::Care, get(cluster::edit_form))
        .post("/clients/{client}/clusters/{number}/edit", Rule::Care, post(cluster::save_edit))
}
