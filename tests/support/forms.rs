//! Files of forms as a practice might load them, in words of nobody's.

use leeward_core::measures::Measure;
use leeward_core::measures::wording::Wording;
use serde_json::{Value, json};

/// A FHIR R4 Questionnaire that fits `measure`.
#[must_use]
pub fn file(measure: Measure) -> Value {
    let form = measure.form();
    let scores = (0..=form.most).step_by(form.step.into());
    let answers: Vec<Value> = scores
        .map(|score| {
            json!({ "valueCoding": { "code": format!("a{score}"), "display": format!("Level {score}") },
                "extension": [{ "url": "http://hl7.org/fhir/StructureDefinition/ordinalValue", "valueDecimal": score }] })
        })
        .collect();
    let questions: Vec<Value> = (1..=form.topics.len())
        .map(|number| json!({ "linkId": format!("q{number}"), "text": format!("Invented question {number}"), "type": "choice", "answerOption": answers }))
        .collect();
    json!({ "resourceType": "Questionnaire", "status": "active", "title": format!("Invented form {}", form.name), "language": "en", "item": questions })
}

/// The same, as it is kept.
///
/// # Panics
/// When the file does not fit.
#[must_use]
pub fn wording(measure: Measure) -> Wording {
    let file = serde_json::from_value(file(measure)).expect("a questionnaire");
    Wording::read(measure, &file).expect("it fits")
}
