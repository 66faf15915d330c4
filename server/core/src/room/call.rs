//! The call: whom to connect, and what they tell each other on the way. It has a budget of its own, and nothing that goes wrong in it holds up, stops
//! or ends anything of the room: a page whose signals are not passed on reads why, and the hour goes on by telephone.

use super::conduct::Conduct;
use super::{Effect, MomentKind, Room};
use crate::call::{Reach, Unfit, candidate, description};
use crate::wire::{FromCaller, Signal, ToCaller, ToDesk, ToStage, Unable, Watch};

/// One of the two ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    Desk,
    Stage,
}

/// So many calls has a room at most before its numbers meet those of the room after it. What a page says of a call that another room began is of none here.
const CALLS_PER_EPOCH: u32 = 10_000;

/// The call of a room.
#[derive(Clone, Debug)]
pub(super) struct Call {
    reach: Option<Reach>,
    number: u32,
    /// The sockets that are connected, of the desk and of the stage.
    pair: Option<(u64, u64)>,
    /// The desk that was told that there is no way.
    told_unable: Option<u64>,
    pub(super) watch: Watch,
}

impl Call {
    /// `reach`: how its pages may be connected; `None`: not at all. A set comes to rest `watch` seconds after nothing came of the client.
    pub(super) fn new(reach: Option<Reach>, watch: u8, epoch: u32) -> Self {
        let number = epoch.wrapping_mul(CALLS_PER_EPOCH);
        Self { reach, number, pair: None, told_unable: None, watch: Watch { seconds: watch, off: None } }
    }
}

impl Room {
    /// Connects the desk in control with the client who was let in, as long as both are there. A socket is a page: another one is another call.
    pub(super) fn pair_up(&mut self) {
        let desk = self.control.filter(|id| self.desks.iter().any(|desk| desk.id == *id && desk.conduct.greeted));
        let stage = self.stage.as_ref().map(|stage| stage.id).filter(|_| self.is_live());
        let wanted = desk.zip(stage);
        if wanted.is_some() && self.call.reach.is_none() {
            return self.tell_unable(desk);
        }
        if wanted == self.call.pair {
            return;
        }
        self.part();
        self.call.pair = wanted;
        if let (Some((desk, stage)), Some(reach)) = (wanted, self.call.reach) {
            self.call.number = self.call.number.wrapping_add(1);
            let call = self.call.number;
            self.effects.push(Effect::BeginCall { desk, stage, call, relay_only: reach != Reach::Direct });
        }
    }

    /// Who was connected is told that it is over.
    fn part(&mut self) {
        if let Some((desk, stage)) = self.call.pair.take() {
            self.tell_caller(Side::Desk, desk, ToCaller::Over);
            self.tell_caller(Side::Stage, stage, ToCaller::Over);
        }
    }

    /// A page that comes may hold a call of which it was not told that it is over: its line was down then, or the room's. A client who is to have
    /// another call is told of that one alone, and of none before being let in.
    pub(super) fn forget_old_call(&mut self, side: Side, socket: u64) {
        if side == Side::Desk || self.call.reach.is_none() {
            self.tell_caller(side, socket, ToCaller::Over);
        }
    }

    /// What the practice allows now. A call by ways that it does not want any more is over, and another one begins.
    pub(super) fn calls_by(&mut self, reach: Option<Reach>, watch: u8) {
        self.call.watch.seconds = watch;
        if self.call.reach != reach {
            self.call.reach = reach;
            self.call.told_unable = None;
            self.part();
        }
    }

    /// Whoever takes over, and whoever sits there now, may see and hear each other by other means or not: nobody has said so yet.
    pub(super) fn watch_again(&mut self) {
        if self.call.watch.off.take().is_some() {
            self.record_moment(MomentKind::Watched(None));
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

    /// What a page said about the call, within its budget.
    pub(super) fn caller_said(&mut self, side: Side, socket: u64, said: FromCaller) {
        let (Some((desk, stage)), Some(reach)) = (self.call.pair, self.call.reach) else { return };
        let (own, other, other_side) = match side {
            Side::Desk => (desk, stage, Side::Stage),
            Side::Stage => (stage, desk, Side::Desk),
        };
        let (FromCaller::Signal { call, .. } | FromCaller::Renew { call }) = said;
        if own != socket || call != self.call.number {
            return;
        }
        match said {
            FromCaller::Renew { call } => {
                let relay_only = reach != Reach::Direct;
                self.effects.push(Effect::RenewWays { socket, of_desk: side == Side::Desk, call, relay_only });
            }
            FromCaller::Signal { call, signal } => {
                let is_way = matches!(signal, Signal::Candidate { .. });
                match cleaned(signal, reach) {
                    Ok(signal) => self.tell_caller(other_side, other, ToCaller::Signal { call, signal }),
                    // A way that is not passed on is one of several.
                    Err(_) if is_way => {}
                    Err(_) => self.not_passed_on(side, socket, Unable::Unfit),
                }
            }
        }
    }

    /// What a page said went over its budget. Ways that are not renewed yet are no loss: those it has hold for minutes.
    pub(super) fn too_much(&mut self, side: Side, socket: u64, said: &FromCaller) {
        if matches!(said, FromCaller::Signal { .. }) {
            self.not_passed_on(side, socket, Unable::TooMuch);
        }
    }

    /// What a page said is not passed on, and it reads why.
    fn not_passed_on(&mut self, side: Side, socket: u64, why: Unable) {
        let now = self.now;
        if self.conduct_of(side, socket).is_some_and(|conduct| conduct.caller.tells(why, now)) {
            self.tell_caller(side, socket, ToCaller::Unable { why });
        }
    }

    fn conduct_of(&mut self, side: Side, socket: u64) -> Option<&mut Conduct> {
        match side {
            Side::Desk => self.desks.iter_mut().find(|desk| desk.id == socket).map(|desk| &mut desk.conduct),
            Side::Stage => self.stage.as_mut().filter(|stage| stage.id == socket).map(|stage| &mut stage.conduct),
        }
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
