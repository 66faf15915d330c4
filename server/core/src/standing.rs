//! Which entries of a record count: the one rule, for ratings, marks and reports alike.
//!
//! A record is only added to. A correction is a new entry that names the one it replaces, and taking
//! back is a correction that says nothing. So entries form chains, and of each chain at most one
//! entry stands: its last, if that says something. It stands in the place of the chain's first entry,
//! which is when it was asked; correcting an early rating does not make it the latest one.
//!
//! Order is that of keeping, a count, and never the wall clock, which may be set back. An entry is
//! corrected once: of two that name the same one, the second is void, and with it whatever corrects it.
//! The view `standing_rating` says the same in SQL and `web/src/desk/standing.ts` on the desk; all three
//! are bound to `tests/reference/ratings.json`, the view by a test over odd histories as well.

use std::collections::HashMap;
use std::hash::Hash;

/// What the rule needs to know of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Link<Id> {
    /// Its own id.
    pub id: Id,
    /// The entry that it corrects or takes back.
    pub replaces: Option<Id>,
    /// False: what it replaces is taken back.
    pub says: bool,
}

/// An entry that counts, by places in the list that was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stands {
    /// The entry itself.
    pub at: usize,
    /// The first entry of its chain: when and where it was asked.
    pub first: usize,
}

/// The entries that count, in the order they were asked. `kept` is in order of keeping. An entry that
/// replaces one which is not in the list is the first of its chain.
pub fn standing<Id: Copy + Eq + Hash>(kept: &[Link<Id>]) -> Vec<Stands> {
    let places: HashMap<Id, usize> = kept.iter().enumerate().map(|(at, link)| (link.id, at)).collect();
    let replaced = |link: &Link<Id>| link.replaces.and_then(|id| places.get(&id).copied());
    let mut next: HashMap<usize, usize> = HashMap::new();
    for (at, link) in kept.iter().enumerate() {
        if let Some(earlier) = replaced(link) {
            next.entry(earlier).or_insert(at);
        }
    }
    // Every chain starts at an entry that replaces nothing here, and each entry has one before it at most: no walk meets itself.
    let firsts = (0..kept.len()).filter(|&at| replaced(&kept[at]).is_none());
    let last = |first: usize| std::iter::successors(Some(first), |at| next.get(at).copied()).last().unwrap_or(first);
    firsts.map(|first| Stands { at: last(first), first }).filter(|stands| kept[stands.at].says).collect()
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde::Deserialize;

    use super::*;

    #[derive(Deserialize)]
    struct Vectors {
        histories: Vec<History>,
    }

    #[derive(Deserialize)]
    struct History {
        name: String,
        kept: Vec<Kept>,
        stands: Vec<Standing>,
    }

    #[derive(Deserialize)]
    struct Kept {
        id: String,
        replaces: Option<String>,
        says: bool,
    }

    #[derive(Deserialize)]
    struct Standing {
        id: String,
        first: String,
    }

    #[test]
    fn what_stands_agrees_with_the_clerks_slips() {
        let vectors: Vectors = serde_json::from_str(include_str!("../../../tests/reference/ratings.json")).unwrap();
        assert!(vectors.histories.len() > 40);
        for History { name, kept, stands } in vectors.histories {
            let links: Vec<Link<&str>> =
                kept.iter().map(|one| Link { id: one.id.as_str(), replaces: one.replaces.as_deref(), says: one.says }).collect();
            let got: Vec<(&str, &str)> = standing(&links).into_iter().map(|one| (links[one.at].id, links[one.first].id)).collect();
            let wanted: Vec<(&str, &str)> = stands.iter().map(|one| (one.id.as_str(), one.first.as_str())).collect();
            assert_eq!(got, wanted, "{name}");
        }
    }

    proptest! {
        // Links to itself, to later entries and in rings: no record holds them, and they must end all the same.
        #[test]
        fn at_most_one_entry_of_a_chain_stands_whatever_the_links(
            rows in prop::collection::vec((prop::option::of(0..12u8), any::<bool>()), 0..12)
        ) {
            let links: Vec<Link<u8>> = rows.iter().enumerate()
                .map(|(at, (replaces, says))| Link { id: at as u8, replaces: *replaces, says: *says }).collect();
            let found = standing(&links);
            prop_assert!(found.windows(2).all(|pair| pair[0].first < pair[1].first));
            for one in &found {
                prop_assert!(links[one.at].says);
                prop_assert!(!links.iter().any(|link| link.replaces == Some(links[one.at].id) && link.id != links[one.at].id));
            }
        }
    }
}
