//! The check that the crates depend on each other in one direction only, as the code map in `DEVELOPERS.md` says.
//!
//! The map is the only place where this is written: a crate without an entry, an entry without its *Invariant* line
//! and an entry without its crate all fail.

use crate::outcome::{Failure, Outcome};
use crate::place::Place;
use crate::tool::Tool;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// The crates that may see a browser, a clock or a disk; all others are pure.
const OUTER: [&str; 4] = ["web", "xtask", "tests", "in-browser"];
/// What a pure crate must not reach, not even through another crate.
const IMPURE: [&str; 10] =
    ["wasm-bindgen", "js-sys", "web-sys", "chrono", "time", "rand", "getrandom", "tokio", "leptos", "idb"];

/// Fails when a crate uses more than the map allows.
pub fn check(place: &Place) -> Outcome {
    let map = read_map(&place.text("DEVELOPERS.md")?)?;
    let printed = Tool::new(place, "cargo")
        .args(["metadata", "--format-version", "1", "--locked", "--filter-platform", "wasm32-unknown-unknown"])
        .output()?;
    let metadata: Value =
        serde_json::from_str(&printed).map_err(|e| Failure::new(format!("cargo metadata cannot be read: {e}")))?;
    let uses = own_uses(&metadata);
    let mut problems = differences(&map, &uses);
    problems.extend(impurities(&metadata, uses.keys().map(String::as_str)));
    Failure::unless_empty("the crates differ from the code map in DEVELOPERS.md", &problems)
}

/// What a crate may use of the project's own.
#[derive(Debug, PartialEq, Eq)]
enum Allowed {
    Everything,
    These(BTreeSet<String>),
}

/// The entries of the code map by crate name.
fn read_map(text: &str) -> Outcome<BTreeMap<String, Allowed>> {
    let mut map = BTreeMap::new();
    for entry in text.split("\n### `").skip(1) {
        let entry = entry.split("\n## ").next().unwrap_or_default();
        let path = entry.split('`').next().unwrap_or_default();
        let name = path.rsplit('/').next().unwrap_or_default().to_owned();
        if !entry.contains("\n*Invariant*: ") {
            return Err(Failure::new(format!(
                "DEVELOPERS.md: the entry of {path} has no line that begins *Invariant*:"
            )));
        }
        let line = entry.lines().find_map(|line| line.strip_prefix("*May use*: "));
        let line = line.ok_or_else(|| Failure::new(format!("DEVELOPERS.md: {path} has no line *May use*:")))?;
        map.insert(name, allowed(line.trim_end_matches('.')));
    }
    Ok(map)
}

fn allowed(line: &str) -> Allowed {
    match line {
        "everything" => Allowed::Everything,
        "nothing of ours" => Allowed::These(BTreeSet::new()),
        names => Allowed::These(names.split(", ").map(|name| name.trim_matches('`').to_owned()).collect()),
    }
}

/// For each crate of the project, which others of the project it names, for code, build and tests alike.
fn own_uses(metadata: &Value) -> BTreeMap<String, BTreeSet<String>> {
    let list = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let packages: Vec<Value> = list(&metadata["packages"]).into_iter().filter(|p| p["source"].is_null()).collect();
    packages
        .iter()
        .map(|package| {
            let ours = list(&package["dependencies"]).into_iter().filter(|d| d["path"].is_string());
            (text(&package["name"]), ours.map(|dependency| text(&dependency["name"])).collect())
        })
        .collect()
}

fn differences(map: &BTreeMap<String, Allowed>, uses: &BTreeMap<String, BTreeSet<String>>) -> Vec<String> {
    let mut problems = Vec::new();
    for (name, used) in uses {
        match map.get(name) {
            None => problems.push(format!("{name} has no entry; add one")),
            Some(Allowed::Everything) => {}
            Some(Allowed::These(allowed)) => {
                let extra = used.difference(allowed).map(|other| format!("{name} may not use {other}"));
                problems.extend(extra);
            }
        }
    }
    let gone = map.keys().filter(|name| !uses.contains_key(*name));
    problems.extend(gone.map(|name| format!("{name} has an entry but is no crate of this project")));
    problems
}

/// Every way from a pure crate to something that has a clock, chance or a browser.
fn impurities<'n>(metadata: &Value, own: impl Iterator<Item = &'n str>) -> Vec<String> {
    let graph = normal_graph(metadata);
    let mut problems = Vec::new();
    for name in own.filter(|name| !OUTER.contains(name)) {
        let (mut seen, mut waiting) = (BTreeSet::new(), vec![name]);
        while let Some(next) = waiting.pop() {
            if seen.insert(next) {
                waiting.extend(graph.get(next).into_iter().flatten().map(String::as_str));
            }
        }
        problems.extend(IMPURE.iter().filter(|bad| seen.contains(*bad)).map(|bad| format!("{name} reaches {bad}")));
    }
    problems
}

/// Which package uses which at run time, by name.
fn normal_graph(metadata: &Value) -> BTreeMap<String, Vec<String>> {
    let list = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let names: BTreeMap<String, String> =
        list(&metadata["packages"]).iter().map(|p| (text(&p["id"]), text(&p["name"]))).collect();
    let name_of = |id: &Value| names.get(&text(id)).cloned().unwrap_or_default();
    let is_normal = |dependency: &Value| list(&dependency["dep_kinds"]).iter().any(|kind| kind["kind"].is_null());
    list(&metadata["resolve"]["nodes"])
        .iter()
        .map(|node| {
            let used = list(&node["deps"]).into_iter().filter(is_normal).map(|d| name_of(&d["pkg"])).collect();
            (name_of(&node["id"]), used)
        })
        .collect()
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

#[cfg(test)]
#[path = "layers_tests.rs"]
mod tests;
