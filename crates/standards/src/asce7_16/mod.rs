//! ASCE 7-16, Minimum Design Loads and Associated Criteria for Buildings and Other Structures.
//!
//! What is here: the allowable-stress combinations (Chapter 2), roof live load (4), balanced flat-roof snow (7),
//! velocity pressure (26), exposure (26.7), hills (26.8), enclosure and wind-borne debris (26.12), the main frame by the
//! directional (27) and the envelope procedure (28), and walls and roofs as components and cladding (30). Wind and snow
//! loads are at strength level for wind (`0.6 W` in a combination brings them to allowable stress) and at
//! allowable-stress level for snow, as this edition has them.

pub mod chapter_1;
pub mod chapter_2;
pub mod chapter_26;
pub mod chapter_26_12;
pub mod chapter_26_7;
pub mod chapter_26_8;
pub mod chapter_27;
pub mod chapter_28;
pub mod chapter_30;
pub mod chapter_4;
pub mod chapter_7;
pub mod chapter_7_sloped;

const DOCUMENT: &str = "ASCE 7-16";
