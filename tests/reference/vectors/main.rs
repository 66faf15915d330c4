//! `vectors FILE`: runs each vector of a file in the format of the reference (`id`, `function`, `inputs`, `expected`, `tolerance`) against
//! this build, and prints one line an id: pass, fail with both values, or not delivered yet. Exit 0 only when none fails.

mod change;
mod effect;
mod input;
mod proportion;
mod score;

use std::collections::BTreeMap;
use std::process::ExitCode;

use serde::Deserialize;
use serde_json::Value;

use input::{Got, Inputs};

#[derive(Deserialize)]
struct File {
    vectors: Vec<Vector>,
}

#[derive(Deserialize)]
struct Vector {
    id: String,
    function: String,
    inputs: Value,
    expected: Value,
    /// Absolute, a figure.
    tolerance: f64,
}

/// What later work delivers; anything else that is not known here fails.
const NOT_YET: [&str; 16] = [
    "stats.kaplan_meier",
    "stats.kaplan_meier_median",
    "stats.logrank",
    "stats.cumulative_incidence",
    "stats.funnel_limits_exact",
    "stats.funnel_limits_normal",
    "stats.funnel_overdispersion",
    "stats.beta_binomial_mean",
    "stats.run_rules",
    "stats.stalled",
    "stats.theil_sen",
    "stats.course_summary",
    "privacy.primary",
    "privacy.is_safe",
    "privacy.is_safe_rate",
    "privacy.is_safe_table",
];

/// The function that answers to this label; `None`: it is not delivered yet.
fn function(label: &str) -> Option<fn(&Inputs) -> Got> {
    score::function(label).or_else(|| change::function(label)).or_else(|| proportion::function(label)).or_else(|| effect::function(label))
}

fn main() -> ExitCode {
    let Some(path) = std::env::args().nth(1) else {
        eprintln!("vectors FILE: a file of vectors, as the reference of statistics describes them.");
        return ExitCode::from(2);
    };
    let read = std::fs::read(&path).map_err(|fault| fault.to_string());
    let file = read.and_then(|bytes| serde_json::from_slice::<File>(&bytes).map_err(|fault| fault.to_string()));
    match file {
        Ok(file) => run(&file.vectors),
        Err(fault) => {
            eprintln!("{path} holds no vectors: {fault}");
            ExitCode::from(2)
        }
    }
}

fn run(vectors: &[Vector]) -> ExitCode {
    let (mut passed, mut failed, mut later) = (0, 0, 0);
    let mut largest: BTreeMap<&str, f64> = BTreeMap::new();
    for vector in vectors {
        let Some(function) = function(&vector.function) else {
            if !NOT_YET.contains(&vector.function.as_str()) {
                println!("fail {} ({}): no such function is known here", vector.id, vector.function);
                failed += 1;
                continue;
            }
            println!("not delivered yet {} ({})", vector.id, vector.function);
            later += 1;
            continue;
        };
        match against(&vector.expected, function(&Inputs(&vector.inputs)), vector.tolerance) {
            Ok(apart) => {
                let largest = largest.entry(&vector.function).or_default();
                *largest = largest.max(apart);
                println!("pass {}", vector.id);
                passed += 1;
            }
            Err(why) => {
                println!("fail {} ({}): {why}", vector.id, vector.function);
                failed += 1;
            }
        }
    }
    for (function, apart) in largest {
        println!("largest difference, {function}: {apart:.1e}");
    }
    println!("{passed} passed, {failed} failed, {later} not delivered yet");
    if failed == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// The largest difference of two figures; an error: what differs, with both values.
fn against(expected: &Value, got: Got, tolerance: f64) -> Result<f64, String> {
    let must_refuse = expected.get("refused").and_then(Value::as_bool) == Some(true);
    match got {
        Err(_) | Ok(Value::Null) if must_refuse => Ok(0.0),
        Ok(value) if must_refuse => Err(format!("it must be refused, and came to {value}")),
        Err(why) => Err(format!("expected {expected}, refused: {why}")),
        Ok(value) => alike("", expected, &value, tolerance),
    }
}

fn most(mut all: impl Iterator<Item = Result<f64, String>>) -> Result<f64, String> {
    all.try_fold(0.0, |most: f64, one| Ok(most.max(one?)))
}

/// What is expected has to be there; more may be.
fn alike(place: &str, expected: &Value, got: &Value, tolerance: f64) -> Result<f64, String> {
    let differs = || Err(format!("{place}: expected {expected}, got {got}"));
    match (expected, got) {
        (Value::Object(expected), Value::Object(got)) => most(expected.iter().map(|(name, wanted)| {
            let inner = format!("{place}.{name}");
            match got.get(name) {
                Some(there) => alike(&inner, wanted, there, tolerance),
                None => Err(format!("{inner}: expected {wanted}, got nothing")),
            }
        })),
        (Value::Array(wanted), Value::Array(there)) if wanted.len() == there.len() => {
            let pairs = wanted.iter().zip(there).enumerate();
            most(pairs.map(|(at, (one, other))| alike(&format!("{place}[{at}]"), one, other, tolerance)))
        }
        (Value::Number(wanted), Value::Number(there)) => match (wanted.as_f64(), there.as_f64()) {
            (Some(wanted), Some(there)) if (wanted - there).abs() <= tolerance => Ok((wanted - there).abs()),
            _ => differs(),
        },
        (expected, got) if expected == got => Ok(0.0),
        _ => differs(),
    }
}
