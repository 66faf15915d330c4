//! What a client bears best: the comfort sheet, filled in preparation, and the plan a session starts from.

mod form;
mod queries;

use axum::routing::get;
use leeward_core::safety;
use leeward_core::wire::{Colours, Comfort, Path, Plan, Sweep, Timbre};
use uuid::Uuid;

use crate::clients;
use crate::platform::codes;
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// The sheet: all that a plan has and the desk's own keys leave alone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet {
    /// The line the dot moves along.
    pub path: Path,
    /// Diameter of the dot, degrees, within `safety::DOT_DEG`.
    pub dot: f64,
    /// Sweep, colours, tones, vibration.
    pub comfort: Comfort,
}

impl Sheet {
    /// `plan` with the sheet's settings in it.
    #[must_use]
    pub fn applied_to(&self, plan: Plan) -> Plan {
        Plan { path: self.path, dot: self.dot, comfort: self.comfort, ..plan }
    }

    /// Each setting with its name, as a page says it.
    #[must_use]
    pub fn in_words(&self) -> Vec<(&'static str, String)> {
        let Comfort { sweep, colours, timbre, pitch, tone_ms, level, vibration } = self.comfort;
        vec![
            ("Path", codes::path(self.path).to_owned()),
            ("Dot", format!("{}\u{b0}", self.dot)),
            ("Sweep", of(&SWEEPS, sweep).1.to_owned()),
            ("Colours", of(&COLOURS, colours).1.to_owned()),
            ("Tones", format!("{}, {pitch} Hz, {tone_ms} ms, level {level} %", of(&TIMBRES, timbre).1)),
            ("Vibration", if vibration { "felt" } else { "not felt, or not tried" }.to_owned()),
        ]
    }
}

/// A choice: its name in forms, its words, itself.
type Choice<T> = (&'static str, &'static str, T);

const PATHS: [Choice<Path>; 5] = [
    ("across", "Across", Path::Across),
    ("up_down", "Up and down", Path::UpDown),
    ("falling", "Diagonal, upper left to lower right", Path::Falling),
    ("rising", "Diagonal, lower left to upper right", Path::Rising),
    ("eight", "Figure of eight", Path::Eight),
];
const SWEEPS: [Choice<Sweep>; 2] = [("sine", "slow at the ends", Sweep::Sine), ("constant", "the same speed all the way", Sweep::Constant)];
const COLOURS: [Choice<Colours>; 4] = [
    ("sand", "sand on dusk", Colours::Sand),
    ("leaf", "pale green on moss", Colours::Leaf),
    ("lake", "pale blue on deep water", Colours::Lake),
    ("stone", "grey on grey", Colours::Stone),
];
const TIMBRES: [Choice<Timbre>; 3] = [("round", "round", Timbre::Round), ("warm", "warm", Timbre::Warm), ("wood", "wood", Timbre::Wood)];

fn of<T: Copy + PartialEq>(list: &[Choice<T>], value: T) -> (&'static str, &'static str) {
    list.iter().find(|(_, _, one)| *one == value).map_or(("", ""), |(name, words, _)| (name, words))
}

fn named<T: Copy>(list: &[Choice<T>], typed: &str) -> Option<T> {
    list.iter().find(|(name, _, _)| *name == typed).map(|(_, _, value)| *value)
}

/// As a form offers them.
fn options<T>(list: &[Choice<T>]) -> Vec<(&'static str, &'static str)> {
    list.iter().map(|(name, words, _)| (*name, *words)).collect()
}

/// The sheet of `client` and its version, if it was filled. A room may ask for its own client's.
///
/// # Errors
/// [`Error::Inconsistent`] when the row does not say what it must.
pub async fn sheet(tx: &mut Tx, client: Uuid) -> Result<Option<(Sheet, i32)>, Error> {
    queries::sheet(tx, client).await
}

