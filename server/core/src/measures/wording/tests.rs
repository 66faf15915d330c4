use serde_json::{Value, json};

use super::*;

/// A file for a form, as FHIR R4 writes it: a group with all of its questions.
fn file(measure: Measure) -> Value {
    let form = measure.form();
    let answers: Vec<Value> = scores(form)
        .into_iter()
        .map(|score| {
            json!({ "valueCoding": { "code": format!("a{score}"), "display": format!("answer {score}"),
                "extension": [{ "url": SCORES[0], "valueDecimal": score }] } })
        })
        .collect();
    let questions: Vec<Value> = (1..=form.topics.len())
        .map(|number| json!({ "linkId": format!("q{number}"), "text": format!("Question {number}?"), "type": "choice", "answerOption": answers }))
        .collect();
    json!({ "resourceType": "Questionnaire", "status": "active", "title": "A form", "language": "en", "item": [
        { "linkId": "all", "type": "group", "text": "Read this first.", "item": questions }] })
}

fn read(measure: Measure, file: &Value) -> Result<Wording, Unfit> {
    Wording::read(measure, &serde_json::from_value(file.clone()).unwrap())
}

#[test]
fn a_file_that_fits_is_read_for_every_form() {
    for measure in Measure::ALL {
        let wording = read(measure, &file(measure)).unwrap();
        let form = measure.form();
        assert_eq!((wording.title.as_str(), wording.language.as_str(), wording.questions.len()), ("A form", "en", form.topics.len()));
        assert_eq!(wording.intro, ["Read this first."]);
        let last = &wording.questions[0].answers;
        assert_eq!(last.last().unwrap(), &(form.most, format!("answer {}", form.most)), "{}", form.name);
    }
}

#[test]
fn answers_may_count_by_weight_by_number_and_by_numeric_code() {
    let mut odd = file(Measure::Gad7);
    let questions = odd["item"][0]["item"].as_array_mut().unwrap();
    questions[0]["answerOption"] = (0..4)
        .map(|score| json!({ "valueCoding": { "display": "x" }, "extension": [{ "url": SCORES[1], "valueDecimal": score }] }))
        .collect();
    questions[1]["answerOption"] = (0..4).map(|score| json!({ "valueInteger": score })).collect();
    questions[2]["answerOption"] = (0..4).map(|score| json!({ "valueCoding": { "code": score.to_string(), "display": "x" } })).collect();
    let wording = read(Measure::Gad7, &odd).unwrap();
    assert_eq!(wording.questions[1].answers[3], (3, "3".to_owned()));
    assert_eq!(wording.questions[2].answers[3], (3, "x".to_owned()));
}

#[test]
fn what_does_not_fit_is_refused_with_what_to_do() {
    type Change = fn(&mut Value);
    fn questions(file: &mut Value) -> &mut Vec<Value> {
        file["item"][0]["item"].as_array_mut().unwrap()
    }
    let changes: [(&str, Change); 16] = [
        ("Patient", |file| file["resourceType"] = json!("Patient")),
        ("The status of this file", |file| file["status"] = json!("ready")),
        ("has 7 questions, and this file has 8", |file| {
            let mut extra = questions(file)[0].clone();
            extra["linkId"] = json!("extra");
            questions(file).push(extra);
        }),
        ("and this file has 6", |file| drop(questions(file).pop())),
        ("Two parts of the file have the linkId \u{201c}q2\u{201d}", |file| questions(file)[0]["linkId"] = json!("q2")),
        ("has no linkId", |file| questions(file)[0]["linkId"] = json!(" ")),
        ("enableWhen", |file| questions(file)[3]["enableWhen"] = json!([{ "question": "q1", "operator": "exists" }])),
        ("Question 1 is of the type \u{201c}text\u{201d}", |file| questions(file)[0]["type"] = json!("text")),
        ("answerValueSet", |file| questions(file)[0]["answerValueSet"] = json!("http://example.org/set")),
        ("without what it counts", |file| {
            questions(file)[1]["answerOption"][0] = json!({ "valueCoding": { "code": "LA6568-5", "display": "x" } })
        }),
        ("counts 0, 1, 2. GAD-7 counts 0, 1, 2, 3", |file| drop(questions(file)[1]["answerOption"].as_array_mut().unwrap().pop())),
        ("counts 0, 0, 2, 3", |file| {
            let first = questions(file)[1]["answerOption"][0].clone();
            questions(file)[1]["answerOption"][1] = first;
        }),
        ("belongs to question 3 of GAD-7", |file| questions(file)[0]["code"] = json!([{ "system": LOINC, "code": "69733-4" }])),
        ("The title: it has markup", |file| file["title"] = json!("<script>alert(1)</script>")),
        ("Question 7: it has no words", |file| questions(file)[6]["text"] = json!("")),
        ("The language", |file| file["language"] = json!("en\" onload")),
    ];
    for (words, change) in changes {
        let mut changed = file(Measure::Gad7);
        change(&mut changed);
        let refused = read(Measure::Gad7, &changed).unwrap_err().to_string();
        assert!(refused.contains(words), "{words}: {refused}");
    }
}

#[test]
fn codes_of_loinc_stand_in_the_order_of_their_form() {
    for measure in [Measure::Phq9, Measure::Gad7] {
        assert_eq!(codes(measure).len(), measure.form().topics.len());
        let mut coded = file(measure);
        for (at, code) in codes(measure).iter().enumerate() {
            coded["item"][0]["item"][at]["code"] = json!([{ "system": LOINC, "code": code }]);
        }
        assert!(read(measure, &coded).is_ok());
    }
}
