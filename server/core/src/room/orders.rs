//! What the desk in control may order, and when.

use super::{MomentKind, Room};
use crate::optics;
use crate::safety;
use crate::timeline::NoRoom;
use crate::wire::{Ending, Missing, Order, Plan, Refusal, Unwatched};

/// How an order was carried out.
pub(super) enum Carried {
    /// At once.
    Now,
    /// Its answer comes once the set is in the record.
    AnsweredLater,
}

pub(super) type Done = Result<Carried, Refusal>;

impl Room {
    pub(super) fn carry_out(&mut self, desk: u64, id: u32, order: Order) -> Done {
        if order == Order::TakeControl {
            self.take_control(desk);
            return Ok(Carried::Now);
        }
        // Stopping is never a question of who has control.
        if self.control != Some(desk) && order != Order::Stop {
            return Err(Refusal::NotInControl);
        }
        if self.closed.is_some() {
            return Err(Refusal::WrongState);
        }
        match order {
            Order::TakeControl => Ok(Carried::Now),
            Order::Sight => self.order_sight(),
            Order::CannotSee => self.order_cannot_see(),
            Order::Unseen { missing } => self.order_unseen(missing),
            Order::Watch { off } => self.order_watch(off),
            Order::Start => self.order_start(desk, id),
            Order::Stop => self.order_stop(),
            Order::End => self.order_end(),
            Order::Extend => self.order_extend(),
            Order::AskSides => self.order_ask_sides(),
            Order::Show { steadying } => self.order_show(steadying),
            Order::Ask { pad } => self.order_ask(pad),
            Order::Plan { plan } => self.order_plan(plan),
        }
    }

    fn order_sight(&mut self) -> Done {
        if !self.is_live() {
            return Err(Refusal::WrongState);
        }
        if !self.stage_presence.here {
            return Err(Refusal::Needs);
        }
        self.need_sight = false;
        self.record_moment(MomentKind::Sight);
        Ok(Carried::Now)
    }

    fn order_cannot_see(&mut self) -> Done {
        if !self.is_live() {
            return Err(Refusal::WrongState);
        }
        self.need_sight = true;
        self.record_moment(MomentKind::CannotSee);
        self.end_set(Ending::CannotSee);
        Ok(Carried::Now)
    }

    /// The desk's page found by itself that nothing comes of the client: what runs comes to rest, and the clinician says anew that they see them.
    fn order_unseen(&mut self, missing: Missing) -> Done {
        let (kind, ending) = match missing {
            Missing::Picture => (MomentKind::Unseen, Ending::Unseen),
            Missing::Voice => (MomentKind::Unheard, Ending::Unheard),
        };
        if self.call.watch.off.is_some() || !self.ease(ending) {
            return Err(Refusal::WrongState);
        }
        self.need_sight = true;
        self.record_moment(kind);
        Ok(Carried::Now)
    }

    fn order_watch(&mut self, off: Option<Unwatched>) -> Done {
        if self.call.watch.off != off {
            self.call.watch.off = off;
            self.record_moment(MomentKind::Watched(off));
        }
        Ok(Carried::Now)
    }

    fn order_start(&mut self, desk: u64, id: u32) -> Done {
        self.may_start(Some(desk))?;
        self.begin_set(desk, id);
        Ok(Carried::AnsweredLater)
    }

    /// Whether a start by `desk` would be carried out at this moment: the one rule behind the order and the word READY.
    pub(super) fn may_start(&self, desk: Option<u64>) -> Result<(), Refusal> {
        if !self.is_live() || self.is_active() {
            return Err(Refusal::WrongState);
        }
        if desk.is_none() || desk != self.control {
            return Err(Refusal::NotInControl);
        }
        if self.needs() != Default::default() {
            return Err(Refusal::Needs);
        }
        if !self.holds.of(self.plan.purpose).is_empty() {
            return Err(Refusal::Held);
        }
        if self.record_refuses || self.record_waits {
            return Err(Refusal::NotSaved);
        }
        self.check_plan(&self.plan)
    }

    /// Nothing moves afterwards, which is all that was asked for; so it is never refused.
    fn order_stop(&mut self) -> Done {
        self.end_set(Ending::StoppedByClinician);
        Ok(Carried::Now)
    }

    fn order_end(&mut self) -> Done {
        if self.ease(Ending::EndedByClinician) { Ok(Carried::Now) } else { Err(Refusal::WrongState) }
    }

