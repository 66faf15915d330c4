//! The reading grade of the catalogue, by the formula of Kincaid, Fishburne, Rogers and Chissom
//! (1975), "Derivation of new readability formulas for Navy enlisted personnel", Research Branch
//! Report 8-75: 0.39·(words per sentence) + 11.8·(syllables per word) - 15.59.

use super::all;

/// What a text is made of.
struct Counts {
    sentences: f64,
    words: f64,
    syllables: f64,
}

fn count(text: &str) -> Counts {
    let sentences = text.split(['.', '?', '!']).filter(|part| part.chars().any(char::is_alphabetic)).count();
    let words: Vec<_> = text.split(|c: char| !c.is_alphabetic() && c != '\'').filter(|word| !word.is_empty()).collect();
    Counts {
        sentences: sentences as f64,
        words: words.len() as f64,
        syllables: words.iter().map(|word| syllables(word)).sum::<usize>() as f64,
    }
}

/// Groups of vowels, less a silent e at the end or in -ed. Rough, and seldom too low.
fn syllables(word: &str) -> usize {
    let word = word.to_lowercase();
    let is_vowel = |c: char| "aeiouy".contains(c);
    let groups = word.split(|c| !is_vowel(c)).filter(|group| !group.is_empty()).count();
    let silent_e = word.ends_with('e') && !word.ends_with("le");
    let silent_ed = word.ends_with("ed") && !word.ends_with("ted") && !word.ends_with("ded");
    let silent = groups > 1 && (silent_e || silent_ed);
    (groups - usize::from(silent)).max(1)
}

fn grade(text: &str) -> f64 {
    let n = count(text);
    0.39 * n.words / n.sentences + 11.8 * n.syllables / n.words - 15.59
}

/// The formula was made for passages: of a few words it says nothing. Those count in the whole.
const FEWEST_WORDS: f64 = 6.0;

/// Whole sentences only: a label has no sentence whose length could be judged.
fn sentences() -> impl Iterator<Item = (&'static str, &'static str)> {
    all().copied().filter(|(_, words)| words.ends_with(['.', '?']))
}

#[test]
fn the_formula_is_that_of_1975() {
    // Worked by hand: 1 sentence, 6 words, 6 syllables: 0.39·6 + 11.8·1 - 15.59 = -1.45.
    assert!((grade("The cat sat on the mat.") + 1.45).abs() < 1e-9);
    // 1 sentence, 8 words, 24 syllables (counted by hand): 3.12 + 35.4 - 15.59 = 22.93.
    let hard = "Psychological evaluation requires considerable time and patience today.";
    assert!((grade(hard) - 22.93).abs() < 3.5, "{}", grade(hard));
    for (word, n) in [("stop", 1), ("moving", 2), ("device", 2), ("people", 2), ("the", 1), ("another", 3), ("stopped", 1), ("needed", 2)] {
        assert_eq!(syllables(word), n, "{word}");
    }
}

#[test]
fn every_text_is_at_reading_grade_6_or_lower() {
    let hard: Vec<_> = sentences()
        .filter(|(_, words)| count(words).words >= FEWEST_WORDS && grade(words) > 6.0)
        .map(|(id, words)| format!("{id} is at grade {:.1}", grade(words)))
        .collect();
    assert!(hard.is_empty(), "{hard:#?}");
    let all: Vec<_> = sentences().map(|(_, words)| words).collect();
    assert!(grade(&all.join(" ")) <= 6.0);
}

#[test]
fn sentences_have_15_words_or_fewer_on_average_and_none_is_long() {
    let all: String = sentences().map(|(_, words)| words).collect::<Vec<_>>().join(" ");
    let n = count(&all);
    assert!(n.words / n.sentences <= 15.0);
    for (id, words) in sentences() {
        let n = count(words);
        assert!(n.words / n.sentences <= 15.0, "{id}");
    }
}
