//! What a target's form says of the plan: read against what the client has, and kept.

use uuid::Uuid;

use super::{NAME, Planned, queries};
use crate::base::ids::new_id;
use crate::clients;
use crate::platform::App;
use crate::platform::forms::Problems;
use crate::store::error::Error;
use crate::store::seal::Private;
use crate::store::subject::Tx;

/// The cluster that a form names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Belongs {
    /// To none.
    #[default]
    Alone,
    /// To the one of this number.
    To(i32),
    /// To a new one of this name.
    New(Private),
}

/// The plan's part of a form that can be read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wanted {
    /// How old the client was, whole years from 0 to 120.
    pub age: Option<i16>,
    /// In which year it was, 1900 to 2200.
    pub year: Option<i16>,
    /// Its cluster.
    pub belongs: Belongs,
    /// The number of the target it came up from.
    pub parent: Option<i32>,
}

/// Puts a new target at the end of its client's plan, whose row is locked.
pub(in crate::targets) async fn begin(tx: &mut Tx, client: Uuid, target: Uuid) -> Result<(), Error> {
    queries::begin(tx, client, target).await?;
    queries::changed(tx, client).await
}

/// Keeps the plan's part of `target`'s form. The inner `Err`: what is wrong with the form.
pub(in crate::targets) async fn keep(
    tx: &mut Tx,
    app: &App,
    client: Uuid,
    target: Uuid,
    wanted: &Wanted,
) -> Result<Result<(), Problems>, Error> {
    // Before anything is read: two forms at once would each see a plan without the other's, and make a ring of two.
    queries::lock(tx, client).await?.ok_or(Error::NotFound)?;
    let before = queries::planned(tx, target).await?.ok_or(Error::Inconsistent("target_plan"))?;
    let mut problems = Problems::default();
    let parent = parent(tx, client, target, wanted.parent, &mut problems).await?;
    let cluster = cluster(tx, client, &wanted.belongs, &mut problems).await?;
    if !problems.none() {
        return Ok(Err(problems));
    }
    let cluster = match &wanted.belongs {
        Belongs::New(name) => Some(new_cluster(tx, app, client, name).await?),
        Belongs::Alone | Belongs::To(_) => cluster,
    };
    let now = Planned { age: wanted.age, year: wanted.year, cluster, parent, ..before };
    if now != before {
        if now.cluster != before.cluster {
            queries::unmark(tx, target).await?;
        }
        queries::keep(tx, target, now).await?;
        queries::changed(tx, client).await?;
    }
    Ok(Ok(()))
}

async fn new_cluster(tx: &mut Tx, app: &App, client: Uuid, name: &Private) -> Result<Uuid, Error> {
    let (id, key) = (new_id(&app.world), clients::key(tx, app, client).await?);
    queries::insert_cluster(tx, id, client, &key.row(id, 1).seal(&app.world, NAME, name)?, None).await?;
    Ok(id)
}

async fn cluster(tx: &mut Tx, client: Uuid, belongs: &Belongs, problems: &mut Problems) -> Result<Option<Uuid>, Error> {
    let Belongs::To(number) = belongs else { return Ok(None) };
    let found = queries::cluster(tx, client, *number).await?.map(|row| row.id);
    if found.is_none() {
        problems.add("cluster", "Choose one of these.");
    }
    Ok(found)
}

/// The target of that number, unless it came up from this one.
async fn parent(tx: &mut Tx, client: Uuid, target: Uuid, number: Option<i32>, problems: &mut Problems) -> Result<Option<Uuid>, Error> {
    let Some(number) = number else { return Ok(None) };
    let places = queries::places(tx, client).await?;
    let Some(parent) = places.iter().find(|row| row.number == number && row.target != target).map(|row| row.target) else {
        problems.add("parent", "Choose one of these.");
        return Ok(None);
    };
    let parents: Vec<(Uuid, Uuid)> = places.iter().filter_map(|row| Some((row.target, row.parent?))).collect();
    if descends(parent, target, &parents) {
        problems.add("parent", "That target came up from this one. Choose another, or change that one first.");
    }
    Ok(Some(parent))
}

/// Whether `target` is `ancestor`, or came up from it by way of others.
fn descends(target: Uuid, ancestor: Uuid, parents: &[(Uuid, Uuid)]) -> bool {
    let up = |one: &Uuid| parents.iter().find(|(child, _)| child == one).map(|(_, parent)| *parent);
    // No way up is longer than there are parents.
    std::iter::successors(Some(target), up).take(parents.len() + 1).any(|one| one == ancestor)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_target_never_comes_up_from_itself() {
        let id = Uuid::from_u128;
        let parents = [(id(2), id(1)), (id(3), id(2)), (id(5), id(4))];
        for (target, ancestor, so) in [(1, 1, true), (3, 1, true), (1, 3, false), (5, 1, false), (2, 3, false)] {
            assert_eq!(descends(id(target), id(ancestor), &parents), so, "{target} from {ancestor}");
        }
        assert!(!descends(id(1), id(9), &[(id(1), id(2)), (id(2), id(1))]), "a ring that is there already ends the search");
    }
}
