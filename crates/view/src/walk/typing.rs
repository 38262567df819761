//! Readings as they are typed, changed and taken out again: each stays with the bolt or the pull that it belongs to.

use std::collections::BTreeMap;

use framing::walk::hold_down_point::BY_BOLT;

/// The lists of a look, as they are stored.
type Lists = BTreeMap<String, Vec<String>>;

const BOLTS: &str = "bolts";
const ONCE_FOR_ALL: &str = "diameters";
const PULLS: &str = "pulls";
const CONFIRMED: &str = "confirmed";

/// Writes one reading of a list, counted from 0; none takes it out.
///
/// A reading for a bolt stays that bolt's: those before it that were not typed are left empty, and one that is taken out
/// leaves its place empty. With a bolt go its readings.
pub fn write_reading(lists: &mut Lists, field: &str, reading: usize, text: Option<String>) {
    let text = text.filter(|text| !text.trim().is_empty());
    let is_by_bolt = BY_BOLT.contains(&field);
    let list = lists.entry(field.to_owned()).or_default();
    match text {
        Some(text) if reading < list.len() => list[reading] = text,
        Some(text) => {
            if is_by_bolt {
                list.resize(reading, String::new());
            }
            list.push(text);
        }
        None if reading >= list.len() => {}
        None if is_by_bolt => list[reading].clear(),
        None => {
            list.remove(reading);
            if field == BOLTS {
                take_out_bolt(lists, reading);
            }
        }
    }
    drop_empty_ends(lists);
}

/// Says that a pull that was asked about is right, as it reads now: typed otherwise it is asked about again.
pub fn confirm_pull(lists: &mut Lists, reading: usize) {
    let Some(pull) = lists.get(PULLS).and_then(|pulls| pulls.get(reading)) else { return };
    let says = confirmation(reading, pull);
    let confirmed = lists.entry(CONFIRMED.to_owned()).or_default();
    if !confirmed.contains(&says) {
        confirmed.push(says);
    }
}

/// A pull that is right, as it is kept: `3: 84`.
pub(super) fn confirmation(reading: usize, pull: &str) -> String {
    format!("{}: {}", reading + 1, pull.trim())
}

/// One diameter for all bolts is no bolt's own.
fn take_out_bolt(lists: &mut Lists, bolt: usize) {
    for (name, list) in lists.iter_mut() {
        let is_for_all = name == ONCE_FOR_ALL && list.len() == 1;
        if BY_BOLT.contains(&name.as_str()) && !is_for_all && bolt < list.len() {
            list.remove(bolt);
        }
    }
}

fn drop_empty_ends(lists: &mut Lists) {
    for list in lists.values_mut() {
        while list.last().is_some_and(|text| text.trim().is_empty()) {
            list.pop();
        }
    }
    lists.retain(|_, list| !list.is_empty());
}

#[cfg(test)]
mod tests {
    use super::{Lists, confirm_pull, write_reading};

    fn lists(of: &[(&str, &[&str])]) -> Lists {
        let list = |texts: &[&str]| texts.iter().map(|text| (*text).to_owned()).collect();
        of.iter().map(|(name, texts)| ((*name).to_owned(), list(texts))).collect()
    }

    fn written(of: &[(&str, &[&str])], field: &str, reading: usize, text: &str) -> Lists {
        let mut lists = lists(of);
        write_reading(&mut lists, field, reading, Some(text.to_owned()));
        lists
    }

    #[test]
    fn readings_are_added_and_changed() {
        assert_eq!(written(&[], "pulls", 0, "16"), lists(&[("pulls", &["16"])]));
        assert_eq!(written(&[("pulls", &["16"])], "pulls", 7, "33"), lists(&[("pulls", &["16", "33"])]));
        assert_eq!(written(&[("pulls", &["16", "33"])], "pulls", 0, "15"), lists(&[("pulls", &["15", "33"])]));
        assert_eq!(written(&[("pulls", &["16", "33"])], "pulls", 0, " "), lists(&[("pulls", &["33"])]));
        assert_eq!(written(&[("pulls", &["16"])], "pulls", 0, ""), lists(&[]));
        assert_eq!(written(&[("pulls", &["16"])], "pulls", 3, ""), lists(&[("pulls", &["16"])]));
    }

    #[test]
    fn a_reading_for_a_bolt_stays_that_bolts() {
        let third = written(&[("nuts", &["tight"])], "nuts", 2, "loose");
        assert_eq!(third, lists(&[("nuts", &["tight", "", "loose"])]));
        let out = written(&[("nuts", &["tight", "loose", "tight"])], "nuts", 1, "");
        assert_eq!(out, lists(&[("nuts", &["tight", "", "tight"])]));
        let before =
            [("bolts", &["6", "48", "90"][..]), ("nuts", &["tight", "missing", "tight"]), ("diameters", &["1/2"])];
        let gone = written(&before, "bolts", 1, "");
        assert_eq!(gone, lists(&[("bolts", &["6", "90"]), ("nuts", &["tight", "tight"]), ("diameters", &["1/2"])]));
    }

    #[test]
    fn a_pull_is_confirmed_as_it_reads() {
        let mut pulls = lists(&[("pulls", &["16", " 17 "])]);
        confirm_pull(&mut pulls, 1);
        confirm_pull(&mut pulls, 1);
        confirm_pull(&mut pulls, 9);
        assert_eq!(pulls.get("confirmed"), lists(&[("confirmed", &["2: 17"])]).get("confirmed"));
    }
}
