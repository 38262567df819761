//! What one tap writes: the state of the stud in hand, and how much of it.

use framing::walk::could_not_be_seen;
use framing::walk::stud_spacing::{StudSpacingCase, drawn};
use framing::walk::words;

use super::kind::Kind;
use super::typed::{InHand, Typed};
use crate::model::FieldId;

const PULLS: FieldId = "pulls";
const STUDS_FOUND: FieldId = "studs_found";
const DOUBLES: FieldId = "doubles";

/// Bows and notches that a tape is read to in haste.
const BY: [&str; 6] = ["1/8", "1/4", "3/8", "1/2", "3/4", "1"];
/// Packs as they are found and asked.
const COUNTS: [(u8, u8); 5] = [(1, 2), (2, 2), (1, 3), (2, 3), (3, 3)];

/// One tap: a reading of a list that is written whole and comes to hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ready {
    /// What stands on the key.
    pub words: String,
    /// The list.
    pub field: FieldId,
    /// Its reading, from 0; as many as there are for a new one.
    pub reading: usize,
    /// What is written.
    pub text: String,
}

/// The keys for the reading in hand, and what they answer.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ReadyKeys {
    /// What they answer: `The stud at 2' 9"`.
    pub about: String,
    /// The keys.
    pub keys: Vec<Ready>,
}

/// What can be said with one tap of the reading in hand.
pub(super) fn ready(kind: Kind, typed: &Typed, hand: InHand) -> ReadyKeys {
    if kind != Kind::StudSpacing {
        return ReadyKeys::default();
    }
    match hand.field {
        PULLS => of_a_pull(typed, hand.reading),
        STUDS_FOUND => by_how_much(typed, hand.reading),
        DOUBLES => how_many(typed, hand.reading),
        _ => ReadyKeys::default(),
    }
}

/// A stud that was pulled may be bowed, notched, or one of a pack.
fn of_a_pull(typed: &Typed, reading: usize) -> ReadyKeys {
    let row = drawn(&StudSpacingCase::of((&typed.texts, &typed.lists)));
    let Some((_, centre)) = row.pulled.iter().find(|(pull, _)| *pull == reading) else { return ReadyKeys::default() };
    let at = words::length(*centre);
    let new = |words: &str, field, text: String| {
        let reading = typed.list(field).len();
        Ready { words: words.to_owned(), field, reading, text }
    };
    ReadyKeys {
        about: format!("The stud at {at}"),
        keys: vec![
            new("bowed", STUDS_FOUND, format!("{at}: bowed")),
            new("notched", STUDS_FOUND, format!("{at}: notched")),
            new("one of a pack", DOUBLES, format!("{at}: of")),
        ],
    }
}

/// How much a stud is bowed or notched.
fn by_how_much(typed: &Typed, reading: usize) -> ReadyKeys {
    let text = typed.list(STUDS_FOUND).get(reading).map_or("", |text| text.trim());
    let Some((at, rest)) = text.rsplit_once(':') else { return ReadyKeys::default() };
    let what = rest.split_whitespace().next().unwrap_or_default();
    if !["bowed", "notched"].contains(&what) {
        return ReadyKeys::default();
    }
    let key = |by: &str| {
        let words = if by.contains('/') || by == "1" { format!("{by}\"") } else { by.to_owned() };
        Ready { words, field: STUDS_FOUND, reading, text: format!("{at}: {what} {by}") }
    };
    ReadyKeys {
        about: format!("{what} at {at}, by how much"),
        keys: BY.into_iter().chain(["not seen"]).map(key).collect(),
    }
}

/// How many studs there are, of how many. Where the drawing has said how many, only those are offered.
fn how_many(typed: &Typed, reading: usize) -> ReadyKeys {
    let text = typed.list(DOUBLES).get(reading).map_or("", |text| text.trim());
    let Some((at, count)) = text.rsplit_once(':') else { return ReadyKeys::default() };
    let drawn = count.trim().split_once(" of ").filter(|(found, _)| could_not_be_seen(found));
    let asked: Option<u8> = drawn.and_then(|(_, asked)| asked.trim().parse().ok());
    let counts: Vec<(u8, u8)> = match asked {
        Some(asked) => (1..=asked.min(6)).rev().map(|found| (found, asked)).collect(),
        None => COUNTS.to_vec(),
    };
    let key = |(found, asked): (u8, u8)| {
        let words = format!("{found} of {asked}");
        Ready { text: format!("{at}: {words}"), words, field: DOUBLES, reading }
    };
    ReadyKeys { about: format!("studs at {at}, found of asked"), keys: counts.into_iter().map(key).collect() }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::{InHand, Kind, Typed, ready};

    fn typed(lists: &[(&str, &[&str])]) -> Typed {
        let list = |texts: &[&str]| texts.iter().map(|text| (*text).to_owned()).collect();
        let lists = lists.iter().map(|(name, texts)| ((*name).to_owned(), list(texts))).collect();
        Typed { texts: BTreeMap::new(), lists }
    }

    fn keys(lists: &[(&str, &[&str])], field: &'static str, reading: usize) -> Vec<(String, String)> {
        let ready = ready(Kind::StudSpacing, &typed(lists), InHand { field, reading });
        ready.keys.into_iter().map(|key| (key.words, key.text)).collect()
    }

    #[test]
    fn a_stud_that_was_pulled_is_named_by_its_place() {
        let of_second = keys(&[("pulls", &["16", "33"])], "pulls", 1);
        assert_eq!(of_second[0], ("bowed".to_owned(), "33\": bowed".to_owned()));
        assert_eq!(of_second[2].1, "33\": of");
        assert!(keys(&[("pulls", &["16", "33"])], "pulls", 2).is_empty(), "the next pull is not there yet");
    }

    #[test]
    fn how_much_completes_what_was_begun() {
        let bow = keys(&[("studs_found", &["33\": bowed"])], "studs_found", 0);
        assert_eq!(bow[2], ("3/8\"".to_owned(), "33\": bowed 3/8".to_owned()));
        assert_eq!(bow.last().unwrap().1, "33\": bowed not seen");
        assert!(keys(&[("studs_found", &["33"])], "studs_found", 0).is_empty());
        let again = keys(&[("studs_found", &["33: notched 1"])], "studs_found", 0);
        assert_eq!(again[0].1, "33: notched 1/8");
    }

    #[test]
    fn a_pack_from_the_drawing_is_counted_against_it() {
        let drawn = keys(&[("doubles", &["64: not seen of 3"])], "doubles", 0);
        let texts: Vec<&str> = drawn.iter().map(|(_, text)| text.as_str()).collect();
        assert_eq!(texts, ["64: 3 of 3", "64: 2 of 3", "64: 1 of 3"]);
        assert_eq!(keys(&[("doubles", &["64: of"])], "doubles", 0).len(), 5);
    }

    /// What a key writes is read by the core, and nothing of it is refused.
    #[test]
    fn what_a_key_writes_is_read() {
        for (field, begun) in [("studs_found", "33\": bowed"), ("studs_found", "33: notched"), ("doubles", "33: of")] {
            for (_, text) in keys(&[(field, &[begun])], field, 0) {
                let written = typed(&[("pulls", &["16", "33", "48"]), (field, &[&text])]);
                assert!(written.judged(Kind::StudSpacing).is_ok(), "{text}");
            }
        }
    }
}
