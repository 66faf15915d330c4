//! The wording of a form, as the practice brings it in a file: a FHIR R4 Questionnaire. It is checked item by item against the form before
//! anybody is asked by it: as many questions, in the form's order, each with just the answers that the form scores.
//!
//! What a question means stands in its code where it has one. A linkId ties an answer to its question and has no meaning of its own; it is
//! there once (FHIR R4, Questionnaire, invariant que-2). Whether the words fit the topics a person must say: no program can.

#[cfg(test)]
mod tests;

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::{Form, Measure};

/// The most that a question may say, and an answer, in characters.
const MOST_QUESTION: usize = 600;
const MOST_ANSWER: usize = 120;
/// Extensions that say what an answer counts (FHIR R4, ordinalValue; Structured Data Capture, itemWeight).
const SCORES: [&str; 2] = ["http://hl7.org/fhir/StructureDefinition/ordinalValue", "http://hl7.org/fhir/StructureDefinition/itemWeight"];
const LOINC: &str = "http://loinc.org";

/// The parts of a FHIR R4 Questionnaire that count here. The rest of a file is not looked at.
#[derive(Clone, Debug, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Questionnaire {
    resource_type: String,
    #[serde(default)]
    status: String,
    #[serde(default)]
    title: Option<String>,
    #[serde(default)]
    language: Option<String>,
    #[serde(default)]
    item: Vec<FileItem>,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(rename_all = "camelCase")]
struct FileItem {
    #[serde(default)]
    link_id: String,
    #[serde(default)]
    text: String,
    #[serde(default)]
    r#type: String,
    #[serde(default)]
    code: Vec<Coding>,
    #[serde(default)]
    enable_when: Vec<Ignored>,
    #[serde(default)]
    answer_value_set: Option<String>,
    #[serde(default)]
    answer_option: Vec<FileAnswer>,
    #[serde(default)]
    item: Vec<Self>,
}

/// Something whose presence counts, not what it says.
#[derive(Clone, Debug, Deserialize)]
struct Ignored {}

#[derive(Clone, Debug, Deserialize)]
#[serde(rename_all = "camelCase")]
struct FileAnswer {
    #[serde(default)]
    value_coding: Option<Coding>,
    #[serde(default)]
    value_integer: Option<i64>,
    #[serde(default)]
    extension: Vec<Extension>,
}

#[derive(Clone, Debug, Default, Deserialize)]
struct Coding {
    #[serde(default)]
    system: String,
    #[serde(default)]
    code: String,
    #[serde(default)]
    display: String,
    #[serde(default)]
    extension: Vec<Extension>,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(rename_all = "camelCase")]
struct Extension {
    url: String,
    #[serde(default)]
    value_decimal: Option<f64>,
}

/// The words of one form.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Wording {
    /// What the file calls itself.
    pub title: String,
    /// BCP 47, as the file says; empty: it says none.
    pub language: String,
    /// What is to be read before the questions, a paragraph each.
    pub intro: Vec<String>,
    /// The questions in the form's order.
    pub questions: Vec<Question>,
}

/// One question.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Question {
    /// The file's linkId.
    pub id: String,
    /// What stands over it: the stem of its group, or words between it and the question before; empty: nothing.
    #[serde(default)]
    pub under: String,
    /// What it asks.
    pub text: String,
    /// Each answer and its words, as the file orders them.
    pub answers: Vec<(u8, String)>,
}

