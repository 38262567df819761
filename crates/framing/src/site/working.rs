//! The working of a place: ordered steps, each with its clause.

use loads::house::{House, WindDirection};
use loads::site::{LoadStandard, SiteWind};
use loads::snow_on_roof::{SnowInput, SnowOnRoof};
use loads::wind::directional::{Directional, Face, directional};
use loads::wind::envelope::envelope;
use loads::wind::{asd_factor, velocity_pressure_at};
use members::working::{Basis, Part, figure};
use standards::asce7_16::chapter_26::{
    DIRECTIONALITY, DIRECTIONALITY_FACTOR, GROUND_ELEVATION, INTERNAL_PRESSURE, VELOCITY_PRESSURE,
    VELOCITY_PRESSURE_COEFFICIENT,
};
use standards::asce7_16::chapter_26_8::TOPOGRAPHIC_FACTOR;
use standards::asce7_16::{chapter_2, chapter_7, chapter_7_sloped, chapter_27, chapter_28, chapter_30};
use standards::asce7_22;
use standards::ibc_2018::section_1609_3::{NOMINAL_SPEED, nominal_speed};

use super::about::About;
use super::input;
use super::reply::{PressureReply, UpliftReply};
use super::wind::direction_words;
use crate::reading::Reading;
use crate::words;

/// The working of the wind at the place.
pub(super) fn velocity(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    about.part(velocity_pressure(reading, wind));
    let ground = input::ground_finding(reading, wind.mean_roof_height).and_then(Result::ok);
    if let Some(factor) = ground.and_then(|found| found.multipliers) {
        about.part(hill(&factor, wind));
    }
}

/// The working of the push on the house, or on the wing of that name.
pub(super) fn pushes(about: &mut About<'_>, name: &str, wind: &SiteWind, house: &House) {
    for direction in WindDirection::ALL {
        if let Ok(found) = envelope(wind, house, direction) {
            about.part(by_envelope(name, &found));
        }
        if let Ok(found) = directional(wind, house, direction) {
            about.part(by_direction(name, &found));
        }
    }
}

fn velocity_pressure(reading: &Reading, wind: &SiteWind) -> Part {
    let mut part = Part::new("Velocity pressure");
    let mph = wind.speed.mph();
    if reading.word("speed_given_as") == Some("nominal") {
        let nominal = nominal_speed(wind.speed).mph();
        let expression = format!("{} / √0.6", figure(nominal));
        part.step("V", "basic (ultimate) speed", expression, (mph, "mph"), Basis::Published(NOMINAL_SPEED));
    } else {
        part.step("V", "basic (ultimate) speed", figure(mph), (mph, "mph"), Basis::Input("wind_speed"));
    }
    let height = wind.mean_roof_height.feet();
    part.step(
        "h",
        "mean roof height",
        words::length(wind.mean_roof_height),
        (height, "ft"),
        Basis::Input("mean_roof_height"),
    );
    let Ok(k_h) = wind.velocity_pressure_coefficient(wind.mean_roof_height) else { return part };
    let (equation, source) = match wind.standard {
        LoadStandard::Asce7Of16 => ("2.01 (h / z_g)^(2/α)", VELOCITY_PRESSURE_COEFFICIENT),
        LoadStandard::Asce7Of22 => ("2.41 (h / z_g)^(2/α)", asce7_22::VELOCITY_PRESSURE_COEFFICIENT),
    };
    let meaning = format!("velocity pressure coefficient, exposure {}", wind.exposure.letter());
    part.step("K_h", meaning, equation, (k_h, ""), Basis::Published(source));
    let k_zt = wind.topographic_factor;
    part.step("K_zt", "topographic factor", figure(k_zt), (k_zt, ""), Basis::Published(TOPOGRAPHIC_FACTOR));
    part.step("K_d", "directionality", "0.85", (DIRECTIONALITY_FACTOR, ""), Basis::Published(DIRECTIONALITY));
    let k_e = wind.ground_elevation_factor;
    part.step("K_e", "ground elevation", figure(k_e), (k_e, ""), Basis::Published(GROUND_ELEVATION));
    let q_h = 0.002_56 * k_h * k_zt * DIRECTIONALITY_FACTOR * k_e * mph * mph;
    let expression =
        format!("0.00256 × {} × {} × 0.85 × {} × {}²", figure(k_h), figure(k_zt), figure(k_e), figure(mph));
    part.step(
        "q_h",
        "velocity pressure, strength level",
        expression,
        (q_h, "psf"),
        Basis::Published(VELOCITY_PRESSURE),
    );
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    part.step(
        "GC_pi",
        "internal pressure, of either sign",
        figure(gc_pi),
        (gc_pi, ""),
        Basis::Published(INTERNAL_PRESSURE),
    );
    part
}

