//! Figs. 30.3-2A to 30.3-2I: external pressure coefficients of flat, gable and hip roofs.
//!
//! Small-area suctions stand on adopted code text; the limits of the areas, the positive values, the hip roofs of low
//! houses, hips below 45 degrees and most overhangs stand on one copy.

use measure::{Angle, Area, Length, Ratio, math};

use super::Toward;
use crate::asce7_10::chapter_30 as earlier;
use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Figs. 30.3-2A to 30.3-2I.
pub const ROOF_COEFFICIENTS: Source = Source::new(DOCUMENT, "Figs. 30.3-2A to 30.3-2I", Status::LookedUp);
/// The same on gable roofs of 20 to 27 degrees, where two sources exchange two zones.
pub const ROOF_COEFFICIENTS_DISPUTED: Source = Source::new(DOCUMENT, "Fig. 30.3-2C", Status::Disputed);

/// The shape of a roof, as the figures tell them apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofShape {
    /// Two slopes that meet at a ridge; flat roofs too.
    Gable,
    /// Four slopes.
    Hip,
}

/// A part of a roof, as the figures number them. `e` lies along the eave, `n` along the rake, `r` along the ridge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum RoofZone {
    /// 1': the middle of a flat roof.
    OnePrime,
    /// 1: away from edges.
    One,
    /// 2: an edge of a flat roof.
    Two,
    /// 2e: along the eave.
    TwoE,
    /// 2n: along the rake.
    TwoN,
    /// 2r: along the ridge or a hip.
    TwoR,
    /// 3: a corner of a flat or hip roof.
    Three,
    /// 3e: where eave and rake meet.
    ThreeE,
    /// 3r: where ridge and rake meet.
    ThreeR,
}

impl RoofZone {
    /// Its place among the zones.
    #[must_use]
    pub const fn bit(self) -> u16 {
        1 << self as u16
    }

    /// As the figures write it: `2e`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::OnePrime => "1'",
            Self::One => "1",
            Self::Two => "2",
            Self::TwoE => "2e",
            Self::TwoN => "2n",
            Self::TwoR => "2r",
            Self::Three => "3",
            Self::ThreeE => "3e",
            Self::ThreeR => "3r",
        }
    }
}

/// A figure, or the part of one, that a roof belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// To 7 degrees: 30.3-2A.
    Flat,
    /// Gable, over 7 to 20 degrees: 30.3-2B.
    GableTo20,
    /// Gable, over 20 to 27 degrees: 30.3-2C.
    GableTo27,
    /// Gable, over 27 to 45 degrees: 30.3-2D.
    GableTo45,
    /// Hip, over 7 to 20 degrees, height at least 0.8 of the breadth: 30.3-2E and F.
    HipTo20High,
    /// The same, height at most half of the breadth.
    HipTo20Low,
    /// Hip, over 20 to 27 degrees: 30.3-2G.
    HipTo27,
    /// Hip, over 27 to 45 degrees: 30.3-2H and I, which are equations in the angle.
    HipTo45,
    /// Gable and hip roofs over 7 to 27 degrees in the edition of 2010.
    To27,
}

/// One line of a figure: coefficients at a few areas, straight over the logarithm between them and level beyond.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    /// The figure.
    pub figure: Figure,
    /// Whether it is for an overhang, both faces together.
    pub overhang: bool,
    /// The zones that it holds for, by their bits.
    pub zones: u16,
    /// The way the wind acts.
    pub toward: Toward,
    /// Areas in square feet, and the coefficients there.
    pub points: &'static [(f64, f64)],
    /// How the values came here.
    pub status: Status,
}

/// The figures' curves, but for hip roofs over 27 degrees.
pub const CURVES: &[Curve] = include!(concat!(env!("OUT_DIR"), "/asce7_16_fig_30_3_2.rs"));

/// A roof as the figures need it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Roof {
    /// Its shape.
    pub shape: RoofShape,
    /// Its angle with the level.
    pub angle: Angle,
    /// Mean roof height over the least plan dimension; hip roofs of 7 to 20 degrees need it.
    pub height_to_breadth: Ratio,
}

