//! One page's socket, played by the test: answers beats as a page does, keeps all it hears.

use std::collections::HashSet;
use std::fmt::Debug;
use std::marker::PhantomData;
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use futures_util::{SinkExt, StreamExt};
use leeward_core::wire::{FromDesk, FromStage, Order, Refusal, RoomState, ToDesk, ToStage, WIRE_VERSION};
use leeward_tests::{Browser, device};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use tokio::sync::mpsc;
use tokio::time::{sleep, timeout};
use tokio_tungstenite::tungstenite::client::IntoClientRequest;
use tokio_tungstenite::tungstenite::{Error, Message};
use tokio_tungstenite::{MaybeTlsStream, WebSocketStream, connect_async};

pub type Socket = WebSocketStream<MaybeTlsStream<tokio::net::TcpStream>>;

/// How long a test waits for anything.
const PATIENCE: Duration = Duration::from_secs(8);

/// What a socket was told so far.
#[derive(Default)]
struct Heard {
    messages: Vec<String>,
    closed: Option<Option<u16>>,
}

/// A page whose socket is open. Dropped, the socket closes as a lost page's does.
pub struct Page<In, Out> {
    heard: Arc<Mutex<Heard>>,
    out: mpsc::UnboundedSender<Message>,
    cursor: usize,
    next_order: u32,
    wire: PhantomData<(In, Out)>,
}

pub type Desk = Page<ToDesk, FromDesk>;
pub type Stage = Page<ToStage, FromStage>;

/// Asks for a socket with exactly this Origin. The status when it is refused.
pub async fn upgrade(browser: &Browser, house: &str, path: &str, origin: Option<&str>) -> Result<Socket, u16> {
    match connect(browser, house, path, origin).await {
        Ok(socket) => Ok(socket),
        Err(Error::Http(response)) => Err(response.status().as_u16()),
        Err(other) => panic!("the portal did not answer: {other}"),
    }
}

/// The same where no answer at all is one.
pub async fn connect(browser: &Browser, house: &str, path: &str, origin: Option<&str>) -> Result<Socket, Error> {
    let mut request = format!("{}{path}", house.replace("http", "ws")).into_client_request()?;
    let headers = request.headers_mut();
    headers.insert("cookie", browser.cookie_header().parse().unwrap());
    if let Some(origin) = origin {
        headers.insert("origin", origin.parse().unwrap());
    }
    connect_async(request).await.map(|(socket, _)| socket)
}

impl<In: DeserializeOwned + Debug, Out: Serialize> Page<In, Out> {
    /// Connects without saying anything.
    pub async fn silent(browser: &Browser, house: &str, path: &str) -> Self {
        let socket = upgrade(browser, house, path, Some(house)).await.expect("the socket opens");
        let heard = Arc::new(Mutex::new(Heard::default()));
        let (out, queue) = mpsc::unbounded_channel();
        tokio::spawn(live(socket, queue, heard.clone()));
        Self { heard, out, cursor: 0, next_order: 1, wire: PhantomData }
    }

    pub fn send(&self, message: &Out) {
        self.raw(Message::text(serde_json::to_string(message).unwrap()));
    }

    pub fn raw(&self, message: Message) {
        self.out.send(message).expect("the page is open");
    }

    /// The next message that `wanted` takes something from; what comes before it is passed over.
    pub async fn until<T>(&mut self, what: &str, mut wanted: impl FnMut(In) -> Option<T>) -> T {
        let end = Instant::now() + PATIENCE;
        loop {
            while let Some(text) = self.next() {
                let message = serde_json::from_str(&text).unwrap_or_else(|fault| panic!("not a message of the wire: {fault}: {text}"));
                if let Some(found) = wanted(message) {
                    return found;
                }
            }
            assert!(Instant::now() < end, "never heard: {what}; heard {:#?}", self.tail());
            sleep(Duration::from_millis(5)).await;
        }
    }

    fn next(&mut self) -> Option<String> {
        let text = self.heard.lock().unwrap().messages.get(self.cursor).cloned()?;
        self.cursor += 1;
        Some(text)
    }

    /// Everything heard so far.
    pub fn all(&self) -> Vec<In> {
        self.heard.lock().unwrap().messages.iter().map(|text| serde_json::from_str(text).unwrap()).collect()
    }

    fn tail(&self) -> Vec<String> {
        let heard = self.heard.lock().unwrap();
        let mut last: Vec<String> =
            heard.messages.iter().rev().filter(|text| !text.contains("\"type\":\"beat\"")).take(4).cloned().collect();
        last.push(format!("closed: {:?}", heard.closed));
        last
    }

    /// The code that the server closed with; `None` when the line just broke.
    pub async fn closed(&self) -> Option<u16> {
        let end = Instant::now() + PATIENCE;
        loop {
            if let Some(code) = self.heard.lock().unwrap().closed {
                return code;
            }
            assert!(Instant::now() < end, "the socket was never closed; heard {:#?}", self.tail());
            sleep(Duration::from_millis(5)).await;
        }
    }

    pub fn is_open(&self) -> bool {
        self.heard.lock().unwrap().closed.is_none()
    }
}

