//! Timings and sizes, each beside its budget.

use crate::journeys;
use crate::outcome::Outcome;
use crate::package;
use crate::place::Place;
use crate::setup;
use crate::sizes;
use crate::step::step;
use crate::tool::Tool;

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
    Tool::new(place, "cargo")
        .args(["run", "--quiet", "--profile", "native", "--package", "framing", "--example", "timing"])
        .run()
}
