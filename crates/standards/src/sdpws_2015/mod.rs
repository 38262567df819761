//! Special Design Provisions for Wind and Seismic, 2015 edition: walls, floors and roofs that are nailed to resist the push
//! of the wind.
//!
//! What is here: the nominal unit shears of Tables 4.3A to 4.3D ([`table_4_3`]); factors on them and the walls that they
//! hold for ([`aspect`], [`framing`], [`unblocked`], [`faces`]); walls with openings ([`perforated`]); how far a wall leans
//! ([`deflection`]); panels that hold the wall down as well ([`uplift`]); the nominal unit shears of floors and roofs,
//! Tables 4.2A to 4.2C ([`table_4_2`]), how slender they may be and how far they bend ([`diaphragm`]).
//!
//! The tables of walls were read in the print of 2008; that 2015 prints the same is from memory. Those of diaphragms are
//! from memory but for some rows. Each item says what was read and what was not.
//!
//! *Invariant*: a nominal unit shear is a type of its own ([`NominalUnitShear`]): it is divided once on its way to a load
//! that it is compared with, and cannot be divided twice.

pub mod aspect;
pub mod deflection;
pub mod diaphragm;
pub mod faces;
pub mod framing;
pub mod perforated;
pub mod table_4_2;
pub mod table_4_3;
pub mod unblocked;
mod unit_shear;
pub mod uplift;

pub use unit_shear::{ALLOWABLE, AllowableUnitShear, ApparentShearStiffness, DIVIDED_BY, NominalUnitShear};

pub(crate) const DOCUMENT: &str = "SDPWS 2015";