/// Plays the page's side until either side closes.
async fn live(mut socket: Socket, mut queue: mpsc::UnboundedReceiver<Message>, heard: Arc<Mutex<Heard>>) {
    let born = Instant::now();
    let mut drawn = 0;
    let mut shown = HashSet::new();
    let code = loop {
        tokio::select! {
            message = socket.next() => match message {
                Some(Ok(Message::Text(text))) => {
                    let value: Value = serde_json::from_str(&text).unwrap();
                    if value["type"] == "view" {
                        drawn = value["seq"].as_u64().unwrap();
                        if let Some(showing) = showing(&value).filter(|showing| shown.insert(showing.clone())) {
                            let _ = socket.send(Message::text(showing)).await;
                        }
                    }
                    if value["type"] == "beat" {
                        let page = born.elapsed().as_secs_f64() * 1_000.0;
                        let reply = json!({ "type": "beat", "id": value["id"], "page": page, "drawn": drawn });
                        let _ = socket.send(Message::text(reply.to_string())).await;
                    }
                    heard.lock().unwrap().messages.push(text.to_string());
                }
                Some(Ok(Message::Close(frame))) => break frame.map(|frame| u16::from(frame.code)),
                Some(Ok(_)) => {}
                Some(Err(_)) | None => break None,
            },
            message = queue.recv() => match message {
                Some(message) => { let _ = socket.send(message).await; }
                // The page is gone: no closing handshake, as when a lid is shut.
                None => return,
            },
        }
    };
    heard.lock().unwrap().closed = Some(code);
    // Answers the close, so that nothing is reset.
    let _ = timeout(Duration::from_millis(200), socket.next()).await;
}

/// What a client's page says of the set in a view: that it moves, or rests. A desk's view, or none of a set, brings nothing.
fn showing(view: &Value) -> Option<String> {
    let (set, moving) = (view["set"]["id"].as_str()?, view["set"]["ended"].is_null());
    let at = view["set"]["timeline"]["segments"][0]["starts_at"].as_f64().unwrap_or_default();
    let showing = json!({ "type": "showing", "set": set, "moving": moving, "at": at, "phase": 0.1, "rate": if moving { 0.2 } else { 0.0 }, "width": 18 });
    view.get("desk_knows").map(|_| showing.to_string())
}

impl Desk {
    pub async fn open(browser: &Browser, house: &str, session: uuid::Uuid) -> Self {
        let page = Self::silent(browser, house, &format!("/sessions/{session}/desk/socket")).await;
        page.send(&FromDesk::Hello { wire: WIRE_VERSION });
        page
    }

    /// The next view that `wanted` likes.
    pub async fn view(&mut self, what: &str, wanted: impl Fn(&leeward_core::wire::DeskView) -> bool) -> leeward_core::wire::DeskView {
        self.until(what, |message| match message {
            ToDesk::View(view) if wanted(&view) => Some(view),
            _ => None,
        })
        .await
    }

    /// Connects again as a page does, for as long as the old room still writes down its last: with the first view.
    pub async fn again(browser: &Browser, house: &str, session: uuid::Uuid) -> (Self, leeward_core::wire::DeskView) {
        let end = Instant::now() + PATIENCE;
        loop {
            let mut desk = Self::open(browser, house, session).await;
            match desk.first_view().await {
                Ok(view) => return (desk, view),
                Err(code) => assert_eq!(code, Some(1012), "told to come back"),
            }
            assert!(Instant::now() < end, "the room never opened again");
        }
    }

    /// Or the code that it was closed with.
    async fn first_view(&mut self) -> Result<leeward_core::wire::DeskView, Option<u16>> {
        loop {
            // Before the messages: what came with the closing counts still.
            let closed = self.heard.lock().unwrap().closed;
            while let Some(text) = self.next() {
                if let Ok(ToDesk::View(view)) = serde_json::from_str(&text) {
                    return Ok(view);
                }
            }
            if let Some(code) = closed {
                return Err(code);
            }
            sleep(Duration::from_millis(5)).await;
        }
    }

    /// Waits until the last view says READY; passes over nothing.
    pub async fn until_ready(&self) {
        let end = Instant::now() + PATIENCE;
        let last = || self.all().into_iter().rev().find_map(|message| if let ToDesk::View(view) = message { Some(view) } else { None });
        while last().is_none_or(|view| view.state != RoomState::Ready) {
            assert!(Instant::now() < end, "never ready: {:#?}", last());
            sleep(Duration::from_millis(5)).await;
        }
    }

    /// Gives an order in `epoch` and waits for what became of it.
    pub async fn order(&mut self, epoch: u32, order: Order) -> Option<Refusal> {
        let id = self.next_order;
        self.next_order += 1;
        let what = format!("an answer to {order:?}");
        self.send(&FromDesk::Order { epoch, id, order });
        self.until(&what, |message| match message {
            ToDesk::Answer { id: answered, refused } if answered == id => Some(refused),
            _ => None,
        })
        .await
    }

    /// As [`Self::order`], without passing over the views that come before the answer.
    pub fn order_only(&mut self, epoch: u32, order: Order) {
        let id = self.next_order;
        self.next_order += 1;
        self.send(&FromDesk::Order { epoch, id, order });
    }
}

impl Stage {
    pub async fn open(browser: &Browser, house: &str) -> Self {
        let page = Self::silent(browser, house, "/stage/socket").await;
        page.send(&FromStage::Hello { wire: WIRE_VERSION, device: device() });
        page
    }

    pub async fn view(&mut self, what: &str, wanted: impl Fn(&leeward_core::wire::StageView) -> bool) -> leeward_core::wire::StageView {
        self.until(what, |message| match message {
            ToStage::View(view) if wanted(&view) => Some(view),
            _ => None,
        })
        .await
    }
}
