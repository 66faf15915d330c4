//! A client's record: who it is, the cautions, the targets, the sessions. Stands above the features whose parts it shows.

mod queries;

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use axum::routing::get;
use leeward_core::chart::{Lane, LaneSize, lane, lane_head};
use leeward_core::course::State as Stands;
use leeward_core::scale::{Sud, Voc};
use uuid::Uuid;

use crate::askings;
use crate::clients::{self, Cautions, Details, details, is_rehearsal};
use crate::comfort;
use crate::episodes::{self, Episode};
use crate::measures::{open_flags, told};
use crate::outcomes::{self, Spans};
use crate::platform::Member;
use crate::platform::codes::closing_words;
use crate::platform::forms::Id;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::platform::{App, Routes, Rule};
use crate::reach::{self, Reach};
use crate::sessions::{self, Words};
use crate::store::error::Error;
use crate::store::seal::{DOES_NOT_OPEN, Opened};
use crate::store::subject::Act;
use crate::targets::{self, Target};

#[derive(Template)]
#[template(path = "record/record.html")]
struct Record {
    frame: Frame,
    id: Uuid,
    number: i32,
    opened_on: String,
    archived: bool,
    rehearsal: bool,
    version: i32,
    details: Details<Opened>,
    cautions: Cautions,
    /// The last session that was closed, and the one that is open.
    last: Option<LastClosing>,
    open: Option<OpenSession>,
    choices: Vec<Choice>,
    next_number: i32,
    /// How the targets stand, in words.
    finding: String,
    head: Lane,
    targets: Vec<TargetLine>,
    archived_targets: Vec<TargetLine>,
    sessions: Vec<SessionLine>,
    /// How their numbers may be used, and what is dialled for help: each with its name.
    reach: Vec<(&'static str, String)>,
    /// The comfort sheet in words, once it was filled.
    comfort: Option<Vec<(&'static str, String)>>,
    /// Risk was present when it was asked last.
    risk: Option<Risk>,
    /// The call that is agreed after a session and not made yet.
    call: Option<CallDue>,
    treatments: Vec<Treatment>,
    /// Flags that are open: the number of the form, what its item says, since when.
    flags: Vec<(i32, String, String)>,
    /// None is open, and one may be begun.
    may_begin: bool,
    /// What is due of forms, in words.
    due: Option<String>,
    /// Nobody was seen for so many weeks that the end of this treatment is proposed.
    quiet: Option<(i64, i32)>,
}

/// A course of treatment in a line.
struct Treatment {
    number: i32,
    words: String,
    ended: bool,
}

/// Risk was said to be present at the opening of an hour, and nobody has said otherwise since.
struct Risk {
    session: Uuid,
    number: i32,
    when: String,
}

struct CallDue {
    session: Uuid,
    number: i32,
    reason: &'static str,
    from: String,
    until: String,
}

/// What the next hour starts from.
struct LastClosing {
    id: Uuid,
    number: i32,
    day: String,
    /// Such as "Blue gate left incomplete, SUD 6."
    finding: String,
    /// What was used to settle, how the client left, who was there: sentences.
    said: Vec<String>,
    next_contact: String,
}

struct OpenSession {
    id: Uuid,
    number: i32,
    when: String,
}

/// A target that the next session may work on.
struct Choice {
    id: Uuid,
    words: String,
    chosen: bool,
}

struct TargetLine {
    id: Uuid,
    number: i32,
    label: String,
    prong: &'static str,
    status: &'static str,
    course: Option<Lane>,
    sud: String,
    voc: String,
}

struct SessionLine {
    id: Uuid,
    number: i32,
    day: String,
    time: String,
    /// Where it is another than the practice's today.
    zone: String,
    target: String,
    sets: i64,
    sud: String,
    closing: &'static str,
}

impl Record {
    /// Whether one of the targets is proposed for the next session.
    fn is_chosen(&self) -> bool {
        self.choices.iter().any(|choice| choice.chosen)
    }

    /// What is not known yet and will be needed when the connection drops.
    fn missing(&self) -> Vec<&'static str> {
        let asked = [
            (&self.details.phone, "call-back number"),
            (&self.details.contact_name, "emergency contact"),
            (&self.details.contact_phone, "number of the emergency contact"),
            (&self.details.usual_location, "usual location"),
        ];
        asked.into_iter().filter(|(text, _)| text.is_empty()).map(|(_, what)| what).collect()
    }
}

async fn show(member: Member, State(app): State<App>, frame: Frame, Id(id): Id) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("client.view").client(id)).await?;
    let row = clients::row(&mut tx, id).await?.ok_or(Error::NotFound)?;
    let key = clients::key(&mut tx, &app, id).await?;
    let details = details(&mut tx, &app, id).await?;
    let all = targets::list(&mut tx, &app, id).await?;
    let sessions = queries::sessions(&mut tx, id).await?;
    let spans = outcomes::spans(&mut tx, Some(id)).await?;
    let rehearsal = is_rehearsal(&mut tx, id).await?;
    let comfort = match comfort::sheet(&mut tx, id).await {
        Err(Error::Inconsistent(_)) => Some(vec![("Comfort sheet", DOES_NOT_OPEN.to_owned())]),
        sheet => sheet?.map(|(sheet, _)| sheet.in_words()),
    };
    let when = When::in_practice(&mut tx).await?;
    let reach = reach::reach(&mut tx, &app, id).await?.map_or_else(Reach::nothing, |(known, _)| known).in_words(when);
    let risk = queries::risk(&mut tx, id).await?;
    let call = sessions::agreed(&mut tx, id).await?;
    let today = when.date(&app.world.now());
    let due = askings::due(&mut tx, id, today).await?;
    let treatments = episodes::episodes(&mut tx, id).await?;
    let weeks = episodes::weeks_without(&mut tx).await?;
    let flags: Vec<_> = open_flags(&mut tx).await?.into_iter().filter(|flag| flag.client == id).collect();
    for flag in &flags {
        told(&mut tx, flag, app.world.now()).await?;
    }
    let last = match sessions.iter().find(|session| session.ended_at.is_some() && session.took_place) {
        Some(session) => Some(last_closing(session, &sessions::words(&mut tx, &key, session.id).await?.0, &all, &spans, when)),
        None => None,
    };
    tx.commit().await?;
    let open = sessions.iter().find(|session| session.ended_at.is_none());
    let open = open.map(|session| OpenSession { id: session.id, number: session.number, when: when.moment(&session.opened_at) });
    let risk = risk.filter(|row| row.present).map(|row| Risk { session: row.session, number: row.number, when: when.moment(&row.at) });
    let call = call.map(|call| CallDue {
        session: call.session.0,
        number: call.session.1,
        reason: call.reason.words(),
        from: when.moment(&call.due_from),
        until: when.moment(&call.due_until),
    });
    let in_order: Vec<Uuid> = sessions.iter().rev().map(|session| session.id).collect();
    let (archived_targets, targets): (Vec<_>, Vec<_>) = all.iter().partition(|target| target.archived_at.is_some());
    let line = |target: &Target| target_line(target, &spans, &in_order);
    page(&Record {
        frame,
        id,
        number: row.number,
        opened_on: when.of_day(row.opened_on),
        archived: row.archived_at.is_some(),
        rehearsal,
        version: row.version,
        details,
        cautions: row.cautions,
        last,
        open,
        choices: choices(&targets, sessions.iter().filter(|session| session.took_place).find_map(|session| session.target_id)),
        next_number: sessions.first().map_or(1, |session| session.number + 1),
        finding: finding(&targets),
        head: lane_head(in_order.len()),
        targets: targets.iter().map(|target| line(target)).collect(),
        archived_targets: archived_targets.into_iter().map(line).collect(),
        sessions: sessions.iter().map(|session| session_line(session, &all, &spans, when)).collect(),
        reach,
        comfort,
        risk,
        call,
        due: due.map(|due| due.words(today)),
        may_begin: !rehearsal && row.archived_at.is_none() && treatments.iter().all(|one| one.end.is_some()),
        quiet: treatments.iter().find_map(|one| Some((one.quiet_for(weeks, app.world.now())?, one.number))),
        flags: flags.into_iter().filter_map(|flag| flag.form.map(|(number, says)| (number, says, when.moment(&flag.raised_at)))).collect(),
        treatments: treatments.iter().map(|one| treatment(one, when)).collect(),
    })
}

