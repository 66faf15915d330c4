//! Writes the practice through the portal's own functions, each at the time it is said to have happened.

use std::sync::Arc;

use chrono::{DateTime, Duration, NaiveDate, NaiveTime, Utc};
use leeward::base::ids::new_id;
use leeward::clients::{self, Cautions, Details, NewClient};
use leeward::comfort;
use leeward::course::{self, Saying};
use leeward::episodes;
use leeward::live::{self, Admission};
use leeward::measures::{self, Done, Filled, Occasion};
use leeward::platform::App;
use leeward::reach::{self, Reach, Use};
use leeward::safety_plan::{self, SafetyPlan};
use leeward::sessions::{self, Closing, ClosingKind, NewSession};
use leeward::signin;
use leeward::steadying::{self, Helped, Resource, Steadying};
use leeward::store::seal::Private;
use leeward::store::subject::{Act, Subject, Tx};
use leeward::targets::{self, Belongs, NewTarget, Prong, Wanted, Words};
use leeward_core::course::{Decision, Procedure, Rehearsal, Scan};
use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Entry, EntryValue, Moment, ReachStep};
use uuid::Uuid;

use crate::askings;
use crate::forms;
use crate::people::{STEADIED_BY, STEADYING};
use crate::plan::{ClientPlan, End, SessionPlan, SetPlan, TargetPlan};
use crate::sets;
use crate::world::SeedWorld;

/// What went wrong, in words for the terminal.
pub type Fault = Box<dyn std::error::Error + Send + Sync>;

/// Writes one practice.
pub struct Writer {
    /// The portal.
    pub app: App,
    /// Its clock.
    pub world: Arc<SeedWorld>,
    /// The day of seeding: all dates are offsets from it.
    pub today: NaiveDate,
}

/// What the seeder knows of a client while writing.
struct Written<'a> {
    plan: &'a ClientPlan,
    id: Uuid,
    targets: Vec<Uuid>,
}

impl Writer {
    /// Writes a client with the whole course, treated by `clinician`; `place`: in the practice.
    ///
    /// # Errors
    /// Whatever the portal refused; the client is then unfinished.
    pub async fn client(&self, place: usize, plan: &ClientPlan, clinician: Uuid) -> Result<(), Fault> {
        let first = plan.sessions.first().ok_or("a client without a session")?;
        let came = self.time(first.days_ago + 3, first.minute);
        let subject = self.sign_in(clinician, came).await?;
        let new = NewClient { details: details(plan), cautions: Cautions { seizures: plan.seizures, eye_condition: plan.eye_condition } };
        let id = clients::create(&self.app, &subject, new).await?;
        if let Some(sheet) = &plan.comfort {
            comfort::save(&self.app, &subject, id, sheet, 0).await?;
        }
        if let Some(parts) = plan.safety {
            let plan = SafetyPlan { parts: parts.map(Private::new), review_on: Some(self.today + Duration::days(28)) };
            safety_plan::save(&self.app, &subject, id, &plan, 0).await?;
            self.steady(&subject, id).await?;
        }
        let baseline = plan.targets.first().map_or(6, |target| target.sud);
        self.schedule(&subject, id, place).await?;
        self.fill_in(&subject, id, forms::sheets(place, Occasion::Intake, baseline, self.app.world.now())?).await?;
        let mut written = Written { plan, id, targets: vec![] };
        for (number, session) in plan.sessions.iter().enumerate() {
            self.session(&mut written, session, clinician).await?;
            if let (true, Some(disturbed)) = (number > 0 && number.is_multiple_of(forms::EVERY), forms::disturbed(session)) {
                let subject = self.sign_in(clinician, self.app.world.now() + Duration::minutes(20)).await?;
                let sheets = forms::sheets(place, Occasion::Regular, disturbed, self.app.world.now())?;
                if askings::by_link(place) && (number + 1 < plan.sessions.len() || forms::ended(plan).is_none()) {
                    self.ask(&subject, id, (place, number), sheets, number + forms::EVERY >= plan.sessions.len()).await?;
                } else {
                    self.fill_in(&subject, id, sheets).await?;
                }
            }
        }
        self.flag(place, plan, id, clinician).await?;
        self.end(place, plan, id, clinician).await?;
        if plan.archived {
            let last = plan.sessions.last().map_or(0, |session| session.days_ago);
            let subject = self.sign_in(clinician, self.time(last - 40, first.minute)).await?;
            clients::archive_client(&self.app, &subject, id, 1).await?;
        }
        Ok(())
    }

