//! What imports what: nothing imports what stands above it, so there are no circles; and SQL stands in `queries` alone.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use regex_lite::Regex;

/// The portal's folders from the ground up. Those of one floor do not import each other. What lies beside the folders
/// assembles and runs the whole, and is the roof.
const FLOORS: [&[&str]; 12] = [
    &["base", "words"],
    &["store"],
    &["platform"],
    &["mail", "signin"],
    &["clients", "handover", "practice"],
    &["course", "episodes", "wordings"],
    &["comfort", "presets", "safety_plan", "steadying", "reach", "events", "measures"],
    &["askings", "outcomes"],
    &["targets"],
    &["sessions"],
    &["live"],
    &["record", "caseload", "doctor"],
];
const ROOF: &str = "";

fn source() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../server/portal/src")
}

/// Files below `folder` with these endings, as paths from it.
fn files(folder: &Path, endings: &[&str]) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(files(&path, endings));
        } else if path.extension().is_some_and(|ending| endings.iter().any(|one| ending == *one)) {
            all.push(path);
        }
    }
    all.sort();
    all
}

fn floor(folder: &str) -> usize {
    FLOORS.iter().position(|floor| floor.contains(&folder)).unwrap_or(FLOORS.len())
}

/// The folder that a file stands in, or the roof.
fn folder_of(file: &Path) -> String {
    let inside = file.strip_prefix(source()).unwrap();
    if inside.components().count() > 1 { inside.iter().next().unwrap().to_str().unwrap().to_owned() } else { ROOF.to_owned() }
}

/// What a text names of this crate: folders, and whatever else stands there as the roof. Test modules within files may name all.
fn named(text: &str) -> Vec<String> {
    let text = text.split("#[cfg(test)]\nmod tests {").next().unwrap();
    let several = Regex::new(r"(?s)use crate::\{(.*?)\};").unwrap();
    let one = Regex::new(r"crate::(\w+)").unwrap();
    let inner = Regex::new(r"(?s)::\{.*?\}").unwrap();
    let listed = several.captures_iter(text).flat_map(|found| {
        let flat = inner.replace_all(&found[1], "").into_owned();
        flat.split(',').map(|part| part.trim().split("::").next().unwrap().to_owned()).collect::<Vec<_>>()
    });
    let folder = |name: String| if FLOORS.concat().contains(&name.as_str()) { name } else { ROOF.to_owned() };
    one.captures_iter(text).map(|found| found[1].to_owned()).chain(listed).filter(|name| !name.is_empty()).map(folder).collect()
}

#[test]
fn every_folder_has_its_floor() {
    let folders = fs::read_dir(source()).unwrap().map(|entry| entry.unwrap().path()).filter(|path| path.is_dir());
    let mut there: Vec<String> = folders.map(|path| path.file_name().unwrap().to_str().unwrap().to_owned()).collect();
    let mut known: Vec<String> = FLOORS.concat().into_iter().map(str::to_owned).collect();
    there.sort();
    known.sort();
    assert_eq!(there, known);
}

#[test]
fn nothing_imports_what_stands_above_it_or_beside_it() {
    let mut arrows = BTreeMap::<(String, String), Vec<String>>::new();
    for file in files(&source(), &["rs", "html"]) {
        let from = folder_of(&file);
        for to in named(&fs::read_to_string(&file).unwrap()) {
            if to != from {
                arrows.entry((from.clone(), to)).or_default().push(file.strip_prefix(source()).unwrap().display().to_string());
            }
        }
    }
    assert!(arrows.len() > 30, "only {} arrows: is this the whole house?", arrows.len());
    let up: Vec<_> = arrows.iter().filter(|((from, to), _)| floor(to) >= floor(from)).collect();
    assert!(up.is_empty(), "{up:#?}");
}

#[test]
fn sql_stands_in_queries_alone() {
    let asks = Regex::new(r"sqlx::(query|raw_sql)|\bquery(_as|_scalar)?!\(").unwrap();
    let (queries, others): (Vec<PathBuf>, Vec<PathBuf>) =
        files(&source(), &["rs"]).into_iter().partition(|file| file.file_name().unwrap().to_str().unwrap().starts_with("queries"));
    let asking = |files: &[PathBuf]| files.iter().filter(|file| asks.is_match(&fs::read_to_string(file).unwrap())).count();
    assert_eq!(asking(&queries), queries.len(), "a file of queries has some");
    let strays: Vec<_> = others.iter().filter(|file| asks.is_match(&fs::read_to_string(file).unwrap())).collect();
    assert!(strays.is_empty(), "{strays:?}");
}

/// Core knows no page, no socket and no database.
#[test]
fn core_stands_on_its_own() {
    let manifest = fs::read_to_string(source().join("../../core/Cargo.toml")).unwrap();
    for crate_ in ["axum", "tokio", "sqlx", "askama", "leeward "] {
        assert!(!manifest.lines().any(|line| line.starts_with(crate_)), "core depends on {crate_}");
    }
}
