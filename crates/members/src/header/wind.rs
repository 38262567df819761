//! Wind across the header: how wide a strip of wall leans on it, and how hard.

use loads::wall_wind::{WallPressure, wall_pressure};
use measure::{AreaLoad, Length, LineLoad, Ratio};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::asce7_16::chapter_30;

use super::demand::design_span;
use super::input::{Above, Closure, HeaderInput, Wind};
use super::room;
use crate::working::{Basis, Part, figure};

/// How hard the wind presses on a stretch of wall, and how that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Pressure {
    /// Worked out from the place.
    Worked(WallPressure),
    /// Given, at allowable-stress level.
    Given(AreaLoad),
}

impl Pressure {
    /// On a member that spans `span` and holds a `strip`; none on an inner wall.
    pub(super) fn on(input: &HeaderInput, span: Length, strip: Length) -> Result<Option<Self>, String> {
        match input.wind {
            Wind::None => Ok(None),
            Wind::Given(pressure) => Ok(Some(Self::Given(pressure))),
            Wind::Site(zone) => {
                let area = chapter_30::effective_wind_area(span, strip);
                let pressure = wall_pressure(&input.site.wind, zone, area);
                pressure.map(|pressure| Some(Self::Worked(pressure))).map_err(|outside| outside.to_string())
            }
        }
    }

    /// The pressure at allowable-stress level, whichever way it acts.
    pub(super) const fn allowable(&self) -> AreaLoad {
        match self {
            Self::Worked(worked) => worked.governing(),
            Self::Given(pressure) => *pressure,
        }
    }

    /// The steps to it.
    pub(super) fn steps(&self, part: &mut Part) {
        match self {
            Self::Given(pressure) => {
                part.step("p", "wind pressure, given", "", (pressure.psf(), "psf"), Basis::Input("wind_pressure"));
            }
            Self::Worked(worked) => worked_steps(worked, part),
        }
    }
}

fn worked_steps(worked: &WallPressure, part: &mut Part) {
    use standards::asce7_16::chapter_26::VELOCITY_PRESSURE;
    part.step(
        "q_h",
        "velocity pressure at mean roof height",
        format!("0.00256 × {} K_h × {} K_d × V²", figure(worked.k_h), figure(worked.k_d)),
        (worked.q_h.psf(), "psf"),
        Basis::Published(VELOCITY_PRESSURE),
    );
    part.step(
        "A",
        "effective wind area",
        "span × the larger of strip and span / 3",
        (worked.area.square_feet(), "ft²"),
        Basis::Published(chapter_30::EFFECTIVE_WIND_AREA),
    );
    for (way, coefficient, pressure) in [
        ("toward the house", worked.gc_p_inward, worked.inward_strength),
        ("away from the house", worked.gc_p_outward, worked.outward_strength),
    ] {
        part.step(
            "p",
            format!("pressure {way}, wall zone {}, at strength level", worked.zone.number()),
            format!(
                "{} × ({} GC_p with {} GC_pi)",
                figure(worked.q_h.psf()),
                figure(coefficient),
                figure(worked.gc_pi)
            ),
            (pressure.psf(), "psf"),
            Basis::Published(chapter_30::DESIGN_PRESSURE),
        );
    }
    part.step(
        "0.6p",
        "the larger, at allowable-stress level",
        format!(
            "{} × {}",
            figure(worked.asd_factor),
            figure(worked.inward_strength.max(worked.outward_strength).psf())
        ),
        (worked.governing().psf(), "psf"),
        Basis::Published(Combination::SOURCE),
    );
}

/// The wind across a header.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct HeaderWind {
    pub(super) pressure: Pressure,
    /// Height of wall that leans on it.
    pub(super) strip: Length,
}

impl HeaderWind {
    /// The wind across the header of an opening; none where nothing leans on it.
    pub(super) fn of(input: &HeaderInput) -> Result<Option<Self>, String> {
        let strip = strip(input);
        if strip <= Length::ZERO {
            return Ok(None);
        }
        let pressure = Pressure::on(input, design_span(input.opening, 1), strip)?;
        Ok(pressure.map(|pressure| Self { pressure, strip }))
    }

    /// Wind along the header for a combination's share of the strength-level wind.
    pub(super) fn line_load(&self, share: Ratio) -> LineLoad {
        self.allowable() * (share / Combination::DeadWind.factor(LoadCase::Wind))
    }

    /// Wind along the header at allowable-stress level.
    pub(super) fn allowable(&self) -> LineLoad {
        self.pressure.allowable() * self.strip
    }

    /// The steps to it.
    pub(super) fn steps(&self, part: &mut Part) {
        self.pressure.steps(part);
        part.step(
            "w_2",
            "wind along the header",
            format!("{} psf × {} ft of wall", figure(self.pressure.allowable().psf()), figure(self.strip.feet())),
            (self.allowable().plf(), "plf"),
            Basis::Arithmetic,
        );
    }
}

/// Half of what closes the opening leans on the header when it is fixed to it; half of the wall above does unless
/// framing that bears on the header takes that into the floor or roof. (Common practice.)
fn strip(input: &HeaderInput) -> Length {
    let opening = match input.closure {
        Closure::FramedUnit => input.wall.head_height / 2.0,
        Closure::OverheadDoor => Length::ZERO,
    };
    let above = match input.above {
        Some(Above::FramingBears) => Length::ZERO,
        Some(Above::CrippleStuds) | None => room(input) / 2.0,
    };
    opening + above
}
