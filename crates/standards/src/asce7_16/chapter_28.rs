//! Chapter 28: the wind on the main frame of a low building by the envelope procedure.

use measure::{Angle, AreaLoad, Length, Ratio};

use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Fig. 28.3-1: external pressure coefficients.
pub const COEFFICIENTS: Source = Source::new(DOCUMENT, "Fig. 28.3-1", Status::LookedUp);
/// Eq. 28.3-1: design pressure.
pub const DESIGN_PRESSURE: Source = Source::new(DOCUMENT, "Eq. 28.3-1", Status::LookedUp);
/// Fig. 28.3-1, note: the width `a`.
pub const END_WIDTH: Source = Source::new(DOCUMENT, "Fig. 28.3-1, note 9", Status::LookedUp);
/// Clause 28.3.4: least loads.
pub const LEAST: Source = Source::new(DOCUMENT, "28.3.4", Status::FromMemory);
/// Table 26.10-1, footnote: least coefficient in Exposure B.
pub const LEAST_COEFFICIENT: Source = Source::new(DOCUMENT, "Table 26.10-1, footnote", Status::FromMemory);
/// Clause 28.3.3: the underside of a windward overhang.
pub const OVERHANG: Source = Source::new(DOCUMENT, "28.3.3", Status::FromMemory);
/// Clause 26.2: low-rise buildings.
pub const LOW_RISE: Source = Source::new(DOCUMENT, "26.2", Status::FromMemory);

/// In Exposure B and under 30 ft the velocity pressure coefficient is not taken below this, in this chapter alone.
pub const LEAST_K_H_IN_B: Ratio = 0.70;
/// Added to the suction above a windward overhang for the push from below.
pub const OVERHANG_UNDERSIDE: Ratio = 0.7;

/// A surface of the building, as the figure numbers them, away from the end.
///
/// Load case A, wind across the ridge: 1 windward wall, 2 windward roof, 3 leeward roof, 4 leeward wall. Load case B,
/// wind along the ridge: 1 and 4 side walls, 2 and 3 roof halves, 5 windward end wall, 6 leeward end wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// 1.
    One,
    /// 2.
    Two,
    /// 3.
    Three,
    /// 4.
    Four,
    /// 5; load case B alone.
    Five,
    /// 6; load case B alone.
    Six,
}

/// Coefficients of a surface: away from the end, and in the end strip of twice the width `a`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceCoefficients {
    /// Away from the end.
    pub interior: Ratio,
    /// In the end strip, `E`.
    pub end: Ratio,
}

/// Angles of the figure's lines of load case A, and the coefficients of surfaces 1 to 4, interior and end.
const CASE_A: [(f64, [(f64, f64); 4]); 5] = [
    (5.0, [(0.40, 0.61), (-0.69, -1.07), (-0.37, -0.53), (-0.29, -0.43)]),
    (20.0, [(0.53, 0.80), (-0.69, -1.07), (-0.48, -0.69), (-0.43, -0.64)]),
    (30.0, [(0.56, 0.69), (0.21, 0.27), (-0.43, -0.53), (-0.37, -0.48)]),
    (45.0, [(0.56, 0.69), (0.21, 0.27), (-0.43, -0.53), (-0.37, -0.48)]),
    (90.0, [(0.56, 0.69), (0.56, 0.69), (-0.37, -0.48), (-0.37, -0.48)]),
];

const CASE_B: [(f64, f64); 6] =
    [(-0.45, -0.48), (-0.69, -1.07), (-0.37, -0.53), (-0.45, -0.48), (0.40, 0.61), (-0.29, -0.43)];

/// Coefficients of load case A, wind across the ridge: straight between the figure's angles, level to 5 degrees.
///
/// Surfaces 5 and 6 are side walls there, and have the values of 1 and 4 in load case B.
#[must_use]
pub fn load_case_a(surface: Surface, angle: Angle) -> SurfaceCoefficients {
    let index = surface as usize;
    if index >= 4 {
        return load_case_b(Surface::One);
    }
    let degrees = angle.degrees().clamp(5.0, 90.0);
    let upper = CASE_A.iter().position(|(line, _)| degrees <= *line).unwrap_or(4).max(1);
    let ((from, low), (to, high)) = (&CASE_A[upper - 1], &CASE_A[upper]);
    let share = (degrees - from) / (to - from);
    let between = |low: f64, high: f64| low + (high - low) * share;
    SurfaceCoefficients { interior: between(low[index].0, high[index].0), end: between(low[index].1, high[index].1) }
}

/// Coefficients of load case B, wind along the ridge: the same at any angle.
#[must_use]
pub fn load_case_b(surface: Surface) -> SurfaceCoefficients {
    let (interior, end) = CASE_B[surface as usize];
    SurfaceCoefficients { interior, end }
}

/// Width `a`: the smaller of a tenth of the least plan dimension and 0.4 of the mean roof height, but neither under 0.04
/// of the least plan dimension nor under 3 ft. Cladding has the same.
#[must_use]
pub fn end_width(least_dimension: Length, mean_roof_height: Length) -> Length {
    (least_dimension * 0.1).min(mean_roof_height * 0.4).max(least_dimension * 0.04).max(Length::from_feet(3.0))
}

