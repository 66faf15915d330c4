//! Sockets: bytes in and out. What they mean is the room's.

use std::time::Duration;

use axum::extract::ws::rejection::WebSocketUpgradeRejection;
use axum::extract::ws::{CloseFrame, Message, Utf8Bytes, WebSocket, WebSocketUpgrade};
use axum::extract::{Extension, State};
use axum::http::HeaderMap;
use axum::response::Response;
use futures_util::stream::{SplitSink, SplitStream};
use futures_util::{Sink, SinkExt, StreamExt};
use serde::de::DeserializeOwned;
use tokio::sync::mpsc;
use tokio::sync::watch::Receiver;
use tokio::time::{MissedTickBehavior, interval, sleep, timeout};
use uuid::Uuid;

use super::crowd::SeatPlace;
use super::hub::RoomHandle;
use super::queries;
use super::room_task::Mail;
use super::socket_end::{Out, closing, outbox};
use super::{stage, waiting_alone};
use crate::platform::App;
use crate::platform::forms::Id;
use crate::platform::security::Caller;
use crate::platform::{Member, Seat};
use crate::store::error::Error;
use crate::store::patience::{ANSWER, within};
use crate::store::subject::Act;

/// No message and no frame is larger, bytes: a set that is handed back, of as many changes as a set may have, takes some 32,000.
const LARGEST: usize = 48 * 1024;
/// Read at once, bytes: each socket holds this much all the time.
const READ_BUFFER: usize = 4 * 1024;
/// Gathered before it is written, and the most that may wait, bytes.
const WRITE_BUFFER: usize = 4 * 1024;
const MOST_UNWRITTEN: usize = 256 * 1024;
/// One message is on its way within this time, or the line is dead.
const WRITTEN_WITHIN: Duration = Duration::from_secs(5);
/// A closing page is given this long to hear why.
const LINGER: Duration = Duration::from_millis(500);
/// How often a desk's right to be there is asked for again; also keeps its sign-in from idling out.
const MINUTE: Duration = Duration::from_secs(60);

type Upgrade = Result<WebSocketUpgrade, WebSocketUpgradeRejection>;

/// `GET /sessions/{session}/desk/socket`. A desk whose session was closed in another window while it was away is told
/// so, as a seat is (below).
pub(super) async fn desk(State(app): State<App>, member: Member, Id(session): Id, upgrade: Upgrade) -> Result<Response, Error> {
    // Heard from now on, so that nothing that is taken away falls between the check and the socket.
    let revocations = app.revocations.subscribe();
    let mut tx = app.database.act(&member.subject, Act::new("desk.connect").object(session)).await?;
    let found = queries::session(&mut tx, session).await?;
    tx.concerns(found.client);
    tx.commit().await?;
    let upgrade = upgrade.map_err(not_a_socket)?;
    if found.ended_at.is_some() {
        return Ok(told_it_is_over(upgrade));
    }
    let room = app.rooms().enter(&app, &member.subject, session).await?;
    let id = app.rooms().new_socket();
    Ok(limited(upgrade).on_upgrade(move |socket| {
        let halves = socket.split();
        async move {
            let (out, queue) = outbox();
            let joined = Mail::Desk { socket: id, out };
            let gone = signed_out(&app, &member, session, revocations);
            run(halves, id, room, joined, queue, |id, said| Mail::FromDesk(id, Box::new(said)), gone).await;
        }
    }))
}

