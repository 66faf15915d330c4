//! Devices that ask for the seat while another has it: held to the same conduct as an admitted one, and told as little as
//! can be. Where no room is open they wait alone (`waiting_alone`), in the same way.

use leeward_core::room::{Conduct, Why};
use leeward_core::wire::{FromStage, Needs, RoomState, StageView, ToStage};
use tokio::time::Instant;
use uuid::Uuid;

use super::room_task::{RoomTask, WAITING_VIEW};
use super::socket_end::{Out, SocketEnd};

/// RFC 6455, 7.4.1: a breach of policy.
const BREACH: u16 = 1008;

/// What such a device may say: who it is, and that it is still there. True when it greets.
///
/// # Errors
/// What it is closed with.
pub(super) fn hear(conduct: &mut Conduct, now: f64, last_view: u32, said: FromStage) -> Result<bool, Out> {
    let greets = matches!(said, FromStage::Hello { .. });
    let heard = conduct.hear(now).and_then(|()| match said {
        FromStage::Hello { .. } if conduct.greeted => Err("hello comes once"),
        FromStage::Hello { .. } => {
            conduct.greet(now);
            Ok(())
        }
        _ if !conduct.greeted => Err("hello comes first"),
        FromStage::Beat(reply) => conduct.answered(reply, now, last_view),
        FromStage::Device { .. } => Ok(()),
        _ => Err("this device has no seat yet"),
    });
    heard.map(|()| greets).map_err(|words| Out::Close(BREACH, words))
}

/// What one is closed with that is not heard any more.
pub(super) fn silent() -> Out {
    Out::Close(Why::Silent.code(), Why::Silent.reason())
}

/// All that a device learns before it has the seat.
pub(super) fn view(seq: u32) -> ToStage {
    ToStage::View(StageView {
        epoch: 0,
        seq,
        state: RoomState::Waiting,
        needs: Needs::default(),
        set: None,
        desk_knows: false,
        desk_here: false,
        figure: false,
        sides_asked: 0,
        closing_words: None,
        steadying: None,
        pad: None,
        longer: false,
    })
}

impl RoomTask {
    pub(super) fn waiting_said(&mut self, socket: u64, seat: Option<Uuid>, said: FromStage) {
        let (now, last_view) = (self.now(), self.waiting_views);
        let Some(conduct) = self.lines.get_mut(&socket).and_then(SocketEnd::conduct) else { return };
        let greets = match hear(conduct, now, last_view, said) {
            Ok(greets) => greets,
            Err(last) => return self.close(socket, last),
        };
        if greets {
            self.replace_waiting(socket, seat);
            self.show_waiting(&[socket]);
        }
    }

    /// What is due to them: beats, the view, the end of one that is silent.
    pub(super) fn watch_waiting(&mut self) {
        let now = self.now();
        let (mut gone, mut beats, mut greeted) = (Vec::new(), Vec::new(), Vec::new());
        for (socket, line) in &mut self.lines {
            let Some(conduct) = line.conduct() else { continue };
            if conduct.is_dead(now) {
                gone.push(*socket);
                continue;
            }
            greeted.extend(conduct.greeted.then_some(*socket));
            beats.extend(conduct.beat(now, false, (None, 0.0)).map(|beat| (*socket, beat)));
        }
        for socket in gone {
            self.close(socket, silent());
        }
        for (socket, beat) in beats {
            self.send(socket, &ToStage::Beat(beat));
        }
        if Instant::now() >= self.next_waiting_view {
            self.next_waiting_view = Instant::now() + WAITING_VIEW;
            self.show_waiting(&greeted);
        }
    }

    /// Room time at which something is due to one of them, ms.
    pub(super) fn waiting_due(&self) -> Option<f64> {
        self.lines.values().filter_map(SocketEnd::waiting_due).min_by(f64::total_cmp)
    }

    fn show_waiting(&mut self, sockets: &[u64]) {
        self.waiting_views += 1;
        let seq = self.waiting_views;
        let view = view(seq);
        for socket in sockets {
            if let Some(conduct) = self.lines.get_mut(socket).and_then(SocketEnd::conduct) {
                conduct.view_sent(seq);
            }
            self.send(*socket, &view);
        }
    }
}
