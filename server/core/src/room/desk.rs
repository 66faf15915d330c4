//! Desks: joining, control, and their messages.

use std::collections::VecDeque;

use super::call::Side;
use super::conduct::Conduct;
use super::set::MOST_SEGMENTS;
use super::{Effect, MomentKind, Room, Why};
use crate::wire::{BeatReply, FromDesk, Refusal, SetView, ToDesk, WIRE_VERSION};

/// Answers remembered for orders that come twice.
const ANSWERS: usize = 64;

#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct Desk {
    pub id: u64,
    pub conduct: Conduct,
    orders: OrderLog,
}

/// Orders by their id. An order without an answer yet is `None`.
#[derive(Debug, Default)]
#[cfg_attr(test, derive(Clone))]
struct OrderLog {
    highest: Option<u32>,
    answers: VecDeque<(u32, Option<Answer>)>,
}

/// What became of an order; `None`: it was carried out.
type Answer = Option<Refusal>;

/// Whether an order was seen before.
enum Seen {
    New,
    Answered(Answer),
    /// Its answer is still to come.
    Open,
    /// It lies so far back that its answer is forgotten.
    Forgotten,
}

impl OrderLog {
    fn seen(&self, id: u32) -> Seen {
        if self.highest.is_none_or(|highest| id > highest) {
            return Seen::New;
        }
        match self.answers.iter().find(|(known, _)| *known == id) {
            Some((_, Some(answer))) => Seen::Answered(answer.clone()),
            Some((_, None)) => Seen::Open,
            None => Seen::Forgotten,
        }
    }

    fn note(&mut self, id: u32) {
        self.highest = Some(id);
        if self.answers.len() == ANSWERS {
            self.answers.pop_front();
        }
        self.answers.push_back((id, None));
    }

    fn answer(&mut self, id: u32, answer: &Answer) {
        if let Some(entry) = self.answers.iter_mut().find(|(known, _)| *known == id) {
            entry.1 = Some(answer.clone());
        }
    }
}

impl Room {
    pub(super) fn desk_joined(&mut self, id: u64) {
        let conduct = Conduct::new(self.now);
        self.desks.push(Desk { id, conduct, orders: OrderLog::default() });
    }

    pub(super) fn desk_left(&mut self, id: u64) {
        self.desks.retain(|desk| desk.id != id);
        if self.control == Some(id) {
            // The silence is counted on from its last sign; nobody inherits control unasked.
            self.control = None;
        }
    }

    pub(super) fn close_desk(&mut self, id: u64, why: Why) {
        self.effects.push(Effect::CloseDesk(id, why));
        self.desk_left(id);
    }

    pub(super) fn desk_mut(&mut self, id: u64) -> Option<&mut Desk> {
        self.desks.iter_mut().find(|desk| desk.id == id)
    }

    pub(super) fn desk_said(&mut self, id: u64, said: FromDesk) {
        let now = self.now;
        let Some(desk) = self.desk_mut(id) else {
            // It was closed; what it had sent before is dropped.
            return;
        };
        let greeted = desk.conduct.greeted;
        if let FromDesk::Call(said) = said {
            return match desk.conduct.hear_caller(&said, now) {
                Err(words) => self.close_desk(id, Why::Breach(words)),
                Ok(_) if !greeted => self.close_desk(id, Why::Breach("hello comes first, and once")),
                Ok(true) => self.caller_said(Side::Desk, id, said),
                Ok(false) => self.too_much(Side::Desk, id, &said),
            };
        }
        if let Err(words) = desk.conduct.hear(now) {
            return self.close_desk(id, Why::Breach(words));
        }
        match said {
            FromDesk::Hello { wire } if !greeted => self.greet_desk(id, wire),
            FromDesk::Beat(reply) if greeted => self.desk_answered(id, reply),
            FromDesk::HandBack { set } if greeted => self.handed_back(*set),
            FromDesk::Order { epoch, id: order, order: what } if greeted => {
                self.desk_ordered(id, epoch, order, what);
            }
            _ => self.close_desk(id, Why::Breach("hello comes first, and once")),
        }
    }

    fn greet_desk(&mut self, id: u64, wire: u32) {
        if wire != WIRE_VERSION {
            self.effects.push(Effect::ToDesk(id, ToDesk::Reload));
            return self.close_desk(id, Why::Outdated);
        }
        let now = self.now;
        if let Some(desk) = self.desk_mut(id) {
            desk.conduct.greet(now);
        }
        self.forget_old_call(Side::Desk, id);
        // A socket that went silent is a ghost of the same desk, as a rule.
        let alone = (self.desks.iter()).filter(|desk| desk.id != id && desk.conduct.greeted).all(|desk| !self.heard_lately(&desk.conduct));
        if alone {
            self.control = Some(id);
            self.desk_sign();
        }
        self.send_beats();
    }

    /// Only of a set that the record has and that is not this room's own: that one writes for itself.
    fn handed_back(&mut self, set: SetView) {
        let own = self.set.as_ref().is_some_and(|own| own.id == set.id);
        if self.known_sets.contains(&set.id) && !own && set.timeline.segments.len() <= MOST_SEGMENTS {
            self.effects.push(Effect::KeepHandedBack(set));
        }
    }

    fn desk_answered(&mut self, id: u64, reply: BeatReply) {
        let (now, seq) = (self.now, self.seq);
        let Some(desk) = self.desk_mut(id) else {
            return;
        };
        if let Err(words) = desk.conduct.answered(reply, now, seq) {
            return self.close_desk(id, Why::Breach(words));
        }
        let drawn = desk.conduct.drawn;
        if self.control == Some(id) {
            self.desk_sign();
            self.stop_news.desk_drew(drawn);
        }
    }

    fn desk_ordered(&mut self, id: u64, epoch: u32, order: u32, what: crate::wire::Order) {
        let Some(desk) = self.desk_mut(id) else {
            return;
        };
        match desk.orders.seen(order) {
            Seen::New => desk.orders.note(order),
            Seen::Open => return,
            // Whatever became of it then, nothing is done now.
            Seen::Forgotten => {
                let answer = ToDesk::Answer { id: order, refused: Some(Refusal::WrongState) };
                return self.effects.push(Effect::ToDesk(id, answer));
            }
            Seen::Answered(refused) => {
                let answer = ToDesk::Answer { id: order, refused };
                return self.effects.push(Effect::ToDesk(id, answer));
            }
        }
        let done = if epoch == self.epoch { self.carry_out(id, order, what) } else { Err(Refusal::OldEpoch) };
        match done {
            Ok(super::orders::Carried::Now) => self.answer(id, order, None),
            Ok(super::orders::Carried::AnsweredLater) => {}
            Err(refusal) => self.answer(id, order, Some(refusal)),
        }
    }

    pub(super) fn answer(&mut self, desk: u64, order: u32, refused: Option<Refusal>) {
        let Some(known) = self.desk_mut(desk) else {
            return;
        };
        known.orders.answer(order, &refused);
        let answer = ToDesk::Answer { id: order, refused };
        self.effects.push(Effect::ToDesk(desk, answer));
    }

    pub(super) fn take_control(&mut self, id: u64) {
        if self.control == Some(id) {
            return;
        }
        self.control = Some(id);
        self.desk_sign();
        self.record_moment(MomentKind::ControlTaken);
        self.watch_again();
    }
}
