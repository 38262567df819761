//! Nails by NDS 2018 chapter 12 and its appendices, against printed values and published worked examples.
//!
//! Tables that are called computed were worked from the same equations by other means and kept to one decimal; where a
//! printed cell is known it is compared as well, within half of its last digit.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

mod common;
mod joints;
mod strengths;
mod withdrawal;
