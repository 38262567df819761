//! Chapter 27, Part 1: the wind on the main frame by the directional procedure.

use measure::{Angle, Area, AreaLoad, Length, Ratio};

use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Fig. 27.3-1: external pressure coefficients of walls and roofs.
pub const COEFFICIENTS: Source = Source::new(DOCUMENT, "Fig. 27.3-1", Status::LookedUp);
/// Eq. 27.3-1: design pressure.
pub const DESIGN_PRESSURE: Source = Source::new(DOCUMENT, "Eq. 27.3-1", Status::LookedUp);
/// Clause 26.11.1: gust-effect factor of a rigid building.
pub const GUST: Source = Source::new(DOCUMENT, "26.11.1", Status::LookedUp);
/// Load cases of the main frame. Their factors, and that Fig. 28.3-1 lets light frames to two storeys off the cases that
/// twist, were read in a code that was built on this standard; that Appendix D does so for Fig. 27.3-8 is from memory.
pub const LOAD_CASES: Source =
    Source::new(DOCUMENT, "Figs. 27.3-8 and 28.3-1, Appendix D, load cases", Status::PartlyLookedUp);
/// Clause 27.1.5: least loads.
pub const LEAST: Source = Source::new(DOCUMENT, "27.1.5", Status::FromMemory);
/// Clause 27.3.3: the underside of a windward overhang.
pub const OVERHANG: Source = Source::new(DOCUMENT, "27.3.3", Status::FromMemory);

/// Gust-effect factor `G` of a rigid building; low-rise buildings count as rigid.
pub const GUST_EFFECT_FACTOR: Ratio = 0.85;
/// Least load on walls, on their projection upright to the wind.
pub const LEAST_ON_WALLS: AreaLoad = AreaLoad::from_psf(16.0);
/// Least load on roofs, on their projection upright to the wind.
pub const LEAST_ON_ROOFS: AreaLoad = AreaLoad::from_psf(8.0);
/// Coefficient of the windward wall, and of the underside of a windward overhang; with the pressure at its own height.
pub const WINDWARD_WALL: Ratio = 0.8;
/// Coefficient of the side walls.
pub const SIDE_WALL: Ratio = -0.7;

/// Coefficient of the leeward wall by the plan's length along the wind over its breadth across it.
#[must_use]
pub fn leeward_wall(length_to_breadth: Ratio) -> Ratio {
    straight(&[(1.0, -0.5), (2.0, -0.3), (4.0, -0.2)], length_to_breadth)
}

/// Both coefficients of a windward slope: the roof is worked with each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindwardRoof {
    /// The first line of the figure: suction, or nothing on steep roofs.
    pub suction: Ratio,
    /// The second line: the least suction, or a push.
    pub push: Ratio,
}

/// Angles of the figure's columns, degrees.
const ANGLES: [f64; 7] = [10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 45.0];
/// Heights over length along the wind, of the figure's rows.
const ROWS: [f64; 3] = [0.25, 0.5, 1.0];
/// Where the figure prints none, 0.0, from which it is worked between values of one sign.
const SUCTION: [[f64; 7]; 3] = [
    [-0.7, -0.5, -0.3, -0.2, -0.2, 0.0, 0.0],
    [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0.0],
    [-1.3, -1.0, -0.7, -0.5, -0.3, -0.2, 0.0],
];
const PUSH: [[f64; 7]; 3] = [
    [-0.18, 0.0, 0.2, 0.3, 0.3, 0.4, 0.4],
    [-0.18, -0.18, 0.0, 0.2, 0.2, 0.3, 0.4],
    [-0.18, -0.18, -0.18, 0.0, 0.2, 0.2, 0.3],
];
const LEEWARD: [[f64; 3]; 3] = [[-0.3, -0.5, -0.6], [-0.5, -0.5, -0.6], [-0.7, -0.6, -0.6]];

/// Steepest roof whose coefficients are here.
const STEEPEST: f64 = 60.0;

/// Coefficients of a windward slope with the wind square to the ridge, for slopes of 10 degrees and more.
///
/// # Errors
/// Under 10 degrees, where [`along_the_ridge`] holds for any wind, and over 60.
pub fn windward_roof(angle: Angle, height_to_length: Ratio) -> Result<WindwardRoof, OutsideTable> {
    let degrees = in_range(angle)?;
    // From 45 to 60 degrees the second line goes straight to 0.01 times the angle.
    let steep = |at_45: f64| at_45 + (0.01 * STEEPEST - at_45) * (degrees - 45.0) / (STEEPEST - 45.0);
    let push = |row: usize| if degrees > 45.0 { steep(PUSH[row][6]) } else { in_row(&PUSH[row], degrees) };
    Ok(WindwardRoof {
        suction: between_rows(|row| in_row(&SUCTION[row], degrees), height_to_length),
        push: between_rows(push, height_to_length),
    })
}

