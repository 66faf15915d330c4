//! How far the work on each target has come: what is said about it, in clear and only added to, and what the rules of
//! `leeward_core::course` make of that. The one row a target that lists read is folded here and nowhere else.

mod hour;
mod queries;
mod queries_hour;
mod rebuild;
mod words;

use leeward_core::course::{Because, Belief, Course, Decision, Held, Procedure, RULES, Rehearsal, Said, Scan, State};
use leeward_core::scale::{Sud, Voc};
use sqlx::PgConnection;
use uuid::Uuid;

use crate::base::ids::new_id;
use crate::platform::{App, codes};
use crate::store::error::Error;
use crate::store::subject::Tx;
use queries::SaidRow;

pub use hour::{holding, opened_before};
pub use queries::Row;
pub use rebuild::{Rebuilt, bring_up_to_rules, rebuild};
pub(crate) use words::{
    BECAUSE, PROCEDURES, answer_words, because_words, decision_words, end_words, matter_words, procedure_words, reached_words, state_words,
};

/// How a target stands, as lists read it: its row of `target_course`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Stand {
    /// How it is worked on.
    pub procedure: Procedure,
    /// How far it has come.
    pub state: State,
    /// Of what is complete: whether it held.
    pub held: Option<Held>,
    /// Why it was called complete though ends were open.
    pub because: Option<Because>,
    /// It was called complete, and the record does not carry that.
    pub unfounded: bool,
}

impl Stand {
    fn of(course: &Course) -> Self {
        let Course { state, held, because, unfounded, .. } = *course;
        Self { procedure: course.known.procedure, state, held, because, unfounded }
    }

    /// Reads it from columns.
    ///
    /// # Errors
    /// [`Error::Inconsistent`] when one of them is no code of these rules.
    pub fn read(procedure: &str, state: &str, held: Option<&str>, because: Option<&str>, unfounded: bool) -> Result<Self, Error> {
        Ok(Self {
            procedure: codes::read(procedure, "target_course.procedure")?,
            state: codes::read(state, "target_course.state")?,
            held: held.map(|held| codes::read(held, "target_course.held")).transpose()?,
            because: because.map(|because| codes::read(because, "target_course.because")).transpose()?,
            unfounded,
        })
    }
}

/// What a person says about a target, beside ratings and marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Saying {
    /// It is worked on so from now on.
    Procedure(Procedure),
    /// What the scan of the body found.
    Scan(Scan),
    /// How it went through in the mind.
    Rehearsal(Rehearsal),
    /// Whether the belief is still the wanted one.
    Belief(Belief),
    /// The SUD of 1 fits this life.
    SudFits,
    /// The VOC that stands fits this life.
    VocFits,
    /// A decision, with a code where the record does not carry it.
    Decided(Decision, Option<Because>),
}

impl Saying {
    /// Reads it from its kind and code, as columns and forms have them.
    #[must_use]
    pub fn read(kind: &str, code: &str, because: Option<Because>) -> Option<Self> {
        Some(match (kind, code) {
            ("procedure", code) => Self::Procedure(codes::read(code, "").ok()?),
            ("scan", code) => Self::Scan(codes::read(code, "").ok()?),
            ("rehearsal", code) => Self::Rehearsal(codes::read(code, "").ok()?),
            ("belief", code) => Self::Belief(codes::read(code, "").ok()?),
            ("fits", "sud") => Self::SudFits,
            ("fits", "voc") => Self::VocFits,
            ("decided", code) => Self::Decided(codes::read(code, "").ok()?, because),
            _ => return None,
        })
    }

    /// Its kind, its code, and why.
    fn columns(self) -> Result<(&'static str, String, Option<String>), Error> {
        Ok(match self {
            Self::Procedure(procedure) => ("procedure", codes::name(procedure)?, None),
            Self::Scan(scan) => ("scan", codes::name(scan)?, None),
            Self::Rehearsal(rehearsal) => ("rehearsal", codes::name(rehearsal)?, None),
            Self::Belief(belief) => ("belief", codes::name(belief)?, None),
            Self::SudFits => ("fits", "sud".to_owned(), None),
            Self::VocFits => ("fits", "voc".to_owned(), None),
            Self::Decided(decision, because) => ("decided", codes::name(decision)?, because.map(codes::name).transpose()?),
        })
    }
}

/// The course of `target`, folded from its record as it stands.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must. A target that the asker may not see has said nothing.
pub async fn of(db: &mut PgConnection, target: Uuid) -> Result<Course, Error> {
    let said = queries::said(db, target).await?.into_iter().map(read).collect::<Result<Vec<_>, _>>()?;
    Ok(Course::of(said))
}

