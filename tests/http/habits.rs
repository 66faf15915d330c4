//! What people expect of any good software: titles that tell tabs apart, "Saved" with a time, forms that say they were refused, a way on
//! from every error, dates as the practice writes them.

mod saved;
mod settings;
mod titles;
mod ways;

use leeward_tests::Answer;

/// The title of a page up to the practice's name.
fn title(answer: &Answer) -> &str {
    let title = answer.body.split_once("<title>").and_then(|(_, rest)| rest.split_once("</title>")).map_or("", |(title, _)| title);
    title.split(" · ").next().unwrap_or_default()
}
