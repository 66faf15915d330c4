//! The seat of a room: the device that has it, and those that ask for it.

use leeward_core::room::{Event, Facts};
use leeward_core::wire::FromStage;
use tokio::time::Instant;
use uuid::Uuid;

use super::queries_room::{SeatRow, Standing};
use super::recorder::Job;
use super::room_task::{READING, RoomTask};
use super::socket_end::{Out, SocketEnd, closing};

/// How far the reading of the record has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Reading {
    Done,
    UnderWay,
    /// Under way, and wanted once more after that.
    Again,
}

impl RoomTask {
    pub(super) fn stage_opened(&mut self, socket: u64, line: SocketEnd) {
        let waits = line.waits();
        self.lines.insert(socket, line);
        if !waits {
            self.tell(Event::StageJoined { stage: socket });
        }
        // The seat may be newer than what was read, or have moved since it was asked for.
        self.read_record();
    }

    pub(super) fn stage_said(&mut self, stage: u64, said: FromStage) {
        let Some(seat) = self.lines.get(&stage).filter(|line| line.waits()).map(SocketEnd::seat) else {
            return self.tell(Event::StageSaid { stage, said });
        };
        self.waiting_said(stage, seat, said);
    }

    /// As in the room, a socket takes another's place once its page speaks.
    pub(super) fn replace_waiting(&mut self, stage: u64, seat: Option<Uuid>) {
        let earlier = |(id, old): &(&u64, &SocketEnd)| **id != stage && old.waits() && old.seat() == seat;
        let earlier: Vec<u64> = self.lines.iter().filter(earlier).map(|(id, _)| *id).collect();
        for id in earlier {
            self.close(id, closing::REPLACED);
        }
    }

    /// Has the record read again, after what is still to be written.
    pub(super) fn read_record(&mut self) {
        self.next_reading = Instant::now() + READING;
        self.look_at_clock();
        match self.reading {
            Reading::Done => {
                self.reading = Reading::UnderWay;
                self.write(Job::Facts);
            }
            // It may have looked already, and then it has not seen what this one is about.
            Reading::UnderWay | Reading::Again => self.reading = Reading::Again,
        }
    }

    /// The record could not be read; the next beat tries again.
    pub(super) fn record_not_read(&mut self) {
        self.reading = Reading::Done;
    }

    /// Follows what the record says.
    pub(super) fn record_read(&mut self, facts: Facts, seats: Vec<SeatRow>) {
        let again = std::mem::replace(&mut self.reading, Reading::Done) == Reading::Again;
        self.seats = seats;
        let ended = facts.ended.is_some();
        // Before sockets are closed: who has left has stopped what ran, and is no lost line.
        self.tell(Event::Facts(facts));
        for (socket, out) in self.outdated_stages(again) {
            self.close(socket, out);
        }
        if again {
            self.read_record();
        }
        if ended {
            self.over = Some(closing::OVER);
        }
    }

    /// Client sockets whose seat is not what it was when they opened. A seat that may be newer than what was read waits for
    /// the reading that is to follow.
    fn outdated_stages(&self, read_again: bool) -> Vec<(u64, Out)> {
        let outdated = |(socket, line): (&u64, &SocketEnd)| {
            let seat = line.seat()?;
            match self.seats.iter().find(|row| row.id == seat) {
                None if read_again => None,
                None => Some((*socket, closing::SEAT_CLOSED)),
                // Whoever sits there reads the words of an end, and no reason.
                Some(row) if row.standing == Standing::Removed => Some((*socket, closing::OVER)),
                Some(row) if row.standing == Standing::Left => Some((*socket, closing::SEAT_CLOSED)),
                // It has the seat now: it comes in again through the same door as everybody.
                Some(row) if row.standing != Standing::Asks && line.waits() => Some((*socket, closing::COME_BACK)),
                Some(_) => None,
            }
        };
        self.lines.iter().filter_map(outdated).collect()
    }
}