/// How far the suction of surface 2 reaches from the windward edge; the rest of it to the ridge has that of surface 3.
#[must_use]
pub fn reach_of_suction(dimension_along_wind: Length, eave_height: Length) -> Length {
    (dimension_along_wind * 0.5).min(eave_height * 2.5)
}

/// Design pressure `p = q_h ((GC_pf) - (GC_pi))`, positive toward the surface.
#[must_use]
pub fn design_pressure(q_h: AreaLoad, gc_pf: Ratio, gc_pi: Ratio) -> AreaLoad {
    q_h * (gc_pf - gc_pi)
}

/// Whether the chapter covers a building: no higher than 60 ft, nor than its least plan dimension.
///
/// # Errors
/// When it is higher.
pub fn low_rise(mean_roof_height: Length, least_dimension: Length) -> Result<(), OutsideTable> {
    if mean_roof_height <= Length::from_feet(60.0) && mean_roof_height <= least_dimension {
        return Ok(());
    }
    Err(OutsideTable {
        source: LOW_RISE,
        given: format!(
            "mean roof height {:.1} ft over a least plan dimension of {:.1} ft",
            mean_roof_height.feet(),
            least_dimension.feet()
        ),
        covers: "heights to 60 ft and to the least plan dimension",
        next_step: "The directional procedure of Chapter 27 covers a taller building.",
    })
}

/// Part 2, the simplified form: horizontal pressures on walls and roof, upward ones on the roof, for Exposure B at 30 ft.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SimplifiedPressures {
    /// A, B, C, D: end wall strip, end roof strip, wall, roof; on the upright projection.
    pub horizontal: [AreaLoad; 4],
    /// E, F, G, H: end windward, end leeward, windward, leeward; on the level projection.
    pub vertical: [AreaLoad; 4],
    /// `E_OH` and `G_OH`: windward overhangs.
    pub overhang: [AreaLoad; 2],
}

/// Pressures of Part 2 from the coefficients of Part 1, by which the printed table was made: its figures follow within
/// 0.1 psf. `q_30` is the velocity pressure of Exposure B at 30 ft.
#[must_use]
pub fn simplified_pressures(q_30: AreaLoad, angle: Angle) -> SimplifiedPressures {
    const INTERNAL: f64 = 0.18;
    const OVERHANG: f64 = 0.68;
    let of = |surface| load_case_a(surface, angle);
    let (one, two, three, four) = (of(Surface::One), of(Surface::Two), of(Surface::Three), of(Surface::Four));
    SimplifiedPressures {
        horizontal: [
            one.end - four.end,
            two.end - three.end,
            one.interior - four.interior,
            two.interior - three.interior,
        ]
        .map(|coefficient| q_30 * coefficient),
        vertical: [two.end, three.end, two.interior, three.interior].map(|gc_pf| q_30 * (gc_pf - INTERNAL)),
        overhang: [two.end, two.interior].map(|gc_pf| q_30 * (gc_pf - OVERHANG)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Surface::{Five, Four, One, Six, Three, Two};

    /// Source: ASCE 7-16 Fig. 28.3-1, worked straight between 20 and 30 degrees at 26.565.
    #[test]
    fn between_two_lines_of_the_figure() {
        let angle = Angle::from_degrees(26.565);
        let printed =
            [(One, 0.5497, 0.7278), (Two, -0.0991, -0.1903), (Three, -0.4472, -0.5850), (Four, -0.3906, -0.5350)];
        for (surface, interior, end) in printed {
            let found = load_case_a(surface, angle);
            assert!(
                (found.interior - interior).abs() < 5e-5 && (found.end - end).abs() < 5e-5,
                "{surface:?} {found:?}"
            );
        }
    }

    /// Source: a worked shed of a code built on Chapter 28, at 10 degrees, with end strips of 0.2 of the length: 0.48933,
    /// -0.76600, -0.44200, -0.36933.
    #[test]
    fn a_published_shed() {
        let weighted = |surface| {
            let SurfaceCoefficients { interior, end } = load_case_a(surface, Angle::from_degrees(10.0));
            0.8 * interior + 0.2 * end
        };
        for (surface, printed) in [(One, 0.48933), (Two, -0.76600), (Three, -0.44200), (Four, -0.36933)] {
            assert!((weighted(surface) - printed).abs() < 5e-6, "{surface:?}");
        }
    }

    #[test]
    fn case_b_is_the_same_at_any_angle_and_end_walls_are_its_own() {
        assert_eq!(load_case_b(Five), SurfaceCoefficients { interior: 0.40, end: 0.61 });
        assert_eq!(load_case_b(Six), SurfaceCoefficients { interior: -0.29, end: -0.43 });
        assert_eq!(load_case_a(Five, Angle::from_degrees(30.0)), load_case_b(One));
    }

    /// Source: ASCE 7-16 Fig. 28.3-1 note: 28 ft by 40 ft, 13.5 ft high: 2.8 ft, raised to 3.
    #[test]
    fn the_end_width_has_a_floor() {
        let width = |least, high| end_width(Length::from_feet(least), Length::from_feet(high)).feet();
        assert!((width(28.0, 13.5) - 3.0).abs() < 1e-12);
        assert!((width(60.0, 20.0) - 6.0).abs() < 1e-12);
        assert!((width(100.0, 8.0) - 4.0).abs() < 1e-12);
    }
}