/// Folds `target` anew under its lock, in the caller's transaction, and keeps what lists read. Every change of what is said about a
/// target ends with this.
///
/// # Errors
/// [`Error::NotFound`] when the asker may not change it.
pub async fn fold(db: &mut PgConnection, target: Uuid) -> Result<Course, Error> {
    let before = queries::locked(db, target).await?.ok_or(Error::NotFound)?;
    let course = of(db, target).await?;
    let now = Stand::of(&course);
    if (before.stand()?, before.rules) != (now, RULES) {
        queries::keep(db, target, &Columns::of(now)?).await?;
    }
    Ok(course)
}

/// As it begins: planned.
///
/// # Errors
/// [`Error::Database`].
pub async fn begin(db: &mut PgConnection, client: Uuid, target: Uuid) -> Result<(), Error> {
    Ok(queries::insert(db, client, target, &Columns::of(Stand::default())?).await?)
}

/// A set of reprocessing was begun on `target`. For a room, which reads nothing else about it.
///
/// # Errors
/// [`Error::NothingWritten`] when its row is not there.
pub async fn set_begun(db: &mut PgConnection, target: Uuid) -> Result<(), Error> {
    let before = queries::locked(db, target).await?.ok_or(Error::NothingWritten("target_course"))?;
    let stand = before.stand()?;
    let state = stand.state.with_set();
    if state != stand.state {
        queries::keep(db, target, &Columns { rules: before.rules, ..Columns::of(Stand { state, ..stand })? }).await?;
    }
    Ok(())
}

/// Keeps what is said about a target and folds it. It stands in the client's session that is open, if one is.
///
/// # Errors
/// [`Error::Conflict`] when a decision cannot follow, or needs a code; [`Error::NotFound`] when the asker may not change the target.
/// Then nothing was kept.
pub async fn say(tx: &mut Tx, app: &App, client: Uuid, target: Uuid, mut saying: Saying) -> Result<Course, Error> {
    queries::locked(tx, target).await?.ok_or(Error::NotFound)?;
    if let Saying::Decided(decision, because) = &mut saying {
        let before = of(tx, target).await?;
        // Where nothing is open there is nothing to give a reason for.
        *because = because.filter(|_| *decision == Decision::Complete && !before.open().is_empty());
        let (decision, because) = (*decision, *because);
        if !before.choices().contains(&decision) {
            return Err(Error::Conflict("This cannot follow how the target stands now. Open the target again and look first."));
        }
        if !before.carries(decision, because) {
            return Err(Error::Conflict(
                "What its end asks for is still open. Say why it is complete all the same, or write down what is open first.",
            ));
        }
    }
    let (kind, code, because) = saying.columns()?;
    queries::add(tx, new_id(&app.world), client, target, (kind, &code, because.as_deref()), app.world.now()).await?;
    fold(tx, target).await
}

/// Columns of `target_course` that a fold writes.
struct Columns {
    rules: i16,
    procedure: String,
    state: String,
    held: Option<String>,
    because: Option<String>,
    unfounded: bool,
}

impl Columns {
    fn of(stand: Stand) -> Result<Self, Error> {
        Ok(Self {
            rules: RULES,
            procedure: codes::name(stand.procedure)?,
            state: codes::name(stand.state)?,
            held: stand.held.map(codes::name).transpose()?,
            because: stand.because.map(codes::name).transpose()?,
            unfounded: stand.unfounded,
        })
    }
}

fn read(row: SaidRow) -> Result<Said, Error> {
    let SaidRow { kind, code, value, moment, segment, because } = row;
    let code = code.as_deref().unwrap_or_default();
    let value = || value.and_then(|value| u8::try_from(value).ok()).ok_or(Error::Inconsistent("rating.value"));
    let moment = || codes::read(moment.as_deref().unwrap_or_default(), "rating.moment");
    Ok(match kind.as_str() {
        "set" => Said::Set,
        "sud" => Said::Sud {
            value: Sud::new(value()?).map_err(|_| Error::Inconsistent("rating.value"))?,
            moment: moment()?,
            segment: segment.map(u8::try_from).transpose().map_err(|_| Error::Inconsistent("rating.segment"))?,
        },
        "voc" => Said::Voc { value: Voc::new(value()?).map_err(|_| Error::Inconsistent("rating.value"))?, moment: moment()? },
        "mark" => Said::Mark(codes::read(code, "fact.code")?),
        "carried_over" => Said::CarriedOver(codes::read(code, "fact.code")?),
        kind => {
            let because = because.map(|because| codes::read(&because, "fact.because")).transpose()?;
            match Saying::read(kind, code, because).ok_or(Error::Inconsistent("fact.code"))? {
                Saying::Procedure(procedure) => Said::Procedure(procedure),
                Saying::Scan(scan) => Said::Scan(scan),
                Saying::Rehearsal(rehearsal) => Said::Rehearsal(rehearsal),
                Saying::Belief(belief) => Said::Belief(belief),
                Saying::SudFits => Said::SudFits,
                Saying::VocFits => Said::VocFits,
                Saying::Decided(decision, because) => Said::Decided(decision, because),
            }
        }
    })
}
