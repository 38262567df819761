//! A look judged from what is stored of it: inputs by their stable names.

use super::flatness::{self, FlatnessCase};
use super::hold_down_point::{self, BY_BOLT, HoldDownPointCase};
use super::moisture::{self, MoistureCase};
use super::nailing::{self, NailingCase};
use super::notch_found::{self, NotchFoundCase};
use super::stud_spacing::{self, StudSpacingCase};
use super::{ByName, Walked};

/// The one of the bolts' lists that is read once for all: bolts of one kind come in one size. Whether a nut is tight is looked at
/// bolt by bolt.
const ONCE_FOR_ALL: &str = "diameters";
const BOLTS: &str = "bolts";
/// What is written for a bolt that was not looked at.
const NOT_LOOKED_AT: &str = "-";

/// Judges a look of a kind (`stud_spacing`, as in the headless command) by its inputs: those that are one text, and
/// those that are a list. Readings left empty at a list's end were not taken; one that is missing for a bolt was not
/// looked at. A name that the kind does not have is passed over; a kind that does not exist gives none.
#[must_use]
pub fn judge(kind: &str, texts: &ByName<String>, lists: &ByName<Vec<String>>) -> Option<Walked> {
    let lists = taken(lists);
    let inputs = (texts, &lists);
    Some(match kind {
        "stud_spacing" => stud_spacing::answer(&StudSpacingCase::of(inputs)),
        "nailing" => nailing::answer(&NailingCase::of(inputs)),
        "hold_down_point" => hold_down_point::answer(&HoldDownPointCase::of(inputs)),
        "notch_found" => notch_found::answer(&NotchFoundCase::of(inputs)),
        "flatness" => flatness::answer(&FlatnessCase::of(inputs)),
        "moisture" => moisture::answer(&MoistureCase::of(inputs)),
        _ => return None,
    })
}

/// The lists as they are judged, without those in which nothing was typed.
fn taken(lists: &ByName<Vec<String>>) -> ByName<Vec<String>> {
    let bolts = lists.get(BOLTS).map_or(0, |list| typed(list).len());
    let held = lists.iter().filter(|(_, list)| !typed(list).is_empty());
    held.map(|(name, list)| (name.clone(), readings(name, typed(list), bolts))).collect()
}

/// A list without the empty readings at its end.
fn typed(list: &[String]) -> &[String] {
    let end = list.iter().rposition(|text| !text.trim().is_empty()).map_or(0, |last| last + 1);
    &list[..end]
}

/// A reading that is missing for a bolt was not taken.
fn readings(name: &str, list: &[String], bolts: usize) -> Vec<String> {
    let mut readings = list.to_vec();
    if BY_BOLT.contains(&name) && (list.len() > 1 || name != ONCE_FOR_ALL) {
        readings.resize(list.len().max(bolts), String::new());
        for text in readings.iter_mut().filter(|text| text.trim().is_empty()) {
            NOT_LOOKED_AT.clone_into(text);
        }
    }
    readings
}
