//! A page's socket without the page: it connects, says hello and answers beats.

use std::time::Instant;

use leeward::base::origin::Origin;
use leeward_core::wire::{BeatReply, FromDesk, FromStage, WIRE_VERSION};
use leeward_tests::device;
use serde::Serialize;
use tokio::net::TcpStream;
use tokio_tungstenite::tungstenite::Message;
use tokio_tungstenite::tungstenite::client::IntoClientRequest;
use tokio_tungstenite::tungstenite::protocol::WebSocketConfig;
use tokio_tungstenite::{WebSocketStream, client_async_with_config};

use crate::practice::Room;

/// An open socket.
pub type Socket = WebSocketStream<TcpStream>;

/// Where the portal is.
#[derive(Clone)]
pub struct Portal {
    origin: Origin,
}

impl Portal {
    /// The portal of this origin on this machine.
    pub fn new(origin: &str) -> Self {
        Self { origin: Origin::parse(origin).expect("a good origin") }
    }

    /// The desk's socket, greeted.
    pub async fn desk(&self, room: &Room) -> Socket {
        let mut socket = self.open(&format!("/sessions/{}/desk/socket", room.session), &room.desk).await;
        say(&mut socket, &FromDesk::Hello { wire: WIRE_VERSION }).await;
        socket
    }

    /// The stage's socket, greeted.
    pub async fn stage(&self, room: &Room) -> Socket {
        let mut socket = self.open("/stage/socket", &room.stage).await;
        say(&mut socket, &FromStage::Hello { wire: WIRE_VERSION, device: device() }).await;
        socket
    }

    async fn open(&self, path: &str, cookie: &str) -> Socket {
        let stream = TcpStream::connect(("127.0.0.1", self.origin.port)).await.expect("the portal listens");
        stream.set_nodelay(true).expect("the socket takes it");
        let mut request = format!("{}{path}", self.origin.text.replace("http", "ws")).into_client_request().expect("a request");
        request.headers_mut().insert("cookie", cookie.parse().expect("a header"));
        request.headers_mut().insert("origin", self.origin.text.parse().expect("a header"));
        let config = WebSocketConfig::default().read_buffer_size(2 * 1024).write_buffer_size(0);
        client_async_with_config(request, stream, Some(config)).await.expect("the portal opens the socket").0
    }
}

/// Sends a message of the wire. That the portal has closed the socket is noticed where it is read.
pub async fn say(socket: &mut Socket, message: &impl Serialize) {
    send(socket, Message::text(serde_json::to_string(message).expect("a message is JSON"))).await;
}

/// As [`say`], of what is a message of WebSocket already.
pub async fn send(socket: &mut Socket, message: Message) {
    use futures_util::SinkExt;
    let _ = socket.send(message).await;
}

/// What a page answers beats with.
pub struct Answers {
    born: Instant,
    /// The latest view.
    pub drawn: u32,
}

impl Answers {
    /// Of a page that has just opened.
    pub fn new() -> Self {
        Self { born: Instant::now(), drawn: 0 }
    }

    /// The answer to the beat `id`. Desks and stages answer in the same words.
    pub fn beat(&self, id: u32) -> FromStage {
        FromStage::Beat(BeatReply { id, page: self.born.elapsed().as_secs_f64() * 1_000.0, drawn: self.drawn })
    }
}
