//! ASCE 7-10, the edition before: what of it is still the harsher.

pub mod chapter_30;

const DOCUMENT: &str = "ASCE 7-10";
