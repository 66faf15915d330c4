//! What makes an entry acceptable, before anything is written.

use leeward_core::scale::{Sud, Voc};
use leeward_core::wire::{Entry, EntryValue, Matter, Moment, Scale};
use uuid::Uuid;

use super::queries;
use super::queries_entries::{self, Kind, Replaced};
use crate::course;
use crate::platform::codes;
use crate::platform::forms::{Lines, Need, Problems};
use crate::store::error::Error;
use crate::store::seal::Private;
use crate::store::subject::Tx;

/// Characters of one report: a few words, not an account of everything.
const MOST_WORDS: usize = 2_000;

/// An entry that may be written.
pub(super) struct Checked {
    pub id: Uuid,
    pub set: Option<Uuid>,
    pub replaces: Option<Uuid>,
    pub moment: String,
    pub what: What,
}

/// Where an entry goes.
pub(super) enum What {
    /// A row of `rating`, of the whole or of a segment; no value: taken back.
    Rating { scale: &'static str, value: Option<i16>, segment: Option<i16>, from_client: bool },
    /// A row of `fact` of this kind, about a set, the hour or today's target; no code: taken back.
    Fact { kind: &'static str, code: Option<String> },
    /// A row of `reach_step`; no step: taken back.
    Reach { step: Option<String> },
    /// A row of `unmeasured`; no way: taken back.
    Unmeasured { way: Option<String> },
    /// A row of `hour_fact`; no code: taken back.
    Opening { kind: &'static str, code: Option<String>, because: Option<String>, again: bool },
    /// A row of `process_note`; nothing in it: taken back.
    Words { words: Option<Private> },
}

/// Checks the whole entry, so that all that is wrong is said at once.
pub(super) async fn check(tx: &mut Tx, session: Uuid, entry: &Entry) -> Result<Result<Checked, Problems>, Error> {
    let mut problems = Problems::default();
    let id = id(&mut problems, "id", &entry.id);
    let set = match &entry.set {
        Some(text) => set(&mut problems, tx, session, text).await?,
        None => None,
    };
    let replaced = match &entry.replaces {
        Some(text) => replaced(&mut problems, tx, session, text).await?,
        None => None,
    };
    let what = what(&mut problems, entry, replaced.as_ref())?;
    if let Some(kind) = of_target(what.as_ref()) {
        must_fit(&mut problems, tx, session, kind, &entry.value).await?;
    }
    let opens = matches!(what, Some(What::Opening { .. }));
    if what.is_some() && opens != (entry.moment == Moment::Opening) {
        problems.add(
            "moment",
            "In the opening its matters are answered, and nothing else is entered there. Reload the page, then enter it anew.",
        );
    }
    let moment = codes::name(entry.moment)?;
    Ok(match (id, what, problems.none()) {
        (Some(id), Some(what), true) => Ok(Checked { id, set, replaces: replaced.map(|old| old.id), moment, what }),
        _ => Err(problems),
    })
}

fn id(problems: &mut Problems, name: &'static str, text: &str) -> Option<Uuid> {
    let id = Uuid::try_parse(text).ok();
    if id.is_none() {
        problems.add(name, "This is not a UUID.");
    }
    id
}

async fn set(problems: &mut Problems, tx: &mut Tx, session: Uuid, text: &str) -> Result<Option<Uuid>, Error> {
    let Some(set) = id(problems, "set", text) else { return Ok(None) };
    if !queries_entries::has_set(tx, session, set).await? {
        problems.add("set", "There is no such set in this session. Choose one from the log.");
    }
    Ok(Some(set))
}

async fn replaced(problems: &mut Problems, tx: &mut Tx, session: Uuid, text: &str) -> Result<Option<Replaced>, Error> {
    let Some(id) = id(problems, "replaces", text) else { return Ok(None) };
    let found = queries_entries::replaced(tx, session, id).await?;
    match &found {
        None => problems.add("replaces", "There is no such entry in this session. Choose one from the log."),
        Some(old) if old.corrected => problems.add("replaces", "This entry was corrected already. Change its latest version instead."),
        Some(_) => {}
    }
    Ok(found)
}

fn what(problems: &mut Problems, entry: &Entry, replaced: Option<&Replaced>) -> Result<Option<What>, Error> {
    let old = replaced.and_then(|old| old.kind);
    let (kind, what) = match &entry.value {
        EntryValue::Sud { value } => (Kind::Sud, rating(problems, entry, "sud", Sud::new(*value).map(Sud::get))),
        EntryValue::Voc { value } => (Kind::Voc, rating(problems, entry, "voc", Voc::new(*value).map(Voc::get))),
        EntryValue::Words { words } => {
            let words = problems.text("words", words, MOST_WORDS, Need::Required, Lines::Many);
            (Kind::Words, Some(What::Words { words: Some(Private::new(words)) }))
        }
        EntryValue::Change { change } => (Kind::Change, Some(What::Fact { kind: "mark", code: Some(codes::name(change)?) })),
        EntryValue::Saw { saw } => (Kind::Saw, Some(What::Fact { kind: "saw", code: Some(codes::name(saw)?) })),
        EntryValue::Tried { rung } => (Kind::Tried, Some(What::Fact { kind: "tried", code: Some(codes::name(rung)?) })),
        EntryValue::Scan { scan } => (Kind::Scan, Some(What::Fact { kind: "scan", code: Some(codes::name(scan)?) })),
        EntryValue::Rehearsal { rehearsal } => {
            (Kind::Rehearsal, Some(What::Fact { kind: "rehearsal", code: Some(codes::name(rehearsal)?) }))
        }
        EntryValue::Fits { scale } => (Kind::Fits, Some(What::Fact { kind: "fits", code: Some(codes::name(scale)?) })),
        EntryValue::Belief { belief } => (Kind::Belief, Some(What::Fact { kind: "belief", code: Some(codes::name(belief)?) })),
        EntryValue::TooMuch => (Kind::TooMuch, Some(What::Fact { kind: "too_much", code: Some("stopped".to_owned()) })),
        EntryValue::Showed { showed } => (Kind::Showed, Some(What::Fact { kind: "showed", code: Some(codes::name(showed)?) })),
        EntryValue::Reach { step } => (Kind::Reach, Some(What::Reach { step: Some(codes::name(step)?) })),
        EntryValue::Unmeasured { way } => (Kind::Unmeasured, Some(What::Unmeasured { way: Some(codes::name(way)?) })),
        EntryValue::Answered { answer, again } => {
            if *again && !may_repeat(answer.matter()) {
                problems.add("value", "This is asked anew every time. Ask, then answer it.");
            }
            (Kind::Answered, Some(What::Opening { kind: "answered", code: Some(codes::name(answer)?), because: None, again: *again }))
        }
        EntryValue::Passed { matter, because } => {
            let (code, because) = (Some(codes::name(matter)?), Some(codes::name(because)?));
            (Kind::Passed, Some(What::Opening { kind: "passed", code, because, again: false }))
        }
        EntryValue::Time { minutes, reserve } => {
            if !(10..=240).contains(minutes) || *reserve > 60 || reserve >= minutes {
                problems
                    .add("value", "An appointment has 10 to 240 minutes, of which 0 to 60 are kept for closing, and fewer than it has.");
            }
            let code = Some(format!("{minutes}+{reserve}"));
            (Kind::Time, Some(What::Opening { kind: "time", code, because: None, again: false }))
        }
        EntryValue::Unreadable => {
            problems.add("value", "This only says that an entry does not open; it is none itself.");
            return Ok(None);
        }
        EntryValue::TakenBack => {
            if replaced.is_some_and(|old| !old.says) {
                problems.add("replaces", "This entry was taken back already. Put it back first, or make a new one.");
            }
            return Ok(taken_back(problems, entry, old));
        }
    };
    if old.is_some_and(|old| old != kind) {
        problems.add("replaces", "A correction must be of the same kind as what it corrects.");
    }
    Ok(what)
}

/// What need not be asked anew: all but where they are, whether they are alone, risk and consent.
const fn may_repeat(matter: Matter) -> bool {
    matches!(matter, Matter::Nearby | Matter::Contact | Matter::Fitness | Matter::LineDrop)
}

/// Which fact about today's target it is, that its rules have a word in.
const fn of_target(what: Option<&What>) -> Option<&'static str> {
    match what {
        Some(What::Fact { kind, .. }) if !matches!(kind.as_bytes(), b"mark" | b"saw" | b"tried" | b"too_much" | b"showed") => Some(kind),
        _ => None,
    }
}

/// Such a fact is of a target, and one that a rating fits is of a rating that stands and would not do by itself.
async fn must_fit(problems: &mut Problems, tx: &mut Tx, session: Uuid, kind: &str, value: &EntryValue) -> Result<(), Error> {
    let Some(target) = queries::session(tx, session).await?.and_then(|row| row.target_id) else {
        problems.add("value", "This session has no target, so there is nothing to say this of.");
        return Ok(());
    };
    let EntryValue::Fits { scale } = value else { return Ok(()) };
    let known = course::of(tx, target).await?.known;
    let fits = match scale {
        Scale::Sud => known.sud.is_some_and(|sud| sud.get() == 1) || known.segments.values().any(|sud| sud.get() == 1),
        Scale::Voc => known.voc.is_some_and(|voc| voc.get() < Voc::MOST),
    };
    if !fits && kind == "fits" {
        problems.add("value", "Only a SUD of 1, or a VOC below 7, is said to fit. Ask for it first.");
    }
    Ok(())
}

fn rating(problems: &mut Problems, entry: &Entry, scale: &'static str, value: Result<u8, leeward_core::scale::ScaleError>) -> Option<What> {
    if entry.segment.is_some_and(|segment| scale != "sud" || !(1..=99).contains(&segment)) {
        problems.add("segment", "Segments are numbered 1 to 99, and only SUD is asked of one.");
    }
    let segment = entry.segment.map(i16::from);
    match value {
        Ok(value) => Some(What::Rating { scale, value: Some(value.into()), segment, from_client: entry.from_client }),
        Err(fault) => {
            problems.add("value", fault.to_string());
            None
        }
    }
}

fn taken_back(problems: &mut Problems, entry: &Entry, old: Option<Kind>) -> Option<What> {
    if entry.replaces.is_none() {
        problems.add("replaces", "Say which entry is taken back.");
    }
    Some(match old? {
        Kind::Sud => What::Rating { scale: "sud", value: None, segment: None, from_client: false },
        Kind::Voc => What::Rating { scale: "voc", value: None, segment: None, from_client: false },
        Kind::Scan => What::Fact { kind: "scan", code: None },
        Kind::Rehearsal => What::Fact { kind: "rehearsal", code: None },
        Kind::Fits => What::Fact { kind: "fits", code: None },
        Kind::Belief => What::Fact { kind: "belief", code: None },
        Kind::TooMuch => What::Fact { kind: "too_much", code: None },
        Kind::Showed => What::Fact { kind: "showed", code: None },
        Kind::Unmeasured => What::Unmeasured { way: None },
        Kind::Reach => What::Reach { step: None },
        Kind::Change => What::Fact { kind: "mark", code: None },
        Kind::Saw => What::Fact { kind: "saw", code: None },
        Kind::Tried => What::Fact { kind: "tried", code: None },
        Kind::Words => What::Words { words: None },
        Kind::Answered => What::Opening { kind: "answered", code: None, because: None, again: false },
        Kind::Time => What::Opening { kind: "time", code: None, because: None, again: false },
        Kind::Passed => What::Opening { kind: "passed", code: None, because: None, again: false },
    })
}
