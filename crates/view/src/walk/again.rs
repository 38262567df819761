//! A look that was not seen, one that is measured a second time, and one that shows what a look is.

use std::collections::BTreeMap;

use framing::walk::{Verdict, words};

use super::kind::Kind;
use super::look;
use super::typed::{InHand, Typed};
use crate::model::Group;
use crate::scene::Scene;

/// What is stored of a look at something that could not be seen: the core's verdict, and the answer in a line.
#[must_use]
pub fn not_seen() -> (String, String) {
    (words::verdict(Verdict::NotSeen).to_owned(), "It could not be seen or reached.".to_owned())
}

/// What a second measurement starts from: what is asked for and what is known of the wall stay, what was measured goes.
#[must_use]
pub fn to_measure_again(kind: Kind, before: &Typed) -> Typed {
    // What was looked at is no measurement: other inputs matter only by it.
    let says_what = |name: &str| kind.specs().iter().any(|spec| spec.only.iter().any(|(of, _)| *of == name));
    let found =
        |name: &str| kind.specs().iter().any(|spec| spec.id == name && (spec.group == Group::Found || spec.many));
    let measured = |name: &str| found(name) && !says_what(name);
    let texts = before.texts.iter().filter(|(name, _)| !measured(name) && *name != "note" && *name != "severity");
    Typed { texts: texts.map(|(name, text)| (name.clone(), text.clone())).collect(), ..Typed::default() }
}

/// An invented row of studs with one bay too wide: what stands on the page before anything was measured.
#[must_use]
pub fn example() -> Scene {
    let pulls = ["16", "32", "49", "64"].map(str::to_owned).to_vec();
    let lists = BTreeMap::from([("pulls".to_owned(), pulls)]);
    let typed = Typed { lists, ..Typed::default() };
    look(Kind::StudSpacing, &typed, InHand { field: "pulls", reading: usize::MAX }, None).picture
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::{example, not_seen, to_measure_again};
    use crate::model::State;
    use crate::walk::{Kind, Typed};

    #[test]
    fn a_second_measurement_keeps_what_is_asked_for_and_nothing_that_was_measured() {
        let texts = [("required_spacing", "16"), ("note", "bowed"), ("pulled", "centre_to_centre")]
            .map(|(name, text)| (name.to_owned(), text.to_owned()));
        let pulls = ("pulls".to_owned(), vec!["16".to_owned(), "33".to_owned()]);
        let before = Typed { texts: BTreeMap::from(texts), lists: BTreeMap::from([pulls]) };
        let again = to_measure_again(Kind::StudSpacing, &before);
        assert_eq!(again.text("required_spacing"), "16");
        assert!(!again.has("note") && again.list("pulls").is_empty());
        assert!(again.has("pulled"), "how it is measured stays");
    }

    #[test]
    fn the_example_shows_its_wide_bay() {
        assert!(example().alt.contains("17\" from 32\" to 49\""), "{}", example().alt);
    }

    #[test]
    fn what_was_not_seen_is_no_pass() {
        assert_eq!(crate::record::state_of(&not_seen().0), State::NotKnown);
    }
}
