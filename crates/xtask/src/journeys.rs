//! The browser journeys in `tests/browser`, and the lab numbers taken there.

use crate::outcome::{Failure, Outcome};
use crate::place::{self, Place};
use crate::setup;
use crate::site;
use crate::tool::Tool;
use std::path::{Path, PathBuf};

/// Where a second build is hosted to prove that the app works below the root of a site.
const SUB_PATH: &str = "/field/";

/// Runs every journey against `dist/`.
pub fn run(place: &Place) -> Outcome {
    let sub_path_build = place.path("target/xtask/sub-path");
    site::trunk(place, SUB_PATH, &sub_path_build)?;
    let journeys = journeys(place)?;
    node(place, &place.dist())?
        .env("SUB_PATH", SUB_PATH)
        .env("SUB_PATH_SITE_DIR", sub_path_build)
        .args(["--test", "--test-reporter=spec", "--test-concurrency=1"])
        .args(journeys)
        .run()
}

/// Prints the lab numbers of the site in `folder`.
pub fn lab(place: &Place, folder: &Path) -> Outcome {
    node(place, folder)?.args(["tests/browser/bench.mjs"]).run()
}

fn node(place: &Place, folder: &Path) -> Outcome<Tool> {
    let chromium =
        setup::chromium(place).ok_or_else(|| Failure::new("no Chromium was found to run the journeys in"))?;
    Ok(Tool::new(place, "node").env("CHROMIUM", chromium).env("SITE_DIR", folder))
}

fn journeys(place: &Place) -> Outcome<Vec<PathBuf>> {
    let all = place::files_under(&place.path("tests/browser"), |_| false)?;
    let found: Vec<PathBuf> = all.into_iter().filter(|path| path.to_string_lossy().ends_with(".test.mjs")).collect();
    if found.is_empty() { Err(Failure::new("tests/browser holds no journeys (*.test.mjs)")) } else { Ok(found) }
}
