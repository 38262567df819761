//! What goes over the air at the first visit, beside its budget; and the other pages, which the worker fetches after the
//! first answer.

use crate::compress;
use crate::outcome::{Failure, Outcome};
use crate::pages::PAGES;
use crate::place;
use crate::precache;
use std::path::Path;

/// The most that each may be, in bytes.
const MODULE_RAW: usize = 900_000;
const MODULE_BROTLI: usize = 276_000;
const FIRST_VISIT_BROTLI: usize = 300_000;

struct Line {
    what: String,
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
    let (mut module_raw, mut module_small, mut first_small, mut others) = (0, 0, 0, [0; PAGES.len()]);
    for file in precache::kept_files(folder)? {
        let name = match file.address.strip_suffix('/') {
            Some(page) => format!("{page}/index.html"),
            None => file.address,
        };
        let content = place::bytes(&folder.join(&name))?;
        let small = if compress::is_worth_it(&name) { compress::brotli(&content)?.len() } else { content.len() };
        if let Some(page) = PAGES.iter().position(|page| page.owns(&name)) {
            others[page] += small;
            continue;
        }
        first_small += small;
        if name.ends_with(".wasm") {
            module_raw += content.len();
            module_small += small;
        }
    }
    let line = |what: &str, bytes, budget| Line { what: what.to_owned(), bytes, budget };
    let first = [
        line("module", module_raw, MODULE_RAW),
        line("module, brotli", module_small, MODULE_BROTLI),
        line("whole first visit, brotli", first_small, FIRST_VISIT_BROTLI),
    ];
    let others = PAGES.iter().zip(others);
    let others = others.map(|(page, bytes)| line(&format!("page {}, brotli", page.name), bytes, page.budget));
    Ok(first.into_iter().chain(others).collect())
}
