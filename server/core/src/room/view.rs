//! What both ends see: the state word, the needs, and the views that carry them.

use super::aids::Aids;
use super::{Effect, Room, StoppedBy};
use crate::optics;
use crate::wire::{
    DeskView, Device, Ending, Hold, Needs, OpenPad, Plan, Refusal, RoomState, SeatState, SetView, StageView, ToDesk, ToStage, Watch,
};

/// How far the news of the client's stop has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum StopNews {
    /// There is none.
    None,
    /// No view has carried it yet.
    Unseen,
    /// The view with this `seq` was the first to carry it.
    Carried(u32),
    /// The desk in control has drawn it.
    Known,
}

impl StopNews {
    /// The desk in control has drawn the view with this `seq`.
    pub fn desk_drew(&mut self, drawn: u32) {
        if let StopNews::Carried(seq) = *self
            && drawn >= seq
        {
            *self = StopNews::Known;
        }
    }
}

/// All that views say, to tell whether anything changed.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Face {
    state: RoomState,
    needs: Needs,
    refused: Option<Refusal>,
    holds: Vec<Hold>,
    aids: Aids,
    plan: Plan,
    set: Option<SetView>,
    control: Option<u64>,
    desks: usize,
    desk_here: bool,
    desk_knows: bool,
    seat: SeatState,
    seat_id: Option<String>,
    asking: Option<String>,
    record_refuses: bool,
    clock_set: f64,
    record_waits: bool,
    stage_here: bool,
    device: Option<Device>,
    eyes_locked: bool,
    sides_asked: u32,
    closing_words: Option<String>,
    watch: Watch,
}

impl Room {
    pub(super) fn needs(&self) -> Needs {
        let device = self.stage.as_ref().map(|stage| stage.device);
        let Plan { channels, comfort, .. } = self.plan;
        // While a set runs, silence ends it. It is no longer a matter of starting one.
        let idle = self.is_live() && !self.is_active();
        Needs {
            sight: self.need_sight,
            client_ready: self.need_ready,
            stage: !self.stage_presence.here || (idle && !self.stage_is_fresh()),
            check: device.is_some_and(|device| device.checking),
            pause: self.now < self.pause_until,
            desk: idle && !self.desk_is_fresh(),
            rest: idle && self.stage.as_ref().is_some_and(|stage| stage.shows),
            motion: channels.eyes && device.is_some_and(|device| device.reduced_motion),
            sound: !channels.eyes
                && device.is_some_and(|device| !(device.sound || channels.hands && comfort.vibration && device.vibration)),
        }
    }

    /// The state word. `Ready` is what [`Room::may_start`] says and nothing else.
    pub(super) fn state(&self) -> RoomState {
        if self.closed.is_some() {
            return RoomState::Closed;
        }
        match self.seat {
            SeatState::Empty => RoomState::Waiting,
            SeatState::Waiting => RoomState::AtTheDoor,
            SeatState::Left => RoomState::Left,
            SeatState::Admitted if self.starting.is_some() => RoomState::Starting,
            SeatState::Admitted => self.running().map_or_else(|| self.standing(), |set| set.state(self.now)),
        }
    }

    /// The word while no set runs.
    fn standing(&self) -> RoomState {
        match self.stopped {
            _ if !self.stage_presence.here => RoomState::LinkLost,
            Some(StoppedBy::Client) => RoomState::StoppedByClient,
            Some(StoppedBy::Other) => RoomState::Stopped,
            None if self.still_eases() => RoomState::Easing,
            None if self.may_start(self.control).is_ok() => RoomState::Ready,
            None => RoomState::Hold,
        }
    }

    /// The last set came to its end here, and the client's page has still to say so.
    fn still_eases(&self) -> bool {
        let meant = self.set.as_ref().is_some_and(|set| matches!(set.ended, Some(Ending::Done | Ending::EndedByClinician)));
        meant && self.stage.as_ref().is_some_and(|stage| stage.shows)
    }

