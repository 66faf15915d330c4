//! So many of so many.

use leeward_core::outcome::proportion::{difference, wilson, wilson_continuity};
use serde_json::json;

use crate::input::{Got, Inputs};

pub fn function(label: &str) -> Option<fn(&Inputs) -> Got> {
    Some(match label {
        "stats.wilson" => |inputs| interval(inputs, wilson),
        "stats.wilson_continuity" => |inputs| interval(inputs, wilson_continuity),
        "stats.newcombe_diff" => newcombe_diff,
        _ => return None,
    })
}

type OfCounts = fn(u64, u64, f64) -> Result<leeward_core::outcome::proportion::Interval, leeward_core::outcome::Refused>;

fn interval(inputs: &Inputs, of: OfCounts) -> Got {
    let interval = of(inputs.count("k")?, inputs.count("n")?, inputs.figure("conf")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "lo": interval.lo, "hi": interval.hi }))
}

fn newcombe_diff(inputs: &Inputs) -> Got {
    let of = |name| inputs.count(name);
    let difference = difference((of("k1")?, of("n1")?), (of("k2")?, of("n2")?), inputs.figure("conf")?);
    let difference = difference.map_err(|fault| fault.to_string())?;
    Ok(json!({ "diff": difference.diff, "lo": difference.lo, "hi": difference.hi }))
}