/// Coefficient of a leeward slope with the wind square to the ridge.
///
/// # Errors
/// Under 10 degrees and over 60.
pub fn leeward_roof(angle: Angle, height_to_length: Ratio) -> Result<Ratio, OutsideTable> {
    let degrees = in_range(angle)?;
    let row =
        |row: usize| straight(&[(10.0, LEEWARD[row][0]), (15.0, LEEWARD[row][1]), (20.0, LEEWARD[row][2])], degrees);
    Ok(between_rows(row, height_to_length))
}

fn in_range(angle: Angle) -> Result<f64, OutsideTable> {
    let degrees = angle.degrees();
    if (10.0..=STEEPEST).contains(&degrees) {
        return Ok(degrees);
    }
    Err(OutsideTable {
        source: COEFFICIENTS,
        given: format!("a roof of {degrees:.1} degrees with the wind square to its ridge"),
        covers: "roofs of 10 to 60 degrees there",
        next_step: "Below 10 degrees the values for wind along the ridge hold; above 60 an engineer works it.",
    })
}

/// Between two angles only values of one sign are joined; where there is none of the same sign, 0.0 stands in.
fn in_row(row: &[f64; 7], degrees: f64) -> f64 {
    let points: [(f64, f64); 7] = core::array::from_fn(|column| (ANGLES[column], row[column]));
    let to = ANGLES.iter().position(|angle| degrees <= *angle).unwrap_or(6).max(1);
    let ((from, start), (end_angle, end)) = (points[to - 1], points[to]);
    let share = ((degrees - from) / (end_angle - from)).clamp(0.0, 1.0);
    one_sign(start, end, share)
}

/// Straight between two values of one sign. Across a change of sign each goes to nothing by itself, and the nearer one
/// counts.
fn one_sign(start: f64, end: f64, share: f64) -> f64 {
    if start * end >= 0.0 {
        return start + (end - start) * share;
    }
    if share < 0.5 { start * (1.0 - share) } else { end * share }
}

fn between_rows(row: impl Fn(usize) -> f64, height_to_length: Ratio) -> Ratio {
    if height_to_length <= ROWS[0] {
        return row(0);
    }
    if height_to_length >= ROWS[2] {
        return row(2);
    }
    let upper = if height_to_length <= ROWS[1] { 1 } else { 2 };
    let share = (height_to_length - ROWS[upper - 1]) / (ROWS[upper] - ROWS[upper - 1]);
    one_sign(row(upper - 1), row(upper), share)
}

/// Straight between points, level beyond them.
fn straight(points: &[(f64, f64)], at: f64) -> f64 {
    for pair in points.windows(2) {
        let ((from, start), (to, end)) = (pair[0], pair[1]);
        if at <= from {
            return start;
        }
        if at < to {
            return start + (end - start) * (at - from) / (to - from);
        }
    }
    points.last().map_or(0.0, |&(_, last)| last)
}

/// A strip of roof across the wind: from so many heights behind the windward edge, with its coefficient.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofStrip {
    /// Where it begins, in mean roof heights from the windward edge.
    pub from_heights: Ratio,
    /// Where it ends; none for the rest of the roof.
    pub to_heights: Option<Ratio>,
    /// Its coefficient.
    pub coefficient: Ratio,
}

/// The second coefficient that every strip is worked with.
pub const STRIP_LEAST: Ratio = -0.18;

/// Strips of a roof with the wind along its ridge, and of a roof under 10 degrees with any wind. `area` is that of the
/// first strip, by which its -1.3 may be made smaller.
#[must_use]
pub fn along_the_ridge(height_to_length: Ratio, area: Area) -> [RoofStrip; 4] {
    let reduced = -1.3 * straight(&[(100.0, 1.0), (250.0, 0.9), (1000.0, 0.8)], area.square_feet());
    let between = |low: f64, high: f64| straight(&[(0.5, low), (1.0, high)], height_to_length);
    let strip =
        |from_heights, to_heights, low, high| RoofStrip { from_heights, to_heights, coefficient: between(low, high) };
    [
        strip(0.0, Some(0.5), -0.9, reduced.min(-0.9)),
        strip(0.5, Some(1.0), -0.9, -0.7),
        strip(1.0, Some(2.0), -0.5, -0.7),
        strip(2.0, None, -0.3, -0.7),
    ]
}

