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

/// A hidden field of `page`.
#[must_use]
pub fn hidden(page: &str, name: &str) -> String {
    let field = format!("name=\"{name}\" value=\"");
    page.split(&field).nth(1).and_then(|rest| rest.split('"').next()).unwrap_or_else(|| panic!("{name}: {page}")).to_owned()
}

/// What a page of a client says of itself when it hands a form in.
#[must_use]
pub fn of_page(page: &str) -> Vec<(String, String)> {
    ["asking", "page", "was", "wording"].map(|name| (name.to_owned(), hidden(page, name))).to_vec()
}

/// What the script of a client's page sends after an answer: the how-manieth time, and which version of the draft it knows of.
#[must_use]
pub fn draft(page: &str, was: i32, sending: i32, answers: &[Option<&str>]) -> Value {
    let [asking, id, wording, measure] = ["asking", "page", "wording", "measure"].map(|name| hidden(page, name));
    json!({ "measure": measure, "asking": asking, "page": id, "wording": wording, "was": was, "sending": sending, "answers": answers })
}
