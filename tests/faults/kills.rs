//! SIGKILL to the server, and to the database under it, again and again while people work: nothing that was acknowledged is
//! lost or doubled, nothing in the record contradicts another part of it, and no stop that was shown becomes unknown.

mod desk;
mod line;
mod record;
mod stage;
mod writer;

use std::sync::Arc;
use std::time::Duration;

use leeward::clients::{Asked, Cautions};
use leeward_core::wire::{Order, RoomState};
use leeward_tests::{Cluster, House, Served};
use tokio::time::sleep;

use self::desk::Desk;
use self::line::Live;
use self::stage::Stage;
use self::writer::Writer;
use crate::figures::size;
use crate::live_scene::Scene;

/// Both pages at work in one session, on the real program.
struct AtWork {
    scene: Scene,
    served: Served,
    desk: Live<Desk>,
    stage: Live<Stage>,
    writer: Writer,
}

/// What is going on when the process dies.
#[derive(Clone, Copy, Debug)]
enum Moment {
    /// A set moves.
    InASet,
    /// The desk has just shown that its stop was carried out.
    DeskShowsStop,
    /// The clinician has pressed Stop, and nothing has come of it yet.
    StopPressed,
    /// The desk has just shown the client's stop.
    DeskShowsClientsStop,
    /// The client presses Stop while there is no server.
    ClientStopsAlone,
    /// The clinician presses Stop while there is no server.
    DeskStopsAlone,
    /// A start was pressed.
    Starting,
}

const MOMENTS: [Moment; 7] = [
    Moment::DeskShowsStop,
    Moment::DeskShowsClientsStop,
    Moment::ClientStopsAlone,
    Moment::StopPressed,
    Moment::InASet,
    Moment::DeskStopsAlone,
    Moment::Starting,
];

impl AtWork {
    async fn begin(mut house: House) -> Self {
        let served = Served::of(&mut house, env!("CARGO_BIN_EXE_leeward-served"));
        let mut scene = Scene::inside(house, Cautions { seizures: Asked::No, eye_condition: Asked::No }).await;
        served.welcomes(&mut scene.clinician);
        scene.join().await;
        scene.admit().await;
        let desk = Live::open(Desk::default(), &scene.clinician, &served.origin, scene.path("desk/socket"));
        let stage = Live::open(Stage::new(), &scene.client, &served.origin, "/stage/socket".into());
        let writer = Writer::begin(scene.clinician.clone(), scene.session);
        Self { scene, served, desk, stage, writer }
    }

    /// Both look and say ready anew, as after every loss, until a set may start.
    async fn ready(&self) {
        let end = tokio::time::Instant::now() + Duration::from_secs(40);
        loop {
            let view = self.desk.with(|desk| desk.view.clone().filter(|_| desk.synced));
            match view {
                Some(view) if view.state == RoomState::Ready => return,
                Some(view) if view.needs.client_ready => self.stage.with(Stage::ready),
                Some(view) if view.needs.sight && view.stage_here => {
                    self.desk.with(|desk| desk.press(Order::Sight));
                }
                _ => {}
            }
            assert!(tokio::time::Instant::now() < end, "never ready: {:#?}", self.desk.with(|desk| desk.view.clone()));
            sleep(Duration::from_millis(100)).await;
        }
    }

    /// Starts a set and waits until it moves; its id.
    async fn start(&self) -> String {
        loop {
            self.ready().await;
            let order = self.desk.with(|desk| desk.press(Order::Start));
            let Some(order) = order else { continue };
            let refused = self.desk.until("an answer to the start", |desk| desk.answers.get(&order).cloned()).await;
            if refused.is_some() {
                // The database is down, or something happened meanwhile: pressed again as a person would.
                continue;
            }
            self.stage.until("a moving dot", |stage| stage.moves().then_some(())).await;
            let set = self.desk.with(|desk| desk.view.as_ref().and_then(|view| view.set.as_ref()).map(|set| set.id.clone()));
            return set.expect("the desk has it too");
        }
    }

