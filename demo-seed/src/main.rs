//! Seeds an invented practice, built through the portal's own functions. Its people belong to no one.
//!
//! Refuses a database that is in use. Run again on one it has seeded, it does nothing. The same seed
//! gives the same practice, with dates counted back from the day of seeding.

mod askings;
mod course;
mod forms;
mod ground;
mod odd;
mod people;
mod plan;
mod practice;
#[cfg(test)]
mod sealed_test;
mod sets;
mod world;
mod write;

use std::sync::Arc;

use clap::Parser;
use leeward::app::{self};
use leeward::base::clock::{Surroundings, World};
use leeward::base::origin::Origin;
use leeward::config::{AppDatabase, KeyFile, OwnerDatabase};
use leeward::platform::Parts;
use leeward::store::database::Database;
use leeward::store::key_check;

use ground::{Ground, State};
use world::SeedWorld;
use write::{Fault, Writer};

/// Seeds an invented practice into an empty, migrated database.
#[derive(Parser)]
struct Args {
    #[command(flatten)]
    owner: OwnerDatabase,
    #[command(flatten)]
    database: AppDatabase,
    #[command(flatten)]
    key: KeyFile,
    /// Another seed gives another practice.
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// So many clients; fewer are there sooner.
    #[arg(long, default_value_t = practice::CLIENTS)]
    clients: usize,
    /// The pages of its sessions connect directly for picture and voice, as they can on one machine.
    #[arg(long)]
    direct_calls: bool,
}

#[tokio::main]
async fn main() -> std::process::ExitCode {
    match run(Args::parse()).await {
        Ok(()) => std::process::ExitCode::SUCCESS,
        Err(fault) => {
            eprintln!("demo-seed: {fault}");
            std::process::ExitCode::FAILURE
        }
    }
}

async fn run(args: Args) -> Result<(), Fault> {
    let mut ground = Ground::connect(&args.owner.url()?).await?;
    match ground.state().await? {
        State::Seeded => {
            portal(&args, Arc::new(SeedWorld::new())).await?;
            println!("The invented practice is there already.");
            return Ok(());
        }
        State::InUse => return Err("this database is in use. The demo needs an empty one; nothing was changed".into()),
        State::Unfinished => ground.clear().await?,
        State::Empty => {}
    }
    let practice = practice::draw(args.seed, args.clients);
    let world = Arc::new(SeedWorld::new());
    let today = world.now().date_naive();
    let members = ground.begin(&practice.members, &world, today).await?;
    let writer = Writer { app: portal(&args, world.clone()).await?, world, today };
    let lead = practice.members.iter().position(|member| member.roles.contains(&leeward::platform::Role::Lead));
    writer.wordings(*lead.and_then(|at| members.get(at)).ok_or("a practice without a lead")?).await?;
    for (at, client) in practice.clients.iter().enumerate() {
        let clinician = members.get(client.clinician).ok_or("a client without a clinician")?;
        writer.client(at, client, *clinician).await?;
        if at % 16 == 15 {
            println!("{} of {} invented clients", at + 1, practice.clients.len());
        }
    }
    ground.finish(args.direct_calls).await?;
    Ok(())
}

/// The portal's functions need its shared state; nothing is served.
async fn portal(args: &Args, world: World) -> Result<leeward::platform::App, Fault> {
    let database = Database::connect_with(args.database.access()?, world.clone()).await?;
    let origin = Origin::parse("http://localhost")?;
    let key = key_check::check(&database, args.key.read()?).await?;
    let (app, _) = app::build(Parts { database, world, key, origin, proxies: 0, demo: false, mails: false }, None);
    Ok(app)
}