    /// Lets what runs come to rest at its next extreme, for this reason. False: nothing runs.
    pub(super) fn ease(&mut self, ending: Ending) -> bool {
        if self.starting.is_some() {
            self.end_set(ending);
            return true;
        }
        let at = self.now + self.lead();
        let Some(set) = self.running_mut() else { return false };
        let changed = set.end_at_next_extreme(at, ending);
        if changed {
            self.record_end_asked(ending);
        }
        true
    }

    fn order_extend(&mut self) -> Done {
        let at = self.now + self.lead();
        let Some(set) = self.running_mut().filter(|set| set.end_asked.is_none()) else {
            return Err(Refusal::WrongState);
        };
        let Some(cycles) = set.base_cycles else {
            return Err(Refusal::WrongState);
        };
        if set.is_full() {
            return Err(changed_too_often());
        }
        set.extend(at, cycles).map_err(|NoRoom| Refusal::Limit {
            limit: format!("A set may last {:.0} seconds at most, and can be extended only while it runs.", safety::SET_MS / 1_000.0),
        })?;
        self.record_ordered(super::Cause::Extended);
        Ok(Carried::Now)
    }

    fn order_ask_sides(&mut self) -> Done {
        if !self.is_live() || self.is_active() {
            return Err(Refusal::WrongState);
        }
        let needs = self.needs();
        if needs.stage || needs.check {
            return Err(Refusal::Needs);
        }
        self.sides_asked += 1;
        Ok(Carried::Now)
    }

    fn order_plan(&mut self, plan: Plan) -> Done {
        if self.starting.is_some() {
            return Err(Refusal::WrongState);
        }
        if self.running_mut().is_some() {
            return self.change_live(plan);
        }
        let asked_width = if plan.width == self.plan.width { self.asked_width } else { plan.width };
        safety::check(&Plan { width: asked_width, ..plan }, self.eyes_locked)?;
        // A preset, another path or dot gets as much of its width as there is: only one that is asked for by itself is refused.
        let by_itself = Plan { width: self.plan.width, ..plan } == self.plan;
        let plan = if by_itself { plan } else { self.fitted(Plan { width: asked_width, ..plan }) };
        self.check_plan(&plan)?;
        self.plan = plan;
        self.asked_width = asked_width;
        Ok(Carried::Now)
    }

    /// The client's screen is another one: the plan is as wide as was asked for, or as it shows.
    pub(super) fn fit_plan(&mut self) {
        self.plan = self.fitted(Plan { width: self.asked_width, ..self.plan });
    }

    /// `plan`, no wider than the client's screen shows, in whole degrees then.
    fn fitted(&self, plan: Plan) -> Plan {
        match self.widest(&plan) {
            Some(widest) if safety::check_screen(&plan, widest).is_err() => {
                Plan { width: widest.floor().max(*safety::WIDTH_DEG.start()), ..plan }
            }
            _ => plan,
        }
    }

    /// The widest path that the client's screen shows, degrees, when it is known.
    fn widest(&self, plan: &Plan) -> Option<f64> {
        let device = &self.stage.as_ref()?.device;
        Some(optics::widest(device, plan.path, plan.dot))
    }

    /// While a set runs, its rate alone may change.
    fn change_live(&mut self, plan: Plan) -> Done {
        let (at, eyes_locked) = (self.now + self.lead(), self.eyes_locked);
        let Some(set) = self.running_mut().filter(|set| set.end_asked.is_none()) else {
            return Err(Refusal::WrongState);
        };
        let same_but_rate = Plan { rate: set.plan.rate, ..plan };
        if same_but_rate != set.plan {
            return Err(Refusal::WrongState);
        }
        // The length was checked when it was ordered; a slower rate is cut off by the hard limit.
        let any_length = Plan { length: crate::wire::Length::Open, ..plan };
        safety::check(&any_length, eyes_locked)?;
        if plan.rate == set.plan.rate {
            return Ok(Carried::Now);
        }
        if set.is_full() {
            return Err(changed_too_often());
        }
        set.change_rate(at, plan.rate)
            .map_err(|NoRoom| Refusal::Limit { limit: "Too little of this set is left to change its rate.".into() })?;
        self.plan.rate = plan.rate;
        self.record_ordered(super::Cause::Rate);
        Ok(Carried::Now)
    }

    /// Limits of safety, and of the client's screen when it is known.
    pub(super) fn check_plan(&self, plan: &Plan) -> Result<(), Refusal> {
        safety::check(plan, self.eyes_locked)?;
        self.widest(plan).map_or(Ok(()), |widest| safety::check_screen(plan, widest))
    }
}

fn changed_too_often() -> Refusal {
    Refusal::Limit { limit: "This set was changed too often to change again.".into() }
}