    async fn fill_in(&self, subject: &Subject, client: Uuid, all: Vec<Filled>) -> Result<(), Fault> {
        for filled in all {
            measures::enter(&self.app, subject, client, &filled).await?;
        }
        Ok(())
    }

    /// Two answers about death: one that was looked at the same day, one that nobody has looked at yet.
    async fn flag(&self, place: usize, plan: &ClientPlan, client: Uuid, clinician: Uuid) -> Result<(), Fault> {
        let Some(last) = plan.sessions.last().filter(|last| matches!(place, 1 | 12) && last.end == End::Closed) else { return Ok(()) };
        let subject = self.sign_in(clinician, self.time(last.days_ago, last.minute) + Duration::hours(3)).await?;
        let number = measures::enter(&self.app, &subject, client, &forms::with_a_flag(self.app.world.now())?).await?;
        if place == 1 {
            measures::close_flag(&self.app, &subject, client, number, Done::PlanStands).await?;
        }
        Ok(())
    }

    /// Who has not been seen for long has ended, each in a way of their own; half of those who completed filled in forms at the end.
    async fn end(&self, place: usize, plan: &ClientPlan, client: Uuid, clinician: Uuid) -> Result<(), Fault> {
        let (Some(days), Some(last)) = (forms::ended(plan), plan.sessions.last()) else { return Ok(()) };
        if matches!(last.end, End::Left | End::NotReached) {
            return Ok(());
        }
        let subject = self.sign_in(clinician, self.time(days, last.minute) + Duration::hours(2)).await?;
        let reason = forms::reason(place);
        if let (true, Some(disturbed)) = (place.is_multiple_of(2), forms::disturbed(last)) {
            self.fill_in(&subject, client, forms::sheets(place, Occasion::End, disturbed, self.app.world.now())?).await?;
        }
        Ok(episodes::end(&self.app, &subject, client, self.app.world.now(), reason).await?)
    }

    /// Writes what steadies a client.
    async fn steady(&self, subject: &Subject, client: Uuid) -> Result<(), Fault> {
        let numbers = Reach {
            phone: Use::Call,
            contact: Use::Message,
            // Of ranges that are kept free for fiction.
            help_from_here: Private::new("+44 20 7946 0999"),
            tried_on: Some(self.today - Duration::days(40)),
            help_there: Private::new("999"),
        };
        reach::save(&self.app, subject, client, &numbers, 0).await?;
        steadying::save(&self.app, subject, client, &Steadying { lines: STEADYING.map(Private::new) }, 0).await?;
        for (cue, image, body_feeling, helped) in STEADIED_BY {
            let [cue, image, body_feeling] = [cue, image, body_feeling].map(Private::new);
            let helped = Helped::parse(helped).ok_or("a resource of the demo is not known to help or not")?;
            let resource = Resource { cue, image, body_feeling, helped, on_offer: helped == Helped::Yes };
            steadying::add(&self.app, subject, client, &resource).await?;
        }
        Ok(())
    }

    async fn session(&self, client: &mut Written<'_>, plan: &SessionPlan, clinician: Uuid) -> Result<(), Fault> {
        let start = self.time(plan.days_ago, plan.minute);
        let subject = self.sign_in(clinician, start - Duration::minutes(4)).await?;
        let target = self.target(client, plan, &subject).await?;
        let session = sessions::open(&self.app, &subject, NewSession { client: client.id, target }).await?;
        self.world.set(start);
        if plan.end == End::DidNotAttend {
            self.world.set(start + Duration::minutes(20));
            return Ok(sessions::close(&self.app, &subject, session, closing(plan, plan.closing)?).await?);
        }
        if let (Some(target), true) = (target, plan.reopened) {
            self.say(&subject, client.id, target, Saying::Decided(Decision::Reopened, None)).await?;
        }
        let admission = Admission { location: Private::new(&client.plan.location), call_back: Private::new(&client.plan.phone) };
        let (seat, _) = live::sit_down(&self.app, &subject, session).await?;
        live::admit(&self.app, &subject, session, seat, admission).await?;
        let sets = self.record_sets(session, plan, &subject, start).await?;
        let end = self.write_entries(session, plan, &sets, &subject, start).await?;
        // The first sign-in has been idle for too long by now: the seeder sends no sign of life meanwhile.
        let subject = self.sign_in(clinician, end + Duration::minutes(8)).await?;
        match plan.end {
            End::Left => return Ok(()),
            End::NotReached => return self.not_reached(session, &subject).await,
            _ => {}
        }
        let procedure = plan.target.and_then(|at| client.plan.targets.get(at)).map(|target| target.procedure);
        let mut kind = plan.closing;
        if let (Some(target), ClosingKind::Complete) = (target, plan.closing) {
            self.say(&subject, client.id, target, Saying::Scan(Scan::Clear)).await?;
            match procedure {
                Some(Procedure::Future) => self.say(&subject, client.id, target, Saying::Rehearsal(Rehearsal::Undisturbed)).await?,
                Some(Procedure::Restricted) => kind = ClosingKind::Reduced,
                _ => {}
            }
        }
        Ok(sessions::close(&self.app, &subject, session, closing(plan, kind)?).await?)
    }

