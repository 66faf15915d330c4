//! Who is there, who was lost, and what a loss asks for.

use super::conduct::{Conduct, LIVE_BEAT_MS, SLOW_BEAT_MS};
use super::{Effect, GAP_MS, MomentKind, Room, Why};
use crate::safety::SILENCE_MS;
use crate::wire::{Ending, ToDesk, ToStage};

/// The stage is given two beats more than the desk: it stops by itself, so this is for the words.
const STAGE_SILENCE_MS: f64 = SILENCE_MS + 2.0 * LIVE_BEAT_MS;
/// A change is not put off for a slow line by more than this, ms.
const MOST_LEAD_MS: f64 = 250.0;
/// After a silence of the desk that was longer than this and its round trip, its sign goes to the stage at once, ms.
const NEWS_MS: f64 = 2.0 * LIVE_BEAT_MS;
/// No set starts after a silence of the desk that was longer than this and its round trip, ms: the stage may bear no more than 750,
/// and the way there counts as well.
const START_SILENCE_MS: f64 = 600.0;
/// Of a round trip no more than this is borne on top of the limits, ms: with the easing, the stage must be at rest within 3 s.
pub(super) const MOST_TRIP_MS: f64 = 500.0;

/// Whether one end is there, over all its sockets.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Presence {
    /// Room time of its last sign, ms: see [`Conduct::alive`].
    pub heard: Option<f64>,
    pub here: bool,
    /// See [`Conduct::trip`].
    trip: f64,
}

impl Presence {
    /// Notes a sign of `line`; the gap in ms when it had been lost. A sign that is older than `limit` is none: it was on its way
    /// for so long that nobody knows who is there.
    fn hear(&mut self, conduct: &Conduct, now: f64, limit: f64) -> Option<f64> {
        let (last, sign) = (self.heard, conduct.alive);
        self.trip = conduct.trip.min(MOST_TRIP_MS);
        self.heard = Some(last.map_or(sign, |last| last.max(sign)));
        if self.here || now - sign >= limit + self.trip {
            return None;
        }
        self.here = true;
        last.map(|last| sign - last)
    }

    /// When it counts as lost.
    fn due(&self, live_since: f64, limit: f64) -> Option<f64> {
        let heard = self.heard.filter(|_| self.here)?;
        Some(heard.max(live_since) + limit + self.trip)
    }

    /// Until when its last sign is no older than `limit` and the round trip.
    fn fresh_until(&self, limit: f64) -> Option<f64> {
        self.heard.filter(|_| self.here).map(|heard| heard + limit + self.trip)
    }
}

impl Room {
    pub(super) fn sockets(&self) -> impl Iterator<Item = &Conduct> {
        let stage = self.stage.iter().map(|stage| &stage.conduct);
        let arriving = self.arriving.iter().map(|one| &one.conduct);
        self.desks.iter().map(|desk| &desk.conduct).chain(stage).chain(arriving)
    }

    pub(super) fn sockets_mut(&mut self) -> impl Iterator<Item = &mut Conduct> {
        let stage = self.stage.iter_mut().map(|stage| &mut stage.conduct);
        self.desks.iter_mut().map(|desk| &mut desk.conduct).chain(stage)
    }

    /// How long before a change must be ordered for both pages to have it in time more often than not, ms. Nothing is added for
    /// those that have it later: a change begins so gently that a page which hears of it some ms late has nothing to make up,
    /// and whatever is added lies between the key and the screen.
    pub(super) fn lead(&self) -> f64 {
        let control = self.desks.iter().filter(|desk| Some(desk.id) == self.control);
        let stage = self.stage.iter().map(|stage| stage.conduct.delay());
        let slower = control.map(|desk| desk.conduct.delay()).chain(stage).fold(0.0, f64::max);
        slower.min(MOST_LEAD_MS)
    }

    /// Room time at which the desk counts as lost, ms.
    pub(super) fn desk_due(&self) -> Option<f64> {
        self.desk_presence.due(self.live_since, self.patience(SILENCE_MS))
    }

    /// Room time at which the stage counts as lost, ms.
    pub(super) fn stage_due(&self) -> Option<f64> {
        self.stage_presence.due(self.live_since, self.patience(STAGE_SILENCE_MS))
    }

    /// Silence cannot be told from slow beats in less than one of these.
    fn patience(&self, limit: f64) -> f64 {
        if self.is_live() { limit } else { limit + SLOW_BEAT_MS }
    }

    /// Whether the page of a socket was there within the limit for desks.
    pub(super) fn heard_lately(&self, conduct: &Conduct) -> bool {
        self.now - conduct.alive <= self.patience(SILENCE_MS) + conduct.trip.min(MOST_TRIP_MS)
    }

    /// The desk's last sign is so new that the stage would start a set on it.
    pub(super) fn desk_is_fresh(&self) -> bool {
        self.desk_presence.fresh_until(START_SILENCE_MS).is_some_and(|until| self.now < until)
    }

