//! Timings and sizes, each beside its budget.

use crate::journeys;
use crate::outcome::Outcome;
use crate::package;
use crate::place::Place;
use crate::setup;
use crate::sizes;
use crate::step::step;
use crate::tool::Tool;

/// The example program that times the checks on this machine, without a browser.
const NATIVE: &str = "crates/framing/examples/timing.rs";

/// Runs all measurements.
pub fn run(place: &Place) -> Outcome {
    setup::everything(place)?;
    step("checks, on this machine", "2 minutes the first time", || native(place))?;
    let site = place.path("target/xtask/bench-site");
    package::write_to(place, "/", &site)?;
    // All numbers are printed before the first one over its budget ends the run.
    let sizes = step("sizes", "20 s", || sizes::check(&site));
    let lab = step("phone, in the lab", "2 minutes", || journeys::lab(place, &site));
    sizes.and(lab)
}

fn native(place: &Place) -> Outcome {
    if !place.path(NATIVE).is_file() {
        println!("   there is nothing to time yet: {NATIVE} is not there");
        return Ok(());
    }
    Tool::new(place, "cargo").args(["run", "--quiet", "--release", "--package", "framing", "--example", "timing"]).run()
}