fn hill(factor: &standards::asce7_16::chapter_26_8::TopographicFactor, wind: &SiteWind) -> Part {
    let mut part = Part::new("The ground");
    let basis = Basis::Published(TOPOGRAPHIC_FACTOR);
    part.step("K_1", "of the shape", "c H / L_h", (factor.k_1, ""), basis);
    let half = format!("1 − x / (μ × {} ft)", figure(factor.half_length.feet()));
    part.step("K_2", "of the distance from the crest", half, (factor.k_2, ""), basis);
    let height = format!("e^(−γ × {} / {})", figure(wind.mean_roof_height.feet()), figure(factor.half_length.feet()));
    part.step("K_3", "of the height", height, (factor.k_3, ""), basis);
    let expression = format!("(1 + {} × {} × {})²", figure(factor.k_1), figure(factor.k_2), figure(factor.k_3));
    part.step("K_zt", "topographic factor", expression, (factor.factor, ""), basis);
    part
}

/// The heading of the working of a part: `Wing: Roof covering`.
#[must_use]
pub fn part_heading(name: &str, part: &str) -> String {
    let of = match part {
        "opening" => "Windows and doors",
        "header" => "Headers",
        "stud" => "Studs",
        "wall" => "Wall covering",
        "roof" => "Roof covering",
        "rafter" => "Rafters",
        _ => "Overhangs",
    };
    format!("{name}{of}")
}

/// Each part by its zone: coefficient back from the pressure, so that the step shows what was put in.
pub(super) fn cladding(about: &mut About<'_>, name: &str, wind: &SiteWind, pressures: &[PressureReply]) {
    let Ok(q_h) = velocity_pressure_at(wind, wind.mean_roof_height, 0.0) else { return };
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    for of in pressures.chunk_by(|one, next| one.part == next.part) {
        let Some(first) = of.first() else { continue };
        let mut part = Part::new(part_heading(name, &first.part));
        let source = if matches!(first.part.as_str(), "opening" | "header" | "stud" | "wall") {
            chapter_30::WALL_COEFFICIENTS
        } else {
            chapter_30::roofs::ROOF_COEFFICIENTS
        };
        let area = figure(first.area_sqft);
        part.step("A", "effective wind area", area, (first.area_sqft, "sq ft"), Basis::Arithmetic);
        for one in of {
            let place = format!("zone {}, {}", one.zone, one.place);
            if let (Some(inward), Some(strength)) = (one.inward_psf, one.inward_strength_psf) {
                let meaning = format!("{place}, toward the house");
                let step = pressure(q_h.pressure.psf(), strength, gc_pi);
                part.step("p", meaning, step, (inward, "psf"), Basis::Published(source));
            }
            let step = pressure(q_h.pressure.psf(), -one.outward_strength_psf, -gc_pi);
            part.step("p", format!("{place}, away"), step, (-one.outward_psf, "psf"), Basis::Published(source));
        }
        about.part(part);
    }
}

/// `0.6 q_h (GC_p - GC_pi)` with its numbers, from the pressure at strength level and what the inside adds to it.
fn pressure(q_h: f64, strength: f64, inside: f64) -> String {
    if strength.abs() <= chapter_30::MINIMUM_PRESSURE.psf() {
        return format!("0.6 × {}, the least", figure(strength));
    }
    let (coefficient, sign) = (strength / q_h - inside, if inside < 0.0 { '−' } else { '+' });
    format!("0.6 × {} × ({} {sign} {})", figure(q_h), figure(coefficient), figure(inside.abs()))
}