/// `GET /stage/socket`. A seat whose session ended while its page was away is told so: a refused upgrade
/// would look to the page like one more lost line.
pub(super) async fn stage(
    State(app): State<App>,
    place: SeatPlace,
    seat: Result<Seat, Error>,
    Extension(Caller(address)): Extension<Caller>,
    headers: HeaderMap,
    upgrade: Upgrade,
) -> Result<Response, Error> {
    let seat = match seat {
        Err(Error::SeatNeeded) if stage::seat_is_late(&app, &headers).await? => {
            return Ok(told_it_is_over(upgrade.map_err(not_a_socket)?));
        }
        seat => seat?,
    };
    let upgrade = upgrade.map_err(not_a_socket)?;
    let waiting = if seat.taken { None } else { Some(app.rooms().crowd().waiting(seat.session, address)?) };
    // A device that only asks opens no room: it goes into the one that is there, or waits until there is one.
    let room = match app.rooms().find(seat.session) {
        Some(room) => room,
        None if seat.taken => app.rooms().enter(&app, &seat.subject, seat.session).await?,
        None => {
            return Ok(limited(upgrade).on_upgrade(move |socket| {
                let mut halves = socket.split();
                async move {
                    let last = waiting_alone::wait(&mut halves, &app, &seat).await;
                    end(&mut halves.0, last).await;
                    drop((place, waiting));
                }
            }));
        }
    };
    let id = app.rooms().new_socket();
    Ok(limited(upgrade).on_upgrade(move |socket| {
        let halves = socket.split();
        async move {
            let (out, queue) = outbox();
            let joined = Mail::Stage { socket: id, seat: seat.id, taken: seat.taken, out };
            run(halves, id, room, joined, queue, |id, said| Mail::FromStage(id, Box::new(said)), std::future::pending()).await;
            // Until now this connection was held.
            drop((place, waiting));
        }
    }))
}

fn told_it_is_over(upgrade: WebSocketUpgrade) -> Response {
    limited(upgrade).on_upgrade(|mut socket| async move { close(&mut socket, closing::OVER).await })
}

fn not_a_socket(_: WebSocketUpgradeRejection) -> Error {
    Error::BadRequest("This address is for the page's own live connection. Open the page instead.")
}

fn limited(upgrade: WebSocketUpgrade) -> WebSocketUpgrade {
    upgrade
        .max_message_size(LARGEST)
        .max_frame_size(LARGEST)
        .read_buffer_size(READ_BUFFER)
        .write_buffer_size(WRITE_BUFFER)
        .max_write_buffer_size(MOST_UNWRITTEN)
}

/// Both halves of one socket. They are split before they reach a future, for a socket is large, and a future keeps
/// room for each place that it was moved to.
pub(super) type Halves = (SplitSink<WebSocket, Message>, SplitStream<WebSocket>);

/// Serves one socket until either half ends or `gone` says so.
async fn run<M: DeserializeOwned>(
    (mut sink, mut stream): Halves,
    id: u64,
    room: RoomHandle,
    joined: Mail,
    mut queue: mpsc::Receiver<Out>,
    wrap: fn(u64, M) -> Mail,
    gone: impl Future<Output = Out>,
) {
    if room.mail.send(joined).await.is_err() {
        return close(&mut sink, closing::COME_BACK).await;
    }
    let last = tokio::select! {
        last = read(&mut stream, &room, |message| wrap(id, message)) => last,
        last = write(&mut sink, &mut queue) => last,
        last = gone => Some(last),
    };
    // A room that has ended has forgotten this socket anyway.
    let _ = room.mail.send(Mail::Left(id)).await;
    end(&mut sink, last).await;
}

/// With `None` nobody is there to be told why.
async fn end(sink: &mut SplitSink<WebSocket, Message>, last: Option<Out>) {
    match last {
        Some(last) => close(sink, last).await,
        None => drop(timeout(LINGER, sink.close()).await),
    }
}

/// Reads until the page closes, breaks a rule, or the room has ended. `None`: nobody is there to be told why.
async fn read<M: DeserializeOwned>(stream: &mut SplitStream<WebSocket>, room: &RoomHandle, wrap: impl Fn(M) -> Mail) -> Option<Out> {
    while let Some(message) = stream.next().await {
        match said(message) {
            Ok(Some(message)) => {
                if room.mail.send(wrap(message)).await.is_err() {
                    return Some(closing::COME_BACK);
                }
            }
            Ok(None) => {}
            Err(last) => return last,
        }
    }
    None
}

