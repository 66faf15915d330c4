//! The call: whom to connect, and what they tell each other on the way. It has a budget of its own, and nothing that goes wrong in it holds up, stops
//! or ends anything of the room: a page whose signals are not passed on reads why, and the hour goes on by telephone.

use super::{Effect, Room};
use crate::call::{Reach, Unfit, candidate, description};
use crate::wire::{FromCaller, Signal, ToCaller, ToDesk, ToStage, Unable, Watch};

/// Signals that a page may send at once, and how many more in a second. A browser sends some forty for one connection.
const SIGNALS: (f64, f64) = (200.0, 20.0);
/// The same of offers: one begins a call, and each change of a device or of the network takes one more.
const OFFERS: (f64, f64) = (10.0, 0.2);
/// So many more than its budget in one call are no page's mistake.
const FLOOD: u32 = 2_000;

/// One of the two ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    Desk,
    Stage,
}

/// Tokens that come back with time.
#[derive(Clone, Copy, Debug)]
struct Budget {
    most: f64,
    per_second: f64,
    left: f64,
    at: f64,
}

impl Budget {
    fn full((most, per_second): (f64, f64), now: f64) -> Self {
        Self { most, per_second, left: most, at: now }
    }

    fn take(&mut self, now: f64) -> bool {
        self.left = (self.left + (now - self.at) / 1_000.0 * self.per_second).min(self.most);
        self.at = now;
        let is_there = self.left >= 1.0;
        if is_there {
            self.left -= 1.0;
        }
        is_there
    }
}

/// What one end has left in this call.
#[derive(Clone, Copy, Debug)]
struct Caller {
    signals: Budget,
    offers: Budget,
    dropped: u32,
    /// What it was told of what is not passed on: once is enough.
    told: Option<Unable>,
}

impl Caller {
    fn new(now: f64) -> Self {
        Self { signals: Budget::full(SIGNALS, now), offers: Budget::full(OFFERS, now), dropped: 0, told: None }
    }

    fn may(&mut self, signal: &Signal, now: f64) -> bool {
        self.signals.take(now) && (!matches!(signal, Signal::Offer { .. } | Signal::Again) || self.offers.take(now))
    }
}

/// The call of a room.
#[derive(Clone, Debug)]
pub(super) struct Call {
    reach: Option<Reach>,
    number: u32,
    /// The sockets that are connected, of the desk and of the stage, and what each has left.
    pair: Option<((u64, Caller), (u64, Caller))>,
    /// The desk that was told that there is no way.
    told_unable: Option<u64>,
    pub(super) watch: Watch,
}

impl Call {
    /// `reach`: how its pages may be connected; `None`: not at all. A set comes to rest `watch` seconds after nothing came of the client.
    pub(super) fn new(reach: Option<Reach>, watch: u8) -> Self {
        Self { reach, number: 0, pair: None, told_unable: None, watch: Watch { seconds: watch, off: None } }
    }

    fn caller(&mut self, side: Side) -> Option<&mut Caller> {
        let ((_, desk), (_, stage)) = self.pair.as_mut()?;
        Some(if side == Side::Desk { desk } else { stage })
    }
}

impl Room {
    /// Connects the desk in control with the client who was let in, as long as both are there. A socket is a page: another one is another call.
    pub(super) fn pair_up(&mut self) {
        let desk = self.control.filter(|id| self.desks.iter().any(|desk| desk.id == *id && desk.conduct.greeted));
        let stage = self.stage.as_ref().map(|stage| stage.id).filter(|_| self.is_live());
        let wanted = desk.zip(stage);
        let there = self.call.pair.map(|((desk, _), (stage, _))| (desk, stage));
        if wanted.is_some() && self.call.reach.is_none() {
            return self.tell_unable(desk);
        }
        if wanted == there {
            return;
        }
        if let Some((desk, stage)) = there {
            self.tell_caller(Side::Desk, desk, ToCaller::Over);
            self.tell_caller(Side::Stage, stage, ToCaller::Over);
        }
        let now = self.now;
        self.call.pair = wanted.map(|(desk, stage)| ((desk, Caller::new(now)), (stage, Caller::new(now))));
        if let Some((desk, stage)) = wanted {
            self.call.number += 1;
            let call = self.call.number;
            self.effects.push(Effect::BeginCall { desk, stage, call });
        }
    }

