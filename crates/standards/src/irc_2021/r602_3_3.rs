//! Table R602.3(3): wood structural panel sheathing of exterior walls, and its nails, against wind pressure. Made from
//! `data/irc_2021/` at build time.

use measure::{Denominator, Length, Speed};

use super::{DOCUMENT, r301::ExposureCategory};
use crate::{OutsideTable, Source, Status};

/// One row: the least panel and nails, and how far they go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallSheathingRow {
    /// Least thickness of the panel.
    pub panel: Length,
    /// Least span rating.
    pub span_rating: &'static str,
    /// Largest stud spacing.
    pub stud_spacing: Length,
    /// Name of the nail: `8d common`.
    pub nail_size: &'static str,
    /// Its length.
    pub nail_length: Length,
    /// Diameter of its shank.
    pub nail_diameter: Length,
    /// Least penetration into the stud.
    pub penetration: Length,
    /// On center along the edges of the panel.
    pub spacing: Length,
    /// On center at the studs between.
    pub field_spacing: Length,
    /// Largest ultimate wind speed in Exposure B, C and D.
    pub wind_speeds: [Speed; 3],
    /// How the row came here.
    pub status: Status,
}

impl WallSheathingRow {
    /// Largest ultimate wind speed in an exposure.
    #[must_use]
    pub const fn wind_speed(&self, exposure: ExposureCategory) -> Speed {
        let [b, c, d] = self.wind_speeds;
        match exposure {
            ExposureCategory::B => b,
            ExposureCategory::C => c,
            ExposureCategory::D => d,
        }
    }

    /// The table, and how the row came here.
    #[must_use]
    pub const fn source(&self) -> Source {
        Source::new(DOCUMENT, PLACE, self.status)
    }
}

/// Table R602.3(3), every row.
pub const TABLE_R602_3_3: &[WallSheathingRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_3_3.rs"));

const PLACE: &str = "Table R602.3(3)";

/// The least panel and nails of a wall for the stud spacing, the ultimate wind speed and the exposure: the thinnest row
/// that reaches them.
///
/// Source: IRC Table R602.3(3) of 2018 (from memory; that 2021 prints the same is not compared).
///
/// # Errors
/// Studs over 24 in on center, or a wind speed over the last row's.
///
/// ```
/// use measure::{Length, Speed};
/// use standards::irc_2021::{r301::ExposureCategory, r602_3_3::wall_sheathing};
/// let row = wall_sheathing(Length::from_inches(16.0), Speed::from_mph(130.0), ExposureCategory::C)?;
/// assert_eq!((row.nail_size, row.panel.inches()), ("8d common", 7.0 / 16.0));
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn wall_sheathing(
    stud_spacing: Length,
    wind_speed: Speed,
    exposure: ExposureCategory,
) -> Result<&'static WallSheathingRow, OutsideTable> {
    let reaches = |row: &&WallSheathingRow| {
        stud_spacing > Length::ZERO
            && row.stud_spacing >= stud_spacing
            && wind_speed >= Speed::ZERO
            && row.wind_speed(exposure) >= wind_speed
    };
    let thinnest = TABLE_R602_3_3.iter().filter(reaches).min_by(|a, b| a.panel.inches().total_cmp(&b.panel.inches()));
    thinnest.ok_or_else(|| OutsideTable {
        source: Source::new(DOCUMENT, PLACE, Status::FromMemory),
        given: format!(
            "studs {} on center, ultimate wind speed {} mph in Exposure {}",
            stud_spacing.to_inches_fraction(Denominator::Sixteenth),
            wind_speed.mph(),
            exposure.letter()
        ),
        covers: "studs to 16 in to 170, 140 and 135 mph in Exposures B, C and D, and to 24 in to 140, 115 and 110 mph",
        next_step: "Set the studs closer, or have an engineer design the sheathing and its nails.",
    })
}
