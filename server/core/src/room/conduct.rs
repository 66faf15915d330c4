//! One socket: signs of life, the clock exchange, delay, and a budget of messages.

use std::collections::VecDeque;

use super::caller::Caller;
use crate::wire::{Beat, BeatReply, Echo, FromCaller};

/// Beats while a client is admitted, ms.
pub(super) const LIVE_BEAT_MS: f64 = 250.0;
/// Beats otherwise, ms.
pub(super) const SLOW_BEAT_MS: f64 = 5_000.0;
/// The first beats of a socket, to settle the clock.
const QUICK_BEAT_MS: f64 = 50.0;
const QUICK_BEATS: u32 = 20;
/// A socket that says nothing for this long is closed, ms: TCP alone takes minutes.
const DEAD_MS: f64 = 20_000.0;
/// Round trips remembered for the delay.
const TRIPS: usize = 15;
/// A round trip may exceed the median by this factor and still be the line's, not somebody's silence.
const USUAL: f64 = 1.5;
/// Beats without answer that are remembered.
const UNANSWERED: usize = 128;
/// Far above what a page sends; a page that sends more is broken or hostile.
const MESSAGES_PER_SECOND: u32 = 100;
/// No page lives this long, ms (31 years).
const LONGEST_PAGE_MS: f64 = 1e12;

/// What one socket is held to. Those in the room have it there; devices that wait outside are held to the same by who keeps
/// them.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub struct Conduct {
    /// It has said hello.
    pub greeted: bool,
    /// A view is due to this socket even if nothing changed.
    pub wants_view: bool,
    /// Room time at which it was heard last, ms.
    pub heard: f64,
    /// The page was there at this time, and may not have been later: when the last beat was sent that it answered, or the socket
    /// opened. How long an answer was on its way is not known, so its arrival proves nothing.
    pub alive: f64,
    /// So much of the silence since `alive` was the way of that beat and its answer, ms, as far as that is usual here. By it a sign is
    /// as old when it is heard, though nobody was silent.
    pub trip: f64,
    /// A beat went out that carried an echo: with it a page knows the room's time.
    pub in_step: bool,
    /// The highest `seq` that this page has drawn of those sent to this socket.
    pub drawn: u32,
    first_view: Option<u32>,
    next_id: u32,
    next_beat: f64,
    unanswered: VecDeque<(u32, f64)>,
    echo: Option<Echo>,
    trips: VecDeque<f64>,
    second: f64,
    in_second: u32,
    /// What it may still say about the call.
    pub(super) caller: Caller,
}

impl Conduct {
    /// A socket that opened at room time `now`, ms.
    pub fn new(now: f64) -> Self {
        Conduct {
            greeted: false,
            wants_view: false,
            heard: now,
            alive: now,
            trip: 0.0,
            in_step: false,
            drawn: 0,
            first_view: None,
            next_id: 0,
            next_beat: now,
            unanswered: VecDeque::new(),
            echo: None,
            trips: VecDeque::new(),
            second: now,
            in_second: 0,
            caller: Caller::new(now),
        }
    }

    /// It said hello.
    pub fn greet(&mut self, now: f64) {
        self.greeted = true;
        self.wants_view = true;
        self.next_beat = now;
    }

    /// Counts a message.
    ///
    /// # Errors
    /// The words for the close when there are too many.
    pub fn hear(&mut self, now: f64) -> Result<(), &'static str> {
        self.heard = now;
        if now - self.second >= 1_000.0 {
            self.second = now;
            self.in_second = 0;
        }
        self.in_second += 1;
        if self.in_second > MESSAGES_PER_SECOND {
            return Err("too many messages");
        }
        Ok(())
    }

    /// Takes a sign of life from what has a budget of its own; whether it is looked at.
    ///
    /// # Errors
    /// The words for the close when it floods the line.
    pub(super) fn hear_caller(&mut self, said: &FromCaller, now: f64) -> Result<bool, &'static str> {
        self.heard = now;
        self.caller.may(said, now)
    }

    /// The view with this `seq` went out to it.
    pub fn view_sent(&mut self, seq: u32) {
        self.wants_view = false;
        self.first_view.get_or_insert(seq);
    }

    /// The next beat comes no later than `at`.
    pub fn beat_at(&mut self, at: f64) {
        self.next_beat = self.next_beat.min(at);
    }

    /// The beat that is due, if one is. The first comes after the first view: by that a page learns that room time began anew.
    /// `desk`: what the stage is told of the desk's silence and round trip.
    pub fn beat(&mut self, now: f64, live: bool, desk: (Option<f64>, f64)) -> Option<Beat> {
        if self.first_view.is_none() || now < self.next_beat {
            return None;
        }
        let id = self.next_id;
        self.next_id += 1;
        self.next_beat = now + self.pace(live);
        if self.unanswered.len() == UNANSWERED {
            self.unanswered.pop_front();
        }
        self.unanswered.push_back((id, now));
        self.in_step |= self.echo.is_some();
        let (desk_silent, desk_trip) = desk;
        Some(Beat { id, sent: now, echo: self.echo, desk_silent, desk_trip })
    }

    fn pace(&self, live: bool) -> f64 {
        if self.next_id < QUICK_BEATS {
            QUICK_BEAT_MS
        } else if live {
            LIVE_BEAT_MS
        } else {
            SLOW_BEAT_MS
        }
    }

    /// Takes in an answer; `last_view` is the latest view of the room.
    ///
    /// # Errors
    /// The words for the close when the answer is impossible.
    pub fn answered(&mut self, reply: BeatReply, now: f64, last_view: u32) -> Result<(), &'static str> {
        if reply.id >= self.next_id {
            return Err("an answer to a beat that was never sent");
        }
        if !(0.0..=LONGEST_PAGE_MS).contains(&reply.page) {
            return Err("an impossible page time");
        }
        self.note_drawn(reply.drawn, last_view);
        let Some(place) = self.unanswered.iter().position(|(id, _)| *id == reply.id) else {
            return Ok(());
        };
        let sent = self.unanswered[place].1;
        self.unanswered.drain(..=place);
        if self.trips.len() == TRIPS {
            self.trips.pop_front();
        }
        self.trips.push_back(now - sent);
        (self.alive, self.trip) = (sent, (now - sent).min(USUAL * self.usual_trip()));
        self.echo = Some(Echo { id: reply.id, page: reply.page, heard: now });
        Ok(())
    }

    /// A number from another epoch, or from another socket, is not of a view sent here.
    fn note_drawn(&mut self, drawn: u32, last_view: u32) {
        let sent_here = self.first_view.is_some_and(|first| (first..=last_view).contains(&drawn));
        if sent_here {
            self.drawn = self.drawn.max(drawn);
        }
    }

    /// Median one-way delay, half of the round trip, ms.
    pub fn delay(&self) -> f64 {
        self.usual_trip() / 2.0
    }

    /// Median round trip, ms; 0 while none is known.
    fn usual_trip(&self) -> f64 {
        let mut trips: Vec<f64> = self.trips.iter().copied().collect();
        trips.sort_by(f64::total_cmp);
        trips.get(trips.len() / 2).copied().unwrap_or(0.0)
    }

    /// Nothing was heard for too long.
    pub fn is_dead(&self, now: f64) -> bool {
        now >= self.heard + DEAD_MS
    }

    /// Room time at which something is due, ms.
    pub fn next_wake(&self) -> f64 {
        let dead = self.heard + DEAD_MS;
        if self.greeted { dead.min(self.next_beat) } else { dead }
    }
}
