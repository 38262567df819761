//! The code map against made-up crates.

use super::*;
use serde_json::json;

const MAP: &str = "# Map\n\n### `crates/measure`\nLengths.\n*May use*: nothing of ours.\n*Invariant*: no loads.\n\n\
                   ### `crates/loads`\n*May use*: `measure`.\n*Invariant*: no members.\n\n\
                   ### `tests`\n*May use*: everything.\n*Invariant*: only tests.\n\n## Next part\n*May use*: nonsense\n";

fn uses(list: &[(&str, &[&str])]) -> BTreeMap<String, BTreeSet<String>> {
    list.iter().map(|(name, used)| ((*name).to_owned(), used.iter().map(|u| (*u).to_owned()).collect())).collect()
}

#[test]
fn crates_that_follow_the_map_pass() {
    let map = read_map(MAP).unwrap();
    let followed = uses(&[("measure", &[]), ("loads", &["measure"]), ("tests", &["loads", "measure"])]);
    assert_eq!(differences(&map, &followed), Vec::<String>::new());
}

#[test]
fn each_way_of_leaving_the_map_is_named() {
    let map = read_map(MAP).unwrap();
    let left = uses(&[("measure", &["loads"]), ("loads", &[]), ("roof", &[])]);
    let expected = [
        "measure may not use loads",
        "roof has no entry; add one",
        "tests has an entry but is no crate of this project",
    ];
    assert_eq!(differences(&map, &left), expected);
}

#[test]
fn an_entry_without_its_invariant_fails() {
    let without = MAP.replace("*Invariant*: no loads.\n", "");
    assert!(read_map(&without).unwrap_err().to_string().contains("crates/measure"));
}

#[test]
fn a_pure_crate_may_not_reach_a_clock_through_another() {
    let dependency = |name: &str, kind: Value| json!({ "pkg": name, "dep_kinds": [{ "kind": kind }] });
    let packages = ["members", "helper", "chrono", "web", "rand"].map(|name| json!({ "id": name, "name": name }));
    let metadata = json!({
        "packages": packages,
        "resolve": { "nodes": [
            { "id": "members", "deps": [dependency("helper", Value::Null), dependency("rand", json!("dev"))] },
            { "id": "helper", "deps": [dependency("chrono", Value::Null)] },
            { "id": "chrono", "deps": [] },
            { "id": "rand", "deps": [] },
            { "id": "web", "deps": [dependency("chrono", Value::Null)] },
        ] },
    });
    assert_eq!(impurities(&metadata, ["members", "web"].into_iter()), ["members reaches chrono"]);
}
