//! The outline of a house: published and worked sizes, closed surfaces, what is refused.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

mod common;
mod houses;
mod sizes;
mod surfaces;
