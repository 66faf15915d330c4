//! The seat of a room: the device that has it, and those that ask for it.

use leeward_core::room::{Event, Facts};
use leeward_core::wire::FromStage;
use tokio::time::Instant;
use uuid::Uuid;

use super::clerk::Job;
use super::line::{Line, Out, closing};
use super::queries_room::{SeatRow, Standing};
use super::room_task::{Keeper, READING};

impl Keeper {
    pub(super) fn stage_opened(&mut self, socket: u64, line: Line) {
        let waits = line.waits();
        self.lines.insert(socket, line);
        if !waits {
            self.tell(Event::StageJoined { stage: socket });
        }
        // The seat may be newer than what was read, or have moved since it was asked for.
        self.read_record();
    }

    pub(super) fn stage_said(&mut self, stage: u64, said: FromStage) {
        let Some(seat) = self.lines.get(&stage).filter(|line| line.waits()).map(Line::seat) else {
            return self.tell(Event::StageSaid { stage, said });
        };
        self.waiting_said(stage, seat, said);
    }

    /// As in the room, a socket takes another's place once its page speaks.
    pub(super) fn replace_waiting(&mut self, stage: u64, seat: Option<Uuid>) {
        let earlier = |(id, old): &(&u64, &Line)| **id != stage && old.waits() && old.seat() == seat;
        let earlier: Vec<u64> = self.lines.iter().filter(earlier).map(|(id, _)| *id).collect();
        for id in earlier {
            self.close(id, closing::REPLACED);
        }
    }

    /// Has the record read again, after what is still to be written.
    pub(super) fn read_record(&mut self) {
        self.next_reading = Instant::now() + READING;
        self.look_at_clock();
        // One that waits already will read what this one is about.
        if !std::mem::replace(&mut self.reading, true) {
            self.write(Job::Facts);
        }
    }

    /// Follows what the record says.
    pub(super) fn record_read(&mut self, facts: Facts, seats: Vec<SeatRow>) {
        self.reading = false;
        self.seats = seats;
        for (socket, out) in self.outdated_stages() {
            self.close(socket, out);
        }
        let ended = facts.ended.is_some();
        self.tell(Event::Facts(facts));
        if ended {
            self.over = Some(closing::OVER);
        }
    }

    /// Client sockets whose seat is not what it was when they opened.
    fn outdated_stages(&self) -> Vec<(u64, Out)> {
        let outdated = |(socket, line): (&u64, &Line)| {
            let seat = line.seat()?;
            match self.seats.iter().find(|row| row.id == seat) {
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
