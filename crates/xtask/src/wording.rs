//! What must not stand in any committed text: paths of one machine, leftovers of a merge, notes to oneself.

use crate::outcome::{Failure, Outcome};
use crate::place::{self, Place};

/// A piece of text that must not appear, and why. Each is put together here so that this file does not hold it.
const FORBIDDEN: [(&str, &str); 6] = [
    (concat!("/ro", "ot/"), "a path of one machine"),
    (concat!("/ho", "me/"), "a path of one machine"),
    (concat!("/Us", "ers/"), "a path of one machine"),
    (concat!("<<<<", "<<< "), "a leftover of a merge"),
    (concat!("TO", "DO"), "unfinished work; finish it or leave it out"),
    (concat!("FIX", "ME"), "unfinished work; finish it or leave it out"),
];

/// Fails when a file of the project holds one of them.
pub fn check(place: &Place) -> Outcome {
    let mut problems = Vec::new();
    for path in place::files_under(place.root(), is_not_ours)? {
        let name = place::address_of(&path, place.root());
        // What is not text is a picture or a font.
        if let Ok(text) = String::from_utf8(place::bytes(&path)?) {
            problems.extend(found_in(&name, &text));
        }
    }
    Failure::unless_empty("words that must not be in the project", &problems)
}

/// Folders that are fetched or generated.
fn is_not_ours(folder: &str) -> bool {
    ["target", "dist", "node_modules", "package", ".git", ".tools"].contains(&folder)
}

fn found_in(name: &str, text: &str) -> Vec<String> {
    let lines = text.lines().enumerate();
    let hits = lines.flat_map(|(at, line)| FORBIDDEN.iter().filter(|(w, _)| line.contains(w)).map(move |f| (at, f)));
    hits.map(|(at, (word, why))| format!("{name}:{}: {word} is {why}", at + 1)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_forbidden_word_is_reported_with_its_line() {
        let text = format!("fine\nsee {}someone\n", FORBIDDEN[1].0);
        assert_eq!(found_in("a.md", &text).len(), 1);
        assert!(found_in("a.md", &text)[0].starts_with("a.md:2: "));
        assert!(found_in("a.md", "the root of the roof is at home\n").is_empty());
    }
}
