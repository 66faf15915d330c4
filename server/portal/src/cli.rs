//! The commands of the one binary.

use std::io::Write;
use std::sync::Arc;

use clap::{Args, Parser, Subcommand};
use tracing_subscriber::util::SubscriberInitExt;

use zeroize::Zeroizing;

use crate::app::{self};
use crate::base::clock::{Machine, World};
use crate::base::origin::Origin;
use crate::config::{AppDatabase, KeyFile, OwnerDatabase, RelayServer, ServeArgs};
use crate::live;
use crate::platform::Role;
use crate::platform::{App, Parts};
use crate::platform::{assets, observe};
use crate::signin::{Invitation, Newcomer, agree_replacement_as_owner, ask_replacement_as_owner, invite_as_owner};
use crate::store::database::{Database, Unfit, migrate};
use crate::store::key_check;
use crate::store::patience::GRACE;
use crate::{askings, connections, course, demo, doctor, episodes, log, mail, measures, notify, outcomes, upkeep, waiting};

/// Leeward: a portal for remote EMDR sessions, for trained and licensed clinicians.
#[derive(Parser, Debug)]
#[command(version)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// What the binary can do.
#[derive(Subcommand, Debug)]
pub enum Command {
    /// Serve the portal.
    Serve(Box<ServeArgs>),
    /// Bring the database to this version's shape (as its owner).
    Migrate(OwnerDatabase),
    /// Fold how every target and every treatment stands anew from its record (as the database's owner), and say where lists had it otherwise.
    Course(OwnerDatabase),
    /// Try what the portal needs of its surroundings, and say of each problem what cures it.
    Doctor(DoctorArgs),
    /// The practice's key.
    #[command(subcommand)]
    Key(KeyCommand),
    /// The people of the practice.
    #[command(subcommand)]
    Member(MemberCommand),
    /// The demo.
    #[command(subcommand)]
    Demo(DemoCommand),
}

/// What is examined.
#[derive(Args, Debug)]
pub struct DoctorArgs {
    #[command(flatten)]
    #[expect(missing_docs, reason = "see RelayServer")]
    pub relay: RelayServer,
}

/// What can be done with a database that the demo seeded.
#[derive(Subcommand, Debug)]
pub enum DemoCommand {
    /// Open one waiting session, or find it open, and print the links to its desk, the lead's page and its stage.
    Links(LinksArgs),
}

/// Where the demo is.
#[derive(Args, Debug)]
pub struct LinksArgs {
    /// Where it is served, such as `http://localhost:8080`.
    #[arg(long, env = "LEEWARD_ORIGIN")]
    pub origin: String,
    #[command(flatten)]
    #[expect(missing_docs, reason = "see AppDatabase")]
    pub database: AppDatabase,
    #[command(flatten)]
    #[expect(missing_docs, reason = "see KeyFile")]
    pub key: KeyFile,
}

/// What can be done about members from the terminal.
#[derive(Subcommand, Debug)]
pub enum MemberCommand {
    /// Print a link with which one person makes a passkey and becomes a member (as the database's owner).
    Invite(InviteArgs),
    /// Ask for a new passkey for a member who has lost theirs; an administrator or lead then agrees in the portal.
    Replace(ReplaceArgs),
    /// Agree to a new passkey for which an administrator has asked in the portal, and print its link.
    Agree(AgreeArgs),
}

/// Whose passkey is lost.
#[derive(Args, Debug)]
pub struct ReplaceArgs {
    /// The member's name, as colleagues read it.
    #[arg(long)]
    pub name: String,
    #[command(flatten)]
    #[expect(missing_docs, reason = "see OwnerDatabase")]
    pub database: OwnerDatabase,
}

/// Whose new passkey is agreed to.
#[derive(Args, Debug)]
pub struct AgreeArgs {
    /// The member's name, as colleagues read it.
    #[arg(long)]
    pub name: String,
    /// The address people type, such as `https://portal.example.org`.
    #[arg(long, env = "LEEWARD_ORIGIN")]
    pub origin: String,
    #[command(flatten)]
    #[expect(missing_docs, reason = "see OwnerDatabase")]
    pub database: OwnerDatabase,
}

/// Whom to invite.
#[derive(Args, Debug)]
pub struct InviteArgs {
    /// The name, as colleagues will read it.
    #[arg(long)]
    pub name: String,
    /// What the person may do: clinician, lead, administrator; several with commas.
    #[arg(long, value_delimiter = ',', required = true)]
    pub role: Vec<String>,
    /// The address people type, such as `https://portal.example.org`.
    #[arg(long, env = "LEEWARD_ORIGIN")]
    pub origin: String,
    #[command(flatten)]
    #[expect(missing_docs, reason = "see OwnerDatabase")]
    pub database: OwnerDatabase,
}

/// What can be done with the practice's key.
#[derive(Subcommand, Debug)]
pub enum KeyCommand {
    /// Make a new key file, readable by its owner alone. Keep a copy offline: without it nothing opens.
    New {
        /// Where; must not exist.
        path: std::path::PathBuf,
    },
}

