//! Files of forms, good and bad, with what the portal reads in each, as JSON: for `check.mjs` beside this file, which reads the same files with a
//! FHIR library that is not ours.

use leeward_core::measures::Measure;
use leeward_core::measures::wording::{Questionnaire, Wording};
use leeward_tests::forms::file;
use serde_json::{Value, json};

/// What is done to a good file, and the name of that.
type Change = (&'static str, fn(&mut Value));

/// Faults by FHIR R4 itself: no status, a status and a type that R4 does not have, no linkId, one linkId twice.
const FAULTS: [Change; 5] = [
    ("no status", |file| drop(file.as_object_mut().and_then(|file| file.remove("status")))),
    ("a status of nobody's", |file| file["status"] = json!("ready")),
    ("a type of nobody's", |file| file["item"][0]["type"] = json!("nonsense")),
    ("no linkId", |file| drop(file["item"][1].as_object_mut().and_then(|item| item.remove("linkId")))),
    ("one linkId twice", |file| file["item"][1]["linkId"] = file["item"][0]["linkId"].clone()),
];

fn read(measure: Measure, name: &str, file: &Value) -> Value {
    let wording = serde_json::from_value::<Questionnaire>(file.clone())
        .map_err(|fault| fault.to_string())
        .and_then(|read| Wording::read(measure, &read).map_err(|unfit| unfit.to_string()));
    let (read, refused) = match wording {
        Ok(wording) => (Some(wording), None),
        Err(why) => (None, Some(why)),
    };
    json!({ "name": format!("{}, {name}", measure.form().name), "file": file, "read": read, "refused": refused })
}

fn main() {
    let mut all = vec![];
    for measure in Measure::ALL {
        all.push(read(measure, "good", &file(measure)));
        for (name, change) in FAULTS {
            let mut changed = file(measure);
            change(&mut changed);
            all.push(read(measure, name, &changed));
        }
    }
    println!("{}", Value::Array(all));
}
