//! How long one header check takes over all sizes, with the working of the judged one. Prints microseconds,
//! the middle of many runs.
//!
//! Run with `cargo run --release -p framing --example timing`; `cargo xtask bench` does, with the budget beside it.

use std::hint::black_box;
use std::time::Instant;

use framing::{HeaderCase, derive_header};
use members::header::check_header;

const RUNS: u32 = 2000;
/// The most that one check may take on this machine.
const BUDGET_US: f64 = 250.0;

fn main() {
    let mut case = HeaderCase { above: Some("cripple_studs".to_owned()), ..HeaderCase::default() };
    let site = HeaderCase::default();
    let mut checks = Vec::new();
    let mut whole = Vec::new();
    for run in 0..RUNS {
        case.opening_width = Some(format!("{}\"", 36 + run % 120));
        let start = Instant::now();
        let outcome = black_box(derive_header(black_box(&case), &site));
        whole.push(start.elapsed().as_secs_f64() * 1e6);
        if let Some((input, _)) = outcome.answered {
            let start = Instant::now();
            black_box(check_header(black_box(&input)));
            checks.push(start.elapsed().as_secs_f64() * 1e6);
        }
    }
    println!("   header check over all sizes   {:>6.1} µs of {BUDGET_US:.0} µs", median(&mut checks));
    println!("   reading the inputs as well    {:>6.1} µs", median(&mut whole));
}

fn median(times: &mut [f64]) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}