/// The heading of the working of a push: `Push across the ridge, envelope procedure`.
#[must_use]
pub fn push_heading(name: &str, direction: &str, procedure: &str) -> String {
    format!("{name}Push {direction}, {procedure} procedure")
}

fn by_envelope(name: &str, found: &loads::wind::envelope::Envelope) -> Part {
    let mut part = Part::new(push_heading(name, direction_words(found.direction), "envelope"));
    let basis = Basis::Published(chapter_28::COEFFICIENTS);
    let q = found.q_h.pressure.psf();
    part.step("q_h", "velocity pressure", figure(q), (q, "psf"), Basis::Published(VELOCITY_PRESSURE));
    part.step(
        "a",
        "width of the end zone; its strip is twice as wide",
        words::length(found.end_width),
        (found.end_width.feet(), "ft"),
        Basis::Published(chapter_28::END_WIDTH),
    );
    for (meaning, pressure) in [
        ("both walls, between the ends", found.walls.0.psf()),
        ("both walls, end strip", found.walls.1.psf()),
        ("roof, upright, between the ends", found.roof.0.psf()),
        ("roof, upright, end strip", found.roof.1.psf()),
    ] {
        part.step("p", meaning, format!("{} × {}", figure(q), figure(pressure / q)), (pressure, "psf"), basis);
    }
    totals(&mut part, &found.push, chapter_28::LEAST);
    part
}

fn by_direction(name: &str, found: &Directional) -> Part {
    let mut part = Part::new(push_heading(name, direction_words(found.direction), "directional"));
    let basis = Basis::Published(chapter_27::COEFFICIENTS);
    part.step("h/L", "height over length along the wind", "", (found.height_to_length, ""), Basis::Arithmetic);
    part.step("L/B", "length along the wind over breadth", "", (found.length_to_breadth, ""), Basis::Arithmetic);
    for one in &found.faces {
        let meaning = match one.face {
            Face::WindwardWall(top) => format!("windward wall, to {}", words::length(top)),
            Face::LeewardWall => "leeward wall".to_owned(),
            Face::SideWalls => "side walls".to_owned(),
            Face::WindwardRoofSuction => "windward slope, first case".to_owned(),
            Face::WindwardRoofPush => "windward slope, second case".to_owned(),
            Face::LeewardRoof => "leeward slope".to_owned(),
            Face::RoofStrip(from, Some(to)) => format!("roof from {} to {}", words::length(from), words::length(to)),
            Face::RoofStrip(from, None) => format!("roof beyond {}", words::length(from)),
            Face::RoofLeast => "any strip of roof, second case".to_owned(),
        };
        let expression = format!(
            "{} × 0.85 × {}, inside {} or {}",
            figure(one.q.psf()),
            figure(one.c_p),
            figure(one.inside_pushes.psf()),
            figure(one.inside_sucks.psf())
        );
        let outside = one.q.psf() * 0.85 * one.c_p;
        part.step("p", meaning, expression, (outside, "psf"), basis);
    }
    totals(&mut part, &found.push, chapter_27::LEAST);
    part
}

fn totals(part: &mut Part, push: &loads::wind::Push, least: standards::Source) {
    part.step(
        "V_min",
        "least push, 16 psf on walls and 8 on roofs",
        "",
        (push.least.pounds(), "lb"),
        Basis::Published(least),
    );
    part.step("V", "push at strength level", "", (push.total.pounds(), "lb"), Basis::Arithmetic);
    let asd = push.total.pounds() * asd_factor();
    part.step(
        "0.6V",
        "at allowable-stress level",
        format!("0.6 × {}", figure(push.total.pounds())),
        (asd, "lb"),
        Basis::Published(chapter_2::Combination::SOURCE),
    );
}

/// The heading of the working of the lift.
pub const LIFT_HEADING: &str = "What lifts the roof";

