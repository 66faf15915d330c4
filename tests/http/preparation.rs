//! What is prepared before a set: presets, comfort sheets, rehearsals; and the page of a set afterwards.

mod comfort;
mod presets;
mod rehearsal;
mod set_page;

/// `fields` with one of them given another value.
fn with<'a>(fields: &[(&'a str, &'a str)], name: &'a str, value: &'a str) -> Vec<(&'a str, &'a str)> {
    let mut fields: Vec<_> = fields.iter().copied().filter(|(field, _)| *field != name).collect();
    fields.push((name, value));
    fields
}

fn has(body: &str, texts: &[&str]) {
    for text in texts {
        assert!(body.contains(text), "{text:?} is missing in\n{body}");
    }
}

/// A form that was refused: its status, the message, and what was typed still in it.
fn refused(answer: &leeward_tests::Answer, field: &str, message: &str, typed: &str) {
    assert_eq!(answer.status, 422, "{field}: {}", answer.body);
    has(&answer.body, &["Not saved yet", &format!("href=\"#{field}\""), message]);
    assert!(typed.is_empty() || answer.body.contains(&format!("value=\"{typed}\"")), "{field}: {typed:?} is lost in\n{}", answer.body);
}
