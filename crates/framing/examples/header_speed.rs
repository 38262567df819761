//! How long one header check takes over all sizes, with the working of the judged one. Prints microseconds.
//!
//! Run with `cargo run --release -p framing --example header_speed`; `cargo xtask bench` does, with the budget beside it.

use std::hint::black_box;
use std::time::Instant;

use framing::{HeaderCase, derive_header};
use members::header::check_header;

const RUNS: u32 = 2000;

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
    println!("header_check_us {:.1}", median(&mut checks));
    println!("read_and_check_us {:.1}", median(&mut whole));
}

fn median(times: &mut [f64]) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}