fn treatment(episode: &Episode, when: When) -> Treatment {
    let sessions = match (episode.started_at, episode.sessions) {
        (Some(at), 1) => format!("one session, {}", when.day(&at)),
        (Some(at), count) => format!("{count} sessions since {}", when.day(&at)),
        (None, _) => format!("begun {}, no session attended yet", when.day(&episode.begun_at)),
    };
    let first = episode.reprocessed_at.map(|at| format!("; reprocessing since {}", when.day(&at))).unwrap_or_default();
    let end = episode.end.as_ref();
    let end = end.map(|end| format!("; {}, {} ({})", end.reason.words(), when.day(&end.at), end.judged_by)).unwrap_or_default();
    Treatment { number: episode.number, words: format!("{sessions}{first}{end}"), ended: episode.end.is_some() }
}

fn last_closing(session: &queries::SessionRow, words: &Words<Opened>, targets: &[Target], spans: &Spans, practice: When) -> LastClosing {
    let target = session.target_id.and_then(|id| targets.iter().find(|target| target.id == id));
    let closed = closing_words(true, session.closing.as_deref());
    let what = target.map_or_else(|| format!("Closed as {closed}"), |target| format!("{}: {closed}", target.words.label.shown()));
    let sud = session
        .target_id
        .and_then(|target| spans.last_in(target, session.id))
        .map(|sud| format!(", SUD {}", sud.get()))
        .unwrap_or_default();
    let sentence = |what: &str, text: &Opened| (!text.is_empty()).then(|| format!("{what}: {}.", text.shown().trim_end_matches('.')));
    let said = [("To settle", &words.resource), ("On leaving", &words.leaving_state), ("With them", &words.companion)];
    LastClosing {
        id: session.id,
        number: session.number,
        day: practice.in_zone(&session.zone).day(&session.opened_at),
        finding: format!("{what}{sud}."),
        said: said.into_iter().filter_map(|(what, text)| sentence(what, text)).collect(),
        next_contact: words.next_contact.shown().to_owned(),
    }
}

