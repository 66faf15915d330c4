//! Change in one person, and what scores do by themselves.

use leeward_core::measures::Better;
use leeward_core::outcome::change::{Class, Group, Rule, classify, cutoffs, paired, reliable_change, whole_points};
use leeward_core::outcome::missing::{Case, outcome};
use leeward_core::outcome::regression::{expected_after, selected};
use serde_json::json;

use crate::input::{Got, Inputs};

pub fn function(label: &str) -> Option<fn(&Inputs) -> Got> {
    Some(match label {
        "stats.rci" => rci,
        "stats.csc_cutoffs" => csc_cutoffs,
        "stats.classify_change" => classify_change,
        "stats.whole_point_threshold" => whole_point_threshold,
        "stats.nhs_index" => nhs_index,
        "stats.outcome_with_missing" => outcome_with_missing,
        "stats.rtm_conditional" => rtm_conditional,
        "stats.rtm_selected" => rtm_selected,
        _ => return None,
    })
}

fn rci(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let change = reliable_change(of("pre")?, of("post")?, of("sd")?, of("reliability")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "se": change.se, "sdiff": change.sdiff, "rc": change.rc, "threshold_points": change.threshold }))
}

fn csc_cutoffs(inputs: &Inputs) -> Got {
    let of = |mean, sd| Ok::<_, String>(Group { mean: inputs.figure(mean)?, sd: inputs.figure(sd)? });
    let cuts = cutoffs(of("mean_dysfunctional", "sd_dysfunctional")?, of("mean_functional", "sd_functional")?);
    let cuts = cuts.map_err(|fault| fault.to_string())?;
    Ok(json!({ "a": cuts.a, "b": cuts.b, "c": cuts.c }))
}

fn better(inputs: &Inputs) -> Result<Better, String> {
    Ok(if inputs.flag("lower_is_better")? { Better::Lower } else { Better::Higher })
}

fn classify_change(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let rule = Rule { points: of("reliable_points")?, cut: Some(of("cut")?), better: better(inputs)? };
    let class = match classify(of("pre")?, of("post")?, rule).map_err(|fault| fault.to_string())? {
        Class::Recovered => "recovered",
        Class::Improved => "improved",
        Class::Unchanged => "unchanged",
        Class::Deteriorated => "deteriorated",
    };
    Ok(json!({ "class": class }))
}

fn whole_point_threshold(inputs: &Inputs) -> Got {
    Ok(json!({ "points": whole_points(inputs.figure("rci")?).map_err(|fault| fault.to_string())? }))
}

fn nhs_index(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let index = paired((of("phq9_pre")?, of("phq9_post")?), (of("gad7_pre")?, of("gad7_post")?));
    Ok(json!({
        "reliable_improvement": index.improved,
        "reliable_deterioration": index.deteriorated,
        "caseness_start": index.case_at_start,
        "recovery": index.recovery,
        "reliable_recovery": index.reliable_recovery,
    }))
}

fn outcome_with_missing(inputs: &Inputs) -> Got {
    let cases = inputs.list("cases")?.iter().map(case).collect::<Result<Vec<_>, _>>()?;
    let rule = Rule { points: inputs.figure("reliable_points")?, cut: None, better: better(inputs)? };
    let all = outcome(&cases, rule, 0.95).map_err(|fault| fault.to_string())?;
    Ok(json!({
        "n": all.began,
        "with_post": all.with_after,
        "missing": all.began - all.with_after,
        "completer_mean_change": all.completers,
        "locf_mean_change": all.last_forward,
        "bocf_mean_change": all.first_forward,
        "completer_reliable": all.reliable,
        "completer_rate": all.reliable_share,
        "missing_as_not_improved_rate": all.if_none,
        "missing_as_improved_rate": all.if_all,
        "locf_rate": all.last_forward_share,
        "completer_wilson": all.reliable_interval.map(|interval| [interval.lo, interval.hi]),
    }))
}

fn case(case: &serde_json::Value) -> Result<Case, String> {
    let inputs = Inputs(case);
    let during = inputs.list("in_treatment")?.iter().map(|score| score.as_f64().ok_or("a score is no figure")).collect::<Result<_, _>>()?;
    let after = match case.get("post") {
        None | Some(serde_json::Value::Null) => None,
        Some(_) => Some(inputs.figure("post")?),
    };
    Ok(Case { before: inputs.figure("pre")?, during, after })
}

fn rtm_conditional(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let after = expected_after(of("pre")?, of("population_mean")?, of("reliability")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "expected_post": after }))
}

fn rtm_selected(inputs: &Inputs) -> Got {
    let of = |name| inputs.figure(name);
    let population = Group { mean: of("mean")?, sd: of("sd")? };
    let all = selected(population, of("reliability")?, of("cut")?).map_err(|fault| fault.to_string())?;
    Ok(json!({ "pre_mean_selected": all.before, "post_mean_expected": all.after, "expected_fall": all.fall }))
}
