//! Believable courses: how disturbance falls, sticks, comes back, or is never finished.
//!
//! Everything is drawn from one seeded generator, so the same seed gives the same practice. The rules
//! are invented for the demo; they are no finding about anybody.

use leeward::sessions::ClosingKind;
use leeward::targets::Prong;
use leeward_core::course::Procedure;
use leeward_core::safety;
use leeward_core::wire::{Answer, Change, Ending, Length, Moment, Path, Plan};
use rand::Rng;
use rand::seq::IndexedRandom;
use rand_chacha::ChaCha8Rng;

use crate::people::{CLUSTERS, EARLY, LATER, MEMORIES, RESOURCES, SETTLED};
use crate::plan::{End, SessionPlan, SetPlan, TargetPlan};

/// What kind of course a client has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Falls steadily; targets are finished one after the other.
    Well,
    /// Falls slowly, over many sessions.
    Slow,
    /// Sticks for some sessions; another speed and direction help.
    Helped,
    /// A finished target rises again and is reopened.
    Reopened,
    /// Stays away after a few sessions.
    Away,
    /// Has only just begun.
    New,
}

/// The work of one client: targets, and sessions that end `last` days before the day of seeding.
pub struct Course {
    /// Targets in their order.
    pub targets: Vec<TargetPlan>,
    /// Sessions in their order.
    pub sessions: Vec<SessionPlan>,
}

struct Work<'a> {
    rng: &'a mut ChaCha8Rng,
    kind: Kind,
    plan: Plan,
    course: Course,
    day: i64,
    minute: i64,
    sud: u8,
    voc: u8,
    stuck_for: u32,
}

/// Draws a course of `sessions` sessions. `comfort` is the plan that suits this client.
pub fn draw(rng: &mut ChaCha8Rng, kind: Kind, sessions: usize, last: i64, comfort: Plan) -> Course {
    let gap = if kind == Kind::Slow { 9 } else { 7 };
    let minute = 60 * rng.random_range(8..17) + 30 * rng.random_range(0..2);
    let day = last + gap * i64::try_from(sessions.saturating_sub(1)).unwrap_or(0);
    let mut work =
        Work { rng, kind, plan: comfort, course: Course { targets: vec![], sessions: vec![] }, day, minute, sud: 0, voc: 1, stuck_for: 0 };
    work.next_target();
    for number in 0..sessions {
        if number == 0 {
            work.preparation()
        } else {
            work.reprocessing(number)
        }
        work.day -= gap;
    }
    work.course
}

/// A speed, width and path that suit one person.
pub fn comfort(rng: &mut ChaCha8Rng, eyes: bool) -> Plan {
    let mut plan = safety::default_plan();
    plan.rate = [0.8, 0.9, 1.0, 1.0, 1.1, 1.2].choose(rng).copied().unwrap_or(1.0);
    plan.width = [14.0, 16.0, 18.0, 18.0, 20.0].choose(rng).copied().unwrap_or(18.0);
    plan.path = [Path::Across, Path::Across, Path::Across, Path::UpDown, Path::Falling].choose(rng).copied().unwrap_or(Path::Across);
    plan.length = Length::Cycles([20, 24, 24, 24, 30].choose(rng).copied().unwrap_or(24));
    plan.channels.eyes = eyes;
    plan.channels.ears = !eyes || rng.random_bool(0.3);
    plan
}

