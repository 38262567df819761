//! The browser journeys in `tests/browser`, and the lab numbers taken there.

use crate::outcome::{Failure, Outcome};
use crate::place::{self, Place};
use crate::setup;
use crate::site;
use crate::tool::Tool;
use std::path::{Path, PathBuf};

/// Where a second build is hosted to prove that the app works below the root of a site.
const SUB_PATH: &str = "/field/";

/// Where the core alone is built to, for the browser.
const CORE_MODULE: &str = "target/xtask/core-module";

/// Runs every journey against `dist/`.
pub fn run(place: &Place) -> Outcome {
    core_module(place)?;
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
    core_module(place)?;
    node(place, folder)?.args(["tests/browser/bench.mjs"]).run()
}

/// Builds `tests/in_browser`, the core alone, which the app does not ship.
fn core_module(place: &Place) -> Outcome {
    let target = ["build", "--quiet", "--release", "--package", "in-browser", "--target", "wasm32-unknown-unknown"];
    Tool::new(place, "cargo").args(target).run()?;
    let built = place.path("target/wasm32-unknown-unknown/release/in_browser.wasm");
    Tool::new(place, "wasm-bindgen")
        .args(["--target", "web", "--no-typescript", "--out-dir"])
        .args([place.path(CORE_MODULE), built])
        .run()?;
    // A page to load it into, with no icon to ask for.
    place::write(
        &place.path(CORE_MODULE).join("index.html"),
        "<!doctype html><title>Core</title><link rel=icon href=data:,>",
    )
}

fn node(place: &Place, folder: &Path) -> Outcome<Tool> {
    let chromium =
        setup::chromium(place).ok_or_else(|| Failure::new("no Chromium was found to run the journeys in"))?;
    let core = place.path(CORE_MODULE);
    Ok(Tool::new(place, "node").env("CHROMIUM", chromium).env("SITE_DIR", folder).env("CORE_MODULE_DIR", core))
}

fn journeys(place: &Place) -> Outcome<Vec<PathBuf>> {
    let all = place::files_under(&place.path("tests/browser"), |_| false)?;
    let found: Vec<PathBuf> = all.into_iter().filter(|path| path.to_string_lossy().ends_with(".test.mjs")).collect();
    if found.is_empty() { Err(Failure::new("tests/browser holds no journeys (*.test.mjs)")) } else { Ok(found) }
}
