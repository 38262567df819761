//! The core as a module that a journey loads into a browser, built as the app's core is built: its digits are held
//! against the command's, and its speed against the native one's. Nothing of it is shipped.

use std::hint::black_box;

use framing::{HeaderCase, derive_header};
use members::header::check_header;
use wasm_bindgen::prelude::wasm_bindgen;

/// Answers one line of `framing check`.
#[wasm_bindgen]
#[must_use]
pub fn check_line(line: &str) -> String {
    framing::check::check_line(line)
}

/// Checks a header of so many inches over all sizes, so often, as `crates/framing/examples/timing.rs` does. Gives back
/// how many were answered.
#[wasm_bindgen]
#[must_use]
pub fn check_often(opening_inches: u32, times: u32) -> u32 {
    let case = HeaderCase {
        opening_width: Some(format!("{opening_inches}\"")),
        above: Some("cripple_studs".to_owned()),
        ..HeaderCase::default()
    };
    let Some((input, _)) = derive_header(&case, &HeaderCase::default()).answered else { return 0 };
    for _ in 0..times {
        black_box(check_header(black_box(&input)));
    }
    times
}