impl Work<'_> {
    fn target(&self) -> usize {
        self.course.targets.len() - 1
    }

    fn next_target(&mut self) {
        let taken = self.course.targets.len();
        let at = (usize::from(self.rng.random::<u8>()) + taken * 5) % MEMORIES.len();
        let prong = [Prong::Past, Prong::Past, Prong::Present, Prong::Future][taken.min(3)];
        self.sud = self.rng.random_range(6..=10);
        self.voc = self.rng.random_range(1..=3);
        self.stuck_for = 0;
        // Out of what was drawn already: another draw would change every course after it.
        let age = i16::try_from(5 + (at * 7 + usize::from(self.sud) * 3) % 38).ok().filter(|_| prong == Prong::Past);
        let procedure = if prong == Prong::Future { Procedure::Future } else { Procedure::Standard };
        let cluster = CLUSTERS[at % CLUSTERS.len()];
        self.course.targets.push(TargetPlan { memory: &MEMORIES[at], prong, age, procedure, cluster, sud: self.sud, voc: self.voc });
    }

    /// The first session: short and slow sets for the calm place, no reprocessing.
    fn preparation(&mut self) {
        let mut slow = self.plan;
        slow.rate = 0.5;
        slow.length = Length::Cycles(6);
        let sets = (0..3).map(|_| self.set(slow, Moment::AfterSet, Change::Same, "calm place, a little clearer", None, None)).collect();
        let note = "Preparation: stop signal agreed and rehearsed, calm place found, speed and width tried.".to_owned();
        self.write(None, None, sets, ClosingKind::NoReprocessing, None, false, note);
    }

    fn reprocessing(&mut self, number: usize) {
        let finished = self.sud == 0 && self.voc == 7;
        let reopened = finished && self.kind == Kind::Reopened && !self.course.sessions.iter().any(|session| session.reopened);
        if finished && !reopened {
            self.next_target();
        }
        let rebound = if reopened { 3 } else { u8::from(number > 1 && self.rng.random_bool(0.35)) };
        self.sud = (self.sud + rebound).min(10);
        let mut sets = self.desensitization();
        let done = self.sud <= 1;
        if done {
            sets.extend(self.installation());
        }
        let closing = if done && self.sud == 0 && self.voc == 7 { ClosingKind::Complete } else { ClosingKind::Incomplete };
        let note = self.note(closing, reopened);
        let (first, closing_sud) = ((number > 1).then_some(self.first_rating(rebound)), self.rng.random_bool(0.6).then_some(self.sud));
        self.write(Some(self.target()), first, sets, closing, closing_sud, reopened, note);
    }

    fn first_rating(&self, rebound: u8) -> u8 {
        // The last session's end, risen again by the rebound.
        let before = self
            .course
            .sessions
            .last()
            .and_then(|s| s.sets.iter().rev().find_map(|set| set.sud))
            .unwrap_or(self.course.targets[self.target()].sud);
        (before + rebound).min(10)
    }

    fn desensitization(&mut self) -> Vec<SetPlan> {
        let count = self.rng.random_range(9..=14);
        (0..count)
            .map(|at| {
                let mark = self.step();
                let words = self.words(mark);
                // Asked again at the target now and then, not after every set.
                let sud = (at % 3 == 2 || at == count - 1).then_some(self.sud);
                let moment = if sud.is_some() { Moment::BackAtTarget } else { Moment::AfterSet };
                let plan = self.plan_now();
                self.set(plan, moment, mark, words, sud, None)
            })
            .collect()
    }

    /// Moves the disturbance by one set.
    fn step(&mut self) -> Change {
        let chance = match self.kind {
            Kind::Well | Kind::Reopened => 0.30,
            Kind::Slow | Kind::Away | Kind::New => 0.13,
            Kind::Helped => {
                if self.stuck_for < 22 {
                    0.02
                } else {
                    0.32
                }
            }
        };
        if self.sud > 0 && self.rng.random_bool(chance) {
            self.sud -= 1;
            self.stuck_for = 0;
            Change::Changing
        } else if self.sud == 0 {
            Change::Settled
        } else {
            self.stuck_for += 1;
            if self.rng.random_bool(0.4) { Change::Changing } else { Change::Same }
        }
    }

    /// The client's own plan, and what helped when it was stuck: other mechanics.
    fn plan_now(&mut self) -> Plan {
        let mut plan = self.plan;
        if self.kind == Kind::Helped && self.stuck_for >= 20 {
            plan.rate = (plan.rate + 0.2).min(1.4);
            plan.path = Path::Rising;
        }
        plan
    }

    fn installation(&mut self) -> Vec<SetPlan> {
        let mut sets = vec![];
        if self.voc == 7 {
            sets.push(self.asked_anew());
        }
        while self.voc < 7 && sets.len() < 4 {
            self.voc = (self.voc + self.rng.random_range(1..=2)).min(7);
            let (plan, voc) = (self.plan, self.voc);
            sets.push(self.set(plan, Moment::Installation, Change::Settled, "the good thought fits", None, Some(voc)));
        }
        sets
    }

    /// The belief that was strong before, asked again. Nothing is drawn for it: a draw would change every course after it.
    fn asked_anew(&self) -> SetPlan {
        let Length::Cycles(cycles) = self.plan.length else { unreachable!("courses are drawn with counted sets") };
        let ending = (Ending::Done, f64::from(cycles));
        let (moment, mark) = (Moment::Installation, Change::Settled);
        SetPlan { plan: self.plan, change: None, ending, moment, mark, words: "it fits as before", sud: None, voc: Some(self.voc) }
    }

    fn set(&mut self, plan: Plan, moment: Moment, mark: Change, words: &'static str, sud: Option<u8>, voc: Option<u8>) -> SetPlan {
        let Length::Cycles(cycles) = plan.length else { unreachable!("courses are drawn with counted sets") };
        let cycles = f64::from(cycles);
        let ending = match self.rng.random_range(0..1000) {
            0..25 => (Ending::StoppedByClient, cycles * self.rng.random_range(0.2..0.8)),
            25..45 => (Ending::EndedByClinician, cycles * 0.6),
            45..52 => (Ending::LinkLost, cycles * self.rng.random_range(0.3..0.7)),
            _ => (Ending::Done, cycles),
        };
        let change = (cycles > 12.0 && self.rng.random_bool(0.12)).then_some((5.0, (plan.rate + 0.1).min(1.4)));
        let change = change.filter(|_| ending.1 > 8.0);
        let words = if self.rng.random_bool(0.8) { words } else { "" };
        SetPlan { plan, change, ending, moment, mark, words, sud, voc }
    }

    /// Nothing speaks against the hour; who is near and who can be called is often as last time.
    fn opening(&mut self) -> Vec<(Answer, bool)> {
        let again = !self.course.sessions.is_empty();
        let near = if self.rng.random_bool(0.3) { Answer::SomebodyToHelp } else { Answer::Nobody };
        let risk = if self.rng.random_bool(0.1) { Answer::PlanStands } else { Answer::NothingNew };
        let fit = if self.rng.random_bool(0.2) { Answer::Strained } else { Answer::Fit };
        let asked =
            [(near, false), (Answer::Reachable, again), (risk, false), (fit, false), (Answer::Consents, false), (Answer::WayAgreed, again)];
        asked.into_iter().chain([(Answer::Steady, false)]).collect()
    }

    fn words(&mut self, mark: Change) -> &'static str {
        let pool: &[&'static str] = match (mark, self.sud) {
            (Change::Settled, _) => &SETTLED,
            (_, 6..) => &EARLY,
            _ => &LATER,
        };
        pool.choose(self.rng).copied().unwrap_or_default()
    }

    fn note(&mut self, closing: ClosingKind, reopened: bool) -> String {
        let ended = match closing {
            ClosingKind::Complete => "Target finished: no disturbance left, the wanted belief fits, body clear.",
            _ if reopened => "Disturbance had come back since last time; target reopened and worked on.",
            _ => "Target not finished; contained, oriented before leaving.",
        };
        let resource = RESOURCES.choose(self.rng).copied().unwrap_or_default();
        format!("{ended} Used: {resource}.")
    }

    #[expect(clippy::too_many_arguments, reason = "the parts of a session, each named once")]
    fn write(
        &mut self,
        target: Option<usize>,
        reevaluation: Option<u8>,
        sets: Vec<SetPlan>,
        closing: ClosingKind,
        closing_sud: Option<u8>,
        reopened: bool,
        note: String,
    ) {
        let (days_ago, minute) = (self.day, self.minute);
        let opening = self.opening();
        self.course.sessions.push(SessionPlan {
            days_ago,
            minute,
            target,
            opening,
            passed: None,
            reevaluation,
            sets,
            closing,
            closing_sud,
            reopened,
            end: End::Closed,
            note,
        });
    }
}
