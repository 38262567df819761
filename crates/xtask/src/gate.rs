//! `cargo xtask test`: every check there is, in the order of what is quickest to fail.

use crate::journeys;
use crate::layers;
use crate::outcome::{Failure, Outcome};
use crate::pins;
use crate::place::{self, Place};
use crate::setup;
use crate::site;
use crate::step::step;
use crate::tool::Tool;
use crate::wording;
use std::time::Instant;

struct Check {
    name: &'static str,
    expected: &'static str,
    run: fn(&Place) -> Outcome,
}

const CHECKS: [Check; 10] = [
    Check { name: "versions", expected: "1 s", run: pins::check },
    Check { name: "layers", expected: "2 s", run: layers::check },
    Check { name: "wording", expected: "1 s", run: wording::check },
    Check { name: "fmt", expected: "3 s", run: fmt },
    Check { name: "clippy", expected: "1 minute the first time", run: clippy },
    Check { name: "clippy-web", expected: "1 minute the first time", run: clippy_web },
    Check { name: "core", expected: "3 minutes the first time", run: core },
    Check { name: "build", expected: "3 minutes the first time", run: site::ensure },
    Check { name: "web", expected: "2 minutes the first time", run: web },
    Check { name: "browser", expected: "2 minutes", run: browser },
];

/// Runs all checks, or those named in `only`; stops at the first that fails.
pub fn run(place: &Place, only: &[String]) -> Outcome {
    let names = CHECKS.map(|check| check.name).join(", ");
    if only.iter().any(|name| name == "list") {
        println!("{names}");
        return Ok(());
    }
    if let Some(unknown) = only.iter().find(|name| !CHECKS.iter().any(|check| check.name == name.as_str())) {
        return Err(Failure::new(format!("there is no step called {unknown}; the steps are {names}")));
    }
    let started = Instant::now();
    setup::everything(place)?;
    let chosen = CHECKS.iter().filter(|check| only.is_empty() || only.iter().any(|name| name == check.name));
    for Check { name, expected, run } in chosen {
        step(name, expected, || run(place)).map_err(|failure| Failure::new(format!("step {name}: {failure}")))?;
    }
    let what = if only.is_empty() { "Every check".to_owned() } else { only.join(", ") };
    println!("\n{what} passed, in {:.0} s.", started.elapsed().as_secs_f32());
    Ok(())
}

fn cargo(place: &Place) -> Tool {
    Tool::new(place, "cargo")
}

fn fmt(place: &Place) -> Outcome {
    cargo(place).args(["fmt", "--all", "--check"]).run()
}

fn clippy(place: &Place) -> Outcome {
    cargo(place).args(["clippy", "--workspace", "--exclude", "web", "--all-targets", "--", "-D", "warnings"]).run()
}

fn clippy_web(place: &Place) -> Outcome {
    let target = ["clippy", "--package", "web", "--target", "wasm32-unknown-unknown", "--all-targets"];
    cargo(place).args(target).args(["--", "-D", "warnings"]).run()
}

fn core(place: &Place) -> Outcome {
    cargo(place).args(["test", "--workspace", "--exclude", "web", "--no-fail-fast", "--quiet"]).run()
}

/// The app's own tests, in the browser.
fn web(place: &Place) -> Outcome {
    let folder = place.path("web/tests");
    let files = if folder.is_dir() { place::files_under(&folder, |_| false)? } else { Vec::new() };
    if !files.iter().any(|file| file.extension().is_some_and(|extension| extension == "rs")) {
        println!("   there are none yet: web/tests holds no Rust file");
        return Ok(());
    }
    cargo(place).args(["test", "--package", "web", "--target", "wasm32-unknown-unknown"]).run()
}

fn browser(place: &Place) -> Outcome {
    site::ensure(place)?;
    journeys::run(place)
}