/// Runs a command to its end.
///
/// # Errors
/// A sentence for the person at the terminal: what is wrong and what to do.
pub async fn run(cli: Cli) -> Result<(), String> {
    let world: World = Arc::new(Machine);
    match cli.command {
        Command::Serve(args) => serve(*args, world).await,
        Command::Migrate(args) => bring_up(&args.url()?).await,
        Command::Course(args) => rebuild_courses(&args.url()?).await,
        Command::Doctor(args) => doctor::run(args.relay.relay()?, world.now()).await,
        Command::Key(KeyCommand::New { path }) => new_key(&path, &world),
        Command::Member(MemberCommand::Invite(args)) => invite(&args, &world).await,
        Command::Member(MemberCommand::Replace(args)) => replace(&args, &world).await,
        Command::Member(MemberCommand::Agree(args)) => agree(&args, &world).await,
        Command::Demo(DemoCommand::Links(args)) => demo_links(&args, world).await,
    }
}

/// Migrates, and waits for a database that is not there yet; then what is folded follows the rules of this version.
async fn bring_up(owner_url: &str) -> Result<(), String> {
    start_log(tracing::Level::INFO);
    let migrated = waiting::for_database(async || Ok(migrate(owner_url).await?)).await;
    migrated.map_err(|unfit| match unfit {
        Unfit::Unreachable(fault) => format!("migrate: {fault}"),
        unfit => format!("migrate: {unfit}"),
    })?;
    let folded =
        course::bring_up_to_rules(owner_url).await.map_err(|fault| format!("migrate: {fault}. Run it again: what was folded stays."))?;
    if folded > 0 {
        tracing::info!(targets = folded, "folded by newer rules");
    }
    Ok(())
}

/// Fails when lists had something otherwise though the rules are the same: it is mended then, and somebody should ask why.
async fn rebuild_courses(owner_url: &str) -> Result<(), String> {
    let course::Rebuilt { targets, outdated, different } = course::rebuild(owner_url)
        .await
        .map_err(|fault| format!("course: {fault}. Is LEEWARD_OWNER_URL the database's owner, and has `leeward migrate` been run?"))?;
    let again = |fault| format!("course: {fault}. Run it again: what was folded stays.");
    let treatments = episodes::rebuild(owner_url).await.map_err(again)?;
    let (summaries, summaries_differ) = measures::rebuild(owner_url).await.map_err(again)?;
    let (courses, courses_differ) = outcomes::rebuild(owner_url).await.map_err(again)?;
    let (schedules, schedules_differ) = askings::rebuild(owner_url).await.map_err(again)?;
    println!("{targets} targets folded, {outdated} of them by newer rules, {} different", different.len());
    println!("{} treatments folded, {} different", treatments.episodes, treatments.different.len());
    println!("{summaries} summaries of measures folded, {} different", summaries_differ.len());
    println!("{courses} courses of three sessions folded, {} different", courses_differ.len());
    println!("{schedules} schedules folded, {} different", schedules_differ.len());
    let all = [different, treatments.different, summaries_differ, courses_differ, schedules_differ].concat();
    if all.is_empty() {
        return Ok(());
    }
    let ids: Vec<String> = all.iter().map(ToString::to_string).collect();
    Err(format!("course: lists had these otherwise than their record says. They are made anew; tell the makers: {}", ids.join(", ")))
}

async fn invite(args: &InviteArgs, world: &World) -> Result<(), String> {
    let origin = Origin::parse(&args.origin)?;
    let role = |name: &String| Role::parse(name).ok_or_else(|| format!("--role: \"{name}\" is none of clinician, lead, administrator"));
    let roles = args.role.iter().map(role).collect::<Result<Vec<_>, _>>()?;
    let newcomer = Newcomer::check(&args.name, roles)
        .map_err(|problems| problems.each().map(|(field, problem)| format!("--{field}: {problem}")).collect::<Vec<_>>().join(" "))?;
    let invitation = invite_as_owner(&args.database.url()?, world, &origin, &newcomer).await.map_err(|fault| {
        format!("member invite: {fault}. Is LEEWARD_OWNER_URL the database's owner, and has `leeward migrate` been run?")
    })?;
    print_link(&invitation, &newcomer.name);
    Ok(())
}

fn print_link(invitation: &Invitation, name: &str) {
    println!("{}", invitation.link);
    eprintln!("It works once, until {}. Send it by a way that only {name} reads.", invitation.until.format("%a %-d %b %Y, %H:%M UTC"));
}

async fn replace(args: &ReplaceArgs, world: &World) -> Result<(), String> {
    ask_replacement_as_owner(&args.database.url()?, world, &args.name).await.map_err(|fault| format!("member replace: {fault}"))?;
    eprintln!(
        "Asked for. An administrator or lead agrees in the portal, under Lost passkeys, within a day. Where there is none besides {}, \
         `leeward member agree` does.",
        args.name
    );
    Ok(())
}

