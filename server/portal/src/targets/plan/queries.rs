//! All SQL about plans.

use uuid::Uuid;

use super::{Cluster, NAME, Planned, Theme};
use crate::store::error::Error;
use crate::store::seal::ClientKey;
use crate::store::subject::Tx;

/// The version of a client's plan; locks it until the end of the transaction.
pub(super) async fn lock(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<i32>> {
    sqlx::query_scalar!("SELECT plan_version FROM client WHERE id = $1 FOR NO KEY UPDATE", client).fetch_optional(&mut **tx).await
}

/// The version of a client's plan.
pub(super) async fn version(tx: &mut Tx, client: Uuid) -> sqlx::Result<Option<i32>> {
    sqlx::query_scalar!("SELECT plan_version FROM client WHERE id = $1", client).fetch_optional(&mut **tx).await
}

/// Whoever has the plan open has an old one now.
pub(super) async fn changed(tx: &mut Tx, client: Uuid) -> Result<(), Error> {
    let done = sqlx::query!("UPDATE client SET plan_version = plan_version + 1 WHERE id = $1", client).execute(&mut **tx).await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("client.plan_version")) }
}

/// A target in the order of the work, and what it came up from.
pub(super) struct PlaceRow {
    pub(super) target: Uuid,
    pub(super) number: i32,
    pub(super) parent: Option<Uuid>,
    pub(super) archived: bool,
}