/// Why a file is no wording of a form.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[expect(missing_docs, reason = "each says it itself")]
pub enum Unfit {
    #[error("This is no FHIR R4 Questionnaire: its resourceType is \u{201c}{0}\u{201d}. Look for the file that has the form itself.")]
    Kind(String),
    #[error("The status of this file is \u{201c}{0}\u{201d}. FHIR R4 knows draft, active, retired and unknown; mend the file.")]
    Status(String),
    #[error("{form} has {asked} questions, and this file has {given}. Take out what is not scored, or look for what is missing.")]
    Count { form: &'static str, asked: usize, given: usize },
    #[error("Two parts of the file have the linkId \u{201c}{0}\u{201d}. Each has one of its own; mend the file.")]
    Twice(String),
    #[error("A part of the file has no linkId. Each has one of its own; mend the file.")]
    NoId,
    #[error(
        "Question {0} is asked only after certain answers (enableWhen). A form that is scored asks all of its questions; take that out."
    )]
    Conditional(usize),
    #[error("Question {0} is of the type \u{201c}{1}\u{201d}. A question that is scored is a choice, with its answers in the file.")]
    Type(usize, String),
    #[error("The answers of question {0} stand elsewhere (answerValueSet). Put them into the file, with what each counts.")]
    Elsewhere(usize),
    #[error("Question {question} has an answer without what it counts. Give each an ordinalValue, a whole number.")]
    NoScore { question: usize },
    #[error("Question {question} counts {given}. {form} counts {asked}.")]
    Scores { question: usize, given: String, form: &'static str, asked: String },
    #[error("Question {question} has the code {code}, which belongs to question {place} of {form}. Put them into the form\u{2019}s order.")]
    Order { question: usize, code: String, place: usize, form: &'static str },
    #[error("{place}: {problem}")]
    Words { place: String, problem: &'static str },
}

impl Wording {
    /// The wording of `measure` that a file has.
    ///
    /// # Errors
    /// [`Unfit`]: the first thing in which it is none.
    pub fn read(measure: Measure, file: &Questionnaire) -> Result<Self, Unfit> {
        if file.resource_type != "Questionnaire" {
            return Err(Unfit::Kind(plain_word(&file.resource_type)));
        }
        if !matches!(file.status.as_str(), "draft" | "active" | "retired" | "unknown") {
            return Err(Unfit::Status(plain_word(&file.status)));
        }
        unique(&flat(&file.item))?;
        let mut parts = Parts::default();
        parts.take(&file.item, "");
        let (before, asked) = parts.shared_out();
        let intro = before.iter().map(|text| words("What stands before the questions", text, MOST_QUESTION)).collect::<Result<_, _>>()?;
        let form = measure.form();
        if asked.len() != form.topics.len() {
            return Err(Unfit::Count { form: form.name, asked: form.topics.len(), given: asked.len() });
        }
        let questions =
            asked.into_iter().zip(1..).map(|((part, under), number)| question(measure, part, &under, number)).collect::<Result<_, _>>()?;
        let title = words("The title", file.title.as_deref().unwrap_or(form.name), MOST_ANSWER)?;
        let language = file.language.clone().unwrap_or_default();
        if !language.chars().all(|c| c.is_ascii_alphanumeric() || c == '-') || language.len() > 35 {
            return Err(Unfit::Words { place: "The language".to_owned(), problem: "write it as a tag such as en or de-CH" });
        }
        Ok(Self { title, language, intro, questions })
    }
}

/// The questions of a file, each with what stands over it, and what stands before them all.
#[derive(Default)]
struct Parts<'a> {
    before: Vec<&'a str>,
    questions: Vec<(&'a FileItem, &'a str, Vec<&'a str>)>,
    /// Words since the last question.
    between: Vec<&'a str>,
}

impl<'a> Parts<'a> {
    fn take(&mut self, items: &'a [FileItem], stem: &'a str) {
        for item in items {
            let text = item.text.trim();
            match item.r#type.as_str() {
                "group" => self.take(&item.item, if text.is_empty() { stem } else { text }),
                "display" if self.questions.is_empty() => self.before.extend((!text.is_empty()).then_some(text)),
                "display" => self.between.extend((!text.is_empty()).then_some(text)),
                _ => {
                    self.questions.push((item, stem, std::mem::take(&mut self.between)));
                    self.take(&item.item, stem);
                }
            }
        }
    }

    /// A stem that all questions share stands before them, once.
    fn shared_out(mut self) -> (Vec<&'a str>, Vec<(&'a FileItem, String)>) {
        let first = self.questions.first().map_or("", |(_, stem, _)| *stem);
        let shared = self.questions.iter().all(|(_, stem, _)| *stem == first);
        if shared && !first.is_empty() {
            self.before.push(first);
        }
        // What comes after the last question is still to be read.
        self.before.append(&mut self.between);
        let under = |stem: &str, between: Vec<&str>| {
            let stem = (!shared && !stem.is_empty()).then_some(stem);
            stem.into_iter().chain(between).collect::<Vec<_>>().join("\n")
        };
        (self.before, self.questions.into_iter().map(|(item, stem, between)| (item, under(stem, between))).collect())
    }
}

impl Wording {
    /// The language as a person reads it: its tag, or that the file names none, so that a client's browser takes English.
    #[must_use]
    pub fn language_words(&self) -> String {
        if self.language.is_empty() { "not named in the file; read out as English".to_owned() } else { self.language.clone() }
    }
}

fn flat(items: &[FileItem]) -> Vec<&FileItem> {
    items.iter().flat_map(|item| std::iter::once(item).chain(flat(&item.item))).collect()
}

fn unique(parts: &[&FileItem]) -> Result<(), Unfit> {
    let mut seen = BTreeSet::new();
    for part in parts {
        if part.link_id.trim().is_empty() {
            return Err(Unfit::NoId);
        }
        if !seen.insert(part.link_id.as_str()) {
            return Err(Unfit::Twice(plain_word(&part.link_id)));
        }
    }
    Ok(())
}

