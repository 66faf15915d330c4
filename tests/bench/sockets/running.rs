//! Running rooms: a set runs in each, its stage says four times a second (a real one less often) what it shows and once a second what it
//! keeps as evidence, and what the portal relays to the desk is timed beside a plain echo.
//!
//! The echo is a Ping of WebSocket (RFC 6455, 5.5.2: whoever gets one sends its data back), on the stage's own socket
//! and with the very bytes of a showing: so it is the shipped program that echoes, and no route had to be added to it.
//! The portal's socket answers it without looking into it, as a plain echo would.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, mpsc};
use std::time::{Duration, Instant};

use futures_util::StreamExt;
use leeward_core::wire::{
    Channels, Evidence, Fact, FromDesk, FromStage, Length, Order, Plan, RoomState, SeatState, Showing, ToDesk, ToStage,
};
use serde::Serialize;
use tokio::time::{MissedTickBehavior, interval_at};
use tokio_tungstenite::tungstenite::Message;

use crate::page::{Answers, Portal, Socket, say, send};
use crate::practice::Room;

/// A stage says so often what it shows; half-way between, it pings.
const SHOWS: Duration = Duration::from_millis(250);
/// Showings between two facts of evidence.
const SECOND: usize = 4;
/// All rooms must run after this time: a machine that is busy otherwise takes long over it.
const PATIENCE: Duration = Duration::from_secs(120);
/// Rooms begin so far apart: starts are people's acts, and their showings should not all come at once.
const APART: Duration = Duration::from_millis(21);

/// A message that was sent and, if it was, when it came back to this program.
#[derive(Clone, Copy)]
struct Trip {
    sent: Instant,
    took: Option<Duration>,
}

/// The trips of one room's messages, by number.
#[derive(Clone, Default)]
struct Trips(Arc<Mutex<Vec<Trip>>>);

impl Trips {
    fn sent(&self) {
        self.0.lock().expect("nobody breaks off here").push(Trip { sent: Instant::now(), took: None });
    }

    fn came_back(&self, number: usize) {
        let now = Instant::now();
        let mut trips = self.0.lock().expect("nobody breaks off here");
        let trip = trips.get_mut(number).expect("only what was sent comes back");
        trip.took = Some(now - trip.sent);
    }

    fn within(&self, from: Instant, lasts: Duration) -> Vec<Option<Duration>> {
        let trips = self.0.lock().expect("nobody breaks off here");
        trips.iter().filter(|trip| trip.sent >= from && trip.sent < from + lasts).map(|trip| trip.took).collect()
    }
}

/// All running rooms.
pub struct Running {
    rooms: usize,
    started: mpsc::Receiver<()>,
    relayed: Vec<Trips>,
    echoed: Vec<Trips>,
    lost: Arc<AtomicUsize>,
}

/// What a window of time measured, ms.
#[derive(Serialize)]
pub struct Round {
    relay: Times,
    echo: Times,
}

#[derive(Serialize)]
struct Times {
    count: usize,
    p50: f64,
    p99: f64,
}

/// The value below which `share` (0 to 1) of sorted values lie: the nearest rank.
pub fn quantile(sorted: &[f64], share: f64) -> f64 {
    let rank = (share * sorted.len() as f64).ceil() as usize;
    sorted.get(rank.max(1) - 1).copied().unwrap_or(f64::NAN)
}

impl Running {
    /// Opens these rooms one after the other on a thread of their own, and starts a set in each.
    pub fn start(portal: &Portal, rooms: Vec<Room>) -> Self {
        let (start, started) = mpsc::channel();
        let lost = Arc::new(AtomicUsize::new(0));
        let (relayed, echoed) = (trips(rooms.len()), trips(rooms.len()));
        let running = Self { rooms: rooms.len(), started, relayed: relayed.clone(), echoed: echoed.clone(), lost: lost.clone() };
        let portal = portal.clone();
        std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
            runtime.block_on(async {
                for ((room, relayed), echoed) in rooms.into_iter().zip(relayed).zip(echoed) {
                    let (desk, stage) = (portal.desk(&room).await, portal.stage(&room).await);
                    tokio::spawn(lead(desk, relayed.clone(), start.clone(), lost.clone()));
                    tokio::spawn(follow(stage, relayed, echoed, lost.clone()));
                    tokio::time::sleep(APART).await;
                }
                std::future::pending::<()>().await;
            });
        });
        running
    }

    /// Returns when the set of every room runs.
    pub fn wait_until_all_run(&self) {
        let end = Instant::now() + PATIENCE;
        for number in 0..self.rooms {
            let left = end.saturating_duration_since(Instant::now());
            self.started.recv_timeout(left).unwrap_or_else(|_| panic!("a set runs in {number} rooms only after {PATIENCE:?}"));
        }
    }

    /// What was sent within this time.
    pub fn round(&self, from: Instant, lasts: Duration) -> Round {
        let times = |rooms: &[Trips]| {
            let took = rooms.iter().flat_map(|trips| trips.within(from, lasts)).flatten();
            let mut times: Vec<f64> = took.map(|took| took.as_secs_f64() * 1_000.0).collect();
            times.sort_by(f64::total_cmp);
            Times { count: times.len(), p50: quantile(&times, 0.5), p99: quantile(&times, 0.99) }
        };
        Round { relay: times(&self.relayed), echo: times(&self.echoed) }
    }

    /// What was sent within this time and never came back.
    pub fn unanswered(&self, from: Instant, lasts: Duration) -> usize {
        let all = self.relayed.iter().chain(&self.echoed);
        all.flat_map(|trips| trips.within(from, lasts)).filter(Option::is_none).count()
    }

    /// Sockets that the portal closed.
    pub fn lost(&self) -> usize {
        self.lost.load(Ordering::Relaxed)
    }
}

