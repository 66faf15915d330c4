//! A room's end of one socket.

use leeward_core::room::{Conduct, Event};
use tokio::sync::mpsc;
use uuid::Uuid;

/// What a socket may fall behind by. Views carry the whole room, so one that is this late is of no
/// use any more: it is closed and asks anew.
const QUEUE: usize = 64;

/// What a socket is told to do.
#[derive(Clone, Debug)]
pub(super) enum Out {
    /// Send this text.
    Text(String),
    /// Close with this code and reason, after all before it was sent.
    Close(u16, &'static str),
}

/// Close codes and what they mean (RFC 6455, 7.4; 4000 and above are our own). Pages try again
/// after a code below 4000 other than 1008. The codes of the room itself stand in `room::Why`.
pub(super) mod closing {
    use super::Out;

    /// The session is over.
    pub const OVER: Out = Out::Close(4000, "the session is over");
    /// A newer socket of the same device.
    pub const REPLACED: Out = Out::Close(4001, "opened elsewhere");
    /// The seat was moved to another device, refused, or left.
    pub const SEAT_CLOSED: Out = Out::Close(4004, "this device has no seat");
    /// The member's sign-in has ended.
    pub const SIGNED_OUT: Out = Out::Close(4005, "signed out");
    /// The client is not theirs any more.
    pub const HANDED_OVER: Out = Out::Close(4006, "the client was handed over");
    /// The room starts anew: connect again.
    pub const COME_BACK: Out = Out::Close(1012, "connect again");
    /// The page did not take what it was sent.
    pub const TOO_SLOW: Out = Out::Close(1013, "too far behind");
    /// Messages are text.
    pub const BINARY: Out = Out::Close(1003, "messages are text");
    /// Not JSON, or not UTF-8.
    pub const MALFORMED: Out = Out::Close(1007, "not readable");
    /// JSON, but no message that this socket may send.
    pub const UNKNOWN: Out = Out::Close(1008, "not a message of this page");
    /// Above the limit.
    pub const TOO_LARGE: Out = Out::Close(1009, "too long");
    /// Broke the WebSocket protocol itself.
    pub const PROTOCOL: Out = Out::Close(1002, "broken frame");
}

/// The room's end of a socket's queue.
#[derive(Clone)]
pub(super) struct Outbox(mpsc::Sender<Out>);

/// A queue for a new socket.
pub(super) fn outbox() -> (Outbox, mpsc::Receiver<Out>) {
    let (sender, queue) = mpsc::channel(QUEUE);
    (Outbox(sender), queue)
}

impl Outbox {
    /// False when the queue is full or the socket has gone; then let go of the outbox.
    pub(super) fn send(&self, text: String) -> bool {
        self.0.try_send(Out::Text(text)).is_ok()
    }

    /// Half of what the socket may fall behind by waits in it.
    pub(super) fn is_behind(&self) -> bool {
        self.0.capacity() <= QUEUE / 2
    }

    /// The last thing the socket is told.
    pub(super) fn close(&self, last: Out) {
        // A full queue ends in a close as well, once the outbox is let go.
        let _ = self.0.try_send(last);
    }
}

/// A socket as its room knows it.
pub(super) struct SocketEnd {
    pub out: Outbox,
    end: End,
}

enum End {
    Desk,
    /// With conduct of its own while it only asks for the seat; for the others the room has them.
    Stage {
        seat: Uuid,
        waits: Option<Box<Conduct>>,
    },
}

impl SocketEnd {
    pub(super) fn desk(out: Outbox) -> Self {
        Self { out, end: End::Desk }
    }

    /// `waits`: it only asks for the seat.
    pub(super) fn stage(out: Outbox, seat: Uuid, waits: Option<Box<Conduct>>) -> Self {
        Self { out, end: End::Stage { seat, waits } }
    }

    pub(super) fn waits(&self) -> bool {
        matches!(self.end, End::Stage { waits: Some(_), .. })
    }

    /// Of a device that only asks for the seat.
    pub(super) fn conduct(&mut self) -> Option<&mut Conduct> {
        match &mut self.end {
            End::Stage { waits, .. } => waits.as_deref_mut(),
            End::Desk => None,
        }
    }

    /// Room time at which something is due to such a device, ms.
    pub(super) fn waiting_due(&self) -> Option<f64> {
        match &self.end {
            End::Stage { waits, .. } => waits.as_deref().map(Conduct::next_wake),
            End::Desk => None,
        }
    }

    pub(super) fn seat(&self) -> Option<Uuid> {
        match self.end {
            End::Desk => None,
            End::Stage { seat, .. } => Some(seat),
        }
    }

    /// What the room hears when this socket goes: nothing if it never was in the room.
    pub(super) fn left(&self, socket: u64) -> Option<Event> {
        match self.end {
            End::Desk => Some(Event::DeskLeft { desk: socket }),
            End::Stage { waits: None, .. } => Some(Event::StageLeft { stage: socket }),
            End::Stage { waits: Some(_), .. } => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn a_page_that_does_not_read_fills_its_queue_and_no_more() {
        let (out, mut queue) = outbox();
        let taken = (0..1_000).take_while(|number| out.send(number.to_string())).count();
        assert_eq!(taken, QUEUE);
        out.close(closing::OVER);
        drop(out);
        let mut written = 0;
        while let Some(Out::Text(_)) = queue.recv().await {
            written += 1;
        }
        assert_eq!(written, QUEUE, "what was taken is written, then the queue ends without a last word");
    }
}
