//! The client's page: joining, and its messages.

use super::call::Side;
use super::conduct::Conduct;
use super::possible::{check_evidence, check_showing};
use super::{Effect, MomentKind, Room, StopNews, StoppedBy, Why};
use crate::optics;
use crate::wire::{
    BeatReply, Device, Ending, Evidence, Fact, FromCaller, FromStage, Interruption, SeatState, Showing, ToDesk, ToStage, WIRE_VERSION,
};

/// Sockets that have yet to say hello; more are turned away, the oldest first.
const ARRIVING: usize = 4;

#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct Stage {
    pub id: u64,
    pub conduct: Conduct,
    pub device: Device,
    /// Its page has said that it shows the last set, and not yet that this is at rest.
    pub shows: bool,
}

/// A client's socket that has not said hello. A page that gave up waiting for one has opened another since, and on a slow
/// line the one it gave up may open later: so a socket takes a page's place only once a page speaks through it.
#[derive(Debug)]
#[cfg_attr(test, derive(Clone))]
pub(super) struct Arriving {
    pub id: u64,
    pub conduct: Conduct,
}

impl Room {
    pub(super) fn stage_joined(&mut self, id: u64) {
        if self.arriving.len() == ARRIVING {
            self.close_stage(self.arriving[0].id, Why::Silent);
        }
        self.arriving.push(Arriving { id, conduct: Conduct::new(self.now) });
    }

    pub(super) fn stage_left(&mut self, id: u64) {
        self.arriving.retain(|one| one.id != id);
        if self.stage.take_if(|stage| stage.id == id).is_some() {
            self.lose_stage();
        }
    }

    pub(super) fn close_stage(&mut self, id: u64, why: Why) {
        self.effects.push(Effect::CloseStage(id, why));
        self.stage_left(id);
    }

    pub(super) fn stage_said(&mut self, id: u64, said: FromStage) {
        let now = self.now;
        let arriving = self.arriving.iter_mut().find(|one| one.id == id).map(|one| &mut one.conduct);
        let taken = if let FromStage::Call(said) = said {
            self.stage_called(id, said)
        } else if let Some(conduct) = arriving {
            conduct.hear(now).and_then(|()| self.arrived(id, said))
        } else if let Some(stage) = self.stage.as_mut().filter(|stage| stage.id == id) {
            stage.conduct.hear(now).and_then(|()| self.greeted_said(said))
        } else {
            // It was closed or replaced; what it had sent before is dropped.
            return;
        };
        if let Err(words) = taken {
            self.close_stage(id, Why::Breach(words));
        }
    }