/// The targets in the order in which a session is likely to want them. Chosen is the one that was worked on last, if it is not complete;
/// else the first that is in work; else none, since nothing is begun unasked.
fn choices(targets: &[&Target], last: Option<Uuid>) -> Vec<Choice> {
    const fn rank(state: Stands) -> u8 {
        match state {
            Stands::Active | Stands::Incomplete | Stands::Reopened => 0,
            Stands::Planned => 1,
            Stands::Complete | Stands::Reduced => 2,
        }
    }
    let mut sorted: Vec<&&Target> = targets.iter().collect();
    sorted.sort_by_key(|target| (rank(target.stand.state), Some(target.id) != last, target.planned.place));
    let in_work = |target: &Target| rank(target.stand.state) == 0;
    let words = |target: &Target| {
        let sud = target.latest_sud.map(|sud| format!(", SUD {}", sud.get())).unwrap_or_default();
        format!("{}. {}, {}{sud}", target.number, target.words.label.shown(), target.stands())
    };
    sorted
        .iter()
        .enumerate()
        .map(|(at, target)| Choice { id: target.id, words: words(target), chosen: at == 0 && in_work(target) })
        .collect()
}

fn finding(targets: &[&Target]) -> String {
    let complete = targets.iter().filter(|target| target.stand.state == Stands::Complete).count();
    let again = targets.iter().filter(|target| target.stand.state == Stands::Reopened).count();
    let again = if again == 0 { String::new() } else { format!(", {again} came up again") };
    match (targets.len(), complete) {
        (0, _) => "none yet".to_owned(),
        (all, complete) if all == complete => format!("{all}, all complete"),
        (all, 0) => format!("{all}, none complete{again}"),
        (all, complete) => format!("{all}, {complete} complete{again}"),
    }
}

fn target_line(target: &Target, spans: &Spans, sessions: &[Uuid]) -> TargetLine {
    let own = spans.among(target.id, sessions);
    let (sud, voc) = ((target.first_sud, target.latest_sud), (target.first_voc, target.latest_voc));
    TargetLine {
        id: target.id,
        number: target.number,
        label: target.words.label.shown().to_owned(),
        prong: target.prong.name(),
        status: target.stands(),
        course: (!own.is_empty()).then(|| lane(LaneSize::Large, sessions.len(), &own)),
        sud: first_to_last(sud.0.map(Sud::get), sud.1.map(Sud::get)),
        voc: first_to_last(voc.0.map(Voc::get), voc.1.map(Voc::get)),
    }
}

/// Ratings as a table shows them.
fn first_to_last(first: Option<u8>, last: Option<u8>) -> String {
    match (first, last) {
        (Some(first), Some(last)) if first != last => format!("{first} to {last}"),
        (_, Some(last)) => last.to_string(),
        _ => "not rated".to_owned(),
    }
}

fn session_line(session: &queries::SessionRow, targets: &[Target], spans: &Spans, practice: When) -> SessionLine {
    let (when, at) = (practice.in_zone(&session.zone), session.opened_at);
    let target = targets.iter().find(|target| Some(target.id) == session.target_id);
    let span = session.target_id.and_then(|target| spans.in_session(target, session.id));
    SessionLine {
        id: session.id,
        number: session.number,
        day: when.day(&at),
        time: when.time(&at),
        zone: if when.is(practice) { String::new() } else { when.zone(&at) },
        target: target.map(|target| target.words.label.shown().to_owned()).unwrap_or_default(),
        sets: session.sets,
        sud: first_to_last(span.map(|(first, _)| first.get()), span.map(|(_, last)| last.get())),
        closing: closing_words(session.ended_at.is_some(), session.closing.as_deref()),
    }
}

/// Adds this feature's route.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/clients/{client}", Rule::Care, get(show))
}
