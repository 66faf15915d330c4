//! Effect sizes.

use leeward_core::outcome::effect::{Figures, hedges, hedges_approximately, paired, standardised};
use serde_json::{Value, json};

use crate::input::{Got, Inputs};

pub fn function(label: &str) -> Option<fn(&Inputs) -> Got> {
    Some(match label {
        "stats.paired_effects" => paired_effects,
        "stats.paired_smd_bonett" => paired_smd_bonett,
        "stats.hedges_j" => hedges_j,
        _ => return None,
    })
}

fn figures(inputs: &Inputs, name: &str) -> Result<Vec<f64>, String> {
    inputs.list(name)?.iter().map(|value| value.as_f64().ok_or_else(|| format!("{value} is no figure"))).collect()
}

fn paired_effects(inputs: &Inputs) -> Got {
    let all = paired(&figures(inputs, "pre")?, &figures(inputs, "post")?, 0.95).map_err(|fault| fault.to_string())?;
    let of = all.of_change;
    let corrected = |d: Option<f64>| -> Option<f64> { Some(d? * hedges((all.n - 1) as f64).ok()?) };
    Ok(json!({
        "n": all.n,
        "mean_change": all.mean_change,
        "sd_change": all.sd_change,
        "r": all.r,
        "t": of.map(|of| of.t),
        "p": of.map(|of| of.p),
        "mean_change_lo": all.mean_interval.0,
        "mean_change_hi": all.mean_interval.1,
        "d_z": of.map(|of| of.d_z),
        "d_z_lo": of.map(|of| of.d_z_interval.0),
        "d_z_hi": of.map(|of| of.d_z_interval.1),
        "d_av_mean_sd": all.d_av_mean,
        "d_av_rms": all.d_av_square,
        "g_z": corrected(of.map(|of| of.d_z)),
        "g_av_mean_sd": corrected(all.d_av_mean),
        "d_pre_sd": all.d_before,
    }))
}

fn paired_smd_bonett(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let n = u32::try_from(inputs.count("n")?).map_err(|_| "n is too many".to_owned())?;
    let figures = Figures { means: (of("m1")?, of("m2")?), sds: (of("sd1")?, of("sd2")?), r: of("r")?, n };
    let found = standardised(figures, of("conf")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "d_av": found.d, "adj": found.adjusted, "se": found.se, "lo": found.interval.0, "hi": found.interval.1 }))
}

fn hedges_j(inputs: &Inputs) -> Got {
    let all = figures(inputs, "df")?;
    let exact: Vec<f64> = all.iter().map(|df| hedges(*df)).collect::<Result<_, _>>().map_err(|fault| fault.to_string())?;
    let approx: Vec<Value> = all.iter().map(|df| json!(hedges_approximately(*df))).collect();
    Ok(json!({ "exact": exact, "approx": approx }))
}
