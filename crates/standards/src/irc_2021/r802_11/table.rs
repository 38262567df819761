//! Table R802.11: its rows, made from `data/irc_2021/` at build time, and how they are read.

use measure::{Force, Length, LineLoad, Slope, Speed};

use super::EACH_WALL_ABOVE;
use super::footnotes::{FOR_EXPOSURE_D, Reduction, TiedRoof};
use crate::irc_2021::{DOCUMENT, r301::ExposureCategory};
use crate::{OutsideTable, Source, Status};

/// One row: uplift of one tie, allowable stress design, at each of [`SPEEDS`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UpliftRow {
    /// Exposure: B or C.
    pub exposure: ExposureCategory,
    /// Spacing of rafters or trusses.
    pub spacing: Length,
    /// Roof span.
    pub span: Length,
    /// For pitches under 5 in 12.
    pub under_5: [Force; 5],
    /// For pitches of 5 in 12 and steeper.
    pub from_5: [Force; 5],
    /// How the row came here.
    pub status: Status,
}

/// Ultimate wind speeds of the columns.
pub const SPEEDS: [Speed; 5] = [
    Speed::from_mph(110.0),
    Speed::from_mph(115.0),
    Speed::from_mph(120.0),
    Speed::from_mph(130.0),
    Speed::from_mph(140.0),
];
/// From this pitch the columns of the steeper roofs hold.
pub const STEEPER_FROM: Slope = Slope::from_rise_in_twelve(5.0);

/// Table R802.11, every row.
pub const TABLE_R802_11: &[UpliftRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r802_11.rs"));

const TABLE: Source = Source::new(DOCUMENT, "Table R802.11", Status::LookedUp);
const A_FOOT: Length = Length::from_feet(1.0);

/// Uplift of one rafter or truss at its wall, allowable stress design; 0.6 of the roof's dead load is counted in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieUplift {
    /// As the table has it, between its spans and speeds by straight lines.
    pub tabulated: Force,
    /// What a footnote takes off.
    pub reduction: Reduction,
    /// What the tie must hold.
    pub uplift: Force,
    /// The table, or its footnote for Exposure D.
    pub source: Source,
}

/// Uplift of a foot of wall, allowable stress design; 0.6 of the roof's dead load is counted in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallUplift {
    /// As the table has it.
    pub tabulated: LineLoad,
    /// What a footnote takes off.
    pub reduction: Reduction,
    /// What the distance to the corners alone takes off.
    place: Reduction,
    /// At the top of the wall.
    pub uplift: LineLoad,
    /// The table, or its footnote for Exposure D.
    pub source: Source,
}

impl WallUplift {
    /// What is left between walls, or between wall and foundation, under so many full walls; none where they hold it.
    ///
    /// Source: Table R802.11, footnote (from memory). A hip roof's reduction is not taken with this one: of the two ways the
    /// lesser holds, since the footnotes allow either.
    #[must_use]
    pub fn below(&self, full_walls: u8) -> LineLoad {
        let lifted = self.tabulated * self.place.factor() - EACH_WALL_ABOVE * f64::from(full_walls);
        self.uplift.min(lifted).max(LineLoad::ZERO)
    }
}