async fn agree(args: &AgreeArgs, world: &World) -> Result<(), String> {
    let origin = Origin::parse(&args.origin)?;
    let agreed = agree_replacement_as_owner(&args.database.url()?, world, &origin, &args.name).await;
    print_link(&agreed.map_err(|fault| format!("member agree: {fault}"))?, &args.name);
    Ok(())
}

async fn demo_links(args: &LinksArgs, world: World) -> Result<(), String> {
    let (origin, key) = (Origin::parse(&args.origin)?, args.key.read()?);
    let database = Database::connect_with(args.database.access()?, world.clone()).await.map_err(|unfit| unfit.to_string())?;
    let key = key_check::check(&database, key).await.map_err(|refused| refused.to_string())?;
    let (app, _) = app::build(Parts { database, world, key, origin, proxies: 0, demo: true, mails: false }, None);
    let links = demo::links(&app).await.map_err(|fault| format!("demo links: {fault}. Has demo-seed seeded this database?"))?;
    println!("desk {}\nlead {}\nclient {} code {}", links.desk, links.lead, links.client, links.code);
    Ok(())
}

fn new_key(path: &std::path::Path, world: &World) -> Result<(), String> {
    use std::os::unix::fs::OpenOptionsExt;
    let mut bytes = Zeroizing::new([0; 32]);
    world.fill(&mut *bytes);
    let text = hex::encode(*bytes);
    let mut file = std::fs::OpenOptions::new()
        .write(true)
        .create_new(true)
        .mode(0o400)
        .open(path)
        .map_err(|fault| format!("key new: {} cannot be made: {fault}", path.display()))?;
    writeln!(file, "{text}").and_then(|()| file.sync_all()).map_err(|fault| format!("key new: {fault}"))
}

async fn serve(args: ServeArgs, world: World) -> Result<(), String> {
    start_log(args.log);
    let lacking = assets::missing();
    if !lacking.is_empty() {
        return Err(format!("this build has no {}: run `npm ci && npm run build` in web/, then build again", lacking.join(", ")));
    }
    let origin = Origin::parse(&args.origin)?;
    let (access, key) = (args.database.access()?, args.key.read()?);
    let (post, relay) = (args.mail.post(&origin.text)?, args.relay.relay()?);
    let database = waiting::for_database(async || Database::connect_with(access.clone(), world.clone()).await)
        .await
        .map_err(|unfit| unfit.to_string())?;
    if args.demo && !(args.listen.ip().is_loopback() && origin.host == "localhost") {
        return Err("--demo serves on loopback and http://localhost only".into());
    }
    let key = key_check::check(&database, key).await.map_err(|refused| refused.to_string())?;
    let listener = std::net::TcpListener::bind(args.listen).map_err(|fault| format!("cannot listen on {}: {fault}", args.listen))?;
    listener.set_nonblocking(true).map_err(|fault| fault.to_string())?;
    let parts = Parts { database, world, key, origin: origin.clone(), proxies: args.proxies, demo: args.demo, mails: post.is_some() };
    let (app, router) = app::build(parts, relay);
    let handle = axum_server::Handle::new();
    tokio::spawn(stop_on_signal(handle.clone(), app.clone()));
    tokio::spawn(upkeep::keep_tidy(app.clone()));
    tokio::spawn(notify::keep_alive());
    if let Some(post) = post {
        tokio::spawn(mail::keep_telling(app.clone(), post));
    }
    if let Some(address) = args.metrics {
        let figures = tokio::net::TcpListener::bind(address)
            .await
            .map_err(|fault| format!("LEEWARD_METRICS: cannot listen on {address}: {fault}"))?;
        tokio::spawn(axum::serve(figures, observe::figures_page(app.clone(), live::gauges)).into_future());
    }
    tokio::spawn(say_when_ready(handle.clone(), origin.text));
    let served = connections::serve(router, listener, handle).await;
    // What the rooms still have to write down is written before the process ends, a room's too that opened meanwhile.
    app.rooms().shut().await;
    served.map_err(|fault| fault.to_string())
}

fn start_log(level: tracing::Level) {
    log::subscriber(level, std::io::stderr).init();
    log::panics_by_place();
}

/// Only once connections are taken: the terminal and the service manager go by it.
async fn say_when_ready(handle: axum_server::Handle<std::net::SocketAddr>, origin: String) {
    if handle.listening().await.is_some() {
        println!("ready on {origin}");
        notify::ready();
    }
}

/// Sets ease at once, not after the last page has been answered.
async fn stop_on_signal(handle: axum_server::Handle<std::net::SocketAddr>, app: App) {
    let mut terminate = match tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate()) {
        Ok(signal) => signal,
        Err(fault) => {
            tracing::error!(%fault, "signals cannot be heard");
            return;
        }
    };
    tokio::select! {
        _ = terminate.recv() => {}
        _ = tokio::signal::ctrl_c() => {}
    }
    handle.graceful_shutdown(Some(GRACE));
    app.rooms().shut().await;
}
