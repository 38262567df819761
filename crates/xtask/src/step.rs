//! A named piece of work that says how long it may take and how long it took.

use crate::outcome::Outcome;
use std::io::Write as _;
use std::time::Instant;

/// Runs `work` under a heading. `expected` is how long it may take, in words.
pub fn step(name: &str, expected: &str, work: impl FnOnce() -> Outcome) -> Outcome {
    println!("\n== {name} (about {expected})");
    flush();
    let started = Instant::now();
    work()?;
    println!("   {name}: done in {:.1} s", started.elapsed().as_secs_f32());
    flush();
    Ok(())
}

/// A child's output follows what was printed before it only if that has left this process.
fn flush() {
    // A closed pipe is no reason to stop the work.
    let _ = std::io::stdout().flush();
}
