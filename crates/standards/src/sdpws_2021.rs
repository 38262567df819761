//! Special Design Provisions for Wind and Seismic, 2021 edition: what it changed for shear walls and diaphragms.
//!
//! One nominal unit shear stands in its tables instead of two, and it is the earlier edition's value for wind; so in wind
//! both come to the same allowable unit shear. What divides it is from memory. The tables themselves, and the clauses that
//! are the same, stand in [`crate::sdpws_2015`].
//!
//! Deliberately absent: its new opening adjustment factor of perforated walls, which could not be read. The smaller of the
//! two older forms stands in for it.

use measure::Ratio;

use crate::sdpws_2015::table_4_2::DiaphragmRow;
use crate::sdpws_2015::table_4_3::{ShearFastener, ShearWallRow};
use crate::sdpws_2015::{AllowableUnitShear, NominalUnitShear};
use crate::{Source, Status};

const DOCUMENT: &str = "SDPWS 2021";

/// 4.1.4: what a nominal unit shear is divided by, 2.0 for wind and 2.8 for earthquakes.
pub const ALLOWABLE: Source = Source::new(DOCUMENT, "4.1.4", Status::FromMemory);
/// For earthquakes, allowable stress design.
pub const DIVIDED_FOR_EARTHQUAKES: Ratio = 2.8;

/// Hold-downs fastened to the inner face of end posts with panels nailed by 10d commons: the unit shear is 8 per cent
/// less. The reduction was read in a magazine's summary; when it counts is from memory.
pub const INNER_HOLD_DOWN: Source = Source::new(DOCUMENT, "Table 4.3A footnote", Status::PartlyLookedUp);
const WITH_INNER_HOLD_DOWN: Ratio = 0.92;

/// The nominal unit shear of a row in this edition.
#[must_use]
pub const fn nominal(row: &ShearWallRow) -> NominalUnitShear {
    row.wind
}

/// The nominal unit shear of a diaphragm's row in this edition (from memory).
#[must_use]
pub const fn nominal_of_diaphragm(row: &DiaphragmRow) -> NominalUnitShear {
    row.wind
}

/// For loads of earthquakes, allowable stress design.
///
/// ```
/// use standards::sdpws_2015::NominalUnitShear;
/// use standards::sdpws_2021::allowable_for_earthquakes;
/// let allowable = allowable_for_earthquakes(NominalUnitShear::from_plf(670.0));
/// assert!((allowable.line_load().plf() - 239.3).abs() < 0.05);
/// ```
#[must_use]
pub fn allowable_for_earthquakes(nominal: NominalUnitShear) -> AllowableUnitShear {
    nominal.times(2.0 / DIVIDED_FOR_EARTHQUAKES).allowable_for_wind()
}

/// Factor for where the hold-downs stand.
#[must_use]
pub fn hold_down_factor(fastener: ShearFastener, on_inner_face: bool) -> Ratio {
    if on_inner_face && fastener == ShearFastener::Common10d { WITH_INNER_HOLD_DOWN } else { 1.0 }
}
