//! What a room says is done: messages to its sockets, and what is written down.

use std::collections::VecDeque;

use leeward_core::room::{Effect, Event};
use leeward_core::wire::{Evidence, Plan, ToDesk, ToStage};
use serde::Serialize;
use uuid::Uuid;

use super::names;
use super::queries_room::{EndingRow, OrderRow, Witness};
use super::recorder::Job;
use super::room_task::RoomTask;
use super::socket_end::{Out, SocketEnd};
use crate::base::ids::new_id;

/// Evidence in so many messages may wait for the database; what is more is not taken, and the page
/// sends it again until it is told that it was kept.
const EVIDENCE_AT_ONCE: u32 = 64;
/// A clock may be slewed by so much within a session without a word, s.
const CLOCK_SLACK: i64 = 5;

impl RoomTask {
    pub(super) fn tell(&mut self, event: Event) {
        let mut events = VecDeque::from([event]);
        while let Some(event) = events.pop_front() {
            let now = self.now();
            for effect in self.room.handle(event, now) {
                events.extend(self.carry_out(effect));
            }
        }
    }

    fn carry_out(&mut self, effect: Effect) -> Vec<Event> {
        match effect {
            Effect::ToDesk(desk, ToDesk::Call(said)) => return self.tell_caller(desk, said, ToDesk::Call).into_iter().collect(),
            Effect::ToStage(stage, ToStage::Call(said)) => return self.tell_caller(stage, said, ToStage::Call).into_iter().collect(),
            Effect::ToDesk(desk, message) => return self.send(desk, &message).into_iter().collect(),
            Effect::ToStage(stage, message) => return self.send(stage, &message).into_iter().collect(),
            Effect::BeginCall { desk, stage, call, relay_only } => return self.begin_call(desk, stage, call, relay_only),
            Effect::RenewWays { socket, of_desk, call, relay_only } => {
                return self.renew_ways(socket, of_desk, call, relay_only).into_iter().collect();
            }
            Effect::CloseDesk(socket, why) | Effect::CloseStage(socket, why) => {
                if let Some(line) = self.lines.remove(&socket) {
                    line.out.close(Out::Close(why.code(), why.reason()));
                }
            }
            Effect::RecordSet { number, plan } => self.record_set(number, plan),
            Effect::KeepEvidence(facts) => self.keep_evidence(facts),
            Effect::KeepHandedBack(set) => {
                let recorded_at = self.lease.app.world.now();
                self.write(Job::HandedBack { set, recorded_at });
            }
            Effect::RecordMoment { kind, .. } => {
                let world = &self.lease.app.world;
                self.write(Job::Moment { kind: names::moment(kind), once: new_id(world), at: world.now() });
            }
            Effect::RecordEnding { set, ending, at } => {
                let recorded_at = self.lease.app.world.now();
                self.write_set(&set, |set| {
                    Ok(Job::Ending(EndingRow { set, witness: Witness::Room, ending: names::ending(ending), at: Some(at), recorded_at }))
                });
            }
            Effect::RecordOrdered { set, seq, cause, plan, timeline, at } => {
                let recorded_at = self.lease.app.world.now();
                self.write_set(&set, |set| {
                    let (plan, timeline) = (serde_json::to_value(plan)?, serde_json::to_value(&timeline)?);
                    let seq = i32::try_from(seq).unwrap_or(i32::MAX);
                    Ok(Job::Order(OrderRow { set, seq, cause: names::cause(cause), at, plan, timeline, recorded_at }))
                });
            }
        }
        vec![]
    }

    /// A clock that is set while people work is said: what the record dates by it may be wrong.
    pub(super) fn look_at_clock(&mut self) {
        let by_clock = (self.lease.app.world.now() - self.since_by_clock).num_milliseconds();
        let set = (by_clock - i64::try_from(self.since.elapsed().as_millis()).unwrap_or(i64::MAX)) / 1_000;
        if (set - self.clock_set).abs() > CLOCK_SLACK {
            tracing::warn!(seconds = set - self.clock_set, "the server's clock was set while a room was open");
            self.clock_set = set;
            self.tell(Event::ClockSet(set as f64));
        }
    }

    /// Beside the recorder: a start does not wait for what is still to be written.
    fn record_set(&mut self, number: u32, plan: Plan) {
        self.recording += 1;
        let (lease, mail) = (self.lease.clone(), self.mail.clone());
        tokio::spawn(async move {
            let answer = lease.record_set(number, plan).await;
            // Without its room the set stays without an end in the record, which reads as unknown.
            let _ = mail.send(answer).await;
        });
    }

    fn keep_evidence(&mut self, facts: Vec<Evidence>) {
        if self.evidence_waiting < EVIDENCE_AT_ONCE {
            self.evidence_waiting += 1;
            let recorded_at = self.lease.app.world.now();
            self.write(Job::Evidence { facts, recorded_at });
        }
    }

    fn write_set(&self, set: &str, job: impl FnOnce(Uuid) -> Result<Job, serde_json::Error>) {
        match set.parse().map_err(|_| serde::de::Error::custom("a set's id is not one")).and_then(job) {
            Ok(job) => self.write(job),
            Err(fault) => tracing::error!(%fault, "a room's record could not be written"),
        }
    }

    pub(super) fn write(&self, job: Job) {
        if self.jobs.send(Box::new(job)).is_err() {
            tracing::error!("a room's recorder has gone");
            return;
        }
        self.lease.app.rooms().row_waits();
    }

    pub(super) fn left(&mut self, socket: u64) {
        if let Some(line) = self.lines.remove(&socket) {
            self.tell_left(socket, &line);
        }
    }

    pub(super) fn close(&mut self, socket: u64, last: Out) {
        if let Some(line) = self.lines.remove(&socket) {
            line.out.close(last);
            self.tell_left(socket, &line);
        }
    }

    fn tell_left(&mut self, socket: u64, line: &SocketEnd) {
        if let Some(event) = line.left(socket) {
            self.tell(event);
        }
    }

    /// Sends, or gives the socket up when it does not take what it is sent.
    pub(super) fn send(&mut self, socket: u64, message: &impl Serialize) -> Option<Event> {
        let line = self.lines.get(&socket)?;
        let sent = match serde_json::to_string(message) {
            Ok(text) => line.out.send(text),
            Err(fault) => {
                tracing::error!(%fault, "a message could not be written");
                false
            }
        };
        if sent {
            return None;
        }
        // Without its outbox the socket writes what it has, then closes.
        self.lines.remove(&socket).and_then(|line| line.left(socket))
    }
}
