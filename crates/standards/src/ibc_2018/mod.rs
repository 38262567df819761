//! International Building Code, 2018 edition: wind, and spans of rafters.
//!
//! What is here: the wind-borne debris region of its definitions (202), where prescriptive wood construction stops on a
//! hill (1609.1.1.1), protection of glazing (1609.2), and the nominal wind speed (1609.3.1). All was read in a federal
//! agency's compilation of this code's wind provisions. And a table of rafter spans (2308.7.2).
//!
//! Deliberately absent: surface roughness and exposure (1609.4), which say what ASCE 7 says.

pub mod section_1609_1;
pub mod section_1609_2;
pub mod section_1609_3;
pub mod section_202;
pub mod table_2308_7_2;

const DOCUMENT: &str = "IBC 2018";