/// Figure 30.3-2A: widths of the zones of a flat roof, as shares of the mean roof height. That they go by 0.2 h and 0.6 h
/// was read in a maker's layout guide and in an article that draws them for three houses; that zone 1 ends at 1.2 h follows from the
/// same article's houses; which leg of the corner is which is from memory.
pub const FLAT_WIDTHS: Source = Source::new(DOCUMENT, "Fig. 30.3-2A, zone widths", Status::PartlyLookedUp);

/// Widths of the zones of a flat roof.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlatZones {
    /// Width of zone 3 along an edge, from the corner as long as `edge`.
    pub corner: Length,
    /// Width of zone 2, and the length of the legs of zone 3.
    pub edge: Length,
    /// From the edge to where zone 1 ends and 1' begins.
    pub inner: Length,
}

/// Widths of the zones of a flat roof: 0.2, 0.6 and 1.2 of the mean roof height.
#[must_use]
pub fn flat_zones(mean_roof_height: Length) -> FlatZones {
    FlatZones { corner: mean_roof_height * 0.2, edge: mean_roof_height * 0.6, inner: mean_roof_height * 1.2 }
}

const FLAT: &[RoofZone] = &[RoofZone::OnePrime, RoofZone::One, RoofZone::Two, RoofZone::Three];
const GABLE: &[RoofZone] =
    &[RoofZone::One, RoofZone::TwoE, RoofZone::TwoN, RoofZone::TwoR, RoofZone::ThreeE, RoofZone::ThreeR];
const HIP: &[RoofZone] = &[RoofZone::One, RoofZone::TwoE, RoofZone::TwoR, RoofZone::Three];

impl Roof {
    /// The zones that its figure has.
    ///
    /// # Errors
    /// Over 45 degrees.
    pub fn zones(&self) -> Result<&'static [RoofZone], OutsideTable> {
        Ok(match self.figure()? {
            Figure::Flat => FLAT,
            Figure::GableTo20 | Figure::GableTo27 | Figure::GableTo45 => GABLE,
            _ => HIP,
        })
    }

    /// Its figure; hip roofs of 7 to 20 degrees are between two, of which this is the one for high houses.
    ///
    /// # Errors
    /// Over 45 degrees.
    pub fn figure(&self) -> Result<Figure, OutsideTable> {
        let degrees = self.angle.degrees();
        match (self.shape, degrees) {
            (_, 0.0..=7.0) => Ok(Figure::Flat),
            (RoofShape::Gable, ..=20.0) => Ok(Figure::GableTo20),
            (RoofShape::Gable, ..=27.0) => Ok(Figure::GableTo27),
            (RoofShape::Gable, ..=45.0) => Ok(Figure::GableTo45),
            (RoofShape::Hip, ..=20.0) => Ok(Figure::HipTo20High),
            (RoofShape::Hip, ..=27.0) => Ok(Figure::HipTo27),
            (RoofShape::Hip, ..=45.0) => Ok(Figure::HipTo45),
            _ => Err(OutsideTable {
                source: ROOF_COEFFICIENTS,
                given: format!("a roof of {degrees:.1} degrees"),
                covers: "roofs to 45 degrees, 12 in 12",
                next_step: "An engineer works the wind on a steeper roof.",
            }),
        }
    }
}

/// A coefficient of a roof, and which edition gave it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofCoefficient {
    /// External pressure coefficient `GC_p`; negative away from the house. On an overhang both faces are in it.
    pub gc_p: Ratio,
    /// The source that it was read from.
    pub source: Source,
}

/// External pressure coefficient of a part of a roof.
///
/// # Errors
/// A roof over 45 degrees, or a zone that its figure does not have.
pub fn roof_pressure_coefficient(
    roof: &Roof,
    zone: RoofZone,
    toward: Toward,
    area: Area,
    overhang: bool,
) -> Result<RoofCoefficient, OutsideTable> {
    let figure = roof.figure()?;
    if !roof.zones()?.contains(&zone) {
        return Err(no_such_zone(zone, roof));
    }
    let missing = || no_such_zone(zone, roof);
    let found = match figure {
        Figure::HipTo20High => between_heights(roof, zone, toward, area, overhang).ok_or_else(missing)?,
        Figure::HipTo45 => hip_to_45(roof.angle, zone, toward, area, overhang).ok_or_else(missing)?,
        figure => read(CURVES, figure, zone, toward, area, overhang).ok_or_else(missing)?,
    };
    let source = if found.1 == Status::Disputed { ROOF_COEFFICIENTS_DISPUTED } else { ROOF_COEFFICIENTS };
    Ok(RoofCoefficient { gc_p: found.0, source })
}