    /// The stage was heard lately, by the measure of a live room, and knows the room's time.
    pub(super) fn stage_is_fresh(&self) -> bool {
        self.stage.as_ref().is_some_and(|stage| stage.conduct.in_step)
            && self.stage_presence.fresh_until(STAGE_SILENCE_MS).is_some_and(|until| self.now < until)
    }

    /// When either of the two ends by time alone.
    pub(super) fn fresh_due(&self) -> Option<f64> {
        let desk = self.desk_presence.fresh_until(START_SILENCE_MS);
        let stage = self.stage_presence.fresh_until(STAGE_SILENCE_MS);
        [desk, stage].into_iter().flatten().filter(|&until| until > self.now).min_by(f64::total_cmp)
    }

    pub(super) fn notice_silence(&mut self) {
        if self.desk_due().is_some_and(|due| self.now >= due) {
            self.lose_desk();
        }
        if self.stage_due().is_some_and(|due| self.now >= due) {
            self.lose_stage();
        }
    }

    fn lose_desk(&mut self) {
        self.desk_presence.here = false;
        if self.is_live() {
            self.need_sight = true;
            self.record_moment(MomentKind::DeskLost);
            self.end_set(Ending::LinkLost);
        }
    }

    /// The stage is gone: at once when its socket closes, for the page may be another then.
    pub(super) fn lose_stage(&mut self) {
        if !self.stage_presence.here {
            return;
        }
        self.stage_presence.here = false;
        if self.is_live() {
            self.need_sight = true;
            self.record_moment(MomentKind::StageLost);
            self.end_set(Ending::LinkLost);
        }
    }

    /// Takes in the last sign of the desk in control. The stage starts nothing and soon stops while the last it knows of is old, so it
    /// does not wait for its next beat.
    pub(super) fn desk_sign(&mut self) {
        let (now, limit) = (self.now, self.patience(SILENCE_MS));
        let Some(desk) = self.desks.iter().find(|desk| Some(desk.id) == self.control) else {
            return;
        };
        let known = self.desk_presence.heard;
        let silent = known.is_none_or(|heard| now - heard > NEWS_MS + self.desk_presence.trip);
        let gap = self.desk_presence.hear(&desk.conduct, now, limit);
        if silent && self.desk_presence.heard > known {
            self.beat_to_stage();
        }
        if let Some(gap) = gap {
            self.came_back(gap, MomentKind::DeskBack);
        }
    }

    /// The stage hears at once how long the desk has been silent.
    pub(super) fn beat_to_stage(&mut self) {
        let now = self.now;
        if self.is_live()
            && let Some(stage) = &mut self.stage
        {
            stage.conduct.beat_at(now);
        }
    }

    /// Takes in the last sign of the stage.
    pub(super) fn stage_sign(&mut self) {
        let (now, limit) = (self.now, self.patience(STAGE_SILENCE_MS));
        let Some(stage) = &self.stage else {
            return;
        };
        if let Some(gap) = self.stage_presence.hear(&stage.conduct, now, limit) {
            self.came_back(gap, MomentKind::StageBack);
        }
    }

    fn came_back(&mut self, gap: f64, kind: MomentKind) {
        if self.is_live() {
            self.record_moment(kind);
            // Before the client was admitted nothing could be interrupted.
            let gap = gap.min(self.now - self.live_since);
            self.need_ready |= gap > GAP_MS;
        }
    }

    pub(super) fn drop_dead_sockets(&mut self) {
        let now = self.now;
        let dead: Vec<u64> = (self.desks.iter()).filter(|desk| desk.conduct.is_dead(now)).map(|desk| desk.id).collect();
        for desk in dead {
            self.close_desk(desk, Why::Silent);
        }
        let stages =
            self.stage.iter().map(|stage| (stage.id, &stage.conduct)).chain(self.arriving.iter().map(|one| (one.id, &one.conduct)));
        let dead: Vec<u64> = stages.filter(|(_, conduct)| conduct.is_dead(now)).map(|(id, _)| id).collect();
        for stage in dead {
            self.close_stage(stage, Why::Silent);
        }
    }

    pub(super) fn send_beats(&mut self) {
        let (now, live) = (self.now, self.is_live());
        for desk in &mut self.desks {
            if let Some(beat) = desk.conduct.beat(now, live, (None, 0.0)) {
                self.effects.push(Effect::ToDesk(desk.id, ToDesk::Beat(beat)));
            }
        }
        let silent = self.desk_presence.heard.map(|heard| now - heard);
        let of_desk = (silent, self.desk_presence.trip);
        if let Some(stage) = &mut self.stage
            && let Some(beat) = stage.conduct.beat(now, live, of_desk)
        {
            self.effects.push(Effect::ToStage(stage.id, ToStage::Beat(beat)));
        }
    }
}
