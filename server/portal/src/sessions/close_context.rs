//! What the record knows of a session that is about to be closed, and what may be said of it.

use std::collections::BTreeMap;

use chrono::{DateTime, TimeDelta, Utc};
use leeward_core::course::{Course, Procedure};
use leeward_core::wire::{Hold, Matter};
use uuid::Uuid;

use super::after::{self, Calls};
use super::close_choices::{Choice, KINDS};
use super::close_known::{Known, known};
use super::queries::SessionRow;
use super::queries_draft;
use crate::clients;
use crate::course;
use crate::platform::App;
use crate::platform::codes::ClosingKind;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::seal::ClientKey;
use crate::store::subject::Tx;
use crate::targets::{self, Target};

/// After so long without a sign a session counts as left. A practitioner's judgement.
const LEFT: TimeDelta = TimeDelta::minutes(30);

/// What the form shows about its session.
pub(super) struct Context {
    pub(super) client: Uuid,
    /// The number of the client's record, and that of the session in it.
    pub(super) record: i32,
    pub(super) number: i32,
    pub(super) target: Option<Target>,
    /// What that target's end asks for.
    pub(super) course: Course,
    pub(super) known: Known,
    pub(super) ended: bool,
    /// The client was let in, so that something took place.
    pub(super) began: bool,
    pub(super) rehearsal: bool,
    /// A set of reprocessing was begun in it.
    reprocessed: bool,
    pub(super) opened_at: DateTime<Utc>,
    /// When anything was written down last, where that is long ago.
    pub(super) left_at: Option<DateTime<Utc>>,
    pub(super) now: DateTime<Utc>,
    pub(super) when: When,
    /// Risk has turned it into an hour without reprocessing: its closing is short, and the safety plan comes first.
    pub(super) turned: bool,
    /// Whom the client can call between sessions, in the practice's words; empty: it says nothing.
    pub(super) crisis: String,
    /// What bears on the call afterwards.
    pub(super) calls: Calls,
}

impl Context {
    /// What the record says how far it came. The clinician confirms it or says otherwise.
    pub(super) fn proposed(&self) -> ClosingKind {
        if self.target.is_none() || !self.reprocessed {
            ClosingKind::NoReprocessing
        } else if self.course.known.procedure == Procedure::Restricted {
            ClosingKind::Reduced
        } else if self.course.open().is_empty() {
            ClosingKind::Complete
        } else {
            ClosingKind::Incomplete
        }
    }

    /// Where the session was left: when anything was written down last.
    pub(super) fn left(&self) -> Option<String> {
        self.left_at.map(|at| self.when.moment(&at))
    }

    /// Reads a time of day at which the work was over. `None`: it lies before the session was opened, after now, or is none.
    pub(super) fn over(&self, typed: &str) -> Option<DateTime<Utc>> {
        let day = self.when.date(&self.left_at.unwrap_or(self.opened_at));
        // A session may go on past midnight.
        let at = [Some(day), day.succ_opt(), day.pred_opt()].into_iter().flatten().filter_map(|day| self.when.at_time(day, typed));
        at.into_iter().find(|at| (self.opened_at..=self.now).contains(at))
    }

    /// How far it can have come: only what has a target is complete, and restricted work is reduced instead.
    pub(super) fn kinds(&self) -> Vec<Choice> {
        let restricted = self.target.as_ref().map(|_| self.course.known.procedure == Procedure::Restricted);
        let offered = |name: &str| match name {
            "complete" => restricted == Some(false),
            "reduced" => restricted == Some(true),
            "did_not_attend" | "by_mistake" => !self.began,
            _ => true,
        };
        KINDS.iter().copied().filter(|(name, _)| offered(name)).collect()
    }

    /// Of each kind: what is said of the call afterwards where they leave steady, and where they do not; empty: none is agreed.
    pub(super) fn call_words(&self) -> BTreeMap<&'static str, [String; 2]> {
        let words = |kind: ClosingKind| [false, true].map(|unsteady| self.calls.words(kind, unsteady));
        self.kinds().into_iter().filter_map(|(name, _)| Some((name, words(ClosingKind::parse(name)?)))).collect()
    }

    /// What the target's end asks for, how far it is, and whether it is open.
    pub(super) fn asked(&self) -> Vec<(&'static str, String, bool)> {
        if self.target.is_none() {
            return vec![];
        }
        let open = self.course.open();
        let line = |end| {
            let (name, wanted) = course::end_words(end);
            let there = course::reached_words(end, &self.course);
            let is_open = open.contains(&end);
            (name, if is_open { format!("Open: {there}. Asked for: {wanted}") } else { format!("Reached: {there}") }, is_open)
        };
        self.course.asks().iter().copied().map(line).collect()
    }
}

/// What there is to be known before `session` is closed, and the client's key.
pub(super) async fn context(tx: &mut Tx, app: &App, session: Uuid, row: &SessionRow) -> Result<(Context, ClientKey), Error> {
    tx.concerns(row.client_id);
    let key = clients::key(tx, app, row.client_id).await?;
    let target = match row.target_id {
        Some(target) => Some(targets::find(tx, app, target).await?),
        None => None,
    };
    let course = match row.target_id {
        Some(target) => course::of(tx, target).await?,
        None => Course::default(),
    };
    let now = app.world.now();
    let left_at = queries_draft::last_sign(tx, session).await?.filter(|at| now - *at >= LEFT);
    let known = known(tx, &key, session, row, target.as_ref()).await?;
    let reprocessed = queries_draft::has_reprocessed(tx, session).await?;
    let against = |hold: &Hold| hold.against && hold.matter == Matter::Risk;
    let turned = !reprocessed && course::holding(tx, session).await?.processing.iter().any(against);
    let context = Context {
        client: row.client_id,
        record: row.client_number,
        number: row.number,
        target,
        course,
        known,
        ended: row.ended_at.is_some(),
        began: row.admitted_at.is_some(),
        rehearsal: row.rehearsal,
        reprocessed,
        turned,
        crisis: queries_draft::crisis_words(tx).await?,
        opened_at: row.opened_at,
        left_at,
        calls: after::calls(tx, session).await?,
        now,
        when: When::in_practice(tx).await?.in_zone(&row.zone),
    };
    Ok((context, key))
}