    fn face(&self) -> Face {
        Face {
            state: self.state(),
            needs: self.needs(),
            refused: self.may_start(self.control).err(),
            holds: self.holds.of(self.plan.purpose).to_vec(),
            aids: self.aids.clone(),
            plan: self.active_plan().unwrap_or(self.plan),
            set: self.set.as_ref().map(|set| set.view()),
            control: self.control,
            desks: self.desks.iter().filter(|desk| desk.conduct.greeted).count(),
            desk_here: self.desk_presence.here,
            desk_knows: self.stop_news == StopNews::Known,
            seat: self.seat,
            seat_id: self.seat_id.clone(),
            asking: self.asking.clone(),
            record_refuses: self.record_refuses,
            clock_set: self.clock_set,
            record_waits: self.record_waits,
            stage_here: self.stage_presence.here,
            device: self.stage.as_ref().map(|stage| stage.device),
            eyes_locked: self.eyes_locked,
            sides_asked: self.sides_asked,
            closing_words: self.closed.clone().flatten(),
            watch: self.call.watch,
        }
    }

    /// Sends the whole to everybody when anything changed, and to those who wait for it.
    pub(super) fn publish(&mut self) {
        let Needs { sight, client_ready, pause, rest, .. } = self.needs();
        if !(sight || client_ready || pause || rest) {
            self.stopped = None;
        }
        let face = self.face();
        let changed = self.shown.as_ref() != Some(&face);
        if changed {
            self.seq += 1;
        }
        if self.stop_news == StopNews::Unseen {
            self.stop_news = StopNews::Carried(self.seq);
        }
        self.send_views(&face, changed);
        self.shown = Some(face);
    }

    fn send_views(&mut self, face: &Face, changed: bool) {
        let seq = self.seq;
        for i in 0..self.desks.len() {
            let line = &self.desks[i].conduct;
            if line.greeted && (changed || line.wants_view) {
                let id = self.desks[i].id;
                let view = self.desk_view(face, id);
                self.desks[i].conduct.view_sent(seq);
                self.effects.push(Effect::ToDesk(id, ToDesk::View(view)));
            }
        }
        let view = self.stage_view(face);
        if let Some(stage) = &mut self.stage
            && stage.conduct.greeted
            && (changed || stage.conduct.wants_view)
        {
            stage.conduct.view_sent(seq);
            self.effects.push(Effect::ToStage(stage.id, ToStage::View(view)));
        }
    }

    fn desk_view(&self, face: &Face, desk: u64) -> DeskView {
        let plan = face.plan;
        let in_control = face.control == Some(desk);
        // What is true of the desk in control is not of one that watches: its key starts nothing.
        let (state, refused) = match face.state {
            RoomState::Ready if !in_control => (RoomState::Hold, Some(Refusal::NotInControl)),
            state if !in_control => (state, Some(Refusal::NotInControl)),
            state => (state, face.refused.clone()),
        };
        DeskView {
            epoch: self.epoch,
            seq: self.seq,
            state,
            needs: face.needs,
            refused,
            holds: face.holds.clone(),
            plan,
            set: face.set.clone(),
            in_control,
            other_desk: face.desks > 1,
            seat: face.seat,
            seat_asked_for: face.asking.is_some(),
            seat_id: face.seat_id.clone(),
            asking: face.asking.clone(),
            record_refuses: face.record_refuses,
            clock_set: face.clock_set,
            record_waits: face.record_waits,
            stage_here: face.stage_here,
            stage_heard: self.stage_presence.heard,
            device: face.device,
            asked_width: self.asked_width,
            widest: face.device.map(|device| optics::widest(&device, plan.path, plan.dot)),
            eyes_locked: face.eyes_locked,
            hard_end: self.running().map(|set| set.goal.by),
            steadying: face.aids.steadying.clone(),
            pad: face.aids.pad,
            rated: face.aids.rated.clone(),
            longer: face.aids.longer,
            watch: face.watch,
        }
    }

    fn stage_view(&self, face: &Face) -> StageView {
        let admitted = face.seat == SeatState::Admitted;
        StageView {
            epoch: self.epoch,
            seq: self.seq,
            state: face.state,
            needs: face.needs,
            set: face.set.clone().filter(|_| admitted),
            desk_knows: face.desk_knows,
            desk_here: face.desk_here,
            figure: !face.eyes_locked,
            sides_asked: face.sides_asked,
            closing_words: face.closing_words.clone().filter(|_| admitted),
            steadying: face.aids.steadying.clone().filter(|_| admitted),
            pad: face.aids.pad.filter(|_| admitted).map(|pad| OpenPad { scale: pad.scale, asked: face.aids.asked }),
            longer: face.aids.longer && admitted,
        }
    }
}
