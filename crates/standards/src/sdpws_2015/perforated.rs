//! 4.3.5.3: walls with openings that are held down at their two ends alone.

use measure::{Area, Length, Ratio};

use super::{DOCUMENT, NominalUnitShear};
use crate::{Source, Status};

/// Table 4.3.3.5: the opening adjustment factor by the tallest opening. Its formula was read in an engineers' list, and the
/// same numbers in the standard for steel-framed walls.
pub const TABLE_FORM: Source = Source::new(DOCUMENT, "Table 4.3.3.5", Status::LookedUp);
/// Eq. 4.3-5 and 4.3-6: the same by the area of the openings. Read in an engineers' list.
pub const AREA_FORM: Source = Source::new(DOCUMENT, "Eq. 4.3-5", Status::LookedUp);
/// 4.3.5.3: the most nominal unit shear of such a wall in wind.
pub const MOST_IN_WIND: NominalUnitShear = NominalUnitShear::from_plf(2435.0);
/// Where that limit stands.
pub const LIMITS: Source = Source::new(DOCUMENT, "4.3.5.3", Status::FromMemory);
/// The highest that such a wall may be.
pub const HIGHEST: Length = Length::from_feet(20.0);

/// Factor `C_o` by the tallest opening: `1 / (B (1 − 3A) + 3A)`, where `A` is that opening's height over the wall's and
/// `B` the length of full-height sheathing over the whole; never over 1.
///
/// Above or below an opening that is not sheathed there, the opening is as high as the wall.
///
/// ```
/// use standards::sdpws_2015::perforated::by_tallest_opening;
/// assert!((by_tallest_opening(5.0 / 6.0, 0.5) - 0.571).abs() < 0.001);
/// ```
#[must_use]
pub fn by_tallest_opening(tallest: Ratio, full_height: Ratio) -> Ratio {
    (1.0 / (full_height * (1.0 - 3.0 * tallest) + 3.0 * tallest)).min(1.0)
}

/// Factor `C_o` by the area of the openings: `L / (ΣL_i + 3 A_o / h)`, which is Eq. 4.3-5 with `r` put in; never over 1,
/// and never less than [`by_tallest_opening`].
#[must_use]
pub fn by_area(whole: Length, full_height: Length, openings: Area, height: Length) -> Ratio {
    let openings = openings / height;
    (whole / (full_height + openings * 3.0)).min(1.0)
}