fn trips(rooms: usize) -> Vec<Trips> {
    (0..rooms).map(|_| Trips::default()).collect()
}

/// The desk: starts one set without planned end as soon as it may.
async fn lead(mut socket: Socket, relayed: Trips, start: mpsc::Sender<()>, lost: Arc<AtomicUsize>) {
    let (mut answers, mut ordered, mut runs) = (Answers::new(), false, false);
    while let Some(Ok(message)) = socket.next().await {
        let Message::Text(text) = message else { continue };
        match serde_json::from_str(&text).expect("the portal speaks the wire") {
            ToDesk::Beat(beat) => say(&mut socket, &answers.beat(beat.id)).await,
            ToDesk::Showing(showing) => relayed.came_back(number_of(&showing)),
            ToDesk::View(view) => {
                answers.drawn = view.seq;
                if !ordered && view.stage_here && view.device.is_some() && view.seat == SeatState::Admitted {
                    ordered = true;
                    order_a_set(&mut socket, view.epoch, view.plan).await;
                }
                if !runs && view.state == RoomState::Running {
                    runs = true;
                    start.send(()).expect("somebody waits for all rooms");
                }
            }
            ToDesk::Answer { refused, .. } => assert_eq!(refused, None, "an order"),
            ToDesk::Call(_) => {}
            ToDesk::Reload => panic!("this program speaks another version of the wire"),
        }
    }
    lost.fetch_add(1, Ordering::Relaxed);
}

async fn order_a_set(socket: &mut Socket, epoch: u32, plan: Plan) {
    let channels = Channels { eyes: true, ears: false, hands: false };
    let plan = Plan { length: Length::Open, channels, ..plan };
    for (id, order) in (1..).zip([Order::Plan { plan }, Order::Sight, Order::Start]) {
        say(socket, &FromDesk::Order { epoch, id, order }).await;
    }
}

/// The stage: waits for the set, then says what it shows.
async fn follow(mut socket: Socket, relayed: Trips, echoed: Trips, lost: Arc<AtomicUsize>) {
    let mut answers = Answers::new();
    let mut set: Option<String> = None;
    let mut turns = interval_at(tokio::time::Instant::now() + SHOWS, SHOWS / 2);
    // What is late stays late, as it does on a page, instead of being made up for in a burst.
    turns.set_missed_tick_behavior(MissedTickBehavior::Delay);
    let mut turn = 0;
    loop {
        tokio::select! {
            message = socket.next() => match message {
                Some(Ok(Message::Text(text))) => match serde_json::from_str(&text).expect("the portal speaks the wire") {
                    ToStage::Beat(beat) => say(&mut socket, &answers.beat(beat.id)).await,
                    ToStage::View(view) => {
                        answers.drawn = view.seq;
                        set = view.set.filter(|set| set.ended.is_none()).map(|set| set.id);
                    }
                    ToStage::Kept { .. } | ToStage::Call(_) | ToStage::Reload => {}
                },
                Some(Ok(Message::Pong(data))) => {
                    let FromStage::Showing(echo) = serde_json::from_slice(&data).expect("its own bytes") else { continue };
                    echoed.came_back(number_of(&echo));
                }
                Some(Ok(_)) => {}
                Some(Err(_)) | None => break,
            },
            _ = turns.tick() => {
                let Some(set) = &set else { continue };
                take_turn(&mut socket, set, turn, &relayed, &echoed).await;
                turn += 1;
            }
        }
    }
    lost.fetch_add(1, Ordering::Relaxed);
}

/// Showings and pings by turns, and now and then evidence after them.
async fn take_turn(socket: &mut Socket, set: &str, turn: usize, relayed: &Trips, echoed: &Trips) {
    let number = turn / 2;
    let text = showing(set, number);
    if turn.is_multiple_of(2) {
        relayed.sent();
        send(socket, Message::text(text)).await;
        if number.is_multiple_of(SECOND) {
            say(socket, &FromStage::Evidence { facts: vec![fact(set, number / SECOND)] }).await;
        }
    } else {
        // RFC 6455, 5.5: control frames carry 125 bytes at most.
        assert!(text.len() <= 125, "too long for a Ping: {text}");
        echoed.sent();
        send(socket, Message::Ping(text.into())).await;
    }
}

/// A showing in few bytes, so that it fits into a Ping. Its time is that of the showing's number.
fn showing(set: &str, number: usize) -> String {
    let (at, phase) = (SHOWS.as_millis() * number as u128, number / SECOND);
    format!(r#"{{"type":"showing","set":"{set}","moving":true,"at":{at},"phase":{phase},"rate":1,"width":18}}"#)
}

fn number_of(showing: &Showing) -> usize {
    (showing.at / SHOWS.as_millis() as f64).round() as usize
}

fn fact(set: &str, seq: usize) -> Evidence {
    let at = (SHOWS.as_millis() * (SECOND * seq) as u128) as f64;
    let fact = if seq == 0 { Fact::Shown { width: 18.0 } } else { Fact::Second { phase: seq as f64, frames: 60, longest_gap: 17.0 } };
    Evidence { set: set.to_owned(), seq: u32::try_from(seq).expect("a set is short"), at, fact }
}