/// The working of the lift.
pub(super) fn lift(about: &mut About<'_>, name: &str, found: Option<&UpliftReply>) {
    let Some(found) = found else { return };
    let mut part = Part::new(format!("{name}{LIFT_HEADING}"));
    for (of, windward, leeward) in &found.cases {
        let meaning = format!("{of}: windward wall, strength level; the other wall {}", figure(*leeward));
        part.step(
            "w",
            meaning,
            "statics of the two slopes",
            (*windward, "plf"),
            Basis::Published(chapter_28::COEFFICIENTS),
        );
    }
    part.step("D", "roof and ceiling on the wall", "", (found.dead_plf, "plf"), Basis::Input("roof_dead"));
    let net = |psf: f64| format!("0.6 W − 0.6 × {} = {}", figure(found.dead_plf), figure(psf));
    let basis = Basis::Published(chapter_2::Combination::SOURCE);
    part.step("w_net", "net lift, end strip", net(found.net_end_plf), (found.net_end_plf, "plf"), basis);
    part.step("w_net", "net lift, between", net(found.net_interior_plf), (found.net_interior_plf, "plf"), basis);
    about.part(part);
}

/// The heading of the working of snow.
pub const SNOW_HEADING: &str = "Snow on the roof";

/// The working of snow.
pub(super) fn snow(about: &mut About<'_>, input: &SnowInput, found: &SnowOnRoof) {
    let mut part = Part::new(SNOW_HEADING);
    let ground = input.ground.psf();
    part.step("p_g", "ground snow", figure(ground), (ground, "psf"), Basis::Input("ground_snow"));
    let source = match input.standard {
        LoadStandard::Asce7Of16 => chapter_7::FLAT_ROOF,
        LoadStandard::Asce7Of22 => asce7_22::FLAT_ROOF,
    };
    let expression = format!(
        "0.7 × {} × {} × {} × {}",
        figure(input.exposure),
        figure(found.thermal),
        figure(found.importance),
        figure(ground)
    );
    part.step("p_f", "flat roof: 0.7 C_e C_t I_s p_g", expression, (found.flat.psf(), "psf"), Basis::Published(source));
    part.step(
        "C_s",
        "slope factor",
        figure(found.slope_factor),
        (found.slope_factor, ""),
        Basis::Published(chapter_7_sloped::SLOPE_FACTOR),
    );
    let expression = format!("{} × {}", figure(found.slope_factor), figure(found.flat.psf()));
    part.step(
        "p_s",
        "balanced",
        expression,
        (found.balanced.psf(), "psf"),
        Basis::Published(chapter_7_sloped::SLOPE_FACTOR),
    );
    let density = chapter_7_sloped::snow_density(input.ground).pcf();
    part.step(
        "γ",
        "density",
        format!("0.13 × {} + 14", figure(ground)),
        (density, "pcf"),
        Basis::Published(chapter_7_sloped::DENSITY),
    );
    if let Some((case, plain)) = &found.unbalanced {
        let rule =
            if *plain { "all of the ground's snow on the lee side" } else { "balanced, and a drift below the ridge" };
        part.step(
            "p",
            format!("unbalanced, lee slope: {rule}"),
            "",
            (case.leeward.psf(), "psf"),
            Basis::Published(chapter_7_sloped::UNBALANCED),
        );
        if let Some(surcharge) = case.surcharge {
            let expression = format!("h_d γ / √S over {} ft", figure(surcharge.width.feet()));
            part.step(
                "p_d",
                "more, from the ridge down",
                expression,
                (surcharge.peak.psf(), "psf"),
                Basis::Published(chapter_7_sloped::UNBALANCED),
            );
        }
    }
    if let Some(drift) = &found.drift {
        let basis = Basis::Published(chapter_7_sloped::DRIFT);
        part.step("h_b", "depth of the balanced snow", "p_f / γ", (drift.balanced_depth.feet(), "ft"), basis);
        part.step("h_c", "clear height", "", (drift.clear_height.feet(), "ft"), basis);
        part.step(
            "h_d",
            "leeward drift",
            "",
            (drift.leeward.feet(), "ft"),
            Basis::Published(chapter_7_sloped::DRIFT_HEIGHT),
        );
        part.step("h_d", "windward drift, three quarters", "", (drift.windward.feet(), "ft"), basis);
        let over = format!("h_d γ, to nothing over {} ft", figure(drift.surcharge.width.feet()));
        part.step("p_d", "drift at the wall", over, (drift.surcharge.peak.psf(), "psf"), basis);
    }
    about.part(part);
}