/// What Table R802.11 asks of one tie.
///
/// Straight lines between spans and between wind speeds, as its footnote allows. In Exposure D each column is that of
/// Exposure C at the next higher speed (from memory), with straight lines between those, which is never less than the
/// footnote's column.
///
/// # Errors
/// A roof outside the table's limits, a spacing other than 12, 16 and 24 in, a span outside 12 to 48 ft, or a wind speed
/// outside 110 to 140 mph; in Exposure D over 130 mph.
pub fn tie_uplift(roof: &TiedRoof, spacing: Length) -> Result<TieUplift, OutsideTable> {
    roof.within_limits()?;
    let block = if roof.exposure == ExposureCategory::B { ExposureCategory::B } else { ExposureCategory::C };
    let rows: Vec<&UpliftRow> =
        TABLE_R802_11.iter().filter(|row| row.exposure == block && row.spacing == spacing).collect();
    if rows.is_empty() {
        return Err(OutsideTable {
            source: TABLE,
            given: format!("rafters or trusses at {} in", spacing.inches()),
            covers: "spacings of 12, 16 and 24 in",
            next_step: "Take the next wider spacing of the table, or the uplift of a foot of wall times the spacing.",
        });
    }
    let mut by_span = Vec::with_capacity(rows.len());
    for row in rows {
        by_span.push((row.span.feet(), at_speed(row, roof)?));
    }
    let pounds = between(&by_span, roof.span.feet()).ok_or_else(|| OutsideTable {
        source: TABLE,
        given: format!("a roof span of {} ft", roof.span.feet()),
        covers: "roof spans from 12 to 48 ft",
        next_step: "Take 12 ft for a shorter one; an engineer gives the uplift of a longer one.",
    })?;
    let (tabulated, reduction) = (Force::from_pounds(pounds), roof.reduction());
    let source = if roof.exposure == ExposureCategory::D { FOR_EXPOSURE_D } else { TABLE };
    Ok(TieUplift { tabulated, reduction, uplift: tabulated * reduction.factor(), source })
}

/// What Table R802.11 asks of a foot of wall: its uplift at 12 in (from memory).
///
/// # Errors
/// As [`tie_uplift`].
///
/// ```
/// use measure::{AreaLoad, Length, Slope, Speed};
/// use standards::irc_2021::r301::ExposureCategory;
/// use standards::irc_2021::r802_11::{RoofShape, TiedRoof, wall_uplift};
/// let roof = TiedRoof {
///     exposure: ExposureCategory::C,
///     wind_speed: Speed::from_mph(120.0),
///     span: Length::from_feet(32.0),
///     pitch: Slope::from_rise_in_twelve(4.0),
///     shape: RoofShape::Gable,
///     overhang: Length::from_inches(18.0),
///     mean_roof_height: Length::from_feet(22.0),
///     dead: AreaLoad::from_psf(15.0),
///     from_corner: Length::ZERO,
/// };
/// let found = wall_uplift(&roof)?;
/// assert_eq!((found.uplift.plf(), found.below(1).plf()), (249.0, 189.0));
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn wall_uplift(roof: &TiedRoof) -> Result<WallUplift, OutsideTable> {
    let tie = tie_uplift(roof, A_FOOT)?;
    Ok(WallUplift {
        tabulated: tie.tabulated / A_FOOT,
        reduction: tie.reduction,
        place: roof.reduction_for_place(),
        uplift: tie.uplift / A_FOOT,
        source: tie.source,
    })
}

fn at_speed(row: &UpliftRow, roof: &TiedRoof) -> Result<f64, OutsideTable> {
    let uplifts = if roof.is_steeper() { &row.from_5 } else { &row.under_5 };
    let next = usize::from(roof.exposure == ExposureCategory::D);
    let points: Vec<(f64, f64)> =
        SPEEDS.iter().zip(uplifts.iter().skip(next)).map(|(speed, uplift)| (speed.mph(), uplift.pounds())).collect();
    between(&points, roof.wind_speed.mph()).ok_or_else(|| OutsideTable {
        source: if next == 1 { FOR_EXPOSURE_D } else { TABLE },
        given: format!("{} mph in Exposure {}", roof.wind_speed.mph(), roof.exposure.letter()),
        covers: "wind speeds from 110 to 140 mph, in Exposure D to 130 mph",
        next_step: "Take 110 mph for less; for more the wind needs a design by an engineer or by a standard for strong \
                    wind.",
    })
}

/// On the straight lines through rising points; none outside them.
fn between(points: &[(f64, f64)], at: f64) -> Option<f64> {
    points.windows(2).find_map(|pair| match pair {
        [(from, low), (to, high)] if (*from..=*to).contains(&at) => {
            Some(low + (high - low) * ((at - from) / (to - from)))
        }
        _ => None,
    })
}