    fn stage_called(&mut self, id: u64, said: FromCaller) -> Result<(), &'static str> {
        if self.arriving.iter().any(|one| one.id == id) {
            return Err("hello comes first");
        }
        let now = self.now;
        let Some(stage) = self.stage.as_mut().filter(|stage| stage.id == id) else { return Ok(()) };
        let looked_at = stage.conduct.hear_caller(&said, now)?;
        if !self.is_live() {
            return Err("not admitted");
        }
        if looked_at {
            self.caller_said(Side::Stage, id, said);
        } else {
            self.too_much(Side::Stage, id, &said);
        }
        Ok(())
    }

    /// The first words of a socket.
    fn arrived(&mut self, id: u64, said: FromStage) -> Result<(), &'static str> {
        let FromStage::Hello { wire, device } = said else { return Err("hello comes first") };
        if !(WIRE_VERSION - 1..=WIRE_VERSION).contains(&wire) {
            self.effects.push(Effect::ToStage(id, ToStage::Reload));
            self.close_stage(id, Why::Outdated);
            return Ok(());
        }
        let device = taken_in(device)?;
        if let Some(old) = &self.stage {
            self.close_stage(old.id, Why::Replaced);
        }
        if let Some(at) = self.arriving.iter().position(|one| one.id == id) {
            let Arriving { id, mut conduct } = self.arriving.remove(at);
            conduct.greet(self.now);
            self.stage = Some(Stage { id, conduct, device, shows: false });
            self.forget_old_call(Side::Stage, id);
        }
        self.fit_plan();
        self.stage_sign();
        self.send_beats();
        Ok(())
    }

    fn greeted_said(&mut self, said: FromStage) -> Result<(), &'static str> {
        match said {
            FromStage::Hello { .. } => Err("hello comes once"),
            FromStage::Beat(reply) => self.stage_answered(reply),
            FromStage::Device { device } => self.device_changed(device),
            said if self.seat == SeatState::Admitted => self.admitted_said(said),
            // Somebody at the door may say that it is too much: the desk reads it before it admits them.
            FromStage::Ready if self.seat == SeatState::Waiting => {
                self.client_ready();
                Ok(())
            }
            FromStage::Stop if self.seat == SeatState::Waiting => {
                self.client_stop();
                Ok(())
            }
            _ => Err("not admitted"),
        }
    }

    fn admitted_said(&mut self, said: FromStage) -> Result<(), &'static str> {
        match said {
            FromStage::Ready => self.client_ready(),
            FromStage::Stop => self.client_stop(),
            FromStage::Interrupted { cause } => self.interrupted(cause),
            FromStage::Showing(showing) => return self.showing(showing),
            FromStage::Evidence { facts } => return self.evidence(facts),
            FromStage::Rated { id, asked, value } => return self.client_rated(id, asked, value),
            FromStage::Longer => self.client_longer(),
            FromStage::Hello { .. } | FromStage::Beat(_) | FromStage::Device { .. } | FromStage::Call(_) => {}
        }
        Ok(())
    }

    fn stage_answered(&mut self, reply: BeatReply) -> Result<(), &'static str> {
        let (now, seq) = (self.now, self.seq);
        if let Some(stage) = &mut self.stage {
            stage.conduct.answered(reply, now, seq)?;
            self.stage_sign();
        }
        Ok(())
    }

    fn device_changed(&mut self, device: Device) -> Result<(), &'static str> {
        let device = taken_in(device)?;
        if let Some(stage) = &mut self.stage {
            stage.device = device;
        }
        self.fit_plan();
        if self.active_plan().is_some_and(|plan| self.check_plan(&plan).is_err()) {
            self.interrupted(Interruption::Resized);
        }
        Ok(())
    }

    fn client_ready(&mut self) {
        if self.is_open() && self.need_ready {
            self.need_ready = false;
            self.aids.longer = false;
            self.record_moment(MomentKind::ClientReady);
        }
    }

    /// The page repeats its stop until a view shows it; only the first one counts.
    fn client_stop(&mut self) {
        let known = !self.is_active() && self.need_ready && self.stopped == Some(StoppedBy::Client);
        if self.is_open() && !known {
            self.end_set(Ending::StoppedByClient);
            self.note_stop(Ending::StoppedByClient);
            self.need_ready = true;
            self.stop_news = StopNews::Unseen;
            self.record_moment(MomentKind::ClientStop);
        }
        self.show_again();
    }

    fn interrupted(&mut self, cause: Interruption) {
        let active = self.is_active();
        let tap = needs_tap(cause);
        if self.is_live() && (active || (tap && !self.need_ready)) {
            self.end_set(ending_of(cause));
            self.need_ready |= tap;
            self.need_sight |= cause == Interruption::Silence;
            self.stop_news = StopNews::Unseen;
            self.record_moment(MomentKind::Interrupted(cause));
        }
        self.show_again();
    }

    pub(super) fn show_again(&mut self) {
        if let Some(stage) = &mut self.stage {
            stage.conduct.wants_view = true;
        }
    }

    fn showing(&mut self, showing: Showing) -> Result<(), &'static str> {
        check_showing(&showing)?;
        if let Some(set) = self.set.as_mut().filter(|set| set.id == showing.set) {
            set.seen |= showing.moving && (showing.rate > 0.0 || showing.phase > 0.0);
            if let Some(stage) = &mut self.stage {
                stage.shows = showing.moving;
            }
            for desk in self.desks.iter().filter(|desk| desk.conduct.greeted) {
                let message = ToDesk::Showing(showing.clone());
                self.effects.push(Effect::ToDesk(desk.id, message));
            }
        }
        Ok(())
    }

    fn evidence(&mut self, facts: Vec<Evidence>) -> Result<(), &'static str> {
        check_evidence(&facts)?;
        if !facts.iter().all(|fact| self.known_sets.contains(&fact.set)) {
            return Err("evidence of a set of another session");
        }
        for fact in &facts {
            self.seen_by(fact);
        }
        if !facts.is_empty() {
            self.effects.push(Effect::KeepEvidence(facts));
        }
        Ok(())
    }

    /// The first motion and the rest are told as facts too, and may come sooner.
    fn seen_by(&mut self, evidence: &Evidence) {
        if let Some(set) = self.set.as_mut().filter(|set| set.id == evidence.set)
            && let Some(stage) = &mut self.stage
        {
            // The page tells facts again until they are kept, so one that says that it moved says nothing of this moment.
            match evidence.fact {
                Fact::Shown { .. } | Fact::Second { .. } => set.seen = true,
                Fact::Rested { .. } => stage.shows = false,
            }
        }
    }

    pub(super) fn kept(&mut self, set: String, seq: u32) {
        if let Some(stage) = &self.stage {
            let message = ToStage::Kept { set, seq };
            self.effects.push(Effect::ToStage(stage.id, message));
        }
    }
}

/// Whether the client taps Ready before the next set. A lost full screen may be the client's
/// Escape, which browsers keep to themselves, so it counts like a Stop: the page tells it only of a set that it shows, and
/// waits for the tap though the room may have seen that set end a moment before.
fn needs_tap(cause: Interruption) -> bool {
    match cause {
        Interruption::Hidden | Interruption::SoundLost | Interruption::FullScreenLeft => true,
        Interruption::Resized | Interruption::Silence => false,
    }
}

fn ending_of(cause: Interruption) -> Ending {
    match cause {
        Interruption::Silence => Ending::LinkLost,
        _ => Ending::PageInterrupted,
    }
}

/// The device without what cannot be true of its calibration: then it is uncalibrated, and the desk
/// says so. A field that cannot be is no page of ours.
fn taken_in(device: Device) -> Result<Device, &'static str> {
    if optics::plausible(&device) { Ok(optics::calibrated(device)) } else { Err("an impossible screen") }
}
