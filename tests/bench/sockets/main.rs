//! The load of the line `server` of `tests/bench/live`: opens idle and running rooms at a portal that runs as a
//! process of its own, and prints what it measured as one line of JSON; `lines/live/server.mjs` judges it.
#![expect(clippy::expect_used, reason = "a benchmark that cannot go on must fail loudly")]

mod idle;
mod memory;
mod page;
mod practice;
mod running;

use std::sync::Arc;
use std::time::{Duration, Instant};

use leeward::app::{self};
use leeward::base::clock::Machine;
use leeward::base::origin::Origin;
use leeward::platform::{App, Parts};
use leeward::store::database::Database;
use leeward::store::seal::PracticeKey;
use serde::Serialize;

use idle::{Beats, Idle};
use page::Portal;
use running::{Round, Running};

/// Rooms with a client who waits to be admitted: two sockets each, and the server beats slowly.
const IDLE_ROOMS: usize = 5_000;
/// Rooms in which a set runs.
const RUNNING_ROOMS: usize = 200;
/// The memory is read each time so many idle rooms more are open.
const STEP: usize = 1_000;
/// After the quick first beats of a socket (1 s), and a slow one (5 s).
const SETTLED: Duration = Duration::from_secs(8);
/// Running rooms are measured in so many windows of this length.
const WINDOWS: usize = 8;
const WINDOW: Duration = Duration::from_secs(5);

/// What is printed. Times are ms unless they are said to be seconds.
#[derive(Serialize)]
struct Figures {
    idle_sockets: usize,
    running_rooms: usize,
    /// How long it took to make the rows, and to open all sockets, seconds.
    made_s: f64,
    opened_s: f64,
    memory: Vec<memory::Reading>,
    beats: Beats,
    windows: Vec<Round>,
    whole: Round,
    /// Sockets that the portal closed.
    lost: usize,
    /// Showings and pings that never came back.
    unanswered: usize,
}

// One thread for the idle sockets, another for the running ones: so these are not late because those are many.
#[tokio::main(worker_threads = 1)]
async fn main() {
    let portal = Portal::new(&setting("LEEWARD_ORIGIN"));
    let pid = setting("LEEWARD_PORTAL_PID");
    let began = Instant::now();
    let mut rooms = practice::make(&app().await, &setting("LEEWARD_OWNER_URL"), IDLE_ROOMS, RUNNING_ROOMS).await;
    let running_rooms = rooms.split_off(IDLE_ROOMS);
    let made_s = began.elapsed().as_secs_f64();
    eprintln!("{} rooms made in {made_s:.0} s", IDLE_ROOMS + RUNNING_ROOMS);

    let (began, idle, mut readings) = (Instant::now(), Arc::new(Idle::default()), Vec::new());
    for some in rooms.chunks(STEP) {
        idle::open(&portal, some, &idle).await;
        tokio::time::sleep(SETTLED).await;
        readings.push(memory::read(&pid, 2 * STEP * (readings.len() + 1)));
        eprintln!("{:?} after {:.0} s", readings.last(), began.elapsed().as_secs_f64());
    }
    let opened_s = began.elapsed().as_secs_f64();

    let running = Running::start(&portal, running_rooms);
    running.wait_until_all_run();
    tokio::time::sleep(WINDOW).await;
    idle.count_from_now();
    let from = Instant::now();
    let lengths = u32::try_from(WINDOWS).expect("a small number");
    tokio::time::sleep(WINDOW * lengths).await;
    let beats = idle.counted();
    tokio::time::sleep(WINDOW).await;

    let figures = Figures {
        idle_sockets: 2 * IDLE_ROOMS,
        running_rooms: RUNNING_ROOMS,
        made_s,
        opened_s,
        memory: readings,
        beats,
        windows: (0..lengths).map(|number| running.round(from + WINDOW * number, WINDOW)).collect(),
        whole: running.round(from, WINDOW * lengths),
        lost: idle.lost() + running.lost(),
        unanswered: running.unanswered(from, WINDOW * lengths),
    };
    println!("{}", serde_json::to_string(&figures).expect("figures are JSON"));
    // Nothing is left to say to anybody; the portal is stopped by who started it.
    std::process::exit(0);
}

fn setting(name: &str) -> String {
    std::env::var(name).unwrap_or_else(|_| panic!("{name}: tests/bench/live server sets it"))
}

/// The portal's functions need its shared state; this process serves nothing.
async fn app() -> App {
    let world: leeward::base::clock::World = Arc::new(Machine);
    let access: sqlx::postgres::PgConnectOptions = setting("LEEWARD_DATABASE_URL").parse().expect("an address of a database");
    let database = Database::connect_with(access, world.clone()).await.expect("the database is fit");
    let key = std::fs::read_to_string(setting("LEEWARD_KEY_FILE")).expect("the key can be read");
    let key = PracticeKey::parse(&key).expect("the key is one");
    let key = leeward::store::key_check::check(&database, key).await.expect("the key is this practice's");
    let origin = Origin::parse(&setting("LEEWARD_ORIGIN")).expect("a good origin");
    app::build(Parts { database, world, key, origin, proxies: 0, demo: false, mails: false }, None).0
}
