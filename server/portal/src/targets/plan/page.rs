//! The page of a client's plan: one picture, the order of the work, the clusters.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::chart::Chart;
use uuid::Uuid;

use super::picture::{belongs, picture, when};
use super::{Cluster, Theme, clusters, in_order, queries};
use crate::clients::{self, details};
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::seal::Opened;
use crate::store::subject::{Act, Tx};
use crate::targets::{self, Target};

#[derive(Template)]
#[template(path = "targets/plan/plan.html")]
struct PlanPage {
    frame: Frame,
    client: Uuid,
    record: i32,
    name: Opened,
    archived: bool,
    version: i32,
    notice: &'static str,
    chart: Option<Chart>,
    lines: Vec<Line>,
    clusters: Vec<Group>,
}

/// A target in the order of the work.
struct Line {
    id: Uuid,
    number: i32,
    /// Its place in the list, from 1.
    at: usize,
    label: String,
    when: String,
    belongs: String,
    from: String,
    stands: &'static str,
    sud: String,
}

/// A cluster and what is in it.
struct Group {
    number: i32,
    name: String,
    theme: &'static str,
    /// Such as "2. the gate, earliest".
    targets: Vec<(Uuid, String)>,
}

/// `GET /clients/{client}/plan`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Html<String>, Error> {
    read(&member, &app, frame, client, "").await
}

/// The page as it stands now; `notice` says what could not be done.
pub(super) async fn read(member: &Member, app: &App, frame: Frame, client: Uuid, notice: &'static str) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(client)).await?;
    let shown = build(&mut tx, app, frame, client, notice).await?;
    tx.commit().await?;
    page(&shown)
}

async fn build(tx: &mut Tx, app: &App, frame: Frame, client: Uuid, notice: &'static str) -> Result<PlanPage, Error> {
    // Before what it counts: a change in between makes the page old, never new.
    let version = queries::version(tx, client).await?.ok_or(Error::NotFound)?;
    let row = clients::row(tx, client).await?.ok_or(Error::NotFound)?;
    let details = details(tx, app, client).await?;
    let all = clusters(tx, app, client).await?;
    let targets = in_order(targets::list(tx, app, client).await?.into_iter().filter(|target| target.archived_at.is_none()).collect());
    Ok(PlanPage {
        frame,
        client,
        record: row.number,
        name: details.name,
        archived: row.archived_at.is_some(),
        version,
        notice,
        chart: picture(&targets, &all),
        lines: (1..).zip(&targets).map(|(at, target)| line(at, target, &targets, &all)).collect(),
        clusters: all.iter().map(|cluster| group(cluster, &targets)).collect(),
    })
}

fn line(at: usize, target: &Target, targets: &[Target], clusters: &[Cluster]) -> Line {
    let cluster = clusters.iter().find(|cluster| Some(cluster.id) == target.planned.cluster);
    let parent = targets.iter().find(|other| Some(other.id) == target.planned.parent);
    Line {
        id: target.id,
        number: target.number,
        at,
        label: target.words.label.shown().to_owned(),
        when: when(target),
        belongs: cluster.map(|cluster| belongs(cluster, cluster.marked(target.id))).unwrap_or_default(),
        from: parent.map(|parent| format!("from {}. {}", parent.number, parent.words.label.shown())).unwrap_or_default(),
        stands: target.stands(),
        sud: target.latest_sud.map_or_else(|| "not rated".to_owned(), |sud| sud.get().to_string()),
    }
}

fn group(cluster: &Cluster, targets: &[Target]) -> Group {
    let own = targets.iter().filter(|target| target.planned.cluster == Some(cluster.id));
    let words = |target: &Target| {
        let marked = cluster.marked(target.id);
        let after = if marked.is_empty() { String::new() } else { format!(", {marked}") };
        (target.id, format!("{}. {}{after}", target.number, target.words.label.shown()))
    };
    Group {
        number: cluster.number,
        name: cluster.name.shown().to_owned(),
        theme: cluster.theme.map_or("no theme said", Theme::words),
        targets: own.map(words).collect(),
    }
}
