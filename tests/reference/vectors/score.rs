//! Scores.

use leeward_core::measures::phq9::Syndrome;
use leeward_core::measures::{Risk, Three, anxiety5, des2, gad7, iesr, itq, pcl5, phq9, who5};
use serde_json::{Value, json};

use crate::input::{Got, Inputs};

pub fn function(label: &str) -> Option<fn(&Inputs) -> Got> {
    Some(match label {
        "score.pcl5" => pcl5_score,
        "score.phq9" => phq9_score,
        "score.gad7" => gad7_score,
        "score.des2" => des2_score,
        "score.itq" => itq_score,
        "score.who5" => who5_score,
        "score.iesr" => iesr_score,
        "score.oasis" => anxiety5_score,
        _ => return None,
    })
}

const fn three(rule: Three) -> &'static str {
    match rule {
        Three::Met => "met",
        Three::NotMet => "not_met",
        Three::Indeterminate => "indeterminate",
    }
}

/// An object of these names and rules.
fn criteria<const N: usize>(names: [&str; N], rules: [Three; N]) -> Value {
    names.into_iter().zip(rules.map(|rule| json!(three(rule)))).map(|(name, rule)| (name.to_owned(), rule)).collect()
}

fn pcl5_score(inputs: &Inputs) -> Got {
    let score = pcl5::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    let names = ["B", "C", "D", "E"];
    let sums: Value = names.into_iter().zip(score.clusters).map(|(name, sum)| (name.to_owned(), json!(sum))).collect();
    Ok(json!({
        "total": score.total,
        "cluster_sums": sums,
        "criteria": criteria(names, score.criteria),
        "provisional": three(score.provisional),
        "missing": score.blank,
        "at_or_above_31": score.total.map(|total| total >= 31),
        "at_or_above_33": score.total.map(|total| total >= 33),
    }))
}

fn phq9_score(inputs: &Inputs) -> Got {
    let score = phq9::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    let syndrome = score.syndrome.map(|syndrome| match syndrome {
        Syndrome::Major => "major",
        Syndrome::Other => "other",
        Syndrome::None => "none",
    });
    let risk = match score.risk {
        Risk::Silent => "none",
        Risk::Unknown => "unknown",
        Risk::Flag => "flag",
    };
    Ok(json!({
        "total": score.total,
        "total_rounded": score.rounded,
        "prorated": score.prorated,
        "band": score.band.map(|band| band.replace(' ', "_")),
        "algorithm": syndrome,
        "risk_item": risk,
    }))
}

fn gad7_score(inputs: &Inputs) -> Got {
    let score = gad7::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    Ok(json!({
        "total": score.total,
        "total_rounded": score.rounded,
        "prorated": score.prorated,
        "band": score.band,
        "screen_10": score.rounded.map(|total| total >= 10),
        "nhs_caseness_8": score.rounded.map(|total| total >= gad7::NHS_CASE),
    }))
}

fn des2_score(inputs: &Inputs) -> Got {
    let score = des2::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    Ok(json!({
        "total": score.total,
        "amnesia": score.amnesia,
        "depersonalisation": score.depersonalisation,
        "absorption": score.absorption,
        "taxon": score.taxon,
        "at_or_above_30": score.total.map(|total| des2::FORM.is_case(total)),
    }))
}

fn itq_score(inputs: &Inputs) -> Got {
    let answers = [inputs.answers("P")?, inputs.answers("C")?].concat();
    if inputs.answers("P")?.len() != 9 {
        return Err("part P has nine items".to_owned());
    }
    let score = itq::score(&answers).map_err(|fault| fault.to_string())?;
    let reading = match score.reading {
        itq::Reading::Ptsd => "PTSD",
        itq::Reading::ComplexPtsd => "CPTSD",
        itq::Reading::None => "none",
        itq::Reading::Indeterminate => "indeterminate",
    };
    Ok(json!({
        "criteria": criteria(["Re", "Av", "Th", "PTSD_FI", "AD", "NSC", "DR", "DSO_FI"], score.criteria),
        "ptsd": three(score.ptsd),
        "dso": three(score.dso),
        "diagnosis": reading,
        "ptsd_sum": score.ptsd_sum,
        "dso_sum": score.dso_sum,
    }))
}

fn who5_score(inputs: &Inputs) -> Got {
    let score = who5::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    Ok(json!({
        "raw": score.raw,
        "percent": score.percent,
        "low_wellbeing": score.percent.map(|percent| who5::FORM.is_case(f64::from(percent))),
        "very_low": score.percent.map(|percent| percent <= who5::VERY_LOW),
    }))
}

fn iesr_score(inputs: &Inputs) -> Got {
    let score = iesr::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    Ok(json!({
        "total": score.total,
        "intrusion_mean": score.intrusion,
        "avoidance_mean": score.avoidance,
        "hyperarousal_mean": score.hyperarousal,
        "at_or_above_33": score.total.map(|total| iesr::FORM.is_case(f64::from(total))),
    }))
}

fn anxiety5_score(inputs: &Inputs) -> Got {
    let score = anxiety5::score(&inputs.answers("items")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "total": score.total, "at_or_above_8": score.total.map(|total| anxiety5::FORM.is_case(f64::from(total))) }))
}