    /// Two calls and a message, and no answer.
    async fn not_reached(&self, session: Uuid, subject: &Subject) -> Result<(), Fault> {
        let steps = [ReachStep::NoAnswer, ReachStep::Messaged, ReachStep::NoAnswer];
        let mut tx = self.app.database.act(subject, Act::new("entry.keep").object(session)).await?;
        for step in steps {
            self.world.set(self.app.world.now() + Duration::minutes(3));
            self.keep(&mut tx, session, &self.entry(None, Moment::AfterSet, EntryValue::Reach { step })).await?;
        }
        Ok(tx.commit().await?)
    }

    async fn keep(&self, tx: &mut Tx, session: Uuid, entry: &Entry) -> Result<(), Fault> {
        let kept = sessions::save_entry(tx, &self.app, session, entry).await?;
        Ok(kept.map(drop).map_err(|problems| format!("an entry was refused: {problems:?}"))?)
    }

    /// Writes down what is said about a target beside its ratings.
    async fn say(&self, subject: &Subject, client: Uuid, target: Uuid, saying: Saying) -> Result<(), Fault> {
        let mut tx = self.app.database.act(subject, Act::new("target.fact").object(target)).await?;
        tx.concerns(client);
        course::say(&mut tx, &self.app, client, target, saying).await?;
        Ok(tx.commit().await?)
    }

    /// The target of a session, entered when it is first worked on.
    async fn target(&self, client: &mut Written<'_>, plan: &SessionPlan, subject: &Subject) -> Result<Option<Uuid>, Fault> {
        let Some(at) = plan.target else { return Ok(None) };
        while client.targets.len() <= at {
            let target = client.plan.targets.get(client.targets.len()).ok_or("a session without its target")?;
            let id = targets::create(&self.app, subject, new_target(client.id, target)?).await?;
            targets::arrange(&self.app, subject, id, &wanted(client.targets.len(), target)).await?;
            if target.procedure != Procedure::Standard {
                self.say(subject, client.id, id, Saying::Procedure(target.procedure)).await?;
            }
            client.targets.push(id);
        }
        Ok(client.targets.get(at).copied())
    }

    /// Records the sets as a room would have, and says when each ended.
    async fn record_sets(
        &self,
        session: Uuid,
        plan: &SessionPlan,
        subject: &Subject,
        start: DateTime<Utc>,
    ) -> Result<Vec<(Uuid, DateTime<Utc>)>, Fault> {
        let (mut at, mut past, mut ends) = (6.0 * 60_000.0, vec![], vec![]);
        for (number, set) in (1..).zip(&plan.sets) {
            let (record, end) = sets::record(set, new_id(&self.app.world), number, at)?;
            #[expect(clippy::cast_possible_truncation, reason = "an hour in milliseconds fits")]
            ends.push((record.id, start + Duration::milliseconds(end as i64)));
            past.push(record);
            at = end + 70_000.0;
        }
        live::keep_past(&self.app, subject, session, start, &past).await?;
        Ok(ends)
    }

    /// Writes what was rated and reported; returns the time of the last entry.
    async fn write_entries(
        &self,
        session: Uuid,
        plan: &SessionPlan,
        sets: &[(Uuid, DateTime<Utc>)],
        subject: &Subject,
        start: DateTime<Utc>,
    ) -> Result<DateTime<Utc>, Fault> {
        let mut tx = self.app.database.act(subject, Act::new("entry.keep").object(session)).await?;
        let mut entries = vec![];
        for (nth, (answer, again)) in (0..).zip(&plan.opening) {
            let value = EntryValue::Answered { answer: *answer, again: *again };
            entries.push((start + Duration::seconds(30 + 12 * nth), self.entry(None, Moment::Opening, value)));
        }
        entries.extend(plan.passed.map(|(matter, because)| {
            (start + Duration::minutes(2), self.entry(None, Moment::Opening, EntryValue::Passed { matter, because }))
        }));
        if let Some(value) = plan.reevaluation {
            entries.push((start + Duration::minutes(3), self.entry(None, Moment::Reevaluation, EntryValue::Sud { value })));
        }
        for (set, (id, end)) in plan.sets.iter().zip(sets) {
            entries.extend(
                said(set)
                    .into_iter()
                    .zip(1..)
                    .map(|(value, nth)| (*end + Duration::seconds(12 * nth), self.entry(Some(*id), set.moment, value))),
            );
        }
        let last = entries.last().map_or(start, |(at, _)| *at);
        for (at, entry) in entries {
            self.world.set(at);
            self.keep(&mut tx, session, &entry).await?;
        }
        tx.commit().await?;
        Ok(last)
    }