/// Design pressure `p = q G C_p - q_i (GC_pi)`, positive toward the surface.
#[must_use]
pub fn design_pressure(q: AreaLoad, c_p: Ratio, q_i: AreaLoad, gc_pi: Ratio) -> AreaLoad {
    q * (GUST_EFFECT_FACTOR * c_p) - q_i * gc_pi
}

/// Height strips of a windward wall: the pressure grows with height, and is the same to 15 ft.
#[must_use]
pub fn windward_steps(top: Length) -> Vec<Length> {
    let mut steps: Vec<Length> =
        [15.0, 20.0, 25.0, 30.0, 40.0, 50.0].into_iter().map(Length::from_feet).filter(|step| *step < top).collect();
    steps.push(top);
    steps
}

#[cfg(test)]
mod tests {
    use super::*;

    fn angle(degrees: f64) -> Angle {
        Angle::from_degrees(degrees)
    }

    /// Source: ASCE 7-10 Fig. 27.4-1 page text (the same in 7-16 Fig. 27.3-1): every printed cell. Cells printed for
    /// interpolation only are 0.0 here.
    #[test]
    fn every_cell_of_the_roof_figure() {
        for (row, height_to_length) in ROWS.into_iter().enumerate() {
            for (column, degrees) in ANGLES.into_iter().enumerate() {
                let found = windward_roof(angle(degrees), height_to_length).unwrap();
                assert!((found.suction - SUCTION[row][column]).abs() < 1e-12, "{height_to_length} {degrees}");
                assert!((found.push - PUSH[row][column]).abs() < 1e-12, "{height_to_length} {degrees}");
            }
            for (column, degrees) in [10.0, 15.0, 20.0].into_iter().enumerate() {
                let found = leeward_roof(angle(degrees), height_to_length).unwrap();
                assert!((found - LEEWARD[row][column]).abs() < 1e-12);
            }
        }
        assert!((windward_roof(angle(60.0), 0.3).unwrap().push - 0.6).abs() < 1e-12);
    }

    /// Source: ASCE 7-10 Fig. 27.4-1 page text: walls, and roofs with wind along the ridge.
    #[test]
    fn walls_and_strips() {
        for (ratio, printed) in [(0.0, -0.5), (1.0, -0.5), (2.0, -0.3), (4.0, -0.2), (9.0, -0.2), (1.5, -0.4)] {
            assert!((leeward_wall(ratio) - printed).abs() < 1e-12, "{ratio}");
        }
        let strips = |ratio| along_the_ridge(ratio, Area::from_square_feet(100.0)).map(|strip| strip.coefficient);
        assert_eq!(strips(0.4), [-0.9, -0.9, -0.5, -0.3]);
        assert_eq!(strips(1.0), [-1.3, -0.7, -0.7, -0.7]);
        let large = along_the_ridge(1.0, Area::from_square_feet(1000.0))[0].coefficient;
        assert!((large + 1.04).abs() < 1e-12);
    }

    /// Source: the interpolation rule of the figure worked by hand at 26.565 degrees, h/L 0.4821: -0.2638 and 0.2071.
    #[test]
    fn between_the_cells() {
        let found = windward_roof(angle(26.565), 0.4821).unwrap();
        assert!((found.suction + 0.2638).abs() < 5e-4 && (found.push - 0.2071).abs() < 5e-4, "{found:?}");
        assert!((leeward_roof(angle(26.565), 0.4821).unwrap() + 0.6).abs() < 1e-12);
    }

    #[test]
    fn values_of_unlike_sign_are_not_joined() {
        // h/L 0.25: -0.18 at 10 degrees and 0.0 at 15, then 0.2 at 20: nothing between -0.18 and 0.2 is skipped.
        assert!((windward_roof(angle(12.5), 0.25).unwrap().push + 0.09).abs() < 1e-12);
        assert!((windward_roof(angle(17.5), 0.25).unwrap().push - 0.1).abs() < 1e-12);
        // Between rows of unlike sign at 20 degrees: 0.0 at 0.5 and -0.18 at 1.0.
        assert!((windward_roof(angle(20.0), 0.75).unwrap().push + 0.09).abs() < 1e-12);
    }

    #[test]
    fn roofs_outside_the_figure_are_refused() {
        for degrees in [0.0, 9.9, 60.1] {
            assert!(windward_roof(angle(degrees), 0.5).is_err() && leeward_roof(angle(degrees), 0.5).is_err());
        }
    }
}