/// What a page said; `Ok(None)`: nothing to us. `Err`: how its socket ends.
pub(super) fn said<M: DeserializeOwned>(message: Result<Message, axum::Error>) -> Result<Option<M>, Option<Out>> {
    let text = match message {
        Ok(Message::Text(text)) => text,
        Ok(Message::Ping(_) | Message::Pong(_)) => return Ok(None),
        Ok(Message::Binary(_)) => return Err(Some(closing::BINARY)),
        Ok(Message::Close(_)) => return Err(None),
        Err(fault) => return Err(broken(fault)),
    };
    // A text that is JSON but no message of this page is a breach, not a broken line.
    let fault = |fault: serde_json::Error| Some(if fault.is_data() { closing::UNKNOWN } else { closing::MALFORMED });
    serde_json::from_str(&text).map(Some).map_err(fault)
}

fn broken(fault: axum::Error) -> Option<Out> {
    use tungstenite::Error as Fault;
    match fault.into_inner().downcast_ref::<Fault>() {
        Some(Fault::Capacity(_)) => Some(closing::TOO_LARGE),
        Some(Fault::Utf8(_)) => Some(closing::MALFORMED),
        Some(Fault::Protocol(_)) => Some(closing::PROTOCOL),
        _ => None,
    }
}

/// Writes until the room says the last, or lets go of this socket.
async fn write(sink: &mut SplitSink<WebSocket, Message>, queue: &mut mpsc::Receiver<Out>) -> Option<Out> {
    loop {
        match queue.recv().await {
            Some(Out::Text(text)) => {
                if !put(sink, text).await {
                    return None;
                }
            }
            Some(last) => return Some(last),
            None => return Some(closing::TOO_SLOW),
        }
    }
}

/// False when the line is dead.
pub(super) async fn put(sink: &mut SplitSink<WebSocket, Message>, text: String) -> bool {
    matches!(timeout(WRITTEN_WITHIN, sink.send(Message::Text(text.into()))).await, Ok(Ok(())))
}

async fn close(sink: &mut (impl Sink<Message> + Unpin), last: Out) {
    let Out::Close(code, reason) = last else { return };
    tracing::info!(code, reason, "a live socket was closed");
    let frame = CloseFrame { code, reason: Utf8Bytes::from_static(reason) };
    // Nothing more is read, and unread bytes would reset the line: the page hears why first.
    if timeout(LINGER, sink.send(Message::Close(Some(frame)))).await.is_ok_and(|sent| sent.is_ok()) {
        sleep(LINGER).await;
    }
}

/// Waits until the member may not be here any more.
async fn signed_out(app: &App, member: &Member, session: Uuid, mut revocations: Receiver<()>) -> Out {
    let mut minute = interval(MINUTE);
    minute.set_missed_tick_behavior(MissedTickBehavior::Delay);
    loop {
        let told = tokio::select! {
            told = revocations.changed() => told,
            _ = minute.tick() => Ok(()),
        };
        if told.is_err() {
            return closing::COME_BACK;
        }
        // Boxed: otherwise each open desk would keep room for a question that it asks once a minute.
        if let Some(why) = Box::pin(sent_away(app, member, session)).await {
            return why;
        }
    }
}

/// Why a desk may not stay, if it may not: sign-in and care have to hold. While the database does not answer, nobody is sent away.
async fn sent_away(app: &App, member: &Member, session: Uuid) -> Option<Out> {
    let asked = async {
        let mut tx = app.database.look(&member.subject).await?;
        let why = match queries::still_there(&mut tx, session).await? {
            (true, true) => None,
            (true, false) => Some(closing::HANDED_OVER),
            (false, _) => Some(closing::SIGNED_OUT),
        };
        tx.commit().await?;
        Ok::<_, Error>(why)
    };
    within(ANSWER, asked).await.unwrap_or_else(|fault| {
        tracing::warn!(%fault, "a desk's sign-in could not be looked at");
        None
    })
}