/// Keeps the sheet of a client against the version it was read at, 0 when there was none. False: somebody
/// has changed it meanwhile.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, [`Error::Conflict`] when the record is
/// archived, [`Error::BadRequest`] for a sheet outside of the limits of a set, [`Error::Database`]: nothing was kept.
pub async fn save(app: &App, subject: &Subject, client: Uuid, sheet: &Sheet, version: i32) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("comfort.change").client(client)).await?;
    clients::key(&mut tx, app, client).await?;
    if !change(&mut tx, app, client, sheet, version).await? {
        return Ok(false);
    }
    tx.commit().await?;
    Ok(true)
}

async fn change(tx: &mut Tx, app: &App, client: Uuid, sheet: &Sheet, version: i32) -> Result<bool, Error> {
    safety::check(&sheet.applied_to(safety::default_plan()), false)
        .map_err(|_| Error::BadRequest("These settings lie outside of the limits of a set."))?;
    clients::must_be_open(tx, client).await?;
    // A sheet that could not be shown is not replaced.
    queries::sheet(tx, client).await?;
    queries::save(tx, client, sheet, version, app.world.now()).await
}

/// The plan that a session of `client` starts from: what the client was comfortable with last, and the
/// sheet. A room may ask for its own client's.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub async fn first_plan(tx: &mut Tx, client: Uuid) -> Result<Plan, Error> {
    let last = queries::last_comfortable(tx, client).await?;
    let sheet = match queries::sheet(tx, client).await {
        // The record shows that it cannot be read; the session starts from the usual.
        Err(Error::Inconsistent(_)) => None,
        sheet => sheet?.map(|(sheet, _)| sheet),
    };
    Ok(start_from(last, sheet))
}

/// The sheet comes before what was used last. What no set may have (any more) is left out.
fn start_from(last: Option<Plan>, sheet: Option<Sheet>) -> Plan {
    let usual = safety::default_plan();
    let with = |plan: Plan| sheet.map_or(plan, |sheet| sheet.applied_to(plan));
    let wanted = [last.map(with), Some(with(usual))];
    wanted.into_iter().flatten().find(|plan| safety::check(plan, false).is_ok()).unwrap_or(usual)
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/clients/{client}/comfort", Rule::Care, get(form::show)).post(
        "/clients/{client}/comfort",
        Rule::Care,
        axum::routing::post(form::save),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn last() -> Plan {
        Plan { rate: 1.8, dot: 2.0, path: Path::Rising, ..safety::default_plan() }
    }

    fn sheet(dot: f64) -> Sheet {
        Sheet { path: Path::UpDown, dot, comfort: Comfort { pitch: 400, ..Comfort::default() } }
    }

    #[test]
    fn the_sheet_comes_before_what_was_used_last() {
        let plan = start_from(Some(last()), Some(sheet(1.0)));
        assert_eq!((plan.rate, plan.dot, plan.path, plan.comfort.pitch), (1.8, 1.0, Path::UpDown, 400));
        assert_eq!(start_from(Some(last()), None), last());
        assert_eq!(start_from(None, Some(sheet(1.0))), sheet(1.0).applied_to(safety::default_plan()));
        assert_eq!(start_from(None, None), safety::default_plan());
    }

    /// Above 1.5 Hz a dot of 3 degrees is not allowed: safety, after WCAG 2.2, 2.3.1.
    #[test]
    fn what_does_not_go_together_gives_way_to_the_sheet() {
        assert_eq!(start_from(Some(last()), Some(sheet(3.0))), sheet(3.0).applied_to(safety::default_plan()));
        assert_eq!(start_from(Some(Plan { rate: 9.0, ..last() }), None), safety::default_plan());
        assert_eq!(start_from(None, Some(sheet(99.0))), safety::default_plan());
    }

    #[test]
    fn every_choice_has_one_name_and_is_called_as_on_the_wire() {
        for (name, _, path) in PATHS {
            assert_eq!(serde_json::to_value(path).unwrap(), name);
        }
        for (name, _, colours) in COLOURS {
            assert_eq!(serde_json::to_value(colours).unwrap(), name);
        }
        for (name, _, sweep) in SWEEPS {
            assert_eq!(serde_json::to_value(sweep).unwrap(), name);
        }
        for (name, _, timbre) in TIMBRES {
            assert_eq!(serde_json::to_value(timbre).unwrap(), name);
        }
    }
}