    fn tell_unable(&mut self, desk: Option<u64>) {
        if let Some(desk) = desk.filter(|desk| self.call.told_unable != Some(*desk)) {
            self.call.told_unable = Some(desk);
            self.tell_caller(Side::Desk, desk, ToCaller::Unable { why: Unable::NoRelay });
        }
    }

    /// A socket that is gone is told nothing.
    fn tell_caller(&mut self, side: Side, socket: u64, said: ToCaller) {
        match side {
            Side::Desk if self.desks.iter().any(|desk| desk.id == socket) => self.effects.push(Effect::ToDesk(socket, ToDesk::Call(said))),
            Side::Stage if self.stage.as_ref().is_some_and(|stage| stage.id == socket) => {
                self.effects.push(Effect::ToStage(socket, ToStage::Call(said)));
            }
            _ => {}
        }
    }

    /// What a page said about the call.
    ///
    /// # Errors
    /// The words for the close when it floods the line.
    pub(super) fn caller_said(&mut self, side: Side, socket: u64, said: FromCaller) -> Result<(), &'static str> {
        let Some(((desk, _), (stage, _))) = self.call.pair else { return Ok(()) };
        let (own, other, other_side) = match side {
            Side::Desk => (desk, stage, Side::Stage),
            Side::Stage => (stage, desk, Side::Desk),
        };
        let (FromCaller::Signal { call, .. } | FromCaller::Renew { call }) = said;
        if own != socket || call != self.call.number {
            return Ok(());
        }
        match said {
            FromCaller::Renew { call } => {
                self.effects.push(Effect::RenewWays { socket, of_desk: side == Side::Desk, call });
                Ok(())
            }
            FromCaller::Signal { call, signal } => {
                let passed = self.passed_on(side, signal)?;
                if let Some(signal) = passed {
                    self.tell_caller(other_side, other, ToCaller::Signal { call, signal });
                }
                Ok(())
            }
        }
    }

    /// What of a signal is passed on; `Ok(None)`: nothing.
    fn passed_on(&mut self, side: Side, signal: Signal) -> Result<Option<Signal>, &'static str> {
        let (now, reach) = (self.now, self.call.reach);
        let (Some(caller), Some(reach)) = (self.call.caller(side), reach) else { return Ok(None) };
        if !caller.may(&signal, now) {
            caller.dropped += 1;
            if caller.dropped > FLOOD {
                return Err("too many signals");
            }
            self.not_passed_on(side, Unable::TooMuch);
            return Ok(None);
        }
        match cleaned(signal, reach) {
            Ok(signal) => Ok(Some(signal)),
            // A way that is not to be known is one of several.
            Err(Unfit::Address) => Ok(None),
            Err(_) => {
                self.not_passed_on(side, Unable::Unfit);
                Ok(None)
            }
        }
    }

    fn not_passed_on(&mut self, side: Side, why: Unable) {
        let Some(((desk, _), (stage, _))) = self.call.pair else { return };
        let Some(caller) = self.call.caller(side).filter(|caller| caller.told != Some(why)) else { return };
        caller.told = Some(why);
        let socket = if side == Side::Desk { desk } else { stage };
        self.tell_caller(side, socket, ToCaller::Unable { why });
    }
}

fn cleaned(signal: Signal, reach: Reach) -> Result<Signal, Unfit> {
    Ok(match signal {
        Signal::Sends(_) | Signal::Again => signal,
        Signal::Offer { sdp } => Signal::Offer { sdp: description(&sdp, reach)? },
        Signal::Answer { sdp } => Signal::Answer { sdp: description(&sdp, reach)? },
        Signal::Candidate { mid, .. } if mid.as_ref().is_some_and(|mid| mid.len() > 32 || !mid.chars().all(|c| c.is_ascii_graphic())) => {
            return Err(Unfit::Form);
        }
        Signal::Candidate { candidate: text, mid, line } => Signal::Candidate { candidate: candidate(&text, reach)?, mid, line },
    })
}
