//! What lifts the roof at the eave walls, by the envelope procedure with full statics of a pair of slopes.

use measure::{AreaLoad, Length, LineLoad};
use standards::OutsideTable;
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::asce7_16::chapter_28::{
    OVERHANG_UNDERSIDE, Surface, SurfaceCoefficients, design_pressure, load_case_a, load_case_b,
};

use super::{VelocityPressure, envelope};
use crate::house::House;
use crate::site::SiteWind;

/// A load case of the envelope procedure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadCaseOf {
    /// A: wind across the ridge.
    A,
    /// B: wind along the ridge.
    B,
}

/// Uplift along the eave walls, per length of wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Uplift {
    /// The load case.
    pub case: LoadCaseOf,
    /// Whether it is in the end strip.
    pub end: bool,
    /// Pressure on the windward slope (surface 2), at strength level.
    pub windward: AreaLoad,
    /// Pressure on the leeward slope (surface 3).
    pub leeward: AreaLoad,
    /// Pressure on the windward overhang, both faces.
    pub windward_overhang: AreaLoad,
    /// Lift at the windward wall, at strength level; negative where it presses down.
    pub at_windward_wall: LineLoad,
    /// Lift at the other wall.
    pub at_leeward_wall: LineLoad,
}

impl Uplift {
    /// The larger lift of the two walls.
    #[must_use]
    pub const fn governing(&self) -> LineLoad {
        self.at_windward_wall.max(self.at_leeward_wall)
    }
}

/// What lifts the roof.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofUplift {
    /// At mean roof height.
    pub q_h: VelocityPressure,
    /// Every load case, in the end strip and away from it.
    pub cases: Vec<Uplift>,
    /// Weight of the roof on each eave wall.
    pub dead: LineLoad,
    /// Net lift at allowable-stress level, `0.6 D + 0.6 W`, in the end strip; negative where the weight holds it.
    pub net_asd_end: LineLoad,
    /// The same away from the ends.
    pub net_asd_interior: LineLoad,
}

/// Net uplift along the eave walls. `roof_dead` is the surely present weight of the roof on the level, out to its eaves;
/// `ceiling_dead` that of the ceiling hung from it, between the walls.
///
/// Each slope spans from the wall to the ridge as one of a pair that leans on the other, pinned at one wall and free to
/// slide at the other. The inside pushes outward; under an overhang there is no inside.
///
/// # Errors
/// A wind off the maps, a building that is not low, or a roof whose figure is not here.
pub fn uplift(
    wind: &SiteWind,
    house: &House,
    roof_dead: AreaLoad,
    ceiling_dead: AreaLoad,
) -> Result<RoofUplift, OutsideTable> {
    let q_h = envelope::velocity_pressure(wind, house)?;
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    let of_a = |surface| load_case_a(surface, house.angle());
    let cases = [
        (LoadCaseOf::A, of_a(Surface::Two), of_a(Surface::Three)),
        (LoadCaseOf::B, load_case_b(Surface::Two), load_case_b(Surface::Three)),
    ];
    let cases: Vec<Uplift> = cases
        .into_iter()
        .flat_map(|(case, two, three)| [true, false].map(|end| one_case(house, q_h, gc_pi, (case, two, three, end))))
        .collect();
    let dead = roof_dead * (house.width / 2.0 + house.eave_overhang) + ceiling_dead * (house.width / 2.0);
    let net = |end: bool| {
        let most = cases
            .iter()
            .filter(|case| case.end == end)
            .map(Uplift::governing)
            .fold(LineLoad::from_plf(f64::MIN), LineLoad::max);
        let combination = Combination::LeastDeadWind;
        most * combination.factor(LoadCase::Wind) - dead * combination.factor(LoadCase::Dead)
    };
    let (net_asd_end, net_asd_interior) = (net(true), net(false));
    Ok(RoofUplift { q_h, cases, dead, net_asd_end, net_asd_interior })
}

fn one_case(
    house: &House,
    q_h: VelocityPressure,
    gc_pi: f64,
    (case, two, three, end): (LoadCaseOf, SurfaceCoefficients, SurfaceCoefficients, bool),
) -> Uplift {
    let part = |coefficients: SurfaceCoefficients| if end { coefficients.end } else { coefficients.interior };
    let (two, three) = (part(two), part(three));
    let p = |gc_pf, gc_pi| design_pressure(q_h.pressure, gc_pf, gc_pi);
    let underside = if case == LoadCaseOf::A { OVERHANG_UNDERSIDE } else { 0.0 };
    let slopes = [p(two, gc_pi), p(three, gc_pi)];
    let overhangs = [p(two - underside, 0.0), p(three, 0.0)];
    let (at_windward_wall, at_leeward_wall) = reactions(house, slopes, overhangs);
    Uplift {
        case,
        end,
        windward: slopes[0],
        leeward: slopes[1],
        windward_overhang: overhangs[0],
        at_windward_wall,
        at_leeward_wall,
    }
}

/// Lift at both walls, from pressures square to the slopes (positive toward the roof) and on the overhangs.
fn reactions(house: &House, slopes: [AreaLoad; 2], overhangs: [AreaLoad; 2]) -> (LineLoad, LineLoad) {
    let (width, run, rise, out) = (house.width, house.width / 2.0, house.rise(), house.eave_overhang);
    // Downward, at so far from the far wall.
    let down = |pressure: AreaLoad, of: Length, arm: Length| (pressure * of, arm);
    let loads = [
        down(slopes[0], run, width - run / 2.0),
        down(slopes[1], run, run / 2.0),
        down(overhangs[0], out, width + out / 2.0),
        down(overhangs[1], out, -(out / 2.0)),
    ];
    let sideways = (slopes[0] - slopes[1]) * rise;
    let turning: f64 =
        loads.iter().map(|(load, arm)| load.plf() * arm.feet()).sum::<f64>() - sideways.plf() * (rise / 2.0).feet();
    let near = LineLoad::from_plf(turning / width.feet());
    let all: LineLoad = loads.iter().map(|(load, _)| *load).sum();
    (-near, -(all - near))
}