/// Every target of a client in the order of the work.
pub(super) async fn places(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<PlaceRow>> {
    sqlx::query_as!(
        PlaceRow,
        r#"SELECT p.target_id AS target, t.number, p.parent_id AS parent, t.archived_at IS NOT NULL AS "archived!"
           FROM target_plan p JOIN target t ON t.id = p.target_id WHERE p.client_id = $1 ORDER BY p.place, t.number"#,
        client
    )
    .fetch_all(&mut **tx)
    .await
}

/// Puts a new target at the end.
pub(super) async fn begin(tx: &mut Tx, client: Uuid, target: Uuid) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO target_plan (target_id, client_id, place)
         VALUES ($2, $1, (SELECT coalesce(max(place), 0) + 1 FROM target_plan WHERE client_id = $1))",
        client,
        target
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

pub(super) async fn planned(tx: &mut Tx, target: Uuid) -> sqlx::Result<Option<Planned>> {
    sqlx::query_as!(
        Planned,
        "SELECT place, age, year, cluster_id AS cluster, parent_id AS parent FROM target_plan WHERE target_id = $1",
        target
    )
    .fetch_optional(&mut **tx)
    .await
}

/// Keeps all but the place.
pub(super) async fn keep(tx: &mut Tx, target: Uuid, planned: Planned) -> Result<(), Error> {
    let Planned { age, year, cluster, parent, .. } = planned;
    let done = sqlx::query!(
        "UPDATE target_plan SET age = $2, year = $3, cluster_id = $4, parent_id = $5 WHERE target_id = $1",
        target,
        age,
        year,
        cluster,
        parent
    )
    .execute(&mut **tx)
    .await?;
    if done.rows_affected() == 1 { Ok(()) } else { Err(Error::NothingWritten("target_plan")) }
}

/// Keeps the order of the work: every target of the client, from 1.
pub(super) async fn order(tx: &mut Tx, client: Uuid, targets: &[Uuid]) -> Result<(), Error> {
    let done = sqlx::query!(
        "UPDATE target_plan p SET place = n.place::integer FROM unnest($2::uuid[]) WITH ORDINALITY AS n (target, place)
         WHERE p.target_id = n.target AND p.client_id = $1",
        client,
        targets
    )
    .execute(&mut **tx)
    .await?;
    if usize::try_from(done.rows_affected()) == Ok(targets.len()) { Ok(()) } else { Err(Error::NothingWritten("target_plan.place")) }
}

pub(super) struct ClusterRow {
    pub(super) id: Uuid,
    number: i32,
    name: Vec<u8>,
    theme: Option<String>,
    earliest_id: Option<Uuid>,
    worst_id: Option<Uuid>,
    version: i32,
}

impl ClusterRow {
    pub(super) fn open(self, key: &ClientKey) -> Result<Cluster, Error> {
        let theme = self.theme.map(|theme| Theme::parse(&theme).ok_or(Error::Inconsistent("cluster.theme"))).transpose()?;
        Ok(Cluster {
            id: self.id,
            number: self.number,
            name: key.row(self.id, self.version).open(NAME, &self.name),
            theme,
            earliest: self.earliest_id,
            worst: self.worst_id,
            version: self.version,
        })
    }
}

pub(super) async fn clusters(tx: &mut Tx, client: Uuid) -> sqlx::Result<Vec<ClusterRow>> {
    sqlx::query_as!(
        ClusterRow,
        "SELECT id, number, name, theme, earliest_id, worst_id, version FROM cluster WHERE client_id = $1 ORDER BY number",
        client
    )
    .fetch_all(&mut **tx)
    .await
}

pub(super) async fn cluster(tx: &mut Tx, client: Uuid, number: i32) -> sqlx::Result<Option<ClusterRow>> {
    sqlx::query_as!(
        ClusterRow,
        "SELECT id, number, name, theme, earliest_id, worst_id, version FROM cluster WHERE client_id = $1 AND number = $2",
        client,
        number
    )
    .fetch_optional(&mut **tx)
    .await
}

/// A new cluster at version 1, under the next number. The client's row is locked.
pub(super) async fn insert_cluster(tx: &mut Tx, id: Uuid, client: Uuid, name: &[u8], theme: Option<Theme>) -> sqlx::Result<()> {
    sqlx::query!(
        "INSERT INTO cluster (id, client_id, number, name, theme, version)
         VALUES ($1, $2, (SELECT coalesce(max(number), 0) + 1 FROM cluster WHERE client_id = $2), $3, $4, 1)",
        id,
        client,
        name,
        theme.map(Theme::name)
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// False when the row is not at the version before `cluster`'s any more.
pub(super) async fn change_cluster(tx: &mut Tx, cluster: &Cluster, name: &[u8]) -> sqlx::Result<bool> {
    let done = sqlx::query!(
        "UPDATE cluster SET name = $2, theme = $3, earliest_id = $4, worst_id = $5, version = $6 WHERE id = $1 AND version = $6 - 1",
        cluster.id,
        name,
        cluster.theme.map(Theme::name),
        cluster.earliest,
        cluster.worst,
        cluster.version
    )
    .execute(&mut **tx)
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Takes the marks of a target that leaves its cluster.
pub(super) async fn unmark(tx: &mut Tx, target: Uuid) -> sqlx::Result<()> {
    sqlx::query!(
        "UPDATE cluster SET earliest_id = nullif(earliest_id, $1), worst_id = nullif(worst_id, $1) WHERE $1 IN (earliest_id, worst_id)",
        target
    )
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// Another target of a cluster.
pub(super) struct OtherRow {
    pub(super) target: Uuid,
    pub(super) sud: Option<i16>,
    /// It was rated after `of` came to its end.
    pub(super) since: bool,
}

/// The memories and triggers in the cluster of `of` that are neither at their end nor archived, in the order of the work.
pub(super) async fn others(tx: &mut Tx, of: Uuid) -> sqlx::Result<Vec<OtherRow>> {
    sqlx::query_as!(
        OtherRow,
        r#"SELECT p.target_id AS target, r.value AS "sud?", coalesce(r.asked > ended.asked, false) AS "since!"
           FROM target_plan own JOIN target_plan p ON p.cluster_id = own.cluster_id AND p.target_id <> own.target_id
           JOIN target t ON t.id = p.target_id AND t.archived_at IS NULL AND t.prong IN ('past', 'present')
           JOIN target_course n ON n.target_id = p.target_id AND n.state NOT IN ('complete', 'reduced')
           LEFT JOIN LATERAL (
             SELECT value, asked FROM standing_rating WHERE target_id = p.target_id AND scale = 'sud' ORDER BY place DESC, asked DESC LIMIT 1) r ON true
           LEFT JOIN LATERAL (
             SELECT max(asked) AS asked FROM standing_fact
             WHERE target_id = own.target_id AND (kind = 'decided' AND code IN ('complete', 'reduced') OR kind = 'carried_over')) ended ON true
           WHERE own.target_id = $1 ORDER BY p.place"#,
        of
    )
    .fetch_all(&mut **tx)
    .await
}