    fn shows_end(&self, set: &str) -> impl Future<Output = ()> {
        let set = set.to_owned();
        self.desk.until("the end of the set", move |desk| desk.shown.get(&set).copied().flatten().map(|_| ()))
    }

    /// Works up to this moment.
    async fn work_up_to(&self, moment: Moment, jitter: Duration) {
        if let Moment::Starting = moment {
            self.ready().await;
            self.desk.with(|desk| desk.press(Order::Start));
            return sleep(jitter).await;
        }
        let set = self.start().await;
        sleep(jitter).await;
        match moment {
            Moment::DeskShowsStop => {
                self.desk.with(|desk| desk.press(Order::Stop));
                self.shows_end(&set).await;
            }
            Moment::DeskShowsClientsStop => {
                self.stage.with(Stage::stop);
                self.shows_end(&set).await;
            }
            Moment::StopPressed => {
                self.desk.with(|desk| desk.press(Order::Stop));
                sleep(jitter / 10).await;
            }
            Moment::InASet | Moment::ClientStopsAlone | Moment::DeskStopsAlone | Moment::Starting => {}
        }
    }

    /// What people do while there is no server.
    fn alone(&self, moment: Moment) {
        match moment {
            Moment::ClientStopsAlone => self.stage.with(Stage::stop),
            Moment::DeskStopsAlone => {
                self.desk.with(|desk| desk.press(Order::Stop));
            }
            _ => {}
        }
    }

    async fn end(self, what: &str, kills: usize) {
        // What was running comes to rest, and what is under way is kept.
        self.desk.with(|desk| desk.press(Order::Stop));
        self.ready().await;
        let written = self.writer.finish().await;
        let (desk, stage) = (&self.desk, &self.stage);
        record::settles(&self.scene, desk, stage).await;
        record::compare(what, kills, &self.scene, &written, desk, stage).await;
    }
}

/// Different every time and the same on every machine: up to 400 ms.
fn jitter(round: usize) -> Duration {
    Duration::from_millis((round as u64 * 7_919) % 401)
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_server_that_is_killed_again_and_again_loses_and_doubles_nothing() {
    let mut work = AtWork::begin(House::build().await).await;
    // With those of each third round 100 kills, or 6.
    let rounds = size(75, 4);
    for round in 0..rounds {
        let moment = MOMENTS[round % MOMENTS.len()];
        work.work_up_to(moment, jitter(round)).await;
        work.served.kill();
        work.alone(moment);
        work.served.start_again();
        // Now and then it dies again as soon as the desk is back, before anything can have been written.
        if round % 3 == 0 {
            work.desk.until("the desk again", |desk| desk.synced.then_some(())).await;
            work.served.kill();
            work.served.start_again();
        }
    }
    work.end("server killed", rounds + rounds.div_ceil(3)).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_database_that_is_killed_again_and_again_loses_and_doubles_nothing() {
    let cluster = tokio::task::spawn_blocking(Cluster::start).await.unwrap();
    let mut work = AtWork::begin(House::build_on(cluster.superuser()).await).await;
    let cluster = Arc::new(std::sync::Mutex::new(cluster));
    let rounds = size(50, 3);
    for round in 0..rounds {
        let moment = MOMENTS[round % MOMENTS.len()];
        work.work_up_to(moment, jitter(round)).await;
        let again = cluster.clone();
        let pause = jitter(round + 7) * 4;
        let killed = tokio::task::spawn_blocking(move || {
            let mut cluster = again.lock().unwrap();
            cluster.kill();
            std::thread::sleep(pause);
            cluster.start_again();
        });
        sleep(Duration::from_millis(50)).await;
        work.alone(moment);
        killed.await.unwrap();
        // Each third time the server goes with it.
        if round % 3 == 2 {
            work.served.kill();
            work.served.start_again();
        }
    }
    work.end("database killed", rounds).await;
}
