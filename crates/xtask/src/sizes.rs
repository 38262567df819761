//! What goes over the air at the first visit, beside its budget; and the second page, which the worker fetches after the
//! first answer.

use crate::compress;
use crate::outcome::{Failure, Outcome};
use crate::place;
use crate::precache;
use crate::second_page;
use std::path::Path;

/// The most that each may be, in bytes.
const MODULE_RAW: usize = 900_000;
const MODULE_BROTLI: usize = 276_000;
const FIRST_VISIT_BROTLI: usize = 300_000;
const INSPECTION_BROTLI: usize = 500_000;

struct Line {
    what: &'static str,
    bytes: usize,
    budget: usize,
}

/// Prints the sizes of the built app in `folder`, and fails when one is over its budget.
pub fn check(folder: &Path) -> Outcome {
    let lines = measure(folder)?;
    for Line { what, bytes, budget } in &lines {
        println!("   {what:<28} {:>7.1} kB of {:>6.1} kB", kilo(*bytes), kilo(*budget));
    }
    let over: Vec<String> = lines
        .iter()
        .filter(|line| line.bytes > line.budget)
        .map(|line| format!("{}: {:.1} kB, at most {:.1} kB", line.what, kilo(line.bytes), kilo(line.budget)))
        .collect();
    Failure::unless_empty("over the size budget", &over)
}

fn kilo(bytes: usize) -> f64 {
    bytes as f64 / 1000.0
}

fn measure(folder: &Path) -> Outcome<Vec<Line>> {
    let (mut module_raw, mut module_small, mut first_small, mut inspection_small) = (0, 0, 0, 0);
    for file in precache::kept_files(folder)? {
        let name = match file.address.as_str() {
            "./" => "index.html",
            second_page::ADDRESS => second_page::PAGE,
            name => name,
        };
        let content = place::bytes(&folder.join(name))?;
        let small = if compress::is_worth_it(name) { compress::brotli(&content)?.len() } else { content.len() };
        if second_page::is_its_own(name) {
            inspection_small += small;
            continue;
        }
        first_small += small;
        if name.ends_with(".wasm") {
            module_raw += content.len();
            module_small += small;
        }
    }
    Ok(vec![
        Line { what: "module", bytes: module_raw, budget: MODULE_RAW },
        Line { what: "module, brotli", bytes: module_small, budget: MODULE_BROTLI },
        Line { what: "whole first visit, brotli", bytes: first_small, budget: FIRST_VISIT_BROTLI },
        Line { what: "page of Inspection, brotli", bytes: inspection_small, budget: INSPECTION_BROTLI },
    ])
}