/// The same, or that of the edition of 2010 where it is the harsher: the reduction by area of this edition stands on one
/// copy, and no load is made smaller by it than the edition before had it.
///
/// # Errors
/// As [`roof_pressure_coefficient`].
pub fn cautious_roof_pressure_coefficient(
    roof: &Roof,
    zone: RoofZone,
    toward: Toward,
    area: Area,
    overhang: bool,
) -> Result<RoofCoefficient, OutsideTable> {
    let now = roof_pressure_coefficient(roof, zone, toward, area, overhang)?;
    let before = earlier::roof_pressure_coefficient(roof, zone, toward, area, overhang);
    Ok(match before {
        Some(before) if before.gc_p.abs() > now.gc_p.abs() => before,
        _ => now,
    })
}

fn no_such_zone(zone: RoofZone, roof: &Roof) -> OutsideTable {
    OutsideTable {
        source: ROOF_COEFFICIENTS,
        given: format!("zone {} of a roof of {:.1} degrees", zone.name(), roof.angle.degrees()),
        covers: "the zones that the figure of the roof shows",
        next_step: "Choose a zone of the roof's own figure.",
    }
}

/// Reads a curve at an area.
pub(crate) fn read(
    curves: &[Curve],
    figure: Figure,
    zone: RoofZone,
    toward: Toward,
    area: Area,
    overhang: bool,
) -> Option<(Ratio, Status)> {
    // No figure gives an overhang a push of its own.
    let overhang = overhang && toward == Toward::Outside;
    let fits = |curve: &&Curve| {
        curve.figure == figure && curve.overhang == overhang && curve.toward == toward && curve.zones & zone.bit() != 0
    };
    let curve = curves.iter().find(fits)?;
    Some((along(curve.points, area.square_feet()), curve.status))
}

/// Along a curve: level before its first point and after its last.
pub(crate) fn along(points: &[(f64, f64)], area: f64) -> Ratio {
    let pairs = points.iter().zip(points.iter().skip(1));
    for (&(from, start), &(to, end)) in pairs {
        if area <= from {
            return start;
        }
        if area < to {
            return start + (end - start) * math::log10(area / from) / math::log10(to / from);
        }
    }
    points.last().map_or(0.0, |&(_, last)| last)
}

/// Hip roofs of 7 to 20 degrees: straight between the sets for low and for high houses.
fn between_heights(roof: &Roof, zone: RoofZone, toward: Toward, area: Area, overhang: bool) -> Option<(Ratio, Status)> {
    const LOW: f64 = 0.5;
    const HIGH: f64 = 0.8;
    let (low, status) = read(CURVES, Figure::HipTo20Low, zone, toward, area, overhang)?;
    let (high, _) = read(CURVES, Figure::HipTo20High, zone, toward, area, overhang)?;
    let share = ((roof.height_to_breadth - LOW) / (HIGH - LOW)).clamp(0.0, 1.0);
    Some((low + (high - low) * share, status))
}

/// Figs. 30.3-2H and I, which are equations in the roof's angle. On an overhang every value is 0.8 more.
fn hip_to_45(angle: Angle, zone: RoofZone, toward: Toward, area: Area, overhang: bool) -> Option<(Ratio, Status)> {
    let theta = angle.degrees();
    let square_feet = area.square_feet();
    if toward == Toward::Inside {
        return Some((along(&[(2.0, 0.9), (100.0, 0.3)], square_feet), Status::LookedUp));
    }
    let points = match zone {
        RoofZone::One => [(10.0, -0.6175 - 0.02 * theta), (200.0, -0.095 - 0.0135 * theta)],
        RoofZone::TwoE => [(2.0, 0.2 - 0.067 * theta), (280.0 - 5.0 * theta, -0.8)],
        RoofZone::TwoR => [(5.0, 1.0 - 0.082 * theta), (100.0, -1.0)],
        RoofZone::Three => [(9.0 - 0.135 * theta, 1.25 - 0.108 * theta), (50.0, -1.0)],
        _ => return None,
    };
    let more = if overhang { -0.8 } else { 0.0 };
    Some((along(&points, square_feet) + more, Status::LookedUp))
}
