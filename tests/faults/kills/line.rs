//! A page that comes back by itself, as `web/src/live/socket.ts` does.

use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use futures_util::{SinkExt, StreamExt};
use leeward_tests::Browser;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use tokio::time::{sleep, timeout};
use tokio_tungstenite::tungstenite::Message;

use crate::page::{Socket, connect};

/// Pauses before the tries to connect again; the last one is repeated.
const PAUSES: [u64; 5] = [250, 500, 1_000, 2_000, 4_000];
/// Without a message for this long the line is given up: as while a set runs.
const PATIENCE: Duration = Duration::from_secs(3);
/// How often a page looks what is due.
const TICK: Duration = Duration::from_millis(25);

/// What a page holds, and says.
pub trait Holds: Send + 'static {
    type In: DeserializeOwned + Send;
    type Out: Serialize + Send + Sync;
    /// The first messages of each connection.
    fn opened(&mut self) -> Vec<Self::Out>;
    fn lost(&mut self);
    fn hear(&mut self, message: Self::In) -> Vec<Self::Out>;
    /// Time passes, with a line or without.
    fn tick(&mut self);
    /// What is to be sent now.
    fn out(&mut self) -> Vec<Self::Out>;
    /// The highest `seq` that it has drawn.
    fn drawn(&self) -> u32;
    /// The server sent it away, for good.
    fn sent_away(&mut self, code: u16);
}

/// A page on its line, for as long as the test looks at it.
pub struct Live<P> {
    page: Arc<Mutex<P>>,
    tasks: [tokio::task::JoinHandle<()>; 2],
}

impl<P: Holds> Live<P> {
    pub fn open(page: P, browser: &Browser, origin: &str, path: String) -> Self {
        let page = Arc::new(Mutex::new(page));
        let line = tokio::spawn(keep(page.clone(), browser.clone(), origin.to_owned(), path));
        let time = tokio::spawn(pass_time(page.clone()));
        Self { page, tasks: [line, time] }
    }

    /// Looks at what it holds, or presses something.
    pub fn with<T>(&self, look: impl FnOnce(&mut P) -> T) -> T {
        look(&mut self.page.lock().unwrap())
    }

    /// Waits until `seen` finds something.
    pub async fn until<T>(&self, what: &str, seen: impl Fn(&mut P) -> Option<T>) -> T
    where
        P: std::fmt::Debug,
    {
        let end = Instant::now() + Duration::from_secs(30);
        loop {
            if let Some(found) = self.with(&seen) {
                return found;
            }
            assert!(Instant::now() < end, "never: {what}; {:#?}", self.page.lock().unwrap());
            sleep(Duration::from_millis(5)).await;
        }
    }
}

impl<P> Drop for Live<P> {
    fn drop(&mut self) {
        self.tasks.iter().for_each(tokio::task::JoinHandle::abort);
    }
}

async fn pass_time<P: Holds>(page: Arc<Mutex<P>>) {
    loop {
        sleep(TICK).await;
        page.lock().unwrap().tick();
    }
}

async fn keep<P: Holds>(page: Arc<Mutex<P>>, browser: Browser, origin: String, path: String) {
    let mut attempt = 0;
    loop {
        let opening = timeout(PATIENCE, connect(&browser, &origin, &path, Some(&origin))).await;
        let code = match opening {
            Ok(Ok(socket)) => speak(&page, socket, &mut attempt).await,
            _ => None,
        };
        page.lock().unwrap().lost();
        if let Some(code) = code.filter(|code| *code == 1008 || *code >= 4_000) {
            return page.lock().unwrap().sent_away(code);
        }
        sleep(Duration::from_millis(PAUSES[attempt.min(PAUSES.len() - 1)])).await;
        attempt += 1;
    }
}

/// Until the line is lost; the code it was closed with.
async fn speak<P: Holds>(page: &Mutex<P>, mut socket: Socket, attempt: &mut usize) -> Option<u16> {
    let (born, mut heard) = (Instant::now(), Instant::now());
    let opened = page.lock().unwrap().opened();
    say(&mut socket, &opened).await?;
    loop {
        let out = tokio::select! {
            message = socket.next() => match message {
                Some(Ok(Message::Text(text))) => {
                    (heard, *attempt) = (Instant::now(), 0);
                    let value: Value = serde_json::from_str(&text).unwrap();
                    if value["type"] == "beat" {
                        let at = born.elapsed().as_secs_f64() * 1_000.0;
                        let drawn = page.lock().unwrap().drawn();
                        say(&mut socket, &[json!({ "type": "beat", "id": value["id"], "page": at, "drawn": drawn })]).await?;
                    }
                    let message = serde_json::from_value(value).unwrap();
                    page.lock().unwrap().hear(message)
                }
                Some(Ok(Message::Close(frame))) => return frame.map(|frame| u16::from(frame.code)),
                Some(Ok(_)) => Vec::new(),
                Some(Err(_)) | None => return None,
            },
            () = sleep(TICK) => page.lock().unwrap().out(),
        };
        if heard.elapsed() > PATIENCE {
            return None;
        }
        say(&mut socket, &out).await?;
    }
}

/// `None` when the line is gone.
async fn say(socket: &mut Socket, messages: &[impl Serialize + Sync]) -> Option<()> {
    for message in messages {
        socket.send(Message::text(serde_json::to_string(message).unwrap())).await.ok()?;
    }
    Some(())
}
