//! Idle rooms: desk and stage are there and the client waits to be admitted.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};
use std::time::Instant;

use futures_util::{StreamExt, stream};
use leeward_core::wire::Beat;
use serde::{Deserialize, Serialize};
use tokio_tungstenite::tungstenite::Message;

use crate::page::{Answers, Portal, Socket, say};
use crate::practice::Room;

/// Rooms that open at a time.
const AT_ONCE: usize = 24;

/// What all idle sockets heard.
#[derive(Default)]
pub struct Idle {
    lost: AtomicUsize,
    count: Mutex<Count>,
}

#[derive(Default)]
struct Count {
    since: Option<Instant>,
    beats: usize,
    /// From one beat of a socket to its next, seconds.
    gaps: Vec<f64>,
}

/// What came within the time of counting.
#[derive(Serialize)]
pub struct Beats {
    /// How long was counted, seconds.
    pub seconds: f64,
    /// Beats on all idle sockets.
    pub count: usize,
    /// Gaps between two beats of a socket: their 1st and 99th percentile, seconds.
    pub gap_p1: f64,
    /// See `gap_p1`.
    pub gap_p99: f64,
}

/// Opens both sockets of these rooms; they answer beats for as long as the program runs.
pub async fn open(portal: &Portal, rooms: &[Room], idle: &Arc<Idle>) {
    let opened = stream::iter(rooms).map(|room| async move {
        let (desk, stage) = (portal.desk(room).await, portal.stage(room).await);
        for socket in [desk, stage] {
            tokio::spawn(sit(socket, idle.clone()));
        }
    });
    opened.buffer_unordered(AT_ONCE).collect::<Vec<_>>().await;
}

/// What an idle page looks at, of either end.
#[derive(Deserialize)]
#[serde(tag = "type", rename_all = "snake_case")]
enum Sign {
    Beat(Beat),
    View {
        seq: u32,
    },
    #[serde(other)]
    Other,
}

async fn sit(mut socket: Socket, idle: Arc<Idle>) {
    let (mut answers, mut last) = (Answers::new(), None);
    while let Some(Ok(message)) = socket.next().await {
        let Message::Text(text) = message else { continue };
        match serde_json::from_str(&text).expect("the portal speaks the wire") {
            Sign::Beat(beat) => {
                idle.heard(last.replace(Instant::now()));
                say(&mut socket, &answers.beat(beat.id)).await;
            }
            Sign::View { seq } => answers.drawn = seq,
            Sign::Other => {}
        }
    }
    idle.lost.fetch_add(1, Ordering::Relaxed);
}

impl Idle {
    fn heard(&self, last: Option<Instant>) {
        let mut count = self.count.lock().expect("nobody breaks off while counting");
        if let (Some(_), Some(last)) = (count.since, last) {
            count.beats += 1;
            count.gaps.push(last.elapsed().as_secs_f64());
        }
    }

    /// Counts anew.
    pub fn count_from_now(&self) {
        *self.count.lock().expect("nobody breaks off while counting") = Count { since: Some(Instant::now()), ..Count::default() };
    }

    /// What was counted.
    pub fn counted(&self) -> Beats {
        let mut count = std::mem::take(&mut *self.count.lock().expect("nobody breaks off while counting"));
        count.gaps.sort_by(f64::total_cmp);
        let gap = |share| crate::running::quantile(&count.gaps, share);
        let seconds = count.since.expect("counting began").elapsed().as_secs_f64();
        Beats { seconds, count: count.beats, gap_p1: gap(0.01), gap_p99: gap(0.99) }
    }

    /// Sockets that the portal closed.
    pub fn lost(&self) -> usize {
        self.lost.load(Ordering::Relaxed)
    }
}