    fn entry(&self, set: Option<Uuid>, moment: Moment, value: EntryValue) -> Entry {
        Entry {
            id: new_id(&self.app.world).to_string(),
            set: set.map(|id| id.to_string()),
            replaces: None,
            moment,
            segment: None,
            from_client: false,
            value,
        }
    }

    /// A sign-in of a member at `when`; the clock stays there.
    /// A member at work at that time.
    pub(crate) async fn sign_in(&self, member: Uuid, when: DateTime<Utc>) -> Result<Subject, Fault> {
        self.world.set(when);
        Ok(signin::vouch(&self.app, member, "made by the demo").await?)
    }

    /// So many days before the day of seeding.
    pub(crate) fn time(&self, days_ago: i64, minute: i64) -> DateTime<Utc> {
        (self.today - Duration::days(days_ago)).and_time(NaiveTime::MIN).and_utc() + Duration::minutes(minute)
    }
}

/// What was entered after a set, in the order of asking.
fn said(set: &SetPlan) -> Vec<EntryValue> {
    let mut values = vec![];
    if !set.words.is_empty() {
        values.push(EntryValue::Words { words: set.words.to_owned() });
    }
    values.push(EntryValue::Change { change: set.mark });
    values.extend(set.sud.map(|value| EntryValue::Sud { value }));
    values.extend(set.voc.map(|value| EntryValue::Voc { value }));
    values
}

fn details(plan: &ClientPlan) -> Details {
    Details {
        name: Private::new(&plan.name),
        addressed_as: Private::new(&plan.addressed_as),
        phone: Private::new(&plan.phone),
        contact_name: Private::new(&plan.contact_name),
        contact_phone: Private::new(&plan.contact_phone),
        usual_location: Private::new(&plan.location),
    }
}

fn new_target(client: Uuid, plan: &TargetPlan) -> Result<NewTarget, Fault> {
    let memory = plan.memory;
    let words = Words {
        label: Private::new(memory.label),
        picture: Private::new(memory.picture),
        negative_belief: Private::new(memory.negative),
        positive_belief: Private::new(memory.positive),
        emotions: Private::new(memory.emotions),
        body_location: Private::new(memory.body),
    };
    let (sud, voc) = (Sud::new(plan.sud).map_err(|fault| fault.to_string())?, Voc::new(plan.voc).map_err(|fault| fault.to_string())?);
    Ok(NewTarget { client, prong: plan.prong, words, sud: Some(sud), voc: Some(voc) })
}

/// The first begins a cluster, and all but the third memory belong to it; a trigger came up from the first.
fn wanted(at: usize, plan: &TargetPlan) -> Wanted {
    let belongs = match at {
        0 => Belongs::New(Private::new(plan.cluster)),
        _ if plan.prong == Prong::Past && at > 1 => Belongs::Alone,
        _ => Belongs::To(1),
    };
    Wanted { age: plan.age, year: None, belongs, parent: (plan.prong == Prong::Present).then_some(1) }
}

fn closing(plan: &SessionPlan, kind: ClosingKind) -> Result<Closing, Fault> {
    let sud = plan.closing_sud.map(Sud::new).transpose().map_err(|fault| fault.to_string())?;
    let unsteady = plan.end == End::Unsteady;
    // Of what did not take place only the next contact is written down.
    let of_hour = |words: &str| Private::new(if kind.took_place() { words } else { "" });
    Ok(Closing {
        over: None,
        kind,
        because: None,
        unsteady,
        resource: of_hour(plan.note.split("Used: ").nth(1).unwrap_or("calm place").trim_end_matches('.')),
        leaving_state: of_hour(if unsteady { "Still unsettled, safe to leave, plan agreed" } else { "Oriented and settled" }),
        companion: of_hour("Somebody at home in the evening"),
        next_contact: Private::new("Same time next week; by telephone before that if needed"),
        client_words: of_hour("Thank you for today. Be kind to yourself this evening."),
        note: Private::new(&plan.note),
        sud,
    })
}