fn question(measure: Measure, part: &FileItem, under: &str, number: usize) -> Result<Question, Unfit> {
    let form = measure.form();
    if !part.enable_when.is_empty() {
        return Err(Unfit::Conditional(number));
    }
    if part.answer_value_set.is_some() {
        return Err(Unfit::Elsewhere(number));
    }
    if !matches!(part.r#type.as_str(), "choice" | "integer") || part.answer_option.is_empty() {
        return Err(Unfit::Type(number, plain_word(&part.r#type)));
    }
    in_place(measure, part, number)?;
    let answers: Vec<(u8, String)> = part.answer_option.iter().map(|answer| read_answer(answer, number)).collect::<Result<_, _>>()?;
    let given: Vec<u8> = answers.iter().map(|(score, _)| *score).collect();
    let mut sorted = given.clone();
    sorted.sort_unstable();
    let wanted = scores(form);
    if sorted != wanted {
        return Err(Unfit::Scores { question: number, given: listed(&given), form: form.name, asked: listed(&wanted) });
    }
    let place = format!("Question {number}");
    let under = if under.is_empty() { String::new() } else { words(&place, under, MOST_QUESTION)? };
    Ok(Question { id: plain_word(&part.link_id), under, text: words(&place, &part.text, MOST_QUESTION)?, answers })
}

/// What an answer of this form may count.
fn scores(form: &Form) -> Vec<u8> {
    (0..=form.most).step_by(form.step.into()).collect()
}

fn listed(scores: &[u8]) -> String {
    scores.iter().map(u8::to_string).collect::<Vec<_>>().join(", ")
}

fn read_answer(answer: &FileAnswer, question: usize) -> Result<(u8, String), Unfit> {
    let coding = answer.value_coding.as_ref();
    let said = answer.extension.iter().chain(coding.into_iter().flat_map(|coding| &coding.extension));
    let said = said.filter(|extension| SCORES.contains(&extension.url.as_str())).find_map(|extension| extension.value_decimal);
    let score = match said {
        Some(decimal) => (0..=u8::MAX).find(|whole| f64::from(*whole) == decimal),
        // A number is what it counts, as a value and as a code.
        None => answer.value_integer.and_then(|whole| u8::try_from(whole).ok()).or_else(|| coding?.code.parse().ok()),
    };
    let score = score.ok_or(Unfit::NoScore { question })?;
    let place = format!("An answer of question {question}");
    let text = match coding {
        Some(coding) => words(&place, &coding.display, MOST_ANSWER)?,
        None => score.to_string(),
    };
    Ok((score, text))
}

/// A question that carries a code of LOINC stands where that code belongs.
fn in_place(measure: Measure, part: &FileItem, number: usize) -> Result<(), Unfit> {
    let codes = codes(measure);
    for coding in part.code.iter().filter(|coding| coding.system == LOINC) {
        if let Some(at) = codes.iter().position(|code| *code == coding.code)
            && at + 1 != number
        {
            return Err(Unfit::Order { question: number, code: coding.code.clone(), place: at + 1, form: measure.form().name });
        }
    }
    Ok(())
}

/// Codes of LOINC by question (reference of measures, sections 2 and 3); empty: none are known.
const fn codes(measure: Measure) -> &'static [&'static str] {
    match measure {
        Measure::Phq9 => &["44250-9", "44255-8", "44259-0", "44254-1", "44251-7", "44258-2", "44252-5", "44253-3", "44260-8"],
        Measure::Gad7 => &["69725-0", "68509-9", "69733-4", "69734-2", "69735-9", "69689-8", "69736-7"],
        _ => &[],
    }
}

/// A text that a client will read, or why it is none.
fn words(place: &str, text: &str, most: usize) -> Result<String, Unfit> {
    let text = text.trim();
    let mut chars = text.chars().zip(text.chars().skip(1));
    let problem = if text.is_empty() {
        "it has no words; write them into the file"
    } else if text.chars().count() > most {
        "it is too long to be read on a phone; shorten it in the file"
    } else if text.chars().any(|c| c.is_control() && c != '\n') {
        "it has control characters; take them out of the file"
    } else if chars.any(|(c, next)| c == '<' && (next.is_ascii_alphabetic() || "/!?".contains(next))) {
        "it has markup; write plain words"
    } else {
        return Ok(text.to_owned());
    };
    Err(Unfit::Words { place: place.to_owned(), problem })
}

/// A word of the file as a message repeats it.
fn plain_word(word: &str) -> String {
    word.chars().filter(|c| !c.is_control()).take(60).collect()
}
